package page_test

import (
	"bytes"
	"fmt"
	"strings"
	"testing"

	"golang.org/x/net/html"

	"slingloft/export/sheet"
	"slingloft/export/sheet/page"
	"slingloft/export/sheet/picture"
	"slingloft/export/sheet/wording"
)

// written returns the page of a sheet with some blocks, and its elements.
func written(t *testing.T, blocks ...sheet.Block) (string, *html.Node) {
	t.Helper()
	var b bytes.Buffer
	s := sheet.Sheet{
		Title: "A & <b>", Subtitle: "sub", Digest: "0a1b", Frame: wording.English().Frame,
		Verdict:  sheet.Verdict{Grade: sheet.Careful, Title: "Take care", Text: "Read <it>."},
		Sections: []sheet.Section{{ID: "one", Title: "One", Blocks: blocks}},
	}
	if err := page.Write(&b, s); err != nil {
		t.Fatal(err)
	}
	root, err := html.Parse(bytes.NewReader(b.Bytes()))
	if err != nil {
		t.Fatal(err)
	}
	return b.String(), root
}

// find returns the elements of a name.
func find(root *html.Node, name string) []*html.Node {
	var out []*html.Node
	for n := range root.Descendants() {
		if n.Type == html.ElementNode && n.Data == name {
			out = append(out, n)
		}
	}
	return out
}

// text returns all text in an element.
func text(n *html.Node) string {
	var b strings.Builder
	for c := range n.Descendants() {
		if c.Type == html.TextNode {
			b.WriteString(c.Data)
		}
	}
	return b.String()
}

func attribute(n *html.Node, key string) string {
	for _, a := range n.Attr {
		if a.Key == key {
			return a.Val
		}
	}
	return ""
}

// What stands in a sheet stands on its page as text and never as markup.
func TestText(t *testing.T) {
	raw, root := written(t, sheet.Para("<p> & more"), sheet.List{"a < b", "c"},
		sheet.Notice{Grade: sheet.Bad, Title: "<n>", Lines: []string{"l & m"}},
		sheet.Steps{{Title: "<s>", Do: []string{"do <it>"}, Done: "d > e", Facts: []sheet.Fact{{Name: "<f>", Value: "1 & 2"}}}, {Title: "none"}},
		sheet.Ticks{{ID: "k", No: 3, Text: "<k>", Note: "when > so"}},
		sheet.Table{ID: "t", Caption: "<c>", Head: []string{"", "h<"}, Words: []bool{true, false}, Rows: [][]string{{"r>", "1"}}})
	for name, want := range map[string][]string{
		"title": {"A & <b> – build sheet"}, "h1": {"A & <b>"}, "h3": {"1 One"}, "h4": {"<n>", "<s>", "none"},
		"li": {"One", "a < b", "c", "l & m", "<s>", "do <it>"}, "label": {"3 <k> when > so"},
		"dt": {"<f>"}, "dd": {"1 & 2"}, "caption": {"<c>"}, "th": {"h<", "r>"}, "footer": {"A & <b> · design 0a1b"}, "strong": {"Take care."},
	} {
		found := find(root, name)
		for i, w := range want {
			if i >= len(found) || !strings.Contains(text(found[i]), w) {
				t.Errorf("%s %d does not say %q:\n%s", name, i+1, w, raw)
			}
		}
	}
	if got := find(root, "dl"); len(got) != 1 {
		t.Errorf("%d lists of figures, want none for a step without any", len(got))
	}
	if got := attribute(find(root, "html")[0], "lang"); got != "en" {
		t.Errorf("the page's language is %q", got)
	}
}

// rows returns a table of n rows in two columns.
func rows(n int, dense bool) sheet.Table {
	t := sheet.Table{ID: "t", Caption: "Table", Head: []string{"a", "b"}, Words: []bool{true, false}, Dense: dense}
	for i := range n {
		t.AddStrong(i == 1, fmt.Sprint("row ", i+1), "1")
	}
	return t
}

// A long and narrow table stands in parts of about the same length, none of them long, and
// each says which of the rows it has.
func TestDense(t *testing.T) {
	for n, want := range map[int][]string{
		1: {"Table, rows 1 to 1"}, 21: {"Table, rows 1 to 21"}, 22: {"Table, rows 1 to 11", "Table, rows 12 to 22"},
		43: {"Table, rows 1 to 14", "Table, rows 15 to 28", "Table, rows 29 to 43"},
	} {
		_, root := written(t, rows(n, true))
		tables := find(root, "table")
		cells := 0
		for i, table := range tables {
			if i < len(want) && attribute(table, "aria-label") != want[i] {
				t.Errorf("%d rows: part %d is labelled %q, want %q", n, i+1, attribute(table, "aria-label"), want[i])
			}
			cells += len(find(table, "tr")) - 1
		}
		if len(tables) != len(want) || cells != n {
			t.Errorf("%d rows: %d parts with %d rows, want %d", n, len(tables), cells, len(want))
		}
	}
}

// Rows that stand out do, and a table that fits a printed page is not divided on it.
func TestRows(t *testing.T) {
	for n, short := range map[int]bool{3: true, 21: true, 22: false} {
		_, root := written(t, rows(n, false))
		for i, r := range find(root, "tr")[1:] {
			if got := attribute(r, "class") == "strong"; got != (i == 1) {
				t.Errorf("row %d stands out: %v", i+1, got)
			}
		}
		for _, d := range find(root, "div") {
			if class := attribute(d, "class"); strings.HasPrefix(class, "scroll") && strings.Contains(class, "short") != short {
				t.Errorf("%d rows: class %q", n, class)
			}
		}
	}
}

// Small blocks stand beside each other; a picture begins a row, a wide one or a wide table
// stands alone.
func TestBeside(t *testing.T) {
	figure := func(width float64) sheet.Figures {
		return sheet.Figures{{Picture: picture.Picture{ID: "p", Title: "P", Desc: "d", Width: width, Height: 10}, Caption: "c"}}
	}
	broad := sheet.Table{ID: "w", Head: make([]string, 6), Words: make([]bool, 6)}
	small := rows(2, false)
	for name, row := range map[string]struct {
		blocks []sheet.Block
		rows   int
	}{
		"tables":          {[]sheet.Block{small, small, small}, 1},
		"picture first":   {[]sheet.Block{figure(picture.Half), small, figure(picture.Half), small}, 2},
		"wide picture":    {[]sheet.Block{figure(picture.Wide), small}, 1},
		"wide table":      {[]sheet.Block{small, broad, small}, 2},
		"text in between": {[]sheet.Block{small, sheet.Para("p"), small}, 2},
		"none":            {[]sheet.Block{sheet.Para("p"), broad}, 0},
	} {
		_, root := written(t, row.blocks...)
		got := 0
		for _, d := range find(root, "div") {
			if attribute(d, "class") == "row" {
				got++
			}
		}
		if got != row.rows {
			t.Errorf("%s: %d rows, want %d", name, got, row.rows)
		}
	}
}

// What scrolls can be reached by the keyboard and says what it is.
func TestScrolling(t *testing.T) {
	_, root := written(t, sheet.Figures{{Picture: picture.Picture{ID: "p", Title: "Side", Desc: "d", Width: picture.Wide, Height: 10}}})
	found := false
	for _, d := range find(root, "div") {
		if attribute(d, "class") == "scroll" {
			found = attribute(d, "tabindex") == "0" && attribute(d, "aria-label") == "Side, picture"
		}
	}
	if !found {
		t.Error("the wide picture is out of reach")
	}
}
