// Package design holds the maker's design: everything that one design file says,
// as plain values, and the strict reader of such files.
//
// In a Design every length is a float64 in mm; any other quantity has a type of package
// quantity, named for its unit. A field that a file may leave out says what 0 means.
package design

import (
	"slingloft/outline/geom"
	"slingloft/outline/quantity"
)

// Design is one bridge hammock and the stock it is made from.
type Design struct {
	Name string // for people; lettered on every sheet

	Sleeper  Sleeper
	Load     Load
	Bed      Bed
	Side     Cord // side cords
	Leg      Cord // legs
	Hang     Hang
	Splice   Splice
	Bar      Bar
	Cloth    Cloth
	Channel  Channel
	Cap      Cap
	Seam     Seam
	Sheet    Sheet
	Template Template
	Margins  Margins
	Accuracy Accuracy
	Hung     Hung
	Guests   []Guest
	Output   Output
	Machine  Machine
	Extras   []Extra
	Sack     Sack
	Tarp     Tarp
	Lining   Lining
	Cover    Cover
}

// Sleeper is the person the bed is shaped for.
type Sleeper struct {
	Stature float64            // standing height, mm
	Mass    quantity.Kilograms // above 0 and to 300
	// Crown is how far the top of the head lies from the head bar, mm: positive
	// towards the foot, negative where the head lies over the tail.
	Crown float64
	// Shoulders is the breadth over the shoulders (bideltoid), mm; 0: not given.
	Shoulders float64
	// Lies is how the sleeper lies. The load is that of one on the back either way;
	// what changes is the height of the centre of mass.
	Lies Posture
}

// Posture is how a sleeper lies.
type Posture int

// The postures.
const (
	OnBack Posture = iota
	OnSide
)

// String returns the posture as a design has it.
func (p Posture) String() string { return [...]string{OnBack: "back", OnSide: "side"}[p] }

// Model says how the weight is spread along the bed.
type Model int

// The load models.
const (
	Lying Model = iota // body segments of the sleeper in place
	Even               // the whole weight spread evenly over a range
)

// Load is the line load under which the bed hangs as designed.
type Load struct {
	Model Model
	// From and To bound the even load, mm from the head bar towards the foot; both
	// 0: the whole bay.
	From, To float64
}

// Curve is the curve asked for along the side of the bay.
type Curve int

// The side curves. Balanced is in equilibrium under the load; the other two are
// drawn as asked with the side depth, and depart from level.
const (
	Balanced Curve = iota
	Catenary
	Arc
)

// Section says which measure of the head bar's section is given.
type Section int

// What may be given of a section at a bar.
const (
	Drop  Section = iota // height of the cords above the bottom line
	Girth                // cloth across the bed, cord to cord
)

// ControlMeasure is what a [Control] fixes, in its own unit: mm of a side depth, rad of an
// angle, N of a thrust. It passes for none of these by itself.
type ControlMeasure float64

// Control says which measure fixes the thrust.
type Control int

// The controls.
const (
	SideDepth Control = iota // mm, in the flat cloth
	HeadAngle                // hang angle of the head end, rad
	FootAngle                // hang angle of the foot end, rad
	Thrust                   // H of one side, N
)

// Second says what fixes the foot end's height.
type Second int

// The second conditions.
const (
	SameWall     Second = iota // the same wall angle at both bars
	FootDrop                   // the drop at the foot bar, mm
	FootGirth                  // the girth at the foot bar, mm
	LevelHooks                 // both apexes level, where the legs' hooks are
	LevelAnchors               // both anchors level, where the hang lines are tied
)

// Cut says how the tails are shaped.
type Cut int

// The cuts.
const (
	Net      Cut = iota // pre-image on a net of inextensible threads
	Straight            // straight tail edges from the bar corner, square end
)

// Leveling says by what the bed's bottom is made level.
type Leveling int

// The ways of leveling.
const (
	ByMade Leveling = iota // the made bed, in the round sections of the design
	ByHung                 // the cloth as it hangs under the sleeper's body, in simulation
)

// Bed is the shape that is asked for.
type Bed struct {
	Span             float64 // S, between the bars
	HeadBar, FootBar float64 // B, clear lengths between cord centres

	Head      Section // which measure HeadValue is
	HeadValue float64 // mm

	Control      Control
	ControlValue ControlMeasure

	Second      Second
	SecondValue float64 // mm; unused for SameWall, LevelHooks and LevelAnchors

	HeadTail, FootTail float64 // r, along the centre line
	HeadLeg, FootLeg   float64 // L, from bar tip to apex along the cord

	// Underbody radius at the head bar, at mid-bay (seat) and at the foot bar.
	// Between them it changes smoothly; in the tails it stays.
	HeadRadius, SeatRadius, FootRadius float64

	// Lift is the slope of the bottom line, at most 5 degrees either way:
	// positive where the head end is the higher.
	Lift quantity.Radians

	Curve Curve
	Cut   Cut
	Level Leveling
	// EndGirth is the girth that a straight tail is aimed at, mm; 0: the slope of
	// least load-weighted departure.
	EndGirth float64
	// Plain leaves pattern and cords unshortened, whatever stiffness is given.
	Plain bool
}

// Cord is one kind of cord.
type Cord struct {
	Name          string                 // what it is: "HMPE hollow braid 2.8 mm"
	Diameter      float64                // mm
	Strength      quantity.Newtons       // breaking strength from the data sheet; 0: not given
	Stiffness     quantity.Newtons       // EA at working load; 0: not given, no compensation
	LinearDensity quantity.GramsPerMetre // 0: not given
	Price         quantity.PricePerMetre // 0: not given
}

// Hang is the place and the lines that the hammock hangs from.
type Hang struct {
	Line     Cord    // hang line
	Distance float64 // between the supports, mm; 0: not given
	Height   float64 // of the hooks above ground, mm; 0: not given
	Bed      float64 // wanted height of the bed's lowest point above ground, mm
	Shelter  float64 // ridge length of a shelter that covers it, mm; 0: none
	// Fastening is how a hang line is made fast at its anchor, Travel by how much it can
	// be set longer and shorter, and Strap how much of it is a strap, mm; 0: not given.
	Fastening     Fastening
	Travel, Strap float64
	// HookDiameter is the thickness of what the eyes hang on, mm; 0: not given.
	HookDiameter float64
	HookStrength quantity.Newtons // of hook and support by their data sheet; 0: not given
}

// Fastening is how a hang line is made fast at its anchor.
type Fastening int

// The fastenings.
const (
	FixedEye   Fastening = iota // as long as planned and no other
	SlidingEye                  // an eye that slides on its own tail
	Strapped                    // in a strap that is adjusted
	Hitched                     // tied
)

// Splice holds the measures of the maker's splices.
type Splice struct {
	Bury        float64 // b, mm; 0: 63 cord diameters
	Taper       float64 // length of the tapered part of a bury, mm; 0: a third of the bury
	TipGap      float64 // g, the opening that takes a bar's tip, mm
	Contraction float64 // κ, length lost by the host per length buried in it
	Eye         float64 // e, cord in the eye's loop, mm
	EyeLoss     float64 // k, lost in the eye's Brummel, mm
	EyeBury     float64 // b_e, mm; 0: as Bury
	Efficiency  float64 // strength kept by a splice, 0 to 1; 0: not given
	Waste       float64 // part of the cord added for ends and mistakes, 0 to 1
	// Whole is true where one loop of cord makes side cord and legs.
	Whole bool
	// Trials are test splices. What they show goes before Contraction and EyeLoss, which
	// are what the maker says without them.
	Trials []Trial
}

// Trial is a test splice: a host cord measured before and after it takes a bury, an
// eye's crossing, or both.
type Trial struct {
	Before, After, Buried float64 // mm
	Crossing              bool    // an eye's crossing lies between the marks
}

// alone reports what a trial that says nothing of a crossing is taken for.
func (t Trial) alone() bool { return t.Buried == 0 }

// hasTrials reports whether there are test splices with a bury, or of a crossing
// alone.
func (s Splice) hasTrials(buried bool) bool {
	for _, t := range s.Trials {
		if (t.Buried > 0) == buried {
			return true
		}
	}
	return false
}

// Bar is the spreader bars' section and material; both bars are alike.
type Bar struct {
	Name         string                              // what it is: "aluminium tube 16 × 1"
	Material     string                              // a material of [Materials]; empty: not named
	Outer        float64                             // outer diameter, mm
	Wall         float64                             // wall, mm; 0: solid rod
	Modulus      quantity.NewtonsPerSquareMillimetre // E; 0: not given
	Yield        quantity.NewtonsPerSquareMillimetre // 0: not given
	Density      quantity.KilogramsPerCubicMetre     // 0: not given
	TipReach     float64                             // how far a tip holds the cord beyond the bar's end, mm
	TipDiameter  float64                             // of what the cords part round, mm; 0: not given
	Eccentricity float64                             // of the thrust at the tips, mm
	// Joint is how far the parts of a sectional bar reach into each other, mm; 0: it is
	// in one piece. JointPlay is by how much the one is thinner than the other is wide.
	Joint, JointPlay float64
	Hole             float64            // diameter of a hole drilled across the bar, mm; 0: none
	Stock            float64            // length the bars are sold in, mm; 0: not given
	Price            quantity.PriceEach // of a stock length; 0: not given
}

// CutFor returns the length to which a bar is cut for cords that are open mm apart: less
// the reach of both tips.
func (b Bar) CutFor(open float64) float64 { return open - 2*b.TipReach }

// Cloth is the fabric on the roll.
type Cloth struct {
	Name          string
	Width         float64 // usable width of the roll, mm
	ArealDensity  quantity.GramsPerSquareMetre
	OneWay        bool                          // pieces may not be turned end for end
	WarpStiffness quantity.NewtonsPerMillimetre // per unit strain; 0: not given, no compensation
	WeftStiffness quantity.NewtonsPerMillimetre
	StripStrength quantity.NewtonsPerMillimetre // 0: not given
	LockingAngle  quantity.Radians              // largest shear without wrinkles; 0: not given
	Gap           float64                       // between pieces on the roll, mm
	Margin        float64                       // kept free along the roll's edges, mm
	Flaws         []geom.Box
	Joins         int // lengthwise joins allowed in the body, 0 to 2
	Price         quantity.PricePerMetre
}

// ChannelKind says how the cord channel is made.
type ChannelKind int

// The channel kinds.
const (
	Strip  ChannelKind = iota // a straight strip, eased on
	Facing                    // a piece cut to the curve
)

// Channel is the sewn tube that the side cord runs in.
type Channel struct {
	Kind      ChannelKind
	Depth     float64 // finished depth, seam to fold, mm
	TurnUnder float64 // turned under at each long edge, mm
	Opening   float64 // length of the worked opening at a tip gap, mm; longer than the gap
	Foot      float64 // distance of the stitch line from the folded edge, mm
}

// CapKind says how a tail is closed.
type CapKind int

// The end caps.
const (
	Upright  CapKind = iota // in a plane square to the bottom line
	Leaning                 // square to the rising cords
	Gathered                // no cap: the end is drawn in by a drawstring
)

// Cap is the end cap.
type Cap struct {
	Kind   CapKind
	Hollow float64 // how far the top edge dips, mm; 0: straight
	Hem    float64 // hem at the top edge, or a gathered end's drawstring channel, mm
}

// Seam holds allowances, stitches and tolerances.
type Seam struct {
	Side, End, Cap, Join float64 // allowances, mm
	Tolerance            float64 // what may remain of a length difference, mm
	ToleranceRatio       float64 // or as part of the seam's length; the larger holds
	StitchLength         float64 // mm
	Rows                 int     // rows of stitches in the side seam
	RowSpacing           float64 // from a row to the next, towards the fold of a channel, mm
	ThreadName           string
	Needle               string           // size or kind of the machine's needle; empty: not named
	ThreadStrength       quantity.Newtons // 0: not given
	SeamFactor           float64          // part of stitch count × thread strength that a seam holds; 0: not given
	Perforation          float64          // part of its strength that cloth keeps along needle holes; 0: 0.8
}

// Sheet is the stiff stock for templates and the bed of the machine that cuts it.
type Sheet struct {
	Name          string
	Width, Height float64 // mm
	Origin        Corner
	Kerf          float64 // width of cut, mm
	Gap           float64 // between parts, mm
	Margin        float64 // kept free along the edges, mm
	Thickness     float64 // mm
	Price         quantity.PriceEach
}

// Template says how stiff templates are drawn.
type Template struct {
	Tick    float64 // step of the ticks and offsets, mm
	Whole   bool    // whole side curve rather than half
	Backing float64 // least width of a template beside its curve, mm
	Letter  float64 // height of lettering, mm

	NoGauges bool // templates alone
}

// Margins holds the required ratios and the waived checks.
type Margins struct {
	Cord    float64 // capacity over static load
	Bar     float64 // on the load × Dynamic
	Cloth   float64
	Seam    float64
	Dynamic float64  // factor on the static load for bars, cloth and seams
	Waived  []string // names of checks that are waived
}

// Accuracy holds the maker's working errors and what the bed may depart.
type Accuracy struct {
	Marking float64 // ± error of one mark, mm
	Reading float64 // ± error of one reading of a tape, mm
	Scatter float64 // ± scatter of the contraction κ
	Set     float64 // first-load set of a spliced cord, part of its length
	Bar     float64 // ± error of a bar's length, mm
	Sewing  float64 // ± error of a side seam's place, mm
	Rigging float64 // ± error of a hang line and of an anchor's height, mm
	Height  float64 // ± error of one reading of a height above a level, mm
	Level   float64 // departure of the bed from level that is accepted, mm
	// FirstLoad is what is done about Set.
	FirstLoad FirstLoad
	// NodesRead is true where every node is read off a tape under load, and set right,
	// before its buries are locked.
	NodesRead bool
}

// FirstLoad is what is done about the set under the first load.
type FirstLoad int

// The ways.
const (
	LeaveSet FirstLoad = iota // nothing: cords are as much longer afterwards
	CutSet                    // cords are cut shorter by it
	PullSet                   // cords are pulled before their nodes are marked
)

// Output says how figures and files are written.
type Output struct {
	Inches   bool    // lengths for people in inches, else mm
	Fraction int     // finest fraction of an inch: 8, 16, 32 …; 0: 16
	Scale    float64 // drawing scale, 1 for 1:1, 0.2 for 1:5
}

// Style returns how lengths are written for people: in mm with so many decimals, or to
// the finest fraction of an inch.
func (o Output) Style(decimals int) quantity.Style {
	return quantity.Style{Inches: o.Inches, Fraction: o.Fraction, Decimals: decimals}
}
