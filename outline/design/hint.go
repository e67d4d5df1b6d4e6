package design

import "slingloft/outline/numeric"

// Hint says what would do in place of what is at fault. It is data, since a later stage
// may try a value and find a better one; [Words.Hint] makes a sentence of it.
type Hint struct {
	Bound   Bound  // a value of the fault's own key that would do
	Instead Bound  // one of another key that would do as well
	With    []Key  // keys that have to change along with Bound
	Say     Phrase // after Bound what else there is to say; without one all of it
}

// Bound is the least or greatest value of a key that would do. The zero Bound is none.
type Bound struct {
	Key     Key
	Value   float64 // in the unit that package design keeps the key's value in
	Sense   Sense   // what lies beyond it would do as well
	Written string  // as the maker would write it, rounded to the side that would do
}

// Given reports whether there is a bound.
func (b Bound) Given() bool { return b.Sense != NoLimit }

// Beyond reports whether b asks for more than another bound of the same sense.
func (b Bound) Beyond(other Bound) bool {
	return b.Sense == other.Sense &&
		(b.Sense == AtLeast && b.Value > other.Value || b.Sense == AtMost && b.Value < other.Value)
}

// Further returns b's value moved by a part of it in the direction that b bounds.
func (b Bound) Further(part float64) float64 {
	step := float64(part * max(b.Value, -b.Value))
	if b.Sense == AtMost {
		return b.Value - step
	}
	return b.Value + step
}

// Broken is a rule that nothing fills in, broken, as an error.
type Broken Rule

// Error says in English what was found.
func (b Broken) Error() string { return English().Found(b.Finding()) }

// Finding returns what was found.
func (b Broken) Finding() Finding { return Found(Rule(b)) }

// Breach is a finding as an error, with the error that it is due to, if any.
type Breach struct {
	Found Finding
	Cause error
}

// Error says in English what was found.
func (e *Breach) Error() string { return English().Found(e.Found) }

// Unwrap returns the cause.
func (e *Breach) Unwrap() error { return e.Cause }

// Finding returns what was found.
func (e *Breach) Finding() Finding { return e.Found }

// FindingOf returns what an error of a later stage found, as data where it is.
func FindingOf(err error) Finding {
	if of, ok := err.(interface{ Finding() Finding }); ok {
		return of.Finding()
	}
	switch err {
	case numeric.ErrNoConvergence:
		return Found(Unsettled)
	case numeric.ErrNoBracket:
		return Found(NoSignChange)
	case numeric.ErrNotFinite:
		return Found(NotANumber)
	}
	return Told(err.Error())
}

// Of returns the error of a piece or a part, named in front of what was found.
func Of(name any, err error) error { return &Breach{Found(OfThis, name, FindingOf(err)), err} }

// Advised is an error that says what would do, beside what is wrong.
type Advised struct {
	Found Finding
	Hint  Phrase
}

// Error returns both parts on one line in English.
func (e *Advised) Error() string {
	return English().Message(Fault{Found: e.Found, Hint: Hint{Say: e.Hint}})
}
