package desk

import (
	"slingloft/outline/design"
)

// Compared is one of several designs that are looked at side by side.
type Compared struct {
	Name  string `json:"name"`            // the value, or what the other design is called
	Sheet string `json:"sheet,omitempty"` // the build sheet without its lay; "": it is at fault
	Fault string `json:"fault,omitempty"`
}

// mostCompared bounds how many designs are compared at once: own choice, what a screen
// shows beside each other.
const mostCompared = 6

// Compare returns what stands with several values of a key in turn, and other designs, as
// texts, beside it. Nothing of it is kept.
func (d *Desk) Compare(key design.Key, values, texts []string) []Compared {
	d.mu.Lock()
	name, data := d.name(), d.text()
	d.mu.Unlock()
	var out []Compared
	for _, v := range values[:min(len(values), mostCompared)] {
		t, err := design.OpenText(name, data)
		if err == nil {
			t, err = t.Set(key, v)
		}
		if err != nil {
			out = append(out, Compared{Name: v, Fault: err.Error()})
			continue
		}
		out = append(out, d.compared(v, name, t.Bytes()))
	}
	for _, text := range texts[:min(len(texts), mostCompared)] {
		out = append(out, d.compared("", name, []byte(text)))
	}
	return out
}

// compared reads one design; without a name it goes by its own.
func (d *Desk) compared(name, file string, data []byte) Compared {
	p, html, err := unlaid(file, data, d.with)
	if name == "" {
		name = p.Design.Name
	}
	if err != nil {
		return Compared{Name: name, Fault: err.Error()}
	}
	return Compared{Name: name, Sheet: html}
}
