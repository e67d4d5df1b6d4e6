// Package level re-cuts the cloth of a bed until its bottom hangs level under the sleeper.
//
// The judge is the simulation of package drape with the sleeper as a chain of rounded
// bodies, as broad and as deep as the sleeper is at each place. That is what lies in the
// bed: over shoulders and hips it spreads the cloth and comes to lie some centimetres
// higher than the round section of the design would, which no cut without it can tell.
//
// In the loop every section of the body lies by itself and bears its own weight. Where all
// of them come to lie in line, links between them have no moment to carry, so that the
// straight body lies as they do; with rigid links in the loop a place that is too wide
// would hide between two that are not, and the cut would be left open. At its end the body
// lies on its links, and is what is judged.
//
// What lies on the cloth feels millimetres: the body's underside has to be level by
// [Under]. Elsewhere nothing lies on it and nothing draws it taut, so that the cloth's
// bottom line has to be level by [Else], from [Rim] past crown and soles to [Hem] from its ends.
//
// Lengths mm. Places u lie along the flat cloth, 0 at mid-bay, the head end negative.
package level

import (
	"errors"
	"math"

	"slingloft/outline/drape"
)

// How near to level is level, the highest less the lowest, mm; and what is not judged, mm: of
// each end the last cells, which hang on nothing but their hem, and past crown and soles the
// rim of the dent that they make, which stands a finger's breadth higher whatever the cut.
const (
	Under = 2.0
	Else  = 10.0
	Hem   = 30.0
	Rim   = 100.0
)

// ErrOpen is met where the loop does not close.
var ErrOpen = errors.New("the loop does not close")

// Problem is what has to hang level.
type Problem struct {
	Pattern   drape.Pattern
	Rig       drape.Rig // a body on it lies on its links
	Stiffness drape.Stiffness
	From, To  float64                 // places between which the sleeper lies, mm
	Bottom    func(x float64) float64 // height of the bottom line as designed, mm
	// Watch, if set, is told now and then what part is done, about; an error of it ends the
	// loop.
	Watch func(part float64) error
}

// Closed is what came of the loop.
type Closed struct {
	Recut
	Before, After Lies
	Rounds        int
}

const (
	// settled is how far a node may still move in the last step, mm.
	settled = 5e-3
	// cells is in how many cells the bed's length is divided at least, and longest how long
	// one is at most, mm. Half as long, the body's underside after the loop lies within
	// 0.3 mm of where it lies with them.
	cells, longest = 30.0, 50.0
	// mostRounds ends a loop that does not close, and so does a move of the sides that after
	// halfRounds is not hopeful times smaller than the first. One that closes takes 3 to 7.
	mostRounds, halfRounds, hopeful = 8, 4, 4
	// still is the change of the sides at which the loop has closed, mm.
	still = 0.2
	// inRound and inAll bound the steps of one round, which need not come quite to rest, and
	// of the judgements before and after.
	inRound, inAll = 900, 5000
)

// Close re-cuts the pattern until it hangs level. It returns [ErrOpen] with what came of it
// where it does not.
func Close(p Problem) (Closed, error) {
	l := newLoop(p)
	if err := l.judge(&l.Before); err != nil {
		return l.Closed, err
	}
	first := 0.0
	for moved := math.Inf(1); moved > still && l.Rounds < mostRounds; l.Rounds++ {
		h, err := l.hang(true, inRound)
		if err != nil {
			return l.Closed, err
		}
		if moved = l.improve(&h); math.IsNaN(moved) || l.Rounds >= halfRounds && moved > first/hopeful {
			break
		}
		first = max(first, moved)
	}
	l.round()
	if err := l.judge(&l.After); err != nil {
		return l.Closed, err
	}
	if !l.After.Level() {
		return l.Closed, ErrOpen
	}
	return l.Closed, nil
}

// loop is a loop on its way.
type loop struct {
	Problem
	Closed
	bed  *drape.Bed
	set  drape.Settings
	done float64
}

func newLoop(p Problem) *loop {
	side := p.Pattern.Side
	from, long := side[0].X, side[len(side)-1].X-side[0].X
	cell := min(longest, long/cells)
	l := &loop{Problem: p, bed: drape.NewBed(&p.Rig, p.Stiffness)}
	l.set = drape.Settings{Cell: cell, Step: settled}
	l.Recut = Recut{Side: side, Start: from, Knot: cell, Out: make([]float64, int(math.Ceil(long/cell))+1)}
	return l
}

// parts of the work, about: the first hanging takes half of it.
const firstPart, roundPart = 0.5, 0.1

// hang hangs the cut as it now is, the body as sections that lie by themselves or on links.
func (l *loop) hang(limp bool, steps int) (drape.Hung, error) {
	rig := l.Rig
	if rig.Body != nil {
		body := *rig.Body
		body.Limp = limp
		rig.Body = &body
	}
	l.bed.Rig = &rig
	l.set.Steps = steps
	part := roundPart
	if l.done == 0 {
		part = firstPart
	}
	first := 0.0
	l.set.Watch = func(_ int, far float64) error {
		if l.Watch == nil {
			return nil
		}
		first = max(first, far)
		return l.Watch(min(l.done+float64(part*drape.Part(first, far, settled)), 1))
	}
	pattern := l.Cut(&l.Pattern)
	h, err := l.bed.Hang(&pattern, l.set)
	l.done += part
	if errors.Is(err, drape.ErrUnsettled) {
		err = nil
	}
	return h, err
}

// judged reports whether the cloth at a place has to be level.
func (p *Problem) judged(h *drape.Hung, u float64) bool {
	past := max(p.From-u, u-p.To)
	return u >= h.Along[0]+Hem && u <= h.Along[len(h.Along)-1]-Hem && (past <= 0 || past >= Rim)
}

// off returns how much higher than designed the bottom lies at a chain, mm.
func (p *Problem) off(h *drape.Hung, i int) float64 { return h.Bottom[i].Y - p.Bottom(h.Bottom[i].X) }

// mean returns the mean of that under the sleeper: a bed that hangs lower as a whole is
// none the worse for it.
func (p *Problem) mean(h *drape.Hung) float64 {
	sum, n := 0.0, 0.0
	for i, u := range h.Along {
		if u >= p.From && u <= p.To {
			sum += p.off(h, i)
			n++
		}
	}
	return sum / max(n, 1)
}

// round leaves whole hundredths of a millimetre: what is cut does not hang on the last bits
// of a sum.
func (l *loop) round() {
	for k, v := range l.Out {
		l.Out[k] = math.Round(v*100) / 100
	}
}
