package svg

import (
	"bufio"
	"bytes"
	"fmt"
	"io"
	"math"
	"strings"

	"github.com/beevik/etree"

	"slingloft/export"
	"slingloft/outline/geom"
	"slingloft/outline/piece"
)

// What is read at most: far more than any drawing of ours, and little enough to
// hold in memory.
const (
	maxBytes   = 64 << 20
	maxDepth   = 64
	maxObjects = 400_000 // elements, attributes and ends of elements
)

// curveTolerance is how far the chords of a curve that is read may lie from it, mm.
const curveTolerance = 0.005

// Read reads a drawing as it stands on paper, in mm with y upwards: every path,
// line, polygon, rectangle, circle and ellipse that can be seen, and their clones,
// with the transforms over it. The kind of work is that of the nearest group whose
// id or layer's name is one, CutOut where there is none; the name is the element's
// title, or else its id. Strokes of one path are named "NAME/stroke 1" and so on.
// Style sheets are followed; see [ReadOutlines] for what is left out. What could
// change an outline and is not understood is an error.
func Read(r io.Reader) (export.Drawing, error) {
	d, _, err := ReadOutlines(r, 0)
	return d, err
}

// ReadOutlines is [Read] for a drawing of another program: it also counts what was
// left out because it cannot be seen, is text or a picture. unit is the length of a
// user unit in mm, and is not used where the file says how wide it is; 0 for none.
func ReadOutlines(r io.Reader, unit float64) (export.Drawing, export.Left, error) {
	root, err := document(r)
	if err != nil {
		return export.Drawing{}, export.Left{}, export.Refuse(export.InSVG, err)
	}
	d, toPaper, err := readSheet(root, unit)
	if err != nil {
		return export.Drawing{}, export.Left{}, export.Refuse(export.InSVG, err)
	}
	w := walker{drawing: &d, budget: export.MaxPoints, byID: map[string]*etree.Element{}}
	for _, e := range root.FindElements("//*[@id]") {
		if id := attr(e, "id"); w.byID[id] == nil {
			w.byID[id] = e
		}
	}
	if w.sheet, err = sheetOf(root); err == nil {
		err = w.root(root, toPaper)
	}
	if err != nil {
		return export.Drawing{}, export.Left{}, export.Refuse(export.InSVG, err)
	}
	return d, w.left, nil
}

// document parses a file and returns its svg element.
func document(r io.Reader) (*etree.Element, error) {
	limited := io.LimitReader(r, maxBytes+1)
	start := bufio.NewReader(&counted{limited, maxObjects})
	if magic, err := start.Peek(2); err == nil && string(magic) == "\x1f\x8b" {
		return nil, export.Refuse(export.CompressedSVG)
	}
	doc := etree.NewDocument()
	n, err := doc.ReadFrom(start)
	if err != nil {
		return nil, err
	}
	if n > maxBytes {
		return nil, export.Refuse(export.TooLarge, maxBytes>>20)
	}
	for _, t := range doc.Child {
		if p, ok := t.(*etree.ProcInst); ok && p.Target == "xml-stylesheet" {
			return nil, export.Refuse(export.SheetElsewhere)
		}
	}
	root := doc.Root()
	if root == nil || root.Tag != "svg" || foreign(root) {
		return nil, export.Refuse(export.NoSVG)
	}
	return root, nil
}

// counted is a reader that ends with a fault behind so many signs that begin an element
// or give an attribute its value: a document in memory takes hundreds of bytes for each.
type counted struct {
	r    io.Reader
	left int
}

func (c *counted) Read(b []byte) (int, error) {
	n, err := c.r.Read(b)
	c.left -= bytes.Count(b[:n], []byte{'<'}) + bytes.Count(b[:n], []byte{'='})
	if c.left < 0 {
		return 0, export.Refuse(export.TooManyObjects)
	}
	return n, err
}

func childText(e *etree.Element, tag string) string {
	for _, c := range e.ChildElements() {
		if c.Tag == tag && !foreign(c) {
			return export.OneLine(c.Text())
		}
	}
	return ""
}

// walker collects the shapes of a document.
type walker struct {
	drawing *export.Drawing
	left    export.Left
	budget  int
	sheet   sheet
	byID    map[string]*etree.Element
}

// state is what an element takes from those around it.
type state struct {
	look   look
	toMM   geom.Affine
	work   piece.Work
	clear  bool // nothing of it can be seen for want of opacity
	gone   bool // it is not displayed
	depth  int
	clones int // use elements around it
}

func (w *walker) root(root *etree.Element, toPaper geom.Affine) error {
	s := state{look: look{}, toMM: toPaper, work: piece.CutOut}
	in, err := w.enter(root, s)
	if err != nil {
		return err
	}
	return w.children(root, in)
}

func (w *walker) children(e *etree.Element, s state) error {
	if s.depth > maxDepth {
		return export.Refuse(export.GroupsTooDeep, maxDepth)
	}
	s.depth++
	for _, c := range e.ChildElements() {
		if foreign(c) {
			continue
		}
		if err := w.element(c, s); err != nil {
			return err
		}
		if e.Tag == "switch" && kindOf(c.Tag) != nothing && passes(c) {
			return nil // the first that can be drawn stands for all
		}
	}
	return nil
}

// kind is what the tag of an element says.
type kind int

const (
	unknown kind = iota
	nothing      // draws nothing by itself
	group
	clone
	shape
	letters
	picture
)

func kindOf(tag string) kind {
	switch tag {
	case "g", "a", "switch":
		return group
	case "use":
		return clone
	case "path", "line", "polyline", "polygon", "rect", "circle", "ellipse":
		return shape
	case "text", "flowRoot":
		return letters
	case "image", "foreignObject":
		return picture
	case "title", "desc", "metadata", "defs", "symbol", "clipPath", "mask", "marker", "pattern", "linearGradient", "radialGradient",
		"meshgradient", "hatch", "solidcolor", "filter", "style", "font", "font-face", "view", "cursor", "color-profile":
		return nothing
	}
	return unknown
}

// passes reports whether an element's conditions hold; languages are refused earlier.
func passes(e *etree.Element) bool { return strings.TrimSpace(attr(e, "requiredExtensions")) == "" }

func (w *walker) element(e *etree.Element, s state) error {
	k := kindOf(e.Tag)
	if k == nothing {
		return nil
	}
	if w.budget--; w.budget < 0 {
		return export.Refuse(export.TooManyObjectsAndPoints)
	}
	if k == unknown {
		return export.Refuse(export.ElementUnread, e.Tag, attr(e, "id"))
	}
	in, err := w.enter(e, s)
	if err != nil {
		return export.Refuse(export.AtElement, e.Tag, attr(e, "id"), err)
	}
	switch k {
	case group:
		return w.children(e, in)
	case clone:
		return w.clone(e, in)
	case letters:
		w.left[export.Text]++
		return nil
	case picture:
		w.left[export.Picture]++
		return nil
	}
	data, err := shapeData(e)
	if err != nil {
		return export.Refuse(export.AtElement, e.Tag, attr(e, "id"), err)
	}
	if w.leaves(e.Tag, data, in) {
		return nil
	}
	subs, err := parsePath(data, curveTolerance/math.Max(in.toMM.Gain(), 1e-9), w.budget)
	if err != nil {
		return export.Refuse(export.AtElement, e.Tag, attr(e, "id"), err)
	}
	return w.add(e, subs, in.toMM, in.work)
}

// leaves counts a shape that is left out and reports whether it is.
func (w *walker) leaves(tag, data string, s state) bool {
	filled, clearFill := s.look.painted("fill")
	stroked, clearStroke := s.look.painted("stroke")
	if tag == "line" {
		filled = false // it encloses nothing
	}
	switch {
	case data == "":
	case s.gone || s.look.of("visibility") != "visible":
		w.left[export.Hidden]++
	case !filled && !stroked:
		w.left[export.Unpainted]++
	case s.clear || (!filled || clearFill) && (!stroked || clearStroke):
		w.left[export.Transparent]++
	default:
		return false
	}
	return true
}

// enter returns what holds in an element. What hides a part of an outline is refused.
func (w *walker) enter(e *etree.Element, s state) (state, error) {
	var err error
	if s.look, err = s.look.within(e, w.sheet); err != nil {
		return s, err
	}
	for _, name := range []string{"clip-path", "mask"} {
		if s.look.of(name) != "none" {
			return s, export.Refuse(export.PartHidden, name)
		}
	}
	if strings.TrimSpace(attr(e, "systemLanguage")) != "" {
		return s, export.Refuse(export.OneLanguage)
	}
	for _, c := range e.ChildElements() {
		if !foreign(c) && (strings.HasPrefix(c.Tag, "animate") || c.Tag == "set") {
			return s, export.Refuse(export.Moving, c.Tag)
		}
	}
	own, err := parseTransform(s.look.of("transform"))
	if err != nil {
		return s, err
	}
	s.toMM = s.toMM.After(own)
	s.gone = s.gone || s.look.of("display") == "none" || !passes(e)
	s.clear = s.clear || opacityOf(s.look.of("opacity")) <= 0
	s.work = workOf(e, s.work)
	return s, nil
}

// maxClones bounds clones of clones.
const maxClones = 16

// clone draws what a use element shows, moved to its place.
func (w *walker) clone(e *etree.Element, s state) error {
	href := e.SelectAttrValue("href", "") // behind any prefix
	target := w.byID[strings.TrimPrefix(href, "#")]
	if target == nil || !strings.HasPrefix(href, "#") {
		return export.Refuse(export.UseOfNothing, attr(e, "id"), href)
	}
	if s.clones++; s.clones > maxClones {
		return export.Refuse(export.UseOfUses, attr(e, "id"), maxClones)
	}
	var at [2]float64
	for i, key := range []string{"x", "y"} {
		if text := attr(e, key); text != "" {
			mm, err := length(text)
			if err != nil {
				return export.Refuse(export.AtUse, attr(e, "id"), key, err)
			}
			at[i] = mm / mmPerPixel
		}
	}
	s.toMM = s.toMM.After(geom.Translation(geom.Pt(at[0], at[1])))
	if target.Tag != "symbol" {
		return w.element(target, s)
	}
	if attr(target, "viewBox") != "" {
		return export.Refuse(export.UseOfViewBox, attr(e, "id"))
	}
	in, err := w.enter(target, s)
	if err != nil {
		return export.Refuse(export.AtSymbol, attr(target, "id"), err)
	}
	return w.children(target, in)
}

// workOf returns the work that a group's id or layer's name is, else that around it.
func workOf(e *etree.Element, around piece.Work) piece.Work {
	if kindOf(e.Tag) != group {
		return around
	}
	for _, w := range piece.Works() {
		if w.String() == attr(e, "id") || w.String() == e.SelectAttrValue("inkscape:label", "") {
			return w
		}
	}
	return around
}

// add adds the subpaths of one element to the drawing.
func (w *walker) add(e *etree.Element, subs []subpath, m geom.Affine, work piece.Work) error {
	name := childText(e, "title")
	if name == "" {
		name = export.OneLine(attr(e, "id"))
	}
	for i, s := range subs {
		w.budget -= len(s.points)
		if w.budget < 0 || len(w.drawing.Lines) >= export.MaxLines {
			return export.Refuse(export.TooManyLinesAndPoints)
		}
		l := piece.Line{Name: name, Work: work, Closed: s.closed, Points: make(geom.Polyline, len(s.points))}
		if len(subs) > 1 || work == piece.Lettering {
			l.Name = fmt.Sprintf("%s/stroke %d", name, i+1)
		}
		for k, p := range s.points {
			l.Points[k] = m.Apply(p)
			if !l.Points[k].Finite() {
				return export.Refuse(export.ElementNotFinite, e.Tag, name)
			}
		}
		if n := len(l.Points); l.Closed && n > 1 && l.Points[0] == l.Points[n-1] {
			l.Points = l.Points[:n-1] // drawn back to the start and then closed
		}
		if len(l.Points) > 1 {
			w.drawing.Lines = append(w.drawing.Lines, l)
		} else {
			w.left[export.Lengthless]++
		}
	}
	return nil
}
