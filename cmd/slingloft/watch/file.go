package watch

import (
	"bytes"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
	"path/filepath"
	"strings"
	"sync"

	"slingloft/cmd/slingloft/desk"
	"slingloft/export/whole"
	"slingloft/outline/design"
)

// file is the design's file on the disk.
type file struct {
	mu   sync.Mutex
	path string // "": there is none
}

// Name implements [desk.Store].
func (f *file) Name() string {
	f.mu.Lock()
	defer f.mu.Unlock()
	return f.path
}

// read returns the file's contents, one byte more than a design may have at most; nil
// where it is not there. Pipes, folders and devices are not waited for.
func (f *file) read() ([]byte, error) {
	info, err := os.Stat(f.Name())
	switch {
	case errors.Is(err, fs.ErrNotExist):
		return nil, nil
	case err != nil:
		return nil, err
	case !info.Mode().IsRegular():
		return nil, fmt.Errorf(English().File, f.Name(), NoPlainFile)
	}
	r, err := os.Open(f.Name())
	if err != nil {
		return nil, err
	}
	defer r.Close()
	data, err := io.ReadAll(io.LimitReader(r, design.MaxSize+1))
	if data == nil {
		data = []byte{}
	}
	return data, err
}

// Save implements [desk.Store]. Links stay, and so does the file's mode.
func (f *file) Save(data []byte, digest string) error {
	path := f.Name()
	if real, err := filepath.EvalSymlinks(path); err == nil {
		path = real
	}
	p := whole.Policy{Ours: func(r io.Reader) bool {
		now, err := io.ReadAll(io.LimitReader(r, design.MaxSize+1))
		return err == nil && digest != "" && desk.Digest(now) == digest
	}}
	if _, err := os.Stat(path); errors.Is(err, fs.ErrNotExist) || digest == "" {
		p.Ours = nil // it was removed, and is put back where nothing stands
	}
	err := whole.Write(path, p, func(w io.Writer) error {
		_, err := io.Copy(w, bytes.NewReader(data))
		return err
	})
	if errors.Is(err, whole.ErrExists) {
		return desk.ErrChanged
	}
	return err
}

// Create implements [desk.Store].
func (f *file) Create(name string, data []byte) error {
	name, err := cleaned(strings.TrimSuffix(strings.TrimSpace(name), ".toml"), ".toml")
	if err != nil {
		return err
	}
	err = whole.Write(name, whole.Policy{}, func(w io.Writer) error {
		_, err := w.Write(data)
		return err
	})
	if err != nil {
		return err
	}
	f.mu.Lock()
	defer f.mu.Unlock()
	f.path = name
	return nil
}

// cleaned returns a flat name for a file: letters, digits, - and _ of ASCII, and an ending.
func cleaned(name, ending string) (string, error) {
	const longest = 60
	name = strings.Map(func(c rune) rune {
		switch {
		case c >= 'a' && c <= 'z', c >= 'A' && c <= 'Z', c >= '0' && c <= '9', c == '-', c == '_':
			return c
		}
		return '-'
	}, name)
	name = strings.Trim(name, "-_")
	if name == "" {
		return "", NoName
	}
	return name[:min(len(name), longest)] + ending, nil
}
