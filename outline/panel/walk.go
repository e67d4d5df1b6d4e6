package panel

import (
	"slingloft/outline/flat"
	"slingloft/outline/piece"
)

// sewnPair is what a walk needs of a seam.
type sewnPair struct {
	seam    piece.Seam // what it joins
	edges   [2]flat.Edge
	notches []piece.Notch
}

// walk measures both edges of a seam from notch to notch. reach is the distance
// of a straight strip's fold from the seam, 0 where there is none.
func (m *pattern) walk(p sewnPair, reach float64) piece.Seam {
	s := p.seam
	for i, e := range p.edges {
		s.Flat[i], s.Hung[i] = e.FlatLength(), e.HungLength()
	}
	s.Difference = s.Flat[0] - s.Flat[1]
	s.Remains = s.Hung[0] - s.Hung[1]
	s.Ease = s.Difference - s.Remains
	s.EasePer100 = 100 * s.Ease / s.Hung[0]
	s.Tolerance = max(m.d.Seam.Tolerance, m.d.Seam.ToleranceRatio*s.Hung[0])
	last, from := 0.0, ""
	add := func(at float64, name string) {
		part := piece.SeamPart{From: from, To: name}
		for i, e := range p.edges {
			part.Flat[i] = e.FlatOf(at) - e.FlatOf(last)
		}
		part.Ease = part.Flat[0] - part.Flat[1]
		if reach > 0 {
			e := p.edges[0]
			part.Fold = reach * turning(e.Flat, e.FlatOf(last), e.FlatOf(at))
		}
		s.Parts = append(s.Parts, part)
		last, from = at, name
	}
	for _, n := range p.notches {
		add(n.At, n.Name)
	}
	add(s.Hung[0], "")
	return s
}
