// Package margin compares what a hammock's parts carry with what they can carry.
//
// A check is one part under one load case. Its margin is capacity over load.
// Cords are compared with the static pull, since the factor asked of rope covers
// dynamics; bars, cloth and seams with the static load times a dynamic factor. No
// strength is taken for granted: a check that lacks a value from a data sheet
// names its key and is neither met nor, as a rule, unmet. Where what is known
// bounds the capacity from above and even that is too little, it is unmet.
//
// Lengths mm, forces N, forces per width N/mm. Start with [Of].
package margin

import (
	"slices"
	"strings"

	"slingloft/outline/design"
	"slingloft/outline/state"
)

// Check is one part under one load case.
type Check struct {
	Part     Part
	Case     state.Kind
	Load     float64 // with Factor in it, in Unit
	Factor   float64 // dynamic factor on the static load; 1: none
	Capacity float64 // in Unit; 0: not known
	Bound    bool    // Capacity is at most this
	Unit     Unit
	Ratio    float64      // capacity over load; 0: not known
	Required float64      // least ratio
	Met      bool         // known and enough
	Waived   bool         // named in the design as allowed to fail
	Missing  []design.Key // keys of the design that would be needed
	Source   Source       // of capacity and requirement
	Ways     []Way        // what would do where it is not met
}

// Name returns the check's identifier, by which a design waives it: "side cord,
// getting-in".
func (c Check) Name() string { return c.Part.String() + ", " + c.Case.String() }

// Unmet reports whether the check is known to fail.
func (c Check) Unmet() bool { return c.Capacity > 0 && c.Ratio < c.Required }

// Report is every check of a design.
type Report struct {
	Cases  []Case
	States []state.State // every one, extremes too
	Checks []Check
	Leasts []Least
	Give   state.Give // of the bed, under one who sits
	// Dynamic is the factor on the static load that bars, cloth and seams are held to.
	Dynamic float64
	Notes   []Note
}

// Unmet returns the checks that fail and are not waived.
func (r Report) Unmet() []Check {
	return r.filter(func(c Check) bool { return c.Unmet() && !c.Waived })
}

// Waived returns the checks that fail and are waived.
func (r Report) Waived() []Check {
	return r.filter(func(c Check) bool { return c.Unmet() && c.Waived })
}

// Unknown returns the checks for which a value is missing.
func (r Report) Unknown() []Check {
	return r.filter(func(c Check) bool { return len(c.Missing) > 0 })
}

func (r Report) filter(keep func(Check) bool) []Check {
	var out []Check
	for _, c := range r.Checks {
		if keep(c) {
			out = append(out, c)
		}
	}
	return out
}

// Governing returns the check that is nearest to its required margin, or furthest
// below it, and whether any capacity is known.
func (r Report) Governing() (Check, bool) {
	known := r.filter(func(c Check) bool { return c.Capacity > 0 })
	if len(known) == 0 {
		return Check{}, false
	}
	return slices.MinFunc(known, func(a, b Check) int {
		switch x, y := a.Ratio/a.Required, b.Ratio/b.Required; {
		case x < y:
			return -1
		case x > y:
			return 1
		}
		return 0
	}), true
}

// add completes a check and puts it into the report. A missing value makes the
// capacity, where there is one, an upper bound. If it fails, ways is asked what
// would give it the capacity that is wanted.
func (r *Report) add(c Check, ways func(needed float64) []Way) {
	c.Bound = c.Capacity > 0 && len(c.Missing) > 0
	if c.Capacity > 0 && c.Load > 0 {
		c.Ratio = c.Capacity / c.Load
		c.Met = len(c.Missing) == 0 && c.Ratio >= c.Required
	}
	if c.Unmet() {
		c.Ways = ways(c.Load * c.Required)
	}
	r.Checks = append(r.Checks, c)
}

// formerly are names that the cases had, by which designs may still waive a check.
func formerly() *strings.Replacer {
	return strings.NewReplacer(", seated", ", "+state.GettingIn.String(), ", rolling", ", "+state.Edge.String())
}

// Possible returns the checks that there may be, by part and case alone: those that a
// waiver may name. Joined says that the body has lengthwise joins, ridge that a cover's
// ridge carries.
func Possible(joined, ridge bool) []Check {
	var out []Check
	for k := range state.Kind(state.Kinds) {
		for p := range PartCount {
			if (joined || p != JoinSeam) && (ridge || p != RidgeCord) {
				out = append(out, Check{Part: p, Case: k})
			}
		}
	}
	return out
}

// Names returns the names of [Possible] checks.
func Names(joined, ridge bool) []string {
	var out []string
	for _, c := range Possible(joined, ridge) {
		out = append(out, c.Name())
	}
	return out
}

// Strangers returns the names in a design's list of waivers that no check has, now or
// formerly.
func Strangers(waived []string, joined, ridge bool) []string {
	var out []string
	all, old := Names(joined, ridge), formerly()
	for _, name := range waived {
		if !slices.Contains(all, old.Replace(name)) {
			out = append(out, name)
		}
	}
	return out
}

// waive marks the checks that the design waives.
func (r *Report) waive(names []string) {
	old := formerly()
	for _, name := range names {
		now := old.Replace(name)
		for i := range r.Checks {
			if r.Checks[i].Name() == now {
				r.Checks[i].Waived = true
			}
		}
	}
}
