package margin

import (
	"math"
	"testing"

	"pgregory.net/rapid"

	"slingloft/outline/design"
	"slingloft/outline/hung"
)

// bracket returns the pull along the hang lines if they are so long that they keep
// their angle: the whole thrust of both sides, for the weight that sits.
func bracket(s *hung.Shape, e int, weight float64) float64 {
	up := s.Ends[0].Vertical + s.Ends[1].Vertical
	return weight / up * math.Hypot(s.Ends[e].Horizontal, s.Ends[e].Vertical)
}

// One cord to either apex makes a triangle of three known sides. Its angles come
// from the law of cosines and its pulls from Lami's theorem.
func TestSeatedByTriangle(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		d, s := drawn(t)
		head, foot := s.Ends[hung.Head], s.Ends[hung.Foot]
		weight := max(float64(d.Sleeper.Mass.Weight()), head.Vertical+foot.Vertical)
		a, b := head.Leg+s.Arc(-720, 0), foot.Leg+s.Arc(0, 720)
		base := math.Hypot(foot.ApexX-head.ApexX, foot.ApexZ-head.ApexZ)
		tilt := math.Atan2(foot.ApexZ-head.ApexZ, foot.ApexX-head.ApexX)
		down := [2]float64{math.Acos((a*a+base*base-b*b)/(2*a*base)) - tilt, math.Acos((b*b+base*base-a*a)/(2*b*base)) + tilt}
		// Each bar tip of the slack side lies a bar's angle above the loaded leg.
		var tip [2][2]float64
		for e, end := range s.Ends {
			up := 2*math.Asin(end.Bar/2/end.Leg) - down[e]
			tip[e] = [2]float64{end.ApexX - hung.End(e).Sign()*end.Leg*math.Cos(up), end.ApexZ + end.Leg*math.Sin(up)}
		}
		if math.Hypot(tip[1][0]-tip[0][0], tip[1][1]-tip[0][1]) > s.SideArc {
			t.Skip("the other cord gets taut")
		}
		c := seated(&s, d.Sleeper)
		most := 0.0
		for e := range 2 {
			pull := weight * math.Cos(down[1-e]) / math.Sin(down[0]+down[1])
			want := max(pull, bracket(&s, e, weight))
			most = max(most, want)
			like(t, "leg", c.Leg[e], want, 1e-9)
			like(t, "hang line", c.Hang[e], want, 1e-9)
			if c.Bar[e] != 0 {
				t.Errorf("a bar carries %g N although the other side is slack", c.Bar[e])
			}
		}
		like(t, "side cord", c.Side, most, 1e-9)
		like(t, "cloth", c.Cloth, weight/SeatBreadth, 1e-12)
		if c.Cannot.Kind != NoObstacle || c.Kind != Seated || c.Basis.Kind != OneCord {
			t.Errorf("%+v", c)
		}
	})
}

// Both extremes govern for some bed: no hang lines where the bed is narrow, so that
// its cords straighten out flat, and long ones where it is wide. Alike ends.
func TestSeatedExtremes(t *testing.T) {
	seen := map[bool]int{}
	for _, bar := range []float64{560, 700, 980, 1100} {
		d := alike()
		d.Bed.HeadBar, d.Bed.FootBar = bar, bar
		s := solved(t, d)
		half := 820 + s.SideArc/2
		short := 40 * hung.Gravity / math.Sqrt(1-math.Pow(s.Ends[1].ApexX/half, 2))
		long := bracket(&s, 0, 80*hung.Gravity)
		seen[long > short]++
		like(t, "leg", seated(&s, d.Sleeper).Leg[0], max(short, long), 1e-9)
	}
	if seen[true] == 0 || seen[false] == 0 {
		t.Errorf("one extreme alone was met: %v", seen)
	}
}

// alike is a bed whose ends carry alike.
func alike() design.Design {
	d := person()
	d.Load.Model = design.Even
	return d
}

// Alike ends with the other cord taut, in closed form: its tips stand as far apart
// as it is long, which fixes the turn of each triangle of two legs and a bar; every
// force follows from the balance of a tip and of a triangle about its apex.
func TestSeatedBraced(t *testing.T) {
	d := alike()
	d.Bed.HeadLeg, d.Bed.FootLeg = 620, 620
	s := solved(t, d)
	f := plane(&s, 80*hung.Gravity)
	if !f.taut(f.straight()) {
		t.Fatal("the other cord is meant to get taut")
	}
	c := seated(&s, d.Sleeper)
	end := s.Ends[hung.Foot]
	leg, half, part := 620.0, end.ApexX, s.SideArc/2
	weight := 80 * hung.Gravity
	open := 2 * math.Asin(end.Bar/2/leg)
	best, high := math.Inf(1), 0.0
	for _, up := range [2]float64{1, -1} {
		h := up * math.Acos((half-part)/leg) // of the other leg above the level, inwards
		x := half - leg*math.Cos(h-open)
		if z := leg*math.Sin(h-open) - math.Sqrt(part*part-x*x); x > 0 && x < part && z < best {
			best, high = z, h
		}
	}
	low := high - open
	phi := math.Acos((half - leg*math.Cos(low)) / part) // of the loaded cord below the level
	pull := weight / 2 / math.Sin(phi)
	p := f.mustBrace(t)
	// About the apex, per leg's length: the loaded cord against the other, level one.
	other := -pull * math.Sin(low+phi) / math.Sin(high)
	// The upper tip, square to its leg: cord and bar, which leans by half the angle.
	bar := other * math.Sin(high) / math.Cos(open/2)
	// The lower tip, along its leg: cord and bar.
	along := pull*math.Cos(low+phi) + bar*math.Sin(open/2)
	// The apex holds half the weight and both cords.
	hang := math.Hypot(weight/2, pull*math.Cos(phi)+other)
	if pull < 0 || other < 0 || bar < 0 || along < 0 {
		t.Fatalf("cord %g, other cord %g, bar %g, leg %g N: not a posture", pull, other, bar, along)
	}
	long := bracket(&s, 1, weight)
	for e := range 2 {
		like(t, "loaded cord", p.side[e], pull, 1e-6)
		like(t, "other cord", p.other[e], other, 1e-6)
		like(t, "thrust", p.bar[e], bar, 1e-6)
		like(t, "loaded leg", p.leg[e], along, 1e-6)
		like(t, "apex", p.apex[e], hang, 1e-6)
		like(t, "bar", c.Bar[e], bar, 1e-6)
		like(t, "leg", c.Leg[e], max(along, long), 1e-6)
		like(t, "hang line", c.Hang[e], max(hang, long), 1e-6)
	}
	like(t, "side cord", c.Side, max(pull, long), 1e-6)
	if c.Kind != Seated || c.Basis.Kind != OneCordBraced {
		t.Errorf("%v by %v, want the other side taut", c.Kind, c.Basis.Kind)
	}
}

func (f frame) mustBrace(t *testing.T) posture {
	t.Helper()
	p, ok := f.braced()
	if !ok {
		t.Fatal("no posture")
	}
	return p
}
