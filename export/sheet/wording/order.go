package wording

import "slingloft/outline/piece"

// Order says what belongs to the order of work: the steps, and behind each the figures
// that it needs.
type Order struct {
	Cloth, Sewing, Rope, Fitting string // titles of its sections
	Steps                        map[Task]Step

	Diagonals, Corners                string // how a body in one piece is proved, and panels
	CapsToo                           string
	OfPanel                           string // panel, measure
	BarToBar                          string
	CentreUp                          string // where the centre line lies on the roll
	BarFromCut                        string // end
	CapCentre                         string // cap
	CapSeam, CapTop                   string // cap
	JoinAside                         string // rim
	JoinedLines                       string // what else holds of panels
	MarkStrips, MarkFacings, MarkCaps string // what else is marked by hand
	NameStrips                        string
	OffCentre, OffLine                string // what is drawn for the side templates; how far off
	AlongRoll, AcrossRoll             string // piece
	Divided                           string // templates
	CheckBars, BarsRead               string
	Measured, SheetAnew               [2]string             // commands, in mm and in inches: the design's file, followed by a space, or nothing
	Paged                             [2]string             // likewise, the command for pages to print at home
	ForPages                          string                // what that is for
	CutAnew                           string                // what the first is for
	PrintAnew                         string                // what the other is for
	Layer                             string                // layer, colour
	Colours                           map[piece.Work]string // of our own scheme
	Jobs                              map[piece.Work]string // what a laser does on each layer
	KeyedOf                           string                // value, key, its table
	FarOffBy                          string                // how far anything bought may be off
	CordThick, HookThick              string                // CordThick: cord
	TipPin, TipToCord, TubeThick      string
	ClothWide                         string
	RollWide                          string // cloth of another roll
	FlawAlong, FlawUp                 string // number
	MindFlaws                         string
	ToSquare                          string
	NearEnough                        string
	NotchIn                           string
	SnipMiddle, SnipJoins, SnipDeep   string
	HollowHem, FinishFacings          string
	TestStrip, TestHang               string // how a test seam is loaded
	TestWide, TestHolds               string

	ClothPieces, SideAllowance, JoinAllowance, CapAllowance string
	EndsIn, LongEdges, MiddleLine, Folded, CapHem           string

	Finished        string // rim
	Allowance       string // rim
	Fold, Trim, Row string // rim, panel
	FromFinished    string // distance
	JoinNotch       string // rim, notch

	FromTo   string // an opening: from, to
	EachFold string
	Eased    string // the seam of a cap: the length of the body's edge, of the cap's

	AtBar   string // notch
	FootEnd string

	StitchLine, ChannelDepth, Rows, RowsApart, StitchLength, Thread string
	Needle, AnyNeedle, AnyThread                                    string
	ClothMass, ThreadBreaks                                         string
	EdgeLine                                                        string // how far folded edges lie from the raw edge
	CapTopHem                                                       string
	PastRow, CornerLeft                                             string
	WideAt                                                          string // end
	FoldShort                                                       string // end

	EyeLoop, Bury string
	OfDiameters   string // length, so many cord diameters
	FidSize       string
	FidOf         string // thickness, length
	PinInEye      string
	PinInGap      string
	PostThick     string
	Throat        string // cord
	FromStart     string // mark

	TipGap, SideBury, LegBury string
	PullOf, LightPull         string
	Weighs                    string // force, mass
	CordOf                    string // cord, what it is cut from
	Apart, Buried, Expected   string // of a trial
	TrialOf, Tapered          string
	EachSplit, BetweenPosts   string
	Host, Own                 string
	OneTrial, EachTrial       string
	Another                   string
	NoTrialOfLines            string
	Of                        string // what, cord
	Within, FarOff            string // length
	Trial                     string // what it is written under
	TrialBefore, TrialBuried  string
	TrialOn                   string // cord
	PullsEye, PullsEnd        string // where a chain is pulled: at its other eye, or where it has none yet
	TrialAfter                string
	StitchEach                string
	JoinOut, JoinBack         string // of a loop's join, for its stitches
	Gauged                    string // how a cord's other end is marked
	NodeOf                    string // cord, place
	ToHook, FromTip           string // place
	Opening                   string

	BarCut        string // end
	CordToCord    string // end
	OverShoulders string // end
	TipReach      string
	TipFace       string
	PinLong       string
	PlugThick     string
	NoHole        string
	Hole          string // diameter
	Leg           string // end
	RidgeLong     string
	RidgeOver     string
	RidgeTies     string
}

func englishOrder() Order {
	o := Order{
		Cloth: "Mark and cut the cloth", Sewing: "Press and sew", Rope: "Make the cords", Fitting: "Fit the bars",
		Steps:     map[Task]Step{},
		Diagonals: "Both diagonals have to read the same.",
		Corners:   "Measure each panel from corner to corner.",
		OfPanel:   "%s, %s",
		CapsToo:   "Measure the caps in the same way, the seam along its net line.",
		Measured: [2]string{
			"slingloft cut %s--as pdf --paper a4 --measured 99.6x100.2",
			"slingloft cut %s--as pdf --paper letter --measured 3.98x4.01",
		},
		SheetAnew: [2]string{"slingloft sheet %s--out new-sheet.pdf", "slingloft sheet %s--out new-sheet.pdf --paper letter"},
		Paged:     [2]string{"slingloft cut %s--as pdf --paper a4", "slingloft cut %s--as pdf --paper letter"},
		ForPages:  "files for pages, type",
		CutAnew:   "for plots that are not true, type", PrintAnew: "to print this sheet anew, type",
		Layer: "%s, %s", Colours: englishColours(), Jobs: englishJobs(),
		KeyedOf: "%s; %s under [%s]", FarOffBy: "may be off by", CordThick: "%s, thick", HookThick: "what an eye lies on, thick",
		TipPin: "pin of a tip, thick", TipToCord: "from the bar's end to the middle of the cord on its tip", TubeThick: "bar, outer diameter",
		ClothWide: "cloth, between the selvedges", RollWide: "%s, between the selvedges",
		FlawAlong: "flaw %d, from the cut end", FlawUp: "flaw %d, from the lower selvedge",
		MindFlaws: "Mark the flaws stated: the lay keeps clear of them.",
		ToSquare:  "cloth to square the end with", NearEnough: "near enough, either way",
		NotchIn:  "lines at notches, inwards",
		BarToBar: "from bar line to bar line, along the centre line",

		CentreUp:    "centre line, from the lower selvedge",
		BarFromCut:  "%s bar line, from the cut end of the roll",
		CapCentre:   "%s, its centre line from the cut end",
		CapSeam:     "%s, middle of its seam, from the lower selvedge",
		CapTop:      "%s, middle of its top edge, from the lower selvedge",
		JoinAside:   "net line of the %s, from the centre line",
		JoinedLines: "On a panel without the centre line, measure from the net line of its join instead.",

		MarkStrips:  "Draw the channel strips with a rule, where the lay has them; they have no template.",
		MarkFacings: "Lay the facing template along the selvedge and draw round it, then turn it over for the other.",
		NameStrips:  "Letter each strip with its name, and which end is its head end.",
		MarkCaps:    "Draw a centre line square to the grain for each cap, and lay its template against it.",

		OffCentre: "Draw a line on either side of the centre line, parallel to it, for the side curves.",
		OffLine:   "lines for the side curves, from the centre line",
		AlongRoll: "%s, from the cut end", AcrossRoll: "%s, from the lower selvedge",
		Divided:   "Push the parts of a divided template together.",
		CheckBars: "check bars of every sheet", BarsRead: "100 mm and 4 in",
		SnipMiddle: "In the middle of an end, snip once at the head and twice at the foot.",
		SnipJoins:  "On the left join snip once, but the first twice; on the right join the other way about.",
		SnipDeep:   "notches, no deeper than",
		HollowHem:  "The edge is hollow: stretch the folds a little as you press them.",

		FinishFacings: "Do the same with the outer edges of the facings.",
		TestStrip:     "Cut a strip across the seam, as wide as stated, and clamp each end between two boards.",
		TestHang:      "Hang it up by one pair, and the weight stated on the other, close over the floor.",
		TestWide:      "width of the tested strip", TestHolds: "has to hold",

		ClothPieces: "pieces of cloth", SideAllowance: "allowance at the body's sides",
		JoinAllowance: "allowance at the joins", CapAllowance: "allowance of the caps",
		EndsIn: "ends in", LongEdges: "long edges under", MiddleLine: "middle line from each long edge",
		Folded: "folded strip, from its edges to its fold", CapHem: "cap hem, each fold",

		Finished: "%s, finished", Allowance: "%s, allowance on both panels",
		Fold: "%s, fold the allowance of the %s", Trim: "%s, trim the allowance of the %s", Row: "%s, second row on the %s",
		FromFinished: "%s from the net line",
		JoinNotch:    "%s, notch %s from the head end",

		FromTo: "%s to %s", EachFold: "each fold",
		Eased: "body %s, cap %s",
		AtBar: "%s, at the bar", FootEnd: "foot end",

		StitchLine: "stitch line from the folded edge", ChannelDepth: "finished depth of the channel", Rows: "rows",
		RowsApart: "from row to row", StitchLength: "stitch length", Thread: "thread",
		Needle: "needle", AnyNeedle: "not named: size 70 for cloth up to %s, 80 up to %s, 90 above that; common practice, no source",
		ClothMass: "cloth", ThreadBreaks: "thread, breaks at",
		AnyThread: "not named", PastRow: "raw edges reach past the innermost row by", CornerLeft: "left past the net line",
		EdgeLine: "chalk line, from the raw edge", CapTopHem: "top hem of the caps, both folds",
		WideAt:    "width at the %s bar line",
		FoldShort: "fold too short for the turn at the %s bar by",

		EyeLoop: "cord in the loop", Bury: "bury", OfDiameters: "%s, %s cord diameters",
		FidSize: "fid", FidOf: "hollow, %s thick or less, some %s long; or a loop of thin stiff wire (common practice, no source)",
		PinInEye: "pin in each eye, thick", PinInGap: "pin in each gap, thick", PostThick: "posts, thick",
		Throat: "%s, throat from the start", FromStart: "%s, from the start",
		TipGap: "tip gap", SideBury: "bury of the side cord", LegBury: "bury of the leg",
		PullOf: "pull", LightPull: "light pull",
		Weighs: "%s, as the weight of %s", CordOf: "%s, of %s",
		Apart: "marks apart", Buried: "bury between them", Expected: "expected afterwards",
		TrialOf: "cord", Tapered: "of it, taper", EachSplit: "if it is split, more for each part: %s", BetweenPosts: "in one length: %s",
		Another: "each further trial takes, of cord", Host: "host, made fast at both ends",
		Own: "piece to bury", Of: "%s: %s",
		OneTrial:       "One trial is enough: all buries that have to be right are in this one cord.",
		EachTrial:      "Make one of each cord stated: each takes up its own length, and the sheet counts with their mean.",
		NoTrialOfLines: "Hang lines that can be set need no trial: what they are off is set on the spot.",
		Within:         "%s, ± %s", FarOff: "may be off by",
		Trial: "to be written into the design", TrialOn: "if all are off alike, read on a %s",
		PullsEye:    "The tackle pulls the pin of the foot eye, in line with the tape.",
		PullsEnd:    "The tackle pulls the foot leg's free end, clamped between two boards, in line with the tape.",
		TrialBefore: "marks apart, before", TrialBuried: "length buried", TrialAfter: "marks apart, afterwards",
		StitchEach: "each stitch, about",
		JoinOut:    "Draw the join of the loop out at an opening.",
		JoinBack:   "Draw the join back to the middle notch.",
		Gauged:     "The gauges for a cord's other end begin at that end.",
		NodeOf:     "%s, %s", ToHook: "from the %s to the hanging point", FromTip: "from the foot tip to the %s", Opening: "opening",
		BarCut: "%s bar, cut length", TipReach: "from the bar's end to the middle of the cord",
		CordToCord:    "%s bar, from middle to middle of its cords",
		OverShoulders: "%s bar, over both shoulders",
		TipFace:       "from the bar's end to the plug's shoulder", PinLong: "pin, past the shoulder", PlugThick: "plug, to fit a bore of",
		NoHole:    "Drill no hole across the bar to hold a plug: the design counts on none.",
		Hole:      "The design counts on a hole of %s across the bar, and on no wider one.",
		RidgeLong: "ridge line, from eye to eye as it hangs", RidgeOver: "ridge line above ground",
		RidgeTies: "from each eye to its anchor",
		Leg:       "%s leg",
	}
	for _, steps := range []map[Task]Step{
		englishCutting(), englishSewing(), englishRope(), englishFitting(), englishSackSteps(), englishTarpSteps(), englishLiningSteps(),
		englishCoverSteps(),
		englishHanging(),
	} {
		for k, s := range steps {
			o.Steps[k] = s
		}
	}
	return o
}

// What several steps say.
const (
	coolIron = "Try the iron on a scrap, beginning with its coolest setting."
	endsIn   = "Fold both ends in, towards the letters, by the width stated, and press them."
)

// englishCutting says how the cloth is marked and cut.
func englishCutting() map[Task]Step {
	return map[Task]Step{
		CompareBought: {"Compare what you bought with the design", []string{
			"Measure each thing named below before you cut anything.",
			"Wind cord ten times round a pencil, turn beside turn, and divide the width by ten.",
			"Of a ring, hook or shackle measure the part that an eye will lie on.",
			"A tip is a plug for the bar's end, with a round pin standing out in line with the bar.",
			"If your tips are made otherwise, measure what will stand between the two cords of a corner.",
			"If a figure is further off than stated, write yours into the design, under the key beside it.",
			"Then print this sheet anew, since other lengths follow from it.",
			"If you have this sheet alone, ask whoever sent it to you to do so.",
		}, "Every figure is yours, and this sheet was printed with it."},
		MakeBoards: {"Make the templates and gauges", []string{
			"Cut them from the sheet files, or glue full-size plots onto card and cut those.",
			"On a laser give each layer the job stated, in that order.",
			"To print at home take the files for pages, print them at 100 % without fitting, and join them.",
			"Measure the check bars of every sheet, or of the joined pages, along and across, before you use it.",
			"If one reads otherwise, have the files written anew with the command stated.",
			"Put your own readings into it: first along the sheet, then across it.",
			"If you have this sheet alone, ask whoever sent it for files or plots, and send both readings.",
			"By hand, cut along the middle of every outline.",
			"Hold each straight edge against a rule.",
			"Sand every edge smooth.",
		}, "Every check bar reads true; no light shows under a straight edge."},
		LayOut: {"Choose the right side and lay the cloth out", []string{
			"Choose the right side: it will lie outside, and no letter stands on it.",
			"Coated cloth: let its coated face lie inside, which is common practice and has no source.",
			"Mark the inner face with a chalk cross at both ends: chalk has to show, and to wash out.",
			coolIron,
			"Press the cloth, and lay it flat without pull, the face with the crosses up.",
			"Let the roll run to your right: the selvedge near you is the lower one.",
			"Square the left end to the selvedge, and cut it: that is the cut end.",
			"Measure along from the cut end, and across from the inner edge of the lower selvedge.",
			"If you find a flaw that is not stated, have the files made anew with it under [[cloth.flaw]].",
		}, "The end is square, and every letter will stand on the face with the crosses."},
		MarkPlotted: {"Mark the cloth from plots, or with a cutter", []string{
			"Skip this step if you mark with the templates.",
			"On a plot the thin outer rectangle is the cloth, with its cut end at the left.",
			"Lay that left side on the cut end, and its lower side on the lower selvedge.",
			"Have a cutter cut outlines alone: slits are cut when their edges are bound.",
			"Copy cut, net, bar, centre, fold and hem lines, notches, openings and lettering.",
			"Use a tracing wheel and chalk paper.",
			"Add no allowance: the plotted cut line has it already.",
			"Where a cutter drew no net line, set it in from the edge by the allowance stated.",
		}, "Each piece has its name, its cut line, its net line and its notches."},
		DrawLines: {"Draw the lines to lay the templates by", []string{
			"Skip this step and the next if the cloth is plotted or cut by a machine.",
			"Draw the centre line of the body along the grain, where the lay has the body.",
			"Mark on it where the two bar lines cross it.",
			"Draw the mid-bay line square to it, midway between these marks.",
		}, "The centre line runs parallel to the selvedge, and the marks are as far apart as stated."},
		MarkByHand: {"Mark the cloth with the templates", []string{
			"Lay each template as its picture shows, tails first, and draw along its curve.",
			"Draw the bar lines along the tail templates.",
			"Turn each half template over, and draw the other half.",
			"Prick the notches through inside the allowance, and letter their names.",
			"Set every allowance off outside the net line with the allowance gauge: that is the cut line.",
			"At a corner let both cut lines run on until they meet.",
		}, "Each piece has its net line, cut line and name, and all but the strips have notches."},
		ProveSquare: {"Check body and caps before you cut", []string{
			"Measure from corner to corner of the net line, with the cloth flat and slack.",
			"Head left is the corner at the head end, on the side of the notches L.",
			"If a distance is further off than stated, find the line that is wrong, and mark it again.",
		}, "Each distance reads as stated, as near as stated."},
		CutCloth: {"Cut the cloth", []string{
			"If you melt the edges, try a scrap first, with fume extraction.",
			"Cut on the outer lines only.",
			"Snip each notch no deeper than stated: H3 and F3 and the left once, H1, F1 and the right twice.",
			"Draw each notch from its net line inwards, as long as stated, on both faces.",
			"The snips vanish under folds and zigzag; where chalk does not last, set a thread tack.",
		}, "Every piece is there, and no melted edge is hard or sharp."},
	}
}

// englishSewing says how the cloth is sewn.
func englishSewing() map[Task]Step {
	return map[Task]Step{
		TellFaces: {"Tell the two faces of the cloth apart", []string{
			"The lettered face of body and caps lies inside the bed.",
			"The lettered face of strips and facings lies inside the channel.",
			"The other face is the right side: right sides together means letters outside.",
			"If a piece has no letters, mark the face that lay up when it was cut.",
		}, "Every piece shows its letters on one face alone."},
		TestSeam: {"Sew a test seam", []string{
			"Do this before you sew the bed.",
			"Thread sizes count by tex or by ticket, and ticket is 3000 over tex: go by the strength.",
			"Lay two scraps of the same cloth on each other and sew them with needle, thread and rows stated.",
			"If the seam puckers, loosen both threads and try again.",
			"If stitches are skipped, or the thread frays, take a thicker needle; if it cuts threads, a thinner one.",
			"Then pull the seam apart and see what gives: cloth, thread, or the cloth's threads at the seam.",
			"If it gives too soon, change thread or stitch and print the sheet again.",
		}, "Both threads lock inside the cloth, and the seam lies flat."},
		FinishEdges: {"Finish the raw edges of the sides", []string{
			"Past the innermost row a raw edge snags what is drawn through the channel.",
			"Sew a zigzag stitch over both side edges of the body, or bind them.",
		}, "No thread can be drawn out of the edge."},
		PressStrips: {"Press the channel strips", []string{
			coolIron, endsIn,
			"Fold one raw long edge over the gauge's step for the channel's fold, and press the fold.",
			"Open it out: this crease is the middle line of the strip.",
			"Now fold both long edges under, towards the letters, over the step for the turn-under.",
			"Press them.",
			"Fold the strip in half along its crease, letters inside, and press it again.",
		}, "The two folded edges lie on each other, and no raw edge shows."},
		PressFacings: {"Press the facings", []string{
			coolIron, endsIn,
			"Fold the inner edge under, towards the letters, and press it over the gauge.",
		}, "Only the outer edge of each facing is still raw."},
		PressHems: {"Hem the caps", []string{
			coolIron,
			"Fold the top edge of each cap under twice, towards the letters: a double-fold hem.",
			"Trim what stands out past the cut line of the cap's sides when it is folded.",
			"Press it, and stitch it down beside its inner fold.",
		}, "The hem lies flat, and no raw edge shows."},
		JoinPanels: {"Join the panels", []string{
			"Lay two panels right sides together, matching notches from the head end.",
			"Stitch on the net line.",
			"Trim the allowance of the outer panel to its trim line.",
			"Press both allowances towards that panel.",
			"Fold the wide allowance over the trimmed one.",
			"Stitch it down along its fold: a flat-felled seam.",
		}, "Bar lines meet across the join, no raw edge shows, and neither panel is gathered."},
		WorkOpenings: {"Work the openings", []string{
			"Open the strip out flat.",
			"Mark each opening on the fold of the strip, measured from its folded head end.",
			"Work a buttonhole round it, or close zigzag along both its edges with a bar at each end.",
			"Only then cut the slit between.",
		}, "Each strip has two openings, sewn all round, one for each bar."},
		TurnEnds: {"Hem the ends of the body", []string{
			"Fold each end under twice: a double-fold hem.",
			"Stitch beside the inner fold, and leave the ends of the tunnel open.",
		}, "The drawstring runs freely through the tunnel."},
		SewCaps: {"Sew on the caps", []string{
			"Pin each cap to its end of the body, right sides together, matching notches and corners.",
			"Spread the ease evenly from notch to notch, without a pleat.",
			"Stitch on the net line with a straight stitch.",
			"Backstitch at both ends of the seam.",
			"Sew a zigzag stitch over both raw edges together, or bind them.",
			"Press both allowances towards the cap.",
			"At both corners cut off what of them stands out past the side's net line.",
			"Leave the width stated there, so that nothing reaches into the channel.",
		}, "Corners and notches meet; no pleat, and no raw edge left open."},
		PinStrips: {"Pin the channels", []string{
			"Clip, or pin inside the allowance only: pinholes in coated cloth stay open.",
			"Mark the distances below along both folded edges of the strip, on its outer face.",
			"Measure them from its folded head end, and mark the other strip alike, with R1 for L1.",
			"Chalk a line along the side of the body, on both faces, as far from its raw edge as stated.",
			"Slip the side of the body between the two edges of the strip.",
			"Bring the notch lines of the body to these marks: you see them beside the folded edges.",
			"Push it in until the folded edges lie on the chalk lines: the net line is then right.",
			"Pin the two ends, then the middle, the bars and the quarters, then between.",
		}, "Each notch of the body lies at its distance along the strip."},
		PinFacings: {"Pin the facings", []string{
			"Clip, or pin inside the allowance only: pinholes in coated cloth stay open.",
			"Lay each facing on its side of the body, right sides together.",
			"Pin notch on notch, then between.",
		}, "Each notch of the facing lies on that of the body."},
		StitchStrips: {"Stitch the channels", []string{
			"Backstitch at both ends of the seam.",
			"Stitch row 1 along the folded edges, through all layers, with a straight stitch.",
			"Keep the body at its notches, and ease what is longer in evenly between them.",
			"Where the side turns at a bar, stop with the needle down, turn, and lay no pleat.",
			"Stitch each further row inside the channel, beside the one before.",
			"Leave both ends of the channel open.",
			"Round that turn the fold is too short, so the slit of the opening gapes: flatten nothing by force.",
			"Measure the bed's width at both bar lines, flat, from row 1 to row 1.",
			"If one is further off than stated, unpick that side and sew it again.",
		}, "Both edges of the strip are caught all along, on both faces."},
		StitchFacings: {"Stitch the facings", []string{
			"Stitch the outer seam on the net line, and leave the openings at the bars open.",
			"Backstitch at both ends of the seam and beside each opening.",
			"Turn the facing over to the inside and press the seam.",
			"Stitch its inner fold down, with each further row beside it towards the outer seam.",
			"Measure the bed's width at both bar lines, flat, from row 1 to row 1.",
			"If one is further off than stated, unpick that side and sew it again.",
		}, "The channel is closed but for its ends and the openings at the bars."},
	}
}

// englishColours are the colours of our own scheme.
func englishColours() map[piece.Work]string {
	return map[piece.Work]string{
		piece.Register: "pink", piece.Lettering: "black", piece.Mark: "dark blue", piece.Stitch: "green", piece.Score: "light blue",
		piece.CutInside: "amber", piece.CutOut: "orange-red",
	}
}

func englishJobs() map[piece.Work]string {
	return map[piece.Work]string{
		piece.Register:  "engrave first: frame, crosses and check bars",
		piece.Lettering: "engrave",
		piece.Mark:      "engrave: notches, ticks and figures",
		piece.Stitch:    "engrave",
		piece.Score:     "score, not through",
		piece.CutInside: "cut through, holes before outlines",
		piece.CutOut:    "cut through, last",
	}
}
