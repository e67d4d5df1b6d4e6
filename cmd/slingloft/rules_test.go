package main

import (
	"go/ast"
	"go/token"
	"go/types"
	"regexp"
	"strconv"
	"strings"
	"testing"
)

// What is wrong with a design is a closed list of rules: each is broken somewhere, and
// each phrase is said somewhere, outside of the lists and their tables of words.
func TestEveryRuleUsed(t *testing.T) {
	used := map[types.Object]bool{}
	for id, o := range program().info.Uses {
		file := program().set.Position(id.Pos()).Filename
		if !strings.Contains(file, "words") {
			used[o] = true
		}
	}
	for folder, kinds := range map[string][]string{"outline/design": {"Rule", "PhraseKind"}, "outline/quantity": {"Rule"}} {
		scope := program().load(folder).Scope()
		for _, name := range scope.Names() {
			c, ok := scope.Lookup(name).(*types.Const)
			if !ok || strings.HasSuffix(name, "Count") {
				continue
			}
			for _, kind := range kinds {
				if types.Identical(c.Type(), scope.Lookup(kind).Type()) && !used[c] {
					t.Errorf("%s.%s is in the list and nothing breaks or says it", folder, name)
				}
			}
		}
	}
}

// assignment is a line of a design file, which no language changes.
var assignment = regexp.MustCompile(`^[a-z_]+ = "`)

// A message is filled with keys, values and other messages, never with words.
func TestNoWordsFilledIn(t *testing.T) {
	calls := 0
	for _, folder := range []string{"outline/design", "outline/flat", "cmd/slingloft/work"} {
		program().load(folder)
		for _, f := range program().files[folder] {
			ast.Inspect(f, func(n ast.Node) bool {
				call, ok := n.(*ast.CallExpr)
				if !ok {
					return true
				}
				if name := calledName(call); name != "Found" && name != "Say" {
					return true
				}
				calls++
				for _, arg := range call.Args {
					lit, ok := arg.(*ast.BasicLit)
					if !ok || lit.Kind != token.STRING {
						continue
					}
					if text, err := strconv.Unquote(lit.Value); err != nil || !assignment.MatchString(text) {
						t.Errorf("%s: a message is filled with %s", program().set.Position(arg.Pos()), lit.Value)
					}
				}
				return true
			})
		}
	}
	if calls < 100 {
		t.Errorf("%d messages looked at", calls)
	}
}

// calledName returns the name of the function that is called, without its package.
func calledName(call *ast.CallExpr) string {
	switch f := call.Fun.(type) {
	case *ast.Ident:
		return f.Name
	case *ast.SelectorExpr:
		return f.Sel.Name
	}
	return ""
}
