package hung_test

import (
	"math"
	"testing"

	"slingloft/outline/curve"
	"slingloft/outline/design"
	"slingloft/outline/hung"
)

// A bay cut with the girths and the cord of the level shape hangs level.
func TestOwnGirthHangsLevel(t *testing.T) {
	p := even()
	p.Bed.FootBar = 880
	p.Load = hung.SleeperLoad(design.Sleeper{Stature: 1700, Mass: 82}, -790)
	s := solve(t, p)
	got, err := s.WithGirth(func(x float64) float64 { return s.At(x).Section.Girth() }, s.SideArc, 40)
	if err != nil {
		t.Fatal(err)
	}
	for _, q := range got {
		if math.Abs(q.Off) > 1e-5 {
			t.Errorf("at %.0f mm the bottom line lies %.2g mm off level", q.X, q.Off)
		}
	}
}

// Under an even load the level side is a parabola. An arc of the same depth bows in
// further at the quarters, so that the cloth is narrower and the bed stands higher
// there than in its middle; a catenary lies between the two.
func TestArcDepartsFromLevel(t *testing.T) {
	s := solve(t, even())
	corner := s.Ends[hung.Head].Section.Girth() / 2
	off := func(c curve.Curve) float64 {
		got, err := s.WithGirth(func(x float64) float64 { return 2 * (corner - c.Depth(x)) }, c.Length(), 40)
		if err != nil {
			t.Fatal(err)
		}
		// The quarter against the middle.
		return got[10].Off - got[20].Off
	}
	par, _ := curve.NewParabola(1440, s.Depth)
	cat, _ := curve.NewCatenary(1440, s.Depth)
	arc, _ := curve.NewArc(1440, s.Depth)
	p, c, a := off(par), off(cat), off(arc)
	t.Logf("parabola %.4f, catenary %.3f, arc %.3f mm", p, c, a)
	if math.Abs(p) > 1e-4 {
		t.Errorf("the parabola departs by %.3g mm", p)
	}
	if !(math.Abs(a) > math.Abs(c) && math.Abs(c) > 0.3 && a*c > 0) {
		t.Errorf("catenary %.3f and arc %.3f mm should depart the same way, the arc by more", c, a)
	}
}
