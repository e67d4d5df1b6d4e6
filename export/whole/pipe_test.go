//go:build unix

package whole_test

import (
	"errors"
	"os"
	"path/filepath"
	"syscall"
	"testing"

	"slingloft/export"
	"slingloft/export/whole"
)

// A pipe by name that nobody writes into is not waited for, one with a writer is
// read.
func TestReadPipe(t *testing.T) {
	path := filepath.Join(t.TempDir(), "pipe")
	if err := syscall.Mkfifo(path, 0o600); err != nil {
		t.Skip(err)
	}
	if _, err := whole.ReadAtMost(path, 100); !errors.Is(err, export.Breaks(export.PipeEmpty)) {
		t.Errorf("nobody writes: %v", err)
	}
	both, err := os.OpenFile(path, os.O_RDWR, 0)
	if err != nil {
		t.Fatal(err)
	}
	defer both.Close()
	const text = "a design"
	if _, err := both.WriteString(text); err != nil {
		t.Fatal(err)
	}
	if got, err := whole.ReadAtMost(path, int64(len(text))); err != nil || string(got) != text {
		t.Errorf("somebody writes: %q, %v", got, err)
	}
}
