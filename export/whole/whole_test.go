package whole

import (
	"bytes"
	"errors"
	"io"
	"os"
	"path/filepath"
	"testing"
)

func text(s string) func(io.Writer) error {
	return func(w io.Writer) error {
		_, err := io.WriteString(w, s)
		return err
	}
}

// names returns what stands in the folder.
func names(t *testing.T, folder string) []string {
	t.Helper()
	entries, err := os.ReadDir(folder)
	if err != nil {
		t.Fatal(err)
	}
	var out []string
	for _, e := range entries {
		out = append(out, e.Name())
	}
	return out
}

func contents(t *testing.T, path string) string {
	t.Helper()
	b, err := os.ReadFile(path)
	if err != nil {
		t.Fatal(err)
	}
	return string(b)
}

func TestExistingFiles(t *testing.T) {
	owned := func(r io.Reader) bool {
		b, err := io.ReadAll(r)
		return err == nil && bytes.HasPrefix(b, []byte("ours"))
	}
	rows := []struct {
		what, before string
		policy       Policy
		ok           bool
	}{
		{"nothing there", "", Policy{}, true},
		{"a file there", "theirs", Policy{}, false},
		{"a file there, by force", "theirs", Policy{Replace: true}, true},
		{"our file there", "ours 1", Policy{Ours: owned}, true},
		{"another's file there", "theirs", Policy{Ours: owned}, false},
	}
	for _, r := range rows {
		folder := t.TempDir()
		path := filepath.Join(folder, "a.svg")
		if r.before != "" {
			if err := os.WriteFile(path, []byte(r.before), 0o600); err != nil {
				t.Fatal(err)
			}
		}
		err := Write(path, r.policy, text("ours 2"))
		want := "ours 2"
		if !r.ok {
			want = r.before
			if !errors.Is(err, ErrExists) {
				t.Errorf("%s: error %v, want ErrExists", r.what, err)
			}
		} else if err != nil {
			t.Errorf("%s: %v", r.what, err)
		}
		if got := contents(t, path); got != want {
			t.Errorf("%s: file holds %q, want %q", r.what, got, want)
		}
		if n := names(t, folder); len(n) != 1 {
			t.Errorf("%s: folder holds %v", r.what, n)
		}
	}
}

func TestFailureLeavesNothing(t *testing.T) {
	boom := errors.New("boom")
	folder := t.TempDir()
	path := filepath.Join(folder, "a.svg")
	err := Write(path, Policy{}, func(w io.Writer) error {
		if _, err := w.Write(make([]byte, 1<<20)); err != nil {
			return err
		}
		return boom
	})
	if !errors.Is(err, boom) || len(names(t, folder)) != 0 {
		t.Errorf("error %v, folder holds %v", err, names(t, folder))
	}
	if err := os.WriteFile(path, []byte("before"), 0o644); err != nil {
		t.Fatal(err)
	}
	if err := Write(path, Policy{Replace: true}, func(io.Writer) error { return boom }); !errors.Is(err, boom) {
		t.Errorf("error %v, want boom", err)
	}
	if got := contents(t, path); got != "before" || len(names(t, folder)) != 1 {
		t.Errorf("file holds %q, folder %v", got, names(t, folder))
	}
}

// A file that turns up while ours is being written is not overwritten.
func TestFileThatComesMeanwhile(t *testing.T) {
	path := filepath.Join(t.TempDir(), "a.svg")
	err := Write(path, Policy{}, func(w io.Writer) error {
		return os.WriteFile(path, []byte("theirs"), 0o644)
	})
	if !errors.Is(err, ErrExists) || contents(t, path) != "theirs" {
		t.Errorf("error %v, file holds %q", err, contents(t, path))
	}
}

// A new file's mode is what the user's mask leaves, that of one that is replaced stays.
func TestModes(t *testing.T) {
	folder := t.TempDir()
	plain := filepath.Join(folder, "plain")
	put(folder, "plain", "")
	f, err := os.Create(filepath.Join(folder, "as-others"))
	if err != nil {
		t.Fatal(err)
	}
	masked, err := f.Stat()
	if err != nil {
		t.Fatal(err)
	}
	f.Close()
	for _, mode := range []os.FileMode{0o600, 0o664, 0o444, 0o640} {
		if err := os.Chmod(plain, mode); err != nil {
			t.Fatal(err)
		}
		set, err := os.Stat(plain)
		if err != nil {
			t.Fatal(err)
		}
		if err := Write(plain, Policy{Replace: true}, text("new")); err != nil {
			t.Fatal(err)
		}
		if now, err := os.Stat(plain); err != nil || now.Mode() != set.Mode() {
			t.Errorf("mode of the replaced file %v, want %v", now.Mode(), set.Mode())
		}
	}
	if err := Write(filepath.Join(folder, "new"), Policy{}, text("new")); err != nil {
		t.Fatal(err)
	}
	if now, err := os.Stat(filepath.Join(folder, "new")); err != nil || now.Mode() != masked.Mode() {
		t.Errorf("mode of a new file %v, want %v", now.Mode(), masked.Mode())
	}
}

func TestPlacesThatCannotBe(t *testing.T) {
	folder := t.TempDir()
	if err := Write(folder, Policy{Replace: true}, text("x")); err == nil {
		t.Error("a folder was replaced")
	}
	if err := Write(filepath.Join(folder, "no", "a.svg"), Policy{}, text("x")); err == nil {
		t.Error("wrote into a folder that is not there")
	}
	target := filepath.Join(folder, "target")
	link := filepath.Join(folder, "link.svg")
	if err := os.WriteFile(target, []byte("kept"), 0o644); err != nil {
		t.Fatal(err)
	}
	if err := os.Symlink(target, link); err != nil {
		t.Skip("no symbolic links here")
	}
	if err := Write(link, Policy{}, text("x")); !errors.Is(err, ErrExists) {
		t.Errorf("link replaced without being asked: %v", err)
	}
	if err := Write(link, Policy{Replace: true}, text("new")); err != nil {
		t.Error(err)
	}
	if contents(t, target) != "kept" || contents(t, link) != "new" {
		t.Errorf("target %q, link %q", contents(t, target), contents(t, link))
	}
}
