package design

import (
	"fmt"
	"strings"

	"slingloft/outline/quantity"
)

// Words say in one language what is wrong with a design. Nothing is decided by them: a
// fault is data until it is written.
type Words struct {
	Rules      map[Rule]string
	Phrases    map[PhraseKind]string
	Least      string // a value that would do, and more
	Most       string // a value that would do, and less
	Instead    string // another key, and a value of it
	With       string // other keys that have to change
	And        string // between two of these
	List       string // between the parts of a list
	Or         string // between words one of which is meant
	Else       string // before each further one that may be meant
	Ways       string // between ways out, and between what was found and what would do
	Quantities quantity.Words
}

// English returns the words in English.
func English() Words {
	return Words{
		Rules: englishRules(), Phrases: englishPhrases(), Quantities: quantity.English(),
		Least: "use %s or more", Most: "use %s or less", Instead: ", or a %s of %s", With: "; %s has to change as well",
		And: " and ", List: ", ", Or: " or ", Else: ", or ", Ways: "; ",
	}
}

// Text returns a fault on one line: "file:line:column: key: found; hint".
func (w Words) Text(f Fault) string {
	key := ""
	if f.Key != "" {
		key = string(f.Key) + ": "
	}
	return fmt.Sprintf("%s:%d:%d: %s%s", f.File, f.Line, f.Column, key, w.Message(f))
}

// Message returns what is wrong and what would do.
func (w Words) Message(f Fault) string { return w.Found(f.Found) + w.Ways + w.Hint(f.Hint) }

// Found returns what was found.
func (w Words) Found(f Finding) string { return short(w.filled(w.Rules[f.Rule], f.Data)) }

// Hint returns what would do: "use 600 mm or more, or a bed.span of 1520 mm".
func (w Words) Hint(h Hint) string {
	var s string
	switch h.Bound.Sense {
	case AtLeast:
		s = fmt.Sprintf(w.Least, h.Bound.Written)
	case AtMost:
		s = fmt.Sprintf(w.Most, h.Bound.Written)
	}
	s += short(w.Phrase(h.Say))
	if h.Instead.Given() {
		s += fmt.Sprintf(w.Instead, h.Instead.Key, h.Instead.Written)
	}
	if len(h.With) > 0 {
		s += fmt.Sprintf(w.With, Listed(h.With, w.And))
	}
	return s
}

// Phrase returns a phrase in words.
func (w Words) Phrase(p Phrase) string { return w.filled(w.Phrases[p.Kind], p.Data) }

// filled fills data into a sentence whose verbs are numbered.
func (w Words) filled(sentence string, data []any) string {
	if !strings.Contains(sentence, "%") {
		return sentence
	}
	fill := make([]any, len(data))
	for i, d := range data {
		fill[i] = w.part(d)
	}
	return fmt.Sprintf(sentence, fill...)
}

// One of some words is meant, or one and else another, or all are listed.
type (
	either []string
	elses  []string
	listed []string
)

// What is wrong with a quantity, and what would do.
type (
	misread struct{ *quantity.Error }
	remedy  struct{ *quantity.Error }
)

// limits returns the range of a row, in the given system of units.
func (w Words) limits(r row, imperial bool) string { return fmt.Sprint(w.part(r.limits(imperial))) }

// part returns what a part of a sentence is filled with.
func (w Words) part(data any) any {
	switch d := data.(type) {
	case Phrase:
		return w.Phrase(d)
	case Finding:
		return w.Found(d)
	case []Phrase:
		ways := make([]string, len(d))
		for i, p := range d {
			ways[i] = w.Phrase(p)
		}
		return strings.Join(ways, w.Ways)
	case Bound:
		return d.Written
	case either:
		return strings.Join(d, w.Or)
	case elses:
		return strings.Join(d, w.Else)
	case listed:
		return strings.Join(d, w.List)
	case misread:
		return w.Quantities.Found(d.Error)
	case remedy:
		return w.Quantities.Hint(d.Error)
	}
	return data
}
