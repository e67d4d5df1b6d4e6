package command

import (
	"fmt"

	"slingloft/export"
	"slingloft/export/format"
	"slingloft/outline/design"
	"slingloft/outline/piece"
)

// dueFile is a file that is to be written, or proved.
type dueFile struct {
	sheet   string // name of the drawing that it is of
	drawing export.Drawing
	format  export.Format
	codec   export.Codec // of the format, for this drawing's material
}

// name returns the name of the file.
func (f dueFile) name() string { return f.drawing.Name + f.format.Ending }

// due returns the files of drawings: every format of the first, then of the next.
func (o output) due(drawings []export.Drawing) ([]dueFile, error) {
	var out []dueFile
	drawings, err := o.selected(drawings)
	if err != nil {
		return nil, err
	}
	for _, d := range drawings {
		for _, name := range o.formats {
			f, codec, err := o.format(name, d.Stock, d.Roll)
			if err != nil {
				return nil, err
			}
			if f.Drives && !o.machine.For.Takes(d.Stock) {
				continue
			}
			stock, err := o.onStock(f, d)
			if err != nil {
				return nil, err
			}
			fields, err := o.fields(f, stock)
			if err != nil {
				return nil, err
			}
			for _, field := range fields {
				for _, part := range o.parts(f, o.asked(field)) {
					out = append(out, dueFile{d.Name, part, f, codec})
				}
			}
		}
	}
	return out, nil
}

// shown returns a drawing as it goes into a format: on the stock alone where the file
// moves a machine, without the work that the machine's jobs skip.
func (o output) shown(f export.Format, d export.Drawing) (export.Drawing, error) {
	stock, err := o.onStock(f, d)
	return o.asked(stock), err
}

// onStock returns a drawing on the stock alone where the file moves a machine.
func (o output) onStock(f export.Format, d export.Drawing) (export.Drawing, error) {
	if f.Drives || o.machine.InWaste && !f.PiecesOnly {
		return d.OnStock()
	}
	return d, nil
}

// asked returns a drawing, or a field of it, without the work that the machine's jobs
// skip.
func (o output) asked(d export.Drawing) export.Drawing {
	material := o.material(d.Stock, d.Roll).Name
	return d.Without(func(w piece.Work) bool { return o.machine.JobFor(w, material).Skip })
}

// parts returns a drawing for each kind of work where a plotter cannot change its pens,
// named so that they sort in the order of work, and else the drawing alone.
func (o output) parts(f export.Format, d export.Drawing) []export.Drawing {
	if !f.Pens || !o.machine.NoPens {
		return []export.Drawing{d}
	}
	var out []export.Drawing
	for i, w := range piece.Works() {
		part := d.Without(func(other piece.Work) bool { return other != w })
		if len(part.Lines) > 0 || len(part.Labels) > 0 {
			part.Name = fmt.Sprintf("%s-%d-%s", d.Name, i+1, w)
			out = append(out, part)
		}
	}
	return out
}

// material returns what is cut from a stock, of cloth from the roll of a number.
func (o output) material(s piece.Stock, roll int) export.Material {
	if s == piece.Cloth {
		return export.Material{Name: o.cloths[roll], Stock: piece.Cloth, OnLines: o.trial}
	}
	return export.Material{Name: o.sheet.Name, Stock: piece.Board, Thickness: o.sheet.Thickness, OnLines: o.trial}
}

// format returns the format of the given name, set up for a stock, of cloth for the roll of a number. The sheets'
// width of cut is that of a laser which says none.
func (o output) format(name string, s piece.Stock, roll int) (export.Format, export.Codec, error) {
	f, err := format.Named(name)
	if err != nil {
		return f, export.Codec{}, err
	}
	m, of := o.machine, o.material(s, roll)
	if of.Stock == piece.Board && m.Kerf == 0 && (m.Tool == 0 || m.Tool == design.Laser) {
		m.Kerf = o.sheet.Kerf
	}
	codec, err := f.SetUp(m, of)
	return f, codec, err
}
