package style

import (
	"testing"

	"slingloft/outline/piece"
)

// The palette as published: jfly.uni-koeln.de/color, Okabe and Ito.
func TestPaletteIsOkabeIto(t *testing.T) {
	published := map[Colour]string{black: "#000000", orange: "#e69f00", skyBlue: "#56b4e9",
		green: "#009e73", blue: "#0072b2", vermilion: "#d55e00", purple: "#cc79a7"}
	seen := map[Colour]piece.Work{}
	for _, w := range piece.Works() {
		c := Default().Of(w).Colour
		if published[c] != c.String() {
			t.Errorf("%s is drawn in %s, not of the palette", w, c)
		}
		if other, ok := seen[c]; ok {
			t.Errorf("%s and %s share %s: a machine cannot tell them apart", w, other, c)
		}
		seen[c] = w
	}
}

func TestParseColour(t *testing.T) {
	for _, text := range []string{"#000000", "#d55e00", "#ffffff"} {
		if c, ok := ParseColour(text); !ok || c.String() != text {
			t.Errorf("ParseColour(%q) = %v, %t", text, c, ok)
		}
	}
	for _, text := range []string{"", "red", "#fff", "d55e00", "#d55e0g", "#d55e000", "#+12345"} {
		if c, ok := ParseColour(text); ok {
			t.Errorf("ParseColour(%q) = %v, want none", text, c)
		}
	}
}

func TestWithLeavesTheOriginal(t *testing.T) {
	base := Default()
	own := Stroke{Colour{1, 2, 3}, 0.5, []float64{4, 1}}
	changed := base.With(piece.Score, own)
	if got := changed.Of(piece.Score).Colour; got != own.Colour {
		t.Errorf("changed scheme scores in %v, want %v", got, own.Colour)
	}
	if base.Of(piece.Score).Colour == own.Colour {
		t.Error("With changed the scheme it was called on")
	}
	if (Scheme{}).Of(piece.CutOut).Colour != Default().Of(piece.CutOut).Colour {
		t.Error("the zero scheme is not the default")
	}
}
