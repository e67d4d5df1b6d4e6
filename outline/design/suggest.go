package design

import (
	"fmt"
	"slices"
	"strings"
)

// nearest returns the word that is likeliest meant by the misspelt one, or "".
func nearest(word string, words []string) string {
	const longest = 40 // of a word worth comparing
	if len(word) > longest {
		return ""
	}
	best, least := "", len(word)/3+2 // one slip more for every three letters
	folded := strings.ToLower(strings.ReplaceAll(word, "-", "_"))
	for _, w := range words {
		if d := slips(folded, strings.ReplaceAll(w, "-", "_")); d < least {
			best, least = w, d
		}
	}
	return best
}

// slips counts the letters to insert, drop, change or swap with their neighbour
// that lead from a to b (optimal string alignment).
func slips(a, b string) int {
	before, last, row := make([]int, len(b)+1), make([]int, len(b)+1), make([]int, len(b)+1)
	for j := range last {
		last[j] = j
	}
	for i := 1; i <= len(a); i++ {
		row[0] = i
		for j := 1; j <= len(b); j++ {
			cost := 1
			if a[i-1] == b[j-1] {
				cost = 0
			}
			row[j] = min(last[j]+1, row[j-1]+1, last[j-1]+cost)
			if i > 1 && j > 1 && a[i-1] == b[j-2] && a[i-2] == b[j-1] {
				row[j] = min(row[j], before[j-2]+1)
			}
		}
		before, last, row = last, row, before
	}
	return last[len(b)]
}

// suggest says what to write instead of the unknown key name in a table.
func (s keys) suggest(table, name string) string {
	var here, names []string
	for _, r := range s.rows {
		if r.table() == table {
			names = append(names, r.name())
			if slices.Contains(r.also, strings.ToLower(name)) {
				here = append(here, r.name())
			}
		}
	}
	if len(here) > 0 {
		return "write " + strings.Join(here, " or ")
	}
	if near := nearest(name, names); near != "" {
		return "write " + near
	}
	for _, r := range s.rows {
		if r.name() == name && r.table() != table && !strings.Contains(r.table(), "trial") && !strings.Contains(r.table(), "flaw") {
			return fmt.Sprintf("write %s under [%s]", name, r.table())
		}
	}
	if len(names) == 0 {
		return "leave it out"
	}
	return inTable(table) + " holds " + strings.Join(names, ", ")
}

// suggestTable says what to write instead of the unknown table name.
func (s keys) suggestTable(name string) string {
	if near := nearest(name, s.tables); near != "" {
		return s.headed(near)
	}
	last := name[strings.LastIndexByte(name, '.')+1:]
	for _, t := range s.tables {
		if strings.TrimSuffix(last, "s") == t[strings.LastIndexByte(t, '.')+1:] {
			return s.headed(t)
		}
	}
	return "tables are " + strings.Join(s.tables, ", ")
}

// headed says which header to write for a table.
func (s keys) headed(table string) string {
	if _, ok := s.list(table); ok {
		return "write [[" + table + "]]"
	}
	return "write [" + table + "]"
}

// inTable names a table for messages.
func inTable(table string) string {
	if table == "" {
		return "the top of the file"
	}
	return "[" + table + "]"
}
