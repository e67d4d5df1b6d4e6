package desk

import (
	"math"

	"slingloft/outline/design"
	"slingloft/outline/hung"
	"slingloft/outline/quantity"
)

// Section is the bed across at one station.
type Section struct {
	Station float64      `json:"station"` // mm from the head bar
	Where   string       `json:"where"`   // that, as people read it
	Points  []Point      `json:"points"`  // from one cord to the other, in space
	Sleeper []Point      `json:"sleeper"` // who lies there; empty: nobody
	Floor   float64      `json:"floor"`   // height of the bottom line in space
	Figures []FigureHere `json:"figures"`
}

// FigureHere is one figure at a station, as people read it.
type FigureHere struct {
	Name  string `json:"name"`
	Value string `json:"value"`
}

// SectionWords name the figures of a section.
type SectionWords struct {
	Where, Cords, Depth, Cloth, Wall, Load, Tension, Pull string
}

// sectionOf returns the section of a shape at a station from the head bar, which is
// brought to the cloth where it lies past it.
func sectionOf(d *design.Design, s *hung.Shape, station float64, say Words) Section {
	bar := d.Bed.Span / 2
	head, foot := s.TailEnds()
	x := min(max(station-bar, head), foot)
	st := s.At(x)
	style, round := d.Output.Style(1), rounded(d)
	out := Section{Station: math.Round((x+bar)*10) / 10, Points: grid{fine.chords(s), 1}.row(st), Floor: st.Bottom}
	if ring := lies(d, s).ringAt(x); len(ring) > 0 {
		out.Sleeper = ring
	}
	w := say.Section
	out.Where = round(x + bar)
	out.Figures = []FigureHere{
		{w.Where, out.Where}, {w.Cords, round(2 * st.Y)}, {w.Depth, round(st.Section.Height)}, {w.Cloth, round(st.Section.Girth())},
		{w.Wall, style.Angle(st.Section.Wall)}, {w.Load, style.PerWidth(st.Load)}, {w.Tension, style.PerWidth(st.Cloth)},
		{w.Pull, style.Force(st.Tension)},
	}
	return out
}

// rounded returns what writes lengths in whole mm, or to an eighth of an inch.
func rounded(d *design.Design) func(mm float64) string {
	style := d.Output.Style(0)
	if style.Inches {
		style.Fraction = min(style.Fraction, 8)
	}
	return quantity.Style{Inches: style.Inches, Fraction: style.Fraction}.Length
}
