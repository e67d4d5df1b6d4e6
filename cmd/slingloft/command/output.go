package command

import (
	"bytes"
	"errors"
	"fmt"
	"os"

	"slingloft/export"
	"slingloft/export/format"
	"slingloft/export/hpgl"
	"slingloft/export/setup"
	"slingloft/export/whole"
	"slingloft/outline/design"
)

// output is all that it takes to write the sheets of a plan.
type output struct {
	machine design.Machine
	options export.Options
	sheet   design.Sheet
	cloth   string // name of the cloth

	folder  string
	formats []string // names
	digest  []byte   // of the design; files written for it may be replaced
	force   bool     // replace any file
}

// outputOf returns how a design's sheets are written at a scale, as it is written
// on drawings, or at the design's own.
func outputOf(d design.Design, o shop, scale, name string) (output, error) {
	out := output{machine: d.Machine, sheet: d.Sheet, cloth: d.Cloth.Name}
	if err := o.apply(&out.machine, name); err != nil {
		return out, err
	}
	var err error
	if out.options, err = setup.Options(out.machine); err != nil {
		return out, err
	}
	out.options.Scale = d.Output.Scale
	if scale != "" {
		if out.options.Scale, err = export.ParseScale(scale); err != nil {
			return out, usagef("%s: --scale: %v", name, err)
		}
	}
	return out, out.options.Validate()
}

// clothSheet is the name of the drawing that is cut from cloth.
const clothSheet = "cloth-lay"

// format returns the format of the given name for a drawing. The sheets' width of
// cut holds where the machine says none.
func (o output) format(name, drawing string) (format.Format, error) {
	m, material := o.machine, o.sheet.Name
	if drawing == clothSheet {
		material = o.cloth
	} else if m.Kerf == 0 {
		m.Kerf = o.sheet.Kerf
	}
	return setup.Format(name, m, material)
}

// file is one file that is to be written.
type file struct {
	name    string
	content []byte
	note    string // for the maker, if any
}

// write writes every drawing in every format and names the files on standard
// output. All are made before the first is written, so that settings that cannot be
// followed leave no file.
func (o output) write(s Streams, drawings []export.Drawing) error {
	files, err := o.files(drawings)
	if err != nil {
		return err
	}
	if err := os.MkdirAll(o.folder, 0o755); err != nil {
		return err
	}
	var plain []whole.File
	for _, f := range files {
		plain = append(plain, whole.File{Name: f.name, Content: f.content})
	}
	next := 0
	err = whole.WriteAll(o.folder, string(o.digest), o.force, plain, func(path string) {
		fmt.Fprintln(s.Out, path)
		if note := files[next].note; note != "" {
			sayf(s.Err, "note: %s %s", path, note)
		}
		next++
	})
	return orForce(err, "--out")
}

// orForce says what would do where files are in the way; other is the flag that names
// another place.
func orForce(err error, other string) error {
	if errors.Is(err, whole.ErrExists) {
		return fmt.Errorf("%w; --force replaces what is there, %s writes elsewhere", err, other)
	}
	return err
}

// files makes the content of every file.
func (o output) files(drawings []export.Drawing) ([]file, error) {
	var out []file
	for _, d := range drawings {
		for _, name := range o.formats {
			f, err := o.format(name, d.Name)
			if err != nil {
				return nil, err
			}
			var b bytes.Buffer
			if err := f.Write(&b, d, o.options); err != nil {
				return nil, err
			}
			one := file{name: d.Name + f.Ending, content: b.Bytes()}
			if name == "hpgl" && hpgl.Beyond16Bits(d, o.options) {
				one.note = "reaches beyond 819 mm, where plotters that count in 16 bits stop"
			}
			out = append(out, one)
		}
	}
	return out, nil
}
