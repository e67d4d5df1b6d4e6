package design

// A switch is a table that turns something on by standing in the file, even empty: every
// one of its keys has a default, or is needed in that table alone.

// toggled is a switch with the place where the design keeps that it stands.
type toggled struct {
	table Key
	on    func(*Design) *bool
}

// switches returns the tables that turn something on, each after the one around it.
func switches() []toggled {
	return []toggled{
		{KeySack, func(d *Design) *bool { return &d.Sack.On }},
		{KeySackCloth, func(d *Design) *bool { return &d.Sack.Own.On }},
		{KeyCover, func(d *Design) *bool { return &d.Cover.On }},
		{KeyCoverCloth, func(d *Design) *bool { return &d.Cover.Own.On }},
		{KeyTarp, func(d *Design) *bool { return &d.Tarp.On }},
		{KeyTarpCloth, func(d *Design) *bool { return &d.Tarp.Own.On }},
		{KeyLining, func(d *Design) *bool { return &d.Lining.On }},
		{KeyLiningCloth, func(d *Design) *bool { return &d.Lining.Own.On }},
	}
}

// Switch is a table that turns something on by standing in a file, even empty.
type Switch struct {
	Key     Key
	Meaning string // sentences
}

// Switches returns the tables that turn something on, each after the one around it.
func Switches() []Switch {
	docs := tableDocs()
	var out []Switch
	for _, s := range switches() {
		out = append(out, Switch{s.table, docs[s.table]})
	}
	return out
}

// switchOf returns the switch that a table is.
func switchOf(table Key) (toggled, bool) {
	for _, s := range switches() {
		if s.table == table {
			return s, true
		}
	}
	return toggled{}, false
}

// maybe reports whether a table may be left out although keys of it are needed where
// it stands.
func maybe(table Key) bool {
	_, ok := switchOf(table)
	return ok || table == KeyHangLine
}

// switchOn turns on what stands in the file.
func (r *reader) switchOn() {
	for _, s := range switches() {
		*s.on(&r.design) = r.source.Given(s.table)
	}
}
