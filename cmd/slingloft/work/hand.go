package work

import (
	"fmt"
	"slices"

	"slingloft/outline/design"
)

// Hand is what a maker has at hand and where it is to hang, in the maker's own words.
// What is empty is not known.
type Hand struct {
	Distance string // between the anchors
	Height   string // up to which they can be reached
	Cord     string // diameter of a cord
	Strength string // of that cord, from its data sheet

	// Takes are things on the shelf, by the keys that take them.
	Takes map[design.Key]string
}

// given returns what is at hand as values of a design. The strength of a cord that is
// not known is no value: none is assumed.
func (w Wish) given() []Value {
	say := w.words().Proposal
	var out []Value
	put := func(key design.Key, value string) {
		if value != "" {
			out = append(out, Value{Key: key, Value: value, Asked: true, Why: say.Given})
		}
	}
	put(design.KeyHangDistance, w.AtHand.Distance)
	put(design.KeyHangHeight, w.AtHand.Height)
	if w.AtHand.Cord == "" {
		return out
	}
	for _, table := range bedCords() {
		put(table.In(design.KeyCordSideName.Name()), fmt.Sprintf(say.OwnCord, w.AtHand.Cord))
		put(table.In(design.KeyCordSideDiameter.Name()), w.AtHand.Cord)
		put(table.In(design.KeyCordSideStrength.Name()), w.AtHand.Strength)
	}
	return out
}

// bedCords are the tables of the cords that the bed itself is made of.
func bedCords() []design.Key { return []design.Key{design.KeyCordSide, design.KeyCordLeg} }

// over returns values with others in the place of those of the same keys.
func over(values, others []Value) []Value {
	values = slices.DeleteFunc(slices.Clone(values), func(v Value) bool {
		return slices.ContainsFunc(others, func(o Value) bool { return o.Key == v.Key })
	})
	return append(values, others...)
}

// taken returns a proposed design that takes what is at hand from the shelf, and has no
// strength of a cord that is not known.
func (w Wish) taken(text string) (string, error) {
	t, err := design.OpenText("", []byte(text))
	if err != nil {
		return "", err
	}
	set := func(key design.Key, value string) {
		if err == nil {
			t, err = t.Set(key, value)
		}
	}
	if w.AtHand.Cord != "" && w.AtHand.Strength == "" {
		for _, table := range bedCords() {
			set(table.In(design.KeyCordSideStrength.Name()), "")
		}
	}
	for _, use := range []design.Key{design.KeyCordSideUse, design.KeyCordLegUse, design.KeyClothUse, design.KeyBarUse} {
		if w.AtHand.Takes[use] == "" {
			continue
		}
		for _, key := range design.TakenBy(use) {
			if err == nil {
				t, err = t.Strike(key)
			}
		}
		set(use, w.AtHand.Takes[use])
	}
	return string(t.Bytes()), err
}
