package splice

import (
	"fmt"
	"slices"

	"slingloft/export/sheet/given"
	"slingloft/export/sheet/picture"
	"slingloft/outline/cord"
	"slingloft/outline/design"
	"slingloft/outline/geom"
)

// Readable returns the nodes that a tape shows before the chain is threaded: those past the
// foot tip's splice are not there yet where the foot eye is made after that.
func Readable(d *given.Data) []cord.Node {
	nodes := d.Cords.Nodes(d.Cords.ReadPull())
	if d.Design.Passage().Threading != design.LastEyeAfter {
		return nodes
	}
	return slices.DeleteFunc(nodes, func(n cord.Node) bool {
		return n.Part == cord.FootLeg && (n.Spot.Kind == cord.Throat || n.Spot.Kind == cord.Hook)
	})
}

// Chain draws one side's chain on its tape, to scale along it, with what the tape shows at
// every node under a light pull.
func Chain(d *given.Data) picture.Picture {
	say, nodes := d.Say.Splicing, Readable(d)
	if len(nodes) == 0 {
		return picture.Picture{}
	}
	middle := 0
	for i, n := range nodes {
		if n.Spot.Kind == cord.Middle {
			middle = i
		}
	}
	const x0, room = 5.0, 78.0
	up, down := len(nodes)-1-middle, middle+1
	long := nodes[len(nodes)-1].At
	y := 8 + row*float64(down)
	p := picture.Picture{ID: "splice-chain", Title: say.Chain.Title, Width: picture.Half, Height: y + 11 + row*float64(up),
		Desc: fmt.Sprintf(say.Chain.Desc, d.Style.Force(d.Cords.ReadPull()), d.Rope(long))}
	x := func(mm float64) float64 { return x0 + room*mm/long }
	chainCords(&p, nodes, x, y+3.4)
	tape(&p, x, long, y-1.6)
	var left, right []flag
	for i, n := range nodes {
		f := flag{geom.Pt(x(n.At), y-2.6), fmt.Sprintf(say.Reads, say.Nodes[n.Spot.Kind], d.Rope(n.At))}
		if i <= middle {
			left = append(left, f)
			continue
		}
		f.at.Y = y + 5.4
		right = append(right, f)
	}
	onwards(&p, y-4, below, left...)
	backwards(&p, y+7.4, above, right...)
	text(&p, x0, y+8+row*float64(up-1), fmt.Sprintf(say.Under, d.Style.Force(d.Cords.ReadPull())))
	return p
}

// chainCords draws the cords of a chain over their nodes: eyes on pins, gaps open.
func chainCords(p *picture.Picture, nodes []cord.Node, x func(float64) float64, y float64) {
	var tips []float64
	for _, n := range nodes {
		if n.Spot.Kind == cord.Tip {
			tips = append(tips, x(n.At))
		}
	}
	first, last := x(nodes[0].At), x(nodes[len(nodes)-1].At)
	side, leg := sideLook(), legLook()
	if nodes[0].Part == cord.SideLoop {
		leg = side
	}
	line := func(k look, a, b float64) { p.Line(k.edge, 2*picture.Bold, geom.Pt(a, y), geom.Pt(b, y)) }
	line(leg, first, tips[0]-1)
	line(side, tips[0]+1, tips[1]-1)
	line(leg, tips[1]+1, last)
	for _, n := range nodes {
		if n.Spot.Kind == cord.Hook {
			p.Outline(leg.edge, picture.Medium, geom.Polyline(geom.CirclePoints(geom.Pt(x(n.At), y), 1, 0.02)))
		}
	}
	for _, at := range tips {
		p.Outline(side.edge, picture.Medium, curve(geom.Pt(at-1, y), geom.Pt(at, y+0.9), geom.Pt(at+1, y), geom.Pt(at, y-0.9), geom.Pt(at-1, y)))
		p.Dot(picture.Main, geom.Pt(at, y), 0.4)
	}
}

// tape draws a measuring tape below a chain: a division every 100 mm, or every 4 in, which
// is about as much.
func tape(p *picture.Picture, x func(float64) float64, long, y float64) {
	p.Line(picture.Quiet, picture.Thin, geom.Pt(x(0), y), geom.Pt(x(long), y))
	const step = 100.0
	marks := picture.Path{Stroke: picture.Quiet, Width: picture.Hair}
	for i := 0; float64(i)*step <= long; i++ {
		tall := 0.9
		if i%5 == 0 {
			tall = 1.7
		}
		at := x(float64(i) * step)
		marks.Lines = append(marks.Lines, geom.Polyline{{X: at, Y: y}, {X: at, Y: y + tall}})
	}
	p.Items = append(p.Items, marks)
}
