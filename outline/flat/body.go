// Package flat lays the hung shape out as cloth: the outline that the body's
// panel has while it lies flat, at the line of the cord centres, with the length
// that every stretch of its edge has when it hangs.
//
// Flat coordinates: u along the warp, 0 at mid-bay on the centre line, the head
// end negative; v along the weft, 0 on the centre line. The panel is alike on
// both sides, so that only v ≥ 0 is kept. Lengths mm, angles rad.
package flat

import (
	"slices"

	"slingloft/outline/design"
	"slingloft/outline/geom"
	"slingloft/outline/hung"
)

// Edge is a stretch of the outline, flat, with the hung running length at each
// of its points, which starts at 0.
type Edge struct {
	Flat geom.Polyline
	Hung []float64
}

// FlatLength returns the length of the edge in the flat cloth, mm.
func (e Edge) FlatLength() float64 { return e.Flat.Length() }

// HungLength returns the length of the edge when it hangs, mm.
func (e Edge) HungLength() float64 {
	if len(e.Hung) == 0 {
		return 0
	}
	return e.Hung[len(e.Hung)-1]
}

// FlatOf returns the flat running length at which the hung one is s, both mm.
func (e Edge) FlatOf(s float64) float64 {
	run := 0.0
	for i := 1; i < len(e.Flat); i++ {
		step := e.Flat[i].Dist(e.Flat[i-1])
		if s <= e.Hung[i] || i == len(e.Flat)-1 {
			if gap := e.Hung[i] - e.Hung[i-1]; gap > 0 {
				return run + step*min(max((s-e.Hung[i-1])/gap, 0), 1)
			}
			return run + step
		}
		run += step
	}
	return run
}

// HungOf returns the hung running length at which the flat one is f, both mm.
func (e Edge) HungOf(f float64) float64 {
	run := 0.0
	for i := 1; i < len(e.Flat); i++ {
		step := e.Flat[i].Dist(e.Flat[i-1])
		if f <= run+step || i == len(e.Flat)-1 {
			if step > 0 {
				return e.Hung[i-1] + (e.Hung[i]-e.Hung[i-1])*min(max((f-run)/step, 0), 1)
			}
			return e.Hung[i]
		}
		run += step
	}
	return 0
}

// Reversed returns the edge run from its end to its start.
func (e Edge) Reversed() Edge {
	n := len(e.Hung)
	r := Edge{Flat: e.Flat.Reversed(), Hung: make([]float64, n)}
	for i := range n {
		r.Hung[i] = e.HungLength() - e.Hung[n-1-i]
	}
	return r
}

// Mirrored returns the edge mirrored in the centre line.
func (e Edge) Mirrored() Edge {
	r := Edge{Hung: e.Hung}
	for _, p := range e.Flat {
		r.Flat = append(r.Flat, geom.Pt(p.X, -p.Y))
	}
	return r
}

// Then returns e with f, which starts where e ends, run on behind it.
func (e Edge) Then(f Edge) Edge {
	r := Edge{slices.Clone(e.Flat), slices.Clone(e.Hung)}
	r.Flat = append(r.Flat, f.Flat[1:]...)
	for _, s := range f.Hung[1:] {
		r.Hung = append(r.Hung, e.HungLength()+s-f.Hung[0])
	}
	return r
}

// Beside returns a line that runs beside e, at its own flat length, as an edge:
// hung, it gains on e what it gains flat, since the turning between the two is
// the same.
func (e Edge) Beside(line geom.Polyline) Edge {
	arc := geom.NewArc(e.Flat)
	out := Edge{Flat: line, Hung: make([]float64, len(line))}
	last, _ := arc.Nearest(line[0])
	for i := 1; i < len(line); i++ {
		f, _ := arc.Nearest(line[i])
		gain := line[i].Dist(line[i-1]) - (f - last)
		out.Hung[i] = out.Hung[i-1] + e.HungOf(f) - e.HungOf(last) + gain
		last = f
	}
	return out
}

// At returns the flat point at which the hung running length is s, mm.
func (e Edge) At(s float64) geom.Point {
	p, _ := geom.NewArc(e.Flat).At(e.FlatOf(s))
	return p
}

// Shear is the largest shear of the hung cloth and its flat place.
type Shear struct {
	Angle float64 // from 90 degrees between the threads, rad
	At    geom.Point
}

// Departure compares the straight cut with the true girth at one station.
type Departure struct {
	X    float64 // station, mm
	True float64 // girth with which the bed hangs as designed, mm
	Cut  float64 // girth that the cut has there, mm
	Load float64 // line load there, N/mm: what a departure weighs
}

// Body is the flat body at the cord centres.
type Body struct {
	Cut  design.Cut
	Side Edge             // at v > 0 from the head end's corner to the foot end's
	Ends [2]Edge          // by [hung.End], from the centre line to the corner at v > 0
	Bars [2]geom.Polyline // bar lines, likewise
	// Sections are the hung end sections in their own plane, from the bottom line to
	// the cord at y > 0: x across, y up from the bottom line. A cap is cut from it.
	Sections [2]geom.Polyline
	// Tips are the running hung lengths along Side at which the bars' tips lie.
	Tips  [2]float64
	Shear Shear

	Compensation Compensation
	strain       strains                 // that the weft was shortened by
	recut        func(u float64) float64 // how many times as wide the body was cut again; nil: it was not
	Level        Level                   // of a drawn side curve; zero for a balanced one
	Departures   []Departure             // of the straight cut; empty for the net
	Step         float64                 // cell of the net, mm; 0 for the straight cut
}

// Corner returns the corner at an end, v > 0.
func (b *Body) Corner(e hung.End) geom.Point {
	if e == hung.Head {
		return b.Side.Flat[0]
	}
	return b.Side.Flat[len(b.Side.Flat)-1]
}

// BarCorner returns the point of the side at an end's bar tip.
func (b *Body) BarCorner(e hung.End) geom.Point {
	return b.Bars[e][len(b.Bars[e])-1]
}

// TipIndex returns the index in the side's line of an end's bar tip.
func (b *Body) TipIndex(e hung.End) int {
	tip := b.BarCorner(e)
	best := 0
	for i, p := range b.Side.Flat {
		if p.Dist(tip) < b.Side.Flat[best].Dist(tip) {
			best = i
		}
	}
	return best
}

// Lay returns the flat body of a hung shape, cut as its design says; leaning ends
// lie square to the rising cords, others in a vertical plane.
func Lay(s *hung.Shape, leaning bool) (Body, error) {
	if s.Problem.Bed.Cut == design.Straight {
		return layStraight(s)
	}
	return layNet(s, cellAcross, leaning)
}

// Area returns that of the flat body, mm².
func (b *Body) Area() float64 {
	line := append(geom.Polyline(nil), b.Ends[0].Flat...)
	line = append(append(line, b.Side.Flat...), b.Ends[1].Flat.Reversed()...)
	area := 0.0
	for i, p := range line {
		area -= p.Cross(line[(i+1)%len(line)])
	}
	// Both sides of the centre line.
	return area
}
