package desk

import (
	"slingloft/cmd/slingloft/work"
	"slingloft/outline/design"
	"slingloft/outline/fit"
	"slingloft/outline/quantity"
)

// Answers are what a maker says before there is a design, each as typed.
type Answers struct {
	Stature string `json:"stature"`
	Mass    string `json:"mass"`
	Lies    string `json:"lies"`  // as the design's key has it
	Width   string `json:"width"` // of the cloth; "": not known
	Inches  bool   `json:"inches"`
}

// Propose puts a whole design for a sleeper where nothing stands yet.
func (d *Desk) Propose(a Answers) error {
	w, err := a.wish()
	if err != nil {
		return err
	}
	d.mu.Lock()
	name, empty := d.name(), d.text() == nil
	d.mu.Unlock()
	if !empty {
		return ErrPresent
	}
	p, err := work.Propose(name, w)
	if err != nil {
		return err
	}
	d.mu.Lock()
	defer d.mu.Unlock()
	d.push(step{data: []byte(p.Text)})
	return nil
}

// wish reads the answers.
func (a Answers) wish() (work.Wish, error) {
	w := work.Wish{Stature: a.Stature, Mass: a.Mass, ClothWidth: a.Width, Inches: a.Inches, Person: fit.Person{OnSide: a.Lies == "side"}}
	if a.Inches {
		w.Person.Step = quantity.Inch / 4
	}
	for _, m := range []struct {
		key  design.Key
		text string
		put  func(float64)
	}{
		{design.KeySleeperStature, a.Stature, func(v float64) { w.Person.Stature = v }},
		{design.KeySleeperMass, a.Mass, func(v float64) { w.Person.Mass = quantity.Kilograms(v) }},
		{design.KeyClothWidth, a.Width, func(float64) {}},
	} {
		if m.text == "" && m.key == design.KeyClothWidth {
			continue
		}
		q, err := design.Measure(m.key, m.text, a.Inches)
		if err != nil {
			return w, err
		}
		m.put(q.Value)
	}
	return w, nil
}
