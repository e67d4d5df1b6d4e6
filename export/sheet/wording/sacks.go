package wording

// Sacks says what belongs to the stow sacks.
type Sacks struct {
	Title   string
	Lead    string
	Caption string // of the table, with the unit
	Figure  string // column
	Holds   string // volume that the sack holds, closed
	Thick   string // diameter
	Square  string // side of the square
	Long    string
	Bars    string    // how the bars lie
	InBars  [2]string // two whole bars, four halves
	BarsLie string    // length and width of their sack as it lies
	Size    string    // along, across

	Filled, BarsFilled, Corner, Mouth    Picture
	Seam, Slit, HemWord, CordWord, Tip   string // beside the pictures
	Around, Side, CornerLine, HemWide    string // figures of the steps
	Allowance, CutCord, Height, StitchTo string
	Folds                                string
	RoundBase                            string // a sentence
}

func englishSacks() Sacks {
	return Sacks{
		Title:   "The stow sacks",
		Lead:    "The bed is packed with its cords, and the bars lie in a sack of their own.",
		Caption: "The sacks when they are filled, in %s",
		Figure:  "figure",
		Holds:   "holds", Thick: "diameter", Square: "side of its square", Long: "length up to where it is tied",
		Bars: "bars in their sack", InBars: [2]string{"two, side by side", "four halves, two on two"},
		BarsLie: "bars' sack as it lies", Size: "%s × %s",
		Filled: Picture{
			Caption: "The stow sack, filled and tied.",
			Title:   "The stow sack",
			Desc:    "Side view of the filled sack, %s thick and %s long, its mouth drawn together by the cord.",
		},
		BarsFilled: Picture{
			Caption: "The bars' sack with both bars.",
			Title:   "The bars' sack",
			Desc:    "The bars' sack as it lies, %s long and %s wide, with the bars in it.",
		},
		Corner: Picture{
			Caption: "A corner laid flat, seam on fold, and the line across it.",
			Title:   "Corner of a flat sack",
			Desc:    "A corner of the sack laid flat as a triangle; the stitch line crosses it %s from its tip.",
		},
		Mouth: Picture{
			Caption: "The slit at the mouth, with the drawcord in its hem.",
			Title:   "Mouth of a sack",
			Desc:    "The edges of the wall meet in a seam that stops at the hem, %s wide; the drawcord leaves there.",
		},
		Seam: "seam", Slit: "slit", HemWord: "hem", CordWord: "drawcord", Tip: "tip",
		Around: "base, once around", Side: "seam, from the bottom's net line or fold", CornerLine: "line across, from the tip", HemWide: "hem, each fold",
		Folds:     "fold lines of the mouth, from its raw edge",
		RoundBase: "Draw the base round its template on its place, and set the allowance off outside.",
		Allowance: "allowance", CutCord: "cord for each mouth, longer than around it by", Height: "finished height of the wall",
		StitchTo: "seam, from the closed end",
	}
}

// englishSackSteps says how the sacks are sewn.
func englishSackSteps() map[Task]Step {
	return map[Task]Step{
		MarkSacks: {"Mark the sacks by hand", []string{
			"Skip this step if the cloth is plotted, or cut by a machine.",
			"Draw each rectangle with rule and square where the lay has it: that is its cut line.",
			"Draw the net line inside it, and both fold lines of the mouth, as far off as stated.",
			"Letter each piece, and mark the notches as the pictures of the pieces show.",
		}, "Each piece has its cut line, its net line, its folds and its notches."},
		SewWall: {"Close the wall of the stow sack", []string{
			"The lettered face lies inside the sack: it is outside while you sew.",
			"Fold the wall so that the two edges meet that run from the base to the mouth, letters outside.",
			"Sew along the net line, from the net line of the base as far as stated.",
			"Backstitch there, and sew a zigzag stitch over both edges together, down to the base.",
			"Snip both allowances to the last stitch, and finish each beside the hem by itself.",
			"Press these ends apart, and stitch them down: that is the slit.",
		}, "The wall is a tube, and its last part, for the hem, is open."},
		SewEdges: {"Sew the edges of the stow sack", []string{
			"The lettered face lies inside the sack: it is outside while you sew.",
			"Fold the piece along its bottom fold, letters outside, so that both mouths meet.",
			"Sew both side edges on the net line, from the fold as far as stated.",
			"Backstitch there, and sew a zigzag stitch over both edges together, down to the fold.",
			"Snip the allowances to the last stitches, and finish each beside the hem by itself.",
			"Press these ends apart, and stitch them down: these are the slits.",
		}, "The piece is a bag that lies flat, with an open slit at each side of its mouth."},
		SewCorners: {"Sew across the corners", []string{
			"Pull the two layers of a corner apart, until seam and bottom fold lie on each other.",
			"The corner is a triangle now, with the marked line across it.",
			"Sew along that line, and backstitch at both ends.",
			"Do the same at the other corner.",
		}, "The bottom is a square, and both triangles lie on it."},
		HemMouth: {"Hem the mouth", []string{
			"Fold the mouth twice towards the lettered face, and press it.",
			"Stitch beside the inner fold, right round, and leave the slit open.",
		}, "A cord runs through the hem, in and out at a slit."},
		SewBase: {"Sew in the base", []string{
			"Lay the base on the bottom of the wall, both lettered faces outside.",
			"Pin its double notch to the seam of the wall, then the other notches, then between.",
			"Sew on the net line, the base below, turning it little by little.",
			"Sew a zigzag stitch over both edges together, and turn the sack.",
		}, "Base and wall meet without a pleat, and the notches lie on each other."},
		SewBarsSack: {"Sew the bars' sack", []string{
			"Fold the piece along its middle fold, letters outside.",
			"Sew the closed end and the long edge on the net line.",
			"Stop as far from the closed end as stated, and backstitch.",
			"Snip, finish, press apart and stitch down the allowances beside the hem.",
			"Hem the mouth as that of the stow sack, and turn the sack.",
		}, "The bars slide in without force, and the mouth closes over their ends."},
		DrawCords: {"Draw the cords in", []string{
			"Draw a cord through each hem with a blunt needle.",
			"Tie its ends together, or put a cord lock on them.",
			"Pack the bed once, and see that the mouth closes.",
		}, "Each mouth closes until no hand goes through."},
	}
}
