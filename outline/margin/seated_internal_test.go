package margin

import (
	"math"
	"math/rand/v2"
	"testing"

	"pgregory.net/rapid"

	"slingloft/outline/design"
	"slingloft/outline/hung"
	"slingloft/outline/quantity"
)

// wide has bars so wide and legs so short that the slack side's cord gets taut.
func wide() frame {
	return frame{
		apex: [2]vec{{-1140, 500}, {1150, 520}}, leg: [2]float64{650, 670}, part: [2]float64{750, 763},
		open: [2]float64{2 * math.Asin(490.0/650), 2 * math.Asin(470.0/670)}, cord: 1513, weight: 700,
	}
}

// Every node of the braced posture is in balance and every cord pulls, every bar
// pushes.
func TestBracedBalance(t *testing.T) {
	f := wide()
	if !f.taut(f.straight()) {
		t.Fatal("the sample is meant to be taut")
	}
	p, ok := f.braced()
	if !ok {
		t.Fatal("no posture")
	}
	if math.Abs(p.high[1].minus(p.high[0]).len()-f.cord) > 1e-6 {
		t.Errorf("cord %g, want %g", p.high[1].minus(p.high[0]).len(), f.cord)
	}
	across := p.high[1].minus(p.high[0]).unit()
	var load vec
	for e := range 2 {
		if p.side[e] <= 0 || p.other[e] <= 0 || p.bar[e] <= 0 || p.leg[e] <= 0 {
			t.Errorf("end %d: %+v", e, p)
		}
		// The upper tip: cord along, bar up from the lower tip, the rest in its leg.
		cord := across.times(p.other[e])
		if e == 1 {
			cord = cord.times(-1)
		}
		bar := p.high[e].minus(p.low[e]).unit().times(p.bar[e])
		leg := p.high[e].minus(f.apex[e])
		if r := cord.plus(bar).cross(leg) / leg.len(); math.Abs(r) > 1e-3*f.weight {
			t.Errorf("end %d: upper tip out of balance by %g N", e, r)
		}
		load = load.plus(p.low[e].minus(p.load).unit().times(p.side[e]))
	}
	if math.Abs(load.x) > 1e-9 || math.Abs(load.z-f.weight) > 1e-9 {
		t.Errorf("load held by %+v", load)
	}
	// One cord, pulled from both ends alike, but for what the search leaves over.
	if math.Abs(p.other[0]-p.other[1]) > 1e-3*f.weight {
		t.Errorf("the other cord pulls %g and %g", p.other[0], p.other[1])
	}
}

type point [3]float64

func (a point) add(b point, k float64) point {
	return point{a[0] + k*b[0], a[1] + k*b[1], a[2] + k*b[2]}
}
func (a point) dot(b point) float64  { return a[0]*b[0] + a[1]*b[1] + a[2]*b[2] }
func (a point) dist(b point) float64 { d := a.add(b, -1); return math.Sqrt(d.dot(d)) }
func (a point) unit() point          { return point{}.add(a, 1/math.Sqrt(a.dot(a))) }

// No arrangement in space of legs, bars and cords lets the load come lower: tried
// with many random ones, the best of them refined at random.
func TestNothingHangsLower(t *testing.T) {
	for name, f := range map[string]frame{"slack": narrow(), "braced": wide()} {
		p := f.straight()
		if f.taut(p) {
			p, _ = f.braced()
		}
		rng := rand.New(rand.NewPCG(1, 2))
		best, at := math.Inf(1), [6]float64{}
		for i := range 60000 {
			var a [6]float64
			for k := range a {
				a[k] = rng.Float64()*2*math.Pi - math.Pi
				if i > 20000 {
					a[k] = at[k] + rng.NormFloat64()*math.Pow(10, -4*float64(i-20000)/40000)
				}
			}
			if z, ok := f.lowestInSpace(a); ok && z < best {
				best, at = z, a
			}
		}
		if best < p.load.z-1e-6 {
			t.Errorf("%s: a load at %.3f mm lies below %.3f", name, best, p.load.z)
		}
		if best > p.load.z+5 {
			t.Errorf("%s: the trials come only down to %.3f mm, the posture has %.3f", name, best, p.load.z)
		}
	}
}

func narrow() frame {
	f := wide()
	f.leg = [2]float64{820, 820}
	f.apex = [2]vec{{-1329, 669}, {1329, 669}}
	f.open = [2]float64{2 * math.Asin(490.0/820), 2 * math.Asin(490.0/820)}
	return f
}

// lowestInSpace turns both triangles by three angles each about their apexes and
// returns how low the load then hangs, if the cords reach.
func (f frame) lowestInSpace(a [6]float64) (float64, bool) {
	var low, high [2]point
	for e := range 2 {
		sign := 1 - 2*float64(e)
		v := a[3*e : 3*e+3]
		dir := point{sign * math.Cos(v[0]) * math.Cos(v[1]), math.Sin(v[1]), -math.Sin(v[0]) * math.Cos(v[1])}
		rough := point{math.Cos(v[2]), math.Sin(v[2]), 0.3}
		side := rough.add(dir, -rough.dot(dir)).unit()
		apex := point{f.apex[e].x, 0, f.apex[e].z}
		low[e] = apex.add(dir, f.leg[e])
		other := point{}.add(dir, math.Cos(f.open[e])).add(side, math.Sin(f.open[e])*math.Copysign(1, v[2]))
		high[e] = apex.add(other, f.leg[e])
	}
	long := low[0].dist(low[1])
	if high[0].dist(high[1]) > f.cord || long > f.part[0]+f.part[1] {
		return 0, false
	}
	along := (long*long + f.part[0]*f.part[0] - f.part[1]*f.part[1]) / (2 * long)
	off := f.part[0]*f.part[0] - along*along
	if off < 0 {
		return 0, false
	}
	u := low[1].add(low[0], -1).unit()
	down := point{0, 0, -1}
	n := down.add(u, -down.dot(u)).unit()
	return low[0].add(u, along).add(n, math.Sqrt(off))[2], true
}

// One whose feet lie past the cloth sits with the whole weight all the same.
func TestWholeWeightSits(t *testing.T) {
	d := design.Design{Sleeper: design.Sleeper{Stature: 1900, Mass: 90}}
	d.Bed = design.Bed{
		Span: 1440, HeadBar: 980, FootBar: 980, HeadValue: 420, ControlValue: 210,
		HeadTail: 150, FootTail: 150, HeadLeg: 820, FootLeg: 820,
		HeadRadius: 125, SeatRadius: 125, FootRadius: 125,
	}
	s, err := hung.Solve(hung.ProblemOf(d))
	if err != nil {
		t.Fatal(err)
	}
	if c := seated(&s, d.Sleeper); math.Abs(c.Cloth-90*hung.Gravity/SeatBreadth) > 1e-9 {
		t.Errorf("cloth %g N/mm, want the whole weight over the seat", c.Cloth)
	}
}

// Whatever bed hangs has finite loads in every case, and one who sits pulls harder
// on a cord than half the weight.
func TestLoadsAreFinite(t *testing.T) {
	taut := 0
	rapid.Check(t, func(t *rapid.T) {
		f := func(lo, hi float64, name string) float64 { return rapid.Float64Range(lo, hi).Draw(t, name) }
		var d design.Design
		d.Sleeper = design.Sleeper{Stature: f(1400, 2000, "stature"), Mass: quantity.Kilograms(f(40, 150, "mass"))}
		bar := f(600, 1300, "bar")
		d.Bed = design.Bed{
			Span: f(1100, 1900, "span"), HeadBar: bar, FootBar: bar * f(0.8, 1.1, "foot bar"), HeadValue: f(300, 600, "drop"),
			ControlValue: f(80, 300, "depth"), HeadTail: 120, FootTail: 140,
			HeadLeg: bar * f(0.62, 1.3, "head leg"), FootLeg: bar * f(0.62, 1.3, "foot leg"),
			HeadRadius: 120, SeatRadius: 130, FootRadius: 110,
		}
		s, err := hung.Solve(hung.ProblemOf(d))
		if err != nil {
			t.Skip("does not hang")
		}
		r := Of(Input{Shape: &s, Design: d})
		for _, c := range r.Cases {
			for _, v := range []float64{c.Side, c.Leg[0], c.Leg[1], c.Hang[0], c.Hang[1], c.Bar[0], c.Bar[1], c.Cloth} {
				if math.IsNaN(v) || math.IsInf(v, 0) || v < 0 {
					t.Fatalf("%+v", c)
				}
			}
			if c.Kind == Seated && c.Cannot.Kind == NoObstacle && c.Side < float64(d.Sleeper.Mass.Weight())/2 {
				t.Fatalf("%+v", c)
			}
			if c.Kind == Seated && (c.Bar[0] > 0 || c.Cannot.Kind != NoObstacle) {
				taut++
			}
			if c.Cannot.Kind != NoObstacle && c.Kind == Seated {
				t.Logf("cannot: %v", c.Cannot)
			}
		}
	})
	t.Logf("the other cord is taut in %d beds", taut)
}
