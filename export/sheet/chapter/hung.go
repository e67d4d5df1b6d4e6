package chapter

import (
	"fmt"
	"math"

	"slingloft/export/sheet"
	"slingloft/export/sheet/given"
	"slingloft/export/sheet/scene"
	"slingloft/outline/hung"
)

// hungShape shows how it hangs.
func (b build) hungShape() (sheet.Section, error) {
	s := sheet.Section{ID: "hung", Title: "The hung shape"}
	s.Blocks = append(s.Blocks,
		sheet.Figures{{Picture: scene.Solid(b.Data), Caption: "Seen from above, from the right of the foot end."}},
		sheet.Figures{{Picture: scene.Side(b.Data), Caption: "From the side, head to the left. Heights are above the bed's bottom line."}},
		sheet.Figures{{Picture: scene.Above(b.Data), Caption: "From above."}},
		sheet.Figures{{Picture: scene.End(b.Data), Caption: "From the foot end, looking to the head: the sections at both bars and at mid-bay."}},
		b.endsTable())
	if t, ok := b.placeTable(); ok {
		s.Blocks = append(s.Blocks, carefully(), t)
	}
	if b.Roll != nil {
		s.Blocks = append(s.Blocks, b.rollNotice())
	}
	return s, nil
}

// endsTable tables both ends of the hung shape.
func (b build) endsTable() sheet.Table {
	t := sheet.Table{ID: "ends", Caption: "Both ends as they hang under the sleeper", Head: []string{"", "head", "foot"},
		Words: []bool{true, false, false}}
	h, f := b.Shape.Ends[hung.Head], b.Shape.Ends[hung.Foot]
	add := func(name string, of func(hung.EndShape) string) {
		t.Add(name, of(h), of(f))
	}
	add("bar, between cord centres", func(e hung.EndShape) string { return b.Long(e.Bar) })
	add("drop at the bar", func(e hung.EndShape) string { return b.Long(e.Section.Height) })
	add("girth at the bar, cord to cord", func(e hung.EndShape) string { return b.Long(e.Section.Girth()) })
	add("girth at the tail's end", func(e hung.EndShape) string { return b.Long(e.Last.Girth()) })
	add("wall above the level at the bar", func(e hung.EndShape) string { return given.Degrees(e.Section.Wall) })
	add("leg, bar tip to hook", func(e hung.EndShape) string { return b.Long(e.Leg) })
	add("of it, along the tail's cloth", func(e hung.EndShape) string { return b.Long(e.TailArc) })
	add("hook from mid-bay, level", func(e hung.EndShape) string { return b.Long(max(e.ApexX, -e.ApexX)) })
	add("hook above the bottom line", func(e hung.EndShape) string { return b.Long(e.ApexZ) })
	add("hang angle above the level", func(e hung.EndShape) string { return given.Degrees(math.Atan(e.Slope)) })
	return t
}

// placeTable tells how to hang it between its supports.
func (b build) placeTable() (sheet.Table, bool) {
	if b.Place == nil {
		return sheet.Table{}, false
	}
	p := b.Place
	t := sheet.Table{ID: "place", Caption: fmt.Sprintf("Between supports %s apart, the sleeper in it", b.Round(p.Distance)),
		Head: []string{"", "head", "foot"}, Words: []bool{true, false, false}}
	h, f := p.Ends[hung.Head], p.Ends[hung.Foot]
	add := func(name, head, foot string) { t.Add(name, head, foot) }
	add("hang line, apex to support", b.Round(h.Line), b.Round(f.Line))
	add("support above ground", b.Round(h.Hook), b.Round(f.Hook))
	add("apex above ground", b.Round(h.Apex), b.Round(f.Apex))
	add("pull along the line", b.Force(h.Pull.N), b.Force(f.Pull.N))
	if !b.Style.Inches { // pounds are a weight already
		add("the same as a weight", fmt.Sprintf("%.0f kgf", h.Pull.Kgf), fmt.Sprintf("%.0f kgf", f.Pull.Kgf))
	}
	add("bed's lowest point above ground", b.Round(p.Lowest), "")
	add("side cord at mid-bay above ground", b.Round(p.Edge), "")
	if p.Beyond > 0 {
		add("the higher support stands above the height given by", b.Round(p.Beyond), "")
	}
	if c := b.Shelter; c != nil && c.Ridge > 0 {
		add("shelter's ridge", b.Round(c.Ridge), "")
		add("least that covers it", b.Round(c.Needed), "")
	}
	return t, true
}

// rollNotice tells whether the bed is steady.
func (b build) rollNotice() sheet.Notice {
	r := b.Roll
	n := sheet.Notice{Grade: sheet.Good, Title: "Steady against rolling", Lines: []string{
		fmt.Sprintf("The line through the hooks runs %s above the centre of mass of a sleeper on the back, %s on the side.",
			b.Round(r.Back), b.Round(r.Side))}}
	if !r.Stable {
		n.Grade, n.Title = sheet.Bad, "It can turn over"
		n.Lines = append(n.Lines, "Above zero both ways is needed: more drop at the bars or shorter legs raise the hooks' line over the bed.")
	}
	return n
}
