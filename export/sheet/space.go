package sheet

import (
	"math"

	"slingloft/outline/geom"
)

// vec is a point or direction in space, mm.
type vec struct{ x, y, z float64 }

func (a vec) minus(b vec) vec { return vec{a.x - b.x, a.y - b.y, a.z - b.z} }

func (a vec) times(k float64) vec { return vec{a.x * k, a.y * k, a.z * k} }

func (a vec) plus(b vec) vec { return vec{a.x + b.x, a.y + b.y, a.z + b.z} }

func (a vec) dot(b vec) float64 { return a.x*b.x + a.y*b.y + a.z*b.z }

func (a vec) cross(b vec) vec {
	return vec{a.y*b.z - a.z*b.y, a.z*b.x - a.x*b.z, a.x*b.y - a.y*b.x}
}

func (a vec) unit() vec {
	if l := math.Sqrt(a.dot(a)); l > 0 {
		return a.times(1 / l)
	}
	return a
}

// camera is a parallel view: unit vectors to the right and up on paper, and
// towards the viewer.
type camera struct{ right, up, out vec }

// newCamera looks from the given bearing round z, counted from x, and height.
func newCamera(bearing, height float64) camera {
	sb, cb := math.Sincos(bearing)
	sh, ch := math.Sincos(height)
	out := vec{cb * ch, sb * ch, sh}
	right := vec{-sb, cb, 0}
	return camera{right, out.cross(right), out}
}

func (c camera) flat(p vec) geom.Point { return geom.Pt(p.dot(c.right), p.dot(c.up)) }

// backToFront returns the order in which to paint n things in a row so that none
// covers what lies before it. Between each and the next is a plane with all that comes
// earlier on one side of it and all that comes later on the other; later(k) reports
// whether the viewer stands on the later side of the one behind thing k. What lies on
// the other side of a plane than the viewer cannot cover what lies on this one.
func backToFront(n int, later func(k int) bool) []int {
	if n == 0 {
		return nil
	}
	var first, last []int
	for k := range n - 1 {
		if later(k) {
			first = append(first, k)
		} else {
			last = append(last, k)
		}
	}
	out := append(first, n-1)
	for i := len(last) - 1; i >= 0; i-- {
		out = append(out, last[i])
	}
	return out
}
