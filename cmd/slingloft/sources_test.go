package main

import (
	"go/ast"
	"go/parser"
	"go/token"
	"go/types"
	"os"
	"path/filepath"
	"strings"
	"sync"
)

// sources is the program as it is written, tests apart: its packages by their folders,
// checked as far as that goes without the libraries.
type sources struct {
	set   *token.FileSet
	files map[string][]*ast.File // by folder
	all   map[string]*types.Package
	info  types.Info
}

// program returns the sources, read once.
var program = sync.OnceValue(func() *sources {
	s := &sources{set: token.NewFileSet(), files: map[string][]*ast.File{}, all: map[string]*types.Package{}}
	s.info = types.Info{
		Types:      map[ast.Expr]types.TypeAndValue{},
		Selections: map[*ast.SelectorExpr]*types.Selection{}, Uses: map[*ast.Ident]types.Object{},
	}
	for _, top := range []string{"cmd", "export", "nest", "outline"} {
		filepath.WalkDir(filepath.Join("../..", top), func(path string, d os.DirEntry, err error) error {
			if err == nil && d.IsDir() {
				folder, _ := filepath.Rel("../..", path)
				s.load(filepath.ToSlash(folder))
			}
			return err
		})
	}
	return s
})

// load reads a folder's package and checks it, those that it imports first. It returns
// nil where there is none.
func (s *sources) load(folder string) *types.Package {
	if p, ok := s.all[folder]; ok {
		return p
	}
	s.all[folder] = nil
	paths, _ := filepath.Glob(filepath.Join("../..", folder, "*.go"))
	for _, path := range paths {
		if strings.HasSuffix(path, "_test.go") {
			continue
		}
		if f, err := parser.ParseFile(s.set, path, nil, parser.ParseComments|parser.SkipObjectResolution); err == nil {
			s.files[folder] = append(s.files[folder], f)
		}
	}
	if len(s.files[folder]) == 0 || forTests(folder) {
		return nil
	}
	check := types.Config{Importer: s, Error: func(error) {}} // what the libraries declare is not known
	p, _ := check.Check(module+"/"+folder, s.set, s.files[folder], &s.info)
	s.all[folder] = p
	return p
}

// Import returns a package of the program, and an empty one for a library's.
func (s *sources) Import(path string) (*types.Package, error) {
	if folder, ours := strings.CutPrefix(path, module+"/"); ours {
		if p := s.load(folder); p != nil {
			return p, nil
		}
	}
	p := types.NewPackage(path, filepath.Base(path))
	p.MarkComplete()
	return p, nil
}
