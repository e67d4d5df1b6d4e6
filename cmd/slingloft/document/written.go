package document

import (
	"crypto/sha256"
	"encoding/hex"
)

// Versions of the documents of commands that write files.
const (
	CutVersion       = 1
	SheetVersion     = 1
	CalibrateVersion = 1
	StartVersion     = 1
)

// Head is what the document of a design begins with.
type Head struct {
	Version int    `json:"version"`
	Name    string `json:"name" doc:"of the design"`
	Digest  string `json:"digest" doc:"of the design; changes with any of its values"`
	Mark    string `json:"mark" doc:"of the shapes, as it is lettered on pieces and templates; empty where none are made"`
	Status  int    `json:"status" doc:"exit status"`
}

// Cut is what cut wrote. Where a margin is not met it wrote nothing.
type Cut struct {
	Head
	Verdict  []string  `json:"verdict" doc:"what is not met, why no file is written"`
	Warnings []string  `json:"warnings" doc:"what a maker should know before cutting"`
	Scale    float64   `json:"scale" doc:"length in the files over true length"`
	Files    []Sheet   `json:"files" doc:"in the order in which they were written"`
	Lays     []Lay     `json:"lays"`
	Beds     []Bed     `json:"beds,omitempty" doc:"that lie together, by their numbers from 1; absent for one alone"`
	Outlines []Outline `json:"outlines" doc:"of the maker's own, as they were brought in"`
}

// Bed is one of several beds that are laid together. Ids of its pieces begin with its
// number: bed-1-body.
type Bed struct {
	Name   string `json:"name"`
	File   string `json:"file"`
	Digest string `json:"digest"`
	Mark   string `json:"mark"`
}

// Outline is one outline of the maker's own.
type Outline struct {
	File  string     `json:"file"`
	Name  string     `json:"name"`
	Use   string     `json:"use" doc:"piece or keep-out"`
	Stock string     `json:"stock" doc:"cloth or board"`
	Size  [2]float64 `json:"size" doc:"of the box around it along x and y, mm"`
	Holes int        `json:"holes"`
	Lines int        `json:"lines" doc:"marks, folds, stitch lines and lettering in it"`
	Notes []string   `json:"notes" doc:"of its file: what was left out, what may look otherwise elsewhere"`
}

// Sheet is a file that holds one sheet of work.
type Sheet struct {
	File
	Sheet  string     `json:"sheet" doc:"its name without the ending, the same in every format"`
	Title  string     `json:"title"`
	Stock  string     `json:"stock" doc:"cloth or board"`
	Number int        `json:"number" doc:"of the sheet, among those of its stock"`
	Of     int        `json:"of" doc:"how many sheets of its stock there are"`
	Size   [2]float64 `json:"size" doc:"of the sheet in the file, along x and y, mm"`
	Note   string     `json:"note,omitempty"`
}

// File is a written file.
type File struct {
	Name   string `json:"name" doc:"within its folder"`
	Format string `json:"format"`
	Bytes  int    `json:"bytes"`
	SHA256 string `json:"sha256" doc:"of its content"`
}

// FileOf returns what is told of a file.
func FileOf(name, format string, content []byte) File {
	sum := sha256.Sum256(content)
	return File{name, format, len(content), hex.EncodeToString(sum[:])}
}

// Lay is how pieces lie on their stock.
type Lay struct {
	Stock    string  `json:"stock" doc:"cloth or board"`
	Material string  `json:"material"`
	Pieces   int     `json:"pieces"`
	Beds     int     `json:"beds" doc:"rolls or sheets used"`
	Width    float64 `json:"width" doc:"of the roll across, of a sheet along x, mm"`
	Length   float64 `json:"length" doc:"of roll used, of a sheet along y, mm"`
	Use      float64 `json:"use" doc:"part of the stock that lies under pieces, 0 to 1"`
	Verified bool    `json:"verified" doc:"no piece touches another, a keep-out or the edge, by exact check"`
}

// Built is the build sheet that sheet wrote.
type Built struct {
	Head
	Verdict  []string   `json:"verdict" doc:"what is not met"`
	Warnings []string   `json:"warnings" doc:"what a maker should know before cutting"`
	Outcome  string     `json:"outcome" doc:"of the checks, in one line, as the sheet has it"`
	Sections []string   `json:"sections" doc:"titles, in their order"`
	File     File       `json:"file" doc:"of several, the first"`
	Beds     []Bed      `json:"beds,omitempty" doc:"that are laid together, by their numbers from 1; absent where there is one alone"`
	Sheets   []BedSheet `json:"sheets,omitempty" doc:"all that were written, where designs are laid together; absent where there is one alone"`
}

// BedSheet is the build sheet of one of several designs that are laid together.
type BedSheet struct {
	Beds     []int    `json:"beds" doc:"its numbers"`
	Outcome  string   `json:"outcome" doc:"of its checks, in one line"`
	Sections []string `json:"sections" doc:"titles, in their order"`
	File     File     `json:"file"`
}

// Calibration is what calibrate wrote.
type Calibration struct {
	Head
	Files []Sheet    `json:"files" doc:"in the order in which they were written"`
	Bars  [2]float64 `json:"bars" doc:"lengths of the long bars along x and y, mm: what they measure is machine.calibration_x and calibration_y"`
	Comb  Comb       `json:"comb"`

	NoComb string `json:"no_comb" doc:"why no comb was written, empty where one was"`
}

// Comb is what the width of the cut is found with.
type Comb struct {
	Thickness float64   `json:"thickness" doc:"of the board, mm, as it was measured; 0 where there is no comb"`
	Kerfs     []float64 `json:"kerfs" doc:"numbers at the slots, mm: that of the slot that fits is machine.kerf"`
}

// Start is what start wrote.
type Start struct {
	Version  int       `json:"version"`
	Status   int       `json:"status" doc:"exit status"`
	File     File      `json:"file"`
	Units    string    `json:"units" doc:"mm or in"`
	Proposed []Value   `json:"proposed" doc:"for a sleeper; none in a plain starter design"`
	Joins    int       `json:"joins" doc:"lengthwise joins of the body that the cloth makes necessary"`
	Unmet    []Missing `json:"unmet" doc:"margins that the proposal does not meet with the example's parts"`
	Cautions []string  `json:"cautions" doc:"what has to be said before anything else of this sleeper"`
}

// Value is one value of a proposed design.
type Value struct {
	Key    string `json:"key"`
	Value  string `json:"value" doc:"as the file has it"`
	Reason string `json:"reason"`
}

// Missing is a margin that is not met.
type Missing struct {
	Check    string  `json:"check"`
	Margin   float64 `json:"margin"`
	Required float64 `json:"required"`
}
