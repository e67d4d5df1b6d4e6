package wording

// englishFitting says how the bars come into the bed.
func englishFitting() map[Task]Step {
	return map[Task]Step{
		CutBars: {"Cut the bars and fix their tips", []string{
			"The plug of a tip sits in the bar; its pin stands out, in line with the bar.",
			"The cords press on the plug's shoulder, and so press the plug into the bar.",
			"Measure your tips: if they are other than stated, cut the bars by the distance between the cords.",
			"Cut both bars square.",
			"Deburr them inside and outside.",
			"Glue a tip into each end, so that it does not fall out while the cords are slack.",
			"Round the end of each pin.",
		}, "From shoulder to shoulder each bar measures as stated; no edge is sharp."},
		TackTails: {"Fit the bars and tack the tails", []string{
			"Set the pin of each tip through the opening into the tip gap.",
			"Lay one cord on either side of the pin, against the plug's shoulder.",
			"Draw the legs straight.",
			"The corner of a tail is the mouth of its channel, where the leg comes out.",
			"Measure along each leg from the middle of the pin.",
			"Draw the corner along the leg to that mark, and tack it there with strong thread through both.",
		}, "Pins stand out past both cords; no corner can ride up its leg."},
	}
}
