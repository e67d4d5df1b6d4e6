package whole

import (
	"errors"
	"os"
	"path/filepath"
	"strings"
	"testing"
)

// all writes two files for a design and returns the error.
func all(folder, design, text string, force bool) error {
	return WriteAll(folder, design, force, []File{{"a.svg", []byte(text)}, {"b.png", []byte("b" + text)}}, func(string) {})
}

func TestWriteAll(t *testing.T) {
	rows := []struct {
		what   string
		before func(folder string)
		design string
		force  bool
		ok     bool
	}{
		{"empty folder", func(string) {}, "1", false, true},
		{"same design", func(f string) { all(f, "1", "old", false) }, "1", false, true},
		{"same design, twice", func(f string) { all(f, "1", "older", false); all(f, "1", "old", false) }, "1", false, true},
		{"another design", func(f string) { all(f, "2", "old", false) }, "1", false, false},
		{"another design, by force", func(f string) { all(f, "2", "old", false) }, "1", true, true},
		{"changed by hand", func(f string) { all(f, "1", "old", false); put(f, "b.png", "mine") }, "1", false, false},
		{"put back as it would be written", func(f string) { put(f, "b.png", "bnew") }, "1", false, true},
		{"a stranger's", func(f string) { put(f, "b.png", "theirs") }, "1", false, false},
		{"a stranger's, by force", func(f string) { put(f, "b.png", "theirs") }, "1", true, true},
		{"record lost", func(f string) { all(f, "1", "old", false); os.Remove(filepath.Join(f, RecordName)) }, "1", false, false},
		{"record broken", func(f string) { put(f, RecordName, "  \n  a  b\n\xff"); put(f, "a.svg", "theirs") }, "1", false, false},
		{"record is a folder", func(f string) { os.Mkdir(filepath.Join(f, RecordName), 0o755) }, "1", true, false},
		{"older version after a newer", func(f string) { all(f, "2", "x", false); all(f, "1", "y", true) }, "2", false, false},
	}
	for _, r := range rows {
		folder := t.TempDir()
		r.before(folder)
		was := snapshot(t, folder)
		err := all(folder, r.design, "new", r.force)
		if !r.ok {
			if !errors.Is(err, ErrExists) {
				t.Errorf("%s: error %v, want ErrExists", r.what, err)
			}
			if now := snapshot(t, folder); now != was {
				t.Errorf("%s: folder changed from %s to %s", r.what, was, now)
			}
			continue
		}
		if err != nil {
			t.Errorf("%s: %v", r.what, err)
			continue
		}
		if a, b := contents(t, filepath.Join(folder, "a.svg")), contents(t, filepath.Join(folder, "b.png")); a != "new" || b != "bnew" {
			t.Errorf("%s: files hold %q and %q", r.what, a, b)
		}
		if n := strings.Count(contents(t, filepath.Join(folder, RecordName)), "\n"); n != 3 {
			t.Errorf("%s: record has %d lines, want 3", r.what, n)
		}
	}
}

// A run that stops between two files is taken up by the next.
func TestWriteAllCutShort(t *testing.T) {
	folder := t.TempDir()
	if err := all(folder, "1", "old", false); err != nil {
		t.Fatal(err)
	}
	func() {
		defer func() { recover() }()
		WriteAll(folder, "1", false, []File{{"a.svg", []byte("half")}, {"b.png", []byte("half")}}, func(string) { panic("stopped") })
	}()
	if got := contents(t, filepath.Join(folder, "a.svg")) + contents(t, filepath.Join(folder, "b.png")); got != "halfbold" {
		t.Fatalf("files hold %q", got)
	}
	if err := all(folder, "1", "new", false); err != nil {
		t.Error(err)
	}
}

func put(folder, name, text string) {
	if err := os.WriteFile(filepath.Join(folder, name), []byte(text), 0o644); err != nil {
		panic(err)
	}
}

// snapshot returns names and contents of a folder.
func snapshot(t *testing.T, folder string) string {
	t.Helper()
	var b strings.Builder
	for _, n := range names(t, folder) {
		data, _ := os.ReadFile(filepath.Join(folder, n))
		b.WriteString(n + "=" + string(data) + ";")
	}
	return b.String()
}
