package wording

// Hung says what belongs to the hung shape and its pictures.
type Hung struct {
	Title string
	Solid Picture // span, angle of the walls
	// Side tells the length from tail to tail, the heights of head hook, head bar, middle,
	// foot bar and foot hook, and the hang angles of head and foot.
	Side Picture
	// Above tells the widths at head bar, middle and foot bar and the legs of head and foot.
	Above Picture
	// Across tells width and depth at the head bar, at mid-bay and at the foot bar, and the
	// angle of the walls.
	Across Picture
	MidBay string
	Radius string
}

func englishHung() Hung {
	return Hung{
		Title: "The hung shape",
		Solid: Picture{
			Caption: "Seen from above, from the right of the foot end.",
			Title:   "The hung hammock in space",
			Desc: "A trough of cloth between two cords, held open by two bars %s apart, narrowest near the middle, its walls at %s; " +
				"past each bar the tail's walls rise and close in towards the apex.",
		},
		Side: Picture{
			Caption: "From the side, head to the left. Heights are above the bed bottom.",
			Title:   "The hung hammock from the side",
			Desc: "Side view. The bed bottom is level over %s from tail to tail; the cords sink from the head apex, %s above " +
				"it, over the head bar at %s to the middle at %s and rise over the foot bar at %s to the foot apex at %s. " +
				"Hang angles %s at the head, %s at the foot.",
		},
		Above: Picture{
			Caption: "From above.",
			Title:   "The hung hammock from above",
			Desc: "Plan. The cords stand %s apart at the head bar, close in to %s near the middle, open to %s at the foot bar and " +
				"meet at the apexes. Legs from bar tip to apex: %s at the head, %s at the foot.",
		},
		Across: Picture{
			Caption: "From the foot end, looking to the head: the sections at both bars and at mid-bay.",
			Title:   "Sections at the bars and at mid-bay",
			Desc: "Three sections across the bed over one bed bottom: tangent walls on a round underbody. Head bar %s wide and %s " +
				"deep, mid-bay %s and %s, foot bar %s and %s. Walls at %s above the horizontal at the head bar.",
		},
		MidBay: "mid-bay",
		Radius: "R %s",
	}
}

// Ends says what belongs to the table of both ends.
type Ends struct {
	Caption string

	Bar, Drop, Girth, TailGirth, Wall, Leg, InChannel, ApexOut, ApexUp, Angle string
}

func englishEnds() Ends {
	return Ends{
		Caption:   "Both ends as they hang under the sleeper",
		Bar:       "bar, between cord centres",
		Drop:      "drop at the bar",
		Girth:     "girth at the bar, cord to cord",
		TailGirth: "girth at the tail's end",
		Wall:      "wall above the horizontal at the bar",
		Leg:       "leg, bar tip to apex",
		InChannel: "of the leg, inside the channel of its tail",
		ApexOut:   "apex from mid-bay, horizontal",
		ApexUp:    "apex above the bed bottom",
		Angle:     "hang angle above the horizontal",
	}
}

// Place says what belongs to hanging it between its supports.
type Place struct {
	Caption string // distance

	Anchor, AnchorAbove, Line, Apex, ApexAbove, Pull, Weight, Most, Lowest, Edge, Beyond, Ridge, Covers string
}

func englishPlace() Place {
	return Place{
		Caption:     "Between anchors %s apart, the sleeper in it",
		Anchor:      "anchor above ground",
		AnchorAbove: "the one anchor above the other",
		Line:        "hang line, from apex to anchor",
		Apex:        "to check afterwards: apex above ground",
		ApexAbove:   "the one apex above the other",
		Pull:        "pull along the line",
		Weight:      "the same as a weight",
		Most:        "largest pull along the line, any state",
		Lowest:      "bed's lowest point above ground",
		Edge:        "side cord at mid-bay above ground",
		Beyond:      "the higher anchor stands above the height given by",
		Ridge:       "shelter's ridge",
		Covers:      "least that covers it",
	}
}

// Roll says whether the bed is steady.
type Roll struct {
	Steady, Rocks, NotSteady, TurnsOver string // titles

	Turns string // centre of mass aside, how far the bed turns, what the lower cord carries
	Over  string // centre of mass aside, how far it turned before it turns over
	Mend  string
}

func englishRoll() Roll {
	return Roll{
		Steady: "Stable against rolling", Rocks: "It rocks more than most like", NotSteady: "It is not stable", TurnsOver: "It turns over",
		Turns: "With the centre of mass %s aside, on the back, the bed turns by %s; the lower cord then carries %s of the weight. " +
			"Under 20° is stable.",
		Over: "Before the centre of mass is %s aside, with the bed turned by %s, it is at rest no more.",
		Mend: "Deeper drops at the bars, a steeper hang or wider bars make it more stable.",
	}
}
