package show_test

import (
	"bytes"
	"context"
	"fmt"
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"testing"

	"github.com/chromedp/chromedp"
	"golang.org/x/net/html"

	"slingloft/cmd/slingloft/browsertest"
	"slingloft/cmd/slingloft/show"
	"slingloft/cmd/slingloft/work"
	"slingloft/export/sheet"
	"slingloft/export/sheet/page"
	"slingloft/export/sheet/paper"
	"slingloft/export/sheet/wording"
	"slingloft/outline/design"
	"slingloft/outline/label"
	"slingloft/outline/words"
)

// designs are the built-in design and those of testdata.
func designs(t *testing.T) map[string][]byte {
	t.Helper()
	_, demo := design.Demo()
	out := map[string][]byte{"demo": demo}
	for _, pattern := range []string{"inches.toml", "sound/*.toml"} {
		names, err := filepath.Glob(filepath.Join("../../../testdata/design", pattern))
		if err != nil {
			t.Fatal(err)
		}
		for _, n := range names {
			data, err := os.ReadFile(n)
			if err != nil {
				t.Fatal(err)
			}
			out[strings.TrimSuffix(filepath.Base(n), ".toml")] = data
		}
	}
	return out
}

// sheetOf sets out a design's sheet.
func sheetOf(t testing.TB, name string, data []byte) sheet.Sheet {
	t.Helper()
	p, err := work.ReadFor(name, data, work.Setting{})
	if err != nil {
		t.Fatal(err)
	}
	l, err := p.Lay(context.Background(), work.Budget{})
	if err != nil {
		t.Fatal(err)
	}
	s, err := show.Of(&p, l, wording.English())
	if err != nil {
		t.Fatal(err)
	}
	return s
}

// unlaid sets out a design's sheet without its lay, which takes most of the time.
func unlaid(t testing.TB, name string, data []byte) sheet.Sheet {
	t.Helper()
	p, err := work.ReadFor(name, data, work.Setting{})
	if err != nil {
		t.Fatal(err)
	}
	s, err := show.Unlaid(&p, wording.English())
	if err != nil {
		t.Fatal(err)
	}
	return s
}

// written returns a sheet's page.
func written(t testing.TB, s sheet.Sheet) []byte {
	t.Helper()
	var b bytes.Buffer
	if err := page.Write(&b, s); err != nil {
		t.Fatal(err)
	}
	return b.Bytes()
}

// TestPages checks every design's page: well formed, nothing from outside, no id
// twice, every picture with words, no figure that is not one.
func TestPages(t *testing.T) {
	made := 0
	for name, data := range designs(t) {
		if slices.Contains(writtenOtherwise, name) {
			continue
		}
		t.Run(name, func(t *testing.T) {
			// A file may be sound and its bed not; that is tested elsewhere.
			p, err := work.ReadFor(name, data, work.Setting{})
			if err != nil {
				t.Skip(err)
			}
			made++
			s, err := show.Unlaid(&p, wording.English())
			if err != nil {
				t.Fatal(err)
			}
			for _, sec := range s.Sections {
				for _, b := range sec.Blocks {
					figs, _ := b.(sheet.Figures)
					for _, f := range figs {
						if c := f.Picture.Clashes(); len(c) > 0 {
							t.Errorf("%s: lettering over lettering: %q", f.Picture.ID, c)
						}
					}
				}
			}
			checkHTML(t, written(t, s))
			checkShop(t, s, p.Design.Tarp.On || p.Design.Cover.On || p.Design.Lining.On)
			checkLettering(t, &p)
		})
	}
	if made < 10 {
		t.Errorf("only %d designs were made", made)
	}
}

// writtenOtherwise are designs whose files are odd and whose hammocks are not.
var writtenOtherwise = []string{"degenerate_comments", "degenerate_dotted_keys", "degenerate_tables_backwards", "degenerate_windows",
	"ordinary_accepted", "ordinary_mixed_units", "ordinary_trials_inline"}

// checkLettering looks for lettering of a piece of cloth, a template or a gauge that
// stands over other lettering of it.
func checkLettering(t *testing.T, p *work.Plan) {
	t.Helper()
	for _, q := range p.Pieces() {
		for i, l := range q.Labels {
			for _, o := range q.Labels[:i] {
				if label.InkOf(l).Overlaps(label.InkOf(o)) {
					t.Errorf("%s: %q stands over %q", q.ID, l.Text, o.Text)
				}
			}
		}
	}
}

// checkShop holds what lies at the table to three sides of either paper, four where a
// tarp, a cover or a lining is sewn along.
func checkShop(t *testing.T, s sheet.Sheet, more bool) {
	t.Helper()
	most := 3
	if more {
		most++
	}
	for _, size := range []paper.Size{paper.A4, paper.Letter} {
		var out bytes.Buffer
		if err := paper.Write(&out, s.Only(sheet.Shop), size); err != nil {
			t.Fatal(err)
		}
		if n := len(regexp.MustCompile(`/Type /Page\b`).FindAll(out.Bytes(), -1)); n < 2 || n > most {
			t.Errorf("%g mm wide: %d sides for the table", size.Width, n)
		}
	}
}

func checkHTML(t *testing.T, data []byte) {
	t.Helper()
	if m := regexp.MustCompile(`https?://|NaN|\bInf\b|not finite|url\(|@import`).Find(data); m != nil {
		i := bytes.Index(data, m)
		t.Errorf("the page holds %q: %.80q", m, data[max(0, i-40):])
	}
	root, err := html.Parse(bytes.NewReader(data))
	if err != nil {
		t.Fatal(err)
	}
	ids := map[string]bool{}
	pictures := 0
	for n := range root.Descendants() {
		if n.Type != html.ElementNode {
			continue
		}
		for _, bad := range []string{"script", "link", "img", "iframe", "object", "embed"} {
			if n.Data == bad {
				t.Errorf("the page has a %s element", bad)
			}
		}
		if id := attribute(n, "id"); id != "" {
			if ids[id] {
				t.Errorf("id %q twice", id)
			}
			ids[id] = true
		}
		if n.Data == "svg" {
			pictures++
			if attribute(n, "role") != "img" || attribute(n, "aria-labelledby") == "" {
				t.Errorf("picture %s has no text alternative", attribute(n, "id"))
			}
		}
	}
	if pictures < 12 {
		t.Errorf("only %d pictures", pictures)
	}
	for n := range root.Descendants() {
		for _, id := range strings.Fields(attribute(n, "aria-labelledby")) {
			if !ids[id] {
				t.Errorf("%s is labelled by %q, which is not there", n.Data, id)
			}
		}
	}
}

func attribute(n *html.Node, key string) string {
	for _, a := range n.Attr {
		if a.Key == key {
			return a.Val
		}
	}
	return ""
}

// TestSameBytes makes the page of one design twice.
func TestSameBytes(t *testing.T) {
	name, demo := design.Demo()
	if !bytes.Equal(written(t, sheetOf(t, name, demo)), written(t, sheetOf(t, name, demo))) {
		t.Error("the same design gives different bytes")
	}
}

// TestOrder checks that the sections stand in the order in which they are needed,
// the result of the checks first.
func TestOrder(t *testing.T) {
	name, demo := design.Demo()
	var got []string
	for _, s := range unlaid(t, name, demo).Sections {
		got = append(got, s.ID)
	}
	want := "result cut-list ticks names materials pieces boards lay cloth sewing cords rope fitting hung room hanging " +
		"glossary offsets loads seams charts assumptions sources"
	if strings.Join(got, " ") != want {
		t.Errorf("sections %q, want %q", got, want)
	}
}

// TestJoined cuts the built-in body from a narrow roll: its panels are all marked,
// have the joins' allowance, and are joined before anything is sewn to them.
func TestJoined(t *testing.T) {
	name, demo := design.Demo()
	for _, row := range []struct {
		width  string
		joins  int
		panels []string
	}{
		{"900 mm", 1, []string{"body wide", "body narrow"}},
		{"620 mm", 2, []string{"body centre", "body left", "body right"}},
	} {
		text := bytes.Replace(demo, []byte("width = \"1500 mm\""), fmt.Appendf(nil, "width = %q\njoins = %d", row.width, row.joins), 1)
		i, j := bytes.Index(text, []byte("[[cloth.flaw]]")), bytes.Index(text, []byte("[channel]"))
		text = slices.Concat(text[:i], text[j:])
		s := unlaid(t, name, text)
		steps := stepsOf(t, s)
		at := slices.IndexFunc(steps, func(q sheet.Step) bool { return q.Title == "Join the panels" })
		caps := slices.IndexFunc(steps, func(q sheet.Step) bool { return q.Title == "Sew on the caps" })
		if at < 0 || at > caps {
			t.Fatalf("%d joins: joined in step %d, caps sewn in step %d", row.joins, at, caps)
		}
		for _, p := range row.panels {
			proved := steps[slices.IndexFunc(steps, func(q sheet.Step) bool { return q.ID == "step-prove" })]
			if !slices.ContainsFunc(proved.Facts, func(f sheet.Fact) bool { return strings.HasPrefix(f.Name, p+", ") }) {
				t.Errorf("%s is not proved: %v", p, proved.Facts)
			}
			id := "piece-" + strings.ReplaceAll(p, " ", "-") + "-figures"
			joins := 0
			for _, r := range tableOf(t, s, id).Rows {
				if strings.Contains(r[0], "join, flat-felled") && r[1] == "16.0 mm" {
					joins++
				}
			}
			if want := map[bool]int{true: 2, false: 1}[p == "body centre"]; joins != want {
				t.Errorf("%s has the allowance of %d joins, want %d", p, joins, want)
			}
		}
		for _, want := range []string{"join, fold the allowance of the " + row.panels[0], "join, trim the allowance of the " + row.panels[1]} {
			if !slices.ContainsFunc(steps[at].Facts, func(f sheet.Fact) bool { return strings.HasSuffix(f.Name, want) }) {
				t.Errorf("no %q in %v", want, steps[at].Facts)
			}
		}
	}
	if s := unlaid(t, name, demo); slices.ContainsFunc(stepsOf(t, s), func(q sheet.Step) bool { return q.Title == "Join the panels" }) {
		t.Error("a body in one piece is joined")
	}
}

// TestLined sews a lining in before caps and channels, its opening first, and tells which
// layer is longer where; a pad is put in at the end. On whichever face it lies.
func TestLined(t *testing.T) {
	name, demo := design.Demo()
	for _, row := range []struct{ table, lay string }{
		{"", "Lay the body down, its letters down, and the lining on it, letters down too."},
		{"place = \"above\"\nopening = \"right\"\n", "Lay the body down, its letters up, and the lining on it, letters up too."},
	} {
		s := unlaid(t, name, append(slices.Clone(demo), "\n[lining]\n"+row.table...))
		steps := stepsOf(t, s)
		last := -1
		for _, id := range []string{"mark-lining", "prove", "hem-lining", "baste-lining", "caps", "pin-strips", "stitch-strips", "pad-in", "hang"} {
			at := slices.IndexFunc(steps, func(q sheet.Step) bool { return q.ID == "step-"+id })
			if at <= last {
				t.Errorf("step %s is number %d, after %d", id, at, last)
			}
			last = at
			if id == "baste-lining" && steps[at].Do[0] != row.lay {
				t.Errorf("%q", steps[at].Do)
			}
		}
		girths := tableOf(t, s, "lining-girths")
		if len(girths.Rows) != 3 {
			t.Errorf("girths %v", girths.Rows)
		}
		if shut := len(tableOf(t, s, "lining-sizes").Rows); shut < 9 {
			t.Errorf("%d rows of sizes", shut)
		}
	}
	if s := unlaid(t, name, demo); slices.ContainsFunc(s.Sections, func(q sheet.Section) bool { return q.ID == "lining" }) {
		t.Error("a bed without a lining has a chapter of it")
	}
}

// stepsOf returns the order of work.
func stepsOf(t *testing.T, s sheet.Sheet) sheet.Steps {
	t.Helper()
	var out sheet.Steps
	for _, sec := range s.Sections {
		for _, b := range sec.Blocks {
			steps, _ := b.(sheet.Steps)
			for _, q := range steps {
				if q.No > 0 {
					out = append(out, q)
				}
			}
		}
	}
	if len(out) == 0 {
		t.Fatal("no order of work")
	}
	return out
}

// tableOf returns a table.
func tableOf(t *testing.T, s sheet.Sheet, id string) sheet.Table {
	t.Helper()
	for _, sec := range s.Sections {
		for _, b := range sec.Blocks {
			if q, ok := b.(sheet.Table); ok && q.ID == id {
				return q
			}
		}
	}
	t.Fatalf("no table %q", id)
	return sheet.Table{}
}

// TestCautions expects each caution once, at the top, and a line that points there
// beside the load figures.
func TestCautions(t *testing.T) {
	name, demo := design.Demo()
	s := unlaid(t, name, demo)
	data := string(written(t, s))
	p, err := work.ReadFor(name, demo, work.Setting{})
	if err != nil {
		t.Fatal(err)
	}
	first := ""
	for h, c := range p.Cautions() {
		line := p.Words.CautionLine(words.Hazard(h), c)
		if n := strings.Count(data, html.EscapeString(line)); n != 1 {
			t.Errorf("%d times: %s", n, line)
		}
		if first == "" {
			first = html.EscapeString(line)
		}
	}
	if i, j := strings.Index(data, first), strings.Index(data, `id="cut-list"`); i > j {
		t.Error("the cautions do not stand in the first section")
	}
	for _, sec := range s.Sections {
		points := slices.ContainsFunc(sec.Blocks, func(b sheet.Block) bool {
			p, ok := b.(sheet.Para)
			return ok && strings.Contains(string(p), "Before anybody lies in it")
		})
		if want := sec.ID == "hung" || sec.ID == "loads"; points != want {
			t.Errorf("section %s points to the cautions: %v, want %v", sec.ID, points, want)
		}
	}
}

// TestUnmetFirst makes a bar far too thin and expects the sheet to say so first.
func TestUnmetFirst(t *testing.T) {
	name, demo := design.Demo()
	thin := bytes.Replace(demo, []byte("\nwall = \"1.5 mm\""), []byte("\nwall = \"0.3 mm\""), 1)
	thin = bytes.Replace(thin, []byte("outer_diameter = \"25 mm\""), []byte("outer_diameter = \"9 mm\""), 1)
	s := unlaid(t, name, thin)
	first, ok := s.Sections[0].Blocks[0].(sheet.Notice)
	if !ok || first.Grade != sheet.Bad || s.Verdict.Grade != sheet.Bad {
		t.Fatalf("first block %#v, verdict %#v", s.Sections[0].Blocks[0], s.Verdict)
	}
	if !strings.Contains(strings.Join(first.Lines, "\n"), "bar") {
		t.Errorf("the bar is not named: %q", first.Lines)
	}
}

// TestEscaping gives a design a name that is markup.
func TestEscaping(t *testing.T) {
	name, demo := design.Demo()
	evil := bytes.Replace(demo, []byte(`name = "Two nights on the river"`), []byte(`name = '</title><script>alert("1")</script>&amp;'`), 1)
	data := written(t, unlaid(t, name, evil))
	if bytes.Contains(data, []byte("<script")) || bytes.Count(data, []byte("</title>")) != 1+bytes.Count(data, []byte("<svg")) {
		t.Error("the design's name breaks out of its place")
	}
}

// view is a way in which somebody looks at the page.
type view struct {
	name          string
	width, height int64
	dark, axe     bool
}

// TestInBrowser opens the page in Chromium: light and dark, wide and as on a
// phone, in mm and in inches, and prints it on two papers.
func TestInBrowser(t *testing.T) {
	all, one := designs(t), browsertest.New(t)
	for _, row := range []struct {
		name  string
		views []view
		paper string
		size  chromedp.PaperSize
	}{
		{"demo", []view{{"dark", 1100, 900, true, true}, {"wide", 1100, 900, false, true}, {"phone", 390, 844, false, true}},
			"A4", chromedp.PaperA4},
		{"inches", []view{{"phone", 390, 844, false, true}, {"wide", 1100, 900, false, false}}, "letter", chromedp.PaperLetter},
	} {
		t.Run(row.name, func(t *testing.T) {
			p := one.For(t)
			file := filepath.Join(t.TempDir(), "sheet.html")
			if err := os.WriteFile(file, written(t, sheetOf(t, row.name, all[row.name])), 0o644); err != nil {
				t.Fatal(err)
			}
			for _, v := range row.views {
				look(t, p, "file://"+file, v)
				p.Shot(row.name + "-" + v.name)
			}
			p.Quiet()
			checkPrint(t, p, row.paper, row.size)
		})
	}
}

// look opens the page and checks what there is to see.
func look(t *testing.T, p *browsertest.Page, url string, v view) {
	t.Helper()
	p.Resize(v.width, v.height)
	p.Dark(v.dark)
	p.Open(url)
	for _, w := range p.Letters() {
		t.Errorf("%s: %s", v.name, w)
	}
	if over := browsertest.Eval[float64](p, "document.documentElement.scrollWidth - window.innerWidth"); over > 0 {
		t.Errorf("%s: the page is %g px wider than the screen", v.name, over)
	}
	if v.axe {
		var rules []string
		if v.dark {
			rules = []string{"color-contrast"} // nothing else is other in the dark
		}
		if v.width < 500 {
			rules = []string{"target-size", "scrollable-region-focusable"} // or on a phone
		}
		for _, w := range p.Axe(rules...) {
			t.Errorf("%s: %s", v.name, w)
		}
	}
}

// checkPrint prints the page and checks that every printed page counts itself, has
// something on it, and that the paper is not wasted.
func checkPrint(t *testing.T, p *browsertest.Page, name string, size chromedp.PaperSize) {
	t.Helper()
	const least, limit = 20, 60
	pages := p.Paper(size)
	if len(pages) < least || len(pages) > limit {
		t.Errorf("%s: %d pages, want %d to %d", name, len(pages), least, limit)
	}
	for i, text := range pages {
		n, of := browsertest.Foot(text)
		if n != i+1 || of != len(pages) {
			t.Errorf("%s: page %d of %d says %d of %d", name, i+1, len(pages), n, of)
		}
		if len(strings.Fields(text)) < 6 {
			t.Errorf("%s: page %d is empty: %q", name, i+1, text)
		}
	}
}
