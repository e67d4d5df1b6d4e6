package whole

import (
	"bufio"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
	"path/filepath"
	"slices"
	"strings"

	"slingloft/export"
)

// Temporary names are these two around a number: nobody else's files are called so.
const (
	partHead = ".slingloft-"
	partTail = ".part"
)

// maxParts bounds the numbers of temporary names that are tried.
const maxParts = 100_000

// part is a file that is finished but for its name.
type part struct {
	path    string // where it goes
	name    string // where it stands meanwhile
	there   bool   // it takes the place of another file
	replace bool   // that, or whatever has come to its place since
	old     string // where what it replaced is kept until all are in place, "" for nothing
	placed  bool
}

// partIn makes a new file under a temporary name. Its mode is what the user's mask
// leaves of a plain file's.
func partIn(folder string) (*os.File, error) {
	for k := 1; ; k++ {
		f, err := os.OpenFile(partName(folder, k), os.O_RDWR|os.O_CREATE|os.O_EXCL, 0o666)
		if !errors.Is(err, fs.ErrExist) || k == maxParts {
			return f, err
		}
	}
}

func partName(folder string, k int) string {
	return filepath.Join(folder, fmt.Sprintf("%s%d%s", partHead, k, partTail))
}

// isPart reports whether a name is one of [partName].
func isPart(name string) bool {
	number, head := strings.CutPrefix(name, partHead)
	number, tail := strings.CutSuffix(number, partTail)
	return head && tail && number != "" && strings.Trim(number, "0123456789") == ""
}

// clearParts removes what runs that were killed left in a folder. Only who has the
// folder to itself may do so.
func clearParts(folder string) {
	entries, err := os.ReadDir(folder)
	if err != nil {
		return // who may not look writes all the same
	}
	for _, e := range entries {
		if isPart(e.Name()) && e.Type().IsRegular() {
			os.Remove(filepath.Join(folder, e.Name())) // one that stays does no harm
		}
	}
}

// staged writes a file under a temporary name and brings it to the disk. A file that it
// is to replace hands on its mode.
func staged(path string, p Policy, content func(w io.Writer) error) (out part, err error) {
	there, err := p.allows(path)
	if err != nil {
		return out, err
	}
	f, err := partIn(filepath.Dir(path))
	if err != nil {
		return out, export.Refuse(export.AtKey, path, cause(err))
	}
	out = part{path: path, name: f.Name(), there: there != nil, replace: p.Replace || there != nil}
	defer func() {
		if err != nil {
			f.Close()
			os.Remove(f.Name())
			err = export.Refuse(export.AtKey, path, cause(err))
		}
	}()
	buffered := bufio.NewWriterSize(f, 1<<16)
	if err := content(buffered); err != nil {
		return out, err
	}
	if err := buffered.Flush(); err != nil {
		return out, err
	}
	if err := keepMode(f, there); err != nil {
		return out, err
	}
	if err := f.Sync(); err != nil {
		return out, err
	}
	return out, f.Close()
}

// keepMode gives a file the mode of the one that it replaces, nil for none.
func keepMode(f *os.File, there fs.FileInfo) error {
	if there == nil || !there.Mode().IsRegular() {
		return nil
	}
	if now, err := f.Stat(); err != nil || now.Mode().Perm() == there.Mode().Perm() {
		return err
	}
	return f.Chmod(there.Mode().Perm())
}

// place gives finished files their names, one after the other, all or none: where one
// cannot be placed, those before it go and what they replaced comes back.
func place(parts []part) error {
	for i := range parts {
		if err := parts[i].place(); err != nil {
			err = export.Refuse(export.AtKey, parts[i].path, cause(err))
			for j := range slices.Backward(parts[:i]) {
				parts[j].takeBack()
			}
			drop(parts)
			return err
		}
	}
	drop(parts)
	return nil
}

// place gives the file its name. What it replaces keeps a second one meanwhile, on file
// systems that have such. Where nothing may be replaced it is linked, which fails if
// another file has come there since; file systems without links get a rename after
// one more look.
func (p *part) place() error {
	if !p.replace {
		err := os.Link(p.name, p.path)
		if err == nil {
			p.placed = true
			return nil
		}
		if errors.Is(err, fs.ErrExist) {
			return ErrExists
		}
		if _, err := os.Lstat(p.path); err == nil {
			return ErrExists
		}
	}
	p.keepOld()
	err := os.Rename(p.name, p.path)
	p.placed = err == nil
	return err
}

// keepOld gives what stands in the file's place a second name.
func (p *part) keepOld() {
	for k := 1; k <= maxParts; k++ {
		name := partName(filepath.Dir(p.path), k)
		err := os.Link(p.path, name)
		if err == nil {
			p.old = name
		}
		if !errors.Is(err, fs.ErrExist) {
			return
		}
	}
}

// takeBack puts back what the file replaced, as far as that has a name.
func (p *part) takeBack() {
	switch {
	case p.old != "":
		os.Rename(p.old, p.path)
	case !p.there:
		os.Remove(p.path)
	}
}

// drop removes the temporary names that are left.
func drop(parts []part) {
	for _, p := range parts {
		if !p.placed || !p.replace {
			os.Remove(p.name)
		}
		if p.old != "" {
			os.Remove(p.old)
		}
	}
}
