// Package scanx stands in for a module of that name, which states no licence. Canvas
// names its scanner in a method that Slingloft never calls.
package scanx

import "golang.org/x/image/math/fixed"

// Scanner takes the outline of an area, in pixels, and keeps nothing.
type Scanner struct{}

// Start begins a contour.
func (*Scanner) Start(fixed.Point26_6) {}

// Line adds a side to the contour.
func (*Scanner) Line(fixed.Point26_6) {}
