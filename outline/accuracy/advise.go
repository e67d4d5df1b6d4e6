package accuracy

import (
	"errors"
	"math"

	"slingloft/outline/bed"
	"slingloft/outline/design"
	"slingloft/outline/finished"
	"slingloft/outline/hung"
)

// Under is what the bed is measured under.
type Under int

// The loads. A dead weight of [LeastWeight] or more has its middle on the mark on the
// centre line, is turned by 180° on the spot and read again, and the mean of both
// readings counts: then its own middle may lie anywhere. A sleeper lies aside by a
// length that is not known, which rolls both bars; so only end against end and one
// bar's roll against the other's are judged.
const (
	Weight Under = iota
	Sleeper
)

const (
	// LeastWeight is the least dead weight to measure under, kg.
	LeastWeight = 20
	// WeightAside is how far the middle of a weight may lie from the mark, mm, taken as
	// three standard deviations: it is a limit, and a mark is met better than that.
	WeightAside = 3
	// SleeperAside is how far a sleeper is taken to lie from the middle, mm, as a
	// standard deviation.
	SleeperAside = 10
	// WeightCentre is how high the middle of a dead weight lies over the bed's bottom, mm.
	WeightCentre = 100
	// HeightError is that of one reading of a height, mm, as a standard deviation: own
	// choice.
	HeightError = 3
)

// DeadWeight returns a weight of mass kg that lies evenly between two distances from
// the head bar, mm.
func DeadWeight(bed design.Bed, mass, from, to float64) finished.Weight {
	half := bed.Span / 2
	return finished.Weight{Load: hung.EvenLoad(mass*hung.Gravity, from-half, to-half), Centre: WeightCentre}
}

// Survey is what is measured of a bed that hangs: heights over any one level, mm, of a
// weight the mean of both readings.
type Survey struct {
	Heights finished.Heights
	Middle  bool // whether the bed's bottom at mid-bay was measured
	Apexes  bool // whether the apexes were
	Under   Under
	Error   float64 // of each reading, as a standard deviation, mm; 0: [HeightError]
	Aside   float64 // of the middle of the load, as a standard deviation, mm; 0: a third of [WeightAside], or [SleeperAside]
}

// variance returns that of a height as it stands in the survey, mm².
func (s Survey) variance() float64 {
	e := s.Error
	if e == 0 {
		e = HeightError
	}
	if s.Under == Weight {
		return e * e / 2 // the mean of two
	}
	return e * e
}

func (s Survey) aside() float64 {
	switch {
	case s.Aside > 0:
		return s.Aside
	case s.Under == Weight:
		return WeightAside / 3.0
	}
	return SleeperAside
}

// Knob is a part that a maker can set once the bed hangs: mm by which it can be made
// shorter and longer, both zero or more, and the smallest change that is worth the
// work.
type Knob struct {
	Part            finished.Part
	Shorter, Longer float64
	Step            float64
	// ByHand says that it is set as easily as not: a hang line that slides, or a strap,
	// and no eye that has to be made anew.
	ByHand bool
}

// Bed is a bed as designed, and what is known of it before it is measured.
type Bed struct {
	Designed finished.Heights // under what it is measured under
	Rates    finished.Rates
	Bars     [2]float64 // lengths between the cords' centres, mm, by [hung.End]
	Stack    []Component
	Knobs    []Knob
}

// Adjustment is one thing to do.
type Adjustment struct {
	Part   finished.Part
	Change float64 // mm; positive: longer
	// Uncertainty is that of the tips which it moves most, afterwards, mm.
	Uncertainty float64
}

// Advice is the likeliest set of adjustments that levels the tips. It is no finding of
// which part is wrong: four heights cannot tell.
type Advice struct {
	// Off is by how much each tip stands above where it should, over the mean of all
	// four, as the reading and the stack together have it, mm.
	Off [2][2]float64
	// Uncertainty is that of each tip after the adjustments, as a standard deviation, mm.
	Uncertainty [2][2]float64
	// Doubt is, of every part's own error, the spread that is left after the reading
	// over that before it: near 1 the heights tell nothing of the part.
	Doubt [finished.Parts]float64
	// Level says that every tip is level within twice its uncertainty, so that nothing
	// is to be done.
	Level       bool
	Adjustments []Adjustment
	// After is what the four tips should then read, over the same level, and OffAfter
	// by how much they should then be off, mm: what the knobs cannot take out.
	After    [2][2]float64
	OffAfter [2][2]float64
}

// ErrNoHeight is met where a height of a survey is not a number.
var ErrNoHeight = errors.New("a height is not a number")

// ErrUnsteady is met where a bed does not lie steady under the load: its heights do
// not say how it was made.
var ErrUnsteady = errors.New("the bed does not lie steady under this load")

// rolls is the slope of a bar per mm aside beyond which its tips say where the weight
// lies rather than how the bed was made: by as much as 45° for 100 mm, where a warned-of
// bed turns by 30° under its sleeper. Own choice.
const rolls = math.Pi / 4 / 100

// Steady reports whether either bar sinks to the side that the weight is moved to, as
// it does wherever the bed hangs in a stable balance, and by no more than a reading
// bears.
func (b Bed) Steady() bool {
	for e, t := range b.Rates.Aside.Tips {
		if sinks := t[bed.Right] - t[bed.Left]; !(sinks > 0 && sinks < rolls*b.Bars[e]) {
			return false
		}
	}
	return true
}

// Advise reads a survey.
func (b Bed) Advise(s Survey) (Advice, error) {
	if !b.Steady() {
		return Advice{}, ErrUnsteady
	}
	belief, err := b.read(s)
	if err != nil {
		return Advice{}, err
	}
	made := b.modes() // of the bed itself, wherever the weight lies
	tips := b.judged(made, s).tips(b.Bars)
	a := Advice{Level: true}
	for e := range tips {
		for side := range tips[e] {
			r := tips[e][side]
			a.Off[e][side], a.Uncertainty[e][side] = r.dot(&belief.mean), belief.spread(r)
			a.Level = a.Level && math.Abs(a.Off[e][side]) <= 2*a.Uncertainty[e][side]
		}
	}
	before := prior(b.Stack, 0)
	for k := range a.Doubt {
		if v := before.cov[k][k]; v > 0 {
			a.Doubt[k] = math.Sqrt(max(0, belief.cov[k][k]) / v)
		}
	}
	var set Off
	if !a.Level {
		set = b.level(belief, made, s)
	}
	b.report(&a, belief, set, s)
	return a, nil
}

// read returns what is thought of the bed after a survey.
func (b Bed) read(s Survey) (*posterior, error) {
	belief := prior(b.Stack, s.aside())
	v := s.variance()
	var err error
	update := func(pick func(finished.Heights) float64) {
		off := pick(s.Heights) - pick(b.Designed)
		if math.IsNaN(off) || math.IsInf(off, 0) {
			err = ErrNoHeight
			return
		}
		belief.update(rowOf(b.Rates, pick), off, v)
	}
	for e := range 2 {
		for side := range 2 {
			update(tip(hung.End(e), bed.Side(side)))
		}
		if s.Apexes {
			update(func(h finished.Heights) float64 { return h.Apex[e] })
		}
	}
	if s.Middle {
		update(func(h finished.Heights) float64 { return h.Middle })
	}
	return belief, err
}

// modes returns how the modes of the tips follow the bed's own parts: neither where
// the weight lies nor the level is in them.
func (b Bed) modes() modes {
	var tips [2][2]row
	for e := range tips {
		for s := range tips[e] {
			tips[e][s] = rowOf(b.Rates, tip(hung.End(e), bed.Side(s)))
			tips[e][s][asideAt], tips[e][s][levelAt] = 0, 0
		}
	}
	return modesOf(tips, b.Bars)
}

// judged leaves out the roll of both bars under a sleeper.
func (b Bed) judged(m modes, s Survey) modes {
	if s.Under == Sleeper {
		m.roll = row{}
	}
	return m
}
