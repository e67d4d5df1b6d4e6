package margin

import (
	"math"

	"slingloft/outline/column"
	"slingloft/outline/design"
	"slingloft/outline/hung"
)

// Way is one value of the design that, changed alone, would meet a margin or, where
// Least is 0, bring it nearer.
type Way struct {
	Key   design.Key `json:"key"`
	Least float64    `json:"least,omitempty"` // in the unit that package design keeps it in; 0: how much is not known
	Less  bool       `json:"less,omitempty"`  // a smaller value helps, not a larger one
}

// atLeast is the way of a strength that has to be so large.
func atLeast(key design.Key, v float64) Way { return Way{Key: key, Least: v} }

// ropeWays returns what would give a cord the wanted capacity, N.
func (a *assessor) ropeWays(key design.Key, runs, efficiency, wanted float64) []Way {
	return append([]Way{atLeast(key.In("strength"), wanted/(runs*efficiency))}, a.slacker())
}

// slacker is the way to less pull in all cords and bars: of a cord under a given
// load the thrust falls as its depth grows, H = w S² / 8 f.
func (a *assessor) slacker() Way {
	return Way{Key: a.design.Bed.ControlKey(), Less: a.design.Bed.Control == design.Thrust}
}

// barWays returns what would give a bar the wanted capacity, N: a thicker tube of
// the same wall, or less thrust. Capacity is that of a section.
func (a *assessor) barWays(end hung.End, wanted float64, capacity func(column.Section) float64) []Way {
	bar := a.design.Bar
	enough := func(outer float64) bool {
		bar.Outer = outer
		return capacity(section(bar)) >= wanted
	}
	var out []Way
	if lo, hi := bar.Outer, design.Greatest(design.KeyBarOuterDiameter); enough(hi) {
		for range 40 {
			if mid := (lo + hi) / 2; enough(mid) {
				hi = mid
			} else {
				lo = mid
			}
		}
		out = append(out, atLeast(design.KeyBarOuterDiameter, hi))
	}
	return append(out, Way{Key: design.LegKey(end)}, a.slacker())
}

// clothWays returns what would give the cloth the wanted strength, N/mm; steeper
// walls carry the sleeper with less of it, but not one who sits on the edge.
func (a *assessor) clothWays(c Case, wanted float64) []Way {
	out := []Way{atLeast(design.KeyClothStripStrength, wanted)}
	if c.Kind != Seated {
		out = append(out, a.steeper())
	}
	return out
}

// steeper is the way to steeper walls.
func (a *assessor) steeper() Way {
	return Way{Key: a.design.Bed.HeadKey()}
}

// seamWays returns what would make a seam with the given strength hold the wanted
// one, N/mm.
func (a *assessor) seamWays(has, wanted float64) []Way {
	s := a.design.Seam
	var out []Way
	if rows := math.Ceil(wanted/has*float64(max(1, s.Rows)) - 1e-9); rows <= design.Greatest(design.KeySeamRows) {
		out = append(out, atLeast(design.KeySeamRows, rows))
	}
	return append(out, atLeast(design.KeySeamThreadStrength, float64(s.ThreadStrength)*wanted/has))
}
