package splice

import (
	"slingloft/export/sheet/picture"
	"slingloft/outline/cord"
	"slingloft/outline/geom"
	"slingloft/outline/piece"
)

// row is from one line of lettering to the next, mm.
const row = 4.2

// flag is what is lettered beside a place.
type flag struct {
	at   geom.Point
	text string
}

// Ways in which flags hang from a cord or stand on it.
const (
	below = -1.0
	above = 1.0
)

// onwards letters places, from left to right, in rows that begin at y and go on below or
// above, each to the right of its leader: the first place has the farthest row, so that no
// leader runs through lettering.
func onwards(p *picture.Picture, y, way float64, flags ...flag) {
	for i, f := range flags {
		n := float64(len(flags) - 1 - i)
		place(p, f, y+way*row*n, way, piece.Start)
	}
}

// backwards letters them to the left of their leaders: the last place has the farthest
// row.
func backwards(p *picture.Picture, y, way float64, flags ...flag) {
	for i, f := range flags {
		place(p, f, y+way*row*float64(i), way, piece.End)
	}
}

// place letters one flag in a row whose near edge lies at y; lettering that would leave
// the picture is moved in.
func place(p *picture.Picture, f flag, y, way float64, anchor piece.Anchor) {
	const beside = 0.9
	line := y
	if way < 0 {
		line = y - picture.Letter
	}
	wide := picture.Width(f.text, picture.Letter, false)
	x := f.at.X + beside
	if anchor == piece.End {
		x = f.at.X - beside - wide
	}
	x = min(max(x, 0.5), p.Width-0.5-wide)
	foot := line + 0.3
	if x < f.at.X && f.at.X < x+wide { // the leader ends over the lettering
		foot = y - max(way, 0)*0.9 // what goes below the base line
	}
	p.Line(picture.Quiet, picture.Hair, f.at, geom.Pt(f.at.X, foot))
	p.Write(picture.Text{Text: f.text, At: geom.Pt(x, line), Size: picture.Letter, Ink: picture.Main})
}

// text letters a line that begins at a place.
func text(p *picture.Picture, x, y float64, t string) {
	p.Write(picture.Text{Text: t, At: geom.Pt(x, y), Size: picture.Letter, Ink: picture.Main})
}

// number numbers a stage of a picture at its left edge.
func number(p *picture.Picture, y float64, n string) {
	p.Write(picture.Text{Text: n, At: geom.Pt(2.6, y), Size: picture.Letter, Anchor: piece.Centre, Ink: picture.Main, Bold: true})
}

// find returns the mark of a place on a cord and reports whether there is one.
func find(c cord.Cord, s cord.Spot) (cord.Mark, bool) {
	for _, m := range c.Marks {
		if m.Spot == s {
			return m, true
		}
	}
	return cord.Mark{}, false
}
