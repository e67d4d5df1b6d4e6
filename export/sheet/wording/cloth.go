package wording

// Cloth says what belongs to the cut as it hangs as cloth.
type Cloth struct {
	Title string
	Moves string // it does not come to rest
	Guide string
	// Drawn tells the largest tension and what part is slack; Bottom the lowest and the
	// highest place of the bottom line off the design.
	Drawn              Tension
	Bottom             Picture
	Station, Higher    string // axes: unit
	Caption            string
	Crown, Seat, Soles string
	Level              string
	Line, Bar          string // end
	Shear, Slack       string
	How                string
	CutAgain           string // what it has to do with the other figures of a bed cut again from it
	Elsewhere          string // and of others
}

// Tension says what belongs to the picture of the cloth's tension.
type Tension struct {
	Picture
	Little, Slack string
	Most          string // tension
}

func englishCloth() Cloth {
	return Cloth{
		Title: "The cloth as it hangs",
		Moves: "Not at rest",
		Guide: "The simulation did not come to rest. Take its figures for a guide.",
		Drawn: Tension{
			Picture: Picture{
				Caption: "From above, head to the left: the darker, the harder the cloth is drawn across the bed.",
				Title:   "How hard the cloth is drawn",
				Desc:    "Plan of the cloth as it hangs. It pulls across the bed by up to %s. %s of it is slack.",
			},
			Little: "little", Most: "up to %s", Slack: "slack",
		},
		Bottom: Picture{
			Caption: "The bed bottom under the sleeper, over where the design has it.",
			Title:   "The bed bottom as the cloth hangs",
			Desc:    "The bed bottom lies between %s and %s off the design from head to feet.",
		},
		Station: "station, %s", Higher: "higher than designed, %s",
		Caption: "The cloth under the sleeper, simulated",
		Crown:   "bed bottom under the crown, off the design", Seat: "under the middle of the weight", Soles: "under the soles",
		Level: "highest over lowest place under the sleeper",
		Line:  "pull in the %s hang line", Bar: "thrust along the %s bar",
		Shear: "largest shear of the cloth", Slack: "cloth that is slack across the bed",
		How: "The cut is hung as cloth under a chain of rounded bodies, with its cords, bars and lines. " +
			"The cloth is stiff along its threads, slack where it is pushed, and limp in shear. Nothing rubs.",
		CutAgain: "The bed was cut so that the body lies level in it. Figures elsewhere on this sheet lay a round section into it.",
		Elsewhere: "The figures elsewhere on this sheet lay a round section into the bed, which is level. " +
			"A body is broad at shoulders and arms and narrow at the head: the bed bottom follows it.",
	}
}
