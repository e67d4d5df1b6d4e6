package outline

import (
	"strings"

	"slingloft/outline/design"
	"slingloft/outline/geom"
	"slingloft/outline/hung"
	"slingloft/outline/piece"
	"slingloft/outline/template"
)

// Templates builds every stiff template and gauge of the bed at its full size.
func (c Cutting) Templates() ([]piece.Piece, error) {
	o := template.Options{
		Tick: c.Design.Template.Tick, Backing: c.Design.Template.Backing, Letter: c.Design.Template.Letter,
		Whole: c.Design.Template.Whole, Style: c.Design.Output.Style(1), Notes: []string{c.Design.Name, "design " + c.Digest},
	}
	out, err := template.Side("template-side", "SIDE CURVE", c.sideCurve(), o)
	if err != nil {
		return nil, err
	}
	add := func(t piece.Piece, err error) error {
		out = append(out, t)
		return err
	}
	for _, e := range []hung.End{hung.Head, hung.Foot} {
		name := strings.ToUpper(e.String())
		if err := add(template.Tail("template-tail-"+e.String(), name+" TAIL", c.tailCurves(e), o)); err != nil {
			return nil, err
		}
		if c.Design.Cap.Kind != design.Gathered {
			if err := add(template.Shape("template-cap-"+e.String(), name+" CAP", c.capEdges(e), o)); err != nil {
				return nil, err
			}
		}
	}
	if c.Design.Channel.Kind == design.Facing {
		t, err := template.Ring("template-facing", "FACING", c.Sewn.FacingBoard, nil, o)
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
			curve.Notches = append(curve.Notches, template.Notch{Name: n.Name[1:], At: at - from})
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
func (c Cutting) capEdges(e hung.End) []template.Edge {
	seam, top := c.Sewn.CapSeams[e], c.Sewn.CapTops[e]
	s := template.Edge{Name: "SEAM", Line: seam, Ticks: true}
	for _, n := range c.Sewn.EndNotches[e] {
		at := n.At
		if e == hung.Foot {
			at = seam.Length() - at // its seam runs from the left
		}
		s.Notches = append(s.Notches, template.Notch{Name: n.Name, At: at, Double: n.Double})
	}
	return []template.Edge{s, {Name: "TOP, HEM", Line: top, Ticks: true}}
}
