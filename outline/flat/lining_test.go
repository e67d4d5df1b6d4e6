package flat

import (
	"errors"
	"math"
	"testing"

	"pgregory.net/rapid"

	"slingloft/outline/design"
	"slingloft/outline/geom"
	"slingloft/outline/hung"
	_ "slingloft/outline/rapidtest"
)

// lined returns a bed's lining.
func lined(t testing.TB, s *hung.Shape, l Lining) Body {
	t.Helper()
	b, err := LayLining(s, false, l)
	if err != nil {
		t.Fatal(err)
	}
	return b
}

// closed is the girth of the shortest line from cord to cord round a circle that is
// concentric with a section's round and t larger:
// 2[√(d² − (R+t)²) + (R+t) θ], θ = atan2(y, R−h) − acos((R+t)/d).
func closed(y, h, r, t float64) float64 {
	d := math.Hypot(y, h-r)
	theta := math.Atan2(y, r-h) - math.Acos((r+t)/d)
	return 2 * (math.Sqrt(d*d-(r+t)*(r+t)) + (r+t)*theta)
}

// A lining as wide as it is round is as long as the closed form has it, on either face of
// any section; of the whole difference 2θt is only the first term: 70.7 of which 64.7 mm in
// a section with walls of 46.4° and a pad of 40 mm, worked out apart.
func TestLiningGirth(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		half, height := rapid.Float64Range(200, 700).Draw(t, "half"), rapid.Float64Range(150, 600).Draw(t, "height")
		radius, out := rapid.Float64Range(60, 250).Draw(t, "radius"), rapid.Float64Range(-55, 150).Draw(t, "out")
		s, err := hung.NewSection(half, height, radius)
		if err != nil {
			return
		}
		over, err := Lining{Out: out}.Over(s)
		if err != nil {
			if math.Hypot(half, height-radius) > radius+out {
				t.Fatal(err)
			}
			return
		}
		if want := closed(half, height, radius, out); !(math.Abs(over.Girth()-want) < 1e-9*want) {
			t.Fatalf("girth %g, want %g", over.Girth(), want)
		}
		y, z := over.Point(over.Girth() / 2)
		if miss := math.Hypot(y-half, z-height); miss > 1e-9*height {
			t.Fatalf("it ends %g mm beside the cord", miss)
		}
		if _, low := over.Point(0); math.Abs(low+out) > 1e-9*radius {
			t.Fatalf("its middle lies %g mm under the body's, want %g", -low, out)
		}
	})
}

// Round the outline of a pad no line is shorter: a narrow pad's lining is as long as the
// convex line round its points, found by walking round them, and grows with its width up to
// that of a pad as wide as the lining is round.
func TestLiningOfNarrowPad(t *testing.T) {
	s, err := hung.NewSection(490, 420, 125)
	if err != nil {
		t.Fatal(err)
	}
	last := s.Girth()
	for _, half := range []float64{40, 80, 125, 160, 200, 400} {
		l := Lining{Out: 40, Half: half}
		over, err := l.Over(s)
		if err != nil {
			t.Fatal(err)
		}
		pts := []geom.Point{{X: s.Half, Y: s.Height}}
		edge := padEdge(s, half)
		for i := range 20001 {
			sin, cos := math.Sincos(edge * float64(i) / 20000)
			pts = append(pts, geom.Pt(165*sin, 125-165*cos))
		}
		want := 2 * hullBelow(pts)
		if got := over.Girth(); !(math.Abs(got-want) < 1e-3) {
			t.Errorf("round a pad of %g mm: %g mm, want %g", 2*half, got, want)
		}
		if over.Girth() < last-1e-9 {
			t.Errorf("round a pad of %g mm it is shorter than round a narrower one", 2*half)
		}
		last = over.Girth()
	}
	if want := closed(490, 420, 125, 40); !(math.Abs(last-want) < 1e-9*want) {
		t.Errorf("round a wide pad %g mm, want %g", last, want)
	}
}

// hullBelow returns the length of the convex line below points from the lowest to the one
// that is first.
func hullBelow(pts []geom.Point) float64 {
	var hull []geom.Point
	order := append(append([]geom.Point(nil), pts[1:]...), pts[0]) // from the middle outwards, the cord last
	for _, p := range order {
		for n := len(hull); n > 1 && hull[n-1].Minus(hull[n-2]).Cross(p.Minus(hull[n-1])) <= 0; n-- {
			hull = hull[:n-1]
		}
		hull = append(hull, p)
	}
	return geom.Polyline(hull).Length()
}

// Cut flat and hung again from the same cords, both layers have the lengths that they were
// cut with along cords and ends, and where the pad lies the gap between them is as wide as
// it is thick: within a tenth of a millimetre, from the width of the cloth at its bars and
// in its middle.
func TestLiningHungAgain(t *testing.T) {
	const tolerance = 0.1
	for name, change := range map[string]func(*design.Bed){
		"even": nil, "unequal": func(b *design.Bed) { b.HeadBar, b.FootBar, b.FootTail = 1000, 860, 220 },
	} {
		s := bed(t, change)
		body := net(t, &s, cellAcross)
		for _, out := range []float64{20, 40, -30} {
			// The pad reaches past both bars, so that its thickness can be seen at them.
			l := Lining{Head: -740, Foot: 740, Out: out}
			b := lined(t, &s, l)
			about(t, name+": side seam, hung", b.Side.HungLength(), body.Side.HungLength(), 1e-6)
			for _, e := range hung.Ends() {
				about(t, name+": end seam, hung", b.Ends[e].HungLength(), body.Ends[e].HungLength(), 1e-6)
				about(t, name+": bar's tip along the seam", b.Tips[e], body.Tips[e], 1e-6)
				// Straight across at a bar the weft runs within the section.
				about(t, name+": gap at a bar", gapOf(t, s.Ends[e].Section, 2*b.Bars[e].Length()), out, tolerance)
			}
			middle := s.At(0).Section
			i := 0
			for b.Side.Flat[i].X < 0 {
				i++
			}
			half := b.Side.Flat[i-1].Towards(b.Side.Flat[i], -b.Side.Flat[i-1].X/(b.Side.Flat[i].X-b.Side.Flat[i-1].X)).Y
			about(t, name+": gap at mid-bay", gapOf(t, middle, 2*half), out, tolerance)
		}
	}
}

// gapOf hangs a layer of a girth from a section's cords and returns how far it lies below
// the body there, round about the same centre.
func gapOf(t *testing.T, s hung.Section, girth float64) float64 {
	t.Helper()
	low, high := 10-s.Radius, math.Hypot(s.Half, s.Height-s.Radius)-s.Radius-1
	for range 80 {
		mid := (low + high) / 2
		if closed(s.Half, s.Height, s.Radius, mid) < girth {
			low = mid
		} else {
			high = mid
		}
	}
	return low
}

// Every cell of the lining's net keeps its threads' lengths, and over the pad no node is
// nearer to the body than the walls make it, nor farther than the pad is thick.
func TestLiningNetLiesOnPad(t *testing.T) {
	s := bed(t, nil)
	l := Lining{Head: -620, Foot: 620, Out: 40}
	plane := newEndPlane(&s, hung.Foot, false)
	w, err := newWeave(&s, hung.Foot, 20, 1.4, l.surface(&s, hung.Foot, plane))
	if err != nil {
		t.Fatal(err)
	}
	n := w.net
	nodes := 0
	for i := 1; i < len(n.U); i++ {
		for j := 1; j < len(n.V); j++ {
			about(t, "step of the warp", n.Point[i][j].Minus(n.Point[i-1][j]).Len(), n.U[i]-n.U[i-1], 1e-8)
			about(t, "step of the weft", n.Point[i][j].Minus(n.Point[i][j-1]).Len(), n.V[j]-n.V[j-1], 1e-8)
			p := n.Point[i][j]
			if p.X > l.Foot || w.edge[i][j] < 0 {
				continue
			}
			nodes++
			sec := s.At(p.X).Section
			off := math.Hypot(p.Y, p.Z-s.Problem.Bottom(p.X)-sec.Radius) - sec.Radius // of the centre of the round
			if p.Y < sec.Radius*math.Sin(sec.Wall) && math.Abs(off-40) > 1e-6 {
				t.Errorf("at %g, %g the layers lie %g mm apart, want 40", p.X, p.Y, off)
			}
			if off < 40-1e-6 {
				t.Errorf("at %g, %g the lining lies inside the pad's face: %g", p.X, p.Y, off)
			}
		}
	}
	if nodes < 500 {
		t.Errorf("only %d nodes looked at", nodes)
	}
}

// The lining meets the body in the planes of the ends, and leaves it the more the farther
// from them.
func TestLiningMeetsBody(t *testing.T) {
	s := bed(t, func(b *design.Bed) { b.HeadTail, b.FootTail = 260, 260 })
	for _, leaning := range []bool{false, true} {
		l := Lining{Head: -600, Foot: 600, Out: 30}
		for _, e := range hung.Ends() {
			plane := newEndPlane(&s, e, leaning)
			body, over := bedSurface(&s, e), l.surface(&s, e, plane)
			for _, q := range []float64{0, 100, 300} {
				last := 0.0
				for a := math.Abs(s.Ends[e].TailX) + 50; a > 0; a -= 5 {
					p, err := body(a, q)
					if err != nil {
						t.Fatal(err)
					}
					o, err := over(a, q)
					if err != nil {
						t.Fatal(err)
					}
					gap := o.Minus(p).Len()
					if plane.past(p) >= 0 && gap != 0 {
						t.Fatalf("past its end's plane the lining lies %g mm off the body", gap)
					}
					if a > 600 && gap < last-0.3 {
						t.Fatalf("at %g, %g along the section: %g mm apart after %g", a, q, gap, last)
					}
					last = gap
				}
			}
		}
	}
}

// A pad that reaches too far, or is too wide, is answered with what does.
func TestLiningAnswered(t *testing.T) {
	s := bed(t, nil)
	for _, r := range []struct {
		l   Lining
		key design.Key
		set func(l *Lining, v float64)
	}{
		{Lining{Head: -850, Foot: 850, Out: 40}, design.KeyLiningPadLength, func(l *Lining, v float64) { l.Head, l.Foot = -v/2, v/2 }},
		{Lining{Head: -600, Foot: 600, Out: 40, Half: 600}, design.KeyLiningPadWidth, func(l *Lining, v float64) { l.Half = v / 2 }},
		{Lining{Head: -150, Foot: 150, Out: 440, Play: 5}, design.KeyLiningPadThickness, func(l *Lining, v float64) { l.Out = v + 5 }},
	} {
		_, err := LayLining(&s, false, r.l)
		var no *hung.Impossible
		if !errors.As(err, &no) || no.Key != r.key || no.Bound != design.AtMost {
			t.Errorf("%+v: %v, want a bound of %s", r.l, err, r.key)
			continue
		}
		r.set(&r.l, no.Limit)
		if _, err := LayLining(&s, false, r.l); err != nil {
			t.Errorf("with what would do, %g: %v", no.Limit, err)
		}
	}
}

// Beside a body with straight tails the lining's edges are as long as the body's, flat and
// hung, and in the bay, where the pad lies, it is as much longer across as round the pad.
func TestLiningOfStraightCut(t *testing.T) {
	s := bed(t, func(b *design.Bed) { b.Cut, b.FootBar = design.Straight, 900 })
	body, err := layStraight(&s)
	if err != nil {
		t.Fatal(err)
	}
	l := Lining{Head: -620, Foot: 600, Out: 30}
	b := lined(t, &s, l)
	about(t, "side seam, hung", b.Side.HungLength(), body.Side.HungLength(), 1e-9)
	for _, e := range hung.Ends() {
		about(t, "tail's side", b.Corner(e).Dist(b.BarCorner(e)), body.Corner(e).Dist(body.BarCorner(e)), 1e-9)
		about(t, "end", b.Ends[e].FlatLength(), body.Ends[e].FlatLength(), 1e-9)
		about(t, "bar's tip along the seam", b.Tips[e], body.Tips[e], 1e-9)
	}
	seen := 0
	for i := body.TipIndex(hung.Head); i <= body.TipIndex(hung.Foot); i++ {
		p, at := body.Side.Flat[i], b.TipIndex(hung.Head)+i-body.TipIndex(hung.Head)
		if sec := s.At(p.X).Section; p.X > l.Head && p.X < l.Foot {
			seen++
			about(t, "half across", b.Side.Flat[at].Y-p.Y, (closed(sec.Half, sec.Height, sec.Radius, 30)-sec.Girth())/2, 1e-6)
		}
	}
	if seen < 50 {
		t.Errorf("%d stations", seen)
	}
}

// Beside a drawn side the lining's lies as far from a balanced one's as the body's does, and
// both are as long as they hang.
func TestLiningOfDrawnSide(t *testing.T) {
	s := bed(t, func(b *design.Bed) { b.Curve = design.Arc })
	level := s
	level.Problem.Bed.Curve = design.Balanced
	plain := net(t, &s, cellAcross)
	body, err := plain.Drawn(&s, design.Arc)
	if err != nil {
		t.Fatal(err)
	}
	l := Lining{Head: -620, Foot: 620, Out: 30}
	b, balanced := lined(t, &s, l), lined(t, &level, l)
	about(t, "side seam, hung", b.Side.HungLength(), body.Side.HungLength(), 1e-6)
	about(t, "bar's tip along the seam", b.Tips[hung.Foot], body.Tips[hung.Foot], 1e-6)
	most := 0.0
	bay := func(b *Body) geom.Polyline { return b.Side.Flat[b.TipIndex(hung.Head) : b.TipIndex(hung.Foot)+1] }
	for u := -700.0; u <= 700; u += 50 {
		moved := heightAt(bay(&body), u) - heightAt(bay(&plain), u)
		about(t, "moved", heightAt(bay(&b), u)-heightAt(bay(&balanced), u), moved, 0.05)
		most = max(most, math.Abs(moved))
	}
	if most < 2 {
		t.Errorf("an arc is drawn within %g mm of a balanced side", most)
	}
}
