package design

import "testing"

func TestHint(t *testing.T) {
	span := Bound{KeyBedSpan, 1500, AtLeast, "1500 mm"}
	kerf := Bound{KeySheetKerf, 0.2, AtMost, "0.2 mm"}
	for _, c := range []struct {
		hint Hint
		want string
	}{
		{Hint{}, ""},
		{Hint{Say: Say(LeaveOut)}, "leave it out"},
		{Hint{Bound: span}, "use 1500 mm or more"},
		{Hint{Bound: kerf}, "use 0.2 mm or less"},
		{Hint{Bound: kerf, Say: Say(OrSolid)}, "use 0.2 mm or less; leave it out for a solid bar"},
		{Hint{Bound: kerf, Instead: span}, "use 0.2 mm or less, or a bed.span of 1500 mm"},
		{Hint{Bound: kerf, Instead: span, With: []Key{KeySheetGap}},
			"use 0.2 mm or less, or a bed.span of 1500 mm; sheet.gap has to change as well"},
		{Hint{Bound: span, With: []Key{KeyBedHeadLeg, KeyBedFootLeg}},
			"use 1500 mm or more; bed.head_leg and bed.foot_leg has to change as well"},
	} {
		if got := English().Hint(c.hint); got != c.want {
			t.Errorf("%+v: %q, want %q", c.hint, got, c.want)
		}
	}
}

// A bound lies beyond another only on the side that it bounds.
func TestBound(t *testing.T) {
	for _, c := range []struct {
		a, b Bound
		want bool
	}{
		{Bound{Value: 5, Sense: AtLeast}, Bound{Value: 4, Sense: AtLeast}, true},
		{Bound{Value: 4, Sense: AtLeast}, Bound{Value: 5, Sense: AtLeast}, false},
		{Bound{Value: 4, Sense: AtMost}, Bound{Value: 5, Sense: AtMost}, true},
		{Bound{Value: 5, Sense: AtMost}, Bound{Value: 5, Sense: AtMost}, false},
		{Bound{Value: 5, Sense: AtLeast}, Bound{Value: 4, Sense: AtMost}, false},
		{Bound{}, Bound{}, false},
	} {
		if got := c.a.Beyond(c.b); got != c.want {
			t.Errorf("%+v beyond %+v: %t, want %t", c.a, c.b, got, c.want)
		}
	}
	for _, c := range []struct{ value, up, down float64 }{{100, 110, 90}, {-100, -90, -110}, {0, 0, 0}} {
		up := Bound{Value: c.value, Sense: AtLeast}.Further(0.1)
		down := Bound{Value: c.value, Sense: AtMost}.Further(0.1)
		if up != c.up || down != c.down {
			t.Errorf("a tenth beyond %g: %g and %g, want %g and %g", c.value, up, down, c.up, c.down)
		}
	}
}
