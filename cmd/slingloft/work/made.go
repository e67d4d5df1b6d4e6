package work

import (
	"math"

	"slingloft/outline/finished"
	"slingloft/outline/hung"
	"slingloft/outline/rig"
	"slingloft/outline/state"
)

// usualLine is the length of hang lines where the design says nothing of the place
// that it hangs in, mm: own choice.
const usualLine = 1000.0

// Lines returns the lengths of the hang lines from apex to anchor under the sleeper,
// mm, by [hung.End], and whether the design says where it hangs. Where it does not,
// lines of 1000 mm stand for whatever will be there, which has to be said.
func (p *Plan) Lines() (lines [2]float64, known bool) {
	for e := range lines {
		lines[e] = usualLine
		if p.Hangs {
			lines[e] = p.Place.Ends[hung.End(e)].Line
		}
	}
	return lines, p.Hangs
}

// Reckoned returns the place that the bed hangs in or, where the design names none, one
// between anchors so far apart that both hang lines are as long as [Plan.Lines] says.
func (p *Plan) Reckoned() rig.Place {
	if p.Hangs {
		return p.Place
	}
	out := rig.Place{Lowest: p.Design.Hang.Bed}
	ground := rig.Lowest(&p.Shape) - p.Design.Hang.Bed
	lines, _ := p.Lines()
	for e, end := range p.Shape.Ends {
		run := lines[e] / math.Sqrt(1+float64(end.Slope*end.Slope))
		out.Ends[e] = rig.End{Run: run, Line: lines[e], Apex: end.ApexZ - ground, Hook: end.ApexZ - ground + float64(run*end.Slope)}
	}
	out.HeadAbove = out.Ends[hung.Head].Hook - out.Ends[hung.Foot].Hook
	return out
}

// Made returns the bed as it is sewn and spliced: cloth and cords of the lengths to
// which they are cut, with the stiffness that the design gives them. Where one loop of
// cord makes side cord and legs, two runs of it carry. With bed.compensate off, cords
// and cloth are cut as long as they are to hang and still stretch: that they were not
// shortened is no reason to take them for stiff. Hang lines are set under the sleeper
// either way. It can be asked for once the plan is rigged.
//
// The bed hangs from the anchors on which it was designed to hang, in the frame of
// the shape. See [Plan.Lines] for what its hang lines are, and [Plan.Person] for who
// lies in it.
func (p *Plan) Made() finished.Hammock {
	d := p.Design
	m := finished.Made{
		Shape: &p.Shape, Plain: d.Bed.Plain, Girth: p.Body.Girth(&p.Shape),
		SideEA: float64(d.Side.Stiffness), LegEA: float64(d.Leg.Stiffness), LineEA: float64(d.Hang.Line.Stiffness),
		Weft: float64(d.Cloth.WeftStiffness),
	}
	if d.Splice.Whole {
		m.SideEA *= 2
		m.LegEA = m.SideEA
	}
	m.Lines, _ = p.Lines()
	return finished.Make(m)
}

// Person returns the sleeper of the design as one who uses the made bed, lying where
// the design has them lie.
func (p *Plan) Person() state.Person {
	return p.raised(state.PersonOf(p.Design.Sleeper, p.Shape.Problem.Load))
}
