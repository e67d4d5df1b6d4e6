package wording_test

import (
	"regexp"
	"strings"
	"testing"

	"slingloft/export/sheet/wording"
	"slingloft/outline/words"
)

// A sentence of the steps has at most twenty words, after the rules of controlled English
// (checks K5), and is one.
func TestSentencesShort(t *testing.T) {
	say := wording.English()
	check := func(where, text string) {
		for _, s := range regexp.MustCompile(`[.!?] `).Split(text, -1) {
			if n := len(strings.Fields(s)); n > 20 {
				t.Errorf("%s: %d words: %s", where, n, s)
			}
		}
		if !strings.HasSuffix(text, ".") {
			t.Errorf("%s: no sentence: %s", where, text)
		}
	}
	for kind, s := range say.Order.Steps {
		if len(s.Do) > 10 {
			t.Errorf("%s: %d actions", kind, len(s.Do))
		}
		for _, do := range append(s.Do, s.Done) {
			check(kind.String(), do)
		}
	}
	b := say.Boards
	edges := []string{b.Edge, b.EdgeRound, b.EdgeTail, b.EdgeCap, b.NoEdge, b.NoEdgeTail, b.NoEdgeCap}
	for _, list := range [][]string{edges, b.Press, b.Allow, b.Cord, b.Notch, {b.On, b.Beside, b.End, b.EndsOn, b.Up, b.Over, b.MeetsSide, b.MeetsHalf, b.Halved}} {
		for _, do := range list {
			check("boards", do)
		}
	}
}

// Whatever a drawing letters has its meaning in the glossary.
func TestLabelsExplained(t *testing.T) {
	known := map[string]bool{}
	for _, term := range words.EnglishGlossary() {
		for _, w := range strings.Split(term.Word, ", ") {
			known[w] = true
		}
	}
	for _, label := range wording.English().Parts.Labels {
		if !known[label] {
			t.Errorf("%q is not in the glossary", label)
		}
	}
}
