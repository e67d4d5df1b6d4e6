package splice

import (
	"slingloft/export/sheet/given"
	"slingloft/export/sheet/picture"
	"slingloft/outline/geom"
)

// Where the two posts of a pulled cord stand in its picture, mm, and how thick they are.
const (
	fastPost, loosePost = 8.0, 70.0
	postWide            = 7.0
	pulledAt            = 12.0 // height of the cord between them
)

// Pulled draws a cord that is made fast to its two posts to be pulled: turns, then two half
// hitches, at both ends. Schematic.
func Pulled(d *given.Data) picture.Picture {
	say := d.Say.Splicing
	p := picture.Picture{ID: "splice-pulled", Title: say.Pulled.Title, Desc: say.Pulled.Desc, Width: picture.Half, Height: 46}
	for _, x := range []float64{fastPost, loosePost} {
		p.Area(picture.Cloth, geom.Pt(x, 6), geom.Pt(x+postWide, 6), geom.Pt(x+postWide, 36), geom.Pt(x, 36))
		for _, side := range []float64{x, x + postWide} {
			p.Line(picture.Bar, picture.Medium, geom.Pt(side, 6), geom.Pt(side, 36))
		}
	}
	for _, x := range []float64{24, 29} {
		hitchOn(&p, x, 1)
		hitchOn(&p, loosePost+fastPost+postWide-x, -1)
	}
	rope(&p, sideLook(), straight(fastPost+postWide-0.5, loosePost+0.5, pulledAt), even(thinCord))
	for _, x := range []float64{24, 29} {
		overLine(&p, x, 1)
		overLine(&p, loosePost+fastPost+postWide-x, -1)
	}
	turnsOn(&p, fastPost, 1)
	turnsOn(&p, loosePost, -1)
	p.Arrow(picture.Main, picture.Bold, geom.Pt(loosePost+postWide+1, pulledAt), geom.Pt(picture.Half-1, pulledAt))
	text(&p, 1, 2, say.FixedPost)
	text(&p, 63, 2, say.LooseBar)
	text(&p, 1, 38.5, say.FiveTurns)
	flagged(&p, geom.Pt(26.5, pulledAt+3.4), geom.Pt(30, 27), say.TwoHitches)
	text(&p, 31.5, 4.4, say.MarkedHere)
	return p
}

// thinCord is how thick the cord is drawn here, mm: as thick as its turns lie apart.
const thinCord = 2.2

// turnsOn draws five turns round a post, from the cord upwards; way is 1 where the cord
// leaves to the right.
func turnsOn(p *picture.Picture, x, way float64) {
	const turns, rise = 5, 3.6
	from, to := x+postWide+1, x-1
	if way < 0 {
		from, to = to, from
	}
	for i := range turns {
		y := pulledAt + rise*float64(i)
		rope(p, sideLook(), curve(geom.Pt(from, y), geom.Pt((from+to)/2, y+0.9), geom.Pt(to, y+1.6)), even(thinCord))
	}
}

// hitchOn draws what of a half hitch lies behind the cord at x.
func hitchOn(p *picture.Picture, x, way float64) {
	at := func(dx, dy float64) geom.Point { return geom.Pt(x+way*dx, pulledAt+dy) }
	rope(p, sideLook(), curve(at(1.4, 3.2), at(2.2, 0), at(1.2, -3)), even(thinCord-0.4))
}

// overLine draws what of it lies over the cord.
func overLine(p *picture.Picture, x, way float64) {
	at := func(dx, dy float64) geom.Point { return geom.Pt(x+way*dx, pulledAt+dy) }
	rope(p, sideLook(), curve(at(1.2, -3), at(-0.2, -3.6), at(-1.2, -2), at(-1, 1), at(1.4, 3.2)), even(thinCord-0.4))
}
