package pdf

import (
	"errors"
	"io"

	"slingloft/export"
	"slingloft/outline/geom"
	"slingloft/outline/piece"
)

// Read reads a PDF of one page that we wrote as the drawing that stands on paper,
// in mm. A file that another program has rewritten is an error.
func Read(r io.Reader) (export.Drawing, error) {
	pages, err := ReadPages(r)
	if err != nil {
		return export.Drawing{}, err
	}
	if len(pages) != 1 {
		return export.Drawing{}, export.Refuse(export.OnePageDue, len(pages))
	}
	return pages[0], nil
}

// ReadPages reads a PDF that we wrote, a drawing for each page.
func ReadPages(r io.Reader) ([]export.Drawing, error) {
	f, err := open(r)
	if err != nil {
		return nil, export.Refuse(export.InPDF, err)
	}
	pages, err := f.pages()
	if err != nil {
		return nil, export.Refuse(export.InPDF, err)
	}
	var out []export.Drawing
	for i, p := range pages {
		d, err := f.drawing(p)
		if err != nil {
			return nil, export.Refuse(export.AtPage, i+1, err)
		}
		out = append(out, d)
	}
	return out, nil
}

// pages returns the pages of the flat page tree that we write.
func (f *file) pages() ([]dict, error) {
	root, err := f.dict(f.trailer["Root"])
	if err != nil {
		return nil, err
	}
	tree, err := f.dict(root["Pages"])
	if err != nil {
		return nil, err
	}
	kids, ok := tree["Kids"].(array)
	if !ok || len(kids) > maxPages {
		return nil, export.Refuse(export.PagesMissing)
	}
	var out []dict
	for _, k := range kids {
		p, err := f.dict(k)
		if err != nil {
			return nil, err
		}
		if p["Type"] != any(name("Page")) {
			return nil, export.Refuse(export.PagesGrouped)
		}
		if p["MediaBox"] == nil {
			p["MediaBox"] = tree["MediaBox"]
		}
		out = append(out, p)
	}
	return out, nil
}

func (f *file) drawing(p dict) (export.Drawing, error) {
	var d export.Drawing
	box, ok := p["MediaBox"].(array)
	if !ok || len(box) != 4 {
		return d, export.Refuse(export.PageNoSize)
	}
	var side [4]float64
	for i, v := range box {
		side[i], _ = v.(float64)
	}
	unit := 1.0
	if v, ok := p["UserUnit"].(float64); ok {
		unit = v
	}
	mm := unit / pointsPerMM
	d.Width, d.Height = (side[2]-side[0])*mm, (side[3]-side[1])*mm
	if !export.Inside(d.Width, 1e-3, 1.01*export.MaxSize) || !export.Inside(d.Height, 1e-3, 1.01*export.MaxSize) {
		return d, export.Refuse(export.PageSize, d.Width, d.Height)
	}
	layers, err := f.layers(p)
	if err != nil {
		return d, err
	}
	content, err := f.stream(p["Contents"])
	if err != nil {
		return d, err
	}
	c := follower{layers: layers, drawing: &d, budget: export.MaxPoints}
	c.maps = []geom.Affine{{A: mm, D: mm, E: -side[0] * mm, F: -side[1] * mm}}
	return d, c.run(content)
}

// follower follows the content of one page.
type follower struct {
	layers  map[name]string
	drawing *export.Drawing
	budget  int // points that may still be read

	args  []any
	maps  []geom.Affine // the last is in force
	marks []mark        // marked content that is open
	path  []piece.Line
}

// mark is what a marked-content operator said: a kind of work, a name or neither.
type mark struct {
	work  piece.Work
	layer bool
	name  string
}

const (
	maxArgs  = 64
	maxMarks = 64
)

func (c *follower) run(content []byte) error {
	l := &lexer{text: content}
	for {
		v, err := l.next()
		if errors.Is(err, errEnd) {
			return nil
		}
		if err != nil {
			return err
		}
		op, ok := v.(keyword)
		if !ok {
			if c.args = append(c.args, v); len(c.args) > maxArgs {
				return export.Refuse(export.TooManyOperands)
			}
			continue
		}
		if err := c.operator(op); err != nil {
			return err
		}
		c.args = c.args[:0]
	}
}

// numbers returns the operands where they are n numbers.
func (c *follower) numbers(n int) ([]float64, error) {
	out := make([]float64, n)
	if len(c.args) != n {
		return nil, export.Refuse(export.OperandsOff, len(c.args), n)
	}
	for i, v := range c.args {
		x, ok := v.(float64)
		if !ok {
			return nil, export.Refuse(export.OperandNoNumber)
		}
		out[i] = x
	}
	return out, nil
}

func (c *follower) operator(op keyword) error {
	here := &c.maps[len(c.maps)-1]
	switch op {
	case "m", "l":
		return c.point(op == "m")
	case "h":
		c.close()
	case "s", "b", "b*":
		c.close()
		return c.paint()
	case "S", "B", "B*", "f", "F", "f*":
		return c.paint()
	case "n":
		c.path = nil
	case "c", "v", "y", "re", "Do", "sh", "BI":
		return export.Refuse(export.OperatorStrange, op)
	case "q":
		if len(c.maps) > maxMarks {
			return export.Refuse(export.StatesTooDeep)
		}
		c.maps = append(c.maps, *here)
	case "Q":
		if len(c.maps) > 1 {
			c.maps = c.maps[:len(c.maps)-1]
		}
	case "cm":
		v, err := c.numbers(6)
		if err != nil {
			return err
		}
		*here = here.After(geom.Affine{A: v[0], B: v[1], C: v[2], D: v[3], E: v[4], F: v[5]})
	case "BMC", "BDC":
		return c.open(op)
	case "EMC":
		if len(c.marks) == 0 {
			return export.Refuse(export.ContentEnds)
		}
		c.marks = c.marks[:len(c.marks)-1]
	}
	return nil
}

func (c *follower) point(starts bool) error {
	v, err := c.numbers(2)
	if err != nil {
		return err
	}
	if c.budget--; c.budget < 0 {
		return export.Refuse(export.TooManyPoints)
	}
	p := c.maps[len(c.maps)-1].Apply(geom.Pt(v[0], v[1]))
	if !p.Finite() {
		return export.Refuse(export.PointNotFinite)
	}
	if starts {
		c.path = append(c.path, piece.Line{})
	}
	if len(c.path) == 0 {
		return export.Refuse(export.LineNoStart)
	}
	last := &c.path[len(c.path)-1]
	last.Points = append(last.Points, p)
	return nil
}

func (c *follower) close() {
	if n := len(c.path); n > 0 {
		c.path[n-1].Closed = true
	}
}

// paint adds the path to the drawing as lines of the work and the name that the
// open marked content gives.
func (c *follower) paint() error {
	lineName, work := "", piece.CutOut
	for _, m := range c.marks {
		if m.layer {
			work = m.work
		}
		if m.name != "" {
			lineName = m.name
		}
	}
	if len(c.drawing.Lines)+len(c.path) > export.MaxLines {
		return export.Refuse(export.TooManyLines)
	}
	for _, l := range c.path {
		if len(l.Points) < 2 {
			continue
		}
		l.Name, l.Work = lineName, work
		c.drawing.Lines = append(c.drawing.Lines, l)
	}
	c.path = nil
	return nil
}

// open takes note of marked content.
func (c *follower) open(op keyword) error {
	if len(c.marks) >= maxMarks {
		return export.Refuse(export.MarksTooDeep)
	}
	var m mark
	if op == "BDC" && len(c.args) == 2 {
		switch v := c.args[1].(type) {
		case name:
			for _, w := range piece.Works() {
				if c.layers[v] == w.String() {
					m.work, m.layer = w, true
				}
			}
		case dict:
			m.name = text(v["N"])
		}
	}
	c.marks = append(c.marks, m)
	return nil
}
