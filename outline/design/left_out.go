package design

import (
	"regexp"
	"strings"
)

// leftOutHead is the header of a table behind #, as a starter file has it.
var leftOutHead = regexp.MustCompile(`^#\s*\[\[?\s*([A-Za-z_.]+)\s*\]\]?\s*(#.*)?$`)

// leftOut is a table whose header stands behind #.
type leftOut struct {
	table Key
	line  int
}

// headsLeftOut returns for each line, from 1, the header behind # that stands nearest
// above it, if no header that counts comes between.
func headsLeftOut(data []byte) []leftOut {
	out := []leftOut{{}}
	var now leftOut
	for i, line := range strings.Split(string(data), "\n") {
		line = strings.TrimSpace(line)
		if strings.HasPrefix(line, "[") {
			now = leftOut{}
		} else if m := leftOutHead.FindStringSubmatch(line); m != nil {
			now = leftOut{Key(m[1]), i + 1}
		}
		out = append(out, now)
	}
	return out
}

// strayed notes a key that stands below the header, behind #, of the table that it
// belongs to, and so would fall to another one, and reports whether it does.
func (r *reader) strayed(full, table Key, e *entry) bool {
	head := r.heads[min(e.at.Line, len(r.heads)-1)]
	_, isList := r.keys.list(head.table)
	if row, ok := r.keys.byKey[head.table.In(e.name)]; head.line == 0 || !ok || row.table() == table {
		return false
	}
	mark := "[" + string(head.table) + "]"
	if isList {
		mark = "[" + mark + "]"
	}
	r.bad[head.table.In(e.name)], r.bad[full] = true, true
	r.fault(e.at, shown(full), Found(BelowLeftOut, mark, head.line), Say(TakeHeadToo, mark))
	return true
}
