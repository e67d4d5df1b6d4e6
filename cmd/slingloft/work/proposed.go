package work

import "slingloft/outline/design"

// Value is a proposed value of a design with its reason.
type Value struct {
	Key    design.Key
	Value  string // as it stands in the file, without its quotes: "1510 mm"
	Asked  bool   // the maker gave it: Why says so in a sentence, and there is no source
	Why    string // without a full stop, where it is proposed
	Source string // empty: the reason says all
}

// given and asked are the reasons of what is not proposed.
const (
	given = "As given."
	asked = "As asked."
)

// Reason returns why and from where, in sentences.
func (v Value) Reason() string {
	switch {
	case v.Asked:
		return v.Why
	case v.Source == "":
		return v.Why + "."
	}
	return v.Why + ". Source: " + v.Source + "."
}

// inFile returns the value as the starter file takes it.
func (v Value) inFile() design.Proposed {
	why := v.Reason()
	if !v.Asked {
		why = "Proposed: " + why
	}
	return design.Proposed{Key: v.Key, Value: v.Value, Why: why}
}

// inFiles returns values as the starter file takes them.
func inFiles(values []Value) []design.Proposed {
	var out []design.Proposed
	for _, v := range values {
		out = append(out, v.inFile())
	}
	return out
}
