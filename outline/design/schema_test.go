package design

import (
	"slices"
	"strings"
	"testing"
)

// Each row documents itself, and its examples and its usual value would be read.
func TestSchema(t *testing.T) {
	seen := map[Key]bool{}
	for _, r := range schema() {
		if seen[r.key] {
			t.Errorf("%s stands in the schema twice", r.key)
		}
		seen[r.key] = true
		if r.doc == "" || !strings.HasSuffix(r.doc, ".") {
			t.Errorf("%s: documentation %q", r.key, r.doc)
		}
		for _, example := range []string{r.mm, r.inch, r.usual} {
			if example == r.usual && example == "" || example == "[]" {
				continue
			}
			if _, p := r.parse(example); p != nil {
				t.Errorf("%s = %q: %v", r.key, example, p)
			}
		}
		for _, word := range r.also {
			for _, other := range schema() {
				if other.table() == r.table() && other.name() == word {
					t.Errorf("%s is known as %s, which is a key itself", r.key, word)
				}
			}
		}
	}
	for _, w := range exclusive() {
		for _, set := range w.alternatives {
			for _, key := range set {
				if _, isList := allKeys().list(key); !seen[key] && !isList {
					t.Errorf("%s excludes others but is not in the schema", key)
				}
			}
		}
	}
}

// The reference, the starter file and the table documentation name everything.
func TestReferenceNamesAll(t *testing.T) {
	reference, starter, docs := Reference(), Starter(true), tableDocs()
	k := allKeys()
	for _, r := range k.rows {
		if !strings.Contains(reference, "| `"+r.name()+"` | ") || !strings.Contains(starter, r.name()+" = ") {
			t.Errorf("%s is not in the reference or the starter file", r.key)
		}
	}
	for _, table := range k.tables {
		if _, isList := k.list(table); docs[table] == "" && !isList {
			t.Errorf("[%s] has no documentation", table)
		}
	}
	for _, line := range strings.Split(reference, "\n") {
		if n := strings.Count(strings.ReplaceAll(line, `\|`, ""), "|"); strings.HasPrefix(line, "|") && n != 6 {
			t.Errorf("a row of the reference has %d bars: %s", n, line)
		}
	}
}

// Every line of a starter file may be uncommented on its own and is then read, if
// it does not exclude another key.
func TestStarterLines(t *testing.T) {
	for _, inches := range []bool{false, true} {
		lines := strings.Split(Starter(inches), "\n")
		tried := 0
		for i, line := range lines {
			key, _, found := strings.Cut(strings.TrimPrefix(line, "# "), " = ")
			if !found || !strings.HasPrefix(line, "# ") || strings.Contains(key, " ") {
				continue
			}
			changed := slices.Clone(lines)
			changed[i] = strings.TrimPrefix(line, "# ")
			_, _, err := Read("starter", []byte(strings.Join(changed, "\n")))
			if err != nil && !strings.Contains(err.Error(), "keep one of") && !inOmittedTable(lines, i) && !needsMore[key] {
				t.Errorf("%s: %v", changed[i], err)
			}
			tried++
		}
		if tried < 80 {
			t.Errorf("only %d lines were tried", tried)
		}
	}
}

// needsMore names the keys that ask for another one beside them.
var needsMore = map[string]bool{"from": true, "to": true, "end_girth": true, "trail": true, "cutter": true, "spin_up": true, "travel": true, "strap": true,
	"use": true, "use_hook": true, "use_thread": true}

// inOmittedTable reports whether the header above line i is a comment.
func inOmittedTable(lines []string, i int) bool {
	for ; i >= 0; i-- {
		if strings.HasPrefix(lines[i], "[") {
			return false
		}
		if strings.HasPrefix(lines[i], "# [") {
			return true
		}
	}
	return false
}

func TestNearest(t *testing.T) {
	words := []string{"head_bar", "foot_bar", "head_leg", "span", "side_depth"}
	tests := []struct{ word, want string }{
		{"head_bra", "head_bar"},
		{"Head-Bar", "head_bar"},
		{"spam", "span"},
		{"sidedepth", "side_depth"},
		{"hed_leg", "head_leg"},
		{"", ""},
		{"x", ""},
		{"something_else", ""},
		{strings.Repeat("span", 100), ""},
	}
	for _, tc := range tests {
		if got := Nearest(tc.word, words); got != tc.want {
			t.Errorf("Nearest(%q) = %q, want %q", tc.word, got, tc.want)
		}
	}
}

func TestSlips(t *testing.T) {
	tests := []struct {
		a, b string
		want int
	}{{"", "", 0}, {"", "abc", 3}, {"abc", "", 3}, {"abc", "acb", 1}, {"kitten", "sitting", 3}, {"ca", "abc", 3}}
	for _, tc := range tests {
		if got := slips(tc.a, tc.b); got != tc.want {
			t.Errorf("slips(%q, %q) = %d, want %d", tc.a, tc.b, got, tc.want)
		}
	}
}
