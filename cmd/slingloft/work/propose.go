package work

import (
	"errors"
	"fmt"
	"math"

	"slingloft/outline/design"
	"slingloft/outline/fit"
	"slingloft/outline/hung"
	"slingloft/outline/quantity"
	"slingloft/outline/rig"
)

// Wish is whom a design is proposed for and on what cloth. Stature, Mass, Shoulders
// and ClothWidth are the maker's own words, so that the file has them as given.
type Wish struct {
	Person     fit.Person
	Stature    string
	Mass       string
	Shoulders  string // empty: estimated
	ClothWidth string // empty: that of the starter file
	Inches     bool
}

// Proposal is a design that is proposed, as text with its reasons, and what follows
// from it.
type Proposal struct {
	Text   string
	Plan   Plan
	Values []Value
	Joins  int // that the cloth makes necessary
}

// lineRoom is the length left at each end for a hang line, mm: own choice.
const lineRoom = 700.0

// Propose writes a design for a person. The error is a [hung.Impossible] for a
// person that no bed is proposed for, or [design.Faults] where the cloth does not
// do.
func Propose(name string, w Wish) (Proposal, error) {
	bed, err := fit.Propose(w.Person)
	if err != nil {
		return Proposal{}, err
	}
	s, err := hung.Solve(hung.ProblemOf(design.Design{Sleeper: bed.Sleeper, Bed: bed.Bed}))
	if err != nil {
		return Proposal{}, err
	}
	out := Proposal{Values: w.values(bed, &s)}
	about := fmt.Sprintf("Proposed for a sleeper of %s and %s who lies on the %s. Take it or change any part of "+
		"it; cords, bars, cloth and sheets below are examples, to be replaced by what you have.",
		w.Stature, w.Mass, w.lies())
	for joins := 0; ; joins++ {
		values := out.Values
		if joins > 0 {
			values = append(values[:len(values):len(values)], Value{Key: design.KeyClothJoins, Value: fmt.Sprint(joins),
				Why: "the body is wider than the roll; it can be cut with " + English().Joins[joins]})
		}
		if out.Text, err = design.StarterFor(w.Inches, about, inFiles(values)); err != nil {
			return out, err
		}
		out.Plan, err = Read(name, []byte(out.Text))
		if err == nil || joins == 2 || !aboutWidth(err) {
			out.Values, out.Joins = values, joins
			return out, err
		}
	}
}

// aboutWidth reports whether a design failed for nothing but the roll's width.
func aboutWidth(err error) bool {
	var f design.Faults
	return errors.As(err, &f) && len(f) == 1 && f[0].Key == design.KeyClothWidth
}

func (w Wish) lies() string {
	if w.Person.OnSide {
		return "side"
	}
	return "back"
}

// values lists what is proposed: the person as given, the bed with its reasons, and
// a distance of the supports that leaves room for hang lines.
func (w Wish) values(bed fit.Proposal, s *hung.Shape) []Value {
	out := []Value{
		{Key: design.KeySleeperStature, Value: w.Stature, Asked: true, Why: given},
		{Key: design.KeySleeperMass, Value: w.Mass, Asked: true, Why: given},
		{Key: design.KeySleeperLies, Value: w.lies(), Asked: true, Why: asked},
	}
	for _, r := range bed.Reasons {
		v := Value{Key: r.Key, Value: w.length(r.Value), Why: r.Why, Source: r.Source}
		if r.Key == design.KeySleeperShoulders && w.Shoulders != "" {
			v.Value = w.Shoulders
		}
		out = append(out, v)
	}
	over := rig.Overall(s)
	step := 100.0
	if w.Inches {
		step = 6 * quantity.Inch
	}
	out = append(out, Value{Key: design.KeyHangDistance, Value: w.length(step * math.Ceil((over+2*lineRoom)/step)), Source: "own choice",
		Why: fmt.Sprintf("the bed measures %s from hook to hook; the rest leaves room for the hang lines", w.length(over))})
	if w.Inches {
		out = append(out, Value{Key: design.KeyOutputUnits, Value: "in", Asked: true, Why: asked})
	}
	if w.ClothWidth != "" {
		out = append(out, Value{Key: design.KeyClothWidth, Value: w.ClothWidth, Asked: true, Why: given})
	}
	return out
}

// length writes a length as the file has them.
func (w Wish) length(mm float64) string {
	return quantity.Style{Inches: w.Inches, Fraction: 4}.Length(mm)
}
