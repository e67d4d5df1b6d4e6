package chapter

import (
	"fmt"
	"math"

	"slingloft/export/sheet"
	"slingloft/export/sheet/given"
	"slingloft/export/sheet/scene"
	"slingloft/outline/hung"
	"slingloft/outline/margin"
	"slingloft/outline/state"
)

// hungShape shows how it hangs.
func (b build) hungShape() (sheet.Section, error) {
	say := b.Say.Hung
	s := sheet.Section{ID: "hung", Title: say.Title}
	s.Add(
		sheet.Figures{{Picture: scene.Solid(b.Data), Caption: say.Solid.Caption}},
		sheet.Figures{{Picture: scene.Side(b.Data), Caption: say.Side.Caption}},
		sheet.Figures{{Picture: scene.Above(b.Data), Caption: say.Above.Caption}},
		sheet.Figures{{Picture: scene.Across(b.Data), Caption: say.Across.Caption}},
		b.endsTable())
	if b.Place != nil {
		s.Add(b.carefully(), b.placeTable())
	}
	if b.Roll != nil {
		s.Add(b.rollNotice())
	}
	return s, nil
}

// byEnd begins a table with a column for each end.
func (b build) byEnd(id, caption string) sheet.Table {
	ends := b.Say.Names.Ends
	return sheet.Table{ID: id, Caption: caption, Head: []string{"", ends[hung.Head], ends[hung.Foot]}, Words: []bool{true, false, false}}
}

// endsTable tables both ends of the hung shape.
func (b build) endsTable() sheet.Table {
	say := b.Say.Ends
	t := b.byEnd("ends", say.Caption)
	h, f := b.Shape.Ends[hung.Head], b.Shape.Ends[hung.Foot]
	add := func(name string, of func(hung.EndShape) string) { t.Add(name, of(h), of(f)) }
	add(say.Bar, func(e hung.EndShape) string { return b.Long(e.Bar) })
	add(say.Drop, func(e hung.EndShape) string { return b.Long(e.Section.Height) })
	half := b.Design.Bed.Span / 2
	t.Add(say.Girth, b.Long(b.Body.Hangs(b.Shape, -half)), b.Long(b.Body.Hangs(b.Shape, half)))
	add(say.TailGirth, func(e hung.EndShape) string { return b.Long(b.Body.Hangs(b.Shape, e.TailX)) })
	add(say.Wall, func(e hung.EndShape) string { return b.Style.Angle(e.Section.Wall) })
	add(say.Leg, func(e hung.EndShape) string { return b.Long(e.Leg) })
	t.Add(say.InChannel, b.Long(b.CornerRun(hung.Head)), b.Long(b.CornerRun(hung.Foot)))
	add(say.ApexOut, func(e hung.EndShape) string { return b.Long(max(e.ApexX, -e.ApexX)) })
	add(say.ApexUp, func(e hung.EndShape) string { return b.Long(e.ApexZ) })
	add(say.Angle, func(e hung.EndShape) string { return b.Style.Angle(math.Atan(e.Slope)) })
	return t
}

// placeTable tells how to hang it between its supports.
func (b build) placeTable() sheet.Table {
	say, p := b.Say.Place, b.Place
	t := b.byEnd("place", fmt.Sprintf(say.Caption, b.Round(p.Distance)))
	h, f := p.Ends[hung.Head], p.Ends[hung.Foot]
	t.Add(say.Anchor, b.Round(h.Hook), b.Round(f.Hook))
	t.Add(say.AnchorAbove, higher(b.Round, p.HeadAbove), higher(b.Round, -p.HeadAbove))
	t.Add(say.Line, b.Round(h.Line), b.Round(f.Line))
	t.Add(say.Apex, b.Round(h.Apex), b.Round(f.Apex))
	t.Add(say.ApexAbove, higher(b.Round, p.ApexAbove()), higher(b.Round, -p.ApexAbove()))
	t.Add(say.Pull, b.Force(h.Pull.N), b.Force(f.Pull.N))
	if !b.Style.Inches { // pounds are a weight already
		t.Add(say.Weight, fmt.Sprintf("%.0f kgf", h.Pull.Kgf), fmt.Sprintf("%.0f kgf", f.Pull.Kgf))
	}
	if b.Margins != nil {
		t.Add(say.Most, b.Force(b.Margins.Hardest(margin.HeadLine).Load), b.Force(b.Margins.Hardest(margin.FootLine).Load))
	}
	t.Add(say.Lowest, b.Round(p.Lowest), "")
	t.Add(say.Edge, b.Round(p.Edge), "")
	if p.Beyond > 0 {
		t.Add(say.Beyond, b.Round(p.Beyond), "")
	}
	if c := b.Shelter; c != nil && c.Ridge > 0 {
		t.Add(say.Ridge, b.Round(c.Ridge), "")
		t.Add(say.Covers, b.Round(c.Needed), "")
	}
	return t
}

// higher writes by how much an end stands above the other, at the higher one.
func higher(write func(float64) string, by float64) string {
	if by < 0 {
		return ""
	}
	return write(by)
}

// rollNotice tells whether the bed is steady.
func (b build) rollNotice() sheet.Notice {
	say, r := b.Say.Roll, b.Roll
	turns := fmt.Sprintf(say.Turns, b.Round(state.AtEdge), b.Style.Angle(r.Turn), given.Times(r.Share))
	switch {
	case r.Over:
		over := fmt.Sprintf(say.Over, b.Round(state.AtEdge), b.Style.Angle(r.Turn))
		return sheet.Notice{Grade: sheet.Bad, Title: say.TurnsOver, Lines: []string{over, say.Mend}}
	case r.Stable:
		return sheet.Notice{Grade: sheet.Good, Title: say.Steady, Lines: []string{turns}}
	case r.Rocks:
		return sheet.Notice{Grade: sheet.Careful, Title: say.Rocks, Lines: []string{turns, say.Mend}}
	}
	return sheet.Notice{Grade: sheet.Bad, Title: say.NotSteady, Lines: []string{turns, say.Mend}}
}
