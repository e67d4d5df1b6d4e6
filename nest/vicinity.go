package nest

import (
	"math"

	"slingloft/outline/geom"
)

// neighbour is a piece or an obstacle that stands near one piece. While that one
// tries places, only its neighbours are asked for overlaps; what is needed for it
// stands side by side in memory.
type neighbour struct {
	form   int
	box    geom.Box // see atlas.box
	weight float64
}

// around appends to out the neighbours of piece i that reach into box.
func (c *draft) around(out []neighbour, i int, box geom.Box) []neighbour {
	weight := c.weight[i*c.all : (i+1)*c.all]
	for j, b := range c.boxes {
		if j != i && b.Overlaps(box) {
			out = append(out, neighbour{c.spots[j].form, b, weight[j]})
		}
	}
	return out
}

// cost returns the weighted loss of a piece at s among its neighbours, given up
// once it reaches bound.
func (a *atlas) cost(near []neighbour, s spot, bound float64) float64 {
	box := a.box(s)
	low, high := box.Min, box.Max
	sum := 0.0
	for k := range near {
		b := &near[k] // most are sorted out here, so that no box is copied
		if b.box.Min.X >= high.X || b.box.Max.X <= low.X || b.box.Min.Y >= high.Y || b.box.Max.Y <= low.Y {
			continue
		}
		l := a.between(s.form, b.form)
		if d := a.depth(l, b.box.Min.X-s.at.X, b.box.Min.Y-s.at.Y); d > 0 {
			sum += float64(b.weight * l.scale * math.Sqrt(d))
			if sum >= bound {
				return sum
			}
		}
	}
	return sum
}
