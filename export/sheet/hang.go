package sheet

import (
	"fmt"

	"slingloft/outline/hung"
)

// endsTable tables both ends of the hung shape.
func (b *builder) endsTable() Table {
	t := Table{ID: "ends", Caption: "Both ends as they hang under the sleeper", Head: []string{"", "head", "foot"},
		Words: []bool{true, false, false}}
	h, f := b.Shape.Ends[hung.Head], b.Shape.Ends[hung.Foot]
	add := func(name string, of func(hung.EndShape) string) {
		t.Rows = append(t.Rows, []string{name, of(h), of(f)})
	}
	add("bar, between cord centres", func(e hung.EndShape) string { return b.long(e.Bar) })
	add("drop at the bar", func(e hung.EndShape) string { return b.long(e.Section.Height) })
	add("girth at the bar, cord to cord", func(e hung.EndShape) string { return b.long(e.Section.Girth()) })
	add("girth at the tail's end", func(e hung.EndShape) string { return b.long(e.Last.Girth()) })
	add("wall above the level at the bar", func(e hung.EndShape) string { return degrees(e.Section.Wall) })
	add("leg, bar tip to hook", func(e hung.EndShape) string { return b.long(e.Leg) })
	add("of it, along the tail's cloth", func(e hung.EndShape) string { return b.long(e.TailArc) })
	add("hook from mid-bay, level", func(e hung.EndShape) string { return b.long(max(e.ApexX, -e.ApexX)) })
	add("hook above the bottom line", func(e hung.EndShape) string { return b.long(e.ApexZ) })
	add("hang angle above the level", func(e hung.EndShape) string { return degrees(atan(e.Slope)) })
	return t
}

// placeTable tells how to hang it between its supports.
func (b *builder) placeTable() (Table, bool) {
	if b.Place == nil {
		return Table{}, false
	}
	p := b.Place
	t := Table{ID: "place", Caption: fmt.Sprintf("Between supports %s apart, the sleeper in it", b.round(p.Distance)),
		Head: []string{"", "head", "foot"}, Words: []bool{true, false, false}}
	h, f := p.Ends[hung.Head], p.Ends[hung.Foot]
	add := func(name, head, foot string) { t.Rows = append(t.Rows, []string{name, head, foot}) }
	add("hang line, apex to support", b.round(h.Line), b.round(f.Line))
	add("support above ground", b.round(h.Hook), b.round(f.Hook))
	add("apex above ground", b.round(h.Apex), b.round(f.Apex))
	add("pull along the line", b.force(h.Pull.N), b.force(f.Pull.N))
	if !b.Style.Inches { // pounds are a weight already
		add("the same as a weight", fmt.Sprintf("%.0f kgf", h.Pull.Kgf), fmt.Sprintf("%.0f kgf", f.Pull.Kgf))
	}
	add("bed's lowest point above ground", b.round(p.Lowest), "")
	add("side cord at mid-bay above ground", b.round(p.Edge), "")
	if p.Beyond > 0 {
		add("the higher support stands above the height given by", b.round(p.Beyond), "")
	}
	if c := b.Shelter; c != nil && c.Ridge > 0 {
		add("shelter's ridge", b.round(c.Ridge), "")
		add("least that covers it", b.round(c.Needed), "")
	}
	return t, true
}

// rollNotice tells whether the bed is steady.
func (b *builder) rollNotice() Notice {
	r := b.Roll
	n := Notice{Grade: Good, Title: "Steady against rolling", Lines: []string{
		fmt.Sprintf("The line through the hooks runs %s above the centre of mass of a sleeper on the back, %s on the side.",
			b.round(r.Back), b.round(r.Side))}}
	if !r.Stable {
		n.Grade, n.Title = Bad, "It can turn over"
		n.Lines = append(n.Lines, "Above zero both ways is needed: more drop at the bars or shorter legs raise the hooks' line over the bed.")
	}
	return n
}
