package chart_test

import (
	"math"
	"strings"
	"testing"

	"slingloft/export/sheet/chart"
	"slingloft/export/sheet/picture"
)

// TestDraw draws curves of very different ranges: lettering stays apart, ticks are
// round and the drawing lies within its picture.
func TestDraw(t *testing.T) {
	for _, high := range []float64{1e-4, 0.07, 1, 19, 480, 1234.5, 98765} {
		x, y := []float64{}, []float64{}
		for i := range 50 {
			x = append(x, -high+2*high*float64(i)/49)
			y = append(y, high*math.Sin(float64(i)/9))
		}
		p, err := chart.Draw(chart.Chart{ID: "c", Title: "t", Desc: "d", X: "station, mm", Y: "tension, N", At: []float64{0},
			Lines: []chart.Line{{Name: "one", X: x, Y: y, Ink: picture.First}, {Name: "two", X: x, Y: x, Ink: picture.Second, Dashed: true}}})
		if err != nil {
			t.Fatal(err)
		}
		if c := p.Clashes(); len(c) > 0 {
			t.Errorf("to %g: lettering over lettering: %q", high, c)
		}
		numbers := 0
		for _, it := range p.Items {
			switch it := it.(type) {
			case picture.Text:
				if strings.Trim(it.Text, "−0123456789.") == "" {
					numbers++
					if strings.HasPrefix(it.Text, "−0") && strings.Trim(it.Text, "−0.") == "" {
						t.Errorf("to %g: tick %q", high, it.Text)
					}
				}
			case picture.Path:
				for _, l := range it.Lines {
					for _, q := range l {
						if !q.Finite() || q.X < -0.5 || q.Y < -0.5 || q.X > p.Width+0.5 || q.Y > p.Height+0.5 {
							t.Fatalf("to %g: point %v lies outside", high, q)
						}
					}
				}
			}
		}
		if numbers < 6 || numbers > 24 {
			t.Errorf("to %g: %d figures at the axes", high, numbers)
		}
	}
}

// TestRefuses gives what cannot be drawn.
func TestRefuses(t *testing.T) {
	for name, y := range map[string][]float64{"nan": {1, math.NaN()}, "inf": {1, math.Inf(1)}, "none": {}} {
		if _, err := chart.Draw(chart.Chart{ID: "c", Lines: []chart.Line{{Name: "n", X: []float64{0, 1}, Y: y}}}); err == nil {
			t.Errorf("%s: no error", name)
		}
	}
}

// TestConstant draws a level line, which has no range of its own.
func TestConstant(t *testing.T) {
	p, err := chart.Draw(chart.Chart{ID: "c", X: "x", Y: "y", Lines: []chart.Line{{Name: "flat", X: []float64{0, 1}, Y: []float64{0, 0}}}})
	if err != nil || len(p.Clashes()) > 0 {
		t.Errorf("%v, clashes %q", err, p.Clashes())
	}
}
