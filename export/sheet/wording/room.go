package wording

// Room says what belongs to the room in the bed.
type Room struct {
	Title   string
	Caption string    // unit
	Columns [8]string // part, lying, opening, breadth, to spare, push, pressure, floor
	Out     string    // the body does not lie in the cloth
	// Picture tells the part and how it lies; its description the opening, breadth and depth
	// of the part and the angle of the cloth besides.
	Picture     Picture
	Rise        string // under the crown, under the soles
	OverFace    string // length
	Upright     string // length
	Under, Over string // length
	How         string
}

func englishRoom() Room {
	return Room{
		Title:   "Room in it",
		Caption: "Room between the cords, %s",
		Columns: [8]string{"part", "lying", "opening", "breadth", "to spare", "push", "pressure", "floor"},
		Out:     "does not lie in the cloth",
		Picture: Picture{
			Caption: "The %s, %s, in the bed as it is made.",
			Title:   "The %s in the bed, %s",
			Desc: "Section across the bed at the %s, lying %s. The cords stand %s apart. The part is %s broad and %s deep. " +
				"The cloth runs from its sides to the cords at %s. Dashed is the round section of the design.",
		},
		Rise:     "The bed bottom lies %s higher under the crown and %s higher under the soles than under the hips.",
		OverFace: "The head bar stands %s above the face under it.",
		Upright:  "Sitting up at mid-bay, the crown stays %s off the nearer bar.",
		Under:    "The crown is then %s under the line from apex to apex.",
		Over:     "The crown is then %s above the line from apex to apex.",
		How: "Push is what the cloth presses from each side on the whole part. " +
			"Floor is how far the cloth under it lies above the round section of the design; minus: below. " +
			"Knees are drawn up at a right angle; where they lack room they are drawn up less. " +
			"Measures that are not given are estimated from the survey's mean body. Bodies differ.",
	}
}
