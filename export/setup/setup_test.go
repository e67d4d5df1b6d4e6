package setup

import (
	"bytes"
	"math"
	"strings"
	"testing"

	"slingloft/export"
	"slingloft/export/gcode"
	"slingloft/export/readertest"
	"slingloft/export/style"
	"slingloft/export/svg"
	"slingloft/export/tile"
	"slingloft/outline/design"
	"slingloft/outline/piece"
)

func machine(t testing.TB, text string) design.Machine {
	t.Helper()
	m, _, err := design.ReadMachine("m.toml", []byte("[machine]\n"+text))
	if err != nil {
		t.Fatal(err)
	}
	return m
}

// The design names kinds of work, tools, papers and corners as the writers do.
func TestNamesAgree(t *testing.T) {
	for i, name := range design.Works() {
		if piece.Work(i).String() != name {
			t.Errorf("work %d is %s in a design, %s in a file", i, name, piece.Work(i))
		}
	}
	for i, name := range design.Tools() {
		if gcode.Tool(i).String() != name {
			t.Errorf("tool %d is %s in a design, %s in a program", i, name, gcode.Tool(i))
		}
	}
	for _, name := range design.Papers()[1:] {
		if _, err := tile.PaperNamed(name); err != nil {
			t.Error(err)
		}
	}
	for i, name := range design.Origins()[1:] {
		if export.Corner(i).String() != name {
			t.Errorf("corner %d is %s in a design, %s on a machine", i, name, export.Corner(i))
		}
	}
	if len(design.Works()) != len(piece.Works()) {
		t.Errorf("%d kinds of work in a design, %d in files", len(design.Works()), len(piece.Works()))
	}
}

// Nothing set is the writers' own defaults.
func TestNothingSet(t *testing.T) {
	m := machine(t, "")
	o, err := Options(m)
	if err != nil || o.Correct != [2]float64{} || o.Axes != (export.Axes{}) {
		t.Errorf("options %+v, %v", o, err)
	}
	for _, name := range []string{"svg", "dxf", "pdf", "hpgl", "gcode", "png"} {
		f, err := Format(name, m, "card")
		if err != nil {
			t.Fatal(err)
		}
		var set, own bytes.Buffer
		if err := f.Write(&set, readertest.Square(), o); err != nil {
			t.Fatal(err)
		}
		plain, err := Format(name, design.Machine{}, "")
		if err != nil {
			t.Fatal(err)
		}
		if err := plain.Write(&own, readertest.Square(), export.Options{}); err != nil || !bytes.Equal(set.Bytes(), own.Bytes()) {
			t.Errorf("%s: %d bytes, %d by the default settings, %v", name, set.Len(), own.Len(), err)
		}
	}
}

// A machine that draws 0.4 % short along x and 0.2 % long along y gets files that
// are longer and shorter by just that.
func TestMeasuredBarsCorrect(t *testing.T) {
	m := machine(t, `calibration_x = { measured = "99.6 mm" }
calibration_y = { drawn = "500 mm", measured = "501 mm" }`)
	o, err := Options(m)
	if err != nil {
		t.Fatal(err)
	}
	for _, name := range []string{"svg", "dxf", "pdf", "hpgl", "gcode"} {
		f, err := Format(name, m, "")
		if err != nil {
			t.Fatal(err)
		}
		var b bytes.Buffer
		if err := f.Write(&b, readertest.Square(), o); err != nil {
			t.Fatal(err)
		}
		read, err := f.Read(&b)
		if err != nil {
			t.Fatal(err)
		}
		found := false
		for _, l := range read.Lines {
			if l.Work != piece.CutOut {
				continue
			}
			found = true
			box := l.Points.Bounds()
			x, y := box.Width()*0.996, box.Height()*1.002
			if math.Abs(x-20) > 2*f.Tolerance+1e-9 || math.Abs(y-20) > 2*f.Tolerance+1e-9 {
				t.Errorf("%s: the machine makes %.4f × %.4f mm of 20 × 20", name, x, y)
			}
		}
		if !found {
			t.Errorf("%s: no outline", name)
		}
	}
}

func TestStrokes(t *testing.T) {
	m := machine(t, `stroke = [
	{ work = "cut-outline", colour = "#FF0000", width = "0.01 mm" },
	{ work = "score", solid = true },
	{ work = "mark", dash = "2 mm, 1 mm" },
]`)
	o, err := Options(m)
	if err != nil {
		t.Fatal(err)
	}
	cut, score, mark := o.Scheme.Of(piece.CutOut), o.Scheme.Of(piece.Score), o.Scheme.Of(piece.Mark)
	if (cut.Colour != style.Colour{R: 255}) || cut.Width != 0.01 || len(score.Dash) != 0 || len(mark.Dash) != 2 || mark.Colour != style.Default().Of(piece.Mark).Colour {
		t.Errorf("strokes %+v, %+v, %+v", cut, score, mark)
	}
	var b bytes.Buffer
	if err := svg.Write(&b, readertest.Square(), o); err != nil || !strings.Contains(b.String(), `stroke="#ff0000" stroke-width="0.0100"`) {
		t.Errorf("%v in %.900s", err, b.String())
	}
}

// A job for a material goes over one for any; another material is left alone.
func TestJobs(t *testing.T) {
	m := machine(t, `tool = "router"
kerf = "3 mm"
lead = "2 mm"
tabs = 2
tab_width = "6 mm"
plunge = "4 mm/s"
frame = false
[[machine.job]]
work = "cut-outline"
material = "plywood"
feed = "900 mm/min"
depth = "6 mm"
pen = 3
[[machine.job]]
work = "cut-outline"
feed = "20 in/min"
passes = 4
pen = 2
[[machine.job]]
work = "lettering"
skip = true`)
	s := Program(m, "plywood")
	cut := s.Jobs[piece.CutOut]
	if s.Tool != gcode.Router || s.Kerf != 3 || s.Lead != 2 || s.Tabs != 2 || s.TabWidth != 6 || s.TabHeight != tabHeight || s.Plunge != 240 || s.Frame {
		t.Errorf("settings %+v", s)
	}
	if cut.Feed != 900 || cut.Depth != 6 || cut.Passes != 4 || !s.Jobs[piece.Lettering].Skip || s.Jobs[piece.Mark].Skip {
		t.Errorf("jobs %+v", s.Jobs)
	}
	if other := Program(m, "card").Jobs[piece.CutOut]; other.Feed != 508 || other.Depth != 3 || other.Passes != 4 {
		t.Errorf("in another material %+v", other)
	}
	if a, b := Pens(m, "plywood")[piece.CutOut], Pens(m, "card")[piece.CutOut]; a != 3 || b != 2 {
		t.Errorf("pens %d and %d", a, b)
	}
	f, err := Format("hpgl", m, "card")
	if err != nil {
		t.Fatal(err)
	}
	var b bytes.Buffer
	if err := f.Write(&b, readertest.Square(), export.Options{}); err != nil || !strings.Contains(b.String(), "SP2;") || strings.Contains(b.String(), "SP7;") {
		t.Errorf("%v, plot %s", err, b.String())
	}
}

func TestPaper(t *testing.T) {
	m := machine(t, "paper = \"tabloid\"\noverlap = \"20 mm\"")
	f, err := Format("pdf", m, "")
	if err != nil {
		t.Fatal(err)
	}
	var b bytes.Buffer
	if err := f.Write(&b, readertest.Drawing(t, 1), export.Options{}); err != nil {
		t.Fatal(err)
	}
	d, err := f.Read(&b)
	if err != nil || math.Abs(min(d.Width, d.Height)-279.4) > 0.01 {
		t.Errorf("pages of %g × %g mm, %v", d.Width, d.Height, err)
	}
}

// Turned axes: the point nearest to the machine's zero is the sheet's upper left.
func TestAxes(t *testing.T) {
	m := machine(t, "origin = \"upper-left\"\ny_down = true\nswap_axes = true")
	o, err := Options(m)
	if err != nil {
		t.Fatal(err)
	}
	f, err := Format("hpgl", m, "")
	if err != nil {
		t.Fatal(err)
	}
	var b bytes.Buffer
	if err := f.Write(&b, readertest.Square(), o); err != nil {
		t.Fatal(err)
	}
	// The square lies from (10 5) to (30 25) on a sheet 30 mm high: 5 mm to 25 mm
	// down, and 10 mm to 30 mm along.
	for _, want := range []string{"PS1200,1600;", "200,400", "1000,1200"} {
		if !strings.Contains(b.String(), want) {
			t.Errorf("no %s in %s", want, b.String())
		}
	}
}

func TestMeasured(t *testing.T) {
	for _, tc := range []struct {
		text string
		want [2]float64
	}{
		{"99.6x100.2", [2]float64{99.6, 100.2}}, {"100×100", [2]float64{100, 100}}, {" 99.95 x 100.05 ", [2]float64{99.95, 100.05}},
		{"", [2]float64{}}, {"99.6", [2]float64{}}, {"99,6x100", [2]float64{}}, {"NaNx100", [2]float64{}}, {"Infx1", [2]float64{}},
		{"50x100", [2]float64{}}, {"-100x100", [2]float64{}}, {"0x0", [2]float64{}}, {"0x1p4x3", [2]float64{}},
	} {
		got, err := Measured(tc.text)
		if (err != nil) != (tc.want == [2]float64{}) || (err == nil && got != tc.want) {
			t.Errorf("Measured(%q) = %v, %v; want %v", tc.text, got, err, tc.want)
		}
	}
}
