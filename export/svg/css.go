package svg

import (
	"slingloft/export"

	"cmp"
	"slices"
	"strings"

	"github.com/beevik/etree"
)

// Style sheets are read as far as drawing programs write them: rules whose selectors
// name elements, classes and ids, within each other or not. What else could pick an
// element is refused, since it may hide or move an outline.

// declaration gives a property its value.
type declaration struct {
	name, value string
	important   bool
}

// compound picks elements by all that it names.
type compound struct {
	tag, id string // "" for any
	classes []string
}

// selector picks elements that lie in others. The last compound is the element's own.
type selector struct {
	parts []compound
	child []bool // by part: directly in the part before
}

// rule is a selector with what it declares.
type rule struct {
	selector
	declarations []declaration
	order        int
}

// sheet is all rules of a document, the stronger later.
type sheet []rule

// maxRules bounds the rules of a document.
const maxRules = 2000

// sheetOf reads all style elements of a document.
func sheetOf(root *etree.Element) (sheet, error) {
	var out sheet
	for _, e := range root.FindElements("//style") {
		if foreign(e) {
			continue
		}
		if m := strings.TrimSpace(attr(e, "media")); m != "" && m != "all" {
			return nil, export.Refuse(export.MediumUnread, m)
		}
		var text strings.Builder
		for _, t := range e.Child {
			if c, ok := t.(*etree.CharData); ok {
				text.WriteString(c.Data)
			}
		}
		var err error
		if out, err = out.with(text.String()); err != nil {
			return nil, err
		}
	}
	slices.SortStableFunc(out, func(a, b rule) int {
		wa, wb := a.weight(), b.weight()
		return cmp.Or(slices.Compare(wa[:], wb[:]), cmp.Compare(a.order, b.order))
	})
	return out, nil
}

// with returns the sheet with the rules of a text.
func (s sheet) with(text string) (sheet, error) {
	text = withoutComments(text)
	for {
		text = strings.TrimSpace(text)
		if text == "" {
			return s, nil
		}
		head, rest, ok := strings.Cut(text, "{")
		if at, after, is := strings.Cut(text, ";"); is && strings.HasPrefix(at, "@charset") {
			text = after
			continue
		}
		body, after, closed := strings.Cut(rest, "}")
		if !ok || !closed || strings.Contains(body, "{") || strings.HasPrefix(head, "@") && !strings.HasPrefix(head, "@font-face") {
			return nil, export.Refuse(export.StylesUnread, text)
		}
		text = after
		if strings.HasPrefix(head, "@") {
			continue
		}
		d := declarations(body)
		for _, part := range strings.Split(head, ",") {
			sel, err := parseSelector(part)
			if err != nil {
				return nil, err
			}
			if s = append(s, rule{sel, d, len(s)}); len(s) > maxRules {
				return nil, export.Refuse(export.MoreRules, maxRules)
			}
		}
	}
}

func withoutComments(text string) string {
	var b strings.Builder
	for {
		before, rest, ok := strings.Cut(text, "/*")
		b.WriteString(before)
		if !ok {
			return b.String()
		}
		_, text, _ = strings.Cut(rest, "*/")
		b.WriteByte(' ')
	}
}

// declarations reads what stands between braces, or in a style attribute.
func declarations(text string) []declaration {
	var out []declaration
	for _, part := range strings.Split(withoutComments(text), ";") {
		name, value, ok := strings.Cut(part, ":")
		if !ok {
			continue
		}
		d := declaration{name: strings.ToLower(strings.TrimSpace(name)), value: strings.TrimSpace(value)}
		if bare, mark, ok := strings.Cut(d.value, "!"); ok && strings.TrimSpace(strings.ToLower(mark)) == "important" {
			d.value, d.important = strings.TrimSpace(bare), true
		}
		out = append(out, d)
	}
	return out
}

func parseSelector(text string) (selector, error) {
	var s selector
	child := false
	for _, word := range strings.Fields(strings.ReplaceAll(text, ">", " > ")) {
		if word == ">" {
			child = true
			continue
		}
		c, ok := parseCompound(word)
		if !ok {
			return s, export.Refuse(export.SelectorUnread, strings.TrimSpace(text))
		}
		s.parts, s.child = append(s.parts, c), append(s.child, child)
		child = false
	}
	if len(s.parts) == 0 {
		return s, export.Refuse(export.SelectorMissing)
	}
	return s, nil
}

func parseCompound(word string) (compound, bool) {
	var c compound
	for word != "" {
		end := strings.IndexAny(word[1:], ".#") + 1
		if end == 0 {
			end = len(word)
		}
		part := word[:end]
		word = word[end:]
		name := strings.TrimLeft(part, ".#")
		if name == "" || len(part)-len(name) > 1 || strings.ContainsAny(name, `:[]()+~=\"'`) {
			return c, false
		}
		switch part[0] {
		case '.':
			c.classes = append(c.classes, name)
		case '#':
			c.id = name
		default:
			if name != "*" {
				c.tag = name
			}
		}
	}
	return c, true
}

// weight is how specific a selector is: ids, classes, elements.
func (s selector) weight() [3]int {
	var out [3]int
	for _, p := range s.parts {
		if p.id != "" {
			out[0]++
		}
		out[1] += len(p.classes)
		if p.tag != "" {
			out[2]++
		}
	}
	return out
}

// picks reports whether the selector picks an element.
func (s selector) picks(e *etree.Element) bool { return s.picksUpTo(len(s.parts)-1, e) }

// picksUpTo reports whether the parts up to the given one pick an element.
func (s selector) picksUpTo(last int, e *etree.Element) bool {
	if !s.parts[last].picks(e) {
		return false
	}
	if last == 0 {
		return true
	}
	for up := e.Parent(); up != nil && up.Tag != ""; up = up.Parent() {
		if s.picksUpTo(last-1, up) {
			return true
		}
		if s.child[last] {
			return false
		}
	}
	return false
}

func (c compound) picks(e *etree.Element) bool {
	if c.tag != "" && c.tag != e.Tag || c.id != "" && c.id != attr(e, "id") {
		return false
	}
	classes := strings.Fields(attr(e, "class"))
	for _, name := range c.classes {
		if !slices.Contains(classes, name) {
			return false
		}
	}
	return true
}

// svgSpace is the namespace of SVG's elements.
const svgSpace = "http://www.w3.org/2000/svg"

// foreign reports whether an element belongs to another vocabulary and draws nothing.
func foreign(e *etree.Element) bool {
	ns := e.NamespaceURI()
	return ns != "" && ns != svgSpace
}

// attr returns an attribute of SVG's own, "" where there is none. Those of other
// vocabularies may have the same name behind a prefix.
func attr(e *etree.Element, name string) string {
	for _, a := range e.Attr {
		if a.Space == "" && a.Key == name {
			return a.Value
		}
	}
	return ""
}
