// Package fit proposes a bed for a person: bars, span, drop, tails and legs, each
// with the reason for it and the source of the body measure behind it.
//
// The proportions are own choice, found by solving beds for many bodies; the body
// measures are means of a survey. A maker may take all of it or change any part.
// Lengths mm. See [Propose].
package fit

import (
	"fmt"
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
	Inches    bool    // reasons are written in inches
}

// Reason is why one key of the design has its value.
type Reason struct {
	Key    design.Key `json:"key"`
	Value  float64    `json:"value"` // mm
	Why    string     `json:"why"`
	Source string     `json:"source"`
}

// Proposal is a proposed bed. Its sleeper and bed go into a design as they are.
type Proposal struct {
	Sleeper design.Sleeper `json:"-"`
	Bed     design.Bed     `json:"-"`
	Reasons []Reason       `json:"reasons"`
}

// The sources named beside a figure.
const (
	given  = "as given"
	own    = "own choice"
	survey = "own choice of the proportion; body measure: " +
		"C. C. Gordon et al., 2012 Anthropometric Survey of U.S. Army Personnel, NATICK/TR-15/007 (an army sample, fitter than others)"
)

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
			return &hung.Impossible{Key: v.key, Reason: "too small for a bed to be proposed", Bound: design.AtLeast, Limit: v.lo}
		case v.value > v.hi:
			return &hung.Impossible{Key: v.key, Reason: "too large for a bed to be proposed", Bound: design.AtMost, Limit: v.hi}
		}
	}
	return nil
}

// proposer is a proposal in the making.
type proposer struct {
	Proposal
	step float64
}

// put rounds a value to whole steps and keeps it with its reason.
func (b *proposer) put(key design.Key, v float64, source, why string) float64 {
	v = math.Round(v/b.step) * b.step
	b.Reasons = append(b.Reasons, Reason{key, v, why, source})
	return v
}

// shoulders returns the breadth that the section is built on.
func (b *proposer) shoulders(p Person) float64 {
	if p.Shoulders > 0 {
		b.Reasons = append(b.Reasons, Reason{design.KeySleeperShoulders, p.Shoulders, "breadth over both shoulders", given})
		return p.Shoulders
	}
	_, half := rig.CentreHeight(design.Sleeper{Stature: p.Stature, Mass: p.Mass})
	v := min(max(2*half, narrowest*p.Stature), broadest*p.Stature)
	return b.put(design.KeySleeperShoulders, v, survey,
		"estimated: the survey's mean breadth times √(mass / stature) over that of its mean body")
}

func (b *proposer) sleeper(p Person, shoulders float64) {
	b.Sleeper = design.Sleeper{Stature: p.Stature, Mass: p.Mass, Shoulders: shoulders}
}

// lengths proposes what runs along the bed.
func (b *proposer) lengths(p Person) {
	span := b.put(design.KeyBedSpan, spanOfStature*p.Stature, own,
		fmt.Sprintf("%.2f of the stature: the bars cross above brow and ankles, the shoulders lie well inside", spanOfStature))
	tail := (p.Stature + 2*endRoom - span) / 2
	why := fmt.Sprintf("carries head or feet past the bar, with about %s of cloth beyond",
		quantity.Style{Inches: p.Inches, Fraction: 2}.Length(endRoom))
	b.Bed.Span = span
	b.Bed.HeadTail = b.put(design.KeyBedHeadTail, tail, own, why)
	b.Bed.FootTail = b.put(design.KeyBedFootTail, tail, own, why)
	b.Sleeper.Crown = b.put(design.KeySleeperCrown, endRoom-b.Bed.HeadTail, own, "leaves the same room beyond crown and soles")
}

// section proposes what lies across the bed, and the legs that follow from the bars.
func (b *proposer) section(p Person, shoulders float64) {
	bar, drop, depth, foot := barOfShoulders, dropOfShoulders, depthOfSpan, footOfHead
	how := "on the back"
	if p.OnSide {
		bar, drop, depth, foot = barOnSide, dropOnSide, depthOnSide, 1
		how = "on the side"
	}
	e := &b.Bed
	e.HeadBar = b.put(design.KeyBedHeadBar, bar*shoulders, survey,
		fmt.Sprintf("%.2f of the shoulder breadth for one who sleeps %s, so that the walls do not press on the shoulders", bar, how))
	why := "a little narrower than the head bar: feet need less room and the bar weighs less"
	if p.OnSide {
		why = "as the head bar: drawn-up knees need the room"
	}
	e.FootBar = b.put(design.KeyBedFootBar, foot*e.HeadBar, own, why)
	e.Head = design.Drop
	e.HeadValue = b.put(design.KeyBedHeadDrop, drop*shoulders, survey,
		fmt.Sprintf("%.2f of the shoulder breadth: deep enough to lie safely, flat enough for one who sleeps %s", drop, how))
	e.HeadRadius = b.put(design.KeyBedUnderbodyRadius, radiusOfShoulders*shoulders, survey,
		fmt.Sprintf("%.2f of the shoulder breadth: the back's round", radiusOfShoulders))
	e.SeatRadius, e.FootRadius = e.HeadRadius, e.HeadRadius
	e.Control = design.SideDepth
	e.ControlValue = b.put(design.KeyBedSideDepth, depth*e.Span, own,
		fmt.Sprintf("%.3f of the span: deeper is slacker and narrower in the middle, shallower pulls harder on cords and bars", depth))
	e.Second = design.SameWall
	legs := fmt.Sprintf("%.2f of its bar: the legs then meet at about 61°, and push on the bar with about half their own pull", legOfBar)
	e.HeadLeg = b.put(design.KeyBedHeadLeg, legOfBar*e.HeadBar, own, legs)
	e.FootLeg = b.put(design.KeyBedFootLeg, legOfBar*e.FootBar, own, legs)
}
