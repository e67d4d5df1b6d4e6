package chapter

import (
	"slices"
	"strings"
	"testing"

	"slingloft/export/sheet"
	"slingloft/outline/bed"
	"slingloft/outline/geom"
	"slingloft/outline/hung"
	"slingloft/outline/panel"
	"slingloft/outline/piece"
)

// The steps follow from what the bed is made of, and stand in the order of work.
func TestOrderOfSteps(t *testing.T) {
	o := hangs(t).Say.Order
	sewn := []string{o.Mark.Title, o.Cut.Title, o.PressStrip.Title}
	rest := []string{o.PinStrip.Title, o.StitchStrip.Title, o.Pull.Title, o.Cords.Title}
	end := []string{o.ThreadCords.Title, o.Splice.Title, o.Bars.Title, o.Tack.Title, o.Hang.Title, o.Correct.Title}
	with := func(more ...[]string) []string { return slices.Concat(more...) }
	one := func(s string) []string { return []string{s} }
	for _, row := range []struct {
		name   string
		lines  []string
		joined bool
		whole  bool
		want   []string
	}{
		{"strip and caps", nil, false, false, with(sewn, one(o.Openings.Title), one(o.Caps.Title), rest, one(o.Eyes.Title), end)},
		{"facing", []string{`kind = "strip"`, `kind = "facing"`}, false, false, with(sewn, one(o.Caps.Title), rest, one(o.Eyes.Title), end)},
		{"gathered", []string{`kind = "upright"`, `kind = "gathered"`, `hollow = `, `#`}, false, false,
			with(sewn, one(o.Openings.Title), one(o.TurnEnds.Title), rest, one(o.Eyes.Title), end)},
		{"joined", nil, true, false, with(sewn, one(o.Join.Title), one(o.Openings.Title), one(o.Caps.Title), rest, one(o.Eyes.Title), end)},
		{"loops", nil, false, true, with(sewn, one(o.Openings.Title), one(o.Caps.Title), rest, end)},
	} {
		b := made(t, row.lines...)
		b.Design.Splice.Whole = row.whole
		if row.joined {
			b.Sewn.Joins = []panel.Join{{}}
		}
		s, err := b.order()
		if err != nil {
			t.Fatal(err)
		}
		var got []string
		for _, step := range ofKind[sheet.Steps](s)[0] {
			got = append(got, step.Title)
		}
		if !slices.Equal(got, row.want) {
			t.Errorf("%s: %q, want %q", row.name, got, row.want)
		}
	}
}

// A body in one piece is proved by its diagonals, panels by their corners and by name.
func TestStepMark(t *testing.T) {
	b := hangs(t)
	panelOf := func(title string, n int) piece.Piece {
		q := piece.Piece{Kind: piece.BodyPanel, Title: title}
		for i := range n {
			q.Checks = append(q.Checks, piece.Measure{Kind: piece.CapTop, Length: float64(100 + i)})
		}
		return q
	}
	b.Sewn.Pieces = []piece.Piece{panelOf("body", 6), pocket()}
	one := b.stepMark()
	if !strings.HasSuffix(one.Text, ": "+b.Say.Order.Diagonals) || len(one.Facts) != 4 || strings.Contains(one.Facts[0].Name, "body") {
		t.Errorf("one piece: %+v", one)
	}
	b.Sewn.Pieces = []piece.Piece{panelOf("body wide", 2), panelOf("body narrow", 3)}
	two := b.stepMark()
	if !strings.HasSuffix(two.Text, ": "+b.Say.Order.Corners) || len(two.Facts) != 5 ||
		!strings.HasPrefix(two.Facts[4].Name, "body narrow, ") {
		t.Errorf("two panels: %+v", two)
	}
}

// Cloth is counted piece by piece; the ends' allowance is told once, as they are made.
func TestStepCut(t *testing.T) {
	b := hangs(t)
	b.Sewn.Pieces = []piece.Piece{
		{Kind: piece.WholeBody, Count: 1, Margins: []piece.Margin{
			{At: piece.AtSides, Wide: 1}, {At: piece.TurnedEnds, Wide: 12}, {At: piece.AtEnds, Wide: 9},
		}},
		{Kind: piece.Strip, Count: 2}, {Kind: piece.Cap, Count: 2, Margins: []piece.Margin{{At: piece.AtEnds, Wide: 7}}},
	}
	s := b.stepCut()
	if got := facts(s, b.Say.Order.ClothPieces); !slices.Equal(got, []string{"5"}) {
		t.Errorf("%q pieces", got)
	}
	edges := b.Say.Pieces.Margins
	if a, z := facts(s, edges[piece.TurnedEnds]), facts(s, edges[piece.AtEnds]); !slices.Equal(a, []string{"12.0 mm"}) || z != nil {
		t.Errorf("ends %q, %q", a, z)
	}
}

// The lines of a felled join are told once, by the panel that has them.
func TestStepJoin(t *testing.T) {
	b := hangs(t)
	fell := func(role piece.Role, y float64, of piece.Rim) piece.Line {
		return piece.Line{Role: role, Of: of.String(), Points: geom.Polyline{geom.Pt(0, y), geom.Pt(10, y)}}
	}
	var join panel.Join
	other := join.Place + 1
	b.Sewn.Joins = []panel.Join{join}
	b.Sewn.Pieces = []piece.Piece{
		{Kind: piece.BodyPanel, Title: "left", Lines: []piece.Line{fell(piece.FellFold, 16, join.Place), fell(piece.FellFold, 40, join.Place)}},
		{Kind: piece.BodyPanel, Title: "right", Lines: []piece.Line{fell(piece.FellTrim, -7, join.Place), fell(piece.FellStitch, -9, other)}},
	}
	s, rim := b.stepJoin(), b.rim(join.Place)
	if got := facts(s, rim+", fold the allowance of the left"); !slices.Equal(got, []string{"16.0 mm from the finished line"}) {
		t.Errorf("fold %q", got)
	}
	if got := facts(s, rim+", trim the allowance of the right"); !slices.Equal(got, []string{"7.0 mm from the finished line"}) {
		t.Errorf("trim %q", got)
	}
	if got := facts(s, rim+", second row on the right"); got != nil {
		t.Errorf("the row of another join: %q", got)
	}
}

// A bar is cut shorter than its cords lie apart by both tips; the leg of an end is told
// for that end.
func TestStepBars(t *testing.T) {
	b := hangs(t)
	b.Shape.Ends[bed.Head].Bar, b.Shape.Ends[bed.Foot].Bar = 900, 820
	for reach, want := range map[float64][]string{0: {"900.0 mm", "820.0 mm"}, 5: {"890.0 mm", "810.0 mm"}} {
		b.Design.Bar.TipReach = reach
		s := b.stepBars()
		if got := slices.Concat(facts(s, "head bar, cut length"), facts(s, "foot bar, cut length")); !slices.Equal(got, want) {
			t.Errorf("tips reach %g: %q, want %q", reach, got, want)
		}
		if got := facts(s, b.Say.Order.TipReach); (got != nil) != (reach > 0) {
			t.Errorf("tips reach %g: told as %q", reach, got)
		}
	}
}

func TestStepHang(t *testing.T) {
	b := hangs(t)
	for offset, name := range map[float64]string{
		25: "to check afterwards: head apex above the other", -25: "to check afterwards: foot apex above the other",
	} {
		b.Shape.Offset = offset
		if got := facts(b.stepHang(), name); !slices.Equal(got, []string{"25 mm"}) {
			t.Errorf("offset %g: %q is %q", offset, name, got)
		}
	}
	if got := facts(made(t).stepHang(), "head anchor above ground"); len(got) != 1 {
		t.Errorf("the head support stands at %q", got)
	}
}

// The bars lie apart by the span along the bottom line, which may rise.
func TestBottomSpan(t *testing.T) {
	b := hangs(t)
	span := b.Design.Bed.Span
	rise := b.Shape.Problem.Bottom(span/2) - b.Shape.Problem.Bottom(-span/2)
	if got, want := b.bottomSpan(), geom.Pt(span, rise).Len(); got != want {
		t.Errorf("%g, want %g", got, want)
	}
	if a, z := b.cornerRun(hung.Head), b.cornerRun(hung.Foot); a != b.Body.Tips[hung.Head] || a <= 0 || z <= 0 {
		t.Errorf("corners lie %g and %g along the legs", a, z)
	}
}
