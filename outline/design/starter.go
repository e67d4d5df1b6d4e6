package design

import (
	"fmt"
	"slices"
	"strings"
)

// Proposed is a value for a key of a starter file and the reason for it.
type Proposed struct {
	Key   Key
	Value string // as it stands in the file, without its quotes: "1510 mm"
	Why   string // a sentence
}

// Starter returns a design file to begin with, in inches and pounds or in mm and kg:
// the few values that a maker has to decide, in the order in which they come up. It is
// itself a sound design.
func Starter(inches bool) string { return starter{inches: inches}.text("") }

// FullStarter returns a commented design file to begin with that names every key. It is
// itself a sound design.
func FullStarter(inches bool) string { return starter{inches: inches, full: true}.text("") }

// StarterFor returns a starter file, full or not, with the proposed values, each with
// its reason beside it; about says what they are proposed for. A key that is not in the
// schema or cannot have its value is an error.
func StarterFor(inches, full bool, about string, values []Proposed) (string, error) {
	s := starter{inches: inches, full: full, values: map[Key]Proposed{}}
	for _, v := range values {
		r, ok := allKeys().byKey[v.Key]
		if !ok {
			return "", fmt.Errorf("%s: is not a known key", v.Key)
		}
		if _, p := r.parse(v.Value); p != nil {
			return "", fmt.Errorf("%s: %v", v.Key, p)
		}
		s.values[v.Key] = v
	}
	return s.text(about), nil
}

// starter writes starter files.
type starter struct {
	inches bool
	full   bool             // with every key
	values map[Key]Proposed // by key; may be nil
}

func (s starter) text(about string) string {
	var b strings.Builder
	if !s.full {
		return s.short(about)
	}
	b.WriteString(starterHead)
	if about != "" {
		comment(&b, "# ", about)
		b.WriteString("\n")
	}
	k := allKeys()
	docs := tableDocs()
	rows := k.in("")
	s.rows(&b, rows, false)
	for _, t := range k.tables {
		rows := k.in(t)
		if len(rows) == 0 {
			continue
		}
		// A table within another stays out as a whole where none of its keys is given,
		// so that it can be given in the other's one line as well, and so does what is
		// measured only when the bed hangs.
		out := (t.Table() != "" || t == KeyHung || maybe(t)) && !slices.ContainsFunc(rows, func(r row) bool {
			_, proposed := s.values[r.key]
			return r.active || proposed
		})
		head := "[" + string(t) + "]"
		doc := docs[t]
		if l, ok := k.list(t); ok {
			out, head, doc = true, "[["+string(t)+"]]", l.doc
		}
		b.WriteString("\n\n")
		comment(&b, "# ", doc)
		if out {
			head = "# " + head
		}
		b.WriteString(head + "\n")
		s.rows(&b, rows, out)
	}
	return b.String()
}

// starterHead opens a starter file.
const starterHead = `# A bridge hammock. Change the figures to your own; keep a unit with each of them:
# mm, cm, m, in, ft ("5 ft 8 1/2 in"), kg, g, lb, oz, N, kN, lbf, kgf, deg,
# g/m², oz/yd², g/m, oz/yd, N/mm, N/50 mm, lbf/in, MPa, GPa, psi, ksi, kg/m³.
# A key behind # is left out; take the # away to give it.

`

// in returns the rows of a table.
func (k keys) in(table Key) []row {
	var out []row
	for _, r := range k.rows {
		if r.table() == table {
			out = append(out, r)
		}
	}
	return out
}

// rows writes keys with their documentation; out leaves all of them out.
func (s starter) rows(b *strings.Builder, rows []row, out bool) {
	for i, r := range rows {
		if i > 0 {
			b.WriteString("\n")
		}
		doc := r.doc
		if r.form == choice {
			doc += " One of " + English().limits(r, s.inches) + "."
		}
		if usual := r.leftAt(s.inches); usual != "" {
			doc += " Left out: " + usual + "."
		}
		comment(b, "# ", doc)
		value := r.example(s.inches)
		v, proposed := s.values[r.key]
		if proposed {
			comment(b, "# ", v.Why)
			value = r.quoted(v.Value)
		}
		if !r.active && !proposed || out {
			b.WriteString("# ")
		}
		fmt.Fprintf(b, "%s = %s\n", r.name(), value)
	}
}

// comment writes text broken into lines that begin with mark.
func comment(b *strings.Builder, mark, text string) {
	const width = 84
	line := mark
	for _, word := range strings.Fields(text) {
		if len(line) > len(mark) && len([]rune(line))+1+len([]rune(word)) > width {
			b.WriteString(strings.TrimRight(line, " ") + "\n")
			line = mark
		}
		if len(line) > len(mark) {
			line += " "
		}
		line += word
	}
	if len(line) > len(mark) {
		b.WriteString(line + "\n")
	}
}

// Reference returns every key in Markdown: what it means, its range, what holds
// where it is left out, in a design in mm and in one in inches, and an example in both systems of units.
func Reference() string {
	var b strings.Builder
	k, w := allKeys(), English()
	docs := tableDocs()
	for _, t := range append([]Key{""}, k.tables...) {
		rows := k.in(t)
		if len(rows) == 0 {
			continue
		}
		head, doc := "`["+string(t)+"]`", docs[t]
		if t == "" {
			head = "Top of the file"
		}
		if l, ok := k.list(t); ok {
			head, doc = "`[["+string(t)+"]]`", fmt.Sprintf("%s At most %d.", l.doc, l.limit)
		}
		fmt.Fprintf(&b, "## %s\n\n", head)
		if doc != "" {
			b.WriteString(doc + "\n\n")
		}
		b.WriteString("| key | meaning | range | default | examples |\n|---|---|---|---|---|\n")
		for _, r := range rows {
			fmt.Fprintf(&b, "| `%s` | %s | %s | %s | %s |\n", r.name(), cell(r.doc), cell(w.limits(r, false)), r.leftOut(), r.examples())
		}
		b.WriteString("\n")
	}
	return b.String()
}

// leftOut says what holds where a key is not given.
func (r row) leftOut() string {
	switch {
	case r.must:
		return "**needed**"
	case r.usualIn != "":
		return cell(r.usual + " or " + r.usualIn)
	case r.usual != "":
		return cell(r.usual)
	}
	return "–"
}

// examples returns the row's examples as code.
func (r row) examples() string {
	mm, in := r.example(false), r.example(true)
	if mm == in {
		return "`" + mm + "`"
	}
	return "`" + mm + "`, `" + in + "`"
}

// cell makes text safe within a Markdown table.
func cell(text string) string {
	return strings.NewReplacer("|", `\|`, "[[", "`[[", "]]", "]]`").Replace(text)
}
