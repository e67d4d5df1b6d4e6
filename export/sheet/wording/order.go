package wording

// Step says what to do in a step of work.
type Step struct{ Title, Text string }

// Order says what belongs to the order of work: the steps, and behind each the figures
// that it needs.
type Order struct {
	Title string

	Mark               Step   // diagonals or corners
	Diagonals, Corners string // of a body in one piece, and of panels
	OfPanel            string // panel, measure

	Cut                                                     Step
	ClothPieces, SideAllowance, JoinAllowance, CapAllowance string

	PressStrip, PressFacing               Step
	PressHem                              string // what else there is to do
	EndsIn, LongEdges, MiddleLine, CapHem string

	Join            Step
	Finished        string // rim
	Allowance       string // rim
	Fold, Trim, Row string // rim, panel
	FromFinished    string // distance
	JoinNotch       string // rim, notch

	Openings Step
	FromTo   string // an opening: from, to

	TurnEnds Step
	EachFold string
	Caps     Step
	Eased    string // length of a seam: length, ease, unit

	PinStrip, PinFacing Step
	AtBar               string // notch
	FootEnd             string

	StitchStrip, StitchFacing                            Step
	StitchLine, ChannelDepth, Rows, StitchLength, Thread string

	Cords Step

	Eyes          Step
	EyeLoop, Bury string
	Throat        string // cord

	ThreadCords, ThreadLoops Step
	FromStart                string // mark

	Splice, SpliceLoops       Step
	TipGap, SideBury, LegBury string

	Pull, Read, PullRead Step
	PullOf               string

	Bars     Step
	BarCut   string // end
	TipReach string

	Tack Step
	Leg  string // end

	Hang     Step
	HangLine string // end
	Higher   string // end
	Support  string // end

	Correct                                                              Step
	HookToHook, CordsAtHead, CordsAtMiddle, CordsAtFoot, Apart, BarToBar string
}

func englishOrder() Order {
	o := englishSewing()
	o.Title = "Order of work"
	englishRigging(&o)
	return o
}

// englishSewing says how the cloth is marked, cut and sewn.
func englishSewing() Order {
	return Order{
		Mark: Step{"Mark and square", "Press the cloth, cut its end square to the selvedge and lay it flat without pull. Mark the " +
			"pieces where the lay has them, finished lines and notches too. Then prove the body square: %s"},
		Diagonals: "both diagonals have to read the same.",
		Corners:   "each panel has to read as follows from corner to corner.",
		OfPanel:   "%s, %s",

		Cut: Step{"Cut", "Cut on the outer lines only. Snip notches no deeper than half the allowance, one stroke on the left and " +
			"two on the right. If the edge is melted, test a scrap first, draw the air off and keep the edge soft: " +
			"a hard edge cuts skin and thread."},
		ClothPieces: "pieces of cloth", SideAllowance: "allowance at the body's sides",
		JoinAllowance: "allowance at the joins", CapAllowance: "allowance of the caps",

		PressStrip: Step{"Press", "Press each channel strip: ends in first, then both long edges under, then the whole strip in " +
			"half along the middle line. Try the iron on a scrap."},
		PressFacing: Step{"Press", "Press the facings: ends in, then the inner edge under. Try the iron on a scrap."},
		PressHem:    "Fold the caps' top edges two times for the hem.",
		EndsIn:      "ends in", LongEdges: "long edges under", MiddleLine: "middle line from each long edge", CapHem: "cap hem, each fold",

		Join: Step{"Join the panels", "Lay two panels on each other, right sides together, notch on notch from the head end, and " +
			"stitch on the finished line. Trim the allowance of the outer panel, press both allowances towards that panel, " +
			"fold the other one over the trimmed one and stitch it down along its fold: a flat-felled seam. A join has no ease; " +
			"bar lines meet across it."},
		Finished: "%s, finished", Allowance: "%s, allowance on both panels",
		Fold: "%s, fold the allowance of the %s", Trim: "%s, trim the allowance of the %s", Row: "%s, second row on the %s",
		FromFinished: "%s from the finished line",
		JoinNotch:    "%s, notch %s from the head end",

		Openings: Step{"Work the openings", "Each strip has an opening in its fold for either bar's tip: bind or buttonhole its " +
			"edges before the slit is cut. Measured along the fold from the strip's folded head end:"},
		FromTo: "%s to %s",

		TurnEnds: Step{"Turn the ends", "Turn each end in two times and stitch beside the inner fold; the tunnel takes the drawstring."},
		EachFold: "each fold",
		Caps: Step{"Sew on the caps", "Hem the caps' top edges. Pin each cap to its end of the body, right sides together, notch on " +
			"notch and corner on corner, and stitch on the finished line. The body's edge is the longer one where ease is given: " +
			"spread it between the notches, without a pleat."},
		Eased: "%s, ease %s %s",

		PinStrip: Step{"Pin the channels", "Slip the body's side into the folded strip, raw edge against nothing but the fold's " +
			"inside, finished line on stitch line. Pin at both ends, at the middle, at the quarters and at both bars, then " +
			"between. Distances along the strip's stitch line from its folded head end:"},
		PinFacing: Step{"Pin the channels", "Lay each facing on its side of the body, right sides together, and pin notch on notch, " +
			"then between. Distances along the seam from the head corner:"},
		AtBar: "%s, at the bar", FootEnd: "foot end",

		StitchStrip: Step{"Stitch the channels", "Stitch through all layers along the inner folded edges. Lock each end of the seam " +
			"with a short row backwards; between the notches let the longer edge in evenly."},
		StitchFacing: Step{"Stitch the channels", "Stitch the outer seam but for the openings at the bars, turn the facing over and " +
			"stitch its inner fold down."},
		StitchLine: "stitch line from the folded edge", ChannelDepth: "finished depth of the channel", Rows: "rows",
		StitchLength: "stitch length", Thread: "thread",
	}
}

// englishRigging says how the cords are made and the hammock is hung.
func englishRigging(o *Order) {
	o.Cords = Step{"Cut and mark the cords", "Draw the cord straight with the pull of a hand. Cut, then set every mark from the same " +
		"end, as the cord set shows. Mark right round the cord."}

	o.Eyes = Step{"Splice the eyes of the legs", "Taper the tail from its taper mark to its end, cross it through at the throat, bury " +
		"it to the shoulder and milk the cover smooth. Stitch through the bury so that it cannot creep when slack."}
	o.EyeLoop, o.Bury, o.Throat = "cord in the loop", "bury", "%s, throat from the start"

	o.ThreadCords = Step{"Thread the side cords", "Draw each side cord through its channel until its middle mark stands at the middle " +
		"notch and a tip mark stands in the middle of either opening. Bring both ends of the tip gap out at the openings."}
	o.ThreadLoops = Step{"Thread the side cords", "Lay each loop through its channel, two runs beside each other, join it and turn the " +
		"join away from the openings; the tip marks stand in the middle of the openings."}
	o.FromStart = "%s, from the start"

	o.Splice = Step{"Splice", "Here each leg and its side cord take each other's tail, the tip gap open between them. After each " +
		"splice read the tape as the cord set says, before the next is made."}
	o.SpliceLoops = Step{"Splice", "Splice each loop end to end and seize it at either side of both tip gaps, as the cord set says."}
	o.TipGap, o.SideBury, o.LegBury = "tip gap", "bury of the side cord", "bury of the leg"

	const read = "Before a bury is stitched, draw each side's chain out straight at a light pull. Read every node off a tape and shift " +
		"the splice until it is right. Then stitch every bury through."
	o.Pull = Step{"Pull the cords", "Before a length is marked, tie it between two strong points and pull it, with a weight or a tackle. " +
		"Keep the pull for a minute, let go, and pull again. Nobody stands in line with it. " +
		"Mark it at a light pull, about a hundredth of its strength."}
	o.Read = Step{"Read every node", read}
	o.PullRead = Step{"Pull the chains and read every node", "Pull each side's chain as hard as it will be pulled, the tip gaps on pins. " +
		"Let go, and pull again. Nobody stands in line with it. " + read}
	o.PullOf = "pull"

	o.Bars = Step{"Cut the bars", "Cut both bars square, deburr them and fit the tips. Set each tip through its opening into the tip gap."}
	o.BarCut, o.TipReach = "%s bar, cut length", "each tip holds its cord beyond the bar's end by"

	o.Tack = Step{"Tack the tails' ends", "With the bars in and the legs drawn straight, tack each corner of the tails to its leg, so " +
		"that the cloth cannot ride up. Distance along the leg from the bar's tip:"}
	o.Leg = "%s leg"

	o.Hang = Step{"Hang it low and test", "Hang it so low that nobody can fall far, over soft ground. Load it little by little: first " +
		"with hands, then sitting, then lying, somebody beside it. Look over each splice, seam, tip and hook after every step."}
	o.HangLine, o.Higher, o.Support = "%s hang line above the level", "to check afterwards: %s apex above the other", "%s anchor above ground"

	o.Correct = Step{"Measure and correct", "Lay a dead weight of 20 kg or more in it, its middle on the middle line to 3 mm. Read the " +
		"heights of the four bar tips over the ground or one level. Turn the weight by half a turn on the spot, read again and take " +
		"the means. Write them into the design under [hung]: figures and build sheet then say which eye, line or anchor to set, and by " +
		"how much. Do not take in a leg because its bar stands askew: the bar at the other end moves more. Read again after the third " +
		"night. Write down what a leg was changed by, so that the next one is cut right. With the sleeper in it these are the design's measures:"}
	o.HookToHook, o.CordsAtHead = "apex to apex, level", "cords above the bed's bottom at the head bar"
	o.CordsAtMiddle, o.CordsAtFoot = "at mid-bay", "at the foot bar"
	o.Apart, o.BarToBar = "cords apart at mid-bay", "body, bar to bar along the bottom"
}
