package design

import (
	"fmt"
	"slices"
	"strings"
)

// shortHead opens a short starter file.
const shortHead = `# A bridge hammock. Change the figures to your own, each with its unit. A key behind #
# is left out. start --all writes every key there is, with its meaning.
`

// trade returns the tables of a short starter file in the order in which a maker comes
// to them: who sleeps where, the bed, what it is made of, what cuts it.
func trade() []Key {
	return []Key{"", "sleeper", "hang", "bed", "bar", KeyCordSide, KeyCordLeg, "cloth", KeySheet, "output"}
}

// short returns a starter file with what has to be decided and what is proposed.
func (s starter) short(about string) string {
	var b strings.Builder
	b.WriteString(shortHead)
	comment(&b, "# ", about)
	k := allKeys()
	for _, t := range append(trade(), slices.DeleteFunc(slices.Clone(k.tables), func(t Key) bool { return slices.Contains(trade(), t) })...) {
		rows := slices.DeleteFunc(k.in(t), func(r row) bool { return !s.decided(r) })
		if _, isList := k.list(t); isList || len(rows) == 0 {
			continue
		}
		if t != "" {
			fmt.Fprintf(&b, "\n[%s]\n", t)
		}
		s.lines(&b, rows)
	}
	return b.String()
}

// decided reports whether a key stands in a short starter file.
func (s starter) decided(r row) bool {
	_, proposed := s.values[r.key]
	// Millimetres are what a design is in anyway.
	return proposed || r.sought && slices.Contains(trade(), r.table()) || r.active && (r.key != KeyOutputUnits || s.inches)
}

// lines writes keys with what they mean behind them, and the reason for what is
// proposed above.
func (s starter) lines(b *strings.Builder, rows []row) {
	text := make([]string, len(rows))
	wide := 0
	for i, r := range rows {
		value := r.example(s.inches)
		v, proposed := s.values[r.key]
		if proposed {
			value = r.quoted(v.Value)
		}
		text[i] = r.name() + " = " + value
		if !r.active && !proposed {
			text[i] = "# " + text[i]
		}
		wide = max(wide, len([]rune(text[i])))
	}
	for i, r := range rows {
		comment(b, "# ", s.values[r.key].Why)
		gap := strings.Repeat(" ", wide-len([]rune(text[i]))+2)
		fmt.Fprintf(b, "%s%s# %s\n", text[i], gap, brief(r.doc))
	}
}

// brief returns the first sentence of a key's documentation, less what follows a
// semicolon where it is long.
func brief(doc string) string {
	const long = 90
	first, _, _ := strings.Cut(strings.TrimSuffix(doc, "."), ". ")
	if head, _, cut := strings.Cut(first, "; "); cut && len(first) > long {
		return head
	}
	return first
}
