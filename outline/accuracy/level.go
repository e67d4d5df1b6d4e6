package accuracy

import (
	"math"
	"slices"

	"slingloft/outline/finished"
	"slingloft/outline/hung"
)

// The adjustments are those a with the least
//
//	Σ (a/σ)² + Σ (mode/u)²
//
// within what the knobs allow: of all that level the tips the likeliest, since σ is
// what the stack says of the part's own error, or one step of a knob whose part counts
// as true. Levelling is as strict as u says, a quarter of what is not known of a mode: to be
// stricter asks for changes that nobody's errors are as large as. Eyes whose work is lost in what is not
// known anyway are left alone: one that is made anew has errors of its own.

// levelWithin is the least u, mm: below what anybody reads.
const levelWithin = 0.5

// task is the search for the adjustments.
type task struct {
	knobs  []Knob
	sigma  []float64
	effect [][3]float64 // of one mm of each knob on the modes
	goal   [3]float64   // what the modes are to be moved by
	within [3]float64   // u of each
}

// level returns the adjustments, whole steps of their knobs.
func (b Bed) level(belief *posterior, made modes, s Survey) Off {
	list := [3]row{made.pitch, made.roll, made.twist}
	t := task{knobs: slices.Clone(b.Knobs)}
	for i, r := range list {
		t.goal[i] = -r.dot(&belief.mean)
		t.within[i] = max(levelWithin, belief.spread(r)/4)
	}
	if s.Under == Sleeper {
		t.goal[1], t.within[1] = 0, levelWithin // the roll of both bars stays as it is
	}
	for _, k := range b.Knobs {
		t.sigma = append(t.sigma, max(b.own(k.Part), k.Step))
		var effect [3]float64
		for i, r := range list {
			effect[i] = r[k.Part]
		}
		t.effect = append(t.effect, effect)
	}
	a := t.fewest(b.judge(made, belief, s))
	var out Off
	for i, k := range b.Knobs {
		out[k.Part] = a[i]
	}
	return out
}

// judge returns what says whether less than all adjustments do: whether what they leave
// of the goal is, at every tip, more than all would leave by at most a quarter of what
// is not known of it, a thirtieth more in all.
func (b Bed) judge(made modes, belief *posterior, s Survey) func(all, left [3]float64) bool {
	var alone modes // one mm of each mode, each an unknown of its own
	alone.pitch[0], alone.roll[1], alone.twist[2] = 1, 1, 1
	off, doubt := alone.tips(b.Bars), b.judged(made, s).tips(b.Bars)
	return func(all, left [3]float64) bool {
		best, rest := row{all[0], all[1], all[2]}, row{left[0], left[1], left[2]}
		for e := range off {
			for side := range off[e] {
				if math.Abs(off[e][side].dot(&rest)) > math.Abs(off[e][side].dot(&best))+belief.spread(doubt[e][side])/4 {
					return false
				}
			}
		}
		return true
	}
}

// own returns the standard deviation of a part's own error, mm, without what it shares
// with others. A hang line makes up for its anchor too, mm for mm.
func (b Bed) own(p finished.Part) float64 {
	single := func(p finished.Part) float64 {
		sum := 0.0
		for _, c := range b.Stack {
			var only Off
			only[p] = c.Off[p]
			if c.Off == only {
				sum += float64(c.Off[p] * c.Off[p])
			}
		}
		return math.Sqrt(sum)
	}
	for _, e := range hung.Ends() {
		if p == finished.LineOf(e) {
			return math.Hypot(single(p), single(finished.AnchorOf(e)))
		}
	}
	return single(p)
}

// sooner reports whether knob i is left out before knob j: an eye before what is set by
// hand, of two alike that with the less change for its σ.
func (t *task) sooner(i, j int, a []float64) bool {
	if t.knobs[i].ByHand != t.knobs[j].ByHand {
		return t.knobs[j].ByHand
	}
	return math.Abs(a[i]/t.sigma[i]) < math.Abs(a[j]/t.sigma[j])
}

// fewest returns the adjustments, and leaves out one knob after the other for as long
// as what is left is as good as nothing, as [task.sooner] has it.
func (t *task) fewest(does func(all, left [3]float64) bool) []float64 {
	best := t.stepped(t.smooth())
	all := t.left(best)
	tried := make([]bool, len(t.knobs))
	for {
		least := -1
		for i, v := range best {
			if v != 0 && !tried[i] && (least < 0 || t.sooner(i, least, best)) {
				least = i
			}
		}
		if least < 0 {
			return best
		}
		tried[least] = true
		kept := t.knobs[least]
		t.knobs[least].Shorter, t.knobs[least].Longer = 0, 0
		if a := t.stepped(t.smooth()); does(all, t.left(a)) {
			best = a
		} else {
			t.knobs[least] = kept
		}
	}
}

// left returns what is left of the goal.
func (t *task) left(a []float64) [3]float64 {
	out := t.goal
	for i, e := range t.effect {
		for m := range out {
			out[m] -= float64(e[m] * a[i])
		}
	}
	return out
}

// cost returns what is to be least.
func (t *task) cost(a []float64) float64 {
	sum := 0.0
	for i, m := range t.left(a) {
		sum += float64(m / t.within[i] * m / t.within[i])
	}
	for i, v := range a {
		sum += float64(v / t.sigma[i] * v / t.sigma[i])
	}
	return sum
}

// smooth finds the least by one knob after the other, each to its own best place
// within its range, until none moves. The sum is convex, so that this ends at the
// least of all.
func (t *task) smooth() []float64 {
	const maxRounds, still = 100000, 1e-6
	a := make([]float64, len(t.knobs))
	for range maxRounds {
		moved := 0.0
		for i, k := range t.knobs {
			left := t.left(a)
			pull, stiff := -a[i]/(t.sigma[i]*t.sigma[i]), 1/(t.sigma[i]*t.sigma[i])
			for m, e := range t.effect[i] {
				pull += float64(e * left[m] / (t.within[m] * t.within[m]))
				stiff += float64(e * e / (t.within[m] * t.within[m]))
			}
			to := min(max(a[i]+pull/stiff, -k.Shorter), k.Longer)
			moved = max(moved, math.Abs(to-a[i]))
			a[i] = to
		}
		if moved < still {
			break
		}
	}
	return a
}

// stepped brings every knob to a whole step, then tries one step more and less of
// each, and of each two together, for as long as that is better.
func (t *task) stepped(a []float64) []float64 {
	for i, k := range t.knobs {
		a[i] = t.bound(i, math.Round(a[i]/k.Step)*k.Step)
	}
	for better := true; better; {
		better = false
		for i := range a {
			for j := i; j < len(a); j++ {
				better = t.nudge(a, i, j) || better
			}
		}
	}
	return a
}

// bound keeps a change of a knob within its range, at a whole step.
func (t *task) bound(i int, mm float64) float64 {
	k := t.knobs[i]
	low, high := math.Ceil(-k.Shorter/k.Step)*k.Step, math.Floor(k.Longer/k.Step)*k.Step
	return min(max(mm, low), high) + 0
}

// nudge tries a step of two knobs, which may be the same, and reports whether one was
// better, which it leaves in a.
func (t *task) nudge(a []float64, i, j int) bool {
	const enough = 1e-9
	was, wasI, wasJ := t.cost(a), a[i], a[j]
	for _, di := range [2]float64{-1, 1} {
		for _, dj := range [3]float64{-1, 0, 1} {
			a[i] = t.bound(i, wasI+di*t.knobs[i].Step)
			if i != j {
				a[j] = t.bound(j, wasJ+dj*t.knobs[j].Step)
			}
			if t.cost(a) < was-enough {
				return true
			}
			a[i], a[j] = wasI, wasJ
		}
	}
	return false
}
