// Package designtest makes random but plausible designs for property tests.
package designtest

import (
	"math"
	"math/rand/v2"

	"slingloft/outline/design"
	"slingloft/outline/quantity"
)

// Design returns a random design: any sleeper, bars of different lengths, either
// load, every control and second condition. Most of them have a hung shape; the
// rest must be refused by name. The same source gives the same design.
func Design(r *rand.Rand) design.Design {
	between := func(a, b float64) float64 { return a + (b-a)*r.Float64() }
	d := design.Defaults()
	d.Name = "sample"
	d.Sleeper = design.Sleeper{Stature: between(1400, 2050), Mass: quantity.Kilograms(between(35, 180))}
	d.Bed = bed(r, between)
	d.Sleeper.Stature = math.Min(d.Sleeper.Stature, d.Bed.Span+d.Bed.HeadTail+d.Bed.FootTail-40)
	room := d.Bed.Span + d.Bed.HeadTail + d.Bed.FootTail - d.Sleeper.Stature
	d.Sleeper.Crown = -d.Bed.HeadTail + 10 + between(0, room-20)
	if r.IntN(3) == 0 {
		d.Load.Model = design.Even
		if r.IntN(2) == 0 {
			d.Load.From = between(-d.Bed.HeadTail*0.8, d.Bed.Span*0.3)
			d.Load.To = between(d.Bed.Span*0.6, d.Bed.Span+d.Bed.FootTail*0.8)
		}
	}
	d.Side = design.Cord{Name: "cord", Diameter: between(1.8, 5)}
	d.Leg = d.Side
	d.Splice.TipGap = 20
	d.Bar = design.Bar{Name: "tube", Outer: between(14, 30), Wall: 1.2, Density: 2700, Modulus: 69000, Yield: 240}
	d.Cloth.Name, d.Cloth.Width, d.Cloth.ArealDensity = "cloth", 2500, quantity.GramsPerSquareMetre(between(30, 200))
	sewn(r, between, &d)
	d.Sheet.Name, d.Sheet.Width, d.Sheet.Height = "board", 900, 600
	d.Sheet.Kerf, d.Sheet.Gap, d.Sheet.Thickness = 0.2, 3, 3
	d.Template.Tick, d.Template.Backing, d.Template.Letter = 25, 50, 5
	return d
}

// sewn picks channels, seams and hems that can be sewn: what a channel holds fits in
// beside its rows, and a hem lies flat on the curve of a hollow edge.
func sewn(r *rand.Rand, between func(a, b float64) float64, d *design.Design) {
	d.Channel.TurnUnder, d.Channel.Foot = 8, 2
	d.Seam.Rows, d.Seam.RowSpacing = 1+r.IntN(2), 6
	d.Seam.Side, d.Seam.End, d.Seam.Cap, d.Seam.Join = between(6, 20), between(6, 20), between(6, 20), 15
	rows := float64(d.Seam.Rows-1) * d.Seam.RowSpacing
	d.Channel.Depth = max(d.Seam.Side+d.Side.Diameter+d.Channel.Foot, rows+d.Passage().Bury) + between(0, 20)
	// The usual working errors of the longest side cord here: two marks, the scatter in
	// two buries, what a first load adds.
	a := d.Accuracy
	d.Channel.Opening = d.OpeningFor(2*a.Marking + 2*a.Scatter*63*d.Side.Diameter + a.Set*1.2*d.Bed.Span)
	d.Cap.Hem = between(8, 25)
	if r.IntN(2) == 0 {
		// A parabola of chord c and dip f is sharpest in its middle, 8 f/c²; a cap's top
		// is hardly narrower than six tenths of the bar.
		c := 0.6 * min(d.Bed.HeadBar, d.Bed.FootBar)
		d.Cap.Hollow = between(5, max(6, min(60, 0.04*c*c/(16*d.Cap.Hem))))
	}
}

// bed returns a random bed.
func bed(r *rand.Rand, between func(a, b float64) float64) design.Bed {
	b := design.Bed{
		Span: between(900, 1900), HeadBar: between(600, 1150),
		HeadTail: between(60, 320), FootTail: between(60, 320),
		HeadRadius: between(80, 200),
	}
	b.FootBar = b.HeadBar * between(0.75, 1.1)
	b.SeatRadius, b.FootRadius = b.HeadRadius, b.HeadRadius
	if r.IntN(4) == 0 {
		b.SeatRadius, b.FootRadius = b.HeadRadius*between(0.85, 1.15), b.HeadRadius*between(0.85, 1.15)
	}
	b.HeadValue = b.HeadRadius + between(120, 380)
	b.HeadLeg, b.FootLeg = b.HeadBar*between(0.75, 1.4), b.FootBar*between(0.75, 1.4)
	if r.IntN(5) == 0 {
		b.Lift = quantity.Radians(between(-0.08, 0.08))
	}
	control(r, between, &b)
	second(r, between, &b)
	if r.IntN(4) == 0 {
		b.Cut = design.Straight
	}
	return b
}

// control picks what fixes the thrust.
func control(r *rand.Rand, between func(a, b float64) float64, b *design.Bed) {
	switch r.IntN(6) {
	case 0:
		b.Control, b.ControlValue = design.HeadAngle, design.ControlMeasure(between(0.25, 0.7))
	case 1:
		b.Control, b.ControlValue = design.FootAngle, design.ControlMeasure(between(0.25, 0.7))
	case 2:
		b.Control, b.ControlValue = design.Thrust, design.ControlMeasure(between(250, 1200))
	default:
		b.Control, b.ControlValue = design.SideDepth, design.ControlMeasure(b.Span*between(0.07, 0.17))
	}
}

// second picks what fixes the foot end's height.
func second(r *rand.Rand, between func(a, b float64) float64, b *design.Bed) {
	switch r.IntN(5) {
	case 0:
		b.Second, b.SecondValue = design.FootDrop, b.HeadValue*between(0.75, 1.05)
	case 1:
		b.Second, b.SecondValue = design.FootGirth, b.FootBar*between(1.25, 1.6)
	case 2:
		b.Second = design.LevelHooks
	}
}
