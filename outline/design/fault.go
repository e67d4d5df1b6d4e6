package design

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"slingloft/outline/quantity"
)

// MaxFaults is the greatest number of faults that are reported for one file.
const MaxFaults = 50

// Fault is one thing wrong in a design file.
type Fault struct {
	File         string
	Line, Column int    // from 1; a column is a character, a tab counting as one
	Key          string // full key, such as "bed.span"; empty where there is none
	Found        string // what was found
	Hint         string // what would do
}

// String returns the fault on one line: "file:line:column: key: found; hint".
func (f Fault) String() string {
	key := ""
	if f.Key != "" {
		key = f.Key + ": "
	}
	return fmt.Sprintf("%s:%d:%d: %s%s; %s", f.File, f.Line, f.Column, key, f.Found, f.Hint)
}

// Error returns what String returns.
func (f Fault) Error() string { return f.String() }

// Faults are everything wrong in one design file, sorted by position.
type Faults []Fault

// Error returns one line for each fault.
func (f Faults) Error() string {
	lines := make([]string, len(f))
	for i, one := range f {
		lines[i] = one.String()
	}
	return strings.Join(lines, "\n")
}

// sorted returns f by position, each fault once and at most MaxFaults of them.
func (f Faults) sorted() Faults {
	out := slices.Clone(f)
	slices.SortStableFunc(out, func(a, b Fault) int {
		return cmp.Or(cmp.Compare(a.Line, b.Line), cmp.Compare(a.Column, b.Column))
	})
	out = slices.Compact(out)
	if len(out) > MaxFaults {
		out = out[:MaxFaults]
		out[MaxFaults-1].Found = "more faults follow"
		out[MaxFaults-1].Hint = "mend those above first"
	}
	for i, one := range out {
		out[i].Key, out[i].Found, out[i].Hint = shown(one.Key), short(one.Found), short(one.Hint)
	}
	return out
}

// shown returns a key as it is set in messages: one line, not too long.
func shown(key string) string {
	q := quantity.Quoted(key)
	return q[1 : len(q)-1]
}

// short cuts a part of a message that holds an endless word of the file.
func short(text string) string {
	const limit = 600
	if r := []rune(text); len(r) > limit {
		return string(r[:limit-1]) + "…"
	}
	return text
}

// Position is a place in a design file.
type Position struct {
	Line, Column int // from 1
}

// Source remembers where a design's values were written, so that a fault that
// only a later stage can find still names its line. The zero Source knows no file.
type Source struct {
	file string
	at   map[string]Position      // of each key's value and each table's header
	unit map[string]quantity.Unit // in which a quantity was written
}

// File returns the name of the file.
func (s Source) File() string { return s.file }

// Given reports whether the file gives the key ("bed.span") or table ("hang").
func (s Source) Given(key string) bool {
	_, ok := s.at[key]
	return ok
}

// At returns where the value of the key stands; for a key that was left out, the
// header of its table, or the start of the file.
func (s Source) At(key string) Position {
	for key != "" {
		if p, ok := s.at[key]; ok {
			return p
		}
		key = key[:max(strings.LastIndexByte(key, '.'), 0)]
	}
	return Position{1, 1}
}

// Fault returns a fault at the place of the key: found says what is wrong there,
// hint which value would do.
func (s Source) Fault(key, found, hint string) Fault {
	p := s.At(key)
	return Fault{s.file, p.Line, p.Column, key, found, hint}
}

// Quantity returns a value as the maker would write it for the key: in inches or
// pounds where the key was written so, rounded in the given direction.
func (s Source) Quantity(key string, d quantity.Dimension, v float64, r quantity.Rounding) string {
	imperial := s.unit[key].Imperial
	return d.Unit(imperial).Format(v, r)
}

// Length returns a length in mm as the maker would write it for the key, rounded
// in the given direction.
func (s Source) Length(key string, mm float64, r quantity.Rounding) string {
	return s.Quantity(key, quantity.Length, mm, r)
}
