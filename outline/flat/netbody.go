package flat

import (
	"errors"
	"math"

	"slingloft/outline/design"
	"slingloft/outline/geom"
	"slingloft/outline/hung"
)

// cellAcross is the net's cell, mm. The outline's error falls with its square,
// but for the crease at a bar, and is below 0.1 mm at this size; the cost grows
// with its inverse square.
const cellAcross = 10.0

// layNet lays the body out as the pre-image, on a net of inextensible threads,
// of the cords, the bar lines and the end sections.
func layNet(s *hung.Shape, cell float64, leaning bool) (Body, error) {
	return layOver(s, cell, leaning, func(e hung.End, _ endPlane) Surface { return bedSurface(s, e) })
}

// layOver is layNet over another surface between the same cords and ends, over the
// body's parameters: at the cords and in the planes of the ends it is the body's.
func layOver(s *hung.Shape, cell float64, leaning bool, over func(hung.End, endPlane) Surface) (Body, error) {
	b := Body{Cut: design.Net, Step: cell}
	var half [2]halfBody
	for _, e := range hung.Ends() {
		plane := newEndPlane(s, e, leaning)
		h, err := weaveHalf(s, e, cell, plane, over(e, plane))
		if err != nil {
			return Body{}, &design.Breach{Found: design.Found(design.EndOf, e, design.FindingOf(err)), Cause: err}
		}
		half[e] = h
		b.Ends[e], b.Bars[e], b.Sections[e] = h.end, h.bar, h.section
		if h.shear.Angle > b.Shear.Angle {
			b.Shear = h.shear
		}
	}
	b.Side = half[hung.Head].side.Reversed().Then(half[hung.Foot].side)
	b.Tips[hung.Head] = s.Arc(half[hung.Head].cornerX, -s.Problem.Bed.Span/2)
	b.Tips[hung.Foot] = s.Arc(half[hung.Head].cornerX, s.Problem.Bed.Span/2)
	return b, nil
}

// halfBody is the part of the body on one side of mid-bay, in its own
// coordinates already turned to the body's.
type halfBody struct {
	side    Edge // from mid-bay outwards
	end     Edge // from the centre line to the corner
	bar     geom.Polyline
	section geom.Polyline
	cornerX float64 // station of the corner
	shear   Shear
}

// weave is the net over one half of the bed, with what is needed to find the
// edges on it.
type weave struct {
	s     *hung.Shape
	e     hung.End
	net   Threads
	edge  [][]float64 // how far node [i][j] lies inside the cord, along the section, mm
	plane endPlane
	barI  int // the weft thread that meets the bar on the centre line
}

// weaveHalf weaves one half of the bed and reads its outline off the net. A
// strongly sheared tail spreads beyond its girth: where the net turns out too
// narrow it is woven again, wider.
func weaveHalf(s *hung.Shape, e hung.End, cell float64, plane endPlane, over Surface) (halfBody, error) {
	var err error
	for _, wide := range []float64{1.04, 1.4, 1.9} {
		var w *weave
		if w, err = newWeave(s, e, cell, wide, over); err != nil {
			return halfBody{}, err
		}
		w.plane = plane
		var r sideLine
		if r, err = w.side(); err == nil {
			return w.cut(r)
		}
		if !errors.Is(err, ErrOpenEdge) {
			return halfBody{}, err
		}
	}
	return halfBody{}, err
}

// newWeave weaves a surface out to a little beyond the end's corner, and across by wide
// times the largest girth.
func newWeave(s *hung.Shape, e hung.End, cell, wide float64, over Surface) (*weave, error) {
	w := &weave{s: s, e: e}
	flatBay := s.Problem.Bed.Span / 2 / s.Problem.Bed.Lift.Cos()
	end := s.Ends[e]
	girth := 0.0
	for _, x := range s.Stations(40) {
		girth = max(girth, s.At(x).Section.Girth())
	}
	u := divided(nil, flatBay, cell)
	w.barI = len(u) - 1
	// Along the cord the tail is longer than along the centre line: the corner
	// lies further out than the middle of the end by up to the difference.
	beyond := 1.25*end.TailArc + 6*cell
	u = divided(u, flatBay+beyond, cell)
	v := divided(nil, girth/2*wide+6*cell, cell)
	var err error
	if w.net, err = Weave(over, u, v); err != nil {
		return nil, err
	}
	w.edge = make([][]float64, len(u))
	for i := range u {
		w.edge[i] = make([]float64, len(v))
		for j := range v {
			sec, err := s.SectionBeyond(e.Sign() * w.net.A[i][j])
			if err != nil {
				return nil, err
			}
			w.edge[i][j] = sec.Girth()/2 - w.net.B[i][j]
		}
	}
	return w, nil
}

// divided appends places up to end in even steps of at most cell.
func divided(places []float64, end, cell float64) []float64 {
	if len(places) == 0 {
		places = []float64{0}
	}
	from := places[len(places)-1]
	n := int(math.Ceil((end - from) / cell))
	for k := 1; k <= n; k++ {
		places = append(places, from+(end-from)*float64(k)/float64(n))
	}
	return places
}

// bedSurface is one half of the hung bed over the station outwards from mid-bay
// and the length along the section from the bottom line. It keeps the section of the
// last station, which the weave often asks for twice.
func bedSurface(s *hung.Shape, e hung.End) Surface {
	sign, at := e.Sign(), math.NaN()
	var sec hung.Section
	return func(a, b float64) (geom.Point3, error) {
		x := sign * a
		if x != at {
			next, err := s.SectionBeyond(x)
			if err != nil {
				return geom.Point3{}, err
			}
			sec, at = next, x
		}
		y, z := sec.Point(b)
		return geom.Pt3(a, y, z+s.Problem.Bottom(x)), nil
	}
}
