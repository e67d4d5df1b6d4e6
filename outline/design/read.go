package design

import (
	"bytes"
	"slices"
	"strings"
	"sync"
	"unicode/utf8"
)

// MaxSize is the greatest size of a design file in bytes.
const MaxSize = 1 << 20

// keys is the schema with what is looked up in it.
type keys struct {
	rows   []row
	byKey  map[Key]row
	former map[Key]row // by the name that a key had before
	tables []Key       // every table and array of tables, in the order of the schema
	lists  []repeated
}

// allKeys is the schema with its index, built once; nobody changes what it returns.
var allKeys = sync.OnceValue(func() keys {
	k := keys{rows: schema(), byKey: map[Key]row{}, former: map[Key]row{}, lists: lists()}
	for _, r := range k.rows {
		k.byKey[r.key] = r
		if r.was != "" {
			k.former[r.table().In(r.was)] = r
		}
		for i, c := range r.key {
			if c == '.' && !slices.Contains(k.tables, r.key[:i]) {
				k.tables = append(k.tables, r.key[:i])
			}
		}
	}
	return k
})

// list returns the array of tables of that name.
func (k keys) list(table Key) (repeated, bool) {
	for _, l := range k.lists {
		if l.key == table {
			return l, true
		}
	}
	return repeated{}, false
}

// example returns an example of a key's value, in TOML.
func (k keys) example(key string) string {
	if r, ok := k.byKey[Key(key)]; ok {
		return r.example(false)
	}
	return `"…"`
}

// reader turns the tree of a file into a design.
type reader struct {
	keys   keys
	design Design
	source Source
	bad    map[Key]bool // keys that are given but at fault
	faults Faults

	heads     []leftOut      // by line, see headsLeftOut
	sideCurve string         // as written in bed.side_curve
	misspelt  []Key          // tables that unknown ones were probably meant for
	uses      map[Key]string // entries of the shelf, by the key that names each
}

// Read reads a design file; name is what its faults call it. On any fault the
// error is a [Faults] with all that was found, and the design is not to be used.
// The Source remembers where each key stands, for the faults of later stages.
func Read(name string, data []byte) (Design, Source, error) { return ReadWith(name, data, nil) }

// ReadWith is [Read] of a design that may take entries from a shelf; nil: there is
// none.
func ReadWith(name string, data []byte, shelf *Shelf) (Design, Source, error) {
	r := &reader{keys: allKeys(), bad: map[Key]bool{}, uses: map[Key]string{}, source: sourceOf(name)}
	data, refused := plainText(name, data)
	if refused != nil {
		return Design{}, r.source, refused
	}
	b := build(name, data, r.keys.example)
	r.faults = b.faults
	for key := range b.broken {
		r.bad[Key(key)] = true
	}
	r.source.pounds = b.root.balance() > 0
	r.design, r.heads = Defaults(), headsLeftOut(data)
	r.table("", b.root)
	r.switchOn()
	r.take(shelf)
	if r.design.Output.Inches {
		r.inInches()
	}
	r.missingTables()
	r.alternatives()
	r.derive()
	r.missing()
	r.check()
	if len(r.faults) > 0 {
		return Design{}, r.source, r.faults.sorted()
	}
	return r.design, r.source, nil
}

// byteOrderMark is what some editors put before UTF-8.
const byteOrderMark = "\xef\xbb\xbf"

// plainText returns the text of a file without a [byteOrderMark], and refuses what cannot be a design at all.
func plainText(name string, data []byte) ([]byte, Faults) {
	data = bytes.TrimPrefix(data, []byte(byteOrderMark))
	if len(data) > MaxSize {
		return nil, Faults{Position{1, 1}.fault(name, "", Found(FileTooLarge, len(data)), Say(DesignAtMost, MaxSize))}
	}
	if i := invalid(data); i >= 0 {
		return nil, Faults{newLines(data[:i]).position(i).fault(name, "", Found(NotUTF8), Say(SaveUTF8))}
	}
	return data, nil
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

// Defaults returns a design that holds only the values of keys that were left out, as
// they are in mm.
func Defaults() Design { return defaults(false) }

// defaults is [Defaults] for a design in inches too, but for its units.
func defaults(inches bool) Design {
	var d Design
	for _, r := range allKeys().rows {
		if usual := r.leftAt(inches); usual != "" {
			r.leave(&d, usual)
		}
	}
	return d
}

// leave puts a value of the schema into a design.
func (r row) leave(d *Design, usual string) {
	if v, err := r.parse(usual); err == nil {
		r.put(d, v)
	}
}

// inInches gives what is left out of a design in inches its value in inches.
func (r *reader) inInches() {
	for _, row := range r.keys.rows {
		if row.usualIn != "" && !r.source.Given(row.key) {
			row.leave(&r.design, row.usualIn)
		}
	}
}

// fault notes a fault at a position.
func (r *reader) fault(at Position, key Key, f Finding, hint Phrase) {
	r.faults = append(r.faults, at.fault(r.source.fileOf(key), key, f, hint))
}

// lineOf returns the line of a key.
func (r *reader) lineOf(key Key) int { return r.source.At(key).Line }

// full reports whether so many faults are noted that more would not be shown.
func (r *reader) full() bool { return len(r.faults) > 2*MaxFaults }

// table reads a table and those within it.
func (r *reader) table(name Key, t *table) {
	if _, ok := r.source.at[name]; !ok && name != "" {
		r.source.at[name] = t.at
	}
	for _, e := range t.entries {
		if r.full() {
			return
		}
		if t.closed || !r.strayed(name.In(e.name), name, e) {
			r.entry(name, e)
		}
	}
}

// entry reads one key of the table of that name.
func (r *reader) entry(tableName Key, e *entry) {
	full := tableName.In(e.name)
	plainName := !strings.ContainsAny(e.name, ".[")
	row, isKey := r.keys.byKey[full]
	if now, renamed := r.keys.former[full]; renamed {
		row, isKey = now, true
		r.source.renamed = append(r.source.renamed, Renamed{Old: full, New: now.key, At: e.at})
	}
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
		r.unknownKey(e, full, tableName)
	default:
		r.unknownTable(tableName, full, e)
	}
}

// unknownTable notes a table that is not in the schema.
func (r *reader) unknownTable(tableName, full Key, e *entry) {
	at := e.at
	if e.table != nil {
		if r.inside(full, e.table) {
			return
		}
		at = e.table.at
	} else if len(e.list) > 0 {
		at = e.list[0].at
	}
	hint, meant := r.keys.suggestTable(full)
	r.misspelt = append(r.misspelt, meant)
	r.fault(at, shown(full), Found(UnknownTable), hint)
}

// inside notes each table within an unknown one by its full name, and reports
// whether there was nothing else in it.
func (r *reader) inside(full Key, t *table) bool {
	for _, e := range t.entries {
		if e.table == nil || e.table.closed {
			return false
		}
	}
	for _, e := range t.entries {
		hint, meant := r.keys.suggestTable(full.In(e.name))
		r.misspelt = append(r.misspelt, meant)
		r.fault(e.table.at, shown(full.In(e.name)), Found(UnknownTable), hint)
		if r.full() {
			break
		}
	}
	return len(t.entries) > 0
}

// unknownKey notes a key that is not in the schema. Those that were probably meant
// count as given, so that they are not reported as missing too.
func (r *reader) unknownKey(e *entry, full, tableName Key) {
	hint, meant := r.keys.suggest(tableName, e.name)
	for _, key := range meant {
		r.bad[key] = true
	}
	r.fault(e.at, shown(full), Found(UnknownKey), hint)
}

// inner reads a table where one is wanted.
func (r *reader) inner(full Key, e *entry) {
	switch {
	case e.table != nil:
		r.table(full, e.table)
	case len(e.list) > 0:
		r.bad[full] = true
		r.fault(e.list[0].at, full, Found(GivenAsList), Say(WriteOnce, full))
	default:
		r.bad[full] = true
		r.fault(e.at, full, Found(TableHoldsValue), Say(WriteTableKeys, full))
	}
}

// key reads the value of a key.
func (r *reader) key(row row, e *entry) {
	if e.value == nil {
		r.bad[row.key] = true
		r.fault(e.at, row.key, Found(KeyGivenAsTable), r.line(row))
		return
	}
	if r.source.Given(row.key) { // under the name that it had before, or has now
		r.fault(e.at, row.key, Found(GivenUnderBoth, row.name(), row.was), Say(KeepOne))
		return
	}
	r.store(row, row.key, *e.value)
}

// store decodes a value and puts it into the design; full is the row's key, with
// its index where it belongs to a list.
func (r *reader) store(row row, full Key, n node) {
	r.source.at[full] = n.at
	v, u, p := row.value(n, r.source.pounds)
	if p != nil {
		r.bad[full] = true
		r.fault(n.at, full, p.Found, p.Hint)
		return
	}
	r.source.unit[full] = u
	row.put(&r.design, v)
	if row.key == KeyBedSideCurve {
		r.sideCurve = v.(string)
	}
	if name, ok := v.(string); ok && r.uses != nil && slices.ContainsFunc(slots(), func(s slot) bool { return s.use == row.key }) {
		r.uses[row.key] = name
	}
}

// list reads an array of tables, written either with headers or inline.
func (r *reader) list(full Key, e *entry) {
	l, _ := r.keys.list(full)
	tables := e.list
	if e.value != nil {
		for _, item := range e.value.items {
			if item.table == nil {
				r.fault(item.at, full, Found(WrongType, kindName(item)), Say(WriteEachUnder, full))
				r.bad[full] = true
				return
			}
			tables = append(tables, item.table)
		}
	}
	if e.table != nil || len(tables) == 0 {
		r.bad[full] = true
		r.source.at[full] = e.at
		r.fault(e.at, full, Found(ListGivenAsOne), Say(WriteEach, full))
		return
	}
	r.source.at[full] = tables[0].at
	if len(tables) > l.limit {
		r.bad[full] = true
		r.fault(tables[l.limit].at, full, Found(GivenTooOften, len(tables)), Say(AtMostWillDo, l.limit))
		return
	}
	for i, t := range tables {
		l.grow(&r.design)
		r.element(full.Item(i+1), full, t)
	}
}

// element reads one element of an array of tables; full carries its number, from 1.
func (r *reader) element(full, list Key, t *table) {
	r.source.at[full] = t.at
	for _, e := range t.entries {
		row, ok := r.keys.byKey[list.In(e.name)]
		switch {
		case r.full():
			return
		case !t.closed && r.strayed(full.In(e.name), list, e):
		case !ok:
			hint, meant := r.keys.suggest(list, e.name)
			for _, key := range meant {
				r.bad[full.In(key.Name())] = true
			}
			r.fault(e.at, shown(full.In(e.name)), Found(UnknownKey), hint)
		case e.value == nil:
			r.bad[full.In(e.name)] = true
			r.fault(e.at, full.In(e.name), Found(ValueGivenAsTable), Say(WriteValue, row.name(), row.example(false)))
		default:
			r.store(row, full.In(row.name()), *e.value)
		}
	}
	for _, row := range r.keys.rows {
		if row.table() == list && row.must && !r.seen(full.In(row.name())) {
			r.bad[full.In(row.name())] = true
			r.fault(t.at, full.In(row.name()), Found(KeyMissing), Say(WriteValue, row.name(), row.example(false)))
		}
	}
}
