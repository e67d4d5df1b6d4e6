package finished

import (
	"slingloft/outline/bed"
	"slingloft/outline/geom"
	"slingloft/outline/hung"
)

// Change is by how much a made hammock differs from its design; lengths are mm,
// too long is positive.
type Change struct {
	Leg    [2][2]float64  // by [hung.End] and [bed.Side]
	Side   [2]float64     // side cords from tip to tip, by [bed.Side]
	Line   [2]float64     // hang lines from apex to anchor, by [hung.End]
	Bar    [2]float64     // by [hung.End]
	Girth  float64        // of the cloth, at every station
	Anchor [2]geom.Point3 // by how far each anchor has moved, by [hung.End]
}

// Plus returns the change with every part of d, times k, added.
func (c Change) Plus(d Change, k float64) Change {
	for e := range 2 {
		for s := range 2 {
			c.Leg[e][s] += float64(k * d.Leg[e][s])
		}
		c.Side[e] += float64(k * d.Side[e])
		c.Line[e] += float64(k * d.Line[e])
		c.Bar[e] += float64(k * d.Bar[e])
		c.Anchor[e] = c.Anchor[e].PlusTimes(d.Anchor[e], k)
	}
	c.Girth += float64(k * d.Girth)
	return c
}

// Times returns the change with every part times k.
func (c Change) Times(k float64) Change { return Change{}.Plus(c, k) }

// Part is one length that may come out wrong.
type Part int

// The parts, with the change of one of them in [Part.Change].
const (
	HeadLeftLeg Part = iota
	HeadRightLeg
	FootLeftLeg
	FootRightLeg
	LeftSide
	RightSide
	HeadLine
	FootLine
	Cloth // the girth at every station
	HeadBar
	FootBar
	HeadAnchor // higher
	FootAnchor // higher
	Parts      // how many there are
)

// LineOf returns the hang line of an end.
func LineOf(e hung.End) Part { return [2]Part{hung.Head: HeadLine, hung.Foot: FootLine}[e] }

// AnchorOf returns the anchor of an end.
func AnchorOf(e hung.End) Part { return [2]Part{hung.Head: HeadAnchor, hung.Foot: FootAnchor}[e] }

// LegsOf returns the legs of an end, by [bed.Side].
func LegsOf(e hung.End) [2]Part {
	return [2][2]Part{
		hung.Head: {bed.Left: HeadLeftLeg, bed.Right: HeadRightLeg}, hung.Foot: {bed.Left: FootLeftLeg, bed.Right: FootRightLeg},
	}[e]
}

// Legs returns all legs.
func Legs() []Part { return []Part{HeadLeftLeg, HeadRightLeg, FootLeftLeg, FootRightLeg} }

// String returns the part's identifier, as documents for other programs have it; left
// and right are those of one who lies on the back.
func (p Part) String() string {
	return [Parts]string{"head left leg", "head right leg", "foot left leg", "foot right leg", "left side cord", "right side cord",
		"head hang line", "foot hang line", "girth", "head bar", "foot bar", "head anchor", "foot anchor"}[p]
}

// MarshalText writes the part's identifier.
func (p Part) MarshalText() ([]byte, error) { return []byte(p.String()), nil }

// Change returns the change by which the part is mm longer, an anchor mm higher.
func (p Part) Change(mm float64) Change {
	var c Change
	switch p {
	case HeadLeftLeg:
		c.Leg[hung.Head][bed.Left] = mm
	case HeadRightLeg:
		c.Leg[hung.Head][bed.Right] = mm
	case FootLeftLeg:
		c.Leg[hung.Foot][bed.Left] = mm
	case FootRightLeg:
		c.Leg[hung.Foot][bed.Right] = mm
	case LeftSide:
		c.Side[bed.Left] = mm
	case RightSide:
		c.Side[bed.Right] = mm
	case HeadLine:
		c.Line[hung.Head] = mm
	case FootLine:
		c.Line[hung.Foot] = mm
	case Cloth:
		c.Girth = mm
	case HeadBar:
		c.Bar[hung.Head] = mm
	case FootBar:
		c.Bar[hung.Foot] = mm
	case HeadAnchor:
		c.Anchor[hung.Head].Z = mm
	case FootAnchor:
		c.Anchor[hung.Foot].Z = mm
	}
	return c
}
