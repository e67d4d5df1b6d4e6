package design

import (
	"go/ast"
	"go/parser"
	"go/token"
	"io/fs"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
	"testing"
)

// constants returns the keys that have a constant, by its name.
func constants(t *testing.T) map[string]Key {
	t.Helper()
	file, err := parser.ParseFile(token.NewFileSet(), "keys.go", nil, 0)
	if err != nil {
		t.Fatal(err)
	}
	out := map[string]Key{}
	ast.Inspect(file, func(n ast.Node) bool {
		if spec, ok := n.(*ast.ValueSpec); ok {
			text, err := strconv.Unquote(spec.Values[0].(*ast.BasicLit).Value)
			if err != nil {
				t.Fatal(err)
			}
			out[spec.Names[0].Name] = Key(text)
		}
		return true
	})
	return out
}

// Every constant is a key of the schema, a table of it or a list, and none stands twice.
func TestConstantsHaveRows(t *testing.T) {
	all := allKeys()
	seen := map[Key]string{}
	for name, k := range constants(t) {
		_, isRow := all.byKey[k]
		_, isList := all.list(k)
		if !isRow && !isList && !slices.Contains(all.tables, k) {
			t.Errorf("%s: %q is no key of a design", name, k)
		}
		if other, twice := seen[k]; twice {
			t.Errorf("%q is both %s and %s", k, name, other)
		}
		seen[k] = name
	}
	if len(seen) < 100 {
		t.Errorf("%d constants read", len(seen))
	}
}

// No key stands as bare text in the program, where a slip of the pen would compile.
func TestNoBareKeys(t *testing.T) {
	keys := map[string]bool{}
	for _, r := range allKeys().rows {
		if strings.Contains(string(r.key), ".") {
			keys[string(r.key)] = true
		}
	}
	const root = "../.."
	for _, top := range []string{"cmd", "export", "nest", "outline"} {
		err := filepath.WalkDir(filepath.Join(root, top), func(path string, d fs.DirEntry, err error) error {
			if err != nil || d.IsDir() || filepath.Ext(path) != ".go" || strings.HasSuffix(path, "_test.go") || d.Name() == "keys.go" {
				return err
			}
			set := token.NewFileSet()
			file, err := parser.ParseFile(set, path, nil, 0)
			if err != nil {
				return err
			}
			ast.Inspect(file, func(n ast.Node) bool {
				if lit, ok := n.(*ast.BasicLit); ok && lit.Kind == token.STRING {
					if text, err := strconv.Unquote(lit.Value); err == nil && keys[text] {
						t.Errorf("%s: %q: use its constant", set.Position(lit.Pos()), text)
					}
				}
				return true
			})
			return nil
		})
		if err != nil {
			t.Error(err)
		}
	}
}

func TestKeyParts(t *testing.T) {
	k := KeyExtra.Item(2).In("file")
	if k != "extra[2].file" || k.Table() != "extra[2]" || k.Name() != "file" || k.Unnumbered() != KeyExtraFile {
		t.Errorf("%s: table %s, name %s, without number %s", k, k.Table(), k.Name(), k.Unnumbered())
	}
	if n := Key("name"); n.Table() != "" || n.Name() != "name" || Key("").In("name") != n || n.Unnumbered() != n {
		t.Errorf("%s: table %q, name %s", n, n.Table(), n.Name())
	}
}
