package margin

import (
	"slingloft/outline/design"
	"slingloft/outline/hung"
	"slingloft/outline/state"
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

// ropeWays returns what would give a cord the capacity that is needed, N.
func (a *assessor) ropeWays(key design.Key, runs, efficiency, needed float64) []Way {
	return append([]Way{atLeast(key.In("strength"), needed/(runs*efficiency))}, a.slacker())
}

// slacker is the way to less pull in all cords and bars: of a cord under a given
// load the thrust falls as its depth grows, H = w S² / 8 f.
func (a *assessor) slacker() Way {
	return Way{Key: a.design.Bed.ControlKey(), Less: a.design.Bed.Control == design.Thrust}
}

// barWays returns what would give a bar the capacity that is needed, N: a thicker tube of
// the same wall, or less thrust. Capacity is that of a bar.
func (a *assessor) barWays(end hung.End, needed float64, capacity func(design.Bar) float64) []Way {
	bar := a.design.Bar
	enough := func(outer float64) bool {
		bar.Outer = outer
		return capacity(bar) >= needed
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
// walls carry the sleeper with less of it, but not one who sits on one cord.
func (a *assessor) clothWays(c Case, needed float64) []Way {
	out := []Way{atLeast(design.KeyClothStripStrength, needed)}
	if c.Kind != state.GettingIn {
		out = append(out, a.steeper())
	}
	return out
}

// steeper is the way to steeper walls.
func (a *assessor) steeper() Way {
	return Way{Key: a.design.Bed.HeadKey()}
}

// seamWays returns what would make a seam hold the wanted strength, N/mm: a second row
// or stronger thread where the thread is what gives, stronger cloth where that does at
// the needle holes.
func (a *assessor) seamWays(needed float64) []Way {
	s := a.design.Seam
	var out []Way
	if cloth := float64(a.design.Cloth.StripStrength); cloth > 0 && perforation(s)*cloth < needed {
		out = append(out, atLeast(design.KeyClothStripStrength, needed/perforation(s)))
	}
	has := stitched(s)
	if has == 0 || has >= needed {
		return out
	}
	if len(out) > 0 {
		// Neither alone would do: what the thread lacks is not known to be enough.
		return append(out[:0], Way{Key: design.KeyClothStripStrength}, Way{Key: design.KeySeamThreadStrength})
	}
	if two := s; s.Rows < 2 {
		two.Rows = 2
		if stitched(two) >= needed {
			out = append(out, atLeast(design.KeySeamRows, 2))
		}
	}
	return append(out, atLeast(design.KeySeamThreadStrength, float64(s.ThreadStrength)*needed/has))
}
