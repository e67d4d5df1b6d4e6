package splice

import (
	"fmt"

	"slingloft/export/sheet/given"
	"slingloft/export/sheet/picture"
	"slingloft/outline/design"
	"slingloft/outline/geom"
)

// Threading draws how a chain goes through its channel, to scale across: the clear width,
// and what has to pass. Where no eye passes the chain goes in by its bare end.
func Threading(d *given.Data) picture.Picture {
	say, pass := d.Say.Splicing, d.Design.Passage()
	words := say.EyesFirst
	if pass.Threading == design.LastEyeAfter {
		words = say.LastEye
	}
	if pass.Threading == design.LoopJoinAfter {
		return picture.Picture{}
	}
	const x0, x1, floor = 26.0, 78.0, 12.0
	k := min(1.5, 22/pass.Clear)
	fold := floor + k*pass.Clear
	y := floor + k*pass.Clear/2
	p := picture.Picture{ID: "splice-threading", Title: words.Title, Width: picture.Half, Height: fold + 17,
		Desc: fmt.Sprintf(words.Desc, d.Rope(pass.Clear), d.Rope(pass.Eye), d.Rope(pass.Bury))}
	p.Area(picture.Cloth, geom.Pt(x0, floor-4), geom.Pt(x1, floor-4), geom.Pt(x1, fold), geom.Pt(x0, fold))
	p.Line(picture.Main, picture.Medium, geom.Pt(x0, fold), geom.Pt(x1, fold))
	p.Dashed(picture.Stitch, picture.Medium, geom.Pt(x0, floor), geom.Pt(x1, floor))
	for _, x := range []float64{x0, x1} {
		p.Line(picture.Main, picture.Thin, geom.Pt(x, floor-4), geom.Pt(x, fold))
	}
	thick := d.Design.Leg.Diameter * k
	rope(&p, sideLook(), straight(4, x0+2, y), even(d.Design.Side.Diameter*k*1.4))
	rope(&p, legLook(), straight(x0+2, x0+14, y), even(d.Design.Side.Diameter*k*1.8))
	if pass.Threading == design.EyesFirst {
		passing(&p, x0+13, y, thick)
		p.Line(picture.Main, picture.Thin, geom.Pt(x0+35, y), geom.Pt(x1+6, y))
	} else {
		rope(&p, legLook(), straight(x0+13, x0+36, y), even(thick))
		p.Line(picture.Main, picture.Thin, geom.Pt(x0+36, y), geom.Pt(x1+6, y))
	}
	p.Arrow(picture.Main, picture.Medium, geom.Pt(x1-2, y), geom.Pt(x1+8, y))
	p.Upright(geom.Pt(x0, floor), geom.Pt(x0, fold), x0-6, d.Rope(pass.Clear))
	text(&p, x0+3, fold+12.2, fmt.Sprintf(say.Clear, d.Rope(pass.Clear)))
	text(&p, x0+3, fold+8, fmt.Sprintf(say.EyeAsks, d.Rope(pass.Eye)))
	text(&p, x0+3, fold+3.8, fmt.Sprintf(say.BuryAsks, d.Rope(pass.Bury)))
	text(&p, x0, 1.6, say.InnerRow)
	p.Line(picture.Quiet, picture.Hair, geom.Pt(x0+4, 5), geom.Pt(x0+4, floor))
	return p
}

// passing draws an eye pulled long, three cords wide where its crossing is.
func passing(p *picture.Picture, x, y, thick float64) {
	rope(p, legLook(), curve(geom.Pt(x, y), geom.Pt(x+8, y+thick), geom.Pt(x+16, y+0.7*thick), geom.Pt(x+22, y)), even(thick))
	rope(p, legLook(), curve(geom.Pt(x, y), geom.Pt(x+8, y-thick), geom.Pt(x+16, y-0.7*thick), geom.Pt(x+22, y)), even(thick))
}
