package flat

import (
	"errors"
	"fmt"
	"math"
	"math/rand/v2"
	"testing"

	"slingloft/outline/design"
	"slingloft/outline/designtest"
	"slingloft/outline/geom"
	"slingloft/outline/hung"
)

// bed returns the shape of an even bed under an even load on the bay.
func bed(t testing.TB, change func(*design.Bed)) hung.Shape {
	t.Helper()
	b := design.Bed{
		Span: 1440, HeadBar: 980, FootBar: 980, HeadValue: 420,
		Control: design.Thrust, ControlValue: 420,
		HeadTail: 150, FootTail: 150, HeadLeg: 820, FootLeg: 820,
		HeadRadius: 125, SeatRadius: 125, FootRadius: 125,
	}
	if change != nil {
		change(&b)
	}
	s, err := hung.Solve(hung.Problem{Bed: b, Load: hung.EvenLoad(70*hung.Gravity, -720, 720)})
	if err != nil {
		t.Fatal(err)
	}
	return s
}

func net(t testing.TB, s *hung.Shape, cell float64) Body {
	t.Helper()
	b, err := layNet(s, cell, false)
	if err != nil {
		t.Fatal(err)
	}
	return b
}

func about(t *testing.T, what string, got, want, tol float64) {
	t.Helper()
	if !(math.Abs(got-want) <= tol) {
		t.Errorf("%s = %.5g, want %.5g within %g", what, got, want, tol)
	}
}

// A bed worked out apart by two prototypes: over a tail of 150 mm the cord runs
// 202 mm, the end's corner stands 48 mm further out than its middle, and the cloth
// shears by 11.5 degrees at most.
func TestPrototypeBed(t *testing.T) {
	s := bed(t, nil)
	b := net(t, &s, cellAcross)
	corner, middle := b.Corner(hung.Foot), b.Ends[hung.Foot].Flat[0]
	about(t, "cord over the tail", b.Tips[hung.Head], 202, 0.5)
	about(t, "corner beyond the middle", corner.X-middle.X, 48, 0.5)
	about(t, "largest shear in degrees", b.Shear.Angle*180/math.Pi, 11.5, 0.2)
	about(t, "flat bay edge", b.Side.FlatOf(b.Tips[hung.Foot])-b.Side.FlatOf(b.Tips[hung.Head]), 1520, 0.5)
}

// furthest returns the largest distance of a's points from line b.
func furthest(a, b geom.Polyline) float64 {
	arc := geom.NewArc(b)
	worst := 0.0
	for _, p := range a {
		_, d := arc.Nearest(p)
		worst = max(worst, d)
	}
	return worst
}

// Halving the cell moves no point of the outline by more than 0.2 mm.
func TestNetConverges(t *testing.T) {
	for name, change := range map[string]func(*design.Bed){
		"alike": nil,
		"unlike": func(b *design.Bed) {
			b.FootBar, b.FootTail, b.FootLeg = 800, 220, 700
			b.Second, b.SecondValue = design.FootDrop, 400
		},
		"radii": func(b *design.Bed) { b.HeadRadius, b.SeatRadius, b.FootRadius = 110, 150, 130 },
		"lift":  func(b *design.Bed) { b.Lift = 0.05 },
	} {
		s := bed(t, change)
		converges(t, name, &s)
	}
}

// In these designs the cords would come inside the underbody just past the end of
// the foot tail, where the net still needs a few cells of the surface.
func TestNetPastTightTail(t *testing.T) {
	for _, n := range []uint64{1445, 2641} {
		s, err := hung.Solve(hung.ProblemOf(designtest.Design(rand.New(rand.NewPCG(8, n)))))
		if err != nil {
			t.Fatal(err)
		}
		converges(t, fmt.Sprint(n), &s)
	}
}

// converges checks that halving the cell of the net leaves the outline where it is.
func converges(t *testing.T, name string, s *hung.Shape) {
	t.Helper()
	coarse, fine := net(t, s, cellAcross), net(t, s, cellAcross/2)
	worst := furthest(coarse.Side.Flat, fine.Side.Flat)
	for e := range 2 {
		worst = max(worst, furthest(coarse.Ends[e].Flat, fine.Ends[e].Flat), furthest(coarse.Bars[e], fine.Bars[e]))
		worst = max(worst, coarse.Corner(hung.End(e)).Dist(fine.Corner(hung.End(e))))
	}
	t.Logf("%s: outline moves by %.3f mm", name, worst)
	if !(worst <= 0.2) {
		t.Errorf("%s: halving the cell moves the outline by %.3f mm", name, worst)
	}
}

// In the bay the walls are planes, so that the net is half the girth over the
// station, whatever the load.
func TestNetIsGirthInBay(t *testing.T) {
	s := bed(t, func(b *design.Bed) { b.FootBar = 860 })
	b := net(t, &s, cellAcross)
	for i, p := range b.Side.Flat {
		if math.Abs(p.X) < 715 {
			about(t, "half girth", p.Y, s.At(p.X).Section.Girth()/2, 0.05)
			about(t, "station of the hung length", math.Abs(s.Arc(p.X, 0)), math.Abs(b.Side.Hung[i]-b.Tips[hung.Head]-s.Arc(-720, 0)), 0.05)
		}
	}
}

// The seam at a leaning end is as long as the curve in which the bed meets the
// plane, and that plane stands square to the rising cords.
func TestLeaningEnd(t *testing.T) {
	s := bed(t, func(b *design.Bed) {
		b.HeadTail, b.FootTail, b.HeadLeg, b.FootLeg = 420, 420, 1500, 1500
	})
	b, err := layNet(&s, cellAcross, true)
	if err != nil {
		t.Fatal(err)
	}
	up, err := layNet(&s, cellAcross, false)
	if err != nil {
		t.Fatal(err)
	}
	for e := range 2 {
		about(t, "section length", b.Sections[e].Length(), b.Ends[e].HungLength(), 0.05)
		lean := up.Corner(hung.End(e)).X - b.Corner(hung.End(e)).X
		if lean*hung.End(e).Sign() < 50 {
			t.Errorf("%s corner leans in by %.1f mm only", hung.End(e), lean)
		}
	}
}

// The straight cut ends square, and its slope is the one of least weighted
// departure: no other slope nearby does better.
func TestStraightCut(t *testing.T) {
	s, err := hung.Solve(func() hung.Problem {
		sh := bed(t, nil)
		p := sh.Problem
		p.Bed.Cut = design.Straight
		p.Load = hung.EvenLoad(70*hung.Gravity, -850, 850)
		return p
	}())
	if err != nil {
		t.Fatal(err)
	}
	b, err := Lay(&s, false)
	if err != nil {
		t.Fatal(err)
	}
	for e := range 2 {
		end := b.Ends[e].Flat
		about(t, "square end", end[len(end)-1].X, end[0].X, 1e-9)
	}
	best := tailSlope(&s, hung.Foot)
	worst := func(slope float64) float64 {
		w := 0.0
		for over := 1.0; over <= 150; over++ {
			q := s.At(720 + over)
			w = max(w, math.Abs(q.Section.Girth()/2-b.BarCorner(hung.Foot).Y-slope*over)*q.Load)
		}
		return w
	}
	for _, d := range []float64{-0.02, -0.005, 0.005, 0.02} {
		if worst(best+d) < worst(best)*0.99 {
			t.Errorf("slope %.4f departs less than %.4f", best+d, best)
		}
	}
}

// Drawn sides are as deep as asked, and say how far from level they hang.
func TestDrawnSides(t *testing.T) {
	s := bed(t, func(b *design.Bed) { b.Control, b.ControlValue = design.SideDepth, 213 })
	plain := net(t, &s, cellAcross)
	for _, c := range []design.Curve{design.Catenary, design.Arc} {
		b, err := plain.Drawn(&s, c)
		if err != nil {
			t.Fatal(err)
		}
		low := math.Inf(1)
		for _, p := range b.Side.Flat {
			low = min(low, p.Y)
		}
		about(t, "depth", b.BarCorner(hung.Head).Y-low, 213, 0.05)
		if !(b.Level.High > 1 && b.Level.High < 20) {
			t.Errorf("curve %d hangs %.2f mm high at most", c, b.Level.High)
		}
	}
}

// Compensation moves the edge in by strain times half width, and no hung length.
func TestCompensated(t *testing.T) {
	s := bed(t, nil)
	b := net(t, &s, cellAcross)
	c := b.Compensated(&s, 60)
	strain := s.At(0).Cloth / 60
	about(t, "largest strain", c.Compensation.Strain, strain, 1e-6)
	for i, p := range b.Side.Flat {
		about(t, "moved in", c.Side.Flat[i].Y, p.Y/(1+strain), 1e-6)
		about(t, "hung length", c.Side.Hung[i], b.Side.Hung[i], 0)
	}
	if got := b.Compensated(&s, 0); got.Compensation != (Compensation{}) {
		t.Error("compensated without a stiffness")
	}
}

// Every random bed that hangs is laid out or refused in words that say what to
// change; its side runs on from end to end with rising hung lengths.
func TestRandomBodies(t *testing.T) {
	r := rand.New(rand.NewPCG(21, 4))
	laid := 0
	for i := range 30 {
		d := designtest.Design(r)
		s, err := hung.Solve(hung.ProblemOf(d))
		if err != nil {
			continue
		}
		b, err := Lay(&s, i%5 == 0)
		if err != nil {
			if !errors.Is(err, errLeans) {
				t.Errorf("bed %d: %v", i, err)
			}
			continue
		}
		laid++
		for k := 1; k < len(b.Side.Hung); k++ {
			if !(b.Side.Hung[k] > b.Side.Hung[k-1]) {
				t.Fatalf("bed %d: hung length falls at point %d", i, k)
			}
		}
		for e := range 2 {
			if d := b.Ends[e].Flat[len(b.Ends[e].Flat)-1].Dist(b.Corner(hung.End(e))); d > 1e-6 {
				t.Errorf("bed %d: %s end misses its corner by %g", i, hung.End(e), d)
			}
		}
	}
	if laid < 15 {
		t.Errorf("only %d beds laid out", laid)
	}
}

// What the net costs against its cell: with its inverse square.
func BenchmarkNet(b *testing.B) {
	s := bed(b, nil)
	for name, cell := range map[string]float64{"cell20": 20, "cell10": 10, "cell5": 5} {
		b.Run(name, func(b *testing.B) {
			for b.Loop() {
				net(b, &s, cell)
			}
		})
	}
}
