package drape_test

import (
	"math"
	"testing"

	"slingloft/outline/design"
	"slingloft/outline/drape"
	"slingloft/outline/flat"
	"slingloft/outline/geom"
	"slingloft/outline/hung"
)

// The measure is taken to 30 mm from the cloth's ends, and the load ends 20 mm
// inside each.
const (
	measured = 30.0
	inside   = 20.0
)

// settings of the judged meshes. With cells of 20 mm and steps of 3e-4 mm no level
// below changes by more than 0.35 mm, no force by more than 0.5 %.
var settings = drape.Settings{Cell: 50, Step: 1e-3, Steps: 20000}

// own is the stiffness of the prototype case, with a shear stiffness of the order
// of light woven cloth (from memory). A tenth and ten times of it move the stiff
// levels by less than 0.05 mm, the others by up to 1.3 mm.
var own = drape.Stiffness{Side: 200e3, Leg: 200e3, Warp: 60, Weft: 60, Shear: 0.06}

// prototype is an even-barred bed, loaded evenly up to 20 mm inside its ends.
func prototype(cut design.Cut) hung.Problem {
	return hung.Problem{
		Bed: design.Bed{
			Span: 1440, HeadBar: 980, FootBar: 980, HeadValue: 420,
			Control: design.Thrust, ControlValue: 420,
			HeadTail: 150, FootTail: 150, HeadLeg: 820, FootLeg: 820,
			HeadRadius: 125, SeatRadius: 125, FootRadius: 125, Cut: cut,
		},
		Load: hung.EvenLoad(70*hung.Gravity, -870+inside, 870-inside),
	}
}

// unlike has bars, tails, radii and legs that differ, weight of its own, and a
// sleeper who reaches to 20 mm from the ends.
func unlike() hung.Problem {
	p := hung.Problem{
		Bed: design.Bed{
			Span: 1500, HeadBar: 940, FootBar: 800, HeadValue: 400,
			Control: design.SideDepth, ControlValue: 200,
			HeadTail: 150, FootTail: 190, HeadLeg: 880, FootLeg: 840,
			HeadRadius: 150, SeatRadius: 130, FootRadius: 120,
		},
		ClothWeight: 70e-9 * hung.Gravity,
		BarWeight:   [2]float64{2.6, 2.3},
	}
	long := 1500 + 150 + 190 - 2*inside
	p.Load = hung.SleeperLoad(design.Sleeper{Stature: long, Mass: 85}, -750-150+inside)
	return p
}

// lay returns pattern and rig of a solved problem as plain data, the weft shortened
// for a stiffness that is not 0.
func lay(t *testing.T, s *hung.Shape, weft float64) (drape.Pattern, drape.Rig) {
	t.Helper()
	b, err := flat.Lay(s, false)
	if err != nil {
		t.Fatal(err)
	}
	b = b.Compensated(s, weft)
	bed := &s.Problem.Bed
	p := drape.Pattern{Side: b.Side.Flat, Cord: b.Side.Hung, Tips: b.Tips}
	r := drape.Rig{
		Bars: [2]float64{bed.HeadBar, bed.FootBar}, Legs: [2]float64{bed.HeadLeg, bed.FootLeg},
		Radius: s.Problem.Radius, Cloth: s.Problem.ClothWeight, BarWeight: s.Problem.BarWeight,
	}
	for e := range 2 {
		p.Ends[e] = b.Ends[e].Flat
		r.Apex[e] = geom.Pt(s.Ends[e].ApexX, s.Ends[e].ApexZ)
	}
	for _, l := range s.Problem.Load {
		r.Load = append(r.Load, drape.Weight(l))
	}
	return p, r
}

func solve(t *testing.T, p hung.Problem) hung.Shape {
	t.Helper()
	s, err := hung.Solve(p)
	if err != nil {
		t.Fatal(err)
	}
	return s
}

// level returns how far from level the bottom line lies, over the bay and the
// tails to 30 mm from their ends, and no nearer than 10 mm to where the load ends.
func level(h *drape.Hung, s *hung.Shape) float64 {
	head, foot := s.TailEnds()
	breaks := s.Problem.Load.Breaks()
	const short = measured - inside
	from := max(head+measured, breaks[0]+short)
	to := min(foot-measured, breaks[len(breaks)-1]-short)
	return h.Level(from, to)
}

func hang(t *testing.T, s *hung.Shape, p *drape.Pattern, r *drape.Rig, f drape.Stiffness) drape.Hung {
	t.Helper()
	h, err := drape.Hang(p, r, f, settings)
	if err != nil {
		t.Fatalf("%v: %d steps, last %.2g mm", err, h.Steps, h.Last)
	}
	half := s.Problem.Bed.Span / 2
	t.Logf("%d nodes, %d steps: level %.2f, over the bay %.2f, mid %.2f mm; tension %.1f N, thrusts %.1f N, bars %.1f N",
		len(h.Points), h.Steps, level(&h, s), h.Level(-half, half), h.Height(0), h.MaxTension(), h.Thrust, h.Bar)
	return h
}

func atMost(t *testing.T, what string, got, limit float64) {
	t.Helper()
	if !(got <= limit) {
		t.Errorf("%s = %.3f, more than %.3f", what, got, limit)
	}
}

// like asks for a value within a part of another.
func like(t *testing.T, what string, got, want, part float64) {
	t.Helper()
	if !(math.Abs(got-want) <= part*math.Abs(want)) {
		t.Errorf("%s = %.2f, want %.2f within %.1f %%", what, got, want, 100*part)
	}
}

// forces compares the simulation's forces with the solver's.
func forces(t *testing.T, h *drape.Hung, s *hung.Shape, part float64) {
	t.Helper()
	tension, _ := s.MaxTension()
	like(t, "largest tension", h.MaxTension(), tension, part)
	for e, end := range s.Ends {
		like(t, "thrust", h.Thrust[e], s.Thrust, part)
		like(t, "vertical pull", h.Vertical[e], end.Vertical, part)
		like(t, "bar compression", h.Bar[e], end.BarCompression, part)
	}
}

// shortened takes the strain at the working load out of a pattern's cords: they
// are cut shorter by what they stretch.
func shortened(p drape.Pattern, r drape.Rig, s *hung.Shape, f drape.Stiffness) (drape.Pattern, drape.Rig) {
	q := drape.Pattern{Side: p.Side, Ends: p.Ends}
	// cut is the slack length of cord between two stations.
	cut := func(from, to, ea float64) float64 {
		const n = 200
		sum := 0.0
		for i := range n {
			a := from + (to-from)*float64(i)/n
			b := a + (to-from)/n
			sum += s.Arc(a, b) / (1 + s.At((a+b)/2).Tension/ea)
		}
		return sum
	}
	half := s.Problem.Bed.Span / 2
	corner := stationOf(s, -half, p.Tips[0])
	slack := func(run float64) float64 {
		x := stationOf(s, corner, -run)
		ea := [3]float64{f.Leg, f.Side, f.Leg}
		at := [4]float64{corner, -half, half, math.Inf(1)}
		sum := 0.0
		for k := range ea {
			if x > at[k] {
				sum += cut(at[k], min(x, at[k+1]), ea[k])
			}
		}
		return sum
	}
	for _, run := range p.Cord {
		q.Cord = append(q.Cord, slack(run))
	}
	for e := range q.Tips {
		q.Tips[e] = slack(p.Tips[e])
	}
	o := r
	o.Legs = [2]float64{cut(s.Ends[0].ApexX, -half, f.Leg), cut(half, s.Ends[1].ApexX, f.Leg)}
	return q, o
}

// stationOf returns the station from which the cord to x is run long.
func stationOf(s *hung.Shape, x, run float64) float64 {
	lo, hi := s.Ends[0].ApexX, s.Ends[1].ApexX
	for range 60 {
		mid := (lo + hi) / 2
		if s.Arc(mid, x) > run {
			lo = mid
		} else {
			hi = mid
		}
	}
	return (lo + hi) / 2
}

// judged is a design with its materials.
type judged struct {
	name      string
	problem   hung.Problem
	stiffness drape.Stiffness
}

// demo is the built-in design, with its sleeper's weight spread up to 20 mm inside
// the ends if full; else its sleeper lies where the design has it.
func demo(t *testing.T, full bool) judged {
	t.Helper()
	d, _, err := design.Read(design.Demo())
	if err != nil {
		t.Fatal(err)
	}
	j := judged{"demo", hung.ProblemOf(d), drape.Stiffness{
		Side: float64(d.Side.Stiffness), Leg: float64(d.Leg.Stiffness),
		Warp: float64(d.Cloth.WarpStiffness), Weft: float64(d.Cloth.WeftStiffness), Shear: own.Shear}}
	if full {
		j.name = "demo loaded to its ends"
		half := d.Bed.Span / 2
		j.problem.Load = hung.EvenLoad(float64(d.Sleeper.Mass.Weight()), -half-d.Bed.HeadTail+inside, half+d.Bed.FootTail-inside)
	}
	return j
}

// Stiff, a net cut hangs within 5 mm of level, and as the solver says.
func TestStiffNetHangsLevel(t *testing.T) {
	for _, j := range []judged{
		{"prototype", prototype(design.Net), own},
		{"unlike ends", unlike(), own},
		demo(t, true),
	} {
		t.Run(j.name, func(t *testing.T) {
			t.Parallel()
			s := solve(t, j.problem)
			p, r := lay(t, &s, 0)
			h := hang(t, &s, &p, &r, j.stiffness.Times(100))
			atMost(t, "level", level(&h, &s), 5)
			forces(t, &h, &s, 0.01)
			cordLies(t, &h, &s, 1)
		})
	}
}

// A cut that takes the demo's stretch into account still lies within 5 mm where
// nothing stretches.
func TestStiffCompensatedNetHangsLevel(t *testing.T) {
	j := demo(t, true)
	s := solve(t, j.problem)
	p, r := lay(t, &s, j.stiffness.Weft)
	h := hang(t, &s, &p, &r, j.stiffness.Times(100))
	atMost(t, "level", level(&h, &s), 5)
}

// With its own stiffness and its strain taken out beforehand, the net cut hangs
// within 8 mm of level.
func TestCompensatedNetHangsLevel(t *testing.T) {
	for _, j := range []judged{
		{"prototype", prototype(design.Net), own},
		{"unlike ends", unlike(), own},
		demo(t, true),
	} {
		t.Run(j.name, func(t *testing.T) {
			t.Parallel()
			s := solve(t, j.problem)
			p, r := lay(t, &s, j.stiffness.Weft)
			p, r = shortened(p, r, &s, j.stiffness)
			h := hang(t, &s, &p, &r, j.stiffness)
			atMost(t, "level", level(&h, &s), 8)
			forces(t, &h, &s, 0.05)
			cordLies(t, &h, &s, 1)
		})
	}
}

// Under its own sleeper, who ends well inside the cloth, the demo's empty tail ends
// hang slack and never come quite to rest; the loaded part still lies level.
func TestCompensatedDemoHangsLevel(t *testing.T) {
	j := demo(t, false)
	s := solve(t, j.problem)
	p, r := lay(t, &s, j.stiffness.Weft)
	p, r = shortened(p, r, &s, j.stiffness)
	calm := settings
	calm.Step = 5e-3
	h, err := drape.Hang(&p, &r, j.stiffness, calm)
	if err != nil {
		t.Fatalf("%v: %d steps, last %.2g mm", err, h.Steps, h.Last)
	}
	t.Logf("%d steps: level %.2f mm", h.Steps, level(&h, &s))
	atMost(t, "level", level(&h, &s), 8)
	forces(t, &h, &s, 0.05)
}

// What a cut without compensation and a straight cut lose, as an earlier simulation
// of the same case found it: with its own stiffness the bed sinks by some 19 mm in
// the middle and bows by 5 mm over the bay; straight tails lie 6 to 9 mm off.
func TestWithoutCompensationAndNet(t *testing.T) {
	t.Run("own stiffness", func(t *testing.T) {
		t.Parallel()
		s := solve(t, prototype(design.Net))
		pat, rig := lay(t, &s, 0)
		h := hang(t, &s, &pat, &rig, own)
		like(t, "sinks", -h.Height(0), 19, 0.1)
		like(t, "bows", h.Height(720)-h.Height(0), 5, 0.1)
	})
	t.Run("straight", func(t *testing.T) {
		t.Parallel()
		s := solve(t, prototype(design.Straight))
		pat, rig := lay(t, &s, 0)
		h := hang(t, &s, &pat, &rig, own.Times(100))
		like(t, "off level", level(&h, &s), 7.5, 0.2)
	})
}

// cordLies asks that the simulated cord lies where the solver has it.
func cordLies(t *testing.T, h *drape.Hung, s *hung.Shape, limit float64) {
	t.Helper()
	worst := 0.0
	for _, q := range h.Edge {
		at := s.At(q.X)
		worst = max(worst, math.Hypot(q.Y-at.Y, q.Z-at.Z))
	}
	t.Logf("cord within %.2f mm", worst)
	atMost(t, "cord off its place", worst, limit)
}
