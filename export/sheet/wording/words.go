// Package wording holds what the build sheet says: a table for each chapter, on top of
// what things are called. A second language is a second table.
//
// Texts with verbs are filled in where they are asked for, in the order in which the
// verbs stand unless a verb says otherwise; what is filled in stands behind the field.
// Ids, units, signs and numbers are no words.
package wording

import (
	"fmt"

	"slingloft/export/sheet"
	"slingloft/outline/words"
)

// Words is all that the build sheet says in one language.
type Words struct {
	Names words.Names

	Frame    sheet.Frame
	Subtitle string // stature, mass, digest of the design, mark of the shapes
	NotGiven string // a value that the design does not give
	Both     string // one thing and another
	Inches   string // the unit in running text, where its sign would be mistaken
	Unlaid   string // stands where the lay is not known yet

	Shop       Shop
	FirstNight FirstNight
	Glossary   Glossary
	Boards     Boards
	Parts      Parts

	Verdict   Verdict
	Result    Result
	Summary   Summary
	Hung      Hung
	Ends      Ends
	Place     Place
	Roll      Roll
	Room      Room
	Cloth     Cloth
	Leveled   Leveled
	Pieces    Pieces
	Lay       Lay
	Cords     Cords
	Splicing  Splicing
	Stitching Stitching
	Offsets   Offsets
	Loads     Loads
	Accuracy  Accuracy
	Corrected Corrected
	Guests    Guests
	Materials Materials
	Order     Order
	Sacks     Sacks
	Tarp      Tarp
	Lining    Lining
	Cover     Cover
	Effects   Effects
	Seams     Seams
	Charts    Charts
	Assumed   Assumed
	Sources   Sources
}

// English returns the words in English.
func English() Words {
	return Words{
		Names: words.English(),
		Frame: sheet.Frame{
			Language: "en", File: "%s – build sheet", Design: "design %s", Contents: "Contents", Skip: "To the sheet",
			Picture: "%s, picture", Rows: "%s, rows %d to %d", Continued: "%s, continued",
			Parts:  [sheet.PartCount]string{"For the table", "Step by step", "Hanging and the first night", "Appendix"},
			GoesOn: "Scroll sideways: the drawing goes on.",
			Needs:  "At hand:", Done: "Done:",
		},
		Subtitle: "Bridge hammock for a sleeper of %s and %s; build sheet of design %s, shape %s",
		NotGiven: "not given",
		Both:     "%s and %s",
		Inches:   "inches",
		Unlaid:   "The pieces are not laid yet.",
		Shop:     englishShop(), FirstNight: englishFirstNight(), Glossary: englishGlossary(), Boards: englishBoards(), Parts: englishParts(),
		Verdict: englishVerdict(), Result: englishResult(), Summary: englishSummary(),
		Hung: englishHung(), Ends: englishEnds(), Place: englishPlace(), Roll: englishRoll(), Room: englishRoom(), Cloth: englishCloth(), Leveled: englishLeveled(),
		Pieces: englishPieces(), Lay: englishLay(), Cords: englishCords(), Splicing: englishSplicing(), Stitching: englishStitching(),
		Offsets: englishOffsets(),
		Loads:   englishLoads(), Accuracy: englishAccuracy(), Corrected: englishCorrected(), Guests: englishGuests(),
		Materials: englishMaterials(),
		Sacks:     englishSacks(), Tarp: englishTarp(), Lining: englishLining(), Cover: englishCover(),
		Order: englishOrder(), Effects: englishEffects(), Seams: englishSeams(), Charts: englishCharts(),
		Assumed: englishAssumed(), Sources: englishSources(),
	}
}

// Count says how many there are of a thing, in the form that goes with the number.
type Count struct {
	One  string
	Many string // number
}

// Of fills in the number.
func (c Count) Of(n int) string {
	if n == 1 {
		return c.One
	}
	return fmt.Sprintf(c.Many, n)
}

// Picture says what belongs to a picture.
type Picture struct {
	Caption string
	Title   string // what it shows
	Desc    string // the same for those who cannot see it, with its figures
}
