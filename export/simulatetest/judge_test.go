package simulatetest

import (
	"strings"
	"testing"

	"slingloft/export"
	"slingloft/outline/design"
	"slingloft/outline/geom"
)

const sound = `G17 G21 G90 G94
M5
G0 X5 Y5
M3 S100
G1 X25 Y5 F600
G1 X25 Y25
G1 X5 Y25
G1 X5 Y5
M5
G0 X0 Y0
M2
`

// What spoils a stock is found, whatever the comments say.
func TestSpoilt(t *testing.T) {
	laser := Setup{Tool: design.Laser, Width: 40, Height: 30, Bed: [2]float64{40, 30}}
	square := Order{Parts: []Part{{Name: "square", Cut: geom.Box{Min: geom.Pt(5, 5), Max: geom.Pt(25, 25)}.Ring()}}, Tolerance: 0.02}
	for _, row := range []struct{ what, from, to, want string }{
		{"sound", "", "", ""},
		{"left open", "G1 X5 Y5\nM5", "M5", "not cut through"},
		{"beam on over travel", "G0 X0 Y0", "M3 S100\nG0 X0 Y0\nM5", "at the speed of travel"},
		{"a line across the square", "M5\nG0 X0 Y0", "G1 X15 Y15\nM5\nG0 X0 Y0", "on parts that nobody asked for"},
		{"a line in the waste", "M5\nG0 X0 Y0", "G1 X2 Y2\nM5\nG0 X0 Y0", ""},
		{"off the stock", "M5\nG0 X0 Y0", "G1 X-1 Y5\nM5\nG0 X0 Y0", "off the stock"},
		{"over the bed", "M5\nG0 X5", "M5\nG0 X60\nG0 X5", "over the bed"},
		{"no feed", " F600", "", "without a feed"},
		{"no power", " S100", "", "without power"},
		{"no units", " G21", "", "before units"},
		{"no end", "M2", "", "does not end"},
		{"on at the end", "M5\nG0 X0 Y0\n", "", "ends with the tool on"},
		{"waits with the beam", "G1 X25 Y25", "G4 P1\nG1 X25 Y25", "burns while the machine waits"},
		{"pauses with the beam", "G1 X25 Y25", "M0\nG1 X25 Y25", "pauses with the tool on"},
		{"after the end", "M2\n", "M2\nM3\n", "after the program's end"},
		{"scaled", "G21", "G20", "off the stock"},
	} {
		program := strings.Replace(sound, row.from, row.to, 1)
		got := strings.Join(Judge(GCode(program, laser), laser, square), "\n")
		if row.want == "" && got != "" || !strings.Contains(got, row.want) {
			t.Errorf("%s: %q, want %q", row.what, got, row.want)
		}
	}
}

// A cutter that goes down as the sheet is thick cuts it, one that stops short does not;
// it goes down slowly, at the place, once its spindle turns.
func TestRouterSpoils(t *testing.T) {
	const program = `G17 G21 G90 G94
G0 Z5
M3 S9000
G4 P2
G0 X4 Y4
G1 Z-3 F200
G1 X26 Y4 F600
G1 X26 Y26
G1 X4 Y26
G1 X4 Y4
G0 Z5
M5
M2
`
	s := Setup{Tool: design.Router, Width: 40, Height: 30}
	o := Order{Parts: []Part{{Name: "square", Cut: geom.Box{Min: geom.Pt(5, 5), Max: geom.Pt(25, 25)}.Ring()}}, Kerf: 2, Thickness: 3, Tolerance: 0.02}
	for _, row := range []struct{ what, from, to, want string }{
		{"sound", "", "", ""},
		{"stops short", "Z-3", "Z-2.9", "not cut through"},
		{"into the part", "G1 X4 Y26", "G1 X20 Y20\nG1 X4 Y26", "on parts"},
		{"at the speed of travel", "G1 Z-3", "G0 Z-3", "goes down at the speed of travel"},
		{"aslant", "G1 Z-3", "G1 X6 Z-3", "aslant"},
		{"spindle stands", "M3 S9000\n", "", "before the spindle turns"},
		{"not waited", "G4 P2\n", "", "before the spindle turns"},
		{"travels in the sheet", "G0 Z5\nM5", "G0 X0\nG0 Z5\nM5", "works at the speed of travel"},
		{"height unknown", "G0 Z5\n", "", "works at the speed of travel"},
		{"on the line", "G1 X26 Y4 F600", "G1 X26 Y5.5 F600", "on parts"},
	} {
		got := strings.Join(Judge(GCode(strings.Replace(program, row.from, row.to, 1), s), s, o), "\n")
		if row.want == "" && got != "" || !strings.Contains(got, row.want) {
			t.Errorf("%s: %q, want %q", row.what, got, row.want)
		}
	}
}

// A knife's tip is drawn after its holder, and cuts a corner where the holder does not
// go round it.
func TestTipIsDrawn(t *testing.T) {
	s := Setup{Tool: design.Knife, Trail: 0.5, Width: 40, Height: 30}
	r := GCode("G21 G90\nG0 Z5\nG0 X10.5 Y5\nG1 Z-1 F100\nG1 X20 Y5\nG1 X20 Y15\nG0 Z5\nM2\n", s)
	var lowest, worst geom.Point
	for _, track := range r.Tracks {
		if track.To.Y > 5.3 && lowest == (geom.Point{}) {
			lowest = track.To
		}
		if track.To.Dist(geom.Pt(20, 5)) < worst.Dist(geom.Pt(20, 5)) {
			worst = track.To
		}
	}
	if d := worst.Dist(geom.Pt(20, 5)); d < 0.15 || d > 0.5 || len(r.Faults) > 0 {
		t.Errorf("the tip comes within %g mm of the corner; %v", d, r.Faults)
	}
}

// A plot is followed in its own units and from the zero that the machine has.
func TestPlot(t *testing.T) {
	s := Setup{Tool: design.Pen, Width: 40, Height: 30, Axes: export.Axes{Origin: design.UpperRight, XLeft: true, Swap: true}}
	r := HPGL("IN;\nPS1200,1600;\nPA;\nSP1;\nPU-400,800;\nPD-400,400;\nPU0,0;\nSP0;\n", s)
	if len(r.Tracks) != 1 || r.Tracks[0].From.Dist(geom.Pt(20, 20)) > 1e-9 || r.Tracks[0].To.Dist(geom.Pt(30, 20)) > 1e-9 || len(r.Faults) > 0 {
		t.Errorf("%+v", r)
	}
	for plot, want := range map[string]string{
		"IN;SP1;PD400,400;": "pen down", "IN;PD400,400;PU;": "without a pen", "IN;SP1;PD1,1;SP2;PU;": "while it is down", "IN;LBx;": `"LBx"`,
	} {
		if got := strings.Join(HPGL(plot, s).Faults, "\n"); !strings.Contains(got, want) {
			t.Errorf("%s: %q, want %q", plot, got, want)
		}
	}
}

// A stock that is moved on by what is said is followed as one; what is cut twice, left
// uncut between the fields or off by a wrong feed is found.
func TestJoined(t *testing.T) {
	s := Setup{Tool: design.Laser, Width: 40, Height: 30}
	o := Order{Parts: []Part{{Name: "square", Cut: geom.Box{Min: geom.Pt(5, 5), Max: geom.Pt(45, 25)}.Ring()}}, Tolerance: 0.02, Once: 5}
	first, second := "X26 Y5\nM3 S9\nG1 X5 Y5 F60\nG1 X5 Y25\nG1 X26 Y25", "X4 Y5\nM3 S9\nG1 X25 Y5 F60\nG1 X25 Y25\nG1 X4 Y25"
	program := func(way string) Run { return GCode("G21 G90\nM5\nG0 "+way+"\nM5\nM2\n", s) }
	whole := Setup{Tool: design.Laser, Width: 50, Height: 30}
	for _, row := range []struct {
		what, first, second string
		feed                float64
		want                string
	}{
		{"sound", first, second, 20, ""},
		{"a gap", strings.ReplaceAll(first, "X26", "X22"), second, 20, "not cut through"},
		{"a wrong feed", first, second, 21, "not cut through"},
		{"the same field again", first, strings.ReplaceAll(first, "X5 ", "X-15 ") + "\nM5\nG0 " + second, 20, "are cut, of an outline"},
	} {
		got := strings.Join(Judge(Joined([]Run{program(row.first), program(row.second)}, []float64{0, row.feed}), whole, o), "\n")
		if row.want == "" && got != "" || !strings.Contains(got, row.want) {
			t.Errorf("%s: %q, want %q", row.what, got, row.want)
		}
	}
}
