package wording

// Cords says what belongs to the cord set.
type Cords struct {
	Title    string
	How      string  // way of rigging, light pull
	Loops    string  // of whole loops
	Straight Picture // caption: cord, how many, cut length, kind; title: cord; desc: cut length

	Terms     string // cord, unit
	Term      string // column
	CutLength string // how many

	Marks                    string // cord, unit
	Mark, FromStart, FromEnd string // columns
	Spliced                  string // column: the place that distances are read from
	Buried                   string

	Readings string // cord, unit
	Columns  [5]string
}

func englishCords() Cords {
	return Cords{
		Title: "The cord set",
		How: "Rigged as %s. Mark every cord before it is spliced. The last column of each table is what a tape reads after every " +
			"splice. All marks and readings are for cord that is drawn straight by the light pull of %s.",
		Loops: "Of the two runs the first has the join, and the second is whole.",
		Straight: Picture{
			Caption: "%s, cut %d at %s from %s. Pale: ends that are buried.",
			Title:   "%s as cut, with its marks",
			Desc:    "The cord lies straight from its start at the left; marks at the distances that the table gives. Cut length %s.",
		},
		Terms: "Cut length of the %s, term by term, in %s", Term: "term", CutLength: "cut length, %d of them",
		Marks: "Marks on the %s, in %s", Mark: "mark", FromStart: "from start", FromEnd: "from end", Spliced: "spliced, from %s",
		Buried:   "buried",
		Readings: "What the tape must show on the %s after each splice, in %s",
		Columns:  [5]string{"splice", "from", "to", "before", "after"},
	}
}
