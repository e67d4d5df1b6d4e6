package figures

// ShapeWords says what belongs to the hung shape.
type ShapeWords struct {
	Title   string
	Thrust  string // thrust, side depth, where, length of the side cord
	Tension string // largest, where
	Slide   string // force
}

func englishShape() ShapeWords {
	return ShapeWords{
		Title:   "Hung shape",
		Thrust:  "thrust of each side's cord %s, side depth %s at the cord line, at %s from mid-bay, side cord %s from tip to tip",
		Tension: "largest cord tension %s, at %s from mid-bay",
		Slide:   "the bed is inclined: the sleeper slides with %s",
	}
}

// endFigure is a figure that each end has.
type endFigure int

const (
	endBar endFigure = iota
	endDrop
	endGirth
	endTailGirth
	endWall
	endLeg
	endTailArc
	endApexOut
	endApexUp
	endHangAngle
	endLevelPull
	endUprightPull
	endCompression
	endLegTension
	endTipTension
	endFigures
)

// EndWords says what belongs to the ends.
type EndWords struct {
	Title   string
	Figures [endFigures]string
}

func englishEnds() EndWords {
	return EndWords{
		Title: "Ends",
		Figures: [endFigures]string{
			endBar:         "bar, between cord centres",
			endDrop:        "drop",
			endGirth:       "girth at the bar",
			endTailGirth:   "girth at the tail's end",
			endWall:        "wall angle",
			endLeg:         "leg, tip to apex",
			endTailArc:     "cord over the tail",
			endApexOut:     "apex from mid-bay",
			endApexUp:      "apex above the bed bottom",
			endHangAngle:   "hang angle",
			endLevelPull:   "pull at the apex, horizontal",
			endUprightPull: "pull at the apex, vertical",
			endCompression: "bar compression",
			endLegTension:  "leg tension at the tip",
			endTipTension:  "side cord tension at the tip",
		},
	}
}

// StationWords says what belongs to the stations of the shape.
type StationWords struct {
	Title             string    // unit
	Columns           [6]string // station, opening, height, bottom, girth, wall
	Load, Cord, Cloth string    // further columns: unit
}

func englishStations() StationWords {
	return StationWords{
		Title:   "Stations (%s from mid-bay, head negative)",
		Columns: [6]string{"station", "opening", "cord height", "bottom", "girth", "wall"},
		Load:    "load %s", Cord: "cord %s", Cloth: "cloth %s",
	}
}

// BodyWords says what belongs to the flat body.
type BodyWords struct {
	Title         string
	Cut           string // way of cutting, reach
	Net, Straight string // the ways
	Shortened     string // strain in %, how far a side moves in
	NotShortened  string
	Shear         string // angle, station, off the centre line
	OffLevel      string // how high, where, how low, where
	Departs       string // unit
	Columns       [4]string
}

func englishBody() BodyWords {
	return BodyWords{
		Title: "Flat body",
		Cut: "cut %s; seam lines lie %s inside the cord line; side depth and girths are at the cord line, offsets " +
			"and templates at the seam lines",
		Net: "net", Straight: "straight",
		Shortened:    "weft shortened for its stretch under the sleeper: up to %s %%, a side moved in by %s at most",
		NotShortened: "weft not shortened for its stretch under the sleeper: cloth.weft_stiffness is not given, or bed.compensate is off",
		Shear:        "largest shear when hung %s, at %s from mid-bay and %s off the centre line",
		OffLevel:     "the side curve is drawn, not balanced: the bed will not lie level. It stands %s high at %s and %s low at %s from mid-bay",
		Departs:      "straight tails do not hang level; girth that would, girth of the cut (%s):",
		Columns:      [4]string{"station", "level", "cut", "departs"},
	}
}
