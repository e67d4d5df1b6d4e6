package figures

import "slingloft/outline/piece"

// CordWords says what belongs to the cords.
type CordWords struct {
	Title   string    // way of rigging
	Cut     string    // cord, how many, cut length
	Columns [3]string // mark, from start, from end
	Spliced string    // further column: place that distances are read from
	Buried  string    // a distance that lies inside a bury
}

func englishCords() CordWords {
	return CordWords{
		Title:   "Cords: %s",
		Cut:     "%s, %d of: cut %s",
		Columns: [3]string{"mark", "from start", "from end"},
		Spliced: "spliced, from %s",
		Buried:  "%s (buried)",
	}
}

// SeamWords says what belongs to the seam walk.
type SeamWords struct {
	Title    string // unit
	Columns  [9]string
	Out      string // what is allowed, where more remains
	Parts    string // seam
	From, To string // columns of its parts, beside the two pieces
	Ease     string
	Gathers  string
}

func englishSeams() SeamWords {
	return SeamWords{
		Title:   "Seam walk (%s)",
		Columns: [9]string{"seam", "flat", "flat", "hung", "hung", "planned ease", "per 100", "remains", "allowed"},
		Out:     "%s OUT",
		Parts:   "%s, notch to notch:",
		From:    "from", To: "to", Ease: "ease", Gathers: "fullness at the fold (minus: stretch to fit)",
	}
}

// OffsetWords says what belongs to the offsets tables.
type OffsetWords struct {
	Title   string // curve, unit, chord, length along the curve
	Columns [3]string
	Deepest string // depth
}

func englishOffsets() OffsetWords {
	return OffsetWords{
		Title:   "Offsets: %s (%s; chord %s, along the curve %s)",
		Columns: [3]string{"along the chord", "offset", "along the curve"},
		Deepest: "%s deepest",
	}
}

// PieceWords says what belongs to the list of pieces.
type PieceWords struct {
	Title   string
	Columns [6]string
	Stocks  map[piece.Stock]string
	Prove   string // piece
}

func englishPieces() PieceWords {
	return PieceWords{
		Title:   "Pieces",
		Columns: [6]string{"piece", "count", "along", "across", "cut outline", "stock"},
		Stocks:  map[piece.Stock]string{piece.Cloth: piece.Cloth.String(), piece.Board: piece.Board.String()},
		Prove:   "%s, to prove it square on the cloth:",
	}
}

// LayWords says what belongs to the lay.
type LayWords struct {
	Title     string
	Cloth     string // length, width, use in %
	Roll      string // cloth, length, width, use in %
	Templates string // sheets, width, height, use in %
}

func englishLay() LayWords {
	return LayWords{
		Title:     "Lay",
		Cloth:     "cloth: %s of roll %s wide, %.1f %% used",
		Roll:      "%s: %s of roll %s wide, %.1f %% used",
		Templates: "templates: %d sheets of %s × %s, %.1f %% used",
	}
}
