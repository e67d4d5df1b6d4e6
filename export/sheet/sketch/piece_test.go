package sketch

import (
	"math"
	"testing"

	"slingloft/export/sheet/given"
	"slingloft/export/sheet/giventest"
	"slingloft/export/sheet/picture"
	"slingloft/outline/cord"
	"slingloft/outline/geom"
	"slingloft/outline/piece"
)

// inside fails where a picture leaves its frame or letters over lettering.
func inside(t *testing.T, p picture.Picture) {
	t.Helper()
	for _, c := range p.Clashes() {
		t.Errorf("%s: %q stands over %q", p.ID, c[0], c[1])
	}
	for _, it := range p.Items {
		path, _ := it.(picture.Path)
		for _, l := range path.Lines {
			for _, q := range l {
				if !q.Finite() || q.X < -0.1 || q.Y < -0.1 || q.X > p.Width+0.1 || q.Y > p.Height+0.1 {
					t.Fatalf("%s of %g by %g: %v lies outside", p.ID, p.Width, p.Height, q)
				}
			}
		}
	}
	if p.ID == "" || p.Title == "" || p.Desc == "" {
		t.Errorf("a picture %q called %q says %q", p.ID, p.Title, p.Desc)
	}
}

// Every piece and every cord has a picture that stays in its frame, in millimetres and in
// inches, and letters over no lettering.
func TestPicturesAreWhole(t *testing.T) {
	for name, lines := range map[string][]string{
		"built in": nil, "facing": {`kind = "strip"`, `kind = "facing"`}, "gathered": {`kind = "upright"`, `kind = "gathered"`, `hollow = `, `#`},
	} {
		t.Run(name, func(t *testing.T) {
			d := giventest.Sewn(t, lines...)
			for _, inches := range []bool{false, true} {
				d.Style.Inches = inches
				for _, q := range d.Sewn.Pieces {
					inside(t, Piece(&d, q))
				}
				for _, c := range d.Cords.Cords {
					inside(t, Cord(&d, c))
				}
			}
		})
	}
}

// A piece is drawn to one scale along and across, a strip wider than it is.
func TestAcross(t *testing.T) {
	for _, row := range []struct {
		width, height float64
		want          int
	}{{1000, 500, 1}, {799, 100, 1}, {2000, 50, 7}, {1000, 1000, 1}, {3000, 30, 16}} {
		box := geom.BoxOf(geom.Pt(0, 0), geom.Pt(row.width, row.height))
		if got := Across(box); got != row.want {
			t.Errorf("%g × %g: %d, want %d", row.width, row.height, got, row.want)
		}
		// As drawn over the page's width but for its margins it is 24 mm high, or a little more.
		if k := (picture.Wide - 24) / row.width; row.want > 1 && (k*row.height*float64(row.want) < 24 || k*row.height*float64(row.want-1) >= 24) {
			t.Errorf("%g × %g: %d times is not the least that does", row.width, row.height, row.want)
		}
	}
}

// An end is buried from its shoulder on: the mark in the open next to those inside.
func TestBuriedEnds(t *testing.T) {
	mark := func(at float64, buried bool) cord.Mark { return cord.Mark{FromStart: at, Buried: buried} }
	for _, row := range []struct {
		name   string
		marks  []cord.Mark
		lo, hi float64
	}{
		{"none", nil, 0, 1000},
		{"in the open", []cord.Mark{mark(100, false), mark(500, false)}, 0, 1000},
		{"start", []cord.Mark{mark(40, true), mark(200, false), mark(100, false), mark(60, true)}, 100, 1000},
		{"end", []cord.Mark{mark(800, false), mark(700, false), mark(960, true)}, 0, 800},
		{"both", []cord.Mark{mark(40, true), mark(100, false), mark(900, false), mark(960, true)}, 100, 900},
	} {
		if lo, hi := buriedEnds(cord.Cord{Cut: 1000, Marks: row.marks}); lo != row.lo || hi != row.hi {
			t.Errorf("%s: %g and %g, want %g and %g", row.name, lo, hi, row.lo, row.hi)
		}
	}
}

// Lettering finds a place inside an outline wherever one is that is long enough: in an L
// it is the foot.
func TestPlaces(t *testing.T) {
	l := geom.Ring{{X: 0, Y: 0}, {X: 100, Y: 0}, {X: 100, Y: 30}, {X: 20, Y: 30}, {X: 20, Y: 100}, {X: 0, Y: 100}}
	for need, want := range map[float64]bool{10: true, 60: true, 99: true, 101: false} {
		all := places(l, need)
		if (len(all) > 0) != want {
			t.Errorf("%g mm: %d places", need, len(all))
		}
		for _, p := range all {
			for _, side := range []float64{-1, 1} {
				if q := p.Plus(geom.Pt(side*(need/2-1e-6), 0)); q.X < 0 || q.X > 100 || q.X > 20 && q.Y > 30 {
					t.Errorf("%g mm at %v reach %v, outside", need, p, q)
				}
			}
		}
	}
	if first := places(l, 60)[0]; math.Abs(first.X-50) > 1e-9 {
		t.Errorf("the first place is %v", first)
	}
}

// What is kept clear is counted in words, flaws first.
func TestKeptWords(t *testing.T) {
	d := giventest.Hung(t)
	flaw, own := given.Kept{Flaw: true}, given.Kept{}
	for _, row := range []struct {
		kept []given.Kept
		want string
	}{
		{[]given.Kept{flaw}, "1 flaw of the cloth"}, {[]given.Kept{flaw, flaw}, "2 flaws of the cloth"}, {[]given.Kept{own}, "1 keep-out"},
		{[]given.Kept{own, flaw, own}, "1 flaw of the cloth and 2 keep-outs"},
	} {
		if got := keptWords(&d, row.kept); got != row.want {
			t.Errorf("%q, want %q", got, row.want)
		}
	}
}

// What is lettered in capitals is read as a sentence begins; what the maker named stays as
// it was named.
func TestTitled(t *testing.T) {
	for _, row := range []struct {
		kind     piece.Kind
		in, want string
	}{
		{piece.Template, "SIDE CURVE 1 OF 2", "Side curve 1 of 2"}, {piece.Gauge, "PRESS GAUGE", "Press gauge"},
		{piece.WholeBody, "body", "body"}, {piece.Kind(0), "", ""},
	} {
		if got := Titled(piece.Piece{Kind: row.kind, Title: row.in}); got != row.want {
			t.Errorf("%q: %q, want %q", row.in, got, row.want)
		}
	}
	if own := "POCKET"; Titled(piece.Piece{Kind: piece.Own, Title: own}) != own {
		t.Error("a name of the maker's own is changed")
	}
}
