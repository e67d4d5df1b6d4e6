package accuracy

import "errors"

// SourceKind is a cause of error of a length.
type SourceKind int

// The kinds.
const (
	TipsSeized   SourceKind = iota // place of a tip between its seizings
	OverJoin                       // contraction over a bury at the join of a loop
	TipGaps                        // place of a tip gap on a side cord
	OverLegBury                    // contraction over a leg's bury
	TipGap                         // place of a leg's tip gap
	EyeThroat                      // place of its eye's throat
	EyeLoop                        // loop of its eye
	OverSideBury                   // contraction over the side cord's bury
	OverEyeBury                    // contraction over its eye's own bury
	NodesRead                      // reading of its nodes under load
	sourceKinds
)

// String returns the kind's identifier, as documents for other programs have it.
func (k SourceKind) String() string {
	return [sourceKinds]string{
		"place of a tip between its seizings", "contraction over a bury at the join", "place of a tip gap",
		"contraction over a leg's bury", "place of the tip gap", "place of the eye's throat", "loop of the eye",
		"contraction over the side cord's bury", "contraction over the eye's own bury",
		"reading of a node under load",
	}[k]
}

// MarshalText writes the kind's identifier.
func (k SourceKind) MarshalText() ([]byte, error) { return []byte(k.String()), nil }

// MeasureKind is a way in which the bed may be off level.
type MeasureKind int

// The kinds.
const (
	Along            MeasureKind = iota // head bar against foot bar
	AcrossHead                          // at the head bar
	AcrossFoot                          // at the foot bar
	Sag                                 // at mid-bay
	MeasureKindCount                    // how many kinds there are
)

// String returns the kind's identifier, as documents for other programs have it.
func (k MeasureKind) String() string {
	return [MeasureKindCount]string{"along the bed, head bar against foot bar", "across at the head bar",
		"across at the foot bar", "sag at mid-bay"}[k]
}

// MarshalText writes the kind's identifier.
func (k MeasureKind) MarshalText() ([]byte, error) { return []byte(k.String()), nil }

// Verdict says how a measure stands to what is allowed.
type Verdict int

// The verdicts.
const (
	Within     Verdict = iota // even at worst
	LikelyMet                 // the root of squares is
	LikelyMore                // than is accepted
)

// Note is a remark on what the stack takes for granted.
type Note int

// The remarks.
const (
	SetIsOne       Note = iota // first-load set is the same part of every cord
	SetCutOff                  // it is cut off, and half of it may come or not
	SetPulled                  // it is pulled out first, and a fifth is still to come
	LinesTrue                  // hang lines are adjusted on the spot
	SleeperCentred             // the sleeper keeps to the middle of the cloth
	Likeliest                  // adjustments are the likeliest, and find no fault of a part
	LevelAlready               // the tips are level within what can be read
	BySleeper                  // the roll of both bars was not judged
	AnyLines                   // hang lines are not known
	ReadAgain                  // after the third night
	Lively                     // heights say where the load lies
	Restless                   // the bed is not found at rest under the load
)

// WhyNot returns why there is no advice, by the error of [BedOf] or [Bed.Advise].
func WhyNot(err error) Note {
	if errors.Is(err, ErrUnsteady) {
		return Lively
	}
	return Restless
}
