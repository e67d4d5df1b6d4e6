package export

// English returns the words in English.
func English() Words {
	notes := englishNotes()
	for kind, text := range englishDifferences() {
		notes[kind] = text
	}
	return Words{
		Notes: notes, Rules: englishRules(),
		Left: map[Skip]string{
			Hidden: "hidden", Off: "on a layer that is off", Frozen: "on a frozen layer", PaperSpace: "in paper space",
			Transparent: "transparent", Unpainted: "without stroke or filling", Lengthless: "without length",
			Text: "of text", Picture: "of pictures and fillings",
		},
		LeftOf: "%d %s", List: ", ", Together: "; ",
	}
}

func englishNotes() map[NoteKind]string {
	return map[NoteKind]string{
		ExampleValues: "example values, try yours on scrap first",
		CutOnLines: "cut on the lines, since nothing says how wide the cut is: kerf under [machine], as a kerf comb shows it, " +
			"cuts beside them",
		KnifeOnEdges: "the knife swings into line on the pieces' edges, where its cuts begin: lead under [machine] begins them in the waste",
		NoJobSays:    "left out: %s: no job says how the %s does it in %q",
		OnlyCuts:     "left out: %s: a %s only cuts %q, but for what a job asks by this work and material",
		SlitsWait:    "left out: slits: they are cut when their edges are bound, or by a job for cut-inside in %q",

		FieldStarts: "field %d of %d", FieldWithoutTabs: "outlines that are longer than a field have no tabs",
		FieldGoesOn:    "field %d of %d: move the stock on by %s, till crosses %s and %s lie under the tool",
		NoRoomInWaste:  "left out, since there is no room in the waste: %s",
		CutIntoCloth:   "caution: %s: cut into cloth that carries a person, as a job asks",
		BurntIntoCloth: "caution: %s: burnt into cloth that carries a person, as a job asks",
		CornerOfField:  "%s of the field", CornerOfStock: "%s of the stock", NoRoomForLead: "no room for a lead-in",
		SlitsToo: "%s, slits", SlitsAlone: "slits",
		LargePage:  "longer than %s: a program that does not know pages with a unit of their own makes it %s times too small; measure a check bar",
		Past16Bits: "beyond %s, where plotters that count in 16 bits stop",
		BelowZero: "counts below zero from the %s corner, where plotters that stop at their zero draw nothing: " +
			"origin = \"lower-left\" under [machine] counts above it",
	}
}

func englishDifferences() map[NoteKind]string {
	return map[NoteKind]string{
		NoLayer: "no layer %.40q", StrangeLayer: "layer %.40q is not due", MoreLayers: "more layers",
		ObjectStrange: "%s is not due", ObjectMissing: "%s is missing", ObjectCount: "%s is there %d times, %d due", ObjectOff: "%s %s",
		MoreObjects:     "%d more objects do not look as they should",
		PropertyMissing: "lacks %s, %.40q due", PropertyStrange: "has %s %.40q", PropertyOff: "has %s %.40q, %.40q due",
		StepsMissing: "%s missing, the first %.60q", StepsStrange: "%s not due, the first %.60q on line %d",
		StepsOff: "%s where %d are due, from line %d on: %.60q where %.60q is due",
		StepOff:  "line %d: %.60q where %.60q is due", MoreSteps: "%s more changed",
		OneStep: "1 step", ManySteps: "%d steps", InContent: "%s, %s",
		PictureOff: "picture of %v pixels, %v due", PixelsOff: "%d of %d pixels are of another colour",
		OwnLinesOff: "the lines of your own are not those of the machine", BreaksOff: "the program breaks off",

		SheetOff: "sheet of %s × %s, %s × %s due", LineCount: "%d lines where %d are due",
		BarOff:   "%s measures %s, %s due",
		LinesOff: "%s off, most of all %s, by %s", LineCounted: "1 line", LinesCounted: "%d lines",
		Rescaled: "rescaled to %.3f %% along x and %.3f %% along y", Displaced: "moved by %s along x and %s along y",
		LinesMissing: "missing: %s", LinesStrange: "not due: %s", MoreLines: "%s and %d more lines",
		OnceMore: "%s once more", Unnamed: "a line at %.1f, %.1f", NamedSo: "%s", SeveralOff: "%s",
		WorkOff: "%s is %s, %s due", LineClosed: "%s is closed", LineOpen: "%s is open",

		Disagrees: "does not agree: %s", MoreNotes: "%d more", SamePicture: "agrees: the same picture", Agreeing: "agrees: %d lines, worst %s",
	}
}
