package drape

import (
	"math"
	"testing"
)

// hungNode is a tie of 500 mm by which a node hangs upright from a point.
func hungNode(node int, x float64) tie {
	return tie{node: [3]int{node}, part: [3]float64{-1.0 / 500}, offset: [3]float64{x / 500, 0, 1}, stiffness: 1e9, penalty: 1e5}
}

// A rigid link across two slings bears on them by the law of the lever, also where a disc
// of it lies over neither.
func TestLinkIsLever(t *testing.T) {
	b := &body{width: 4}
	b.resize(5) // two nodes, three discs
	b.sleeper = links{joints: []float64{0, 1000}, on: map[int]carried{}}
	for d, x := range map[int]float64{2: 0, 3: 1000, 4: 250} {
		if !b.sleeper.carry(d, x) {
			t.Fatal(x)
		}
		for a := range 3 {
			b.fixed[a][d] = true
		}
	}
	if b.sleeper.carry(4, 1001) {
		t.Error("a disc past the end is carried")
	}
	for node, x := range map[int]float64{0: 0, 1: 1000} {
		b.fixed[1][node] = true
		b.place[0][node] = x
	}
	b.ties = []tie{hungNode(0, 0), hungNode(1, 1000)}
	b.contacts = []contact{{node: 0, disc: 2, penalty: 1e5, wide: 50, high: 50}, {node: 1, disc: 3, penalty: 1e5, wide: 50, high: 50}}
	b.weight[4] = 100
	s, ok := newSplitting(b)
	if !ok {
		t.Fatal("loose")
	}
	if _, far, _ := s.settle(1e-8, 20000, noLoad); !(far < 1e-8) {
		t.Fatalf("still %g off", far)
	}
	for i, want := range []float64{75, 25} {
		_, f := s.force(i)
		within(t, "sling", f, want, 1e-3)
	}
	within(t, "disc between", b.place[2][4], 0.75*b.place[2][2]+0.25*b.place[2][3], 1e-9)
}

// A cord that carries as much on every length of its run hangs in a parabola: with n even
// runs the polygon's corners lie on z = −4 f (x/l)(1 − x/l), its thrust is w l²/(8 f)
// (C. Huygens, 1646; any statics text).
func TestEvenLoadIsParabola(t *testing.T) {
	const (
		n         = 40
		span, sag = 1440.0, 180.0
		w         = 0.4
	)
	at := func(i int) (x, z float64) {
		x = span * float64(i) / n
		return x, -4 * sag * x / span * (1 - x/span)
	}
	b := &body{width: 1}
	b.resize(n - 1)
	for i := range n {
		x0, z0 := at(i)
		x1, z1 := at(i + 1)
		long := math.Hypot(x1-x0, z1-z0)
		p := tie{stiffness: 1e9 * long, penalty: 1000 * long}
		switch {
		case i == 0:
			p.node, p.part = [3]int{0}, [3]float64{1 / long}
		case i == n-1:
			p.node, p.part, p.offset = [3]int{n - 2}, [3]float64{-1 / long}, [3]float64{span / long}
		default:
			p.node, p.part = [3]int{i - 1, i}, [3]float64{-1 / long, 1 / long}
		}
		b.ties = append(b.ties, p)
		if i < n-1 {
			b.weight[i] = w * span / n
			b.place[0][i], b.place[2][i] = x1, -100
		}
	}
	s, _ := newSplitting(b)
	s.settle(1e-6, 20000, noLoad)
	for i := range n - 1 {
		x, z := at(i + 1)
		within(t, "along", b.place[0][i], x, 1e-2)
		within(t, "down", b.place[2][i], z, 1e-2)
	}
	v, _ := s.force(n / 2)
	within(t, "thrust", math.Abs(v.X), w*span*span/(8*sag), 1e-2)
}
