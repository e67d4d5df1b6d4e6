package design

import (
	"cmp"
	"fmt"
	"slices"

	"slingloft/outline/piece"
	"slingloft/outline/quantity"
)

// Machine is how the machine works that the files are for. Whatever is left out
// is the tool's usual value, or the sheet's.
type Machine struct {
	Tool          Tool
	For           For     // what it cuts
	Width, Height float64 // reach of its bed, mm; 0: not given, the sheet fits
	Origin        Origin
	XLeft, YDown  bool    // its axes count to the left, downwards
	Swap          bool    // what is y on the sheet is called x on the machine
	Kerf          float64 // width of its cut, mm; 0: the sheet's, or a router's cutter
	Cutter        float64 // diameter of a router's cutter, mm; 0: not given, and no program for a router

	// What it made of a line that was drawn Drawn mm long, along its x and y:
	// Measured mm; 0: not measured.
	Drawn, Measured [2]float64

	Lead      float64                       // of the way in to closed cuts, mm; 0: none
	Tabs      int                           // holding tabs on each outline
	TabWidth  float64                       // mm; 0: not given
	TabHeight float64                       // above the deepest pass, mm; 0: not given
	Trail     float64                       // of a knife's tip behind its holder, mm; 0: not given
	Swivel    quantity.Radians              // least turn for which a knife is turned first; 0: as its trail asks
	Safe      float64                       // height of travel, mm; 0: not given
	Plunge    quantity.MillimetresPerMinute // speed downwards; 0: not given, and no program for what goes down
	SpinUp    float64                       // what a router's spindle takes to its speed, s; 0: not given
	Through   float64                       // depth of cuts below the sheet, mm; 0: not given
	NoFrame   bool                          // do not go round all work first
	NoPens    bool                          // it cannot change pens by itself
	Fields    bool                          // cloth that is longer than its bed is cut field by field
	InWaste   bool                          // files that move no machine have band and title in the waste too
	Example   bool                          // invented: its values are to be tried before they are used

	Pause      Pause    // after the frame
	Dynamic    bool     // a laser's power follows its speed
	Air        Air      // assist
	Controller Dialect  // of programs
	Header     []string // lines of its own before all work
	Footer     []string // and after it

	Paper   string  // that a printer takes, as [Papers] names it
	Overlap float64 // of neighbouring pages, mm

	Arcs float64 // DXF has arcs within this of the lines, mm; 0: chords only
	Thin float64 // how far a line may be off when points of it are left out, mm; 0: every point

	Strokes []Stroke
	Jobs    []Job
}

// Tool is a kind of machine. The zero value stands for the one that a format is
// usually for: a laser for programs, a pen for plots.
type Tool int

// The kinds of machine.
const (
	Laser Tool = iota + 1
	Router
	Knife
	Pen
)

// Tools lists the kinds of machine.
func Tools() []Tool { return []Tool{Laser, Router, Knife, Pen} }

// String returns the tool's name, as designs and programs have it.
func (t Tool) String() string {
	switch t {
	case Laser:
		return "laser"
	case Router:
		return "router"
	case Knife:
		return "knife"
	case Pen:
		return "pen"
	case 0:
		return ""
	}
	return "unknown"
}

// ParseTool returns the tool of the given name.
func ParseTool(name string) (Tool, error) {
	for _, t := range Tools() {
		if t.String() == name {
			return t, nil
		}
	}
	return 0, fmt.Errorf("tool %.20q: want laser, router, knife or pen", name)
}

// For says what a machine cuts.
type For int

// What a machine may be for.
const (
	ForBoth For = iota
	ForCloth
	ForBoard
)

// Takes reports whether the machine cuts from a stock.
func (f For) Takes(s piece.Stock) bool {
	return f == ForBoth || (f == ForCloth) == (s == piece.Cloth)
}

// Corner is a place on a sheet, as one sees it, at which a machine may have its zero.
type Corner int

// The corners of a sheet, and its middle.
const (
	LowerLeft Corner = iota
	LowerRight
	UpperRight
	UpperLeft
	Middle
)

// Corners lists the corners of a sheet, without its middle.
func Corners() []Corner { return []Corner{LowerLeft, LowerRight, UpperRight, UpperLeft} }

// String returns the corner's name, as designs and notes have it.
func (c Corner) String() string {
	switch c {
	case LowerLeft:
		return "lower-left"
	case LowerRight:
		return "lower-right"
	case UpperRight:
		return "upper-right"
	case UpperLeft:
		return "upper-left"
	case Middle:
		return "middle"
	}
	return "unknown"
}

// Origin is where a machine has its zero. The zero value is the corner that the
// sheet names.
type Origin struct {
	Given  bool
	Corner Corner // if given
}

// At returns the origin at a corner, whatever the sheet names.
func At(c Corner) Origin { return Origin{Given: true, Corner: c} }

// String returns the origin's name, as designs have it.
func (o Origin) String() string {
	if o.Given {
		return o.Corner.String()
	}
	return "sheet"
}

// origins lists the places at which a machine may have its zero.
func origins() []Origin {
	out := []Origin{{}}
	for _, c := range append(Corners(), Middle) {
		out = append(out, At(c))
	}
	return out
}

// WholeSheet stands for a sheet of paper as large as the drawing.
const WholeSheet = "sheet"

// Papers are the names of the papers that a file may be divided onto.
func Papers() []string { return []string{WholeSheet, "A4", "A3", "letter", "tabloid"} }

// Stroke is how one kind of work is drawn.
type Stroke struct {
	Work   piece.Work
	Colour string  // "#rrggbb"; empty: the usual one
	Width  float64 // mm; 0: the usual one
	Dash   string  // lengths of line and gap as written, see [Stroke.Dashes]; empty: the usual ones
	Solid  bool    // no dashes
}

// Job is how one kind of work is done, in one material.
type Job struct {
	Work     piece.Work
	Material string                        // name of the cloth or sheet; empty: any
	Skip     bool                          // leave this work out
	Feed     quantity.MillimetresPerMinute // 0: not given
	Power    float64                       // the S word; 0: not given
	Passes   int                           // 0: one
	Depth    float64                       // of the last pass, mm; 0: not given
	Pen      int                           // of a plotter; 0: the work's usual
}

// JobFor returns how the machine does a kind of work in a material: what its jobs for
// any material set and over it what its jobs for this one set.
func (m Machine) JobFor(w piece.Work, material string) Job {
	out := Job{Work: w, Material: material}
	for _, holds := range []func(Job) bool{
		func(j Job) bool { return j.Material == "" },
		func(j Job) bool { return j.Material != "" && j.Material == material },
	} {
		for _, j := range m.Jobs {
			if j.Work == w && holds(j) {
				out.take(j)
			}
		}
	}
	return out
}

// Asks reports whether a job names both the work and the material and says how it is
// done: what is done to a cloth beside its cutting has to be asked for so.
func (m Machine) Asks(w piece.Work, material string) bool {
	return slices.ContainsFunc(m.Jobs, func(j Job) bool {
		return j.Work == w && material != "" && j.Material == material && (j.Feed > 0 || j.Power > 0 || j.Depth > 0)
	})
}

// take puts what another job sets into the place of what was there.
func (j *Job) take(other Job) {
	j.Skip = j.Skip || other.Skip
	j.Feed, j.Power, j.Depth = cmp.Or(other.Feed, j.Feed), cmp.Or(other.Power, j.Power), cmp.Or(other.Depth, j.Depth)
	j.Passes, j.Pen = cmp.Or(other.Passes, j.Passes), cmp.Or(other.Pen, j.Pen)
}

// Cut returns the width of the machine's cut in mm, a router's as its cutter is where
// it was not measured; 0: not given.
func (m Machine) Cut() float64 {
	if m.Tool == Router {
		return cmp.Or(m.Kerf, m.Cutter)
	}
	return m.Kerf
}

// OnMachine returns the design for a machine: its sheets no larger than the
// machine's bed, its cuts as wide as the machine's, its origin named.
func (d Design) OnMachine() Design {
	m := d.Machine
	if !m.For.Takes(piece.Board) {
		m.Width, m.Height, m.Kerf, m.Cutter = 0, 0, 0, 0 // the sheets are another machine's
	}
	if m.Width > 0 {
		d.Sheet.Width = min(d.Sheet.Width, m.Width)
	}
	if m.Height > 0 {
		d.Sheet.Height = min(d.Sheet.Height, m.Height)
	}
	if cut := m.Cut(); cut > 0 {
		d.Sheet.Kerf = cut
		d.Sheet.Gap = max(d.Sheet.Gap, cut)
	}
	if !m.Origin.Given {
		d.Machine.Origin = At(d.Sheet.Origin)
	}
	return d
}
