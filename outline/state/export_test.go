package state

import (
	"errors"

	"slingloft/outline/finished"
)

// BoundOf returns the bound for the state of the given number among those of [Of].
func BoundOf(h finished.Hammock, p Person, i int) State {
	why := errors.New("asked for")
	quarter := h.Shape.Problem.Bed.Span / 4
	switch i {
	case 0:
		return designed(h.Shape, why)
	case 1, 2, 3:
		return onOneCord(h, p, Sitting, [3]float64{0, -quarter, quarter}[i-1], why)
	case 4:
		return onOneCord(h, p, GettingIn, 0, why)
	}
	return rolled(h.Shape, p, finished.Weight{Load: p.Load, Centre: p.Side, Aside: [2]float64{AtEdge, p.Side}[i-5]}, why)
}

// StraightTo returns the pulls from the apexes to a weight in a straight line each.
func StraightTo(h finished.Hammock, x, weight float64) [2]float64 {
	return straight(h.Shape, x, weight)
}
