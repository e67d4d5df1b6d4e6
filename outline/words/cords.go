package words

import (
	"fmt"
	"strconv"
	"strings"

	"slingloft/outline/cord"
	"slingloft/outline/quantity"
)

// Cords says what belongs to the cord set.
type Cords struct {
	Rigging  map[cord.Rigging]string
	Parts    map[cord.Part]string
	Spots    map[cord.SpotKind]string
	Branches map[cord.Branch]string
	// OnBranch joins a branch and a kind of spot, in this order, and SecondRun marks
	// what lies on the second run of a loop.
	OnBranch  string
	SecondRun string
	Terms     map[cord.TermKind]string
	Steps     map[cord.StepKind]string
	Notes     map[cord.NoteKind]string // with the verbs that [Cords.Note] fills in
}

// Spot names a place on a cord.
func (c Cords) Spot(s cord.Spot) string {
	out := c.Spots[s.Kind]
	if s.On != cord.Alone {
		out = fmt.Sprintf(c.OnBranch, c.Branches[s.On], out)
	}
	if s.Second {
		out = fmt.Sprintf(c.SecondRun, out)
	}
	return out
}

// Note says a remark.
func (c Cords) Note(n cord.Note, style quantity.Style) string {
	text := c.Notes[n.Kind]
	switch n.Kind {
	case cord.BuryByDiameter:
		return fmt.Sprintf(text, cord.BuryDiameters)
	case cord.TestedOften:
		return fmt.Sprintf(text, n.Shown.Kappa.Value, n.Shown.Kappa.Error, n.Shown.Pieces, n.Shown.Scatter)
	case cord.TestedOnce:
		return fmt.Sprintf(text, n.Shown.Kappa.Value, n.Shown.Kappa.Error)
	case cord.TestedTogether:
		return c.together(text, n.Shown, style)
	case cord.CrossingTested:
		return fmt.Sprintf(text, style.Length(n.Shown.Loss.Value), style.Length(n.Shown.Loss.Error))
	case cord.TestedOdd:
		return fmt.Sprintf(text, numbered(n.Shown.Odd))
	case cord.LineFixed:
		return fmt.Sprintf(text, c.Parts[n.Line.Part], rounded(style).Length(n.Line.Longest))
	case cord.LineSet:
		return fmt.Sprintf(text, c.Parts[n.Line.Part], rounded(style).Length(n.Line.Shortest), rounded(style).Length(n.Line.Longest))
	case cord.HookTaken:
		return fmt.Sprintf(text, style.Thick(n.Measure))
	}
	return text
}

// together says what eyes of one bury show, and which would tell it from the crossing.
func (c Cords) together(text string, s cord.Shown, style quantity.Style) string {
	whole := rounded(style)
	return fmt.Sprintf(text, whole.Length(s.WholeBuried), style.Length(s.Whole.Value), style.Length(s.Whole.Error),
		style.Length(s.Loss.Value), s.Kappa.Value, s.Apart.Count, whole.Length(s.Apart.Buried))
}

// numbered lists numbers: "2, 5".
func numbered(all []int) string {
	out := make([]string, len(all))
	for i, n := range all {
		out[i] = strconv.Itoa(n)
	}
	return strings.Join(out, ", ")
}

// NotesOf says the remarks to a cord set, with lengths in a style.
func (c Cords) NotesOf(s cord.Set, style quantity.Style) []string {
	var out []string
	for _, n := range s.Notes {
		out = append(out, c.Note(n, style))
	}
	return out
}

func englishCords() Cords {
	return Cords{
		Rigging:   identified(cord.RiggingCount),
		Parts:     identified(cord.PartCount),
		Spots:     with(identified(cord.SpotKindCount), map[cord.SpotKind]string{cord.BuryEnd: "bury stops", cord.Hook: "hanging point"}),
		Branches:  identified(cord.BranchCount),
		OnBranch:  "%s %s",
		SecondRun: "%s, second run",
		Terms:     with(identified(cord.TermKindCount), englishTerms()),
		Steps:     with(identified(cord.StepKindCount), englishSplices()),
		Notes: map[cord.NoteKind]string{
			cord.BuryByDiameter: "bury %d cord diameters: common practice, no source",
			cord.TaperByThird:   "taper the last third of a bury: common practice, no source",
			cord.TestedOften:    "contraction %.3f ± %.3f from %d trial splices, with a scatter of %.3f from splice to splice",
			cord.TestedOnce:     "contraction %.3f ± %.3f from a single trial splice: make more to know its scatter",
			cord.TestedTogether: "the trial splices cannot tell bury and crossing apart: an eye with %s buried loses %s ± %s in all, " +
				"and with a loss of %s " +
				"in the crossing, as stated, the contraction is %.3f; %d more eyes with %s buried would tell them apart",
			cord.CrossingTested: "loss in an eye's crossing %s ± %s from the trial splices",
			cord.TestedOdd:      "look again at trial splice %s: it lies further off the others than chance explains",
			cord.NoContraction:  "contraction taken as none: make a trial splice and enter it under [[splice.trial]]",
			cord.UntestedGiven:  "contraction as given, not from a trial splice: make one before cutting",
			cord.LineFixed: "%s: %s from apex to anchor and no other length; the anchor has to be where it is planned, " +
				"or give it an eye that slides, a strap or a hitch (hang.fastening)",
			cord.LineSet:          "%s: can be set from %s to %s, from apex to anchor",
			cord.HookTaken:        "eyes are taken to hang on a hook or ring %s thick: own choice",
			cord.SpreadLeftOut:    "the spread of the tip gap round the bar's tip is not counted",
			cord.NotShortened:     "cords not shortened for their stretch: bed.compensate is off",
			cord.SideNotShortened: "side cord not shortened for its stretch: its stiffness is not given",
			cord.LegsNotShortened: "legs not shortened for their stretch: their stiffness is not given",
		},
	}
}

// englishTerms are the terms of a cut length that people call otherwise than documents do:
// the end of a cord is no tail, and what an eye hangs on is the apex.
func englishTerms() map[cord.TermKind]string {
	return map[cord.TermKind]string{
		cord.TipToHook: "bar tip to apex", cord.LessEyeReach: "less the eye's reach at the apex", cord.HookToHook: "clear length, hung",
		cord.LessEyesReach: "less the reach of two eyes to their hanging points", cord.SlidingTail: "working end of the sliding eye",
		cord.LessReach: "less the eye's reach to its hanging point", cord.RunsToHead: "two runs from tip to head apex",
		cord.RunsToFoot: "two runs from tip to foot apex", cord.RoundHooks: "round both apexes",
		cord.LessStretch: "less stretch under the sleeper, beyond the light pull",
		cord.LessSet:     "less the permanent first-load stretch",
	}
}

// englishSplices are likewise the steps of splicing.
func englishSplices() map[cord.StepKind]string {
	return map[cord.StepKind]string{
		cord.DrawHeadTails: "draw the head end of the side cord into the head leg to its shoulder, then the end of the leg into the side cord",
		cord.DrawSideTail:  "draw the end of the side cord into the leg to its shoulder",
		cord.DrawEndTail:   "draw the end of the loop into its start, to its shoulder",
		cord.DrawStartTail: "draw the start of the loop into its end, to its shoulder",
		cord.DrawThrough: "draw the working end in at the far throat, through the bury and out where it stops, with no crossing and no stitch, " +
			"until the set mark shows there; knot the end",
		cord.SlideTail: "draw the working end out to shorten the line by half as much; push it back to let the line out",
	}
}
