package cord

// Reading is what a tape must show between two places.
type Reading struct {
	From   Spot    `json:"from"`
	To     Spot    `json:"to"`
	Before float64 `json:"before,omitempty"` // before the splice, mm; 0: there is no such place yet
	After  float64 `json:"after"`            // and after it, mm
}

// Step is one splice with the readings that prove it.
type Step struct {
	Do    StepKind  `json:"do"`
	Reads []Reading `json:"reads"`
}

// StepKind is what is done in a step.
type StepKind int

// The kinds of steps.
const (
	DrawHeadTails StepKind = iota // head leg and side cord into each other
	DrawFootTails                 // foot leg and side cord
	MakeEye                       // of a leg
	DrawSideTail                  // the side cord's tail into the leg
	MakeNearEye                   // of a line, at the apex
	MakeFarEye                    // at the other end
	DrawEndTail                   // a loop's end into its start
	DrawStartTail                 // its start into its end
	HangInStrap                   // a line's far eye
	DrawThrough                   // a sliding eye's tail through its bury
	SlideTail                     // sets a sliding eye
	TieHitches                    // ties a line at its anchor
	StepKindCount                 // how many kinds there are
)

// String returns the kind's identifier, as documents for other programs have it.
func (k StepKind) String() string {
	return [StepKindCount]string{
		DrawHeadTails: "draw the side cord's head tail into the head leg to its shoulder, then the leg's tail into the side cord",
		DrawFootTails: "the same at the foot end",
		MakeEye:       "make the eye",
		DrawSideTail:  "draw the side cord's tail into the leg to its shoulder",
		MakeNearEye:   "make the near eye",
		MakeFarEye:    "make the far eye",
		DrawEndTail:   "draw the end tail into the start of the loop to its shoulder",
		DrawStartTail: "draw the start tail into the end of the loop to its shoulder",
		HangInStrap:   "hang the far eye in the strap at its middle setting: let it out or take it in there",
		DrawThrough: "draw the tail in at the far throat, through the bury and out at its end, with no crossing and no stitch, " +
			"until the set mark shows there; knot the end",
		SlideTail:  "draw the tail out to shorten the line by half as much; push it back to let the line out",
		TieHitches: "lay the anchor mark on the anchor, go round it 1.5 times and tie two half hitches",
	}[k]
}

// MarshalText writes the kind's identifier.
func (k StepKind) MarshalText() ([]byte, error) { return []byte(k.String()), nil }
