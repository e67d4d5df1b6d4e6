package command

import (
	"io"
	"slices"
	"strings"

	"slingloft/export"
	"slingloft/export/dxf"
	"slingloft/export/svg"
)

// format is a file format that sheets are written in.
type format struct {
	name, ending string
	write        func(io.Writer, export.Drawing, export.Options) error
}

func formats() []format {
	return []format{{"svg", ".svg", svg.Write}, {"dxf", ".dxf", dxf.Write}}
}

func formatNames() []string {
	var out []string
	for _, f := range formats() {
		out = append(out, f.name)
	}
	return out
}

// formatsNamed returns the formats in a list with commas, each once.
func formatsNamed(list string) ([]format, error) {
	var out []format
	for name := range strings.SplitSeq(list, ",") {
		name = strings.ToLower(strings.TrimSpace(name))
		i := slices.IndexFunc(formats(), func(f format) bool { return f.name == name })
		if i < 0 {
			return nil, usagef("cut: --as: there is no format %.20q; there are %s", name, strings.Join(formatNames(), ", "))
		}
		if !slices.ContainsFunc(out, func(f format) bool { return f.name == name }) {
			out = append(out, formats()[i])
		}
	}
	return out, nil
}
