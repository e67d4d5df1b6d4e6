package wording

import "slingloft/outline/words"

// Parts says what the parts of the hammock are called.
type Parts struct {
	Title  string
	Hung   Picture
	Flat   Picture
	Eased  string          // goes on from its caption where a cap's seam stands beside it: how many times
	Labels map[Name]string // each a word of the glossary
}

// Name is a thing that a drawing labels.
type Name int

// The names.
const (
	AnchorName Name = iota
	HangLineName
	ApexName
	LegName
	BarName
	SideCordName
	DropName
	BedBottomName
	BayName
	TailName
	EndCapName
	GapName
	CutLineName
	NetLineName
	AllowanceName
	BarLineName
	CentreLineName
	GirthName
	SideDepthName
	NotchName
	EaseName
	CornerName
	BodyName
	NameCount // how many there are
)

func englishParts() Parts {
	return Parts{
		Title: "What it is, and what its parts are called",
		Hung: Picture{
			Caption: "The parts of the hammock as it hangs. The glossary in the appendix says what each word means.",
			Title:   "The parts of the hammock",
			Desc:    "Side view with the parts lettered: anchors, hang lines, apexes, legs, bars, side cords, bay and tails.",
		},
		Flat: Picture{
			Caption: "The body flat, and the lines on it.",
			Title:   "The lines of the body",
			Desc:    "The body flat, with its net line inside its cut line, bar lines, centre line, notches, girth and side depth lettered.",
		},
		Eased: "Beside it, straight: the end of the body and the seam of the end cap that is sewn to it. They differ by the ease, " +
			"which is drawn %d times as large.",
		Labels: map[Name]string{
			AnchorName: "anchor", HangLineName: "hang line", ApexName: "apex", LegName: "leg", BarName: "bar", SideCordName: "side cord",
			DropName: "drop", BedBottomName: "bed bottom", BayName: "bay", TailName: "tail", EndCapName: "end cap", GapName: "gap",
			CutLineName: "cut line", NetLineName: "net line", AllowanceName: "allowance", BarLineName: "bar line",
			CentreLineName: "centre line", GirthName: "girth", SideDepthName: "side depth", NotchName: "notch",
			EaseName: "ease", CornerName: "corner of the tail", BodyName: "body",
		},
	}
}

// Glossary says what the words mean.
type Glossary struct {
	Title string
	Terms []words.Term
}

func englishGlossary() Glossary {
	return Glossary{Title: "Glossary", Terms: words.EnglishGlossary()}
}
