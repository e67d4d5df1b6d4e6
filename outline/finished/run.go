package finished

import (
	"errors"
	"math"
	"slices"

	"slingloft/outline/hung"
)

// step is a short stretch of the bed between two stations of the design. Values
// stand at its start, middle and end.
type step struct {
	from, to float64
	w        [3]float64 // load with the cloth's own weight, N/mm
	half     [3]float64 // P/2, mm
	radius   [3]float64
	arc      [3]float64 // cord per mm of x in the design
	long     float64    // cord over the step in the design, mm
	bay      bool
}

// steps lays the bed out in steps that end at the bars and wherever the load
// jumps.
func (h Hammock) steps(load hung.Load) []step {
	const number = 64
	s := h.shape
	half := s.Problem.Bed.Span / 2
	marks := merged(s.Stations(number), load.Breaks())
	var out []step
	for i := 1; i < len(marks); i++ {
		st := step{from: marks[i-1], to: marks[i]}
		mid := (st.from + st.to) / 2
		st.bay = math.Abs(mid) < half
		st.long = s.Arc(st.from, st.to)
		// A hair inside the ends, where loads and slopes may jump.
		hair := 1e-9 * (st.to - st.from)
		for k, x := range [3]float64{st.from + hair, mid, st.to - hair} {
			q := s.At(x)
			st.half[k], st.radius[k] = q.Section.Girth()/2, q.Section.Radius
			st.w[k] = load.At(x) + s.Problem.ClothWeight*q.Section.Girth()
			st.arc[k] = math.Sqrt(1 + q.DY*q.DY + q.DZ*q.DZ)
		}
		// Simpson's rule over the step gives back its cord exactly.
		scale := st.long / ((st.arc[0] + 4*st.arc[1] + st.arc[2]) / 6 * (st.to - st.from))
		for k := range st.arc {
			st.arc[k] *= scale
		}
		out = append(out, st)
	}
	return out
}

// merged returns the stations with those of extra that lie among them, rising.
func merged(stations, extra []float64) []float64 {
	all := append(append([]float64(nil), stations...), extra...)
	slices.Sort(all)
	out := stations[:1:1]
	for _, x := range all {
		if x > out[len(out)-1]+1e-6 && x <= stations[len(stations)-1] {
			out = append(out, x)
		}
	}
	return out
}

// errNarrow is met where the cords stand further apart than the cloth is wide or
// cross over.
var errNarrow = errors.New("the cloth does not reach between the cords")

// wall returns θ and h for half an opening y, half a girth and a radius; guess is
// a θ nearby, 0 for none.
func wall(y, half, radius, guess float64) (theta, height float64, err error) {
	if !(y > 0) || !(y < half) {
		return 0, 0, errNarrow
	}
	theta = guess
	if theta == 0 {
		theta = math.Acos(y / half)
	}
	for range 50 {
		t := half - radius*theta
		sin, cos := math.Sincos(theta)
		if !(t > 0) || !(sin > 0) {
			return 0, 0, errNarrow
		}
		// dy/dθ = −t sin θ.
		d := (t*cos + radius*sin - y) / (t * sin)
		theta += min(max(d, -0.2), 0.2)
		if math.Abs(d) < 1e-14 {
			break
		}
	}
	t := half - radius*theta
	if !(theta > 0 && theta < math.Pi/2 && t > 0) {
		return 0, 0, errNarrow
	}
	return theta, t*math.Sin(theta) + radius*(1-math.Cos(theta)), nil
}

// pair is both cords at one station: places and pulls, by [Side].
type pair struct{ at, pull [2]Vec }

func (p pair) plus(d pair, k float64) pair {
	for s := range p.at {
		p.at[s] = p.at[s].Plus(d.at[s], k)
		p.pull[s] = p.pull[s].Plus(d.pull[s], k)
	}
	return p
}

// frame is a section with its cords at any height: as in the design, but tilted as
// a whole.
type frame struct {
	mid      Vec // between the cords
	sin, cos float64
	half     float64 // half the opening, along the tilted line from cord to cord
	theta    float64 // of the walls against that line
	height   float64 // cords above the bottom, square to that line
	outwards Vec     // unit vector to the left cord
	upwards  Vec     // unit vector from the bottom to mid
}

// section returns the section between two cords at node k of a step.
func (st *step) section(at [2]Vec, k int, guess float64) (frame, error) {
	l, r := at[Left], at[Right]
	across := math.Hypot(l.Y-r.Y, l.Z-r.Z)
	f := frame{mid: Vec{}.Plus(l.Plus(r, 1), 0.5), half: across / 2, sin: (l.Z - r.Z) / across, cos: (l.Y - r.Y) / across}
	f.outwards, f.upwards = Vec{0, f.cos, f.sin}, Vec{0, -f.sin, f.cos}
	var err error
	f.theta, f.height, err = wall(f.half, st.half[k], st.radius[k], guess)
	return f, err
}

// rate returns how places and pulls change per mm of the design's x at node k of
// a step; stretch is by how much longer each cord is there than in the design.
// The weight w, centre high above the bottom and d = h − centre below the cords,
// is held by both cords: square to the line between them
//
//	v = w/2 (cos φ ± d/y sin φ)
//
// for the upper and the lower cord by moments, and along it w/2 cos φ cot θ apart
// by the slope of the walls and w/2 sin φ upwards.
func (r *run) rate(st *step, p pair, k int, theta *float64) (pair, error) {
	f, err := st.section(p.at, k, *theta)
	if err != nil {
		return pair{}, err
	}
	*theta = f.theta
	half := st.w[k] / 2
	apart := half * f.cos / math.Tan(f.theta)
	more := half * f.sin * (f.height - r.centre) / f.half
	var d pair
	for s := range d.at {
		stretch := 1.0
		if st.bay {
			stretch += r.change.Side[s] / r.shape.SideArc
		}
		sign := Side(s).sign()
		d.at[s] = Vec{}.Plus(p.pull[s], st.arc[k]*stretch/p.pull[s].Len())
		d.pull[s] = Vec{}.Plus(f.outwards, sign*apart+half*f.sin).Plus(f.upwards, half*f.cos+sign*more)
	}
	return d, nil
}

// cross takes the pair over a step by the classical Runge–Kutta rule of fourth
// order.
func (r *run) cross(st *step, p pair, theta *float64) (pair, error) {
	dx := st.to - st.from
	out, at := p, p
	for _, stage := range [4]struct {
		node        int
		share, next float64
	}{{0, 1.0 / 6, 0.5}, {1, 1.0 / 3, 0.5}, {1, 1.0 / 3, 1}, {2, 1.0 / 6, 0}} {
		d, err := r.rate(st, at, stage.node, theta)
		if err != nil {
			return p, err
		}
		out, at = out.plus(d, stage.share*dx), p.plus(d, stage.next*dx)
	}
	return out, nil
}

// hang walks from the head hook to the foot hook with the unknowns x and returns
// the pose and by how much it does not close.
func (r *run) hang(x []float64) (Pose, []float64, error) {
	var p Pose
	if !(x[0] > 0 && x[3] > 0) {
		return p, nil, errNarrow
	}
	now := pair{pull: [2]Vec{{x[0], x[1], x[2]}, {x[3], x[4], x[5]}}}
	p.Bar = [2]float64{x[6], x[7]}
	sum := now.pull[Left].Plus(now.pull[Right], 1)
	apex := r.hooks[hung.Head].Plus(sum.Unit(), r.lines[hung.Head]+r.change.Line[hung.Head])
	p.Apex[hung.Head], p.Line[hung.Head] = apex, sum.Len()
	now.at = [2]Vec{apex, apex}
	r.free(hung.Head, &now, &p)
	miss, err := r.bed(&now, &p)
	if err != nil {
		return p, nil, err
	}
	r.free(hung.Foot, &now, &p)
	gap := now.at[Left].Plus(now.at[Right], -1)
	sum = now.pull[Left].Plus(now.pull[Right], 1)
	p.Apex[hung.Foot] = Vec{}.Plus(now.at[Left].Plus(now.at[Right], 1), 0.5)
	p.Line[hung.Foot] = sum.Len()
	end := p.Apex[hung.Foot].Plus(sum.Unit(), r.lines[hung.Foot]+r.change.Line[hung.Foot]).Plus(r.hooks[hung.Foot], -1)
	return p, append(miss, gap.X, gap.Y, gap.Z, end.X, end.Y, end.Z), nil
}

// bed walks over the cloth and both bars.
func (r *run) bed(now *pair, p *Pose) (miss []float64, err error) {
	theta, inBay := 0.0, false
	if err = p.record(&r.steps[0], 0, *now); err != nil {
		return nil, err
	}
	for i := range r.steps {
		st := &r.steps[i]
		if st.bay != inBay {
			e := hung.Head
			if inBay {
				e = hung.Foot
			}
			miss = append(miss, r.bar(e, now, p))
			inBay = st.bay
			if err = p.record(st, 0, *now); err != nil {
				return nil, err
			}
		}
		if *now, err = r.cross(st, *now, &theta); err != nil {
			return nil, err
		}
		if err = p.record(st, 2, *now); err != nil {
			return nil, err
		}
	}
	return miss, nil
}

// free runs both legs of an end straight over the length that has no cloth.
func (r *run) free(e hung.End, now *pair, p *Pose) {
	end := r.shape.Ends[e]
	for s := range now.at {
		long := end.Leg - end.TailArc + r.change.Leg[e][s]
		now.at[s] = now.at[s].Plus(now.pull[s].Unit(), long)
		p.Leg[e][s] = now.pull[s].Len()
	}
}

// bar passes a bar: its thrust and half its weight at each tip change the pulls.
// It returns by how much the bar is too short for the tips.
func (r *run) bar(e hung.End, now *pair, p *Pose) float64 {
	p.Tips[e] = now.at
	d := now.at[Left].Plus(now.at[Right], -1)
	u := d.Unit()
	for s := range now.pull {
		now.pull[s] = now.pull[s].Plus(u, -Side(s).sign()*p.Bar[e]).Plus(Vec{Z: 1}, r.shape.Problem.BarWeight[e]/2)
	}
	return d.Len() - r.shape.Ends[e].Bar - r.change.Bar[e]
}

// record adds the station at a step's start, node 0, or end, node 2. A bar's stands
// there twice, with the pulls to either side.
func (p *Pose) record(st *step, k int, now pair) error {
	f, err := st.section(now.at, k, 0)
	if err != nil {
		return err
	}
	x := st.from
	if k > 0 {
		x = st.to
	}
	out := Station{X: x, Cords: now.at, Bottom: f.mid.Plus(f.upwards, -f.height), Tilt: math.Asin(f.sin), Wall: f.theta}
	for s := range out.Pull {
		out.Pull[s] = now.pull[s].Len()
		if st.bay {
			p.Cord[s] = max(p.Cord[s], out.Pull[s])
		}
	}
	p.Bed = append(p.Bed, out)
	return nil
}
