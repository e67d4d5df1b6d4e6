// Package sheet is the finished build sheet as plain data: everything that is needed at
// the cutting table and the sewing machine, in sections of text, tables and pictures.
//
// Below it package given is what a sheet is made from, and chapter lays its sections
// out of that, with the pictures of scene, sketch and series. Packages page and paper
// turn a sheet into a web page and a PDF file, so that both say the same.
package sheet

import (
	"fmt"

	"slingloft/export/sheet/picture"
)

// Sheet is a finished build sheet.
type Sheet struct {
	Title    string
	Subtitle string
	Digest   string
	Frame    Frame
	Verdict  Verdict
	Sections []Section
}

// Frame is what the writers of a sheet say of their own. What its texts are filled in
// with stands behind them.
type Frame struct {
	Language  string // as files name it: "en"
	File      string // title of the file: title of the sheet
	Design    string // digest
	Contents  string
	Parts     [PartCount]string // their headings
	Skip      string            // leads past the contents
	Picture   string            // its title
	Rows      string            // part of a table: caption, from, to
	Continued string            // a table that goes on: caption
	GoesOn    string            // a picture that is wider than the screen
	Needs     string            // what lies at hand for a step
	Done      string            // what a step looks like when done
}

// File returns the title of a file with the sheet.
func (s Sheet) File() string { return fmt.Sprintf(s.Frame.File, s.Title) }

// Design names the design by its digest.
func (s Sheet) Design() string { return fmt.Sprintf(s.Frame.Design, s.Digest) }

// Foot returns what stands at the foot of the sheet.
func (s Sheet) Foot() string { return s.Title + " · " + s.Design() }

// Verdict is the outcome of the checks in one word and one line.
type Verdict struct {
	Grade Grade
	Title string
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
	Part   Part
	Title  string
	Blocks []Block
}

// Add adds blocks to a section.
func (s *Section) Add(blocks ...Block) { s.Blocks = append(s.Blocks, blocks...) }

// Block is a part of a section: [Para], [List], [Ticks], [Steps], [Terms], [Table],
// [Figures] or [Notice].
type Block interface{ block() }

// Para is a paragraph.
type Para string

// List is a list of short points.
type List []string

// Table is a table; its first column names the rows.
type Table struct {
	ID      string // unique on the sheet
	Caption string
	Head    []string
	Rows    [][]string
	Words   []bool // by column: words, set to the left; others are figures
	Strong  []bool // by row: stands out
	Dense   bool   // long and narrow: set in columns where there is room
	Paired  bool   // set in two columns on paper, its words broken so that both fit
}

// Add adds a row to a table.
func (t *Table) Add(cells ...string) { t.Rows = append(t.Rows, cells) }

// AddStrong adds a row that may stand out.
func (t *Table) AddStrong(strong bool, cells ...string) {
	t.Add(cells...)
	t.Strong = append(t.Strong, strong)
}

// Figures are pictures that belong together.
type Figures []Figure

// Figure is a picture with its caption.
type Figure struct {
	Picture picture.Picture
	Caption string
}

// Wide reports whether a figure takes the whole width.
func (f Figure) Wide() bool { return f.Picture.Width == picture.Wide }

// Notice is a warning or a remark that stands out.
type Notice struct {
	Grade Grade
	Title string
	Lines []string
}

func (Para) block()    {}
func (List) block()    {}
func (Ticks) block()   {}
func (Steps) block()   {}
func (Terms) block()   {}
func (Table) block()   {}
func (Figures) block() {}
func (Notice) block()  {}
