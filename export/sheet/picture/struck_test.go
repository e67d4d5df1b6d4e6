package picture_test

import (
	"math"
	"testing"

	"slingloft/export/sheet/picture"
	"slingloft/outline/geom"
	"slingloft/outline/piece"
)

// A line through lettering is found, whichever way the lettering runs; helping lines are
// interrupted there and go on after it, others stay.
func TestStruck(t *testing.T) {
	at := geom.Pt(50, 50)
	for _, row := range []struct {
		what        string
		turn        float64
		ink         picture.Ink
		from, to    geom.Point
		struck      bool
		interrupted int // lines that are left of it
	}{
		{"along it", 0, picture.Quiet, geom.Pt(10, 50), geom.Pt(90, 50), true, 2},
		{"across it", 0, picture.Ghost, geom.Pt(50, 10), geom.Pt(50, 90), true, 2},
		{"under it", 0, picture.Quiet, geom.Pt(10, 47), geom.Pt(90, 47), false, 1},
		{"beside it, upright", math.Pi / 2, picture.Quiet, geom.Pt(10, 57), geom.Pt(90, 57), false, 1},
		{"through it, upright", math.Pi / 2, picture.Quiet, geom.Pt(10, 52), geom.Pt(90, 52), true, 2},
		{"aslant", math.Pi / 4, picture.Quiet, geom.Pt(10, 10), geom.Pt(90, 90), true, 2},
		{"up to it", 0, picture.Quiet, geom.Pt(10, 50), geom.Pt(50, 50), true, 1},
		{"all of it under it", 0, picture.Quiet, geom.Pt(49, 50), geom.Pt(51, 50), true, 0},
		{"no helping line", 0, picture.Cut, geom.Pt(10, 50), geom.Pt(90, 50), true, 1},
	} {
		p := picture.Picture{Width: 100, Height: 100}
		p.Line(row.ink, picture.Hair, row.from, row.to)
		p.Write(picture.Text{Text: "words", At: at, Size: picture.Letter, Anchor: piece.Centre, Turn: row.turn})
		if got := len(p.Struck()) > 0; got != row.struck {
			t.Errorf("%s: struck %v, want %v", row.what, got, row.struck)
		}
		q := p.Interrupted()
		if got := len(q.Items[0].(picture.Path).Lines); got != row.interrupted {
			t.Errorf("%s: %d lines are left, want %d", row.what, got, row.interrupted)
		}
		if got := len(q.Struck()) > 0; got != (row.ink == picture.Cut) {
			t.Errorf("%s: struck %v after it is interrupted", row.what, got)
		}
		if len(p.Items[0].(picture.Path).Lines) != 1 {
			t.Errorf("%s: the picture itself was changed", row.what)
		}
	}
}

// Lettering that has to be clear stands nowhere rather than on a line.
func TestWriteClear(t *testing.T) {
	p := picture.Picture{Width: 100, Height: 100}
	p.Line(picture.Main, picture.Thin, geom.Pt(0, 50), geom.Pt(100, 50))
	word := picture.Text{Text: "word", Size: 3, Anchor: piece.Centre}
	if p.WriteClear(word, geom.Pt(50, 50), geom.Pt(20, 50)) {
		t.Error("a place on a line counts as clear")
	}
	if !p.WriteClear(word, geom.Pt(50, 50), geom.Pt(50, 60)) || p.Last().Center().Dist(geom.Pt(50, 60)) > 1 {
		t.Errorf("the clear place is not taken: %v", p.Last())
	}
}
