package form

import "slingloft/outline/design"

// Words is what the page says beside the design's own meanings, in one language.
type Words struct {
	Groups   [groupCount]string
	Lists    map[design.Key]string // one element of each
	Said     map[string]string     // by the script, under its names for them
	Labels   map[design.Key]string // of the fields
	Switches map[design.Key]string // what each turns on

	FormatAs  string            // a format, what it is for
	FormatFor map[string]string // by the format's name

	Must  string // after a range
	Usual string // after a range: what holds where a field is left empty
	Named string // another field, in a sentence

	Heading                                                    string
	Views, Space, FromSide, FromAbove, FromEnds, Pieces, Lay   string
	Who, Where, AtHand, AtHandHint, Shoulders, ShouldersHint   string
	Distance, DistanceHint, Reach, ReachHint, Longest, Cord    string
	Strength, StrengthHint, Example, BringShelf, BringMachine  string
	MachineFile, OwnMachine, MachineHint                       string
	Room                                                       string
	Shading, Light, Tension, Section, Less, Greater, SlideHint string

	Shop, Materials, Bring                                       string
	Compare, CompareKey, CompareValues, CompareHint, CompareFile string
	CompareWith, CompareValuesWith                               string
	Hang, HangHint, HangWho, HangSleeper, HangHow                string
	HangLying, HangSitting, HangRound                            string

	Title, Opening, ToForm, ToShow, ToSheet, Form, Bar, Save string
	Undo, Redo, Files, Text, UseText, More                   string
	Add, Drop, Faults, FileName, FileNameHint, Cancel        string
	Theirs, Mine, TheirsHint, TakeTheirs, KeepMine, Begin    string
	BeginHint, Stature, Mass, Lies, Back, Side               string
	Width, Units, Metric, Inch, Propose                      string
	Changes, Get, Want, Format, ProveDrop, Shape             string
	Turn, TurnLeft, TurnRight, TiltUp, TiltDown, Calibrate   string
	BuildSheet, Cut, AllFigures, SheetPDF, Paper, Slide      string

	// Of the page that carries the program.
	OpenFile, New, Pack, Drafts, Licences string
	NoPaper, Close                        string
	Copies, CopiesHint                    string
}

// English returns the words in English.
func English() Words {
	return Words{
		Groups: [...]string{
			Sleeper: "Sleeper", Bed: "Bed", Cords: "Cords and splices", Bars: "Bars", Cloth: "Cloth and seams", Beside: "More to sew",
			Hanging: "Hanging",
			Heights: "Heights as it hangs", Checks: "Margins asked for", Templates: "Templates", Machine: "Machine and files",
			Outlines: "Your own outlines", Shelf: "Shelf",
		},
		Lists: map[design.Key]string{
			design.KeySpliceTrial: "Trial splice", design.KeyClothFlaw: "Flaw in the cloth", design.KeyGuest: "Guest",
			design.KeyExtra: "Outline", design.KeyMachineJob: "Job of the machine", design.KeyMachineStroke: "Stroke",
		},
		Switches: map[design.Key]string{design.KeySack: "Stow sacks", design.KeySackCloth: "Cloth of their own for the sacks",
			design.KeyTarp: "Tarp", design.KeyTarpCloth: "Cloth of its own for the tarp",
			design.KeyLining: "Lining for a pad", design.KeyLiningCloth: "Cloth of its own for the lining",
			design.KeyCover: "Insect-net cover", design.KeyCoverCloth: "Net of its own for the cover"},
		Labels: englishLabels(), Must: ". It has to be given.", Usual: ". Left empty: %s.", Named: "“%s”",
		FormatAs: "%s: %s", FormatFor: map[string]string{
			"svg": "laser cutters, drawing programs", "dxf": "CAD programs", "pdf": "printing, on paper of your own or at a print shop",
			"hpgl": "plotters", "gcode": "lasers, routers and drag knives; needs the machine's settings", "png": "a picture to look at",
			"pattern": "sewing pattern programs, pieces alone",
		},
		NoPaper: "as large as the sheets", Close: "Close",
		Copies: "How many beds", CopiesHint: "Several are laid on one roll, which takes less cloth than each by itself.",
		Heading: "Your hammock", Views: "How it is looked at", Space: "In space", FromSide: "From the side", FromAbove: "From above",
		FromEnds: "From its ends",
		Pieces:   "Pieces", Lay: "As it is cut", Shading: "Shading", Light: "light", Tension: "tension of the cloth",
		Room: "room of the sleeper", Section: "Section from the head bar",
		Less: "A little less", Greater: "A little more", SlideHint: "Choose a length, or go to its field. While it is slid the shape follows.",
		Title: "Slingloft", Opening: "Opening …", ToForm: "To the form", ToShow: "To the pictures", ToSheet: "To the build sheet",
		Form: "Design", Bar: "Design file",
		Save: "Save", Undo: "Undo", Redo: "Redo", Files: "Files …", Text: "The design as text", UseText: "Use this text",
		More: "More", Add: "Add another", Drop: "Take this one out", Faults: "What is wrong", FileName: "Name of the file",
		FileNameHint: "A name such as my-bed.toml. It is written beside where the program was started.", Cancel: "Cancel",
		Theirs: "In the file", Mine: "Here",
		TheirsHint: "The file was changed elsewhere while you changed it here. Nothing is lost: choose which to go on with. Undo " +
			"brings the other back.",
		TakeTheirs: "Go on with the file", KeepMine: "Save mine over it",
		Begin:     "A hammock for whom?",
		BeginHint: "Answer what you know, and a whole design is proposed. Every value of it can be changed afterwards.",
		Who:       "Who sleeps in it", Where: "Where it hangs", AtHand: "What you have",
		AtHandHint: "Leave empty what you still have to get: the proposal then says what to buy.",
		Shoulders:  "Shoulder breadth", ShouldersHint: "Over both shoulders. Left empty, it is estimated from height and weight.",
		Distance: "Between the two trees or posts", DistanceHint: "Left empty, a distance is proposed.",
		Reach: "Height you can reach on them", ReachHint: "For tying the lines. Left empty, it is not checked.",
		Longest: "Longest bar, between its tips", Cord: "Thickness of your cord", Strength: "Breaking strength of that cord",
		StrengthHint: "From its data sheet, such as 8 kN. It is not guessed.", Example: "Begin with an example instead",
		BringShelf: "Bring in a shelf", BringMachine: "Bring in a machine's settings", MachineFile: "For which machine",
		OwnMachine:  "as the design says",
		MachineHint: "Files with a machine's settings that lie beside the design.",
		Stature:     "Height of the sleeper", Mass: "Weight of the sleeper", Lies: "Lies on the", Back: "back", Side: "side",
		Width: "Usable width of the cloth", Units: "Units", Metric: "millimetres and kilograms", Inch: "inches and pounds",
		Propose: "Propose a bed",
		Changes: "Changed since the last save", Get: "Make the files", Want: "What", Format: "Formats",
		ProveDrop: "Prove files: drop them here, or choose them",
		Shape:     "How it hangs",
		Turn:      "Drag it to turn it, or use the buttons or arrow keys. Point at it for the section there, or press Page Up and Page Down.",
		TurnLeft:  "Turn left", TurnRight: "Turn right", TiltUp: "Tilt up", TiltDown: "Tilt down",
		Cut: "Cloth and templates to cut from", BuildSheet: "Build sheet, web page", SheetPDF: "Build sheet, PDF",
		AllFigures: "All figures, JSON", Calibrate: "Calibration sheet",
		Paper: "Paper", Slide: "Slide",
		Shop: "Shop pages, PDF", Materials: "What to buy, CSV", Bring: "Bring in SVG or DXF files",
		Compare: "Compare side by side", CompareKey: "What", CompareValues: "Its values", CompareWith: "And with it",
		CompareValuesWith: "Values of that",
		Hang:              "Hang the cut as cloth",
		HangHint: "A simulation that shares no formula with the design: whether the bed lies level, what the cords pull, where the " +
			"cloth is slack.",
		HangWho: "Under whom", HangSleeper: "the sleeper", HangHow: "How", HangLying: "lying", HangSitting: "sitting at mid-bay",
		HangRound:   "as the round load that it is designed for",
		CompareHint: "With semicolons between them, such as 850 mm; 900 mm; 950 mm.", CompareFile: "Another design",
		OpenFile: "Open …", New: "New", Pack: "Save all as zip", Drafts: "Not saved when the page was closed",
		Licences: "Whose work is in this page, and under which terms",
		Said: map[string]string{
			"downloaded": "Downloaded as {file}.", "takeDraft": "Go on with {name}", "dropDraft": "Forget {name}", "ended": "It was ended.",
			"taut": "0 to {most} across", "room": "None to 300 mm to spare between the cords: {parts}.",
			"noroom": "The room is worked out once the pieces are laid.", "off": "Drawn to within {off}.",
			"figure": "figure", "before": "saved", "then": "now", "measure": "measure", "now": "as it stands",
			"saved": "Saved in {file}.", "unsaved": "Not saved yet.", "builtin": "The built-in design. Save gives it a file of your own.",
			"ask": "Nothing stands here yet.", "drawing": "Drawing …", "laying": "The pieces are being laid …",
			"one": "One thing is wrong.", "many": "{n} things are wrong.", "last": "The drawing is that of the last sound design.",
			"broken": "The text is not TOML. Mend it below, as text.", "away": "The program is not running; the page stands as it was.",
			"refused":  "The program does not know this page. Open the address that it printed.",
			"locked":   "This page shows and does not save: it is served to other machines.",
			"conflict": "The file was changed elsewhere.", "error": "Error: ", "none": "Nothing is changed since the last save.",
			"working": "Working …", "verdict": "verdict", "compared": "Compared.",
			"novalues": "Write values to compare, or choose another design.", "hung": "It hangs.",
			"making": "Making the files …", "made": "The files are made.",
		},
	}
}
