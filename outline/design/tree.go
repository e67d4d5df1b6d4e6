package design

import (
	"errors"
	"strings"

	"github.com/pelletier/go-toml/v2"
	"github.com/pelletier/go-toml/v2/unstable"

	"slingloft/outline/quantity"
)

// The tree is a TOML document with the position of everything in it. It is built
// with the library's parser, which knows positions but not whether a key
// was given twice; that rule lives here.

// node is a value: a scalar, an array or an inline table.
type node struct {
	kind  unstable.Kind
	text  string // strings decoded, other scalars as written
	at    Position
	items []node // of an array
	table *table // of an inline table
}

// entry is what one key of a table holds: exactly one of the three is set.
type entry struct {
	name  string
	at    Position // of the key
	value *node
	table *table
	list  []*table // of an array of tables
}

// table is a TOML table, its entries in the order of the file.
type table struct {
	at      Position // of the header or of the brace
	entries []*entry
	index   map[string]*entry
	header  bool // given by a header of its own
	closed  bool // inline: nothing can be added
}

// find returns the entry of that name, or nil.
func (t *table) find(name string) *entry { return t.index[name] }

// add puts an entry in t.
func (t *table) add(e *entry) {
	if t.index == nil {
		t.index = map[string]*entry{}
	}
	t.index[e.name] = e
	t.entries = append(t.entries, e)
}

// balance returns how many more quantities of a table, and of those in it, are
// written in inches and pounds than there are lengths in millimetres.
func (t *table) balance() int {
	sum := 0
	for _, e := range t.entries {
		switch {
		case e.table != nil:
			sum += e.table.balance()
		case e.value != nil:
			sum += e.value.balance()
		}
		for _, one := range e.list {
			sum += one.balance()
		}
	}
	return sum
}

func (n *node) balance() int {
	sum := 0
	for i := range n.items {
		sum += n.items[i].balance()
	}
	if n.table != nil {
		sum += n.table.balance()
	}
	if n.kind != unstable.String {
		return sum
	}
	switch q, err := quantity.Parse(n.text); {
	case err != nil:
	case q.Unit.Imperial:
		sum++
	case q.Unit.Dimension == quantity.Length:
		sum--
	}
	return sum
}

// treeBuilder builds the tree of one document.
type treeBuilder struct {
	file    string
	data    []byte
	lines   *lines
	root    *table
	current *table
	prefix  string // of the current table, for messages
	parser  unstable.Parser
	base    int             // offset in data at which the parser started
	depth   int             // of the value that is being taken in
	count   int             // keys and headers so far
	broken  map[string]bool // full names of keys on lines that are not TOML
	faults  Faults
	example func(key string) string // a value as the key may have it, in TOML
}

// build reads data, which is valid UTF-8. The builder it returns holds the tree,
// what is wrong with the file as TOML, and the keys on the lines left out for that.
func build(file string, data []byte, example func(key string) string) *treeBuilder {
	root := &table{at: Position{1, 1}}
	b := &treeBuilder{file: file, data: data, lines: newLines(data), root: root, current: root,
		broken: map[string]bool{}, example: example}
	for b.base < len(data) && len(b.faults) <= MaxFaults {
		b.parser.Reset(data[b.base:])
		for b.count <= MaxKeys && b.parser.NextExpression() {
			b.expression(b.parser.Expression())
		}
		if b.count > MaxKeys || b.parser.Error() == nil {
			break
		}
		b.resume(b.parser.Error())
	}
	if len(b.faults) == 0 {
		b.judge()
	}
	return b
}

// judge asks the library's decoder whether the document is sound as a whole, so
// that nothing is read here that TOML forbids.
func (b *treeBuilder) judge() {
	var all map[string]any
	err := toml.Unmarshal(b.data, &all)
	var de *toml.DecodeError
	switch {
	case errors.As(err, &de):
		line, column := de.Position()
		b.faults = append(b.faults, Position{line, column}.fault(b.file, Key(strings.Join(de.Key(), ".")),
			Found(NotTOML, strings.TrimPrefix(de.Error(), "toml: ")), Say(WriteTOML)))
	case err != nil:
		b.faults = append(b.faults, Position{1, 1}.fault(b.file, "", Found(NotTOML, err.Error()), Say(WriteTOML)))
	}
}

// expression takes in a header or a key with its value.
func (b *treeBuilder) expression(n *unstable.Node) {
	switch n.Kind {
	case unstable.Table:
		b.header(n, false)
	case unstable.ArrayTable:
		b.header(n, true)
	case unstable.KeyValue:
		b.keyValue(b.current, b.prefix, n)
	}
}

// step is one part of a dotted key.
type step struct {
	name string
	at   Position
	end  int // offset just after it
}

// steps returns the parts of the key of n, and no more of them than it takes to
// see that there are too many.
func (b *treeBuilder) steps(n *unstable.Node) []step {
	var out []step
	for it := n.Key(); it.Next() && len(out) <= maxDepth; {
		k := it.Node()
		offset := b.base + int(k.Raw.Offset)
		out = append(out, step{string(k.Data), b.lines.position(offset), offset + int(k.Raw.Length)})
	}
	return out
}

// header makes the table of a header the current one.
func (b *treeBuilder) header(n *unstable.Node, list bool) {
	path := b.steps(n)
	b.prefix, b.current = "", &table{at: path[0].at} // what follows a faulty header is dropped
	if b.tooMany(path[0].at) || b.tooDeep(len(path), path[0].at) {
		return
	}
	t := b.root
	prefix := ""
	for _, s := range path[:len(path)-1] {
		prefix = dotted(prefix, s.name)
		if t = b.into(t, prefix, s); t == nil {
			return
		}
	}
	last := path[len(path)-1]
	full := dotted(prefix, last.name)
	b.prefix = full
	var t2 *table
	last.at = path[0].at // of the whole name
	if list {
		t2 = b.element(t, full, last)
	} else {
		t2 = b.named(t, full, last)
	}
	if t2 != nil {
		b.current = t2
	}
}

// into returns the table that step s of a path leads to, made if need be.
func (b *treeBuilder) into(t *table, full string, s step) *table {
	e := t.find(s.name)
	switch {
	case e == nil:
		e = &entry{name: s.name, at: s.at, table: &table{at: s.at}}
		t.add(e)
		return e.table
	case len(e.list) > 0:
		return e.list[len(e.list)-1]
	case e.table == nil || e.table.closed:
		b.twice(full, s.at, e.at)
		return nil
	}
	return e.table
}

// named returns the table of a plain header.
func (b *treeBuilder) named(t *table, full string, s step) *table {
	e := t.find(s.name)
	if e == nil {
		e = &entry{name: s.name, at: s.at, table: &table{at: s.at, header: true}}
		t.add(e)
		return e.table
	}
	if e.table == nil || e.table.closed || e.table.header {
		b.twice(full, s.at, e.at)
		// Its keys are still read into the first one, so that they are checked too.
		if e.table != nil && !e.table.closed {
			return e.table
		}
		return nil
	}
	e.table.header, e.table.at = true, s.at
	return e.table
}

// element returns a new element of an array of tables.
func (b *treeBuilder) element(t *table, full string, s step) *table {
	e := t.find(s.name)
	if e == nil {
		e = &entry{name: s.name, at: s.at}
		t.add(e)
	} else if len(e.list) == 0 {
		b.twice(full, s.at, e.at)
		return nil
	}
	e.list = append(e.list, &table{at: s.at, header: true})
	return e.list[len(e.list)-1]
}

// keyValue puts one key and its value into t.
func (b *treeBuilder) keyValue(t *table, prefix string, n *unstable.Node) {
	path := b.steps(n)
	if b.tooMany(path[0].at) || b.tooDeep(len(path), path[0].at) {
		return
	}
	for _, s := range path[:len(path)-1] {
		prefix = dotted(prefix, s.name)
		if t = b.into(t, prefix, s); t == nil {
			return
		}
	}
	last := path[len(path)-1]
	full := dotted(prefix, last.name)
	if e := t.find(last.name); e != nil {
		b.twice(full, last.at, e.at)
		return
	}
	v := b.value(n.Value(), full, b.valueAt(last.end))
	e := &entry{name: last.name, at: last.at}
	if v.table != nil {
		e.table = v.table
	} else {
		e.value = &v
	}
	t.add(e)
}

// valueAt returns where the value stands whose key ends at offset end.
func (b *treeBuilder) valueAt(end int) Position {
	for end < len(b.data) && strings.IndexByte(" \t=", b.data[end]) >= 0 {
		end++
	}
	return b.lines.position(end)
}

// value takes in a value that stands at the position at.
func (b *treeBuilder) value(n *unstable.Node, full string, at Position) node {
	v := node{kind: n.Kind, text: string(n.Data), at: at}
	b.depth++
	defer func() { b.depth-- }()
	if b.tooDeep(b.depth, at) {
		return v
	}
	switch n.Kind {
	case unstable.Array:
		for it := n.Children(); it.Next(); {
			item := it.Node()
			where := at
			if item.Raw.Length > 0 {
				where = b.lines.position(b.base + int(item.Raw.Offset))
			}
			v.items = append(v.items, b.value(item, full, where))
		}
	case unstable.InlineTable:
		v.table = &table{at: at}
		for it := n.Children(); it.Next(); {
			b.keyValue(v.table, full, it.Node())
		}
		v.table.closed = true
	}
	return v
}

// MaxKeys is the greatest number of keys and headers of tables in a file: some ten times
// what a design with a full shelf has, and few enough that a file of other things is
// refused at once.
const MaxKeys = 10_000

// tooMany counts a key or header, and notes a fault and reports true where there are more
// than that.
func (b *treeBuilder) tooMany(at Position) bool {
	b.count++
	if b.count == MaxKeys+1 {
		b.faults = append(b.faults, at.fault(b.file, "", Found(ManyKeys, MaxKeys), Say(KeysAtMost, MaxKeys)))
	}
	return b.count > MaxKeys
}

// maxDepth is how deep tables and lists may lie in each other: more than a design
// needs, and few enough to keep hostile files from costing anything.
const maxDepth = 8

// tooDeep notes a fault and reports true where there are more levels than that.
func (b *treeBuilder) tooDeep(levels int, at Position) bool {
	if levels <= maxDepth {
		return false
	}
	b.faults = append(b.faults, at.fault(b.file, "", Found(TooDeep), Say(LevelsAtMost, maxDepth)))
	return true
}

// twice notes that full is given at both positions.
func (b *treeBuilder) twice(full string, at, first Position) {
	b.faults = append(b.faults, at.fault(b.file, Key(full), Found(GivenAlready, first.Line), Say(KeepOne)))
}

// dotted joins a table's name and a key.
func dotted(prefix, name string) string {
	if prefix == "" {
		return name
	}
	return prefix + "." + name
}
