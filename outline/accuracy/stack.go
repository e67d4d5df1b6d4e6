package accuracy

import (
	"slingloft/outline/cord"
	"slingloft/outline/design"
	"slingloft/outline/finished"
	"slingloft/outline/hung"
)

// Cause is what makes a length come out wrong.
type Cause int

// The causes.
const (
	Marking     Cause = iota // marks on the cords lie a little off
	Splices                  // one splice contracts more than another
	Contraction              // all of them contract more than the test pieces did
	FirstLoad                // cords and splices set under the first load
	Reading                  // a tape is read a little off
	BarCut                   // a bar is cut long or short
	Cutting                  // the cloth's cut lines lie a little off
	Sewing                   // and its side seams
	Rigging                  // hang lines and anchors are set a little off
	Untested                 // all of them contract more than was taken, without a test piece
	CauseCount               // how many there are
)

// String returns the cause's identifier, as documents for other programs have it.
func (c Cause) String() string {
	return [CauseCount]string{"marks on the cords", "scatter of the contraction", "contraction itself", "set under the first load",
		"reading of the tape", "cut length of the bars", "cut of the cloth", "side seams", "hang lines and anchors",
		"contraction that no test piece shows"}[c]
}

// MarshalText writes the cause's identifier.
func (c Cause) MarshalText() ([]byte, error) { return []byte(c.String()), nil }

// Off is by how much every part is longer than designed, mm; an anchor higher.
type Off [finished.Parts]float64

// Component is one error: what its standard deviation does to every part. Components
// are independent of each other.
type Component struct {
	Cause
	Off
}

// Taken says what is done about the set under the first load.
type Taken int

// The ways.
const (
	Left    Taken = iota // nothing: cords are as much longer afterwards
	CutOff               // cords are cut shorter by what they are expected to grow
	Preload              // cords are pulled, released and pulled again before the nodes are marked
)

const (
	// unsure is the part of an expected set that may come or not where it is cut off:
	// own choice.
	unsure = 0.5
	// unpulled is the part of a set that is still to come after a pre-load: own choice.
	unpulled = 0.2
)

// remains returns the part of the set that acts as an error.
func (t Taken) remains() float64 { return [...]float64{1, unsure, unpulled}[t] }

// Working is how truly a maker works. All are standard deviations, mm unless said.
type Working struct {
	Marking float64 // of a mark on a cord or on the cloth
	Scatter float64 // of κ from splice to splice
	Kappa   float64 // of κ itself, in every splice alike
	// Loss is of an eye's crossing, in every eye alike, with κ as it is; where that is
	// larger by some amount the crossing loses less, by so much of Whole, mm.
	Loss, Whole float64
	Untested    bool    // there is no test piece
	Set         float64 // part by which a spliced cord grows under its first load
	Taken       Taken   // what is done about it
	// Tape is of a node that is read off a tape under load, and set right, before its
	// buries are locked: then neither marks nor contraction count. 0: none is read.
	Tape   float64
	Bar    float64 // of a bar's length
	Sewing float64 // of a side seam's place
	Line   float64 // of a hang line as it is set; 0: counts as true
	Anchor float64 // of an anchor's height; 0: counts as true
}

// WorkingOf returns what a design says of its maker, with the splices as test pieces
// show them.
func WorkingOf(a design.Accuracy, e cord.Estimate) Working {
	w := Working{Marking: a.Marking, Scatter: e.Scatter, Set: a.Set, Taken: Taken(a.FirstLoad),
		Bar: a.Bar, Sewing: a.Sewing, Line: a.Rigging, Anchor: a.Rigging}
	if a.NodesRead {
		w.Tape = max(a.Reading, leastTape)
	}
	w.Kappa, w.Loss, w.Whole, w.Untested = e.Kappa.Error, e.LossAlone, e.Balance, e.Pieces == 0
	return w
}

// leastTape is the least error of a reading that counts as one, mm: nobody reads better.
const leastTape = 0.05

// stack gathers components.
type stack struct {
	out []Component
	w   Working
}

// add puts in count errors of one kind in one part, where there are any.
func (s *stack) add(c Cause, p finished.Part, mm float64, count int) {
	for range count {
		s.alike(c, func(o *Off) { o[p] = mm })
	}
}

// alike puts in one error that acts on several parts.
func (s *stack) alike(c Cause, set func(*Off)) {
	k := Component{Cause: c}
	set(&k.Off)
	if k.Off != (Off{}) {
		s.out = append(s.out, k)
	}
}

// Stack returns every error of the made bed.
func Stack(s *hung.Shape, d design.Design, sp cord.Splicing, w Working) []Component {
	t := stack{w: w}
	switch {
	case w.Tape > 0:
		for _, p := range append(finished.Legs(), finished.LeftSide, finished.RightSide) {
			t.add(Reading, p, w.Tape, 2) // a node at either end
		}
	case d.Splice.Whole:
		t.loops(sp.Bury(d.Side.Diameter))
	default:
		t.splices(sp.Bury(d.Side.Diameter), sp.Bury(d.Leg.Diameter), sp.EyeBury(d.Leg.Diameter))
	}
	set := w.Set * w.Taken.remains()
	t.alike(FirstLoad, func(o *Off) {
		for _, e := range hung.Ends() {
			for _, p := range finished.LegsOf(e) {
				o[p] = set * s.Ends[e].Leg
			}
		}
		o[finished.LeftSide], o[finished.RightSide] = set*s.SideArc, set*s.SideArc
	})
	t.add(BarCut, finished.HeadBar, w.Bar, 1)
	t.add(BarCut, finished.FootBar, w.Bar, 1)
	t.add(Cutting, finished.Cloth, w.Marking, 2)
	t.add(Sewing, finished.Cloth, w.Sewing, 2)
	for _, e := range hung.Ends() {
		t.add(Rigging, finished.LineOf(e), w.Line, 1)
		t.add(Rigging, finished.AnchorOf(e), w.Anchor, 1)
	}
	return t.out
}

// splices puts in the errors of side cords and separate legs: a tip's place on a cord
// is good to one mark, since the gap's two edges share it; an eye's throat to one; its
// reach to half its loop's.
func (s *stack) splices(side, leg, eye float64) {
	for _, p := range finished.Legs() {
		s.add(Marking, p, s.w.Marking, 2)
		s.add(Marking, p, s.w.Marking/2, 1)
		s.add(Splices, p, s.w.Scatter*side, 1)
		s.add(Splices, p, s.w.Scatter*eye, 1)
	}
	for p := finished.LeftSide; p <= finished.RightSide; p++ {
		s.add(Marking, p, s.w.Marking, 2)
		s.add(Splices, p, s.w.Scatter*leg, 2)
	}
	// What contracts more than was taken comes out shorter.
	s.alike(s.contraction(), func(o *Off) {
		for _, p := range finished.Legs() {
			o[p] = -s.w.Kappa * (side + eye - s.w.Whole)
		}
		o[finished.LeftSide], o[finished.RightSide] = -2*s.w.Kappa*leg, -2*s.w.Kappa*leg
	})
	s.alike(s.contraction(), func(o *Off) {
		for _, p := range finished.Legs() {
			o[p] = -s.w.Loss
		}
	})
}

// contraction returns the cause of what all splices have in common.
func (s *stack) contraction() Cause {
	if s.w.Untested {
		return Untested
	}
	return Contraction
}

// loops puts in the errors of one whole loop a side: its tips between seizings, its
// two buries at the join, of which each run has half.
func (s *stack) loops(bury float64) {
	for _, p := range finished.Legs() {
		s.add(Marking, p, s.w.Marking, 1)
	}
	for p := finished.LeftSide; p <= finished.RightSide; p++ {
		s.add(Marking, p, s.w.Marking, 2)
		s.add(Splices, p, s.w.Scatter*bury/2, 2)
	}
	s.alike(s.contraction(), func(o *Off) {
		o[finished.LeftSide], o[finished.RightSide] = -s.w.Kappa*bury, -s.w.Kappa*bury
	})
}

// Pull returns the pull that takes the set out of one side's cords before their nodes
// are marked: the largest that they carry under the sleeper, N.
func Pull(s *hung.Shape) float64 {
	t, _ := s.MaxTension()
	return t
}
