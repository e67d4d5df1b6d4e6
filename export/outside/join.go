package outside

import (
	"math"

	"slingloft/export"
	"slingloft/outline/geom"
)

// Meet is how far apart two ends may lie that are taken for one, mm.
const Meet = 0.05

// end is one end of an open path: its start or its last point.
type end struct {
	path int
	last bool
}

// chain joins open paths whose ends meet.
type chain struct {
	paths []path
	used  []bool
	cells map[[2]int64][]end
}

// closed returns the closed paths, and those that open ones make when they are
// joined.
func closed(paths []path) ([]ring, error) {
	var out []ring
	c := chain{cells: map[[2]int64][]end{}}
	for _, p := range paths {
		n := len(p.points)
		if !p.closed && (n < 4 || p.points[0].Dist(p.points[n-1]) > Meet) {
			c.add(p)
			continue
		}
		r, err := newRing(p)
		if err != nil {
			return nil, err
		}
		out = append(out, r)
	}
	for i := range c.paths {
		if c.used[i] {
			continue
		}
		p, err := c.from(i)
		if err != nil {
			return nil, err
		}
		r, err := newRing(p)
		if err != nil {
			return nil, err
		}
		out = append(out, r)
	}
	return out, nil
}

func cellOf(p geom.Point) [2]int64 {
	return [2]int64{int64(math.Floor(p.X / Meet)), int64(math.Floor(p.Y / Meet))}
}

func (c *chain) add(p path) {
	i := len(c.paths)
	c.paths, c.used = append(c.paths, p), append(c.used, false)
	for _, e := range []end{{i, false}, {i, true}} {
		cell := cellOf(c.at(e))
		c.cells[cell] = append(c.cells[cell], e)
	}
}

// at returns the point of an end.
func (c *chain) at(e end) geom.Point {
	if pts := c.paths[e.path].points; e.last {
		return pts[len(pts)-1]
	}
	return c.paths[e.path].points[0]
}

// near returns the nearest end of a path that is not used yet, no farther than
// Meet from p.
func (c *chain) near(p geom.Point) (end, bool) {
	var best end
	least, cell := Meet, cellOf(p)
	found := false
	for dx := int64(-1); dx <= 1; dx++ {
		for dy := int64(-1); dy <= 1; dy++ {
			for _, e := range c.cells[[2]int64{cell[0] + dx, cell[1] + dy}] {
				if d := c.at(e).Dist(p); !c.used[e.path] && d <= least {
					best, least, found = e, d, true
				}
			}
		}
	}
	return best, found
}

// from follows path i to where it comes back to its start.
func (c *chain) from(i int) (path, error) {
	out := c.paths[i]
	out.points = append(geom.Polyline(nil), out.points...)
	c.used[i] = true
	start := out.points[0]
	for {
		tail := out.points[len(out.points)-1]
		if len(out.points) > 2 && tail.Dist(start) <= Meet {
			out.points = out.points[:len(out.points)-1]
			return out, nil
		}
		e, ok := c.near(tail)
		if !ok {
			return out, c.open(out, i)
		}
		c.used[e.path] = true
		pts := c.paths[e.path].points
		if e.last {
			pts = pts.Reversed()
		}
		out.points = append(out.points, pts[1:]...)
	}
}

// open returns the error for a chain of paths that does not close.
func (c *chain) open(p path, first int) error {
	tail := p.points[len(p.points)-1]
	err := export.Refuse(export.PathOpen, p.fault(), tail.Dist(p.points[0]), tail.X, tail.Y)
	least := math.Inf(1)
	var other path
	for i, q := range c.paths {
		if i == first || c.used[i] {
			continue
		}
		for _, e := range []end{{i, false}, {i, true}} {
			if d := c.at(e).Dist(tail); d < least {
				least, other = d, q
			}
		}
	}
	if least < tail.Dist(p.points[0]) {
		return export.Refuse(export.PathEndsNear, p.fault(), least, other.fault(), tail.X, tail.Y)
	}
	return err
}
