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
	rope(&p, legLook(), curve(geom.Pt(to, y), geom.Pt(66, y+4.6), geom.Pt(78, y+4.4), geom.Pt(83, y), geom.Pt(78, y-4.4),
		geom.Pt(66, y-4.6), geom.Pt(to, y)), even(bare))
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

// hitchAt returns one half hitch of a working end that comes from the right at x: over the
// line at height y, behind it, and over itself; and where it goes behind the line.
func hitchAt(x, y float64) (over, behind, out geom.Polyline) {
	over = curve(geom.Pt(x+14, y-6), geom.Pt(x+4, y-5.4), geom.Pt(x-2, y-4), geom.Pt(x-3.4, y), geom.Pt(x-1.4, y+4.6), geom.Pt(x+2.6, y+5.2))
	behind = curve(geom.Pt(x+2, y+5.2), geom.Pt(x+5.4, y+3.4), geom.Pt(x+6, y), geom.Pt(x+5, y-3.6))
	out = curve(geom.Pt(x+5.2, y-3), geom.Pt(x+3.4, y-7.4), geom.Pt(x-2, y-10), geom.Pt(x-9, y-9))
	return over, behind, out
}

// hitched draws a round turn and two half hitches, schematically.
func hitched(d *given.Data, l cord.HangLine) picture.Picture {
	say, k := d.Say.Splicing, legLook()
	const y, thin = 24.0, 2.4
	p := picture.Picture{ID: "splice-hitched-" + picture.SafeID(l.Part.String()), Title: fmt.Sprintf(say.Hitch.Title, d.CordName(l.Cord)),
		Desc: say.Hitch.Desc, Width: picture.Half, Height: 42}
	const post, end = 68.0, 80.0
	rope(&p, k, curve(geom.Pt(post+2, y-4), geom.Pt(post-6, y-5.6), geom.Pt(58, y-6)), even(thin)) // out from behind the post
	p.Area(picture.Cloth, geom.Pt(post, 3), geom.Pt(end, 3), geom.Pt(end, 39), geom.Pt(post, 39))
	for _, x := range []float64{post, end} {
		p.Line(picture.Bar, picture.Medium, geom.Pt(x, 3), geom.Pt(x, 39))
	}
	places := []float64{47, 20}
	for _, x := range places {
		_, behind, _ := hitchAt(x, y)
		rope(&p, k, behind, even(thin))
	}
	rope(&p, k, curve(geom.Pt(1, y), geom.Pt(40, y), geom.Pt(post, y+0.6), geom.Pt(end+0.8, y+1.6)), even(thin))
	rope(&p, k, curve(geom.Pt(post-0.8, y-3.4), geom.Pt(74, y-2.6), geom.Pt(end+0.8, y-1.6)), even(thin))
	for _, x := range places {
		over, _, out := hitchAt(x, y)
		rope(&p, k, over, even(thin))
		rope(&p, k, out, even(thin))
	}
	rope(&p, k, curve(geom.Pt(places[0]-8.4, y-9.1), geom.Pt(places[0]-10.6, y-8), geom.Pt(places[1]+13, y-6.2)), even(thin))
	text(&p, 1, y+4, say.ToApex)
	text(&p, 1, y-16, say.WorkingEnd)
	flagged(&p, geom.Pt(post+1, y+0.8), geom.Pt(44, 37.6), say.AnchorMark)
	return p
}
