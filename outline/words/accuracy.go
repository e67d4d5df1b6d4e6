package words

import (
	"slingloft/outline/accuracy"
	"slingloft/outline/finished"
)

// Accuracy says what belongs to the maker's working errors.
type Accuracy struct {
	Measures map[accuracy.MeasureKind]string
	Verdicts map[accuracy.Verdict]string
	Notes    map[accuracy.Note]string
	Causes   map[accuracy.Cause]string
	// Halves say what halves what a cause does; "that" is the maker's own measure.
	Halves map[accuracy.Cause]string
	Parts  map[finished.Part]string
	Ways   map[accuracy.Way]string
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
		Causes: identified(accuracy.CauseCount),
		Halves: map[accuracy.Cause]string{
			accuracy.Marking: "mark the cords to half of that",
			accuracy.Splices: "read every node off a tape under load before its buries are locked, " +
				"or splice to half of that and show it by five test pieces",
			accuracy.Contraction: "make four times as many test pieces",
			accuracy.FirstLoad:   "pull the cords to their lying tension, release and pull again before the nodes are marked",
			accuracy.Reading:     "read the tape to half of that",
			accuracy.BarCut:      "cut the bars to half of that",
			accuracy.Cutting:     "mark the cloth to half of that",
			accuracy.Sewing:      "sew the side seams to half of that",
			accuracy.Rigging:     "set hang lines and anchors to half of that",
		},
		Parts: identified(finished.Parts),
		Ways: map[accuracy.Way]string{
			accuracy.TakeIn: "take the eye in at the apex", accuracy.LetOut: "let the eye out at the apex",
			accuracy.Shorten: "make it shorter", accuracy.Lengthen: "make it longer",
			accuracy.Lower: "set it lower", accuracy.Raise: "set it higher",
		},
	}
}
