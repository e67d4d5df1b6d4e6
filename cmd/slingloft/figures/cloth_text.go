package figures

import (
	"fmt"
	"io"
	"math"
	"text/tabwriter"

	"slingloft/outline/hung"
	"slingloft/outline/quantity"
)

// Text writes it for people, in the units of a style.
func (d Cloth) Text(w io.Writer, s quantity.Style, say Words) error {
	b := &report{style: s, words: say.Names, say: say}
	b.out = tabwriter.NewWriter(&b.text, 0, 0, 2, ' ', tabwriter.AlignRight)
	c := say.Cloth
	b.line(say.Head, d.Name, d.Digest, d.Mark)
	b.head(c.Title)
	b.line("%s", d.about(say))
	if !d.How.Settled {
		b.line(c.Moves, b.mm(d.How.Off))
	}
	b.line(c.Balance, quantity.Decimal(100*math.Abs(d.How.Balance), 2))
	b.head(c.Level, s.LengthUnit())
	under := [3]string{c.Crown, c.Seat, c.Soles}
	if d.draped.Sits {
		under = [3]string{c.HeadBar, c.Seat, c.FootBar}
	}
	for i, v := range [3]float64{d.Level.Head, d.Level.Seat, d.Level.Feet} {
		b.row(under[i], b.figure(v))
	}
	b.row(c.Under, b.figure(d.Level.Under))
	b.row(c.Bay, b.figure(d.Level.Bay))
	b.row(c.Whole, b.figure(d.Level.Whole))
	b.pulls(d)
	b.drawn(d)
	b.line("%s", c.How)
	if d.draped.StiffCords || d.draped.StiffCloth || d.draped.StiffLines {
		b.line("%s", c.Stiff)
	}
	b.line(say.Caution, say.Vary.Careful)
	b.out.Flush()
	_, err := io.WriteString(w, b.text.String())
	return err
}

// about says who lies in it, and how.
func (d Cloth) about(say Words) string {
	c := say.Cloth
	who := c.Sleeper
	if d.How.Guest != "" {
		who = d.How.Guest
	}
	how := c.OnRound
	switch {
	case d.draped.Sits:
		how = c.Sitting
	case d.How.Body:
		how = c.AsBody
	}
	fine := c.Quick
	if d.How.Exact {
		fine = c.Exact
	}
	return fmt.Sprintf(c.About, who, how, fine)
}

// pulls tables the loads beside those of the made bed.
func (b *report) pulls(d Cloth) {
	c := b.say.Cloth
	b.head(c.Loads, b.style.ForceUnit())
	b.row("", c.Here, c.Made, c.Differs)
	row := func(name string, v float64, of func(ClothCords) float64) {
		if d.Made == nil {
			b.row(name, b.style.ForceFigure(v), b.say.NotGiven, "")
			return
		}
		m := of(*d.Made)
		b.row(name, b.style.ForceFigure(v), b.style.ForceFigure(m), fmt.Sprintf("%+.1f %%", 100*(v/m-1)))
	}
	row(c.SideCord, d.Cords.Side, func(m ClothCords) float64 { return m.Side })
	for _, e := range hung.Ends() {
		row(c.Legs[e], d.Cords.Leg[e], func(m ClothCords) float64 { return m.Leg[e] })
		row(c.Lines[e], d.Cords.Line[e], func(m ClothCords) float64 { return m.Line[e] })
		row(c.Bars[e], d.Cords.Bar[e], func(m ClothCords) float64 { return m.Bar[e] })
	}
}

// drawn tells how the cloth is drawn.
func (b *report) drawn(d Cloth) {
	c, q := b.say.Cloth, d.Cloth
	b.head(c.Drawn)
	at := func(m Most) [2]string { return [2]string{b.mm(m.At[0]), b.mm(m.At[1])} }
	x := at(q.Weft)
	b.line(c.Weft, b.style.PerWidth(q.Weft.Value), x[0], x[1])
	x = at(q.Warp)
	b.line(c.Warp, b.style.PerWidth(q.Warp.Value), x[0], x[1])
	x = at(q.Shear)
	b.line(c.Shear, b.deg(q.Shear.Value), x[0], x[1])
	b.line(c.SlackPart, quantity.Decimal(100*q.Slack, 0))
	for _, s := range q.Slacks {
		b.line(c.Slack, b.mm(s[0]), b.mm(s[1]))
	}
	b.row(c.Station, c.AcrossBed, c.AlongBed, c.Sheared, c.IsSlack)
	for _, s := range q.Stretch {
		b.row(b.figure(s.X), b.style.PerWidth(s.Weft), b.style.PerWidth(s.Warp), b.deg(s.Shear), quantity.Decimal(100*s.Slack, 0)+" %")
	}
}
