package hung_test

import (
	"errors"
	"math"
	"testing"

	"slingloft/outline/design"
	"slingloft/outline/hung"
)

// A section whose wall angle is chosen: the round part turns by θ, then the wall
// runs on straight by t. From it opening, height and girth follow by hand.
func TestSectionFromWall(t *testing.T) {
	for _, c := range []struct{ radius, wall, run float64 }{
		{125, 0.76, 300}, {90, 0.2, 40}, {150, math.Pi / 2, 200}, {200, 1.2, 1},
	} {
		sin, cos := math.Sincos(c.wall)
		half := c.radius*sin + c.run*cos
		height := c.radius*(1-cos) + c.run*sin
		s, err := hung.NewSection(half, height, c.radius)
		if err != nil {
			t.Fatal(err)
		}
		near(t, "wall", s.Wall, c.wall, 1e-12)
		near(t, "straight part", s.Length, c.run, 1e-9)
		near(t, "girth", s.Girth(), 2*(c.run+c.radius*c.wall), 1e-12)
		y, z := s.Point(s.Girth() / 2)
		near(t, "cord across", y, half, 1e-12)
		near(t, "cord up", z, height, 1e-12)
	}
}

// The girth's change with height and opening is 2 (sin θ dh + cos θ dy).
func TestGirthDerivative(t *testing.T) {
	girth := func(y, h float64) float64 {
		s, err := hung.NewSection(y, h, 130)
		if err != nil {
			t.Fatal(err)
		}
		return s.Girth()
	}
	s, _ := hung.NewSection(420, 390, 130)
	const d = 1e-4
	near(t, "dP/dh", (girth(420, 390+d)-girth(420, 390-d))/(2*d), 2*math.Sin(s.Wall), 1e-7)
	near(t, "dP/dy", (girth(420+d, 390)-girth(420-d, 390))/(2*d), 2*math.Cos(s.Wall), 1e-7)
}

func TestSectionRefused(t *testing.T) {
	for name, c := range map[string]struct {
		half, height, radius float64
		why                  design.Rule
	}{
		"cords on the bottom line": {400, 0, 120, design.CordsBelow}, "cords below it": {400, -5, 120, design.CordsBelow},
		"inside the circle": {60, 100, 120, design.CordsInside}, "past the vertical": {119, 400, 120, design.WallsPast},
		"not a number": {math.NaN(), 400, 120, design.CordsBelow},
	} {
		_, err := hung.NewSection(c.half, c.height, c.radius)
		var bad hung.SectionError
		if !errors.As(err, &bad) || bad.Why != c.why {
			t.Errorf("%s: %v", name, err)
		}
	}
}

// A drop found from a girth has that girth.
func TestDropOfGirth(t *testing.T) {
	for _, half := range []float64{300, 420, 500} {
		for girth := 2*half + 60; girth < 4*half; girth += 70 {
			h, err := hung.DropOfGirth(girth, half, 130)
			if err != nil {
				t.Fatal(err)
			}
			s, err := hung.NewSection(half, h, 130)
			if err != nil {
				t.Fatal(err)
			}
			near(t, "girth", s.Girth(), girth, 1e-11)
		}
	}
	if _, err := hung.DropOfGirth(700, 400, 130); err == nil {
		t.Error("a girth below the opening was accepted")
	}
}

// The sleeper's line load weighs what the sleeper weighs. Its centre lies where a
// standing person's does, 0.55 to 0.58 of the stature above the soles (the usual
// range, from memory; Winter's masses on Drillis and Contini's lengths give
// 0.5816).
func TestSleeperLoad(t *testing.T) {
	s := design.Sleeper{Stature: 1750, Mass: 80}
	force, x := hung.SleeperLoad(s, -800).Total()
	near(t, "weight", force, 80*hung.Gravity, 1e-12)
	above := 1 - (x+800)/1750
	if above < 0.55 || above > 0.582 {
		t.Errorf("centre of mass at %.4f of the stature above the soles", above)
	}
	for x := -800.0; x < 950; x += 5 {
		if w := hung.SleeperLoad(s, -800).At(x); !(w > 0.05) {
			t.Errorf("no load at %.0f mm: %.3f N/mm", x, w)
		}
	}
	// The legs' own centre: 0.447 of the way from trochanter to ankle, which stand at 0.5160
	// and 0.04006 of the stature (means of both tables).
	legs := hung.SleeperLoad(s, 0)[2:]
	_, c := legs.Total()
	near(t, "centre of the legs", c/1750, 1-0.51597+0.447*(0.51597-0.04006), 2e-4)
}

// At 30 degrees and with the load in the middle, each hang line carries the weight
// (T = W / (2 sin α)).
func TestHangAngleThirtyDegrees(t *testing.T) {
	p := even()
	p.Bed.Control, p.Bed.ControlValue = design.HeadAngle, math.Pi/6
	s := solve(t, p)
	for _, e := range s.Ends {
		near(t, "hang line", math.Hypot(e.Horizontal, e.Vertical), 70*hung.Gravity, 1e-9)
	}
}
