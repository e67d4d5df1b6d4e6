package hung

import (
	"fmt"
	"math"

	"slingloft/outline/design"
)

// Impossible says that a design has no hung shape, which key of the design file
// is to blame first and, where one is known, the value at which it would have.
type Impossible struct {
	Key    design.Key   // of the design file: design.KeyBedSideDepth
	Reason string       // one line, lower case
	Bound  design.Sense // which way the limit bounds; NoLimit where none is known
	Limit  float64      // in the unit that package design keeps the key's value in
	Cause  error        // the fault met first, nil where Reason says all
}

// Error returns key, reason and limit in one line.
func (e *Impossible) Error() string {
	s := string(e.Key) + ": " + e.Reason
	if e.Cause != nil {
		s += ": " + e.Cause.Error()
	}
	if e.Bound != design.NoLimit && !math.IsNaN(e.Limit) {
		s += " (" + design.English().Phrase(e.Bound.WouldDo(fmt.Sprintf("%.4g", e.Limit))) + ")"
	}
	return s
}

// Unwrap returns the cause.
func (e *Impossible) Unwrap() error { return e.Cause }
