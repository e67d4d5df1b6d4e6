package given

import (
	"slingloft/outline/flat"
	"slingloft/outline/level"
)

// Leveled is what came of a body that was cut again from the cloth as it hangs.
type Leveled struct {
	level.Closed
	Was      flat.Body               // before
	EndSeams [2]float64              // by how much they became longer on each side, mm, by [hung.End]
	Bottom   func(x float64) float64 // of the design, at a station, mm
}
