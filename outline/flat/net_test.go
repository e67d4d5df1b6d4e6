package flat_test

import (
	"math"
	"testing"

	"slingloft/outline/flat"
	"slingloft/outline/geom"
)

// steps returns n+1 even places from 0 to end.
func steps(end float64, n int) []float64 {
	out := make([]float64, n+1)
	for i := range out {
		out[i] = end * float64(i) / float64(n)
	}
	return out
}

func within(t *testing.T, what string, got, want, tol float64) {
	t.Helper()
	if !(math.Abs(got-want) <= tol) {
		t.Errorf("%s = %.10g, want %.10g within %g", what, got, want, tol)
	}
}

// ball is the sphere of radius r touched from above at its pole, with the two
// great circles through the pole as the axes of its parameters.
func ball(r float64) flat.Surface {
	return func(a, b float64) (geom.Point3, error) {
		// The point in the direction (tan a, tan b, 1).
		x, y := math.Tan(a/r), math.Tan(b/r)
		k := r / math.Sqrt(1+x*x+y*y)
		return geom.Point3{X: k * x, Y: k * y, Z: k}, nil
	}
}

// chords returns n+1 flat places whose steps are the chords of equal arcs of a
// circle of radius r, from 0 to the given arc.
func chords(arc, r float64, n int) []float64 {
	h := 2 * r * math.Sin(arc/float64(n)/(2*r))
	return steps(h*float64(n), n)
}

// The net on a sphere from two perpendicular great circles: shear φ(uv) solves
// z φ″ + φ′ = cos φ with φ(0) = 0, φ′(0) = 1 (from ω_uv = −K sin ω); node places
// by Richardson extrapolation of an independent exact fishnet.
func TestWeaveSphere(t *testing.T) {
	const r = 1000.0
	net := func(end float64, n int) flat.Threads {
		t.Helper()
		g, err := flat.Weave(ball(r), chords(end*r, r, n), chords(end*r, r, n))
		if err != nil {
			t.Fatal(err)
		}
		return g
	}
	rows := []struct{ u, v, x, y, z float64 }{
		{0.25, 0.25, 0.2472422875, 0.2472422875, 0.9368791291},
		{0.50, 0.25, 0.4781580294, 0.2467581548, 0.8428969759},
		{0.50, 0.50, 0.4743830340, 0.4743830340, 0.7415669046},
		{0.75, 0.50, 0.6652979968, 0.4681816505, 0.5815363425},
		{0.75, 0.75, 0.6455993233, 0.6455993233, 0.4079252719},
	}
	const n = 96
	g, h := net(0.75, n), net(0.75, 2*n)
	for _, q := range rows {
		i, j := int(math.Round(q.u/0.75*n)), int(math.Round(q.v/0.75*n))
		a, b := g.Point[i][j], h.Point[2*i][2*j]
		extrapolated := func(c, f float64) float64 { return (f + (f-c)/3) / r }
		within(t, "x", extrapolated(a.X, b.X), q.x, 2e-8)
		within(t, "y", extrapolated(a.Y, b.Y), q.y, 2e-8)
		within(t, "z", extrapolated(a.Z, b.Z), q.z, 2e-8)
	}
	// One cell of arc 0.5 in closed form.
	one := net(0.5, 1).Point[1][1]
	within(t, "one cell x", one.X/r, 0.475366741091, 1e-11)
	within(t, "one cell z", one.Z/r, 0.740305965753, 1e-11)
	// Bias colatitude of the discrete scheme, u = 0.75, ten cells.
	p := net(0.75, 10).Point[10][10]
	within(t, "bias colatitude", math.Acos(p.Z/r)*180/math.Pi, 65.932427999, 1e-8)
	// Shear from the differential equation's series, z = 0.25.
	f := net(0.5, 400)
	shear := 90 - f.Angle(400, 400)*180/math.Pi
	within(t, "shear at uv = 0.25", shear, 14.27442541, 0.08) // the angle is taken half a cell inside
}

// Threads keep their lengths to a millionth on any surface.
func TestWeaveKeepsLengths(t *testing.T) {
	saddle := func(a, b float64) (geom.Point3, error) {
		return geom.Point3{X: a, Y: b, Z: (a*a - b*b) / 1400}, nil
	}
	g, err := flat.Weave(saddle, steps(300, 30), steps(240, 30))
	if err != nil {
		t.Fatal(err)
	}
	for i := 1; i < len(g.U); i++ {
		for j := 1; j < len(g.V); j++ {
			p, l, b := g.Point[i][j], g.Point[i-1][j], g.Point[i][j-1]
			within(t, "warp", math.Hypot(math.Hypot(p.X-l.X, p.Y-l.Y), p.Z-l.Z), g.U[i]-g.U[i-1], 1e-6)
			within(t, "weft", math.Hypot(math.Hypot(p.X-b.X, p.Y-b.Y), p.Z-b.Z), g.V[j]-g.V[j-1], 1e-6)
		}
	}
}

// A paraboloid z = x²/2R₁ + y²/2R₂ is a surface of translation, on which the net
// from its principal sections is exact: 300 mm and 200 mm of thread lead to the
// place below, which closed-form arc lengths give.
func TestWeaveParaboloid(t *testing.T) {
	const r1, r2 = 1000.0, 500.0
	bowl := func(a, b float64) (geom.Point3, error) {
		return geom.Point3{X: a, Y: b, Z: a*a/(2*r1) + b*b/(2*r2)}, nil
	}
	g, err := flat.Weave(bowl, steps(300, 600), steps(200, 400))
	if err != nil {
		t.Fatal(err)
	}
	p := g.Point[600][400]
	within(t, "x", p.X, 295.743694953, 1e-4)
	within(t, "y", p.Y, 195.152616534, 1e-4)
	within(t, "z", p.Z, 81.8167102924, 1e-4)
	within(t, "thread angle", g.Angle(600, 400)*180/math.Pi, 84.08141817, 0.03)
}

// A cylinder unrolls: its net is the flat grid.
func TestWeaveCylinder(t *testing.T) {
	const r = 200.0
	tube := func(a, b float64) (geom.Point3, error) {
		return geom.Point3{X: a, Y: r * math.Sin(b/r), Z: r * (1 - math.Cos(b/r))}, nil
	}
	g, err := flat.Weave(tube, steps(500, 50), chords(400, r, 80))
	if err != nil {
		t.Fatal(err)
	}
	for i := range g.U {
		for j := range g.V {
			within(t, "x", g.A[i][j], g.U[i], 1e-7)
			within(t, "arc", g.B[i][j], 400*float64(j)/80, 1e-7)
		}
	}
}

// A cone unrolls as well: given by its own unrolled coordinates, its net is the
// flat grid.
func TestWeaveCone(t *testing.T) {
	// Half angle 30 degrees, so that the whole cone unrolls to half a disc: a place
	// at (ρ, φ) in the flat lies at angle 2φ round the axis.
	const away = 400.0 // of the grid's corner from the tip
	cone := func(a, b float64) (geom.Point3, error) {
		x, y := a+away, b
		rho, phi := math.Hypot(x, y), math.Atan2(y, x)
		r := rho / 2
		return geom.Point3{X: r * math.Cos(2*phi), Y: r * math.Sin(2*phi), Z: rho * math.Sqrt(3) / 2}, nil
	}
	g, err := flat.Weave(cone, steps(300, 150), steps(200, 100))
	if err != nil {
		t.Fatal(err)
	}
	for i := range g.U {
		for j := range g.V {
			within(t, "u", g.A[i][j], g.U[i], 0.02)
			within(t, "v", g.B[i][j], g.V[j], 0.02)
		}
	}
}
