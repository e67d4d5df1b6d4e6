package figures_test

import (
	"context"
	"fmt"
	"math"
	"os"
	"strings"
	"testing"

	"slingloft/cmd/slingloft/figures"
	"slingloft/cmd/slingloft/work"
)

// small is the plan of the small design and its figures as other programs read them.
func small(t *testing.T) (work.Plan, figures.Document) {
	t.Helper()
	const name = "../../../testdata/design/small.toml"
	data, err := os.ReadFile(name)
	if err != nil {
		t.Fatal(err)
	}
	p, err := work.ReadFor(name, data, work.Setting{})
	if err != nil {
		t.Fatal(err)
	}
	l, err := p.Lay(context.Background(), work.Budget{})
	if err != nil {
		t.Fatal(err)
	}
	d, err := figures.Of(&p, l, figures.English())
	if err != nil {
		t.Fatal(err)
	}
	return p, d
}

func near(t *testing.T, what string, got, want, tol float64) {
	t.Helper()
	if !(math.Abs(got-want) <= tol) {
		t.Errorf("%s = %.9g, want %.9g within %g", what, got, want, tol)
	}
}

// The document tells one thing in several places, or things that follow from each
// other: what another program could work out from it holds.
func TestDocument(t *testing.T) {
	p, d := small(t)
	t.Run("equilibrium", func(t *testing.T) { equilibrium(t, d) })
	t.Run("ends", func(t *testing.T) { ends(t, d) })
	t.Run("body", func(t *testing.T) { body(t, d) })
	t.Run("pieces", func(t *testing.T) { pieces(t, p, d) })
	t.Run("seams", func(t *testing.T) { seams(t, d) })
	t.Run("cords", func(t *testing.T) { cords(t, d) })
	t.Run("margins", func(t *testing.T) { margins(t, d) })
	t.Run("hanging", func(t *testing.T) { hanging(t, d) })
	t.Run("text", func(t *testing.T) { text(t, p, d) })
	t.Run("JSON", func(t *testing.T) { roundTrip(t, d) })
}

// equilibrium holds the cords of a side against the load at the printed stations: with
// the thrust H one side carries H z″ = w/2 upright and H y″ = w/2 cot θ across, walls
// at θ; along the cord it pulls with H times length over run, and the cloth with w over
// twice the sine of its wall.
func equilibrium(t *testing.T, d figures.Document) {
	s := d.Shape
	total := 0.0
	for i := range s.X {
		if i > 0 {
			total += (s.X[i] - s.X[i-1]) * (s.Load[i] + s.Load[i-1]) / 2
		}
		near(t, "cloth", s.ClothTension[i], s.Load[i]/2/math.Sin(s.WallAngle[i]), 1e-9)
		if i == 0 || i == len(s.X)-1 {
			continue
		}
		// Only where the load is even over both steps and no bar or tail's end is near.
		half := d.Ends.Head.TailEnd
		a, b := s.X[i]-s.X[i-1], s.X[i+1]-s.X[i]
		if math.Abs(s.Load[i-1]-s.Load[i+1]) > 0.02*s.Load[i] || math.Abs(a-b) > 1e-6 || math.Abs(s.X[i]) > 0.75*math.Abs(half) {
			continue
		}
		bend := func(v []float64) float64 { return ((v[i+1]-v[i])/b - (v[i]-v[i-1])/a) * 2 / (a + b) }
		near(t, fmt.Sprintf("upright at %.0f", s.X[i]), s.Thrust*bend(s.Z), s.Load[i]/2, 0.01*s.Load[i])
		near(t, fmt.Sprintf("across at %.0f", s.X[i]), s.Thrust*bend(s.Y), s.Load[i]/2/math.Tan(s.WallAngle[i]), 0.01*s.Load[i])
		dy, dz := (s.Y[i+1]-s.Y[i-1])/(a+b), (s.Z[i+1]-s.Z[i-1])/(a+b)
		near(t, fmt.Sprintf("pull at %.0f", s.X[i]), s.CordTension[i], s.Thrust*math.Sqrt(1+dy*dy+dz*dz), 0.01*s.Thrust)
		if s.CordTension[i] > s.MaxTension+1e-9 {
			t.Errorf("the cord pulls %g N at %g, said to be %g at most", s.CordTension[i], s.X[i], s.MaxTension)
		}
	}
	up := d.Ends.Head.Vertical + d.Ends.Foot.Vertical
	near(t, "load along the bed and the bars", total+d.Given.BarWeight[0]+d.Given.BarWeight[1], up, 0.01*up)
	near(t, "sleeper, cloth and bars", s.Weight, up, 0.03*up)
	for name, v := range map[string][]float64{"y": s.Y, "z": s.Z, "bottom": s.Bottom, "radius": s.Radius, "wall": s.WallAngle,
		"girth": s.Girth,
		"load":  s.Load, "cord": s.CordTension, "cloth": s.ClothTension} {
		if len(v) != len(s.X) {
			t.Errorf("%s has %d stations, x has %d", name, len(v), len(s.X))
		}
	}
}

// ends holds each end's figures against each other: the section of straight walls and
// a round bottom, the line of its leg and the balance of its apex.
func ends(t *testing.T, d figures.Document) {
	for i, e := range []figures.End{d.Ends.Head, d.Ends.Foot} {
		near(t, "hang angle", e.HangAngle, math.Atan(e.Slope), 1e-12)
		near(t, "slope of the pull", e.Vertical/e.Horizontal, e.Slope, 1e-6)
		near(t, "both sides' thrust", e.Horizontal, 2*d.Shape.Thrust, 1e-6)
		at := [2]int{0, len(d.Shape.X) - 1}[i]
		near(t, "end of the tail", e.TailEnd, d.Shape.X[at], 1e-6)
		near(t, "girth there", e.EndGirth, d.Shape.Girth[at], 1e-6)
		// From the last station the leg runs straight to the apex; the cord so far and that
		// line make up the leg.
		run := math.Abs(e.Apex[0] - e.TailEnd)
		line := math.Hypot(run, math.Hypot(d.Shape.Y[at], e.Apex[1]-d.Shape.Z[at]))
		near(t, "leg", e.TailArc+line, e.Leg, 1e-6*e.Leg)
		near(t, "pull along that line", d.Shape.CordTension[at], d.Shape.Thrust*line/run, 1e-4*d.Shape.Thrust)
	}
	near(t, "head higher", d.Shape.HeadHigher, d.Ends.Head.Apex[1]-d.Ends.Foot.Apex[1], 1e-9)
}

// cords holds each cut length against its terms.
func cords(t *testing.T, d figures.Document) {
	for _, c := range d.Cords {
		sum := 0.0
		for _, term := range c.Terms {
			sum += term.Length
		}
		near(t, c.Part.String(), sum, c.Cut, 1e-9)
	}
	near(t, "side cord, its first term", d.Cords[0].Terms[0].Length, d.Shape.SideArc, 1e-9)
}

// margins holds each check's load against the loads of its case.
func margins(t *testing.T, d figures.Document) {
	cases := map[string]figures.Case{}
	for _, c := range d.Cases {
		cases[c.Name] = c
	}
	seen := 0
	for _, k := range d.Margins {
		c, part := cases[k.Case], strings.TrimSuffix(k.Name, ", "+k.Case)
		end := 0
		if strings.HasPrefix(part, "foot") {
			end = 1
		}
		load := c.Side
		switch {
		case strings.HasSuffix(part, "leg"):
			load = c.Leg[end]
		case strings.HasSuffix(part, "hang line"), strings.HasSuffix(part, "hook"):
			load = c.Hang[end]
		case strings.Contains(part, "bar"):
			load = c.Bar[end]
		case strings.Contains(part, "cloth"), strings.Contains(part, "seam"):
			load = c.Cloth
		}
		near(t, k.Name, k.Load, k.Factor*load, 1e-9)
		if k.Capacity > 0 {
			near(t, k.Name+", margin", k.Ratio, k.Capacity/k.Load, 1e-12)
			seen++
		} else if len(k.Missing) == 0 {
			t.Errorf("%s holds nothing, and nothing is missing", k.Name)
		}
	}
	if seen < 10 {
		t.Errorf("%d capacities known", seen)
	}
	near(t, "lying, leg", cases["lying"].Leg[0], max(d.Ends.Head.LegTension, d.Shape.CordTension[0]), 0.5)
}

// hanging holds the place against the sweep: hooks rise with the slope of their lines.
func hanging(t *testing.T, d figures.Document) {
	h := d.Hanging
	near(t, "overall", h.Overall, d.Ends.Foot.Apex[0]-d.Ends.Head.Apex[0], 1e-9)
	for i, p := range append(h.Sweep, *h.Place) {
		run := 0.0
		for e, end := range []figures.End{d.Ends.Head, d.Ends.Foot} {
			run += p.Ends[e].Run
			near(t, "rise", p.Ends[e].Hook-p.Ends[e].Apex, p.Ends[e].Run*end.Slope, 1e-6)
			near(t, "line", p.Ends[e].Line, math.Hypot(p.Ends[e].Run, p.Ends[e].Hook-p.Ends[e].Apex), 1e-6)
			near(t, "pull", p.Ends[e].Pull.N, math.Hypot(end.Horizontal, end.Vertical), 1e-6)
		}
		near(t, "distance", run+h.Overall, p.Distance, 1e-6)
		if i > 0 && i < len(h.Sweep) {
			near(t, "step", p.Distance-h.Sweep[i-1].Distance, 250, 1e-9)
		}
	}
	if first := h.Sweep[0].Distance; first < h.Overall || first > h.Overall+100 || math.Mod(first, 100) != 0 {
		t.Errorf("the sweep begins at %g for %g overall", first, h.Overall)
	}
}
