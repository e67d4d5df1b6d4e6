package tarp

import (
	"math"

	"slingloft/outline/bed"
	"slingloft/outline/geom"
)

// bound is what a stretch of a panel's net line is.
type bound int

const (
	atRidge bound = iota
	atSide        // a side edge, hemmed
	atEnd         // an end edge, hemmed
	atJoin
)

// hemmed reports whether the stretch is an edge of the sheet.
func (b bound) hemmed() bool { return b == atSide || b == atEnd }

// stretch is a part of a panel's net line between two corners.
type stretch struct {
	bound bound
	join  int   // of atJoin: its number, from 1
	edge  *Edge // that it is all or a part of; nil at a join
	line  geom.Polyline
}

// panel is what is cut as one piece, in the sheet's flat coordinates: x along the ridge
// from its middle, the foot at x > 0, y across, left positive; counter-clockwise.
type panel struct {
	id      string
	half    bed.Side // of a half, or a part of one
	number  int      // from 1, where there are several of them
	across  bool     // its warp runs across the ridge
	whole   bool     // it is the sheet
	bounds  []stretch
	covers  []seam // whose fell this panel's allowance covers
	covered []seam // whose allowance is trimmed
}

// seam is a join, or the ridge, by its number; 0: the ridge.
type seam int

// net returns the panel's net line.
func (p panel) net() geom.Ring { return geom.RingOf(p.lines()) }

// lines returns its stretches.
func (p panel) lines() []geom.Polyline {
	out := make([]geom.Polyline, len(p.bounds))
	for i, b := range p.bounds {
		out[i] = b.line
	}
	return out
}

// at returns the stretch along a seam, from the head or the right on.
func (p panel) at(s seam) (line geom.Polyline, left bool) {
	for _, b := range p.bounds {
		if s == 0 && b.bound == atRidge || s > 0 && b.bound == atJoin && b.join == int(s) {
			first, last := b.line[0], b.line[len(b.line)-1]
			if d := last.Minus(first); d.X+d.Y > 0 {
				return b.line, true
			}
			return b.line.Reversed(), false
		}
	}
	return nil, false
}

// halfOf returns the half of a sheet on a side, each half that of the other turned about.
func (o flatOutline) halfOf(s bed.Side) []stretch {
	edges := []*Edge{&o.ridge, &o.foot, &o.side, &o.head}
	bounds := []bound{atRidge, atEnd, atSide, atEnd}
	out := make([]stretch, len(edges))
	for i, e := range edges {
		if s == bed.Right {
			e = e.turned()
		}
		out[i] = stretch{bound: bounds[i], edge: e, line: e.Line()}
	}
	return out
}

// turned returns the edge turned by half a turn about the sheet's middle.
func (e Edge) turned() *Edge {
	e.From, e.To, e.along = e.From.Times(-1), e.To.Times(-1), e.along.Times(-1)
	return &e
}

// all returns the edges of the whole sheet, which has a straight ridge.
func (o flatOutline) all() []stretch {
	return append(o.halfOf(bed.Left)[1:], o.halfOf(bed.Right)[1:]...)
}

// cutAt returns what of an outline lies beyond a straight line, at greater or smaller
// values of a coordinate, with a join along the line. ok is false where the line does not
// cross the outline two times.
func cutAt(all []stretch, of func(geom.Point) float64, at, sign float64, join int) (out []stretch, ok bool) {
	in := func(p geom.Point) float64 { return sign * (of(p) - at) }
	joins := 0
	add := func(s stretch) {
		if n := len(out); n > 0 {
			last := out[n-1].line
			if from, to := last[len(last)-1], s.line[0]; from.Dist(to) > noise {
				out = append(out, stretch{bound: atJoin, join: join, line: geom.Polyline{from, to}})
				joins++
			}
		}
		out = append(out, s)
	}
	for _, s := range all {
		for _, run := range runsOf(s.line, in) {
			part := s
			part.line = run
			add(part)
		}
	}
	if len(out) == 0 {
		return nil, false
	}
	add(out[0]) // closes it
	out = out[:len(out)-1]
	return out, joins == 1
}

// noise is the noise of floats in a place, mm.
const noise = 1e-9

// runsOf returns the stretches of a line in which a value is not negative, of a length.
func runsOf(l geom.Polyline, in func(geom.Point) float64) []geom.Polyline {
	var out []geom.Polyline
	var run geom.Polyline
	end := func() {
		if len(run) > 1 && run.Length() > 1e-6 {
			out = append(out, run)
		}
		run = nil
	}
	for i, p := range l {
		v := in(p)
		if i > 0 {
			if was := in(l[i-1]); (was < 0) != (v < 0) {
				run = append(run, l[i-1].Towards(p, was/(was-v)))
				if v < 0 {
					end()
				}
			}
		}
		if v >= 0 {
			run = append(run, p)
		}
	}
	end()
	return out
}

// parted returns an outline in panels between straight lines, from the least value of the
// coordinate on, their joins numbered on from first.
func parted(all []stretch, of func(geom.Point) float64, lines []float64, first int) ([][]stretch, bool) {
	var out [][]stretch
	for i := range len(lines) + 1 {
		part, ok := all, true
		if i > 0 {
			part, ok = cutAt(part, of, lines[i-1], 1, first+i-1)
		}
		if ok && i < len(lines) {
			part, ok = cutAt(part, of, lines[i], -1, first+i)
		}
		if !ok {
			return nil, false
		}
		out = append(out, part)
	}
	return out, true
}

// evenly returns the lines that part what is cut from lo to hi in n panels, equally wide
// with an allowance on both sides of every line.
func evenly(lo, hi, allowance float64, n int) []float64 {
	wide := (hi - lo + 2*allowance*float64(n-1)) / float64(n)
	var out []float64
	at := lo
	for range n - 1 {
		at += wide - allowance
		out = append(out, at)
		at -= allowance
	}
	return out
}

// panelsFor returns in how many panels what is so wide with its allowances comes out of a
// roll, as of evenly.
func panelsFor(wide, allowance, usable float64) int {
	if usable <= 2*allowance {
		return math.MaxInt
	}
	return max(1, int(math.Ceil((wide-2*allowance)/(usable-2*allowance)-noise)))
}
