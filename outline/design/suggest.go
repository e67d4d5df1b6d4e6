package design

import (
	"strings"
)

// Nearest returns the word that is likeliest meant by the misspelt one, or "".
func Nearest[S ~string](word string, words []S) S {
	const longest = 40 // of a word worth comparing
	if len(word) > longest {
		return ""
	}
	best, least := S(""), len(word)/3+2 // one slip more for every three letters
	folded := strings.ToLower(strings.ReplaceAll(word, "-", "_"))
	for _, w := range words {
		if d := slips(folded, strings.ReplaceAll(string(w), "-", "_")); d < least {
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

// suggest says what to write instead of the unknown key name in a table, and
// which keys were probably meant.
func (s keys) suggest(table Key, name string) (hint Phrase, meant []Key) {
	var known []string // the names and other names of the table's keys
	owners := map[string][]string{}
	for _, r := range s.in(table) {
		for _, w := range append([]string{r.name()}, r.also...) {
			known = append(known, w)
			owners[w] = append(owners[w], r.name())
		}
	}
	near := Nearest(name, known)
	if own := owners[strings.ToLower(name)]; len(own) > 0 {
		near = strings.ToLower(name)
	}
	if near != "" {
		for _, own := range owners[near] {
			meant = append(meant, table.In(own))
		}
		return Say(WriteThis, either(owners[near])), meant
	}
	for _, r := range s.rows {
		if _, listed := s.list(r.table()); !listed && r.name() == name {
			if r.table() == "" {
				return Say(WriteAtTop, name), []Key{r.key}
			}
			return Say(WriteUnder, name, r.table()), []Key{r.key}
		}
	}
	if own := s.in(table); len(own) > 0 {
		var all []string
		for _, r := range own {
			all = append(all, r.name())
		}
		if table == "" {
			return Say(FirstTableHolds, listed(all)), nil
		}
		return Say(TableHolds, table, listed(all)), nil
	}
	return Say(LeaveOut), nil
}

// suggestTable says what to write instead of the unknown table name, and which
// table was probably meant.
func (s keys) suggestTable(name Key) (hint Phrase, meant Key) {
	near := Nearest(string(name), s.tables)
	last := name.Name()
	for _, t := range s.tables {
		if near == "" && strings.EqualFold(strings.TrimSuffix(last, "s"), t.Name()) {
			near = t
		}
	}
	if near != "" {
		return s.headed(near), near
	}
	var all []string
	for _, t := range s.tables {
		if len(s.in(t)) > 0 {
			all = append(all, string(t))
		}
	}
	return Say(TablesAre, listed(all)), ""
}

// headed says which header to write for a table.
func (s keys) headed(table Key) Phrase {
	if _, ok := s.list(table); ok {
		return Say(WriteList, table)
	}
	return Say(WriteTable, table)
}
