package template_test

import (
	"math"
	"strings"
	"testing"

	"slingloft/outline/geom"
	"slingloft/outline/template"
	"slingloft/outline/template/templatetest"
)

// circularArc returns n chords of the arc of sagitta s over a chord of l mm.
func circularArc(l, s float64, n int) geom.Polyline {
	r := (l*l/4 + s*s) / (2 * s)
	half := 2 * math.Atan(2*s/l)
	var out geom.Polyline
	for i := range n + 1 {
		a := half * (2*float64(i)/float64(n) - 1)
		out = append(out, geom.Pt(l/2+r*math.Sin(a), r-s-r*math.Cos(a)))
	}
	return out
}

// TestOffsetsOfParabolaAndArc compares with closed forms: the ordinates
// 4 s x (L − x)/L² and √(R² − (x − L/2)²) − (R − s); the lengths for L 1600 and
// s 180 are 1652.46789927 and 1653.46478927 mm, computed at 25 digits.
func TestOffsetsOfParabolaAndArc(t *testing.T) {
	const l, s = 1600.0, 180.0
	radius := (l*l/4 + s*s) / (2 * s)
	rows := []struct {
		name  string
		curve geom.Polyline
		depth func(x float64) float64
		long  float64
	}{
		{"parabola", templatetest.Parabola(l, s, 0, 6400), func(x float64) float64 { return 4 * s * x * (l - x) / (l * l) }, 1652.46789927},
		{"arc", circularArc(l, s, 6400), func(x float64) float64 {
			return math.Sqrt(radius*radius-(x-l/2)*(x-l/2)) - (radius - s)
		}, 1653.46478927},
	}
	for _, row := range rows {
		// A turned and shifted curve has the same offsets.
		curve := row.curve.Moved(geom.Motion{Turn: 0.3, Shift: geom.Pt(-50, 700)})
		got, err := template.Offsets(curve, 25)
		if err != nil {
			t.Fatal(err)
		}
		if len(got) != 65 {
			t.Fatalf("%s: %d offsets, want 65", row.name, len(got))
		}
		for i, o := range got {
			if want := 25 * float64(i); math.Abs(o.Station-want) > 1e-6 {
				t.Errorf("%s: station %d at %v, want %v", row.name, i, o.Station, want)
			}
			if want := row.depth(o.Station); math.Abs(o.Depth-want) > 2e-5 {
				t.Errorf("%s: depth at %v is %v, want %v", row.name, o.Station, o.Depth, want)
			}
			if o.Deepest != (i == 32) {
				t.Errorf("%s: offset %d deepest is %v", row.name, i, o.Deepest)
			}
		}
		if arc := got[64].Arc; math.Abs(arc-row.long) > 1e-4 {
			t.Errorf("%s: length %v, want %v", row.name, arc, row.long)
		}
		if arc := got[32].Arc; math.Abs(arc-row.long/2) > 1e-4 {
			t.Errorf("%s: length to the middle %v, want %v", row.name, arc, row.long/2)
		}
	}
}

func TestOffsetsInsertDeepestPointAndEnds(t *testing.T) {
	curve := geom.Polyline{{X: 0, Y: 0}, {X: 40, Y: -30}, {X: 100, Y: 0}}
	got, err := template.Offsets(curve, 30)
	if err != nil {
		t.Fatal(err)
	}
	want := []template.Offset{{0, 0, 0, false}, {30, 22.5, 37.5, false}, {40, 30, 50, true},
		{60, 20, 50 + math.Hypot(20, 10), false}, {90, 5, 50 + math.Hypot(50, 25), false}, {100, 0, 50 + math.Hypot(60, 30), false}}
	if len(got) != len(want) {
		t.Fatalf("Offsets = %v, want %v", got, want)
	}
	for i, w := range want {
		g := got[i]
		if math.Abs(g.Station-w.Station)+math.Abs(g.Depth-w.Depth)+math.Abs(g.Arc-w.Arc) > 1e-9 || g.Deepest != w.Deepest {
			t.Errorf("offset %d = %+v, want %+v", i, g, w)
		}
	}
}

func TestOffsetsFaults(t *testing.T) {
	line := geom.Polyline{{X: 0}, {X: 100}}
	rows := []struct {
		curve geom.Polyline
		step  float64
		want  string
	}{
		{nil, 25, "fewer than two points"},
		{geom.Polyline{{X: 0}, {X: math.NaN()}}, 25, "point 1 of the curve is not finite"},
		{geom.Polyline{{X: 5}, {X: 9}, {X: 5}}, 25, "ends where it starts"},
		{geom.Polyline{{X: 0}, {X: 60}, {X: 50, Y: 3}, {X: 100}}, 25, "doubles back at point 2"},
		{line, 0, "not a positive length"},
		{line, math.NaN(), "not a positive length"},
		{line, math.Inf(1), "not a positive length"},
		{line, 1e-9, "too small"},
	}
	for _, row := range rows {
		if _, err := template.Offsets(row.curve, row.step); err == nil || !strings.Contains(err.Error(), row.want) {
			t.Errorf("Offsets(%v, %v): error %v, want %q", row.curve, row.step, err, row.want)
		}
	}
}
