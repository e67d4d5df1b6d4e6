package outline

import (
	"fmt"
	"strconv"

	"slingloft/outline/bed"
	"slingloft/outline/design"
	"slingloft/outline/geom"
	"slingloft/outline/hung"
	"slingloft/outline/insectnet"
	"slingloft/outline/panel"
	"slingloft/outline/piece"
	"slingloft/outline/tarp"
	"slingloft/outline/template"
)

// Templates builds every stiff template and gauge of the bed at its full size.
func (c Cutting) Templates() ([]piece.Piece, error) {
	o := template.Options{
		Tick: c.Design.Template.Tick, Backing: c.Design.Template.Backing, Letter: c.Design.Template.Letter,
		Whole: c.Design.Template.Whole, Style: c.Design.Output.Style(1), Words: c.Words.Boards,
		Notes: []string{c.Design.Name, fmt.Sprintf(c.Words.Boards.Shape, c.Mark)}, Room: c.Room,
	}
	out, err := c.side("template-side", o.Words.Side, c.Sewn, o)
	if err != nil {
		return nil, err
	}
	add := func(t piece.Piece, err error) error {
		out = append(out, t)
		return err
	}
	for _, e := range hung.Ends() {
		title := fmt.Sprintf(o.Words.Half, o.Words.Tails[e])
		if err := add(template.Tail("template-tail-"+e.String(), title, tailCurves(c.Sewn, e), o)); err != nil {
			return nil, err
		}
		if c.Design.Cap.Kind != design.Gathered {
			if err := add(template.Cap("template-cap-"+e.String(), fmt.Sprintf(o.Words.Half, o.Words.Caps[e]), c.capCurves(e), o)); err != nil {
				return nil, err
			}
		}
	}
	if c.Design.Channel.Kind == design.Facing {
		if err := add(template.FacingTemplate("template-facing", o.Words.Facing, c.facingCurves(), o)); err != nil {
			return nil, err
		}
	}
	if base := c.Further.Sack.Base; len(base) > 0 {
		o := o
		o.Notes = []string{c.Design.Name, fmt.Sprintf(c.Words.Boards.Shape, marked(c.Further.Sack.Pieces))}
		half := template.RoundHalf{Piece: "sack-base", Seam: base}
		for _, n := range c.Further.Sack.Notches {
			half.Notches = append(half.Notches, template.Notch{Name: n.Name, At: n.At})
		}
		if err := add(template.Round("template-sack-base", fmt.Sprintf(o.Words.Half, o.Words.SackBase), half, o)); err != nil {
			return nil, err
		}
	}
	lining, err := c.lining(o)
	if out = append(out, lining...); err != nil {
		return nil, err
	}
	for _, h := range c.Further.Tarp.Hollows {
		t, err := c.hollow(h, o)
		if err := add(t, err); err != nil {
			return nil, err
		}
	}
	for _, e := range c.Further.Cover.Curves {
		t, err := c.coverEdge(e, o)
		if err := add(t, err); err != nil {
			return nil, err
		}
	}
	if c.Design.Template.NoGauges {
		return out, nil
	}
	gauges, err := c.gauges(o)
	return append(out, gauges...), err
}

// lining returns the templates of the lining's sides and tails; its ends are as long as the
// body's, so that the caps are the same.
func (c Cutting) lining(o template.Options) ([]piece.Piece, error) {
	if !c.Design.Lining.On {
		return nil, nil
	}
	o.Notes = []string{c.Design.Name, fmt.Sprintf(c.Words.Boards.Shape, marked(c.Further.Lining.Pieces))}
	out, err := c.side("template-lining-side", o.Words.LiningSide, c.Further.Lining.Sewn, o)
	if err != nil {
		return nil, err
	}
	for _, e := range hung.Ends() {
		t, err := template.Tail("template-lining-tail-"+e.String(), fmt.Sprintf(o.Words.Half, o.Words.LiningTails[e]),
			tailCurves(c.Further.Lining.Sewn, e), o)
		if err != nil {
			return nil, err
		}
		out = append(out, t)
	}
	for i := range out {
		out[i].Lie.For = out[i].Lie.For.OnLining()
		for k := range out[i].Lie.Places {
			out[i].Lie.Places[k].Piece = piece.LiningID
		}
	}
	return out, nil
}

// hollow returns the template of a hollow edge of the tarp.
func (c Cutting) hollow(h tarp.Hollow, o template.Options) (piece.Piece, error) {
	o.Notes = []string{c.Design.Name, fmt.Sprintf(c.Words.Boards.Shape, marked(c.Further.Tarp.Pieces))}
	title, id := o.Words.TarpSide, "template-"+h.ID
	switch h.Kind {
	case piece.TarpEndCurve:
		title = o.Words.TarpEnd
	case piece.TarpRidgeCurve:
		title = o.Words.TarpRidge
	}
	if !o.Whole {
		title = fmt.Sprintf(o.Words.Half, title)
	}
	return template.Hollow(id, title, template.HollowEdge{Line: h.Board(o.Whole), Places: h.Places, For: piece.HollowBoard}, o)
}

// coverEdge returns the template of an edge of the cover, all of it.
func (c Cutting) coverEdge(e insectnet.Curved, o template.Options) (piece.Piece, error) {
	o.Notes = []string{c.Design.Name, fmt.Sprintf(c.Words.Boards.Shape, marked(c.Further.Cover.Pieces))}
	o.Whole = true
	title := o.Words.CoverBay
	switch e.Kind {
	case piece.CoverHeadCurve:
		title = o.Words.CoverTails[hung.Head]
	case piece.CoverFootCurve:
		title = o.Words.CoverTails[hung.Foot]
	case piece.CoverRidgeCurve:
		title = o.Words.CoverRidge
	case piece.CoverHeadEnd:
		title = o.Words.CoverEnds[hung.Head]
	case piece.CoverFootEnd:
		title = o.Words.CoverEnds[hung.Foot]
	}
	return template.Hollow("template-"+e.ID, title, template.HollowEdge{Line: e.Line, Places: e.Places, For: piece.CoverBoard}, o)
}

// sideCurve returns the side seam of a layer in the bay with its notches.
func sideCurve(s panel.Sewn) template.SideCurve {
	side := s.SideNet
	from, to := s.BarRuns()
	curve := template.SideCurve{Line: geom.NewArc(side.Flat).Between(from, to), Bars: s.BarLines}
	for _, n := range s.SideNotches {
		at := side.FlatOf(n.At)
		of := template.Notch{
			Name:   strconv.Itoa(n.Number),
			Bare:   true,
			At:     at - from,
			Turned: strconv.Itoa(len(s.SideNotches) + 1 - n.Number),
		}
		switch {
		case n.Bar && at < (from+to)/2:
			curve.AtBars[bed.Head] = of
		case n.Bar:
			curve.AtBars[bed.Foot] = of
		case at > from && at < to:
			curve.Notches = append(curve.Notches, of)
		}
	}
	return curve
}

// tailCurves returns the curves that bound half an end's tail of a layer.
func tailCurves(s panel.Sewn, e hung.End) template.TailCurves {
	head, foot := s.BarRuns()
	arc := geom.NewArc(s.SideNet.Flat)
	end := geom.NewArc(s.EndNets[e].Flat)
	t := template.TailCurves{At: e, Bar: s.BarLines[e], End: end.Between(end.Length()/2, end.Length())}
	if e == hung.Head {
		t.Side = arc.Between(0, head).Reversed()
	} else {
		t.Side = arc.Between(foot, arc.Length())
	}
	all := s.EndNotches[e]
	for i, n := range all {
		if at := s.EndNets[e].FlatOf(n.At) - end.Length()/2; at > 1 {
			t.EndNotches = append(t.EndNotches, template.Notch{Name: n.Name + "/" + all[len(all)-1-i].Name, At: at})
		}
	}
	return t
}

// facingCurves returns the edges of the left facing with the notches of its seam.
func (c Cutting) facingCurves() template.FacingCurves {
	side := c.Sewn.SideNet
	f := template.FacingCurves{Outer: side.Flat, Inner: c.Sewn.FacingInner}
	for _, n := range c.Sewn.SideNotches {
		f.Notches = append(f.Notches, template.Notch{Name: strconv.Itoa(n.Number), Bare: true, At: side.FlatOf(n.At), Double: n.Double})
	}
	return f
}

// capCurves returns the half of an end cap that lies at x > 0: at the head the left
// one, at the foot the right one, as one looks out of the bed.
func (c Cutting) capCurves(e hung.End) template.CapCurves {
	seam, top := geom.NewArc(c.Sewn.CapSeams[e]), geom.NewArc(c.Sewn.CapTops[e])
	half := template.CapCurves{Piece: "cap-" + e.String(), End: e, Side: [...]bed.Side{bed.Left, bed.Right}[e],
		Seam: seam.Between(seam.Length()/2, seam.Length()), Top: top.Between(0, top.Length()/2).Reversed()}
	if half.Seam[len(half.Seam)-1].X < 0 {
		half.Seam = seam.Between(0, seam.Length()/2).Reversed()
		half.Top = top.Between(top.Length()/2, top.Length())
	}
	// A notch off the middle stands for that of the other half too, when it is turned over.
	all := c.Sewn.EndNotches[e]
	for i, n := range all {
		if at := n.At - seam.Length()/2; at > 1 {
			left, right := n.Name, all[len(all)-1-i].Name
			if half.Side == bed.Right {
				left, right = right, left
			}
			half.SeamNotches = append(half.SeamNotches, template.Notch{Name: left + "/" + right, At: at})
		}
	}
	return half
}
