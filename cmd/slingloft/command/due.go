package command

import (
	"slingloft/export"
	"slingloft/export/format"
	"slingloft/outline/design"
	"slingloft/outline/piece"
)

// clothSheet is the name of the drawing that is cut from cloth.
const clothSheet = "cloth-lay"

// dueFile is a file that is to be written, or proved.
type dueFile struct {
	drawing export.Drawing
	format  export.Format
	codec   export.Codec // of the format, for this drawing's material
}

// name returns the name of the file.
func (f dueFile) name() string { return f.drawing.Name + f.format.Ending }

// due returns the files of drawings: every format of the first, then of the next.
func (o output) due(drawings []export.Drawing) ([]dueFile, error) {
	var out []dueFile
	for _, d := range drawings {
		for _, name := range o.formats {
			f, codec, err := o.format(name, d.Name)
			if err != nil {
				return nil, err
			}
			out = append(out, dueFile{d, f, codec})
		}
	}
	return out, nil
}

// format returns the format of the given name, set up for a drawing. The sheets'
// width of cut is that of a laser which says none.
func (o output) format(name, drawing string) (export.Format, export.Codec, error) {
	f, err := format.Named(name)
	if err != nil {
		return f, export.Codec{}, err
	}
	m, of := o.machine, export.Material{Name: o.sheet.Name, Stock: piece.Board, Thickness: o.sheet.Thickness}
	if drawing == clothSheet {
		of = export.Material{Name: o.cloth, Stock: piece.Cloth}
	} else if m.Kerf == 0 && (m.Tool == 0 || m.Tool == design.Laser) {
		m.Kerf = o.sheet.Kerf
	}
	codec, err := f.SetUp(m, of)
	return f, codec, err
}
