package work

import (
	"fmt"

	"slingloft/outline/design"
)

// Value is a proposed value of a design with its reason.
type Value struct {
	Key    design.Key
	Value  string // as it stands in the file, without its quotes: "1510 mm"
	Asked  bool   // the maker gave it: Why says so in a sentence, and there is no source
	Why    string // without a full stop, where it is proposed
	Source string // empty: the reason says all
}

// Reason returns why and from where a value is proposed, in sentences.
func (w ProposalWords) Reason(v Value) string {
	switch {
	case v.Asked:
		return v.Why
	case v.Source == "":
		return fmt.Sprintf(w.Whole, v.Why)
	}
	return fmt.Sprintf(w.WithSource, v.Why, v.Source)
}

// inFile returns a value as the starter file takes it.
func (w ProposalWords) inFile(v Value) design.Proposed {
	why := w.Reason(v)
	if !v.Asked {
		why = fmt.Sprintf(w.Because, why)
	}
	return design.Proposed{Key: v.Key, Value: v.Value, Why: why}
}

// inFiles returns values as the starter file takes them.
func inFiles(values []Value, w ProposalWords) []design.Proposed {
	var out []design.Proposed
	for _, v := range values {
		out = append(out, w.inFile(v))
	}
	return out
}
