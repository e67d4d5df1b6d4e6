package svg

import (
	"regexp"

	"slingloft/export"
)

// Format returns SVG as a format of files.
func Format() export.Format {
	return export.Format{
		Name: "svg", Ending: ".svg",
		SetUp: export.Always(export.Codec{Write: Write, Read: Read, Keeps: export.Names, Tolerance: 1e-4, Layers: layers, Faults: faults}),
	}
}

// groupID matches the id of a group.
var groupID = regexp.MustCompile(`<g\b[^>]*?\bid\s*=\s*["']([^"']*)["']`)

// layers returns the ids of the groups in a file.
func layers(data []byte) []string { return export.LayerNames(groupID, data) }
