// Package simplify replaces many short chords by fewer chords or by arcs that stay
// within a given distance of them.
//
// Both go forward greedily: from where the last piece ended, the longest piece
// that fits is found by doubling and halving. A closed line is begun at its
// sharpest corner. Corners that turn by more than [Corner] are kept exactly.
package simplify

import (
	"math"

	"slingloft/outline/geom"
)

// Corner is the turn between two chords from which on the point between them is
// kept: 15°, more than between chords of any curve drawn to a hundredth.
const Corner = 15 * math.Pi / 180

// Piece is a chord or an arc from where the piece before ended. Bulge is the
// tangent of a quarter of the angle that the arc turns through, positive to the
// left, 0 for a chord.
type Piece struct {
	To    geom.Point
	Bulge float64
}

// Chords returns the line with as few of its points as keep every other within
// tolerance mm of it. A closed line may begin at another point.
func Chords(line geom.Polyline, closed bool, tolerance float64) geom.Polyline {
	f := newFitter(line, closed, tolerance)
	out := geom.Polyline{f.pts[0]}
	for at := 0; at < len(f.pts)-1; {
		at = f.farthest(at, f.chordFits)
		out = append(out, f.pts[at])
	}
	return unrepeated(out, closed)
}

// Arcs returns the start of the line and the pieces that follow it within
// tolerance mm. The last piece of a closed line ends at the start.
func Arcs(line geom.Polyline, closed bool, tolerance float64) (geom.Point, []Piece) {
	f := newFitter(line, closed, tolerance)
	var out []Piece
	for at := 0; at < len(f.pts)-1; {
		chord := f.farthest(at, f.chordFits)
		arc := f.farthest(at, f.arcFits)
		if arc <= chord {
			out = append(out, Piece{To: f.pts[chord]})
			at = chord
			continue
		}
		bulge, _ := f.bulge(at, arc)
		out = append(out, Piece{f.pts[arc], bulge})
		at = arc
	}
	return f.pts[0], out
}

func unrepeated(line geom.Polyline, closed bool) geom.Polyline {
	if closed && len(line) > 3 {
		return line[:len(line)-1]
	}
	return line
}

// fitter holds a line, that of a closed one with its start repeated at the end.
type fitter struct {
	pts       geom.Polyline
	corner    []bool
	tolerance float64
}

func newFitter(line geom.Polyline, closed bool, tolerance float64) fitter {
	f := fitter{pts: line, tolerance: tolerance}
	n := len(line)
	if closed {
		sharpest, sharp := 0, -1.0
		for i, p := range line {
			if t := turn(line[(i+n-1)%n], p, line[(i+1)%n]); t > sharp {
				sharpest, sharp = i, t
			}
		}
		f.pts = append(append(geom.Polyline(nil), line[sharpest:]...), line[:sharpest+1]...)
	}
	f.corner = make([]bool, len(f.pts))
	for i := 1; i+1 < len(f.pts); i++ {
		f.corner[i] = turn(f.pts[i-1], f.pts[i], f.pts[i+1]) > Corner
	}
	return f
}

// turn returns by how much the way turns at b, in radians, from 0 to π.
func turn(a, b, c geom.Point) float64 {
	return math.Abs(b.Minus(a).AngleTo(c.Minus(b)))
}

// farthest returns the index of the farthest point to which a piece from point at
// fits, at least the next point.
func (f fitter) farthest(at int, fits func(i, j int) bool) int {
	last := len(f.pts) - 1
	for i := at + 1; i < last; i++ {
		if f.corner[i] {
			last = i
			break
		}
	}
	good, reach := at+1, 2
	for at+reach <= last && fits(at, at+reach) {
		good = at + reach
		reach *= 2
	}
	bad := min(at+reach, last+1)
	for bad-good > 1 {
		middle := (good + bad) / 2
		if fits(at, middle) {
			good = middle
		} else {
			bad = middle
		}
	}
	return good
}

// chordFits reports whether the points between i and j lie within the tolerance of
// the chord.
func (f fitter) chordFits(i, j int) bool {
	chord := geom.NewArc(geom.Polyline{f.pts[i], f.pts[j]})
	for _, p := range f.pts[i+1 : j] {
		if _, d := chord.Nearest(p); d > f.tolerance {
			return false
		}
	}
	return true
}

// bulge returns the bulge of the arc from point i to point j through the point
// half-way between them; ok is false where they are in line or turn too far.
func (f fitter) bulge(i, j int) (bulge float64, ok bool) {
	a, m, b := f.pts[i], f.pts[(i+j)/2], f.pts[j]
	chord := b.Minus(a)
	// The angle that the chord subtends at m is half of what the arc leaves of the
	// full turn.
	subtended := a.Minus(m).AngleTo(b.Minus(m))
	if chord.Len() == 0 || subtended == 0 || math.Abs(subtended) < math.Pi/2 {
		return 0, false
	}
	bulge = math.Tan((math.Pi - math.Abs(subtended)) / 2)
	if subtended > 0 {
		bulge = -bulge
	}
	return bulge, math.Abs(bulge) > 1e-9
}

// arcFits reports whether the arc between points i and j keeps within the
// tolerance of all points between them and of the middles of their chords.
func (f fitter) arcFits(i, j int) bool {
	bulge, ok := f.bulge(i, j)
	if !ok {
		return false
	}
	centre, radius := Circle(f.pts[i], f.pts[j], bulge)
	for k := i; k < j; k++ {
		middle := f.pts[k].Towards(f.pts[k+1], 0.5)
		if math.Abs(centre.Dist(f.pts[k])-radius) > f.tolerance || math.Abs(centre.Dist(middle)-radius) > f.tolerance {
			return false
		}
	}
	return true
}

// Circle returns the centre and the radius of the arc from a to b with the given
// bulge, not 0.
func Circle(a, b geom.Point, bulge float64) (geom.Point, float64) {
	// From the middle of the chord the centre lies to the left by half the chord
	// over the tangent of half the turn, (1 − bulge²)/(2 bulge).
	centre := a.Towards(b, 0.5).Plus(b.Minus(a).Left().Times((1 - float64(bulge*bulge)) / (4 * bulge)))
	return centre, centre.Dist(a)
}
