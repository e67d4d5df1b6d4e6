package splice

import (
	"fmt"
	"math"

	"slingloft/export/sheet/given"
	"slingloft/export/sheet/picture"
	"slingloft/outline/cord"
	"slingloft/outline/geom"
	"slingloft/outline/piece"
)

// Join draws the join of a loop, to scale along it: each end drawn into the other. It has
// no size for a set without loops.
func Join(d *given.Data) picture.Picture {
	say := d.Say.Splicing
	if d.Cords.Variant != cord.Loops {
		return picture.Picture{}
	}
	s := Splices(d.Cords)[0]
	long, taper := s.tail()
	const y, mid, room = 17.0, 44.0, 36.0
	k := room / long
	p := picture.Picture{ID: "splice-join", Title: say.Join.Title, Desc: fmt.Sprintf(say.Join.Desc, d.Rope(long), d.Rope(taper)),
		Width: picture.Half, Height: 34}
	thick := func(s float64) float64 { return math.Max(tapering(filled, k*(long-taper), k*long)(s), bare) }
	rope(&p, sideLook(), finely(mid, 0.5, y), thick)
	rope(&p, sideLook(), finely(mid, 87.5, y), thick)
	for _, way := range []float64{-1, 1} {
		ghost(&p, sideLook(), straight(mid, mid+way*room, y), tapering(inner, k*(long-taper), k*long))
	}
	stroke(&p, geom.Pt(mid, y), filled)
	p.Line(picture.Quiet, picture.Hair, geom.Pt(mid, y+3), geom.Pt(mid, y+6))
	p.Write(picture.Text{Text: say.BothShoulders, At: geom.Pt(mid, y+8), Size: picture.Letter, Anchor: piece.Centre, Ink: picture.Main})
	for _, way := range []float64{-1, 1} {
		p.Level(geom.Pt(mid, y-3), geom.Pt(mid+way*room, y-3), 3.6, d.Rope(long))
		p.Level(geom.Pt(mid+way*k*(long-taper), y-3), geom.Pt(mid+way*room, y-3), 9.4, d.Rope(taper))
	}
	return p
}

// Seized draws a loop's corner, to scale along it: two runs side by side, seized at either
// end of the gap that takes the bar's tip. It has no size for a set without loops.
func Seized(d *given.Data) picture.Picture {
	say, gap := d.Say.Splicing, d.Cords.Splicing.Gap
	if d.Cords.Variant != cord.Loops {
		return picture.Picture{}
	}
	const y, mid, room = 17.0, 44.0, 26.0
	p := picture.Picture{ID: "splice-seized", Title: say.Seized.Title, Desc: fmt.Sprintf(say.Seized.Desc, d.Rope(gap)),
		Width: picture.Half, Height: 34}
	for _, side := range []float64{-1, 1} {
		rope(&p, sideLook(), curve(geom.Pt(0.5, y+side*bare/2), geom.Pt(mid-room/2-3, y+side*bare/2), geom.Pt(mid-room/2, y+side*bare/2),
			geom.Pt(mid, y+side*4), geom.Pt(mid+room/2, y+side*bare/2), geom.Pt(mid+room/2+3, y+side*bare/2),
			geom.Pt(87.5, y+side*bare/2)), even(bare))
	}
	p.Dot(picture.Main, geom.Pt(mid, y), 2)
	for _, way := range []float64{-1, 1} {
		turns := picture.Path{Stroke: picture.Second, Width: picture.Medium}
		for i := range 5 {
			x := mid + way*(room/2+0.3+0.9*float64(i))
			turns.Lines = append(turns.Lines, geom.Polyline{{X: x, Y: y - bare - 0.4}, {X: x, Y: y + bare + 0.4}})
		}
		p.Items = append(p.Items, turns)
	}
	text(&p, 2, y+8, say.Seizing)
	p.Line(picture.Quiet, picture.Hair, geom.Pt(mid-room/2-2, y+bare+0.4), geom.Pt(mid-room/2-2, y+7.4))
	flagged(&p, geom.Pt(mid, y+2), geom.Pt(mid+4, y+8), say.TipInGap)
	p.Level(geom.Pt(mid-room/2, y-4.6), geom.Pt(mid+room/2, y-4.6), 5, d.Rope(gap))
	return p
}
