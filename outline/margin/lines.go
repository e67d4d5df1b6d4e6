package margin

import (
	"slingloft/outline/column"
	"slingloft/outline/design"
	"slingloft/outline/hung"
)

// Margins asked for where the design leaves them at 0: cord from Cordage
// Institute CI 1401, the low end of 5 to 12; the others own choice.
const (
	CordMargin    = 5
	BarMargin     = 1.5
	ClothMargin   = 2
	SeamMargin    = 2
	DynamicFactor = 2
)

// Input is what the checks look at.
type Input struct {
	Shape  *hung.Shape
	Design design.Design
	// Hook is what hook and support hold at each end by their data sheet, N; 0: not
	// given.
	Hook float64
	// Joined says that the body has lengthwise joins.
	Joined bool
}

// Of returns every check of a design.
func Of(in Input) Report {
	flat := lying(in.Shape)
	b := book{in, in.Design, Report{}}
	for _, c := range []Case{flat, seated(in.Shape, in.Design.Sleeper), rolling(in.Shape, in.Design, flat)} {
		b.Cases = append(b.Cases, c)
		if c.Cannot == "" {
			b.cords(c)
			b.bars(c)
			b.cloth(c)
		}
	}
	b.Notes = b.notes()
	b.waive(b.design.Margins.Waived)
	return b.Report
}

// book is a report in the making.
type book struct {
	Input
	design design.Design
	Report
}

func given(v, otherwise float64) float64 {
	if v == 0 {
		return otherwise
	}
	return v
}

const cordSource = "breaking strength from the cord's data sheet × splice efficiency; required ratio on the static pull, Cordage Institute CI 1401 (5 to 12)"

// rope checks one cord of the given kind, of which runs share the load. Its splices
// and eyes are checked with it: the efficiency is theirs.
func (b *book) rope(name string, c Case, load float64, kind design.Cord, key string, runs float64) {
	k := Check{Name: name, Case: c.Name, Load: load, Factor: 1, Unit: "N",
		Required: given(b.design.Margins.Cord, CordMargin), Source: cordSource}
	efficiency := b.design.Splice.Efficiency
	if kind.Strength == 0 {
		k.Missing = append(k.Missing, key+".strength")
	}
	if efficiency == 0 {
		// A splice keeps no more than the cord has.
		k.Missing = append(k.Missing, "splice.efficiency")
		efficiency = 1
	}
	k.Capacity = runs * kind.Strength * efficiency
	b.add(k, func(wanted float64) []Way { return b.ropeWays(key, runs, efficiency, wanted) })
}

// cords checks side cords, legs, hang lines and what these hang on.
func (b *book) cords(c Case) {
	d := &b.design
	leg, key, runs := d.Leg, "cord.leg", 1.0
	if d.Splice.Whole {
		leg, key, runs = d.Side, "cord.side", 2
	}
	b.rope("side cord", c, c.Side, d.Side, "cord.side", runs)
	for e, end := range ends() {
		b.rope(end+" leg", c, c.Leg[e], leg, key, runs)
	}
	if c.Name == Rolling {
		return // the pull at the apexes is that of one who lies still
	}
	for e, end := range ends() {
		b.rope(end+" hang line", c, c.Hang[e], d.Hang.Line, "hang.line", 1)
		k := Check{Name: end + " hook", Case: c.Name, Load: c.Hang[e], Factor: 1, Unit: "N", Capacity: b.Hook,
			Required: given(d.Margins.Cord, CordMargin), Source: "breaking strength of hook and support from their data sheet; required ratio as for cord"}
		if b.Hook == 0 {
			k.Missing = []string{"hang.hook_strength"}
		}
		b.add(k, func(wanted float64) []Way { return []Way{atLeast("hang.hook_strength", wanted), b.slacker()} })
	}
}

func ends() [2]string { return [2]string{hung.Head.String(), hung.Foot.String()} }

// BarLength returns the length to which a bar is cut for cords that are open mm
// apart: less the reach of both tips.
func BarLength(b design.Bar, open float64) float64 { return open - 2*b.TipReach }

// section returns the section of the design's bars.
func section(b design.Bar) column.Section {
	if b.Wall == 0 {
		return column.Rod(b.Outer)
	}
	return column.Tube(b.Outer, b.Wall)
}

// bars checks both bars as columns with pinned ends. The column is as long as the
// cords are apart, a little longer than the bar: a tip that stands loose in its
// bar makes it no stiffer.
func (b *book) bars(c Case) {
	bar := b.design.Bar
	s := section(bar)
	factor := given(b.design.Margins.Dynamic, DynamicFactor)
	for e, end := range ends() {
		if c.Bar[e] == 0 {
			continue
		}
		k := Check{Case: c.Name, Load: c.Bar[e] * factor, Factor: factor, Unit: "N",
			Required: given(b.design.Margins.Bar, BarMargin)}
		l := b.Shape.Ends[e].Bar
		source := "; modulus and yield from " + barSource(bar) + "; required ratio own choice"
		var missing []string
		if bar.Modulus == 0 {
			missing = append(missing, "bar.modulus")
		}
		if bar.Yield == 0 {
			missing = append(missing, "bar.yield")
		}
		k.Missing = missing
		k.Name, k.Capacity, k.Source = end+" bar buckling", buckling(s, bar, l), "Euler or Johnson by slenderness, pinned ends"+source
		ways := func(capacity func(column.Section) float64) func(float64) []Way {
			return func(wanted float64) []Way { return b.barWays(end, wanted, capacity) }
		}
		b.add(k, ways(func(s column.Section) float64 { return buckling(s, bar, l) }))
		k.Name, k.Capacity, k.Source = end+" bar yield", 0, "secant formula for the tip's eccentricity"+source
		yielding := func(s column.Section) float64 {
			return column.Yielding(s, bar.Modulus, bar.Yield, l, bar.Eccentricity)
		}
		if len(missing) == 0 {
			k.Capacity = yielding(s)
		}
		b.add(k, ways(yielding))
		k.Name, k.Capacity, k.Source = end+" bar tip bearing", s.Area*bar.Yield, "whole end face of the bar at yield"+source
		k.Missing = nil
		if bar.Yield == 0 {
			k.Missing = []string{"bar.yield"}
		}
		b.add(k, ways(func(s column.Section) float64 { return s.Area * bar.Yield }))
	}
}

// buckling returns the column's load, N: Euler's as an upper bound where the yield
// is missing, 0 without a modulus.
func buckling(s column.Section, bar design.Bar, l float64) float64 {
	if bar.Modulus == 0 {
		return 0
	}
	if bar.Yield == 0 {
		return column.Euler(s, bar.Modulus, l)
	}
	load, _ := column.Buckling(s, bar.Modulus, bar.Yield, l)
	return load
}

// barSource names where modulus and yield come from.
func barSource(b design.Bar) string {
	for _, m := range design.Materials() {
		if m.Name == b.Material && m.Modulus == b.Modulus && m.Yield == b.Yield {
			return m.Source
		}
	}
	return "the bar's data sheet"
}

// cloth checks the cloth across and the seams that it hangs from. A seam along the
// cord is longer than the bed below it; that is not counted on.
func (b *book) cloth(c Case) {
	d := &b.design
	factor := given(d.Margins.Dynamic, DynamicFactor)
	k := Check{Name: "cloth strip", Case: c.Name, Load: c.Cloth * factor, Factor: factor, Unit: "N/mm",
		Capacity: d.Cloth.StripStrength, Required: given(d.Margins.Cloth, ClothMargin),
		Source: "strip strength from the cloth's data sheet; required ratio own choice"}
	if k.Capacity == 0 {
		k.Missing = []string{"cloth.strip_strength"}
	}
	b.add(k, func(wanted float64) []Way { return b.clothWays(c, wanted) })
	capacity, missing := SeamStrength(d.Seam)
	k = Check{Name: "side seam", Case: c.Name, Load: c.Cloth * factor, Factor: factor, Unit: "N/mm", Missing: missing,
		Capacity: capacity, Required: given(d.Margins.Seam, SeamMargin),
		Source: "stitches per length × rows × thread strength × seam factor, thread from its data sheet, factor from a test seam; required ratio own choice"}
	ways := func(wanted float64) []Way { return b.seamWays(capacity, wanted) }
	b.add(k, ways)
	if b.Joined {
		k.Name = "join seam"
		b.add(k, ways)
	}
}

// SeamStrength returns what a seam holds across, N/mm: stitches per length × rows
// × thread strength × factor, and the keys that are missing for it. Rows of 0
// count as one.
func SeamStrength(s design.Seam) (strength float64, missing []string) {
	for _, v := range []struct {
		value float64
		key   string
	}{{s.StitchLength, "seam.stitch_length"}, {s.ThreadStrength, "seam.thread_strength"}, {s.SeamFactor, "seam.factor"}} {
		if v.value == 0 {
			missing = append(missing, v.key)
		}
	}
	if len(missing) > 0 {
		return 0, missing
	}
	return float64(max(1, s.Rows)) / s.StitchLength * s.ThreadStrength * s.SeamFactor, nil
}

// notes says what the figures leave out.
func (b *book) notes() []string {
	n := []string{
		"pulls hold for cords that run freely in their channels; friction changes the tension by some per cent",
		"bars are checked as straight columns without their own weight and without what a knee or hand puts on them",
	}
	if b.design.Bar.Eccentricity == 0 {
		n = append(n, "bars: the thrust is taken to act on the axis; give bar.eccentricity for tips that push off it")
	}
	if b.design.Sleeper.Shoulders == 0 {
		n = append(n, "rolling: the sleeper's shoulder breadth is estimated")
	}
	return n
}
