package export_test

import (
	"fmt"
	"math"
	"math/rand/v2"
	"strings"
	"testing"

	"slingloft/export"
	"slingloft/export/lettering"
	"slingloft/export/readertest"
	"slingloft/outline/geom"
	"slingloft/outline/piece"
)

// Whatever the scale, the bars are true and straight, and on paper the crosses
// and the lettering of the band have one size.
func TestBandAtEveryScale(t *testing.T) {
	for _, scale := range []float64{2, 1, 0.5, 0.2, 0.1, 0.01} {
		d := readertest.Drawing(t, scale)
		for _, b := range export.Bars() {
			l := readertest.Find(t, d, b.Name)
			way := l.Points[len(l.Points)-1].Minus(l.Points[0])
			along, across := way.X, way.Y
			if strings.HasSuffix(b.Name, "-y") {
				along, across = way.Y, way.X
			}
			if len(l.Points) != 2 || along != b.Length && math.Abs(along-b.Length) > 1e-9 || across != 0 || l.Work != piece.Register {
				t.Errorf("scale %g: %s runs along %v as %s, want %g mm", scale, b.Name, way, l.Work, b.Length)
			}
		}
		cross := readertest.Find(t, d, "cross upper right/x")
		if got := cross.Points.Length() * scale; math.Abs(got-6) > 1e-9 {
			t.Errorf("scale %g: cross of %g mm on paper, want 6", scale, got)
		}
		if got := d.Labels[0].Height * scale; math.Abs(got-2.5) > 1e-9 {
			t.Errorf("scale %g: %q is %g mm high on paper, want 2.5", scale, d.Labels[0].Text, got)
		}
		text := allText(d)
		for _, want := range []string{"Reed", "sheet 1 of 2", "scale " + export.ScaleText(scale), "board 3 mm", "5f2a 90c1", "100 mm", "4 in"} {
			if !strings.Contains(text, want) {
				t.Errorf("scale %g: no %q in the lettering", scale, want)
			}
		}
	}
}

func allText(d export.Drawing) string {
	var b strings.Builder
	for _, l := range d.Labels {
		fmt.Fprintln(&b, l.Text)
	}
	return b.String()
}

// No line and no stroke of the band reaches into the lay area or off the sheet,
// and no two parts of the band touch, on sheets of all sizes.
func TestBandKeepsClear(t *testing.T) {
	rng := rand.New(rand.NewPCG(1, 2))
	for range 300 {
		f := export.Around(1+rng.Float64()*2000, 1+rng.Float64()*2000, []float64{1, 0.2, 0.5}[rng.IntN(3)])
		if rng.IntN(2) == 0 {
			bed, err := export.Within(190+rng.Float64()*1500, 150+rng.Float64()*1000)
			if err != nil {
				t.Fatal(err)
			}
			f = bed
		}
		d, err := export.Compose(export.Sheet{Name: "s", Title: "Template sheets of every size", Frame: f, Block: export.Block{
			Design: strings.Repeat("Reed ", rng.IntN(60)), Sheet: 1, Sheets: 12, Material: strings.Repeat("board ", rng.IntN(60)), Marks: "0123456789abcdef"}})
		if err != nil {
			t.Fatal(err)
		}
		checkClear(t, f, d)
	}
}

func checkClear(t *testing.T, f export.Frame, d export.Drawing) {
	t.Helper()
	inside := f.Lay.Expanded(-1e-9)
	var boxes []geom.Box
	var names []string
	for _, l := range d.Lines {
		b := l.Points.Bounds()
		if b.Overlaps(inside) || inside.Overlaps(b.Expanded(1e-9)) {
			t.Fatalf("frame %v: %q at %v reaches into the lay area", f, l.Name, b)
		}
		boxes, names = append(boxes, b), append(names, l.Name)
	}
	for _, l := range d.Labels {
		b := geom.EmptyBox()
		for _, s := range lettering.Strokes(l) {
			b = b.Union(s.Bounds())
		}
		if b.Overlaps(inside) {
			t.Fatalf("frame %v: %q at %v reaches into the lay area", f, l.Text, b)
		}
		boxes, names = append(boxes, b), append(names, l.Text)
	}
	for i := range boxes {
		for k := range i {
			family := strings.HasPrefix(names[i], names[k]) || names[k][:3] == names[i][:3] || strings.HasPrefix(names[k], "title")
			if !family && boxes[i].Expanded(0.2).Overlaps(boxes[k]) {
				t.Fatalf("frame %v: %q and %q touch at %v and %v", f, names[i], names[k], boxes[i], boxes[k])
			}
		}
	}
}

func TestWithin(t *testing.T) {
	f, err := export.Within(600, 400)
	if err != nil || f.Width != 600 || f.Height != 400 {
		t.Fatalf("Within(600, 400) = %v, %v", f, err)
	}
	if !(geom.Box{Max: geom.Pt(600, 400)}).ContainsBox(f.Lay) || f.Lay.Width() < 560 || f.Lay.Height() < 350 {
		t.Errorf("lay area %v", f.Lay)
	}
	for _, size := range [][2]float64{{100, 400}, {600, 100}, {math.NaN(), 400}, {600, math.Inf(1)}} {
		if f, err := export.Within(size[0], size[1]); err == nil {
			t.Errorf("Within(%g, %g) = %v, want an error", size[0], size[1], f)
		}
	}
}

// Pieces come to lie where the lay put them, under names that are their own.
func TestItems(t *testing.T) {
	d := readertest.Drawing(t, 1)
	seen := map[string]bool{}
	for _, l := range d.Lines {
		if seen[l.Name] {
			t.Errorf("two lines are named %q", l.Name)
		}
		seen[l.Name] = true
	}
	for _, want := range []string{"sling-1/notch", "sling-1/notch/2", "sling-2/fold", "sling-2/hole 1"} {
		if !seen[want] {
			t.Errorf("no line %q", want)
		}
	}
	lay := export.Around(860, 420, 1).Lay.Min
	first := readertest.Find(t, d, "sling-1/cut line")
	if got, want := first.Points[0], lay.Plus(geom.Pt(5, 5)); got.Dist(want) > 1e-9 {
		t.Errorf("first piece begins at %v, want %v", got, want)
	}
	second := readertest.Find(t, d, "sling-2/cut line")
	if got, want := second.Points.Bounds(), first.Points.Bounds(); math.Abs(got.Width()-want.Height()) > 1e-9 {
		t.Errorf("turned piece is %g wide, the first %g high", got.Width(), want.Height())
	}
	if a := geom.Ring(second.Points).Area(); a <= 0 || math.Abs(a-geom.Ring(first.Points).Area()) > 1e-6 {
		t.Errorf("mirrored outline has area %g, the first %g", a, geom.Ring(first.Points).Area())
	}
	if w := readertest.Find(t, d, "sling-2/hole 1").Work; w != piece.CutInside {
		t.Errorf("hole is %s", w)
	}
}

func TestComposeRefuses(t *testing.T) {
	edited := func(edit func(p *piece.Piece)) []export.Item {
		p := readertest.Sling()
		edit(&p)
		return []export.Item{{Piece: p, Copy: 1}}
	}
	rows := []struct {
		what, names string
		items       []export.Item
		frame       export.Frame
	}{
		{"piece off the sheet", "sling-1/", edited(func(p *piece.Piece) {}), export.Around(300, 300, 1)},
		{"NaN in an outline", "sling-1/cut line", edited(func(p *piece.Piece) { p.Cut[3].X = math.NaN() }), export.Around(600, 300, 1)},
		{"empty outline", "sling-1/cut line", edited(func(p *piece.Piece) { p.Cut = nil }), export.Around(600, 300, 1)},
		{"infinite label", "label", edited(func(p *piece.Piece) { p.Labels[0].At.X = math.Inf(1) }), export.Around(600, 300, 1)},
		{"no frame", "sheet", nil, export.Frame{}},
	}
	for _, r := range rows {
		_, err := export.Compose(export.Sheet{Name: "s", Frame: r.frame, Items: r.items})
		if err == nil || !strings.Contains(err.Error(), r.names) {
			t.Errorf("%s: error %v, want one naming %q", r.what, err, r.names)
		}
	}
}

// A label at the edge is moved in, one that is too long is shortened as well, at
// any angle.
func TestLabelsStayInside(t *testing.T) {
	rng := rand.New(rand.NewPCG(3, 4))
	for range 200 {
		s := export.Sheet{Name: "s", Frame: export.Around(300, 300, 1), Labels: []piece.Label{{
			Text: strings.Repeat("side ", rng.IntN(200)), At: geom.Pt(rng.Float64()*300, rng.Float64()*300), Height: 2 + rng.Float64()*10,
			Turn: rng.Float64() * 7, Anchor: piece.Anchor(rng.IntN(3)),
		}}}
		if _, err := export.Compose(s); err != nil {
			t.Errorf("label %+v: %v", s.Labels[0], err)
		}
	}
}
