package tile_test

import (
	"bytes"
	"fmt"
	"math"
	"strings"
	"testing"

	"slingloft/export"
	"slingloft/export/pdf"
	"slingloft/export/readertest"
	"slingloft/export/tile"
	"slingloft/outline/geom"
	"slingloft/outline/piece"
)

// The parts of all lines between the joints make up the whole sheet again, on
// every paper: the same length of every kind of work, and every corner.
func TestPagesReassembled(t *testing.T) {
	d := readertest.Drawing(t, 1)
	for _, paper := range tile.Papers() {
		pages, err := tile.Split(d, export.Options{}, paper)
		if err != nil {
			t.Fatal(err)
		}
		sheet, err := d.Plain(export.Options{})
		if err != nil {
			t.Fatal(err)
		}
		lines := make([][]piece.Line, len(pages))
		for i, p := range pages {
			lines[i] = p.Lines
		}
		checkReassembled(t, sheet, tile.Places(sheet, paper), lines[1:], 1e-6)
	}
}

// The same by way of the PDF file as MuPDF draws it.
func TestPrintedPagesReassembled(t *testing.T) {
	d := readertest.Drawing(t, 1)
	paper, err := tile.PaperNamed("a4")
	if err != nil {
		t.Fatal(err)
	}
	var b bytes.Buffer
	if err := pdf.WriteTiled(&b, []export.Drawing{d}, export.Options{}, paper); err != nil {
		t.Fatal(err)
	}
	traced := readertest.Trace(t, readertest.File(t, "a.pdf", b.Bytes()))
	lines := make([][]piece.Line, len(traced))
	for i, p := range traced {
		lines[i] = p.Lines
		if w, h := min(p.Width, p.Height), max(p.Width, p.Height); math.Abs(w-210) > 0.01 || math.Abs(h-297) > 0.01 {
			t.Errorf("page %d is %g × %g mm, want A4", i+1, p.Width, p.Height)
		}
		for _, want := range []float64{100, 101.6} {
			if bars := barsOf(p.Lines, want); bars < 2 {
				t.Errorf("page %d has %d bars of %g mm, want one each way", i+1, bars, want)
			}
		}
	}
	sheet, err := d.Plain(export.Options{})
	if err != nil {
		t.Fatal(err)
	}
	checkReassembled(t, sheet, tile.Places(sheet, paper), lines[1:], 0.002)
}

func barsOf(lines []piece.Line, length float64) int {
	n := 0
	for _, l := range lines {
		if l.Work == piece.Register && len(l.Points) == 2 && math.Abs(l.Points.Length()-length) < 0.01 {
			n++
		}
	}
	return n
}

// checkReassembled moves the pages' lines back to the sheet and cuts them at the
// joints. Register and lettering are left aside: pages have their own.
func checkReassembled(t *testing.T, sheet export.Drawing, places []tile.Place, pages [][]piece.Line, tol float64) {
	t.Helper()
	if len(places) != len(pages) {
		t.Fatalf("%d pages, want %d", len(pages), len(places))
	}
	var parts []piece.Line
	for i, lines := range pages {
		for _, l := range lines {
			if l.Work != piece.Register && l.Work != piece.Lettering {
				parts = append(parts, tile.Clipped(l.Moved(places[i].ToSheet), places[i].Core)...)
			}
		}
	}
	for _, w := range piece.Works()[piece.Mark:] {
		if got, want := readertest.Total(parts, w), readertest.Total(sheet.Lines, w); math.Abs(got-want) > 100*tol {
			t.Errorf("%s: pages put together have %g mm, the sheet %g", w, got, want)
		}
	}
	for _, l := range sheet.Lines {
		if l.Work != piece.CutOut {
			continue
		}
		for _, p := range l.Points {
			if d := nearest(parts, p); d > tol {
				t.Fatalf("corner %v of %q is %g mm from the pages put together", p, l.Name, d)
			}
		}
	}
}

func nearest(parts []piece.Line, p geom.Point) float64 {
	best := math.Inf(1)
	for _, l := range parts {
		if l.Work == piece.CutOut {
			_, d := geom.NewArc(l.Points).Nearest(p)
			best = math.Min(best, d)
		}
	}
	return best
}

// Both pages at a joint show it and its marks at the same places of the sheet,
// and every page has a joint with each neighbour that is printed.
func TestMarksMeet(t *testing.T) {
	d := readertest.Drawing(t, 1)
	paper := tile.Papers()[0]
	pages, err := tile.Split(d, export.Options{}, paper)
	if err != nil {
		t.Fatal(err)
	}
	places := tile.Places(d, paper)
	seen := map[string]geom.Polyline{}
	met := map[string]int{}
	for i, p := range pages[1:] {
		for _, l := range p.Lines {
			if l.Work != piece.Register || !(strings.HasPrefix(l.Name, "match ") || strings.HasPrefix(l.Name, "joint ")) {
				continue
			}
			back := l.Moved(places[i].ToSheet).Points
			if before, ok := seen[l.Name]; ok {
				met[l.Name]++
				for k := range back {
					if back[k].Dist(before[k]) > 1e-9 {
						t.Errorf("%s at %v on one page, at %v on the other", l.Name, before, back)
					}
				}
			}
			seen[l.Name] = back
		}
	}
	for name := range seen {
		if met[name] != 1 {
			t.Errorf("%s is on %d pages, want 2", name, met[name]+1)
		}
	}
	if len(seen) == 0 {
		t.Error("no joints")
	}
}

// A sheet with work only in two far corners is printed on two pages, not on all.
func TestBlankPagesLeftOut(t *testing.T) {
	dash := func(x, y float64) piece.Line {
		return piece.Line{Name: "dash", Work: piece.CutOut, Points: geom.Polyline{geom.Pt(x, y), geom.Pt(x+20, y+20)}}
	}
	d := export.Drawing{Name: "corners", Width: 1500, Height: 1500, Lines: []piece.Line{dash(5, 5), dash(1470, 1470)}}
	pages, err := tile.Split(d, export.Options{}, tile.Papers()[0])
	if err != nil {
		t.Fatal(err)
	}
	var names []string
	for _, p := range pages {
		names = append(names, p.Name)
	}
	// Windows of 180 × 262 mm advance by 168 × 250: nine columns and six rows.
	if want := "[corners-map corners-I1 corners-A6]"; fmt.Sprint(names) != want {
		t.Errorf("pages %v, want %s", names, want)
	}
}

func TestSplitRefuses(t *testing.T) {
	d := readertest.Square()
	if _, err := tile.Split(d, export.Options{}, tile.Paper{Name: "stamp", Width: 30, Height: 40}); err == nil {
		t.Error("a sheet was divided onto stamps")
	}
	d.Width, d.Height = 190_000, 190_000
	if _, err := tile.Split(d, export.Options{}, tile.Papers()[0]); err == nil {
		t.Error("a field was divided onto A4")
	}
	if _, err := tile.PaperNamed("b7"); err == nil || !strings.Contains(err.Error(), "Tabloid") {
		t.Errorf("paper b7: %v", err)
	}
}

// A printer's error is corrected on the page's own bars as well.
func TestBarsAreCorrected(t *testing.T) {
	o := export.Options{Correct: [2]float64{1.01, 0.99}, Scale: 0.5}
	pages, err := tile.Split(readertest.Drawing(t, 0.5), o, tile.Papers()[0])
	if err != nil {
		t.Fatal(err)
	}
	want := map[string]float64{"paper bar-100mm-x": 101, "paper bar-100mm-y": 99, "paper bar-4in-x": 102.616, "paper bar-4in-y": 100.584}
	for _, p := range pages {
		for _, l := range p.Lines {
			if length, ok := want[l.Name]; ok && math.Abs(l.Points.Length()-length) > 1e-9 {
				t.Errorf("page %s: %s is %g mm, want %g", p.Name, l.Name, l.Points.Length(), length)
			}
		}
	}
}

func TestClipped(t *testing.T) {
	box := geom.Box{Max: geom.Pt(10, 10)}
	pts := func(v ...float64) geom.Polyline {
		var out geom.Polyline
		for i := 0; i < len(v); i += 2 {
			out = append(out, geom.Pt(v[i], v[i+1]))
		}
		return out
	}
	rows := []struct {
		what   string
		points geom.Polyline
		closed bool
		parts  int
		length float64
	}{
		{"inside", pts(1, 1, 9, 9), false, 1, 8 * math.Sqrt2},
		{"closed inside", pts(1, 1, 9, 1, 9, 9), true, 1, 16 + 8*math.Sqrt2},
		{"outside", pts(11, 1, 12, 9), false, 0, 0},
		{"through", pts(-5, 5, 15, 5), false, 1, 10},
		{"in and out", pts(5, 5, 15, 5, 15, 6, 5, 6), false, 2, 10},
		{"closed, start inside", pts(5, 5, 15, 5, 15, 6, 5, 6), true, 1, 11},
		{"closed, start outside", pts(15, 5, 15, 6, 5, 6, 5, 5), true, 1, 11},
		{"closed around", pts(-1, -1, 11, -1, 11, 11, -1, 11), true, 0, 0},
		{"touching a corner", pts(-5, 5, 5, -5), false, 0, 0},
		{"along an edge", pts(-5, 10, 15, 10), false, 1, 10},
	}
	for _, r := range rows {
		parts := tile.Clipped(piece.Line{Name: "l", Points: r.points, Closed: r.closed}, box)
		sum := 0.0
		for _, p := range parts {
			sum += readertest.Length(p)
		}
		if len(parts) != r.parts || math.Abs(sum-r.length) > 1e-9 {
			t.Errorf("%s: %d parts of %g mm, want %d of %g", r.what, len(parts), sum, r.parts, r.length)
		}
	}
}
