package hung

import (
	"sort"

	"slingloft/outline/design"
	"slingloft/outline/quantity"
)

// Gravity is the standard acceleration of free fall, m/s².
const Gravity = quantity.Gravity

// LinearLoad is a part of a line load that changes linearly from From to To.
type LinearLoad struct {
	From, To   float64 // stations, mm, From < To
	Start, End float64 // load at From and at To, both sides together, N/mm
}

// Load is a line load on the whole bed, downward, both sides together: the sum
// of its segments, which may lie over each other.
type Load []LinearLoad

// At returns the load at x in N/mm. At the end of a segment that segment no
// longer counts.
func (l Load) At(x float64) float64 {
	w := 0.0
	for _, s := range l {
		if x >= s.From && x < s.To {
			w += s.Start + (s.End-s.Start)*(x-s.From)/(s.To-s.From)
		}
	}
	return w
}

// Total returns the resultant in N and its station in mm, both 0 for no load.
func (l Load) Total() (force, x float64) {
	moment := 0.0
	for _, s := range l {
		long := s.To - s.From
		f := long * (s.Start + s.End) / 2
		force += f
		moment += f*s.From + long*long*(s.Start+2*s.End)/6
	}
	if force == 0 {
		return 0, 0
	}
	return force, moment / force
}

// Breaks returns the stations at which the load or its slope jumps, rising.
func (l Load) Breaks() []float64 {
	var b []float64
	for _, s := range l {
		b = append(b, s.From, s.To)
	}
	sort.Float64s(b)
	return b
}

// EvenLoad returns force N spread evenly from one station to another.
func EvenLoad(force, from, to float64) Load {
	w := force / (to - from)
	return Load{{from, to, w, w}}
}

// Masses of body parts as fractions of the whole and the centre of mass of the
// leg, foot included, from hip to ankle, after Dempster as tabulated in D. A. Winter,
// Biomechanics and Motor Control of Human Movement, table 4.1.
const (
	headMass    = 0.081          // head and neck
	trunkMass   = 0.497 + 2*0.05 // trunk with both arms, which lie along it
	legsMass    = 2 * 0.161      // both legs with the feet
	legCentre   = 0.447          // from trochanter, of trochanter to malleolus
	statureMean = (1756.2 + 1628.5) / 2
)

// Places along the body from the crown as parts of the stature: means of men and
// women in C. C. Gordon et al., 2012 Anthropometric Survey of U.S. Army
// Personnel, NATICK/TR-15/007 (an army sample, fitter than others).
const (
	// headEnd takes the head with the neck to be as long as the head is deep.
	headEnd = (199.5 + 189.8) / 2 / statureMean
	// crotch is where the trunk ends and the legs begin.
	crotch = 1 - (845.9+782.3)/2/statureMean
	// trochanter is the upper end of the leg as its centre of mass is tabulated.
	trochanter = 1 - (900.9+845.4)/2/statureMean
	// malleolus is the ankle, to which that table measures the leg.
	malleolus = 1 - (72.9+62.7)/2/statureMean
)

// SleeperLoad returns the weight of a sleeper lying on the back with the crown
// at station crown and the feet towards positive x, as three segments: head,
// trunk with arms, and legs. Head and trunk are even; the legs thin out so that
// their centre of mass lies where the table has it.
func SleeperLoad(s design.Sleeper, crown float64) Load {
	weight := float64(s.Mass.Weight())
	at := func(part float64) float64 { return crown + part*s.Stature }
	head := EvenLoad(headMass*weight, at(0), at(headEnd))
	trunk := EvenLoad(trunkMass*weight, at(headEnd), at(crotch))
	// A load that runs from m(1+k) to m(1−k) over a length has its centre at
	// ½ − k/6 of it.
	centre := (trochanter + legCentre*(malleolus-trochanter) - crotch) / (1 - crotch)
	k := 6 * (0.5 - centre)
	mean := legsMass * weight / ((1 - crotch) * s.Stature)
	legs := LinearLoad{at(crotch), at(1), mean * (1 + k), mean * (1 - k)}
	return append(append(head, trunk...), legs)
}
