package designtest

import (
	"math"
	"math/rand/v2"

	"slingloft/outline/design"
	"slingloft/outline/quantity"
)

// Tarp returns a random tarp: of any shape and curve, joined anyhow, as large as asked or
// as the bed needs. Most can be sewn; the rest must be refused by name. The same source
// gives the same tarp.
func Tarp(r *rand.Rand) design.Tarp {
	between := func(a, b float64) float64 { return math.Round(1e4*(a+(b-a)*r.Float64())) / 1e4 }
	maybe := func(a, b float64) float64 {
		if r.IntN(2) == 0 {
			return 0
		}
		return between(a, b)
	}
	t := design.Defaults().Tarp
	t.On, t.Shape, t.Curve, t.Join = true, design.TarpShape(r.IntN(2)), design.TarpCurve(r.IntN(3)), design.TarpJoin(r.IntN(3))
	t.Ridge, t.Width, t.Rise, t.Hollow = maybe(2500, 5500), maybe(1200, 4000), maybe(150, 900), maybe(0.01, 0.15)
	t.Pitch, t.Rain = quantity.Degrees(between(20, 60)), quantity.Degrees(between(0, 50))
	t.Hem, t.Allowance, t.Patch = between(6, 25), between(8, 25), between(60, 250)
	if t.Shape == design.HexagonTarp {
		t.Side = maybe(1500, 2500)
	}
	if t.Join == design.RidgeJoin {
		t.RidgeHollow = maybe(0.005, 0.05)
	}
	if r.IntN(2) == 0 {
		t.Own.On = true
		t.Own.Cloth.Name, t.Own.Cloth.Width, t.Own.Cloth.ArealDensity = "tarp cloth", between(600, 1600), 40
	}
	return t
}
