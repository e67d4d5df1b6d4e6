package finished

import (
	"slingloft/outline/bed"
	"slingloft/outline/geom"
	"slingloft/outline/hung"
)

// pair is both cords at one station: places and pulls, by [bed.Side].
type pair struct{ at, pull [2]geom.Point3 }

func (p pair) plus(d pair, k float64) pair {
	for s := range p.at {
		p.at[s] = p.at[s].PlusTimes(d.at[s], k)
		p.pull[s] = p.pull[s].PlusTimes(d.pull[s], k)
	}
	return p
}

// run is one search for a pose.
type run struct {
	*Hammock
	aim
	steps []step
}

func (h *Hammock) run(a aim) *run { return &run{h, a, h.steps(a.weight.Load)} }

// rate returns how places and pulls change per mm of the design's x at node k of
// a step.
func (r *run) rate(st *step, p *pair, k int, theta *float64) (pair, error) {
	f, err := r.frame(st, p.at, k, *theta)
	if err != nil {
		return pair{}, err
	}
	*theta = f.theta
	forces := r.pull(st, &f, k)
	var d pair
	for s := range d.at {
		tension := p.pull[s].Len()
		arc := st.arc[k]
		if st.bay {
			arc *= 1 + r.change.Side[s]/r.Shape.SideArc
		}
		if ea := r.ea(st); ea > 0 {
			arc *= 1 + tension/ea
		}
		d.at[s] = p.pull[s].Times(arc / tension)
		d.pull[s] = forces[s].Times(-1)
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
		d, err := r.rate(st, &at, stage.node, theta)
		if err != nil {
			return p, err
		}
		out, at = out.plus(d, stage.share*dx), p.plus(d, stage.next*dx)
	}
	return out, nil
}

// hang walks from the head anchor to the foot anchor with the unknowns x, the
// pulls of both cords at the head apex and the thrusts of both bars. It returns by
// how much the figure does not close, mm: both bars' lengths, the two legs at the
// foot apex, the foot anchor. Where p is not nil it takes down the pose.
func (r *run) hang(x []float64, p *Pose) ([]float64, error) {
	if !(x[0] > 0 && x[3] > 0) {
		return nil, errNarrow
	}
	w := walker{run: r, now: pair{pull: [2]geom.Point3{geom.Pt3(x[0], x[1], x[2]), geom.Pt3(x[3], x[4], x[5])}},
		bars: [2]float64{x[6], x[7]}, pose: p}
	from := r.anchors[hung.Head].Plus(r.change.Anchor[hung.Head])
	apex := from.Plus(w.line(hung.Head))
	w.now.at = [2]geom.Point3{apex, apex}
	w.apex(hung.Head, apex)
	w.legs(hung.Head)
	if err := w.bed(); err != nil {
		return nil, err
	}
	w.legs(hung.Foot)
	gap := w.now.at[bed.Left].Minus(w.now.at[bed.Right])
	apex = w.now.at[bed.Left].Plus(w.now.at[bed.Right]).Times(0.5)
	w.apex(hung.Foot, apex)
	to := r.anchors[hung.Foot].Plus(r.change.Anchor[hung.Foot])
	end := apex.Plus(w.line(hung.Foot)).Minus(to)
	return append(w.miss, gap.X, gap.Y, gap.Z, end.X, end.Y, end.Z), nil
}

// walker is a walk along the hammock.
type walker struct {
	*run
	now  pair
	bars [2]float64 // thrust, N, by [hung.End]
	miss []float64
	pose *Pose // nil: nothing is taken down
}

// line returns the hang line of an end in the direction of the walk.
func (w *walker) line(e hung.End) geom.Point3 {
	sum := w.now.pull[bed.Left].Plus(w.now.pull[bed.Right])
	pull := sum.Len()
	if w.pose != nil {
		w.pose.Line[e] = pull
		w.pose.Pull[e] = sum.Times(hung.End(e).Sign())
	}
	long := (w.Hammock.line[e] + w.change.Line[e]) * longer(pull, w.LineEA)
	return sum.Times(long / pull)
}

func (w *walker) apex(e hung.End, at geom.Point3) {
	if w.pose != nil {
		w.pose.Apex[e] = at
	}
}

// legs runs both legs of an end straight over the length that has no cloth.
func (w *walker) legs(e hung.End) {
	for s := range w.now.at {
		pull := w.now.pull[s].Len()
		long := (w.leg[e] + w.change.Leg[e][s]) * longer(pull, w.LegEA)
		w.now.at[s] = w.now.at[s].PlusTimes(w.now.pull[s], long/pull)
		if w.pose != nil {
			w.pose.Leg[e][s] = pull
		}
	}
}

// bed walks over the cloth and both bars.
func (w *walker) bed() error {
	theta, inBay := 0.0, false
	if err := w.record(&w.steps[0], 0); err != nil {
		return err
	}
	for i := range w.steps {
		st := &w.steps[i]
		if st.bay != inBay {
			e := hung.Head
			if inBay {
				e = hung.Foot
			}
			w.miss = append(w.miss, w.bar(e))
			inBay = st.bay
			if err := w.record(st, 0); err != nil {
				return err
			}
		}
		var err error
		if w.now, err = w.cross(st, w.now, &theta); err != nil {
			return err
		}
		if err := w.record(st, 2); err != nil {
			return err
		}
	}
	return nil
}

// bar passes a bar: its thrust and half its weight at each tip change the pulls.
// It returns by how much the bar is too short for the tips.
func (w *walker) bar(e hung.End) float64 {
	d := w.now.at[bed.Left].Minus(w.now.at[bed.Right])
	u := d.Unit()
	if w.pose != nil {
		w.pose.Tips[e] = w.now.at
		w.pose.Bar[e] = w.bars[e]
	}
	for s := range w.now.pull {
		w.now.pull[s] = w.now.pull[s].PlusTimes(u, -bed.Side(s).Sign()*w.bars[e]).PlusTimes(geom.Point3{Z: 1}, w.Shape.Problem.BarWeight[e]/2)
	}
	return d.Len() - w.Shape.Ends[e].Bar - w.change.Bar[e]
}
