package scene

import (
	"fmt"

	"slingloft/export/sheet/given"
	"slingloft/export/sheet/picture"
	"slingloft/outline/geom"
	"slingloft/outline/room"
)

// Inside draws a part of the body in its section of the made bed, with the section as it
// was designed for a round one dashed; false where the part does not lie in the cloth.
func Inside(d *given.Data, f room.Fit) (picture.Picture, bool) {
	if f.Err != nil || f.Wrapped.Half == 0 {
		return picture.Picture{}, false
	}
	b := bed{d}
	say, part, lies := b.Say.Room, b.Say.Names.Room.Parts[f.Part], b.Say.Names.Room.Lies[f.Lies]
	w, lift := f.Wrapped, f.Wrapped.Height-f.Tube.Height
	top, low := max(w.Height, w.Depth), min(0, lift)
	k := min((picture.Half-24)/max(2*w.Half, w.Breadth), 62/(top-low))
	p := picture.Picture{ID: "room-" + f.Part.String(), Width: picture.Half, Height: 20 + k*(top-low),
		Title: fmt.Sprintf(say.Picture.Title, part, lies),
		Desc:  fmt.Sprintf(say.Picture.Desc, part, lies, b.Round(f.Opening), b.Round(w.Breadth), b.Round(w.Depth), b.Style.Angle(w.Wall))}
	v := picture.View{Scale: k, Shift: geom.Pt(picture.Half/2, 6-k*low)}
	p.Items = append(p.Items, picture.Path{Lines: []geom.Polyline{v.Line(geom.Polyline(w.Outline()))}, Fill: picture.Body,
		Filled: true, Closed: true})
	var tube geom.Polyline
	for _, q := range sectionLine(f.Tube) {
		tube = append(tube, v.At(geom.Pt(q.X, q.Y+lift)))
	}
	p.Dashed(picture.Quiet, picture.Thin, tube...)
	cloth := v.Line(w.Cloth())
	p.Line(picture.First, picture.Medium, cloth...)
	left, right := cloth[0], cloth[len(cloth)-1]
	p.Dot(picture.First, left, 0.9)
	p.Dot(picture.First, right, 0.9)
	p.Level(left, right, v.At(geom.Pt(0, top)).Y+5, b.Round(f.Opening))
	side := v.At(geom.Pt(-w.Breadth/2, w.Depth/2))
	p.Level(side, v.At(geom.Pt(w.Breadth/2, w.Depth/2)), side.Y, b.Round(w.Breadth))
	return p, true
}
