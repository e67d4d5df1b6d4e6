package wording

import "slingloft/outline/piece"

// Pieces says what belongs to the pieces.
type Pieces struct {
	Title  string
	Key    string  // to the lines of the pictures
	Flat   Picture // caption: piece, how many; title: piece; desc: piece, along, across
	Across string  // how many times as wide a strip is drawn
	Grain  string  // beside the arrow

	Figure                        string // column
	HowMany, AsCut, Finished      string
	Mirrored                      string // how many
	Notches, Lies                 string
	Margins                       map[piece.Edge]string // that of a join holds its rim
	AnyWay, SameWay, EitherWay    string                // how a piece lies on the roll
	Checks                        string                // piece
	FromTo                        string
	Templates                     string // stock
	Template, Number, Along, Wide string // columns, the last two with the unit
}

func englishPieces() Pieces {
	return Pieces{
		Title: "The pieces",
		Key: "Orange: cut. Green, dash and dot: stitch line. Blue, dashed: fold or press. Dark blue: notches and marks. " +
			"Notches have one stroke on the left side and two on the right, the sides as a sleeper on the back has them. " +
			"The warp runs along the grain arrow.",
		Flat: Picture{
			Caption: "%s, cut %d.",
			Title:   "%s, flat",
			Desc:    "Outline of the %s as cut: %s along and %s across. Its figures stand in the table below.",
		},
		Across:  "Across it is drawn %d times as wide as along.",
		Grain:   "grain",
		Figure:  "figure",
		HowMany: "how many", AsCut: "as cut, along and across", Finished: "finished, along and across",
		Mirrored: "%d, every second one mirrored",
		Notches:  "notches", Lies: "grain",
		Margins: map[piece.Edge]string{
			piece.AtSide:        "allowance at the side",
			piece.AtSides:       "allowance at the sides",
			piece.AtJoin:        "allowance at the %s, flat-felled",
			piece.AtEnds:        "allowance at the body's ends",
			piece.TurnedEnds:    "double-fold hem at the body's ends, each fold",
			piece.AtLongEdges:   "turn-under at each long edge",
			piece.AtFoot:        "stitch line from the folded edge",
			piece.AtDepth:       "finished depth, stitch line to fold",
			piece.AtTurnedEnds:  "allowance at the ends, turned in",
			piece.AtOpening:     "worked opening at each bar tip",
			piece.AtOuterEdge:   "allowance at the outer edge",
			piece.AtInnerEdge:   "turn-under at the inner edge",
			piece.AtSeamOpening: "opening at each bar tip",
			piece.AtSeam:        "allowance at the seam",
			piece.AtHem:         "double-fold hem at the top edge, each fold",
			piece.AtDip:         "dip of the top edge",
			piece.AtSackSeam:    "allowance at the seams",
			piece.AtMouth:       "double-fold hem at the mouth, each fold",
			piece.AtCorner:      "line across a corner, from its tip",
			piece.AtTarpEdge:    "double-fold hem at the tarp's edges, each fold",
			piece.AtTarpJoin:    "allowance at joins and ridge, flat-felled",
			piece.AtCoverSeam:   "allowance at ridge and corners",
			piece.AtCoverEdge:   "lower edge, from the net line to the fold",
			piece.AtCoverHem:    "hem of the lower edge",
			piece.AtPatch:       "turn-under at the two inner edges",

			piece.AtLiningOpening: "double-fold hem at the opening, each fold",
		},
		AnyWay: "any way", SameWay: "warp along the arrow, all pieces the same way", EitherWay: "warp along the arrow, either end first",
		Checks:    "%s: measure these on the marked net line before cutting",
		FromTo:    "from and to",
		Templates: "Stiff templates and gauges, from %s",
		Template:  "template", Number: "number", Along: "along, %s", Wide: "across, %s",
	}
}

// Lay says what belongs to the roll and the sheets with their pieces.
type Lay struct {
	Title  string
	Roll   string // names: of the roll,
	RollOf string // of one of several: which, of how many
	Sheet  string // of a sheet: which, of how many
	// OnRoll tells name, material, length, width and use of the roll, OnSheet the same of
	// a sheet.
	OnRoll, OnSheet                 string
	Desc                            string // how many parts, width, height, use
	Hatched                         string // what is kept clear
	Runs                            string // where the roll runs
	Selvedge, UpperSelvedge, CutEnd string // beside its edges
	Flaws, KeepOuts                 Count

	Together string // how many beds are laid together, which of them are this hammock's
	Bed      string // its number
	OfBed    string // its number, what is one's of several

	Places                    string // unit
	Columns                   [6]string
	AsDrawn, Turned, Mirrored string // how a piece lies: by which angle; mirrored beside that
}

func englishLay() Lay {
	return Lay{
		Title:    "The lay",
		Roll:     "Cloth lay",
		RollOf:   "Cloth lay %d of %d",
		Sheet:    "Template sheet %d of %d",
		OnRoll:   "%s on %s: %s of roll %s wide, %s used.",
		OnSheet:  "%s, %s, %s × %s, %s used.",
		Desc:     "%d parts on %s by %s, %s of it used.",
		Hatched:  "Hatched, and kept clear: %s.",
		Runs:     "The roll runs from left to right; the table below says where each lies.",
		Selvedge: "lower selvedge", UpperSelvedge: "upper selvedge", CutEnd: "cut end",
		Flaws:    Count{One: "1 flaw of the cloth", Many: "%d flaws of the cloth"},
		KeepOuts: Count{One: "1 keep-out", Many: "%d keep-outs"},
		Together: "%d beds are laid together. This sheet is for %s: the pieces of cloth with that number on them.",
		Bed:      "bed %d", OfBed: "bed %d: %s",
		Places:  "Where each piece's outermost points lie: from the roll's cut end, and from the lower selvedge, in %s",
		Columns: [6]string{"piece", "from", "to", "from selvedge", "to", "lies"},
		AsDrawn: "as drawn", Turned: "turned %s", Mirrored: "%s, mirrored",
	}
}

// Offsets says what belongs to the curves that are marked by hand.
type Offsets struct {
	Title   string
	How     string
	Caption string // curve, chord, length along it, unit
	Columns [3]string
	Read    string
}

func englishOffsets() Offsets {
	return Offsets{
		Title: "Offsets tables",
		How: "To mark a curve of the net line by hand: strike a straight line between its two ends, set off the distances " +
			"along it, and from each the offset square to it; a batten through the points gives the curve. The last column is " +
			"the way along the curve, to prove it with a tape.",
		Caption: "%s: chord %s, along the curve %s; columns in %s",
		Columns: [3]string{"along the chord", "offset", "along the curve"},
		Read: "The row set bold is where the curve is deepest. Seen with the lettered face up, a positive offset lies to the right of " +
			"the way from the first end of the curve to its last, and a negative one to the left. Sides run from head to foot; the head " +
			"end from its left corner to the centre line; the foot end from the centre line to its left corner.",
	}
}

// Seams says what belongs to the seam walk.
type Seams struct {
	Title          string
	How            string
	Caption        string // unit
	Columns        [9]string
	Parts          string // seam, unit
	From, To, Ease string // columns of its parts, beside the two pieces
	Gathers        string
}

func englishSeams() Seams {
	return Seams{
		Title: "Seam walk",
		How: "Both edges of every seam, measured along the net line. Planned ease is what the two change against each other " +
			"when the cloth shears to its hung shape; it is spread between the notches. What remains has to stay within the tolerance.",
		Caption: "Seams, in %s; a and b are the two pieces",
		Columns: [9]string{"seam", "flat a", "flat b", "hung a", "hung b", "ease", "per 100", "remains", "allowed"},
		Parts:   "%s, notch to notch, in %s",
		From:    "from", To: "to", Ease: "ease",
		Gathers: "fullness at the fold (minus: stretch to fit)",
	}
}
