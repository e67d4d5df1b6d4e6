package flat

import (
	"math"
	"slices"

	"slingloft/outline/design"
	"slingloft/outline/geom"
	"slingloft/outline/hung"
	"slingloft/outline/numeric"
)

// stationsOfStraight is how many stations the straight cut is drawn and judged
// at: closer than 10 mm on any bed, a chord error below 0.01 mm.
const stationsOfStraight = 240

// layStraight lays the body out as hand makers do: half the girth over the
// station in the bay, straight tail edges from the bar corners, square ends.
func layStraight(s *hung.Shape) (Body, error) {
	b := Body{Cut: design.Straight}
	half := s.Problem.Bed.Span / 2
	flatBay := half / s.Problem.Bed.Lift.Cos()
	scale := flatBay / half
	var slopes [2]float64
	for _, e := range hung.Ends() {
		slopes[e] = tailSlope(s, e)
		x := e.Sign() * half
		corner := s.At(x).Section.Girth() / 2
		b.Bars[e] = geom.Polyline{geom.Pt(x*scale, 0), geom.Pt(x*scale, corner)}
	}
	for _, x := range s.Stations(stationsOfStraight) {
		q := s.At(x)
		v := q.Section.Girth() / 2
		cut := v
		if over := math.Abs(x) - half; over > 0 {
			e := hung.Head
			if x > 0 {
				e = hung.Foot
			}
			cut = b.BarCorner(e).Y + slopes[e]*over
		}
		b.Departures = append(b.Departures, Departure{X: x, True: 2 * v, Cut: 2 * cut, Load: q.Load})
		b.Side.Flat = append(b.Side.Flat, geom.Pt(x*scale, cut))
	}
	b.Side.Hung = hungOfStraight(s, b.Side.Flat, scale)
	for _, e := range hung.Ends() {
		c := b.Corner(e)
		b.Ends[e] = Edge{geom.Polyline{geom.Pt(c.X, 0), c}, []float64{0, c.Y}}
		tip := slices.Index(b.Side.Flat, b.BarCorner(e))
		b.Tips[e] = b.Side.Hung[tip]
		tail := b.Tips[e]
		if e == hung.Foot {
			tail = b.Side.HungLength() - b.Tips[e]
		}
		sec, err := straightSection(s, e, tail, c.Y)
		if err != nil {
			return Body{}, err
		}
		b.Sections[e] = sec
	}
	return b, nil
}

// hungOfStraight returns running hung lengths: the cord's in the bay; along a
// straight tail the cloth lies on the cord without shear, so that it ends where
// its own length is used up.
func hungOfStraight(s *hung.Shape, side geom.Polyline, scale float64) []float64 {
	half := s.Problem.Bed.Span / 2
	out := make([]float64, len(side))
	for i := 1; i < len(side); i++ {
		a, b := side[i-1].X/scale, side[i].X/scale
		step := side[i].Dist(side[i-1])
		if math.Abs(a+b)/2 < half {
			step = s.Arc(a, b)
		}
		out[i] = out[i-1] + step
	}
	return out
}

// tailSlope returns the slope dv/dx outwards of an end's straight tail edge: the
// one through the given end girth, else the one that makes the largest
// load-weighted departure over the tail smallest.
func tailSlope(s *hung.Shape, e hung.End) float64 {
	half := s.Problem.Bed.Span / 2
	end := s.Ends[e]
	run := math.Abs(end.TailX) - half
	corner := end.Section.Girth() / 2
	if g := s.Problem.Bed.EndGirth; g > 0 {
		return (g/2 - corner) / run
	}
	const n = 60
	var over, miss, weight [n]float64
	for i := range n {
		over[i] = run * float64(i+1) / n
		q := s.At(e.Sign() * (half + over[i]))
		miss[i] = q.Section.Girth()/2 - corner
		weight[i] = q.Load
	}
	worst := func(slope float64) float64 {
		w := 0.0
		for i := range n {
			w = max(w, math.Abs(miss[i]-slope*over[i])*weight[i])
		}
		return -w
	}
	steepest := 0.0
	for i := range n {
		steepest = max(steepest, math.Abs(miss[i]/over[i]))
	}
	slope, _ := numeric.Peak(worst, -2*steepest-1e-6, 2*steepest+1e-6)
	return slope
}

// straightSection returns the section that closes a straight tail: its corners
// stop on the cord where the tail's edge is used up, short of the centre line's
// end, and its girth is the square end's width.
func straightSection(s *hung.Shape, e hung.End, tail, halfGirth float64) (geom.Polyline, error) {
	half := s.Problem.Bed.Span / 2
	along := func(x float64) float64 { return math.Abs(s.Arc(e.Sign()*half, e.Sign()*x)) - tail }
	x, err := numeric.Root(along, half, half+tail, 1e-9)
	if err != nil {
		return nil, err
	}
	y, _ := s.Cord(e.Sign() * x)
	radius := s.Problem.Radius(e.Sign() * x)
	h, err := hung.DropOfGirth(2*halfGirth, y, radius)
	if err != nil {
		return nil, err
	}
	sec, err := hung.NewSection(y, h, radius)
	if err != nil {
		return nil, err
	}
	return sectionLine(sec), nil
}

// sectionLine returns a section from the bottom line to the cord, in steps of
// about 2 mm.
func sectionLine(sec hung.Section) geom.Polyline {
	last := sec.Girth() / 2
	n := int(math.Ceil(last / 2))
	var l geom.Polyline
	for i := range n + 1 {
		l = append(l, geom.Pt(sec.Point(last*float64(i)/float64(n))))
	}
	return l
}
