package desk

import (
	"errors"
	"strings"

	"slingloft/cmd/slingloft/work"
	"slingloft/outline/design"
	"slingloft/outline/fit"
	"slingloft/outline/hung"
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
		return unreadOf(err)
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

// answer is an answer that is a quantity, and the key whose value it is.
type answer struct {
	key  design.Key
	text *string
	must bool
	put  func(float64) // where it is needed as a number
}

// wish reads the answers. The error is an [Unread].
func (a Answers) wish() (work.Wish, error) {
	w := work.Wish{Inches: a.Inches, Person: fit.Person{OnSide: a.Lies == "side"}, AtHand: work.Hand{Takes: map[design.Key]string{}}}
	if a.Inches {
		w.Person.Step = quantity.Inch / 4
	}
	for field, name := range a.Take {
		w.AtHand.Takes[KeyOf(field)] = name
	}
	for _, m := range []answer{
		{design.KeySleeperStature, &a.Stature, true, func(v float64) { w.Person.Stature = v }},
		{design.KeySleeperMass, &a.Mass, true, func(v float64) { w.Person.Mass = quantity.Kilograms(v) }},
		{design.KeySleeperShoulders, &a.Shoulders, false, func(v float64) { w.Person.Shoulders = v }},
		{design.KeyBedHeadBar, &a.Bar, false, func(v float64) { w.Person.Longest = v }},
		{design.KeyHangDistance, &a.Distance, false, nil}, {design.KeyHangHeight, &a.Height, false, nil},
		{design.KeyClothWidth, &a.Width, false, nil},
		{design.KeyCordSideDiameter, &a.Cord, false, nil}, {design.KeyCordSideStrength, &a.Strength, false, nil},
	} {
		if *m.text = design.Tidied(m.key, *m.text); *m.text == "" && !m.must {
			continue
		}
		q, err := design.Measure(m.key, *m.text, a.Inches)
		if err != nil {
			return w, Unread{m.key, err.Error()}
		}
		if m.put != nil {
			m.put(q.Value)
		}
	}
	w.Stature, w.Mass, w.Shoulders, w.ClothWidth = a.Stature, a.Mass, a.Shoulders, a.Width
	w.AtHand.Distance, w.AtHand.Height, w.AtHand.Cord, w.AtHand.Strength = a.Distance, a.Height, a.Cord, a.Strength
	return w, nil
}

// Unread is an answer that cannot be read, or with which there is no bed.
type Unread struct {
	Key  design.Key // of the field that it would stand in
	Text string     // what is wrong with it
}

// Error names the field in the page's words.
func (u Unread) Error() string { return English().Labels[u.Key] + ": " + u.Text }

// unreadOf returns an error of [work.Propose] as one of an answer, where it is: there is no
// file yet whose line could be named.
func unreadOf(err error) error {
	var no *hung.Impossible
	var faults design.Faults
	switch {
	case errors.As(err, &no):
		return Unread{no.Key, strings.TrimPrefix(no.Error(), string(no.Key)+": ")}
	case errors.As(err, &faults):
		return Unread{faults[0].Key, design.English().Message(faults[0])}
	}
	return err
}
