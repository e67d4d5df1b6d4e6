package desk_test

import (
	"math"
	"testing"

	"slingloft/cmd/slingloft/desk"
	"slingloft/outline/bed"
	"slingloft/outline/design"
	"slingloft/outline/geom"
	"slingloft/outline/hung"
	"slingloft/outline/room"
)

// hungOf solves a design's shape once more.
func hungOf(t testing.TB, text string) hung.Shape {
	t.Helper()
	d, _, err := design.Read("bed.toml", []byte(text))
	if err != nil {
		t.Fatal(err)
	}
	s, err := hung.Solve(hung.ProblemOf(d))
	if err != nil {
		t.Fatal(err)
	}
	return s
}

// offLine returns how far a point lies off a line from point to point.
func offLine(y, z float64, line [][2]float64) float64 {
	best := math.Inf(1)
	for i := 1; i < len(line); i++ {
		a, b := line[i-1], line[i]
		dy, dz := b[0]-a[0], b[1]-a[1]
		t := min(max(((y-a[0])*dy+(z-a[1])*dz)/(dy*dy+dz*dz), 0), 1)
		best = min(best, math.Hypot(y-a[0]-t*dy, z-a[1]-t*dz))
	}
	return best
}

// What is drawn lies as near to the bed as the page says, also while it moves: points of
// the true sections are held against the rows on either side of them.
func TestModelWithin(t *testing.T) {
	_, demo := design.Demo()
	for _, tc := range []struct {
		text   string
		moving bool
		within float64
	}{{small(t), true, 0.5}, {small(t), false, 0.2}, {string(demo), true, 0.5}, {string(demo), false, 0.2}} {
		d, _ := opened(t, tc.text)
		m, err := d.Try(nil, tc.moving, 500)
		if err != nil {
			t.Fatal(err)
		}
		s := hungOf(t, tc.text)
		for i := 1; i < len(m.Cloth); i++ {
			a, b := m.Cloth[i-1], m.Cloth[i]
			for _, part := range []float64{0.25, 0.5, 0.8} {
				st := s.At(a[0][0] + part*(b[0][0]-a[0][0]))
				line := make([][2]float64, len(a))
				for j := range a {
					line[j] = [2]float64{a[j][1] + part*(b[j][1]-a[j][1]), a[j][2] + part*(b[j][2]-a[j][2])}
				}
				for k := range 41 {
					y, z := st.Section.Point(st.Section.Girth() / 2 * float64(k) / 40)
					if off := offLine(y, st.Bottom+z, line); off > tc.within+0.02 { // points are rounded
						t.Fatalf("moving %v: %.3f mm off at %.0f", tc.moving, off, st.X)
					}
				}
			}
		}
		if len(m.Tension) != len(m.Cloth) || m.Off == "" || m.Taut == "" {
			t.Errorf("%d tensions for %d rows", len(m.Tension), len(m.Cloth))
		}
	}
}

// The section stands where it is asked for, with who lies there on the cloth and not
// through it; past the cloth it is that of its end.
func TestSection(t *testing.T) {
	d, _ := opened(t, small(t))
	until(t, d, func(s desk.State) bool { return s.Drawn > 0 })
	shape := hungOf(t, small(t))
	s := d.Section(700)
	st := shape.At(700 - shape.Problem.Bed.Span/2)
	if got := s.Points[len(s.Points)-1]; math.Abs(got[1]-st.Y) > 0.01 || math.Abs(got[2]-st.Z) > 0.01 || s.Figures[0].Value != "700 mm" {
		t.Errorf("at 700 mm the cord lies at %v, want %.2f, %.2f; %v", got, st.Y, st.Z, s.Figures)
	}
	if len(s.Sleeper) == 0 {
		t.Fatal("nobody lies in the middle")
	}
	line := make([][2]float64, len(s.Points))
	for i, p := range s.Points {
		line[i] = [2]float64{p[1], p[2]}
	}
	for _, p := range s.Sleeper {
		if off := offLine(p[1], p[2], line); off < 1 || math.Abs(p[1]) > st.Y {
			t.Errorf("the sleeper meets the cloth at %v", p)
		}
	}
	if far := d.Section(1e9); far.Points[0][0] > shape.Ends[hung.Foot].TailX+0.01 || len(far.Sleeper) != 0 && far.Station > 1700 {
		t.Errorf("past its end the section stands at %g", far.Station)
	}
}

// with returns a text with other values.
func with(t testing.TB, text string, values ...string) string {
	t.Helper()
	out, err := design.OpenText("bed.toml", []byte(text))
	for i := 0; i < len(values) && err == nil; i += 2 {
		out, err = out.Set(design.Key(values[i]), values[i+1])
	}
	if err != nil {
		t.Fatal(err)
	}
	return string(out.Bytes())
}

// Caps close the ends from the cloth's edge up to the cords, in the plane that the design
// asks for; the cloth ends there. Gathered ends have none.
func TestCaps(t *testing.T) {
	_, demo := design.Demo()
	for _, kind := range []string{"upright", "leaning", "gathered"} {
		text := with(t, string(demo), "bed.head_tail", "260 mm", "bed.foot_tail", "240 mm", "cap.kind", kind, "cap.hollow", "30 mm")
		if kind == "gathered" {
			text = with(t, text, "cap.hollow", "")
		}
		d, _ := opened(t, text)
		m, err := d.Try(nil, false, 500)
		if err != nil {
			t.Fatal(err)
		}
		if kind == "gathered" {
			if len(m.Caps) != 0 {
				t.Errorf("gathered ends have %d caps", len(m.Caps))
			}
			continue
		}
		s := hungOf(t, text)
		for e, cap := range m.Caps {
			end := s.Ending(bed.End(e), kind == "leaning")
			cloth := m.Cloth[e*(len(m.Cloth)-1)]
			up := func(p desk.Point) float64 { return geom.Pt3(p[0], p[1], p[2]).Minus(end.At).Dot(end.Up) }
			for j, p := range cap[0] {
				if p != cloth[j] {
					t.Fatalf("%s: the cap begins at %v, the cloth ends at %v", kind, p, cloth[j])
				}
			}
			for _, row := range cap {
				for _, p := range row {
					if off := geom.Pt3(p[0], p[1], p[2]).Minus(end.At).Dot(end.Out); math.Abs(off) > 0.05 {
						t.Fatalf("%s: %v lies %.2f mm off the plane of the end", kind, p, off)
					}
				}
			}
			top := cap[len(cap)-1]
			if low := up(top[0]) - up(top[len(top)/2]); top[0] != cloth[0] || math.Abs(low-30) > 0.05 {
				t.Errorf("%s: the top edge begins at %v, the cord at %v; it dips %.2f mm, want 30", kind, top[0], cloth[0], low)
			}
		}
		if m.Off != "0.2 mm" {
			t.Errorf("%s: drawn to within %s", kind, m.Off)
		}
		for i := 1; i < len(m.Cloth); i++ {
			for j := 1; j < len(m.Cloth[i]); j++ {
				var c [3]float64
				for _, p := range []desk.Point{m.Cloth[i][j], m.Cloth[i-1][j], m.Cloth[i][j-1], m.Cloth[i-1][j-1]} {
					for k := range c {
						c[k] += p[k] / 4
					}
				}
				st := s.At(c[0])
				if off := offSection(st.Section, c[1], c[2]-st.Bottom); off > 0.22 {
					t.Fatalf("%s: the cloth lies %.2f mm off at %.0f, %.0f", kind, off, c[0], c[1])
				}
			}
		}
	}
}

// offSection returns how far a point lies off a section.
func offSection(s hung.Section, y, z float64) float64 {
	const steps = 400
	line := make([][2]float64, steps+1)
	for i := range line {
		line[i][0], line[i][1] = s.Point(s.Girth() / 2 * float64(i) / steps)
	}
	return offLine(math.Abs(y), z, line)
}

// Who lies there is who has room there: as large at the shoulders as package room says, at
// the place that it has them in a lifted bed, on the back and on the side.
func TestSleeperDrawn(t *testing.T) {
	for _, posture := range []string{"back", "side"} {
		text := with(t, small(t), "bed.lift", "4 deg", "sleeper.lies", posture)
		d, _ := opened(t, text)
		until(t, d, func(s desk.State) bool { return s.Drawn > 0 })
		read, _, err := design.Read("bed.toml", []byte(text))
		if err != nil {
			t.Fatal(err)
		}
		bar := read.Bed.Span / 2
		x, body := room.Place(room.Shoulders, read.Sleeper.Lies, read.Sleeper, read.Bed)
		here := d.Section(x + bar)
		wide, high := 0.0, 0.0
		for _, p := range here.Sleeper {
			wide, high = max(wide, 2*p[1]), max(high, p[2]-here.Floor)
		}
		// On the back the cloth as it is designed leaves less than the body's breadth.
		if math.Abs(high-body.Depth) > 1 || wide > body.Breadth+0.1 || posture == "side" && wide < body.Breadth-0.1 {
			t.Errorf("%s: %.1f mm broad and %.1f high at the shoulders, want %.1f and %.1f", posture, wide, high, body.Breadth, body.Depth)
		}
		flat := read.Bed.Lift.Cos()
		crown, soles := read.Sleeper.Crown*flat, (read.Sleeper.Crown+read.Sleeper.Stature)*flat
		for _, r := range []struct {
			at   float64
			lies bool
		}{{crown - 1, false}, {crown + 1, true}, {soles - 1, true}, {soles + 1, false}} {
			s := d.Section(r.at)
			if math.Abs(s.Station-r.at) < 0.1 && len(s.Sleeper) > 0 != r.lies {
				t.Errorf("%s: at %.1f mm somebody lies: %v", posture, r.at, len(s.Sleeper) > 0)
			}
		}
	}
}
