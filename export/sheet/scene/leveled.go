package scene

import (
	"fmt"

	"slingloft/export/sheet/given"
	"slingloft/export/sheet/picture"
	"slingloft/outline/geom"
	"slingloft/outline/hung"
	"slingloft/outline/piece"
)

// CutAgain shows the flat outline of the body at the cords before and after it was cut again
// from the cloth as it hangs.
func CutAgain(d *given.Data) picture.Picture {
	say, l := d.Say.Leveled, d.Leveled
	was, now := outlineOf(l.Was.Ends[hung.Head].Flat, l.Was.Side.Flat, l.Was.Ends[hung.Foot].Flat),
		outlineOf(d.Body.Ends[hung.Head].Flat, d.Body.Side.Flat, d.Body.Ends[hung.Foot].Flat)
	box := geom.EmptyBox()
	for _, q := range append(append(geom.Polyline(nil), was...), now...) {
		box = box.With(q)
	}
	k := (picture.Wide - 10) / box.Width()
	p := picture.Picture{ID: "view-cut-again", Title: say.Outline.Title, Width: picture.Wide, Height: k*box.Height() + 18}
	in, out := l.Most()
	p.Desc = fmt.Sprintf(say.Outline.Desc, d.SignedRound(in), d.SignedRound(out), d.SignedRound(l.EndSeams[hung.Head]), d.SignedRound(l.EndSeams[hung.Foot]))
	v := picture.Fit(box, geom.BoxOf(geom.Pt(5, 14), geom.Pt(picture.Wide-5, p.Height-4)))
	at := func(line geom.Polyline) geom.Polyline {
		var out geom.Polyline
		for _, q := range line {
			out = append(out, v.At(q))
		}
		return out
	}
	p.Dashed(picture.Quiet, picture.Thin, at(was)...)
	p.Line(picture.Main, picture.Medium, at(now)...)
	for _, half := range d.Body.Bars {
		end := half[len(half)-1]
		p.Line(picture.Quiet, picture.Hair, v.At(geom.Pt(end.X, -end.Y)), v.At(end))
	}
	x := 5.0
	for i, text := range [2]string{say.Before, say.After} {
		key := geom.Polyline{geom.Pt(x, 4.5), geom.Pt(x+8, 4.5)}
		if i == 0 {
			p.Dashed(picture.Quiet, picture.Thin, key...)
		} else {
			p.Line(picture.Main, picture.Medium, key...)
		}
		p.Write(picture.Text{Text: text, At: geom.Pt(x+9.5, 3.4), Size: picture.Letter, Ink: picture.Main, Anchor: piece.Start})
		x += 16 + picture.Width(text, picture.Letter, false)
	}
	return p
}

// outlineOf closes the halves of an outline round both sides of the centre line.
func outlineOf(head, side, foot geom.Polyline) geom.Polyline {
	half := append(append(append(geom.Polyline(nil), head...), side...), foot.Reversed()...)
	out := append(geom.Polyline(nil), half...)
	for i := len(half) - 1; i >= 0; i-- {
		out = append(out, geom.Pt(half[i].X, -half[i].Y))
	}
	return out
}
