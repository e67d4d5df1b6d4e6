package design

import "slingloft/outline/quantity"

// Hung is what was measured of the bed once it hung. The zero value: nothing was.
type Hung struct {
	Given bool
	// Tips are the heights of the bar tips over any one level, mm: head and foot bar,
	// left and right of one who lies on the back.
	Tips     [2][2]float64
	Middle   Height    // of the bed's bottom at mid-bay
	Apexes   [2]Height // head and foot
	Under    Burden
	Mass     quantity.Kilograms // of a weight
	From, To float64            // along which a weight lies, from the head bar, mm
	Aside    float64            // how far its middle may lie from the middle line, mm; 0: not given
}

// Height is a height that may not have been measured.
type Height struct {
	Given bool
	Z     float64 // mm
}

// Burden is what a bed is measured under.
type Burden int

// The burdens.
const (
	DeadWeight Burden = iota // middle on a mark, turned by half a turn and read again, the mean of both
	TheSleeper
)

// String returns the burden's name, as designs and documents have it.
func (b Burden) String() string { return [...]string{"weight", "sleeper"}[b] }

// LeastWeight is the least dead weight that a bed is measured under.
const LeastWeight quantity.Kilograms = 20

const lowest, highest = -3000, 10000 // of heights over any one level, mm

func hungRows() []row {
	given := func(d *Design) bool { return d.Hung.Given }
	give := func(d *Design) { d.Hung.Given = true }
	tip := func(key Key, end, side int, where, mm, inch string) row {
		return length(key, lowest, highest, func(d *Design) *float64 { return &d.Hung.Tips[end][side] }).when(give, given).
			says("Height of the tip of the "+where+". Needed in this table.", mm, inch)
	}
	also := func(key Key, at func(*Design) *Height, doc, mm, inch string) row {
		return length(key, lowest, highest, func(d *Design) *float64 { return &at(d).Z }).
			when(func(d *Design) { give(d); at(d).Given = true }, func(d *Design) bool { return at(d).Given }).says(doc, mm, inch)
	}
	weighed := func(r row) row {
		return r.when(give, func(d *Design) bool { return d.Hung.Given && d.Hung.Under == DeadWeight })
	}
	return []row{
		tip(KeyHungHeadLeft, 0, 0, "head bar on the left of a sleeper on the back", "812 mm", "32 in"),
		tip(KeyHungHeadRight, 0, 1, "head bar on the right", "806 mm", "31 3/4 in"),
		tip(KeyHungFootLeft, 1, 0, "foot bar on the left", "795 mm", "31 1/4 in"),
		tip(KeyHungFootRight, 1, 1, "foot bar on the right", "801 mm", "31 1/2 in"),
		also(KeyHungMiddle, func(d *Design) *Height { return &d.Hung.Middle },
			"Height of the bed's bottom at mid-bay, if measured too.", "402 mm", "15 7/8 in").known("bottom"),
		also(KeyHungHeadApex, func(d *Design) *Height { return &d.Hung.Apexes[0] },
			"Height of the head apex, if both apexes were measured too.", "1120 mm", "44 in"),
		also(KeyHungFootApex, func(d *Design) *Height { return &d.Hung.Apexes[1] }, "Height of the foot apex.", "1090 mm", "43 in"),
		named(KeyHungUnder, func(d *Design) *Burden { return &d.Hung.Under }, []Burden{DeadWeight, TheSleeper}).
			when(give, given).
			says("What lay in it. A weight lies with its middle on a mark on the centre line, is turned by half a turn on the spot "+
				"and measured again; the mean of both counts. Under a sleeper only end against end and one bar's roll against the "+
				"other's can be told. Needed in this table.", "weight", "weight").known("load"),
		weighed(measure(KeyHungMass, LeastWeight, 300, func(d *Design) *quantity.Kilograms { return &d.Hung.Mass })).
			says("Mass of the weight. Needed with a weight.", "25 kg", "55 lb").known("weight"),
		weighed(length(KeyHungFrom, -1500, 5500, func(d *Design) *float64 { return &d.Hung.From })).
			says("Where the weight begins, from the head bar. Needed with a weight.", "250 mm", "10 in"),
		weighed(length(KeyHungTo, -1500, 5500, func(d *Design) *float64 { return &d.Hung.To })).
			says("Where it ends, from the head bar. Needed with a weight.", "1250 mm", "50 in"),
		length(KeyHungAside, 0.5, 100, func(d *Design) *float64 { return &d.Hung.Aside }).when(give, given).
			says("How far to the side of the centre line the middle of what lay in it may have been, either way; left out, 3 mm for a "+
				"weight and 10 mm for a sleeper.", "3 mm", "1/8 in"),
	}
}

// checkHung wants all that belongs to a reading, and a weight that lies on the bed.
func (r *reader) checkHung() {
	h, b := r.design.Hung, r.design.Bed
	if !r.source.Given(KeyHung) || r.bad[KeyHung] {
		return
	}
	need := []Key{KeyHungHeadLeft, KeyHungHeadRight, KeyHungFootLeft, KeyHungFootRight, KeyHungUnder}
	ofWeight := []Key{KeyHungMass, KeyHungFrom, KeyHungTo}
	if r.source.Given(KeyHungUnder) && h.Under == DeadWeight {
		need = append(need, ofWeight...)
	}
	if r.source.Given(KeyHungHeadApex) || r.source.Given(KeyHungFootApex) {
		need = append(need, KeyHungHeadApex, KeyHungFootApex)
	}
	for _, key := range need {
		if !r.seen(key) {
			r.lacks(r.keys.byKey[key])
		}
	}
	if !r.good(ofWeight...) || !r.good(KeyHungUnder) {
		return
	}
	if h.Under == TheSleeper {
		for _, key := range ofWeight {
			if r.source.Given(key) {
				r.conflict(key, Found(OfWeight), Say(LeaveOrWrite, `under = "weight"`))
			}
		}
		return
	}
	switch {
	case h.To <= h.From:
		r.bounded(KeyHungTo, Found(WeightBackwards), r.above(KeyHungTo, h.From))
	case !r.good(KeyBedSpan, KeyBedHeadTail, KeyBedFootTail):
	case h.From < -b.HeadTail:
		r.bounded(KeyHungFrom, Found(WeightOffHead), r.atLeast(KeyHungFrom, -b.HeadTail))
	case h.To > b.Span+b.FootTail:
		r.bounded(KeyHungTo, Found(WeightOffFoot), r.atMost(KeyHungTo, b.Span+b.FootTail))
	}
}
