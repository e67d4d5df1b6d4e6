package svg

import (
	"bytes"
	"slices"
	"strconv"
	"strings"

	"github.com/beevik/etree"

	"slingloft/export"
)

// faults compares all that Read does not give back and that an eye, a list of jobs or a
// viewer acts on: colours, widths and dashes, opacity, clips and filters, titles and
// texts, ids, and whatever else a file holds that is not due.
func faults(got, due []byte) ([]export.Note, error) { return export.LookFaultsOf(got, due, looksOf) }

// judge gathers the looks of a document.
type judge struct {
	looks export.Looks
	sheet sheet
}

func looksOf(data []byte) (export.Looks, error) {
	root, err := document(bytes.NewReader(data))
	if err != nil {
		return nil, export.Refuse(export.InSVG, err)
	}
	j := judge{looks: export.Looks{}}
	if j.sheet, err = sheetOf(root); err != nil {
		return nil, export.Refuse(export.InSVG, err)
	}
	for top := root.Parent(); top != nil; top = nil {
		for _, t := range top.Child {
			if d, ok := t.(*etree.Directive); ok {
				j.looks.Add("document", export.Properties{"declaration": d.Data})
			}
		}
	}
	if err := j.element(root, look{}, nil); err != nil {
		return nil, export.Refuse(export.InSVG, err)
	}
	return j.looks, nil
}

// handed down to all that an element holds, though not inherited as other properties.
var handed = [...]string{"clip-path", "mask", "filter", "mix-blend-mode", "opacity"}

// shapeKeys are attributes that [Read] gives back as lines.
const shapeKeys = " d points x y x1 y1 x2 y2 cx cy r rx ry width height viewBox preserveAspectRatio transform version baseProfile "

// element takes down an element and all that it holds. around is what those around it
// hand down.
func (j judge) element(e *etree.Element, l look, around export.Properties) error {
	l, err := l.within(e, j.sheet)
	if err != nil {
		return err
	}
	down := export.Properties{}
	for _, name := range handed {
		v := plainValue(name, l.of(name))
		if v == plainValue(name, look{}.of(name)) {
			v = ""
		}
		if v = strings.TrimSpace(around[name] + " " + v); v != "" {
			down[name] = v
		}
	}
	p := export.Properties{}
	k := kindOf(e.Tag)
	if k != group && e.Tag != "svg" {
		for _, of := range properties {
			v := plainValue(of.name, l.of(of.name))
			if of.name != "transform" && of.name != "display" && !slices.Contains(handed[:], of.name) && v != plainValue(of.name, of.initial) {
				p[of.name] = v
			}
		}
		for n, v := range down {
			p[n] = v
		}
	}
	j.attributes(e, p)
	name := e.Tag + " " + strconv.Quote(attr(e, "id"))
	for _, c := range e.Child {
		if t, ok := c.(*etree.CharData); ok && !t.IsWhitespace() {
			p["text"] += strings.TrimSpace(t.Data)
		}
	}
	for _, c := range e.ChildElements() {
		switch {
		case foreign(c) || c.Tag == "metadata":
		case c.Tag == "title" || c.Tag == "desc":
			p[c.Tag] += export.OneLine(c.Text())
		case c.Tag == "style": // followed
		case c.Tag == "defs" && len(c.ChildElements()) == 0:
		default:
			if err := j.element(c, l, down); err != nil {
				return err
			}
		}
	}
	j.looks.Add(name, p)
	return nil
}

// attributes takes down the attributes that are neither followed nor of another
// vocabulary.
func (j judge) attributes(e *etree.Element, p export.Properties) {
	for _, a := range e.Attr {
		known := strings.Contains(shapeKeys, " "+a.Key+" ") || slices.Contains([]string{"id", "style", "class", "xmlns"}, a.Key) ||
			slices.ContainsFunc(properties[:], func(q property) bool { return q.name == a.Key })
		if link := a.Key == "href"; link || a.Space == "" && !known {
			p["attribute "+a.Key] = a.Value
		}
	}
}

// plainValue returns a value in one way of writing it.
func plainValue(name, v string) string {
	v = strings.Join(strings.FieldsFunc(v, func(r rune) bool { return strings.ContainsRune(" ,\t\r\n", r) }), " ")
	words := strings.Fields(v)
	for i, w := range words {
		if n, err := strconv.ParseFloat(strings.TrimSuffix(w, "px"), 64); err == nil {
			words[i] = strconv.FormatFloat(n, 'f', -1, 64)
		}
	}
	v = strings.Join(words, " ")
	if name == "fill" || name == "stroke" || name == "color" {
		v = strings.ToLower(v)
		if len(v) == 4 && v[0] == '#' {
			v = string([]byte{'#', v[1], v[1], v[2], v[2], v[3], v[3]})
		}
	}
	return v
}
