package wording

// englishRope says how the cords are made.
func englishRope() map[Task]Step {
	const (
		clear   = "Let nobody stand in line with the cord."
		again   = "Hold the pull for a minute, let go, and pull again."
		every   = "Read every node off a tape, and shift a splice until its node is right."
		through = "Only then stitch every bury through."
	)
	return map[Task]Step{
		PullCords: {"Pull the cords", []string{
			clear,
			"Tie each length of cord between two strong points before you mark it.",
			"Pull it with a weight or a tackle.",
			again,
			"Mark it under a light pull, about a hundredth of its strength.",
		}, "The second pull makes it no longer."},
		CutCords: {"Cut and mark the cords", []string{
			"Draw the cord straight with the pull of a hand.",
			"Cut it to length.",
			"Set every mark from the same end, right round the cord.",
		}, "Each cord has all the marks that the cord set shows."},
		SpliceEyes: {"Splice the eyes of the legs", []string{
			"Taper the working end from its taper mark to its tip.",
			"Pass it through the cord at the throat.",
			"Bury it up to its shoulder mark.",
			"Milk the cover smooth, away from the throat.",
			"Lock-stitch through the bury, so that it cannot creep when slack.",
		}, "The tape reads as the cord set says, and no strand stands out."},
		ThreadCords: {"Thread the side cords", []string{
			"Draw each side cord through its channel.",
			"Set its middle mark at the middle notch.",
			"Bring both ends of the tip gap out at the openings.",
		}, "A tip mark stands in the middle of each opening."},
		ThreadLoops: {"Thread the side loops", []string{
			"Lay each loop through its channel, two runs beside each other.",
			"Join it, and turn the join away from the openings.",
		}, "The tip marks stand in the middle of the openings."},
		SpliceCorners: {"Splice the corners", []string{
			"Keep the tip gap open between leg and side cord.",
			"Enter each cord into the other at its entry mark.",
			"Bury each working end up to its shoulder mark.",
			"Read the tape as the cord set says before you make the next splice.",
		}, "The tip gap is as long as stated, between two splices."},
		SpliceLoops: {"Splice the loops", []string{
			"Splice each loop end to end.",
			"Seize it on either side of both tip gaps, as the cord set says.",
		}, "The two runs part only at the tip gaps."},
		ReadNodes: {"Read every node", []string{
			"Draw each chain out straight under a light pull, before a bury is stitched.", every, through,
		}, "Every node reads as the cord set says."},
		PullChains: {"Pull the chains and read every node", []string{
			clear, "Set the tip gaps on pins and pull each chain as hard as stated.", again, every, through,
		}, "Every node reads as the cord set says."},
	}
}

// englishFitting says how the bars come into the bed.
func englishFitting() map[Task]Step {
	return map[Task]Step{
		CutBars: {"Cut the bars", []string{
			"Cut both bars square.",
			"Deburr them inside and outside.",
			"Fit the tips.",
			"Set each tip through its opening into the tip gap.",
		}, "Each tip stands between its two splices, and no sharp end touches cord or cloth."},
		TackTails: {"Tack the corners of the tails", []string{
			"Put the bars in and draw the legs straight.",
			"Measure along each leg from the tip of its bar.",
			"Tack the corner of the tail to the leg there.",
		}, "No corner can ride up its leg."},
	}
}
