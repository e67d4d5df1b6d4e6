package tarp_test

import (
	"errors"
	"fmt"
	"math"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"slingloft/outline/design"
	"slingloft/outline/geom"
	"slingloft/outline/hung"
	"slingloft/outline/piece"
	"slingloft/outline/quantity"
	_ "slingloft/outline/rapidtest"
	"slingloft/outline/tarp"
	"slingloft/outline/words"
)

const degree = math.Pi / 180

// asked returns the built-in design with a sheet of a size, straight and whole.
func asked(ridge, width float64) design.Design {
	d := design.Defaults()
	d.Cloth.Width = 1500
	d.Tarp.On, d.Tarp.Ridge, d.Tarp.Width, d.Tarp.Hollow = true, ridge, width, 0
	d.Tarp.Rise, d.Tarp.Patch = 600, 80
	return d
}

// post is a bed that is one upright post under the middle of the ridge, or anywhere.
func post(x, y, z float64) tarp.Bed {
	return tarp.Bed{Dry: []geom.Point3{geom.Pt3(x, y, z)}, Cords: []geom.Point3{geom.Pt3(x, y, z)}, Overall: 2600, Slope: 0.4, Depth: 900}
}

func made(t testing.TB, d design.Design, b tarp.Bed) tarp.Sewn {
	t.Helper()
	s, err := tarp.SizeOf(d, b)
	if err != nil {
		t.Fatal(err)
	}
	out, err := tarp.Pieces(d, s, "0123abcd", words.EnglishLettering())
	if err != nil {
		t.Fatal(err)
	}
	return out
}

func near(t interface {
	Helper()
	Errorf(string, ...any)
}, what string, got, want, tolerance float64) {
	t.Helper()
	if !(math.Abs(got-want) <= tolerance) {
		t.Errorf("%s is %.9g, want %.9g", what, got, want)
	}
}

// segment returns the area between a curve and its chord L with the sag s, closed form.
func segment(c design.TarpCurve, l, s float64) float64 {
	switch c {
	case design.ParabolaEdge:
		return 2 * l * s / 3
	case design.ArcEdge:
		r := (l*l/4 + s*s) / (2 * s)
		turn := 4 * math.Atan(2*s/l)
		return r * r / 2 * (turn - math.Sin(turn))
	}
	// a (cosh(L/2a) − 1) = s by bisection; ∫ a (cosh(L/2a) − cosh(x/a)) dx
	lo, hi := l/100, 1e6*l
	for range 200 {
		if a := (lo + hi) / 2; a*(math.Cosh(l/(2*a))-1) > s {
			lo = a
		} else {
			hi = a
		}
	}
	return lo*l*math.Cosh(l/(2*lo)) - 2*lo*lo*math.Sinh(l/(2*lo))
}

// Sheets have the area of their straight outline less a segment at every edge, in however
// many panels they are cut.
func TestAreas(t *testing.T) {
	for _, shape := range []design.TarpShape{design.RectangleTarp, design.HexagonTarp} {
		for _, c := range []design.TarpCurve{design.CatenaryEdge, design.ParabolaEdge, design.ArcEdge} {
			for _, join := range []design.TarpJoin{design.RidgeJoin, design.AcrossJoin, design.WholeTarp} {
				for _, hollow := range []float64{0, 0.1} {
					for _, width := range []float64{1200, 900} {
						d := asked(3600, 2400)
						d.Cloth.Width = width
						d.Tarp.Shape, d.Tarp.Curve, d.Tarp.Join, d.Tarp.Hollow = shape, c, join, hollow
						if join == design.RidgeJoin {
							d.Tarp.RidgeHollow = hollow / 5
						}
						side, end := 3600.0, 1200.0
						want := 3600 * 2400.0
						if shape == design.HexagonTarp {
							side = 2700
							want, end = (3600+2700)/2*2400, math.Hypot(450, 1200)
						}
						if hollow > 0 {
							want -= 2*segment(c, side, hollow*side) + 4*segment(c, end, hollow*end)
						}
						if r := d.Tarp.RidgeHollow; r > 0 {
							want -= 2 * segment(c, 3600, r*3600)
						}
						s := made(t, d, post(0, 0, -500))
						// Chords lie up to 0.005 mm off, two thirds of it in the mean.
						near(t, fmt.Sprint(shape, c, join, hollow, width), s.Area(), want, 0.005*2/3*(2*3600+2*side+4*end)+1e-3)
					}
				}
			}
		}
	}
}

// In panels no piece is wider than the roll, every seam closes, and water runs over fells.
func TestPanels(t *testing.T) {
	for _, r := range []struct {
		join   design.TarpJoin
		roll   float64
		panels string
		seams  string
	}{
		{design.RidgeJoin, 1500, "tarp-left tarp-right", "tarp ridge"},
		{design.RidgeJoin, 800, "tarp-left-1 tarp-left-2 tarp-right-1 tarp-right-2", "tarp ridge, tarp join 1, tarp join 2"},
		{design.AcrossJoin, 1500, "tarp-1 tarp-2 tarp-3", "tarp join 1, tarp join 2"},
		{design.WholeTarp, 1500, "tarp-whole", ""},
	} {
		d := asked(3600, 2400)
		d.Tarp.Join, d.Cloth.Width, d.Tarp.Hollow = r.join, r.roll, 0.06
		s := made(t, d, post(0, 0, -500))
		var ids, seams []string
		for _, p := range s.Pieces {
			if p.Kind != piece.TarpPanel {
				continue
			}
			ids = append(ids, p.ID)
			if wide := p.Cut.Bounds().Height(); r.join != design.WholeTarp && wide > r.roll-2*d.Cloth.Margin+1e-6 {
				t.Errorf("%s is %g mm wide, the roll %g", p.ID, wide, r.roll)
			}
		}
		for _, q := range s.Seams {
			seams = append(seams, q.String())
			near(t, q.String(), q.Difference, 0, 1e-9)
			if len(q.Parts) != 4 {
				t.Errorf("%s has %d parts", q, len(q.Parts))
			}
		}
		if got := strings.Join(ids, " "); got != r.panels {
			t.Errorf("%s on %g mm: %s", r.join, r.roll, got)
		}
		if got := strings.Join(seams, ", "); got != r.seams {
			t.Errorf("%s on %g mm: seams %s", r.join, r.roll, got)
		}
	}
}

// Both edges of a seam carry its notches at the same places.
func TestNotches(t *testing.T) {
	d := asked(3600, 2400)
	d.Tarp.RidgeHollow, d.Cloth.Width = 0.02, 800
	s := made(t, d, post(0, 0, -500))
	count := map[string]int{}
	for _, p := range s.Pieces {
		for _, l := range p.Lines {
			if l.Role == piece.NotchStroke {
				count[l.Of]++
			}
		}
	}
	for name, n := range count {
		want := 2
		if strings.Contains("T1 T4 T7", name) {
			want = 4 // double, on both panels
		}
		if n != want {
			t.Errorf("notch %s has %d strokes, want %d", name, n, want)
		}
	}
	if len(count) != 9 {
		t.Errorf("%d notches, want 9", len(count))
	}
}

// Rain from the side passes the edge of a straight sheet, and hits a point that far below
// and inside of it: tan ρ = (w cos φ − y) / (below − w sin φ). From the end it passes the
// end of the ridge: tan ρ = (L/2 − x) / below. Off the ridge by y, of all directions α from
// straight along, the worst is the least of a/(b cos α + a tan φ sin α), with a = L/2 − x
// and b = below − y tan φ: a/√(b² + (a tan φ)²).
func TestRainByHand(t *testing.T) {
	for _, r := range []struct{ x, y, z, ridge, width, want float64 }{
		// From the side: w = 1000, φ = 40°: the edge is 766.04 out and 642.79 down.
		{0, 0, -500, 6000, 2000, math.Atan2(766.0444431, 1100-642.7876097)},
		{0, 300, -500, 6000, 2000, math.Atan2(466.0444431, 1100-642.7876097)},
		// From the end: on the ridge line, and off it under the slope: 300 tan 40° = 251.73.
		{1400, 0, -500, 3600, 6000, math.Atan2(400, 1100)},
		{-1400, 300, -500, 3600, 6000, math.Atan2(400, math.Hypot(1100-251.7298894, 400*0.8390996))},
	} {
		d := asked(r.ridge, r.width)
		s, err := tarp.SizeOf(d, post(r.x, r.y, r.z))
		if err != nil {
			t.Fatal(err)
		}
		near(t, fmt.Sprintf("rain kept off (%g %g %g)", r.x, r.y, r.z), s.Keeps/degree, r.want/degree, 0.06)
	}
}

// What is left out is proposed: just large enough, to the steps of a hand.
func TestProposed(t *testing.T) {
	bed := tarp.Bed{Overall: 2600, Slope: 0.4, Depth: 900}
	for x := -900.0; x <= 850; x += 50 {
		bed.Dry = append(bed.Dry, geom.Pt3(x, 400, -300), geom.Pt3(x, 0, -700))
		bed.Cords = append(bed.Cords, geom.Pt3(x, 400, -300))
	}
	for _, shape := range []design.TarpShape{design.RectangleTarp, design.HexagonTarp} {
		for _, rain := range []float64{0, 30, 45} {
			d := asked(0, 0)
			d.Tarp.Rise, d.Tarp.Shape, d.Tarp.Rain, d.Tarp.Hollow = 0, shape, quantity.Degrees(rain), 0.07
			s, err := tarp.SizeOf(d, bed)
			if err != nil {
				t.Fatal(err)
			}
			if s.Ridge != s.NeedRidge || s.Width != s.NeedWidth || s.Rise != s.NeedRise {
				t.Errorf("%v at %g°: %+v is not what it needs", shape, rain, s)
			}
			if s.Keeps < rain*degree-1e-3 || s.Ridge < 3000 || s.Clear < tarp.Clearance-1e-9 {
				t.Errorf("%v at %g°: keeps %.2f° off, ridge %g, clear by %g", shape, rain, s.Keeps/degree, s.Ridge, s.Clear)
			}
			if s.Ridge > 3000 {
				d.Tarp.Ridge, d.Tarp.Width, d.Tarp.Rise = s.Ridge-50, s.Width, s.Rise
				if less, err := tarp.SizeOf(d, bed); err != nil || less.Keeps >= rain*degree {
					t.Errorf("%v at %g°: a ridge shorter by 50 mm keeps %.2f° off as well, %v", shape, rain, less.Keeps/degree, err)
				}
			}
			d.Tarp.Ridge, d.Tarp.Width, d.Tarp.Rise = s.Ridge, s.Width-100, s.Rise
			if less, err := tarp.SizeOf(d, bed); err == nil && rain > 0 && shape == design.RectangleTarp && less.Keeps >= rain*degree {
				t.Errorf("%v at %g°: narrower by 100 mm it keeps %.2f° off as well", shape, rain, less.Keeps/degree)
			}
		}
	}
	// The rise is a closed form: at the bars, z + y tan φ + 100/cos φ, up to 10 mm.
	d := asked(0, 0)
	d.Tarp.Rise, d.Tarp.Rain = 0, 0
	bed.Slope = 0
	s, err := tarp.SizeOf(d, bed)
	if err != nil {
		t.Fatal(err)
	}
	near(t, "rise", s.Rise, 170, 1e-9) // −300 + 335.64 + 130.54 = 166.2
}

// Under steep hang lines no ridge is both long enough for such rain and off them: that is
// said, and what is left is the least that reaches past the apexes.
func TestSteepLines(t *testing.T) {
	bed := post(900, 0, -700)
	bed.Slope = 0.8
	d := asked(0, 0)
	d.Tarp.Rise, d.Tarp.Rain = 0, quantity.Degrees(60)
	s, err := tarp.SizeOf(d, bed)
	if err != nil || s.NeedRidge != 0 || s.Ridge != 3000 || s.Keeps > 60*degree || s.Clear < tarp.Clearance {
		t.Errorf("%+v, %v", s, err)
	}
}

// A hollow ridge hangs lower by its hollow over the sine of the pitch.
func TestDip(t *testing.T) {
	d := asked(3600, 2400)
	d.Tarp.RidgeHollow, d.Tarp.Pitch = 0.02, quantity.Degrees(30)
	s, err := tarp.SizeOf(d, post(0, 0, -500))
	if err != nil {
		t.Fatal(err)
	}
	near(t, "dip", s.Dip, 144, 1e-9)
	near(t, "distance from the post", s.Clear, min((600+500-144)*math.Cos(30*degree), 600-0.4*500), 1e-9)
}

// random draws a sheet as a design may ask for it.
func random(t *rapid.T) design.Design {
	d := design.Defaults()
	number := func(name string, lo, hi float64) float64 { return rapid.Float64Range(lo, hi).Draw(t, name) }
	maybe := func(name string, lo, hi float64) float64 {
		return rapid.OneOf(rapid.Just(0.0), rapid.Float64Range(lo, hi)).Draw(t, name)
	}
	d.Output.Inches = rapid.Bool().Draw(t, "inches")
	d.Cloth.Width = number("roll", 300, 2500)
	shape := design.TarpShape(rapid.IntRange(0, 1).Draw(t, "shape"))
	d.Tarp = design.Tarp{On: true, Shape: shape, Curve: design.TarpCurve(rapid.IntRange(0, 2).Draw(t, "curve")),
		Ridge: maybe("ridge", 500, 8000), Width: maybe("width", 300, 6000), Hollow: maybe("hollow", 0.001, 0.15), Rise: maybe("rise", 20, 3000),
		Pitch: quantity.Degrees(number("pitch", 15, 70)), Rain: quantity.Degrees(number("rain", 0, 60)), Hem: number("hem", 5, 60),
		Allowance: number("allowance", 6, 60), Patch: number("patch", 40, 600), Loop: 200}
	if d.Tarp.Shape == design.HexagonTarp {
		d.Tarp.Side = maybe("side", 200, 5000)
	}
	d.Tarp.Join = design.TarpJoin(rapid.IntRange(0, 2).Draw(t, "join"))
	if d.Tarp.Join == design.RidgeJoin {
		d.Tarp.RidgeHollow = maybe("ridge hollow", 0.001, 0.08)
	}
	return d
}

// Whatever is asked for is refused by a key, or comes as a sheet whose panels are as large
// as it together, whose seams fit, and whose allowances lie outside.
func TestAnyTarp(t *testing.T) {
	bed := post(0, 0, 0)
	bed.Dry, bed.Cords = nil, nil
	for x := -900.0; x <= 850; x += 50 {
		bed.Dry = append(bed.Dry, geom.Pt3(x, 400, -300), geom.Pt3(x, 0, -700))
		bed.Cords = append(bed.Cords, geom.Pt3(x, 400, -300))
	}
	rapid.Check(t, func(t *rapid.T) {
		d := random(t)
		size, err := tarp.SizeOf(d, bed)
		var s tarp.Sewn
		if err == nil {
			s, err = tarp.Pieces(d, size, "0123abcd", words.EnglishLettering())
		}
		if err != nil {
			var no *hung.Impossible
			if !errors.As(err, &no) || no.Key == "" || no.Bound == design.NoLimit || math.IsNaN(no.Limit) {
				t.Fatalf("%v names no value that would do", err)
			}
			return
		}
		for _, q := range s.Seams {
			if math.Abs(q.Difference) > 1e-6 || !(q.Flat[0] > 0) {
				t.Errorf("%s: %v", q, q.Flat)
			}
		}
		for _, p := range s.Pieces {
			for _, at := range p.Net {
				if _, off := geom.NewArc(p.Cut.Closed()).Nearest(at); off > 1e-6 && !p.Cut.Contains(at) {
					t.Errorf("%s: net line at %v lies outside of the cut by %g", p.ID, at, off)
				}
			}
		}
		d.Tarp.Join = design.WholeTarp
		if d.Tarp.RidgeHollow == 0 {
			whole, err := tarp.Pieces(d, size, "", words.EnglishLettering())
			if err != nil {
				t.Fatal(err)
			}
			near(t, "area of the panels", s.Area(), whole.Area(), 0.01*(size.Ridge+size.Width)*4)
		}
	})
}

func BenchmarkSize(b *testing.B) {
	bed := tarp.Bed{Overall: 2600, Slope: 0.4, Depth: 900}
	for x := -900.0; x <= 850; x += 50 {
		bed.Dry = append(bed.Dry, geom.Pt3(x, 400, -300), geom.Pt3(x, 0, -700))
	}
	d := asked(0, 0)
	d.Tarp.Hollow = 0.07
	for b.Loop() {
		if s, err := tarp.SizeOf(d, bed); err != nil || s.Ridge < 3000 {
			b.Fatal(s, err)
		}
	}
}
