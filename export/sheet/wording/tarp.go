package wording

// Tarp says what belongs to the tarp.
type Tarp struct {
	Title   string
	Lead    string
	Careful string // title of what to mind
	Mind    []string
	Unknown string // what is not reckoned
	Caption string // of the table, with the unit
	Figure  string // column

	Ridge, Width, SideEdge, EndEdge string
	SideHollow, EndHollow, Dip      string
	Rise, RidgeUp, EdgeUp, Slope    string
	Rain, Asked                     string
	Clear, Packed                   string

	Corners string // caption of a table: panel, unit
	Columns [3]string
	OnRoll  [2]string // further columns

	Flat, FromEnd, FromSide, Fell, Hem, Corner Picture
	// Beside the pictures and in the figures of the steps.
	RidgeName, SideName, EndName, LoopName, PatchName  string
	RainName, ApexName                                 string
	Covering, Covered, UnderUp                         string
	Allowance, Fold, Trim, Row                         string
	HemFold, PatchReach, TurnUnder                     string
	HemCut, JoinCut                                    string // cut lines outside the net line
	Loops, LoopLong, LoopOut, Past                     string
	NotchAt                                            string // notch
	SeamLong                                           string // seam
	CornersApart, CornersOut, CornersAlong, RidgeLevel string
	HollowHem, PartEdges, MarkRidge, OnRidgeLine       string // sentences of some sheets
	Guy, RidgeTie                                      string
	Covers                                             string // seam, the panel that covers, the other
}

func englishTarp() Tarp {
	return Tarp{
		Title:   "The tarp",
		Lead:    "The tarp hangs over the bed on its ridge. Where the design gives no size it is as large as the bed needs to stay dry.",
		Careful: "Before you use it (common practice, no source)",
		Mind: []string{
			"Sew it of coated cloth that its maker calls waterproof: plain cloth lets rain through.",
			"No open fire, stove, candle or glowing thing under it or beside it: it melts and burns within seconds.",
			"Take it down in strong wind and thunder: gusts pull in jerks, and branches fall.",
			"Leave both ends open: a closed shelter holds breath, fumes and damp, and drips inside.",
			"Hang something bright on its lines: they run at the height of necks and ankles.",
			"It carries nobody: hang no bed, no child's swing and no gear on it.",
		},
		Unknown: "Its pull at loops, lines and pegs is not known: wind decides it. No strength of cloth, seam, tape, line or peg is asked for, " +
			"and none is promised.",
		Caption: "The tarp, in %s",
		Figure:  "figure",
		Ridge:   "ridge, finished", Width: "width as it lies flat, corner to corner over the ridge",
		SideEdge: "side edge, straight from corner to corner", EndEdge: "end edge, straight from ridge to corner",
		SideHollow: "side edge, hollow in its middle", EndHollow: "end edge, hollow in its middle", Dip: "ridge, lower in its middle as it hangs",
		Rise: "ridge above the higher apex, sleeper in the bed", RidgeUp: "ridge above the ground", EdgeUp: "corners of the side edges above the ground",
		Slope: "slope of each half below the level",
		Rain:  "driven rain kept off, from any direction, from the plumb line", Asked: "%s (%s asked)",
		Clear: "clear of bars, cords and hang lines", Packed: "packed, about",

		Corners: "%s: its corners, in %s, along the grain and across it from the lower left of its net line",
		Columns: [3]string{"corner", "along", "across"},
		OnRoll:  [2]string{"on the roll, from its cut end", "from its lower selvedge"},

		Flat: Picture{
			Caption: "The tarp as it lies flat, lettered face up, its panels by their names.",
			Title:   "The tarp, flat",
			Desc:    "Net lines of the tarp: ridge %s, width %s, in %d panels.",
		},
		FromEnd: Picture{
			Caption: "Seen from the head, at the bar there: rain from the side misses the bed up to the angle drawn.",
			Title:   "The tarp over the bed, from its end",
			Desc:    "Both halves slope by %s from the ridge over the bed's section; rain comes in at %s from the plumb line past an edge.",
		},
		FromSide: Picture{
			Caption: "Seen from the side, with the hang lines: rain from an end misses the cloth of the bed.",
			Title:   "The tarp over the bed, from its side",
			Desc:    "The ridge, %s long, lies %s above the higher apex; rain comes in at %s from the plumb line past its ends.",
		},
		Fell: Picture{
			Caption: "Sections of a join: above as it is first sewn, below as it is felled. Stitch 301, a lapped seam, class 2, LSc: " +
				"flat-felled. Thick edge: right side. Thin edge: lettered face. To scale across the seam.",
			Title: "Sections of a flat-felled join of the tarp",
			Desc: "First both panels lie right sides together, allowance %s, one then trimmed to %s. Felled, the wide allowance is " +
				"folded at %s over the trimmed one and stitched down beside its fold.",
		},
		Hem: Picture{
			Caption: "Section of the hem: a double-fold hem. Stitch 301, an edge finish, class 6. Thick edge: right side. Thin edge: " +
				"lettered face. To scale across the seam.",
			Title: "Section of the tarp's double-fold hem",
			Desc:  "The edge is folded under twice, %s each time, its raw edge in the fold, and stitched beside the inner fold.",
		},
		Corner: Picture{
			Caption: "A finished corner, lettered face up: the patch under the hem, the loop over both.",
			Title:   "Corner of the tarp",
			Desc:    "The patch reaches %s along both edges; the hem lies over it, and a loop of tape is sewn over the hem in a box with a cross.",
		},
		RidgeName: "ridge", SideName: "side edge", EndName: "end edge", LoopName: "loop", PatchName: "patch",
		RainName: "rain", ApexName: "apex",
		Covering: "panel that covers", Covered: "panel that is covered", UnderUp: "lettered face up",
		Allowance: "allowance, on both panels", Fold: "fold, from the net line", Trim: "trim to, from the net line",
		Row: "second row, from the net line", HemFold: "hem, each fold", PatchReach: "patch, along each edge and inwards",
		TurnUnder: "turned under at its inner edges", Loops: "loops", LoopLong: "tape for each", LoopOut: "its fold, out past the corner",
		Past: "ridge, past each apex", HemCut: "cut line outside edges", JoinCut: "cut line outside joins and ridge",
		NotchAt: "notch %s, from the left end as the pieces are drawn", SeamLong: "%s, finished",
		CornersApart: "corners of a side edge, apart", CornersOut: "each corner, out from under the ridge",
		CornersAlong: "each corner, along the ridge from its end",
		RidgeLevel:   "ridge, from end to end",
		HollowHem:    "The edges are hollow: stretch the folds a little as you press them.",
		PartEdges:    "An edge that runs over several panels is marked and cut after these are joined.",
		MarkRidge:    "The ridge is hollow too: it has a template of its own.",
		OnRidgeLine:  "Lay it over the ridge line, and tie the loop at each end of the ridge to the eye there.",
		Guy:          "guy line of each corner, where its peg is as far out as the corner is high",
		RidgeTie:     "each end of the ridge, from its tree or post",
		Covers:       "At %s the %s covers the %s.",
	}
}

// englishTarpSteps says how the tarp is sewn and pitched.
func englishTarpSteps() map[Task]Step {
	return map[Task]Step{
		MarkTarp: {"Mark the tarp by hand", []string{
			"Skip this step if the tarp is plotted, or cut by a machine.",
			"Draw a line along the grain for each panel, and set its corners out by the tarp's table of them.",
			"That table says where each corner lies on the roll too: the cut line runs outside it.",
			"Measure from corner to corner before you go on: the distances stand with the pieces.",
			"Join the corners by straight lines, or by the templates where an edge is hollow.",
			"Draw the cut line outside edges and joins, as far off as stated.",
			"Letter panels and corners, and mark the notches; the first one of a seam has two strokes.",
			"Lay cloth for each patch over a marked corner, and trace that corner's net lines through.",
			"Draw its inner point midway between the edges, as far in as stated.",
			"Trace a ridge patch on both sides of the ridge, and add the turn-under at inner edges alone.",
		}, "Every panel has its net line, a cut line outside it, notches and letters."},
		JoinTarp: {"Join the panels of the tarp", []string{
			"The lettered face lies under the tarp.",
			"Lay two panels right sides together, letters outside, and match corners and notches.",
			"Stitch on the net line.",
			"Trim the allowance of the panel that is covered to its trim line.",
			"Press both allowances towards that panel.",
			"Fold the wide allowance over the trimmed one, and stitch it down along its fold.",
		}, "No raw edge shows, and the corners of both panels meet in one line."},
		RidgeTarp: {"Sew the ridge", []string{
			"The lettered face lies under the tarp.",
			"Lay both halves right sides together, letters outside, and match ends and notches.",
			"Stitch on the net line, the ends of the ridge backstitched.",
			"Trim the allowance of the right half, which will be covered, to its trim line.",
			"Press both allowances towards the right half.",
			"Fold the wide allowance over the trimmed one, and stitch it down along its fold.",
		}, "The seam runs from end to end without a pleat, and no raw edge shows."},
		PatchTarp: {"Sew on the patches", []string{
			"Press the two inner edges of each patch under, towards its letters.",
			"Snip the tips of these folds off along the patch's net line.",
			"Lay it on the lettered face of the tarp, letters down, its other edges on the net line.",
			"Two corner patches fit one pair of opposite corners, the two mirrored ones the other.",
			"A ridge patch lies over the end of the ridge, half on each side.",
			"Stitch it down along its inner edges in two rows.",
			"Tack its outer edges where the hem will cover them.",
		}, "Six corners have a patch each, and none is gathered."},
		HemTarp: {"Hem the tarp", []string{
			"Trim what stands out past the net line's corners when it is folded.",
			"Fold each side edge twice towards the lettered face, over the patches, and press it.",
			"Stitch beside the inner fold, from corner to corner.",
			"Then hem the end edges in the same way, over the finished hems.",
		}, "The hem lies flat all round, and every patch is caught in it."},
		LoopTarp: {"Sew on the loops", []string{
			"Take strong woven tape, one to two fingers wide, cut it, and melt its ends.",
			"Fold each piece in half, and lay both ends on the patch, on each other.",
			"At a corner it lies along the line that halves the corner, at a ridge end along the ridge.",
			"Let its fold stand out as far as stated, so that both ends lie on hem and patch.",
			"Sew them down in a box with a cross, through tape, hem and patch.",
		}, "Six loops stand out: four at the corners, two at the ends of the ridge."},
		SealTarp: {"Seal the seams", []string{
			"Ask the cloth's maker which sealer holds, and on which face, and try it on a scrap.",
			"Draw it over all stitches of the roof: ridge, joins, patches and loops.",
			"Let it dry as its maker says before you pack the tarp.",
		}, "Water poured on a seam runs off, and none comes through."},
		PitchTarp: {"Pitch the tarp", []string{
			"Tie the lines of the ridge to both trees or posts, level, as high as stated.",
			"Set the ridge as far past both apexes, and pull it tight before any corner.",
			"Measure its height above the higher apex, with somebody in the bed.",
			"Tie a guy line to each corner, and peg it farther out, in the line that halves the corner.",
			"Set the corners by the distances and the height below, one after the other.",
			"See from both ends that nothing touches bars, cords or hang lines.",
			"Tie a short string on each hang line outside the tarp: water drips off there.",
			"Pack it dry: wet it smells, and its coating comes off in time.",
		}, "The edges are tight, nothing flaps, and the bed swings free under it."},
	}
}
