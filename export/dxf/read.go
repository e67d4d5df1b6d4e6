package dxf

import (
	"io"
	"strings"

	"slingloft/export"
	"slingloft/outline/geom"
	"slingloft/outline/piece"
)

// Read reads a DXF file into a drawing in mm: LINE, LWPOLYLINE, plane POLYLINE,
// ARC, CIRCLE, ELLIPSE and SPLINE in the model space, straight or by INSERT of a block. Kinds of
// work come from the names of layers, CutOut where a layer names none; names from
// our extended data, or else the entity's kind and handle. Curves are turned into
// chords. Text, points, dimensions and fillings are left out, and so is what cannot be
// seen: hidden, transparent, on a layer that is off or frozen, on a layout; curves of
// other kinds are an error, since an outline would be missing.
func Read(r io.Reader) (export.Drawing, error) {
	o, err := ReadOutlines(r, 0)
	return o.Drawing, err
}

// Outlines is what was read of a drawing of another program.
type Outlines struct {
	export.Drawing
	Left   export.Left     // objects that were left out
	Doubts []*export.Fault // what may look otherwise elsewhere
}

// ReadOutlines is [Read] for a drawing of another program: it also counts what was left
// out because it cannot be seen, is text or a picture. unit is the file's unit of length
// in mm, and is not used where the file names one; 0 for none.
func ReadOutlines(r io.Reader, unit float64) (Outlines, error) {
	f := file{budget: export.MaxPoints, blocks: map[string]block{}, layers: map[string]layer{}, given: unit}
	if err := f.read(newScanner(r)); err != nil {
		return Outlines{}, export.Refuse(export.InDXF, err)
	}
	d, err := f.drawing()
	if err != nil {
		return Outlines{}, export.Refuse(export.InDXF, err)
	}
	return Outlines{d, f.left, f.doubts}, nil
}

// file is what is read of a file.
type file struct {
	units    int     // $INSUNITS
	given    float64 // unit of a file that names none, mm; 0 for none
	limit    geom.Point
	hasLimit bool
	entities []entity
	blocks   map[string]block
	layers   map[string]layer // by name in small letters, as DXF compares them
	left     export.Left
	doubts   []*export.Fault
	budget   int // points that may still be made
}

// layer is whether what lies on a layer can be seen.
type layer struct{ off, frozen bool }

// block is a group of entities that is drawn where it is inserted.
type block struct {
	base     geom.Point // comes to lie at the place of insertion
	entities []entity
}

// mmPerUnit is the length of the units that $INSUNITS counts, in mm; 0 for none
// and for those that no sheet is drawn in.
var mmPerUnit = [...]float64{1: 25.4, 2: 304.8, 4: 1, 5: 10, 6: 1000, 10: 914.4, 14: 100}

func (f *file) read(s *scanner) error {
	return s.sections(func(section string, p pair) (err error) {
		switch {
		case section == "HEADER" && p.code == 9:
			err = f.variable(s, p.value)
		case section == "TABLES" && p.code == 0 && p.value == "LAYER":
			err = f.readLayer(s)
		case section == "ENTITIES" && p.code == 0:
			s.back(p)
			f.entities, err = f.readEntities(s, f.entities)
		case section == "BLOCKS" && p.code == 0 && p.value == "BLOCK":
			err = f.readBlock(s)
		}
		return err
	})
}

// variable reads a header variable that is of use.
func (f *file) variable(s *scanner, name string) error {
	if name != "$INSUNITS" && name != "$LIMMAX" {
		return nil
	}
	for {
		p, err := s.next()
		if err != nil {
			return err
		}
		switch {
		case p.code == 0 || p.code == 9:
			s.back(p)
			return nil
		case p.code == 70 && name == "$INSUNITS":
			f.units, err = p.integer()
		case p.code == 10:
			f.limit.X, err = p.number()
		case p.code == 20:
			f.limit.Y, err = p.number()
			f.hasLimit = true
		}
		if err != nil {
			return export.Refuse(export.AtKey, name, err)
		}
	}
}

// readLayer reads one record of the table of layers: bit 1 of its flags freezes it, a
// colour below zero switches it off.
func (f *file) readLayer(s *scanner) error {
	var l layer
	name := ""
	for {
		p, err := s.next()
		if err != nil {
			return err
		}
		n := 0
		switch p.code {
		case 0:
			s.back(p)
			f.layers[strings.ToLower(name)] = l
			return nil
		case 2:
			name = p.value
		case 62, 70:
			if n, err = p.integer(); err != nil {
				return export.Refuse(export.AtLayer, name, err)
			}
			if p.code == 62 {
				l.off = n < 0
			} else {
				l.frozen = n&1 != 0
			}
		}
	}
}

// readBlock reads the entities of one block under its name. What lies on a layout is
// kept in one of its own.
func (f *file) readBlock(s *scanner) error {
	head, err := readRaw(s, "BLOCK")
	if err != nil {
		return err
	}
	entities, err := f.readEntities(s, nil)
	if err != nil {
		return export.Refuse(export.AtBlock, head.block, err)
	}
	if strings.HasPrefix(strings.ToLower(head.block), "*paper_space") {
		f.left[export.PaperSpace] += len(entities)
	}
	f.blocks[head.block] = block{geom.Pt(head.value[10], head.value[20]), entities}
	return nil
}

// named reports whether the file names a unit that a sheet may be drawn in.
func (f *file) named() bool {
	return f.units > 0 && f.units < len(mmPerUnit) && mmPerUnit[f.units] > 0
}

// unit returns the unit of length in mm as far as it is known yet, 1 where it is
// not.
func (f *file) unit() float64 {
	switch {
	case f.named():
		return mmPerUnit[f.units]
	case export.Inside(f.given, 1e-6, 1e6):
		return f.given
	}
	return 1
}

// drawing turns entities into lines and brings them to mm.
func (f *file) drawing() (export.Drawing, error) {
	if !f.named() && f.given == 0 {
		return export.Drawing{}, export.Refuse(export.DXFWithoutUnit)
	}
	unit := f.unit()
	if !f.named() && unit != f.given {
		return export.Drawing{}, export.Refuse(export.UnitOff, f.given)
	}
	var d export.Drawing
	err := f.place(&d, f.entities, within{m: geom.Scaling(unit, unit)})
	if err != nil {
		return d, err
	}
	box := geom.EmptyBox()
	for _, l := range d.Lines {
		box = box.Union(l.Points.Bounds())
	}
	d.Width, d.Height = box.Width(), box.Height()
	if f.hasLimit && f.limit.X > 0 && f.limit.Y > 0 {
		d.Width, d.Height = f.limit.X*unit, f.limit.Y*unit
	}
	return d, nil
}

// maxDepth bounds blocks within blocks.
const maxDepth = 8

// within is where entities are placed.
type within struct {
	m     geom.Affine
	layer string // of the insertion around them, which those on layer 0 belong to
	depth int
}

// place adds entities to the drawing.
func (f *file) place(d *export.Drawing, entities []entity, in within) error {
	if in.depth > maxDepth {
		return export.Refuse(export.BlocksTooDeep, maxDepth)
	}
	for _, e := range entities {
		if f.budget--; f.budget < 0 || len(d.Lines) >= export.MaxLines {
			return export.Refuse(export.TooManyLinesAndPoints)
		}
		if e.layer == "0" && in.layer != "" {
			e.layer = in.layer
		}
		if f.leaves(e) {
			continue
		}
		if e.err != nil {
			return e.err
		}
		var err error
		if e.block != "" {
			err = f.insert(d, e, in)
		} else {
			err = f.add(d, e, in.m)
		}
		if err != nil {
			return err
		}
	}
	return nil
}

// leaves counts an entity that is left out and reports whether it is. A block whose
// insertion lies on a layer that is off still shows what lies on other layers.
func (f *file) leaves(e entity) bool {
	l := f.layers[strings.ToLower(e.layer)]
	switch {
	case len(e.left) > 0:
		f.left[e.left[0]]++
	case l.frozen:
		f.left[export.Frozen]++
	case l.off && e.block == "":
		f.left[export.Off]++
	default:
		return false
	}
	return true
}

// insert places what a block holds.
func (f *file) insert(d *export.Drawing, e entity, in within) error {
	b, ok := f.blocks[e.block]
	if !ok {
		return export.Refuse(export.BlockMissing, e.block)
	}
	m := in.m.After(e.placement).After(geom.Translation(b.base.Times(-1)))
	return f.place(d, b.entities, within{m, e.layer, in.depth + 1})
}

// add adds one line.
func (f *file) add(d *export.Drawing, e entity, m geom.Affine) error {
	l := piece.Line{Name: e.name, Work: workOf(e.layer), Closed: e.closed}
	f.budget -= len(e.points)
	for _, p := range e.points {
		q := m.Apply(p)
		if !q.Finite() {
			return export.Refuse(export.NamedPointNotFinite, e.name)
		}
		l.Points = append(l.Points, q)
	}
	d.Lines = append(d.Lines, l)
	if e.loose {
		f.doubts = append(f.doubts, &export.Fault{Rule: export.SplineLoose, Data: []any{e.name}})
	}
	return nil
}

// workOf returns the kind of work that a layer's name or its number in pattern
// exchange is, CutOut if none.
func workOf(layer string) piece.Work {
	switch layer {
	case "4", "7":
		return piece.Mark
	case "8":
		return piece.Score
	case "11":
		return piece.CutInside
	case "14":
		return piece.Stitch
	}
	for _, w := range piece.Works() {
		if strings.EqualFold(w.String(), layer) {
			return w
		}
	}
	return piece.CutOut
}
