package label_test

import (
	"testing"

	"slingloft/outline/geom"
	"slingloft/outline/label"
	"slingloft/outline/piece"
)

// Lettering that a line runs through is moved off it, as little as that takes; lettering
// that stands free stays, and what has room nowhere near stays too.
func TestFreed(t *testing.T) {
	box := geom.BoxOf(geom.Pt(0, 0), geom.Pt(200, 100)).Ring()
	line := piece.Line{Points: geom.Polyline{{X: 0, Y: 50}, {X: 200, Y: 50}}}
	words := func(at geom.Point) piece.Label {
		return piece.Label{Text: "H2", At: at, Height: 6, Anchor: piece.Centre}
	}
	for _, row := range []struct {
		what   string
		cut    geom.Ring
		labels []piece.Label
		moved  []bool
		free   bool
	}{
		{"free", box, []piece.Label{words(geom.Pt(100, 20))}, []bool{false}, true},
		{"on the line", box, []piece.Label{words(geom.Pt(100, 50))}, []bool{true}, true},
		{"over another", box, []piece.Label{words(geom.Pt(100, 20)), words(geom.Pt(102, 20))}, []bool{false, true}, true},
		{"two on the line", box, []piece.Label{words(geom.Pt(100, 50)), words(geom.Pt(101, 50))}, []bool{true, true}, true},
		{"no room", geom.BoxOf(geom.Pt(0, 49), geom.Pt(200, 51)).Ring(), []piece.Label{words(geom.Pt(100, 50))}, []bool{false}, false},
	} {
		p := label.Freed(piece.Piece{Cut: row.cut, Lines: []piece.Line{line}, Labels: row.labels})
		if len(p.Labels) != len(row.labels) {
			t.Fatalf("%s: %d labels of %d", row.what, len(p.Labels), len(row.labels))
		}
		for i, l := range p.Labels {
			far := l.At.Dist(row.labels[i].At)
			if moved := far > 0; moved != row.moved[i] || far > 25 {
				t.Errorf("%s: %q moved by %.1f", row.what, l.Text, far)
			}
		}
		q := label.Freed(p)
		for i := range q.Labels {
			if q.Labels[i] != p.Labels[i] && row.free {
				t.Errorf("%s: moved again to %v", row.what, q.Labels[i].At)
			}
		}
	}
}
