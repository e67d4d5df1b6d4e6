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
)

// Check is one part under one load case.
type Check struct {
	Name     string   `json:"name"`              // unique: "side cord, seated"
	Case     string   `json:"case"`              // name of the load case
	Load     float64  `json:"load"`              // with Factor in it, in Unit
	Factor   float64  `json:"factor"`            // dynamic factor on the static load; 1: none
	Capacity float64  `json:"capacity"`          // in Unit; 0: not known
	Bound    bool     `json:"bound,omitempty"`   // Capacity is at most this
	Unit     string   `json:"unit"`              // "N" or "N/mm"
	Ratio    float64  `json:"margin"`            // capacity over load; 0: not known
	Required float64  `json:"required"`          // least ratio
	Met      bool     `json:"met"`               // known and enough
	Waived   bool     `json:"waived,omitempty"`  // named in the design as allowed to fail
	Missing  []string `json:"missing,omitempty"` // keys of the design that would be needed
	Source   string   `json:"source"`            // of capacity and requirement
	Ways     []Way    `json:"ways,omitempty"`    // what would do where it is not met
}

// Unmet reports whether the check is known to fail.
func (c Check) Unmet() bool { return c.Capacity > 0 && c.Ratio < c.Required }

// Report is every check of a design.
type Report struct {
	Cases  []Case  `json:"cases"`
	Checks []Check `json:"checks"`
	// Strangers are names in the design's list of waivers that no check has.
	Strangers []string `json:"strangers,omitempty"`
	Notes     []string `json:"notes"`
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

// Names returns the names of all checks, those that a waiver may use.
func (r Report) Names() []string {
	out := make([]string, len(r.Checks))
	for i, c := range r.Checks {
		out[i] = c.Name
	}
	return out
}

// add completes a check and puts it into the report. A missing value makes the
// capacity, where there is one, an upper bound. If it fails, ways is asked what
// would give it the capacity that is wanted.
func (r *Report) add(c Check, ways func(wanted float64) []Way) {
	c.Name += ", " + c.Case
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

// waive marks the checks that the design waives and collects names that none has.
func (r *Report) waive(names []string) {
	for _, name := range names {
		i := slices.IndexFunc(r.Checks, func(c Check) bool { return c.Name == name })
		if i < 0 {
			r.Strangers = append(r.Strangers, name)
			continue
		}
		r.Checks[i].Waived = true
	}
}
