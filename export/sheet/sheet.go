// Package sheet sets out the build sheet: everything that is needed at the
// cutting table and the sewing machine, from plain data to sections of text,
// tables and pictures. Packages page and paper turn those into a web page and a
// PDF file, so that both say the same.
//
// All lengths in [Data] are mm, forces N, angles rad. Start with [Of].
package sheet

import (
	"slingloft/export"
	"slingloft/export/sheet/picture"
	"slingloft/outline/accuracy"
	"slingloft/outline/cord"
	"slingloft/outline/design"
	"slingloft/outline/flat"
	"slingloft/outline/geom"
	"slingloft/outline/hung"
	"slingloft/outline/margin"
	"slingloft/outline/panel"
	"slingloft/outline/piece"
	"slingloft/outline/quantity"
	"slingloft/outline/rig"
	"slingloft/outline/stock"
	"slingloft/outline/words"
)

// Data is all that a build sheet is made from. What is left at its zero value is
// left out of the sheet.
type Data struct {
	Design design.Design
	Digest string
	Style  quantity.Style

	Shape     *hung.Shape
	Body      *flat.Body
	Sewn      panel.Sewn
	Templates []piece.Piece
	Cords     cord.Set
	Lays      []Lay
	Unlaid    bool // the pieces are not laid yet: the sheet says so where it would tell of the lay
	Curves    []piece.Curve

	Margins  *margin.Report
	Place    *rig.Place
	Roll     *rig.Roll
	Shelter  *rig.Shelter
	Bill     *stock.Bill
	Accuracy *accuracy.Report
	Words    *words.Names // nil: English
	Warnings []string     // what a maker would not expect, one line each
}

// Lay is one roll or sheet with the pieces on it.
type Lay struct {
	Name          string // "Cloth lay", "Template sheet 2 of 3"
	Material      string
	Width, Height float64 // of the stock shown, mm: along x and y
	Use           float64 // part of the stock that is used
	Items         []export.Item
	Kept          []Kept
	Roll          bool // an open length: Width is what is cut off the roll
}

// Kept is an area of the stock that no piece may touch.
type Kept struct {
	Flaw    bool // of the cloth; else a keep-out of the maker's own
	Outline geom.Ring
}

// Fact is a named figure, ready to print.
type Fact struct {
	Name, Value string
}

// Sheet is a finished build sheet.
type Sheet struct {
	Title    string
	Subtitle string
	Digest   string
	Verdict  Verdict
	Sections []Section
}

// Verdict is the outcome of the checks in one word and one line.
type Verdict struct {
	Grade Grade
	Text  string
}

// Grade sorts outcomes.
type Grade int

// The grades.
const (
	Good    Grade = iota // everything known and met
	Careful              // something is waived or not known
	Bad                  // a required margin is not met or a seam is off
)

// Section is a part of the sheet under its own heading.
type Section struct {
	ID     string // safe as an id, unique
	Title  string
	Blocks []Block
}

// Block is a part of a section: [Para], [List], [Steps], [Table], [Figures] or
// [Notice].
type Block interface{ block() }

// Para is a paragraph.
type Para string

// List is a list of short points.
type List []string

// Steps are numbered steps of work.
type Steps []Step

// Step is one step: what to do, how, and the figures that it needs.
type Step struct {
	Title string
	Text  string
	Facts []Fact
}

// Table is a table; its first column names the rows.
type Table struct {
	ID      string // unique on the sheet
	Caption string
	Head    []string
	Rows    [][]string
	Words   []bool // by column: words, set to the left; others are figures
	Strong  []bool // by row: stands out
	Dense   bool   // long and narrow: set in columns where there is room
}

// Figures are pictures that belong together.
type Figures []Figure

// Figure is a picture with its caption.
type Figure struct {
	Picture picture.Picture
	Caption string
	Wide    bool // takes the whole width
}

// Notice is a warning or a remark that stands out.
type Notice struct {
	Grade Grade
	Title string
	Lines []string
}

func (Para) block()    {}
func (List) block()    {}
func (Steps) block()   {}
func (Table) block()   {}
func (Figures) block() {}
func (Notice) block()  {}

// Of sets out the sheet.
func Of(d Data) (Sheet, error) {
	b := builder{Data: d, words: words.English()}
	if d.Words != nil {
		b.words = *d.Words
	}
	s := Sheet{Title: d.Design.Name, Subtitle: b.subtitle(), Digest: d.Digest, Verdict: b.verdict()}
	sections := []func() (Section, error){
		b.result, b.hungShape, b.pieces, b.lay, b.cords, b.offsets, b.loads,
		b.materials, b.order, b.seams, b.charts, b.assumptions, b.sources,
	}
	for _, f := range sections {
		sec, err := f()
		if err != nil {
			return Sheet{}, err
		}
		if len(sec.Blocks) > 0 {
			s.Sections = append(s.Sections, sec)
		}
	}
	return s, nil
}

// builder sets out the sections.
type builder struct {
	Data
	words words.Names
}
