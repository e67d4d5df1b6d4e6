package words

import (
	"fmt"
	"math"

	"slingloft/outline/accuracy"
	"slingloft/outline/finished"
	"slingloft/outline/quantity"
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
	By     string // part, way and length of an adjustment
	// Mend says what does most: measure, length, cause, what would halve it, and the
	// length then.
	Mend string
}

// NotesOf says remarks.
func (a Accuracy) NotesOf(notes []accuracy.Note) []string {
	var out []string
	for _, n := range notes {
		out = append(out, a.Notes[n])
	}
	return out
}

// Do says an adjustment: "head left leg: take the eye in at the apex by 12 mm".
func (a Accuracy) Do(d accuracy.Adjustment, style quantity.Style) string {
	return fmt.Sprintf(a.By, a.Parts[d.Part], a.Ways[d.How()], rounded(style).Length(math.Abs(d.Change)))
}

// Mends says of each measure that is likely more than accepted what does most and what
// would halve that.
func (a Accuracy) Mends(outcomes []accuracy.Outcome, style quantity.Style) []string {
	var out []string
	for _, o := range outcomes {
		most, any := o.Largest()
		if o.Verdict() != accuracy.LikelyMore || !any {
			continue
		}
		out = append(out, fmt.Sprintf(a.Mend, a.Measures[o.Kind], style.Length(most.RSS), a.Causes[most.Cause], a.Halves[most.Cause],
			style.Length(o.Halved())))
	}
	return out
}

func englishAccuracy() Accuracy {
	return Accuracy{
		Measures: identified(accuracy.MeasureKindCount),
		Verdicts: map[accuracy.Verdict]string{
			accuracy.Within:     "within, even at worst",
			accuracy.LikelyMet:  "likely within",
			accuracy.LikelyMore: "likely more than allowed",
		},
		Notes: map[accuracy.Note]string{
			accuracy.SetIsOne:  "permanent first-load stretch is the same part of every cord, so that it acts on the level as one error",
			accuracy.SetCutOff: "what the first load stretches for good is cut off; half of it may come or not (own choice)",
			accuracy.SetPulled: "the first load's stretch is pulled out before the nodes are marked; a fifth of it is still to come (own choice)",
			accuracy.LinesTrue: "hang lines are adjusted on the spot and count as true",
			accuracy.Likeliest: "this is the likeliest set of adjustments that levels the tips, and no finding of which part is wrong: " +
				"the heights cannot tell",
			accuracy.LevelAlready: "the tips are level within twice what can be told of them: leave everything as it is",
			accuracy.BySleeper: "a sleeper lies aside by no one knows how much, which rolls both bars: only end against end and one bar's roll " +
				"against the other's are judged; read under a weight to know more",
			accuracy.AnyLines:  "the design has no hang lines: they are taken to be set by hand as far as need be",
			accuracy.ReadAgain: "read again after the third night",
			accuracy.Lively: "under this load the bed rolls so easily that its tips say where the load lies, and not how the bed was made: " +
				"lay the weight flatter and along more of the bed, and read again",
			accuracy.Restless: "the bed is not found at rest under this load, so that its heights tell nothing: lay the weight along " +
				"more of the bed, " +
				"and read again",
			accuracy.SleeperCentred: "the sleeper keeps to the middle of the cloth",
		},
		Causes: identified(accuracy.CauseCount),
		Halves: map[accuracy.Cause]string{
			accuracy.Marking: "mark the cords to half of that",
			accuracy.Splices: "read every node off a tape under load before its buries are locked, " +
				"or splice to half of that and show it by five trial splices",
			accuracy.Contraction: "make four times as many trial splices",
			accuracy.FirstLoad:   "pull the cords to their lying tension, release and pull again before the nodes are marked",
			accuracy.Reading:     "read the tape to half of that",
			accuracy.BarCut:      "cut the bars to half of that",
			accuracy.Cutting:     "mark the cloth to half of that",
			accuracy.Sewing:      "sew the side seams to half of that",
			accuracy.Untested:    "make five trial splices and give their lengths",
			accuracy.Rigging:     "set hang lines and anchors to half of that",
		},
		Parts: identified(finished.Parts),
		Ways: map[accuracy.Way]string{
			accuracy.TakeIn: "take the eye in at the apex", accuracy.LetOut: "let the eye out at the apex",
			accuracy.Shorten: "make it shorter", accuracy.Lengthen: "make it longer",
			accuracy.Lower: "set it lower", accuracy.Raise: "set it higher",
		},
		By:   "%s: %s by %s",
		Mend: "%s: most of it, %s, comes from the %s; to halve that, %s: it would then be %s",
	}
}
