package figures

import (
	"errors"
	"math"

	"slingloft/outline/design"
	"slingloft/outline/finished"
	"slingloft/outline/margin"
	"slingloft/outline/quantity"
	"slingloft/outline/state"
	"slingloft/outline/words"
)

// Check is one part under one load case.
type Check struct {
	Name     string       `json:"name"`              // unique: "side cord, getting-in"
	Part     string       `json:"part"`              // what is checked
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

// Case is one load case with the static loads that it puts on every part, the largest
// of its states.
type Case struct {
	Name   string  `json:"name"`             // "lying", "sitting", "getting-in", "edge"
	Basis  string  `json:"basis"`            // how the loads are found and what is taken for granted
	Side   float64 `json:"side"`             // largest pull in a side cord, N
	Leg    Pair    `json:"leg"`              // largest pull in a leg, head and foot, N
	Hang   Pair    `json:"hang"`             // pull in a hang line and on its support, N
	Bar    Pair    `json:"bar"`              // thrust along a bar, N; 0: none
	Cloth  float64 `json:"cloth"`            // largest tension across the bed, N/mm
	Cannot string  `json:"cannot,omitempty"` // why no rest of the bed is found; the loads are then bounds
}

// State is the made bed in one state, with the static loads that it puts on every part.
type State struct {
	Case    string         `json:"case"`              // the load case that it belongs to
	X       float64        `json:"x"`                 // station of the middle of the weight
	Aside   float64        `json:"aside"`             // of the centre of mass from the middle of the cloth, to the left
	Seat    float64        `json:"seat,omitempty"`    // length of bed that carries one who sits
	Extreme bool           `json:"extreme,omitempty"` // hardly anybody lies so far aside: no check looks at it
	Bound   bool           `json:"bound,omitempty"`   // no rest is found: loads are bounds, the rest is 0
	Side    Pair           `json:"side"`              // largest pull in each side cord, left and right, N
	Leg     [2]Pair        `json:"leg"`               // largest pull in the legs, head and foot, left and right, N
	Hang    Pair           `json:"hang"`              // pull in the hang lines, head and foot, N
	Bar     Pair           `json:"bar"`               // thrust along the bars, head and foot, N
	Cloth   float64        `json:"cloth"`             // largest tension across the bed, N/mm
	Angle   Pair           `json:"angle"`             // of the hang lines above the level, rad; 0 getting in
	Turn    float64        `json:"turn"`              // of the bed, left side up, rad; 0 getting in
	Share   float64        `json:"share"`             // part of the weight that the fuller cord carries
	Slack   bool           `json:"slack,omitempty"`   // getting in: the other side cord carries nothing
	Level   finished.Level `json:"level"`             // how the bed lies; 0 getting in
	Lost    *Lost          `json:"lost,omitempty"`    // how far the bed was followed that turns over
}

// Lost is how far a bed was followed before it turns over.
type Lost struct {
	Aside float64 `json:"aside"` // of the centre of mass
	Turn  float64 `json:"turn"`  // of the bed, rad
}

// Least is the least strength that has to be bought of something.
type Least struct {
	Thing    string  `json:"thing"`
	Strength float64 `json:"strength"`          // in Unit, of a cord that is spliced
	Knotted  float64 `json:"knotted,omitempty"` // of a cord that is knotted instead
	Unit     string  `json:"unit"`              // "N" or "N/mm"
	Given    float64 `json:"given"`             // by the design, in Unit; 0: not given
	Keeps    float64 `json:"keeps"`             // part of it that is counted on, after splices, needle holes or the stitch
	Assumed  bool    `json:"assumed,omitempty"` // that part is assumed
	Check    string  `json:"check"`             // name of the check that asks most
}

// Proof is the proof load before the first night.
type Proof struct {
	Mass     float64  `json:"mass"`     // kg, in bags
	Least    float64  `json:"least"`    // capacity over the load of one who sits with that mass
	Unproven []string `json:"unproven"` // parts that are known not to hold it
}

// Sudden is what dropping into the bed does.
type Sudden struct {
	Give  float64 `json:"give"`            // of the bed under one who sits at mid-bay, mm; 0: not known
	Least bool    `json:"least,omitempty"` // it gives by more, so that factors are less
	Drops []Drop  `json:"drops"`           // none where the give is not known
}

// Drop is a drop into the bed.
type Drop struct {
	Height float64 `json:"height"` // mm
	Factor float64 `json:"factor"` // by which it loads more than the weight at rest
}

// suddenOf returns what drops do, of heights that are round in a style.
func suddenOf(r margin.Report, style quantity.Style) Sudden {
	out := Sudden{Give: r.Give.Length, Least: r.Give.Least, Drops: []Drop{}}
	if out.Give > 0 {
		for _, h := range words.Drops(style) {
			out.Drops = append(out.Drops, Drop{h, state.Sudden(h, out.Give)})
		}
	}
	return out
}

func checkOf(c margin.Check, w words.Margins) Check {
	return Check{c.Name(), c.Part.String(), c.Case.String(), c.Load, c.Factor, c.Capacity, c.Bound, c.Unit.String(), c.Ratio, c.Required,
		c.Met, c.Waived, c.Missing, w.Source(c.Source), c.Ways}
}

// checksOf returns checks as the document has them.
func checksOf(checks []margin.Check, w words.Margins) []Check {
	var out []Check
	for _, c := range checks {
		out = append(out, checkOf(c, w))
	}
	return out
}

// casesOf returns the load cases of a report, with lengths in a style.
func casesOf(r margin.Report, w words.Margins, style quantity.Style) []Case {
	var out []Case
	for _, c := range r.Cases {
		k := Case{Name: c.Kind.String(), Basis: w.Basis(c, style), Side: c.Side, Leg: c.Leg, Hang: c.Hang, Bar: c.Bar, Cloth: c.Cloth}
		if c.Bound() != nil {
			k.Cannot = k.Basis
		}
		out = append(out, k)
	}
	return out
}

// statesOf returns every state.
func statesOf(states []state.State) []State {
	var out []State
	for _, s := range states {
		q := State{Case: s.Kind.String(), X: s.X, Aside: s.Aside, Seat: s.Seat, Extreme: s.Extreme, Bound: s.Bound != nil,
			Side: s.Loads.Side, Hang: s.Loads.Line, Bar: s.Loads.Bar, Cloth: s.Loads.Cloth, Angle: s.Hang, Turn: s.Turn, Share: s.Share,
			Slack: s.Slack, Level: s.Level}
		for e, leg := range s.Loads.Leg {
			q.Leg[e] = leg
		}
		var lost *finished.LostError
		if errors.As(s.Bound, &lost) {
			q.Lost = &Lost{lost.Aside, math.Abs(lost.Turn)}
		}
		out = append(out, q)
	}
	return out
}

// leastsOf returns what strengths have to be bought.
func leastsOf(r margin.Report) []Least {
	var out []Least
	for _, l := range r.Leasts {
		out = append(out, Least{l.Thing.String(), l.Value, l.Knotted, l.Unit.String(), l.Given, l.Keeps, l.Assumed, l.Check.Name()})
	}
	return out
}

// proofOf returns the proof load of a sleeper's mass.
func proofOf(r margin.Report, mass quantity.Kilograms) Proof {
	out := Proof{Mass: margin.ProofMass * float64(mass), Least: margin.ProofLeast, Unproven: []string{}}
	for _, p := range r.Unproven() {
		out.Unproven = append(out.Unproven, p.String())
	}
	return out
}
