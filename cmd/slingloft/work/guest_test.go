package work_test

import (
	"math"
	"strings"
	"testing"

	"slingloft/cmd/slingloft/work"
	"slingloft/outline/design"
	"slingloft/outline/finished"
)

// A guest who is the sleeper finds the bed as it was designed; a heavier and a lighter
// one pull their own weight on the two hang lines, and the bed sinks under the heavier.
func TestGuests(t *testing.T) {
	_, demo := design.Demo()
	text := string(demo) + `
[[guest]]
name = "Same again"
stature = "1680 mm"
mass = "74 kg"
crown = "-60 mm"
shoulders = "455 mm"

[[guest]]
name = "Heavy"
stature = "1750 mm"
mass = "120 kg"
crown = "-100 mm"

[[guest]]
name = "Light"
stature = "1500 mm"
mass = "45 kg"
crown = "30 mm"
`
	p, err := work.ReadFor("demo.toml", []byte(text), work.Setting{})
	if err != nil {
		t.Fatal(err)
	}
	guests := p.Guests()
	if len(guests) != 3 {
		t.Fatalf("%d guests", len(guests))
	}
	same := guests[0]
	own, err := p.Made().Hang(finished.Change{}, finished.Weight{Load: p.Shape.Problem.Load, Centre: p.Person().Back})
	if err != nil {
		t.Fatal(err)
	}
	for _, v := range [][2]float64{{same.Lying.Level.Along, own.Level.Along}, {same.Lying.Level.Height, own.Level.Height}, {same.Lying.Loads.Line[0], own.Line[0]}} {
		if math.Abs(v[0]-v[1]) > 1e-6 {
			t.Errorf("the sleeper as a guest: %g, want %g", v[0], v[1])
		}
	}
	for i, g := range guests {
		if g.Err != nil {
			t.Fatalf("%s: %v", g.Name, g.Err)
		}
		up := 0.0
		for e := range g.Lying.Hang {
			up += g.Lying.Loads.Line[e] * math.Sin(g.Lying.Hang[e])
		}
		bars := p.Shape.Problem.BarWeight
		w := float64(g.Mass.Weight())
		if cloth := up - w - bars[0] - bars[1]; cloth < 0 || cloth > 10 { // a bed's cloth is under a kilogram
			t.Errorf("%s: the lines carry %.1f N upwards of a weight of %.1f", g.Name, up, w)
		}
		if ground := g.Ground - (p.Place.Lowest + g.Lying.Level.Height); math.Abs(ground) > 1 {
			t.Errorf("guest %d: %g above ground, at a level of %g", i, g.Ground, g.Lying.Level.Height)
		}
	}
	// Of the sleeper as a guest every part's check is that of the design, and the heavier
	// guest has the lesser margins.
	own1 := p.Margins().ByPart()
	for i, c := range guests[0].Margins.ByPart() {
		if c.Part != own1[i].Part || math.Abs(c.Load-own1[i].Load) > 1e-6*c.Load {
			t.Errorf("%s: load %g, the sleeper's %g", c.Name(), c.Load, own1[i].Load)
		}
		if heavy := guests[1].Margins.ByPart()[i]; heavy.Load <= c.Load {
			t.Errorf("%s: %g N under 120 kg, %g under 74", c.Name(), heavy.Load, c.Load)
		}
	}
	// Who weighs more than the sleeper is warned of, and so is whom it does not carry.
	said := strings.Join(p.Warnings(), "\n")
	for want, stands := range map[string]bool{"Heavy weighs 120 kg, more than the 74 kg": true, "Same again weighs": false,
		"Light weighs": false, "does not carry": false} {
		if strings.Contains(said, want) != stands {
			t.Errorf("%q is warned of: %v, want %v\n%s", want, !stands, stands, said)
		}
	}
	p, err = work.ReadFor("demo.toml", []byte(strings.Replace(text, "strip_strength = \"640 N/50 mm\"", "strip_strength = \"600 N/50 mm\"", 1)), work.Setting{})
	if err != nil {
		t.Fatal(err)
	}
	if said = strings.Join(p.Warnings(), "\n"); !strings.Contains(said, "this bed does not carry Heavy: ") || strings.Contains(said, "carry Same") {
		t.Errorf("of a bed that holds 74 kg and not 120: %s", said)
	}
	if !(guests[1].Ground < guests[0].Ground && guests[0].Ground < guests[2].Ground) {
		t.Errorf("heights over ground %.1f, %.1f, %.1f: want the heaviest lowest", guests[0].Ground, guests[1].Ground, guests[2].Ground)
	}
}
