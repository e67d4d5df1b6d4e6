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
			if f.Found.Rule == BelowLeftOut || strings.Contains(string(f.Key), `\`) {
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

// A table that no design has is called as it was meant, with all else as it stands, or
// goes.
func TestTableFixes(t *testing.T) {
	for _, tc := range []struct{ name, text, renamed, gone string }{
		{"header", "a = 1\n\n[ baar ] # mine\nwall = \"1 mm\" # w\n\n[bed]\n", "a = 1\n\n[bar] # mine\nwall = \"1 mm\" # w\n\n[bed]\n", "a = 1\n\n[bed]\n"},
		{"list", "[[gest]]\nname = \"x\"\n[[gest]]\nname = \"y\"\n", "[[guest]]\nname = \"x\"\n[[guest]]\nname = \"y\"\n", ""},
		{"under another", "[bed]\n[bed.fo]\nx = 1\n", "", "[bed]\n"},
		{"with tables", "[baar]\nx = 1\n[baar.sub]\ny = 1\n", "", ""},
		{"dotted", "baar.x = 1\nbaar.y = 2\nname = \"n\"\n", "", "name = \"n\"\n"},
		{"taken name", "[bar]\n[baar]\nx = 1\n", "", "[bar]\n"},
	} {
		text, err := OpenText("x", []byte(tc.text))
		if err != nil {
			t.Fatal(err)
		}
		var key Key
		for _, f := range faultsIn(tc.text) {
			if f.Found.Rule == UnknownTable {
				key = f.Key
			}
		}
		if strings.Contains(tc.text, "[[gest]]") {
			key = "gest"
		}
		if key == "" {
			t.Errorf("%s: no table is found unknown", tc.name)
			continue
		}
		for _, fix := range text.ways(Fault{Key: key, Found: Found(UnknownTable)}) {
			want := tc.gone
			if fix[0].Value != "" {
				want = tc.renamed
			}
			got, err := text.Apply(fix)
			if want == "" && fix[0].Value != "" {
				if !errors.Is(err, ErrByHand) {
					t.Errorf("%s: %v made %q, %v", tc.name, fix, got.Bytes(), err)
				}
				continue
			}
			if err != nil || string(got.Bytes()) != want {
				t.Errorf("%s: %v made %q, %v, want %q", tc.name, fix, got.Bytes(), err, want)
			}
		}
	}
}

// faultsIn returns what is wrong in a text.
func faultsIn(text string) Faults {
	var f Faults
	_, _, err := Read("x", []byte(text))
	errors.As(err, &f)
	return f
}
