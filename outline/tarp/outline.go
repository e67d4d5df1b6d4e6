package tarp

import (
	"math"

	"slingloft/outline/design"
	"slingloft/outline/geom"
	"slingloft/outline/hung"
	"slingloft/outline/piece"
)

// flatOutline is half a sheet as it lies flat, on the left of its ridge: x along the
// ridge from its middle, the foot end at x > 0, y down the slope from the ridge.
//
//	      ┌─────side─────┐
//	head ╱                ╲ foot
//	    └──────ridge───────┘
type flatOutline struct {
	ridge, foot, side, head Edge // counter-clockwise
}

// sharpest is the least angle of a corner that can be hemmed, rad: own choice.
const sharpest = 25 * math.Pi / 180

// outlineOf returns half of a sheet of a size. The error is a [hung.Impossible].
func outlineOf(t design.Tarp, s Size) (flatOutline, error) {
	var o flatOutline
	end, corner := geom.Pt(s.Ridge/2, 0), geom.Pt(s.Side/2, s.Width/2)
	other := func(p geom.Point) geom.Point { return geom.Pt(-p.X, p.Y) }
	for _, e := range []struct {
		to       *Edge
		from, on geom.Point
		hollow   float64
	}{
		{&o.ridge, other(end), end, t.RidgeHollow}, {&o.foot, end, corner, t.Hollow},
		{&o.side, corner, other(corner), t.Hollow}, {&o.head, other(corner), other(end), t.Hollow},
	} {
		var err error
		if *e.to, err = edgeOf(e.from, e.on, e.hollow, t.Curve); err != nil {
			return o, err
		}
	}
	return o, o.cornered(t, s)
}

// cornered refuses corners that are too sharp to be hemmed.
func (o flatOutline) cornered(t design.Tarp, s Size) error {
	slope := math.Atan2(s.Width, s.Ridge-s.Side) // of an end's straight line, up from the ridge
	ridge := o.ridge.turn()
	if slope-ridge < sharpest {
		reach := s.Width / math.Tan(sharpest+ridge+o.foot.turn())
		return &hung.Impossible{Key: design.KeyTarpSide, Found: design.Found(design.TarpCornerSharp),
			Bound: design.AtLeast, Limit: s.Ridge - reach}
	}
	if half := s.Width / 2; o.side.Sag+o.ridge.Sag > waist*half {
		return &hung.Impossible{Key: design.KeyTarpHollow, Found: design.Found(design.TarpWaist), Bound: design.AtMost,
			Limit: max(math.Floor((waist*half-o.ridge.Sag)/s.Side*1e3)/1e3, 0)}
	}
	if o.foot.turn()+ridge+sharpest <= slope && o.foot.turn()+o.side.turn()+sharpest <= math.Pi-slope {
		return nil
	}
	// Of all curves hollow by the part h the arc turns most, by 2 atan 2h.
	room := min(slope-ridge-sharpest, (math.Pi-slope-sharpest)/2)
	return &hung.Impossible{Key: design.KeyTarpHollow, Found: design.Found(design.TarpEdgesMeet), Bound: design.AtMost,
		Limit: math.Floor(math.Tan(room/2)/2*1e3) / 1e3}
}

// waist is the part of its half that hollow edges may take of a sheet in the middle: own
// choice.
const waist = 0.5

// holds reports whether a point of the half lies on the cloth, the ridge taken straight.
func (o flatOutline) holds(x, y float64) bool {
	p := geom.Pt(x, y)
	return o.foot.inside(p) && o.side.inside(p) && o.head.inside(p)
}

// hemLies refuses a hem that is too wide for the curve of an edge.
func (o flatOutline) hemLies(hem float64) error {
	sharp := max(o.foot.bend(), o.side.bend())
	if 2*hem*sharp <= piece.HemGives {
		return nil
	}
	return &hung.Impossible{Key: design.KeyTarpHem, Found: design.Found(design.HemGives, 200*hem*sharp),
		Bound: design.AtMost, Limit: piece.HemGives / (2 * sharp)}
}

// bend returns the edge's greatest curvature, 1/mm: of all three curves it is in the
// middle, where they run level.
func (e Edge) bend() float64 {
	if e.curve == nil {
		return 0
	}
	step := e.chord / 1000
	return 2 * (e.curve.Depth(0) - e.curve.Depth(step)) / (step * step)
}

// patchPart is the part of its shortest edge that a corner's patch may reach along: own
// choice, so that two of them leave cloth between.
const patchPart = 0.4

// patchFits refuses patches that meet along an edge.
func (o flatOutline) patchFits(reach float64) error {
	if most := patchPart * min(o.foot.chord, o.side.chord); reach > most {
		return &hung.Impossible{Key: design.KeyTarpPatch, Found: design.Found(design.PatchesMeet), Bound: design.AtMost, Limit: most}
	}
	return nil
}
