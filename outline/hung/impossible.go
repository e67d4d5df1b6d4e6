package hung

import (
	"errors"
	"fmt"
	"math"

	"slingloft/outline/design"
)

// Impossible says that a design has no hung shape, which key of the design file
// is to blame first and, where one is known, the value at which it would have.
type Impossible struct {
	Key   design.Key // of the design file: design.KeyBedSideDepth
	Found design.Finding
	Bound design.Sense // which way the limit bounds; NoLimit where none is known
	Limit float64      // in the unit that package design keeps the key's value in
	Cause error        // the fault met first, nil where Found says all
}

// Error returns key, reason and limit in one line.
func (e *Impossible) Error() string {
	s := string(e.Key) + ": " + design.English().Found(e.Found)
	if e.Cause != nil {
		s += ": " + e.Cause.Error()
	}
	if e.Bound != design.NoLimit && !math.IsNaN(e.Limit) {
		s += " (" + design.English().Phrase(e.Bound.WouldDo(fmt.Sprintf("%.4g", e.Limit))) + ")"
	}
	return s
}

// Finding returns what was found, with its cause.
func (e *Impossible) Finding() design.Finding {
	var place SectionError
	if e.Cause == nil || errors.As(e.Cause, &place) && !place.finite() {
		return e.Found // a height without end is the search's own trouble
	}
	return design.Found(design.WithCause, e.Found, design.FindingOf(e.Cause))
}

// Unwrap returns the cause.
func (e *Impossible) Unwrap() error { return e.Cause }
