package hung_test

import (
	"errors"
	"math"
	"math/rand/v2"
	"slices"
	"testing"

	"slingloft/outline/design"
	"slingloft/outline/designtest"
	"slingloft/outline/hung"
	"slingloft/outline/numeric"
)

// balance checks the whole hammock as a free body, with nothing but the finished
// shape's loads and end forces: sum of vertical forces, moments about the head
// bar, and the pull across at every bar.
func balance(t *testing.T, s hung.Shape) {
	t.Helper()
	var force, moment float64
	head, foot := s.TailEnds()
	half := s.Problem.Bed.Span / 2
	panel := numeric.NewPanel()
	marks := append(s.Problem.Load.Breaks(), -half, half, 0, head, foot)
	for i := range 40 {
		marks = append(marks, head+(foot-head)*float64(i)/40)
	}
	slices.Sort(marks)
	for i := 1; i < len(marks); i++ {
		a, b := max(marks[i-1], head), min(marks[i], foot)
		if b-a < 1e-9 {
			continue
		}
		var w, m [numeric.Order]float64
		for k := range w {
			x := a + panel.At(k)*(b-a)
			w[k] = s.At(x).Load
			m[k] = w[k] * (x + half)
		}
		_, f := panel.Integrate(&w, b-a)
		_, g := panel.Integrate(&m, b-a)
		force, moment = force+f, moment+g
	}
	bars := s.Problem.BarWeight
	force += bars[0] + bars[1]
	moment += bars[1] * 2 * half
	h, f := s.Ends[hung.Head], s.Ends[hung.Foot]
	near(t, "upright forces", (h.Vertical+f.Vertical)/force, 1, 1e-9)
	// About the head bar on the bottom line: the apex pulls act at their heights.
	pulls := h.Vertical*(h.ApexX+half) + f.Vertical*(f.ApexX+half) + h.Horizontal*h.ApexZ - f.Horizontal*f.ApexZ
	near(t, "moments", pulls/moment, 1, 1e-9)
	for _, e := range s.Ends {
		tan := e.LegSlope + e.SideSlope
		near(t, "bar compression", e.BarCompression, s.Thrust*tan, 1e-12)
	}
}

func TestRandomDesigns(t *testing.T) {
	const n = 250
	r := rand.New(rand.NewPCG(7, 11))
	solved, refused := 0, map[design.Key]int{}
	for i := range n {
		d := designtest.Design(r)
		s, err := hung.Solve(hung.ProblemOf(d))
		var no *hung.Impossible
		switch {
		case err == nil:
			solved++
			checkShape(t, d, s)
		case errors.As(err, &no) && no.Key != "":
			refused[no.Key]++
		default:
			t.Errorf("design %d: %v is not a named refusal", i, err)
		}
		if t.Failed() {
			t.Fatalf("design %d: %+v", i, d.Bed)
		}
	}
	t.Logf("%d of %d solved, refused: %v", solved, n, refused)
	if solved < n*6/10 {
		t.Errorf("only %d of %d random designs have a shape", solved, n)
	}
}

// TestEndOfTail takes a design whose walls lean past the vertical in the last two
// millimetres of the foot tail, past the last point that the integration asks.
func TestEndOfTail(t *testing.T) {
	d := designtest.Design(rand.New(rand.NewPCG(8, 6695)))
	_, err := hung.Solve(hung.ProblemOf(d))
	var no *hung.Impossible
	if !errors.As(err, &no) || no.Key != "bed.foot_hang_angle" {
		t.Fatalf("%v, want the foot's hang angle to be refused", err)
	}
	d.Bed.ControlValue = design.ControlMeasure(no.Limit)
	s, err := hung.Solve(hung.ProblemOf(d))
	if err != nil {
		t.Fatalf("with %g: %v", no.Limit, err)
	}
	checkShape(t, d, s)
}

// checkShape checks what every solved shape must meet.
func checkShape(t *testing.T, d design.Design, s hung.Shape) {
	t.Helper()
	balance(t, s)
	b := d.Bed
	near(t, "head leg", s.Ends[hung.Head].Leg, b.HeadLeg, 1e-9)
	near(t, "foot leg", s.Ends[hung.Foot].Leg, b.FootLeg, 1e-9)
	near(t, "foot bar", 2*s.At(b.Span/2).Y, b.FootBar, 1e-9)
	head, foot := s.TailEnds()
	for _, x := range []float64{head, -b.Span / 2, 0, b.Span / 2, foot} {
		if _, err := s.SectionAt(x); err != nil {
			t.Errorf("no section: %v", err)
		}
	}
	switch b.Control {
	case design.SideDepth:
		near(t, "side depth", s.Depth, float64(b.ControlValue), 1e-8)
	case design.HeadAngle:
		near(t, "head angle", math.Atan(s.Ends[hung.Head].Slope), float64(b.ControlValue), 1e-9)
	case design.FootAngle:
		near(t, "foot angle", math.Atan(s.Ends[hung.Foot].Slope), float64(b.ControlValue), 1e-9)
	case design.Thrust:
		near(t, "thrust", s.Thrust, float64(b.ControlValue), 1e-9)
	}
	last := s.Ends[hung.Foot].Section
	switch b.Second {
	case design.SameWall:
		near(t, "wall angle", last.Wall, s.Ends[hung.Head].Section.Wall, 1e-9)
	case design.FootDrop:
		near(t, "foot drop", last.Height, b.SecondValue, 1e-9)
	case design.FootGirth:
		near(t, "foot girth", last.Girth(), b.SecondValue, 1e-9)
	case design.LevelHooks:
		near(t, "hooks", s.Offset, 0, 1e-8)
	}
}
