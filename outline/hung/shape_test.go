package hung_test

import (
	"math"
	"testing"

	"slingloft/outline/design"
	"slingloft/outline/hung"
)

// even returns a problem with the load on the bay alone and weightless cloth and
// bars, so that the closed forms hold.
func even() hung.Problem {
	return hung.Problem{
		Bed: design.Bed{
			Span: 1440, HeadBar: 980, FootBar: 980, HeadValue: 420,
			Control: design.Thrust, ControlValue: 420,
			HeadTail: 150, FootTail: 150, HeadLeg: 820, FootLeg: 820,
			HeadRadius: 125, SeatRadius: 125, FootRadius: 125,
		},
		Load: hung.EvenLoad(70*hung.Gravity, -720, 720),
	}
}

func solve(t *testing.T, p hung.Problem) hung.Shape {
	t.Helper()
	s, err := hung.Solve(p)
	if err != nil {
		t.Fatalf("Solve: %v", err)
	}
	return s
}

func near(t *testing.T, what string, got, want, rel float64) {
	t.Helper()
	if !(math.Abs(got-want) <= rel*math.Max(1, math.Abs(want))) {
		t.Errorf("%s = %.12g, want %.12g", what, got, want)
	}
}

func TestPrototype(t *testing.T) {
	s := solve(t, even())
	e := s.Ends[hung.Head]
	t.Logf("thrust %.1f depth %.2f girth bar %.1f mid %.1f end %.1f theta %.2f slope %.4f "+
		"C %.1f leg %.1f tip %.1f apex %.1f tailarc %.1f side %.2f",
		s.Thrust, s.Depth, e.Section.Girth(), s.At(0).Section.Girth(), e.Last.Girth(), e.Section.Wall*180/math.Pi, e.Slope,
		e.BarCompression, e.LegTension, e.TipTension, -e.ApexX-720, e.TailArc, s.SideArc)
}

// With the load even over the bay and bars alike, each cord is a parabola of sag
// w S²/(16 H) in height and the handbook formula 2H = w S²/(8 sag) holds for both
// cords together (parabolic cable, any statics text; derived anew in the brief).
func TestEvenLoadIsParabola(t *testing.T) {
	p := even()
	s := solve(t, p)
	w := 70 * hung.Gravity / 1440
	sag := s.At(720).Z - s.At(0).Z
	near(t, "sag", sag, w*1440*1440/(16*s.Thrust), 1e-9)
	near(t, "both thrusts", 2*s.Thrust, w*1440*1440/(8*sag), 1e-9)
	near(t, "side depth", s.Depth, sag/math.Sin(s.Ends[hung.Head].Section.Wall), 1e-9)
	for _, x := range []float64{-700, -333, 12, 480} {
		u := x / 720
		near(t, "z", s.At(x).Z, s.At(0).Z+sag*u*u, 1e-9)
	}
}

// Under any load and between any two bars, the same wall angle at both bars
// keeps it all along the bay, and the bay unrolls: the flat edge is as long as
// the cord.
func TestSameWallIsPlane(t *testing.T) {
	p := even()
	p.Bed.FootBar = 860
	p.Bed.Control, p.Bed.ControlValue = design.SideDepth, 190
	p.Load = hung.SleeperLoad(design.Sleeper{Stature: 1700, Mass: 82}, -790)
	p.ClothWeight = 70e-9 * hung.Gravity
	p.BarWeight = [2]float64{2.4, 2.1}
	s := solve(t, p)
	near(t, "side depth", s.Depth, 190, 1e-9)
	wall := s.Ends[hung.Head].Section.Wall
	flat, last := 0.0, 0.0
	const n = 20000
	for i := range n + 1 {
		q := s.At(-720 + 1440*float64(i)/n)
		near(t, "wall angle", q.Section.Wall, wall, 1e-9)
		v := q.Section.Girth() / 2
		if i > 0 {
			flat += math.Hypot(1440.0/n, v-last)
		}
		last = v
	}
	near(t, "flat edge against cord", flat, s.SideArc, 1e-8)
	near(t, "foot drop", s.Ends[hung.Foot].Section.Height,
		s.Ends[hung.Head].Section.Height-(980-860)/2*math.Tan(wall), 1e-9)
}
