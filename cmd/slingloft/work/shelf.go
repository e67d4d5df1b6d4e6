package work

import (
	"errors"
	"io/fs"
	"path/filepath"

	"slingloft/export"
	"slingloft/export/whole"
	"slingloft/outline/design"
)

// ShelfFile returns the file that a design takes things from: the one of the run, else
// the one that it names, else the one beside it. "": it takes nothing.
func (s Setting) ShelfFile(name string, data []byte) string {
	named, takes := design.ShelfOf(data)
	switch {
	case s.Shelf != "":
		return s.Shelf
	case filepath.IsAbs(named):
		return named
	case named != "":
		return filepath.Join(filepath.Dir(name), named)
	case takes:
		return filepath.Join(filepath.Dir(name), design.ShelfFile)
	}
	return ""
}

// OpenShelf returns what a design takes things from under a setting; nil where there is
// nothing.
func OpenShelf(s Setting, name string, data []byte) (*design.Shelf, error) {
	return s.shelf(name, data)
}

// shelf reads that file; nil where there is none beside the design.
func (s Setting) shelf(name string, data []byte) (*design.Shelf, error) {
	file := s.ShelfFile(name, data)
	if file == "" {
		return nil, nil
	}
	text, err := whole.ReadAtMost(file, design.MaxSize+1) // one byte more says that it is too long
	if err == nil {
		return design.ReadShelf(file, text)
	}
	named, _ := design.ShelfOf(data)
	switch {
	case s.Shelf != "":
		return nil, export.Refuse(export.AtKey, file, err)
	case named != "":
		_, source, _ := design.Read(name, data)
		return nil, design.Faults{source.Fault(design.KeyShelf, design.Found(design.OfFile, named, err.Error()), design.Say(design.NameShelf))}
	case errors.Is(err, fs.ErrNotExist):
		return nil, nil // the entries that are named say that there is none
	}
	return nil, export.Refuse(export.AtKey, file, err)
}
