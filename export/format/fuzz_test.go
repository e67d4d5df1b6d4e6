package format_test

import (
	"bytes"
	"math"
	"testing"

	"slingloft/export"
	"slingloft/export/readertest"
	"slingloft/outline/piece"
)

// Whatever stands in a label, a line's name or a title, no format lets it break out
// of its field: what is read back has the sheet's size and every line where it was.
func FuzzLabels(f *testing.F) {
	for _, text := range readertest.Hostile() {
		f.Add(text, "x", 5.0)
		f.Add("x", text, 0.5)
	}
	f.Add("7 3⁄16 in", "", 100.0)
	f.Fuzz(func(t *testing.T, text, name string, height float64) {
		if len(text)+len(name) > 2000 {
			t.Skip("longer than any name in a design")
		}
		d := readertest.Square()
		d.Title = text
		d.Labels = append(d.Labels, piece.Label{Text: text, At: d.Labels[0].At, Height: height})
		d.Lines[0].Name = name
		plain, err := d.Plain(export.Options{})
		if err != nil {
			return
		}
		for _, format := range usual(t) {
			if format.Keeps == export.Size {
				continue // pictures hold no text
			}
			var b bytes.Buffer
			if err := format.Write(&b, d, export.Options{}); err != nil {
				t.Fatalf("%s: %v", format.Name, err)
			}
			read, err := format.Read(&b)
			if err != nil {
				t.Fatalf("%s: read back: %v", format.Name, err)
			}
			if math.Abs(read.Width-plain.Width) > format.Tolerance || math.Abs(read.Height-plain.Height) > format.Tolerance {
				t.Errorf("%s: sheet read as %g × %g", format.Name, read.Width, read.Height)
			}
			for _, w := range piece.Works() {
				got, want := lengthOf(read, w), lengthOf(plain, w)
				if math.Abs(got-want) > 2*format.Tolerance*float64(points(plain))+0.02*want {
					t.Errorf("%s: %s read as %g mm, want %g", format.Name, w, got, want)
				}
			}
		}
	})
}
