package flat

import (
	"math"

	"slingloft/outline/design"
	"slingloft/outline/geom"
	"slingloft/outline/hung"
)

// Linings of bodies that are not cut to the thread net throughout.

// drawnBeside returns a lining, cut to its net, with the sides of its bay beside those of the
// body, which are drawn between the bars' tips: as far from where a balanced side would lie.
func (b Body) drawnBeside(s *hung.Shape, leaning bool, c design.Curve) (Body, error) {
	net, err := layNet(s, cellAcross, leaning)
	if err != nil {
		return b, err
	}
	drawn, err := net.Drawn(s, c)
	if err != nil {
		return b, err
	}
	bay := func(b *Body) Edge {
		from, to := b.TipIndex(hung.Head), b.TipIndex(hung.Foot)
		return Edge{b.Side.Flat[from : to+1], b.Side.Hung[from : to+1]}
	}
	was, is, own := bay(&net), bay(&drawn), bay(&b)
	long := is.Hung[len(is.Hung)-1] - is.Hung[0]
	part := long / (own.Hung[len(own.Hung)-1] - own.Hung[0])
	middle := Edge{make(geom.Polyline, len(own.Flat)), make([]float64, len(own.Flat))}
	for i, p := range own.Flat {
		off := heightAt(is.Flat, p.X) - heightAt(was.Flat, p.X)
		if i == 0 || i == len(own.Flat)-1 {
			off = 0
		}
		middle.Flat[i] = geom.Pt(p.X, p.Y+off)
		middle.Hung[i] = (own.Hung[i] - own.Hung[0]) * part
	}
	from, to := b.TipIndex(hung.Head), b.TipIndex(hung.Foot)
	head, foot := Edge{b.Side.Flat[:from+1], b.Side.Hung[:from+1]}, Edge{b.Side.Flat[to:], b.Side.Hung[to:]}
	b.Tips[hung.Foot] = b.Tips[hung.Head] + middle.HungLength()
	b.Side = head.Then(middle).Then(foot)
	return b, nil
}

// straight returns the lining of a body with straight tails. In the bay each side lies
// outside of the body's by half of what the lining is longer across. In the tails its edge is
// straight and as long as the body's, and so is its end, which runs straight from the centre
// line to the corner, a little off square: the centre line is longer by its slope.
func (l Lining) straight(s *hung.Shape) (Body, error) {
	body, err := layStraight(s)
	if err != nil {
		return Body{}, err
	}
	b := Body{Cut: design.Straight, Tips: body.Tips}
	scale := 1 / s.Problem.Bed.Lift.Cos()
	from, to := body.TipIndex(hung.Head), body.TipIndex(hung.Foot)
	middle := Edge{}
	for i := from; i <= to; i++ {
		p := body.Side.Flat[i]
		wider, err := l.wider(s, p.X/scale)
		if err != nil {
			return b, err
		}
		middle.Flat = append(middle.Flat, geom.Pt(p.X, p.Y+wider/2))
		middle.Hung = append(middle.Hung, body.Side.Hung[i]-body.Side.Hung[from])
	}
	tips := [2]geom.Point{middle.Flat[0], middle.Flat[len(middle.Flat)-1]}
	var tails [2]Edge
	for e, tip := range tips {
		e := hung.End(e)
		end := geom.Pt(tip.X+e.Sign()*l.centreLine(s, e), 0)
		side, across := body.Corner(e).Dist(body.BarCorner(e)), body.Ends[e].FlatLength()
		corner, ok := meeting(tip, side, end, across)
		if !ok {
			return b, errNoCorner
		}
		b.Bars[e] = geom.Polyline{geom.Pt(tip.X, 0), tip}
		b.Ends[e] = Edge{geom.Polyline{end, corner}, []float64{0, across}}
		tails[e] = Edge{geom.Polyline{tip, corner}, []float64{0, side}}
	}
	b.Side = tails[hung.Head].Reversed().Then(middle).Then(tails[hung.Foot])
	return b, nil
}

// errNoCorner is met where a straight tail's edge does not reach the lining's end.
const errNoCorner = design.Broken(design.PadOverSection)

// wider returns by how much a lining is longer across than the body at a station.
func (l Lining) wider(s *hung.Shape, x float64) (float64, error) {
	section := s.At(x).Section
	over, err := l.Over(section)
	if err != nil {
		return 0, err
	}
	e, end := hung.Foot, l.Foot
	if x < 0 {
		e, end = hung.Head, l.Head
	}
	inside := e.Sign() * (s.Ends[e].TailX - x)
	return (over.Girth() - section.Girth()) * l.part(e.Sign()*x, e.Sign()*end, inside), nil
}

// centreLine returns the length of a lining's centre line from an end's bar to its end.
func (l Lining) centreLine(s *hung.Shape, e hung.End) float64 {
	bar, out := s.Problem.Bed.Span/2, e.Sign()*s.Ends[e].TailX
	pad := e.Sign() * l.Foot
	if e == hung.Head {
		pad = e.Sign() * l.Head
	}
	level := max(pad-bar, 0) // over the pad
	slope := math.Hypot(out-pad, l.Out) / (out - pad)
	return (level + (out-bar-level)*slope) / s.Problem.Bed.Lift.Cos()
}

// meeting returns the point at a distance from each of two others, the one with the larger
// y, and whether there is one.
func meeting(a geom.Point, fromA float64, b geom.Point, fromB float64) (geom.Point, bool) {
	way := b.Minus(a)
	apart := way.Len()
	along := (float64(fromA*fromA) - float64(fromB*fromB) + float64(apart*apart)) / (2 * apart)
	aside := float64(fromA*fromA) - float64(along*along)
	if !(aside >= 0) || apart == 0 {
		return geom.Point{}, false
	}
	u := way.Times(1 / apart)
	foot := a.Plus(u.Times(along))
	off := u.Left().Times(math.Sqrt(aside))
	if off.Y < 0 {
		off = off.Times(-1)
	}
	return foot.Plus(off), true
}
