//go:build unix

package watch_test

import (
	"os"
	"path/filepath"
	"strings"
	"syscall"
	"testing"

	"slingloft/cmd/slingloft/watch"
)

// A pipe in the file's place is not waited for: the page goes on and says so, and a page
// is not begun from one.
func TestPipe(t *testing.T) {
	address, path := served(t, small(t, "1500 mm"))
	p := open(t, address)
	p.until(func(s seen) bool { return s.Laid })
	os.Remove(path)
	if err := syscall.Mkfifo(path, 0o644); err != nil {
		t.Fatal(err)
	}
	p.until(func(s seen) bool { return len(s.Faults) == 1 && strings.Contains(s.Faults[0].Text, "no plain file") })
	p.must("set", set("bed.span", "1510 mm"))
	if code, _ := p.ask("save", m{"digest": p.until(func(seen) bool { return true }).Digest}); code == 200 {
		t.Error("it was saved into a pipe")
	}
	other := filepath.Join(t.TempDir(), "pipe.toml")
	if err := syscall.Mkfifo(other, 0o644); err != nil {
		t.Fatal(err)
	}
	if err := watch.Serve(t.Context(), watch.Options{Path: other, Address: "127.0.0.1:0"}); err == nil || !strings.Contains(err.Error(), "no plain file") {
		t.Errorf("a page begins from a pipe: %v", err)
	}
}
