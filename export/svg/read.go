package svg

import (
	"errors"
	"fmt"
	"io"
	"math"
	"strconv"
	"strings"

	"github.com/beevik/etree"

	"slingloft/export"
	"slingloft/outline/geom"
	"slingloft/outline/piece"
)

// What is read at most: far more than any drawing of ours, and little enough to
// hold in memory.
const (
	maxBytes = 256 << 20
	maxDepth = 64
)

// curveTolerance is how far the chords of a curve that is read may lie from it, mm.
const curveTolerance = 0.005

// Read reads a drawing as it stands on paper, in mm with y upwards: every path,
// line, polygon, rectangle, circle and ellipse, with the transforms over it. The
// kind of work is that of the nearest group whose id names one, CutOut where
// there is none; the name is the element's title, or else its id. Strokes of one
// path are named "NAME/stroke 1" and so on. Text, images, hidden parts and
// definitions are left out; clones and nested drawings are an error, since
// outlines could hide in them.
func Read(r io.Reader) (export.Drawing, error) {
	limited := io.LimitReader(r, maxBytes+1)
	doc := etree.NewDocument()
	n, err := doc.ReadFrom(limited)
	if err != nil {
		return export.Drawing{}, fmt.Errorf("SVG: %w", err)
	}
	if n > maxBytes {
		return export.Drawing{}, fmt.Errorf("SVG: larger than %d MB", maxBytes>>20)
	}
	root := doc.Root()
	if root == nil || root.Tag != "svg" {
		return export.Drawing{}, errors.New("SVG: no svg element at the root")
	}
	d, toPaper, err := readSheet(root)
	if err != nil {
		return export.Drawing{}, fmt.Errorf("SVG: %w", err)
	}
	w := walker{drawing: &d, budget: export.MaxPoints}
	if err := w.children(root, toPaper, piece.CutOut, 0); err != nil {
		return export.Drawing{}, fmt.Errorf("SVG: %w", err)
	}
	return d, nil
}

// readSheet reads the size and returns the map from user units to mm, y upwards.
func readSheet(root *etree.Element) (export.Drawing, geom.Affine, error) {
	d := export.Drawing{Title: childText(root, "title")}
	box, err := numbers(root.SelectAttrValue("viewBox", ""), 4)
	if err != nil || (len(box) != 0 && len(box) != 4) {
		return d, geom.Identity(), fmt.Errorf("viewBox %.60q", root.SelectAttrValue("viewBox", ""))
	}
	hasBox := len(box) == 4
	var size [2]float64
	for i, name := range []string{"width", "height"} {
		text := root.SelectAttrValue(name, "")
		switch {
		case text != "" && !strings.HasSuffix(text, "%"):
			if size[i], err = length(text); err != nil {
				return d, geom.Identity(), fmt.Errorf("%s: %w", name, err)
			}
		case hasBox:
			size[i] = box[2+i] * mmPerPixel
		}
		if !export.Inside(size[i], 1e-3, export.MaxSize) {
			return d, geom.Identity(), fmt.Errorf("%s of the sheet is %g mm", name, size[i])
		}
	}
	d.Width, d.Height = size[0], size[1]
	if !hasBox {
		box = []float64{0, 0, size[0] / mmPerPixel, size[1] / mmPerPixel}
	}
	if !(box[2] > 0 && box[3] > 0) {
		return d, geom.Identity(), fmt.Errorf("viewBox of %g × %g units", box[2], box[3])
	}
	// Where the shapes differ the picture is fitted in and centred (xMidYMid meet).
	k := math.Min(size[0]/box[2], size[1]/box[3])
	dx := (size[0] - float64(k*box[2])) / 2
	dy := (size[1] - float64(k*box[3])) / 2
	return d, geom.Affine{A: k, D: -k, E: dx - float64(k*box[0]), F: size[1] - dy + float64(k*box[1])}, nil
}

// mmPerPixel is the CSS pixel, a 96th of an inch.
const mmPerPixel = 25.4 / 96

// length reads a length with its unit as mm.
func length(text string) (float64, error) {
	text = strings.TrimSpace(text)
	units := []struct {
		suffix string
		mm     float64
	}{{"mm", 1}, {"cm", 10}, {"in", 25.4}, {"pt", 25.4 / 72}, {"pc", 25.4 / 6}, {"px", mmPerPixel}, {"", mmPerPixel}}
	for _, u := range units {
		if bare, ok := strings.CutSuffix(text, u.suffix); ok {
			v, err := strconv.ParseFloat(strings.TrimSpace(bare), 64)
			if err != nil || math.IsNaN(v) || math.Abs(v) > maxCoordinate {
				break
			}
			return v * u.mm, nil
		}
	}
	return 0, fmt.Errorf("length %.30q", text)
}

func childText(e *etree.Element, tag string) string {
	if c := e.SelectElement(tag); c != nil {
		return export.OneLine(c.Text())
	}
	return ""
}

// walker collects the shapes of a document.
type walker struct {
	drawing *export.Drawing
	budget  int
}

func (w *walker) children(e *etree.Element, m geom.Affine, work piece.Work, depth int) error {
	if depth > maxDepth {
		return fmt.Errorf("groups nested deeper than %d", maxDepth)
	}
	for _, c := range e.ChildElements() {
		if err := w.element(c, m, work, depth); err != nil {
			return err
		}
	}
	return nil
}

func (w *walker) element(e *etree.Element, m geom.Affine, work piece.Work, depth int) error {
	if e.SelectAttrValue("display", "") == "none" || strings.Contains(e.SelectAttrValue("style", ""), "display:none") {
		return nil
	}
	own, err := parseTransform(e.SelectAttrValue("transform", ""))
	if err != nil {
		return fmt.Errorf("%s %.60q: %w", e.Tag, e.SelectAttrValue("id", ""), err)
	}
	m = m.After(own)
	switch e.Tag {
	case "g", "a", "switch":
		return w.children(e, m, workOf(e, work), depth+1)
	case "use", "svg":
		return fmt.Errorf("%s %.60q: clones and nested drawings are not read, unlink them first", e.Tag, e.SelectAttrValue("id", ""))
	}
	data, err := shapeData(e)
	if err != nil {
		return fmt.Errorf("%s %.60q: %w", e.Tag, e.SelectAttrValue("id", ""), err)
	}
	if data == "" {
		return nil
	}
	subs, err := parsePath(data, curveTolerance/math.Max(m.Gain(), 1e-9), w.budget)
	if err != nil {
		return fmt.Errorf("%s %.60q: %w", e.Tag, e.SelectAttrValue("id", ""), err)
	}
	return w.add(e, subs, m, work)
}

// workOf returns the work that a group's id names, else that around it.
func workOf(e *etree.Element, around piece.Work) piece.Work {
	id := e.SelectAttrValue("id", "")
	for _, w := range piece.Works() {
		if w.String() == id {
			return w
		}
	}
	return around
}

// add adds the subpaths of one element to the drawing.
func (w *walker) add(e *etree.Element, subs []subpath, m geom.Affine, work piece.Work) error {
	name := childText(e, "title")
	if name == "" {
		name = export.OneLine(e.SelectAttrValue("id", ""))
	}
	for i, s := range subs {
		w.budget -= len(s.points)
		if w.budget < 0 || len(w.drawing.Lines) >= export.MaxLines {
			return errors.New("too many lines and points")
		}
		l := piece.Line{Name: name, Work: work, Closed: s.closed, Points: make(geom.Polyline, len(s.points))}
		if len(subs) > 1 || work == piece.Lettering {
			l.Name = fmt.Sprintf("%s/stroke %d", name, i+1)
		}
		for k, p := range s.points {
			l.Points[k] = m.Apply(p)
			if !l.Points[k].Finite() {
				return fmt.Errorf("%s %.60q: a point is not finite", e.Tag, name)
			}
		}
		if n := len(l.Points); l.Closed && n > 1 && l.Points[0] == l.Points[n-1] {
			l.Points = l.Points[:n-1] // drawn back to the start and then closed
		}
		if len(l.Points) > 1 {
			w.drawing.Lines = append(w.drawing.Lines, l)
		}
	}
	return nil
}
