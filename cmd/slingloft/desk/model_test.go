package desk_test

import (
	"math"
	"testing"

	"slingloft/cmd/slingloft/desk"
	"slingloft/outline/design"
	"slingloft/outline/hung"
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
