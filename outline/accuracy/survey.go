package accuracy

import (
	"slingloft/outline/cord"
	"slingloft/outline/design"
	"slingloft/outline/finished"
	"slingloft/outline/hung"
	"slingloft/outline/quantity"
)

// Corrected is what to set on a bed that was measured as it hung.
type Corrected struct {
	Advice
	Survey Survey
	Unread bool // the heights tell nothing: there is no advice, and the notes say why
	Notes  []Note
}

// SurveyOf returns what a design says was measured of its bed.
func SurveyOf(d design.Design) Survey {
	m := d.Hung
	s := Survey{Middle: m.Middle.Given, Apexes: m.Apexes[hung.Head].Given && m.Apexes[hung.Foot].Given,
		Under: Under(m.Under), Error: d.Accuracy.Height, Aside: m.Aside}
	s.Heights = finished.Heights{Tips: m.Tips, Middle: m.Middle.Z, Apex: [2]float64{m.Apexes[hung.Head].Z, m.Apexes[hung.Foot].Z}}
	if s.Under == Weight {
		s.Aside /= 3 // a limit, see [WeightAside]
	}
	return s
}

// Burden returns what the bed of a design was measured under; lying is its sleeper.
func Burden(d design.Design, lying finished.Weight) finished.Weight {
	if d.Hung.Under == design.TheSleeper {
		return lying
	}
	return DeadWeight(d.Bed, float64(d.Hung.Mass), d.Hung.From, d.Hung.To)
}

// BedOf returns a made bed as it is judged under a weight. The error is that of
// [finished.Hammock.Hang].
func BedOf(h finished.Hammock, d design.Design, set cord.Set, under finished.Weight) (Bed, error) {
	pose, err := h.Hang(finished.Change{}, under)
	if err != nil {
		return Bed{}, err
	}
	b := Bed{Designed: pose.Heights(), Bars: [2]float64{d.Bed.HeadBar, d.Bed.FootBar}, Knobs: KnobsOf(d, set)}
	b.Stack = Stack(h.Shape, d, set.Splicing, WorkingOf(d.Accuracy, set.Splicing.Shown.Estimate))
	b.Rates, err = h.Rates(pose)
	return b, err
}

const (
	// takenIn is by how much an eye can be taken in, mm: beyond, its bury reaches too
	// far down its cord. Own choice.
	takenIn = 40
	// anyLine is by how much a hang line is taken to be set that the design does not
	// know, and anchor by how much an anchor is moved up or down, mm: own choices.
	anyLine = 100
	anchor  = 150
)

// KnobsOf returns what can be set of a bed that hangs, in steps that a hand can set: 1
// mm or 1/16 in. An eye of a leg can be taken in, not let out; a loop has none. A hang
// line is set as far as its fastening goes; where it has a fixed eye that eye is taken
// in, or the anchor moved.
func KnobsOf(d design.Design, set cord.Set) []Knob {
	step := 1.0
	if d.Output.Inches {
		step = quantity.Inch / 16
	}
	var out []Knob
	if set.Variant == cord.Separate {
		for _, p := range finished.Legs() {
			out = append(out, Knob{Part: p, Shorter: takenIn, Step: step})
		}
	}
	for _, e := range hung.Ends() {
		line := Knob{Part: finished.LineOf(e), Shorter: anyLine, Longer: anyLine, Step: step, ByHand: true}
		for _, l := range set.Lines {
			switch {
			case l.Part != cord.LineAt(e):
			case l.Fastening.Adjustable():
				line.Shorter = (l.Longest - l.Shortest) / 2
				line.Longer = line.Shorter
			default:
				line = Knob{Part: line.Part, Shorter: takenIn, Step: step}
			}
		}
		out = append(out, line, Knob{Part: finished.AnchorOf(e), Shorter: anchor, Longer: anchor, Step: step, ByHand: true})
	}
	return out
}

// Notes returns what holds of the advice on a survey.
func (a Advice) Notes(s Survey, set cord.Set) []Note {
	out := []Note{Likeliest}
	if a.Level {
		out = []Note{LevelAlready}
	}
	if s.Under == Sleeper {
		out = append(out, BySleeper)
	}
	if len(set.Lines) == 0 {
		out = append(out, AnyLines)
	}
	return append(out, ReadAgain)
}
