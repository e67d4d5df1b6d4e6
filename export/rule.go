package export

// Rule is what a file that is read or a drawing that is to be written breaks. What fills
// its words in stands beside it. The list is closed.
type Rule int

// Where in a file or a drawing; what is wrong there is the last of the data.
const (
	InSVG Rule = iota
	InDXF
	InPDF
	InPlot
	InPicture
	InMachine
	AtProgramLine // number
	AtPage        // number
	AtPDFKey      // key
	AtLine        // number
	AtKey         // key, file or kind of work
	AtEntity      // number, kind
	AtHandle      // number, kind, handle
	AtElement     // tag, id
	AtUse         // id, key
	AtSymbol      // id
	AtTransform   // name
	AtLayer       // name
	AtLayerKey    // key
	AtBlock       // name
	AtResources
	AtInstruction // name, parameters
	AtDrawing     // name
	AtDrawnLine   // names
	AtDrawnLabel  // name, which label, its text
	AtStroke      // kind of work
	WithLeftOut   // what is wrong comes first; what was left out
)

// Of size and number.
const (
	TooLarge     Rule = iota + WithLeftOut + 1 // limit
	PlotTooLarge                               // limit
	TooManyPoints
	TooManyLines
	TooManyProgramLines
	TooManyLinesAndPoints
	TooManyAtLine // number
	TooManyGroups
	TooManyObjects
	TooManyObjectsAndPoints
	TooManyOperands
	TooManyOnPath
	MoreNumbers   // limit
	MoreRules     // limit
	GroupsTooDeep // limit
	BlocksTooDeep // limit
	ObjectsTooDeep
	StatesTooDeep
	MarksTooDeep
	EdgesTooMany    // how many, limit
	PathsTooMany    // likewise
	OutlinesTooMany // likewise
	PathTooFine     // path, how many, limit
	SplineTooFine   // how many, limit
	PointNotFinite
	NamedPointNotFinite // name
	ElementNotFinite    // tag, name
)

// Of drawings that are brought in.
const (
	NotDrawing Rule = iota + ElementNotFinite + 1
	Compressed
	CompressedSVG
	EndingUnknown
	SVGWithoutUnit // width or height, what it says
	DXFWithoutUnit
	NoClosedPath
	PathHuge     // path, width and height in mm
	PathEmpty    // path
	PathSmall    // path
	PathOpen     // path, gap, place
	PathEndsNear // path, gap, another path, place
	PathTouches  // path, place
	PathCrosses  // path, place
	PathsCross   // paths, place
	LineOutside  // kind of work, name
	PathNumber   // number: names a path in the above
	PathNamed    // number, name: likewise
)

// Of SVG.
const (
	NoSVG Rule = iota + PathNamed + 1
	SheetElsewhere
	ElementUnread // tag, id
	PartHidden    // property
	OneLanguage
	Moving         // tag
	UseOfNothing   // id, reference
	UseOfUses      // id, limit
	UseOfViewBox   // id
	MediumUnread   // medium
	StylesUnread   // where
	SelectorUnread // selector
	SelectorMissing
	StyleUnread      // property, value
	TransformOrigin  // value
	TransformUnread  // text
	TransformNumbers // name, how many
	PathNoMove
	NumberAt      // text, place
	ArcFlagAt     // place
	CommandAt     // letter, place
	PointsUnread  // text
	LengthUnread  // text
	NumberUnread  // text
	ViewBoxUnread // text
	ViewBoxSize   // width, height
	SizeMissing   // width or height
	SizeOff       // width or height, value
	RatioUnread   // text
	RatioSlices
)

// Of DXF.
const (
	UnitOff      Rule = iota + RatioSlices + 1 // value
	BlockMissing                               // name
	BlockRows
	CurveUnread
	MeshUnread
	NoVertex // kind
	SplineEmpty
	SplineDegree  // degree, highest
	SplineKnots   // degree, how many, how many
	SplineWeights // how many, how many
	SplineFalls
	SplineWeight // value
	SplineParted
	SplineLoose  // name; a doubt, no refusal
	GroupNumber  // code, text
	GroupInteger // code, text
	GroupBare    // number
	GroupCode    // number, text
	EndMissing
)

// Of programs, plots and pictures, which are read as we write them.
const (
	ProgramNameless Rule = iota + EndMissing + 1
	CommentOpen
	CommentSheet // text
	WordMissing  // text
	WordUnread   // text
	WordP
	WordStrange // letter
	GStrange    // number
	MStrange    // number
	PlotSizeMissing
	PlotSizeBroken
	InstructionUnread // text
	InstructionStrange
	CoordinatesOdd
	PictureSize // width, height
	PictureScale
)

// Of PDF, likewise.
const (
	NoPDF Rule = iota + PictureScale + 1
	TableMissing
	TableStrange
	TableBroken
	TrailerMissing
	ChangedLater
	NumberDue       // text
	ObjectGone      // number
	ObjectElsewhere // number
	ObjectBroken    // number
	ObjectNoStream  // number
	ObjectCutOff    // number
	DictionaryMissing
	StreamMissing
	PackedStrange
	UnpackedTooLarge
	ReferenceBroken
	KeyNoName
	HexUnread // text
	EndUnexpected
	OnePageDue // how many
	PagesMissing
	PagesGrouped
	PageNoSize
	PageSize    // width, height
	OperandsOff // how many, due
	OperandNoNumber
	OperatorStrange // operator
	ContentEnds
	LineNoStart
)

// Of what is written.
const (
	NoDrawings    Rule = iota + LineNoStart + 1
	PagesFound         // how many, how many
	OriginUnknown      // which
	WorkUnknown        // which
	ToolUnknown        // which
	JobsOff            // how many, how many
	SettingOff         // setting, value, bounds, unit
	TabsByKnife
	KerfTooWide   // line, kerf
	SheetScale    // name, value, bounds
	SheetSize     // name, width, height, bound
	SheetLines    // name, how many, bound
	SheetPoints   // name, how many, bound
	LineTooShort  // how many
	LabelOff      // height, turn, place
	LabelLong     // how many, bound
	PointNumber   // number
	PointOutside  // number, place
	ScaleUnread   // text
	ScaleOff      // value, bounds
	CorrectionOff // value, axis, bounds
	ThinOff       // value, bound
	ArcsOff       // value, bound
	BarsUnread    // text
	BarOffByTenth // length, what it measures, unit
	WidthOff      // value, bounds
	DashesOff     // how many, bound
	DashOff       // value, bound
	ColourUnread  // text
	FormatUnknown // name, names
	PaperUnknown  // name, names
	PaperSmall    // name, width, height
	OverlapOff    // value
	PagesTooMany  // name, how many, paper, bound
	CombSlots     // how many
	CombBoard     // thickness
	CombKerfs     // bounds, thickness
	FileExists
	PipeEmpty
	Unread
	NotPlain    // path
	FolderShut  // path
	FolderBusy  // path
	NotOfDesign // path
	RuleCount   // how many there are
)
