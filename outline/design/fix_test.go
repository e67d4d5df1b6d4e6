package design

import (
	"errors"
	"maps"
	"slices"
	"strings"
	"testing"
)

// Every fault of the corpus that a form has a field for has a way out, and taking the
// first way out of each leads to a design that can be read. Each third design is tried.
func TestFixes(t *testing.T) {
	texts := openable(t)
	for i, file := range slices.Sorted(maps.Keys(texts)) {
		if i%3 != 0 {
			continue
		}
		data := texts[file]
		text, err := OpenText(file, data)
		if err != nil {
			t.Fatal(err)
		}
		for range 12 {
			var faults Faults
			if _, _, err := Read(file, text.Bytes()); !errors.As(err, &faults) {
				break
			}
			f := faults[0]
			if f.Found.Rule == UnknownTable || f.Found.Rule == BelowLeftOut || strings.Contains(string(f.Key), `\`) {
				break // no field; it is mended in the text
			}
			fixes := text.Fixes(f, nil)
			if len(fixes) == 0 {
				t.Errorf("%s has no way out", f)
				break
			}
			if text, err = text.Apply(fixes[0]); err != nil {
				t.Fatal(err)
			}
		}
		var left Faults
		if _, _, err := Read(file, text.Bytes()); errors.As(err, &left) && allKeys().byKey[left[0].Key.Unnumbered()].key != "" && left[0].Found.Rule != BelowLeftOut {
			t.Errorf("%s: after taking one way out after the other: %v", file, err)
		}
	}
}
