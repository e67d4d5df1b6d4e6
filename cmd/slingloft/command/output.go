package command

import (
	"bytes"
	"fmt"
	"io"
	"os"
	"path/filepath"

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
	digest  []byte   // of the design; a file that holds it may be replaced
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
	path    string
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
	for _, f := range files {
		// Formats without text carry no digest; the same file may be written again.
		allow := policyFor(o.digest, o.force)
		if !bytes.Contains(f.content, o.digest) {
			allow = policyFor(f.content, o.force)
		}
		if err := whole.Write(f.path, allow, func(w io.Writer) error {
			_, err := w.Write(f.content)
			return err
		}); err != nil {
			return err
		}
		fmt.Fprintln(s.Out, f.path)
		if f.note != "" {
			say(s.Err, f.note)
		}
	}
	return nil
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
			one := file{path: filepath.Join(o.folder, d.Name+f.Ending), content: b.Bytes()}
			if name == "hpgl" && hpgl.Beyond16Bits(d, o.options) {
				one.note = fmt.Sprintf("note: %s reaches beyond 819 mm, where plotters that count in 16 bits stop", one.path)
			}
			out = append(out, one)
		}
	}
	return out, nil
}
