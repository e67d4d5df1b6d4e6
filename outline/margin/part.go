package margin

import "slingloft/outline/hung"

// Part is what a check looks at.
type Part int

// The parts. Those of an end come in pairs, head and foot.
const (
	SideCord Part = iota
	HeadLeg
	FootLeg
	HeadLine // hang line
	FootLine
	HeadHook // with its support
	FootHook
	HeadBuckling // bar as a column
	FootBuckling
	HeadYield // bar bowed, under the thrust off its axis
	FootYield
	ClothStrip
	SideSeam
	JoinSeam  // lengthwise join of the body
	RidgeCord // of a cover, that keeps the apexes from going apart
	PartCount // how many parts there are
)

// The parts at an end.
func legAt(e hung.End) Part  { return [...]Part{hung.Head: HeadLeg, hung.Foot: FootLeg}[e] }
func lineAt(e hung.End) Part { return [...]Part{hung.Head: HeadLine, hung.Foot: FootLine}[e] }
func hookAt(e hung.End) Part { return [...]Part{hung.Head: HeadHook, hung.Foot: FootHook}[e] }
func bucklingAt(e hung.End) Part {
	return [...]Part{hung.Head: HeadBuckling, hung.Foot: FootBuckling}[e]
}
func yieldAt(e hung.End) Part { return [...]Part{hung.Head: HeadYield, hung.Foot: FootYield}[e] }

// OfBar reports whether it is a bar that holds or does not.
func (p Part) OfBar() bool {
	return p == HeadBuckling || p == FootBuckling || p == HeadYield || p == FootYield
}

// String returns the part's identifier, as documents for other programs have it.
func (p Part) String() string {
	return [PartCount]string{
		"side cord", "head leg", "foot leg", "head hang line", "foot hang line", "head hook", "foot hook",
		"head bar buckling", "foot bar buckling", "head bar yield", "foot bar yield",
		"cloth strip", "side seam", "join seam", "cover ridge",
	}[p]
}

// Unit is what loads and capacities are in.
type Unit int

// The units.
const (
	Force    Unit = iota // N
	PerWidth             // N/mm
)

// String returns the unit's identifier, as documents for other programs have it.
func (u Unit) String() string { return [...]string{"N", "N/mm"}[u] }

// Source is where a capacity and what is required of it come from.
type Source struct {
	Kind SourceKind
	Bar  string // where modulus and yield of the bar come from; empty: its data sheet
}

// SourceKind is the kind of a source.
type SourceKind int

// The kinds.
const (
	CordSheet   SourceKind = iota // strength × splice efficiency
	KnotSheet                     // strength × what a knot keeps
	HookSheet                     // of hook and support
	Column                        // Euler or Johnson
	Bowed                         // yield of a bowed bar, thrust off its axis
	ClothSheet                    // strip strength
	SeamFormula                   // stitches, rows, thread and factor
	Perforated                    // the cloth beside the seam, at its needle holes
)

// Note is a remark on what the figures leave out.
type Note int

// The remarks.
const (
	CordsRunFree     Note = iota // in their channels
	BarsAlone                    // without their own weight or a knee's push
	ThrustOnAxis                 // for want of an eccentricity
	ShouldersGuessed             // the shoulders' breadth is estimated
	LinesKnotted                 // hang lines are tied with a hitch
	LinesGuessed                 // the hang lines' lengths are not known
	JointAsBar                   // a sectional bar's joint is taken to be as stiff as the bar
	StretchUnknown               // cords or cloth of which no stiffness is known do not stretch
)
