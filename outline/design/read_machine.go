package design

import (
	"slices"
	"strings"
	"sync"
)

// machineKeys is the part of the schema that a machine's own file may hold.
var machineKeys = sync.OnceValue(func() keys {
	all := allKeys()
	k := keys{byKey: map[Key]row{}}
	in := func(k Key) bool { return k == KeyMachine || strings.HasPrefix(string(k), string(KeyMachine)+".") }
	for _, r := range all.rows {
		if in(r.key) {
			k.rows = append(k.rows, r)
			k.byKey[r.key] = r
		}
	}
	k.tables = slices.DeleteFunc(slices.Clone(all.tables), func(t Key) bool { return !in(t) })
	k.lists = slices.DeleteFunc(slices.Clone(all.lists), func(l repeated) bool { return !in(l.key) })
	return k
})

// ReadMachine reads a file that holds nothing but a machine's settings, under
// [machine] as a design has them; name is what its faults call it. The source says
// where they stand. On any fault the error is a [Faults], as that of [Read].
func ReadMachine(name string, data []byte) (Machine, Source, error) {
	r := &reader{keys: machineKeys(), bad: map[Key]bool{}, source: sourceOf(name)}
	data, refused := plainText(name, data)
	if refused != nil {
		return Machine{}, Source{}, refused
	}
	b := build(name, data, r.keys.example)
	r.faults = b.faults
	for key := range b.broken {
		r.bad[Key(key)] = true
	}
	r.design, r.heads = Defaults(), headsLeftOut(data)
	r.table("", b.root)
	if len(r.faults) == 0 && !r.source.Given("machine") {
		r.fault(Position{1, 1}, "machine", Found(TableMissing), Say(WriteKeysBelow, KeyMachine))
	}
	r.checkMachine()
	if len(r.faults) > 0 {
		return Machine{}, r.source, r.faults.sorted()
	}
	return r.design.Machine, r.source, nil
}
