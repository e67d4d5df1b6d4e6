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
	HeadYield // bar under the thrust off its axis
	FootYield
	HeadBearing // bar's end face under its tip
	FootBearing
	ClothStrip
	SideSeam
	JoinSeam  // lengthwise join of the body
	PartCount // how many parts there are
)

// at returns the part of an end, from the head's.
func (p Part) at(e hung.End) Part { return p + Part(e) }

// String returns the part's identifier, as documents for other programs have it.
func (p Part) String() string {
	return [PartCount]string{
		"side cord", "head leg", "foot leg", "head hang line", "foot hang line", "head hook", "foot hook",
		"head bar buckling", "foot bar buckling", "head bar yield", "foot bar yield",
		"head bar tip bearing", "foot bar tip bearing", "cloth strip", "side seam", "join seam",
	}[p]
}

// CaseKind is a load case.
type CaseKind int

// The load cases.
const (
	Lying CaseKind = iota
	Seated
	Rolling
	CaseKindCount // how many load cases there are
)

// String returns the case's identifier, as documents for other programs have it.
func (k CaseKind) String() string { return [CaseKindCount]string{"lying", "seated", "rolling"}[k] }

// Basis is how the loads of a case are found.
type Basis struct {
	Kind  BasisKind
	Shift float64 // of the weight off the middle, mm, for [WeightShifted]
	Turn  float64 // of the bed, rad
	Share float64 // what the lower side carries, over its part lying
}

// BasisKind is the kind of a basis.
type BasisKind int

// The kinds.
const (
	Equilibrium   BasisKind = iota // of the hung shape, the sleeper in place
	OneCord                        // the whole weight on one side cord
	OneCordBraced                  // likewise, the other side taut
	WeightShifted                  // to one side, cords and bars in shape
	TurnsOver                      // the bed does: there are no loads
)

// Obstacle is why a case has no loads.
type Obstacle struct {
	Kind  ObstacleKind
	Below float64 // how far the apexes lie below the centre of mass, mm, for [ApexesLow]
}

// ObstacleKind is the kind of an obstacle.
type ObstacleKind int

// The kinds.
const (
	NoObstacle ObstacleKind = iota
	NoPosture               // in which the other side's cord is taut
	ApexesLow               // the line through them lies below the centre of mass
)

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
	HookSheet                     // of hook and support
	Column                        // Euler or Johnson
	Secant                        // secant formula
	EndFace                       // whole end face of the bar at yield
	ClothSheet                    // strip strength
	SeamFormula                   // stitches, rows, thread and factor
)

// Note is a remark on what the figures leave out.
type Note int

// The remarks.
const (
	CordsRunFree     Note = iota // in their channels
	BarsStraight                 // without their own weight or a knee's push
	ThrustOnAxis                 // for want of an eccentricity
	ShouldersGuessed             // the shoulders' breadth is estimated
)
