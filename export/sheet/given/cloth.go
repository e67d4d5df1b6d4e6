package given

import (
	"math"

	"slingloft/outline/drape"
	"slingloft/outline/quantity"
)

// Draped is the cut as it hangs as cloth, under one who lies in it.
type Draped struct {
	drape.Hung
	Crown, Soles float64               // stations of crown and soles, mm
	Bottom       func(float64) float64 // of the design, at a station, mm
	Settled      bool                  // it came to rest
}

// SlackUnder is the tension under which cloth counts as slack, N/mm: own choice, a
// hundredth of what a sleeper's weight draws.
const SlackUnder = 0.005

// Off returns how much higher the bottom line lies at a station than designed, mm.
func (h *Draped) Off(x float64) float64 { return h.Height(x) - h.Bottom(x) }

// Level returns the most and the least of that from crown to soles.
func (h *Draped) Level() (low, high float64) {
	low, high = h.Off(h.Crown), h.Off(h.Crown)
	for _, u := range append([]float64{h.Soles}, h.Along...) {
		if u >= h.Crown && u <= h.Soles {
			low, high = min(low, h.Off(u)), max(high, h.Off(u))
		}
	}
	return low, high
}

// MostShear returns the largest shear of the cloth, rad.
func (h *Draped) MostShear() float64 {
	most := 0.0
	for _, c := range h.Cloth {
		most = math.Max(most, c.Shear)
	}
	return most
}

// Slack writes what part of the cloth is slack across the bed, in per cent.
func (d *Data) Slack() string {
	all, slack := 0.0, 0.0
	for _, c := range d.Draped.Cloth {
		all += c.Area
		if c.Weft <= SlackUnder {
			slack += c.Area
		}
	}
	return quantity.Decimal(100*slack/all, 0) + " %"
}
