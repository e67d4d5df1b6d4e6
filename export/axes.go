package export

import (
	"slingloft/outline/design"
	"slingloft/outline/geom"
)

// Axes says how a machine counts: from which corner and which way. The sheet on the
// machine stays as it is; only the numbers change. The zero value counts from the
// lower left corner, x to the right and y up. Only formats that drive a machine
// follow it, see [Format].
type Axes struct {
	Origin design.Corner
	XLeft  bool // x counts to the left
	YDown  bool // y counts downwards
	Swap   bool // what is y here is called x on the machine, and the other way round
}

// Apply returns the machine's numbers for the point p of a sheet of the given
// size, in mm.
func (a Axes) Apply(p geom.Point, width, height float64) geom.Point {
	p = p.Minus(a.Zero(width, height))
	if a.XLeft {
		p.X = -p.X
	}
	if a.YDown {
		p.Y = -p.Y
	}
	if a.Swap {
		p.X, p.Y = p.Y, p.X
	}
	return p
}

// Zero returns where on a sheet of the given size, in mm, the machine counts from.
func (a Axes) Zero(width, height float64) geom.Point {
	switch a.Origin {
	case design.LowerRight:
		return geom.Pt(width, 0)
	case design.UpperRight:
		return geom.Pt(width, height)
	case design.UpperLeft:
		return geom.Pt(0, height)
	case design.Middle:
		return geom.Pt(width/2, height/2)
	}
	return geom.Point{}
}

// Below reports whether any place on a sheet has a number below zero.
func (a Axes) Below() bool {
	for _, p := range [2]geom.Point{a.Apply(geom.Pt(0, 0), 1, 1), a.Apply(geom.Pt(1, 1), 1, 1)} {
		if p.X < 0 || p.Y < 0 {
			return true
		}
	}
	return false
}

// Mirrors reports whether a turn to the left is one to the right in the machine's
// numbers.
func (a Axes) Mirrors() bool { return a.XLeft != a.YDown != a.Swap }

// Validate reports a corner that is none.
func (a Axes) Validate() error {
	if a.Origin < design.LowerLeft || a.Origin > design.Middle {
		return Refuse(OriginUnknown, a.Origin)
	}
	return nil
}
