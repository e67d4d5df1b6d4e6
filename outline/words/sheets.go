package words

import "fmt"

// Sheets is what stands on sheets beside the pieces: title blocks, pages to be joined,
// and what a machine is tried with.
type Sheets struct {
	Cloth, Boards string // titles of the cloth lay and of template sheets
	Title         string // of a file: title, sheet, sheets, design, marks
	Design        string // digest
	Marks         string // marks of the shapes and of the lay
	Number        string // in the title block: title, sheet, sheets
	Scale         string // scale, material
	Field         string // title of a field: number, how many, title
	Size          string // what a file says of itself: scale

	CutEnd                       string // beside the edges of a roll
	LowerSelvedge, UpperSelvedge string
	Flaw                         string // on the cloth

	Page            string // name of a page, number, how many
	Print, Measure  string // on every page
	Map             string // title of the map of the pages: title
	MapName         string // name of that page
	Upright, Aside  string // how the paper lies
	Pages           string // how many, paper, how it lies, scale
	Order, Together string // how the pages are named, and joined

	Calibration string    // title
	Bars        string    // what to measure
	Diagonals   string    // length
	Comb        string    // title: thickness of the board
	CombNotes   [3]string // the last: unit
}

// FileTitle is the title of a sheet with what tells the file from all others.
func (s Sheets) FileTitle(title string, sheet, sheets int, design, marks string) string {
	return fmt.Sprintf(s.Title, title, sheet, sheets, design, marks)
}

// EnglishSheets returns what stands on sheets in English.
func EnglishSheets() Sheets {
	return Sheets{
		Cloth: "Cloth lay", Boards: "Templates",
		Title:  "%s, sheet %d of %d: %s, %s",
		Design: "design %s",
		Marks:  "shape %s, lay %s",
		Number: "%s — sheet %d of %d",
		Scale:  "scale %s   %s",
		Field:  "Field %d of %d, %s",
		Size:   "Lengths in mm, scale %s. Cut at this size, do not fit to page.",

		Page:    "%s  page %d of %d",
		Print:   "Print at 100 %, do not fit to page.",
		Measure: "Measure the bars on every page.",
		Map:     "%s map",
		MapName: "map",
		Upright: "upright", Aside: "on its side",
		Pages:    "%d pages of %s %s, scale %s",
		Order:    "Columns A, B, C … from the left, rows 1, 2, 3 … from the top. Pages without ink are left out.",
		Together: "Cut one of two neighbours along the joint, lay it over the other so that the match marks meet, tape.",

		CutEnd: "cut end", LowerSelvedge: "lower selvedge", UpperSelvedge: "upper selvedge", Flaw: "flaw",

		Calibration: "Calibration sheet",
		Bars:        "Measure all four bars and both diagonals.",
		Diagonals:   "Diagonals %s, the same both ways where the axes are square.",
		Comb:        "Kerf comb, board %s",
		CombNotes: [3]string{
			"Cut on the lines, with no regard to the kerf.",
			"Push the board's own edge into the slots.",
			"The number at the slot that it fits is the kerf (%s).",
		},
	}
}
