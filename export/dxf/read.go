package dxf

import (
	"errors"
	"fmt"
	"io"

	"slingloft/export"
	"slingloft/outline/geom"
	"slingloft/outline/piece"
)

// ErrNoUnit is in the chain of errors where a file does not say in which unit its
// lengths are; [ReadUnit] reads such a file.
var ErrNoUnit = errors.New("the file names no unit of length ($INSUNITS)")

// Read reads a DXF file into a drawing in mm: LINE, LWPOLYLINE, plane POLYLINE,
// ARC, CIRCLE, ELLIPSE and SPLINE in the model space, straight or by INSERT of a block. Kinds of
// work come from the names of layers, CutOut where a layer names none; names from
// our extended data, or else the entity's kind and handle. Curves are turned into
// chords. Text, points and dimensions are left out; curves of other kinds are an
// error, since an outline would be missing.
func Read(r io.Reader) (export.Drawing, error) { return ReadUnit(r, 0) }

// ReadUnit is [Read] for a file that names no unit: unit is its unit of length in
// mm, and is not used where the file names one.
func ReadUnit(r io.Reader, unit float64) (export.Drawing, error) {
	f := file{budget: export.MaxPoints, blocks: map[string]block{}, given: unit}
	if err := f.read(newScanner(r)); err != nil {
		return export.Drawing{}, fmt.Errorf("DXF: %w", err)
	}
	d, err := f.drawing()
	if err != nil {
		return export.Drawing{}, fmt.Errorf("DXF: %w", err)
	}
	return d, nil
}

// file is what is read of a file.
type file struct {
	units    int     // $INSUNITS
	given    float64 // unit of a file that names none, mm; 0 for none
	limit    geom.Point
	hasLimit bool
	entities []entity
	blocks   map[string]block
	budget   int // points that may still be made
}

// block is a group of entities that is drawn where it is inserted.
type block struct {
	base     geom.Point // comes to lie at the place of insertion
	entities []entity
}

// mmPerUnit is the length of the units that $INSUNITS counts, in mm; 0 for none
// and for those that no sheet is drawn in.
var mmPerUnit = [...]float64{1: 25.4, 2: 304.8, 4: 1, 5: 10, 6: 1000, 10: 914.4, 14: 100}

func (f *file) read(s *scanner) error {
	section := ""
	for {
		p, err := s.next()
		if errors.Is(err, io.EOF) {
			return errors.New("file ends before EOF")
		}
		if err != nil {
			return err
		}
		switch {
		case p.code == 0 && p.value == "EOF":
			return nil
		case p.code == 0 && p.value == "SECTION":
			if p, err = s.next(); err != nil {
				return err
			}
			section = p.value
		case p.code == 0 && p.value == "ENDSEC":
			section = ""
		case section == "HEADER" && p.code == 9:
			err = f.variable(s, p.value)
		case section == "ENTITIES" && p.code == 0:
			s.back(p)
			f.entities, err = f.readEntities(s, f.entities)
		case section == "BLOCKS" && p.code == 0 && p.value == "BLOCK":
			err = f.readBlock(s)
		}
		if err != nil {
			return err
		}
	}
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
			return fmt.Errorf("%s: %w", name, err)
		}
	}
}

// readBlock reads the entities of one block under its name.
func (f *file) readBlock(s *scanner) error {
	head, err := readRaw(s, "BLOCK")
	if err != nil {
		return err
	}
	entities, err := f.readEntities(s, nil)
	if err != nil {
		return fmt.Errorf("block %.60q: %w", head.block, err)
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
		return export.Drawing{}, ErrNoUnit
	}
	unit := f.unit()
	if !f.named() && unit != f.given {
		return export.Drawing{}, fmt.Errorf("unit of %g mm", f.given)
	}
	var d export.Drawing
	err := f.place(&d, f.entities, geom.Scaling(unit, unit), 0)
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

// place adds entities to the drawing by way of the map m.
func (f *file) place(d *export.Drawing, entities []entity, m geom.Affine, depth int) error {
	if depth > maxDepth {
		return fmt.Errorf("blocks nested deeper than %d", maxDepth)
	}
	for _, e := range entities {
		if f.budget--; f.budget < 0 || len(d.Lines) >= export.MaxLines {
			return errors.New("too many lines and points")
		}
		if e.block != "" {
			b, ok := f.blocks[e.block]
			if !ok {
				return fmt.Errorf("block %.60q is inserted but not there", e.block)
			}
			inner := m.After(e.placement).After(geom.Translation(b.base.Times(-1)))
			if err := f.place(d, b.entities, inner, depth+1); err != nil {
				return err
			}
			continue
		}
		l := piece.Line{Name: e.name, Work: workOf(e.layer), Closed: e.closed}
		f.budget -= len(e.points)
		for _, p := range e.points {
			q := m.Apply(p)
			if !q.Finite() {
				return fmt.Errorf("%.60q: a point is not finite", e.name)
			}
			l.Points = append(l.Points, q)
		}
		d.Lines = append(d.Lines, l)
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
		if w.String() == layer {
			return w
		}
	}
	return piece.CutOut
}
