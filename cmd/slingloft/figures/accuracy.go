package figures

import (
	"fmt"

	"slingloft/outline/accuracy"
)

// Accuracy is how level the bed comes out with the maker's working errors.
type Accuracy struct {
	Lengths  []accuracy.Length  `json:"lengths"`
	Effects  []accuracy.Effect  `json:"effects"`
	Measures []accuracy.Measure `json:"measures"`
	Notes    []string           `json:"notes"`
}

// accuracyOf returns a stack as the document has it; err is why there is none.
func accuracyOf(r accuracy.Report, err error, say Words) Accuracy {
	out := Accuracy{r.Lengths, r.Effects, r.Measures, say.Names.Accuracy.NotesOf(r.Notes)}
	if err != nil {
		out.Notes = append(out.Notes, fmt.Sprintf(say.Accuracy.Cannot, err))
	}
	return out
}
