// Package simulatetest follows programs and plots as a machine would, without looking
// at their comments, and says what they would have done to the stock. It shares
// nothing with the writers and readers of the formats.
package simulatetest

import (
	"fmt"
	"math"

	"slingloft/export"
	"slingloft/outline/design"
	"slingloft/outline/geom"
)

// Setup is the machine and how its stock lies.
type Setup struct {
	Tool          design.Tool
	Trail         float64 // of a knife's tip behind its holder, mm
	Axes          export.Axes
	Width, Height float64 // of the stock, mm
	Bed           [2]float64
}

// Track is a straight bit that the tool's tip made on the stock, in mm from the stock's
// lower left corner.
type Track struct {
	From, To geom.Point
	Depth    float64 // below the upper face, mm; 0 for a beam or a pen of a plotter
	Power    float64 // the S word
	Feed     float64 // mm/min
	Pen      int
}

// Run is what a program did.
type Run struct {
	Tracks []Track
	Way    geom.Box // of the tool, on or off, the zero included
	Faults []string // what a careful operator would have stopped it for
}

// Joined returns what programs did one after the other to a stock that was moved on by
// its feeds, mm, towards the machine's zero before each: the first where it lay. The way
// is that on the bed.
func Joined(runs []Run, feeds []float64) Run {
	out, at := Run{Way: geom.EmptyBox()}, 0.0
	for i, r := range runs {
		at += feeds[i]
		for _, t := range r.Tracks {
			t.From, t.To = t.From.Plus(geom.Pt(at, 0)), t.To.Plus(geom.Pt(at, 0))
			out.Tracks = append(out.Tracks, t)
		}
		out.Way, out.Faults = out.Way.Union(r.Way), append(out.Faults, r.Faults...)
	}
	return out
}

func (r *Run) fault(line int, format string, a ...any) {
	const most = 20
	if len(r.Faults) < most {
		r.Faults = append(r.Faults, fmt.Sprintf("line %d: ", line)+fmt.Sprintf(format, a...))
	}
}

// place returns where on the stock the machine's numbers are: what [export.Axes] does,
// undone in the opposite order.
func (s Setup) place(x, y float64) geom.Point {
	if s.Axes.Swap {
		x, y = y, x
	}
	if s.Axes.XLeft {
		x = -x
	}
	if s.Axes.YDown {
		y = -y
	}
	switch s.Axes.Origin {
	case design.LowerRight:
		return geom.Pt(x+s.Width, y)
	case design.UpperRight:
		return geom.Pt(x+s.Width, y+s.Height)
	case design.UpperLeft:
		return geom.Pt(x, y+s.Height)
	case design.Middle:
		return geom.Pt(x+s.Width/2, y+s.Height/2)
	}
	return geom.Pt(x, y)
}

// tip is where a tool works: under its holder, or behind it by a knife's trail.
type tip struct {
	trail float64
	at    geom.Point
}

// follow draws the tip after its holder, from one place to another in small steps, and
// returns the way that it takes.
func (t *tip) follow(from, to geom.Point) geom.Polyline {
	if t.trail == 0 {
		t.at = to
		return geom.Polyline{from, to}
	}
	out := geom.Polyline{t.at}
	n := math.Max(1, math.Ceil(from.Dist(to)/(t.trail/8)))
	for i := 1.0; i <= n; i++ {
		holder := from.Towards(to, i/n)
		t.at = holder.Plus(t.at.Minus(holder).Unit().Times(t.trail))
		out = append(out, t.at)
	}
	return out
}

// carry moves the tip with its holder through the air: it keeps its direction.
func (t *tip) carry(from, to geom.Point) { t.at = t.at.Plus(to.Minus(from)) }
