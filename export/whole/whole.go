// Package whole writes files whole or not at all. A file is first written under
// a temporary name in the folder where it is to stand, brought to the disk, and
// then given its name in one step; whatever goes wrong before leaves the folder
// as it was.
package whole

import (
	"slingloft/export"

	"bufio"
	"cmp"
	"errors"
	"io"
	"io/fs"
	"os"
	"path/filepath"
)

// ErrExists is in the chain of errors when a file is there already and may not be
// replaced.
var ErrExists = export.Refuse(export.FileExists)

// Policy says what to do where a file is there already.
type Policy struct {
	// Replace allows any file to be replaced.
	Replace bool
	// Ours, if set, reports whether the existing file is one that may be
	// replaced because this program wrote it. It is given the file's contents.
	Ours func(r io.Reader) bool
	// Mode is the new file's; 0: 0644.
	Mode fs.FileMode
}

// Write makes the file at path from what content writes. The folder must exist.
// Neither a folder nor a device is ever replaced; a link is replaced by the
// file, not followed.
func Write(path string, p Policy, content func(w io.Writer) error) (err error) {
	if err := p.allows(path); err != nil {
		return err
	}
	folder, name := filepath.Split(path)
	if folder == "" {
		folder = "."
	}
	f, err := os.CreateTemp(folder, "."+name+".*.part")
	if err != nil {
		return export.Refuse(export.AtKey, path, cause(err))
	}
	defer func() {
		if err != nil {
			f.Close()
			os.Remove(f.Name())
			err = export.Refuse(export.AtKey, path, cause(err))
		}
	}()
	buffered := bufio.NewWriterSize(f, 1<<16)
	if err := content(buffered); err != nil {
		return err
	}
	if err := buffered.Flush(); err != nil {
		return err
	}
	if err := f.Chmod(cmp.Or(p.Mode, 0o644)); err != nil {
		return err
	}
	if err := f.Sync(); err != nil {
		return err
	}
	if err := f.Close(); err != nil {
		return err
	}
	if err := place(f.Name(), path, p); err != nil {
		return err
	}
	syncFolder(folder)
	return nil
}

// place gives the finished file its name. Where nothing may be replaced it is
// linked, which fails if another file has come there meanwhile; file systems
// without links get a rename after one more look.
func place(part, path string, p Policy) error {
	if !p.Replace && p.Ours == nil {
		err := os.Link(part, path)
		if err == nil {
			return os.Remove(part)
		}
		if errors.Is(err, fs.ErrExist) {
			return ErrExists
		}
		if _, err := os.Lstat(path); err == nil {
			return ErrExists
		}
	}
	return os.Rename(part, path)
}

// allows reports whether the policy lets path be written.
func (p Policy) allows(path string) error {
	info, err := os.Lstat(path)
	if errors.Is(err, fs.ErrNotExist) {
		return nil
	}
	if err != nil {
		return export.Refuse(export.AtKey, path, cause(err))
	}
	link := info.Mode()&fs.ModeSymlink != 0
	if !info.Mode().IsRegular() && !link {
		return export.Refuse(export.NotPlain, path, ErrExists)
	}
	if p.Replace {
		return nil
	}
	if p.Ours == nil || link {
		return export.Refuse(export.AtKey, path, ErrExists)
	}
	f, err := os.Open(path)
	if err != nil {
		return export.Refuse(export.AtKey, path, cause(err))
	}
	defer f.Close()
	if !p.Ours(bufio.NewReader(f)) {
		return export.Refuse(export.NotOfDesign, path, ErrExists)
	}
	return nil
}

// cause strips the operation and the temporary name off an error of the system,
// which say nothing to the user.
func cause(err error) error {
	var p *fs.PathError
	if errors.As(err, &p) {
		return p.Err
	}
	var l *os.LinkError
	if errors.As(err, &l) {
		return l.Err
	}
	return err
}

// syncFolder brings the folder's entry to the disk. Systems that cannot do it say
// so by an error, which says nothing about the file.
func syncFolder(folder string) {
	if d, err := os.Open(folder); err == nil {
		d.Sync()
		d.Close()
	}
}
