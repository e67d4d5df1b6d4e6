package panel_test

import (
	"errors"
	"math"
	"math/rand/v2"
	"strings"
	"testing"

	"slingloft/outline/panel"
	"slingloft/outline/piece"
	"slingloft/outline/words"

	sf "github.com/peterstace/simplefeatures/geom"

	"slingloft/outline/design"
	"slingloft/outline/designtest"
	"slingloft/outline/flat"
	"slingloft/outline/geom"
	"slingloft/outline/hung"
)

// sewable returns random designs that can be sewn in one piece, with their cloth.
func sewable(t *testing.T, seed uint64, n int,
	f func(i int, d design.Design, whole panel.Sewn, again func(design.Design) (panel.Sewn, error))) {
	t.Helper()
	r := rand.New(rand.NewPCG(seed, 17))
	for done, i := 0, 0; done < n && i < 4*n; i++ {
		d := designtest.Design(r)
		d.Cap.Kind = design.CapKind(r.IntN(3))
		d.Channel.Kind = design.ChannelKind(r.IntN(2))
		d.Seam.Join, d.Cloth.Margin = 8+12*r.Float64(), 20*r.Float64()
		s, err := hung.Solve(hung.ProblemOf(d))
		if err != nil {
			continue
		}
		b, err := flat.Lay(&s, d.Cap.Kind == design.Leaning)
		if err != nil {
			continue
		}
		again := func(d design.Design) (panel.Sewn, error) {
			return panel.Pieces(d, &s, &b, "00000000", words.EnglishLettering())
		}
		whole, err := again(d)
		if err != nil {
			continue
		}
		done++
		f(i, d, whole, again)
	}
}

// panelsOf returns the pieces of the body.
func panelsOf(s panel.Sewn) []piece.Piece {
	var out []piece.Piece
	for _, p := range s.Pieces {
		if strings.HasPrefix(p.ID, "body") {
			out = append(out, p)
		}
	}
	return out
}

// On random designs and rolls too narrow for the body: each panel is a sound piece
// that fits the roll, the panels' net lines together are the body's, and their
// seams fit; or the error names widths that would do, and they do.
func TestJoinedBodies(t *testing.T) {
	joined, refused := [3]int{}, 0
	sewable(t, 11, 36, func(i int, d design.Design, whole panel.Sewn, again func(design.Design) (panel.Sewn, error)) {
		across := whole.Pieces[0].Cut.Bounds().Height()
		for joins := range 3 {
			d := d
			d.Cloth.Joins = joins
			d.Cloth.Width = 2*d.Cloth.Margin + across*(0.3+0.69*float64((7*i+5*joins)%23)/22)
			set, err := again(d)
			var wide *panel.TooWide
			if errors.As(err, &wide) {
				refused++
				checkWays(t, i, d, wide, again)
				continue
			}
			if err != nil {
				t.Errorf("design %d: %v", i, err)
				continue
			}
			joined[len(set.Joins)]++
			checkJoined(t, i, d, whole, set)
			if t.Failed() {
				t.Fatalf("design %d, %d joins on %.1f mm", i, joins, d.Cloth.Width)
			}
		}
	})
	t.Logf("one join %d, two joins %d, refused %d", joined[1], joined[2], refused)
	if joined[0] > 0 || joined[1] < 10 || joined[2] < 10 || refused < 10 {
		t.Errorf("joins %v, refused %d: not enough of each kind", joined, refused)
	}
}

// checkWays tries the roll widths that a refusal names, and 2 mm less.
func checkWays(t *testing.T, i int, d design.Design, wide *panel.TooWide, again func(design.Design) (panel.Sewn, error)) {
	t.Helper()
	for n, w := range wide.Rolls {
		if w == 0 {
			continue
		}
		d.Cloth.Joins, d.Cloth.Width = n, w
		if set, err := again(d); err != nil || len(set.Joins) > n {
			t.Errorf("design %d: %d joins on a roll of %.2f mm, which would do: %v", i, n, w, err)
		}
		d.Cloth.Width = w - 2
		if set, err := again(d); err == nil && len(set.Joins) == n {
			t.Errorf("design %d: a roll of %.2f mm does for %d joins, %.2f were asked for", i, w-2, n, w)
		}
	}
}

func checkJoined(t *testing.T, i int, d design.Design, whole, set panel.Sewn) {
	t.Helper()
	panels := panelsOf(set)
	if len(panels) != len(set.Joins)+1 {
		t.Fatalf("design %d: %d panels with %d joins", i, len(panels), len(set.Joins))
	}
	usable := d.Cloth.Width - 2*d.Cloth.Margin
	union := sf.Geometry{}
	area := 0.0
	for k, p := range panels {
		checkPiece(t, i, p)
		if h := p.Cut.Bounds().Height(); h > usable+1e-6 {
			t.Errorf("design %d: %s is %.3f mm wide, the roll holds %.3f", i, p.ID, h, usable)
		}
		checkMarks(t, i, p)
		net, err := polygon(p.Net)
		if err != nil {
			t.Fatalf("design %d: %s: %v", i, p.ID, err)
		}
		area += p.Net.Area()
		if k == 0 {
			union = net.AsGeometry()
		} else if union, err = sf.Union(union, net.AsGeometry()); err != nil {
			t.Fatalf("design %d: %v", i, err)
		}
	}
	body := whole.Pieces[0].Net
	if math.Abs(area-body.Area()) > 1e-6*body.Area() || math.Abs(union.Area()-body.Area()) > 1e-6*body.Area() {
		t.Errorf("design %d: panels %.3f mm², together %.3f, body %.3f", i, area, union.Area(), body.Area())
	}
	if far := farthest(t, body, union); far > 1e-6 {
		t.Errorf("design %d: the panels' outline lies %.6f mm from the body's", i, far)
	}
	if len(set.BodyNet) != len(body) || set.BodyNet[0] != body[0] {
		t.Errorf("design %d: the whole body's net line changed", i)
	}
	for _, s := range set.Seams {
		if !s.Within() {
			t.Errorf("design %d: %s: %.3f mm remain", i, s, s.Remains)
		}
	}
}

// farthest returns how far a corner of either outline lies from the other outline,
// mm.
func farthest(t *testing.T, body geom.Ring, union sf.Geometry) float64 {
	t.Helper()
	p, ok := union.AsPolygon()
	if !ok {
		t.Fatalf("the panels' union is a %v", union.Type())
	}
	var ring geom.Polyline
	seq := p.ExteriorRing().Coordinates()
	for k := range seq.Length() {
		c := seq.GetXY(k)
		ring = append(ring, geom.Pt(c.X, c.Y))
	}
	far := 0.0
	for _, pair := range [2][2]geom.Polyline{{ring, body.Closed()}, {body.Closed(), ring}} {
		on := geom.NewArc(pair[1])
		for _, q := range pair[0] {
			_, dist := on.Nearest(q)
			far = max(far, dist)
		}
	}
	return far
}

// checkMarks looks for marks off the panel and labels that are not on it.
func checkMarks(t *testing.T, i int, p piece.Piece) {
	t.Helper()
	box := p.Cut.Bounds().Expanded(1e-6)
	for _, l := range p.Lines {
		if strings.HasPrefix(l.Name, "notch ") && !strings.HasPrefix(l.Name, "notch J") {
			continue // where bar corners are cut off, strokes of the side start outside
		}
		for _, q := range l.Points {
			if !box.Contains(q) {
				t.Errorf("design %d: %s: %s at %v is off the panel", i, p.ID, l.Name, q)
				return
			}
		}
	}
	seen := ""
	for _, l := range p.Labels {
		if !p.Cut.Contains(l.At) {
			t.Errorf("design %d: %s: %q at %v is off the panel", i, p.ID, l.Text, l.At)
		}
		seen += l.Text + "\n"
	}
	for _, want := range []string{p.Title + " · cut 1", "shape 00000000", "grain (warp)", "join ("} {
		if !strings.Contains(seen, want) {
			t.Errorf("design %d: %s is not lettered %q", i, p.ID, want)
		}
	}
	if len(p.Checks) < 6 {
		t.Errorf("design %d: %s has %d check measures", i, p.ID, len(p.Checks))
	}
}

// A body is divided only where it must be, off the back where it can be, and the
// joins' notches tell every panel and both its ends apart.
func TestWhereJoinsLie(t *testing.T) {
	sewable(t, 5, 4, func(i int, d design.Design, whole panel.Sewn, again func(design.Design) (panel.Sewn, error)) {
		d.Cloth.Joins = 2
		across := whole.Pieces[0].Cut.Bounds().Height()
		d.Cloth.Width = across + 2*d.Cloth.Margin
		if set, err := again(d); err != nil || len(set.Joins) != 0 {
			t.Errorf("design %d: a roll as wide as the body: %v, joins %v", i, err, set.Joins)
		}
		for w := d.Cloth.Width - 1; w > across/4; w -= 29 {
			d.Cloth.Width = w
			set, err := again(d)
			if err != nil {
				break
			}
			strokes := map[string]bool{}
			for _, j := range set.Joins {
				if len(set.Joins) == 2 && math.Abs(j.V) < 100 || math.Abs(j.V) < 40 {
					t.Errorf("design %d: %s lies %.1f mm off the centre line", i, j.Place, j.V)
				}
				for _, q := range set.SideNet.Flat {
					if q.Y < math.Abs(j.V)+40-1e-6 {
						t.Fatalf("design %d: %s at %.1f mm comes close to the side at %v", i, j.Place, j.V, q)
					}
				}
				way := ""
				back := ""
				for _, n := range j.Notches {
					s := map[bool]string{true: "2", false: "1"}[n.Double]
					way, back = way+s, s+back
				}
				if strokes[way] || strokes[back] || way == back {
					t.Errorf("design %d: %s can be mistaken: strokes %s", i, j.Place, way)
				}
				strokes[way] = true
			}
			if len(set.Joins) == 2 && set.Joins[0].V != -set.Joins[1].V {
				t.Errorf("design %d: joins at %.1f and %.1f", i, set.Joins[0].V, set.Joins[1].V)
			}
		}
	})
}

// The flat-felled allowance: both panels carry it whole, the inner one's fold lies
// half way, the outer one's trim line and edge stitch a little nearer.
func TestFell(t *testing.T) {
	sewable(t, 9, 3, func(i int, d design.Design, whole panel.Sewn, again func(design.Design) (panel.Sewn, error)) {
		d.Cloth.Joins, d.Seam.Join = 1, 16
		d.Cloth.Width = 2*d.Cloth.Margin + 0.75*whole.Pieces[0].Cut.Bounds().Height()
		set, err := again(d)
		if err != nil {
			t.Fatalf("design %d: %v", i, err)
		}
		v := set.Joins[0].V
		want := map[string]float64{"join fold": v + 8, "join trim line": v - 6, "join edge stitch": v + 6}
		for _, p := range panelsOf(set) {
			edge := p.Cut.Bounds().Max.Y - v
			if p.ID == "body-narrow" {
				edge = v - p.Cut.Bounds().Min.Y
			}
			if math.Abs(edge-16) > 1e-9 {
				t.Errorf("%s: allowance %.3f mm", p.ID, edge)
			}
			for _, l := range p.Lines {
				if at, ok := want[l.Name]; ok {
					if l.Points[0].Y != at {
						t.Errorf("%s: %s at %.3f mm, want %.3f", p.ID, l.Name, l.Points[0].Y, at)
					}
					delete(want, l.Name)
				}
			}
		}
		if len(want) > 0 {
			t.Errorf("lines missing: %v", want)
		}
	})
}
