package wording

// FirstNight says what belongs to hanging it and the first night.
type FirstNight struct {
	Title string

	Anchor, Distance, AnchorAbove          string // by the end, but the distance
	HangLine, Line, Pull                   string // end
	Higher                                 string // end
	SetHeights, SetAngles                  string // how the anchors are set, where their place is known and where it is not
	Strap                                  string
	Proof, Bag, Seat, Low, Wait            string
	Minutes                                string
	HookToHook, CordsAtHead, CordsAtMiddle string
	CordsAtFoot, Apart, BarToBar           string
	DownBy, Spread, Moved                  string
	SetLines, AnchorsElse                  string
	Crown                                  [2]string // inside the head bar, past it
	DownTill                               string    // where the place of the anchors is not known

	JoinEyes, JoinLoops string // how an apex is joined
	OwnLines, AnyLines  string // where none are made, and their length is stated or not
	HangFar, TieFar     string // how a line comes to its anchor: by an eye, by a hitch
	OwnFar              string // by either, where it is the maker's own
	TiedLines           string
	TieRidge            string
	Weight, Aside       string
	AtLeast, AtMost     string    // a limit
	Key                 string    // a key and its value as a design has them
	Tip                 [2]string // end, by [bed.Side]
	Under               string
	Begins, Ends, Heavy string

	Creases Creases
}

// Creases says what a crease tells.
type Creases struct {
	Caption string
	Columns [3]string
	Rows    [][3]string
	Source  string
}

func englishFirstNight() FirstNight {
	return FirstNight{
		Title:  "Hang it, and the first night",
		Anchor: "%s anchor above ground", Distance: "from anchor to anchor, horizontal", AnchorAbove: "%s anchor above the other",
		HangLine: "%s hang line above the horizontal", Line: "%s hang line, from apex to anchor", Pull: "%s line pulls with",
		Higher:     "%s apex above the other",
		SetHeights: "Set both anchors at their heights, over the ground below the middle of the bed.",
		SetAngles:  "Set the anchors so that the hang lines rise at the stated angles.",
		Strap:      "strap round a tree, how wide",
		Proof:      "proof load", Bag: "each bag", Seat: "length of the second load, at mid-bay", Low: "lowest point above soft ground",
		Wait: "wait, each time", Minutes: "%d minutes",
		HookToHook: "apex to apex, horizontal", CordsAtHead: "cords above the bed bottom at the head bar",
		CordsAtMiddle: "at mid-bay", CordsAtFoot: "at the foot bar", Apart: "cords apart at mid-bay",
		BarToBar:    "bar to bar, along the bed bottom",
		SetLines:    "Set each line until it reads as stated in the step before, from apex to anchor.",
		AnchorsElse: "If the anchors cannot stand as far apart as stated, change hang.distance and print this sheet anew.",
		Crown:       [2]string{"top of the head, inside the head bar", "top of the head, past the head bar"},
		DownBy:      "both anchors down by", Spread: "length of the first load, from bar to bar", Moved: "a tip may have moved by",
		DownTill:  "until the lowest point hangs at the height of the proof",
		JoinEyes:  "Join the two eyes of an end and its line's eye with the shackle or hook of that apex.",
		JoinLoops: "Join the bends of both loops at an end and its line's eye with that apex's shackle or hook.",
		OwnLines:  "This design makes no hang lines: take your own, as long and as strong as stated.",
		AnyLines:  "This design makes no hang lines: take your own, as strong as stated, to reach your anchors.",
		HangFar:   "Hang the far eye of each line on the hook or shackle of its anchor, and tie no knot in it.",
		TieFar:    "Go round each anchor once and a half with its line, the anchor mark on it, and tie two half hitches.",
		OwnFar:    "Hang your lines by spliced eyes; one that is tied has to be as strong as stated for that.",
		TiedLines: "hang lines, where one is tied",
		TieRidge:  "Tie the ridge line's thin lines above the anchors: once and a half round, two half hitches.",
		Weight:    "dead weight", Aside: "its middle beside the centre line",
		AtLeast: "%s or more", AtMost: "%s or less",
		Key: "%s = %q", Tip: [2]string{"tip of the %s bar, left of one who lies on the back", "tip of the %s bar, right"},
		Under: "what lay in it", Begins: "where the weight begins, from the head bar", Ends: "where it ends", Heavy: "what it weighs",
		Creases: englishCreases(),
	}
}

// englishCreases has what follows from how the bed carries; no source.
func englishCreases() Creases {
	return Creases{
		Caption: "What a crease tells, somebody lying still in it",
		Columns: [3]string{"what you see", "what it tells", "what to do"},
		Rows: [][3]string{
			{"short folds across a channel, along one side", "the cloth is bunched up on its cord",
				"draw it out along the cord, middle notch to middle mark"},
			{"a slanting crease from one bar's tip into the bay", "one tip stands higher than the other", "measure the four tips"},
			{"a crease across a tail, from side to side", "the tail is slack: its corners have come in along the legs",
				"move both tacks outwards, to their distance"},
			{"a crease from a corner of a tail to the bar", "that corner is drawn out further than the other",
				"move its tack inwards, to its distance"},
			{"puckers along a seam", "ease was not spread from notch to notch", "unpick between those notches and spread it"},
			{"a long crease under the body, head to foot", "the sleeper lies beside the centre line",
				"lie in the middle; look at the tips only then"},
		},
		Source: "From the way the bed carries; no source.",
	}
}

// englishHanging says how the bed is hung, tried and set right.
func englishHanging() map[Task]Step {
	return map[Task]Step{
		SetAnchors: {"Set the anchors", []string{
			"Read the cautions at the top of this sheet.",
			"Use no brick pillar and no other masonry that stands by itself.",
			"Turn an eyebolt into the line of its pull.",
			"Use a wide strap round a tree, with a shackle in it: the eye hangs on the shackle.",
			"Heights and distances count to the middle of what an eye lies on.",
		}, "The hang lines will rise at the stated angles, and every hook, strap and anchor has the stated strength."},
		HangEmpty: {"Hang it empty", []string{
			"Move both anchors down alike, as far as stated, over soft ground.",
			"Slide a strap down its tree; on a wall or post use a second hook lower down.",
			"Turn the bars until no cord is twisted.",
			"Look at every tip, splice and seam.",
		}, "Each bar sits with both tips in their gaps, and no cord is twisted."},
		ProofLoad: {"Prove it before anybody lies in it", []string{
			"Let nobody be beneath it, or in line with its lines.",
			"See that its lowest point hangs no higher than stated; else move both anchors down further.",
			"Spread a blanket in it, and read the heights of the four tips.",
			"Spread the proof load from bar to bar, in smooth bags, and wait.",
			"Move the whole load together at mid-bay, over the length stated, and wait again.",
			"Unload it, read the four tips again, and look at every splice, seam, tip and anchor.",
		}, "Nothing has slipped, torn or bent. Else mend it, and prove again."},
		LieIn: {"Lie in it", []string{
			"Hang it at its height again, with somebody beside you.",
			"Press on it with both hands at mid-bay.",
			"Sit down at mid-bay, then lie down.",
			"Let the other one measure the distances below.",
			"If one is further off than stated, change nothing yet: the four tips tell why.",
		}, "You lie level, and the distances read as stated, as near as stated."},
		MeasureTips: {"Measure the four bar tips", []string{
			"Lay a dead weight on the centre line at mid-bay, and mark where it lies.",
			"Read the heights of the four bar tips over the ground, or over one level line.",
			"Turn the weight by half a turn on the spot, and read them again.",
			"Take the mean of both readings of each tip.",
		}, "You have four heights, over one level."},
		WriteHeights: {"Give the heights back to the program", []string{
			"Write a line [hung] into the design file, and the lines below under it.",
			"Fill in what you measured.",
			"Print this sheet anew, or have it printed by whoever sent it to you.",
		}, "The new sheet says here which eye, line or anchor to set, and by how much."},
		SetRight: {"Set it right", []string{
			"Set what the new sheet says, and nothing else.",
			"Do not take in a leg because its own bar stands askew: the other bar moves more.",
			"Prove it again after each change.",
		}, "The tips read as the sheet says they will."},
		ReadAgain: {"Read it again after the third night", []string{
			"Measure the four tips as before, since cords and splices have settled.",
			"Write the new heights under [hung].",
			"If a tip has moved further than stated, look for a splice that has slipped.",
			"Note by how much each leg was changed, so that the next bed is cut right.",
		}, "No tip has moved further than stated against the others."},
	}
}
