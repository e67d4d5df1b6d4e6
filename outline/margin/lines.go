package margin

import (
	"slingloft/outline/column"
	"slingloft/outline/design"
	"slingloft/outline/hung"
	"slingloft/outline/quantity"
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
	// Hook is what hook and support hold at each end by their data sheet; 0: not
	// given.
	Hook quantity.Newtons
	// Joined says that the body has lengthwise joins.
	Joined bool
}

// Of returns every check of a design.
func Of(in Input) Report {
	flat := lying(in.Shape)
	a := assessor{in, in.Design, Report{}}
	for _, c := range []Case{flat, seated(in.Shape, in.Design.Sleeper), rolling(in.Shape, in.Design, flat)} {
		a.Cases = append(a.Cases, c)
		if c.Cannot.Kind == NoObstacle {
			a.cords(c)
			a.bars(c)
			a.cloth(c)
		}
	}
	a.Notes = a.notes()
	a.waive(a.design.Margins.Waived)
	return a.Report
}

// assessor is a report in the making.
type assessor struct {
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

// rope checks one cord of the given kind, of which runs share the load. Its splices
// and eyes are checked with it: the efficiency is theirs.
func (a *assessor) rope(part Part, c Case, load float64, kind design.Cord, key design.Key, runs float64) {
	k := Check{Part: part, Case: c.Kind, Load: load, Factor: 1,
		Required: given(a.design.Margins.Cord, CordMargin), Source: Source{Kind: CordSheet}}
	efficiency := a.design.Splice.Efficiency
	if kind.Strength == 0 {
		k.Missing = append(k.Missing, key.In("strength"))
	}
	if efficiency == 0 {
		// A splice keeps no more than the cord has.
		k.Missing = append(k.Missing, design.KeySpliceEfficiency)
		efficiency = 1
	}
	k.Capacity = runs * float64(kind.Strength) * efficiency
	a.add(k, func(wanted float64) []Way { return a.ropeWays(key, runs, efficiency, wanted) })
}

// cords checks side cords, legs, hang lines and what these hang on.
func (a *assessor) cords(c Case) {
	d := &a.design
	leg, key, runs := d.Leg, design.KeyCordLeg, 1.0
	if d.Splice.Whole {
		leg, key, runs = d.Side, design.KeyCordSide, 2
	}
	a.rope(SideCord, c, c.Side, d.Side, design.KeyCordSide, runs)
	for e, end := range ends() {
		a.rope(HeadLeg.at(end), c, c.Leg[e], leg, key, runs)
	}
	if c.Kind == Rolling {
		return // the pull at the apexes is that of one who lies still
	}
	for e, end := range ends() {
		a.rope(HeadLine.at(end), c, c.Hang[e], d.Hang.Line, design.KeyHangLine, 1)
		k := Check{Part: HeadHook.at(end), Case: c.Kind, Load: c.Hang[e], Factor: 1, Capacity: float64(a.Hook),
			Required: given(d.Margins.Cord, CordMargin), Source: Source{Kind: HookSheet}}
		if a.Hook == 0 {
			k.Missing = []design.Key{design.KeyHangHookStrength}
		}
		a.add(k, func(wanted float64) []Way { return []Way{atLeast(design.KeyHangHookStrength, wanted), a.slacker()} })
	}
}

func ends() [2]hung.End { return [2]hung.End{hung.Head, hung.Foot} }

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
func (a *assessor) bars(c Case) {
	bar := a.design.Bar
	s := section(bar)
	factor := given(a.design.Margins.Dynamic, DynamicFactor)
	for e, end := range ends() {
		if c.Bar[e] == 0 {
			continue
		}
		k := Check{Case: c.Kind, Load: c.Bar[e] * factor, Factor: factor,
			Required: given(a.design.Margins.Bar, BarMargin)}
		l := a.Shape.Ends[e].Bar
		var missing []design.Key
		if bar.Modulus == 0 {
			missing = append(missing, design.KeyBarModulus)
		}
		if bar.Yield == 0 {
			missing = append(missing, design.KeyBarYield)
		}
		k.Missing = missing
		k.Part, k.Capacity, k.Source = HeadBuckling.at(end), buckling(s, bar, l), Source{Column, barSource(bar)}
		ways := func(capacity func(column.Section) float64) func(float64) []Way {
			return func(wanted float64) []Way { return a.barWays(end, wanted, capacity) }
		}
		a.add(k, ways(func(s column.Section) float64 { return buckling(s, bar, l) }))
		k.Part, k.Capacity, k.Source = HeadYield.at(end), 0, Source{Secant, barSource(bar)}
		yielding := func(s column.Section) float64 {
			return column.Yielding(s, float64(bar.Modulus), float64(bar.Yield), l, bar.Eccentricity)
		}
		if len(missing) == 0 {
			k.Capacity = yielding(s)
		}
		a.add(k, ways(yielding))
		k.Part, k.Capacity, k.Source = HeadBearing.at(end), s.Area*float64(bar.Yield), Source{EndFace, barSource(bar)}
		k.Missing = nil
		if bar.Yield == 0 {
			k.Missing = []design.Key{design.KeyBarYield}
		}
		a.add(k, ways(func(s column.Section) float64 { return s.Area * float64(bar.Yield) }))
	}
}

// buckling returns the column's load, N: Euler's as an upper bound where the yield
// is missing, 0 without a modulus.
func buckling(s column.Section, bar design.Bar, l float64) float64 {
	if bar.Modulus == 0 {
		return 0
	}
	if bar.Yield == 0 {
		return column.Euler(s, float64(bar.Modulus), l)
	}
	load, _ := column.Buckling(s, float64(bar.Modulus), float64(bar.Yield), l)
	return load
}

// barSource names where modulus and yield come from, nothing for a data sheet.
func barSource(b design.Bar) string {
	for _, m := range design.Materials() {
		if m.Name == b.Material && m.Modulus == b.Modulus && m.Yield == b.Yield {
			return m.Source
		}
	}
	return ""
}

// cloth checks the cloth across and the seams that it hangs from. A seam along the
// cord is longer than the bed below it; that is not counted on.
func (a *assessor) cloth(c Case) {
	d := &a.design
	factor := given(d.Margins.Dynamic, DynamicFactor)
	k := Check{Part: ClothStrip, Case: c.Kind, Load: c.Cloth * factor, Factor: factor, Unit: PerWidth,
		Capacity: float64(d.Cloth.StripStrength), Required: given(d.Margins.Cloth, ClothMargin),
		Source: Source{Kind: ClothSheet}}
	if k.Capacity == 0 {
		k.Missing = []design.Key{design.KeyClothStripStrength}
	}
	a.add(k, func(wanted float64) []Way { return a.clothWays(c, wanted) })
	capacity, missing := SeamStrength(d.Seam)
	k = Check{Part: SideSeam, Case: c.Kind, Load: c.Cloth * factor, Factor: factor, Unit: PerWidth, Missing: missing,
		Capacity: capacity, Required: given(d.Margins.Seam, SeamMargin),
		Source: Source{Kind: SeamFormula}}
	ways := func(wanted float64) []Way { return a.seamWays(capacity, wanted) }
	a.add(k, ways)
	if a.Joined {
		k.Part = JoinSeam
		a.add(k, ways)
	}
}

// SeamStrength returns what a seam holds across, N/mm: stitches per length × rows
// × thread strength × factor, and the keys that are missing for it. Rows of 0
// count as one.
func SeamStrength(s design.Seam) (strength float64, missing []design.Key) {
	for _, v := range []struct {
		value float64
		key   design.Key
	}{{s.StitchLength, design.KeySeamStitchLength}, {float64(s.ThreadStrength), design.KeySeamThreadStrength}, {s.SeamFactor, design.KeySeamFactor}} {
		if v.value == 0 {
			missing = append(missing, v.key)
		}
	}
	if len(missing) > 0 {
		return 0, missing
	}
	return float64(max(1, s.Rows)) / s.StitchLength * float64(s.ThreadStrength) * s.SeamFactor, nil
}

// notes says what the figures leave out.
func (a *assessor) notes() []Note {
	n := []Note{CordsRunFree, BarsStraight}
	if a.design.Bar.Eccentricity == 0 {
		n = append(n, ThrustOnAxis)
	}
	if a.design.Sleeper.Shoulders == 0 {
		n = append(n, ShouldersGuessed)
	}
	return n
}
