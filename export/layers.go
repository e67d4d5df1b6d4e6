package export

import (
	"regexp"
	"slices"
)

// LayerNames returns what the first group of an expression matches in a file, each
// text once, sorted.
func LayerNames(at *regexp.Regexp, data []byte) []string {
	var out []string
	for _, m := range at.FindAllSubmatch(data, -1) {
		out = append(out, string(m[1]))
	}
	slices.Sort(out)
	return slices.Compact(out)
}

// LayerFaults says which of the layers that are due are missing, and which of those
// that were found are not due: three of them at most.
func LayerFaults(found, due []string) []Note {
	const maxExtra = 3
	without := func(a, b []string) []string {
		return slices.DeleteFunc(slices.Clone(a), func(name string) bool { return slices.Contains(b, name) })
	}
	var out []Note
	for _, name := range without(due, found) {
		out = append(out, Tell(NoLayer, name))
	}
	for i, name := range without(found, due) {
		if i == maxExtra {
			return append(out, Tell(MoreLayers))
		}
		out = append(out, Tell(StrangeLayer, name))
	}
	return out
}
