package wording

// Stitching says what belongs to the sections of the seams.
type Stitching struct {
	Bound, Faced             Picture // desc: layers, rows, depth, cord
	CapHem, EndHem           Picture // desc: each fold
	CapSeam                  Picture // desc: both allowances
	Join                     Picture // desc: allowance, trimmed to, folded at
	SlitOpening, SeamOpening Picture // desc: opening, gap
	Corner, BareCorner       Picture

	Measured string // what, length

	Depth, Clear, SideAllowance, TurnUnder, Foot, RowsApart string
	EachFold, FromFold                                      string
	EndAllowance, CapAllowance                              string
	JoinAllowance, Trimmed, FoldAt, SecondRow               string
	OpeningOf, GapOf                                        string

	StripOf, BodyOf, FacingOf, CapOf, CordOf string
	InnerPanel, OuterPanel                   string
	RawEdge, RawEdges, RawInFold, OuterSeam  string
	Inside, TipIn, BarNotch                  string

	LegOut, EndFlush, ChannelOf, BodyCloth, Backstitch, CapOut, Tack string
	CutOff                                                           string // what is left
	TackAt                                                           string // along the leg from the tip
}

func englishStitching() Stitching {
	s := englishSections()
	s.Measured = "%s %s"
	s.Depth, s.Clear, s.SideAllowance, s.TurnUnder = "depth", "clear width", "side allowance", "turn-under"
	s.Foot, s.RowsApart = "stitch line to the folded edge", "rows apart"
	s.EachFold, s.FromFold = "each fold", "stitch from the inner fold"
	s.EndAllowance, s.CapAllowance = "body's allowance", "cap's allowance"
	s.JoinAllowance, s.Trimmed, s.FoldAt, s.SecondRow = "allowance", "trimmed to", "folded at", "second row at"
	s.OpeningOf, s.GapOf = "opening", "tip gap"

	s.StripOf, s.BodyOf, s.FacingOf, s.CapOf, s.CordOf = "channel strip", "body", "facing", "cap", "side cord"
	s.InnerPanel, s.OuterPanel = "inner panel", "outer panel"
	s.RawEdge, s.RawEdges, s.RawInFold = "body's raw edge", "raw edges", "raw edge in the fold"
	s.OuterSeam = "row 1, outer seam"
	s.Inside, s.TipIn, s.BarNotch = "inside of the bed up", "the bar's tip goes in between the two strands", "bar notch"

	s.LegOut, s.EndFlush, s.ChannelOf = "leg", "folded end of the channel, at the end seam", "channel"
	s.BodyCloth, s.Backstitch, s.CapOut = "body", "backstitch where a row begins", "cap, opened out"
	s.CutOff = "allowances, cut off %s past the net line"
	s.Tack = "corner of the tail, tacked to its leg"
	s.TackAt = "tack: %s along the leg from the bar's tip"
	return s
}

// englishSections says what the sections show.
func englishSections() Stitching {
	const faces = " Thick edge: right side. Thin edge: lettered face. To scale across the seam."
	return Stitching{
		Bound: Picture{
			Caption: "Section of the channel: the body's side between the edges of the folded strip. Stitch 301, a bound seam, class 3; " +
				"rows in the order of their numbers." + faces,
			Title: "Section of the channel, made by a folded strip",
			Desc: "%d layers lie next to the seam: strip, its turn-under, body, turn-under and strip. %d rows of stitching. The channel is %s " +
				"deep and holds a cord of %s at its fold.",
		},
		Faced: Picture{
			Caption: "Section of the channel: a facing turned to the inside. Row 1: stitch 301, superimposed seam, SSa-1; further rows " +
				"close the channel." + faces,
			Title: "Section of the channel, made by a facing",
			Desc: "%d layers lie at the inner seam: body, the facing's turn-under and facing. %d rows close the channel there. It is %s deep " +
				"and holds a cord of %s at the outer seam.",
		},
		CapHem: Picture{
			Caption: "Section of the cap's hem: a double-fold hem. Stitch 301, an edge finish, class 6." + faces,
			Title:   "Section of the cap's double-fold hem",
			Desc:    "The edge is folded under twice, %s each time, its raw edge in the fold, and stitched beside the inner fold.",
		},
		EndHem: Picture{
			Caption: "Section of the end's hem: a double-fold hem that takes the drawstring. Stitch 301, an edge finish, class 6." + faces,
			Title:   "Section of the end's double-fold hem",
			Desc:    "The end is folded under twice, %s each time, its raw edge in the fold, and stitched beside the inner fold.",
		},
		CapSeam: Picture{
			Caption: "Section of the cap's seam, right sides together. First stitch 301, superimposed seam, SSa-1; then both raw edges " +
				"together, zigzag 304 or a binding." + faces,
			Title: "Section of the cap's seam",
			Desc: "Body and cap lie right sides together; the seam runs %s from the body's raw edge and %s from the cap's; then " +
				"both edges are bound together.",
		},
		Join: Picture{
			Caption: "Sections of a join: above as it is first sewn, below as it is felled. Stitch 301, a lapped seam, class 2, LSc: " +
				"flat-felled." + faces,
			Title: "Sections of a flat-felled join",
			Desc: "First both panels lie right sides together, allowance %s, the outer one then trimmed to %s. Felled, the wide allowance is " +
				"folded at %s over the trimmed one and stitched down beside its fold.",
		},
		SlitOpening: Picture{
			Caption: "The opening in the fold of the channel, with the tip gap drawn out. Bind its edges before you cut the slit. To scale.",
			Title:   "The opening at a bar's tip",
			Desc: "A slit of %s in the fold of the channel; the gap of %s is drawn out of its middle, and the bar's tip stands " +
				"between both strands.",
		},
		SeamOpening: Picture{
			Caption: "The opening in the outer seam of the channel, with the tip gap drawn out. Backstitch at both its ends. To scale.",
			Title:   "The opening at a bar's tip",
			Desc:    "The outer seam is open over %s; the gap of %s is drawn out of its middle, and the bar's tip stands between both strands.",
		},
		Corner: Picture{
			Caption: "The head corner on the left, flat: the cap is sewn on first, the channel over it. To scale.",
			Title:   "Where channel, cap and body meet",
			Desc: "The channel runs along the side and ends, folded in, at the end seam. The cap is sewn to the end as far as the " +
				"corner. The cord " +
				"comes out of the channel's end; there, at the mouth of the channel, the corner of the tail is tacked to it.",
		},
		BareCorner: Picture{
			Caption: "The head corner on the left, flat: the end is hemmed first, the channel sewn over it. To scale.",
			Title:   "Where channel and hemmed end meet",
			Desc: "The channel runs along the side and ends, folded in, at the fold of the hemmed end. The cord comes out of the channel's end, " +
				"and there, at the mouth of the channel, the corner of the tail is tacked to it.",
		},
	}
}
