package main

import (
	"go/parser"
	"go/token"
	"io/fs"
	"path/filepath"
	"strconv"
	"strings"
	"testing"
)

// module is the import path of the whole program.
const module = "slingloft"

// The import rule: cmd may import all; export and nest import outline and what is
// below themselves, never each other; outline imports only what is below itself,
// and nothing below outline imports outline.
//
//	cmd ──> export ──┐
//	 │ └──> nest ────┴──> outline ──> outline/...
//	 └──────────────────────^
func TestImportRule(t *testing.T) {
	const root = "../.."
	found := map[string]bool{}
	for _, top := range []string{"cmd", "export", "nest", "outline"} {
		err := filepath.WalkDir(filepath.Join(root, top), func(path string, d fs.DirEntry, err error) error {
			if err != nil || d.IsDir() || filepath.Ext(path) != ".go" || strings.HasSuffix(path, "_test.go") {
				return err
			}
			rel, err := filepath.Rel(root, filepath.Dir(path))
			if err != nil {
				return err
			}
			from := filepath.ToSlash(rel)
			found[top] = true
			imports, err := importsOf(path)
			for _, to := range imports {
				if !allowed(from, to) {
					t.Errorf("%s: a package in %s may not import %s", path, from, to)
				}
			}
			return err
		})
		if err != nil {
			t.Error(err)
		}
		if !found[top] {
			t.Errorf("no Go file below %s", top)
		}
	}
}

// importsOf returns the packages of this module that a file imports, as folders.
func importsOf(path string) ([]string, error) {
	f, err := parser.ParseFile(token.NewFileSet(), path, nil, parser.ImportsOnly)
	if err != nil {
		return nil, err
	}
	var out []string
	for _, i := range f.Imports {
		name, err := strconv.Unquote(i.Path.Value)
		if err != nil {
			return nil, err
		}
		if folder, ours := strings.CutPrefix(name, module+"/"); ours {
			out = append(out, folder)
		}
	}
	return out, nil
}

// allowed reports whether a package in the folder from may import the one in to.
func allowed(from, to string) bool {
	below := func(folder string) bool { return to == folder || strings.HasPrefix(to, folder+"/") }
	switch top, _, _ := strings.Cut(from, "/"); top {
	case "cmd":
		return true
	case "export", "nest":
		return below(top) || below("outline")
	}
	return below("outline") && to != "outline"
}

func TestAllowed(t *testing.T) {
	for _, row := range []struct {
		from, to string
		want     bool
	}{
		{"cmd/slingloft", "nest", true},
		{"cmd/slingloft/work", "export/svg", true},
		{"export/svg", "export", true},
		{"export", "outline", true},
		{"export/svg", "outline/geom", true},
		{"export/svg", "nest", false},
		{"export", "cmd/slingloft/work", false},
		{"nest", "outline/geom", true},
		{"nest", "export", false},
		{"outline", "outline/hung", true},
		{"outline/hung", "outline/geom", true},
		{"outline/hung", "outline", false},
		{"outline", "nest", false},
		{"outline", "outlines", false},
	} {
		if got := allowed(row.from, row.to); got != row.want {
			t.Errorf("allowed(%s, %s) = %v, want %v", row.from, row.to, got, row.want)
		}
	}
}
