package whole_test

import (
	"errors"
	"io/fs"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"slingloft/export"
	"slingloft/export/whole"
)

// What is read is the file, or as much of it as is asked for; no error names it.
func TestReadAtMost(t *testing.T) {
	folder := t.TempDir()
	path := filepath.Join(folder, "a")
	if err := os.WriteFile(path, []byte("abcdef"), 0o600); err != nil {
		t.Fatal(err)
	}
	for limit, want := range map[int64]string{3: "abc", 6: "abcdef", 100: "abcdef"} {
		if got, err := whole.ReadAtMost(path, limit); err != nil || string(got) != want {
			t.Errorf("%d bytes: %q, %v, want %q", limit, got, err, want)
		}
	}
	if _, err := whole.ReadAtMost(folder, 3); !errors.Is(err, export.Breaks(export.Unread)) {
		t.Errorf("a folder: %v", err)
	}
	if _, err := whole.ReadAtMost(path+"b", 3); !errors.Is(err, fs.ErrNotExist) || strings.Contains(err.Error(), path) {
		t.Errorf("no file: %v", err)
	}
}
