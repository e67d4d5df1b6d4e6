package nest

import (
	"time"

	"slingloft/nest/cover"
	"slingloft/outline/geom"
)

// What the fields of a lay and its first lay may cost, in convex patches. With a patch
// taking some 15 µs on the machine that this was measured on, and a few hundred bytes,
// that is 2 s and 100 MB; and some 2 s for the first lay. A search that goes on for long
// may have more fields, the more the longer.
const (
	fieldPatches = 140_000
	perSecond    = 30_000      // of the time that is asked for
	mostPatches  = 2_500_000   // however long
	firstPatches = 200_000_000 // that are asked where a line leaves them
)

// levels are numbers of vertices that regions may have, from the finest to a box's.
func levels() []int { return []int{cover.Most, 28, 20, 16, 12, 10, 9, 8, 7, 6, 5, 4} }

// afford makes the covers of all regions coarser, those that the search uses and those of
// the first lay, as far as it takes to have what is counted on them in reasonable time
// and memory. A search of few steps over many outlines then asks the patches themselves:
// a field is worth its making only to who asks it often.
func (p *problem) afford(o Options) {
	a := p.atlas
	few := float64(fieldPatches)
	if o.Time > 0 {
		few = min(few+float64(perSecond*o.Time.Seconds()), mostPatches)
	}
	pairs := a.pairs()
	if a.coarser(func(s *shape) *[]geom.Ring { return &s.parts }, func() bool {
		return a.patchCount(pairs, func(s shape) int { return len(s.parts) }) <= few
	}) {
		a.plain = o.Time < time.Second
	}
	for i := range a.shapes {
		a.shapes[i].rough = a.shapes[i].parts
	}
	a.coarser(func(s *shape) *[]geom.Ring { return &s.rough }, func() bool { return p.firstCost() <= firstPatches })
}

// coarser goes through the levels until do says that the covers will do, and reports
// whether any were changed.
func (a *atlas) coarser(of func(*shape) *[]geom.Ring, do func() bool) bool {
	for k, most := range levels() {
		if k > 0 {
			for i := range a.shapes {
				if s := &a.shapes[i]; !s.solid && corners(*of(s)) > most {
					s.simple = cover.Simplified(s.simple, most)
					if parts, ok := cover.Convex(s.simple); ok {
						*of(s) = cover.Within(parts, s.region[0].Bounds())
					}
				}
			}
		}
		if do() {
			return k > 0
		}
	}
	return true
}

// keepToBoxes cuts all covers off at the boxes of their outlines.
func (a *atlas) keepToBoxes() {
	for i := range a.shapes {
		s := &a.shapes[i]
		box := s.region[0].Bounds()
		s.parts, s.rough = cover.Within(s.parts, box), cover.Within(s.rough, box)
	}
}

// corners returns the vertices of all parts.
func corners(parts []geom.Ring) int {
	n := 0
	for _, r := range parts {
		n += len(r)
	}
	return n
}

// pairs returns how many fields there are between two shapes, row by row, those of a
// pair in one of its two places.
func (a *atlas) pairs() []int {
	n := len(a.shapes)
	var quarters [][4]bool
	for range a.shapes {
		quarters = append(quarters, [4]bool{})
	}
	for _, f := range a.forms {
		quarters[f.shape][f.quarter] = true
	}
	out := make([]int, n*n)
	for i := range n {
		for j := i; j < n; j++ {
			var between [4]bool
			for q, has := range quarters[i] {
				for r, too := range quarters[j] {
					if has && too {
						between[(r-q)&3] = true
					}
				}
			}
			for _, has := range between {
				if has {
					out[i*n+j]++
				}
			}
		}
	}
	return out
}

// patchCount returns how many patches all fields have, before any that others cover are
// dropped, for shapes of so many parts.
func (a *atlas) patchCount(pairs []int, parts func(shape) int) float64 {
	sum := 0.0
	for i, s := range a.shapes {
		for j, t := range a.shapes {
			sum += float64(pairs[i*len(a.shapes)+j] * parts(s) * parts(t))
		}
	}
	return sum
}

// firstCost returns about how many patches the first lay asks where a line leaves them.
func (p *problem) firstCost() float64 {
	poses, parts := 0.0, 0.0
	for _, pc := range p.pieces {
		poses += float64(len(pc.poses))
		parts += float64(len(p.atlas.shapes[p.atlas.forms[pc.poses[0].form].shape].rough))
	}
	n := float64(len(p.pieces))
	return poses * n / 2 * float64(p.triesOf()) * (parts / max(n, 1)) * (parts / max(n, 1))
}
