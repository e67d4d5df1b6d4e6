package design

import "slices"

// FieldKind is what a form takes for a key.
type FieldKind int

// The kinds.
const (
	QuantityField FieldKind = iota // a quantity with its unit
	NumberField                    // a number, a ratio also in per cent
	TextField                      // text for people, or names with commas between them
	ChoiceField                    // one of some words
)

// Field is a key of a design as a form shows it.
type Field struct {
	Key     Key // not numbered where it belongs to the elements of a list
	List    Key // the list whose elements have it; "": none
	Switch  Key // the table, see [Switches], that has to stand for it to count; "": none
	Kind    FieldKind
	Choices []string // of a choice, as the file has them
	Meaning string   // sentences
	Range   string
	Usual   string // what holds where it is left out; "": nothing
	Example string
	Must    bool // has to be given
	First   bool // one of the few that a maker has to decide or look up
}

// Fields returns every key of a design, in the order of the file, with what holds and is
// usual in mm or in inches.
func Fields(inches bool) []Field {
	k, w := allKeys(), English()
	out := make([]Field, len(k.rows))
	for i, r := range k.rows {
		example := r.mm
		if inches && r.inch != "" {
			example = r.inch
		}
		out[i] = Field{Key: r.key, Kind: r.kind(), Choices: slices.Clone(r.choices), Meaning: r.doc, Range: w.limits(r, inches),
			Usual: r.leftAt(inches), Example: example, Must: r.must, First: r.active || r.sought}
		if _, ok := k.list(r.table()); ok {
			out[i].List = r.table()
		}
		if s, ok := switchOf(r.table()); ok {
			out[i].Switch = s.table
		}
		switch {
		case r.form == flag && r.only:
			out[i].Choices = []string{"true"}
		case r.form == flag:
			out[i].Choices = []string{"true", "false"}
		}
	}
	return out
}

// kind returns what a form takes for the row.
func (r row) kind() FieldKind {
	return [...]FieldKind{measured: QuantityField, ratio: NumberField, amount: NumberField, whole: NumberField,
		words: TextField, choice: ChoiceField, flag: ChoiceField, names: TextField}[r.form]
}

// List is an array of tables of a design.
type List struct {
	Key     Key
	Meaning string // sentences
	Most    int    // how many elements it may have
}

// Lists returns the arrays of tables of a design.
func Lists() []List {
	var out []List
	for _, l := range allKeys().lists {
		out = append(out, List{l.key, l.doc, l.limit})
	}
	return out
}
