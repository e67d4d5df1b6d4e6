package seam

import (
	"math"
	"strings"
	"testing"

	"slingloft/export/sheet/given"
	"slingloft/export/sheet/giventest"
	"slingloft/export/sheet/picture"
	"slingloft/outline/design"
)

// beds are beds of every kind of seam.
func beds(t *testing.T) map[string]given.Data {
	t.Helper()
	out := map[string]given.Data{
		"built in": giventest.Sewn(t),
		"facing":   giventest.Sewn(t, `kind = "strip"`, `kind = "facing"`),
		"gathered": giventest.Sewn(t, `kind = "upright"`, `kind = "gathered"`, `hollow = `, `#`),
		"joined":   joined(t),
		"loops":    giventest.Sewn(t, `bury = "180 mm"`, "bury = \"180 mm\"\nwhole_loop = true", "depth = ", "#"),
		"one row":  giventest.Sewn(t, "rows = 2", "rows = 1"),
	}
	for name, d := range out {
		d.Style.Inches, d.Style.Fraction = true, 16
		out[name+", in inches"] = d
	}
	return out
}

// joined is a bed in three panels.
func joined(t *testing.T) given.Data {
	return giventest.Sewn(t, `width = "1500 mm"`, "joins = 2\nwidth = \"900 mm\"", `low = "1440`, `low = "840`, `high = "1490`, `high = "890`)
}

func near(t *testing.T, what string, got, want, tol float64) {
	t.Helper()
	if !(math.Abs(got-want) <= tol) {
		t.Errorf("%s: got %.6g, want %.6g", what, got, want)
	}
}

// Every picture stays in its frame, letters over no lettering, in one height.
func TestPicturesAreWhole(t *testing.T) {
	all := beds(t)
	for name, d := range all {
		for _, p := range []picture.Picture{Channel(&d), Hem(&d), CapSeam(&d), Join(&d), Opening(&d), Corner(&d)} {
			if p.Width == 0 {
				continue
			}
			for _, c := range p.Clashes() {
				t.Errorf("%s, %s: %q stands over %q", name, p.ID, c[0], c[1])
			}
			if p.Width != picture.Half || p.Title == "" || strings.Contains(p.Desc, "%!") {
				t.Errorf("%s, %s: %g wide, %q, %q", name, p.ID, p.Width, p.Title, p.Desc)
			}
			for _, it := range p.Items {
				switch it := it.(type) {
				case picture.Text:
					if it.Size != picture.Letter {
						t.Errorf("%s, %s: %q of %g", name, p.ID, it.Text, it.Size)
					}
				case picture.Path:
					for _, l := range it.Lines {
						if b := l.Bounds(); b.Min.X < -1 || b.Min.Y < -0.1 || b.Max.X > p.Width+1 || b.Max.Y > p.Height+0.1 || math.IsNaN(b.Min.X) {
							t.Errorf("%s, %s: %v leaves the picture", name, p.ID, b)
						}
					}
				}
			}
		}
	}
	for name, missing := range map[string]func(*given.Data) picture.Picture{"built in": Join, "gathered": CapSeam} {
		d := all[name]
		if p := missing(&d); p.Width != 0 {
			t.Errorf("%s: %s is drawn", name, p.ID)
		}
	}
}

// rowsOf returns where the rows of a section stand, mm across the seam.
func (s section) rowsOf() []float64 {
	var out []float64
	for _, r := range s.rows {
		out = append(out, (r.x-s.zero)/s.scale)
	}
	return out
}

// counts checks how many layers lie over places across a seam.
func (s section) counts(t *testing.T, what string, want map[float64]int) {
	t.Helper()
	for mm, n := range want {
		if got := s.layers(mm); got != n {
			t.Errorf("%s, %g mm from the seam: %d layers, want %d", what, mm, got, n)
		}
	}
}

// In a bound channel five layers lie at the seam, three past the turn-unders, the two of the
// strip past the body's raw edge and one body before the folds. Rows follow each other
// towards the fold, which lies at the channel's depth.
func TestBoundSection(t *testing.T) {
	d := giventest.Sewn(t).Design // turn-under 9, foot 2, allowance 12, depth 20, rows 6 apart
	d.Seam.Rows = 3
	s := boundSection(d)
	s.counts(t, "bound", map[float64]int{-2.5: 1, -1: 5, 0.5: 5, 6.5: 5, 7.5: 3, 11.5: 3, 12.5: 2, 16: 2, 20.2: 0})
	for i, want := range []float64{0, 6, 12} {
		near(t, "row", s.rowsOf()[i], want, 1e-9)
	}
	strip := s.cloths[0].way.Bounds()
	near(t, "fold", strip.Max.X, s.x(20), 1e-6)
	near(t, "folded edge", strip.Min.X, s.x(-2), 1e-6)
	near(t, "turn-under", s.cloths[0].way[0].X, s.x(7), 1e-6)
	near(t, "body's raw edge", s.cloths[1].way.Bounds().Max.X, s.x(12), 1e-6)
	// Every row goes through all layers.
	for _, r := range s.rows {
		if r.from > s.y(0) || r.to < s.y(4) {
			t.Errorf("a row from %g to %g does not pass %g to %g", r.from, r.to, s.y(0), s.y(4))
		}
	}
	// The strip's right side is outside, all round; the body's is the bed's outside, below.
	if s.cloths[0].of != stripCloth || s.cloths[0].right != 1 || s.cloths[1].right != -1 {
		t.Errorf("right sides %v and %v", s.cloths[0].right, s.cloths[1].right)
	}
}

// The cord in a channel is to the scale of the channel, inside its fold.
func TestCordInChannel(t *testing.T) {
	for _, thick := range []float64{1.5, 3, 6} {
		d := giventest.Sewn(t)
		d.Design.Side.Diameter = thick
		p, k := Channel(&d), boundSection(d.Design).scale
		found := false
		for _, it := range p.Items {
			q, ok := it.(picture.Path)
			if !ok || q.Stroke != picture.Cord || q.Width == 0 {
				continue
			}
			found = true
			b := q.Lines[0].Bounds()
			near(t, "cord", b.Width(), k*thick, 0.05)
			if fold := boundSection(d.Design).x(d.Design.Channel.Depth); b.Max.X > fold-0.5 {
				t.Errorf("cord %g: reaches %g of %g", thick, b.Max.X, fold)
			}
		}
		if !found {
			t.Errorf("cord %g: not drawn", thick)
		}
	}
}

// In a faced channel body and facing lie round the cord with both allowances between them,
// and the facing's turn-under at the inner seam.
func TestFacedSection(t *testing.T) {
	d := giventest.Sewn(t, `kind = "strip"`, `kind = "facing"`).Design
	s := facedSection(d)
	s.counts(t, "faced", map[float64]int{-22.5: 1, -21: 3, -14: 3, -12.5: 2, -6: 4})
	want := []float64{-20, -14}
	for i, r := range s.rowsOf()[1:] {
		near(t, "row", r, want[i], 1e-9)
	}
	if outer := s.rowsOf()[0]; outer > 0 || outer < -3 {
		t.Errorf("the outer seam lies at %g", outer)
	}
	near(t, "fold", s.cloths[0].way.Bounds().Max.X, s.x(0), 1e-6)
	near(t, "inner fold", s.cloths[1].way.Bounds().Min.X, s.x(-22), 1e-6)
	if s.cloths[0].right != s.cloths[1].right {
		t.Error("body and facing are not sewn right sides together")
	}
}

// A double-fold hem has three layers, and its stitching lies by the foot's distance beside
// the inner fold.
func TestHemSection(t *testing.T) {
	s := hemSection(16, 2, capCloth)
	s.counts(t, "hem", map[float64]int{-16.5: 1, -15.2: 3, -8: 3, -3: 3, 0.2: 0})
	near(t, "row", s.rowsOf()[0], -14, 1e-9)
	// From the finished edge the cloth goes on for twice the fold: to the inner fold and back.
	b := s.cloths[0].way.Bounds()
	near(t, "edge", b.Max.X, s.x(0), 1e-9)
}

// A cap lies on its body right sides together, each with its own allowance.
func TestCapSection(t *testing.T) {
	d := giventest.Sewn(t).Design
	d.Seam.End, d.Seam.Cap = 16, 12
	s := capSection(d)
	s.counts(t, "cap", map[float64]int{-5: 2, 11.5: 2, 12.5: 1, 15.5: 1, 16.5: 0})
	body, lid := s.cloths[0], s.cloths[1]
	if body.way[0].Y >= lid.way[0].Y || body.right != 1 || lid.right != -1 {
		t.Error("the right sides do not face each other")
	}
	near(t, "row", s.rowsOf()[0], 0, 1e-9)
}

// A join is felled as its panels are marked: four layers between trimmed edge and seam.
func TestJoinSections(t *testing.T) {
	d := joined(t)
	f, ok := fellOf(&d)
	if !ok {
		t.Fatal("no join")
	}
	// The design's allowance is 16; half of it is the fell, its edge 2 off.
	if f != (fell{allowance: 16, fold: 8, trim: 6, second: 6}) {
		t.Errorf("fell %+v", f)
	}
	first, felled := joinSections(f)
	first.counts(t, "first", map[float64]int{-4: 2, 5.5: 2, 6.5: 1, 15.5: 1, 16.5: 0})
	felled.counts(t, "felled", map[float64]int{-8.5: 1, -7: 3, -5: 4, -3: 4})
	near(t, "second row", felled.rowsOf()[1], -6, 1e-9)
	if felled.rows[1].from >= felled.y(0) || felled.rows[1].to <= felled.y(3) {
		t.Error("the second row does not pass all layers")
	}
}

// At its corner a channel is as wide as it is deep, all lines begin there, and the cord lies
// by the reach outside the seam.
func TestCornerToScale(t *testing.T) {
	for name, d := range beds(t) {
		c := cornerOf(&d)
		near(t, name+", depth", c.side[0].Dist(c.fold[0]), d.Design.Channel.Depth, 1e-6)
		near(t, name+", corner", c.side[0].Dist(c.end[0]), 0, 0.5)
		reach := d.Sewn.Reach
		if d.Design.Channel.Kind == design.Facing {
			reach = d.Design.Channel.Depth - reach
		}
		near(t, name+", cord", c.cord[1].Dist(c.side[0]), reach, 1e-6)
		if len(c.rows) != d.Design.Seam.Rows {
			t.Errorf("%s: %d rows", name, len(c.rows))
		}
		first := c.side // a facing's rows are sewn along the other edge of its channel
		if d.Design.Channel.Kind == design.Facing {
			first = c.fold
		}
		near(t, name+", first row", c.rows[0][0].Dist(first[0]), 0, 1e-6)
	}
}

// The opening and the gap are to one scale, the gap in the opening's middle.
func TestOpeningToScale(t *testing.T) {
	d := giventest.Sewn(t)
	p := Opening(&d)
	var slit, gap []float64
	for _, it := range p.Items {
		q, ok := it.(picture.Path)
		if !ok || len(q.Lines) == 0 {
			continue
		}
		b := q.Lines[0].Bounds()
		switch {
		case q.Stroke == picture.Inside:
			slit = []float64{b.Min.X, b.Max.X}
		case q.Stroke == picture.Cord && len(q.Dash) == 0:
			gap = []float64{b.Min.X, b.Max.X}
		}
	}
	if slit == nil || gap == nil {
		t.Fatal("no opening, or no gap")
	}
	near(t, "gap over opening", (gap[1]-gap[0])/(slit[1]-slit[0]), 44.0/60, 1e-6)
	near(t, "middle", slit[0]+slit[1], gap[0]+gap[1], 1e-6)
}
