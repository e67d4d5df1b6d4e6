package state

import (
	"math"

	"slingloft/outline/finished"
	"slingloft/outline/hung"
)

// Sudden returns how many times its weight somebody loads the bed who drops into it
// from a height, mm, where it gives by give mm, more than 0, under that weight at
// rest: 1 + √(1 + 2 drop/give), from the energy of weight and spring (J. M. Gere,
// Mechanics of Materials, chapter 2.8). It is 2 for one who lets go without any drop.
func Sudden(drop, give float64) float64 { return 1 + math.Sqrt(1+2*drop/give) }

// Give is by how much a made bed gives under one who sits at mid-bay, which says what
// a drop into it does.
type Give struct {
	Length float64 // mm; 0: not known
	// Least says that hang lines give besides, by what is not known: whoever drops loads
	// the bed by less than Length says.
	Least bool
}

// GiveOf returns by how much a bed gives: by how much more its bottom sinks for a little
// more weight, which for all of it, but for what little the shape changes, is the whole
// weight's. It is known where cords and cloth have a stiffness.
func GiveOf(h finished.Hammock, p Person) Give {
	const part = 0.05 // of the weight, either way
	if h.SideEA == 0 || h.LegEA == 0 || h.Weft == 0 {
		return Give{}
	}
	var sinks [2]float64
	for i, times := range [2]float64{1 - part, 1 + part} {
		load := hung.EvenLoad(times*p.Weight, -p.Seat/2, p.Seat/2)
		pose, err := h.Hang(finished.Change{}, finished.Weight{Load: load, Centre: p.Back})
		if err != nil {
			return Give{}
		}
		sinks[i] = pose.Level.Height
	}
	return Give{Length: (sinks[0] - sinks[1]) / (2 * part), Least: h.LineEA == 0}
}
