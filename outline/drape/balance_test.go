package drape

import (
	"math"
	"testing"
)

// hangs returns a bed at rest under a part of its load, with what all its weights have to
// fall, and the energy that its threads and cords hold: of each half its stiffness times
// the square of its strain.
func hangs(t *testing.T, part float64) (g *model, s *splitting, energy float64) {
	t.Helper()
	p := leaf()
	r := &Rig{Bars: [2]float64{960, 960}, Legs: [2]float64{1000, 1000}, Radius: func(float64) float64 { return 125 },
		Cloth: part * 7e-7, BarWeight: [2]float64{part * 3, part * 3}}
	r.Apex[0].X, r.Apex[0].Y, r.Apex[1].X, r.Apex[1].Y = -1450, 600, 1450, 640
	r.Load = []Weight{{-800, 0, part * 0.4, part * 0.5}, {0, 800, part * 0.5, part * 0.3}}
	f := Stiffness{Side: 20e3, Leg: 20e3, Warp: 60, Weft: 60, Shear: 0.06}
	g = newModel(p, r, f, 80)
	s, ok := newSplitting(&g.body)
	if !ok {
		t.Fatal("loose")
	}
	steps, far, _ := s.settle(1e-4, 60000, func(int, float64) error { g.load(); return nil })
	t.Logf("%d steps, %.1e mm", steps, far)
	for i := range g.ties {
		p := &g.ties[i]
		q, proj := s.q[3*i:3*i+3], s.proj[3*i:3*i+3]
		pull := p.penalty * math.Sqrt(square(q[0]-proj[0])+square(q[1]-proj[1])+square(q[2]-proj[2]))
		energy += pull * pull / p.stiffness / 2
	}
	for i := range g.faces {
		f := &g.faces[i]
		cos := 0.0
		for a := range 3 {
			warp, weft := 0.0, 0.0
			for k, n := range f.node {
				warp, weft = warp+f.warp[k]*g.place[a][n], weft+f.weft[k]*g.place[a][n]
			}
			cos += warp * weft
		}
		energy += g.shear * f.area * cos * cos / 2
	}
	return g, s, energy
}

func square(v float64) float64 { return v * v }

// At rest the legs carry all that weighs, and its moment about mid-bay, to a thousandth. What
// the weights give up while the bed is loaded by a twentieth more goes into its threads and
// cords: the work of weights that grow evenly is their mean times how far they sink.
func TestForcesAndEnergyBalance(t *testing.T) {
	a, sa, ua := hangs(t, 1)
	weight, moment, up, turn := 0.0, 0.0, 0.0, 0.0
	for i, w := range a.weight {
		weight += w
		x := a.place[0][i]
		for k, d := range a.disc {
			if d == i {
				x = a.place[0][a.chain[k][0]]
			}
		}
		moment += w * x
	}
	for e, i := range a.legs {
		v, _ := sa.force(i)
		up += v.Z
		// The leg pulls in its own line: it turns the bed as it does at its upper end.
		turn += v.Z*a.r.Apex[e].X - v.X*a.r.Apex[e].Y
	}
	within(t, "legs over weight", up/weight, 1, 1e-3)
	within(t, "moment, by the weight at 100 mm", (turn-moment)/(weight*100), 0, 1e-3)
	b, _, ub := hangs(t, 1.05)
	work := 0.0
	for i := range a.weight {
		work += (a.weight[i] + b.weight[i]) / 2 * (a.place[2][i] - b.place[2][i])
	}
	t.Logf("energy %.2f to %.2f N mm, work %.3f", ua, ub, work)
	within(t, "energy over work", (ub-ua)/work, 1, 1e-3)
}
