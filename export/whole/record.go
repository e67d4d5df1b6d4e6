package whole

import (
	"slingloft/export"

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

// recordHead opens a record. The lines after it hold notes, the older first, each
// behind the word "note" and a number of its own; and then the SHA-256 of a file, what
// it was written for, its note's number or "-", and its name.
const recordHead = "# Files that slingloft wrote here. Unchanged since, they may be replaced for the same design.\n"

// maxRecord bounds how much of a record is read, and maxNote how long a note may be,
// in bytes: five thousand pieces take a megabyte.
const (
	maxRecord = 32 << 20
	maxNote   = 4 << 20
)

// File is one file for [WriteAll].
type File struct {
	Name    string // within the folder
	Content []byte
}

// Mark is what a record keeps beside the files of a run.
type Mark struct {
	Tag  string // one word; files are replaced for the same one
	Note string // one line, how they came about; empty for none
}

// Known is a file that a record knows.
type Known struct {
	Name string
	Mark
	Run int    // by its note, the higher the later written; 0 without a note
	Sum string // SHA-256 of what was written, in hexadecimal digits
}

// entry is what a record says of one file.
type entry struct{ sum, tag, note, name string }

// is reports whether both are for the same content, whatever their notes.
func (e entry) is(o entry) bool { return e.sum == o.sum && e.tag == o.tag && e.name == o.name }

// note is one note with its number.
type note struct{ id, text string }

// record is all that a record says.
type record struct {
	notes []note // the older first
	files []entry
}

// WriteAll writes files into a folder, made if it is not there, all or none, and calls
// done for each with its path. A file that is there already is replaced
// only if it holds the same already, or if WriteAll wrote it for the same tag and
// nobody changed it since; replace lets any plain file be replaced. Where one may
// not be, none is written. A run that is killed while the files get their names, some
// thousandths of a second, leaves old ones beside new ones; the record knows both.
func WriteAll(folder string, m Mark, replace bool, files []File, done func(path string)) error {
	_, absent := os.Stat(folder)
	if err := os.MkdirAll(filepath.Clean(folder), 0o777); err != nil {
		return err
	}
	err := writeAll(folder, m, replace, files)
	if err != nil {
		if errors.Is(absent, fs.ErrNotExist) {
			os.Remove(folder) // if it is empty
		}
		return err
	}
	for _, f := range files {
		done(filepath.Join(folder, f.Name))
	}
	return nil
}

// writeAll is [WriteAll] for a folder that is there.
func writeAll(folder string, m Mark, replace bool, files []File) error {
	release, err := hold(folder)
	if err != nil {
		return err
	}
	defer release()
	parts, err := stagedAll(folder, m, replace, files)
	if err != nil {
		drop(parts)
		return err
	}
	defer syncFolder(folder)
	return place(parts)
}

// stagedAll brings all files to the disk, in the order in which they are to be placed,
// with the record around them. It returns those that are there even where it fails.
func stagedAll(folder string, m Mark, replace bool, files []File) ([]part, error) {
	old, n := readRecord(folder), m.note()
	sums := make([]entry, len(files))
	policies := make([]Policy, len(files))
	for i, f := range files {
		sums[i] = entry{sumOf(f.Content), m.Tag, n.id, f.Name}
		policies[i] = Policy{Replace: replace, Ours: writtenFor(append(slices.Clone(old.files), sums[i]), m.Tag, f.Name)}
		if _, err := policies[i].allows(filepath.Join(folder, f.Name)); err != nil {
			return nil, err
		}
	}
	notes := append(slices.DeleteFunc(slices.Clone(old.notes), func(o note) bool { return o.id == n.id }), n)
	// The record names old and new files until all are there, so that a run that is
	// cut short leaves nothing that the next would take for a stranger's.
	first, err := stageRecord(folder, record{notes, append(slices.Clone(old.files), sums...)})
	if errors.Is(err, fs.ErrPermission) {
		return nil, export.Refuse(export.FolderShut, folder, cause(err))
	} else if err != nil {
		return nil, err
	}
	parts := []part{first}
	for i, f := range files {
		next, err := staged(filepath.Join(folder, f.Name), policies[i], func(w io.Writer) error {
			_, err := w.Write(f.Content)
			return err
		})
		if err != nil {
			return parts, err
		}
		parts = append(parts, next)
	}
	last, err := stageRecord(folder, record{notes, append(without(old.files, files), sums...)})
	if err != nil {
		return parts, err
	}
	return append(parts, last), nil
}

// ReadRecord returns the files that a folder's record knows, sorted by name. Of what
// was written twice, by a run that was cut short, it is what the file holds.
func ReadRecord(folder string) []Known {
	r := readRecord(folder)
	var out []Known
	for i, e := range r.files {
		if i+1 < len(r.files) && r.files[i+1].name == e.name && !e.holds(folder) {
			continue // the next one is of the same file
		}
		if n := len(out); n > 0 && out[n-1].Name == e.name {
			continue
		}
		k := Known{Name: e.name, Mark: Mark{Tag: e.tag}, Sum: e.sum}
		if at := slices.IndexFunc(r.notes, func(n note) bool { return n.id == e.note }); at >= 0 {
			k.Note, k.Run = r.notes[at].text, at+1
		}
		out = append(out, k)
	}
	return out
}

// holds reports whether the file in a folder that an entry names holds what it says.
func (e entry) holds(folder string) bool {
	path := filepath.Join(folder, e.name)
	if info, err := os.Lstat(path); err != nil || !info.Mode().IsRegular() {
		return false
	}
	f, err := os.Open(path)
	if err != nil {
		return false
	}
	defer f.Close()
	return writtenFor([]entry{e}, e.tag, e.name)(f)
}

// noNote stands for the number of a note where there is none.
const noNote = "-"

// note returns the mark's note with its number; one that does not go on a line or is
// too long is left out.
func (m Mark) note() note {
	if m.Note == "" || len(m.Note) > maxNote || strings.ContainsAny(m.Note, "\r\n") {
		return note{id: noNote}
	}
	return note{sumOf([]byte(m.Tag + " " + m.Note))[:8], m.Note}
}

// writtenFor returns whether a file of the given name holds what an entry for tag says.
func writtenFor(entries []entry, tag, name string) func(io.Reader) bool {
	return func(r io.Reader) bool {
		h := sha256.New()
		if _, err := io.Copy(h, r); err != nil {
			return false
		}
		is := entry{sum: hex.EncodeToString(h.Sum(nil)), tag: tag, name: name}
		return slices.ContainsFunc(entries, is.is)
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

// readRecord returns a folder's record. What cannot be read or understood is left
// out: its files are then a stranger's and stay.
func readRecord(folder string) record {
	path := filepath.Join(folder, RecordName)
	if info, err := os.Lstat(path); err != nil || !info.Mode().IsRegular() {
		return record{} // a pipe would keep us waiting
	}
	f, err := os.Open(path)
	if err != nil {
		return record{}
	}
	defer f.Close()
	var out record
	lines := bufio.NewScanner(io.LimitReader(f, maxRecord))
	lines.Buffer(nil, maxRecord)
	for lines.Scan() {
		if part := strings.SplitN(lines.Text(), "  ", 3); len(part) == 3 && part[0] == "note" {
			out.notes = append(out.notes, note{part[1], part[2]})
			continue
		}
		if part := strings.SplitN(lines.Text(), "  ", 4); len(part) == 4 && len(part[0]) == 2*sha256.Size {
			out.files = append(out.files, entry{part[0], part[1], part[2], part[3]})
		}
	}
	return out
}

// stageRecord writes the notes that are still of a file, and the entries, each once,
// sorted by name, to stand as the folder's record.
func stageRecord(folder string, r record) (part, error) {
	path := filepath.Join(folder, RecordName)
	if info, err := os.Lstat(path); err == nil && !info.Mode().IsRegular() {
		return part{}, export.Refuse(export.NotPlain, path, ErrExists)
	} else if err != nil && !errors.Is(err, fs.ErrNotExist) {
		return part{}, export.Refuse(export.AtKey, path, cause(err))
	}
	slices.SortFunc(r.files, func(a, b entry) int {
		return strings.Compare(a.name+"\x00"+a.tag+a.sum+a.note, b.name+"\x00"+b.tag+b.sum+b.note)
	})
	var b bytes.Buffer
	b.WriteString(recordHead)
	for _, n := range r.notes {
		if n.id != noNote && slices.ContainsFunc(r.files, func(e entry) bool { return e.note == n.id }) {
			fmt.Fprintf(&b, "note  %s  %s\n", n.id, n.text)
		}
	}
	for _, e := range slices.Compact(r.files) {
		if strings.ContainsAny(e.name, "\r\n") {
			continue // not a line; such a file is not known again
		}
		fmt.Fprintf(&b, "%s  %s  %s  %s\n", e.sum, e.tag, e.note, e.name)
	}
	return staged(path, Policy{Replace: true}, func(w io.Writer) error {
		_, err := b.WriteTo(w)
		return err
	})
}
