package insectnet

import (
	"slices"

	"slingloft/outline/bed"
	"slingloft/outline/geom"
	"slingloft/outline/ruled"
)

// bound is what a stretch of a side panel's net line is.
type bound int

const (
	atHeadTail bound = iota // lower edge along a tail
	atBay
	atFootTail
	atFootEnd
	atRidge
	atHeadEnd
)

// low reports whether the stretch is of the lower edge.
func (b bound) low() bool { return b <= atFootTail }

// stretch is a part of a panel's net line between two corners.
type stretch struct {
	bound bound
	line  geom.Polyline
}

// side is a side panel as it lies flat, the straight line between the ends of its ridge
// level, its lower edge below; counter-clockwise. As one sees it from outside the right
// panel has the head to the left, the left one to the right.
type side []stretch

// sideOf returns the flat panel of a side.
func sideOf(s Space, of bed.Side) side {
	f := s.Side.Flat(ruled.Midway)
	n := len(f.Near) - 1
	turn := geom.Motion{Turn: -f.Far[n].Minus(f.Far[0]).Angle()}
	near, far := f.Near.Moved(turn), f.Far.Moved(turn)
	out := side{
		{atHeadTail, near[:s.Tips[0]+1]}, {atBay, near[s.Tips[0] : s.Tips[1]+1]}, {atFootTail, near[s.Tips[1]:]},
		{atFootEnd, geom.Polyline{near[n], far[n]}}, {atRidge, far.Reversed()}, {atHeadEnd, geom.Polyline{far[0], near[0]}},
	}
	if of == bed.Left { // y to −y, then half a turn
		out = out.moved(geom.Motion{Mirror: true, Turn: -geom.Pt(-1, 0).Angle()})
		slices.Reverse(out)
		for i := range out {
			out[i].line = out[i].line.Reversed()
		}
	}
	box := geom.RingOf(out.lines()).Bounds()
	return out.moved(geom.Motion{Shift: box.Min.Times(-1)})
}

// moved returns the panel with a motion applied.
func (p side) moved(m geom.Motion) side {
	out := slices.Clone(p)
	for i := range out {
		out[i].line = out[i].line.Moved(m)
	}
	return out
}

// lines returns the stretches' lines.
func (p side) lines() []geom.Polyline {
	out := make([]geom.Polyline, len(p))
	for i, s := range p {
		out[i] = s.line
	}
	return out
}

// at returns a stretch, from the head to the foot, from the lower edge to the ridge, and
// whether the panel lies to its left so.
func (p side) at(b bound) (line geom.Polyline, left bool) {
	of := p[slices.IndexFunc(p, func(s stretch) bool { return s.bound == b })].line
	// On the right panel the lower edge and the foot's end run so, on the left one the
	// ridge and the head's end.
	right := p.right()
	if (b.low() || b == atFootEnd) == right {
		return of, true
	}
	return of.Reversed(), false
}

// right reports whether it is the right panel.
func (p side) right() bool { return p[0].bound == atHeadTail }

// lower returns the whole lower edge from the head to the foot, and whether the panel lies
// to its left.
func (p side) lower() (geom.Polyline, bool) {
	var out geom.Polyline
	for _, b := range []bound{atHeadTail, atBay, atFootTail} {
		line, _ := p.at(b)
		if len(out) > 0 {
			line = line[1:]
		}
		out = append(out, line...)
	}
	return out, p.right()
}
