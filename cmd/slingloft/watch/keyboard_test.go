package watch_test

import (
	"fmt"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"github.com/chromedp/chromedp/kb"

	"slingloft/cmd/slingloft/browsertest"
	"slingloft/cmd/slingloft/watch"
)

// keys is a keyboard on a page. Wherever it comes to, it can be seen there.
type keys struct {
	*browsertest.Page
	t testing.TB
}

// seenFocus says what the keyboard is on and, on a second line, what is wrong with how that
// is shown.
const seenFocus = `(() => { const e = document.activeElement;
	if (!e || e === document.body) return "";
	e.dataset.been = "yes";
	const s = getComputedStyle(e), b = e.getBoundingClientRect(), name = e.id || e.name || e.textContent.trim().replace(/\s+/g, " ").slice(0, 40), wrong = (text) => name + "\n" + name + text;
	if (s.outlineStyle === "none" || parseFloat(s.outlineWidth) < 1) return wrong(" shows no ring");
	if (b.bottom < 1 || b.top > innerHeight || !b.width || !b.height) return wrong(" is off the screen");
	const over = document.elementFromPoint(b.left + b.width / 2, Math.min(Math.max(b.top + b.height / 2, 1), innerHeight - 1));
	return over && (e.contains(over) || over.contains(e)) ? name : wrong(" is covered by " + (over && (over.id || over.className || over.tagName))); })()`

// to goes on with Tab, or back, until the keyboard is at an element, by its id or words.
func (k keys) to(held kb.Modifier, want string) {
	k.t.Helper()
	var been []string
	for range 400 {
		k.PressWith(held, kb.Tab)
		now, wrong, _ := strings.Cut(browsertest.Eval[string](k.Page, seenFocus), "\n")
		if wrong != "" {
			k.t.Error(wrong)
		}
		if now == want {
			return
		}
		been = append(been, now)
	}
	k.t.Fatalf("the keyboard does not come to %s, but to %s", want, strings.Join(been, ", "))
}

// at waits until the keyboard is at an element.
func (k keys) at(want string) {
	k.t.Helper()
	k.Until(fmt.Sprintf(`document.activeElement && document.activeElement.id === %q`, want))
}

// testKeyboard makes a design from the questions to the zip with the keyboard alone: it
// comes everywhere, is never lost, and is always seen.
func testKeyboard(t *testing.T, b *browsertest.Page) {
	path := filepath.Join(t.TempDir(), "new.toml")
	p := b.Tab(t)
	k := keys{p, t}
	p.Resize(1280, 900)
	p.Open(servingWith(t, watch.Options{Path: path, Address: "127.0.0.1:0"}))
	p.Until(`!document.getElementById("begin").hidden`)
	k.to(0, "q-stature")
	p.Press("1", "6", "5", "0", " ", "m", "m")
	k.to(0, "q-distance")
	p.Press("4", kb.Enter)
	p.Until(`document.getElementById("q-wrong").textContent`)
	if got := browsertest.Eval[string](p, `document.activeElement.id + document.activeElement.getAttribute("aria-invalid")`); got != "q-distancetrue" {
		t.Errorf("what was answered wrong is %s", got)
	}
	p.Press(" ", "m", kb.Enter)
	k.at("title") // the questions are gone
	p.Until(`document.body.dataset.drawn`)

	// A field keeps keyboard and caret while the page follows what is typed into it.
	k.to(0, "k-name")
	p.Press("A", "n", "a", kb.ArrowLeft, "n")
	p.Until(`document.title.startsWith("* Anna")`)
	p.Until(`document.body.dataset.laid === "true"`)
	if got := browsertest.Eval[string](p, `document.activeElement.id + document.activeElement.value + document.activeElement.selectionStart`); got != "k-nameAnna3" {
		t.Errorf("after the page followed: %s", got)
	}
	k.to(0, "k-bed-span")
	p.Press("1", "4", "5", "0", ",", "5")
	p.Until(`document.querySelector("#k-bed-span-fault button")`)
	if got := browsertest.Eval[string](p, `document.activeElement.id + document.activeElement.value`); got != "k-bed-span1450,5" {
		t.Errorf("while it is typed it reads %s", got)
	}
	k.to(0, "Use 1450.5 mm")
	p.Press(" ")
	k.at("k-bed-span")
	shows(p, "bed.span", "1450.5 mm")

	// The pictures, past the fields; a length slid, the bed turned.
	k.to(kb.ModifierShift, "to-show")
	p.Press(kb.Enter)
	k.to(0, "view")
	frames := browsertest.Eval[int](p, `Number(document.body.dataset.frames)`)
	p.Press(kb.ArrowLeft, kb.PageDown)
	p.Until(fmt.Sprintf(`Number(document.body.dataset.frames) > %d`, frames))
	k.to(0, "slide-what")
	p.Press("L", "e", "n", "g", "t", "h", " ", "f", "r", "o", "m", " ", "b", "a")
	k.to(0, "slide")
	p.Press(kb.ArrowRight)
	p.Until(`document.querySelector('[name="bed.span"]').value !== "1450.5 mm" && document.getElementById("undo").getAttribute("aria-disabled") === "false"`)
	k.to(kb.ModifierShift, "redo")
	k.to(kb.ModifierShift, "undo")
	p.Press(kb.Enter)
	shows(p, "bed.span", "1450.5 mm")
	for range 8 { // back to the proposal, where there is nothing to undo
		p.Press(" ")
	}
	p.Until(`document.getElementById("undo").getAttribute("aria-disabled") === "true"`)
	k.at("undo")
	k.to(0, "redo")
	for range 8 {
		p.Press(" ")
	}
	p.Until(`document.getElementById("redo").getAttribute("aria-disabled") === "true"`)
	k.at("redo")
	k.to(kb.ModifierShift, "save")
	p.Press(kb.Enter)
	p.Until(`document.body.dataset.unsaved === "false"`)
	if got := text(t, path); !strings.Contains(got, `name = "Anna"`) || !strings.Contains(got, `distance = "4 m"`) {
		t.Errorf("the file reads\n%s", got)
	}
	k.files()
	k.everywhere()
}

// files has files made, and leaves the box.
func (k keys) files() {
	k.t.Helper()
	browsertest.Eval[bool](k.Page, `(() => { const old = URL.createObjectURL; URL.createObjectURL = (b) => { window.had = b.size; return old(b); }; return true })()`)
	k.to(0, "files")
	k.Press(kb.Enter)
	k.Until(`document.getElementById("files-box").open`)
	k.to(0, "files-make")
	k.Press(kb.Enter)
	k.Until(`window.had > 100`)
	k.Press(kb.Escape)
	k.Until(`!document.getElementById("files-box").open`)
	k.at("files")
}

// everywhere goes once round the page and comes to all that can be worked on.
func (k keys) everywhere() {
	k.t.Helper()
	k.to(kb.ModifierShift, "to-form") // the first of all
	browsertest.Eval[bool](k.Page, `(document.querySelectorAll("[data-been]").forEach((e) => { if (e.id !== "to-form") delete e.dataset.been; }), true)`)
	been := []string{"to-form"}
	for k.Press(kb.Tab); len(been) <= 400; k.Press(kb.Tab) {
		now, wrong, _ := strings.Cut(browsertest.Eval[string](k.Page, seenFocus), "\n")
		if wrong != "" {
			k.t.Error(wrong)
		}
		if now == "" || now == been[0] {
			break
		}
		been = append(been, now)
	}
	if len(been) > 400 {
		k.t.Fatalf("the keyboard never comes round: %s", strings.Join(been[380:], ", "))
	}
	missed := browsertest.Eval[[]string](k.Page, `[...document.querySelectorAll("a[href], button, input, select, textarea, summary, canvas")]
		.filter((e) => !e.disabled && e.type !== "radio" && e.checkVisibility() && !e.dataset.been).map((e) => e.id || e.name || e.textContent.trim())`)
	if len(missed) > 0 {
		k.t.Errorf("the keyboard does not come to %s", strings.Join(missed, ", "))
	}
	// In the order of the page: what acts on all, the form in the order of the trade, pictures, sheet.
	at := -1
	for _, id := range []string{"save", "undo", "files", "k-name", "k-sleeper-mass", "k-bed-span", "k-hang-distance", "text", "view", "slide", "station"} {
		i := slices.Index(been, id)
		if i <= at {
			k.t.Errorf("%s comes as number %d, after number %d: %s", id, i, at, strings.Join(been, ", "))
		}
		at = i
	}
}
