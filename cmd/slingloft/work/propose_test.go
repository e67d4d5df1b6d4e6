package work_test

import (
	"errors"
	"fmt"
	"strconv"
	"strings"
	"testing"

	"slingloft/cmd/slingloft/work"
	"slingloft/outline/design"
	"slingloft/outline/fit"
	"slingloft/outline/hung"
	"slingloft/outline/quantity"
)

// wish returns a wish in round figures of either system of units.
func wish(stature float64, mass quantity.Kilograms, side, inches bool) work.Wish {
	w := work.Wish{Inches: inches, Person: fit.Person{Stature: stature, Mass: mass, OnSide: side}}
	w.Stature, w.Mass = fmt.Sprintf("%g mm", stature), fmt.Sprintf("%g kg", mass)
	if inches {
		w.Person.Step = quantity.Inch / 4
	}
	return w
}

// For everyone that a bed is proposed for, on the back and on the side, in mm and
// in inches, the file is a design that hangs, and its pieces can be cut.
func TestProposeForEveryone(t *testing.T) {
	statures := []float64{fit.LeastStature, 1480, 1725, 2010, fit.MostStature}
	masses := []quantity.Kilograms{fit.LeastMass, 58, 95, fit.MostMass}
	pairs := [][2]int{{0, 0}, {0, 1}, {0, 3}, {1, 0}, {2, 3}, {3, 2}, {4, 0}, {4, 2}, {4, 3}}
	for _, at := range pairs {
		i, k := at[0], at[1]
		stature, mass := statures[i], masses[k]
		side, inches := (i+k)%2 == 0, (i+2*k)%3 == 0
		p, err := work.Propose("p.toml", wish(stature, mass, side, inches))
		if err != nil {
			t.Errorf("%.0f mm, %.0f kg, on the side %t, inches %t: %v", stature, mass, side, inches, err)
			continue
		}
		checkProposal(t, p, side, inches)
		if len(p.Plan.Sewn.Joins) != p.Joins {
			t.Errorf("%.0f mm, %.0f kg: %d joins, the design allows %d", stature, mass, len(p.Plan.Sewn.Joins), p.Joins)
		}
	}
}

// checkProposal looks for every reason beside its value.
func checkProposal(t *testing.T, p work.Proposal, side, inches bool) {
	t.Helper()
	d := p.Plan.Design
	if (d.Sleeper.Lies == design.OnSide) != side || d.Output.Inches != inches {
		t.Errorf("lies %v, inches %v", d.Sleeper.Lies, d.Output.Inches)
	}
	flow := strings.Join(strings.Fields(strings.ReplaceAll(p.Text, "\n#", " ")), " ")
	for _, v := range p.Values {
		if v.Why == "" || !strings.Contains(flow, p.Plan.Words.Proposal.Reason(v)+" "+v.Key.Name()+" = ") {
			t.Errorf("%s: no reason %q beside it", v.Key, v.Why)
		}
		if v.Key == "bed.head_tail" && strings.Contains(v.Why, "mm of cloth beyond") == inches {
			t.Errorf("inches %v: %q", inches, v.Why)
		}
		if !v.Asked && v.Source == "" && v.Key != "cloth.joins" {
			t.Errorf("%s: no source: %q", v.Key, v.Why)
		}
	}
}

// A reason is printed with as many digits as its proportion has.
func TestProportionsPrinted(t *testing.T) {
	named := 0
	for _, side := range []bool{false, true} {
		p, err := fit.Propose(fit.Person{Stature: 1700, Mass: 70, OnSide: side})
		if err != nil {
			t.Fatal(err)
		}
		for _, r := range p.Reasons {
			if r.Part == 0 || r.Why == fit.RoomPastBar || r.Why == fit.BarForElbows || r.Why == fit.BarForKnees { // those name a length
				continue
			}
			named++
			text := fmt.Sprintf(work.English().Proposal.Reasons[r.Why], r.Part)
			if number, _, _ := strings.Cut(text, " "); strings.TrimRight(number, "0") != strconv.FormatFloat(r.Part, 'f', -1, 64) {
				t.Errorf("%s: %q of %g", r.Key, text, r.Part)
			}
		}
	}
	if named != 12 {
		t.Errorf("%d reasons name a proportion, want span, drop, round, depth and two legs, twice", named)
	}
}

// What is given stands in the file as given, and the cloth that is given decides
// about joins.
func TestProposeAsGiven(t *testing.T) {
	w := wish(1720, 80, false, false)
	w.Stature, w.Mass = "172 cm", "176 lb"
	w.Shoulders, w.Person.Shoulders = "47.5 cm", 475
	joins := 0
	for _, width := range []string{"2 m", "95 cm", "60 cm"} {
		w.ClothWidth = width
		p, err := work.Propose("p.toml", w)
		if err != nil {
			t.Fatalf("%s: %v", width, err)
		}
		for _, want := range []string{`stature = "172 cm"`, `mass = "176 lb"`, `shoulders = "47.5 cm"`, `width = "` + width + `"`} {
			if !strings.Contains(p.Text, "\n"+want) {
				t.Errorf("%s: the file does not say %s", width, want)
			}
		}
		if p.Joins != joins || p.Plan.Design.Sleeper.Shoulders != 475 {
			t.Errorf("%s: %d joins, want %d", width, p.Joins, joins)
		}
		joins++
	}
	w.ClothWidth = "30 cm"
	var faults design.Faults
	if _, err := work.Propose("p.toml", w); !errors.As(err, &faults) || faults[0].Key != "cloth.width" {
		t.Errorf("a roll of 30 cm: %v", err)
	}
	w.Person.Mass = 400
	var no *hung.Impossible
	if _, err := work.Propose("p.toml", w); !errors.As(err, &no) || no.Key != "sleeper.mass" {
		t.Errorf("400 kg: %v", err)
	}
}

// Bars of any sleeper that a bed is proposed for hold, and of all tubes the least does;
// for one who may be a child cautions come first.
func TestProposedBarsHold(t *testing.T) {
	for _, r := range []struct {
		stature float64
		mass    quantity.Kilograms
		side    bool
		inches  bool
		child   bool
	}{
		{1200, 25, false, false, true}, {1390, 45, true, true, true}, {1500, 39, true, false, true},
		{1700, 300, true, false, false}, {2300, 300, true, true, false},
	} {
		w := wish(r.stature, r.mass, r.side, r.inches)
		p, err := work.Propose("p.toml", w)
		if err != nil {
			t.Fatalf("%+v: %v", r, err)
		}
		for _, c := range p.Plan.Margins().Unmet() {
			t.Errorf("%+v: %s has margin %.2f of %.2f with bars of %g x %g", r, c.Name(), c.Ratio, c.Required, p.Plan.Design.Bar.Outer, p.Plan.Design.Bar.Wall)
		}
		if (len(p.Cautions) > 0) != r.child || r.child && !strings.Contains(p.Text[:strings.Index(p.Text, "\nname =")], "go round a neck") {
			t.Errorf("%+v: cautions %q", r, p.Cautions)
		}
		a, err := p.Plan.Accuracy()
		if err != nil {
			t.Fatal(err)
		}
		for _, m := range a.Outcomes {
			if !m.Likely {
				t.Errorf("%+v: %s likely %.1f mm of %.1f", r, m.Kind, m.RSS, m.Allowed)
			}
		}
	}
}
