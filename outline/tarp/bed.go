package tarp

import (
	"math"

	"slingloft/outline/geom"
	"slingloft/outline/hung"
	"slingloft/outline/rig"
)

// Bed is what a sheet hangs over: x along it from midway between the apexes, y across, z
// up from the higher apex. Both sides are alike, and those at y ≥ 0 stand for both.
type Bed struct {
	Dry     []geom.Point3 // what has to stay dry: the cloth's edges along the cords and its bottom line
	Cords   []geom.Point3 // what the sheet has to stay off: cords and bars' tips, from apex to apex
	Overall float64       // from apex to apex, level
	Slope   float64       // of the steeper hang line, rise per run
	Depth   float64       // of the bed's lowest point below the higher apex
}

// bedStep is how far apart the places of the bed are looked at, mm: half a hand's breadth.
const bedStep = 50.0

// Over returns the bed of a hung shape.
func Over(s *hung.Shape) Bed {
	head, foot := s.Ends[hung.Head], s.Ends[hung.Foot]
	middle, top := (head.ApexX+foot.ApexX)/2, max(head.ApexZ, foot.ApexZ)
	b := Bed{Overall: rig.Overall(s), Slope: max(head.Slope, foot.Slope), Depth: top - rig.Lowest(s)}
	from, to := s.TailEnds()
	half := s.Problem.Bed.Span / 2
	for _, x := range append(steps(from, to), -half, half) {
		q := s.At(x)
		b.Dry = append(b.Dry, geom.Pt3(x-middle, q.Y, q.Z-top), geom.Pt3(x-middle, 0, q.Bottom-top))
		b.Cords = append(b.Cords, geom.Pt3(x-middle, q.Y, q.Z-top))
	}
	for _, e := range []struct{ end, apex float64 }{{from, head.ApexX}, {to, foot.ApexX}} {
		for _, x := range steps(min(e.end, e.apex), max(e.end, e.apex)) {
			y, z := s.Cord(x)
			b.Cords = append(b.Cords, geom.Pt3(x-middle, max(y, 0), z-top))
		}
	}
	return b
}

// steps returns places from a to b, both among them, no further apart than [bedStep].
func steps(a, b float64) []float64 {
	n := int(math.Ceil((b - a) / bedStep))
	out := make([]float64, n+1)
	for i := range out {
		out[i] = a + (b-a)*float64(i)/float64(max(n, 1))
	}
	return out
}
