// Package walk walks seams, both edges from notch to notch, and draws notches along an
// edge.
//
// Lengths are mm, angles rad.
package walk

import (
	"slingloft/outline/design"
	"slingloft/outline/flat"
	"slingloft/outline/geom"
	"slingloft/outline/piece"
)

// Pair is what a walk needs of a seam.
type Pair struct {
	Seam    piece.Seam // what it joins
	Edges   [2]flat.Edge
	Notches []piece.Notch
	// Reach is the distance of a straight strip's fold from the seam, 0 where there is
	// none.
	Reach float64
}

// Seam measures both edges of a seam from notch to notch, with the tolerance that the
// design allows.
func Seam(p Pair, allowed design.Seam) piece.Seam {
	s := p.Seam
	for i, e := range p.Edges {
		s.Flat[i], s.Hung[i] = e.FlatLength(), e.HungLength()
	}
	s.Difference = s.Flat[0] - s.Flat[1]
	s.Remains = s.Hung[0] - s.Hung[1]
	s.Ease = s.Difference - s.Remains
	s.EasePer100 = 100 * s.Ease / s.Hung[0]
	s.Tolerance = max(allowed.Tolerance, allowed.ToleranceRatio*s.Hung[0])
	last, from := 0.0, ""
	add := func(at float64, name string) {
		part := piece.SeamPart{From: from, To: name}
		for i, e := range p.Edges {
			part.Flat[i] = e.FlatOf(at) - e.FlatOf(last)
		}
		part.Ease = part.Flat[0] - part.Flat[1]
		if p.Reach > 0 {
			e := p.Edges[0]
			part.Fold = p.Reach * turning(e.Flat, e.FlatOf(last), e.FlatOf(at))
		}
		s.Parts = append(s.Parts, part)
		last, from = at, name
	}
	for _, n := range p.Notches {
		add(n.At, n.Name)
	}
	add(s.Hung[0], "")
	return s
}

// turning returns the summed turning of a curve between two running lengths,
// counter-clockwise positive, rad.
func turning(l geom.Polyline, from, to float64) float64 {
	part := geom.NewArc(l).Between(from, to)
	sum := 0.0
	for i := 1; i+1 < len(part); i++ {
		a, b := part[i].Minus(part[i-1]), part[i+1].Minus(part[i])
		if a.Len() > 1e-9 && b.Len() > 1e-9 {
			sum += a.AngleTo(b)
		}
	}
	return sum
}

// Flat returns an edge that hangs as long as it lies flat.
func Flat(l geom.Polyline) flat.Edge {
	a := geom.NewArc(l)
	out := flat.Edge{Flat: l, Hung: make([]float64, len(l))}
	for i := range l {
		out.Hung[i] = a.Vertex(i)
	}
	return out
}
