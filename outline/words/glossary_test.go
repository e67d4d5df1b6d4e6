package words_test

import (
	"slices"
	"strings"
	"testing"

	"slingloft/outline/words"
)

// The glossary is in order, says each word once, and has those that the trade and the
// drawings need.
func TestGlossary(t *testing.T) {
	var all []string
	for _, term := range words.EnglishGlossary() {
		all = append(all, term.Word)
		if term.Meaning == "" || strings.HasSuffix(term.Meaning, ".") || strings.Contains(term.Word+term.Meaning, "|") {
			t.Errorf("%s: %q is no line of a table", term.Word, term.Meaning)
		}
	}
	if !slices.IsSorted(all) || len(slices.Compact(slices.Clone(all))) != len(all) {
		t.Errorf("not in order, or twice: %v", all)
	}
	for _, want := range []string{"bay", "tail", "leg", "drop", "girth", "apex", "anchor", "gap", "ease", "net line", "cut line",
		"taper mark", "shoulder mark", "entry mark", "bury", "contraction", "working end"} {
		if !slices.Contains(all, want) {
			t.Errorf("%s is not in it", want)
		}
	}
}
