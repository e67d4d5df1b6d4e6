package work

import (
	"errors"
	"slices"

	"slingloft/outline/design"
)

// A value that a fault names comes from the one stage that met the fault. Others may
// not go along with it, and a maker who follows the advice would get the next fault.
// So the design is read with the value before it is said.

// remedy is a design that is at fault, to be read with values changed.
type remedy struct {
	name   string
	data   []byte
	with   Setting
	source design.Source
	slow   bool          // each reading takes seconds: fewer are made
	before design.Faults // those that others than the one tried for may remain of
}

// maxReadings is how often a design is read for one value: own choice, so that an
// answer does not take seconds.
const maxReadings = 8

// fewReadings is how often where each reading takes seconds.
const fewReadings = 2

// maxRemedies is for how many faults of a design values are tried.
const maxRemedies = 4

// tried returns the faults of a design with values that were tried.
func (r remedy) tried(err error) error {
	var wide *tooWide
	if errors.As(err, &wide) {
		return design.Faults{r.widened(wide)}
	}
	if !errors.As(err, &r.before) {
		return err
	}
	out := slices.Clone(r.before)
	left := maxRemedies
	for i := range out {
		if f := &out[i]; f.Hint.Bound.Given() && left > 0 {
			r.better(f)
			left--
		}
	}
	return out
}

// better puts values that were tried into a fault.
func (r remedy) better(f *design.Fault) {
	b, ok := r.settled(f.Hint.Bound)
	f.Hint.Bound = b
	if !ok {
		f.Hint.With = r.others(b)
	}
	if f.Hint.Instead.Given() && !r.none(r.read(f.Hint.Instead)) {
		f.Hint.Instead = design.Bound{}
	}
}

// others returns the other keys that have to change with a value.
func (r remedy) others(b design.Bound) []design.Key {
	var keys []design.Key
	for _, f := range faultsOf(r.read(b)) {
		if f.Key != b.Key && !slices.ContainsFunc(r.before, func(b design.Fault) bool { return b.Key == f.Key }) {
			keys = append(keys, f.Key)
		}
	}
	return slices.Compact(keys)
}

// settled looks for a value, from b on in its direction, with which the design is
// rid of the fault without having another, together with other changes. Where it
// finds none it returns the first that the key itself has no fault with, and false.
func (r remedy) settled(b design.Bound, others ...design.Bound) (design.Bound, bool) {
	step, refused, milder := firstStep, b, b
	quiet := false // the key itself had no fault once
	for range r.readings(maxReadings) {
		err := r.read(append(slices.Clone(others), b)...)
		if r.none(err) {
			return r.nearer(refused, b, others), true
		}
		next, about := r.bound(b, err)
		if !about && !quiet {
			quiet, milder = true, b
		}
		if !about || !next.Given() {
			next = r.moved(b, step)
			step *= 2
		}
		if errors.Is(err, errPlace) || next.Written == b.Written {
			break
		}
		refused, b = b, next
	}
	return milder, false
}

// readings returns how often at most the design is read.
func (r remedy) readings(most int) int {
	if r.slow {
		return min(most, fewReadings)
	}
	return most
}

// firstStep is the part of a value that is tried beyond it first; the step doubles:
// own choice.
const firstStep = 0.02

// nearer goes back from a value that does to one that does not, so that no more is
// asked than has to be.
func (r remedy) nearer(refused, does design.Bound, others []design.Bound) design.Bound {
	for range r.readings(4) {
		mid := r.at(does, (refused.Value+does.Value)/2)
		if refused.Written == does.Written || mid.Written == does.Written || mid.Written == refused.Written {
			break
		}
		if r.none(r.read(append(slices.Clone(others), mid)...)) {
			does = mid
		} else {
			refused = mid
		}
	}
	return does
}

// moved returns a value by a part of it further in its direction.
func (r remedy) moved(b design.Bound, part float64) design.Bound {
	return r.at(b, b.Further(part))
}

// at returns another value of the same key and direction.
func (r remedy) at(b design.Bound, v float64) design.Bound {
	if b.Sense == design.AtLeast {
		return r.source.Least(b.Key, v)
	}
	return r.source.Most(b.Key, v)
}

// errPlace says that a change cannot be made in the text.
var errPlace = errors.New("no place in the file for this value")

// read reads the design with values changed and returns what is still wrong with it.
func (r remedy) read(changes ...design.Bound) error {
	text, err := design.OpenText(r.name, r.data)
	for _, c := range changes {
		if err == nil {
			text, err = text.Set(c.Key, c.Written)
		}
	}
	if err != nil {
		return errPlace
	}
	_, err = readFor(r.name, text.Bytes(), r.with)
	return err
}

// faultsOf returns the faults that an error holds.
func faultsOf(err error) design.Faults {
	var wide *tooWide
	if errors.As(err, &wide) {
		return design.Faults{{Key: rollWidth}}
	}
	var faults design.Faults
	errors.As(err, &faults)
	return faults
}

// none reports whether nothing but what the design had anyway is wrong: the fault
// that is tried for is not, but others stay.
func (r remedy) none(err error) bool {
	if err == nil {
		return true
	}
	now := faultsOf(err)
	return len(now) > 0 && len(now) < len(r.before) && !slices.ContainsFunc(now, func(f design.Fault) bool {
		return !slices.ContainsFunc(r.before, func(b design.Fault) bool { return b.Key == f.Key })
	})
}

// bound returns what a fault of the key says now, if that lies further on, and
// whether there is one.
func (r remedy) bound(b design.Bound, err error) (next design.Bound, about bool) {
	for _, f := range faultsOf(err) {
		if f.Key != b.Key {
			continue
		}
		about = true
		if n := f.Hint.Bound; n.Beyond(b) {
			return n, true
		}
	}
	return design.Bound{}, about
}
