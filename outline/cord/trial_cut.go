package cord

import (
	"math"

	"slingloft/outline/design"
	"slingloft/outline/quantity"
)

// Measures of a trial splice and of cord that is made fast to be pulled: own choice.
const (
	trialHand = 100.0 // room beside a bury, and to hold an end by, mm
	trialStep = 50.0  // what a trial's lengths are rounded up to, mm
	// FastTurns are the turns round a post of [FastPost] cord diameters that make smooth
	// cord fast; two half hitches hold its end.
	FastTurns = 5
	FastPost  = 10
)

// Trial is a trial splice as proposed, of one kind of cord.
type Trial struct {
	Kind  design.Cord
	Apart float64 // marks on the host, mm
	Bury  float64 // how much is buried between them, mm
	Taper float64 // of it, mm
	After float64 // how far apart the marks are expected then, mm
	Host  float64 // length of the host, to be made fast at both ends, mm
	Own   float64 // length of the piece that is buried, mm
}

// Fast returns the cord that makes one end fast on a post, mm, by the cord's diameter.
func Fast(diameter float64) float64 {
	return (FastTurns*math.Pi*(FastPost+1) + hitchDiameters) * diameter
}

// Pulled reports whether a design's cord is pulled before it is marked and cut, so that it
// has to be made fast.
func Pulled(d design.Design) bool {
	return d.Accuracy.FirstLoad == design.PullSet && !d.Accuracy.NodesRead
}

// Trials returns a trial splice of each kind of cord whose buries settle where the bed
// hangs: legs and side cords, and hang lines that cannot be set. Lengths are rounded up to
// what is easily set, in mm or in inches.
func (s Set) Trials(inches bool) []Trial {
	step := trialStep
	if inches {
		step = 2 * quantity.Inch
	}
	up := func(mm float64) float64 { return math.Ceil(mm/step-1e-9) * step }
	var out []Trial
	add := func(k design.Cord, bury float64) {
		for _, t := range out {
			if t.Kind == k {
				return
			}
		}
		t := Trial{Kind: k, Bury: bury, Taper: s.Splicing.Taper(bury), Own: up(bury + 2*trialHand)}
		t.Apart = up(bury*(1+s.Splicing.Kappa) + 2*trialHand)
		t.After = t.Apart - s.Splicing.Kappa*bury
		t.Host = up(t.Apart + 2*Fast(k.Diameter))
		out = append(out, t)
	}
	if c, ok := s.Find(HeadLeg); ok {
		add(c.Kind, s.Splicing.EyeBury(c.Kind.Diameter))
	}
	for _, p := range []Part{SideCord, SideLoop} {
		if c, ok := s.Find(p); ok {
			add(c.Kind, s.Splicing.Bury(c.Kind.Diameter))
		}
	}
	for _, l := range s.Lines {
		if !l.Fastening.Adjustable() {
			add(l.Kind, s.Splicing.EyeBury(l.Kind.Diameter))
		}
	}
	return out
}
