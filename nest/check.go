package nest

import (
	"fmt"
	"math"

	"slingloft/nest/exact"
	"slingloft/outline/geom"
)

// maxCopies bounds the pieces of one lay; past it a sweep of the search would
// take seconds, and a count read from a file could exhaust memory.
const maxCopies = 5000

// InputError says which item, or which part of the stock, cannot be used.
type InputError struct {
	Item   int // −1 for the stock
	Reason string
}

func (e *InputError) Error() string {
	if e.Item < 0 {
		return "stock: " + e.Reason
	}
	return fmt.Sprintf("item %d: %s", e.Item, e.Reason)
}

// SizeError says that a piece is too big for the stock in every allowed turn.
type SizeError struct {
	Item          int
	Along, Across float64 // mm, box of the piece in the turn that comes closest
	RoomX, RoomY  float64 // mm, what the stock leaves inside its margins; RoomX is +Inf on a strip
}

func (e *SizeError) Error() string {
	if math.IsInf(e.RoomX, 1) {
		return fmt.Sprintf("item %d: needs %.1f mm across, the strip leaves %.1f mm", e.Item, e.Across, e.RoomY)
	}
	return fmt.Sprintf("item %d: needs %.1f × %.1f mm, a bed leaves %.1f × %.1f mm",
		e.Item, e.Along, e.Across, e.RoomX, e.RoomY)
}

// KeptOffError says that a piece fits a bed in some allowed turn, but nowhere beside what
// is kept clear on it.
type KeptOffError struct{ Item int }

func (e *KeptOffError) Error() string {
	return fmt.Sprintf("item %d: fits a bed, but not beside what is kept clear", e.Item)
}

// check refuses what the packer cannot work with.
func check(items []Item, b Bed) error {
	for _, v := range []float64{b.Height, b.Gap, b.Margin} {
		if math.IsNaN(v) || math.IsInf(v, 0) || v < 0 {
			return &InputError{-1, "width, gap and margin must be finite and not negative"}
		}
	}
	if !(b.Width > 2*b.Margin) || !(b.Height > 2*b.Margin) {
		return &InputError{-1, "nothing is left between the margins"}
	}
	for i, k := range b.KeepOut {
		if !k.Min.Finite() || !k.Max.Finite() {
			return &InputError{-1, fmt.Sprintf("keep-out %d is not finite", i)}
		}
	}
	copies := 0
	for i, it := range items {
		if reason := it.fault(); reason != "" {
			return &InputError{i, reason}
		}
		if copies += it.Demand; copies > maxCopies {
			return &InputError{i, fmt.Sprintf("more than %d pieces in one lay", maxCopies)}
		}
	}
	return nil
}

// fault returns why the item cannot be laid, "" if it can.
func (it Item) fault() string {
	if it.Demand < 0 {
		return "negative demand"
	}
	for _, r := range append([]geom.Ring{it.Outline}, it.Holes...) {
		for _, p := range r {
			if !p.Finite() {
				return "a vertex is not finite"
			}
		}
	}
	for _, t := range it.Turns {
		if math.IsNaN(t) || math.IsInf(t, 0) {
			return "a turn is not finite"
		}
	}
	if len(it.Outline) < 3 || it.Outline.Area() == 0 {
		return "the outline has no area"
	}
	if exact.CrossesItself(it.Outline) {
		return "the outline crosses itself"
	}
	return ""
}
