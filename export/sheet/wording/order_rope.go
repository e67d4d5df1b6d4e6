package wording

// englishRope says how the cords are made: the trial, the eyes on loose legs, the corners,
// the chain that is set and read, its lock stitching, and only then the way through the
// channel.
func englishRope() map[Task]Step {
	out := map[Task]Step{}
	for _, steps := range []map[Task]Step{englishTrial(), englishEyes(), englishLines(), englishChains(), englishLoops(), englishThreading()} {
		for k, s := range steps {
			out[k] = s
		}
	}
	return out
}

// What several steps say.
const (
	clearOfPull = "Let nobody stand in line with the cord."
	pullTwice   = "Hold the pull for a minute, let go, and pull again."
	dropStrands = "Cut strands out in pairs, evenly, from the taper mark to the tip, until one pair is left."
	fidThroat   = "Push the fid in at the throat mark, along inside the cord, and out where the bury stops."
	makeFast    = "Make each end fast with five turns round a post, then two half hitches: the turns hold it."
	oneLoose    = "One post stands fast; the other is a loose round bar, and the tackle pulls it."
	thickPins   = "Take pins as thick as stated: on a thinner one an eye reads longer."
	drawThrough = "Draw the working end in with it until its tip comes out."
	milkEye     = "Milk the leg smooth, away from the throat, until the tip slips in."
	noRing      = "Put no ring or shackle in: it comes in when the bed is hung."
	turnedEye   = "For the second eye of a line, pull the first one long and pass it through as the free end."
	eyeDone     = "The tape reads as stated; no strand stands out, no bunch is left."
)

func englishTrial() map[Task]Step {
	return map[Task]Step{
		PullTrial: {"Pull the cord of a trial splice", []string{
			"Do this before you cut a cord: every length rests on it.",
			"Cut the two pieces stated; the longer one is the host.",
			oneLoose,
			makeFast,
			clearOfPull,
			pullTwice,
		}, "The second pull makes the host no longer."},
		TrialSplice: {"Make a trial splice", []string{
			"Read first how eyes are spliced: that shows what a fid does.",
			"Under the light pull stated, make two marks on the host, as far apart as stated.",
			"Let the tackle go, and leave the host on its posts.",
			"Taper one end of the other piece, and bury it between the marks with a fid.",
			"Milk the host smooth over it.",
		}, "The buried end lies midway between the marks; no bunch is left."},
		ReadTrial: {"Read the trial splice", []string{
			clearOfPull,
			pullTwice,
			"Measure from mark to mark under the light pull stated.",
			"Write the lines below into the design, even if it reads as expected: in a bed buries add up.",
			"Then print this sheet anew, or have it printed by whoever sent it, before you cut a cord.",
			"Make five trials, if you can: one says nothing of how they scatter.",
		}, "You and the sheet know how much cord a bury takes up."},
		PullCords: {"Pull the cords", []string{
			clearOfPull,
			"Pull the cord of each kind in one length, before you mark or cut it.",
			oneLoose, makeFast,
			"Pull it as hard as stated, with a weight or a tackle.",
			pullTwice,
			"Leave it on the posts: the next step marks it there.",
			"If there is no room for one length, split it: each part takes two ends more, as stated.",
		}, "The second pull makes it no longer."},
		CutCords: {"Cut and mark the cords", []string{
			"Hold the cord between the two posts, its ends made fast as in the trial.",
			"Draw it straight under the light pull stated.",
			"While it is drawn, mark each cord's start, its end and every mark, right round, measured from its start.",
			"Use nothing of what lies in the turns.",
			"Letter each mark on a bit of tape beside it; take the tape off before its mark is buried.",
			"Cut the cords last, at each start and each end.",
		}, "Each cord has all the marks that the cord set shows."},
	}
}

func englishEyes() map[Task]Step {
	const (
		held     = "Measure it on a pin, the leg's free end clamped between two boards short of its entry mark."
		fixedGap = "Set a fixed pin into the foot gap, and a pin that the tackle pulls into the eye."
	)
	crossed := []string{
		dropStrands,
		"Pass the working end through the leg at its throat mark.",
		"Pass the leg's free end through the working end at its shoulder mark.",
		"Draw both up until throat mark and shoulder mark meet.",
		fidThroat, drawThrough, milkEye, held,
	}
	return map[Task]Step{
		SpliceEyes: {"Splice the eyes of the legs", append([]string{
			"Make every eye now, while the other end of its leg is free.",
			noRing,
		}, crossed...), eyeDone},
		HeadEyes: {"Splice the eyes of the head legs", append([]string{
			"No eye passes the channel, so leave the foot legs without one for now.",
			noRing,
		}, crossed...), eyeDone},
		LastEyes: {"Splice the eyes of the foot legs", []string{
			"The leg's other end is not free any more, so turn the eye inside out.",
			dropStrands,
			"Pass the working end through the leg at its throat mark.",
			"Open the working end at its shoulder mark and draw the whole eye through.",
			"Give the eye one turn, so that no twist is left in it.",
			"Draw it up until throat mark and shoulder mark meet.",
			fidThroat, drawThrough, milkEye,
		}, "No strand stands out, and no bunch is left."},
		ReadLastEyes: {"Read and lock-stitch the eyes of the foot legs", []string{
			fixedGap,
			"Read the tape under the light pull stated.",
			"If it reads other than stated, shift the splice, milk it, and read again.",
			"Lock-stitch it like the others once it reads as stated.",
		}, "Both foot legs read as stated, and their eyes are stitched."},
	}
}

func englishLines() map[Task]Step {
	const (
		apexEye = "Make the eye for the apex as on the legs."
		after   = "The tape reads as stated, from the near throat to the far hanging point."
	)
	return map[Task]Step{
		FixedLines: {"Splice the hang lines", []string{
			"These lines have one length and no other: the anchors have to be where they are planned.",
			"Make an eye at both ends of each line, as on the legs.",
			turnedEye, thickPins,
		}, after},
		StrapLines: {"Splice the hang lines", []string{
			"Make an eye at both ends of each line, as on the legs.",
			turnedEye, thickPins,
			"Hang the far eye in its strap, with the strap at its middle setting.",
		}, after},
		SlidingLines: {"Splice the hang lines", []string{
			"The near eye is for the apex; the far eye slides at the anchor.",
			apexEye,
			"Make neither crossing nor stitch in the other eye: it has to slide.",
			"Put its working end in at the throat mark, along inside, and out where the bury stops.",
			"Draw it on until the set mark comes out there: the line has its planned length.",
			"The far shoulder mark then lies at the far throat mark.",
			"Tie a doubled figure-eight knot in the end that stands out, and stitch through the knot.",
			"It carries nothing, so it may be a knot: it keeps the end from slipping in.",
			"Whenever the eye is set anew, milk its bury tight, and mark where it comes out.",
			thickPins,
		}, "The eye slides while the line is slack; under load its mark stays where it is."},
		HitchedLines: {"Splice the hang lines", []string{
			"A knot keeps a third to a half of the cord's strength; the margins count it so.",
			apexEye,
			"Tie the other end when you hang the bed, its anchor mark on the anchor.",
			"Go round the anchor once and a half, then tie two half hitches.",
		}, "Each line has an eye at one end and an anchor mark near the other."},
		RidgeLines: {"Splice the shelter's ridge line", []string{
			"It runs level under the ridge of the shelter, and is as long as that ridge.",
			"Make an eye at both ends, as on the legs.",
			turnedEye, thickPins,
			"Knot a thin line into each eye: it carries the shelter, and nobody.",
			"These lines are tied when the bed hangs.",
		}, "The tape reads as stated, from the near throat to the far hanging point."},
	}
}

func englishChains() map[Task]Step {
	const (
		lay    = "Draw each chain out along a tape under the light pull stated."
		pin    = "Hang each eye on a pin as thick as stated: on a thinner one it reads longer."
		loose  = "Set a loose pin into each gap, as thick as stated: it parts the cords as a tip will."
		nought = "Lay the tape's nought at the middle of the head pin, which is fixed."
	)
	return map[Task]Step{
		FirstCorner: {"Splice the head corners", []string{
			"Cross the cords as drawn only if your trial splices had that crossing; the trial above has none.",
			"Draw a crossing up only until the gap and both marks lie as stated.",
			"Else bury them straight: lock stitching will hold them.",
			"Taper both working ends like those of the eyes.",
			"Draw the side cord's working end into the leg, in at the leg's entry mark.",
			"Stop when its shoulder mark lies at the entry mark.",
			"Draw the leg's working end into the side cord in the same way.",
			"Milk both buries smooth, away from the gap.",
		}, "Each shoulder mark lies at the other cord's entry mark, and the gap is as long as stated."},
		OtherCorner: {"Splice the foot corners", []string{
			"Lay the chain out straight, so that no twist is spliced in.",
			"Splice the foot leg to the other end of the side cord like the first corner.",
			"Bury both working ends straight.",
		}, "There are two chains, and laid on each other they are alike."},
		SetChains: {"Set the chains", []string{
			clearOfPull,
			"Hang its head eye on a strong pin that is fixed.",
			"Set a loose pin into each gap, as thick as stated.",
			"Pull each chain as hard as stated, with a weight or a tackle.",
			pullTwice,
		}, "The second pull makes it no longer."},
		ReadNodes: {"Read every node", []string{
			"Stitch no bury before every node is right.",
			pin, loose, nought, lay,
			"Read every node off the tape.",
			"If one is further off than stated, shift the splice beside it, milk it, and read again.",
		}, "Every node reads as stated, on both sides."},
		CheckNodes: {"Check every node", []string{
			"Stitch no bury before every node is right.",
			pin, loose, nought, lay,
			"If one node is further off than stated and those before it are right, splice anew what lies before it.",
			"If all are off alike, and more after each splice, it is the contraction.",
			"Then write an eye into the design as a trial, in the lines below, and print this sheet anew.",
			"Draw the splices out, and mark the cords anew; cut new ones where they are too short.",
		}, "Every node reads as stated, on both sides."},
		LockBuries: {"Lock-stitch every bury", []string{
			"Take strong polyester thread, or a strand of the cord itself; the design does not name it.",
			"Begin beside the entry, where the working end is still whole.",
			"Sew three stitches along, through both cords.",
			"Turn the cord by a quarter and sew three back.",
			"Knot the two ends of the thread and draw the knot inside: it carries nothing.",
			"Leave the taper without a stitch.",
			"Stitch no bury of a sliding eye: it has to move.",
		}, "No stitched bury gives when you push the cord together beside it."},
	}
}

func englishLoops() map[Task]Step {
	return map[Task]Step{
		ThreadLoops: {"Thread the side loops", []string{
			"Bind a few turns of thread round the cord at its middle mark, to be felt through the cloth.",
			"Draw two strong threads through the channel, from end to end.",
			"With one, draw the cord's end through, from the foot end to the head end.",
			"Stop when the middle mark of the second run lies at the middle notch.",
			"With the other, draw the cord's start in at the foot end, and out at the head opening.",
			"Lead the cord's end in at the head end, and out at that opening.",
			"Draw the loop round for slack to splice with, and lay no turn between the runs.",
		}, "Two runs lie in each channel, and both ends come out at its head opening."},
		JoinLoops: {"Join the loops", []string{
			dropStrands,
			"Draw each end into the other, in at the shoulder mark.",
			"Stop when both shoulder marks meet.",
			"Milk both buries smooth, away from the shoulder marks.",
			"Draw the join on to the middle of its run, away from the openings.",
		}, "The tape reads as the cord set says, and the join lies at the middle notch."},
		SetLoops: {"Set the loops", []string{
			clearOfPull,
			"Hang both bends of each loop on strong pins, and push its cloth together.",
			"Pull each loop as hard as stated, with a weight or a tackle.",
			pullTwice,
		}, "The second pull makes it no longer."},
		ReadLoops: {"Check every node", []string{
			"Stitch no bury before every node is right.",
			"Push the cloth together on the loop, so that its tip marks show.",
			"Draw each loop out along a tape under the light pull stated, its bends on two pins.",
			"Take pins as thick as stated, the middle of the head one, which is fixed, at nought.",
			"Compare every tip and middle mark with its figure, on both runs.",
			"If one is further off than stated, find the mistake now.",
			"If all are off alike, it is the contraction.",
			"Then write the join into the design as a trial, in the lines below, and print this sheet anew.",
			"Open the join, and mark the loop anew, or cut a new one where it is too short.",
		}, "Every node reads as stated, on both sides."},
		SeizeLoops: {"Seize the loops", []string{
			"Draw both runs out at each opening until a tip mark stands in its middle.",
			"Seize the two runs to each other, half a gap to either side of the mark.",
		}, "The two runs part only at the four tip gaps."},
	}
}

func englishThreading() map[Task]Step {
	const (
		ends   = "Draw a strong thread through the channel first, from one end to the other."
		middle = "Set the middle mark at the middle notch."
		felt   = "Bind a few turns of thread round the cord at its middle mark, to be felt through the cloth."
		gaps   = "Draw each tip gap out at its opening."
	)
	return map[Task]Step{
		ThreadChains: {"Thread the chains", []string{
			"Make no splice inside a channel: the chain is whole before it goes in.",
			felt, ends,
			"Tie it to the eye of the head leg and pull the eye long.",
			"Draw the chain through, from the foot end to the head end, eye first.",
			middle, gaps,
		}, "A gap stands in the middle of each opening, and an eye hangs out at each end."},
		ThreadBare: {"Thread the chains", []string{
			"No eye passes this channel, so the foot leg goes first, by its bare end.",
			felt, ends,
			"Tie it to the bare end, and bind the knot smooth.",
			"Draw the chain through, from the head end to the foot end.",
			middle, gaps,
		}, "A gap stands in the middle of each opening, and the foot leg hangs out at the foot end."},
	}
}
