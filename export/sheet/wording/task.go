package wording

// Task is a kind of step in the order of work.
type Task int

// The tasks, in the order of work.
const (
	CompareBought Task = iota
	MakeBoards
	LayOut
	MarkPlotted
	DrawLines
	MarkByHand
	MarkLining
	ProveSquare
	CutCloth
	TellFaces
	TestSeam
	PressStrips
	PressFacings
	PressHems
	JoinPanels
	JoinLining
	HemLining
	BasteLining
	FinishEdges
	WorkOpenings
	TurnEnds
	SewCaps
	PinStrips
	PinFacings
	StitchStrips
	StitchFacings
	PullTrial
	TrialSplice
	ReadTrial
	PullCords
	CutCords
	SpliceEyes
	HeadEyes
	FixedLines
	StrapLines
	SlidingLines
	HitchedLines
	RidgeLines
	FirstCorner
	OtherCorner
	ThreadLoops
	JoinLoops
	SetChains
	ReadNodes
	CheckNodes
	LockBuries
	SetLoops
	ReadLoops
	SeizeLoops
	ThreadChains
	ThreadBare
	LastEyes
	ReadLastEyes
	CutBars
	TackTails
	SewWall
	SewEdges
	SewCorners
	HemMouth
	SewBase
	SewBarsSack
	DrawCords
	MarkSacks
	PadIn
	MarkTarp
	JoinTarp
	RidgeTarp
	PatchTarp
	HemTarp
	LoopTarp
	SealTarp
	PitchTarp
	MarkCover
	ZipCover
	RidgeCover
	EndsCover
	EdgeCover
	FacedCover
	CapsCover
	LooseCover
	HangCover
	SetAnchors
	HangEmpty
	ProofLoad
	LieIn
	MeasureTips
	WriteHeights
	SetRight
	ReadAgain
	TaskCount // how many there are
)

// String returns the task's identifier.
func (t Task) String() string {
	return [TaskCount]string{
		"compare", "boards", "lay-out", "mark-plotted", "draw-lines", "mark-by-hand", "mark-lining", "prove", "cut", "faces", "test-seam",
		"press-strips", "press-facings", "press-hems", "join", "join-lining", "hem-lining", "baste-lining",
		"edges", "openings", "turn-ends", "caps", "pin-strips", "pin-facings", "stitch-strips", "stitch-facings",
		"pull-trial", "trial", "read-trial", "pull-cords", "cut-cords", "eyes", "head-eyes", "fixed-lines", "strap-lines", "sliding-lines",
		"hitched-lines", "ridge-lines",
		"first-corner", "other-corner", "thread-loops", "join-loops", "set-chains", "read-nodes", "check-nodes", "lock", "set-loops",
		"read-loops", "seize",
		"thread", "thread-bare", "last-eyes", "read-last-eyes", "bars", "tack",
		"sack-wall", "sack-edges", "sack-corners", "sack-mouth", "sack-base", "bars-sack", "drawcords", "mark-sacks",
		"pad-in", "mark-tarp", "join-tarp", "tarp-ridge", "tarp-patches", "tarp-hem", "tarp-loops", "tarp-seal", "tarp-pitch",
		"mark-net", "net-zip", "net-ridge", "net-ends", "net-channels", "net-facings", "net-caps", "net-loose", "net-hang",
		"anchors", "hang", "proof", "lie", "measure", "write", "correct", "again",
	}[t]
}

// Step says what to do in a step of work: an action a sentence, conditions and cautions
// first, and what it looks like when it is done.
type Step struct {
	Title string
	Do    []string
	Done  string
}
