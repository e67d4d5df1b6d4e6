package main

import (
	"archive/zip"
	"bytes"
	"context"
	"encoding/base64"
	"fmt"
	"io"
	"os"
	"path/filepath"
	"testing"
	"time"

	"slingloft/cmd/slingloft/browsertest"
	"slingloft/cmd/slingloft/command"
)

// TestPageAlone opens the page that carries the program from disk, makes a change and
// has files made, which are the command's to the byte. With -long the page is built;
// SLINGLOFT_PAGE names one that is there.
func TestPageAlone(t *testing.T) {
	at := os.Getenv("SLINGLOFT_PAGE")
	if at == "" && !*long {
		t.Skip("no -long and no SLINGLOFT_PAGE")
	}
	if at == "" {
		root, err := moduleRoot()
		if err != nil {
			t.Fatal(err)
		}
		data, err := onePage(root)
		if err != nil {
			t.Fatal(err)
		}
		at = filepath.Join(t.TempDir(), pageName)
		if err := os.WriteFile(at, data, 0o600); err != nil {
			t.Fatal(err)
		}
		t.Logf("%.1f MB", float64(len(data))/1e6)
	}
	p := browsertest.New(t)
	p.Resize(1280, 900)
	began := time.Now()
	p.Open("file://" + at)
	t.Logf("loaded after %v", time.Since(began).Round(10*time.Millisecond))
	p.Until(`document.body.dataset.number`)
	t.Logf("the program runs after %v", time.Since(began).Round(10*time.Millisecond))
	p.Until(`document.body.dataset.drawn`)
	t.Logf("drawn after %v", time.Since(began).Round(10*time.Millisecond))
	p.Until(`document.body.dataset.laid === "true"`)
	t.Logf("laid after %v", time.Since(began).Round(10*time.Millisecond))
	p.Shot("alone")

	// What leaves the page is caught where it is handed to the browser.
	browsertest.Eval[bool](p, `(() => { window.caught = []; delete window.showSaveFilePicker;
		HTMLAnchorElement.prototype.click = function () { window.caught.push(this.download); };
		const make = URL.createObjectURL; URL.createObjectURL = (b) => { b.arrayBuffer().then((a) => { window.bytes = btoa(Array.from(new Uint8Array(a), (c) => String.fromCharCode(c)).join("")); }); return make(b); };
		return true; })()`)
	enter(p, "bed.span", "1560 mm")
	p.Until(`document.querySelector("#sheet #summary").textContent.includes("1560 mm")`)
	p.Until(`document.body.dataset.laid === "true"`)
	click(p, "#save")
	p.Until(`document.querySelector("#name-box").open`)
	click(p, "#name-save")
	p.Until(`window.caught.length === 1 && window.bytes`)
	design := taken(t, p)
	if name := browsertest.Eval[string](p, `window.caught[0]`); name != "my-bed.toml" || !bytes.Contains(design, []byte("1560 mm")) {
		t.Fatalf("%s holds %.200s", name, design)
	}
	p.Until(`document.body.dataset.unsaved === "false"`)

	click(p, "#files")
	click(p, "#files-make")
	p.Until(`window.caught.length === 2 && window.bytes`)
	same(t, taken(t, p), design)
	p.Quiet()
}

// taken returns the bytes that were caught, and waits for others.
func taken(t *testing.T, p *browsertest.Page) []byte {
	t.Helper()
	data, err := base64.StdEncoding.DecodeString(browsertest.Eval[string](p, `(() => { const b = window.bytes; window.bytes = ""; return b; })()`))
	if err != nil {
		t.Fatal(err)
	}
	return data
}

// same requires that a zip holds what the command makes of a design.
func same(t *testing.T, data, design []byte) {
	t.Helper()
	z, err := zip.NewReader(bytes.NewReader(data), int64(len(data)))
	if err != nil {
		t.Fatal(err)
	}
	folder := t.TempDir()
	file, out := filepath.Join(folder, "my-bed.toml"), filepath.Join(folder, "my-bed-files")
	if err := os.WriteFile(file, design, 0o600); err != nil {
		t.Fatal(err)
	}
	if code := command.Run(context.Background(), []string{"cut", file, "--out", out}, command.Streams{Out: io.Discard, Err: io.Discard}); code != command.Done {
		t.Fatalf("cut ends with %d", code)
	}
	entries, err := os.ReadDir(out)
	if err != nil || len(entries) != len(z.File) {
		t.Fatalf("%d files, want %d, error %v", len(z.File), len(entries), err)
	}
	for i, e := range entries {
		want, err := os.ReadFile(filepath.Join(out, e.Name()))
		if err != nil {
			t.Fatal(err)
		}
		r, err := z.File[i].Open()
		if err != nil {
			t.Fatal(err)
		}
		got, err := io.ReadAll(r)
		if err != nil || z.File[i].Name != e.Name() || !bytes.Equal(got, want) {
			t.Errorf("%s is not the command's %s (%v)", z.File[i].Name, e.Name(), err)
		}
	}
}

// enter types into a field and leaves it.
func enter(p *browsertest.Page, field, value string) {
	browsertest.Eval[bool](p, fmt.Sprintf(`(() => { const i = document.querySelector('[name=%q]');
		i.focus(); i.value = %q; i.dispatchEvent(new Event("input", {bubbles: true})); i.dispatchEvent(new Event("change", {bubbles: true})); i.blur(); return true })()`, field, value))
}

func click(p *browsertest.Page, selector string) {
	browsertest.Eval[bool](p, fmt.Sprintf(`(document.querySelector(%q).click(), true)`, selector))
}
