package work

import (
	"math"
	"testing"

	"slingloft/outline/design"
	"slingloft/outline/finished"
	"slingloft/outline/quantity"
	"slingloft/outline/state"
)

// rigged returns the built-in design with some change, hung up and not laid.
func rigged(t testing.TB, change func(*design.Design)) Plan {
	t.Helper()
	name, data := design.Demo()
	d, _, err := design.Read(name, data)
	if err != nil {
		t.Fatal(err)
	}
	d.Side.Stiffness, d.Leg.Stiffness, d.Hang.Line.Stiffness, d.Cloth.WeftStiffness = 240e3, 200e3, 150e3, 60
	if change != nil {
		change(&d)
	}
	p, err := ReadFor(name, design.Write(d), Setting{})
	if err != nil {
		t.Fatal(err)
	}
	return p
}

func lies(t testing.TB, p Plan) state.State {
	t.Helper()
	s, err := state.Lie(p.Made(), p.Person())
	if err != nil {
		t.Fatal(err)
	}
	return s
}

// A bed whose pieces were shortened by their stretch lies as designed. Where they were
// not, what is known to stretch still does, and the bed lies lower by that; where
// nothing is known to stretch, nothing does.
func TestMadeLies(t *testing.T) {
	known := lies(t, rigged(t, nil))
	if known.Level.Worst() > 1.5 || math.Abs(known.Level.Height) > 1.5 {
		t.Errorf("shortened: %+v", known.Level)
	}
	plain := lies(t, rigged(t, func(d *design.Design) { d.Bed.Plain = true }))
	if sinks := known.Level.Height - plain.Level.Height; sinks < 8 || sinks > 40 {
		t.Errorf("not shortened, it sinks by %g mm", sinks)
	}
	stiff := lies(t, rigged(t, func(d *design.Design) {
		d.Bed.Plain = true
		d.Side.Stiffness, d.Leg.Stiffness, d.Hang.Line.Stiffness, d.Cloth.WeftStiffness = 0, 0, 0, 0
	}))
	if math.Abs(stiff.Level.Height) > 0.01 {
		t.Errorf("nothing is known to stretch: %+v", stiff.Level)
	}
}

// A loop of cord stretches half as much as one run of it: a bed of loops sinks as one
// of single cords of twice the stiffness.
func TestMadeOfLoops(t *testing.T) {
	lies := func(whole bool, side, leg float64) finished.Level {
		p := rigged(t, func(d *design.Design) { d.Bed.Plain = true })
		p.Design.Splice.Whole = whole
		p.Design.Side.Stiffness, p.Design.Leg.Stiffness = quantity.Newtons(side), quantity.Newtons(leg)
		return lies(t, p).Level
	}
	const ea = 100e3
	if loops, cords := lies(true, ea, 0), lies(false, 2*ea, 2*ea); loops.Minus(cords).Worst() > 1e-9 {
		t.Errorf("loops %+v, cords %+v", loops, cords)
	}
	if loops, cords := lies(true, ea, 0), lies(false, ea, ea); loops.Height < cords.Height+1 {
		t.Errorf("loops %+v lie no higher than one run of their cord, %+v", loops, cords)
	}
}

// Without a place to hang, lines of a metre stand for whatever will be there.
func TestLinesOfNoPlace(t *testing.T) {
	p := rigged(t, nil)
	if lines, known := p.Lines(); !known || lines[0] != p.Place.Ends[0].Line || lines[1] != p.Place.Ends[1].Line {
		t.Errorf("%v, %v", lines, known)
	}
	p = rigged(t, func(d *design.Design) { d.Hang.Distance, d.Hang.Height = 0, 0 })
	if lines, known := p.Lines(); known || lines != [2]float64{1000, 1000} {
		t.Errorf("%v, %v", lines, known)
	}
}
