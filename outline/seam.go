package outline

import (
	"math"

	"slingloft/outline/flat"
)

// Seam is a pair of edges that are sewn together, walked along their net lines.
type Seam struct {
	Name string
	// IDs are the two pieces; "body" stands for the joined panels together.
	IDs    [2]string
	Side   bool       // a side seam, which carries the bed
	Felled bool       // a join of the body, sewn twice as a flat-felled seam
	Flat   [2]float64 // lengths in the flat cloth, mm
	Hung   [2]float64 // lengths when it hangs, mm
	Parts  []SeamPart // from notch to notch

	Difference float64 // first flat length less the second, mm
	Ease       float64 // of it, planned: what the two edges change when they hang
	EasePer100 float64 // planned ease per 100 mm of seam
	Remains    float64 // what is left over, which no shape explains
	Tolerance  float64
}

// Within reports whether what remains is within the tolerance.
func (s Seam) Within() bool { return math.Abs(s.Remains) <= s.Tolerance }

// SeamPart is the stretch of a seam between two neighbouring notches.
type SeamPart struct {
	From, To string     // notch names, or "end"
	Flat     [2]float64 // mm
	Ease     float64    // flat length of the first edge less the second's
	// Fold is how much longer a straight strip is than the cord at its fold: the
	// reach times the turning of the curve. It gathers inside the channel.
	Fold float64
}

// sewnPair is what a walk needs of a seam.
type sewnPair struct {
	name    string
	ids     [2]string
	edges   [2]flat.Edge
	notches []Notch
	side    bool
}

// walk measures both edges of a seam from notch to notch. reach is the distance
// of a straight strip's fold from the seam, 0 where there is none.
func (m *maker) walk(p sewnPair, reach float64) Seam {
	s := Seam{Name: p.name, IDs: p.ids, Side: p.side}
	for i, e := range p.edges {
		s.Flat[i], s.Hung[i] = e.FlatLength(), e.HungLength()
	}
	s.Difference = s.Flat[0] - s.Flat[1]
	s.Remains = s.Hung[0] - s.Hung[1]
	s.Ease = s.Difference - s.Remains
	s.EasePer100 = 100 * s.Ease / s.Hung[0]
	s.Tolerance = max(m.d.Seam.Tolerance, m.d.Seam.ToleranceRatio*s.Hung[0])
	last, from := 0.0, "end"
	add := func(at float64, name string) {
		part := SeamPart{From: from, To: name}
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
	add(s.Hung[0], "end")
	return s
}
