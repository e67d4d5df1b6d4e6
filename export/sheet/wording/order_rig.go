package wording

// englishFitting says how the bars come into the bed.
func englishFitting() map[Task]Step {
	return map[Task]Step{
		CutBars: {"Cut the bars", []string{
			"Cut both bars square.",
			"Deburr them inside and outside.",
			"Fix a tip in each end.",
			"Set each tip through its opening into the tip gap.",
		}, "Each tip stands between its two splices, and no sharp end touches cord or cloth."},
		TackTails: {"Tack the corners of the tails", []string{
			"Put the bars in and draw the legs straight.",
			"Measure along each leg from the tip of its bar.",
			"Tack the corner of the tail to the leg there, with strong thread through both.",
		}, "No corner can ride up its leg."},
	}
}
