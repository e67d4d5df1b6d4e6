package design

import (
	"slices"

	"slingloft/outline/quantity"
)

// Guest is somebody else who is to lie in the bed that is made for its sleeper.
type Guest struct {
	Name string // for people
	Sleeper
}

func guestRows() []row {
	one := func(d *Design) *Guest { return last(d.Guests) }
	return []row{
		text(KeyGuestName, 60, func(d *Design) *string { return &one(d).Name }).
			says("Who it is.", "A friend", "A friend").needed(),
		length(KeyGuestStature, 500, 2500, func(d *Design) *float64 { return &one(d).Stature }).
			says("Standing height.", "1850 mm", "6 ft 1 in").needed().known("height", "length", "size"),
		measure(KeyGuestMass, 1, 300, func(d *Design) *quantity.Kilograms { return &one(d).Mass }).
			says("Mass.", "95 kg", "209 lb").needed().known("weight"),
		length(KeyGuestCrown, -1500, 3000, func(d *Design) *float64 { return &one(d).Crown }).
			says("Where the top of the head lies, from the head bar towards the foot; negative over the tail.", "-120 mm",
				"-4 3/4 in").needed().known("head"),
		length(KeyGuestShoulders, 100, 1000, func(d *Design) *float64 { return &one(d).Shoulders }).
			says("Breadth over the shoulders; left out, it is estimated.", "500 mm", "19 3/4 in").known("shoulder", "shoulder_breadth"),
		option(KeyGuestLies, func(d *Design) *Posture { return &one(d).Lies }, "back", "side").
			says("How the guest lies. Left out, on the back.", "back", "back").known("sleeps", "posture", "position"),
	}
}

// guestList returns the array of tables of the guests.
func guestList() repeated {
	return repeated{key: KeyGuest, limit: 20, doc: "Other sleepers: what each would find in this bed as it is made.",
		grow:  func(d *Design) { d.Guests = append(slices.Clip(d.Guests), Guest{}) },
		count: func(d *Design) int { return len(d.Guests) },
		pick: func(d Design, i int) Design {
			d.Guests = d.Guests[i : i+1]
			return d
		}}
}

// checkGuests keeps every guest on the cloth, from crown to soles.
func (r *reader) checkGuests() {
	b := r.design.Bed
	if r.bad[KeyGuest] || !r.good(KeyBedSpan, KeyBedHeadTail, KeyBedFootTail, KeyBedLift) {
		return
	}
	foot := b.Span/r.tilted() + b.FootTail
	for i, g := range r.design.Guests {
		one := KeyGuest.Item(i + 1)
		crown := one.In(KeyGuestCrown.Name())
		switch {
		case !r.good(crown, one.In(KeyGuestStature.Name())):
		case g.Stature > b.HeadTail+foot:
			stature := one.In(KeyGuestStature.Name())
			r.bounded(stature, Found(GuestTooLong), r.atMost(stature, foot-max(g.Crown, -b.HeadTail))) // with the crown where it is
		case g.Crown < -b.HeadTail:
			r.bounded(crown, Found(GuestHeadOff), r.atLeast(crown, -b.HeadTail))
		case g.Crown+g.Stature > foot:
			r.bounded(crown, Found(GuestFeetOff), r.atMost(crown, foot-g.Stature))
		}
	}
}
