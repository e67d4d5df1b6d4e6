package sketch

import (
	"fmt"
	"math"

	"slingloft/export/sheet/given"
	"slingloft/export/sheet/picture"
	"slingloft/outline/design"
	"slingloft/outline/geom"
	"slingloft/outline/piece"
)

// FilledSack draws the stow sack from its side, filled and tied.
func FilledSack(d *given.Data) picture.Picture {
	say, s := d.Say.Sacks, d.Further.Sack.Size
	const below, tallest = 12.0, 52.0
	k := min(tallest/s.Long, 40/s.Thick)
	wide, long := k*s.Thick, k*s.Long
	p := picture.Picture{ID: "sack-filled", Title: say.Filled.Title, Width: picture.Half, Height: below + long + 19,
		Desc: fmt.Sprintf(say.Filled.Desc, d.Cloth(s.Thick), d.Cloth(s.Long))}
	left, right := 40-wide/2, 40+wide/2
	neck := below + long + 4
	foot := geom.Polyline{{X: left, Y: below}, {X: right, Y: below}}
	if d.Design.Sack.Base == design.RoundBase {
		foot = ellipse(geom.Pt(40, below), wide/2, -math.Pi)
	}
	body := append(geom.Polyline{}, foot...)
	body = append(body, geom.Pt(right, below+long), geom.Pt(41.5, neck), geom.Pt(38.5, neck), geom.Pt(left, below+long))
	p.Area(picture.Cloth, body...)
	p.Outline(picture.Main, picture.Medium, body)
	for i := -2; i <= 2; i++ { // folds towards the neck
		x := float64(i)
		p.Line(picture.Quiet, picture.Hair, geom.Pt(40+x*wide/5, below+long), geom.Pt(40+x*0.5, neck))
		p.Line(picture.Main, picture.Thin, geom.Pt(40+x*0.6, neck), geom.Pt(40+x*2.4, neck+7))
	}
	p.Line(picture.Cord, 0.8, geom.Pt(38, neck), geom.Pt(42, neck))
	p.Line(picture.Cord, 0.8, geom.Pt(42, neck), geom.Pt(46, neck+3.5), geom.Pt(50, neck+2.5))
	note(&p, geom.Pt(51, neck+2), say.CordWord)
	p.Level(geom.Pt(left, below), geom.Pt(right, below), 4, d.Cloth(s.Thick))
	p.Upright(geom.Pt(left, below), geom.Pt(left, below+long), left-6, d.Cloth(s.Long))
	return p
}

// ellipse returns half an ellipse as a circle of a radius is seen from a little above,
// from its left point over the given turn.
func ellipse(at geom.Point, radius, turn float64) geom.Polyline {
	var out geom.Polyline
	const n, flat = 24, 0.16
	for i := range n + 1 {
		a := math.Pi - turn*float64(i)/n
		out = append(out, at.Plus(geom.Pt(radius*math.Cos(a), flat*radius*math.Sin(a))))
	}
	return out
}

// note letters a word, from its left end.
func note(p *picture.Picture, at geom.Point, text string) {
	p.Write(picture.Text{Text: text, At: at, Size: picture.Letter, Ink: picture.Main})
}

// BarsSack draws the bars' sack as it lies, the bars in it, wider than it is where that is
// needed to tell them apart.
func BarsSack(d *given.Data) picture.Picture {
	say, f := d.Say.Sacks, d.Further.Sack
	const below, left, long = 11.0, 14.0, 66.0
	k := long / f.Flat[0]
	wide := max(k*f.Flat[1], 12)
	p := picture.Picture{ID: "sack-bars", Title: say.BarsFilled.Title, Width: picture.Half, Height: below + wide + 6,
		Desc: fmt.Sprintf(say.BarsFilled.Desc, d.Cloth(f.Flat[0]), d.Cloth(f.Flat[1]))}
	at := func(x, y float64) geom.Point { return geom.Pt(left+x, below+y) }
	ring := geom.Polyline{at(0, 0), at(long, 0), at(long, wide), at(0, wide)}
	p.Area(picture.Cloth, ring...)
	for i := range 2 {
		y, high := wide*(0.28+0.44*float64(i)), wide*0.13
		p.Outline(
			picture.Bar,
			picture.Thin,
			geom.Polyline{at(1.5, y-high), at(1.5+k*f.Bundle.Long, y-high), at(1.5+k*f.Bundle.Long, y+high), at(1.5, y+high)},
		)
	}
	p.Outline(picture.Main, picture.Medium, ring)
	hem := long - max(k*d.Design.Sack.Hem, 2)
	p.Dashed(picture.Stitch, picture.Thin, at(hem, 0), at(hem, wide))
	p.Level(at(0, 0), at(long, 0), 4, d.Cloth(f.Flat[0]))
	p.Upright(at(0, 0), at(0, wide), left-6, d.Cloth(f.Flat[1]))
	return p
}

// SackCorner draws a corner of a flat sack as it is laid for the line across.
func SackCorner(d *given.Data) picture.Picture {
	say, depth := d.Say.Sacks, d.Further.Sack.Size.Thick/2
	k := 20 / depth
	tip := geom.Pt(44, 50)
	p := picture.Picture{
		ID:     "sack-corner",
		Title:  say.Corner.Title,
		Width:  picture.Half,
		Height: 56,
		Desc:   fmt.Sprintf(say.Corner.Desc, d.Cloth(depth)),
	}
	const down = 42.0
	body := geom.Polyline{tip, tip.Plus(geom.Pt(-down, -down)), tip.Plus(geom.Pt(down, -down))}
	p.Area(picture.Cloth, body...)
	p.Line(picture.Main, picture.Medium, body[1], tip, body[2])
	p.Line(picture.Main, picture.Thin, tip, tip.Plus(geom.Pt(0, -down)))
	cut := k * depth
	p.Dashed(picture.Stitch, picture.Bold, tip.Plus(geom.Pt(-cut, -cut)), tip.Plus(geom.Pt(cut, -cut)))
	p.Upright(tip, tip.Plus(geom.Pt(-cut, -cut)), tip.X-cut-12, d.Cloth(depth))
	note(&p, geom.Pt(tip.X+2, tip.Y-down+4), say.Seam)
	note(&p, tip.Plus(geom.Pt(3, 1)), say.Tip)
	return p
}

// SackMouth draws the slit at a mouth from the outside.
func SackMouth(d *given.Data) picture.Picture {
	say, hem := d.Say.Sacks, d.Design.Sack.Hem
	p := picture.Picture{
		ID:     "sack-mouth",
		Title:  say.Mouth.Title,
		Width:  picture.Half,
		Height: 42,
		Desc:   fmt.Sprintf(say.Mouth.Desc, d.Cloth(hem)),
	}
	const mid, low, fold, high = 44.0, 3.0, 20.0, 34.0
	p.Area(picture.Cloth, geom.Pt(6, low), geom.Pt(82, low), geom.Pt(82, high), geom.Pt(6, high))
	p.Line(picture.Main, picture.Medium, geom.Pt(6, high), geom.Pt(mid-2.5, high), geom.Pt(mid, fold), geom.Pt(mid, low))
	p.Line(picture.Main, picture.Medium, geom.Pt(82, high), geom.Pt(mid+2.5, high), geom.Pt(mid, fold))
	p.Dashed(picture.Stitch, picture.Medium, geom.Pt(6, fold), geom.Pt(mid-1, fold))
	p.Dashed(picture.Stitch, picture.Medium, geom.Pt(mid+1, fold), geom.Pt(82, fold))
	for _, s := range []float64{-1, 1} {
		p.Dashed(picture.Cord, 0.8, geom.Pt(mid+s*36, 27), geom.Pt(mid+s*2, 27))
		p.Line(picture.Cord, 0.8, geom.Pt(mid+s*1.6, 27), geom.Pt(mid+s*1.2, 33), geom.Pt(mid+s*5, 39))
	}
	p.Upright(geom.Pt(70, fold), geom.Pt(70, high), 70, d.Cloth(hem))
	note(&p, geom.Pt(mid+7, 38), say.CordWord)
	note(&p, geom.Pt(mid-13, 22), say.Slit)
	note(&p, geom.Pt(mid+2, 8), say.Seam)
	p.Write(picture.Text{Text: say.HemWord, At: geom.Pt(12, 22), Size: picture.Letter, Ink: picture.Main, Anchor: piece.Start})
	return p
}
