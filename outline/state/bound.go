package state

import (
	"math"

	"slingloft/outline/finished"
	"slingloft/outline/hung"
)

// designed is the bed as it was designed to hang, which stands for lying where the
// made one is not found.
func designed(s *hung.Shape, why error) State {
	_, x := s.Problem.Load.Total()
	out := State{Kind: Lying, X: x, Bound: why, Share: 0.5}
	half := s.Problem.Bed.Span / 2
	// The station of a tip has the pull on its side of the bay.
	inBay := func(x float64) bool { return math.Abs(x) <= half }
	most := func(bay bool, from, to float64) float64 {
		t := 0.0
		for _, x := range s.Stations(200) {
			if x >= from && x <= to && inBay(x) == bay {
				t = max(t, s.At(x).Tension)
			}
		}
		return t
	}
	side := max(most(true, -half, half), s.Ends[hung.Head].TipTension, s.Ends[hung.Foot].TipTension)
	out.Loads.Side = [2]float64{side, side}
	head, foot := s.TailEnds()
	for e, end := range s.Ends {
		leg := max(end.LegTension, s.At(end.ApexX).Tension, most(false, [2]float64{head, half}[e], [2]float64{-half, foot}[e]))
		out.Loads.Leg[e] = [2]float64{leg, leg}
		out.Loads.Line[e] = math.Hypot(end.Horizontal, end.Vertical)
		out.Loads.Bar[e] = end.BarCompression
		out.Hang[e] = math.Atan(end.Slope)
	}
	for _, x := range s.Stations(200) {
		out.Loads.Cloth = max(out.Loads.Cloth, s.At(x).Cloth)
	}
	return out
}

// By how much more than lying one who sits up may pull a line and press a bar, where
// no state is found that shows it: own choices. Some fifty beds drawn at random show up to
// 1.14, five ordinary ones 1.13 and 1.20.
const (
	sittingLine = 1.25
	sittingBar  = 1.5
)

// onOneCord bounds what one who sits loads, on one cord or both, by the whole weight in
// one cord, the larger of two extremes: lines so long that they keep the angle at which
// they hang under one who lies, and no lines at all, the apexes staying where they are
// and cord and legs drawn straight to the seat. Lines and bars are bounded from below
// besides, since under one who sits up both cords carry and bars are pressed the harder.
func onOneCord(h finished.Hammock, p Person, k Kind, x float64, why error) State {
	s := h.Shape
	out := designed(s, why)
	out.Kind, out.X, out.Level, out.Hang, out.Share = k, x, finished.Level{}, [2]float64{}, 0
	hangs := s.Ends[hung.Head].Vertical + s.Ends[hung.Foot].Vertical
	more := max(1, p.Weight/hangs)
	direct := straight(s, x, more*hangs)
	for e := range s.Ends {
		pull := max(more*out.Loads.Line[e], direct[e])
		out.Loads.Line[e] = max(pull, sittingLine*more*out.Loads.Line[e])
		out.Loads.Bar[e] *= sittingBar * more
		for i := range out.Loads.Leg[e] {
			out.Loads.Leg[e][i] = pull
			out.Loads.Side[i] = max(out.Loads.Side[i], pull)
		}
	}
	out.Loads.Cloth = max(out.Loads.Cloth*more, p.Weight/p.Seat)
	return out
}

// straight returns the pulls along two straight lines from the apexes to a weight on
// a cord at station x.
func straight(s *hung.Shape, x, weight float64) [2]float64 {
	h, f := s.Ends[hung.Head], s.Ends[hung.Foot]
	half := s.Problem.Bed.Span / 2
	left, right := h.Leg+s.Arc(-half, x), f.Leg+s.Arc(x, half)
	dx, dz := f.ApexX-h.ApexX, f.ApexZ-h.ApexZ
	long := math.Hypot(dx, dz)
	along := (float64(long*long) + float64(left*left) - float64(right*right)) / (2 * long)
	off := math.Sqrt(max(0, float64(left*left)-float64(along*along)))
	// The weight lies along the line between the apexes, and off below it.
	px, pz := (float64(along*dx)+float64(off*dz))/long, (float64(along*dz)-float64(off*dx))/long
	// Directions from the weight to the apexes, and its balance.
	ax, az := -px/left, -pz/left
	bx, bz := (dx-px)/right, (dz-pz)/right
	det := float64(ax*bz) - float64(az*bx)
	return [2]float64{math.Abs(weight * bx / det), math.Abs(weight * ax / det)}
}

// rolled bounds what one loads who lies aside: the bed is taken to turn as one rigid
// body about the line through its apexes until the weight lies below it, by ρ with
// tan ρ = aside / height of that line above the centre of mass. By moments about the
// other cord, in a section of half opening y with the centre d below the cords, the
// lower one then carries
//
//	r = ((y + aside) cos ρ − d sin ρ) / y
//
// times what it carries lying, and at most the whole; all but the hang lines are taken
// to be loaded r times as much.
func rolled(s *hung.Shape, p Person, w finished.Weight, why error) State {
	out := designed(s, why)
	out.Kind, out.Aside, out.Level, out.Hang = Edge, w.Aside, finished.Level{}, [2]float64{}
	h, f := s.Ends[hung.Head], s.Ends[hung.Foot]
	t := (out.X - h.ApexX) / (f.ApexX - h.ApexX)
	q := s.At(out.X)
	above := h.ApexZ + float64(t*(f.ApexZ-h.ApexZ)) - q.Bottom - w.Centre
	r := 2.0
	if above > 0 {
		rho := math.Atan(w.Aside / above)
		below := q.Z - q.Bottom - w.Centre
		r = max(1, min(2, (float64((q.Y+w.Aside)*math.Cos(rho))-float64(below*math.Sin(rho)))/q.Y))
	}
	out.Share = 0
	out.Loads.Cloth *= r
	for e := range 2 {
		out.Loads.Bar[e] *= r
		out.Loads.Side[e] *= r
		for i := range 2 {
			out.Loads.Leg[e][i] *= r
		}
	}
	return out
}
