package designtest

import (
	"math"
	"math/rand/v2"

	"slingloft/outline/design"
)

// Lining returns a design with a random lining: on either face, round a pad of any size, of
// the body's cloth or its own.
// Most can be sewn; the rest must be refused by name. The same source gives the same lining.
func Lining(r *rand.Rand, d design.Design) design.Design {
	between := func(a, b float64) float64 { return math.Round(1e4*(a+(b-a)*r.Float64())) / 1e4 }
	maybe := func(a, b float64) float64 {
		if r.IntN(2) == 0 {
			return 0
		}
		return between(a, b)
	}
	if d.Bed.Cut == design.Net && r.IntN(4) == 0 {
		d.Bed.Cut = design.Straight
	}
	l := design.Defaults().Lining
	l.On, l.Place, l.Opening = true, design.LiningPlace(r.IntN(2)), design.LiningOpening(r.IntN(4))
	l.Thickness, l.Play = between(5, 80), between(0, 15)
	l.Width, l.Length, l.Shift = maybe(300, 600), maybe(600, 1500), maybe(-100, 100)
	if r.IntN(2) == 0 {
		l.Own.On = true
		l.Own.Cloth.Name, l.Own.Cloth.Width, l.Own.Cloth.ArealDensity = "lining cloth", between(600, 1600), 40
	}
	d.Lining = l
	return d
}
