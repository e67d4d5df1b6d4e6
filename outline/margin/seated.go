package margin

import (
	"math"

	"slingloft/outline/design"
	"slingloft/outline/hung"
	"slingloft/outline/numeric"
)

// SeatBreadth is the length of cloth, along the bed, that one who sits across it
// hangs from, mm: the 5th percentile of men's sitting hip breadth, the smaller of
// the sexes' in NATICK/TR-15/007.
const SeatBreadth = 333

// seated is the whole weight on one side cord at mid-bay, on one who sits on the
// edge with the feet off the ground.
//
// Under one loaded cord the hammock rolls until that cord lies below the hooks.
// Hung frictionless it takes the shape in which the load is lowest. If the other
// side can go slack that is a straight line from either apex to the load, through
// the bar's tip: bars and the other side carry nothing, one cord carries all. If the
// other side's cord gets taut first (see braced) it keeps the loaded cord from
// stretching out and the bars are loaded too. Whether it gets taut is looked at with
// the apexes where they are.
//
// How far apart the apexes then are depends on the hang lines. Two extremes bracket
// it: no hang lines at all, the apexes stay where they are under one who lies; and
// lines so long that they keep their angle, so that the thrust is the whole 2H of
// the lying case, in one cord. The larger pull of the two is taken. Between alike
// ends that is proved: the cosine of the straight line's slope with lines of length
// l, (l cos α + D/2) / (l + C/2), lies between its values for both extremes. For
// unlike ends it is an estimate.
func seated(s *hung.Shape, sleeper design.Sleeper) Case {
	hangs := s.Ends[hung.Head].Vertical + s.Ends[hung.Foot].Vertical
	// One who lies with the feet past the cloth still sits with the whole weight.
	weight := max(hangs, float64(sleeper.Mass.Weight()))
	c := Case{Kind: Seated, Cloth: weight / SeatBreadth, Basis: Basis{Kind: OneCord}}
	p := plane(s, weight)
	short := p.straight()
	if p.taut(short) {
		held, ok := p.braced()
		if !ok {
			return Case{Kind: Seated, Basis: c.Basis, Cannot: Obstacle{Kind: NoPosture}}
		}
		short = held
		c.Basis.Kind = OneCordBraced
	}
	for e, end := range s.Ends {
		long := weight / hangs * end.Horizontal * math.Sqrt(1+end.Slope*end.Slope)
		c.Leg[e] = max(long, short.leg[e])
		c.Hang[e] = max(long, short.apex[e])
		// A bar that the cords would draw out rather than press lies loose.
		c.Bar[e] = max(0, short.bar[e])
		c.Side = max(c.Side, long, short.side[e])
	}
	return c
}

// vec is a place or force in the vertical plane below the hooks: along, up.
type vec struct{ x, z float64 }

func (a vec) minus(b vec) vec     { return vec{a.x - b.x, a.z - b.z} }
func (a vec) plus(b vec) vec      { return vec{a.x + b.x, a.z + b.z} }
func (a vec) times(k float64) vec { return vec{a.x * k, a.z * k} }
func (a vec) len() float64        { return math.Hypot(a.x, a.z) }
func (a vec) unit() vec           { return a.times(1 / a.len()) }
func (a vec) cross(b vec) float64 { return a.x*b.z - a.z*b.x }
func (a vec) turned(by float64) vec {
	return vec{a.x*math.Cos(by) - a.z*math.Sin(by), a.x*math.Sin(by) + a.z*math.Cos(by)}
}

// frame is the rolled hammock in the plane below its hooks.
type frame struct {
	apex   [2]vec
	leg    [2]float64
	part   [2]float64 // side cord from tip to load
	open   [2]float64 // angle at the apex between both legs
	cord   float64    // the other side's cord from tip to tip
	weight float64
}

func plane(s *hung.Shape, weight float64) frame {
	half := s.Problem.Bed.Span / 2
	f := frame{weight: weight, cord: s.SideArc, part: [2]float64{s.Arc(-half, 0), s.Arc(0, half)}}
	for e, end := range s.Ends {
		f.apex[e] = vec{end.ApexX, end.ApexZ}
		f.leg[e] = end.Leg
		f.open[e] = 2 * math.Asin(min(1, end.Bar/2/end.Leg))
	}
	return f
}

// posture is the frame with the load at its lowest, and the forces in it.
type posture struct {
	load             vec
	low, high        [2]vec     // tips of the loaded side and of the other
	side, leg        [2]float64 // pull in the loaded side's cord, the loaded leg
	bar, apex, other [2]float64 // thrust of the bar, pull at the apex, pull of the other side's cord
}

// below returns the lower of the two places that lie r from a and q from b, and
// whether there is one.
func below(a, b vec, r, q float64) (vec, bool) {
	d := b.minus(a)
	long := d.len()
	along := (long*long + r*r - q*q) / (2 * long)
	off := r*r - along*along
	if off < 0 {
		return vec{}, false
	}
	u := d.unit()
	n := vec{u.z, -u.x} // down, for b to the right of a
	return a.plus(u.times(along)).plus(n.times(math.Sqrt(off))), true
}

// upwards turns a leg's direction at an apex to that of the other leg.
func upwards(e int, by float64) float64 {
	if hung.End(e) == hung.Head {
		return by
	}
	return -by
}

// straight hangs the loaded cord from apex to apex as two straight lines. They
// reach, since the lying cord runs from apex to apex in a curve.
func (f frame) straight() posture {
	var p posture
	p.load, _ = below(f.apex[0], f.apex[1], f.leg[0]+f.part[0], f.leg[1]+f.part[1])
	var dir [2]vec
	for e := range dir {
		dir[e] = p.load.minus(f.apex[e]).unit()
		p.low[e] = f.apex[e].plus(dir[e].times(f.leg[e]))
		p.high[e] = f.apex[e].plus(dir[e].turned(upwards(e, f.open[e])).times(f.leg[e]))
	}
	p.side = carry(dir, f.weight)
	p.leg, p.apex = p.side, p.side
	return p
}

// carry returns the pulls along two lines that run from their supports to a load
// in the given directions and hold it.
func carry(dir [2]vec, weight float64) [2]float64 {
	span := dir[1].cross(dir[0])
	return [2]float64{weight * -dir[1].x / span, weight * dir[0].x / span}
}

// taut reports whether the other side's cord is too short to stay slack.
func (f frame) taut(p posture) bool { return p.high[1].minus(p.high[0]).len() > f.cord }

// braced finds the lowest load with the other side's cord taut: over the turn of
// the head's triangle of legs and bar, the foot's following from the cord's length.
func (f frame) braced() (p posture, ok bool) {
	height := func(turn float64) float64 {
		p, ok := f.turned(turn)
		if !ok {
			return math.Inf(-1)
		}
		return -p.load.z
	}
	const steps = 60
	best, at := math.Inf(-1), 0.0
	for i := range steps + 1 {
		turn := -math.Pi/2 + math.Pi*float64(i)/steps
		if h := height(turn); h > best {
			best, at = h, turn
		}
	}
	turn, _ := numeric.Peak(height, at-math.Pi/steps, at+math.Pi/steps)
	if p, ok = f.turned(turn); !ok {
		p, ok = f.turned(at)
	}
	if !ok {
		return p, false
	}
	return f.loaded(p), true
}

// turned lays the frame out with the head's loaded leg turned down by the given
// angle, and reports whether it can be so.
func (f frame) turned(turn float64) (posture, bool) {
	var p posture
	h, k := int(hung.Head), int(hung.Foot)
	p.low[h] = f.apex[h].plus(vec{math.Cos(turn), -math.Sin(turn)}.times(f.leg[h]))
	p.high[h] = f.apex[h].plus(p.low[h].minus(f.apex[h]).turned(f.open[h]))
	// The foot's upper tip lies a leg from its apex and a cord from the head's; of
	// the two places the one with its lower tip further in gives the lower load.
	ok := false
	for _, side := range [2]float64{1, -1} {
		high, can := below(vec{p.high[h].x, side * p.high[h].z}, vec{f.apex[k].x, side * f.apex[k].z}, f.cord, f.leg[k])
		if !can {
			continue
		}
		high.z *= side
		low := f.apex[k].plus(high.minus(f.apex[k]).turned(f.open[k]))
		load, can := below(p.low[h], low, f.part[h], f.part[k])
		if can && low.x > p.low[h].x && (!ok || load.z < p.load.z) {
			p.high[k], p.low[k], p.load, ok = high, low, load, true
		}
	}
	return p, ok
}

// loaded finds the forces in a braced posture from the balance of each node.
func (f frame) loaded(p posture) posture {
	var dir [2]vec
	for e := range dir {
		dir[e] = p.load.minus(p.low[e]).unit()
	}
	p.side = carry(dir, f.weight)
	across := p.high[1].minus(p.high[0]).unit()
	for e := range dir {
		pull := dir[e].times(p.side[e])
		arm, over := p.low[e].minus(f.apex[e]), p.high[e].minus(f.apex[e])
		along := across
		if hung.End(e) == hung.Foot {
			along = across.times(-1)
		}
		// Moments about the apex give the other cord's pull; the lower tip's balance
		// across its leg then gives the bar's thrust, and along it the leg's pull.
		p.other[e] = -arm.cross(pull) / over.cross(along)
		bar := p.low[e].minus(p.high[e]).unit()
		p.bar[e] = -arm.cross(pull) / arm.cross(bar)
		total := pull.plus(bar.times(p.bar[e]))
		u := arm.unit()
		p.leg[e] = total.x*u.x + total.z*u.z
		p.apex[e] = pull.plus(along.times(p.other[e])).len()
	}
	return p
}
