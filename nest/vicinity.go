package nest

import (
	"math"

	"slingloft/outline/geom"
)

// vicinity is what stands near one place of a piece: while the piece is moved
// by small steps, only that is asked for clashes. The numbers needed stand side
// by side in memory.
type vicinity struct {
	atlas     *atlas
	w, h      float64 // of the piece, the gap added
	reach     geom.Box
	neighbors []neighbor
}

type neighbor struct {
	x, y, right, top float64
	link             *link
	factor           float64 // weight times the link's
}

// survey gathers the bodies that piece i in form f can meet when its corner is
// in the box around at that reaches reach mm to every side.
func (v *vicinity) survey(c *crowd, i, f int, at geom.Point, reach float64) {
	gap := c.p.atlas.gap
	v.atlas, v.w, v.h = c.p.atlas, c.w[f]+gap, c.h[f]+gap
	v.reach = geom.Box{Min: at, Max: at}.Expanded(reach)
	v.neighbors = v.neighbors[:0]
	x, y := v.reach.Min.X, v.reach.Min.Y
	r, t := v.reach.Max.X+v.w, v.reach.Max.Y+v.h
	weight := c.weight[i*c.all : (i+1)*c.all]
	for j := range c.all {
		if c.x[j] >= r || c.right[j] <= x || c.y[j] >= t || c.top[j] <= y || j == i {
			continue
		}
		l := c.p.atlas.between(f, int(c.form[j]))
		v.neighbors = append(v.neighbors, neighbor{c.x[j], c.y[j], c.right[j], c.top[j], l, weight[j] * l.weigh})
	}
}

// cost is that of the crowd, for a corner within reach.
func (v *vicinity) cost(x, y, bound float64) float64 {
	r, t := x+v.w, y+v.h
	sum := 0.0
	for k := range v.neighbors {
		b := &v.neighbors[k]
		if b.x >= r || b.right <= x || b.y >= t || b.top <= y {
			continue
		}
		if d := v.atlas.depth(b.link, b.x-x, b.y-y); d > 0 {
			sum += float64(b.factor * math.Sqrt(d))
			if sum >= bound {
				return sum
			}
		}
	}
	return sum
}
