package design

import (
	"slices"
	"sort"
)

// faulty reports whether a key is given wrongly, or a table around it is.
func (r *reader) faulty(key Key) bool {
	for ; key != ""; key = key.Table() {
		if r.bad[key] {
			return true
		}
	}
	return false
}

// seen reports whether a key was given, rightly or not; all keys of a table whose
// name is misspelt count as given.
func (r *reader) seen(key Key) bool { return r.faulty(key) || r.source.Given(key) }

// missingTables notes the tables that have to be given and are not, one fault each.
func (r *reader) missingTables() {
	for _, t := range r.misspelt {
		if !r.source.Given(t) {
			r.bad[t] = true
		}
	}
	for _, t := range r.keys.tables {
		var needed []string
		for _, row := range r.keys.in(t) {
			if row.must {
				needed = append(needed, row.name())
			}
		}
		if _, isList := r.keys.list(t); isList || len(needed) == 0 || r.seen(t) || maybe(t) {
			continue
		}
		r.bad[t] = true
		r.fault(r.source.At(t), t, Found(TableMissing), Say(WriteNeeded, t, listed(needed)))
	}
}

// missing notes the keys that have to be given and are not.
func (r *reader) missing() {
	for _, row := range r.keys.rows {
		if _, inList := r.keys.list(row.table()); inList || !row.must || r.seen(row.key) || maybe(row.table()) && !r.source.Given(row.table()) {
			continue
		}
		r.lacks(row)
	}
	hasLine := r.source.Given(KeyHangLine)
	for _, name := range []Key{KeyHangLineName, KeyHangLineDiameter} {
		if hasLine && !r.seen(name) {
			r.lacks(r.keys.byKey[name])
		}
	}
	if r.design.Load.Model == Lying && !r.bad[KeyLoadModel] && !r.seen(KeySleeperCrown) {
		r.lacks(r.keys.byKey[KeySleeperCrown])
	}
}

// lacks notes that a key is missing.
func (r *reader) lacks(row row) {
	r.bad[row.key] = true
	r.fault(r.source.At(row.key), row.key, Found(KeyMissing), r.line(row))
}

// line says what to write for a key, and where.
func (r *reader) line(row row) Phrase {
	name, example := row.name(), row.example(r.source.pounds)
	if row.table() == "" {
		return Say(WriteFirstLine, name, example)
	}
	return Say(WriteLine, name, example, row.table())
}

// alternatives checks the keys that exclude each other.
func (r *reader) alternatives() {
	for _, w := range exclusive() {
		var given [][]Key
		for _, set := range w.alternatives {
			if slices.ContainsFunc(set, r.seen) {
				given = append(given, set)
			}
		}
		switch {
		case len(given) > 1:
			r.clash(w, given)
		case len(given) == 1:
			r.together(given[0])
		case w.must:
			r.none(w)
		}
	}
}

// clash notes keys of several alternatives, at the one that stands last.
func (r *reader) clash(w ways, given [][]Key) {
	var seen []Key
	for _, set := range given {
		for _, key := range set {
			if r.source.Given(key) {
				seen = append(seen, key)
			}
		}
	}
	for _, set := range w.alternatives {
		for _, key := range set {
			r.bad[key] = true
		}
	}
	if len(seen) < 2 {
		return // one of them stands on a line that is at fault already
	}
	sort.SliceStable(seen, func(i, j int) bool {
		a, b := r.source.At(seen[i]), r.source.At(seen[j])
		return a.Line < b.Line || a.Line == b.Line && a.Column < b.Column
	})
	first, last := seen[0], seen[len(seen)-1]
	r.fault(r.source.At(last), last, Found(GivenBeside, first, r.lineOf(first), Say(w.what)), Say(KeepOneOf))
}

// together notes the keys of a set that are missing beside the others.
func (r *reader) together(set []Key) {
	for _, key := range set {
		if row, ok := r.keys.byKey[key]; ok && !r.seen(key) {
			r.lacks(row)
		}
	}
}

// none notes that no alternative is given.
func (r *reader) none(w ways) {
	var all []string
	for _, set := range w.alternatives {
		for _, key := range set {
			all = append(all, key.Name())
			r.bad[key] = true
		}
	}
	first := r.keys.byKey[w.alternatives[0][0]]
	r.fault(r.source.At(first.key), first.key, Found(NoneGiven, listed(all), Say(w.what)), r.line(first))
}
