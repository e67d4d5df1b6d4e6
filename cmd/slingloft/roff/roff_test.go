package roff

import (
	"os"
	"path/filepath"
	"strings"
	"testing"

	"slingloft/export/readertest"
)

// A page with everything that roff would take for its own comes out letter by letter.
func TestPage(t *testing.T) {
	p := New("a-b", "2026-11-28", `Program "one" 1.2`)
	p.Head("Name")
	p.Name("a-b", "does this")
	p.Head("Synopsis")
	p.Synopsis("a b", "FILE [options]")
	p.Head("Description")
	p.Text("First.\n.starts with a dot\n'and a quote\n\nC:\\new \\fB --x-y")
	p.Head("Options")
	p.Item("--out", "FOLDER", "where to")
	p.Item("--all", "", "everything")
	p.Verbatim("  a b \"c\" > d\n.nf\n")
	p.Head("See also")
	p.See("c-d", "e")
	file := filepath.Join(t.TempDir(), "a.1")
	if err := os.WriteFile(file, []byte(p.String()), 0o600); err != nil {
		t.Fatal(err)
	}
	if remarks := readertest.RunBoth(t, "mandoc", "-T", "lint", "-W", "warning", file); remarks != "" {
		t.Error(remarks)
	}
	printed := strings.Join(strings.Fields(readertest.Run(t, "mandoc", "-T", "ascii", "-O", "width=200", file)), " ")
	for strings.Contains(printed, "\b") { // letters that are struck twice
		i := strings.Index(printed, "\b")
		printed = printed[:i-1] + printed[i+1:]
	}
	for _, want := range []string{
		"A-B(1)", "NAME a-b - does this", "SYNOPSIS a b FILE [options]", "First. .starts with a dot 'and a quote C:\\new \\fB --x-y",
		"--out FOLDER where to", "--all everything", `a b "c" > d .nf`, "c-d(1), e(1)", "2026-11-28",
	} {
		if !strings.Contains(printed, want) {
			t.Errorf("no %q in %s", want, printed)
		}
	}
}
