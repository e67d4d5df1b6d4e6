package wording

import "slingloft/outline/design"

// Cover says what belongs to the insect net.
type Cover struct {
	Title   string
	Lead    string
	Careful string // title of what to mind
	Mind    []string
	Caption string // of the table, with the unit
	Figure  string // column

	RidgeHooks, RidgeCord, RidgeCut string
	Elastic, ElasticCut, Stretched  string

	NotKnown                            string
	ZipLong, ZipRoom, ZipStop           string
	ZipHangs, ZipRolls, ZipEase         string
	Shear, Narrower                     string
	Face, FaceBar, Elbows, Shoulders    string // posture
	Feet                                string
	Lies                                map[design.Posture]string
	Gap, Mesh, Packed                   string
	Holes                               string // from hole to hole, per square inch
	FromSide, FromEnd, OnStrip, ZipSlit Picture

	// Beside the pictures and in the figures of the steps.
	RidgeName, NetName, ZipName, FoldName, StripName, ApexName string
	SlitName, RowName                                          string
	CutOut, LowerCut, Hem, Lap, Allowance, ZipWide, ZipUp      string
	Loops, LoopLong, RowsApart                                 string
	TieLong, HemElastic, Between                               string
	SeamLong                                                   string                       // seam
	NotchAt                                                    string                       // notch
	Hooks, Fixed, Tie                                          string                       // sentences of some sheets
	Tied, Set                                                  [2]string                    // on elastic, and of a ridge that carries
	Ridges                                                     map[design.CoverRidge]string // what to mind
	OwnLine                                                    string                       // sentence where the ridge has a line of its own
	Zipped                                                     [2]string                    // how it opens: along a side, up an end
}

func englishCover() Cover {
	return Cover{
		Title: "The insect-net cover",
		Lead: "The net closes the bed from the cords up to a ridge. Its sides are laid flat with all edges as long as they hang; " +
			"a net gives the little that is left by shear.",
		Careful: "Before you use it (common practice, no source)",
		Mind: []string{
			"Know how to open it from inside in the dark, before the first night under it.",
			"Keep flame, stove and candle away from it: it melts and burns within seconds.",
			"Never leave a child alone in or beside it.",
			"Whether it keeps insects out hangs on its mesh: ask its maker, and mind that midges pass finer net.",
		},
		Caption: "The net, in %s", Figure: "figure",
		RidgeHooks: "ridge, from hook to hook under the sleeper", RidgeCord: "its cord, finished, from eye to the elastic's eye",
		RidgeCut: "its cord, as cut with both knots", Elastic: "its elastic, slack between its knots",
		ElasticCut: "its elastic, as cut with both knots", Stretched: "its elastic, under the sleeper",
		NotKnown: "not known: as far as the anchors are apart",
		ZipLong:  "zip, from stop to stop", ZipRoom: "room for it", ZipStop: "its stops, along its line from the head's end or up from the cap",
		ZipHangs: "net that stays below an open zip", ZipRolls: "net above it that is rolled up to the ridge",
		ZipEase: "net longer than the zip, lower and upper row; minus: shorter",
		Shear:   "largest shear of the net", Narrower: "narrower there than it lies flat",
		Face: "net off the face, %s", FaceBar: "head bar off the face, %s", Elbows: "net off the elbows, %s",
		Shoulders: "net off the shoulders, %s", Feet: "net off the feet, %s",
		Lies: map[design.Posture]string{design.OnBack: "on the back", design.OnSide: "on the side"},
		Gap:  "gap at a loose edge between two ties", Mesh: "mesh, from hole to hole", Packed: "packed, about",
		Holes: "%s, %s holes per square inch",
		FromSide: Picture{
			Caption: "Seen from the side, under the sleeper: the net from cap to cap, and its ridge.",
			Title:   "The net over the bed, from its side",
			Desc:    "The net reaches from the cords up to the ridge, which runs %s from hook to hook; the zip is drawn where it lies.",
		},
		FromEnd: Picture{
			Caption: "Section through the shoulders: bed, sleeper on the back, and net.",
			Title:   "The net over the bed, from its end",
			Desc:    "From the ridge the net runs straight to the cords on both sides, %s off the shoulders.",
		},
		OnStrip: Picture{
			Caption: "The lower edge on a channel strip that lies flat: the net line lies on the middle press line, the hem on the half beside it.",
			Title:   "Lower edge of the net on a strip",
			Desc:    "The strip lies flat. The net comes from above, its net line on the strip's middle press line; its hem, %s wide, is stitched to the half below by two rows.",
		},
		ZipSlit: Picture{
			Caption: "An end of the zip: rows round it, then the slit with its two slants, whose edges are turned under.",
			Title:   "End of the zip in the net",
			Desc:    "The rows lie %s apart and close across the end. The slit runs in their middle and forks to both corners before the end.",
		},
		RidgeName: "ridge", NetName: "net", ZipName: "zip", FoldName: "middle press line", StripName: "channel strip",
		ApexName: "apex", SlitName: "slit", RowName: "row",
		CutOut: "cut line outside ridge and corners", LowerCut: "cut line outside the lower edge", Hem: "hem of the lower edge",
		Lap: "loose edge below the net line", Allowance: "allowance at ridge and corners",
		ZipWide: "rows that hold the zip, apart", ZipUp: "zip's middle inside of the lower net line",
		Loops: "loops", LoopLong: "tape for each", RowsApart: "rows apart",
		TieLong: "tie at notch %s, as cut", HemElastic: "elastic in the hem, once round, as cut", Between: "ridge, from hook to hook",
		SeamLong: "%s, finished", NotchAt: "notch %s, from the head's end, or from below",
		Hooks: "Hang the eye on the head hook and the elastic on the foot hook, beside the bed's own.",
		Fixed: "Hang both eyes on the hooks, beside the bed's own.",
		Tied: [2]string{
			"Tie an eye at its head end, and the elastic to its foot end.",
			"Tie an eye at both ends, by knots that do not slip in such cord.",
		},
		Set: [2]string{
			"With somebody in the bed, set the knot until the elastic is as long as stated.",
			"With somebody in the bed, set one knot until the cord lies straight and pulls nothing.",
		},
		Ridges: map[design.CoverRidge]string{
			design.ElasticRidge:  "Its ridge carries the net alone: pull yourself up by the bed's edge, never by the ridge.",
			design.CarryingRidge: "Its ridge keeps the hooks from going apart. Its cord is bought by the least strengths, as every cord of the bed.",
		},
		OwnLine: "Tie it level to both anchors, at its height above the bed: this ridge has a line of its own.",
		Tie:     "Lead each tie under the bed to the loop across, and tie it so that the hem touches the cloth.",
		Zipped: [2]string{
			"To get in, open it from the foot, roll the net above it up to the ridge, and tie it by two loops.",
			"To get in, open it from its top, and tie both halves back to the sides.",
		},
	}
}

// englishCoverSteps says how the net is sewn and hung.
func englishCoverSteps() map[Task]Step {
	return map[Task]Step{
		MarkCover: {"Mark the net by hand", []string{
			"Skip this step if the net is plotted, or cut by a machine.",
			"Lay the net on a table without pulling it, and pin it to paper along its edge.",
			"Draw a line along the grain for each piece, and set out its corners by their table.",
			"Measure from corner to corner before you go on: the distances stand with the pieces.",
			"Join the corners by straight lines, or along the templates as their pictures show.",
			"Draw the cut lines outside them, as far off as stated.",
			"Mark every notch by a stitch of bright thread: chalk falls through net.",
		}, "Every piece has its net line, a cut line outside it, letters and notches."},
		ZipCover: {"Set in the zip", []string{
			"Sew the test seam of the next chapter first, on scraps of net too.",
			"Set the zip in while the piece lies flat and whole: the slit is cut last.",
			"Mark the zip's middle, both rows and the stops on the net.",
			"Lay the closed zip under the net, its middle on the line, and pin it every hand's breadth.",
			"Stitch both rows and across both ends, each row from the same end.",
			"Slit the net along the middle, and fork the slit to the corners before each end.",
			"Turn the edges under, and stitch them down beside the first rows.",
			"Sew over both ends of the zip by hand, so that its slider cannot leave it.",
		}, "The zip runs from end to end, its slider can be moved from both faces, and the net lies flat."},
		RidgeCover: {"Sew the ridge", []string{
			"Lay both sides on each other, letters outside, and match ends and notches.",
			"Fold each loop in half, and lay it between both sides, fold inwards, at a notch or an end.",
			"Stitch on the net line, and a second row outside it, over the loops back and forth.",
			"Leave the last finger's breadth open at both ends: the ridge's cord leaves there.",
		}, "The loops stand inside the net, as many as stated, and none is twisted."},
		EndsCover: {"Sew in the ends", []string{
			"Lay each end on the sides, letters outside, its top at the ridge, notch on notch.",
			"Stitch from the lower edge up to the ridge, first one corner, then the other.",
			"Sew a second row outside each seam, and trim the allowances to it.",
			"Work the hole at the top of each end round with close stitches.",
		}, "The net stands up like a tent, and a cord passes both holes."},
		EdgeCover: {"Sew the net to the channels", []string{
			"Do this while the channels' pieces lie flat, before they are sewn to the bed.",
			"Press the hem of both sides under, so wide as stated.",
			"Lay the net line on the middle press line, notches on a line square across from the strip's own.",
			"Stitch the hem to the half that comes to lie outside, beside the line and beside its edge.",
			"Leave the tip openings free, and work the net's edge over there.",
		}, "The net stands out from the fold, and the channel's inside is smooth."},
		FacedCover: {"Sew the net in with the facings", []string{
			"Do this in the step that sews the facings on, with three layers in one seam.",
			"Lay the net on the body's outer face, letters outside, its net line on the side seam.",
			"Match the notches of net, body and facing, and tack the net down inside its allowance.",
			"Lay the facing over it, and sew the seam through all three, as that step says.",
			"Leave the tip openings free, and work the net's edge over there.",
		}, "The net stands out from the seam, and the channel's inside is smooth."},
		CapsCover: {"Sew the net to the caps", []string{
			"Do this when the caps are sewn in and hemmed.",
			"Press the hem of each end under, so wide as stated.",
			"Lay its net line on the cap's top edge, from outside, middle on middle.",
			"Stitch along the top edge, and a second row beside the hem's edge.",
			"Close the short edges beside the corners to the channels' ends, clear of the cords.",
		}, "Nothing is open between net and bed but the holes of ridge and cords."},
		LooseCover: {"Hem the loose edge", []string{
			"Fold the lower edge twice, all round, and stitch beside the inner fold.",
			"Leave a gap of two fingers, and draw the elastic through it.",
			"Sew the elastic's ends on each other, and close the gap.",
			"Sew a short loop of tape to the hem at each notch of both sides.",
			"Tie a cord into each loop of the left side, as long as stated.",
		}, "The hem gathers evenly, and every notch has its loop."},
		HangCover: {"Hang the net", []string{
			"Hang the bed first, and try it out without the net.",
			"Draw the ridge's cord through the loops from hole to hole.",
		}, "The sides are smooth, nothing touches face or elbows, and the zip opens from inside in the dark."},
	}
}
