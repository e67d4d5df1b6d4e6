package flat

import (
	"errors"
	"math"

	"slingloft/outline/curve"
	"slingloft/outline/design"
	"slingloft/outline/geom"
	"slingloft/outline/hung"
)

// Level tells how far the bed departs from level with a side curve that was drawn
// rather than found.
type Level struct {
	Curve     design.Curve
	Low, High float64 // of the bottom line against the design, mm, and
	LowX      float64 // where it is lowest
	HighX     float64 // and highest, mm
	Stations  []hung.Sunk
}

// Drawn returns the body with the sides of its bay drawn as a catenary or an arc of
// the design's side depth between the bars' tips, and how the bed then hangs. The
// tails stay as they are. A balanced curve comes back unchanged.
func (b Body) Drawn(s *hung.Shape, c design.Curve) (Body, error) {
	if c == design.Balanced {
		return b, nil
	}
	from, to := b.TipIndex(hung.Head), b.TipIndex(hung.Foot)
	bay, err := drawnBay(b.Side.Flat[from], b.Side.Flat[to], s.Depth, c)
	if err != nil {
		return b, &hung.Impossible{Key: design.KeyBedSideDepth, Found: design.FindingOf(err)}
	}
	hang := make([]float64, len(bay))
	for i := 1; i < len(bay); i++ {
		hang[i] = hang[i-1] + bay[i].Dist(bay[i-1])
	}
	middle := Edge{bay, hang}
	head := Edge{b.Side.Flat[:from+1], b.Side.Hung[:from+1]}
	foot := Edge{b.Side.Flat[to:], b.Side.Hung[to:]}
	b.Tips[hung.Foot] = b.Tips[hung.Head] + middle.HungLength()
	b.Side = head.Then(middle).Then(foot)
	b.Level, err = levelOf(s, bay, c)
	if err != nil {
		return b, &hung.Impossible{Key: design.KeyBedSideCurve, Found: design.Found(design.DrawnHangsNot), Cause: err}
	}
	return b, nil
}

// drawnBay returns the curve between two tips, as deep as the side depth from
// their chord, towards the centre line.
func drawnBay(a, b geom.Point, depth float64, c design.Curve) (geom.Polyline, error) {
	chord := a.Dist(b)
	var k curve.Curve
	var err error
	if c == design.Arc {
		k, err = curve.NewArc(chord, depth)
	} else {
		k, err = curve.NewCatenary(chord, depth)
	}
	var none *curve.None
	switch {
	case errors.As(err, &none) && none.Most > 0:
		return nil, &design.Breach{Found: design.Found(design.ArcTooDeep, none.Chord, none.Sag, none.Most), Cause: err}
	case errors.As(err, &none):
		return nil, &design.Breach{Found: design.Found(design.NoCurveOver, none.Chord, none.Sag), Cause: err}
	case err != nil:
		return nil, err
	}
	const step = 7.0 // mm: chords stay within 0.01 mm of any curve of over 600 mm radius
	n := int(math.Ceil(chord / step))
	in := b.Minus(a).Unit().Left().Times(-1)
	out := make(geom.Polyline, n+1)
	for i := range out {
		t := float64(i) / float64(n)
		out[i] = a.Towards(b, t).Plus(in.Times(k.Depth((t - 0.5) * chord)))
	}
	out[0], out[n] = a, b
	return out, nil
}

// levelOf hangs the bay with the girths of a drawn side. Over a plane wall the
// cord is as long as the flat edge.
func levelOf(s *hung.Shape, bay geom.Polyline, c design.Curve) (Level, error) {
	flat := s.Problem.Bed.Lift.Cos()
	girth := func(x float64) float64 { return 2 * heightAt(bay, x/flat) }
	const stations = 60
	got, err := s.WithGirth(girth, bay.Length(), stations)
	if err != nil {
		return Level{}, err
	}
	l := Level{Curve: c, Stations: got}
	for _, q := range got {
		if q.Off < l.Low {
			l.Low, l.LowX = q.Off, q.X
		}
		if q.Off > l.High {
			l.High, l.HighX = q.Off, q.X
		}
	}
	return l, nil
}

// heightAt returns v on a line at u, which rises along it.
func heightAt(l geom.Polyline, u float64) float64 {
	lo, hi := 0, len(l)-1
	for hi-lo > 1 {
		if mid := (lo + hi) / 2; l[mid].X <= u {
			lo = mid
		} else {
			hi = mid
		}
	}
	return l[lo].Towards(l[hi], (u-l[lo].X)/(l[hi].X-l[lo].X)).Y
}
