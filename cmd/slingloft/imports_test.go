package main

import (
	"errors"
	"go/parser"
	"go/token"
	"io/fs"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
	"testing"
)

// module is the import path of the whole program.
const module = "slingloft"

// The import rule: cmd may import all; export and nest import outline and what is
// below themselves, never each other; outline imports only what is below itself,
// and nothing below outline imports outline. Below it the rooms of pieces stand in
// this order: the words, the room for lettering and the tables of what things are
// called, the builders. Of what lies below the
// words the design alone names them: machines do kinds of work in kinds of stock.
//
//	cmd ──> export ──┐
//	 │ └──> nest ────┴──> outline ──> outline/panel ─────┐
//	 └──────────────────────^    ├──> outline/template ──┼──> outline/label ──> outline/piece ──> mechanics, curves
//	                             └──> outline/divide ────┘
//
// A folder whose name ends in test holds code for tests: tests alone import it.
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
			if forTests(from) {
				return nil
			}
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
		if folder, inModule := strings.CutPrefix(name, module+"/"); inModule {
			out = append(out, folder)
		}
	}
	return out, nil
}

// allowed reports whether a package in the folder from may import the one in to.
func allowed(from, to string) bool {
	below := func(folder string) bool { return to == folder || strings.HasPrefix(to, folder+"/") }
	if forTests(to) {
		return false
	}
	switch top, _, _ := strings.Cut(from, "/"); top {
	case "cmd":
		return true
	case "export", "nest":
		if a, z := sheetRoom(from), sheetRoom(to); a > 0 && z > 0 {
			return z > a
		}
		return below(top) || below("outline")
	}
	if from == "outline/design" && to == "outline/piece" {
		return true
	}
	return below("outline") && (order(to) > order(from) || order(from) == ground && order(to) == ground)
}

// The rooms of pieces, from the builders down to what they stand on.
const (
	entry = iota
	builders
	lettering
	words
	ground
)

// order returns where a folder stands among the rooms of pieces.
func order(folder string) int {
	switch folder {
	case "outline":
		return entry
	case "outline/panel", "outline/sack", "outline/tarp", "outline/insectnet", "outline/template", "outline/divide":
		return builders
	case "outline/label", "outline/walk", "outline/words":
		return lettering
	case "outline/piece":
		return words
	}
	return ground
}

// sheetRoom returns where a folder stands among the rooms of the build sheet, from those
// who lay it out to what it consists of; 0 for any other.
func sheetRoom(folder string) int {
	rooms := [][]string{
		{"export/sheet/chapter"}, {"export/sheet/scene", "export/sheet/sketch", "export/sheet/series"}, {"export/sheet/given"},
		{"export/sheet/wording", "export/sheet/page", "export/sheet/paper"}, {"export/sheet"}, {"export/sheet/chart"}, {"export/sheet/picture"},
	}
	return 1 + slices.IndexFunc(rooms, func(r []string) bool { return slices.Contains(r, folder) })
}

// forTests reports whether a folder holds code for tests alone.
func forTests(folder string) bool { return strings.HasSuffix(folder, "test") }

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
		{"export/sheet/chapter", "export/sheet/scene", true},
		{"export/sheet/scene", "export/sheet/sketch", false},
		{"export/sheet/given", "export/sheet/series", false},
		{"export/sheet/page", "export/sheet", true},
		{"export/sheet/page", "export/sheet/given", false},
		{"export/sheet", "export/sheet/wording", false},
		{"export/sheet/given", "export", true},
		{"nest", "outline/geom", true},
		{"nest", "export", false},
		{"outline", "outline/hung", true},
		{"outline/hung", "outline/geom", true},
		{"outline/hung", "outline", false},
		{"outline", "nest", false},
		{"outline", "outlines", false},
		{"outline", "outline/panel", true},
		{"outline/panel", "outline/piece", true},
		{"outline/panel", "outline/template", false},
		{"outline/label", "outline/panel", false},
		{"outline/hung", "outline/piece", false},
		{"outline/design", "outline/piece", true},
		{"outline/design", "outline/label", false},
		{"outline/piece", "outline/geom", true},
		{"cmd/slingloft/work", "outline/designtest", false},
	} {
		if got := allowed(row.from, row.to); got != row.want {
			t.Errorf("allowed(%s, %s) = %v, want %v", row.from, row.to, got, row.want)
		}
	}
}

// Property tests draw the same cases in every run: a package whose tests draw at
// random imports rapidtest.
func TestRandomFixed(t *testing.T) {
	const rapid, fixed = "pgregory.net/rapid", module + "/outline/rapidtest"
	files, err := filepath.Glob("../../*/*_test.go")
	for _, deep := range []string{"*/*/", "*/*/*/", "*/*/*/*/"} {
		more, e := filepath.Glob("../../" + deep + "*_test.go")
		files, err = append(files, more...), errors.Join(err, e)
	}
	if err != nil {
		t.Fatal(err)
	}
	draws, fixes := map[string]bool{}, map[string]bool{}
	for _, path := range files {
		f, err := parser.ParseFile(token.NewFileSet(), path, nil, parser.ImportsOnly)
		if err != nil {
			t.Fatal(err)
		}
		for _, i := range f.Imports {
			switch name, _ := strconv.Unquote(i.Path.Value); name {
			case rapid:
				draws[filepath.Dir(path)] = true
			case fixed:
				fixes[filepath.Dir(path)] = true
			}
		}
	}
	if len(draws) == 0 {
		t.Error("no test draws at random")
	}
	for folder := range draws {
		if !fixes[folder] {
			t.Errorf("%s: tests draw at random and do not import %s", folder, fixed)
		}
	}
}
