package wording

import "slingloft/outline/cord"

// Splicing says what belongs to the pictures of how the cords are made.
type Splicing struct {
	Trial              Picture // desc: marks apart, bury, after
	Pulled             Picture
	Taper              Picture    // desc: working end, taper
	Entering           [4]Picture // into a leg for its eye, into a leg and into a side cord at a corner, into a loop; desc: length
	Milked             Picture    // desc: before, after
	Locked             Picture    // desc: stitched, not stitched
	EyeFree, EyeTurned Picture
	Crossing           Picture // desc: gap
	Corner             Picture // desc: gap, bury in the side cord, bury in the leg
	Parting            Picture // desc: gap, tip, cord
	OnPin              Picture // desc: pin, what the throat reads
	Chain              Picture // desc: pull, length
	EyesFirst, LastEye Picture // desc: clear width, eye, bury
	Join               Picture // desc: bury, taper
	Seized             Picture // desc: gap
	Sliding            Picture // title: line; desc: bury, end that stands out
	Hitch              Picture // title: line

	WorkingEnd, Standing, Fid, FreeEnd string
	ShoulderMark, TaperMark            string
	ThroatMark, AnchorMark             string
	Entries                            [4]string // as Entering
	Stops                              string
	Stroke                             string
	Before, BeforeIt, Expected, Buries string // length
	TipOut                             string
	Stitched, Unstitched               string // length
	FixedPost, LooseBar, FiveTurns     string
	TwoHitches, MarkedHere             string
	FromSide, FromEnd                  string

	ThroughShoulder, OpenShoulder, EyeGoes, GoesIn, BuriedAlong string

	SideCord, SideEnd, Leg, LegEnd             string
	ThroughSide, ThroughLeg                    string
	GapBetween                                 string // length
	SideEntryLegShoulder, LegEntrySideShoulder string
	TipInGap                                   string
	TipInGapOf                                 string // length
	TapersAbove                                string
	BarTip, BareTip                            Picture // desc: reach, pin, gap
	BarEnd, Plug, ShoulderOf, OtherRun         string
	Pin                                        string // thickness
	PinNotGiven                                string
	AlongCords, AlongBar                       string
	NoughtHere                                 string
	Tip, Cord, OnTip, GapStraight              string // length
	BothShoulders, Seizing                     string

	Reads string // node, what the tape shows
	Nodes map[cord.SpotKind]string
	Under string // pull

	Clear, EyeAsks, BuryAsks string // width
	InnerRow                 string

	Stopper, SetMarkShows, NoStitch, ToApex string
}

func englishSplicing() Splicing {
	s := englishSplicePictures()
	s.WorkingEnd, s.Standing, s.Fid, s.FreeEnd = "working end", "standing part", "fid", "this end is free"
	s.ShoulderMark, s.TaperMark = "shoulder mark", "taper mark"
	s.ThroatMark, s.AnchorMark = "throat mark", "anchor mark"
	s.Entries = [4]string{"throat mark: in here", "leg's entry mark: in here", "side cord's entry mark: in here", "shoulder mark: in here"}
	s.Stops = "bury stops here"
	s.Stroke = "stroke this way"
	s.Before, s.BeforeIt, s.Expected, s.Buries = "before %s", "before the splice: %s", "after about %s", "bury %s"
	s.TipOut = "its tip still sticks out"
	s.FixedPost, s.LooseBar, s.FiveTurns = "fixed post", "loose bar, pulled", "five turns, side by side"
	s.TwoHitches, s.MarkedHere = "two half hitches", "marks are made here"
	s.Stitched, s.Unstitched = "stitched: %s", "taper: %s"
	s.FromSide, s.FromEnd = "from the side, larger", "from the end"

	s.ThroughShoulder = "and goes through the shoulder mark"
	s.OpenShoulder = "open the shoulder mark here"
	s.EyeGoes = "the whole eye goes through it"
	s.GoesIn, s.BuriedAlong = "the working end goes in here", "and runs inside the standing part"

	s.SideCord, s.SideEnd, s.Leg, s.LegEnd = "side cord", "its working end", "leg", "leg's working end"
	s.ThroughSide = "1: leg through the side cord's shoulder mark"
	s.ThroughLeg = "2: side cord, foot end first, through the leg's shoulder mark"
	s.GapBetween = "gap, %s"
	s.SideEntryLegShoulder = "side cord's entry, leg's shoulder"
	s.LegEntrySideShoulder = "leg's entry, side cord's shoulder"
	s.TipInGap, s.TipInGapOf = "bar's tip in the gap", "bar's tip in the gap of %s"
	s.TapersAbove = "upper row: the tapers; lower row: the buries"
	s.Tip, s.Cord, s.OnTip, s.GapStraight = "tip %s", "cord %s", "on the tip %s", "the gap, drawn out straight: %s"
	s.BarEnd, s.Plug, s.ShoulderOf, s.OtherRun = "bar", "plug, fixed in the bar", "shoulder", "its other run"
	s.Pin, s.PinNotGiven = "pin, %s thick", "pin; not given how thick"
	s.AlongCords, s.AlongBar = "seen along the cords, cut open", "seen along the bar, from outside"
	s.NoughtHere = "nought of the tape: the middle of the pin"
	s.BothShoulders, s.Seizing = "both shoulder marks meet", "seizing"

	s.Reads = "%s %s"
	s.Nodes = map[cord.SpotKind]string{
		cord.Middle: "middle", cord.Tip: "tip", cord.Entry: "entry", cord.Throat: "throat", cord.Hook: "hanging point",
		cord.BuryEnd: "bury stops", cord.Shoulder: "shoulder", cord.Taper: "taper", cord.Anchor: "anchor", cord.SetMark: "set mark",
	}
	s.Under = "under %s"

	s.Clear, s.EyeAsks, s.BuryAsks = "clear width %s", "an eye pulled long asks for %s", "a bury asks for %s"
	s.InnerRow = "innermost row of stitching"

	s.Stopper, s.SetMarkShows = "stopper knot", "set mark comes out here"
	s.NoStitch, s.ToApex = "no crossing and no stitch in this bury", "to the apex"
	return s
}

// englishSplicePictures says what the pictures show.
func englishSplicePictures() Splicing {
	const along = " To scale along the cord; thicknesses are not."
	return Splicing{
		Trial: Picture{
			Caption: "A trial splice: mark, bury between the marks, milk, pull, measure again." + along,
			Title:   "A trial splice",
			Desc:    "A host cord with two marks %s apart; %s is buried between them; afterwards they lie about %s apart.",
		},
		Taper: Picture{
			Caption: "The working end: strands are cut out in pairs, evenly from the taper mark to its tip." + along,
			Title:   "A working end with its taper",
			Desc:    "From the shoulder mark %s to the tip; the last %s get thinner in steps, a pair of strands each.",
		},
		Entering: [4]Picture{
			{
				Caption: "The fid for the eye: in at the throat mark, along inside, out past the mark where the bury stops." + along,
				Title:   "The fid in the leg, for its eye", Desc: "The fid runs inside the leg from the throat mark for %s and comes " +
					"out; the working end follows it.",
			},
			{
				Caption: "The fid at a corner: the side cord goes into the leg at the leg's entry mark." + along,
				Title:   "The fid in the leg, for the side cord", Desc: "The fid runs inside the leg from its entry mark for %s and " +
					"comes out; the side cord's working end follows it.",
			},
			{
				Caption: "The other way round: the leg goes into the side cord at the side cord's entry mark." + along,
				Title:   "The fid in the side cord, for the leg", Desc: "The fid runs inside the side cord from its entry mark for %s " +
					"and comes out; the leg's working end follows it.",
			},
			{
				Caption: "The fid at the loop's join: in at the shoulder mark of the other end." + along,
				Title:   "The fid in the loop", Desc: "The fid runs inside the loop from its shoulder mark for %s and comes out; the " +
					"other end follows it.",
			},
		},
		Milked: Picture{
			Caption: "Above: the host stands in a bunch. Below: milked out, away from where the working end goes in." + along,
			Title:   "A bury before and after it is milked",
			Desc:    "The same stretch of the host is %s long before the splice and %s after it, when its bunch is stroked out.",
		},
		Locked: Picture{
			Caption: "Lock stitching: three stitches along through both cords, then back at right angles to them; the knot lies inside.",
			Title:   "Lock stitching of a bury",
			Desc: "Three stitches along and three back go through host and bury over the %s next to the entry; the last %s, the taper, " +
				"have no stitch.",
		},
		EyeFree: Picture{
			Caption: "The eye, while the cord's other end is free. First through the throat mark; second the free end through the " +
				"shoulder mark; third draw up and bury.",
			Title: "Crossing an eye while the other end is free",
			Desc: "Three stages. The working end passes through the standing part at the throat mark. The free end of the standing part then " +
				"passes through the working end at its shoulder mark. Drawn up, both lock, and the working end is buried in the standing part.",
		},
		EyeTurned: Picture{
			Caption: "The eye, where the other end is not free. First through the throat mark; second the whole eye through the opened shoulder " +
				"mark, which turns it inside out; third give the eye one turn so that no twist is left, draw up and bury.",
			Title: "Crossing an eye that is turned inside out",
			Desc: "Three stages. The working end passes through the standing part at the throat mark. It is opened at its shoulder mark, and the " +
				"eye with its throat is drawn through the opening. Drawn up, the standing part runs through the working end, which is then buried.",
		},
		Crossing: Picture{
			Caption: "The crossing of two cords: each passes through the other. It is drawn up before either working end is buried.",
			Title:   "The crossing of two cords at a corner",
			Desc: "At the right the leg's working end passes through the side cord at the side cord's shoulder mark. At the left the side cord " +
				"passes through the leg at the leg's shoulder mark. Between the two lies the gap of %s.",
		},
		Corner: Picture{
			Caption: "A finished corner, drawn out straight. Each shoulder mark lies at the other cord's entry mark." + along,
			Title:   "A finished corner",
			Desc: "Side cord at the left, leg at the right, between them the gap of %s with the bar's tip in its middle. The leg's working end " +
				"runs %s inside the side cord, the side cord's %s inside the leg; both end in tapers.",
		},
		Pulled: Picture{
			Caption: "A cord made fast to be pulled and marked: five turns hold it, the half hitches keep them. Schematic.",
			Title:   "A cord between its posts",
			Desc: "The cord goes five times round a fixed post at the left and a loose bar at the right, and is tied to itself beside " +
				"each with two half hitches. The bar is pulled to the right.",
		},
		Parting: Picture{
			Caption: "The gap round the bar's tip, all to scale.",
			Title:   "The gap round the bar's tip",
			Desc:    "Two cords run from end to end of a gap of %s, one on either side of a tip %[2]s thick; each is %[3]s thick.",
		},
		OnPin: Picture{
			Caption: "The eye on its pin while the chain is read. The tape's nought lies at the middle of the pin, where a hanging point is. " +
				"To scale.",
			Title: "An eye on its pin, with the tape",
			Desc: "The eye is drawn tight round a pin %s thick. The tape's nought lies at the middle of the pin; the throat reads %s. The far eye " +
				"lies on its pin likewise.",
		},
		BarTip: Picture{
			Caption: "The tip of a bar. Its pin goes through the gap between both cords; its shoulder keeps them off the bar's end. " +
				"To scale, " +
				"but for the lengths of plug and pin, and for a pin whose thickness the design leaves open.",
			Title: "The tip of a bar, with the cords on it",
			Desc: "A plug is fixed in the bar's end. Its shoulder holds the middle of the cords %s beyond the end. Out of it stands its %s, " +
				"through the gap of %s, one cord over it and one under it.",
		},
		BareTip: Picture{
			Caption: "The tip of a bar. Its pin goes through the gap between both cords, which lie at the very end of the bar. " +
				"To scale, but for the lengths of plug and pin, and for a pin whose thickness the design leaves open.",
			Title: "The tip of a bar, with the cords on it",
			Desc: "A plug is fixed in the bar's end. The middle of the cords lies %s beyond the end. Out of it stands its %s, " +
				"through the gap of %s, one cord over it and one under it.",
		},
		Chain: Picture{
			Caption: "The cords of one side along a tape, on pins: what the tape shows at each node.",
			Title:   "The chain on its tape",
			Desc: "A chain lies straight along a tape under %s, from its head hanging point at nought to its foot hanging point " +
				"at %s; leg, side cord and leg.",
		},
		EyesFirst: Picture{
			Caption: "Threading: the chain goes through the channel eye first, drawn by a thread. To scale across.",
			Title:   "Threading the channel, eye first",
			Desc:    "The channel is clear over %s; an eye pulled long asks for %s, a bury for %s. Both pass.",
		},
		LastEye: Picture{
			Caption: "Threading: no eye passes this channel, so the leg goes through by its bare end. To scale across.",
			Title:   "Threading the channel by a bare end",
			Desc:    "The channel is clear over %s; an eye pulled long asks for %s and does not pass, a bury asks for %s.",
		},
		Join: Picture{
			Caption: "The join of the loop, in the middle of one run: each end in the other." + along,
			Title:   "The join of a loop",
			Desc:    "The two ends of the loop meet at their shoulder marks; each runs %s inside the other, the last %s tapered.",
		},
		Seized: Picture{
			Caption: "A corner of the loop: two runs, seized at either end of the gap.",
			Title:   "A loop's corner with its seizings",
			Desc:    "Two runs of cord lie side by side; between two seizings %s apart they part round the bar's tip.",
		},
		Sliding: Picture{
			Caption: "The sliding eye at the anchor: its end runs through the bury and out again. Draw on the end to shorten the line.",
			Title:   "The sliding eye of the %s",
			Desc: "The end goes in at the throat, runs through a bury of %s and out at its end; %s stand out at the shortest, " +
				"with a stopper knot.",
		},
		Hitch: Picture{
			Caption: "The line tied at its anchor: a round turn and two half hitches, the anchor mark at the anchor.",
			Title:   "The hitches of the %s",
			Desc:    "The line goes once and a half round the anchor and is tied round itself with two half hitches.",
		},
	}
}
