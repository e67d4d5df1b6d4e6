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
	reference, starter, docs := Reference(), FullStarter(true), tableDocs()
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
		lines := strings.Split(FullStarter(inches), "\n")
		tried := 0
		for i, line := range lines {
			key, _, found := strings.Cut(strings.TrimPrefix(line, "# "), " = ")
			if !found || !strings.HasPrefix(line, "# ") || strings.Contains(key, " ") {
				continue
			}
			changed := slices.Clone(lines)
			changed[i] = strings.TrimPrefix(line, "# ")
			_, _, err := Read("starter", []byte(strings.Join(changed, "\n")))
			if head := headLeftOut(lines, i); head != "" {
				if want := "take the # from " + head + " too"; err == nil || !strings.Contains(err.Error(), want) || strings.Contains(err.Error(), "write "+key) {
					t.Errorf("%s below # %s: %v, want advice to %s", changed[i], head, err, want)
				}
			} else if err != nil && !strings.Contains(err.Error(), "keep one of") && !needsMore[key] {
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
var needsMore = map[string]bool{"from": true, "to": true, "end_girth": true, "trail": true, "cutter": true, "spin_up": true, "fields": true, "travel": true, "strap": true,
	"use": true, "use_hook": true, "use_thread": true}

// headLeftOut returns the header above line i where that is a comment, without its #.
func headLeftOut(lines []string, i int) string {
	for ; i >= 0; i-- {
		if strings.HasPrefix(lines[i], "[") {
			return ""
		}
		if strings.HasPrefix(lines[i], "# [") {
			return strings.TrimPrefix(lines[i], "# ")
		}
	}
	return ""
}

// A short starter file fits a page: what has to be given, what is looked up, and what
// is proposed, each with its meaning. Uncommented, what is looked up is read.
func TestShortStarter(t *testing.T) {
	for _, inches := range []bool{false, true} {
		text := Starter(inches)
		lines := strings.Split(strings.TrimSpace(text), "\n")
		if len(lines) > 55 {
			t.Errorf("%d lines, want a page", len(lines))
		}
		d := read(t, "short", text)
		if full := read(t, "full", FullStarter(inches)); d.Name != full.Name || d.Bed != full.Bed || d.Output.Inches != inches {
			t.Errorf("inches %v: another bed than the full file's: %+v", inches, d.Bed)
		}
		for _, line := range lines {
			key, _, found := strings.Cut(line, " = ")
			if found && !strings.Contains(line, "# ") || len([]rune(line)) > 140 {
				t.Errorf("%q does not say what %s is in a line", line, key)
			}
		}
		if got := read(t, "strong", strings.ReplaceAll(text, "# strength", "strength")); got.Side.Strength == 0 || got.Leg.Strength == 0 {
			t.Error("strengths that are given are not read")
		}
	}
	text, err := StarterFor(false, false, "For one.", []Proposed{{"cloth.joins", "1", "To try it."}, {"seam.rows", "1", "As asked."}})
	if d := read(t, "proposed", text); err != nil || d.Cloth.Joins != 1 || d.Seam.Rows != 1 || !strings.Contains(text, "\n# To try it.\njoins = 1 ") {
		t.Errorf("%v\n%s", err, text)
	}
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
