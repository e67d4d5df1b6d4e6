package hung_test

import (
	"math"
	"testing"

	"slingloft/outline/hung"
)

// uneven is a bed with unlike ends, radii and a lifted head under a sleeper's load.
func uneven() hung.Problem {
	p := even()
	p.Bed.FootBar, p.Bed.FootLeg, p.Bed.Lift = 900, 760, 0.02
	p.Bed.HeadRadius, p.Bed.SeatRadius, p.Bed.FootRadius = 125, 150, 110
	p.Bed.Control, p.Bed.ControlValue = 0, 205 // side depth
	p.Load = hung.EvenLoad(70*hung.Gravity, -600, 650)
	return p
}

// What is read at a station hangs together: the cord, its slopes and length, the
// section and the tensions, in the bay, over the tails and along the legs.
func TestStationsHangTogether(t *testing.T) {
	s := solve(t, uneven())
	head, foot := s.Ends[hung.Head].ApexX, s.Ends[hung.Foot].ApexX
	const h = 1e-3
	for x := head + 5; x < foot-5; x += 17 {
		q := s.At(x)
		y, z := s.Cord(x)
		near(t, "cord across", q.Y, y, 1e-12)
		near(t, "cord up", q.Z, z, 1e-12)
		if math.Abs(math.Abs(x)-720) < 2 {
			continue // a bar stands here: the cord has a corner
		}
		before, after := s.At(x-h), s.At(x+h)
		near(t, "slope across", q.DY, (after.Y-before.Y)/(2*h), 1e-5)
		near(t, "slope up", q.DZ, (after.Z-before.Z)/(2*h), 1e-5)
		near(t, "length", s.Arc(x-h, x+h), 2*h*math.Sqrt(1+q.DY*q.DY+q.DZ*q.DZ), 1e-6)
		near(t, "pull", q.Tension, s.Thrust*math.Sqrt(1+q.DY*q.DY+q.DZ*q.DZ), 1e-12)
		near(t, "bottom", q.Bottom, -x*math.Tan(0.02), 1e-12)
		if q.Section.Half > 0 {
			near(t, "opening of the section", q.Section.Half, q.Y, 1e-9)
			near(t, "height of the section", q.Section.Height, q.Z-q.Bottom, 1e-9)
			near(t, "cloth", q.Cloth*2*math.Sin(q.Section.Wall), q.Load, 1e-9)
		}
	}
	near(t, "there and back", s.Arc(-300, 500)+s.Arc(500, -300), 0, 1e-9)
	near(t, "in two parts", s.Arc(-700, 0)+s.Arc(0, 900), s.Arc(-700, 900), 1e-9)
	near(t, "from tip to tip", s.Arc(-720, 720), s.SideArc, 1e-9)
}

// The legs meet at the apexes: at no width, where the ends say, after a leg's length.
func TestLegsMeet(t *testing.T) {
	s := solve(t, uneven())
	for e, end := range s.Ends {
		q := s.At(end.ApexX)
		near(t, "width at the apex", q.Y, 0, 1e-7)
		near(t, "height of the apex", q.Z, end.ApexZ, 1e-9)
		tip := hung.End(e).Sign() * 720
		near(t, "leg", math.Abs(s.Arc(tip, end.ApexX)), [2]float64{820, 760}[e], 1e-8)
		near(t, "both pulls, level", end.Horizontal, 2*s.Thrust, 1e-12)
		near(t, "both pulls, upright", end.Vertical, 2*s.Thrust*math.Abs(q.DZ), 1e-7)
		near(t, "hang line", end.Slope, math.Abs(q.DZ), 1e-7)
		// At a bar the cord's two slopes across press on it, and both go the same way inwards.
		near(t, "thrust of the bar", end.BarCompression, s.Thrust*(end.LegSlope+end.SideSlope), 1e-9)
		near(t, "leg at the tip", end.LegTension, s.At(tip*(1+1e-9)).Tension, 1e-5)
	}
	_, foot := s.TailEnds()
	near(t, "end of the foot tail", foot, 720+150*math.Cos(0.02), 1e-12)
}

// A spreader bar between a line of pull T and two straight legs, T/(2 cos β) each and
// T tan β / 2 in the bar (statics of three forces), bar 900 mm: the legs' part of what
// a bar carries, from the pull at the hook and the legs' half angle.
func TestSpreaderBar(t *testing.T) {
	for _, r := range []struct{ toRing, beta, leg, thrust float64 }{
		{450, 45, 693.6718, 490.5}, {600, 36.8699, 613.125, 367.875}, {780, 29.98164, 566.2759, 282.9808},
	} {
		// Worked for T = 981 N; any bed's legs past unloaded tails follow the same rule.
		sin, cos := math.Sincos(r.beta * math.Pi / 180)
		near(t, "leg of the table", 981/(2*cos), r.leg, 1e-6)
		near(t, "thrust of the table", 981*sin/cos/2, r.thrust, 1e-6)
		near(t, "half angle", math.Atan2(450, r.toRing)*180/math.Pi, r.beta, 1e-6)
	}
	s := solve(t, even())
	for e, end := range s.Ends {
		pull := math.Hypot(end.Horizontal, end.Vertical)
		// In the plane of the legs: from the bar's middle to the ring, square to the bar.
		bar := s.At(hung.End(e).Sign() * 720)
		toRing := math.Hypot(math.Abs(end.ApexX)-720, end.ApexZ-bar.Z)
		beta := math.Atan2(end.Bar/2, toRing)
		near(t, "leg", end.LegTension, pull/(2*math.Cos(beta)), 1e-6)
		near(t, "the legs' part of the thrust", s.Thrust*end.LegSlope, pull*math.Tan(beta)/2, 1e-6)
	}
}

// Stations run evenly from tail to tail with bars and breaks of the load among them.
func TestStations(t *testing.T) {
	s := solve(t, uneven())
	head, foot := s.TailEnds()
	for _, n := range []int{1, 7, 120} {
		got := s.Stations(n)
		if got[0] != head || got[len(got)-1] != foot || len(got) < n+1 || len(got) > n+5 {
			t.Errorf("%d stations for %d, from %g to %g", len(got), n, got[0], got[len(got)-1])
		}
		want := map[float64]bool{-720: true, 720: true, -600: true, 650: true}
		for i, x := range got {
			delete(want, x)
			if i > 0 && !(x > got[i-1]) {
				t.Errorf("station %g after %g", x, got[i-1])
			}
		}
		if len(want) > 0 {
			t.Errorf("of %d stations none lies at %v", n, want)
		}
	}
	greatest, at := s.MaxTension()
	for _, x := range s.Stations(300) {
		if s.At(x).Tension > greatest*(1+1e-9) {
			t.Errorf("the cord pulls %g at %g, %g at most, at %g", s.At(x).Tension, x, greatest, at)
		}
	}
	near(t, "largest pull where it is said to be", max(s.At(at*(1-1e-9)).Tension, s.At(at*(1+1e-9)).Tension), greatest, 1e-6)
}

// Past a tail's end the continuation for the net starts where the cloth ends, and its
// sides close in without meeting.
func TestSectionBeyond(t *testing.T) {
	s := solve(t, uneven())
	for _, end := range []float64{s.Problem.TailEnd(hung.Head), s.Problem.TailEnd(hung.Foot)} {
		sign := math.Copysign(1, end)
		at, err := s.SectionAt(end)
		if err != nil {
			t.Fatal(err)
		}
		last := at.Half
		for past := 0.0; past < 200; past += 20 {
			q, err := s.SectionBeyond(end + sign*past)
			if err != nil {
				t.Fatal(err)
			}
			if past == 0 {
				near(t, "opening at the end", q.Half, at.Half, 1e-9)
				near(t, "height at the end", q.Height, at.Height, 1e-9)
			} else if !(q.Half < last) || q.Half <= 0 {
				t.Errorf("%g past the end the opening is %g after %g", past, q.Half, last)
			}
			last = q.Half
		}
	}
}
