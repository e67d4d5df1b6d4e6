// Package svg writes drawings as SVG 1.1 and reads SVG files back.
//
// A file is as wide and high in mm as its sheet, and one user unit is one
// millimetre, y downwards as SVG has it. There is one group for each kind of
// work, its id the kind's name, and in it one path for each line, with the
// line's name as title and a safe form of it as id. Coordinates have four
// decimals, never an exponent, and only the commands M, L and Z occur, which
// every cutter's reader understands. Lettering is drawn as strokes, a path for
// each label; its text stands in the path's desc.
package svg

import (
	"fmt"
	"io"
	"strings"

	"github.com/beevik/etree"

	"slingloft/export"
	"slingloft/export/style"
	"slingloft/outline/piece"
)

// decimals of a coordinate: a tenth of a micrometre.
const decimals = 4

// Write writes the drawing as SVG.
func Write(w io.Writer, d export.Drawing, o export.Options) error {
	plain, err := d.Plain(o)
	if err != nil {
		return err
	}
	doc := etree.NewDocument()
	doc.CreateProcInst("xml", `version="1.0" encoding="UTF-8"`)
	root := doc.CreateElement("svg")
	size := [2]string{num(plain.Width), num(plain.Height)}
	root.CreateAttr("xmlns", "http://www.w3.org/2000/svg")
	root.CreateAttr("version", "1.1")
	root.CreateAttr("width", size[0]+"mm")
	root.CreateAttr("height", size[1]+"mm")
	root.CreateAttr("viewBox", "0 0 "+size[0]+" "+size[1])
	root.CreateElement("title").SetText(plain.Title)
	root.CreateElement("desc").SetText(fmt.Sprintf(o.Said().Size, export.ScaleText(o.ScaleFactor())))

	groups := addGroups(root, o.Scheme)
	ids := newIDs()
	at := plain.Height
	for _, l := range plain.Lines[:len(d.Lines)] {
		addPath(groups[l.Work], ids.unique(l.Name), l.Name, pathData(at, l))
	}
	addLabels(groups[piece.Lettering], ids, d, plain)
	doc.Indent(1)
	_, err = doc.WriteTo(w)
	return err
}

// addGroups adds one group for each kind of work and returns them in that order.
func addGroups(root *etree.Element, s style.Scheme) []*etree.Element {
	var out []*etree.Element
	for _, w := range piece.Works() {
		g := root.CreateElement("g")
		stroke := s.Of(w)
		g.CreateAttr("id", w.String())
		g.CreateAttr("fill", "none")
		g.CreateAttr("stroke", stroke.Colour.String())
		g.CreateAttr("stroke-width", num(stroke.Width))
		g.CreateAttr("stroke-linecap", "round")
		g.CreateAttr("stroke-linejoin", "round")
		if len(stroke.Dash) > 0 {
			g.CreateAttr("stroke-dasharray", dashes(stroke.Dash))
		}
		g.CreateElement("title").SetText(w.String())
		out = append(out, g)
	}
	return out
}

func dashes(lengths []float64) string {
	words := make([]string, len(lengths))
	for i, d := range lengths {
		words[i] = num(d)
	}
	return strings.Join(words, " ")
}

func addPath(group *etree.Element, id, name, data string) *etree.Element {
	p := group.CreateElement("path")
	p.CreateAttr("id", id)
	p.CreateAttr("d", data)
	p.CreateElement("title").SetText(name)
	return p
}

// addLabels adds one path for each label, of all its strokes, which stand in the
// plain drawing behind its lines.
func addLabels(group *etree.Element, ids ids, d, plain export.Drawing) {
	rest := plain.Lines[len(d.Lines):]
	for i, label := range d.Labels {
		name := export.LabelName(i)
		n := 0
		for n < len(rest) && rest[n].Index == i {
			n++
		}
		if n == 0 {
			continue
		}
		p := addPath(group, ids.unique(name), name, pathData(plain.Height, rest[:n]...))
		p.CreateElement("desc").SetText(export.OneLine(label.Text))
		rest = rest[n:]
	}
}

// pathData returns the lines as subpaths, y turned downwards from height.
func pathData(height float64, lines ...piece.Line) string {
	var b strings.Builder
	for _, l := range lines {
		for i, p := range l.Points {
			switch {
			case i == 0 && b.Len() == 0:
				b.WriteString("M ")
			case i == 0:
				b.WriteString(" M ")
			default:
				b.WriteString(" L ")
			}
			b.WriteString(num(p.X))
			b.WriteByte(' ')
			b.WriteString(num(height - p.Y))
		}
		if l.Closed {
			b.WriteString(" Z")
		}
	}
	return b.String()
}

func num(v float64) string { return export.Fixed(v, decimals) }

// ids hands out identifiers, no two alike and none like a group's.
type ids struct {
	taken map[string]bool
	last  map[string]int
}

func newIDs() ids {
	out := ids{map[string]bool{}, map[string]int{}}
	for _, w := range piece.Works() {
		out.taken[w.String()] = true
	}
	return out
}

func (s ids) unique(name string) string {
	base := export.ID(name)
	id := base
	for s.taken[id] {
		s.last[base] = max(s.last[base], 1) + 1
		id = fmt.Sprintf("%s-%d", base, s.last[base])
	}
	s.taken[id] = true
	return id
}
