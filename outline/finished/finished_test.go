package finished_test

import (
	"errors"
	"math"
	"math/rand/v2"
	"testing"

	"slingloft/outline/bed"
	"slingloft/outline/design"
	"slingloft/outline/designtest"
	"slingloft/outline/finished"
	"slingloft/outline/geom"
	"slingloft/outline/hung"
	"slingloft/outline/quantity"
)

func problem() hung.Problem {
	return hung.Problem{
		Bed: design.Bed{
			Span: 1440, HeadBar: 980, FootBar: 900, HeadValue: 420, ControlValue: 205,
			HeadTail: 150, FootTail: 170, HeadLeg: 820, FootLeg: 760,
			HeadRadius: 125, SeatRadius: 150, FootRadius: 110,
		},
		Load:      hung.SleeperLoad(design.Sleeper{Stature: 1680, Mass: 70}, -800),
		BarWeight: [2]float64{3, 2.8},
	}
}

func sleeper(stature float64, mass quantity.Kilograms, crown float64) hung.Load {
	return hung.SleeperLoad(design.Sleeper{Stature: stature, Mass: mass}, crown)
}

const centre = 120.0 // mm

var lines = [2]float64{1100, 900}

func made(t testing.TB, p hung.Problem) (finished.Hammock, hung.Shape) {
	t.Helper()
	s, err := hung.Solve(p)
	if err != nil {
		t.Fatal(err)
	}
	return finished.Make(finished.Made{Shape: &s, Lines: lines}), s
}

func hang(t testing.TB, h finished.Hammock, c finished.Change, l hung.Load) finished.Pose {
	t.Helper()
	p, err := h.Hang(c, finished.Weight{Load: l, Centre: centre})
	if err != nil {
		t.Fatal(err)
	}
	return p
}

func near(t testing.TB, what string, got, want, tol float64) {
	t.Helper()
	if !(math.Abs(got-want) <= tol) {
		t.Errorf("%s = %.9g, want %.9g", what, got, want)
	}
}

// Beds that are narrow at their waist, whose far end moves by metres for a newton at the
// head, hang as they are designed too: differences of a hundred times the step found none
// of these.
func TestNarrowAsDesigned(t *testing.T) {
	for _, seed := range []uint64{10, 12, 195, 243, 279} {
		rng := rand.New(rand.NewPCG(seed, 99))
		s, err := hung.Solve(hung.ProblemOf(designtest.Design(rng)))
		if err != nil {
			t.Fatalf("seed %d: %v", seed, err)
		}
		h := finished.Make(finished.Made{Shape: &s, Lines: lines, SideEA: 200e3, LegEA: 200e3, LineEA: 200e3})
		p := hang(t, h, finished.Change{}, s.Problem.Load)
		near(t, "thrust of the head bar", p.Bar[bed.Head], s.Ends[hung.Head].BarCompression, 0.001*p.Bar[bed.Head])
		for e, end := range s.Ends {
			near(t, "apex", p.Apex[e].Z, end.ApexZ, 0.5)
		}
	}
}

// Nothing changed, and the bed hangs as designed.
func TestAsDesigned(t *testing.T) {
	q := problem()
	q.ClothWeight = 70e-9 * hung.Gravity
	h, s := made(t, q)
	p := hang(t, h, finished.Change{}, s.Problem.Load)
	for e, end := range s.Ends {
		near(t, "apex x", p.Apex[e].X, end.ApexX, 1e-4)
		near(t, "apex z", p.Apex[e].Z, end.ApexZ, 1e-4)
		near(t, "bar", p.Bar[e], end.BarCompression, 1e-4)
		near(t, "line", p.Line[e], math.Hypot(end.Horizontal, end.Vertical), 1e-4)
		near(t, "tip", p.Tips[e][bed.Left].Y, end.Bar/2, 1e-4)
	}
	for _, b := range p.Bed {
		near(t, "bottom", b.Bottom.Z, 0, 1e-4)
		near(t, "across", b.Bottom.Y, 0, 1e-6)
	}
	near(t, "worst", p.Level.Worst(), 0, 2e-4)
}

// Cords and cloth that stretch were cut shorter by that, and the bed hangs as
// designed; cut plain, it hangs lower, its lines set under load.
func TestStretchIsTakenOff(t *testing.T) {
	q := problem()
	_, s := made(t, q)
	m := finished.Made{Shape: &s, Lines: lines, SideEA: 200e3, LegEA: 150e3, LineEA: 100e3, Weft: 60}
	p := hang(t, finished.Make(m), finished.Change{}, s.Problem.Load)
	near(t, "worst", p.Level.Worst(), 0, 2e-3)
	near(t, "height", p.Level.Height, 0, 2e-3)
	near(t, "bar", p.Bar[0], s.Ends[0].BarCompression, 1e-2)
	m.Plain = true
	p = hang(t, finished.Make(m), finished.Change{}, s.Problem.Load)
	if p.Level.Height > -5 || p.Level.Height < -40 {
		t.Errorf("cut plain, the middle stands at %g mm", p.Level.Height)
	}
}

// Without weights of its own, twice the sleeper doubles every force and moves
// nothing.
func TestMassMovesNothing(t *testing.T) {
	q := problem()
	q.BarWeight = [2]float64{}
	h, s := made(t, q)
	p := hang(t, h, finished.Change{}, hung.SleeperLoad(design.Sleeper{Stature: 1680, Mass: 140}, -800))
	near(t, "bar", p.Bar[0], 2*s.Ends[0].BarCompression, 1e-3)
	near(t, "worst", p.Level.Worst(), 0, 2e-4)
}

// energy returns the potential energy of sleeper and bars, N mm, by Simpson's rule
// over pairs of stations where the load is smooth.
func energy(p finished.Pose, q hung.Problem) float64 {
	sum := 0.0
	height := func(s finished.Station) float64 { return s.Bottom.Z + centre*math.Cos(s.Tilt) }
	for i := 1; i < len(p.Bed); i++ {
		a, b := p.Bed[i-1], p.Bed[i]
		wa, wb := q.Load.At(a.X+1e-7), q.Load.At(b.X-1e-7)
		za, zb := height(a), height(b)
		// Load and height linear between two stations.
		sum += (b.X - a.X) * (wa*za/3 + wb*zb/3 + (wa*zb+wb*za)/6)
	}
	for e := range p.Tips {
		sum += q.BarWeight[e] * (p.Tips[e][0].Z + p.Tips[e][1].Z) / 2
	}
	return sum
}

// A cord under pull T that gets longer by δ lets the weights fall by T δ in all: the
// principle of virtual work, which ties lengths, forces and heights together. A bar
// under thrust does the contrary. It must hold level and with one leg far too long.
func TestVirtualWork(t *testing.T) {
	q := problem()
	h, _ := made(t, q)
	for base, from := range map[string]finished.Change{
		"level": {}, "tilted": {Leg: [2][2]float64{{30, 0}, {0, -10}}, Side: [2]float64{0, 15}},
	} {
		p := hang(t, h, from, q.Load)
		const step = 0.5
		for name, row := range map[string]struct {
			change finished.Change
			pull   float64
		}{
			"head leg left":   {finished.Change{Leg: [2][2]float64{{1, 0}, {}}}, p.Leg[0][0]},
			"head leg right":  {finished.Change{Leg: [2][2]float64{{0, 1}, {}}}, p.Leg[0][1]},
			"foot leg right":  {finished.Change{Leg: [2][2]float64{{}, {0, 1}}}, p.Leg[1][1]},
			"head line":       {finished.Change{Line: [2]float64{1, 0}}, p.Line[0]},
			"foot line":       {finished.Change{Line: [2]float64{0, 1}}, p.Line[1]},
			"head bar":        {finished.Change{Bar: [2]float64{1, 0}}, -p.Bar[0]},
			"foot bar":        {finished.Change{Bar: [2]float64{0, 1}}, -p.Bar[1]},
			"side cord left":  {finished.Change{Side: [2]float64{1, 0}}, mean(p, 0)},
			"side cord right": {finished.Change{Side: [2]float64{0, 1}}, mean(p, 1)},
		} {
			up, down := hang(t, h, plus(from, row.change, -step), q.Load), hang(t, h, plus(from, row.change, step), q.Load)
			got := (energy(up, q) - energy(down, q)) / (2 * step)
			near(t, base+", "+name, got, row.pull, 2e-3*math.Abs(row.pull))
		}
	}
}

// mean returns the pull of a side cord over its length.
func mean(p finished.Pose, s bed.Side) float64 {
	work, long := 0.0, 0.0
	for i := 1; i < len(p.Bed); i++ {
		a, b := p.Bed[i-1], p.Bed[i]
		if ds := b.Cords[s].Minus(a.Cords[s]).Len(); a.X >= -720 && b.X <= 720 {
			work += ds * (a.Pull[s] + b.Pull[s]) / 2
			long += ds
		}
	}
	return work / long
}

func plus(c, d finished.Change, k float64) finished.Change {
	for e := range 2 {
		for s := range 2 {
			c.Leg[e][s] += k * d.Leg[e][s]
		}
		c.Line[e] += k * d.Line[e]
		c.Bar[e] += k * d.Bar[e]
		c.Side[e] += k * d.Side[e]
	}
	return c
}

// What one side does is the mirror of what the other does.
func TestMirror(t *testing.T) {
	q := problem()
	h, _ := made(t, q)
	a := hang(t, h, finished.Change{Leg: [2][2]float64{{5, 0}, {}}, Side: [2]float64{0, 3}}, q.Load)
	b := hang(t, h, finished.Change{Leg: [2][2]float64{{0, 5}, {}}, Side: [2]float64{3, 0}}, q.Load)
	for e := range 2 {
		near(t, "z", a.Tips[e][0].Z, b.Tips[e][1].Z, 1e-6)
		near(t, "y", a.Tips[e][0].Y, -b.Tips[e][1].Y, 1e-6)
		near(t, "across", a.Level.Across[e], -b.Level.Across[e], 1e-6)
	}
	near(t, "along", a.Level.Along, b.Level.Along, 1e-6)
	// A leg that is too long lets its corner down.
	if one := hang(t, h, finished.Change{Leg: [2][2]float64{{5, 0}, {}}}, q.Load); one.Level.Across[0] > -1 || one.Level.Across[0] < -10 {
		t.Errorf("a head leg 5 mm too long: its tip stands %g mm above the other", one.Level.Across[0])
	}
}

// Another sleeper in the same hammock: heights change, forces balance.
func TestAnotherSleeper(t *testing.T) {
	q := problem()
	q.BarWeight = [2]float64{}
	h, s := made(t, q)
	for _, who := range []design.Sleeper{{Stature: 1500, Mass: 50}, {Stature: 1850, Mass: 110}} {
		load := hung.SleeperLoad(who, -800)
		p := hang(t, h, finished.Change{}, load)
		within := 0.0
		for i := 1; i < len(p.Bed); i++ {
			a, b := p.Bed[i-1].X, p.Bed[i].X
			within += load.At((a+b)/2) * (b - a)
		}
		up := 0.0
		for e, end := range s.Ends {
			// The hook stays where it was.
			run := lines[e] / math.Hypot(1, end.Slope)
			hook := geom.Point3{X: end.ApexX + hung.End(e).Sign()*run, Z: end.ApexZ + run*end.Slope}
			line := hook.Minus(p.Apex[e])
			near(t, "line", line.Len(), lines[e], 1e-6)
			up += p.Line[e] * line.Z / line.Len()
		}
		near(t, "weight", up, within, 1e-3*within)
		if p.Level.Worst() < 0.5 {
			t.Errorf("%+v finds no difference: %+v", who, p.Level)
		}
	}
}

// Hung from two points the whole turns until its centre of mass lies below the line
// between them (the pendulum), and no rigid estimate comes near: bars and cords give.
func TestPendulum(t *testing.T) {
	q := problem()
	h, s := made(t, q)
	const aside = 40.0
	p := mustHang(t, h, finished.Change{}, finished.Weight{Load: q.Load, Centre: centre, Aside: aside})
	moment, all := 0.0, 0.0
	out := func(x float64) float64 {
		// Where the centre of mass of a station stands.
		for i := 1; ; i++ {
			a, b := p.Bed[i-1], p.Bed[i]
			if x > b.X {
				continue
			}
			at := func(s finished.Station) float64 {
				return s.Bottom.Y + aside*math.Cos(s.Tilt) - centre*math.Sin(s.Tilt)
			}
			f := (x - a.X) / (b.X - a.X)
			return at(a)*(1-f) + at(b)*f
		}
	}
	const steps = 4000
	head, foot := s.TailEnds()
	for i := range steps {
		x := head + (foot-head)*(float64(i)+0.5)/steps
		w := q.Load.At(x) * (foot - head) / steps
		moment += w * out(x)
		all += w
	}
	for e := range p.Tips {
		moment += q.BarWeight[e] * (p.Tips[e][0].Y + p.Tips[e][1].Y) / 2
	}
	// The weft's lean, where one cord has moved along past the other, is left out.
	near(t, "centre of mass aside", moment/all, 0, 0.01*aside)
	_, x := q.Load.Total()
	f := (x - s.Ends[0].ApexX) / (s.Ends[1].ApexX - s.Ends[0].ApexX)
	rigid := math.Atan(aside / (s.Ends[0].ApexZ*(1-f) + s.Ends[1].ApexZ*f - centre))
	if turn := -p.Turn; turn < 1.2*rigid || turn > 4*rigid {
		t.Errorf("turn %g rad, a rigid bed %g", turn, rigid)
	}
	if p.Share < 0.5 || p.Share > 0.7 {
		t.Errorf("the lower cord carries %g of the load", p.Share)
	}
}

// A weight far aside and high turns a shallow bed over: the search says how far it
// could follow, rather than end in a rest that is none.
func TestTurnsOver(t *testing.T) {
	q := problem()
	q.Bed.HeadValue, q.Bed.ControlValue = 300, 150
	h, _ := made(t, q)
	_, err := h.Hang(finished.Change{}, finished.Weight{Load: q.Load, Centre: 240, Aside: 240})
	var lost *finished.LostError
	if !errors.As(err, &lost) {
		t.Fatalf("error %v", err)
	}
	if lost.Aside <= 0 || lost.Aside >= 240 || lost.Turn >= 0 {
		t.Errorf("lost at %+v", lost)
	}
	// Up to there it can be followed.
	if _, err := h.Hang(finished.Change{},
		finished.Weight{Load: q.Load, Centre: 240 * lost.Aside / 240, Aside: lost.Aside * 0.9}); err != nil {
		t.Error(err)
	}
}

// An even load on the bay and nothing else hangs both cords together as the handbook's
// parabola: thrust 2H = w S²/(8 sag).
func TestParabola(t *testing.T) {
	q := problem()
	q.BarWeight = [2]float64{}
	const w = 0.5
	q.Load = hung.Load{{From: -720, To: 720, Start: w, End: w}}
	h, s := made(t, q)
	p := hang(t, h, finished.Change{}, hung.EvenLoad(2*w*1440, -720, 720))
	tip := func(e int) float64 { return p.Tips[e][0].Z }
	sag := (tip(0)+tip(1))/2 - middle(p).Z
	thrust := 2 * w * 1440 * 1440 / (8 * sag)
	near(t, "thrust", p.Pull[1].X, thrust, 1e-3*thrust)
	near(t, "thrust of the shape", 2*2*s.Thrust, thrust, 1e-3*thrust)
}

// middle returns the left cord's place at mid-bay.
func middle(p finished.Pose) geom.Point3 {
	for i := 1; ; i++ {
		a, b := p.Bed[i-1], p.Bed[i]
		if b.X >= 0 {
			f := -a.X / (b.X - a.X)
			return a.Cords[0].Times(1-f).PlusTimes(b.Cords[0], f)
		}
	}
}
