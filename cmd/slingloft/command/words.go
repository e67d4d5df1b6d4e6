package command

import "slingloft/export"

// Words is all that the commands say on the screen beside what other packages tell, in
// one language.
type Words struct {
	Messages map[Message]string // texts with verbs, see [Message]
	Files    export.Words

	Overview, More          string          // help of the program, before and after the list of commands
	Help                    map[string]Help // by the commands' names
	Shared                  map[string]string
	Usage, Options, Example string // heads of a command's help
	Manual                  ManualWords
}

// Message is one thing to say. What fills it in stands beside it.
type Message int

// Of the command line.
const (
	UnknownCommand   Message = iota // name, [DidYouMean] or nothing
	BadOption                       // command, what is wrong, command
	TooManyArguments                // command, what it takes, what was given
	DidYouMean                      // name
	NeedsValue                      // flag
	EmptyArgument                   // command
	NoTime                          // flag, value
	NoSense                         // flag, value, why
	NoShortOption                   // letter
	NoOption                        // name, [DidYouMean] or nothing
	NameShell
	LayTimeRange // value
	CopiesRange  // command, value, how many beds at most
	JSONOrMaterials
	NoFormat     // command, name, formats
	NoPaper      // command, name, papers
	NotMeasured  // command, why
	NoScale      // command, why
	NotCalledSo  // name, what would do
	ThereAre     // names
	WriteName    // name
	NoFolder     // name
	NotAFolder   // name
	NoneHere     // folder
	BadEnding    // name
	NoSheetPaper // name
	NoSheetPart  // names, name
	ClothOfOne
	KeyRenamed     // file, line, key as it was called, as it is called
	NoUnits        // name
	NameFile       // of start
	BothToOutput   // name
	NoLying        // name
	ProposalNeeds  // flag, example
	BadMeasure     // flag, why
	BadThickness   // why
	ThicknessRange // value
	NoProposal     // why
	NoBed          // key, fault
	NoHost         // address, example
	VaryTwo
	VaryHow     // what was written
	VaryNoKey   // key, [DidYouMean] or nothing
	VaryTwice   // key
	VaryMany    // how many, at most
	ChartEnding // name
	OneForm
	VaryOrMaterials
	NothingVaried
	RoundOrSitting
	NoGuest // name, [DidYouMean] or nothing
)

// Of files.
const (
	FolderNotMade Message = iota + NoGuest + 1
	NotOpened
	NotRead
	NotWritten
	NotPlaced
	NotLookedAt
	NotRemoved
	ForceOr        // what is in the way, flag
	NothingToWrite // why
	NothingLeft
	FieldZero    // corner, width, height
	FieldFirst   // how many, lap
	FieldMoved   // number, how many, feed, of both crosses the name and two numbers
	NoCloth      // programs and plots of it are not written
	NoBoards     // likewise
	Note         // a note
	NoteOf       // file, note
	AndMore      // file, how many more
	Caution      // a warning
	NotByCut     // file
	ChangedSince // file
	NotTogether  // folder, files with how they were cut
	Unread       // of files to prove
	Disagreeing  // of files to prove
	RecordBroken // file, why
	AsItWasCut   // flags
	ZeroAt       // corner, width, height
	LargerThan   // MB
	NoDesignFile // name
)

// Of files that are proved.
const (
	IsMissing           Message = iota + NoDesignFile + 1
	IsNotDue                    // why
	Because                     // why, alone
	CannotBeRead                // why
	WasChanged                  // what is said of the file
	WasNotChanged               // likewise, [MachineSetOtherwise] or [SourceIsAnother]
	MachineSetOtherwise         //
	SourceIsAnother             //
	OfAnother                   // run or design
	OfEarlier                   // run
	OfEarlierCut                // [CutFor] or [CutForOwn]
	OfOtherDesign               // digest, now
	CutFor                      // scale, machine
	CutForOwn                   // scale
	FileHow                     // file, one of these
	RunUnread                   // why
	LayUnsound                  // why
	HasAnotherPlace             // what is not there, flags
)

// Of what was made.
const (
	DesignOf   Message = iota + HasAnotherPlace + 1 // name, digest
	ClothLaid                                       // pieces, length, width, use in %
	RollLaid                                        // cloth, pieces, length, width, use in %
	BoardsLaid                                      // parts, sheets
	HangLow
	BroughtIn // name, width, height, [OneHole] and so on
	OneHole
	Holes // how many
	OneLine
	Lines // how many
	KeptClear
	LeftOut // what
	MeasureBars
	MeasureCut // material
	MeasureFlat
	CalibrationLine // axis, length twice
	CutComb         // example
	CombLoose
	NoComb             // why
	CombNeedsThickness // example
	CombOfTool         // tool
	CombOfBoard
	CombTooThin
	SeamIsOff     // seam, what remains, what is allowed
	MarginNotMet  // check, margin, required
	WouldDo       // a message, what would do
	OfDesign      // the file of one of several designs, a message or a text
	NoCutFiles    //
	TooWeak       // check, margin, required, what would do
	NarrowCloth   // joins
	ReasonsBeside //
	Stopped
	NotHung      // why
	Hanging      // per cent
	SeenByOthers // address
	MessageCount // how many there are
)

// English returns the words in English.
func English() Words {
	all := map[Message]string{}
	for _, some := range []map[Message]string{englishUsage(), englishFiles(), englishProved(), englishMade()} {
		for m, text := range some {
			all[m] = text
		}
	}
	return Words{
		Messages: all, Files: export.English(),
		Overview: `Slingloft: from one design file to everything a bridge hammock is cut and sewn from.

usage: slingloft COMMAND [DESIGN] [options]

`,
		More: `
A command that takes a DESIGN uses a built-in one where none is named, so each
can be tried at once:

  slingloft cut                  the built-in design's files, into ./slingloft-out
  slingloft start my.toml        a design of your own to change
  slingloft figure my.toml       its figures: shape, forces, cords, seams, offsets
  slingloft cut my.toml --out my-files

slingloft COMMAND --help tells more. Exit status: 0 done, 1 cannot read or write,
2 usage or design at fault, 3 a required margin is not met, 4 a seam is out of
tolerance, 5 written files do not agree with the design.

People hang in what is made from these files: read the cautions in the README.
`,
		Help: englishHelp(), Shared: englishShared(),
		Manual: englishManual(),
		Usage:  "usage: slingloft %s%s [options]", Options: "options:", Example: "example:",
	}
}

func englishUsage() map[Message]string {
	return map[Message]string{
		UnknownCommand:   "there is no command %.40q%s; slingloft --help lists them",
		BadOption:        "%s: %s; slingloft %s --help lists the options",
		TooManyArguments: "%s: takes%s at most, not %s",
		DidYouMean:       ", did you mean %s?",
		NeedsValue:       "--%s needs a value",
		EmptyArgument:    "%s: a name without a letter in it; leave it out, or name a file",
		NoTime:           "--%s %s is not a duration; write one such as 60s or 5m",
		NoSense:          "--%s %s does not make sense; %s",
		NoShortOption:    "there is no option -%s",
		NoOption:         "there is no option --%s%s",
		NameShell:        "complete: name a shell: bash, fish or zsh",
		CopiesRange:      "%s: --copies %d: want 1 or more, and no more than %d beds together",
		LayTimeRange:     "cut: --lay-time %s: want 0 to 24h",
		JSONOrMaterials:  "figure: --json and --materials print different things; give one of them",
		NoFormat:         "%s: --as: there is no format %.20q; there are %s",
		NoPaper:          "%s: --paper %.20q: want one of %s",
		NotMeasured:      "%s: --measured: %v",
		NoScale:          "%s: --scale: %v",
		NotCalledSo:      "--only %.40q: no sheet or piece is called so; %s",
		ThereAre:         "there are %s",
		WriteName:        "write %s",
		NoFolder:         "prove: there is no folder %s; name the one that cut wrote into",
		NotAFolder:       "prove: %s is no folder; name the one that cut wrote into",
		NoneHere:         "%s: none of the files that cut writes is here",
		BadEnding:        "sheet: --out %.60q: the name has to end in .html or .pdf",
		NoSheetPaper:     "sheet: --paper is a4 or letter, not %.20q",
		KeyRenamed:       "note: %s:%d: %s is called %s now; it is read as before",
		NoSheetPart:      "sheet: --pages is one or more of %s, not %.20q",
		ClothOfOne:       "sheet: --cloth shows one design, not several",
		NoUnits:          "start: --units is mm or in, not %.20q",
		NameFile:         "start: name the file to write, as in slingloft start my.toml",
		BothToOutput:     "start: %s and --json both write to standard output; name a file",
		NoLying:          "start: --sleeps is back or side, not %.20q",
		ProposalNeeds:    "start: a proposal needs --stature and --mass; add --%s %q",
		BadMeasure:       "start: --%s: %v",
		BadThickness:     "calibrate: --thickness: %v",
		ThicknessRange:   "calibrate: --thickness %s: a comb is for boards of 0.2 mm to 50 mm, 0.008 in to 2 in",
		NoProposal:       "start: %v",
		NoBed:            "no bed that can be cut: %s: %s",
		VaryTwo:          "figure: --vary is given twice at most",
		VaryHow:          `figure: --vary %s: write a key and its values, as in --vary "bed.head_bar = 850 mm, 900 mm"`,
		VaryNoKey:        "figure: --vary: the design has no key %s%s",
		VaryTwice:        "figure: --vary %s is given twice; put all its values into one",
		VaryMany:         "figure: --vary: %d variants are more than %d",
		ChartEnding:      "figure: --chart %.60q: the name has to end in .html or .pdf",
		OneForm:          "figure: --json, --csv and --materials print different things; give one of them",
		VaryOrMaterials:  "figure: --materials lists one design; leave out --vary",
		RoundOrSitting:   "hang: --round is of one who lies; leave it or --sitting out",
		NoGuest:          "hang: --guest: the design has no guest %s%s",
		NothingVaried:    "figure: --csv and --chart are of --vary; say what is to be varied",
		NoHost:           "watch: --addr %.60q: want host and port, such as %s",
	}
}

func englishFiles() map[Message]string {
	return map[Message]string{
		FolderNotMade:  "the folder cannot be made",
		NotOpened:      "cannot be opened",
		NotRead:        "cannot be read",
		NotWritten:     "cannot be written",
		NotPlaced:      "cannot be put in place",
		NotLookedAt:    "cannot be looked at",
		NotRemoved:     "cannot be removed",
		ForceOr:        "%w; --force replaces what is there, %s writes elsewhere",
		NothingToWrite: "nothing to write: %s",
		NothingLeft:    "--only and for leave nothing",
		NoCloth:        "no programs and plots for the cloth, which the machine does not cut: for under [machine]",
		NoBoards:       "no programs and plots for the templates, which the machine does not cut: for under [machine]",
		Note:           "note: %s",
		NoteOf:         "note: %s: %s",
		AndMore:        "%s and %d more",
		Caution:        "warning: %s",
		NotByCut:       "note: %s was not written by cut and is not proved",
		ChangedSince:   "note: %s was changed since it was written, and is not proved",
		NotTogether:    "%s holds sheets that do not belong together: %s; keep them in folders of their own",
		Unread:         "not every file could be read",
		Disagreeing:    "some files do not agree with the design; slingloft cut writes them anew",
		RecordBroken:   "%s: %v; slingloft cut writes it anew",
		AsItWasCut:     "as it was cut: %s",
		ZeroAt:         "zero: the %s of the stock, which is %s wide and %s high",
		FieldZero:      "zero: the %s of the field, which is %s wide and %s high; it stays where it is while the cloth is moved on",
		FieldFirst:     "field 1 of %d: cut them in their order, the cloth moved on in between; cuts that go on in the next field overlap by %s",
		FieldMoved: "field %d of %d: move the cloth on by %s along the roll, till cross %s lies at x %s, y %s and cross %s at x " +
			"%s, y %s of the machine; " +
			"where they do not, cut nothing",
		LargerThan:   "larger than %d MB",
		NoDesignFile: "%s: cannot be read as a design file",
	}
}

func englishProved() map[Message]string {
	return map[Message]string{
		IsMissing:           "is missing",
		IsNotDue:            "is not due: %s",
		Because:             "%s",
		CannotBeRead:        "cannot be read: %s",
		WasChanged:          "%s; it was changed since it was written",
		WasNotChanged:       "%s; it was not changed since it was written: %s",
		MachineSetOtherwise: "the machine is set otherwise now",
		SourceIsAnother:     "what it was made from, or by, is another now",
		OfAnother:           "is not due: it belongs to another run or design",
		OfEarlier:           "is not due: it is left over from an earlier run",
		OfEarlierCut:        "is not due: it is left over from an earlier run, %s",
		OfOtherDesign:       "was cut for design %s, which is %s now",
		CutFor:              "cut at %s for %s",
		CutForOwn:           "cut at %s for the design's machine",
		FileHow:             "%s %s",
		RunUnread:           "what it keeps of a run of cut cannot be read: %s",
		LayUnsound:          "the lay that it keeps is not sound on this stock: %s",
		HasAnotherPlace:     "%s; it was cut with %s: name what has another place now",
	}
}

func englishMade() map[Message]string {
	return map[Message]string{
		DesignOf:    "%s, design %s, shape %s",
		RollLaid:    "%s: %d pieces on %s of roll %s wide, %.0f %% used",
		ClothLaid:   "cloth: %d pieces on %s of roll %s wide, %.0f %% used",
		BoardsLaid:  "templates: %d parts on %d sheets",
		HangLow:     "hang it low and try it out before you trust it; slingloft figure shows loads and cautions",
		BroughtIn:   "brought in: %s, %s × %s%s",
		OneHole:     ", 1 hole",
		Holes:       ", %d holes",
		OneLine:     ", 1 line in it",
		Lines:       ", %d lines in it",
		KeptClear:   ", kept clear",
		LeftOut:     "left out: %s",
		MeasureBars: "measure the long bars and write under [machine] what they measure, in place of these:",
		MeasureCut: "the machine only cuts %[1]q: the bars are the edges of a rectangle that is cut on its lines; measure it, add " +
			"one width of the cut, " +
			"and write under [machine], in place of these:",
		MeasureFlat:     "paper or card in place of the cloth will do, and saves it; cloth lies flat and slack while it is measured",
		CalibrationLine: `calibration_%[1]s = { drawn = %[2]q, measured = %[2]q }`,
		CutComb: "cut the comb from the board that was measured and push that board's edge into its slots: " +
			"the number at the slot that fits is the kerf; write it under [machine], as in kerf = %q",
		CombLoose: "the comb has no tabs, which would stand in its slots: hold it down where it comes loose",
		NoComb:    "no kerf comb: %s",
		CombNeedsThickness: "its slots hang on how thick the board is, to a tenth of what is to be found; " +
			"measure it with callipers in three places and run this again with --thickness %q, as it measures",
		CombOfTool:    "a %s takes nothing away",
		CombOfBoard:   "it is cut from a board, and the machine cuts cloth alone",
		CombTooThin:   "the board is no thicker than the cut is wide; take a thicker one",
		SeamIsOff:     "seam %s: %s remain beyond the planned ease, %s are allowed; raise seam.tolerance only after sewing a test piece",
		MarginNotMet:  "margin not met: %s: %.2f times the load, %.2f needed",
		WouldDo:       "%s; %s",
		OfDesign:      "%s: %s",
		NoCutFiles:    "no cut files are written until every margin is met, or the check is accepted by its name in margin.accepted",
		TooWeak:       "not strong enough with the example's parts: %s carries %s times the load, %s needed; %s",
		NarrowCloth:   "the cloth is narrow: the body is cut with %s",
		Stopped:       "stopped; nothing is written",
		NotHung:       "the cloth cannot be hung: %v",
		Hanging:       "hanging the cloth: %d %%",
		ReasonsBeside: "reasons and sources stand beside each value in the file; proportions are own choice",
		SeenByOthers:  "the page at %s can be seen by other machines",
	}
}
