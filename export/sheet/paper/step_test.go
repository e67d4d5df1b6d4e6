package paper

import (
	"math"
	"slices"
	"strings"
	"testing"

	"slingloft/export/sheet"
	"slingloft/export/sheet/picture"
)

// A value as long as a maker's name of a thing may be, or longer, is set in lines that leave
// its figure's name a place.
func TestLongValues(t *testing.T) {
	p := newWriter(sheet.Sheet{Title: "t"}, A4)
	for _, n := range []int{1, 60, 400} {
		it := p.facts([]sheet.Fact{{Name: "thread", Value: strings.Repeat("w", n)}, {Name: "needle", Value: strings.Repeat("no name ", n/8)}}, 80)
		if !(it.h > 0 && it.h < 200) {
			t.Errorf("%d letters are set %g mm high", n, it.h)
		}
	}
}

// Text that has no room at all is set a letter a line, and is whole.
func TestWrapWithoutRoom(t *testing.T) {
	for _, room := range []float64{-5, 0, 0.1} {
		if got := strings.Join(wrap(body, "one two", room), ""); got != "onetwo" {
			t.Errorf("room %g: %q", room, got)
		}
	}
}

// The first narrow picture stands beside a step, the others under it in pairs, wide ones by
// themselves.
func TestStepFigures(t *testing.T) {
	p := newWriter(sheet.Sheet{Title: "t"}, A4)
	of := func(widths ...float64) (heights []float64) {
		s := sheet.Step{Title: "Do it", Do: []string{"As told."}}
		for i, w := range widths {
			s.Figures = append(s.Figures, sheet.Figure{Picture: picture.Picture{Width: w, Height: 40 + float64(i)}})
		}
		for _, it := range p.step(s) {
			heights = append(heights, math.Floor(it.h-p.figure(&sheet.Figure{}).h))
		}
		return heights
	}
	n, w := picture.Half, picture.Wide
	for _, row := range []struct{ widths, want []float64 }{
		{[]float64{n}, []float64{40}},
		{[]float64{n, n, n}, []float64{40, 42}},
		{[]float64{n, n, n, n, w}, []float64{40, 42, 43, 44}},
	} {
		if got := of(row.widths...); !slices.Equal(got, row.want) {
			t.Errorf("widths %v: rows %v high, want %v", row.widths, got, row.want)
		}
	}
}
