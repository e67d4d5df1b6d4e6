package desk

import (
	"slingloft/cmd/slingloft/work"
	"slingloft/outline/design"
	"slingloft/outline/fit"
	"slingloft/outline/quantity"
)

// Answers are what a maker says before there is a design, each as typed; "" is not
// known.
type Answers struct {
	Stature   string            `json:"stature"`
	Mass      string            `json:"mass"`
	Shoulders string            `json:"shoulders"`
	Lies      string            `json:"lies"` // as the design's key has it
	Inches    bool              `json:"inches"`
	Distance  string            `json:"distance"` // between the anchors
	Height    string            `json:"height"`   // up to which they can be reached
	Width     string            `json:"width"`    // of the cloth
	Bar       string            `json:"bar"`      // the longest
	Cord      string            `json:"cord"`     // its diameter
	Strength  string            `json:"strength"`
	Take      map[string]string `json:"take"` // from the shelf, by field
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
	w.Shelf = d.with.Shelf
	p, err := work.Propose(name, w)
	if err != nil {
		return err
	}
	d.mu.Lock()
	defer d.mu.Unlock()
	d.push(step{data: []byte(p.Text)})
	return nil
}

// Example puts a starter design where nothing stands yet.
func (d *Desk) Example(inches bool) error {
	d.mu.Lock()
	defer d.mu.Unlock()
	if d.text() != nil {
		return ErrPresent
	}
	d.push(step{data: []byte(design.Starter(inches))})
	return nil
}

// wish reads the answers. The error names the field that the answer would stand in.
func (a Answers) wish() (work.Wish, error) {
	w := work.Wish{Stature: a.Stature, Mass: a.Mass, Shoulders: a.Shoulders, ClothWidth: a.Width, Inches: a.Inches, Person: fit.Person{OnSide: a.Lies == "side"},
		AtHand: work.Hand{Distance: a.Distance, Height: a.Height, Cord: a.Cord, Strength: a.Strength, Takes: map[design.Key]string{}}}
	if a.Inches {
		w.Person.Step = quantity.Inch / 4
	}
	for field, name := range a.Take {
		w.AtHand.Takes[KeyOf(field)] = name
	}
	for _, m := range []struct {
		key  design.Key
		text string
		must bool
		put  func(float64)
	}{
		{design.KeySleeperStature, a.Stature, true, func(v float64) { w.Person.Stature = v }},
		{design.KeySleeperMass, a.Mass, true, func(v float64) { w.Person.Mass = quantity.Kilograms(v) }},
		{design.KeySleeperShoulders, a.Shoulders, false, func(v float64) { w.Person.Shoulders = v }},
		{design.KeyBedHeadBar, a.Bar, false, func(v float64) { w.Person.Longest = v }},
		{design.KeyHangDistance, a.Distance, false, nil}, {design.KeyHangHeight, a.Height, false, nil}, {design.KeyClothWidth, a.Width, false, nil},
		{design.KeyCordSideDiameter, a.Cord, false, nil}, {design.KeyCordSideStrength, a.Strength, false, nil},
	} {
		if m.text == "" && !m.must {
			continue
		}
		q, err := design.Measure(m.key, m.text, a.Inches)
		if err != nil {
			return w, Unread{m.key, err}
		}
		if m.put != nil {
			m.put(q.Value)
		}
	}
	return w, nil
}

// Unread is an answer that cannot be read.
type Unread struct {
	Key design.Key // of the field that it would stand in
	Err error
}

// Error names the field in the page's words.
func (u Unread) Error() string { return English().Labels[u.Key] + ": " + u.Err.Error() }

// Unwrap returns what is wrong with it.
func (u Unread) Unwrap() error { return u.Err }
