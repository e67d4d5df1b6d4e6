// Package scene draws the bed as it hangs: in space, from the side, from above and from
// its end.
package scene

import (
	"math"

	"slingloft/export/sheet/given"
	"slingloft/export/sheet/picture"
	"slingloft/outline/geom"
	"slingloft/outline/hung"
)

// bed is the hung bed that is drawn.
type bed struct{ *given.Data }

// ends returns the hung shape at the head and at the foot.
func (b bed) ends() (head, foot hung.EndShape) {
	return b.Shape.Ends[hung.Head], b.Shape.Ends[hung.Foot]
}

// barAt returns the station of an end's bar.
func (b bed) barAt(e hung.End) float64 { return e.Sign() * b.Design.Bed.Span / 2 }

// slope writes the hang angle of an end.
func (b bed) slope(e hung.EndShape) string { return b.Style.Angle(math.Atan(e.Slope)) }

// stations is at how many places a view along the bed is drawn.
const stations = 120

const (
	stub   = 140.0 // how much of a hang line is drawn past each apex, mm true
	margin = 13.0  // beside a view along the bed, mm on paper
)

// along returns the scale of a view along the bed, as wide as a page, and what moves its
// stations into it.
func (b bed) along() (scale, shift float64) {
	h, f := b.ends()
	left, right := h.ApexX-stub, f.ApexX+stub
	k := (picture.Wide - 2*margin) / (right - left)
	return k, margin - left*k
}

// joined returns a line from a point through others to another.
func joined(from geom.Point, through geom.Polyline, to geom.Point) geom.Polyline {
	return append(append(geom.Polyline{from}, through...), to)
}
