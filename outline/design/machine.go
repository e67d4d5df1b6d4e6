package design

// Machine is how the machine works that the files are for. Whatever is left out
// is the tool's usual value, or the sheet's.
type Machine struct {
	Tool          Tool
	Width, Height float64 // reach of its bed, mm; 0: not given, the sheet fits
	Origin        Origin
	XLeft, YDown  bool    // its axes count to the left, downwards
	Swap          bool    // what is y on the sheet is called x on the machine
	Kerf          float64 // width of its cut, mm; 0: the sheet's

	// What it made of a line that was drawn Drawn mm long, along its x and y:
	// Measured mm; 0: not measured.
	Drawn, Measured [2]float64

	Lead      float64 // of the way in to closed cuts, mm; 0: none
	Tabs      int     // holding tabs on each outline
	TabWidth  float64 // mm; 0: not given
	TabHeight float64 // above the deepest pass, mm; 0: not given
	Trail     float64 // of a knife's tip behind its holder, mm; 0: the tool's usual
	Swivel    float64 // least turn for which a knife is turned first, rad; 0: the tool's usual
	Safe      float64 // height of travel, mm; 0: the tool's usual
	Plunge    float64 // speed downwards, mm/min; 0: the tool's usual
	NoFrame   bool    // do not go round all work first

	Paper   string  // that a printer takes, as [Papers] names it
	Overlap float64 // of neighbouring pages, mm

	Arcs float64 // DXF has arcs within this of the lines, mm; 0: chords only
	Thin float64 // how far a line may be off when points of it are left out, mm; 0: every point

	Strokes []Stroke
	Jobs    []Job
}

// Tool is a kind of machine.
type Tool int

// The kinds of machine.
const (
	Laser Tool = iota
	Router
	Knife
)

// Tools are the names of the tools, in the order of their constants.
func Tools() []string { return []string{"laser", "router", "knife"} }

// Origins are the names of the places where a machine may have its zero.
func Origins() []string {
	return []string{"sheet", "lower-left", "lower-right", "upper-right", "upper-left", "middle"}
}

// Origin is where a machine has its zero, by its place in [Origins]; 0 stands for
// the corner that the sheet names.
type Origin int

// WholeSheet stands for a sheet of paper as large as the drawing.
const WholeSheet = "sheet"

// Papers are the names of the papers that a file may be divided onto.
func Papers() []string { return []string{WholeSheet, "A4", "A3", "letter", "tabloid"} }

// Works are the names of the kinds of work, in the order in which they are done.
func Works() []string {
	return []string{"register", "lettering", "mark", "stitch", "score", "cut-inside", "cut-outline"}
}

// Work is a kind of work, by its place in [Works].
type Work int

// Stroke is how one kind of work is drawn.
type Stroke struct {
	Work   Work
	Colour string  // "#rrggbb"; empty: the usual one
	Width  float64 // mm; 0: the usual one
	Dash   string  // lengths of line and gap as written, see [Stroke.Dashes]; empty: the usual ones
	Solid  bool    // no dashes
}

// Job is how one kind of work is done, in one material.
type Job struct {
	Work     Work
	Material string  // name of the cloth or sheet; empty: any
	Skip     bool    // leave this work out
	Feed     float64 // mm/min; 0: the tool's usual
	Power    float64 // the S word; 0: the tool's usual
	Passes   int     // 0: the tool's usual
	Depth    float64 // of the last pass, mm; 0: the tool's usual
	Pen      int     // of a plotter; 0: the work's usual
}

// OnMachine returns the design for a machine: its sheets no larger than the
// machine's bed, its cuts as wide as the machine's, its origin named.
func (d Design) OnMachine() Design {
	m := d.Machine
	if m.Width > 0 {
		d.Sheet.Width = min(d.Sheet.Width, m.Width)
	}
	if m.Height > 0 {
		d.Sheet.Height = min(d.Sheet.Height, m.Height)
	}
	if m.Kerf > 0 {
		d.Sheet.Kerf = m.Kerf
		d.Sheet.Gap = max(d.Sheet.Gap, m.Kerf)
	}
	if m.Origin == 0 {
		d.Machine.Origin = Origin(d.Sheet.Origin) + 1
	}
	return d
}
