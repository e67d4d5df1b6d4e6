package state

import "math"

// Sudden returns how many times its weight somebody loads the bed who drops into it
// from a height, mm, where it gives by give mm, more than 0, under that weight at
// rest: 1 + √(1 + 2 drop/give), from the energy of weight and spring (J. M. Gere,
// Mechanics of Materials, chapter 2.8). It is 2 for one who lets go without any drop.
func Sudden(drop, give float64) float64 { return 1 + math.Sqrt(1+2*drop/give) }
