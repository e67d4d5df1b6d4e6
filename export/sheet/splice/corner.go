package splice

import (
	"fmt"
	"math"

	"slingloft/export/sheet/given"
	"slingloft/export/sheet/picture"
	"slingloft/outline/cord"
	"slingloft/outline/geom"
	"slingloft/outline/piece"
)

// corner is a finished corner along a line, the bar's tip at 0: the side cord towards
// negative places, the leg towards positive ones, mm.
type corner struct {
	sideEntry, sideTaper, sideEnd float64 // of the leg's working end in the side cord
	legEntry, legTaper, legEnd    float64 // of the side cord's in the leg
}

// cornerOf returns the head corner of a set and whether it has one.
func cornerOf(s cord.Set) (corner, bool) {
	all := Splices(s)
	if len(all) < 3 {
		return corner{}, false
	}
	side, leg := all[1], all[2] // by the working end
	half := s.Splicing.Gap / 2
	_, taper := side.tail()
	_, other := leg.tail()
	return corner{
		sideEntry: -half, sideTaper: -half - leg.full() + other, sideEnd: -half - leg.full(),
		legEntry: half, legTaper: half + side.full() - taper, legEnd: half + side.full(),
	}, true
}

// Corner draws a finished corner, to scale along it: the tip in its gap, either cord's
// working end in the other, and where each shoulder lies at the other's entry mark. It has
// no size for a set of loops.
func Corner(d *given.Data) picture.Picture {
	say := d.Say.Splicing
	c, ok := cornerOf(d.Cords)
	if !ok {
		return picture.Picture{}
	}
	const room, margin, y, lift = 76.0, 6.0, 26.0, 2.6
	k := room / (c.legEnd - c.sideEnd)
	x := func(s float64) float64 { return margin + k*(s-c.sideEnd) }
	p := picture.Picture{ID: "splice-corner", Title: say.Corner.Title, Width: picture.Half, Height: 52,
		Desc: fmt.Sprintf(say.Corner.Desc, d.Rope(c.legEntry-c.sideEntry), d.Rope(c.sideEntry-c.sideEnd), d.Rope(c.legEnd-c.legEntry))}
	gap := func(side float64) geom.Polyline { // one of the two cords past the tip
		return curve(geom.Pt(x(c.sideEntry), y), geom.Pt(x(c.sideEntry/2), y+side*lift*0.7), geom.Pt(x(0), y+side*lift),
			geom.Pt(x(c.legEntry/2), y+side*lift*0.7), geom.Pt(x(c.legEntry), y))
	}
	rope(&p, sideLook(), gap(1), even(inner))
	rope(&p, legLook(), gap(-1), even(inner))
	filledTo := func(from, taper, end float64) func(float64) float64 { // from the entry on
		return tapering(filled, math.Abs(taper-from)*k, math.Abs(end-from)*k)
	}
	ends := func(thick func(float64) float64) func(float64) float64 { // but never thinner than one cord
		return func(s float64) float64 { return math.Max(thick(s), bare) }
	}
	left := geom.Polyline(finely(x(c.sideEntry), 0.5, y))
	right := geom.Polyline(finely(x(c.legEntry), p.Width-0.5, y))
	rope(&p, sideLook(), left, ends(filledTo(c.sideEntry, c.sideTaper, c.sideEnd)))
	rope(&p, legLook(), right, ends(filledTo(c.legEntry, c.legTaper, c.legEnd)))
	ghost(&p, legLook(), straight(x(c.sideEntry), x(c.sideEnd), y), tapering(inner, k*(c.sideEntry-c.sideTaper), k*(c.sideEntry-c.sideEnd)))
	ghost(&p, sideLook(), straight(x(c.legEntry), x(c.legEnd), y), tapering(inner, k*(c.legTaper-c.legEntry), k*(c.legEnd-c.legEntry)))
	p.Dot(picture.Main, geom.Pt(x(0), y), 1)
	for _, s := range []float64{c.sideEntry, c.legEntry} {
		stroke(&p, geom.Pt(x(s), y), filled)
	}
	up := y + 5
	backwards(&p, up, above, flag{geom.Pt(x(c.sideEntry), y+3.2), say.SideEntryLegShoulder})
	onwards(&p, up+row, above, flag{geom.Pt(x(c.legEntry), y+3.2), say.LegEntrySideShoulder})
	p.Line(picture.Quiet, picture.Hair, geom.Pt(x(0), y+1), geom.Pt(x(0), up+2*row-0.6))
	p.Write(picture.Text{Text: fmt.Sprintf(say.TipInGapOf, d.Rope(c.legEntry-c.sideEntry)), At: geom.Pt(x(0), up+2*row+1),
		Size: picture.Letter, Anchor: piece.Centre, Ink: picture.Main})
	text(&p, 1, up+3*row, say.SideCord)
	p.Write(picture.Text{Text: say.Leg, At: geom.Pt(p.Width-1, up+3*row), Size: picture.Letter, Anchor: piece.End, Ink: picture.Main})
	low := y - 3.6
	dim := func(a, b, at float64) { p.Level(geom.Pt(x(a), low), geom.Pt(x(b), low), at, d.Rope(b-a)) }
	dim(c.sideEnd, c.sideTaper, 15.4)
	dim(c.legTaper, c.legEnd, 15.4)
	dim(c.sideEnd, c.sideEntry, 8.6)
	dim(c.legEntry, c.legEnd, 8.6)
	text(&p, 1, 1.4, say.TapersAbove)
	return p
}

// parting is the way of a cord's centre line round a bar's tip in its gap, true to scale:
// from one end of the gap to the other, the tip's centre at the origin, mm.
func parting(reach, round float64) geom.Polyline {
	// Tangent from the end of the gap, then on the circle to its top.
	open := math.Acos(round / reach)
	out := geom.Polyline{{X: -reach}}
	const steps = 12
	for i := range steps + 1 {
		a := math.Pi - open - (math.Pi-2*open)*float64(i)/steps
		out = append(out, geom.Direction(a).Times(round))
	}
	return append(out, geom.Pt(reach, 0))
}

// Parting draws the gap with the bar's tip in it, true to scale: how both cords part round
// the tip. It has no size where the tip's thickness is not known.
func Parting(d *given.Data) picture.Picture {
	say := d.Say.Splicing
	t, err := tipOf(d)
	if !t.known || err != nil {
		return picture.Picture{}
	}
	tip, thick, gap, reach := t.pin, t.cord, t.gap, t.half
	k := math.Min(56/gap, 14/(tip+2*thick))
	p := picture.Picture{ID: "splice-parting", Title: say.Parting.Title,
		Desc:  fmt.Sprintf(say.Parting.Desc, d.Rope(gap), d.Thick(tip), d.Thick(thick)),
		Width: picture.Half, Height: k*(tip+2*thick) + 29}
	mid := geom.Pt(44, 15+k*(tip/2+thick))
	v := picture.View{Scale: k, Shift: mid}
	way := parting(reach, t.off())
	part(d, &p, v, way, t)
	p.Outline(picture.Bar, picture.Medium, geom.Polyline(geom.CirclePoints(mid, k*tip/2, 0.02)))
	p.Line(picture.Quiet, picture.Hair, mid, geom.Pt(58, p.Height-5))
	text(&p, 58.6, p.Height-4.4, fmt.Sprintf(say.Tip, d.Thick(tip)))
	text(&p, 2, p.Height-4.4, fmt.Sprintf(say.Cord, d.Thick(thick)))
	p.Line(picture.Quiet, picture.Hair, geom.Pt(14, p.Height-5), v.Line(way)[1].Towards(v.Line(way)[0], 0.4))
	low := mid.Y - k*(tip/2+thick)
	p.Level(v.At(geom.Pt(-reach, 0)), v.At(geom.Pt(reach, 0)), low-5, fmt.Sprintf(say.OnTip, d.Rope(2*reach)))
	text(&p, 2, 1.4, fmt.Sprintf(say.GapStraight, d.Rope(gap)))
	return p
}
