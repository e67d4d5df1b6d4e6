package dxf

import (
	"math"
	"slices"

	"slingloft/export"
	"slingloft/outline/geom"
)

// ellipse returns the points of an ellipse or of a part of one, and whether it is
// whole. Its points are the world's own; seen from behind it runs the other way.
func (r *raw) ellipse() (geom.Polyline, bool) {
	v := r.value
	centre, major := geom.Pt(v[10], v[20]), geom.Pt(v[11], v[21])
	minor := major.Left().Times(v[40])
	if r.mirrored {
		minor = minor.Times(-1)
	}
	from, to := v[41], or(v, 42, 2*math.Pi)
	turn := math.Mod(to-from, 2*math.Pi)
	if turn <= 1e-9 {
		turn += 2 * math.Pi
	}
	// A chord over a step of the parameter is off by less than over the same step on
	// a circle with the longer radius.
	unit := geom.ArcPoints(geom.Point{}, geom.Direction(from), turn, r.tolerance/math.Max(math.Max(major.Len(), minor.Len()), r.tolerance))
	oval := geom.Affine{A: major.X, B: major.Y, C: minor.X, D: minor.Y, E: centre.X, F: centre.Y}
	out := make(geom.Polyline, len(unit))
	for i, p := range unit {
		out[i] = oval.Apply(p)
	}
	whole := turn > 2*math.Pi-1e-9
	if whole {
		out = out[:len(out)-1]
	}
	return out, whole
}

// spline is a rational B-spline as a file gives it.
type spline struct {
	degree   int
	knots    []float64
	weights  []float64
	controls geom.Polyline
	fit      geom.Polyline // points on the curve, from which it follows where it has no control points
	ends     [2]geom.Point // its directions at both ends, where those points come with them
}

// maxDegree is the highest degree that is read; CAD programs write 3.
const maxDegree = 11

// number takes a group that is a number.
func (s *spline) number(code int, v float64) error {
	if len(s.knots)+len(s.controls)+len(s.weights)+len(s.fit) > export.MaxPoints {
		return export.Refuse(export.TooManyPoints)
	}
	switch n := len(s.controls); {
	case code == 40:
		s.knots = append(s.knots, v)
	case code == 41:
		s.weights = append(s.weights, v)
	case code == 10:
		s.controls = append(s.controls, geom.Pt(v, 0))
	case code == 20 && n > 0:
		s.controls[n-1].Y = v
	case code == 11:
		s.fit = append(s.fit, geom.Pt(v, 0))
	case code == 21 && len(s.fit) > 0:
		s.fit[len(s.fit)-1].Y = v
	case code == 12 || code == 13:
		s.ends[code-12].X = v
	case code == 22 || code == 23:
		s.ends[code-22].Y = v
	}
	return nil
}

// check reports what makes the spline no curve.
func (s *spline) check() error {
	n, k := len(s.controls), s.degree
	switch {
	case n == 0:
		return export.Refuse(export.SplineEmpty)
	case k < 1 || k > maxDegree:
		return export.Refuse(export.SplineDegree, k, maxDegree)
	case n <= k || len(s.knots) != n+k+1:
		return export.Refuse(export.SplineKnots, k, n, len(s.knots))
	case len(s.weights) != 0 && len(s.weights) != n:
		return export.Refuse(export.SplineWeights, len(s.weights), n)
	case !slices.IsSorted(s.knots) || !(s.knots[n] > s.knots[k]):
		return export.Refuse(export.SplineFalls)
	}
	for _, w := range s.weights {
		if !(w > 0) {
			return export.Refuse(export.SplineWeight, w)
		}
	}
	return nil
}

// points returns the curve as chords within the tolerance of it, from knot to knot.
func (s *spline) points(tolerance float64, closed bool) (geom.Polyline, error) {
	if len(s.controls) == 0 && len(s.fit) > 0 {
		return s.fitted(tolerance, closed)
	}
	if err := s.check(); err != nil {
		return nil, err
	}
	out := geom.Polyline{s.at(s.knots[s.degree], s.degree)}
	for i := s.degree; i < len(s.controls); i++ {
		if a, b := s.knots[i], s.knots[i+1]; b > a {
			out = s.chords(out, i, span{a, b, out[len(out)-1], s.at(b, i)}, tolerance, 0)
		}
		if len(out) > export.MaxPoints {
			return nil, export.Refuse(export.TooManyPoints)
		}
	}
	return out, nil
}

// span is a stretch of the parameter with the points at its ends.
type span struct {
	a, b     float64
	from, to geom.Point
}

// chords adds the points of the span behind its first. A span is halved, at least
// twice, until three points on it lie within a part of the tolerance of its chord.
func (s *spline) chords(out geom.Polyline, segment int, p span, tolerance float64, depth int) geom.Polyline {
	const fewest, most, part = 2, 14, 0.7
	middle := s.at((p.a+p.b)/2, segment)
	if depth >= fewest {
		fits := true
		for _, q := range []geom.Point{s.at(p.a+(p.b-p.a)/4, segment), middle, s.at(p.b-(p.b-p.a)/4, segment)} {
			fits = fits && q.DistToSegment(p.from, p.to) <= part*tolerance
		}
		if fits || depth >= most {
			return append(out, p.to)
		}
	}
	half := (p.a + p.b) / 2
	out = s.chords(out, segment, span{p.a, half, p.from, middle}, tolerance, depth+1)
	return s.chords(out, segment, span{half, p.b, middle, p.to}, tolerance, depth+1)
}

// at returns the point at parameter t in the knot span of the given number, by de
// Boor's algorithm (Piegl and Tiller, The NURBS Book, 1997, chapter 4) on
// homogeneous coordinates.
func (s *spline) at(t float64, segment int) geom.Point {
	k := s.degree
	var x, y, w [maxDegree + 1]float64
	for j := range k + 1 {
		i := segment - k + j
		w[j] = 1
		if len(s.weights) > 0 {
			w[j] = s.weights[i]
		}
		x[j], y[j] = s.controls[i].X*w[j], s.controls[i].Y*w[j]
	}
	for level := 1; level <= k; level++ {
		for j := k; j >= level; j-- {
			low, high := s.knots[segment-k+j], s.knots[segment+1+j-level]
			f := 0.0
			if high > low {
				f = (t - low) / (high - low)
			}
			x[j] = x[j-1] + float64(f*(x[j]-x[j-1]))
			y[j] = y[j-1] + float64(f*(y[j]-y[j-1]))
			w[j] = w[j-1] + float64(f*(w[j]-w[j-1]))
		}
	}
	return geom.Pt(x[k]/w[k], y[k]/w[k])
}
