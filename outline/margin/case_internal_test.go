package margin

import (
	"fmt"
	"math"
	"testing"

	"pgregory.net/rapid"

	"slingloft/outline/design"
	"slingloft/outline/hung"
	"slingloft/outline/quantity"
	_ "slingloft/outline/rapidtest"
	"slingloft/outline/rig"
)

// person is a design of a bed with alike ends under a sleeper whose head and feet
// lie on the tails.
func person() design.Design {
	var d design.Design
	d.Sleeper = design.Sleeper{Stature: 1740, Mass: 80, Crown: -60, Shoulders: 480}
	d.Bed = design.Bed{
		Span: 1440, HeadBar: 980, FootBar: 980, HeadValue: 420, ControlValue: 210,
		HeadTail: 150, FootTail: 150, HeadLeg: 820, FootLeg: 820,
		HeadRadius: 125, SeatRadius: 125, FootRadius: 125,
	}
	return d
}

// drawn is a design with ends, heights and masses of all kinds.
func drawn(t *rapid.T) (design.Design, hung.Shape) {
	f := func(lo, hi float64, name string) float64 { return rapid.Float64Range(lo, hi).Draw(t, name) }
	d := person()
	d.Sleeper = design.Sleeper{Stature: f(1500, 1950, "stature"), Mass: quantity.Kilograms(f(45, 130, "mass")),
		Crown: f(-150, 50, "crown"), Shoulders: f(400, 560, "shoulders")}
	d.Bed.HeadBar, d.Bed.FootBar = f(850, 1100, "head bar"), f(850, 1100, "foot bar")
	d.Bed.HeadLeg, d.Bed.FootLeg = d.Bed.HeadBar*f(0.7, 1.1, "head leg"), d.Bed.FootBar*f(0.7, 1.1, "foot leg")
	d.Bed.ControlValue, d.Bed.Lift = f(120, 260, "depth"), quantity.Radians(f(-0.04, 0.04, "lift"))
	s, err := hung.Solve(hung.ProblemOf(d))
	if err != nil {
		t.Skip("does not hang")
	}
	return d, s
}

func solved(t testing.TB, d design.Design) hung.Shape {
	t.Helper()
	s, err := hung.Solve(hung.ProblemOf(d))
	if err != nil {
		t.Fatal(err)
	}
	return s
}

func like(t rapid.TB, what string, got, want, rel float64) {
	t.Helper()
	if !(math.Abs(got-want) <= rel*math.Abs(want)) {
		t.Errorf("%s = %.9g, want %.9g", what, got, want)
	}
}

// Every pull of one who lies follows from the one thrust H: along a cord it is H
// times length over run. A leg is steepest where it leaves the tail's cloth, on a
// straight line to its apex; hooks carry both sides.
func TestLyingByTheThrust(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		_, s := drawn(t)
		c := lying(&s)
		side := 0.0
		for e, end := range s.Ends {
			y, z := s.Cord(end.TailX)
			run := math.Abs(end.ApexX - end.TailX)
			pull := s.Thrust * math.Hypot(run, math.Hypot(y, end.ApexZ-z)) / run
			like(t, fmt.Sprintf("leg %d", e), c.Leg[e], max(pull, end.LegTension), 1e-6)
			if e == int(hung.Head) {
				like(t, "both lines' level pull", end.Horizontal, 2*s.Thrust, 1e-9)
			}
			like(t, "hang line", c.Hang[e], 2*s.Thrust*math.Sqrt(1+end.Slope*end.Slope), 1e-6)
			like(t, "bar", c.Bar[e], end.BarCompression, 0)
			side = max(side, end.TipTension)
		}
		// Between its tips the cord is nowhere as steep as at the steeper one.
		like(t, "side cord", c.Side, side, 1e-6)
		for x := -700.0; x <= 700; x += 100 {
			if here := s.At(x); here.Tension > c.Side*(1+1e-9) || here.Cloth > c.Cloth*(1+1e-9) {
				t.Fatalf("at %g: cord %g N of %g, cloth %g N/mm of %g", x, here.Tension, c.Side, here.Cloth, c.Cloth)
			}
		}
	})
}

// The lower side's share, by moments about the upper cord in the turned section:
// the axis is the line through both apexes over the weight, and the weight hangs
// below it.
func TestRollingByMoments(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		d, s := drawn(t)
		flat := lying(&s)
		c := rolling(&s, d, flat)
		r := rig.Steadiness(&s, d.Sleeper)
		if r.Side <= 0 {
			if c.Cannot.Kind != ApexesLow {
				t.Fatalf("no fault of a weight above the apexes: %+v", c)
			}
			t.Skip("turns over")
		}
		q := s.At(r.X)
		centre := d.Sleeper.Shoulders / 2
		shift := min(centre, q.Y)
		axis := s.Problem.Bottom(r.X) + r.Hooks
		rho := math.Atan2(shift, axis-(q.Bottom+centre))
		turned := func(y, z float64) float64 { return y*math.Cos(rho) + (z-axis)*math.Sin(rho) }
		weight, high := turned(shift, q.Bottom+centre), turned(-q.Y, q.Z)
		if math.Abs(weight) > 1e-9 {
			t.Fatalf("the weight hangs %g mm beside the axis", weight)
		}
		// The cords pull square to the line between them, which is 2y long whatever the
		// turn; lying each has half.
		share := max(1, 2*(weight-high)/(2*q.Y))
		like(t, "side", c.Side, flat.Side*share, 1e-9)
		like(t, "cloth", c.Cloth, flat.Cloth*share, 1e-9)
		for e := range 2 {
			like(t, "leg", c.Leg[e], flat.Leg[e]*share, 1e-9)
			like(t, "bar", c.Bar[e], flat.Bar[e]*share, 1e-9)
			like(t, "hang line", c.Hang[e], flat.Hang[e], 0)
		}
		like(t, "shift told", c.Basis.Shift, shift, 0)
		like(t, "turn told", c.Basis.Turn, rho, 1e-9)
		like(t, "share told", c.Basis.Share, share, 1e-9)
		if c.Kind != Rolling || c.Basis.Kind != WeightShifted || c.Cannot.Kind != NoObstacle {
			t.Fatalf("%+v", c)
		}
	})
}

// One whose centre of mass on the side lies above the apexes turns over: no loads,
// and by how much it is too high.
func TestRollingOver(t *testing.T) {
	d := person()
	d.Sleeper.Shoulders = 1500
	s := solved(t, d)
	c := rolling(&s, d, lying(&s))
	if c.Kind != Rolling || c.Basis.Kind != TurnsOver || c.Cannot.Kind != ApexesLow || c.Side != 0 || c.Leg != [2]float64{} || c.Cloth != 0 {
		t.Errorf("loads all the same: %+v", c)
	}
	want := 750 - rig.Steadiness(&s, d.Sleeper).Hooks
	like(t, "below", c.Cannot.Below, want, 1e-9)
}
