// Package state puts a made bed through what happens to it: one lies in it, sits up,
// gets in over a side, lies at the edge; another sleeper tries it. Each is a state of
// equilibrium of the made bed (package finished), with everything that it loads.
//
// Lengths mm, forces N, angles rad; axes as in package hung.
package state

import (
	"slingloft/outline/bed"
	"slingloft/outline/design"
	"slingloft/outline/finished"
	"slingloft/outline/hung"
	"slingloft/outline/rig"
)

// Kind is what happens to the bed.
type Kind int

// The kinds of states.
const (
	Lying     Kind = iota // where designed
	Sitting               // up, over a seat's length, both cords carry
	GettingIn             // on one side cord, over a seat's length
	Edge                  // on the side, the centre of mass aside
)

// Kinds is how many there are.
const Kinds = 4

// String returns the kind as documents name it.
func (k Kind) String() string { return [Kinds]string{"lying", "sitting", "getting-in", "edge"}[k] }

// AtEdge is how far aside the centre of mass of one lies who lies at the edge, or
// rolls over, mm: own choice.
const AtEdge = 100.0

// State is the made bed in one state.
type State struct {
	Kind  Kind
	X     float64 // station of the middle of the weight, mm
	Aside float64 // of the centre of mass from the middle of the cloth, mm, to the left
	Seat  float64 // length of bed that carries one who sits, mm; 0 lying
	// Extreme says that hardly anybody lies so far aside: shown, and not judged.
	Extreme bool
	Loads   finished.Loads
	Level   finished.Level // 0 getting in
	Hang    [2]float64     // of the hang lines above the level, by [hung.End]; 0 getting in
	Turn    float64        // of the bed, left side up
	Share   float64        // part of the weight that the cord with more of it carries
	Slack   bool           // getting in: the other side cord carries nothing
	// Bound is why Loads is no state of equilibrium but a bound: none was found. Nil
	// where one was. Level, Hang, Turn and Share are then 0.
	Bound error
}

// Person is one who uses the bed.
type Person struct {
	Load       hung.Load // lying
	Weight     float64   // whole, N
	Back, Side float64   // height of the centre of mass over the bed, on the back and on the side, mm
	Seat       float64   // length of bed that one sits on, mm
	Lies       design.Posture
}

// PersonOf returns a sleeper who lies in a bed with the given load.
func PersonOf(s design.Sleeper, lying hung.Load) Person {
	p := Person{Load: lying, Weight: float64(s.Mass.Weight()), Seat: rig.SeatLength(s), Lies: s.Lies}
	p.Back, p.Side = rig.CentreHeight(s)
	return p
}

// centre returns the height of the centre of mass of the person, lying.
func (p Person) centre() float64 {
	if p.Lies == design.OnSide {
		return p.Side
	}
	return p.Back
}

// Seated returns the whole weight, N, over a seat with its middle at x, mm from mid-bay.
func (p Person) Seated(x float64) hung.Load { return hung.EvenLoad(p.Weight, x-p.Seat/2, x+p.Seat/2) }

// Lie returns the state of a bed in which a person lies. It is the state of any
// sleeper, not only of the one whom the bed was made for, and fails where none is
// found.
func Lie(h finished.Hammock, p Person) (State, error) {
	w := finished.Weight{Load: p.Load, Centre: p.centre()}
	pose, err := h.Hang(finished.Change{}, w)
	if err != nil {
		return State{}, err
	}
	return of(Lying, w, pose), nil
}

// of returns a state that a pose shows.
func of(k Kind, w finished.Weight, p finished.Pose) State {
	_, x := w.Load.Total()
	s := State{Kind: k, X: x, Aside: w.Aside, Loads: p.Loads(), Level: p.Level, Turn: p.Turn, Share: p.Share}
	for e := range s.Hang {
		s.Hang[e] = p.Hang(hung.End(e))
	}
	return s
}

// Of returns every state of a bed under the sleeper for whom it was made: lying,
// sitting up at mid-bay and both quarters, getting in, at the edge, and half the
// shoulders aside, which is an extreme. What is not found is bounded.
func Of(h finished.Hammock, p Person) []State { return states(h, p, AtEdge, p.Side) }

// Judged is [Of] without the extreme, which no check looks at and which takes longest to
// find.
func Judged(h finished.Hammock, p Person) []State { return states(h, p, AtEdge) }

// states returns the states of a bed, at the edge with the weight so far aside.
func states(h finished.Hammock, p Person, asides ...float64) []State {
	lying, err := Lie(h, p)
	if err != nil {
		lying = designed(h.Shape, err)
	}
	out := []State{lying}
	quarter := h.Shape.Problem.Bed.Span / 4
	var last finished.Pose
	for _, x := range [3]float64{0, -quarter, quarter} {
		// The weight keeps to the middle, by balancing if it sits high, so that nothing hangs
		// on how high it is.
		w := finished.Weight{Load: p.Seated(x), Centre: p.Back}
		pose, err := h.HangFrom(last, finished.Change{}, w)
		s := of(Sitting, w, pose)
		if err != nil {
			s = onOneCord(h, p, Sitting, x, err)
		} else if x == 0 {
			last = pose
		}
		s.Seat = p.Seat
		out = append(out, s)
	}
	out = append(out, getIn(h, p))
	var edge finished.Pose
	for _, aside := range asides {
		w := finished.Weight{Load: p.Load, Centre: p.Side, Aside: aside}
		pose, err := h.HangFrom(edge, finished.Change{}, w)
		s := of(Edge, w, pose)
		edge = pose
		if err != nil {
			s = rolled(h.Shape, p, w, err)
		}
		s.Extreme = aside != AtEdge
		out = append(out, s)
	}
	return out
}

// SitUp returns the state in which the person sits up at mid-bay; where it is not found
// it is bounded.
func SitUp(h finished.Hammock, p Person) State {
	w := finished.Weight{Load: p.Seated(0), Centre: p.Back}
	pose, err := h.Hang(finished.Change{}, w)
	s := of(Sitting, w, pose)
	if err != nil {
		s = onOneCord(h, p, Sitting, 0, err)
	}
	s.Seat = p.Seat
	return s
}

// getIn returns the state in which the person sits on the left side cord at mid-bay.
func getIn(h finished.Hammock, p Person) State {
	entry, err := h.Enter(finished.Change{}, bed.Left, p.Seated(0))
	s := State{Kind: GettingIn, Loads: entry.Loads, Share: 1, Slack: entry.Slack}
	if err != nil {
		s = onOneCord(h, p, GettingIn, 0, err)
	}
	s.Seat = p.Seat
	// The cloth at the seat hangs on that cord's seam, whatever the rest does.
	s.Loads.Cloth = max(s.Loads.Cloth, p.Weight/p.Seat)
	return s
}
