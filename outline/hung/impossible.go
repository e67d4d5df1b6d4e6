package hung

import (
	"fmt"
	"math"
)

// Impossible says that a design has no hung shape, which key of the design file
// is to blame first and, where one is known, the value at which it would have.
type Impossible struct {
	Key    string  // of the design file: "bed.side_depth"
	Reason string  // one line, lower case
	Bound  string  // "at most" or "at least"; empty where no limit is known
	Limit  float64 // in the unit that package design keeps the key's value in
	Cause  error   // the fault met first, nil where Reason says all
}

// Error returns key, reason and limit in one line.
func (e *Impossible) Error() string {
	s := e.Key + ": " + e.Reason
	if e.Cause != nil {
		s += ": " + e.Cause.Error()
	}
	if e.Bound != "" && !math.IsNaN(e.Limit) {
		s += fmt.Sprintf(" (%s %.4g would do)", e.Bound, e.Limit)
	}
	return s
}

// Unwrap returns the cause.
func (e *Impossible) Unwrap() error { return e.Cause }
