package sketch

import (
	"slices"
	"testing"

	"slingloft/outline/geom"
	"slingloft/outline/piece"
)

// The panels of a joined body are drawn apart, so far that a template that reaches past one
// meets no other, and a panel without the centre line is measured from its join; a whole
// body stays where it is.
func TestSpreadOut(t *testing.T) {
	panel := func(low, high float64) piece.Piece {
		net := geom.BoxOf(geom.Pt(0, low), geom.Pt(1000, high))
		return piece.Piece{ID: "p", Kind: piece.BodyPanel, Net: net.Ring(), Cut: net.Expanded(10).Ring()}
	}
	tail := piece.Piece{Cut: geom.BoxOf(geom.Pt(0, 0), geom.Pt(100, 500)).Ring(), Lie: piece.Lie{
		Net:    []geom.Polyline{{{X: 0, Y: 0}, {X: 0, Y: 150}, {X: 0, Y: 350}, {X: 0, Y: 500}}},
		Places: []piece.Place{{Piece: "body"}, {Piece: "body", Over: true, Motion: geom.Motion{Mirror: true}}},
	}}
	all := spreadOut(tail, []piece.Piece{panel(200, 500), panel(-500, 200)})
	if all[0].from != 0 || all[1].from != 200 {
		t.Errorf("measured from %g and %g, want the centre line and the join", all[0].from, all[1].from)
	}
	if len(all[0].places) != 2 || len(all[1].places) != 1 {
		t.Errorf("%d and %d places, want 2 and 1", len(all[0].places), len(all[1].places))
	}
	// On the lower panel the template reaches up to 500, on the upper one down to 0.
	if low, high := 500+all[0].up, 0+all[1].up; high <= low {
		t.Errorf("one template ends at %g, the other begins at %g", low, high)
	}
	if one := spreadOut(tail, []piece.Piece{panel(-500, 500)}); one[0].up != 0 || one[0].from != 0 || len(one[0].places) != 2 {
		t.Errorf("a whole body: %+v", one[0])
	}
	if off := spreadOut(tail, []piece.Piece{panel(100, 500)}); off[0].from != 0 {
		t.Error("a piece by itself is measured from a join")
	}
}

// A name is broken into lines of about one length that together say all of it.
func TestInLines(t *testing.T) {
	for _, row := range []struct {
		text string
		n    int
		want []string
	}{
		{"5 cord gauge 4 2 of 2", 2, []string{"5 cord gauge", "4 2 of 2"}},
		{"one", 3, []string{"one"}},
		{"", 2, []string{""}},
		{"a bb ccc dddd", 3, []string{"a bb", "ccc", "dddd"}},
	} {
		got := inLines(row.text, row.n)
		if !slices.Equal(got, row.want) {
			t.Errorf("inLines(%q, %d) = %q, want %q", row.text, row.n, got, row.want)
		}
	}
}
