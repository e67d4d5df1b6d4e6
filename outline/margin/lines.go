package margin

import (
	"slingloft/outline/column"
	"slingloft/outline/design"
	"slingloft/outline/hung"
	"slingloft/outline/quantity"
	"slingloft/outline/state"
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
	// States are those of the made bed, of [state.Of].
	States []state.State
	Give   state.Give // of [state.GiveOf]
	// LinesGuessed says that the design does not tell how long the hang lines are.
	LinesGuessed bool
}

// Of returns every check of a design.
func Of(in Input) Report {
	a := assessor{in, in.Design, Report{Cases: casesOf(in.States), States: in.States, Give: in.Give}}
	a.Dynamic = given(in.Design.Margins.Dynamic, DynamicFactor)
	for _, c := range a.Cases {
		a.cords(c)
		a.bars(c)
		a.cloth(c)
		a.ridge(c)
	}
	a.Leasts = a.leasts()
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
	if key == design.KeyHangLine && a.design.Hang.Fastening == design.Hitched {
		// A hitch holds one end, a splice the other.
		efficiency = min(KnotKeeps, given(efficiency, KnotKeeps))
		k.Source.Kind = KnotSheet
	}
	if efficiency == 0 {
		// A splice keeps no more than the cord has.
		k.Missing = append(k.Missing, design.KeySpliceEfficiency)
		efficiency = 1
	}
	k.Capacity = runs * float64(kind.Strength) * efficiency
	a.add(k, func(needed float64) []Way { return a.ropeWays(key, runs, efficiency, needed) })
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
		a.rope(legAt(end), c, c.Leg[e], leg, key, runs)
	}
	for e, end := range ends() {
		a.rope(lineAt(end), c, c.Hang[e], d.Hang.Line, design.KeyHangLine, 1)
		k := Check{Part: hookAt(end), Case: c.Kind, Load: c.Hang[e], Factor: 1, Capacity: float64(a.Hook),
			Required: given(d.Margins.Cord, CordMargin), Source: Source{Kind: HookSheet}}
		if a.Hook == 0 {
			k.Missing = []design.Key{design.KeyHangHookStrength}
		}
		a.add(k, func(needed float64) []Way { return []Way{atLeast(design.KeyHangHookStrength, needed), a.slacker()} })
	}
}

func ends() [2]hung.End { return [2]hung.End{hung.Head, hung.Foot} }

// section returns the whole section of the design's bars.
func section(b design.Bar) column.Section {
	if b.Wall == 0 {
		return column.Rod(b.Outer)
	}
	return column.Tube(b.Outer, b.Wall)
}

// bars checks both bars as columns with pinned ends. The column is as long as the
// cords are apart, a little longer than the bar: a tip that stands loose in its
// bar makes it no stiffer. A bar that is not pressed is not checked.
func (a *assessor) bars(c Case) {
	bar := a.design.Bar
	factor := a.Dynamic
	for e, end := range ends() {
		if c.Bar[e] <= 0 {
			continue
		}
		k := Check{Case: c.Kind, Load: c.Bar[e] * factor, Factor: factor,
			Required: given(a.design.Margins.Bar, BarMargin)}
		l := a.Shape.Ends[e].Bar
		if bar.Modulus == 0 {
			k.Missing = append(k.Missing, design.KeyBarModulus)
		}
		if bar.Yield == 0 {
			k.Missing = append(k.Missing, design.KeyBarYield)
		}
		if bar.Joint > 0 && bar.Joint < StiffJoint*bar.Outer {
			// How much a shorter one gives way is not known: what the whole bar holds is a bound.
			k.Missing = append(k.Missing, design.KeyBarJoint)
		}
		ways := func(capacity func(design.Bar) float64) func(float64) []Way {
			return func(needed float64) []Way { return a.barWays(end, needed, capacity) }
		}
		columns := func(b design.Bar) float64 { return buckling(b, l) }
		k.Part, k.Capacity, k.Source = bucklingAt(end), columns(bar), Source{Column, barSource(bar)}
		a.add(k, ways(columns))
		bowed := func(b design.Bar) float64 { return yielding(b, l) }
		k.Part, k.Capacity, k.Source = yieldAt(end), 0, Source{Bowed, barSource(bar)}
		if bar.Modulus > 0 && bar.Yield > 0 {
			k.Capacity = bowed(bar)
		}
		a.add(k, ways(bowed))
	}
}

// StiffJoint is by how many outer diameters the parts of a sectional bar have to reach
// into each other for the bar to be as good as whole: EN ISO 5912:2020, of push-fit
// joints in tent poles.
const StiffJoint = 2

// buckling returns the column's load, N: Euler's as an upper bound where the yield
// is missing, 0 without a modulus.
func buckling(bar design.Bar, l float64) float64 {
	s := section(bar)
	if bar.Modulus == 0 {
		return 0
	}
	if bar.Yield == 0 {
		return column.Euler(s, float64(bar.Modulus), l)
	}
	load, _ := column.Buckling(s, float64(bar.Modulus), float64(bar.Yield), l)
	return load
}

// yielding returns the thrust at which a bar yields that is bowed, whose thrust acts
// off its axis, whose joint, where it has one, lets it bend at mid-length, and through
// which a hole, where there is one, is drilled there. The hole takes from what yields
// and, being short, nothing from the stiffness.
func yielding(bar design.Bar, l float64) float64 {
	bow := column.Bow * l
	if bar.Joint > 0 {
		bow += column.Kink(l, bar.JointPlay, bar.Joint)
	}
	whole, left := section(bar), section(bar)
	if bar.Hole > 0 {
		left = column.Drilled(bar.Outer, bar.Wall, bar.Hole)
	}
	return column.Weakened(column.Strut{Section: whole, Modulus: float64(bar.Modulus), Length: l, Bow: bow, Off: bar.Eccentricity},
		left, float64(bar.Yield))
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
	factor := a.Dynamic
	k := Check{Part: ClothStrip, Case: c.Kind, Load: c.Cloth * factor, Factor: factor, Unit: PerWidth,
		Capacity: float64(d.Cloth.StripStrength), Required: given(d.Margins.Cloth, ClothMargin),
		Source: Source{Kind: ClothSheet}}
	if k.Capacity == 0 {
		k.Missing = []design.Key{design.KeyClothStripStrength}
	}
	a.add(k, func(needed float64) []Way { return a.clothWays(c, needed) })
	capacity, missing := SeamStrength(d.Seam, d.Cloth)
	k = Check{Part: SideSeam, Case: c.Kind, Load: c.Cloth * factor, Factor: factor, Unit: PerWidth, Missing: missing,
		Capacity: capacity, Required: given(d.Margins.Seam, SeamMargin),
		Source: Source{Kind: SeamFormula}}
	if stitches := stitched(d.Seam); capacity > 0 && (stitches == 0 || capacity < stitches) {
		k.Source.Kind = Perforated
	}
	ways := func(needed float64) []Way { return a.seamWays(needed) }
	a.add(k, ways)
	if a.Joined {
		k.Part = JoinSeam
		a.add(k, ways)
	}
}

// Perforation is the part of its strength that cloth is taken to keep along the needle
// holes of a seam: own choice.
const Perforation = 0.8

func perforation(s design.Seam) float64 { return given(s.Perforation, Perforation) }

// secondRow is by how much a second row of stitches makes a seam stronger: in cotton
// twill by 8 to 11 % in weft and 18 to 27 % in warp (a study by ISO 13935-2), not by
// its whole own strength. Rows beyond it are not counted on: own choice.
const secondRow = 0.1

// rows returns how many times the strength of one row a seam of several has.
func rows(s design.Seam) float64 {
	if s.Rows > 1 {
		return 1 + secondRow
	}
	return 1
}

// stitched returns what the thread of a seam holds across, N/mm: stitches per length ×
// thread strength × factor × [rows]; 0 where one of them is not known.
func stitched(s design.Seam) float64 {
	if s.StitchLength == 0 {
		return 0
	}
	return rows(s) / s.StitchLength * float64(s.ThreadStrength) * s.SeamFactor
}

// SeamStrength returns what a seam holds across, N/mm: what its thread does and at most
// what the cloth beside it does at its needle holes, and the keys that are missing for
// it. Where some are missing it is what the rest comes to, an upper bound, or 0.
func SeamStrength(s design.Seam, c design.Cloth) (strength float64, missing []design.Key) {
	for _, v := range []struct {
		value float64
		key   design.Key
	}{{s.StitchLength, design.KeySeamStitchLength}, {float64(s.ThreadStrength), design.KeySeamThreadStrength}, {s.SeamFactor,
		design.KeySeamFactor},
		{float64(c.StripStrength), design.KeyClothStripStrength}} {
		if v.value == 0 {
			missing = append(missing, v.key)
		}
	}
	strength = stitched(s)
	if holed := perforation(s) * float64(c.StripStrength); holed > 0 && (strength == 0 || holed < strength) {
		strength = holed
	}
	return strength, missing
}

// notes says what the figures leave out.
func (a *assessor) notes() []Note {
	n := []Note{CordsRunFree, BarsAlone}
	if a.design.Bar.Eccentricity == 0 {
		n = append(n, ThrustOnAxis)
	}
	if a.design.Bar.Joint > 0 {
		n = append(n, JointAsBar)
	}
	if a.design.Sleeper.Shoulders == 0 {
		n = append(n, ShouldersGuessed)
	}
	if a.design.Hang.Fastening == design.Hitched {
		n = append(n, LinesKnotted)
	}
	if a.LinesGuessed {
		n = append(n, LinesGuessed)
	}
	d := &a.design
	if d.Side.Stiffness == 0 || d.Leg.Stiffness == 0 && !d.Splice.Whole || d.Hang.Line.Stiffness == 0 || d.Cloth.WeftStiffness == 0 {
		n = append(n, StretchUnknown)
	}
	return n
}
