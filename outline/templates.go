package outline

import (
	"fmt"
	"strconv"

	"slingloft/outline/design"
	"slingloft/outline/geom"
	"slingloft/outline/hung"
	"slingloft/outline/piece"
	"slingloft/outline/template"
	"slingloft/outline/words"
)

// Templates builds every stiff template and gauge of the bed at its full size.
func (c Cutting) Templates() ([]piece.Piece, error) {
	o := template.Options{
		Tick: c.Design.Template.Tick, Backing: c.Design.Template.Backing, Letter: c.Design.Template.Letter,
		Whole: c.Design.Template.Whole, Style: c.Design.Output.Style(1), Words: c.Words.Boards,
		Notes: []string{c.Design.Name, fmt.Sprintf(c.Words.Boards.Design, c.Digest)},
	}
	out, err := template.Side("template-side", o.Words.Side, c.sideCurve(), o)
	if err != nil {
		return nil, err
	}
	add := func(t piece.Piece, err error) error {
		out = append(out, t)
		return err
	}
	for _, e := range hung.Ends() {
		if err := add(template.Tail("template-tail-"+e.String(), o.Words.Tails[e], c.tailCurves(e), o)); err != nil {
			return nil, err
		}
		if c.Design.Cap.Kind != design.Gathered {
			if err := add(template.Shape("template-cap-"+e.String(), o.Words.Caps[e], c.capEdges(e, o), o)); err != nil {
				return nil, err
			}
		}
	}
	if c.Design.Channel.Kind == design.Facing {
		t, err := template.Ring("template-facing", o.Words.Facing, c.Sewn.FacingBoard, nil, o)
		if err != nil {
			return nil, err
		}
		t.Lines = append(t.Lines, piece.Line{Name: "inner edge", Work: piece.Mark, Points: c.Sewn.FacingInner})
		out = append(out, t)
	}
	gauges, err := c.gauges(o)
	return append(out, gauges...), err
}

// sideCurve returns the side seam in the bay with its notches.
func (c Cutting) sideCurve() template.SideCurve {
	side := c.Sewn.SideNet
	from, to := c.Sewn.BarRuns()
	curve := template.SideCurve{Line: geom.NewArc(side.Flat).Between(from, to)}
	for _, n := range c.Sewn.SideNotches {
		if at := side.FlatOf(n.At); !n.Bar && at > from && at < to {
			curve.Notches = append(curve.Notches, template.Notch{Name: strconv.Itoa(n.Number), Bare: true, At: at - from})
		}
	}
	return curve
}

// tailCurves returns the curves that bound half an end's tail.
func (c Cutting) tailCurves(e hung.End) template.TailCurves {
	head, foot := c.Sewn.BarRuns()
	arc := geom.NewArc(c.Sewn.SideNet.Flat)
	end := geom.NewArc(c.Sewn.EndNets[e].Flat)
	t := template.TailCurves{Bar: c.Sewn.BarLines[e], End: end.Between(end.Length()/2, end.Length())}
	if e == hung.Head {
		t.Side = arc.Between(0, head).Reversed()
	} else {
		t.Side = arc.Between(foot, arc.Length())
	}
	for _, n := range c.Sewn.EndNotches[e] {
		if at := c.Sewn.EndNets[e].FlatOf(n.At) - end.Length()/2; at > 1 {
			t.EndNotches = append(t.EndNotches, template.Notch{Name: n.Name, At: at})
		}
	}
	return t
}

// capEdges returns an end cap's seam and top edge.
func (c Cutting) capEdges(e hung.End, o template.Options) []template.Edge {
	seam, top := c.Sewn.CapSeams[e], c.Sewn.CapTops[e]
	s := o.Edge(words.CapSeamEdge, seam, true)
	for _, n := range c.Sewn.EndNotches[e] {
		at := n.At
		if e == hung.Foot {
			at = seam.Length() - at // its seam runs from the left
		}
		s.Notches = append(s.Notches, template.Notch{Name: n.Name, At: at, Double: n.Double})
	}
	return []template.Edge{s, o.Edge(words.CapTopEdge, top, true)}
}
