package fit

// Why is the reason for a proposed value. What [Reason.Part] is stands beside it.
type Why int

// The reasons.
const (
	ShouldersGiven     Why = iota // breadth over both shoulders
	ShouldersEstimated            // from the survey's mean body
	SpanOfStature                 // part of the stature
	RoomPastBar                   // length of cloth beyond head or feet
	SameRoom                      // beyond crown and soles
	BarOnBack                     // part of the shoulder breadth, for one who sleeps on the back
	BarOnSide                     // likewise, on the side
	BarForElbows                  // length that the elbows have to spare between the cords, on the back
	BarForKnees                   // likewise the knees drawn up, on the side
	FootNarrower                  // than the head bar, on the back
	FootAsHead                    // on the side
	DropOnBack                    // part of the shoulder breadth, for one who sleeps on the back
	DropOnSide                    // likewise, on the side
	RoundOfShoulders              // part of the shoulder breadth
	DepthOfSpan                   // part of the span
	LegOfBar                      // part of its own bar
	LongestAtHand                 // bar, shorter than the shoulders ask for
	WhyCount                      // how many there are
)

// Source is where a proposed value comes from.
type Source int

// The sources.
const (
	Given       Source = iota // by the maker
	OwnChoice                 // a proportion
	Survey                    // a proportion of our own, of the mean of a survey's bodies
	SourceCount               // how many there are
)
