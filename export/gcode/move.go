package gcode

import (
	"math"

	"slingloft/outline/geom"
)

// move is one step along a path.
type move struct {
	to     geom.Point
	centre geom.Point // of an arc
	turn   int        // 0 for a line, 1 for an arc to the left, −1 to the right
	lifted bool       // over a tab
}

// lines returns the moves along a polyline behind its first point.
func lines(pts geom.Polyline) []move {
	out := make([]move, 0, len(pts))
	for _, p := range pts[1:] {
		out = append(out, move{to: p})
	}
	return out
}

// tabbed returns the moves along a closed run of points (the start repeated at the
// end) with tabs evenly spread on it, the first half a space behind the start. The
// gap is wider than the tab by the kerf, which eats half of itself off either end.
// On a run too short for all of them there are fewer.
func (s Settings) tabbed(pts geom.Polyline) []move {
	arc := geom.NewArc(pts)
	whole, gap := arc.Length(), s.TabWidth+s.Kerf
	n := min(s.Tabs, int(whole/(3*gap)))
	if n == 0 {
		return lines(pts)
	}
	var out []move
	at := 0.0
	for k := range n {
		middle := (float64(k) + 0.5) * whole / float64(n)
		out = append(out, lines(arc.Between(at, middle-gap/2))...)
		for _, m := range lines(arc.Between(middle-gap/2, middle+gap/2)) {
			m.lifted = true
			out = append(out, m)
		}
		at = middle + gap/2
	}
	return append(out, lines(arc.Between(at, whole))...)
}

// trailed returns where a knife's holder begins and the moves that it makes so
// that the tip, which trails behind it, follows the points. Ahead of each
// corner's end the holder goes on by the trail, and then around the corner in an
// arc while the tip stays in it; at turns below the swivel angle it cuts across.
func (s Settings) trailed(pts geom.Polyline) (geom.Point, []move) {
	pts = distinct(pts)
	ahead := func(i int) geom.Point { // direction of the segment behind point i
		return pts[i+1].Minus(pts[i]).Unit().Times(s.Trail)
	}
	if len(pts) < 2 {
		return pts[0], nil
	}
	swivel := s.swivel()
	start := pts[0].Plus(ahead(0))
	var out []move
	for i := 1; i < len(pts); i++ {
		out = append(out, move{to: pts[i].Plus(ahead(i - 1))})
		if i+1 == len(pts) {
			break
		}
		before, after := ahead(i-1), ahead(i)
		turn := before.AngleTo(after)
		if math.Abs(turn) < swivel || s.Trail == 0 {
			continue // the next move begins here and ends on its own line
		}
		m := move{to: pts[i].Plus(after), centre: pts[i], turn: 1}
		if turn < 0 {
			m.turn = -1
		}
		out = append(out, m)
	}
	return start, out
}

// tipOff is how far a knife's tip may stray at a corner at which it is not turned
// first, mm: own choice, a tenth of what a hand cuts true.
const tipOff = 0.05

// swivel returns the least turn at a corner for which the knife is turned first. Past
// a corner of turn a the holder begins trail · sin a beside the next line and comes
// back to it, and the tip, which is drawn after it, stays between the two.
func (s Settings) swivel() float64 {
	if s.Swivel > 0 {
		return s.Swivel
	}
	return math.Asin(math.Min(1, tipOff/math.Max(s.Trail, tipOff)))
}

// distinct returns the points without those that equal the one before.
func distinct(pts geom.Polyline) geom.Polyline {
	out := geom.Polyline{pts[0]}
	for _, p := range pts[1:] {
		if p != out[len(out)-1] {
			out = append(out, p)
		}
	}
	return out
}
