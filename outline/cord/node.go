package cord

import (
	"math"

	"slingloft/outline/bed"
	"slingloft/outline/numeric"
)

// LightPull is the pull under which all lengths of cord hold, N: it draws a cord out
// straight and is about a hundredth of what such cords break at (shop practice, no
// source). Cords are marked under it, and nodes read off a tape.
const LightPull = 100.0

// Node is a place on a side's chain with what a tape shows there.
type Node struct {
	Part Part
	Spot Spot
	At   float64 // from the centre of the head hook, mm
}

// Nodes returns what a tape shows at the places of one side's chain, from the centre of
// the head hook to that of the foot hook, drawn out straight by a pull, N, the tip gaps on
// pins as thick as the bars' tips. Where a cord's stiffness is given it stretches by
// what the pull is more than the light one, over EA, as if it were nowhere filled, which is some hundredths of a mm too much. It is
// empty for a set without side cords.
func (s Set) Nodes(pull float64) []Node {
	if s.Variant == Loops {
		return s.loopNodes(pull)
	}
	head, side, foot, ok := s.chainCords()
	if !ok {
		return nil
	}
	toHead, toFoot := s.legNodes(head, pull), s.legNodes(foot, pull)
	tip := toHead[len(toHead)-1].At
	var out []Node
	for i := range toHead { // a leg is measured from its tip outwards
		n := toHead[len(toHead)-1-i]
		n.At = tip - n.At
		out = append(out, n)
	}
	long := s.grown(side, pull)
	slack := s.slack(side) / 2
	for _, m := range side.Marks {
		if m.Spot == (Spot{Kind: Tip, On: AtHead}) || !read(m) {
			continue
		}
		at := tip + long*(m.Spliced-slack)
		if m.Spot == (Spot{Kind: Tip, On: AtFoot}) {
			at -= long * slack
			tip = at
		}
		out = append(out, Node{SideCord, m.Spot, at})
	}
	for _, n := range toFoot[1:] {
		n.At += tip
		out = append(out, n)
	}
	return out
}

// chainCords returns the cords of one side's chain and whether there are all of them.
func (s Set) chainCords() (head, side, foot Cord, ok bool) {
	head, a := s.Find(HeadLeg)
	side, b := s.Find(SideCord)
	foot, c := s.Find(FootLeg)
	return head, side, foot, a && b && c
}

// read reports whether a mark is read off a chain: those where a tail ends inside say
// nothing of where the bed hangs.
func read(m Mark) bool {
	return !m.Buried && (m.Spot.Kind == Tip || m.Spot.Kind == Entry || m.Spot.Kind == Throat || m.Spot.Kind == Middle)
}

// ReadPull returns the pull under which nodes are read, N: every run has the light pull.
func (s Set) ReadPull() float64 {
	if s.Variant == Loops {
		return 2 * LightPull
	}
	return LightPull
}

// grown returns the part of its length that a cord has under a pull on all its runs.
func (s Set) grown(c Cord, pull float64) float64 {
	if c.Kind.Stiffness == 0 {
		return 1
	}
	return 1 + (pull/float64(c.Runs)-LightPull)/float64(c.Kind.Stiffness)
}

// slack returns by how much a tip gap of the cord is shorter on its pin than straight, mm.
func (s Set) slack(c Cord) float64 {
	out, err := s.Splicing.Spread(c.Kind.Diameter)
	if err != nil {
		return 0 // no set is made with such a gap
	}
	return out
}

// legNodes returns what is read on a leg from its bar's tip to its hook, measured from the
// tip.
func (s Set) legNodes(c Cord, pull float64) []Node {
	long, slack := s.grown(c, pull), s.slack(c)/2
	out := []Node{{c.Part, Spot{Kind: Tip}, 0}}
	for _, m := range c.Marks {
		if read(m) && m.Spliced > 0 {
			out = append(out, Node{c.Part, m.Spot, long * (m.Spliced - slack)})
		}
	}
	last := c.Steps[len(c.Steps)-1].Reads
	return append(out, Node{c.Part, Spot{Kind: Hook}, long * (last[len(last)-1].After - slack)})
}

// loopNodes returns what is read on one run of a loop: hooks, tips and the join in the
// middle.
func (s Set) loopNodes(pull float64) []Node {
	c, ok := s.Find(SideLoop)
	if !ok {
		return nil
	}
	place := map[Spot]float64{}
	for _, m := range c.Marks {
		place[m.Spot] = m.Spliced
	}
	long, slack := s.grown(c, pull), s.slack(c)/2
	end := place[Spot{Kind: Shoulder, On: AtEnd}]
	pin := (s.Splicing.Hook + c.Kind.Diameter) / 2
	reach := func(along float64) float64 { // straight, of half a loop round its hook
		r, err := numeric.Root(func(r float64) float64 { return roundPin(r, pin) - along }, pin, along, 1e-9)
		if err != nil {
			return along
		}
		return r
	}
	tips := [2]float64{bed.Head: end - place[Spot{Kind: Tip, On: AtHead}] - slack, bed.Foot: place[Spot{Kind: Tip, On: AtFoot}] - slack}
	legs := [2]float64{
		bed.Head: reach(place[Spot{Kind: Tip, On: AtHead}] - place[Spot{Kind: Hook, On: AtHead}] - slack),
		bed.Foot: reach(place[Spot{Kind: Hook, On: AtFoot}] - place[Spot{Kind: Tip, On: AtFoot}] - slack),
	}
	at := func(sum ...float64) float64 {
		out := 0.0
		for _, v := range sum {
			out += float64(long * v)
		}
		return math.Max(out, 0)
	}
	return []Node{
		{SideLoop, Spot{Kind: Hook, On: AtHead}, 0},
		{SideLoop, Spot{Kind: Tip, On: AtHead}, at(legs[bed.Head])},
		{SideLoop, Spot{Kind: Middle}, at(legs[bed.Head], tips[bed.Head])},
		{SideLoop, Spot{Kind: Tip, On: AtFoot}, at(legs[bed.Head], tips[bed.Head], tips[bed.Foot])},
		{SideLoop, Spot{Kind: Hook, On: AtFoot}, at(legs[bed.Head], tips[bed.Head], tips[bed.Foot], legs[bed.Foot])},
	}
}
