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
	flatBay := half / math.Cos(s.Problem.Bed.Lift)
	scale := flatBay / half
	var slopes [2]float64
	for _, e := range [2]hung.End{hung.Head, hung.Foot} {
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
	for _, e := range [2]hung.End{hung.Head, hung.Foot} {
		c := b.Corner(e)
		b.Ends[e] = Edge{geom.Polyline{geom.Pt(c.X, 0), c}, []float64{0, c.Y}}
		b.Tips[e] = b.Side.Hung[slices.Index(b.Side.Flat, b.BarCorner(e))]
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
