package wording

// Task is a kind of step in the order of work.
type Task int

// The tasks, in the order of work.
const (
	MakeBoards Task = iota
	MarkPlotted
	DrawLines
	MarkByHand
	ProveSquare
	CutCloth
	PressStrips
	PressFacings
	PressHems
	JoinPanels
	WorkOpenings
	TurnEnds
	SewCaps
	PinStrips
	PinFacings
	StitchStrips
	StitchFacings
	PullCords
	CutCords
	SpliceEyes
	ThreadCords
	ThreadLoops
	SpliceCorners
	SpliceLoops
	ReadNodes
	PullChains
	CutBars
	TackTails
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
		"boards", "mark-plotted", "draw-lines", "mark-by-hand", "prove", "cut", "press-strips", "press-facings", "press-hems", "join",
		"openings", "turn-ends", "caps", "pin-strips", "pin-facings", "stitch-strips", "stitch-facings",
		"pull-cords", "cut-cords", "eyes", "thread-cords", "thread-loops", "splice-corners", "splice-loops",
		"read-nodes", "pull-chains", "bars", "tack", "anchors", "hang", "proof", "lie", "measure", "write", "correct", "again",
	}[t]
}

// Step says what to do in a step of work: an action a sentence, conditions and cautions
// first, and what it looks like when it is done.
type Step struct {
	Title string
	Do    []string
	Done  string
}
