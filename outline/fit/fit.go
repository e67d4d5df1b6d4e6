// Package fit proposes a bed for a person: bars, span, drop, tails and legs, each
// with the reason for it and the source of the body measure behind it.
//
// The proportions are own choice, found by solving beds for many bodies; the body
// measures are means of a survey. A maker may take all of it or change any part.
// Lengths mm. See [Propose].
package fit

import (
	"math"

	"slingloft/outline/design"
	"slingloft/outline/hung"
	"slingloft/outline/quantity"
	"slingloft/outline/rig"
)

// Person is whom the bed is for.
type Person struct {
	Stature   float64
	Mass      quantity.Kilograms
	Shoulders float64 // breadth over the shoulders; 0: estimated
	OnSide    bool    // sleeps on the side, with knees drawn up, rather than on the back
	Step      float64 // figures are rounded to whole steps; 0: 10 mm
	Longest   float64 // bar that is at hand; 0: any can be had
}

// Reason is why one key of the design has its value.
type Reason struct {
	Key    design.Key
	Value  float64 // mm
	Why    Why
	Part   float64 // of another measure, or a length in mm, where the reason names one
	Source Source
}

// Proposal is a proposed bed. Its sleeper and bed go into a design as they are.
type Proposal struct {
	Sleeper design.Sleeper
	Bed     design.Bed
	Reasons []Reason
}

// Proportions, all own choice.
const (
	spanOfStature     = 0.88 // bay
	endRoom           = 100  // cloth beyond crown and soles, mm
	barOfShoulders    = 1.95 // head bar, on the back
	barOnSide         = 2.1  // head bar, on the side
	footOfHead        = 0.9  // foot bar, on the back
	dropOfShoulders   = 0.88
	dropOnSide        = 0.82
	radiusOfShoulders = 0.3
	depthOfSpan       = 0.137 // side depth, on the back
	depthOnSide       = 0.12
	legOfBar          = 0.98
)

// Bounds of an estimated shoulder breadth as parts of the stature: the rule that it
// comes from, bodies as cylinders of like density, does not hold for very heavy ones.
const (
	narrowest = 0.22
	broadest  = 0.36
)

// Limits of what a bed is proposed for, mm and kg.
const (
	LeastStature = 1200
	MostStature  = 2300
	LeastMass    = 25
	MostMass     = 300
)

// Propose returns a bed for a person. The error is a [hung.Impossible] that names
// the measure out of range.
func Propose(p Person) (Proposal, error) {
	if err := p.check(); err != nil {
		return Proposal{}, err
	}
	b := proposer{step: p.Step}
	if b.step == 0 {
		b.step = 10
	}
	shoulders := b.shoulders(p)
	b.sleeper(p, shoulders)
	b.lengths(p)
	b.section(p, shoulders)
	return b.Proposal, nil
}

// Bounds under which cautions for children come first: own choice.
const (
	ChildMass    quantity.Kilograms = 40
	ChildStature float64            = 1400 // mm
)

// Child reports whether the person may be a child, by size.
func (p Person) Child() bool { return p.Mass < ChildMass || p.Stature < ChildStature }

func (p Person) check() error {
	for _, v := range []struct {
		key           design.Key
		value, lo, hi float64
		mayBeLeftOut  bool
	}{
		{design.KeySleeperStature, p.Stature, LeastStature, MostStature, false},
		{design.KeySleeperMass, float64(p.Mass), LeastMass, MostMass, false},
		{design.KeySleeperShoulders, p.Shoulders, 0.2 * p.Stature, 0.45 * p.Stature, true},
	} {
		switch {
		case v.mayBeLeftOut && v.value == 0:
		case !(v.value >= v.lo):
			return &hung.Impossible{Key: v.key, Found: design.Found(design.SmallForBed), Bound: design.AtLeast, Limit: v.lo}
		case v.value > v.hi:
			return &hung.Impossible{Key: v.key, Found: design.Found(design.LargeForBed), Bound: design.AtMost, Limit: v.hi}
		}
	}
	return nil
}

// proposer is a proposal in the making.
type proposer struct {
	Proposal
	step float64
}

// put rounds the value of a reason to whole steps, keeps it with the reason and returns it.
func (b *proposer) put(r Reason) float64 {
	r.Value = math.Round(r.Value/b.step) * b.step
	b.Reasons = append(b.Reasons, r)
	return r.Value
}

// shoulders returns the breadth that the section is built on.
func (b *proposer) shoulders(p Person) float64 {
	if p.Shoulders > 0 {
		b.Reasons = append(b.Reasons, Reason{Key: design.KeySleeperShoulders, Value: p.Shoulders, Why: ShouldersGiven, Source: Given})
		return p.Shoulders
	}
	_, half := rig.CentreHeight(design.Sleeper{Stature: p.Stature, Mass: p.Mass})
	v := min(max(2*half, narrowest*p.Stature), broadest*p.Stature)
	return b.put(Reason{Key: design.KeySleeperShoulders, Value: v, Why: ShouldersEstimated, Source: Survey})
}

func (b *proposer) sleeper(p Person, shoulders float64) {
	b.Sleeper = design.Sleeper{Stature: p.Stature, Mass: p.Mass, Shoulders: shoulders}
}

// lengths proposes what runs along the bed.
func (b *proposer) lengths(p Person) {
	span := b.put(Reason{design.KeyBedSpan, spanOfStature * p.Stature, SpanOfStature, spanOfStature, OwnChoice})
	tail := (p.Stature + 2*endRoom - span) / 2
	b.Bed.Span = span
	b.Bed.HeadTail = b.put(Reason{design.KeyBedHeadTail, tail, RoomPastBar, endRoom, OwnChoice})
	b.Bed.FootTail = b.put(Reason{design.KeyBedFootTail, tail, RoomPastBar, endRoom, OwnChoice})
	b.Sleeper.Crown = b.put(Reason{Key: design.KeySleeperCrown, Value: endRoom - b.Bed.HeadTail, Why: SameRoom, Source: OwnChoice})
}

// section proposes what lies across the bed, and the legs that follow from the bars.
func (b *proposer) section(p Person, shoulders float64) {
	bar, why := barOfShoulders, [...]Why{BarOnBack, BarForElbows}
	if p.OnSide {
		bar, why = barOnSide, [...]Why{BarOnSide, BarForKnees}
	}
	head := Reason{design.KeyBedHeadBar, bar * shoulders, why[0], bar, Survey}
	if long, spare, ok := b.roomy(p, shoulders); ok {
		head = Reason{design.KeyBedHeadBar, long, why[1], spare, Survey}
	}
	// Rounded down it is no longer than what is at hand.
	if most := math.Floor(p.Longest/b.step) * b.step; p.Longest > 0 && most < head.Value {
		head = Reason{Key: design.KeyBedHeadBar, Value: most, Why: LongestAtHand, Source: Given}
	}
	b.across(p, shoulders, head)
}

// across proposes a section with a head bar that is proposed already.
func (b *proposer) across(p Person, shoulders float64, head Reason) {
	drop, depth, foot := dropOfShoulders, depthOfSpan, footOfHead
	why := [...]Why{1: FootNarrower, 2: DropOnBack}
	if p.OnSide {
		drop, depth, foot = dropOnSide, depthOnSide, 1
		why = [...]Why{1: FootAsHead, 2: DropOnSide}
	}
	e := &b.Bed
	e.HeadBar = b.put(head)
	e.FootBar = b.put(Reason{Key: design.KeyBedFootBar, Value: foot * e.HeadBar, Why: why[1], Source: OwnChoice})
	e.Head = design.Drop
	e.HeadValue = b.put(Reason{design.KeyBedHeadDrop, drop * shoulders, why[2], drop, Survey})
	e.HeadRadius = b.put(Reason{design.KeyBedUnderbodyRadius, radiusOfShoulders * shoulders, RoundOfShoulders, radiusOfShoulders, Survey})
	e.SeatRadius, e.FootRadius = e.HeadRadius, e.HeadRadius
	e.Control = design.SideDepth
	e.ControlValue = design.ControlMeasure(b.put(Reason{design.KeyBedSideDepth, depth * e.Span, DepthOfSpan, depth, OwnChoice}))
	e.Second = design.SameWall
	e.HeadLeg = b.put(Reason{design.KeyBedHeadLeg, legOfBar * e.HeadBar, LegOfBar, legOfBar, OwnChoice})
	e.FootLeg = b.put(Reason{design.KeyBedFootLeg, legOfBar * e.FootBar, LegOfBar, legOfBar, OwnChoice})
}
