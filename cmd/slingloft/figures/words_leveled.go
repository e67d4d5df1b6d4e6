package figures

// leveledRows is how many lengths are told of a bed before and after it was cut again.
const leveledRows = 5

// LeveledWords says what belongs to a bed that was cut again from the cloth as it hangs.
type LeveledWords struct {
	Title                   string
	How                     string // under what, how many rounds
	AsBody, Round           string
	Before, After           string
	Rows                    [leveledRows]string
	Sheared                 string
	Seams                   string // head, foot
	Sides                   string // unit
	Place, Moves, HalfWidth string
	Judge                   string
}

func englishLeveled() LeveledWords {
	return LeveledWords{
		Title:  "Level as the cloth hangs: the bed was cut again",
		How:    "hung as cloth %s, the sides were moved in %d rounds until it lay level",
		AsBody: "under the sleeper as a chain of rounded bodies", Round: "under an even weight in the round section of the design",
		Before: "as it was", After: "cut again",
		Rows: [leveledRows]string{
			"highest over lowest under the sleeper",
			"highest over lowest of the whole bed",
			"rim of the dent at crown and soles, above them",
			"cloth in gathers on the centre line, head tail",
			"cloth in gathers on the centre line, foot tail",
		},
		Sheared: "largest shear as it hangs",
		Seams:   "end seams longer by: head %s, foot %s on each side of the centre line",
		Sides:   "each side moved, outwards, at its places from mid-bay (%s):",
		Place:   "place", Moves: "moved", HalfWidth: "half width, at the cord",
		Judge: "The judge is the body that lies there, in the sleeper's posture: it spreads the cloth over shoulders and hips, which the " +
			"round section of the design does not. It has to lie level to 2 mm, as a back feels it; elsewhere nothing draws the cloth taut, " +
			"and 10 mm do. In another posture, or for another sleeper, this cut lies uneven by some centimetres: slingloft hang shows it. " +
			"Figures of the made bed go on reckoning with the round section, so that they show the cloth uneven where the body is not round.",
	}
}
