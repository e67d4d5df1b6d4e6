package seam

import (
	"fmt"
	"math"

	"slingloft/export/sheet/given"
	"slingloft/export/sheet/picture"
	"slingloft/export/sheet/wording"
	"slingloft/outline/design"
	"slingloft/outline/geom"
	"slingloft/outline/piece"
)

// hemSection is a double-fold hem of a width: its fold at 0, the raw edge in the fold.
func hemSection(width, foot float64, of what) section {
	s := section{scale: math.Min(2.4, (room-26)/width), zero: left + room - 6}
	way := geom.Polyline{{X: left, Y: 0}}
	way = append(way, turned(s.x(0), 0, 2*ply, 1)...)
	way = append(way, turned(s.x(-width), 2*ply, ply, -1)...)
	way = append(way, geom.Pt(s.x(0)-ply-0.3, ply))
	s.cloths = []cloth{{of, way, -1}}
	s.rows = []stitches{{s.x(-width + foot), -1, 2*ply + 1}}
	return s
}

// Hem draws the section of the double-fold hem at a cap's top edge, or at a gathered end,
// whose tunnel takes the drawstring.
func Hem(d *given.Data) picture.Picture {
	say, h := d.Say.Stitching, d.Design.Cap.Hem
	words, of := say.CapHem, capCloth
	if d.Design.Cap.Kind == design.Gathered {
		words, of = say.EndHem, bodyCloth
	}
	return drawHem(d, "seam-hem", h, of, words, say.Inside)
}

// drawHem draws the section of a hem of a width in a cloth, and which face is up.
func drawHem(d *given.Data, id string, h float64, of what, words wording.Picture, up string) picture.Picture {
	say := d.Say.Stitching
	s := hemSection(h, d.Design.Channel.Foot, of).risen(17)
	p := picture.Picture{ID: id, Title: words.Title, Desc: fmt.Sprintf(words.Desc, d.Cloth(h)), Width: picture.Half, Height: 37}
	s.draw(&p)
	number(&p, s.rows[0], "1")
	measured(&p, d, s, 14.6, []measure{{-h, 0, say.EachFold}, {-h, -h + d.Design.Channel.Foot, say.FromFold}})
	points(&p, geom.Pt(s.x(0)-ply-0.4, 17+ply), geom.Pt(52, 33), say.RawInFold)
	points(&p, geom.Pt(left+5, 17), geom.Pt(2, 28.8), up)
	return p
}

// capSection is a cap on an end of the body, right sides together.
func capSection(d design.Design) section {
	wide := math.Max(d.Seam.End, d.Seam.Cap)
	s := section{scale: math.Min(2.4, (room-30)/wide), zero: left + 30}
	below, above := lined(d) // the outside of the bed is up here
	top := ply * float64(1+below+above)
	flat := func(of what, layer int, right float64) cloth {
		y := ply * float64(layer)
		return cloth{of, geom.Polyline{{X: left, Y: y}, {X: s.x(d.Seam.End), Y: y}}, right}
	}
	s.cloths = []cloth{flat(bodyCloth, above, 1), {capCloth, geom.Polyline{{X: left, Y: top}, {X: s.x(d.Seam.Cap), Y: top}}, -1}}
	if below+above > 0 {
		s.cloths = append(s.cloths, flat(liningCloth, below, 1))
	}
	s.rows = []stitches{{s.x(0), -1, top + 1}}
	return s
}

// CapSeam draws the section of a cap's seam as it is sewn. It has no size where the ends
// are gathered.
func CapSeam(d *given.Data) picture.Picture {
	say := d.Say.Stitching
	if d.Design.Cap.Kind == design.Gathered {
		return picture.Picture{}
	}
	s := capSection(d.Design).risen(17)
	top := s.cloths[1].way[0].Y
	p := picture.Picture{ID: "seam-cap", Title: say.CapSeam.Title, Width: picture.Half, Height: top + 19,
		Desc: fmt.Sprintf(say.CapSeam.Desc, d.Cloth(d.Design.Seam.End), d.Cloth(d.Design.Seam.Cap))}
	s.draw(&p)
	number(&p, s.rows[0], "1")
	edge := math.Min(s.x(d.Design.Seam.End), s.x(d.Design.Seam.Cap))
	zigzag(&p, geom.Pt(edge-4.4, 17-1), geom.Pt(edge+0.6, top+1))
	p.Write(picture.Text{Text: "2", At: geom.Pt(edge-1.8, top+3.6), Size: picture.Letter, Anchor: piece.Centre,
		Ink: picture.Stitch, Bold: true})
	measured(&p, d, s, 14.6, []measure{{0, d.Design.Seam.End, say.EndAllowance}, {0, d.Design.Seam.Cap, say.CapAllowance}})
	at := 12.0
	if len(s.cloths) > 2 {
		at = 4
		points(&p, geom.Pt(left+12, s.cloths[2].way[0].Y), geom.Pt(13, top+9.3), d.Say.Lining.LiningName)
	}
	points(&p, geom.Pt(left+at, s.cloths[0].way[0].Y), geom.Pt(2, top+9.3), say.BodyOf)
	points(&p, geom.Pt(left+18, top), geom.Pt(14, top+13.9), say.CapOf)
	return p
}

// zigzag draws what binds two raw edges together.
func zigzag(p *picture.Picture, low, high geom.Point) {
	const turns = 4
	var pts geom.Polyline
	for i := range turns + 1 {
		y := low.Y
		if i%2 == 1 {
			y = high.Y
		}
		pts = append(pts, geom.Pt(low.X+(high.X-low.X)*float64(i)/turns, y))
	}
	p.Line(picture.Stitch, picture.Medium, pts...)
}

// fell is what a flat-felled join measures from its seam line, mm: where the inner
// allowance is folded, the outer one trimmed, and the second row.
type fell struct{ allowance, fold, trim, second float64 }

// fellOf reads a join's measures off its panels; without a fell of its own only the
// allowance is known.
func fellOf(d *given.Data) (fell, bool) {
	if len(d.Sewn.Joins) == 0 {
		return fell{}, false
	}
	j := d.Sewn.Joins[0]
	f := fell{allowance: d.Design.Seam.Join}
	for _, q := range d.Sewn.Pieces {
		for _, l := range q.Lines {
			if l.Of != j.Place.String() || len(l.Points) == 0 {
				continue
			}
			off := math.Abs(l.Points[0].Y - j.V)
			switch l.Role {
			case piece.FellFold:
				f.fold = off
			case piece.FellTrim:
				f.trim = off
			case piece.FellStitch:
				f.second = off
			}
		}
	}
	return f, f.fold > 0
}

// joinSections are a join as it is first sewn and as it is felled.
func joinSections(f fell) (first, felled section) {
	k := math.Min(2.4, (room-34)/f.allowance)
	first = section{scale: k, zero: left + 30}
	first.cloths = []cloth{
		{bodyCloth, geom.Polyline{{X: left, Y: 0}, {X: first.x(f.allowance), Y: 0}}, 1},
		{otherPanel, geom.Polyline{{X: left, Y: ply}, {X: first.x(f.trim), Y: ply}}, -1},
	}
	first.rows = []stitches{{first.x(0), -1, ply + 1}}
	felled = section{scale: k, zero: left + 50}
	outer := append(geom.Polyline{{X: left, Y: 0}}, turned(felled.x(0), 0, 2*ply, 1)...)
	outer = append(outer, geom.Pt(felled.x(-f.trim), 2*ply))
	// The inner panel comes from the right and lies over all, its edge folded under.
	inner := geom.Polyline{{X: left + room, Y: 0}, {X: felled.x(0) + 6, Y: 0}}
	inner = append(inner, eased(geom.Pt(felled.x(0)+5, 0), geom.Pt(felled.x(0)+0.6, 3*ply))...)
	inner = append(inner, turned(felled.x(-f.fold), 3*ply, ply, -1)...)
	inner = append(inner, geom.Pt(felled.x(f.allowance-2*f.fold)-ply-0.3, ply))
	felled.cloths = []cloth{{otherPanel, outer, -1}, {bodyCloth, inner, 1}}
	felled.rows = []stitches{{felled.x(0) - ply - 0.2, ply - 1, 3*ply + 1}, {felled.x(-f.second), -1, 3*ply + 1}}
	return first, felled
}

// Join draws the sections of a join: as it is sewn, one allowance trimmed, and as it is
// felled. It has no size where the body has no join.
func Join(d *given.Data) picture.Picture {
	say := d.Say.Stitching
	f, ok := fellOf(d)
	if !ok {
		return picture.Picture{}
	}
	return drawFell(d, "seam-join", f, fellWords{say.Join, say.InnerPanel, say.OuterPanel})
}

// fellWords says what the sections of a join show: the panel whose allowance is folded over
// that of the other.
type fellWords struct {
	picture      wording.Picture
	inner, outer string
}

// drawFell draws the sections of a flat-felled join.
func drawFell(d *given.Data, id string, f fell, words fellWords) picture.Picture {
	say := d.Say.Stitching
	first, felled := joinSections(f)
	first, felled = first.risen(60), felled.risen(15)
	p := picture.Picture{ID: id, Title: words.picture.Title, Width: picture.Half, Height: 80,
		Desc: fmt.Sprintf(words.picture.Desc, d.Cloth(f.allowance), d.Cloth(f.trim), d.Cloth(f.fold))}
	first.draw(&p)
	felled.draw(&p)
	number(&p, first.rows[0], "1")
	for i, r := range felled.rows {
		number(&p, r, fmt.Sprint(i+1))
	}
	measured(&p, d, first, 57.6, []measure{{0, f.trim, say.Trimmed}})
	measured(&p, d, first, 51.6, []measure{{0, f.allowance, say.JoinAllowance}}) // clear of the words above
	points(&p, geom.Pt(left+12, 60), geom.Pt(2, 70.4), words.inner)
	points(&p, geom.Pt(left+18, 60+ply), geom.Pt(30, 74), words.outer)
	measured(&p, d, felled, 12.6, []measure{{-f.fold, 0, say.FoldAt}, {-f.second, 0, say.SecondRow}})
	points(&p, geom.Pt(left+8, 15), geom.Pt(2, 29), words.outer)
	points(&p, geom.Pt(left+room-8, 15), geom.Pt(66, 29), words.inner)
	return p
}
