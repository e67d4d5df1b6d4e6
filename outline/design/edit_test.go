package design

import (
	"testing"

	"slingloft/outline/quantity"
)

// A value that is put into a file is read back from it, and nothing else changes.
func TestWith(t *testing.T) {
	_, demo := Demo()
	bed, src, err := Read("demo.toml", demo)
	if err != nil {
		t.Fatal(err)
	}
	for _, tc := range []struct {
		key   Key
		value string
		set   func(*Design)
	}{
		{"bed.span", `"1500 mm"`, func(d *Design) { d.Bed.Span = 1500 }},                         // given
		{"seam.rows", "1", func(d *Design) { d.Seam.Rows = 1 }},                                  // a number
		{"template.letter", `"4 mm"`, func(d *Design) { d.Template.Letter = 4 }},                 // left out
		{"accuracy.level", `"1/2 in"`, func(d *Design) { d.Accuracy.Level = quantity.Inch / 2 }}, // its table too, perhaps
		{"name", `"Other"`, func(d *Design) { d.Name = "Other" }},
	} {
		text, ok := src.With(demo, tc.key, tc.value)
		if !ok {
			t.Errorf("%s cannot be changed", tc.key)
			continue
		}
		got, _, err := Read("changed.toml", text)
		if err != nil {
			t.Errorf("%s: %v", tc.key, err)
			continue
		}
		want := bed
		tc.set(&want)
		if string(Write(got)) != string(Write(want)) {
			t.Errorf("%s = %s reads as\n%s", tc.key, tc.value, Write(got))
		}
	}
}

// What one change of a place cannot do is left alone.
func TestWithRefuses(t *testing.T) {
	text := []byte("splice = { bury = \"200 mm\" }\n")
	_, src, _ := Read("inline.toml", text)
	if _, ok := src.With(text, "splice.taper", `"50 mm"`); ok {
		t.Error("a key was added to an inline table")
	}
	if got, ok := src.With(text, "splice.bury", `"150 mm"`); !ok || string(got) != "splice = { bury = \"150 mm\" }\n" {
		t.Errorf("%q, %v", got, ok)
	}
}
