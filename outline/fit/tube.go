package fit

import "slingloft/outline/quantity"

// Tube is a size of tube that is commonly sold, mm.
type Tube struct{ Outer, Wall float64 }

// Tubes returns sizes of tube to propose bars of, each stiffer and stronger than the
// one before it. Which sizes are common is own choice: any that holds will do.
func Tubes(inches bool) []Tube {
	if inches {
		out := []Tube{{0.75, 0.065}, {0.875, 0.065}, {1, 0.065}, {1.25, 0.065}, {1.25, 0.083}, {1.5, 0.083}, {1.75, 0.083}, {2, 0.083},
			{2, 0.125}, {2.5, 0.125}, {3, 0.125}}
		for i := range out {
			out[i] = Tube{float64(out[i].Outer * quantity.Inch), float64(out[i].Wall * quantity.Inch)}
		}
		return out
	}
	return []Tube{{18, 1.5}, {20, 1.5}, {22, 1.5}, {25, 1.5}, {25, 2}, {28, 2}, {30, 2}, {32, 2}, {35, 2}, {40, 2}, {45, 2},
		{50, 2}, {50, 3}, {60, 3}, {70, 3}}
}
