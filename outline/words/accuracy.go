package words

import "slingloft/outline/accuracy"

// Accuracy says what belongs to the maker's working errors.
type Accuracy struct {
	Measures map[accuracy.MeasureKind]string
	Verdicts map[accuracy.Verdict]string
	Notes    map[accuracy.Note]string
}

// NotesOf says remarks.
func (a Accuracy) NotesOf(notes []accuracy.Note) []string {
	var out []string
	for _, n := range notes {
		out = append(out, a.Notes[n])
	}
	return out
}

func englishAccuracy() Accuracy {
	return Accuracy{
		Measures: identified(accuracy.MeasureKindCount),
		Verdicts: map[accuracy.Verdict]string{
			accuracy.Within:     "within, even at worst",
			accuracy.LikelyMet:  "likely within",
			accuracy.LikelyMore: "likely more than accepted",
		},
		Notes: map[accuracy.Note]string{
			accuracy.SetIsOne:       "first-load set is the same part of every cord, so that it acts on the level as one error",
			accuracy.LinesTrue:      "hang lines are adjusted on the spot and count as true",
			accuracy.SleeperCentred: "the sleeper keeps to the middle of the cloth",
		},
	}
}
