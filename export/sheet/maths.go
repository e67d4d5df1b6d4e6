package sheet

import "math"

func atan(slope float64) float64 { return math.Atan(slope) }

func first(a, _ float64) float64 { return a }
