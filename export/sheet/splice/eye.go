package splice

import (
	"fmt"

	"slingloft/export/sheet/given"
	"slingloft/export/sheet/picture"
	"slingloft/outline/geom"
)

// Places of the crossing in a stage of an eye's picture, from the stage's middle, mm on
// paper: where the working end passes through the standing part, and where that passes
// through the working end.
const (
	throatX = 54.0
	lockX   = 34.0
	stageUp = 28.0 // from one stage to the next
)

// EyeFree draws how an eye is crossed while the cord's other end is free.
func EyeFree(d *given.Data) picture.Picture {
	say := d.Say.Splicing
	p := picture.Picture{ID: "splice-eye-free", Title: say.EyeFree.Title, Desc: say.EyeFree.Desc, Width: picture.Half, Height: 3*stageUp + 2}
	firstTuck(d, &p, 2*stageUp+15)
	secondTuck(d, &p, stageUp+15)
	drawnUp(d, &p, 15)
	return p
}

// EyeTurned draws how an eye is crossed by itself where the other end is not free: it is
// drawn through its own working end, which turns that inside out.
func EyeTurned(d *given.Data) picture.Picture {
	say := d.Say.Splicing
	p := picture.Picture{ID: "splice-eye-turned", Title: say.EyeTurned.Title, Desc: say.EyeTurned.Desc, Width: picture.Half,
		Height: 3*stageUp + 2}
	firstTuck(d, &p, 2*stageUp+15)
	turnedTuck(d, &p, stageUp+15)
	drawnUp(d, &p, 15)
	return p
}

// bight returns the loop of an eye, from the throat round to the throat.
func bight(y float64) geom.Polyline {
	return curve(geom.Pt(throatX, y), geom.Pt(62, y+3.8), geom.Pt(72, y+6), geom.Pt(80, y+1), geom.Pt(74, y-5.6),
		geom.Pt(61, y-5.6), geom.Pt(throatX, y))
}

// firstTuck draws the working end through the standing part at the throat.
func firstTuck(d *given.Data, p *picture.Picture, y float64) {
	say, k := d.Say.Splicing, legLook()
	number(p, y, "1")
	loop := geom.NewArc(bight(y))
	// The standing part comes in level and goes on as the loop.
	stand := append(curve(geom.Pt(6, y-4), geom.Pt(30, y-3), geom.Pt(throatX, y)), bight(y)[1:40]...)
	arc := geom.NewArc(stand)
	at, _ := arc.Nearest(geom.Pt(throatX, y))
	before, after := without(stand, at)
	_, dir := arc.At(at)
	rope(p, k, before, even(bare))
	rope(p, k, append(after, loop.Between(loop.Length()*0.5, loop.Length()*0.72)...), even(bare))
	end := append(loop.Between(loop.Length()*0.7, loop.Length()-0.5),
		curve(geom.Pt(throatX, y), geom.Pt(42, y+5.4), geom.Pt(30, y+7.4), geom.Pt(14, y+7.6))...)
	through(p, eyelet{k, geom.Pt(throatX, y), dir, bare}, k, end, bare)
	mark(p, geom.NewArc(end), geom.Pt(lockX, y+6.6))
	text(p, 6, y-9.4, say.Standing)
	text(p, 6, y+10.6, say.WorkingEnd)
	flagged(p, geom.Pt(lockX, y+6.6), geom.Pt(34, y+10.8), say.ShoulderMark)
	flagged(p, geom.Pt(throatX, y), geom.Pt(38, y-9.4), say.ThroatMark)
}

// mark draws a mark across a cord at the place on it next to a point.
func mark(p *picture.Picture, arc geom.Arc, near geom.Point) {
	s, _ := arc.Nearest(near)
	at, dir := arc.At(s)
	n := dir.Left().Times(bare/2 + 0.7)
	p.Line(picture.Main, picture.Medium, at.Plus(n), at.Minus(n))
}

// flagged letters a place from a line of lettering that begins at another.
func flagged(p *picture.Picture, at, lettering geom.Point, t string) {
	to := geom.Pt(lettering.X+1.5, lettering.Y+2.6)
	if lettering.Y > at.Y {
		to.Y = lettering.Y - 0.8
	}
	p.Line(picture.Quiet, picture.Hair, at, to)
	text(p, lettering.X, lettering.Y, t)
}

// crossed returns standing part and working end where each passes through the other.
func crossed(y float64) (stand, end geom.Polyline) {
	loop := geom.NewArc(bight(y))
	n := loop.Length()
	stand = append(curve(geom.Pt(6, y+7), geom.Pt(22, y+5.4), geom.Pt(lockX, y), geom.Pt((lockX+throatX)/2, y-2.8),
		geom.Pt(throatX, y)), loop.Between(0.5, n*0.5)...)
	end = append(loop.Between(n*0.5, n-0.5), curve(geom.Pt(throatX, y), geom.Pt((lockX+throatX)/2, y+2.8), geom.Pt(lockX, y),
		geom.Pt(26, y-4.4), geom.Pt(14, y-6.4))...)
	return stand, end
}

// secondTuck draws the free end through the working end.
func secondTuck(d *given.Data, p *picture.Picture, y float64) {
	number(p, y, "2")
	stand, end := crossed(y)
	lock(p, legLook(), legLook(), stand, end, y)
	say := d.Say.Splicing
	text(p, 6, y+9.8, say.FreeEnd)
	text(p, 6, y-12, say.WorkingEnd)
	flagged(p, geom.Pt(lockX, y), geom.Pt(38, y+9.8), say.ThroughShoulder)
}

// lock draws two cords that pass through each other, one after the other.
func lock(p *picture.Picture, one, other look, stand, end geom.Polyline, y float64) {
	a, b := geom.NewArc(stand), geom.NewArc(end)
	at, _ := a.Nearest(geom.Pt(throatX, y))
	on, _ := b.Nearest(geom.Pt(lockX, y))
	_, dir := a.At(at)
	_, way := b.At(on)
	// What lies between the two eyelets belongs to both passes and is drawn by them.
	s0, _ := a.Nearest(geom.Pt(lockX, y))
	e0, _ := b.Nearest(geom.Pt(throatX, y))
	rope(p, one, a.Between(at+openHalf, a.Length()), even(bare))
	rope(p, other, b.Between(0, e0-openHalf), even(bare))
	rope(p, other, b.Between(on+openHalf, b.Length()), even(bare))
	through(p, eyelet{one, geom.Pt(throatX, y), dir, bare}, other, b.Between(e0-openHalf-0.5, on-openHalf), bare)
	through(p, eyelet{other, geom.Pt(lockX, y), way, bare}, one, a.Between(0, (s0+at)/2), bare)
	rope(p, one, a.Between((s0+at)/2-0.5, at-openHalf), even(bare))
}

// turnedTuck draws the eye on its way through an opening of its working end.
func turnedTuck(d *given.Data, p *picture.Picture, y float64) {
	say, k := d.Say.Splicing, legLook()
	number(p, y, "2")
	stand := append(curve(geom.Pt(6, y-4), geom.Pt(30, y-3), geom.Pt(throatX, y)), bight(y)[1:40]...)
	arc := geom.NewArc(stand)
	at, _ := arc.Nearest(geom.Pt(throatX, y))
	before, after := without(stand, at)
	_, dir := arc.At(at)
	loop := geom.NewArc(bight(y))
	n := loop.Length()
	rope(p, k, before, even(bare))
	rope(p, k, append(after, loop.Between(n*0.5, n*0.72)...), even(bare))
	end := append(loop.Between(n*0.7, n-0.5), curve(geom.Pt(throatX, y), geom.Pt(42, y+5.4), geom.Pt(30, y+7.4), geom.Pt(14, y+7.6))...)
	open := geom.NewArc(end)
	on, _ := open.Nearest(geom.Pt(lockX, y+6.6))
	hole, way := open.At(on)
	through(p, eyelet{k, geom.Pt(throatX, y), dir, bare}, k, open.Between(0, on-openHalf), bare)
	e := eyelet{k, hole, way, bare}
	plain(p, k, e.half(-1), even(bare/2))
	plain(p, k, e.half(1), even(bare/2))
	rope(p, k, open.Between(on+openHalf, open.Length()), even(bare))
	// The way of the eye: over its own throat, in at the opening, out on the far side.
	go1 := curve(geom.Pt(72, y+7.6), geom.Pt(64, y+10.4), geom.Pt(50, y+10.8), geom.Pt(hole.X+2, y+10.5), hole)
	p.Arrow(picture.Second, picture.Medium, go1[len(go1)-3], hole)
	p.Items = append(p.Items, picture.Path{Lines: []geom.Polyline{go1[:len(go1)-2]}, Stroke: picture.Second, Width: picture.Medium})
	text(p, 6, y-9.4, say.Standing)
	flagged(p, hole, geom.Pt(24, y+12), say.OpenShoulder)
	text(p, 44, y-10.6, say.EyeGoes)
}

// drawnUp draws the crossing drawn up, the working end on its way into the standing part.
func drawnUp(d *given.Data, p *picture.Picture, y float64) {
	say, k := d.Say.Splicing, legLook()
	number(p, y, "3")
	stand, end := crossed(y)
	b := geom.NewArc(end)
	in := geom.Pt(18, y+6)
	on, _ := b.Nearest(geom.Pt(lockX, y))
	into := append(b.Between(0, on+openHalf), curve(geom.Pt(lockX-5.6, y-2), geom.Pt(24, y-2.6), geom.Pt(19.6, y+1), in)...)
	lock(p, k, k, stand, into, y)
	ghost(p, k, geom.NewArc(stand).Between(0, 16).Reversed(), tapering(inner, 2, 16))
	text(p, 6, y+9.8, say.Standing)
	flagged(p, in, geom.Pt(36, y+9.8), say.GoesIn)
	text(p, 6, y-9.4, say.BuriedAlong)
}

// Crossing draws the crossing of a corner's two cords, which can be made while an end of
// either is free: the bar's gap lies between the places where each passes through the other
// at the other's shoulder mark.
func Crossing(d *given.Data) picture.Picture {
	say := d.Say.Splicing
	const y = 22.0
	p := picture.Picture{ID: "splice-crossing", Title: say.Crossing.Title, Desc: fmt.Sprintf(say.Crossing.Desc, d.Rope(d.Cords.Splicing.Gap)),
		Width: picture.Half, Height: 44}
	side := curve(geom.Pt(6, y+7), geom.Pt(22, y+5.4), geom.Pt(lockX, y), geom.Pt((lockX+throatX)/2, y-2.8), geom.Pt(throatX, y),
		geom.Pt(64, y+5), geom.Pt(82, y+7))
	leg := curve(geom.Pt(82, y-7), geom.Pt(64, y-5), geom.Pt(throatX, y), geom.Pt((lockX+throatX)/2, y+2.8), geom.Pt(lockX, y),
		geom.Pt(22, y-5.4), geom.Pt(6, y-7))
	lock(&p, sideLook(), legLook(), side, leg, y)
	text(&p, 6, y+10.4, say.SideCord)
	text(&p, 64, y+10.4, say.SideEnd)
	text(&p, 6, y-12.6, say.LegEnd)
	text(&p, 64, y-12.6, say.Leg)
	onwards(&p, y+14.6, above, flag{geom.Pt(throatX, y+2.2), say.ThroughSide})
	onwards(&p, y-15, below, flag{geom.Pt(lockX-2.4, y-1), say.ThroughLeg})
	p.Level(geom.Pt(lockX, y-3), geom.Pt(throatX, y-3), y-11, fmt.Sprintf(say.GapBetween, d.Rope(d.Cords.Splicing.Gap)))
	return p
}
