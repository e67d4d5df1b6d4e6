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

// roundEye is one half of the way of a loop's centre line round a pin, true to scale: from
// the throat, reach away from the pin's centre, to the far side of the pin, the centre at the
// origin, mm.
func roundEye(reach, round float64) geom.Polyline {
	out := geom.Polyline{{X: -reach}}
	from := math.Pi - math.Acos(round/reach)
	const steps = 24
	for i := range steps + 1 {
		out = append(out, geom.Direction(from*(1-float64(i)/steps)).Times(round))
	}
	return out
}

// OnPin draws the eye of a head leg on its pin while the chain is read, true to scale, with
// the tape beside it: its nought lies at the middle of the pin. It has no size for a set of
// loops, which has no such eye.
func OnPin(d *given.Data) picture.Picture {
	say, thick := d.Say.Splicing, d.Design.Leg.Diameter
	var throat cord.Node
	for _, n := range d.Cords.Nodes(cord.LightPull) {
		if n.Part == cord.HeadLeg && n.Spot.Kind == cord.Throat {
			throat = n
		}
	}
	_, reach, err := d.Cords.Splicing.Eye(thick)
	if throat.At == 0 || err != nil {
		return picture.Picture{}
	}
	hook := d.Cords.Splicing.Hook
	round := (hook + thick) / 2
	k := min(44/(reach+round), 9/round)
	half := k * (round + thick/2)
	y := half + 19
	p := picture.Picture{ID: "splice-on-pin", Title: say.OnPin.Title, Width: picture.Half, Height: y + half + 3*row,
		Desc: fmt.Sprintf(say.OnPin.Desc, d.Thick(hook), d.Rope(throat.At))}
	v := picture.View{Scale: k, Shift: geom.Pt(k*(round+thick/2)+8, y)}
	at := func(q geom.Point) geom.Point { return v.At(geom.Pt(-q.X, q.Y)) } // the cord goes on to the right
	k1 := legLook()
	end := at(geom.Pt(-reach, 0))
	rope(&p, k1, straight(end.X, p.Width-1, y), even(k*thick*1.5))
	pin := geom.Polyline(geom.CirclePoints(v.Shift, k*hook/2, 0.02))
	p.Area(picture.Body, pin...)
	p.Outline(picture.Main, picture.Medium, pin)
	for _, side := range []float64{1, -1} {
		var way geom.Polyline
		for _, q := range roundEye(reach, round) {
			way = append(way, at(geom.Pt(q.X, side*q.Y)))
		}
		rope(&p, k1, way, even(k*thick))
	}
	stroke(&p, end, k*thick*1.5)
	// The tape, with its nought at the middle of the pin.
	low := y - half - 3
	p.Line(picture.Quiet, picture.Thin, geom.Pt(v.Shift.X, low), geom.Pt(p.Width-1, low))
	marks := picture.Path{Stroke: picture.Quiet, Width: picture.Hair}
	for i := 0; v.Shift.X+float64(i)*5*k < p.Width-1; i++ { // every 5 mm
		x := v.Shift.X + float64(i)*5*k
		marks.Lines = append(marks.Lines, geom.Polyline{{X: x, Y: low}, {X: x, Y: low - 0.9 - 0.8*float64((i+1)%2)}})
	}
	p.Items = append(p.Items, marks)
	p.Line(picture.Main, picture.Thin, geom.Pt(v.Shift.X-k*hook/4, y), geom.Pt(v.Shift.X+k*hook/4, y))
	p.Line(picture.Main, picture.Thin, geom.Pt(v.Shift.X, y+k*hook/4), geom.Pt(v.Shift.X, low-2.6))
	p.Line(picture.Quiet, picture.Hair, geom.Pt(end.X, y-k*thick*0.75-1), geom.Pt(end.X, low-2.6))
	p.Write(
		picture.Text{Text: fmt.Sprintf(say.Reads, say.Nodes[cord.Throat], d.Rope(throat.At)), At: geom.Pt(end.X, low-6), Size: picture.Letter,
			Anchor: [2]piece.Anchor{piece.Start, piece.Centre}[min(1, int(end.X/24))], Ink: picture.Main},
	)
	text(&p, 1, low-11, say.NoughtHere)
	flagged(&p, v.Shift.Plus(geom.Pt(0, k*hook*0.4)), geom.Pt(v.Shift.X+4, y+half+3.4), fmt.Sprintf(say.Pin, d.Thick(hook)))
	return p
}
