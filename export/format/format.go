// Package format lists every format that drawings are written in.
package format

import (
	"slices"
	"strings"

	"slingloft/export"
	"slingloft/export/dxf"
	"slingloft/export/gcode"
	"slingloft/export/hpgl"
	"slingloft/export/pdf"
	"slingloft/export/preview"
	"slingloft/export/svg"
)

// All returns every format, in the order in which they are listed for people.
func All() []export.Format {
	return []export.Format{
		svg.Format(), dxf.Format(), pdf.Format(), hpgl.Format(), gcode.Format(), preview.Format(), dxf.PatternFormat(),
	}
}

// Names returns the names of all formats, in the order of [All].
func Names() []string {
	var out []string
	for _, f := range All() {
		out = append(out, f.Name)
	}
	return out
}

// Named returns the format of the given name.
func Named(name string) (export.Format, error) {
	for _, f := range All() {
		if f.Name == name {
			return f, nil
		}
	}
	return export.Format{}, export.Refuse(export.FormatUnknown, name, strings.Join(Names(), ", "))
}

// OfFile returns the format of a file by the ending of its name, the longest that
// fits, and the name without it. ok is false where no format has such files.
func OfFile(name string) (stem string, f export.Format, ok bool) {
	byLength := All()
	slices.SortStableFunc(byLength, func(a, b export.Format) int { return len(b.Ending) - len(a.Ending) })
	for _, f := range byLength {
		if stem, ok := strings.CutSuffix(name, f.Ending); ok {
			return stem, f, true
		}
	}
	return name, export.Format{}, false
}
