package wording

// Leveled says what belongs to a body that was cut again from the cloth as it hangs.
type Leveled struct {
	Title         string
	Before, After string
	// Outline tells the most that a side moved inwards and outwards, and by how much the end
	// seams became longer; Moved likewise but for the seams.
	Outline, Moved, Lying      Picture
	Place, Out, Station, Above string // axes: unit
	Caption                    string
	Under, Whole, Rim          string
	Gathers, EndSeam           string // end
	Shear                      string
	How                        string
}

func englishLeveled() Leveled {
	return Leveled{
		Title:  "Level as the cloth hangs",
		Before: "as it was", After: "cut again",
		Outline: Picture{
			Caption: "The body flat, at the cords: before it was cut again, and as it is cut.",
			Title:   "The outline before and after",
			Desc:    "The sides move by %s to %s outwards. The end seams become longer by %s at the head and %s at the foot on each side.",
		},
		Moved: Picture{
			Caption: "How far each side is moved outwards, along the flat cloth.",
			Title:   "How far the sides are moved",
			Desc:    "The sides move by %s to %s outwards.",
		},
		Lying: Picture{
			Caption: "The underside of the body that lies there, before and after.",
			Title:   "How level the body lies",
			Desc:    "The body lies uneven by %s before, by %s after.",
		},
		Place: "place from mid-bay, %s", Out: "outwards, %s", Station: "station, %s", Above: "off the design, %s",
		Caption: "The bed as the cloth hangs",
		Under:   "highest over lowest under the sleeper", Whole: "highest over lowest of the whole bed",
		Rim:     "rim of the dent at crown and soles, above them",
		Gathers: "cloth in gathers on the centre line, %s tail", EndSeam: "%s end seam longer, on each side",
		Shear: "largest shear of the cloth",
		How: "The body was hung as cloth under the sleeper, and its sides were moved until the sleeper lay level. " +
			"What is cut, sewn and marked follows the outline as it is cut. " +
			"Under another sleeper, or in another posture, it lies uneven by some centimetres.",
	}
}
