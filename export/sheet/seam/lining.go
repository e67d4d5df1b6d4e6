package seam

import (
	"fmt"

	"slingloft/export/sheet/given"
	"slingloft/export/sheet/picture"
	"slingloft/outline/design"
	"slingloft/outline/geom"
)

// lined returns how many layers of lining lie below the body, and how many above it.
func lined(d design.Design) (below, above int) {
	switch {
	case !d.Lining.On:
		return 0, 0
	case d.Lining.Place == design.AboveBody:
		return 0, 1
	}
	return 1, 0
}

// LiningHem draws the section of the hem at a lining's opening.
func LiningHem(d *given.Data) picture.Picture {
	return drawHem(d, "seam-lining-hem", d.Further.Lining.Opening.Hem, liningCloth, d.Say.Lining.Hem, d.Say.Lining.HemUp)
}

// Basted draws the section of body and lining at a side as they are basted.
func Basted(d *given.Data) picture.Picture {
	say, side := d.Say.Lining, d.Design.Seam.Side
	below, above := lined(d.Design)
	s := section{scale: min(3, (room-30)/side), zero: left + 40}
	way := func(layer int) geom.Polyline {
		y := float64(layer) * ply
		return geom.Polyline{{X: left, Y: y}, {X: s.x(side), Y: y}}
	}
	s.cloths = []cloth{{bodyCloth, way(below), -1}, {liningCloth, way(above), -1}}
	s.rows = []stitches{{s.x(side / 2), -1, ply + 1}}
	s = s.risen(17)
	p := picture.Picture{ID: "seam-lining-baste", Title: say.Baste.Title, Desc: fmt.Sprintf(say.Baste.Desc, d.Cloth(side)),
		Width: picture.Half, Height: 38}
	s.draw(&p)
	number(&p, s.rows[0], "1")
	measured(&p, d, s, 14.6, []measure{{0, side, say.Midway}, {side / 2, side, say.BasteRow}})
	points(&p, geom.Pt(left+12, s.cloths[0].way[0].Y), geom.Pt(2, 28.4), say.BodyName)
	points(&p, geom.Pt(left+26, s.cloths[1].way[0].Y), geom.Pt(22, 33), say.LiningName)
	return p
}
