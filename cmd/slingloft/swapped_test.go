package main

import (
	"bytes"
	"encoding/json"
	"fmt"
	"math"
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"testing"

	"github.com/beevik/etree"
	"github.com/google/go-cmp/cmp"

	"slingloft/cmd/slingloft/document"
	"slingloft/cmd/slingloft/figures"
	"slingloft/cmd/slingloft/show"
	"slingloft/cmd/slingloft/work"
	"slingloft/export"
	"slingloft/export/format"
	"slingloft/export/sheet/wording"
	"slingloft/nest"
	"slingloft/outline/design"
	"slingloft/outline/geom"
	"slingloft/outline/piece"
	"slingloft/outline/stock"
	"slingloft/outline/wordstest"
)

// spoken is what a run decides, and all that it says.
type spoken struct {
	decided decided
	files   map[string][]byte // by name
	figures string
	json    []byte
	plan    *work.Plan
	sheet   []string // texts of the build sheet
	letters []string // labels
}

// decided is what a run decides, without a word of it.
type decided struct {
	Pieces []piece.Piece // their texts left out
	Seams  []piece.Seam
	Cords  map[string]float64
	Bill   []stock.Row
	Checks []string
	Digest string
	Sheet  []string // what there is on the build sheet, with its figures
}

// language is a table of words for each output.
type language struct {
	work    work.Words
	figures figures.Words
	sheet   wording.Words
}

// run runs a design with a table of words for each output.
func run(t *testing.T, path string, in language) spoken {
	t.Helper()
	data, err := os.ReadFile(path)
	if err != nil {
		t.Fatal(err)
	}
	p, err := work.ReadFor(path, data, work.Setting{Words: &in.work})
	if err != nil {
		t.Fatal(err)
	}
	l := inRows(&p)
	b, err := p.Bill(l)
	if err != nil {
		t.Fatal(err)
	}
	out := spoken{plan: &p, files: map[string][]byte{}}
	out.decided = decided{Seams: p.Sewn.Seams, Cords: map[string]float64{}, Bill: b.Rows, Checks: checkNames(p), Digest: p.Digest}
	for _, q := range p.Pieces() {
		for _, l := range q.Labels {
			out.letters = append(out.letters, l.Text)
		}
		out.decided.Pieces = append(out.decided.Pieces, wordless(q))
	}
	for _, c := range p.Cords.Cords {
		out.decided.Cords[c.Part.String()] = c.Cut
	}
	out.figured(t, &p, l, in.figures)
	out.built(t, &p, l, in.sheet)
	drawings, err := p.Drawings(l, 1)
	if err != nil {
		t.Fatal(err)
	}
	for _, name := range []string{"svg", "dxf", "pattern"} {
		out.written(t, drawings, name)
	}
	return out
}

// wordless returns a piece without what stands on it.
func wordless(q piece.Piece) piece.Piece {
	q.Title = ""
	q.Labels = slices.Clone(q.Labels)
	for i := range q.Labels {
		q.Labels[i].Text = ""
	}
	return q
}

// inRows lays the pieces without a search: on the rolls one behind the other, each
// template on a sheet of its own.
func inRows(p *work.Plan) work.Lays {
	var out work.Lays
	const gap = 10.0
	for roll := range p.Rolls() {
		lay, at := nest.Lay{Beds: 1}, gap
		for i, q := range p.OnRoll(roll) {
			for k := range q.Count {
				box := q.Cut.Bounds()
				shift := geom.Pt(at, gap).Minus(box.Min)
				lay.Placements = append(lay.Placements, nest.Placement{Item: i, Copy: k, Motion: geom.Motion{Shift: shift}})
				at += box.Width() + gap
			}
		}
		lay.Length = at
		out.Rolls = append(out.Rolls, lay)
	}
	for i, q := range p.Templates {
		turn := geom.Motion{}
		if b := q.Cut.Bounds(); (b.Width() > b.Height()) != (p.Design.Sheet.Width > p.Design.Sheet.Height) {
			turn.Turn = math.Pi / 2
		}
		turn.Shift = geom.Pt(gap, gap).Minus(q.Cut.Moved(turn).Bounds().Min)
		out.Boards.Placements = append(out.Boards.Placements, nest.Placement{Item: i, Bed: i, Motion: turn})
	}
	out.Boards.Beds = len(p.Templates)
	return out
}

// figured gathers what figure prints.
func (s *spoken) figured(t *testing.T, p *work.Plan, l work.Lays, say figures.Words) {
	t.Helper()
	doc, err := figures.Of(p, l, say)
	if err != nil {
		t.Fatal(err)
	}
	var text, out bytes.Buffer
	if err := figures.Text(&text, p, doc, say); err != nil {
		t.Fatal(err)
	}
	if err := document.Write(&out, doc); err != nil {
		t.Fatal(err)
	}
	s.figures, s.json = text.String(), out.Bytes()
}

// built gathers what stands on the build sheet.
func (s *spoken) built(t *testing.T, p *work.Plan, l work.Lays, tell wording.Words) {
	t.Helper()
	built, err := show.Of(p, l, tell)
	if err != nil {
		t.Fatal(err)
	}
	var r reading
	r.sheet(built)
	s.decided.Sheet, s.sheet = r.there, r.said
}

// written writes the drawings in a format.
func (s *spoken) written(t *testing.T, drawings []export.Drawing, name string) {
	t.Helper()
	f, err := format.Named(name)
	if err != nil {
		t.Fatal(err)
	}
	for _, drawing := range drawings {
		codec, err := f.SetUp(s.plan.Design.Machine, export.Material{Name: s.plan.Design.Cloth.Name})
		if err != nil {
			t.Fatal(err)
		}
		var out bytes.Buffer
		if err := codec.Write(&out, drawing, export.Options{Scale: 1, Words: &s.plan.Words.Sheets}); err != nil {
			t.Fatal(err)
		}
		s.files[drawing.Name+f.Ending] = out.Bytes()
	}
}

// swappedDesigns returns the paths of designs with all kinds of pieces, lines and cords.
func swappedDesigns(t *testing.T) []string {
	t.Helper()
	const folder = "../../testdata/design/"
	sound := func(name string) string { return folder + "sound/" + name + ".toml" }
	_, demo := design.Demo()
	even, err := os.ReadFile(sound("ordinary_even_load"))
	if err != nil {
		t.Fatal(err)
	}
	temp := t.TempDir()
	put := func(name string, text []byte, old, new string) string {
		path := filepath.Join(temp, name)
		changed := bytes.Replace(text, []byte(old), []byte(new), 1)
		if err := os.WriteFile(path, changed, 0o644); err != nil || old != new && bytes.Equal(text, changed) {
			t.Fatalf("%s: nothing to change (%v)", name, err)
		}
		return path
	}
	const outline = `<svg xmlns="http://www.w3.org/2000/svg" width="90mm" height="60mm" viewBox="0 0 90 60"><path d="M5 5H85V55H5Z"/></svg>`
	put("own.svg", []byte(outline), "", "")
	const own = "\n[[extra]]\nfile = \"own.svg\"\nname = \"Pocket\"\ncount = 2\n" +
		"\n[[extra]]\nfile = \"own.svg\"\nname = \"Knob\"\nstock = \"board\"\n"
	return []string{
		put("demo.toml", append(slices.Clone(demo), own...), "", ""),
		put("tarp_across.toml", append(slices.Clone(demo), "\n[tarp]\njoin = \"across\"\n"...), "", ""),
		put("facing.toml", demo, `kind = "strip"`, `kind = "facing"`),
		put("one_join.toml", even, `width = "1500 mm"`, `width = "1100 mm"`+"\njoins = 1"),
		put("two_joins.toml", even, `width = "1500 mm"`, `width = "800 mm"`+"\njoins = 2"),
		folder + "inches.toml", sound("degenerate_whole_loop"), sound("ordinary_gathered"), sound("ordinary_tarp"), sound("ordinary_cover"),
		sound("ordinary_lining"), sound("ordinary_lining_above"),
	}
}

// No id, layer, line, allowance, cord, thing to buy, check, section, row, step or picture
// hangs on a word of the tables: with every word swapped for another all of them are the
// same, in the files too, and only what people read has changed.
func TestWordsSwapped(t *testing.T) {
	english := language{work.English(), figures.English(), wording.English()}
	other := language{wordstest.Reversed(english.work), wordstest.Reversed(english.figures), wordstest.Reversed(english.sheet)}
	for _, path := range swappedDesigns(t) {
		t.Run(filepath.Base(path), func(t *testing.T) {
			t.Parallel()
			want, got := run(t, path, english), run(t, path, other)
			if diff := cmp.Diff(want.decided, got.decided); diff != "" {
				t.Errorf("with other words (-english +swapped):\n%s", diff)
			}
			swapped(t, "lettering", strings.Join(want.letters, "\n"), strings.Join(got.letters, "\n"))
			swappedSheet(t, want.plan, want.sheet, got.sheet)
			swapped(t, "figures", want.figures, got.figures)
			sameJSON(t, want.json, got.json)
			for name, file := range want.files {
				sameFile(t, name, file, got.files[name])
			}
			if len(want.files) != len(got.files) || len(want.files) < 3 {
				t.Errorf("%d files, %d with other words", len(want.files), len(got.files))
			}
		})
	}
}

// swapped holds two texts against each other: the same but for the words, and not the
// same words.
func swapped(t *testing.T, what, english, other string) {
	t.Helper()
	if english == other {
		t.Errorf("%s: no word has changed", what)
	}
	a, b := strings.Split(english, "\n"), strings.Split(other, "\n")
	if len(a) != len(b) {
		t.Fatalf("%s: %d lines, %d with other words", what, len(a), len(b))
	}
	for i := range a {
		if !wordstest.Same(a[i], b[i]) {
			t.Errorf("%s: %q became %q", what, a[i], b[i])
		}
	}
}

// remarks are the fields of the document of figure that people read.
var remarks = regexp.MustCompile(`^\.(cautions|hazards\.(hazard|consequence|avoidance)|warnings|margin_notes|rigging\.notes|accuracy\.notes|(margins|governing)\.source|` +
	`cases\.(basis|cannot)|materials\.(rows\.(name|note)|open))$`)

// sameJSON holds two documents against each other: only remarks may have changed, and
// they only their words.
func sameJSON(t *testing.T, english, other []byte) {
	t.Helper()
	var a, b any
	for data, into := range map[*[]byte]*any{&english: &a, &other: &b} {
		if err := json.Unmarshal(*data, into); err != nil {
			t.Fatal(err)
		}
	}
	changed := 0
	var compare func(path string, a, b any)
	compare = func(path string, a, b any) {
		switch a := a.(type) {
		case map[string]any:
			b, _ := b.(map[string]any)
			if len(a) != len(b) {
				t.Errorf("%s has other fields", path)
			}
			for key, v := range a {
				compare(path+"."+key, v, b[key])
			}
		case []any:
			b, _ := b.([]any)
			if len(a) != len(b) {
				t.Errorf("%s has another length", path)
				return
			}
			for i := range a {
				compare(path, a[i], b[i])
			}
		default:
			if fmt.Sprint(a) == fmt.Sprint(b) {
				return
			}
			changed++
			if !remarks.MatchString(path) || !wordstest.Same(fmt.Sprint(a), fmt.Sprint(b)) {
				t.Errorf("%s: %v became %v", path, a, b)
			}
		}
	}
	compare("", a, b)
	if changed == 0 {
		t.Error("no remark has changed")
	}
}

// sameFile holds two files against each other, lettering left out.
func sameFile(t *testing.T, name string, english, other []byte) {
	t.Helper()
	apart := apartDXF
	if strings.HasSuffix(name, ".svg") {
		apart = apartSVG
	}
	if bytes.Equal(english, other) {
		t.Errorf("%s: no word has changed", name)
	}
	a, b := apart(t, english), apart(t, other)
	if !slices.Equal(a, b) || len(a) < 100 {
		t.Errorf("%s of %d lines, with other words (-english +swapped):\n%s", name, len(a), cmp.Diff(a, b))
	}
}

// apartSVG returns the lines of a drawing without what it says of itself and its lettering.
func apartSVG(t *testing.T, data []byte) []string {
	t.Helper()
	doc := etree.NewDocument()
	if err := doc.ReadFromBytes(data); err != nil {
		t.Fatal(err)
	}
	root := doc.Root()
	root.RemoveChild(root.SelectElement("title"))
	root.RemoveChild(root.SelectElement("desc"))
	for _, group := range root.SelectElements("g") {
		if group.SelectAttrValue("id", "") == piece.Lettering.String() {
			for _, path := range group.SelectElements("path") {
				path.RemoveAttr("d")
				path.RemoveChild(path.SelectElement("desc"))
			}
		}
	}
	text, err := doc.WriteToString()
	if err != nil {
		t.Fatal(err)
	}
	return strings.Split(text, "\n")
}

// apartDXF returns the pairs of a drawing without the points of its lettering, the
// words of its texts but for what they are of, and its extents.
func apartDXF(t *testing.T, data []byte) []string {
	t.Helper()
	lines := strings.Split(strings.ReplaceAll(string(data), "\r\n", "\n"), "\n")
	var out []string
	entity, layer, variable := "", "", ""
	for i := 0; i+1 < len(lines); i += 2 {
		code, value := strings.TrimSpace(lines[i]), lines[i+1]
		switch code {
		case "0":
			entity, layer, variable = value, "", ""
		case "8":
			layer = value
		case "9":
			variable = value
		}
		lettered := entity == "LWPOLYLINE" && layer == piece.Lettering.String()
		switch {
		case lettered && slices.Contains([]string{"10", "20", "90", "70"}, code):
		case variable == "$EXTMIN" || variable == "$EXTMAX":
		case entity == "TEXT" && code == "1" && layer == "15":
		case entity == "TEXT" && code == "1":
			kind, _, _ := strings.Cut(value, "Name: ")
			if kind == "Style " {
				value = kind
			}
			fallthrough
		default:
			out = append(out, code+" "+value)
		}
	}
	return out
}

// checkNames returns the identifiers of a plan's checks.
func checkNames(p work.Plan) []string {
	var out []string
	for _, c := range p.Margins().Checks {
		out = append(out, c.Name())
	}
	return out
}
