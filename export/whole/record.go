package whole

import (
	"bufio"
	"bytes"
	"crypto/sha256"
	"encoding/hex"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
	"path/filepath"
	"slices"
	"strings"
)

// RecordName is the file beside the files of [WriteAll] that says which of a
// folder's files were written by it. Not every format has a place for such a mark,
// and a mark would stay in a file that was changed by hand since.
const RecordName = ".slingloft"

// recordHead opens a record. The lines after it hold the SHA-256 of a file, what it
// was written for and its name.
const recordHead = "# Files that slingloft wrote here. Unchanged since, they may be replaced for the same design.\n"

// maxRecord bounds how much of a record is read, bytes; twenty thousand files.
const maxRecord = 2 << 20

// File is one file for [WriteAll].
type File struct {
	Name    string // within the folder
	Content []byte
}

// entry is what a record says of one file.
type entry struct{ sum, tag, name string }

// WriteAll writes files into a folder, which must exist, each whole or not at all,
// and calls done after each with its path. A file that is there already is replaced
// only if it holds the same already, or if WriteAll wrote it for the same tag, a word,
// and nobody changed it since; replace lets any plain file be replaced. Where one may
// not be, none is written.
func WriteAll(folder, tag string, replace bool, files []File, done func(path string)) error {
	old := readRecord(folder)
	sums := make([]entry, len(files))
	policies := make([]Policy, len(files))
	for i, f := range files {
		sums[i] = entry{sumOf(f.Content), tag, f.Name}
		policies[i] = Policy{Replace: replace, Ours: ours(append(slices.Clone(old), sums[i]), tag, f.Name)}
		if err := policies[i].allows(filepath.Join(folder, f.Name)); err != nil {
			return err
		}
	}
	// The record names old and new files until all are there, so that a run that is
	// cut short leaves nothing that the next would take for a stranger's.
	if err := writeRecord(folder, append(slices.Clone(old), sums...)); err != nil {
		return err
	}
	for i, f := range files {
		path := filepath.Join(folder, f.Name)
		if err := Write(path, policies[i], func(w io.Writer) error {
			_, err := w.Write(f.Content)
			return err
		}); err != nil {
			return err
		}
		done(path)
	}
	return writeRecord(folder, append(without(old, files), sums...))
}

// ours returns whether a file of the given name holds what an entry for tag says.
func ours(entries []entry, tag, name string) func(io.Reader) bool {
	return func(r io.Reader) bool {
		h := sha256.New()
		if _, err := io.Copy(h, r); err != nil {
			return false
		}
		return slices.Contains(entries, entry{hex.EncodeToString(h.Sum(nil)), tag, name})
	}
}

func sumOf(content []byte) string {
	sum := sha256.Sum256(content)
	return hex.EncodeToString(sum[:])
}

// without returns the entries that are not of the files.
func without(entries []entry, files []File) []entry {
	return slices.DeleteFunc(slices.Clone(entries), func(e entry) bool {
		return slices.ContainsFunc(files, func(f File) bool { return f.Name == e.name })
	})
}

// readRecord returns the entries of a folder's record. What cannot be read or
// understood is left out: its files are then a stranger's and stay.
func readRecord(folder string) []entry {
	path := filepath.Join(folder, RecordName)
	if info, err := os.Lstat(path); err != nil || !info.Mode().IsRegular() {
		return nil // a pipe would keep us waiting
	}
	f, err := os.Open(path)
	if err != nil {
		return nil
	}
	defer f.Close()
	var out []entry
	lines := bufio.NewScanner(io.LimitReader(f, maxRecord))
	for lines.Scan() {
		part := strings.SplitN(lines.Text(), "  ", 3)
		if len(part) == 3 && len(part[0]) == 2*sha256.Size {
			out = append(out, entry{part[0], part[1], part[2]})
		}
	}
	return out
}

// writeRecord writes the entries, each once, sorted by name.
func writeRecord(folder string, entries []entry) error {
	path := filepath.Join(folder, RecordName)
	if info, err := os.Lstat(path); err == nil && !info.Mode().IsRegular() {
		return fmt.Errorf("%s: not a plain file, left alone: %w", path, ErrExists)
	} else if err != nil && !errors.Is(err, fs.ErrNotExist) {
		return fmt.Errorf("%s: %w", path, cause(err))
	}
	slices.SortFunc(entries, func(a, b entry) int {
		return strings.Compare(a.name+"\x00"+a.tag+a.sum, b.name+"\x00"+b.tag+b.sum)
	})
	var b bytes.Buffer
	b.WriteString(recordHead)
	for _, e := range slices.Compact(entries) {
		if strings.ContainsAny(e.name, "\r\n") {
			continue // not a line; such a file is not known again
		}
		fmt.Fprintf(&b, "%s  %s  %s\n", e.sum, e.tag, e.name)
	}
	return Write(path, Policy{Replace: true}, func(w io.Writer) error {
		_, err := b.WriteTo(w)
		return err
	})
}
