package sheet

import (
	"fmt"
	"math"

	"slingloft/export"
	"slingloft/export/sheet/picture"
	"slingloft/outline"
	"slingloft/outline/geom"
)

// lay shows every roll and sheet with the pieces on it.
func (b *builder) lay() (Section, error) {
	s := Section{ID: "lay", Title: "The lay"}
	if b.Unlaid {
		s.Blocks = append(s.Blocks, Para(unlaid))
	}
	for i, l := range b.Lays {
		kind := "sheet"
		if l.Roll {
			kind = "roll"
		}
		caption := fmt.Sprintf("%s on %s: %s of %s %s wide, %s used.", l.Name, l.Material, b.round(l.Width), kind, b.round(l.Height), percent(l.Use))
		if !l.Roll {
			caption = fmt.Sprintf("%s, %s, %s × %s, %s used.", l.Name, l.Material, b.round(l.Width), b.round(l.Height), percent(l.Use))
		}
		s.Blocks = append(s.Blocks, Figures{{b.layPicture(i, l), caption, true}})
		if l.Roll {
			s.Blocks = append(s.Blocks, b.placesTable(i, l))
		}
	}
	return s, nil
}

// unlaid stands where the lay is not known yet.
const unlaid = "The pieces are not laid yet."

// layPicture draws one roll or sheet.
func (b *builder) layPicture(i int, l Lay) picture.Picture {
	const left, right, above = 15.0, 6.0, 3.0
	kept, below := keptIn(l), 11.0
	if len(kept) > 0 {
		below += 4 // room for the legend
	}
	tallest := 96.0 // two template sheets on a printed page
	if l.Roll {
		tallest = 130
	}
	k := math.Min((wide-left-right)/l.Width, tallest/l.Height)
	p := picture.Picture{ID: fmt.Sprintf("lay-%d", i+1), Title: l.Name, Width: wide, Height: below + above + k*l.Height}
	v := picture.View{Scale: k, Shift: geom.Pt(left+(wide-left-right-k*l.Width)/2, below)}
	edge := geom.BoxOf(geom.Pt(0, 0), geom.Pt(l.Width, l.Height))
	for _, it := range l.Items {
		p.Area(picture.Cloth, v.Line(geom.Polyline(it.Piece.Cut.Moved(it.Motion)))...)
	}
	p.Items = append(p.Items, picture.Path{Lines: []geom.Polyline{v.Line(geom.Polyline(edge.Ring()))}, Closed: true, Stroke: picture.Quiet, Width: picture.Medium})
	for _, a := range kept {
		drawKept(&p, v.Line(geom.Polyline(a.Outline)))
	}
	for n, it := range l.Items {
		b.layItem(&p, v, it, n+1)
	}
	p.Level(v.At(geom.Pt(0, 0)), v.At(geom.Pt(l.Width, 0)), below-7, b.round(l.Width))
	p.Upright(v.At(geom.Pt(0, 0)), v.At(geom.Pt(0, l.Height)), v.Shift.X-6, b.round(l.Height))
	legend(&p, kept)
	p.Desc = fmt.Sprintf("%d parts on %s by %s, %s of it used.", len(l.Items), b.round(l.Width), b.round(l.Height), percent(l.Use))
	if words := keptWords(kept); words != "" {
		p.Desc += " Hatched, and kept clear: " + words + "."
	}
	if l.Roll {
		p.Desc += " The roll runs from left to right; the table below says where each lies."
	}
	return p
}

// layItem draws a laid piece with its name.
func (b *builder) layItem(p *picture.Picture, v picture.View, it export.Item, n int) {
	cut := it.Piece.Cut.Moved(it.Motion)
	lines := []geom.Polyline{v.Line(geom.Polyline(cut))}
	for _, h := range it.Piece.Holes {
		lines = append(lines, v.Line(geom.Polyline(h.Moved(it.Motion))))
	}
	p.Items = append(p.Items, picture.Path{Lines: lines, Closed: true, Stroke: picture.Cut, Width: picture.Thin})
	name := fmt.Sprintf("%d %s", n, it.Piece.ID)
	t := picture.Text{Text: name, Size: picture.Small, Anchor: outline.Centre, Ink: picture.Main}
	at, long := inner(cut)
	room := long * v.Scale
	if need := picture.Width(name, picture.Small, false) + 1; room < need {
		if up, high := inner(upended(cut)); high*v.Scale >= need {
			t.Turn, at = math.Pi/2, geom.Pt(up.Y, up.X)
		} else {
			t.Text = fmt.Sprint(n)
		}
	}
	c := v.At(at)
	if !p.WriteFree(t, c, c.Plus(geom.Pt(0, 3.4)), c.Minus(geom.Pt(0, 3.4)), c.Plus(geom.Pt(room/4, 0)), c.Minus(geom.Pt(room/4, 0))) {
		t.Text = fmt.Sprint(n)
		p.WriteFree(t, c, c.Plus(geom.Pt(3, 0)), c.Minus(geom.Pt(3, 0)), c.Plus(geom.Pt(room/3, 0)), c.Minus(geom.Pt(room/3, 0)))
	}
}

// inner returns a point well inside an outline: the middle of the longest level
// stretch inside it at a few heights, and how long that is.
func inner(r geom.Ring) (at geom.Point, long float64) {
	box := r.Bounds()
	at = box.Center()
	for _, part := range []float64{0.5, 0.35, 0.65, 0.2, 0.8} {
		y := box.Min.Y + part*box.Height()
		xs := crossings(r, y)
		for i := 1; i < len(xs); i += 2 {
			if w := xs[i] - xs[i-1]; w > long*1.15 {
				at, long = geom.Pt((xs[i]+xs[i-1])/2, y), w
			}
		}
	}
	return at, long
}

// upended returns an outline with its axes changed for each other.
func upended(r geom.Ring) geom.Ring {
	out := make(geom.Ring, len(r))
	for i, p := range r {
		out[i] = geom.Pt(p.Y, p.X)
	}
	return out
}

// placesTable tells where each piece lies on the roll.
func (b *builder) placesTable(i int, l Lay) Table {
	t := Table{ID: fmt.Sprintf("lay-%d-places", i+1), Caption: "Where each piece's outermost points lie: from the roll's cut end, and from the lower selvedge, in " + b.unitWord(),
		Head: []string{"piece", "from", "to", "from selvedge", "to", "lies"}, Words: []bool{true, false, false, false, false, true}}
	for n, it := range l.Items {
		box := it.Piece.Cut.Moved(it.Motion).Bounds()
		lies := "as drawn"
		if math.Abs(math.Remainder(it.Motion.Turn, 2*math.Pi)) > 1e-9 {
			lies = "turned " + degrees(it.Motion.Turn)
		}
		if it.Motion.Mirror {
			lies += ", mirrored"
		}
		t.Rows = append(t.Rows, []string{fmt.Sprintf("%d %s", n+1, it.Piece.ID), b.figure(box.Min.X), b.figure(box.Max.X), b.figure(box.Min.Y), b.figure(box.Max.Y), lies})
	}
	return t
}
