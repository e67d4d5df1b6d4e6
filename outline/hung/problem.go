package hung

import (
	"math"

	"slingloft/outline/article"
	"slingloft/outline/bed"
	"slingloft/outline/design"
	"slingloft/outline/quantity"
)

// End is one end of the hammock.
type End = bed.End

// The two ends.
const (
	Head = bed.Head
	Foot = bed.Foot
)

// Ends returns both ends, the head first.
func Ends() [2]End { return [2]End{Head, Foot} }

// Problem is what the solver needs of a design.
type Problem struct {
	Bed         design.Bed
	Load        Load       // of the sleeper, N/mm
	ClothWeight float64    // of the cloth, N/mm²
	BarWeight   [2]float64 // of each whole bar, N
	// Anchors is the level distance between the anchors, mm, from which the hammock hangs
	// in the middle, for [design.LevelAnchors]. With 0 and [design.LevelHooks] the apexes
	// are level.
	Anchors float64
}

// ProblemOf takes the solver's part out of a design.
func ProblemOf(d design.Design) Problem {
	p := Problem{Bed: d.Bed, ClothWeight: float64(d.Cloth.ArealDensity.Weight())}
	if d.Lining.On { // as good as as large as the body, and hangs from the same cords
		p.ClothWeight += float64(d.ClothFor(article.Lining).ArealDensity.Weight())
	}
	for e, b := range [2]float64{d.Bed.HeadBar, d.Bed.FootBar} {
		p.BarWeight[e] = float64(BarMass(d.Bar, b).Weight())
	}
	p.Load = LoadOf(d)
	if d.Bed.Second == design.LevelAnchors {
		p.Anchors = d.Hang.Distance
	}
	return p
}

// LoadOf returns the line load of the design's sleeper.
func LoadOf(d design.Design) Load {
	start := -d.Bed.Span / 2
	weight := float64(d.Sleeper.Mass.Weight())
	if d.Load.Model == design.Even {
		from, to := d.Load.From, d.Load.To
		if from == 0 && to == 0 {
			to = d.Bed.Span
		}
		return EvenLoad(weight, start+from, start+to)
	}
	return LyingLoad(d.Bed, d.Sleeper)
}

// LyingLoad returns the line load of a sleeper who lies in a bed with the crown where
// theirs is to be. Along an inclined bottom line the body keeps its length, so that it
// covers less of x.
func LyingLoad(b design.Bed, s design.Sleeper) Load {
	flat := b.Lift.Cos()
	s.Stature *= flat
	return SleeperLoad(s, -b.Span/2+s.Crown*flat)
}

// BarMass returns the mass of a bar between cord centres that are long mm
// apart, 0 where the density is not given.
func BarMass(b design.Bar, long float64) quantity.Kilograms {
	return quantity.Kilograms(b.Density.PerCubicMillimetre() * BarArea(b) * max(0, b.CutFor(long)))
}

// BarArea returns the area in mm² of the bar's section, tube or rod.
func BarArea(b design.Bar) float64 {
	inner := 0.0
	if b.Wall > 0 {
		inner = max(0, b.Outer-2*b.Wall)
	}
	return math.Pi / 4 * (b.Outer*b.Outer - inner*inner)
}

// Bottom returns the height of the bottom line at x, mm.
func (p *Problem) Bottom(x float64) float64 { return -x * p.Bed.Lift.Tan() }

// Radius returns the underbody radius at x, mm: the given ones at the bars and
// at mid-bay, with a smooth change between them and none in the tails.
func (p *Problem) Radius(x float64) float64 {
	b := &p.Bed
	end := b.HeadRadius
	if x > 0 {
		end = b.FootRadius
	}
	t := min(math.Abs(x)/(b.Span/2), 1)
	return b.SeatRadius + (end-b.SeatRadius)*t*t*(3-2*t)
}

// TailEnd returns the station of the end of a tail's centre line, mm.
func (p *Problem) TailEnd(e End) float64 {
	r := p.Bed.HeadTail
	if e == Foot {
		r = p.Bed.FootTail
	}
	return e.Sign() * (p.Bed.Span/2 + r*p.Bed.Lift.Cos())
}

// bar returns the opening between the cord centres at an end's bar, mm.
func (p *Problem) bar(e End) float64 {
	if e == Head {
		return p.Bed.HeadBar
	}
	return p.Bed.FootBar
}

// leg returns the cord length from an end's bar tip to its apex, mm.
func (p *Problem) leg(e End) float64 {
	if e == Head {
		return p.Bed.HeadLeg
	}
	return p.Bed.FootLeg
}
