package paper_test

import (
	"bytes"
	"fmt"
	"strings"
	"testing"

	"slingloft/export/readertest"
	"slingloft/export/sheet"
	"slingloft/export/sheet/paper"
	"slingloft/export/sheet/picture"
	"slingloft/export/sheet/wording"
	"slingloft/outline/geom"
)

// sample is a sheet with every kind of block and with texts that are hard to set.
func sample() sheet.Sheet {
	pic := picture.Picture{ID: "p", Title: "A line", Desc: "One line.", Width: 88, Height: 30}
	pic.Line(picture.Cut, picture.Bold, geom.Pt(1, 1), geom.Pt(80, 20))
	pic.Write(picture.Text{Text: "turned", At: geom.Pt(20, 5), Size: picture.Letter, Turn: 0.4})
	long := sheet.Table{ID: "t", Caption: "A long table", Head: []string{"name", "mm"}, Words: []bool{true, false}}
	for range 120 {
		long.Rows = append(long.Rows, []string{"row", "1234.5"})
	}
	wide := sheet.Table{ID: "w", Caption: "A wide table", Head: []string{"name", "words"}, Words: []bool{true, true},
		Rows: [][]string{{strings.Repeat("many words ", 30), strings.Repeat("more words ", 30)}, {strings.Repeat("x", 300), ""}}}
	return sheet.Sheet{
		Title: "Größe (1\\2) \x00\x1b 你好 😀", Subtitle: strings.Repeat("under the title ", 30), Digest: "01234567",
		Verdict: sheet.Verdict{Grade: sheet.Bad, Title: "Not fit to use", Text: "Nothing is met."}, Frame: wording.English().Frame,
		Sections: []sheet.Section{
			{ID: "a", Title: "All kinds", Blocks: []sheet.Block{
				sheet.Para(strings.Repeat("A paragraph of many words. ", 40)), sheet.List{"one", strings.Repeat("two words ", 60)},
				sheet.Notice{Grade: sheet.Careful, Title: "Mind this", Lines: []string{"first line", "second line"}},
				sheet.Steps{{Title: "Do it", Do: []string{"As told."}, Done: "It is done.", Facts: []sheet.Fact{{Name: "length", Value: "12 mm"}, {Name: "a " +
					"name too long for its half of the page, by far and by much", Value: "3"}}}, {Title: "Rest"}},
				sheet.Figures{{Picture: pic, Caption: "A caption."}, {Picture: pic, Caption: "Another."}}, long, wide,
			}},
			{ID: "b", Title: "Nothing"},
		},
	}
}

func written(t *testing.T, size paper.Size) []byte {
	t.Helper()
	var b bytes.Buffer
	if err := paper.Write(&b, sample(), size); err != nil {
		t.Fatal(err)
	}
	return b.Bytes()
}

func TestSameBytes(t *testing.T) {
	if !bytes.Equal(written(t, paper.A4), written(t, paper.A4)) {
		t.Error("the same sheet gives different bytes")
	}
}

// TestRead has poppler and qpdf read the file: it is sound, its pages have their
// size and number, and all text is on them.
func TestRead(t *testing.T) {
	for _, row := range []struct {
		name string
		size paper.Size
		want string
	}{{"a4", paper.A4, "595.28 x 841.89"}, {"letter", paper.Letter, "612 x 792"}} {
		file := readertest.File(t, row.name+".pdf", written(t, row.size))
		readertest.Run(t, "qpdf", "--check", file)
		if got := readertest.Run(t, "pdfinfo", file); !strings.Contains(got, row.want) {
			t.Errorf("%s: want pages of %s:\n%s", row.name, row.want, got)
		}
		pages := strings.Split(strings.TrimSuffix(readertest.Run(t, "pdftotext", file, "-"), "\f"), "\f")
		all := strings.Join(pages, "\n")
		for _, want := range []string{"Größe (1\\2)", "Not fit to use", "Nothing is met.", "All kinds", "Mind this", "second line", "Do it",
			"12 mm", "A caption.", "A long table", "A wide table"} {
			if !strings.Contains(all, want) {
				t.Errorf("%s: %q is missing", row.name, want)
			}
		}
		if got := strings.Count(all, "1234.5"); got != 120 {
			t.Errorf("%s: %d of 120 rows", row.name, got)
		}
		for i, p := range pages {
			want := fmt.Sprintf("%d/%d", i+1, len(pages))
			if !strings.HasSuffix(strings.Join(strings.Fields(p), ""), want) {
				t.Errorf("%s: page %d does not say %s", row.name, i+1, want)
			}
		}
	}
}
