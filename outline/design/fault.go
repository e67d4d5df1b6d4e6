package design

import (
	"cmp"
	"math"
	"reflect"
	"slices"
	"strings"

	"slingloft/outline/quantity"
)

// MaxFaults is the greatest number of faults that are reported for one file.
const MaxFaults = 50

// Fault is one thing wrong in a design file.
type Fault struct {
	File         string
	Line, Column int // from 1; a column is a character, a tab counting as one
	Key          Key // full key, such as "bed.span"; empty where there is none
	Found        Finding
	Hint         Hint // what would do
}

// String returns the fault on one line in English.
func (f Fault) String() string { return English().Text(f) }

// Error returns what String returns.
func (f Fault) Error() string { return f.String() }

// sameAs reports whether both faults say the same of the same place.
func (f Fault) sameAs(other Fault) bool { return reflect.DeepEqual(f, other) }

// Faults are everything wrong in a design and its shelf, sorted by file and position.
type Faults []Fault

// Error returns one line in English for each fault.
func (f Faults) Error() string {
	lines, w := make([]string, len(f)), English()
	for i, one := range f {
		lines[i] = w.Text(one)
	}
	return strings.Join(lines, "\n")
}

// sorted returns f by position, each fault once and at most MaxFaults of them.
func (f Faults) sorted() Faults {
	out := slices.Clone(f)
	slices.SortStableFunc(out, func(a, b Fault) int {
		return cmp.Or(cmp.Compare(a.File, b.File), cmp.Compare(a.Line, b.Line), cmp.Compare(a.Column, b.Column))
	})
	out = slices.CompactFunc(out, Fault.sameAs)
	if len(out) > MaxFaults {
		out = out[:MaxFaults]
		out[MaxFaults-1].Found = Found(MoreFaults)
		out[MaxFaults-1].Hint = Hint{Say: Say(MendFirst)}
	}
	for i, one := range out {
		out[i].Key = shown(one.Key)
	}
	return out
}

// shown returns a key as it is set in messages: one line, not too long.
func shown(key Key) Key {
	q := quantity.Quoted(string(key))
	return Key(q[1 : len(q)-1])
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

// fault returns a fault at the position.
func (p Position) fault(file string, key Key, f Finding, hint Phrase) Fault {
	return Fault{File: file, Line: p.Line, Column: p.Column, Key: key, Found: f, Hint: Hint{Say: hint}}
}

// Source remembers where a design's values were written, so that a fault that
// only a later stage can find still names its line. The zero Source knows no file.
type Source struct {
	file   string
	at     map[Key]Position      // of each key's value and each table's header
	unit   map[Key]quantity.Unit // in which a quantity was written
	pounds bool                  // most of the file is in inches and pounds
	from   map[Key]string        // the shelf of keys whose value stands there

	renamed []Renamed
}

// Renamed is a key that a file calls as it was called before.
type Renamed struct {
	Old, New Key
	At       Position
}

// Renamed returns the keys that the file calls as they were called before.
func (s Source) Renamed() []Renamed { return s.renamed }

// sourceOf returns the source of a file of which nothing is read yet.
func sourceOf(file string) Source {
	return Source{file: file, at: map[Key]Position{}, unit: map[Key]quantity.Unit{}, from: map[Key]string{}}
}

// fileOf returns the file in which the value of a key stands, or would.
func (s Source) fileOf(key Key) string {
	if f, ok := s.from[key]; ok {
		return f
	}
	return s.file
}

// File returns the name of the file.
func (s Source) File() string { return s.file }

// Given reports whether the file gives the key ("bed.span") or table ("hang").
func (s Source) Given(key Key) bool {
	_, ok := s.at[key]
	return ok
}

// At returns where the value of the key stands; for a key that was left out, the
// header of its table, or the start of the file.
func (s Source) At(key Key) Position {
	for key != "" {
		if p, ok := s.at[key]; ok {
			return p
		}
		key = key.Table()
	}
	return Position{1, 1}
}

// Fault returns a fault at the place of the key: what is wrong there, and what would do.
func (s Source) Fault(key Key, f Finding, hint Phrase) Fault {
	p := s.At(key)
	return p.fault(s.fileOf(key), key, f, hint)
}

// Bounded returns a fault at the place of the key of which a value would do, and
// any beyond it.
func (s Source) Bounded(f Finding, b Bound) Fault {
	out := s.Fault(b.Key, f, Phrase{})
	out.Hint.Bound = b
	return out
}

// Least and Most return a value of a key, in the unit that it is kept in, as one
// that would do together with all beyond it.
func (s Source) Least(key Key, v float64) Bound {
	return Bound{key, v, AtLeast, s.Value(key, v, quantity.Up)}
}

// Most is [Source.Least] for a greatest value.
func (s Source) Most(key Key, v float64) Bound {
	return Bound{key, v, AtMost, s.Value(key, v, quantity.Down)}
}

// Quantity returns a value as the maker would write it for the key: in the unit that
// the key was written in, or else in inches and pounds where most of the file is, and
// rounded in the given direction.
func (s Source) Quantity(key Key, d quantity.Dimension, v float64, r quantity.Rounding) string {
	u := s.unit[key]
	if u.Symbol == "" || u.Dimension != d {
		u = d.Unit(s.pounds)
	}
	if u.Factor == quantity.Inch && d == quantity.Length && math.Abs(v) >= quantity.Inch {
		return quantity.Style{Inches: true}.Length(toSixteenth(v, r))
	}
	return u.Format(v, r)
}

// toSixteenth rounds a length in mm to a sixteenth of an inch, the step of a tape.
func toSixteenth(mm float64, r quantity.Rounding) float64 {
	const step = quantity.Inch / 16
	const slack = 1e-9 // of a step: a conversion's last bits move nothing
	switch r {
	case quantity.Up:
		return math.Ceil(mm/step-slack) * step
	case quantity.Down:
		return math.Floor(mm/step+slack) * step
	}
	return math.Round(mm/step) * step
}

// Value returns a value of the key, in the unit that it is kept in, as the maker
// would write it, rounded in the given direction.
func (s Source) Value(key Key, v float64, r quantity.Rounding) string {
	row, ok := allKeys().byKey[key.Unnumbered()]
	if ok && row.form == measured {
		return s.Quantity(key, row.dim, v, r)
	}
	return quantity.Ratio.Unit(false).Format(v, r)
}

// Length returns a length in mm as the maker would write it for the key, rounded
// in the given direction.
func (s Source) Length(key Key, mm float64, r quantity.Rounding) string {
	return s.Quantity(key, quantity.Length, mm, r)
}
