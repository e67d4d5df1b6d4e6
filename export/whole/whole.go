// Package whole writes files whole or not at all. A file is first written under
// a temporary name in the folder where it is to stand, brought to the disk, and
// then given its name in one step; whatever goes wrong before leaves the folder
// as it was. Of a set of files all are brought to the disk before the first gets its
// name. One run at a time writes into a folder; the next clears away what one that was
// killed left.
package whole

import (
	"slingloft/export"

	"bufio"
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
}

// Write makes the file at path from what content writes. The folder must exist; a run
// that writes into it is waited for, some seconds.
// Neither a folder nor a device is ever replaced; a link is replaced by the
// file, not followed. A new file has the mode that the user's mask leaves of 0666, one
// that takes the place of another has that one's.
func Write(path string, p Policy, content func(w io.Writer) error) error {
	folder := filepath.Dir(path)
	release, err := hold(folder)
	if err != nil {
		return err
	}
	defer release()
	f, err := staged(path, p, content)
	if err != nil {
		return err
	}
	defer syncFolder(folder)
	return place([]part{f})
}

// allows reports whether the policy lets path be written, and returns what is there
// already, nil for nothing.
func (p Policy) allows(path string) (there fs.FileInfo, err error) {
	info, err := os.Lstat(path)
	if errors.Is(err, fs.ErrNotExist) {
		return nil, nil
	}
	if err != nil {
		return nil, export.Refuse(export.AtKey, path, cause(err))
	}
	link := info.Mode()&fs.ModeSymlink != 0
	if !info.Mode().IsRegular() && !link {
		return nil, export.Refuse(export.NotPlain, path, ErrExists)
	}
	if p.Replace {
		return info, nil
	}
	if p.Ours == nil || link {
		return nil, export.Refuse(export.AtKey, path, ErrExists)
	}
	f, err := os.Open(path)
	if err != nil {
		return nil, export.Refuse(export.AtKey, path, cause(err))
	}
	defer f.Close()
	if !p.Ours(bufio.NewReader(f)) {
		return nil, export.Refuse(export.NotOfDesign, path, ErrExists)
	}
	return info, nil
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
