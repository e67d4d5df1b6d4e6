package nest

import (
	"math"

	"slingloft/outline/geom"
)

// Item is one kind of piece to lay.
type Item struct {
	Outline geom.Ring   // simple polygon in mm, in either direction
	Holes   []geom.Ring // openings cut out of the piece; laid over unless Fill is set
	Fill    bool        // other pieces may lie in the holes
	Demand  int         // copies wanted
	Turns   []float64   // allowed turns, radians counter-clockwise; empty means 0 only
	Free    bool        // any turn is allowed
	Paired  bool        // every second copy is mirrored (see geom.Motion)
}

// Strip is a roll of fixed width and open length.
type Strip struct {
	Width   float64    // mm, across the roll
	Gap     float64    // least distance between two pieces, mm
	Margin  float64    // least distance from every edge of the lay, mm
	KeepOut []geom.Box // flaws that no piece may cover; touching is allowed
}

// Bed is a sheet of fixed size, of which there are as many as needed.
type Bed struct {
	Width   float64    // mm, along x
	Height  float64    // mm, along y
	Gap     float64    // least distance between two pieces, mm
	Margin  float64    // least distance from every edge of a bed, mm
	KeepOut []geom.Box // areas that no piece may cover, the same on every bed
}

// Placement is one copy of an item in its place.
type Placement struct {
	Item, Copy int
	Bed        int         // 0 on a strip
	Motion     geom.Motion // from the item's own coordinates to the stock
}

// Lay is a finished layout.
type Lay struct {
	Placements []Placement // by item, then copy
	Beds       int         // how many beds are used, 1 on a strip
	Length     float64     // mm, length of strip used; on beds, of the last bed; the margins are counted
	Density    float64     // area of the outlines over the area of stock used, 0 to 1
	Steps      int         // steps of the search taken
}

// turns returns the turns the search may use for it: those allowed, or where any
// is, the four quarters. More of them thin out the search and make lays worse.
func (it Item) turns() []float64 {
	if it.Free {
		return []float64{0, math.Pi / 2, math.Pi, 3 * math.Pi / 2}
	}
	if len(it.Turns) == 0 {
		return []float64{0}
	}
	return it.Turns
}

// askew returns turns for an item that may have any but fits in no quarter.
func (it Item) askew() []float64 {
	var out []float64
	if it.Free {
		for k := range 120 {
			out = append(out, float64(k)*math.Pi/60)
		}
	}
	return out
}

// mirrored reports whether copy c of the item is laid mirrored.
func (it Item) mirrored(c int) bool { return it.Paired && c%2 == 1 }

// rings returns what the item covers: its outline counter-clockwise and, if
// they may be filled, its holes clockwise.
func (it Item) rings() []geom.Ring {
	out := []geom.Ring{it.Outline.CounterClockwise()}
	if it.Fill {
		for _, h := range it.Holes {
			out = append(out, h.CounterClockwise().Reversed())
		}
	}
	return out
}

// bed returns the strip as a bed without an end.
func (s Strip) bed() Bed { return Bed{math.Inf(1), s.Width, s.Gap, s.Margin, s.KeepOut} }

// totalArea returns the area of all copies of all outlines, holes not taken off.
func totalArea(items []Item) float64 {
	sum := 0.0
	for _, it := range items {
		sum += float64(math.Abs(it.Outline.Area()) * float64(it.Demand))
	}
	return sum
}
