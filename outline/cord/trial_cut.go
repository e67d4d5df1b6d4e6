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
	// fastTurns are the turns round a post that make smooth cord fast; two half hitches hold
	// its end.
	fastTurns = 5
	leastPost = 40 // mm
	// morePost is by how much a post may be thicker than it has to be.
	morePost = 1.25
)

// Posts returns how thick posts have to be and may be that cords up to a diameter are made
// fast to, mm: ten diameters at least, so that they do not cut in. Own choice.
func Posts(thickest float64) (least, most float64) {
	least = max(leastPost, 10*thickest)
	return least, morePost * least
}

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

// Fast returns the cord that makes one end fast on the thickest post that may be, mm, by the
// diameters of the cord and of the thickest cord: it is pulled, and marked, between posts.
func Fast(diameter, thickest float64) float64 {
	_, post := Posts(thickest)
	return fastTurns*math.Pi*(post+diameter) + hitchDiameters*diameter
}

// Thickest returns the diameter of the thickest of some cords, mm.
func Thickest(cords []Cord) float64 {
	most := 0.0
	for _, c := range cords {
		most = max(most, c.Kind.Diameter)
	}
	return most
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
		t.Host = up(t.Apart + 2*trialHand + 2*Fast(k.Diameter, Thickest(s.Cords)))
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
