package nest

import (
	"math"
	"slices"
)

// This file deals with outlines whose coordinates are all multiples of one
// unit, as in drawn puzzles and in parts made of plain rectangles. Their best
// lays hold stacks that fill the width exactly, with no play that a search by
// samples could find. So it searches in a strip that is wider by widening, and
// what it finds is settled: set on the grid where it is close to it, and freed
// of the overlaps that are left in the true width. Widening the strip is from
// Gardeyn et al. 2025; setting on the grid is our own.

// The widening is a fraction of the height, but small against the unit, so that only what
// belongs on the grid is taken there.
const (
	wideningShare = 1e-4
	wideningUnits = 0.05
)

// gridOf returns the largest of 1, 1/2 and 1/4 mm of which all sizes in the
// problem are multiples, 0 where there is none.
func (p *problem) gridOf() float64 {
	all := []float64{p.height, p.stock.Gap, p.stock.Margin}
	for _, f := range p.atlas.forms {
		for _, v := range f.ring {
			all = append(all, v.X-f.ring[0].X, v.Y-f.ring[0].Y)
		}
		all = append(all, f.size.X, f.size.Y, f.off.X, f.off.Y)
	}
	for _, b := range p.flaws {
		all = append(all, b.at.X, b.at.Y)
	}
	for _, q := range []float64{1, 0.5, 0.25} {
		if !slices.ContainsFunc(all, func(v float64) bool { return math.Mod(v, q) != 0 }) {
			return q
		}
	}
	return 0
}

// setGrid turns to searching on the grid, if there is one.
func (p *problem) setGrid() {
	if p.grid = p.gridOf(); p.grid > 0 {
		p.widening = min(wideningShare*p.height, wideningUnits*p.grid)
		p.atlas.grow = -p.safety // pieces on the grid touch without overlap
	}
}

// leaveGrid turns to searching as if there were no grid.
func (p *problem) leaveGrid() {
	p.grid, p.widening, p.atlas.grow = 0, 0, p.safety
	p.atlas.ready()
	p.setBeds(1)
}

// settle turns the free lay that the draft holds into one that fits the true
// height, and reports whether it could.
func (s *search) settle() bool {
	c := s.mover.c
	if c.widening == 0 {
		return true
	}
	found := slices.Clone(c.spots[:c.n])
	length := c.length
	defer func() { c.widening = s.p.widening }()
	c.widening = 0
	for _, alongToo := range []bool{true, false} {
		c.load(s.onGrid(found, alongToo), length)
		if c.totalLoss() == 0 {
			return true
		}
	}
	return s.separate(1, 20)
}

// onGrid returns spots moved into the true height, and onto the grid where they
// are close to it: across, and along as well if asked.
func (s *search) onGrid(spots []spot, along bool) []spot {
	c := s.mover.c
	near := 2 * s.p.widening
	snap := func(v float64) float64 {
		if g := float64(math.Round(v/s.p.grid) * s.p.grid); math.Abs(g-v) <= near {
			return g
		}
		return v
	}
	out := slices.Clone(spots)
	for i := range out {
		at := &out[i].at
		at.Y = snap(at.Y)
		if along {
			at.X = snap(at.X)
		}
		out[i] = c.fit(out[i])
	}
	return out
}
