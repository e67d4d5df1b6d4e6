// Package fribidi stands in for a package of that name, whose licence (LGPL 2.1) asks
// that whoever has the program can link it anew. Canvas names it where it sets text,
// which Slingloft never has it do: sheets are lettered in strokes.
package fribidi

// A CharType is the direction of a text; ON is neutral.
type CharType int

// ON is the direction of a text without letters.
const ON CharType = 0

// DefaultFlags asks for the usual treatment.
const DefaultFlags = 0

// Visual is a text in the order in which it is written: a level of nesting for each
// rune, even from left to right.
type Visual struct{ EmbeddingLevels []int8 }

// LogicalToVisual returns a text from left to right all along.
func LogicalToVisual(_ int, text []rune, _ *CharType) (Visual, error) {
	return Visual{make([]int8, len(text))}, nil
}
