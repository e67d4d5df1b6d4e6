package accuracy_test

import (
	"math"
	"slices"
	"testing"

	"slingloft/outline/accuracy"
	"slingloft/outline/cord"
	"slingloft/outline/design"
	"slingloft/outline/finished"
	"slingloft/outline/hung"
)

// What a stack comes to by hand: one error of 3 mm in one leg that drops the head by 2 per
// mm, one of 4 that acts on two legs at once and cancels across, and one that is set right
// on the spot and counts for nothing.
func TestOutcomesByHand(t *testing.T) {
	var rates [finished.Parts]finished.Level
	rates[finished.HeadLeftLeg] = finished.Level{Along: -2, Across: [2]float64{1, 0.5}, Sag: 0.1}
	rates[finished.HeadRightLeg] = finished.Level{Along: -2, Across: [2]float64{-1, -0.5}, Sag: 0.1}
	one, both := accuracy.Component{Cause: accuracy.Marking}, accuracy.Component{Cause: accuracy.FirstLoad}
	line := accuracy.Component{Cause: accuracy.Rigging}
	one.Off[finished.HeadLeftLeg] = 3
	both.Off[finished.HeadLeftLeg], both.Off[finished.HeadRightLeg] = 4, 4
	line.Off[finished.HeadLeftLeg] = 100
	out := accuracy.Outcomes([]accuracy.Component{one, both, line}, rates, 17.2)
	for k, want := range []struct{ worst, rss float64 }{
		accuracy.Along: {6 + 16, math.Hypot(6, 16)}, accuracy.AcrossHead: {3, 3}, accuracy.AcrossFoot: {1.5, 1.5},
		accuracy.Sag: {0.3 + 0.8, math.Hypot(0.3, 0.8)},
	} {
		o := out[k]
		near(t, o.Kind.String()+", worst", o.Worst, want.worst, 1e-12)
		near(t, o.Kind.String()+", rss", o.RSS, want.rss, 1e-12)
		parts := 0.0
		for i, s := range o.Shares {
			parts += s.Part
			near(t, "part of the square", s.Part, s.RSS*s.RSS/(o.RSS*o.RSS), 1e-12)
			if i > 0 && s.Part > o.Shares[i-1].Part {
				t.Errorf("%v: shares out of order: %+v", o.Kind, o.Shares)
			}
		}
		near(t, "parts together", parts, 1, 1e-12)
	}
	along := out[accuracy.Along]
	if l, ok := along.Largest(); !ok || l.Cause != accuracy.FirstLoad || along.Sure || !along.Likely {
		t.Errorf("%+v", along)
	}
	near(t, "with the set halved", along.Halved(), 10, 1e-12) // √(6² + 8²)
	none := accuracy.Outcomes([]accuracy.Component{line}, rates, 1)[0]
	if len(none.Shares) != 0 || none.RSS != 0 || none.Halved() != 0 || !none.Sure {
		t.Errorf("nothing is off: %+v", none)
	}
	if _, ok := (accuracy.Outcome{}).Largest(); ok {
		t.Error("the largest share of none")
	}
}

// Half of each cause's own measure; of rigging half of the larger.
func TestHalfOfACause(t *testing.T) {
	w := accuracy.Working{Marking: 2, Scatter: 0.04, Kappa: 0.06, Set: 0.008, Tape: 1, Bar: 3, Sewing: 5, Line: 7, Anchor: 9}
	for c, want := range map[accuracy.Cause]float64{
		accuracy.Marking: 1, accuracy.Splices: 0.02, accuracy.Contraction: 0.03, accuracy.FirstLoad: 0.004, accuracy.Reading: 0.5,
		accuracy.BarCut: 1.5, accuracy.Cutting: 1, accuracy.Sewing: 2.5, accuracy.Rigging: 4.5, accuracy.Untested: 0.03,
	} {
		near(t, c.String(), w.Half(c), want, 1e-15)
	}
	w.Line = 11
	near(t, "lines that are set worse than anchors", w.Half(accuracy.Rigging), 5.5, 1e-15)
}

// What can be set: eyes of legs are taken in alone, a loop has none; lines go both ways as
// far as their fastening, one with a fixed eye is taken in; anchors go up and down. Steps are
// those of a hand.
func TestKnobs(t *testing.T) {
	var d design.Design
	slides := cord.HangLine{Cord: cord.Cord{Part: cord.HeadLine}, Fastening: cord.Hitched, Shortest: 800, Longest: 1100}
	fixed := cord.HangLine{Cord: cord.Cord{Part: cord.FootLine}, Fastening: cord.FixedEye, Shortest: 900, Longest: 900}
	for _, r := range []struct {
		name   string
		inches bool
		set    cord.Set
		legs   int
		lines  [2]accuracy.Knob
	}{
		{"nothing known", false, cord.Set{Variant: cord.Separate}, 4, [2]accuracy.Knob{
			{Shorter: 100, Longer: 100, Step: 1, ByHand: true}, {Shorter: 100, Longer: 100, Step: 1, ByHand: true}}},
		{"a loop, in inches", true, cord.Set{Variant: cord.Loops, Lines: []cord.HangLine{slides, fixed}}, 0, [2]accuracy.Knob{
			{Shorter: 150, Longer: 150, Step: 1.5875, ByHand: true}, {Shorter: 40, Step: 1.5875}}},
	} {
		d.Output.Inches = r.inches
		step := map[bool]float64{false: 1, true: 25.4 / 16}[r.inches]
		legs, anchors := 0, 0
		for _, k := range accuracy.KnobsOf(d, r.set) {
			near(t, r.name+", step", k.Step, step, 1e-12)
			switch {
			case slices.Contains(finished.Legs(), k.Part):
				legs++
				if k.Longer != 0 || k.Shorter != 40 || k.ByHand {
					t.Errorf("%s: leg %+v", r.name, k)
				}
			case k.Part == finished.HeadAnchor || k.Part == finished.FootAnchor:
				anchors++
				if k.Longer != 150 || k.Shorter != 150 || !k.ByHand {
					t.Errorf("%s: anchor %+v", r.name, k)
				}
			default:
				want := r.lines[hung.Head]
				if k.Part == finished.FootLine {
					want = r.lines[hung.Foot]
				}
				want.Part, want.Step = k.Part, step
				if k != want {
					t.Errorf("%s: line %+v, want %+v", r.name, k, want)
				}
			}
		}
		if legs != r.legs || anchors != 2 {
			t.Errorf("%s: %d legs and %d anchors can be set", r.name, legs, anchors)
		}
	}
}

// What was measured goes over height by height; apexes count where both were, and how far a
// weight lies aside is a limit, three times the standard deviation.
func TestSurveyOfADesign(t *testing.T) {
	var d design.Design
	d.Hung = design.Hung{Given: true, Tips: [2][2]float64{{1, 2}, {3, 4}}, Middle: design.Height{Given: true, Z: 5}, Aside: 12}
	d.Hung.Apexes = [2]design.Height{{Given: true, Z: 6}, {Given: false, Z: 7}}
	d.Accuracy.Height = 2.5
	for _, r := range []struct {
		under design.Burden
		aside float64
	}{{design.TheSleeper, 12}, {design.DeadWeight, 4}} {
		d.Hung.Under = r.under
		s := accuracy.SurveyOf(d)
		want := finished.Heights{Tips: d.Hung.Tips, Middle: 5, Apex: [2]float64{6, 7}}
		if s.Apexes || !s.Middle || s.Error != 2.5 || s.Heights != want {
			t.Errorf("%+v", s)
		}
		near(t, "aside", s.Aside, r.aside, 1e-12)
	}
	d.Hung.Apexes[1].Given, d.Hung.Middle.Given = true, false
	if s := accuracy.SurveyOf(d); !s.Apexes || s.Middle {
		t.Errorf("%+v", s)
	}
	// A weight lies between two distances from the head bar: 40 kg over 800 mm in mid-bay.
	d.Bed.Span, d.Hung.Mass, d.Hung.From, d.Hung.To = 1500, 40, 350, 1150
	force, middle := accuracy.Burden(d, finished.Weight{}).Load.Total()
	near(t, "weight", force, 40*9.80665, 1e-9)
	near(t, "its middle", middle, 0, 1e-9)
	d.Hung.Under = design.TheSleeper
	if w := accuracy.Burden(d, finished.Weight{Centre: 77}); w.Centre != 77 {
		t.Errorf("under the sleeper: %+v", w)
	}
}

// The remarks on an advice: likeliest unless all is level, by whom, with which lines.
func TestNotesOfAdvice(t *testing.T) {
	lines := cord.Set{Lines: []cord.HangLine{{}}}
	for _, r := range []struct {
		level bool
		under accuracy.Under
		set   cord.Set
		want  []accuracy.Note
	}{
		{false, accuracy.Weight, lines, []accuracy.Note{accuracy.Likeliest, accuracy.ReadAgain}},
		{true, accuracy.Weight, lines, []accuracy.Note{accuracy.LevelAlready, accuracy.ReadAgain}},
		{false, accuracy.Sleeper, cord.Set{}, []accuracy.Note{accuracy.Likeliest, accuracy.BySleeper, accuracy.AnyLines, accuracy.ReadAgain}},
	} {
		if got := (accuracy.Advice{Level: r.level}).Notes(accuracy.Survey{Under: r.under}, r.set); !slices.Equal(got, r.want) {
			t.Errorf("%+v: %v, want %v", r, got, r.want)
		}
	}
	if accuracy.WhyNot(accuracy.ErrUnsteady) != accuracy.Lively || accuracy.WhyNot(accuracy.ErrNoHeight) != accuracy.Restless {
		t.Error("why there is no advice")
	}
}
