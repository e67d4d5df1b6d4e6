package work

import (
	"fmt"

	"slingloft/outline/design"
	"slingloft/outline/fit"
	"slingloft/outline/quantity"
)

// ProposalWords says in a proposed design why its values are what they are.
type ProposalWords struct {
	// ForChildren is said first of a bed for one who may be a child.
	ForChildren string
	About       string                    // stature, mass, how the sleeper lies
	Lies        map[design.Posture]string // for that

	Given, Asked string // reasons of what is not proposed, as sentences
	// Reasons and Sources are without a full stop. A reason holds its [fit.Reason.Part],
	// of cloth past a bar a length.
	Reasons map[fit.Why]string
	Sources map[fit.Source]string

	Tube                               string // name of a tube: outer diameter, wall
	LeastTube, OuterOfTube, WallOfTube string
	RoomForLines                       string // length of the bed from apex to apex
	OwnCord                            string // name of a cord at hand: its diameter
	NodesRead                          string
	JoinedWith                         string // joins

	Because    string // in the file: why
	Whole      string // why
	WithSource string // why, source
}

// reason says why a value is proposed.
func (w ProposalWords) reason(r fit.Reason, inches bool) string {
	var part any = r.Part
	switch {
	case r.Part == 0:
		return w.Reasons[r.Why]
	case r.Why == fit.BarForElbows, r.Why == fit.BarForKnees:
		part = quantity.Style{Inches: inches, Fraction: 4}.Length(r.Part)
	case r.Why == fit.RoomPastBar:
		part = quantity.Style{Inches: inches, Fraction: 2}.Length(r.Part)
	}
	return fmt.Sprintf(w.Reasons[r.Why], part)
}

func englishProposal() ProposalWords {
	return ProposalWords{
		// It rests on the US Consumer Product Safety Commission's warnings of strangling in
		// hammocks (release 96-183) and common practice.
		ForChildren: "For a child: a child stays out of it without an adult who watches. Cords, cloth and net can go round a neck and kill. " +
			"Hang it no higher than a seat, let nobody swing or wrap up in it, and take it down when it is not in use.",
		About: "Proposed for a sleeper of %s and %s who lies on the %s. Take it or change any part of " +
			"it; cords, cloth and sheets below are examples, to be replaced by what you have.",
		Lies:  map[design.Posture]string{design.OnBack: "back", design.OnSide: "side"},
		Given: "As given.", Asked: "As asked.",
		Reasons: map[fit.Why]string{
			fit.ShouldersGiven:     "breadth over both shoulders",
			fit.ShouldersEstimated: "estimated: the survey's mean breadth times √(mass / stature) over that of its mean body",
			fit.SpanOfStature:      "%.2f of the stature: the bars cross above brow and ankles, the shoulders lie well inside",
			fit.RoomPastBar:        "carries head or feet past the bar, with about %s of cloth beyond",
			fit.SameRoom:           "leaves the same room beyond crown and soles",
			fit.BarOnBack:          "%.2f of the shoulder breadth for one who sleeps on the back, so that the walls do not press on the shoulders",
			fit.BarOnSide:          "%.2f of the shoulder breadth for one who sleeps on the side, so that the walls do not press on the shoulders",
			fit.BarForElbows: "so long that between the cords the elbows of one who sleeps on the back have %s to spare, and the " +
				"shoulders more",
			fit.BarForKnees:      "so long that between the cords the knees of one who sleeps on the side, drawn up, have %s to spare",
			fit.FootNarrower:     "a little narrower than the head bar: feet need less room and the bar weighs less",
			fit.FootAsHead:       "as the head bar: drawn-up knees need the room",
			fit.DropOnBack:       "%.2f of the shoulder breadth: deep enough to lie safely, flat enough for one who sleeps on the back",
			fit.DropOnSide:       "%.2f of the shoulder breadth: deep enough to lie safely, flat enough for one who sleeps on the side",
			fit.RoundOfShoulders: "%.2f of the shoulder breadth: the back's round",
			fit.DepthOfSpan:      "%.3f of the span: deeper is slacker and narrower in the middle, shallower pulls harder on cords and bars",
			fit.LongestAtHand:    "the longest bar at hand; the shoulders ask for a longer one, and the walls will press a little",
			fit.LegOfBar:         "%.2f of its bar: the legs then meet at about 61°, and push on the bar with about half their own pull",
		},
		Sources: map[fit.Source]string{
			fit.Given:     "as given",
			fit.OwnChoice: "own choice",
			fit.Survey: "own choice of the proportion; body measure: C. C. Gordon et al., 2012 Anthropometric Survey of U.S. Army Personnel, " +
				"NATICK/TR-15/007 (an army sample, fitter than others)",
		},
		OwnCord:      "cord of %s at hand",
		Tube:         "aluminium tube %s x %s",
		LeastTube:    "the least of a few common tubes of 6061-T6 of which both bars hold what is asked of them",
		OuterOfTube:  "goes with the tube; a longer bar needs a thicker one and longer legs",
		WallOfTube:   "goes with the tube",
		RoomForLines: "the bed measures %s from apex to apex; the rest leaves room for the hang lines",
		NodesRead: "splices scatter by more than the bed may be off level: every node is read off a tape and set right before " +
			"its buries are locked",
		JoinedWith: "the body is wider than the roll; it can be cut with %s",
		Because:    "Proposed: %s", Whole: "%s.", WithSource: "%s. Source: %s.",
	}
}
