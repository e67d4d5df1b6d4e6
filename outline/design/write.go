package design

import (
	"fmt"
	"reflect"
	"strconv"
	"strings"

	"slingloft/outline/quantity"
)

// Write returns a design file that [Read] turns back into the same design, which
// has to be one that Read would accept. Keys at their usual value are left out.
func Write(d Design) []byte { return written(d, row.name) }

// Values returns the same with the keys that were renamed under the names that they had
// first: what is told apart by a digest of it stays what it was.
func Values(d Design) []byte {
	return written(d, func(r row) string {
		if r.was != "" {
			return r.was
		}
		return r.name()
	})
}

// written writes a design with its keys under the names that they are given.
func written(d Design, named func(row) string) []byte {
	var b strings.Builder
	k := allKeys()
	usual := defaults(d.Output.Inches)
	for _, r := range k.in("") {
		r.write(&b, &d, &usual, named)
	}
	for _, t := range k.tables {
		l, isList := k.list(t)
		if s, ok := switchOf(t); ok {
			if *s.on(&d) {
				writeSwitch(&b, "["+string(t)+"]", k.in(t), pair{&d, &usual}, named)
			}
			continue
		}
		if !isList {
			writeTable(&b, "["+string(t)+"]", k.in(t), pair{&d, &usual}, named)
			continue
		}
		for i := range l.count(&d) {
			one := l.pick(d, i)
			writeTable(&b, "[["+string(t)+"]]", k.in(t), pair{&one, nil}, named)
		}
	}
	return []byte(b.String())
}

// pair is a design with what its keys are usually at; nil: every key counts.
type pair struct{ design, usual *Design }

// writeSwitch writes a table that is on, whether or not it holds anything.
func writeSwitch(b *strings.Builder, head string, rows []row, of pair, named func(row) string) {
	fmt.Fprintf(b, "\n%s\n", head)
	for _, r := range rows {
		r.write(b, of.design, of.usual, named)
	}
}

// writeTable writes a table that holds anything.
func writeTable(b *strings.Builder, head string, rows []row, of pair, named func(row) string) {
	var body strings.Builder
	for _, r := range rows {
		r.write(&body, of.design, of.usual, named)
	}
	if body.Len() > 0 {
		fmt.Fprintf(b, "\n%s\n%s", head, body.String())
	}
}

// write writes one key unless it is at its usual value or was not given.
func (r row) write(b *strings.Builder, d, usual *Design, named func(row) string) {
	v := r.get(d)
	if v == nil || r.absent(v) {
		return
	}
	if r.usual != "" && usual != nil && reflect.DeepEqual(v, r.get(usual)) {
		return
	}
	fmt.Fprintf(b, "%s = %s\n", named(r), r.written(v))
}

// absent reports whether v stands for a key that was not given.
func (r row) absent(v any) bool {
	switch v := v.(type) {
	case float64:
		return v == 0 && (r.form == amount || !r.holds(0))
	case string:
		return v == ""
	case []string:
		return len(v) == 0
	}
	return false
}

// written returns v in TOML, exactly.
func (r row) written(v any) string {
	switch v := v.(type) {
	case float64:
		if r.form != measured {
			return strconv.FormatFloat(v, 'f', -1, 64)
		}
		return strconv.Quote(exact(r.dim, v))
	case []string:
		quoted := make([]string, len(v))
		for i, s := range v {
			quoted[i] = strconv.Quote(s)
		}
		return "[" + strings.Join(quoted, ", ") + "]"
	case string:
		return strconv.Quote(v)
	}
	return fmt.Sprint(v)
}

// exact writes a quantity so that it reads back to the same bits: angles in
// degrees where that is possible, everything else in its stored unit.
func exact(d quantity.Dimension, v float64) string {
	if d == quantity.Angle {
		deg := d.Unit(false)
		text := strconv.FormatFloat(v/deg.Factor, 'f', -1, 64) + " " + deg.Symbol
		if q, err := quantity.As(text, d); err == nil && q.Value == v {
			return text
		}
	}
	return d.Text(v)
}
