package cord

// Term is one part of a cut length, mm; what shortens the cord is negative.
type Term struct {
	Kind   TermKind `json:"name"`
	Length float64  `json:"length"`
}

// TermKind is what a part of a cut length is for.
type TermKind int

// The kinds of terms, by the cord that has them first.
const (
	ArcTipToTip    TermKind = iota // side cord
	BuriesInLegs                   // its two tails in the legs
	TipGapHalves                   // half a tip gap at either end
	OverLegsBuries                 // contraction over what the legs bury in it
	GapsSpread                     // of the gaps round the tips
	LessStretch                    // under the sleeper
	TipToHook                      // leg
	BuryInSide                     // its tail in the side cord
	TipGapHalf                     // half the tip gap
	OverSideBury                   // contraction over what the side cord buries in it
	OverEyeOwnBury                 // and over its eye's own bury
	EyeLoop                        // cord in the eye's loop
	EyeCrossing                    // loss in its crossing
	EyeOwnBury                     // its own bury
	LessEyeReach                   // from its throat to the hook
	GapSpread                      // of the gap round the tip
	HookToHook                     // hang line or ridge line
	OverEyesBuries                 // contraction over both eyes' buries
	EyesLoops                      // cord in both loops
	EyesCrossings                  // loss in both crossings
	EyesBuries                     // both eyes' own buries
	LessEyesReach                  // from both throats to the hooks
	NearLoop                       // hang line with a sliding eye: its fixed one
	NearCrossing                   // loss in the fixed eye's crossing
	SlidingLoop                    // cord in the sliding eye's loop
	SlidingTail                    // what stands out of its bury
	LetOut                         // hitched hang line: to let it out
	OverEyeBury                    // contraction over its eye's bury
	OnlyCrossing                   // loss in its eye's crossing
	RoundAnchor                    // the turns round the anchor
	HalfHitches                    // two half hitches and their end
	LessReach                      // from its eye's throat to its hook
	RunsTipToTip                   // side loop
	RunsToHead                     // both runs from tip to head hook
	RunsToFoot                     // and to the foot hook
	RoundHooks                     // round both hooks
	BuriesAtJoin                   // both tails at the join
	OverBuries                     // contraction over them
	RunsSpread                     // of both runs round both tips
	LessSet                        // under the first load, where it is cut off
	LessStrap                      // of a hang line in a strap
	TermKindCount                  // how many kinds there are
)

// String returns the kind's identifier, as documents for other programs have it.
func (k TermKind) String() string {
	return [TermKindCount]string{
		ArcTipToTip:    "arc from tip to tip",
		BuriesInLegs:   "two buries in the legs",
		TipGapHalves:   "two halves of a tip gap",
		OverLegsBuries: "contraction over the legs' two buries",
		GapsSpread:     "spread of the gaps round the tips",
		LessStretch:    "less stretch under the sleeper",
		TipToHook:      "bar tip to hook",
		BuryInSide:     "bury in the side cord",
		TipGapHalf:     "half the tip gap",
		OverSideBury:   "contraction over the side cord's bury",
		OverEyeOwnBury: "contraction over the eye's own bury",
		EyeLoop:        "loop of the eye",
		EyeCrossing:    "loss in the eye's crossing",
		EyeOwnBury:     "the eye's own bury",
		LessEyeReach:   "less the eye's reach to the hook",
		GapSpread:      "spread of the gap round the tip",
		HookToHook:     "hook to hook",
		OverEyesBuries: "contraction over the eyes' two buries",
		EyesLoops:      "loops of two eyes",
		EyesCrossings:  "loss in two crossings",
		EyesBuries:     "the eyes' two buries",
		LessEyesReach:  "less the reach of two eyes to their hooks",
		NearLoop:       "loop of the near eye",
		NearCrossing:   "loss in the near eye's crossing",
		SlidingLoop:    "loop of the sliding eye",
		SlidingTail:    "tail of the sliding eye",
		LetOut:         "to let it out",
		OverEyeBury:    "contraction over the eye's bury",
		OnlyCrossing:   "loss in its crossing",
		RoundAnchor:    "round the anchor",
		HalfHitches:    "two half hitches and their end",
		LessReach:      "less the eye's reach to its hook",
		RunsTipToTip:   "two runs from tip to tip",
		RunsToHead:     "two runs from tip to head hook",
		RunsToFoot:     "two runs from tip to foot hook",
		RoundHooks:     "round both hooks",
		BuriesAtJoin:   "two buries at the join",
		OverBuries:     "contraction over the two buries",
		RunsSpread:     "spread of both runs round both tips",
		LessStrap:      "less the strap",
		LessSet:        "less what the first load stretches for good",
	}[k]
}

// MarshalText writes the kind's identifier.
func (k TermKind) MarshalText() ([]byte, error) { return []byte(k.String()), nil }

// sum returns the length of terms together, mm.
func sum(terms []Term) float64 {
	s := 0.0
	for _, t := range terms {
		s += t.Length
	}
	return s
}

// compact leaves out terms that are nil.
func compact(terms []Term) []Term {
	out := terms[:0]
	for _, t := range terms {
		if t.Length != 0 {
			out = append(out, t)
		}
	}
	return out
}
