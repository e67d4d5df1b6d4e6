package watch_test

import (
	"archive/zip"
	"bytes"
	"context"
	"encoding/base64"
	"fmt"
	"io"
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"testing"

	"slingloft/cmd/slingloft/browsertest"
	"slingloft/cmd/slingloft/command"
	"slingloft/cmd/slingloft/watch"
	"slingloft/outline/design"
)

// enter types into a field and leaves it.
func enter(p *browsertest.Page, field, value string) {
	browsertest.Eval[bool](p, fmt.Sprintf(`(() => { const i = document.querySelector('[name=%q]'); for (let d = i.closest("details"); d; d = d.parentElement.closest("details")) d.open = true;
		i.focus(); i.value = %q; i.dispatchEvent(new Event("input", {bubbles: true})); i.dispatchEvent(new Event("change", {bubbles: true})); i.blur(); return true })()`, field, value))
}

func click(p *browsertest.Page, selector string) {
	browsertest.Eval[bool](p, fmt.Sprintf(`(document.querySelector(%q).click(), true)`, selector))
}

// shows waits until a field has a value.
func shows(p *browsertest.Page, field, value string) {
	p.Until(fmt.Sprintf(`document.querySelector('[name=%q]').value === %q`, field, value))
}

func text(t testing.TB, path string) string {
	t.Helper()
	data, err := os.ReadFile(path)
	if err != nil {
		t.Fatal(err)
	}
	return string(data)
}

// TestBrowser drives the page in one Chromium, each time in a tab of its own.
func TestBrowser(t *testing.T) {
	b := browsertest.New(t)
	for _, r := range []struct {
		name string
		test func(*testing.T, *browsertest.Page)
	}{
		{"page", testPage}, {"conflict", testConflict}, {"whole design", testWholeDesign}, {"driven", testDriven},
		{"keyboard", testKeyboard}, {"told", testTold}, {"stranger", testStranger},
	} {
		t.Run(r.name, func(t *testing.T) { r.test(t, b) })
	}
}

// testPage makes changes on the page in Chromium: they are drawn, told of, saved with all
// else of the file as it was, and undone.
func testPage(t *testing.T, b *browsertest.Page) {
	before := small(t, "1500 mm") + "# the end\n"
	path := filepath.Join(t.TempDir(), "bed.toml")
	save(t, path, before)
	url := servingWith(t, watch.Options{Path: path, Address: "127.0.0.1:0", Run: really})
	p := b.Tab(t)
	p.Resize(1280, 900)
	p.Open(url)
	p.Until(`document.body.dataset.laid === "true" && document.body.dataset.drawn`)
	if got := browsertest.Eval[string](p, `location.href`); strings.Contains(got, "#") {
		t.Errorf("the token stays in the address: %s", got)
	}
	for _, w := range p.Letters() {
		t.Error(w)
	}
	// Every key of a design has its one field, from the start.
	var names []string
	for _, f := range design.Fields(false) {
		name := string(f.Key)
		if f.List != "" {
			name = string(f.List) + ".0." + f.Key.Name()
		}
		names = append(names, name)
	}
	for _, name := range browsertest.Eval[[]string](p, fmt.Sprintf(`%q.split(" ").filter((n) => document.querySelectorAll('[name="' + n + '"]').length !== 1)`, strings.Join(names, " "))) {
		t.Errorf("%s has not one field", name)
	}
	p.Shot("desk")

	enter(p, "bed.span", "1,53 m")
	shows(p, "bed.span", "1.53 m")
	p.Until(`document.body.dataset.unsaved === "true" && document.querySelector("#sheet #summary").textContent.includes("1530 mm")`)
	p.Until(`[...document.querySelectorAll("#changed tr")].some((r) => r.textContent.endsWith("1500 mm1530 mm"))`)
	if text(t, path) != before {
		t.Error("the file changed before it was saved")
	}
	click(p, "#save")
	p.Until(`document.body.dataset.unsaved === "false"`)
	if got, want := text(t, path), strings.Replace(before, `"1500 mm"`, `"1.53 m"`, 1); got != want {
		t.Errorf("the file reads\n%s", got)
	}
	// One undo takes one change back, and it can be put on again.
	click(p, "#undo")
	shows(p, "bed.span", "1500 mm")
	click(p, "#redo")
	shows(p, "bed.span", "1.53 m")

	// A fault stands at its field with what would do as a button.
	enter(p, "template.letter", "3 km")
	p.Until(`document.querySelector('[name="template.letter"]').getAttribute("aria-invalid") === "true" && document.querySelector("#k-template-letter-fault button")`)
	p.Shot("desk-fault")
	click(p, "#k-template-letter-fault button")
	p.Until(`!document.querySelector('[aria-invalid]')`)

	// Elements of lists come and go.
	enter(p, "guest.0.name", "Ida")
	p.Until(`document.querySelector('[data-list="guest"] .add:not([hidden])')`)
	click(p, `[data-list="guest"] .add`)
	p.Until(`document.querySelector('[name="guest.1.mass"]')`)
	click(p, `[data-list="guest"] .element:nth-of-type(2) .drop`)
	p.Until(`!document.querySelector('[name="guest.1.mass"]')`)

	// Values stand side by side.
	click(p, `[data-list="guest"] .drop`)
	p.Until(`document.body.dataset.faults === "0"`)
	browsertest.Eval[bool](p, `(document.getElementById("compare").open = true, document.getElementById("compare-values").value = "850 mm; 900 mm", document.getElementById("compare-go").click(), true)`)
	p.Until(`document.querySelectorAll("#compared thead th").length === 4 && document.querySelectorAll("#compared tbody tr").length > 5`)
	if got := browsertest.Eval[string](p, `[...document.querySelectorAll("#varied table")].map((t) => t.tBodies[0].rows.length + t.tBodies[0].rows[1].cells[0].textContent).join()`); got != "2900 mm,2900 mm" {
		t.Errorf("what other values buy: %s", got)
	}
	click(p, "#hang-go")
	p.Until(`document.getElementById("hang-told").textContent.includes("Level")`)

	slides(t, p)
	sees(t, p)
	p.Resize(320, 640)
	browsertest.Eval[bool](p, `(() => { for (const d of document.querySelectorAll("#form details")) d.open = true; return true })()`)
	if over := browsertest.Eval[float64](p, "document.documentElement.scrollWidth - window.innerWidth"); over > 0 {
		t.Errorf("on a phone the page is %g px wider than the screen", over)
	}
	p.Shot("desk-phone")
	p.Dark(true)
	p.Resize(1280, 900)
	p.Shot("desk-dark")
	p.Quiet()
	enter(p, "template.letter", "3 km")
	p.Until(`document.querySelector("#k-template-letter-fault button")`)
	browsertest.Eval[bool](p, `(document.getElementById("sheet").replaceChildren(), true)`) // has its own test
	for _, w := range p.Axe("wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice") {
		t.Error(w)
	}
}

// slides moves a length by its slider: the shape follows on a net that is at most half a
// millimetre off, and soon after it stops the finer one stands.
func slides(t *testing.T, p *browsertest.Page) {
	t.Helper()
	browsertest.Eval[bool](p, `(document.querySelector('[name="bed.span"]').dispatchEvent(new FocusEvent("focusin", {bubbles: true})), true)`)
	p.Until(`document.getElementById("slide-value").textContent === "1.53 m"`)
	browsertest.Eval[bool](p, `(() => { const s = document.getElementById("slide"), off = document.getElementById("off"), now = () => performance.now(); window.began = now(); window.first = Number(document.body.dataset.frames);
		delete document.body.dataset.exact;
		let n = 0; const step = () => { s.value = 1500 + n; s.dispatchEvent(new Event("input")); if (++n < 60) setTimeout(step, 15); else {
			window.rate = (Number(document.body.dataset.frames) - window.first) * 1000 / (now() - window.began); window.coarse = off.textContent; s.dispatchEvent(new Event("change"));
			const stopped = now(), wait = () => { if (document.body.dataset.exact) window.settled = now() - stopped; else setTimeout(wait, 2); }; wait(); } }; step(); return true })()`)
	p.Until(`window.settled`)
	t.Logf("%.1f pictures a second while a slider moves, exact %.0f ms after", browsertest.Eval[float64](p, "window.rate"), browsertest.Eval[float64](p, "window.settled"))
	if got := browsertest.Eval[string](p, `window.coarse + " " + document.getElementById("off").textContent`); got != "Drawn to within 0.5 mm. Drawn to within 0.2 mm." {
		t.Errorf("it is said: %s", got)
	}
	shows(p, "bed.span", "1.559 m")
	p.Until(`document.querySelector("#sheet #summary").textContent.includes("1559 mm")`)
	click(p, `[data-step="1"]`) // the way without a drag
	shows(p, "bed.span", "1.56 m")
}

// sees turns the hammock, points at it, and looks at the other views.
func sees(t *testing.T, p *browsertest.Page) {
	t.Helper()
	frames := browsertest.Eval[int](p, `Number(document.body.dataset.frames)`)
	click(p, `[data-turn="15"]`)
	p.Until(fmt.Sprintf(`Number(document.body.dataset.frames) > %d`, frames))
	place := browsertest.Eval[string](p, `document.getElementById("here").textContent`)
	// Pointed at over and over: while a drawing comes in there is nothing to point at.
	p.Until(fmt.Sprintf(`(() => { const v = document.getElementById("view"), b = v.getBoundingClientRect();
		v.dispatchEvent(new PointerEvent("pointermove", {clientX: b.left + b.width * 0.62, clientY: b.top + b.height * 0.55, bubbles: true}));
		return document.getElementById("here").textContent !== %q })()`, place))
	browsertest.Eval[bool](p, `(() => { const s = document.getElementById("station"); s.value = 300; s.dispatchEvent(new Event("input")); return true })()`)
	p.Until(`document.getElementById("station").getAttribute("aria-valuetext") === "300 mm" && document.querySelector("#across .k-main")`)
	browsertest.Eval[bool](p, `(() => { const s = document.getElementById("shading"); s.value = "room"; s.dispatchEvent(new Event("change")); return true })()`)
	p.Until(`!document.getElementById("legend").hidden && document.getElementById("taut").textContent.includes("elbows")`)
	for view, want := range map[string]int{"side": 1, "above": 1, "end": 1, "pieces": 3, "lay": 2} {
		click(p, `[data-view="`+view+`"]`)
		p.Until(fmt.Sprintf(`document.querySelectorAll("#plates svg").length >= %d`, want))
	}
	for _, id := range browsertest.Eval[[]string](p, `[...document.querySelectorAll("[id]")].map(e => e.id).filter((id, i, all) => all.indexOf(id) !== i)`) {
		t.Errorf("two elements are called %s", id)
	}
	click(p, `[data-view="space"]`)
}

// testConflict changes the file while the page has changes of its own: nothing is lost.
func testConflict(t *testing.T, b *browsertest.Page) {
	url, path := served(t, small(t, "1500 mm"))
	p := b.Tab(t)
	p.Open(url)
	p.Until(`document.body.dataset.drawn`)
	save(t, path, small(t, "1510 mm")) // nothing is changed here: it follows
	shows(p, "bed.span", "1510 mm")
	// A second page of the same program shows the same.
	r := b.Tab(t)
	r.Open(url)
	shows(r, "bed.span", "1510 mm")
	enter(p, "bed.span", "1530 mm")
	shows(r, "bed.span", "1530 mm")
	enter(r, "bed.span", "1540 mm")
	shows(p, "bed.span", "1540 mm")
	p.Until(`document.body.dataset.unsaved === "true"`)
	// The other change comes from a second page, of a program of its own.
	q := b.Tab(t)
	q.Open(serving(t, path))
	shows(q, "bed.span", "1510 mm")
	enter(q, "bed.span", "1520 mm")
	q.Until(`document.body.dataset.unsaved === "true"`)
	click(q, "#save")
	q.Until(`document.body.dataset.unsaved === "false"`)
	p.Until(`!document.getElementById("conflict").hidden`)
	click(p, "#save")
	p.Until(`document.getElementById("status").textContent.includes("changed")`)
	if got := text(t, path); got != small(t, "1520 mm") {
		t.Error("saving wrote over another's change")
	}
	p.Shot("desk-conflict")
	click(p, "#take")
	shows(p, "bed.span", "1520 mm")
	click(p, "#undo")
	shows(p, "bed.span", "1540 mm")
	click(p, "#save")
	shows(q, "bed.span", "1540 mm")
}

// testWholeDesign begins with a file that is not there and ends with the zip that the
// command makes of it: the questions, a slider's button, a fault's button, undo, save and
// files, with nothing typed but in fields.
func testWholeDesign(t *testing.T, b *browsertest.Page) {
	folder := t.TempDir()
	path := filepath.Join(folder, "new.toml")
	save(t, filepath.Join(folder, design.ShelfFile), "[cloth.blue]\nname = \"blue\"\nwidth = \"1500 mm\"\nareal_density = \"70 g/m²\"\n")
	url := servingWith(t, watch.Options{Path: path, Address: "127.0.0.1:0", Run: really})
	p := b.Tab(t)
	p.Open(url)
	p.Until(`!document.getElementById("begin").hidden && document.querySelector('#questions [data-take="cloth.use"] option[value="blue"]')`)
	p.Shot("desk-questions")
	ask := func(id, value string) {
		browsertest.Eval[bool](p, fmt.Sprintf(`(document.getElementById(%q).value = %q, true)`, "q-"+id, value))
	}
	ask("stature", "1650 mm")
	ask("distance", "4")
	click(p, "#propose")
	p.Until(`document.getElementById("q-wrong").textContent.includes("4 m")`)
	ask("distance", "4 m")
	ask("bar", "900 mm")
	ask("k-cloth-use", "blue")
	click(p, "#propose")
	shows(p, "sleeper.stature", "1650 mm")
	enter(p, "name", "Anna's bed")
	enter(p, "bed.span", "1450")
	p.Until(`document.querySelector("#k-bed-span-fault button")`)
	click(p, "#k-bed-span-fault button")
	shows(p, "bed.span", "1450 mm")
	p.Until(`document.getElementById("slide-value").textContent === "1450 mm"`)
	click(p, `[data-step="1"]`)
	shows(p, "bed.span", "1451 mm")
	click(p, "#undo")
	shows(p, "bed.span", "1450 mm")
	p.Until(`document.body.dataset.laid === "true" && document.body.dataset.faults === "0"`)
	click(p, "#save")
	p.Until(`document.body.dataset.unsaved === "false"`)
	got := text(t, path)
	for _, want := range []string{`name = "Anna's bed"`, `stature = "1650 mm"`, `distance = "4 m"`, `use = "blue"`, `span = "1450 mm"`} {
		if !strings.Contains(got, want) {
			t.Errorf("the file lacks %s:\n%s", want, got)
		}
	}
	// What the page hands over is what the command writes.
	browsertest.Eval[bool](p, `(() => { const old = URL.createObjectURL; URL.createObjectURL = (b) => { b.arrayBuffer().then((d) => { window.had = btoa(new Uint8Array(d).reduce((s, c) => s + String.fromCharCode(c), "")); }); return old(b); };
		document.getElementById("files").click(); document.querySelector('#formats [value="dxf"]').click(); document.getElementById("files-make").click(); return true })()`)
	p.Until(`window.had`)
	out := filepath.Join(folder, "new-files") // the record says from where to where
	if code := really(t.Context(), []string{"cut", path, "--out", out, "--as", "svg"}, io.Discard, io.Discard); code != 0 {
		t.Fatalf("cut: status %d", code)
	}
	data, err := base64.StdEncoding.DecodeString(browsertest.Eval[string](p, `window.had`))
	if err != nil {
		t.Fatal(err)
	}
	z, err := zip.NewReader(bytes.NewReader(data), int64(len(data)))
	if err != nil {
		t.Fatal(err)
	}
	for _, f := range z.File {
		r, err := f.Open()
		if err != nil {
			t.Fatal(err)
		}
		had, _ := io.ReadAll(r)
		if string(had) != text(t, filepath.Join(out, f.Name)) {
			t.Errorf("%s differs from the command's", f.Name)
		}
	}
	if made, _ := os.ReadDir(out); len(made) != len(z.File) || len(made) < 3 {
		t.Errorf("%d files, of the command %d", len(z.File), len(made))
	}
}

// really runs the program.
func really(ctx context.Context, args []string, out, told io.Writer) int {
	return command.Run(ctx, args, command.Streams{Out: out, Err: told})
}

// testDriven drives the page as a program from outside would, and mends a design with ten
// faults by its buttons alone.
func testDriven(t *testing.T, b *browsertest.Page) {
	t.Chdir(t.TempDir())
	p := b.Tab(t)
	p.Open(serving(t, ""))
	p.Until(`document.body.dataset.laid === "true"`)
	if got := browsertest.Eval[string](p, `["save", "undo", "redo", "files"].map(i => document.getElementById(i).tagName).join() + document.getElementById("status").getAttribute("role")`); got != "BUTTON,BUTTON,BUTTON,BUTTONstatus" {
		t.Errorf("buttons and status: %s", got)
	}
	_, demo := design.Demo()
	broken := faulty(t, string(demo))
	browsertest.Eval[bool](p, fmt.Sprintf(`(document.getElementById("text").value = %q, document.getElementById("use-text").click(), true)`, broken))
	p.Until(`document.body.dataset.faults === "10" && document.getElementById("status").textContent.includes("10")`)
	p.Until(`document.querySelectorAll('#form [aria-invalid="true"]').length >= 9`)
	// It saves at once, faults and all, once it has a name.
	click(p, "#save")
	p.Until(`document.getElementById("name-box").open`)
	browsertest.Eval[bool](p, `(document.getElementById("file-name").value = "mine.toml", document.getElementById("name-save").click(), true)`)
	p.Until(`document.body.dataset.unsaved === "false" && document.getElementById("status").textContent.includes("mine.toml") && document.getElementById("status").textContent.includes("10")`)
	if got := text(t, "mine.toml"); got != broken {
		t.Errorf("the file reads\n%s", got)
	}
	p.Shot("desk-ten-faults")
	for pressed := 0; browsertest.Eval[bool](p, `document.body.dataset.faults !== "0"`); pressed++ {
		if pressed > 15 {
			t.Fatalf("still at fault: %s", browsertest.Eval[string](p, `document.getElementById("faults").innerText`))
		}
		p.Until(`document.body.dataset.faults === "0" || document.querySelector(".wrong button, #faults button")`)
		n := browsertest.Eval[string](p, `document.body.dataset.number`)
		browsertest.Eval[bool](p, `((document.querySelector(".wrong button, #faults button") || document.body).click(), true)`)
		p.Until(fmt.Sprintf(`document.body.dataset.number !== %q && (document.body.dataset.faults === "0" || document.querySelector(".wrong button, #faults button"))`, n))
	}
	p.Until(`!document.querySelector("[aria-invalid]")`)
	click(p, "#save")
	p.Until(`document.body.dataset.unsaved === "false"`)
	if _, _, err := design.Read("mine.toml", []byte(text(t, "mine.toml"))); err != nil {
		t.Error(err)
	}
	// One undo takes one change of one field back, however it was typed.
	cut := browsertest.Eval[string](p, `document.querySelector('[name="bed.cut"]').value`)
	enter(p, "sleeper.mass", "81 kg")
	enter(p, "sleeper.mass", "82 kg")
	enter(p, "bed.cut", "straight")
	for _, want := range []string{"82 kg", "81 kg"} {
		click(p, "#undo")
		p.Until(fmt.Sprintf(`document.querySelector('[name="sleeper.mass"]').value === %q && document.querySelector('[name="bed.cut"]').value === %q`, want, cut))
	}
	click(p, "#redo")
	shows(p, "sleeper.mass", "82 kg")
}

// faulty returns a design with ten faults.
func faulty(t testing.TB, text string) string {
	t.Helper()
	for _, r := range [][2]string{
		{`(?m)^span = "(\d+) mm"`, `span = "$1"`}, {`(?m)^mass = "(\d+) kg"`, `mass = "$1 kgs"`}, {`(?m)^stature =`, `statur =`},
		{`(?m)^head_bar = "(\d+) mm"`, `head_bar = "$1 mn"`}, {`(?m)^foot_bar = "(\d+) mm"`, `foot_bar = "$1,5 mm"`},
		{`(?m)^(head_drop = .*)`, "$1\nhead_girth = \"1200 mm\""}, {`(?m)^side_depth = "(\d+) mm"`, `side_depth = $1`},
		{`(?m)^head_tail = "\d+ mm"`, `head_tail = "x"`},
		{`(?m)^head_leg = .*\n`, ""}, {`(?m)^foot_tail = "\d+ mm"`, `foot_tail = true`},
	} {
		row := regexp.MustCompile(r[0])
		if !row.MatchString(text) {
			t.Fatalf("no %s", r[0])
		}
		text = text[:row.FindStringIndex(text)[0]] + row.ReplaceAllString(row.FindString(text), r[1]) + text[row.FindStringIndex(text)[1]:]
	}
	return text
}

// testStranger opens a design whose names are markup: they stay text, wherever the page
// shows them.
func testStranger(t *testing.T, b *browsertest.Page) {
	const evil = `<img src=x onerror="hacked=1"><b class=evil>`
	quoted := fmt.Sprintf("%q", evil)
	name := regexp.MustCompile(`(?m)^name = ".*"`)
	before := name.ReplaceAllString(small(t, "1500 mm"), "name = "+quoted)
	before = strings.Replace(before, "[hang]\n", "[hang]\n# "+evil+"\n", 1)
	before += "\n[[guest]]\nname = " + quoted + "\nmass = \"60 kg\"\nstature = \"1600 mm\"\ncrown = \"-20 mm\"\n"
	path := filepath.Join(t.TempDir(), "bed.toml")
	save(t, path, before)
	p := b.Tab(t)
	p.Open(servingWith(t, watch.Options{Path: path, Address: "127.0.0.1:0", Run: really}))
	p.Until(`document.body.dataset.laid === "true" && document.body.dataset.drawn`)
	if got := browsertest.Eval[string](p, `document.querySelector('[name="guest.0.name"]').value + document.getElementById("hang-who").options[1].textContent`); got != evil+evil {
		t.Errorf("the guest is called %s", got)
	}
	enter(p, "bed.span", evil) // what is wrong says it, with the line of the file
	p.Until(`document.querySelector("#k-bed-span-fault p") && document.querySelector("#faults li")`)
	save(t, path, before+"# "+evil+"\n")
	p.Until(`!document.getElementById("conflict").hidden`)
	click(p, "#take")
	shows(p, "bed.span", "1500 mm")
	browsertest.Eval[bool](p, fmt.Sprintf(`(() => { document.getElementById("compare-values").value = %q; document.getElementById("compare-go").click(); return true })()`, "850 mm; "+evil))
	p.Until(`document.querySelectorAll("#compared thead th").length === 4 && document.getElementById("varied").textContent.includes("evil")`)
	if got := browsertest.Eval[string](p, `String(window.hacked) + document.querySelectorAll(".evil, img").length`); got != "undefined0" {
		t.Errorf("names became markup: %s", got)
	}
}
