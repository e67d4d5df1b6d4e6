package desk

import (
	"unicode/utf8"

	"slingloft/outline/design"
)

// Set gives fields other values, all as one step; "" takes a key out. Changes of one
// field that have the same turn, other than 0, are one step. A value of an element that a
// list does not have yet adds it, where it is the next.
func (d *Desk) Set(changes []design.Change, turn int) error {
	return d.edit(func(t design.Text) (design.Text, error) {
		for _, c := range changes {
			var err error
			if list, n := listOf(c.Key); n > 0 && n == t.Count(list)+1 && c.Value != "" {
				if t, err = t.Grow(list); err != nil {
					return t, err
				}
			}
			if t, err = t.Set(c.Key, c.Value); err != nil {
				return t, err
			}
		}
		return t, nil
	}, changes, turn)
}

// Grow adds an element to a list, and Drop takes the element of a number, from 1, out.
func (d *Desk) Grow(list design.Key) error {
	return d.edit(func(t design.Text) (design.Text, error) { return t.Grow(list) }, nil, 0)
}

// Drop takes an element, counted from 1, out of a list.
func (d *Desk) Drop(list design.Key, n int) error {
	return d.edit(func(t design.Text) (design.Text, error) { return t.Drop(list, n) }, nil, 0)
}

// Switch puts a table that turns something on into the design, or takes it out with all
// that stands in it.
func (d *Desk) Switch(table design.Key, on bool) error {
	return d.edit(func(t design.Text) (design.Text, error) {
		if on {
			return t.SwitchOn(table)
		}
		return t.SwitchOff(table)
	}, nil, 0)
}

func (d *Desk) edit(change func(design.Text) (design.Text, error), changes []design.Change, turn int) error {
	d.mu.Lock()
	defer d.mu.Unlock()
	data := d.text()
	if last := d.steps[d.at]; len(changes) == 1 && d.at > 0 && last.retyped(step{key: changes[0].Key, bare: changes[0].Value == ""}) {
		data = d.steps[d.at-1].data // the key keeps its place, and what is said of it
	}
	before, err := design.OpenText(d.name(), data)
	if err != nil {
		return err
	}
	after, err := change(before)
	if err != nil {
		return err
	}
	s := step{data: after.Bytes(), turn: turn}
	if len(changes) == 1 {
		s.key, s.bare = changes[0].Key, changes[0].Value == ""
	}
	if string(s.data) != string(d.text()) {
		d.push(s)
	}
	return nil
}

// SetText puts another text in the place of what stands, sound or not.
func (d *Desk) SetText(text string) error {
	if len(text) > design.MaxSize || !utf8.ValidString(text) {
		return ErrText
	}
	d.mu.Lock()
	defer d.mu.Unlock()
	if text != string(d.text()) {
		d.push(step{data: []byte(text)})
	}
	return nil
}
