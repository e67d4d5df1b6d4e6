package desk

import (
	"errors"
	"fmt"
	"strings"

	"slingloft/cmd/slingloft/work"
	"slingloft/outline/design"
)

// State is what a page shows.
type State struct {
	Number  int    `json:"number"`
	File    string `json:"file"`   // its name; "": it has none yet
	Digest  string `json:"digest"` // of the file as it was opened or saved last
	Unsaved bool   `json:"unsaved"`
	Undo    bool   `json:"undo"` // there is something to undo
	Redo    bool   `json:"redo"`
	Ask     bool   `json:"ask"` // nothing stands here yet: the page begins with its questions
	Inches  bool   `json:"inches"`

	Values map[string]string `json:"values"` // of the keys that are given, by field
	Counts map[string]int    `json:"counts"` // elements of each list
	// Switches are the tables that turn something on by standing there, and whether they do.
	Switches map[string]bool `json:"switches"`
	Faults   []Fault         `json:"faults"`
	Text     string          `json:"text"`             // of the file as it stands
	Broken   bool            `json:"broken"`           // the text is no TOML, so that its fields show nothing
	Theirs   *string         `json:"theirs,omitempty"` // what the file holds by somebody else's hand
	Lost     string          `json:"lost,omitempty"`   // digest of that

	Drawn int  `json:"drawn"` // number of the sheet; 0: none yet
	Laid  bool `json:"laid"`  // it has its lay
}

// Fault is one thing wrong in the design.
type Fault struct {
	Field string `json:"field,omitempty"` // the field at fault; "": none has it
	Place string `json:"place"`           // "my.toml:12:8"
	Text  string `json:"text"`
	Line  string `json:"line,omitempty"` // the line of the file as it stands
	Ways  []Way  `json:"ways,omitempty"` // out of it
}

// Way is a way out of a fault: a button.
type Way struct {
	Label string   `json:"label"`
	Set   []Change `json:"set"`
}

// Change is another value for a field; "" takes its key out.
type Change struct {
	Field string `json:"field"`
	Value string `json:"value"`
}

// Keys returns changes by key.
func Keys(changes []Change) []design.Change {
	out := make([]design.Change, len(changes))
	for i, c := range changes {
		out[i] = design.Change{Key: KeyOf(c.Field), Value: c.Value}
	}
	return out
}

// State returns what stands now.
func (d *Desk) State() State {
	d.mu.Lock()
	defer d.mu.Unlock()
	data := d.text()
	s := State{Number: d.number, File: d.store.Name(), Digest: Digest(d.opened), Unsaved: d.unsaved(),
		Undo: d.at > 0 && d.steps[d.at-1].data != nil, Redo: d.at+1 < len(d.steps), Ask: data == nil,
		Values: map[string]string{}, Counts: map[string]int{}, Switches: map[string]bool{}, Text: string(data),
		Faults: d.drawn.faults, Drawn: d.drawn.number, Laid: d.drawn.laid}
	if d.theirs != nil {
		theirs := string(d.theirs)
		s.Theirs, s.Lost = &theirs, Digest(d.theirs)
	}
	t, err := design.OpenText(d.name(), data)
	if s.Broken = err != nil; s.Broken {
		return s
	}
	for _, key := range t.Keys() {
		s.Values[FieldName(key)], _ = t.Value(key)
	}
	for _, l := range design.Lists() {
		s.Counts[string(l.Key)] = t.Count(l.Key)
	}
	for _, sw := range design.Switches() {
		s.Switches[string(sw.Key)] = t.On(sw.Key)
	}
	s.Inches = s.Values[string(design.KeyOutputUnits)] == "in"
	return s
}

// faultsOf returns an error as a page shows it, each fault with ways out.
func (d *Desk) faultsOf(err error, data []byte, ways bool) []Fault {
	var many design.Faults
	if !errors.As(err, &many) {
		return []Fault{{Text: err.Error()}}
	}
	name := d.name()
	text, open := design.OpenText(name, data)
	shelf, _ := work.OpenShelf(d.with, name, data)
	lines := strings.Split(string(data), "\n")
	say := design.English()
	out := make([]Fault, len(many))
	for i, f := range many {
		out[i] = Fault{Field: FieldName(f.Key), Place: fmt.Sprintf("%s:%d:%d", f.File, f.Line, f.Column), Text: say.Message(f)}
		if f.File == name && f.Line >= 1 && f.Line <= len(lines) {
			out[i].Line = cut(strings.TrimRight(lines[f.Line-1], "\r"))
		}
		if open != nil || !ways {
			continue
		}
		for _, fix := range text.Fixes(f, shelf) {
			out[i].Ways = append(out[i].Ways, d.way(f.Key, fix))
		}
	}
	return out
}

// way returns a fix as a button.
func (d *Desk) way(key design.Key, fix design.Fix) Way {
	var w Way
	var parts []string
	for _, c := range fix {
		w.Set = append(w.Set, Change{FieldName(c.Key), c.Value})
		switch {
		case c.Value == "" && len(fix) > 1: // goes with the renaming
		case c.Value == "":
			parts = append(parts, fmt.Sprintf(d.words.TakeOut, d.called(c.Key)))
		case c.Key == key:
			parts = append(parts, fmt.Sprintf(d.words.Use, c.Value))
		default:
			parts = append(parts, fmt.Sprintf(d.words.UseFor, c.Value, d.called(c.Key)))
		}
	}
	w.Label = strings.Join(parts, d.words.And)
	return w
}

// called returns what people call a key: by its field's word, else as the file has it.
func (d *Desk) called(key design.Key) string {
	if text := d.words.Labels[key.Unnumbered()]; text != "" {
		return fmt.Sprintf(d.words.Quoted, text)
	}
	return string(key)
}

// cut shortens a line that no page would show whole.
func cut(line string) string {
	const longest = 160
	if r := []rune(line); len(r) > longest {
		return string(r[:longest]) + " …"
	}
	return line
}
