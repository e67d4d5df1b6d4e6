package design

import "slingloft/outline/quantity"

// Material is a material for bars with values from a published source.
type Material struct {
	Name    string
	Modulus quantity.NewtonsPerSquareMillimetre
	Yield   quantity.NewtonsPerSquareMillimetre // the least that a standard assures
	Density quantity.KilogramsPerCubicMetre
	Source  string
}

// Materials returns the materials that a bar may name. There are few: a value
// without a source that we have seen is left to the maker's own data sheet.
func Materials() []Material {
	return []Material{
		{
			Name: "6061-T6", Modulus: 68900, Yield: 241, Density: 2710,
			// 241, 255 and 276 N/mm² are all in print as its yield; the first is the
			// least that the standard assures (35 ksi), the others are typical values.
			Source: "yield: least value for extruded and drawn pipe, ASTM B241/B241M-12 table 1; modulus and density: common " +
				"textbook table of material properties",
		},
	}
}

// filled returns b with the values of its material where it has none of its own.
func (b Bar) filled() Bar {
	for _, m := range Materials() {
		if m.Name != b.Material {
			continue
		}
		if b.Modulus == 0 {
			b.Modulus = m.Modulus
		}
		if b.Yield == 0 {
			b.Yield = m.Yield
		}
		if b.Density == 0 {
			b.Density = m.Density
		}
	}
	return b
}
