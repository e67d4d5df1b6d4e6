package design

import (
	"bytes"
	"fmt"
	"slices"
	"sort"
	"strings"
	"unicode/utf8"

	"slingloft/outline/quantity"
)

// MaxSize is the greatest size of a design file in bytes.
const MaxSize = 1 << 20

// keys is the schema with what is looked up in it.
type keys struct {
	rows   []row
	byKey  map[string]row
	tables []string // every table and array of tables, in the order of the schema
	lists  []repeated
}

// newKeys indexes the schema.
func newKeys() keys {
	k := keys{rows: schema(), byKey: map[string]row{}, lists: lists()}
	for _, r := range k.rows {
		k.byKey[r.key] = r
		for t := r.table(); t != ""; t = t[:max(strings.LastIndexByte(t, '.'), 0)] {
			if !slices.Contains(k.tables, t) {
				k.tables = append(k.tables, t)
			}
		}
	}
	return k
}

// list returns the array of tables of that name.
func (k keys) list(table string) (repeated, bool) {
	for _, l := range k.lists {
		if l.key == table {
			return l, true
		}
	}
	return repeated{}, false
}

// reader turns the tree of a file into a design.
type reader struct {
	keys   keys
	design Design
	source Source
	bad    map[string]bool // keys that are given but at fault
	faults Faults

	sideCurve string // as written in bed.side_curve
}

// Read reads a design file; name is what its faults call it. On any fault the
// error is a [Faults] with all that was found, and the design is not to be used.
// The Source remembers where each key stands, for the faults of later stages.
func Read(name string, data []byte) (Design, Source, error) {
	r := &reader{keys: newKeys(), bad: map[string]bool{},
		source: Source{file: name, at: map[string]Position{}, unit: map[string]quantity.Unit{}}}
	data = bytes.TrimPrefix(data, []byte("\xef\xbb\xbf")) // some editors mark UTF-8 so
	if p := unreadable(data); p != nil {
		f := Fault{name, 1, 1, "", p.found, p.hint}
		return Design{}, r.source, Faults{f}
	}
	if i := invalid(data); i >= 0 {
		at := newLines(data[:i]).position(i)
		f := Fault{name, at.Line, at.Column, "", "the file is not UTF-8 text from here on", "save it as UTF-8"}
		return Design{}, r.source, Faults{f}
	}
	b := build(name, data)
	r.faults = b.faults
	for key := range b.broken {
		r.bad[key] = true
	}
	r.design = Defaults()
	r.table("", b.root)
	r.alternatives()
	r.derive()
	r.missing()
	r.check()
	if len(r.faults) > 0 {
		return Design{}, r.source, r.faults.sorted()
	}
	return r.design, r.source, nil
}

// unreadable refuses files that cannot be a design at all.
func unreadable(data []byte) *problem {
	if len(data) > MaxSize {
		return &problem{fmt.Sprintf("the file has %d bytes", len(data)), fmt.Sprintf("a design has at most %d", MaxSize)}
	}
	return nil
}

// invalid returns the offset of the first byte that is not UTF-8, or −1.
func invalid(data []byte) int {
	for i := 0; i < len(data); {
		c, size := utf8.DecodeRune(data[i:])
		if c == utf8.RuneError && size == 1 {
			return i
		}
		i += size
	}
	return -1
}

// Defaults returns a design that holds only the values of keys that were left out.
func Defaults() Design {
	var d Design
	for _, r := range schema() {
		if r.usual == "" {
			continue
		}
		if v, err := r.parse(r.usual); err == nil {
			r.put(&d, v)
		}
	}
	return d
}

// fault notes a fault at a position.
func (r *reader) fault(at Position, key, found, hint string) {
	r.faults = append(r.faults, Fault{r.source.file, at.Line, at.Column, key, found, hint})
}

// full reports whether so many faults are noted that more would not be shown.
func (r *reader) full() bool { return len(r.faults) > 2*MaxFaults }

// table reads a table and those within it.
func (r *reader) table(name string, t *table) {
	if _, ok := r.source.at[name]; !ok && name != "" {
		r.source.at[name] = t.at
	}
	for _, e := range t.entries {
		if r.full() {
			return
		}
		r.entry(name, e)
	}
}

// entry reads one key of the table of that name.
func (r *reader) entry(tableName string, e *entry) {
	full := dotted(tableName, e.name)
	plainName := !strings.ContainsAny(e.name, ".[")
	row, isKey := r.keys.byKey[full]
	_, isList := r.keys.list(full)
	isTable := slices.Contains(r.keys.tables, full)
	switch {
	case plainName && isKey:
		r.key(row, e)
	case plainName && isList:
		r.list(full, e)
	case plainName && isTable:
		r.inner(full, e)
	case e.value != nil && len(e.value.items) == 0 || e.value != nil && e.value.items[0].table == nil:
		r.fault(e.at, shown(full), "is not a known key", r.keys.suggest(tableName, e.name))
	default:
		r.unknownTable(tableName, full, e)
	}
}

// shown returns a key as it is set in messages: one line, not too long.
func shown(key string) string {
	q := quantity.Quoted(key)
	return q[1 : len(q)-1]
}

// unknownTable notes a table that is not in the schema.
func (r *reader) unknownTable(tableName, full string, e *entry) {
	at := e.at
	if e.table != nil {
		at = e.table.at
	} else if len(e.list) > 0 {
		at = e.list[0].at
	}
	r.fault(at, shown(full), "is not a known table", r.keys.suggestTable(full))
}

// inner reads a table where one is wanted.
func (r *reader) inner(full string, e *entry) {
	switch {
	case e.table != nil:
		r.table(full, e.table)
	case len(e.list) > 0:
		r.fault(e.list[0].at, full, "is given as a list of tables", "write ["+full+"], once")
	default:
		r.fault(e.at, full, "is a table but holds a value", "write ["+full+"] on a line of its own and its keys below")
	}
}

// key reads the value of a key.
func (r *reader) key(row row, e *entry) {
	if e.value == nil {
		r.bad[row.key] = true
		hint := fmt.Sprintf("write %s = %s under %s", row.name(), row.example(false), inTable(row.table()))
		r.fault(e.at, row.key, "is a key but is given as a table", hint)
		return
	}
	r.store(row, row.key, *e.value)
}

// store decodes a value and puts it into the design; full is the row's key, with
// its index where it belongs to a list.
func (r *reader) store(row row, full string, n node) {
	r.source.at[full] = n.at
	v, u, p := row.value(n)
	if p != nil {
		r.bad[full] = true
		r.fault(n.at, full, p.found, p.hint)
		return
	}
	r.source.unit[full] = u
	row.put(&r.design, v)
	if row.key == "bed.side_curve" {
		r.sideCurve = v.(string)
	}
}

// list reads an array of tables, written either with headers or inline.
func (r *reader) list(full string, e *entry) {
	l, _ := r.keys.list(full)
	tables := e.list
	if e.value != nil {
		for _, item := range e.value.items {
			if item.table == nil {
				r.fault(item.at, full, "holds "+kindName(item), "write each one under a header [["+full+"]]")
				r.bad[full] = true
				return
			}
			tables = append(tables, item.table)
		}
	}
	if e.table != nil || len(tables) == 0 {
		r.bad[full] = true
		r.source.at[full] = e.at
		r.fault(e.at, full, "is a list of tables but is given as one table or value", "write [["+full+"]] for each one")
		return
	}
	r.source.at[full] = tables[0].at
	if len(tables) > l.limit {
		r.bad[full] = true
		r.fault(tables[l.limit].at, full, fmt.Sprintf("is given %d times", len(tables)), fmt.Sprintf("at most %d will do", l.limit))
		return
	}
	for i, t := range tables {
		l.grow(&r.design)
		r.element(fmt.Sprintf("%s[%d]", full, i+1), full, t)
	}
}

// element reads one element of an array of tables; full carries its number, from 1.
func (r *reader) element(full, list string, t *table) {
	r.source.at[full] = t.at
	for _, e := range t.entries {
		row, ok := r.keys.byKey[dotted(list, e.name)]
		switch {
		case r.full():
			return
		case !ok:
			r.fault(e.at, shown(dotted(full, e.name)), "is not a known key", r.keys.suggest(list, e.name))
		case e.value == nil:
			r.bad[full+"."+e.name] = true
			r.fault(e.at, full+"."+e.name, "is given as a table", "write "+row.name()+" = "+row.example(false))
		default:
			r.store(row, full+"."+row.name(), *e.value)
		}
	}
	for _, row := range r.keys.rows {
		if row.table() == list && row.must && t.find(row.name()) == nil {
			r.bad[full+"."+row.name()] = true
			r.fault(t.at, full+"."+row.name(), "is missing", "write "+row.name()+" = "+row.example(false))
		}
	}
}

// seen reports whether a key was given, rightly or not.
func (r *reader) seen(key string) bool { return r.source.Given(key) || r.bad[key] }

// missing notes the keys that have to be given and are not.
func (r *reader) missing() {
	for _, row := range r.keys.rows {
		if _, inList := r.keys.list(row.table()); inList || !row.must || r.seen(row.key) {
			continue
		}
		r.lacks(row)
	}
	hasLine := r.source.Given("hang.line")
	for _, name := range []string{"hang.line.name", "hang.line.diameter"} {
		if hasLine && !r.seen(name) {
			r.lacks(r.keys.byKey[name])
		}
	}
	if r.design.Load.Model == Lying && !r.bad["load.model"] && !r.seen("sleeper.crown") {
		r.lacks(r.keys.byKey["sleeper.crown"])
	}
}

// lacks notes that a key is missing.
func (r *reader) lacks(row row) {
	r.bad[row.key] = true
	r.fault(r.source.At(row.key), row.key, "is missing", fmt.Sprintf("write %s = %s under %s", row.name(), row.example(false), inTable(row.table())))
}

// alternatives checks the keys that exclude each other.
func (r *reader) alternatives() {
	for _, w := range exclusive() {
		var given [][]string
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
func (r *reader) clash(w ways, given [][]string) {
	var seen []string
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
	r.fault(r.source.At(last), last, fmt.Sprintf("is given beside %s in line %d, and each sets the %s", first, r.source.At(first).Line, w.what), "keep one of them")
}

// together notes the keys of a set that are missing beside the others.
func (r *reader) together(set []string) {
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
			all = append(all, key[strings.LastIndexByte(key, '.')+1:])
			r.bad[key] = true
		}
	}
	first := r.keys.byKey[w.alternatives[0][0]]
	r.fault(r.source.At(first.key), first.key, "is missing: none of "+strings.Join(all, ", ")+" sets the "+w.what,
		fmt.Sprintf("write %s = %s under %s", first.name(), first.example(false), inTable(first.table())))
}
