package design

import (
	"maps"
	"slices"
	"strings"

	"slingloft/outline/quantity"
)

// ShelfFile is the file beside a design that is its shelf where it names none.
const ShelfFile = "shelf.toml"

// Shelf is what a maker has: cords, cloths, bars, threads and hooks with their data,
// each under a name of its own. A design names an entry and has its values, but for
// those that it gives itself. The nil Shelf has nothing.
type Shelf struct {
	file  string
	kinds map[string][]*shelved
}

// shelved is one entry of a shelf.
type shelved struct {
	name   string
	at     Position
	values []shelvedValue
}

// shelvedValue is one value of an entry.
type shelvedValue struct {
	name  string // of its key
	at    Position
	value any
	unit  quantity.Unit
}

// slot is a place of a design that takes an entry of a shelf.
type slot struct {
	use  Key // that names the entry
	kind string
	to   map[string]Key // the design's keys by an entry's
}

// slots returns every place, those that take the same kind beside each other.
func slots() []slot {
	table := func(use Key, kind string, but ...Key) slot {
		s := slot{use, kind, map[string]Key{}}
		for _, r := range allKeys().in(use.Table()) {
			if r.key != use && !slices.Contains(but, r.key) {
				s.to[r.name()] = r.key
			}
		}
		return s
	}
	return []slot{
		table(KeyCordSideUse, "cord"), table(KeyCordLegUse, "cord"), table(KeyHangLineUse, "cord"),
		table(KeyClothUse, "cloth", KeyClothGap, KeyClothSelvedgeStrip, KeyClothJoins),
		table(KeySackCloth.In("use"), "cloth", KeySackCloth.In("gap"), KeySackCloth.In("selvedge_strip")),
		table(KeyCoverCloth.In("use"), "cloth", KeyCoverCloth.In("gap"), KeyCoverCloth.In("selvedge_strip")),
		table(KeyTarpCloth.In("use"), "cloth", KeyTarpCloth.In("gap"), KeyTarpCloth.In("selvedge_strip")),
		table(KeyLiningCloth.In("use"), "cloth", KeyLiningCloth.In("gap"), KeyLiningCloth.In("selvedge_strip")),
		table(KeyBarUse, "bar"),
		{KeySeamUseThread, "thread", map[string]Key{"name": KeySeamThread, "strength": KeySeamThreadStrength}},
		{KeyHangUseHook, "hook", map[string]Key{"diameter": KeyHangHookDiameter, "strength": KeyHangHookStrength}},
	}
}

// shelfKinds returns the kinds of entries.
func shelfKinds() []string {
	var out []string
	for _, s := range slots() {
		if !slices.Contains(out, s.kind) {
			out = append(out, s.kind)
		}
	}
	return out
}

// useRow makes the row by which a design names an entry of its shelf. The design keeps
// the entry's values and not its name, so that nothing hangs on what it is called.
func useRow(key Key, kind string) row {
	return row{key: key, form: words, hi: 60, put: func(*Design, any) {}, get: func(*Design) any { return nil }}.
		says("Takes a "+kind+" from the shelf, by its name there: its values are those of this table, but for what is given here.",
			"my "+kind, "my "+kind).known("shelf", "from_shelf")
}

// shelfRow makes the row by which a design names its shelf.
func shelfRow() row {
	return row{key: KeyShelf, form: words, hi: 200, put: func(*Design, any) {}, get: func(*Design) any { return nil }}.
		says("File with the cords, cloths, bars, threads and hooks that you have, named from the design's folder; left out, "+ShelfFile+
			" beside the design, where there is one.", "../shelf.toml", "../shelf.toml")
}

// Offers returns the names of what a shelf has for each key that takes a thing from it;
// no shelf has nothing.
func (s *Shelf) Offers() map[Key][]string {
	out := map[Key][]string{}
	for _, slot := range slots() {
		if s == nil {
			continue
		}
		if names := s.names(slot.kind); len(names) > 0 {
			out[slot.use] = names
		}
	}
	return out
}

// TakenBy returns the keys that a key takes from the shelf.
func TakenBy(use Key) []Key {
	for _, s := range slots() {
		if s.use == use {
			return slices.Sorted(maps.Values(s.to))
		}
	}
	return nil
}

// ShelfOf returns the file that a design names as its shelf, "" where it names none,
// and whether the design takes anything from a shelf.
func ShelfOf(data []byte) (name string, takes bool) {
	data, refused := plainText("", data)
	if refused != nil {
		return "", false
	}
	root := build("", data, allKeys().example).root
	if e := root.find(string(KeyShelf)); e != nil && e.value != nil {
		if v, p := allKeys().byKey[KeyShelf].words(*e.value); p == nil {
			name = v.(string)
		}
	}
	return name, slices.ContainsFunc(slots(), func(s slot) bool { return root.has(string(s.use)) })
}

// has reports whether a table has a value under a dotted name.
func (t *table) has(name string) bool {
	first, rest, dotted := strings.Cut(name, ".")
	e := t.find(first)
	switch {
	case e == nil:
		return false
	case !dotted:
		return e.value != nil
	}
	return e.table != nil && e.table.has(rest)
}

// ReadShelf reads a shelf; name is what its faults call it. Every entry is checked,
// whether or not a design takes it. On any fault the error is a [Faults].
func ReadShelf(name string, data []byte) (*Shelf, error) {
	s := &Shelf{file: name, kinds: map[string][]*shelved{}}
	data, refused := plainText(name, data)
	if refused != nil {
		return s, refused
	}
	b := build(name, data, allKeys().example)
	r := &shelfReader{shelf: s, faults: b.faults, pounds: b.root.balance() > 0}
	for _, e := range b.root.entries {
		r.kind(e)
	}
	if len(r.faults) > 0 {
		return s, r.faults.sorted()
	}
	return s, nil
}

// shelfReader reads a shelf.
type shelfReader struct {
	shelf  *Shelf
	faults Faults
	pounds bool // most of it is in inches and pounds
}

func (r *shelfReader) fault(at Position, key Key, f Finding, hint Phrase) {
	r.faults = append(r.faults, at.fault(r.shelf.file, shown(key), f, hint))
}

// kind reads the entries of one kind.
func (r *shelfReader) kind(e *entry) {
	all := slots()
	i := slices.IndexFunc(all, func(s slot) bool { return s.kind == e.name })
	if i < 0 || e.table == nil {
		r.fault(e.place(), Key(e.name), Found(NoShelfKind), Say(ShelfHolds, listed(shelfKinds())))
		return
	}
	for _, one := range e.table.entries {
		if one.table == nil {
			r.fault(one.place(), Key(e.name).In(one.name), Found(NoShelfEntry), Say(WriteEntry, e.name))
			continue
		}
		if p := checkWords(one.name, 60); p != nil {
			r.fault(one.place(), Key(e.name), p.Found, p.Hint)
			continue
		}
		r.entry(all[i], one)
	}
}

// entry reads one entry. Where it has no name for people its own stands for that.
func (r *shelfReader) entry(s slot, e *entry) {
	full := Key(s.kind).In(e.name)
	out := &shelved{name: e.name, at: e.table.at}
	known := slices.Sorted(maps.Keys(s.to))
	for _, kv := range e.table.entries {
		key, ok := s.to[kv.name]
		switch {
		case !ok:
			hint := Say(TableHolds, full, listed(known))
			if near := Nearest(kv.name, known); near != "" {
				hint = Say(WriteThis, either{near})
			}
			r.fault(kv.place(), full.In(kv.name), Found(UnknownKey), hint)
			continue
		case kv.value == nil:
			r.fault(kv.place(), full.In(kv.name), Found(ValueGivenAsTable), Say(WriteAssignment, kv.name, allKeys().byKey[key].example(r.pounds)))
			continue
		}
		v, unit, p := allKeys().byKey[key].value(*kv.value, r.pounds)
		if p != nil {
			r.fault(kv.value.at, full.In(kv.name), p.Found, p.Hint)
			continue
		}
		out.values = append(out.values, shelvedValue{kv.name, kv.value.at, v, unit})
	}
	if _, named := s.to["name"]; named && e.table.find("name") == nil {
		out.values = append(out.values, shelvedValue{"name", out.at, e.name, quantity.Unit{}})
	}
	r.shelf.kinds[s.kind] = append(r.shelf.kinds[s.kind], out)
}

// place returns where an entry stands: its header, its brace, or its key.
func (e *entry) place() Position {
	switch {
	case e.table != nil && e.table.header:
		return e.table.at
	case len(e.list) > 0:
		return e.list[0].at
	}
	return e.at
}

// names returns what the entries of a kind are called.
func (s *Shelf) names(kind string) []string {
	var out []string
	if s != nil {
		for _, e := range s.kinds[kind] {
			out = append(out, e.name)
		}
	}
	return out
}

// find returns an entry, or nil.
func (s *Shelf) find(kind, name string) *shelved {
	if i := slices.Index(s.names(kind), name); i >= 0 {
		return s.kinds[kind][i]
	}
	return nil
}

// take puts the values of the entries that a design names into it.
func (r *reader) take(s *Shelf) {
	for _, slot := range slots() {
		name, ok := r.uses[slot.use]
		if !ok {
			continue
		}
		e := s.find(slot.kind, name)
		if e == nil {
			r.notShelved(s, slot, name)
			continue
		}
		for _, v := range e.values {
			key, ok := slot.to[v.name]
			if !ok || r.seen(key) {
				continue // nothing is asked of it here, or the design's own value goes before it
			}
			r.source.at[key], r.source.unit[key], r.source.from[key] = v.at, v.unit, s.file
			r.keys.byKey[key].put(&r.design, v.value)
		}
	}
}

// notShelved notes an entry that is not there; what it would have given counts as given.
func (r *reader) notShelved(s *Shelf, slot slot, name string) {
	names := s.names(slot.kind)
	hint := Say(ShelfHas, listed(names))
	switch near := Nearest(name, names); {
	case s == nil:
		hint = Say(WriteShelf, slot.kind, name, ShelfFile)
	case len(names) == 0:
		hint = Say(WriteEntryOf, slot.kind, name, s.file)
	case near != "":
		hint = Say(WriteThis, either{near})
	}
	r.bad[slot.use] = true
	r.fault(r.source.At(slot.use), slot.use, Found(NotOnShelf, quantity.Quoted(name)), hint)
	for _, key := range slot.to {
		if !r.source.Given(key) {
			r.bad[key] = true
		}
	}
}
