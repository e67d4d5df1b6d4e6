package design

import (
	"bytes"
	"math"
	"os"
	"reflect"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"slingloft/outline/geom"
)

// read reads a sound design.
func read(t *testing.T, name, text string) Design {
	t.Helper()
	d, _, err := Read(name, []byte(text))
	if err != nil {
		t.Fatalf("Read: %v", err)
	}
	return d
}

func TestReadDemo(t *testing.T) {
	name, data := Demo()
	d := read(t, name, string(data))
	want := Bed{
		Span: 1500, HeadBar: 900, FootBar: 820, Head: Drop, HeadValue: 410,
		Control: SideDepth, ControlValue: 205, Second: SameWall,
		HeadTail: 160, FootTail: 180, HeadLeg: 880, FootLeg: 840,
		HeadRadius: 140, SeatRadius: 140, FootRadius: 140,
	}
	if diff := cmp.Diff(want, d.Bed); diff != "" {
		t.Errorf("bed (-want +got):\n%s", diff)
	}
	bar := Bar{Name: "aluminium tube 25 x 1.5 mm", Material: "6061-T6", Outer: 25, Wall: 1.5,
		Modulus: 68900, Yield: 241, Density: 2710, TipReach: 7, TipDiameter: 8, Eccentricity: 2, JointPlay: 0.2, Stock: 2000, Price: 17.5}
	if diff := cmp.Diff(bar, d.Bar); diff != "" {
		t.Errorf("bar (-want +got):\n%s", diff)
	}
	if diff := cmp.Diff([]geom.Box{{Min: geom.Pt(310, 1440), Max: geom.Pt(345, 1490)}}, d.Cloth.Flaws); diff != "" {
		t.Errorf("flaws (-want +got):\n%s", diff)
	}
	if d.Sleeper.Crown != -60 || d.Cloth.StripStrength != 12.8 || d.Sheet.Origin != UpperLeft || d.Output.Scale != 1 {
		t.Errorf("crown %v, strip strength %v, origin %v, scale %v", d.Sleeper.Crown, d.Cloth.StripStrength, d.Sheet.Origin, d.Output.Scale)
	}
}

func TestReadInches(t *testing.T) {
	data, err := os.ReadFile("../../testdata/design/inches.toml")
	if err != nil {
		t.Fatal(err)
	}
	d := read(t, "inches.toml", string(data))
	tests := []struct {
		what      string
		got, want float64
	}{
		{"stature", d.Sleeper.Stature, 64.5 * 25.4},
		{"mass", float64(d.Sleeper.Mass), 138 * 0.45359237},
		{"span", d.Bed.Span, 56.5 * 25.4},
		{"tick left out", d.Template.Tick, 25.4},
		{"opening left out", d.Channel.Opening, 1.625 * 25.4}, // the gap and half an inch, the least that is 12 mm
		{"strength", float64(d.Side.Strength), 2600 * 0.45359237 * 9.80665},
		{"areal density", float64(d.Cloth.ArealDensity), 3.4 * 33.90575}, // NIST SP 811
	}
	for _, tc := range tests {
		if math.Abs(tc.got-tc.want) > 2e-7*tc.want {
			t.Errorf("%s %v, want %v", tc.what, tc.got, tc.want)
		}
	}
}

// A starter file reads without fault in both systems, and says the same in both
// but for rounding to handy figures.
func TestStarter(t *testing.T) {
	mm, in := read(t, "mm", FullStarter(false)), read(t, "in", FullStarter(true))
	if mm.Bed.Control != SideDepth {
		t.Errorf("control %v, want the side depth", mm.Bed.Control)
	}
	if d := math.Abs(mm.Bed.Span - in.Bed.Span); d > 10 {
		t.Errorf("spans differ by %v mm", d)
	}
	if mm.Output.Inches || !in.Output.Inches {
		t.Error("the starter files do not set their own units")
	}
}

func TestWriteReadsBack(t *testing.T) {
	_, demo := Demo()
	inches, err := os.ReadFile("../../testdata/design/inches.toml")
	if err != nil {
		t.Fatal(err)
	}
	for _, text := range []string{string(demo), string(inches), Starter(false), Starter(true), FullStarter(false), FullStarter(true)} {
		d := read(t, "first", text)
		again := read(t, "again", string(Write(d)))
		if diff := cmp.Diff(d, again); diff != "" {
			t.Errorf("read back (-first +again):\n%s\nof\n%s", diff, Write(d))
		}
	}
}

// A proposed value takes the example's place, with its reason above it, and a key
// that is left out as a rule is then given. What cannot be read is refused.
func TestStarterFor(t *testing.T) {
	text, err := StarterFor(false, true, "For one who sleeps well.", []Proposed{
		{"bed.span", "1510 mm", "As long as asked."}, {"cloth.joins", "1", "Proposed: to try it."}, {"sleeper.lies", "side", "As asked."},
	})
	if err != nil {
		t.Fatal(err)
	}
	for _, want := range []string{"\n# For one who sleeps well.\n", "\n# As long as asked.\nspan = \"1510 mm\"\n", "\n# Proposed: to try it.\njoins = 1\n"} {
		if !strings.Contains(text, want) {
			t.Errorf("the file lacks %q", want)
		}
	}
	if d := read(t, "proposed", text); d.Bed.Span != 1510 || d.Cloth.Joins != 1 || d.Sleeper.Lies != OnSide {
		t.Errorf("span %v, joins %v, lies %v", d.Bed.Span, d.Cloth.Joins, d.Sleeper.Lies)
	}
	for _, bad := range []Proposed{{"bed.spam", "1 m", "x."}, {"bed.span", "1510", "x."}, {"bed.span", "9 m", "x."}, {"sleeper.lies", "belly", "x."}} {
		if _, err := StarterFor(true, false, "x", []Proposed{bad}); err == nil || !strings.HasPrefix(err.Error(), string(bad.Key)+": ") {
			t.Errorf("%+v: %v", bad, err)
		}
	}
}

// A key that was renamed is read under the name that it had before too, and its file
// says so; what is told apart by a design's values is the same under either.
func TestFormerNames(t *testing.T) {
	_, demo := Demo()
	for _, row := range []struct {
		now, before string
		old, name   Key
	}{
		{"\nselvedge_strip = ", "\nmargin = ", "cloth.margin", KeyClothSelvedgeStrip},
		{"\n[margin]\n", "\n[margin]\nwaived = [\"bar, sitting\"]\n", "margin.waived", KeyMarginAccepted},
		{"\nhead_tail = ", "\nlevel_hooks = true\nhead_tail = ", "bed.level_hooks", KeyBedLevelApexes},
	} {
		old := bytes.Replace(demo, []byte(row.now), []byte(row.before), 1)
		d, source, err := Read("x.toml", old)
		if err != nil || bytes.Equal(old, demo) {
			t.Errorf("%s: %v", row.old, err)
			continue
		}
		if r := source.Renamed(); len(r) != 1 || r[0].Old != row.old || r[0].New != row.name || source.At(row.name).Line != r[0].At.Line {
			t.Errorf("%s: renamed %+v, its value in line %d", row.old, r, source.At(row.name).Line)
		}
		again, source, err := Read("x.toml", Write(d))
		if err != nil || !reflect.DeepEqual(d, again) || len(source.Renamed()) != 0 {
			t.Errorf("%s: read again with %v, renamed %v", row.old, err, source.Renamed())
		}
		if v := Values(d); !bytes.Contains(v, []byte("\n"+row.old.Name()+" = ")) || bytes.Contains(v, []byte("\n"+row.name.Name()+" = ")) {
			t.Errorf("%s: values tell of it by another name:\n%s", row.old, v)
		}
	}
}
