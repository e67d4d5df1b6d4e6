package work

import (
	"slices"
	"strconv"
	"strings"

	"slingloft/export"
	"slingloft/outline"
	"slingloft/outline/design"
	"slingloft/outline/geom"
	"slingloft/outline/hung"
)

// templates builds every stiff template and gauge of a plan, those longer than
// the sheet divided.
func templates(p *Plan) ([]outline.Piece, error) {
	s := p.Design.Sheet
	frame, err := export.Within(s.Width, s.Height)
	if err != nil {
		return nil, err
	}
	whole, err := wholeTemplates(p)
	if err != nil {
		return nil, err
	}
	var out []outline.Piece
	w, h := frame.Lay.Width()-2*s.Margin, frame.Lay.Height()-2*s.Margin
	for _, t := range whole {
		parts, err := outline.Divide(t, w, h, outline.NewJoint(s.Kerf))
		if err != nil {
			return nil, err
		}
		for _, q := range parts {
			out = append(out, q.Piece)
		}
	}
	return out, nil
}

// wholeTemplates builds the templates and gauges at their full size.
func wholeTemplates(p *Plan) ([]outline.Piece, error) {
	o := outline.TemplateOptions{
		Tick: p.Design.Template.Tick, Backing: p.Design.Template.Backing, Letter: p.Design.Template.Letter,
		Whole: p.Design.Template.Whole, Style: p.Style(), Notes: []string{p.Design.Name, "design " + p.Digest},
	}
	out, err := outline.SideTemplate("template-side", "SIDE CURVE", p.sideCurve(), o)
	if err != nil {
		return nil, err
	}
	add := func(t outline.Piece, err error) error {
		out = append(out, t)
		return err
	}
	for _, e := range []hung.End{hung.Head, hung.Foot} {
		name := strings.ToUpper(e.String())
		if err := add(outline.TailTemplate("template-tail-"+e.String(), name+" TAIL", p.tailCurves(e), o)); err != nil {
			return nil, err
		}
		if p.Design.Cap.Kind != design.Gathered {
			if err := add(outline.ShapeTemplate("template-cap-"+e.String(), name+" CAP", p.capEdges(e), o)); err != nil {
				return nil, err
			}
		}
	}
	if p.Design.Channel.Kind == design.Facing {
		t, err := outline.RingTemplate("template-facing", "FACING", p.Sewn.FacingBoard, nil, o)
		if err != nil {
			return nil, err
		}
		t.Lines = append(t.Lines, outline.Line{Name: "inner edge", Work: outline.Mark, Points: p.Sewn.FacingInner})
		out = append(out, t)
	}
	gauges, err := p.gauges(o)
	return append(out, gauges...), err
}

// gauges builds the press, allowance, cord and notch gauges.
func (p *Plan) gauges(o outline.TemplateOptions) ([]outline.Piece, error) {
	d := p.Design
	var out []outline.Piece
	add := func(t outline.Piece, err error) error {
		out = append(out, t)
		return err
	}
	folds := []outline.GaugeMark{{Name: "TURN-UNDER", At: d.Channel.TurnUnder}}
	if d.Channel.Kind == design.Strip {
		folds = append(folds, outline.GaugeMark{Name: "CHANNEL FOLD", At: d.Channel.TurnUnder + d.Channel.Foot + d.Channel.Depth})
	}
	folds = append(folds, outline.GaugeMark{Name: "HEM", At: d.Cap.Hem})
	allow := []outline.GaugeMark{{Name: "SIDE", At: d.Seam.Side}, {Name: "END", At: d.Seam.End}}
	if d.Cap.Kind != design.Gathered {
		allow = append(allow, outline.GaugeMark{Name: "CAP", At: d.Seam.Cap}, outline.GaugeMark{Name: "TOP HEM", At: 2 * d.Cap.Hem})
	}
	if folds = wide(folds); len(folds) > 0 {
		if err := add(outline.PressGauge("gauge-press", "PRESS GAUGE", folds, o)); err != nil {
			return nil, err
		}
	}
	if allow = wide(allow); len(allow) > 0 {
		if err := add(outline.AllowanceGauge("gauge-allowance", "ALLOWANCE GAUGE", allow, o)); err != nil {
			return nil, err
		}
	}
	for i, g := range cordGauges(p.Cords.Cords) {
		n := strconv.Itoa(i + 1)
		title := "CORD GAUGE " + n + ": " + strings.ToUpper(strings.Join(g.serves, ", "))
		if err := add(outline.StripGauge("gauge-cord-"+n, title, g.marks, o)); err != nil {
			return nil, err
		}
	}
	notches := []outline.GaugeMark{{Name: "HEAD END"}}
	for _, n := range p.Sewn.SideNotches {
		notches = append(notches, outline.GaugeMark{Name: "NOTCH " + n.Name[1:], At: n.At})
	}
	notches = append(notches, outline.GaugeMark{Name: "FOOT END", At: p.Sewn.SideNet.HungLength()})
	err := add(outline.StripGauge("gauge-notch", "NOTCHES OF THE SIDE SEAM", notches, o))
	return out, err
}

// wide returns the steps of a gauge that have a width: what is cut without an
// allowance or raw needs no step.
func wide(marks []outline.GaugeMark) []outline.GaugeMark {
	return slices.DeleteFunc(marks, func(m outline.GaugeMark) bool { return m.At < 0.05 })
}

// sideCurve returns the side seam in the bay with its notches.
func (p *Plan) sideCurve() outline.SideCurve {
	side := p.Sewn.SideNet
	from, to := p.tipRuns()
	c := outline.SideCurve{Line: geom.NewArc(side.Flat).Between(from, to)}
	for _, n := range p.Sewn.SideNotches {
		if at := side.FlatOf(n.At); !n.Bar && at > from && at < to {
			c.Notches = append(c.Notches, outline.TemplateNotch{Name: n.Name[1:], At: at - from})
		}
	}
	return c
}

// tipRuns returns the flat running lengths of the side seam at both bars.
func (p *Plan) tipRuns() (head, foot float64) {
	arc := geom.NewArc(p.Sewn.SideNet.Flat)
	var out [2]float64
	for e, l := range p.Sewn.BarLines {
		out[e], _ = arc.Nearest(l[len(l)-1])
	}
	return out[hung.Head], out[hung.Foot]
}

// tailCurves returns the curves that bound half an end's tail.
func (p *Plan) tailCurves(e hung.End) outline.TailCurves {
	head, foot := p.tipRuns()
	arc := geom.NewArc(p.Sewn.SideNet.Flat)
	end := geom.NewArc(p.Sewn.EndNets[e].Flat)
	t := outline.TailCurves{Bar: p.Sewn.BarLines[e], End: end.Between(end.Length()/2, end.Length())}
	if e == hung.Head {
		t.Side = arc.Between(0, head).Reversed()
	} else {
		t.Side = arc.Between(foot, arc.Length())
	}
	for _, n := range p.Sewn.EndNotches[e] {
		if at := p.Sewn.EndNets[e].FlatOf(n.At) - end.Length()/2; at > 1 {
			t.EndNotches = append(t.EndNotches, outline.TemplateNotch{Name: n.Name, At: at})
		}
	}
	return t
}

// capEdges returns an end cap's seam and top edge.
func (p *Plan) capEdges(e hung.End) []outline.TemplateEdge {
	seam, top := p.Sewn.CapSeams[e], p.Sewn.CapTops[e]
	s := outline.TemplateEdge{Name: "SEAM", Line: seam, Ticks: true}
	for _, n := range p.Sewn.EndNotches[e] {
		at := n.At
		if e == hung.Foot {
			at = seam.Length() - at // its seam runs from the left
		}
		s.Notches = append(s.Notches, outline.TemplateNotch{Name: n.Name, At: at, Double: n.Double})
	}
	return []outline.TemplateEdge{s, {Name: "TOP, HEM", Line: top, Ticks: true}}
}
