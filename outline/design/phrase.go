package design

// Phrase is what would do, or another part of a message: which sentence it is, and what
// that is filled with. It is data until [Words] say it; the zero Phrase says nothing.
type Phrase struct {
	Kind PhraseKind
	Data []any // as in [Finding]
}

// Say returns a phrase.
func Say(kind PhraseKind, data ...any) Phrase { return Phrase{kind, data} }

// Listing returns texts as a part of a message that lists them.
func Listing(texts []string) any { return listed(texts) }

// Meant returns texts as a part of a message that takes the first, or else another.
func Meant(texts []string) any { return elses(texts) }

// JoinsAllowed returns a count of lengthwise joins, 0 to 2, as a part of a message.
func JoinsAllowed(n int) Phrase { return Say([...]PhraseKind{NoJoin, OneJoin, TwoJoins}[n]) }

// PhraseKind is which sentence a phrase is.
type PhraseKind int

// The kinds.
const (
	// Nothing.
	Nothing PhraseKind = iota // no phrase

	// Reading the file.
	DesignAtMost
	KeysAtMost
	SaveUTF8
	WriteTOML
	WriteHeader
	WriteAssignment
	WriteInches
	WriteOnOneLine
	WriteOrComment
	WritePoint
	WriteEquals
	OnItsOwnLine
	WriteTable
	WriteList
	WriteOnce
	WriteTableKeys
	WriteKeysBelow
	WriteNeeded
	WriteEachUnder
	WriteEach
	WriteLine
	WriteFirstLine
	WriteValue
	WriteUnder
	WriteAtTop
	TableHolds
	FirstTableHolds
	TakeHeadToo // a header
	TablesAre
	LevelsAtMost
	KeepOne
	KeepOneOf
	LeaveOut
	MendFirst

	// Single values.
	QuantityHint // what a [quantity.Error] suggests
	QuantityAsIn
	WriteThis
	WriteWithin
	WriteSuchAs
	WriteBare
	WriteA
	WriteName
	WriteSigns
	WriteNames
	WriteOrTrue
	WriteOrLeave
	GiveOrAsk
	WriteNear
	OneWillDo
	WillDo
	AtMostWillDo
	NameOnce

	// Parts of others.
	Range
	CharactersAtMost
	NamesAtMost
	TrueOrFalse
	HeldText
	HeldNumber
	HeldList
	HeldTable
	HeldTime
	AQuantity
	ANumber
	AWholeNumber
	AText
	OneOf
	AListOfNames
	HeadSection // that a key sets
	BedControl
	FootCondition
	BodyRadius
	TheSame
	ATool
	ToolUnnamed
	NoJoin
	OneJoin
	TwoJoins

	// Checks.
	GiveSideDepth
	DrawnOrMade
	WriteMaterial
	LeaveOrBuried
	LeaveOrWrite
	OrShorterBury
	OrSolid
	LeaveOrOtherKind
	LeaveOrOtherTool
	MeasureAgain
	RangeOrLeave
	WriteColour
	WritePairs
	DashWillDo
	DesignHas
	WriteWords

	// What a program needs.
	WriteJob
	DepthMarks
	GiveThrough
	WriteThickness
	WriteThrough
	WriteTried
	WriteSeconds
	MoreOrNoCloth
	MoreOrFields
	MoreOrFieldsAlone
	StripWouldDo
	MoreOrNoBoards

	// The shelf.
	ShelfHolds
	WriteEntry
	WriteEntryOf
	WriteShelf
	ShelfHas
	NameShelf

	// A body wider than its roll.
	JoinsWouldDo
	RollWouldDo
	LessWouldDo
	LessGirth
	AnyOf // of several ways

	// Later stages.
	LongerTail
	TailsWouldDo // of a level cut: lengths at head and foot
	MadeWouldDo
	ChecksAre
	FurtherRollWouldDo // of cloth for what is sewn beside the bed: width
	ClothWouldDo
	ClearLess
	MoreWouldDo
	LeastWouldDo
	MostWouldDo
	ChangeThis
	ChangeWithIt
	GiveUnit
	MendDrawing
	SameRoll

	PhraseCount // how many there are
)
