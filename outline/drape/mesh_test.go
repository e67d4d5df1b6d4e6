package drape

import (
	"math"
	"testing"

	"slingloft/outline/geom"
)

// leaf is a bed with hollow sides, narrower tails, a curved head end and a foot
// end that is hollow the other way.
func leaf() *Pattern {
	p := &Pattern{}
	run := 0.0
	for u := -880.0; u <= 850; u += 10 {
		v := 430 + 180*u*u/700/700
		if a := math.Abs(u); a > 700 {
			v = 610 - 0.2*(a-700)
		}
		if n := len(p.Side); n > 0 {
			run += geom.Pt(u, v).Dist(p.Side[n-1])
		}
		p.Side, p.Cord = append(p.Side, geom.Pt(u, v)), append(p.Cord, run)
		if u == -700 {
			p.Tips[0] = run
		}
		if u == 700 {
			p.Tips[1] = run
		}
	}
	for k := range 11 {
		f := float64(k) / 10
		c, d := p.Side[0], p.Side[len(p.Side)-1]
		p.Ends[0] = append(p.Ends[0], geom.Pt(-840+f*f*(c.X+840), f*c.Y))
		p.Ends[1] = append(p.Ends[1], geom.Pt(870+f*f*(d.X-870), f*d.Y))
	}
	return p
}

// The mesh covers the pattern once: its triangles are all turned alike, none is a
// sliver, every inner edge has two of them, and their areas make up the pattern's.
func TestMeshCovers(t *testing.T) {
	p := leaf()
	outline := append([]geom.Point(nil), p.Ends[0]...)
	outline = append(outline, p.Side[1:]...)
	for i := len(p.Ends[1]) - 2; i >= 0; i-- {
		outline = append(outline, p.Ends[1][i])
	}
	want := 0.0
	for i, q := range outline {
		want -= q.Cross(outline[(i+1)%len(outline)]) / 2
	}
	for _, cell := range []float64{60, 40, 20} {
		m := newMesh(p, cell, min(cell, 125.0/8), 150)
		sum, edges := 0.0, map[[2]int]int{}
		for _, f := range m.faces {
			a, b, c := m.flat[f[0]], m.flat[f[1]], m.flat[f[2]]
			area := b.Minus(a).Cross(c.Minus(a)) / 2
			sum += area
			longest := max(a.Dist(b), b.Dist(c), c.Dist(a))
			if height := 2 * area / longest; !(height > 0.1*min(cell, 20)) {
				t.Errorf("cell %g: triangle %v %v %v is %.2f high", cell, a, b, c, height)
			}
			for k := range 3 {
				i, j := f[k], f[(k+1)%3]
				edges[[2]int{min(i, j), max(i, j)}]++
			}
		}
		// The side is straight from chain to chain: its sagitta of up to
		// 7.3e-4/mm · cell²/8 is missed on a width of 430 mm or more.
		within(t, "area", sum/want, 1, 7.3e-4*cell*cell/8/430)
		free := 0
		for _, n := range edges {
			if n == 1 {
				free++
			} else if n != 2 {
				t.Errorf("an edge has %d triangles", n)
			}
		}
		around := 2*(len(m.chains)-1) + len(m.chains[0]) + len(m.chains[len(m.chains)-1]) - 2
		if free != around {
			t.Errorf("cell %g: %d free edges, want %d", cell, free, around)
		}
		for e, k := range m.tips {
			within(t, "cord to a tip", m.cord[k], p.Tips[e], 1e-9)
		}
	}
}

// Load is shared as on a beam, and past the last discs none is lost.
func TestWeightShare(t *testing.T) {
	w := Weight{0, 300, 1, 4}
	a, b := w.share(100, 200, 100, 200)
	// 250 N from 2 to 3 N/mm: moments about b and about a.
	within(t, "near", a, 100+100.0/6, 1e-9)
	within(t, "far", b, 100+100.0/3, 1e-9)
	a, b = w.share(math.Inf(-1), math.Inf(1), 100, 200)
	within(t, "all", a+b, 750, 1e-9)
	within(t, "near with all before it", a, 150+100+100.0/6, 1e-9)
	a, b = w.share(400, 500, 400, 500)
	within(t, "none", a+b, 0, 0)
}
