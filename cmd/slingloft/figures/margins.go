package figures

import (
	"slingloft/outline/design"
	"slingloft/outline/margin"
	"slingloft/outline/quantity"
	"slingloft/outline/words"
)

// Check is one part under one load case.
type Check struct {
	Name     string       `json:"name"`              // unique: "side cord, seated"
	Case     string       `json:"case"`              // name of the load case
	Load     float64      `json:"load"`              // with Factor in it, in Unit
	Factor   float64      `json:"factor"`            // dynamic factor on the static load; 1: none
	Capacity float64      `json:"capacity"`          // in Unit; 0: not known
	Bound    bool         `json:"bound,omitempty"`   // Capacity is at most this
	Unit     string       `json:"unit"`              // "N" or "N/mm"
	Ratio    float64      `json:"margin"`            // capacity over load; 0: not known
	Required float64      `json:"required"`          // least ratio
	Met      bool         `json:"met"`               // known and enough
	Waived   bool         `json:"waived,omitempty"`  // named in the design as allowed to fail
	Missing  []design.Key `json:"missing,omitempty"` // keys of the design that would be needed
	Source   string       `json:"source"`            // of capacity and requirement
	Ways     []margin.Way `json:"ways,omitempty"`    // what would do where it is not met
}

// Case is one load case with the static loads that it puts on every part.
type Case struct {
	Name   string  `json:"name"`
	Basis  string  `json:"basis"`            // how the loads are found and what is taken for granted
	Side   float64 `json:"side"`             // largest pull in a side cord, N
	Leg    Pair    `json:"leg"`              // largest pull in a leg, head and foot, N
	Hang   Pair    `json:"hang"`             // pull in a hang line and on its support, N
	Bar    Pair    `json:"bar"`              // thrust along a bar, N; 0: none
	Cloth  float64 `json:"cloth"`            // largest tension across the bed, N/mm
	Cannot string  `json:"cannot,omitempty"` // why the case has no loads
}

// checksOf returns the checks of a report.
func checksOf(r margin.Report, w words.Margins) []Check {
	var out []Check
	for _, c := range r.Checks {
		out = append(out, Check{c.Name(), c.Case.String(), c.Load, c.Factor, c.Capacity, c.Bound, c.Unit.String(), c.Ratio, c.Required,
			c.Met, c.Waived, c.Missing, w.Source(c.Source), c.Ways})
	}
	return out
}

// casesOf returns the load cases of a report, with lengths in a style.
func casesOf(r margin.Report, w words.Margins, style quantity.Style) []Case {
	var out []Case
	for _, c := range r.Cases {
		out = append(out, Case{c.Kind.String(), w.Basis(c.Basis, style), c.Side, c.Leg, c.Hang, c.Bar, c.Cloth, w.Obstacle(c.Cannot, style)})
	}
	return out
}
