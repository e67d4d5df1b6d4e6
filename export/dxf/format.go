package dxf

import (
	"bytes"
	"io"
	"slices"
	"strings"

	"slingloft/export"
	"slingloft/outline/design"
)

// Format returns DXF with a layer for each kind of work as a format of files.
func Format() export.Format {
	return export.Format{Name: "dxf", Ending: ".dxf", SizeUnsure: true, SetUp: setUp}
}

// setUp chooses chords, or arcs where the machine asks for them. Arcs are read back
// as chords, and so only a file written anew can be compared with them.
func setUp(m design.Machine, _ export.Material) (export.Codec, error) {
	c := export.Codec{Write: Write, Read: Read, Keeps: export.Names, Tolerance: 1e-4, Layers: layers, Faults: faults}
	if m.Arcs > 0 {
		c.Keeps = export.Lines
		c.Write = func(w io.Writer, d export.Drawing, o export.Options) error { return WriteArcs(w, d, o, m.Arcs) }
	}
	return c, nil
}

// PatternFormat returns DXF for sewn-product pattern exchange as a format of files. It
// is read back by what each numbered layer stands for.
func PatternFormat() export.Format {
	return export.Format{
		Name: "pattern", Ending: ".pattern.dxf",
		PiecesOnly: true, SizeUnsure: true,
		SetUp: setUpPattern,
	}
}

// setUpPattern lets the pieces say what they are cut from.
func setUpPattern(_ design.Machine, of export.Material) (export.Codec, error) {
	return export.Codec{
		Write: func(w io.Writer, d export.Drawing, o export.Options) error { return WritePattern(w, d, o, of) },
		Read:  Read, Keeps: export.Lines, Tolerance: 1e-4, Layers: layers, Faults: faults,
	}, nil
}

// layers returns the names of the layers that entities lie on, group 8, each once,
// sorted.
func layers(data []byte) []string {
	var out []string
	code, entities := "", false
	for i := 0; len(data) > 0; i++ {
		line, rest, _ := bytes.Cut(data, []byte("\n"))
		data = rest
		text := strings.TrimSpace(string(line))
		switch {
		case i%2 == 0:
			code = text
		case code == "2" && text == "ENTITIES":
			entities = true
		case code == "0" && text == "ENDSEC":
			entities = false
		case code == "8" && entities && !slices.Contains(out, text):
			out = append(out, text)
		}
	}
	slices.Sort(out)
	return out
}
