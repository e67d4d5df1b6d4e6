package command

import (
	"slices"
	"strings"

	"slingloft/export/format"
)

// formatsNamed returns the names of the formats in a list with commas, each once.
func formatsNamed(list, command string) ([]string, error) {
	var out []string
	for name := range strings.SplitSeq(list, ",") {
		name = strings.ToLower(strings.TrimSpace(name))
		if !slices.Contains(format.Names(), name) {
			return nil, misuse(NoFormat, command, name, strings.Join(format.Names(), ", "))
		}
		if !slices.Contains(out, name) {
			out = append(out, name)
		}
	}
	return out, nil
}
