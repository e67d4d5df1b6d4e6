package splice

import (
	"fmt"

	"slingloft/export/sheet/given"
	"slingloft/export/sheet/picture"
	"slingloft/outline/cord"
	"slingloft/outline/geom"
)

// Fastened draws how a hang line is made fast at its anchor, where that is not an eye like
// the others: an eye that slides on its own end, or a round turn and two half hitches.
func Fastened(d *given.Data, l cord.HangLine) picture.Picture {
	switch l.Fastening {
	case cord.SlidingEye:
		return sliding(d, l)
	case cord.Hitched:
		return hitched(d, l)
	}
	return picture.Picture{}
}

// sliding draws a sliding eye, to scale along its bury.
func sliding(d *given.Data, l cord.HangLine) picture.Picture {
	say := d.Say.Splicing
	stop, _ := find(l.Cord, cord.Spot{Kind: cord.BuryEnd, On: cord.FarEye})
	throat, _ := find(l.Cord, cord.Spot{Kind: cord.Throat, On: cord.FarEye})
	set, _ := find(l.Cord, cord.Spot{Kind: cord.SetMark})
	bury := throat.Spliced - stop.Spliced
	const y, from, to = 16.0, 22.0, 58.0
	p := picture.Picture{ID: "splice-sliding-" + picture.SafeID(l.Part.String()), Title: fmt.Sprintf(say.Sliding.Title, d.CordName(l.Cord)),
		Desc: fmt.Sprintf(say.Sliding.Desc, d.Rope(bury), d.Rope(set.FromEnd)), Width: picture.Half, Height: 38}
	rope(&p, legLook(), straight(1, from, y), even(bare))
	rope(&p, legLook(), straight(from, to, y), even(filled))
	ghost(&p, legLook(), straight(from, to, y), even(inner))
	rope(&p, legLook(), curve(geom.Pt(to, y), geom.Pt(66, y+4.6), geom.Pt(78, y+4.4), geom.Pt(83, y), geom.Pt(78, y-4.4), geom.Pt(66, y-4.6), geom.Pt(to, y)), even(bare))
	p.Outline(picture.Bar, picture.Medium, geom.Polyline(geom.CirclePoints(geom.Pt(79.4, y), 1.9, 0.02)))
	out := curve(geom.Pt(from, y), geom.Pt(from-5, y+2.6), geom.Pt(from-10, y+5.6), geom.Pt(4, y+6.4))
	rope(&p, legLook(), out, even(inner+0.6))
	p.Dot(picture.Bar, out[len(out)-1], 1.5)
	stroke(&p, geom.Pt(from, y), filled)
	stroke(&p, geom.Pt(to, y), filled)
	p.Level(geom.Pt(from, y-3), geom.Pt(to, y-3), 8, d.Rope(bury))
	text(&p, 1, y+10, say.Stopper)
	flagged(&p, geom.Pt(from, y+2), geom.Pt(20, y+14.6), say.SetMarkShows)
	flagged(&p, geom.Pt(to, y+2), geom.Pt(48, y+10), say.ThroatMark)
	text(&p, 30, 2, say.NoStitch)
	return p
}

// hitched draws a round turn and two half hitches, schematically.
func hitched(d *given.Data, l cord.HangLine) picture.Picture {
	say, k := d.Say.Splicing, legLook()
	const y = 20.0
	p := picture.Picture{ID: "splice-hitched-" + picture.SafeID(l.Part.String()), Title: fmt.Sprintf(say.Hitch.Title, d.CordName(l.Cord)),
		Desc: say.Hitch.Desc, Width: picture.Half, Height: 40}
	post := func(from, to float64) { // the anchor, seen from the side, in front of what is behind it
		p.Area(picture.Cloth, geom.Pt(66, from), geom.Pt(78, from), geom.Pt(78, to), geom.Pt(66, to))
		p.Line(picture.Bar, picture.Medium, geom.Pt(66, from), geom.Pt(66, to))
		p.Line(picture.Bar, picture.Medium, geom.Pt(78, from), geom.Pt(78, to))
	}
	rope(&p, k, straight(64, 80, y+3), even(bare)) // behind the post
	post(2, 38)
	rope(&p, k, curve(geom.Pt(1, y+3), geom.Pt(40, y+3), geom.Pt(66, y+4), geom.Pt(79, y+6), geom.Pt(80.6, y+4.4)), even(bare))
	rope(&p, k, curve(geom.Pt(80.6, y-2), geom.Pt(78, y-3.6), geom.Pt(66, y-2.4), geom.Pt(56, y-1.6), geom.Pt(48, y-1.6)), even(bare))
	for i := range 2 { // a half hitch each: over the line, behind it, and out under itself
		x := 48 - 13*float64(i)
		rope(&p, k, curve(geom.Pt(x, y-1.6), geom.Pt(x-3, y+2), geom.Pt(x-4.4, y+6.4), geom.Pt(x-7.4, y+6.6), geom.Pt(x-8.6, y+3.6)), even(bare*0.8))
		rope(&p, k, curve(geom.Pt(x-8.4, y+0.6), geom.Pt(x-7, y-2.6), geom.Pt(x-4.6, y-4), geom.Pt(x-0.6, y-3.4)), even(bare*0.8))
	}
	rope(&p, k, curve(geom.Pt(34.4, y-3.4), geom.Pt(28, y-5.6), geom.Pt(16, y-7)), even(bare*0.8))
	text(&p, 1, y+7, say.ToApex)
	text(&p, 1, 5.4, say.WorkingEnd)
	flagged(&p, geom.Pt(67, y+5), geom.Pt(38, 33.6), say.AnchorMark)
	return p
}
