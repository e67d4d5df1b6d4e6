// Package sack sizes and builds stow sacks: one for the packed bed, with a round bottom
// or a flat one, and a long one for its bars.
//
// Lengths are mm, areas mm², volumes mm³ but where a type of package quantity says
// otherwise.
package sack

import (
	"math"

	"slingloft/outline/cord"
	"slingloft/outline/design"
	"slingloft/outline/quantity"
)

// litre is a litre in mm³.
const litre = 1e6

// slenderness is how many times as long as thick a filled sack is made where the design
// does not say how wide it is: own choice.
const slenderness = 1.6

// coilFill is the part of a coil of cord that is cord, where only its diameter is known:
// own choice.
const coilFill = 0.5

// Packed is what a sack has to hold.
type Packed struct {
	Cloth    float64         // mass of the bed's cloth, g
	Cords    []cord.Cord     // that lie with it
	Measured quantity.Litres // of all of it; 0: not measured
	Head     float64         // length of the head bar, cord to cord
	Foot     float64         // of the foot bar
	Bar      design.Bar
}

// PackedOf returns what the sacks of a design hold.
func PackedOf(d design.Design, cloth float64, cords []cord.Cord) Packed {
	return Packed{Cloth: cloth, Cords: cords, Measured: d.Sack.Volume, Head: d.Bed.HeadBar, Foot: d.Bed.FootBar, Bar: d.Bar}
}

// Volume returns the volume of the packed bed: as it was measured, or that of cloth and
// cords by their masses at a packed density. A cord of unknown mass takes twice its own
// volume.
func (p Packed) Volume(at quantity.KilogramsPerCubicMetre) quantity.Litres {
	if p.Measured > 0 {
		return p.Measured
	}
	grams, coils := p.Cloth, 0.0
	for _, c := range p.Cords {
		long := float64(c.Count) * c.Cut
		if mass := c.Kind.LinearDensity; mass > 0 {
			grams += mass.Grams(long)
		} else {
			coils += float64(math.Pi/4*c.Kind.Diameter*c.Kind.Diameter*long) / coilFill
		}
	}
	return quantity.Litres(grams/float64(at) + coils/litre) // 1 kg/m³ is 1 g/l
}

// Size is how large a filled sack is.
type Size struct {
	Volume quantity.Litres // that it holds, closed
	Thick  float64         // diameter, or side of the square
	Long   float64         // from its bottom to where it is closed
	Wall   float64         // finished height of its wall, up to the mouth's edge
}

// sizeOf returns the sack for a volume. What is left to the program is rounded up to the
// steps of a hand: 5 mm or a quarter of an inch.
func sizeOf(d design.Design, v quantity.Litres) Size {
	step := 5.0
	if d.Output.Inches {
		step = quantity.Inch / 4
	}
	up := func(x float64) float64 { return math.Ceil(x/step-1e-9) * step }
	area, wide, half := math.Pi/4, 1.0, 0.5
	if d.Sack.Base == design.FlatBase {
		// Filled, a flat sack of the width w stands as a square of the side w/2; it is drawn
		// together from its corners to the middle.
		area, wide, half = 1, 0.5, math.Sqrt2/2
	}
	s := Size{Thick: wide * d.Sack.Width}
	if d.Sack.Width == 0 {
		s.Thick = wide * up(math.Cbrt(float64(v)*litre/(area*slenderness))/wide)
	}
	section := float64(area * s.Thick * s.Thick)
	s.Long = up(float64(v) * litre / section)
	s.Volume = quantity.Litres(section * s.Long / litre)
	s.Wall = s.Long + up(half*s.Thick)
	return s
}

// Bundle is the bars as they lie in their sack.
type Bundle struct {
	Parts int     // how many lie side by side
	Long  float64 // of the longest
	Girth float64 // shortest line around them
}

// bundleOf returns the bundle of both bars: side by side, or where they are sectional the
// four halves on each other in two layers. Around circles in contact the shortest line is
// one circumference and a diameter for each straight stretch.
func bundleOf(p Packed) Bundle {
	long := max(p.Head, p.Foot) // a bar with its tips
	if p.Bar.Joint > 0 {
		return Bundle{Parts: 4, Long: (long + p.Bar.Joint) / 2, Girth: (math.Pi + 4) * p.Bar.Outer}
	}
	return Bundle{Parts: 2, Long: long, Girth: (math.Pi + 2) * p.Bar.Outer}
}
