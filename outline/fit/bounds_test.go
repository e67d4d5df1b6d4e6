package fit_test

import (
	"errors"
	"fmt"
	"math"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"slingloft/outline/design"
	"slingloft/outline/fit"
	"slingloft/outline/hung"
	"slingloft/outline/quantity"
	_ "slingloft/outline/rapidtest"
)

// At its bounds a bed is proposed, just past them not: the fault names key and bound.
func TestBounds(t *testing.T) {
	for _, r := range []struct {
		name  string
		in    fit.Person
		key   string
		limit float64
	}{
		{"smallest", fit.Person{Stature: 1200, Mass: 70}, "", 0},
		{"too small", fit.Person{Stature: 1199, Mass: 70}, "sleeper.stature", 1200},
		{"tallest", fit.Person{Stature: 2300, Mass: 70}, "", 0},
		{"too tall", fit.Person{Stature: 2301, Mass: 70}, "sleeper.stature", 2300},
		{"lightest", fit.Person{Stature: 1700, Mass: 25}, "", 0},
		{"too light", fit.Person{Stature: 1700, Mass: 24.9}, "sleeper.mass", 25},
		{"heaviest", fit.Person{Stature: 1700, Mass: 300}, "", 0},
		{"too heavy", fit.Person{Stature: 1700, Mass: 300.1}, "sleeper.mass", 300},
		{"shoulders of a fifth", fit.Person{Stature: 1700, Mass: 70, Shoulders: 340}, "", 0},
		{"narrower shoulders", fit.Person{Stature: 1700, Mass: 70, Shoulders: 339}, "sleeper.shoulders", 340},
		{"shoulders of nine twentieths", fit.Person{Stature: 1700, Mass: 70, Shoulders: 765}, "", 0},
		{"wider shoulders", fit.Person{Stature: 1700, Mass: 70, Shoulders: 766}, "sleeper.shoulders", 765},
		{"no number", fit.Person{Stature: 1700, Mass: quantity.Kilograms(math.NaN())}, "sleeper.mass", 25},
	} {
		_, err := fit.Propose(r.in)
		var bad *hung.Impossible
		switch {
		case r.key == "":
			if err != nil {
				t.Errorf("%s: %v", r.name, err)
			}
		case !errors.As(err, &bad):
			t.Errorf("%s: %v, want a fault of %s", r.name, err, r.key)
		case fmt.Sprint(bad.Key) != r.key || math.Abs(bad.Limit-r.limit) > 1e-9:
			t.Errorf("%s: %s, limit %g; want %s, %g", r.name, bad.Key, bad.Limit, r.key, r.limit)
		}
	}
}

// An estimated breadth stays between 0.22 and 0.36 of the stature, where bodies are
// no cylinders of like density any more.
func TestEstimatedShoulders(t *testing.T) {
	// The survey's mean body: NATICK/TR-15/007, men and women.
	const stature, mass, shoulders = (1756.2 + 1628.5) / 2, (85.52 + 67.76) / 2, (510.4 + 450.3) / 2
	rapid.Check(t, func(t *rapid.T) {
		p := fit.Person{
			Stature: rapid.Float64Range(fit.LeastStature, fit.MostStature).Draw(t, "stature"),
			Mass:    quantity.Kilograms(rapid.Float64Range(fit.LeastMass, fit.MostMass).Draw(t, "mass")),
			Step:    0.001,
		}
		got, err := fit.Propose(p)
		if err != nil {
			t.Fatal(err)
		}
		want := shoulders * math.Sqrt(float64(p.Mass)/mass*stature/p.Stature)
		want = math.Max(0.22*p.Stature, math.Min(want, 0.36*p.Stature))
		if math.Abs(got.Sleeper.Shoulders-want) > 0.001 {
			t.Fatalf("%+v: %g, want %g", p, got.Sleeper.Shoulders, want)
		}
	})
	for name, r := range map[string]struct {
		mass quantity.Kilograms
		part float64
	}{"very light": {25, 0.22}, "very heavy": {300, 0.36}} {
		got, err := fit.Propose(fit.Person{Stature: 1700, Mass: r.mass, Step: 0.001})
		if err != nil {
			t.Fatal(err)
		}
		if math.Abs(got.Sleeper.Shoulders-r.part*1700) > 0.001 {
			t.Errorf("%s: %g, want %g of 1700", name, got.Sleeper.Shoulders, r.part)
		}
	}
}

// Where a reason names a proportion, the value is that part of the measure that it
// names: of the stature, the shoulder breadth, the span or its own bar.
func TestReasonsHold(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := fit.Person{
			Stature:   rapid.Float64Range(1300, 2200).Draw(t, "stature"),
			Mass:      quantity.Kilograms(rapid.Float64Range(35, 200).Draw(t, "mass")),
			OnSide:    rapid.Bool().Draw(t, "on side"),
			Shoulders: 0,
			Step:      0.001,
		}
		p.Shoulders = p.Stature * rapid.Float64Range(0.22, 0.4).Draw(t, "shoulders")
		got, err := fit.Propose(p)
		if err != nil {
			t.Fatal(err)
		}
		value := map[design.Key]float64{}
		named := 0
		for _, r := range got.Reasons {
			value[r.Key] = r.Value
			var of float64
			switch r.Why {
			case fit.SpanOfStature:
				of = p.Stature
			case fit.DropOnBack, fit.DropOnSide, fit.RoundOfShoulders:
				of = p.Shoulders
			case fit.DepthOfSpan:
				of = value["bed.span"]
			case fit.LegOfBar:
				of = value[design.Key(strings.TrimSuffix(string(r.Key), "_leg")+"_bar")]
			default:
				continue
			}
			named++
			if math.Abs(r.Value-r.Part*of) > 0.002 {
				t.Fatalf("%s = %g: said to be %g of %g", r.Key, r.Value, r.Part, of)
			}
		}
		if named != 6 {
			t.Fatalf("%d reasons name a proportion of a measure, want span, drop, round, depth and two legs", named)
		}
		if want := 0.9 * value["bed.head_bar"]; !p.OnSide && math.Abs(value["bed.foot_bar"]-want) > 0.002 {
			t.Fatalf("foot bar %g on the back, want %g", value["bed.foot_bar"], want)
		}
		if p.OnSide && value["bed.foot_bar"] != value["bed.head_bar"] {
			t.Fatalf("bars %g and %g on the side", value["bed.head_bar"], value["bed.foot_bar"])
		}
	})
}

// Cloth runs 100 mm beyond crown and soles, and the crown lies that far inside the
// head's end.
func TestRoomAtTheEnds(t *testing.T) {
	for _, stature := range []float64{1250, 1500, 1700, 1930, 2250} {
		got, err := fit.Propose(fit.Person{Stature: stature, Mass: 75, Step: 0.001})
		if err != nil {
			t.Fatal(err)
		}
		b := got.Bed
		crown := b.HeadTail + got.Sleeper.Crown
		soles := b.HeadTail + b.Span + b.FootTail - crown - stature
		if math.Abs(crown-100) > 0.01 || math.Abs(soles-100) > 0.01 {
			t.Errorf("%g mm: %g mm of cloth beyond the crown, %g beyond the soles", stature, crown, soles)
		}
	}
}

// Values are whole steps, 10 mm unless another is asked for.
func TestSteps(t *testing.T) {
	for _, step := range []float64{0, 1, 5, 12.7, 25.4} {
		got, err := fit.Propose(fit.Person{Stature: 1734, Mass: 71, Step: step})
		if err != nil {
			t.Fatal(err)
		}
		whole := step
		if step == 0 {
			whole = 10
		}
		for _, r := range got.Reasons {
			if n := r.Value / whole; math.Abs(n-math.Round(n)) > 1e-9 {
				t.Errorf("step %g: %s = %g", step, r.Key, r.Value)
			}
		}
	}
}
