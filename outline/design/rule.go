package design

// Finding is what was found wrong: the rule that is broken, and with what. It is data
// until [Words] say it.
type Finding struct {
	Rule Rule
	Data []any // keys, texts of the file, values as the maker writes them, counts, [Phrase]s
}

// Found returns a finding.
func Found(rule Rule, data ...any) Finding { return Finding{rule, data} }

// Told returns the finding of a later stage that has words of its own.
func Told(text string) Finding { return Found(Stated, text) }

// Rule is what a design breaks. The list is closed: what is wrong with a design by
// itself is one of these, and what a later stage finds with words of its own is
// [Stated].
type Rule int

// The rules.
const (
	// Reading the file.
	FileTooLarge Rule = iota
	ManyKeys
	NotUTF8
	NotTOML // as the TOML reader says it
	BareHeader
	ValueMissing
	TypographicQuotes
	CommaInNumber
	Colon
	NotQuoted
	TooDeep
	GivenAlready
	UnknownTable
	UnknownKey
	BelowLeftOut // a key below the header, left out, of its table
	GivenAsList
	TableHoldsValue
	KeyGivenAsTable
	ValueGivenAsTable
	ListGivenAsOne
	GivenTooOften
	TableMissing
	KeyMissing
	NoneGiven // of keys that exclude each other
	GivenBeside
	MoreFaults

	// Single values.
	NoQuantity // a [quantity.Error]
	BareNumber
	NotFinite
	NotDecimal
	TextForNumber
	TooSmall
	TooLarge
	NotWhole
	TextEmpty
	BlankAtEnd
	TextTooLong
	ControlCharacter
	UnknownWord // out of a list
	FlagFalse
	NamesTooMany
	NamesHold
	NameTwice
	GivenUnderBoth // its name, the name that it had before
	WrongType

	// Sleeper, load, bed.
	SleeperTooLong
	HeadOffTail
	FeetOffTail
	BoundsEvenLoad
	LoadBeforeTail
	LoadPastTail
	LoadShort
	CurveContradicts
	CurveWithoutDepth
	EndGirthOfNet
	HungOfStraight
	HungOfDrawn
	DepthOverHalf
	RadiusOverHalf
	RadiusAtCord
	GirthShort
	LegsApart
	LegsMeetEarly
	EndGirthOver

	// Cords and splices.
	BuriesOverSide
	LegForBuries
	TaperOverBury
	LossOverEye
	TrialIdle
	TrialGrew
	BuriedOver
	LostInCrossing
	LostToBury
	TipGapShort

	// Cloth and sewing.
	FootPastDepth
	ChannelFull
	ChannelNarrow
	OpeningShort
	HollowOfGathered
	SideOfRectangle
	SideOverRidge
	PadPastMiddle
	PadOverRound
	OpeningNowhere
	OpeningInGathers
	OpeningInFacing
	HemOfOpening
	HollowRidgeWhole
	CoverWithoutCaps
	CarriesBesideApexes
	StrengthOfElastic
	ZipAtEdge
	HemForDrawstring
	HollowAtBed
	MarginsOverRoll
	FellNarrow
	FlawBackwards
	FlawUpsideDown
	FlawOffRoll
	BodyTooWide

	// Bars, place, sheets.
	WallOverHalf
	TipsMeet
	HoleWide
	JointLong
	AnchorsNowhere
	StockShort
	UnknownMaterial
	SupportsClose
	SupportsLow
	MarginsOverSheet
	GapUnderKerf
	BackingNarrow
	TicksFew

	// Machine, outlines of the maker's own.
	MeasuredOff
	KnifeTabs
	PenTabs
	OfKnife
	OfRouter
	StrokeTwice
	NoColour
	SolidAndDash
	DashOdd
	NoDash
	JobTwice
	StrangeMaterial
	LeanPause
	LeanAir
	LineHolds
	FieldsOfNoBed
	CutOfNoCutter
	OfKeepOut
	OfPiece

	// Guests, and the bed as it hangs.
	GuestTooLong
	GuestHeadOff
	GuestFeetOff
	OfWeight
	WeightBackwards
	WeightOffHead
	WeightOffFoot
	FixedTravel
	NoStrap

	// The shelf.
	NoShelfKind
	NoShelfEntry
	NotOnShelf

	// Later stages, from here on: no reading of a file finds these broken.
	LeansOverBar
	UnknownCheck // in the list of waivers
	NoRoomForFrame
	PieceTooLarge
	PieceKeptOff

	// What a program needs.
	JobMissing
	MarkGoesThrough
	CutStopsShort
	ThicknessUnsaid
	ThroughUnsaid
	PlungeUnsaid
	SafeHeightUnsaid
	CutterUnsaid
	SpinUpUnsaid
	TrailUnsaid
	TabWidthUnsaid
	TabHeightUnsaid
	TooWideToReach
	NoRoomForCrosses
	TooHighToReach

	// What hangs, lies flat, is spliced, sewn and divided.
	SectionMissing
	GirthFitsNone
	ShapeTooFlat
	CordsTooDeep
	MoreThanBayHas
	NoShapeMeets
	NoLegMeets
	LegUnderTail
	NoSectionAt
	CordsBelow
	CordsInside
	WallsPast
	WallsUpright
	ClothNarrow
	CordUnsettled
	LegsNeverMeet
	DrawnHangsNot
	ThreadsClose
	EdgeLeavesNet
	LevelOpen    // how far off level it stays under the sleeper and elsewhere, and how far is well
	LevelSheared // by how much the cloth then shears, and by how much it may
	LevelWall    // how steep the walls then stand, and how steep they may
	EndOf
	HooksClose
	HooksLow
	SmallForBed
	LargeForBed
	EyesOverlap
	NoRoomForEyes
	BuryAtTip
	LegHoldsNoEye
	BuriesOverlap
	OfTrial
	TrialLengths
	TrialLonger
	TrialEmpty
	TrialLost
	EyeUnderHook
	GapUnderTip
	CapDips
	JoinBreaksOff
	HemGives
	SideOverNeed
	TarpWaist
	TarpEdgesMeet
	TarpCornerSharp
	PatchesMeet
	JoinLeavesTarp
	PadPastTail
	PadOverBed
	PadOverOpening
	PadOverSection
	LiningOverRoll
	LiningHangsOff
	LiningTurns
	PanelsTooMany
	CoverRidgeLow
	CoverOverRoll
	ZipNoRoom
	ZipTooLong
	ZipAtRidge
	SideSeamGone
	EndSeamGone
	ChannelHoldsNo
	OpeningPastEnd
	TailUnderOpening
	OpeningUnderPlay
	StockUnderBar
	Undivided
	PartsTooMany
	SheetUnderJoint
	NoPlaceForJoint
	KerfOfJoint
	NumberUnlettered
	PartsUnlettered
	Unlettered
	OutlineCrosses
	NoRoomForFigures
	StepTooSmall
	TailDoublesBack
	SideDoublesBack
	EndDoublesBack
	BedTurnsOver
	NoRestNearby
	ClothOffCords
	LostAside
	ArcTooDeep
	NoCurveOver
	Unsettled    // a search
	NoSignChange // likewise
	NotANumber   // likewise
	OfThis
	WithCause
	OtherRoll // of beds laid together: value here, the other design, its value there

	OfFile // name, what is wrong with it
	Stated // by a later stage, in its own words

	RuleCount // how many there are
)
