package main

import (
	"io/fs"
	"path/filepath"
	"testing"
)

// No two packages of the module have one name, or a reader would have to look up which
// is meant. A package is named as its folder; commands are all called main.
func TestPackageNames(t *testing.T) {
	const root = "../.."
	at := map[string]string{} // folder by name
	for _, top := range []string{"cmd", "export", "nest", "outline"} {
		err := filepath.WalkDir(filepath.Join(root, top), func(path string, d fs.DirEntry, err error) error {
			if err != nil || !d.IsDir() || d.Name() == "testdata" {
				return err
			}
			sources, err := filepath.Glob(filepath.Join(path, "*.go"))
			if err != nil || len(sources) == 0 {
				return err
			}
			if other, taken := at[d.Name()]; taken {
				t.Errorf("two packages are named %s: %s and %s", d.Name(), other, path)
			}
			at[d.Name()] = path
			return nil
		})
		if err != nil {
			t.Error(err)
		}
	}
	if len(at) < 20 {
		t.Errorf("%d packages found", len(at))
	}
}
