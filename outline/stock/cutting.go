package stock

import (
	"math"
	"sort"

	"slingloft/outline/design"
	"slingloft/outline/hung"
)

// Cutting is one stock length and what is cut from it.
type Cutting struct {
	Parts  []Part
	Offcut float64 // what is left over, mm
}

// Cut cuts parts from stock lengths, the longest first and each from the first
// length that still holds it, with a saw cut between neighbours. For two parts this
// takes as few lengths as can be, for many at most two in nine more (first fit
// decreasing; the bound 11/9 is D. S. Johnson's, 1973, from memory).
func Cut(parts []Part, stock, saw float64) ([]Cutting, error) {
	order := append([]Part(nil), parts...)
	sort.SliceStable(order, func(i, j int) bool { return order[i].Length > order[j].Length })
	var out []Cutting
next:
	for _, p := range order {
		if p.Length > stock {
			return nil, &hung.Impossible{Key: design.KeyBarStock, Found: design.Found(design.StockUnderBar, p.Bar),
				Bound: design.AtLeast, Limit: math.Ceil(p.Length)}
		}
		for i := range out {
			if out[i].Offcut >= p.Length+saw {
				out[i].Parts = append(out[i].Parts, p)
				out[i].Offcut -= p.Length + saw
				continue next
			}
		}
		out = append(out, Cutting{[]Part{p}, stock - p.Length})
	}
	return out, nil
}
