// Package words holds what a person reads of things that more than one output names:
// cords, checks, seams, what to buy. The stages below say which thing it is by its
// kind; a table here says what it is called. A table is a plain value that is handed
// to whoever writes, so that a second language is a second table.
//
// Identifiers are no words: ids, layers, file names, keys and enumerated values of
// documents for other programs come from the kinds themselves and are the same in
// every language. English says most kinds as their identifiers do.
//
// What only one output says stands in a table of that output's own, built on this one.
package words

import (
	"fmt"

	"slingloft/outline/design"
	"slingloft/outline/hung"
)

// Names is what things are called in one language.
type Names struct {
	Ends      [2]string // head and foot, by [hung.End]
	Pieces    Pieces
	Cords     Cords
	Margins   Margins
	Materials Materials
	Accuracy  Accuracy
	Room      Room
	Faults    design.Words // why a bed is not found at rest
	Guests    Guests
	Tips      Tips
	// Cautions stand beside every load figure; see [Names.CautionFor].
	Cautions map[Hazard]Caution
	Signals  map[Signal]string
	Caution  string // signal, hazard, consequence, avoidance
	// LargestMass is lettered on the bed, with the mass.
	LargestMass string
}

// English returns the names in English.
func English() Names {
	return Names{
		Ends:   [2]string{hung.Head: "head", hung.Foot: "foot"},
		Pieces: englishPieces(), Cords: englishCords(), Margins: englishMargins(), Materials: englishMaterials(), Accuracy: englishAccuracy(),
		Faults: design.English(), Guests: englishGuests(), Tips: englishTips(), Room: englishRoom(),
		Cautions: englishCautions(), Signals: identified(SignalCount), Caution: "%s: %s %s %s", LargestMass: "max %s, one person",
	}
}

// kind is a kind of thing, with its identifier.
type kind interface {
	~int
	fmt.Stringer
}

// identified calls the first n kinds by their identifiers.
func identified[K kind](n K) map[K]string {
	out := make(map[K]string, n)
	for k := range n {
		out[k] = k.String()
	}
	return out
}

// with returns words with some of them changed for others.
func with[K comparable](words, others map[K]string) map[K]string {
	for k, w := range others {
		words[k] = w
	}
	return words
}
