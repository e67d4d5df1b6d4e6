package margin

import (
	"math"

	"slingloft/outline/design"
	"slingloft/outline/hung"
	"slingloft/outline/rig"
)

// Case is one load case with the static loads that it puts on every part.
type Case struct {
	Kind   CaseKind
	Basis  Basis      // how the loads are found and what is taken for granted
	Side   float64    // largest pull in a side cord, N
	Leg    [2]float64 // largest pull in a leg, by [hung.End], N
	Hang   [2]float64 // pull in a hang line and on its support, N
	Bar    [2]float64 // thrust along a bar, N; 0: none
	Cloth  float64    // largest tension across the bed, N/mm
	Cannot Obstacle   // why the case has no loads
}

// lying reads the loads off the hung shape.
func lying(s *hung.Shape) Case {
	half := s.Problem.Bed.Span / 2
	c := Case{Kind: Lying}
	c.Side = largest(s, -half, half)
	for e, end := range s.Ends {
		tip := hung.End(e).Sign() * half
		c.Side = max(c.Side, end.TipTension)
		c.Leg[e] = max(end.LegTension, largest(s, min(tip, end.ApexX), max(tip, end.ApexX)))
		c.Hang[e] = math.Hypot(end.Horizontal, end.Vertical)
		c.Bar[e] = end.BarCompression
	}
	for _, x := range s.Stations(200) {
		c.Cloth = max(c.Cloth, s.At(x).Cloth)
	}
	return c
}

// largest returns the largest pull in a cord strictly between stations a and b, N.
// Its values at the tips, where cord and leg differ, the shape has by end.
func largest(s *hung.Shape, a, b float64) float64 {
	const steps = 240
	t := 0.0
	for i := range steps {
		t = max(t, s.At(a+(b-a)*(float64(i)+0.5)/steps).Tension)
	}
	return t
}

// rolling is the sleeper's weight moved to one side by half the shoulders, at most
// to the cord. The bed turns about the line through its apexes until the weight lies
// below it again, by ρ with tan ρ = shift / height of that line above the centre of
// mass, on the side. By moments about the other cord, in a section of half opening
// y with the centre d below the cords, the lower one then carries
//
//	r = ((y + shift) cos ρ − d sin ρ) / y
//
// times what it carries lying. Cords and bars are taken to keep their shape, so that
// all their pulls grow by r: an estimate.
func rolling(s *hung.Shape, d design.Design, flat Case) Case {
	c := flat
	c.Kind = Rolling
	r := rig.Steadiness(s, d.Sleeper)
	_, centre := rig.CentreHeight(d.Sleeper)
	if r.Side <= 0 {
		return Case{Kind: Rolling, Basis: Basis{Kind: TurnsOver}, Cannot: Obstacle{ApexesLow, -r.Side}}
	}
	q := s.At(r.X)
	shift := min(centre, q.Y)
	rho := math.Atan(shift / r.Side)
	below := q.Z - q.Bottom - centre
	share := max(1, ((q.Y+shift)*math.Cos(rho)-below*math.Sin(rho))/q.Y)
	c.Basis = Basis{WeightShifted, shift, rho, share}
	c.Side *= share
	c.Cloth *= share
	for e := range c.Leg {
		c.Leg[e] *= share
		c.Bar[e] *= share
	}
	return c
}
