package geom

import "math"

// Box is an axis-parallel rectangle, its edges included. The zero value is the
// single point at the origin; [EmptyBox] holds nothing.
type Box struct{ Min, Max Point }

// EmptyBox returns the box that holds no point, the start of a union.
func EmptyBox() Box {
	inf := math.Inf(1)
	return Box{Point{inf, inf}, Point{-inf, -inf}}
}

// BoxOf returns the smallest box around pts, empty where there are none.
func BoxOf(pts ...Point) Box {
	b := EmptyBox()
	for _, p := range pts {
		b = b.With(p)
	}
	return b
}

// With returns the smallest box that holds b and p.
func (b Box) With(p Point) Box {
	return Box{
		Point{min(b.Min.X, p.X), min(b.Min.Y, p.Y)},
		Point{max(b.Max.X, p.X), max(b.Max.Y, p.Y)},
	}
}

// Union returns the smallest box that holds b and c.
func (b Box) Union(c Box) Box {
	if c.Empty() {
		return b
	}
	return b.With(c.Min).With(c.Max)
}

// Empty reports whether b holds no point.
func (b Box) Empty() bool { return b.Min.X > b.Max.X || b.Min.Y > b.Max.Y }

// Width returns the extent along x in mm, 0 for an empty box.
func (b Box) Width() float64 { return math.Max(0, b.Max.X-b.Min.X) }

// Height returns the extent along y in mm, 0 for an empty box.
func (b Box) Height() float64 { return math.Max(0, b.Max.Y-b.Min.Y) }

// Center returns the middle of b.
func (b Box) Center() Point { return b.Min.Towards(b.Max, 0.5) }

// Expanded returns b with every side moved outwards by d mm (inwards if negative).
func (b Box) Expanded(d float64) Box {
	return Box{Point{b.Min.X - d, b.Min.Y - d}, Point{b.Max.X + d, b.Max.Y + d}}
}

// Contains reports whether p lies in b or on its edge.
func (b Box) Contains(p Point) bool {
	return p.X >= b.Min.X && p.X <= b.Max.X && p.Y >= b.Min.Y && p.Y <= b.Max.Y
}

// ContainsBox reports whether c lies in b, edges touching allowed.
func (b Box) ContainsBox(c Box) bool { return b.Contains(c.Min) && b.Contains(c.Max) }

// Overlaps reports whether b and c reach into each other: edges that merely touch do
// not. A box without width or height reaches into another that it crosses inside, though
// they share no area; two that lie in one line do not.
func (b Box) Overlaps(c Box) bool {
	return b.Min.X < c.Max.X && c.Min.X < b.Max.X && b.Min.Y < c.Max.Y && c.Min.Y < b.Max.Y
}

// Common returns the part that b and c share, empty where they are apart.
func (b Box) Common(c Box) Box {
	return Box{
		Min: Pt(max(b.Min.X, c.Min.X), max(b.Min.Y, c.Min.Y)),
		Max: Pt(min(b.Max.X, c.Max.X), min(b.Max.Y, c.Max.Y)),
	}
}

// Ring returns the box as a counter-clockwise rectangle from its lower left corner.
func (b Box) Ring() Ring {
	return Ring{b.Min, {b.Max.X, b.Min.Y}, b.Max, {b.Min.X, b.Max.Y}}
}
