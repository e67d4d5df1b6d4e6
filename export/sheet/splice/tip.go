package splice

import (
	"fmt"

	"slingloft/export/sheet/given"
	"slingloft/export/sheet/picture"
	"slingloft/export/sheet/wording"
	"slingloft/outline/cord"
	"slingloft/outline/design"
	"slingloft/outline/geom"
	"slingloft/outline/piece"
)

// barTip is the tip of a bar along the bar's axis, mm; places are counted outwards from the
// bar's end, thicknesses across.
type barTip struct {
	outer, bore float64 // of the bar; a solid bar has no bore
	shoulder    float64 // how far it keeps the cords off the bar's end
	reach, pin  float64 // where the cords' middle lies, and how thick the pin is
	cord        float64
	gap, half   float64 // the gap drawn out straight, and half of it on the pin
	known       bool    // whether the design says how thick the pin is
}

// tipOf returns it for a design: the cords lie against a shoulder, their middle as far out
// as the tip reaches. A pin whose thickness is not known is drawn as thick as the gap takes.
func tipOf(d *given.Data) (barTip, error) {
	bar, thick, gap := d.Design.Bar, d.Design.Side.Diameter, d.Cords.Splicing.Gap
	t := barTip{outer: bar.Outer, reach: bar.TipReach, pin: bar.TipDiameter, cord: thick, gap: gap, half: gap / 2, known: bar.TipDiameter > 0}
	t.shoulder = max(0, t.reach-t.cord/2)
	if bar.Wall > 0 {
		t.bore = bar.Outer - 2*bar.Wall
	}
	if !t.known {
		t.pin = max(gap/design.TipSpread-thick, thick/4)
	}
	spread, err := d.Cords.Splicing.Spread(thick)
	t.half = (gap - spread) / 2
	return t, err
}

// off is how far a cord's middle lies off the bar's axis.
func (t barTip) off() float64 { return (t.pin + t.cord) / 2 }

// far is where the pin is drawn to end: past the cords.
func (t barTip) far() float64 { return t.reach + 1.5*t.cord }

// tall is how thick all of it is.
func (t barTip) tall() float64 { return max(t.outer, 2*t.off()+t.cord) }

// Tip draws the tip of a bar, to scale: along the cords, how it is fixed in the bar and what
// keeps the cords off its end; along the bar, its pin in the gap. It has no size where there
// is no gap.
func Tip(d *given.Data) picture.Picture {
	t, err := tipOf(d)
	if t.gap == 0 || err != nil {
		return picture.Picture{}
	}
	k := min(20/t.tall(), 50/t.gap, 24/t.far())
	half := k * t.tall() / 2
	low, high := 11+row+half, 3*half+26+row
	words := TipWords(d)
	p := picture.Picture{ID: "splice-tip", Title: words.Title, Width: picture.Half, Height: high + half + 3.5*row,
		Desc: fmt.Sprintf(words.Desc, d.Cloth(t.reach), t.pinWords(d), d.Rope(t.gap))}
	t.alongCords(d, &p, picture.View{Scale: k, Shift: geom.Pt(min(42, 54-k*t.far()), high)})
	p.Outline(picture.Bar, picture.Thin, geom.Polyline(geom.CirclePoints(geom.Pt(44, low), k*t.outer/2, 0.02)))
	t.alongBar(d, &p, picture.View{Scale: k, Shift: geom.Pt(44, low)})
	return p
}

// pinWords names the pin and how thick it is.
func (t barTip) pinWords(d *given.Data) string {
	if !t.known {
		return d.Say.Splicing.PinNotGiven
	}
	return fmt.Sprintf(d.Say.Splicing.Pin, d.Thick(t.pin))
}

// TipWords says what [Tip] shows: a tip with a shoulder, or one at the very end of its bar.
func TipWords(d *given.Data) wording.Picture {
	if t, _ := tipOf(d); t.shoulder > 0 {
		return d.Say.Splicing.BarTip
	}
	return d.Say.Splicing.BareTip
}

// second is how the other cord at a tip looks and is called: the leg, or the loop's other
// run.
func second(d *given.Data) (look, string) {
	if d.Cords.Variant == cord.Loops {
		return sideLook(), d.Say.Splicing.OtherRun
	}
	return legLook(), d.Say.Splicing.Leg
}

// alongCords draws a tip from the side, cut open, with both cords over and under its pin.
func (t barTip) alongCords(d *given.Data, p *picture.Picture, v picture.View) {
	say := d.Say.Splicing
	box := func(from, to, high float64) geom.Polyline {
		return v.Line(geom.Polyline{{X: from, Y: -high / 2}, {X: to, Y: -high / 2}, {X: to, Y: high / 2}, {X: from, Y: high / 2}})
	}
	open, far := (6-v.Shift.X)/v.Scale, t.far() // the bar goes on to the left
	in := min(1.2*max(t.bore, t.pin), -open-6)
	fills := []struct {
		ink            picture.Ink
		from, to, high float64
	}{{picture.Bar, open, 0, t.outer}, {picture.Cloth, open, 0, t.bore}, {picture.Body, -in, 0, max(t.bore, t.pin)},
		{picture.Body, 0, t.shoulder, max(t.outer, t.pin)}, {picture.Body, t.shoulder, far, t.pin}}
	for _, f := range fills {
		if f.high > 0 && f.to > f.from {
			at := box(f.from, f.to, f.high)
			p.Area(f.ink, at...)
			if f.from > open {
				p.Outline(picture.Main, picture.Thin, at)
				continue
			}
			p.Line(picture.Main, picture.Thin, at[:2]...) // the bar goes on past the picture's edge
			p.Line(picture.Main, picture.Thin, at[2:]...)
		}
	}
	other, _ := second(d)
	for i, k := range []look{sideLook(), other} {
		side := float64(1 - 2*i)
		ring := geom.Polyline(geom.CirclePoints(v.At(geom.Pt(t.reach, side*t.off())), v.Scale*t.cord/2, 0.02))
		p.Area(k.fill, ring...)
		p.Outline(k.edge, picture.Medium, ring)
	}
	t.letters(d, p, v, far, in)
	edge := v.At(geom.Pt(0, -t.tall()/2))
	if t.reach > 0 {
		p.Level(edge, v.At(geom.Pt(t.reach, -t.off()-t.cord/2)), edge.Y-4, d.Cloth(t.reach))
	}
	text(p, 1, edge.Y-9.4, say.AlongCords)
}

// letters letters it.
func (t barTip) letters(d *given.Data, p *picture.Picture, v picture.View, far, in float64) {
	say := d.Say.Splicing
	top := v.At(geom.Pt(0, t.tall()/2)).Y
	flags := []flag{{v.At(geom.Pt(-in-5/v.Scale, t.outer/2)), say.BarEnd}, {v.At(geom.Pt(-in/2, t.pin/4)), say.Plug}}
	if t.shoulder > 0 {
		flags = append(flags, flag{v.At(geom.Pt(t.shoulder/2, t.pin/2+t.cord/2)), say.ShoulderOf})
	}
	onwards(p, top+1.6, above, flags...)
	_, name := second(d)
	x := v.At(geom.Pt(far, 0)).X + 2
	for i, what := range []string{say.SideCord, name} {
		side := float64(1 - 2*i)
		at := v.At(geom.Pt(t.reach+t.cord/2, side*t.off()))
		y := v.Shift.Y + side*max(v.Scale*t.off(), 3.8)
		p.Line(picture.Quiet, picture.Hair, at, geom.Pt(x, y))
		p.Write(picture.Text{Text: what, At: geom.Pt(x+0.8, y-1), Size: picture.Letter, Ink: picture.Main})
	}
	p.Write(picture.Text{Text: t.pinWords(d), At: geom.Pt(x, v.Shift.Y-1), Size: picture.Letter, Ink: picture.Main})
}

// alongBar draws a tip from outside along its bar: the pin, and both cords of the gap parting
// round it.
func (t barTip) alongBar(d *given.Data, p *picture.Picture, v picture.View) {
	say, reach := d.Say.Splicing, t.half
	way := parting(reach, t.off())
	part(d, p, v, way, t)
	pin := geom.Polyline(geom.CirclePoints(v.Shift, v.Scale*t.pin/2, 0.02))
	p.Area(picture.Body, pin...)
	p.Outline(picture.Main, picture.Medium, pin)
	_, name := second(d)
	for i, what := range []string{say.SideCord, name} {
		side := float64(2*i - 1)
		end := v.At(geom.Pt(side*reach, 0)).Plus(geom.Pt(side*4, v.Scale*t.cord*0.75+1.2))
		p.Write(picture.Text{Text: what, At: end, Size: picture.Letter, Anchor: [2]piece.Anchor{piece.End, piece.Start}[i], Ink: picture.Main})
	}
	low := v.Shift.Y - v.Scale*t.tall()/2
	words := fmt.Sprintf(say.GapBetween, d.Rope(t.gap))
	if t.known {
		words = fmt.Sprintf(say.OnTip, d.Rope(2*reach))
		text(p, 1, low-9.4, fmt.Sprintf(say.GapStraight, d.Rope(t.gap)))
	}
	p.Level(v.At(geom.Pt(-reach, 0)), v.At(geom.Pt(reach, 0)), low-4, words)
	text(p, 1, low-9.4-row, say.AlongBar)
}

// part draws both cords of a gap along their way round a tip, and their ends past it.
func part(d *given.Data, p *picture.Picture, v picture.View, way geom.Polyline, t barTip) {
	other, _ := second(d)
	var under geom.Polyline
	for _, q := range way {
		under = append(under, geom.Pt(q.X, -q.Y))
	}
	reach := -way[0].X
	for i, host := range []look{sideLook(), other} {
		end := float64(2*i - 1)
		x := v.At(geom.Pt(end*reach, 0)).X
		rope(p, host, straight(x, x+end*9, v.Shift.Y), even(v.Scale*t.cord*1.5))
	}
	rope(p, sideLook(), v.Line(way), even(v.Scale*t.cord))
	rope(p, other, v.Line(under), even(v.Scale*t.cord))
}
