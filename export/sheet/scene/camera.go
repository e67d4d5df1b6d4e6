package scene

import (
	"math"

	"slingloft/outline/geom"
)

// camera is a parallel view: unit vectors to the right and up on paper, and
// towards the viewer.
type camera struct{ right, up, out geom.Point3 }

// newCamera looks from the given bearing round z, counted from x, and height.
func newCamera(bearing, height float64) camera {
	sb, cb := math.Sincos(bearing)
	sh, ch := math.Sincos(height)
	out := geom.Pt3(cb*ch, sb*ch, sh)
	right := geom.Pt3(-sb, cb, 0)
	return camera{right, out.Cross(right), out}
}

func (c camera) flat(p geom.Point3) geom.Point { return geom.Pt(p.Dot(c.right), p.Dot(c.up)) }

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
