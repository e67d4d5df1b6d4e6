package work

import (
	"context"
	"math"
	"slices"
	"sort"

	"slingloft/outline/design"
	"slingloft/outline/drape"
	"slingloft/outline/geom"
	"slingloft/outline/hung"
	"slingloft/outline/room"
	"slingloft/outline/state"
)

// Draping says how the cut is hung as cloth.
type Draping struct {
	Exact bool // finer, and to a tighter end
	Sits  bool // the sleeper sits up at mid-bay
	Round bool // the round section of the design in place of a body
	// Guest lies in it in place of the sleeper; nil: nobody else.
	Guest *design.Guest
	// Watch is told now and then what part is done, about; nil: nobody.
	Watch func(part float64)
}

// Draped is the cut as it hangs as cloth.
type Draped struct {
	drape.Hung
	Draping
	Load   hung.Load // of the one in it
	Crown  float64   // station of the crown; of one who sits, 0
	Soles  float64   // and of the soles
	Weight float64   // of all that hangs, N
	// Settled says that it came to rest.
	Settled bool
	// Stiff says of which of cord, line and cloth no stiffness is given: they count as stiff.
	StiffCords, StiffLines, StiffCloth bool
}

// ErrUnsettled is met where the cloth does not come to rest.
var ErrUnsettled = drape.ErrUnsettled

// What stands for a stiffness that is not given, and the shear that no design gives.
const (
	stiffCord  = 2e7  // N: a hundred times that of thin cord
	stiffCloth = 6000 // N/mm per unit strain: a hundred times that of light cloth
	// limpShear is of the order of light woven cloth, N/mm per rad, from memory. A tenth and
	// ten times of it move the bed's bottom by up to 1.3 mm.
	limpShear = 0.06
)

// Drape hangs the cut as cloth. The error is that of the context, or [ErrUnsettled].
func (p *Plan) Drape(ctx context.Context, how Draping) (Draped, error) {
	out := Draped{Draping: how}
	pattern, rig := p.draped(&out)
	set := drape.Settings{Cell: 50, Step: 5e-3, Steps: 8000}
	if how.Exact {
		set = drape.Settings{Cell: 25, Step: 2e-3, Steps: 20000}
	}
	first := 0.0
	set.Watch = func(_ int, far float64) error {
		if how.Watch != nil {
			first = max(first, far)
			how.Watch(drape.Part(first, far, set.Step))
		}
		return ctx.Err()
	}
	var err error
	out.Hung, err = drape.Hang(&pattern, &rig, p.limp(&out), set)
	out.Settled = err == nil
	return out, err
}

// limp returns how the materials stretch.
func (p *Plan) limp(out *Draped) drape.Stiffness {
	d, m := p.Design, p.Made()
	f := drape.Stiffness{Side: m.SideEA, Leg: m.LegEA, Line: m.LineEA,
		Warp: float64(d.Cloth.WarpStiffness), Weft: float64(d.Cloth.WeftStiffness), Shear: limpShear}
	for _, v := range []*float64{&f.Side, &f.Leg} {
		if *v == 0 {
			*v, out.StiffCords = stiffCord, true
		}
	}
	if f.Line == 0 {
		f.Line, out.StiffLines = stiffCord, true
	}
	for _, v := range []*float64{&f.Warp, &f.Weft} {
		if *v == 0 {
			*v, out.StiffCloth = stiffCloth, true
		}
	}
	return f
}

// draped returns the pattern and what it is hung with as plain data.
func (p *Plan) draped(out *Draped) (drape.Pattern, drape.Rig) {
	s, m := &p.Shape, p.Made()
	b := p.Body
	pattern := drape.Pattern{Side: slices.Clone(b.Side.Flat)}
	cut := newSlack(s, m.SideEA, m.LegEA, m.Plain)
	corner := cut.before(-s.Problem.Bed.Span/2) - b.Tips[hung.Head]
	start := cut.of(corner)
	for _, run := range b.Side.Hung {
		pattern.Cord = append(pattern.Cord, cut.of(corner+run)-start)
	}
	for e := range b.Tips {
		pattern.Tips[e] = cut.of(corner+b.Tips[e]) - start
		pattern.Ends[e] = slices.Clone(b.Ends[e].Flat)
	}
	rig := drape.Rig{Bars: [2]float64{s.Problem.Bed.HeadBar, s.Problem.Bed.FootBar}, Radius: s.Problem.Radius,
		Cloth: s.Problem.ClothWeight, BarWeight: s.Problem.BarWeight}
	half := s.Problem.Bed.Span / 2
	rig.Legs = [2]float64{cut.of(cut.before(-half)), cut.of(cut.all()) - cut.of(cut.before(half))}
	for e, end := range s.Ends {
		rig.Apex[e] = geom.Pt(end.ApexX, end.ApexZ)
		if m.Lines[e] > 0 {
			at := m.Anchor(hung.End(e))
			rig.Anchors[e] = geom.Pt(at.X, at.Z)
			rig.Lines[e] = m.Lines[e]
			if m.LineEA > 0 {
				rig.Lines[e] /= 1 + math.Hypot(end.Horizontal, end.Vertical)/m.LineEA
			}
		}
	}
	p.loadDraped(out, &rig)
	settled(&pattern, &rig)
	return pattern, rig
}

// settled rounds all that goes into the simulation: the last bits of what was computed
// before differ between processors, and would show in how many steps it takes.
func settled(p *drape.Pattern, r *drape.Rig) {
	for _, line := range [][]geom.Point{p.Side, p.Ends[0], p.Ends[1], r.Apex[:], r.Anchors[:]} {
		for i, q := range line {
			line[i] = geom.Pt(millionths(q.X), millionths(q.Y))
		}
	}
	for _, list := range [][]float64{p.Cord, p.Tips[:], r.Legs[:], r.Lines[:], r.BarWeight[:]} {
		for i, v := range list {
			list[i] = millionths(v)
		}
	}
	for i, l := range r.Load {
		r.Load[i] = drape.Weight{From: millionths(l.From), To: millionths(l.To), Start: millionths(l.Start), End: millionths(l.End)}
	}
	r.Cloth = math.Round(r.Cloth*1e12) / 1e12
	radius := r.Radius
	r.Radius = func(x float64) float64 { return millionths(radius(x)) }
	if r.Body != nil {
		round := r.Body.Round
		r.Body.Round = func(x float64) (breadth, depth float64) {
			breadth, depth = round(x)
			return millionths(breadth), millionths(depth)
		}
		for i, x := range r.Body.Joints {
			r.Body.Joints[i] = millionths(x)
		}
	}
}

// millionths rounds to a millionth.
func millionths(v float64) float64 { return math.Round(v*1e6) / 1e6 }

// loadDraped puts whoever is in the bed onto the rig.
func (p *Plan) loadDraped(out *Draped, rig *drape.Rig) {
	sleeper := p.Design.Sleeper
	out.Load = p.Shape.Problem.Load
	if out.Guest != nil {
		sleeper = out.Guest.Sleeper
		out.Load = hung.LyingLoad(p.Design.Bed, sleeper)
	}
	bed := p.Design.Bed
	flat := bed.Lift.Cos()
	out.Crown = -bed.Span/2 + float64(sleeper.Crown*flat)
	out.Soles = out.Crown + float64(sleeper.Stature*flat)
	who := state.PersonOf(sleeper, out.Load)
	if out.Sits {
		out.Load = who.Seated(0)
	}
	for _, l := range out.Load {
		rig.Load = append(rig.Load, drape.Weight(l))
	}
	force, _ := out.Load.Total()
	out.Weight = force + rig.BarWeight[0] + rig.BarWeight[1] + float64(rig.Cloth*p.Body.Area())
	if out.Sits || out.Round {
		return
	}
	profile := room.ProfileOf(sleeper)
	body := &drape.Body{Round: func(x float64) (breadth, depth float64) {
		return profile.Round((x - out.Crown) / (out.Soles - out.Crown))
	}}
	for _, j := range profile.Joints() {
		body.Joints = append(body.Joints, out.Crown+float64(j*(out.Soles-out.Crown)))
	}
	rig.Body = body
}

// slack is the cord of a side from apex to apex: how long it is cut for what it is
// designed to be when it hangs.
type slack struct{ x, run, cut []float64 }

// newSlack follows the cord of a shape. It is cut shorter by what it stretches, unless it
// is cut as it hangs.
func newSlack(s *hung.Shape, side, leg float64, plain bool) slack {
	const steps = 200 // between two marks
	half := s.Problem.Bed.Span / 2
	marks := [4]float64{s.Ends[hung.Head].ApexX, -half, half, s.Ends[hung.Foot].ApexX}
	out := slack{x: []float64{marks[0]}, run: []float64{0}, cut: []float64{0}}
	run, cut := 0.0, 0.0
	for k, ea := range [3]float64{leg, side, leg} {
		for i := range steps {
			a := marks[k] + float64((marks[k+1]-marks[k])*float64(i)/steps)
			b := marks[k] + float64((marks[k+1]-marks[k])*float64(i+1)/steps)
			long := s.Arc(a, b)
			run += long
			if !plain && ea > 0 {
				long /= 1 + s.At((a+b)/2).Tension/ea
			}
			cut += long
			out.x, out.run, out.cut = append(out.x, b), append(out.run, run), append(out.cut, cut)
		}
	}
	return out
}

// before returns the hung length up to a station, from the head's apex.
func (c slack) before(x float64) float64 { return between(c.x, c.run, x) }

// of returns how long the cord is cut up to a hung length.
func (c slack) of(run float64) float64 { return between(c.run, c.cut, run) }

// all returns its hung length.
func (c slack) all() float64 { return c.run[len(c.run)-1] }

// between returns the value at x of a line through points with rising places.
func between(x, y []float64, at float64) float64 {
	i := min(max(sort.SearchFloat64s(x, at), 1), len(x)-1)
	return y[i-1] + float64((y[i]-y[i-1])*(at-x[i-1])/(x[i]-x[i-1]))
}

// Beside returns the made bed in the state that a draping shows, and whether it is found.
func (p *Plan) Beside(how Draping) (state.State, bool) {
	who, made := p.Person(), p.Made()
	if how.Guest != nil {
		who = p.person(how.Guest.Sleeper)
	}
	if how.Sits {
		s := state.SitUp(made, who)
		return s, s.Bound == nil
	}
	s, err := state.Lie(made, who)
	return s, err == nil
}
