package watch_test

import (
	"strings"
	"testing"

	"slingloft/cmd/slingloft/browsertest"
)

// TestLivePage opens the live page in Chromium: it draws, follows the file, shows
// a fault in its place, and tries other measures.
func TestLivePage(t *testing.T) {
	url, path := served(t, small(t, "1500 mm"))
	p := browsertest.New(t)
	p.Resize(1100, 900)
	p.Open(url)
	p.Until(`document.body.dataset.laid === "true"`)
	for _, w := range p.Letters() {
		t.Error(w)
	}
	p.Shot("live")

	// A save changes the page.
	save(t, path, small(t, "1530 mm"))
	p.Until(`document.getElementById("summary").textContent.includes("1530 mm")`)
	p.Until(`document.querySelector('[name="bed.span"]').value === "1530 mm"`)

	// A fault is shown, and the last good drawing stays.
	save(t, path, strings.Replace(small(t, "1500 mm"), "span", "spam", 1))
	p.Until(`document.querySelector(".fault code")`)
	if got := browsertest.Eval[string](p, `document.getElementById("faults").innerText`); !contains(got, "bed.toml:", "spam") {
		t.Errorf("the fault reads %q", got)
	}
	if !browsertest.Eval[bool](p, `document.getElementById("summary").textContent.includes("1530 mm")`) {
		t.Error("the last good drawing is gone")
	}
	p.Shot("live-fault")
	save(t, path, small(t, "1500 mm"))
	p.Until(`!document.querySelector(".fault") && document.getElementById("summary").textContent.includes("1500 mm")`)

	// Other measures are tried as they are typed, and taken back.
	enter := func(value string) {
		browsertest.Eval[bool](p, `(() => { const i = document.querySelector('[name="bed.span"]');
			i.closest("details").open = true; i.value = "`+value+`"; i.dispatchEvent(new Event("input", {bubbles: true})); return true })()`)
	}
	enter("1550 mm")
	p.Until(`document.getElementById("summary").textContent.includes("1550 mm")`)
	if got := browsertest.Eval[string](p, `document.getElementById("lines").innerText`); !contains(got, `span = "1550 mm"`) {
		t.Errorf("the lines to keep the values read %q", got)
	}
	if got := browsertest.Eval[string](p, `document.getElementById("effect").innerText`); !contains(got, "1500 mm → 1550 mm", "checks") {
		t.Errorf("the effect reads %q", got)
	}
	p.Shot("live-try")
	for _, w := range p.Axe() {
		t.Error(w)
	}
	enter("1550 kg")
	p.Until(`document.querySelector(".fault")`)
	browsertest.Eval[bool](p, `(document.getElementById("back").click(), true)`)
	p.Until(`!document.querySelector(".fault") && document.getElementById("summary").textContent.includes("1500 mm")`)

	p.Resize(390, 844)
	if over := browsertest.Eval[float64](p, "document.documentElement.scrollWidth - window.innerWidth"); over > 0 {
		t.Errorf("on a phone the page is %g px wider than the screen", over)
	}
	p.Shot("live-phone")
	p.Quiet()
}

// contains reports whether text holds every part.
func contains(text string, parts ...string) bool {
	for _, q := range parts {
		if !strings.Contains(text, q) {
			return false
		}
	}
	return true
}
