package margin_test

import (
	"slices"
	"testing"

	"slingloft/outline/column"
	"slingloft/outline/design"
	"slingloft/outline/margin"
)

// Stitches per length times rows times thread times factor, by hand.
func TestSeamStrength(t *testing.T) {
	for _, r := range []struct {
		name    string
		seam    design.Seam
		want    float64 // N/mm
		missing string
	}{
		{"one row", design.Seam{StitchLength: 2.5, Rows: 1, ThreadStrength: 30, SeamFactor: 1}, 12, ""},
		{"two rows", design.Seam{StitchLength: 2.5, Rows: 2, ThreadStrength: 30, SeamFactor: 1}, 24, ""},
		{"rows not given", design.Seam{StitchLength: 2.5, ThreadStrength: 30, SeamFactor: 1}, 12, ""},
		{"a factor", design.Seam{StitchLength: 3, Rows: 3, ThreadStrength: 20, SeamFactor: 0.65}, 13, ""},
		{"no stitch", design.Seam{Rows: 2, ThreadStrength: 30, SeamFactor: 1}, 0, "seam.stitch_length"},
		{"no thread", design.Seam{StitchLength: 2.5, Rows: 2, SeamFactor: 1}, 0, "seam.thread_strength"},
		{"no factor", design.Seam{StitchLength: 2.5, Rows: 2, ThreadStrength: 30}, 0, "seam.factor"},
		{"nothing", design.Seam{}, 0, "seam.stitch_length seam.thread_strength seam.factor"},
	} {
		got, missing := margin.SeamStrength(r.seam)
		near(t, r.name, got, r.want, 1e-12)
		if m := design.Listed(missing, " "); m != r.missing {
			t.Errorf("%s: missing %q, want %q", r.name, m, r.missing)
		}
	}
}

// Ratios asked for: the design's own, or 5 on cords after Cordage Institute CI 1401
// and the program's own choice elsewhere; the dynamic factor stands in the load.
func TestRequired(t *testing.T) {
	d := sample()
	s := solve(t, d)
	for _, r := range []struct {
		name                             string
		margins                          design.Margins
		cord, bar, cloth, seam, dynamics float64
	}{
		{"left out", design.Margins{}, 5, 1.5, 2, 2, 2},
		{"given", design.Margins{Cord: 8, Bar: 3, Cloth: 4, Seam: 6, Dynamic: 1.25}, 8, 3, 4, 6, 1.25},
	} {
		d.Margins = r.margins
		report := margin.Of(margin.Input{Shape: &s, Design: d, Hook: 12e3, Joined: true})
		static := report.Cases[0]
		for name, want := range map[string]struct{ required, factor, load float64 }{
			"side cord, lying":            {r.cord, 1, static.Side},
			"head leg, lying":             {r.cord, 1, static.Leg[0]},
			"foot hang line, lying":       {r.cord, 1, static.Hang[1]},
			"foot hook, lying":            {r.cord, 1, static.Hang[1]},
			"head bar buckling, lying":    {r.bar, r.dynamics, r.dynamics * static.Bar[0]},
			"foot bar yield, lying":       {r.bar, r.dynamics, r.dynamics * static.Bar[1]},
			"foot bar tip bearing, lying": {r.bar, r.dynamics, r.dynamics * static.Bar[1]},
			"cloth strip, lying":          {r.cloth, r.dynamics, r.dynamics * static.Cloth},
			"side seam, lying":            {r.seam, r.dynamics, r.dynamics * static.Cloth},
			"join seam, lying":            {r.seam, r.dynamics, r.dynamics * static.Cloth},
		} {
			c := check(t, report, name)
			near(t, r.name+", "+name+", required", c.Required, want.required, 0)
			near(t, r.name+", "+name+", factor", c.Factor, want.factor, 0)
			near(t, r.name+", "+name+", load", c.Load, want.load, 1e-12)
		}
	}
}

// Capacities of bars: tube or rod, by Euler or Johnson, with what is not given.
func TestBarCapacities(t *testing.T) {
	for _, r := range []struct {
		name                     string
		bar                      design.Bar
		buckling, yield, bearing float64
	}{
		{"slender tube", design.Bar{Outer: 25, Wall: 1.5, Modulus: 68900, Yield: 241},
			column.Euler(column.Tube(25, 1.5), 68900, 980), column.Euler(column.Tube(25, 1.5), 68900, 980), column.Tube(25, 1.5).Area * 241},
		{"stocky tube", design.Bar{Outer: 60, Wall: 2, Modulus: 68900, Yield: 241},
			column.Johnson(column.Tube(60, 2), 68900, 241, 980), column.Tube(60, 2).Area * 241, column.Tube(60, 2).Area * 241},
		{"rod", design.Bar{Outer: 16, Modulus: 68900, Yield: 241},
			column.Euler(column.Rod(16), 68900, 980), column.Euler(column.Rod(16), 68900, 980), column.Rod(16).Area * 241},
		{"no yield", design.Bar{Outer: 60, Wall: 2, Modulus: 68900}, column.Euler(column.Tube(60, 2), 68900, 980), 0, 0},
		{"no modulus", design.Bar{Outer: 60, Wall: 2, Yield: 241}, 0, 0, column.Tube(60, 2).Area * 241},
	} {
		d := sample()
		s := solve(t, d)
		d.Bar = r.bar
		report := margin.Of(margin.Input{Shape: &s, Design: d})
		near(t, r.name+", buckling", check(t, report, "head bar buckling, lying").Capacity, r.buckling, 1e-12)
		near(t, r.name+", yield", check(t, report, "head bar yield, lying").Capacity, r.yield, 1e-12)
		near(t, r.name+", bearing", check(t, report, "head bar tip bearing, lying").Capacity, r.bearing, 1e-12)
	}
}

// The table of materials is named as the source only of its own two values.
func TestBarSource(t *testing.T) {
	m := design.Materials()[0]
	for _, r := range []struct {
		name string
		bar  design.Bar
		want string
	}{
		{"as in the table", design.Bar{Material: m.Name, Modulus: m.Modulus, Yield: m.Yield}, m.Source},
		{"another name", design.Bar{Material: "ash", Modulus: m.Modulus, Yield: m.Yield}, ""},
		{"another modulus", design.Bar{Material: m.Name, Modulus: m.Modulus + 1, Yield: m.Yield}, ""},
		{"another yield", design.Bar{Material: m.Name, Modulus: m.Modulus, Yield: m.Yield + 1}, ""},
	} {
		d := sample()
		s := solve(t, d)
		d.Bar = r.bar
		d.Bar.Outer, d.Bar.Wall = 25, 1.5
		c := check(t, margin.Of(margin.Input{Shape: &s, Design: d}), "head bar buckling, lying")
		if c.Source.Kind != margin.Column || c.Source.Bar != r.want {
			t.Errorf("%s: source %+v, want %q", r.name, c.Source, r.want)
		}
	}
}

// Where an eccentricity or a shoulder breadth is given, nothing is said to be
// assumed about it.
func TestNotes(t *testing.T) {
	for note, change := range map[margin.Note]func(*design.Design){
		margin.ThrustOnAxis:     func(d *design.Design) { d.Bar.Eccentricity = 0 },
		margin.ShouldersGuessed: func(d *design.Design) { d.Sleeper.Shoulders = 0 },
	} {
		said := func(d design.Design) bool {
			s := solve(t, d)
			return slices.Contains(margin.Of(margin.Input{Shape: &s, Design: d}).Notes, note)
		}
		d := sample()
		if said(d) {
			t.Errorf("note %v although the value is given", note)
		}
		if change(&d); !said(d) {
			t.Errorf("no note %v although the value is not given", note)
		}
	}
}

// One who rolls over pulls no harder at the apexes: no check of hang lines then. A
// bar without thrust is not checked.
func TestWhatIsChecked(t *testing.T) {
	d := sample()
	s := solve(t, d)
	r := margin.Of(margin.Input{Shape: &s, Design: d})
	names := r.Names()
	for name, want := range map[string]bool{
		"head hang line, rolling": false, "head hook, rolling": false, "head hang line, seated": true, "foot hook, seated": true,
		"head leg, rolling": true, "join seam, lying": false, "foot bar yield, rolling": true,
	} {
		if got := slices.Contains(names, name); got != want {
			t.Errorf("%s: checked %v, want %v", name, got, want)
		}
	}
	for e, end := range []string{"head", "foot"} {
		got := slices.Contains(names, end+" bar yield, seated")
		if want := r.Cases[1].Bar[e] > 0; got != want {
			t.Errorf("%s bar, seated: checked %v under %g N", end, got, r.Cases[1].Bar[e])
		}
	}
}
