package design

import (
	"go/ast"
	"go/parser"
	"go/token"
	"io/fs"
	"path/filepath"
	"regexp"
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

// No key stands as bare text in the program, where a slip of the pen would compile:
// nothing that looks like a key does, whether there is such a key or not, and what is
// put behind a table is the name of some key.
func TestNoBareKeys(t *testing.T) {
	tables, names := map[string]bool{}, map[string]bool{}
	for _, table := range allKeys().tables {
		tables[strings.Split(string(table), ".")[0]] = true
		names[table.Name()] = true
	}
	for _, r := range allKeys().rows {
		names[r.name()] = true
	}
	walkSources(t, func(at string, n ast.Node) {
		switch n := n.(type) {
		case *ast.BasicLit:
			if text := literal(n); looksLikeKey.MatchString(text) && tables[strings.Split(text, ".")[0]] {
				t.Errorf("%s: %q: use its constant", at, text)
			}
		case *ast.CallExpr:
			f, ok := n.Fun.(*ast.SelectorExpr)
			if !ok || f.Sel.Name != "In" || len(n.Args) != 1 {
				return
			}
			if lit, ok := n.Args[0].(*ast.BasicLit); ok && !names[literal(lit)] {
				t.Errorf("%s: no key is called %q", at, literal(lit))
			}
		}
	})
}

var looksLikeKey = regexp.MustCompile(`^[a-z_]+(\.[a-z_]+)+$`)

// literal returns the text of a string literal, "" for another one.
func literal(n *ast.BasicLit) string {
	text, err := strconv.Unquote(n.Value)
	if n.Kind != token.STRING || err != nil {
		return ""
	}
	return text
}

// walkSources visits every node of the program but for its tests and the constants.
func walkSources(t *testing.T, visit func(at string, n ast.Node)) {
	t.Helper()
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
				if n != nil {
					visit(set.Position(n.Pos()).String(), n)
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
