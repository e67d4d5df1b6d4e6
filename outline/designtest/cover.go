package designtest

import (
	"math"
	"math/rand/v2"

	"slingloft/outline/design"
)

// Cover returns a random cover: its edge held anyhow, its zip anywhere, on any ridge. Most
// can be sewn; the rest must be refused by name. The same source gives the same cover.
func Cover(r *rand.Rand) design.Cover {
	between := func(a, b float64) float64 { return math.Round(1e4*(a+(b-a)*r.Float64())) / 1e4 }
	c := design.Defaults().Cover
	c.On, c.Edge, c.Zip = true, design.CoverEdge(r.IntN(2)), design.CoverZip(r.IntN(2))
	c.Hem, c.Lap, c.Allowance = between(6, 16), between(30, 100), between(6, 20)
	c.ZipWidth, c.Travel = between(10, 30), between(20, 50)
	c.ZipUp = c.ZipWidth/2 + between(12, 60)
	if r.IntN(2) == 0 {
		c.ZipLength = between(250, 900)
	}
	switch r.IntN(3) {
	case 0:
		c.Height = between(700, 1300)
		c.Zip = design.CoverZip(r.IntN(4))
	case 1:
		c.Ridge = design.CarryingRidge
	}
	if r.IntN(2) == 0 {
		c.Own.On = true
		c.Own.Cloth.Name, c.Own.Cloth.Width, c.Own.Cloth.ArealDensity = "net", between(900, 1800), 28
	}
	return c
}
