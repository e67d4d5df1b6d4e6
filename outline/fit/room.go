package fit

import (
	"math"

	"slingloft/outline/design"
	"slingloft/outline/hung"
	"slingloft/outline/room"
)

// armRoom is what the cords are to leave beside the elbows of one on the back, or the
// drawn-up knees of one on the side, both sides together, mm: a hand's breadth, own choice.
const armRoom = 80

// Bounds of a head bar that is proposed by room, as parts of the shoulder breadth: own
// choice, so that estimates of very light or heavy bodies do not make beds that nobody
// would carry, or that close over the shoulders.
const (
	shortestBar = 1.7
	longestBar  = 2.4
)

// roomy returns how long a head bar has to be for the arms or knees to have room between
// the cords, in whole steps, and what they have to spare with it; false where beds of such
// bars do not hang.
func (b *proposer) roomy(p Person, shoulders float64) (bar, spare float64, ok bool) {
	low, high := shortestBar*shoulders, longestBar*shoulders
	atLow, ok := b.spare(p, low, shoulders)
	atHigh, held := b.spare(p, high, shoulders)
	if !ok || !held || !(atHigh > atLow) {
		return 0, 0, false
	}
	whole := func(v float64) float64 { return math.Ceil(v/b.step-1e-9) * b.step }
	// What there is to spare rises almost evenly with the bar: a few steps by its slope get there.
	slope := (atHigh - atLow) / (high - low)
	bar = whole(min(max(low+(armRoom-atLow)/slope, low), high))
	for {
		if spare, ok = b.spare(p, bar, shoulders); !ok || spare >= armRoom || bar >= high {
			return bar, spare, ok
		}
		bar = min(bar+max(b.step, whole((armRoom-spare)/slope)), whole(high))
	}
}

// spare returns what arms or knees have to spare with a head bar; false where such a bed
// does not hang.
func (b *proposer) spare(p Person, bar, shoulders float64) (float64, bool) {
	try := proposer{Proposal: Proposal{Sleeper: b.Sleeper, Bed: b.Bed}, step: b.step}
	try.across(p, shoulders, Reason{Key: design.KeyBedHeadBar, Value: bar})
	s, err := hung.Solve(hung.ProblemOf(design.Design{Sleeper: try.Sleeper, Bed: try.Bed}))
	if err != nil {
		return 0, false
	}
	part, lies := room.Elbows, design.OnBack
	if p.OnSide {
		part, lies = room.Knees, design.OnSide
	}
	x, body := room.Place(part, lies, b.Sleeper, try.Bed)
	return 2*s.At(x).Y - body.Breadth, true
}
