package format_test

import (
	"bytes"
	"cmp"
	"math"
	"strings"
	"testing"

	"slingloft/export"
	"slingloft/export/format"
	"slingloft/export/readertest"
	"slingloft/export/tile"
	"slingloft/outline/design"
	"slingloft/outline/piece"
)

// codec returns the format of a name as it is set up for a machine and a material.
func codec(t testing.TB, name string, m design.Machine, material string) export.Codec {
	t.Helper()
	f, err := format.Named(name)
	if err != nil {
		t.Fatal(err)
	}
	material = cmp.Or(material, "card")
	c, err := f.SetUp(readertest.WithJobs(m, material), export.Material{Name: material, Stock: piece.Board, Thickness: 3})
	if err != nil {
		t.Fatal(err)
	}
	return c
}

// setUp is a format with its usual settings.
type setUp struct {
	export.Format
	export.Codec
}

// usual returns every format that carries a whole sheet, with its usual settings.
func usual(t testing.TB) []setUp {
	t.Helper()
	var out []setUp
	for _, f := range format.All() {
		if !f.PiecesOnly {
			out = append(out, setUp{f, codec(t, f.Name, design.Machine{}, "")})
		}
	}
	return out
}

// Every paper that a design may name is one that sheets are divided onto.
func TestPapersAgree(t *testing.T) {
	for _, name := range design.Papers()[1:] {
		if _, err := tile.PaperNamed(name); err != nil {
			t.Error(err)
		}
	}
}

// Nothing set is the writers' own defaults.
func TestNothingSet(t *testing.T) {
	m := readertest.Machine(t, "")
	o, err := export.OptionsFor(m)
	if err != nil || o.Correct != [2]float64{} || o.Axes != (export.Axes{}) {
		t.Errorf("options %+v, %v", o, err)
	}
	for _, name := range format.Names() {
		var set, own bytes.Buffer
		if err := codec(t, name, m, "card").Write(&set, readertest.Square(), o); err != nil {
			t.Fatal(err)
		}
		if err := codec(t, name, design.Machine{}, "").Write(&own, readertest.Square(), export.Options{}); err != nil || !bytes.Equal(set.Bytes(), own.Bytes()) {
			t.Errorf("%s: %d bytes, %d by the default settings, %v", name, set.Len(), own.Len(), err)
		}
	}
}

// A machine that draws 0.4 % short along x and 0.2 % long along y gets files that
// are longer and shorter by just that.
func TestMeasuredBarsCorrect(t *testing.T) {
	m := readertest.Machine(t, `calibration_x = { measured = "99.6 mm" }
calibration_y = { drawn = "500 mm", measured = "501 mm" }`)
	o, err := export.OptionsFor(m)
	if err != nil {
		t.Fatal(err)
	}
	for _, name := range []string{"svg", "dxf", "pdf", "hpgl", "gcode"} {
		f := codec(t, name, m, "")
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

// A pen for a material goes over one for any.
func TestPens(t *testing.T) {
	m := readertest.Machine(t, `[[machine.job]]
work = "cut-outline"
material = "plywood"
pen = 3
[[machine.job]]
work = "cut-outline"
pen = 2`)
	for material, want := range map[string]string{"plywood": "SP3;", "card": "SP2;"} {
		var b bytes.Buffer
		err := codec(t, "hpgl", m, material).Write(&b, readertest.Square(), export.Options{})
		if err != nil || !strings.Contains(b.String(), want) || strings.Contains(b.String(), "SP7;") {
			t.Errorf("%v, plot %s; want %s", err, b.String(), want)
		}
	}
}

func TestPaper(t *testing.T) {
	m := readertest.Machine(t, "paper = \"tabloid\"\noverlap = \"20 mm\"")
	f := codec(t, "pdf", m, "")
	var b bytes.Buffer
	if err := f.Write(&b, readertest.Drawing(t, 1), export.Options{}); err != nil {
		t.Fatal(err)
	}
	d, err := f.Read(&b)
	if err != nil || math.Abs(min(d.Width, d.Height)-279.4) > 0.01 {
		t.Errorf("pages of %g × %g mm, %v", d.Width, d.Height, err)
	}
}
