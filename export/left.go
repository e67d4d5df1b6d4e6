package export

import (
	"fmt"
	"strings"
)

// Skip is why an object of a drawing that was brought in is left out.
type Skip int

// The reasons for leaving an object out.
const (
	Hidden      Skip = iota // not displayed, or not visible
	Off                     // on a layer that is switched off
	Frozen                  // on a layer that is frozen
	PaperSpace              // on a layout, not in the model
	Transparent             // of no opacity
	Unpainted               // with neither stroke nor filling
	Lengthless              // all of it in one place
	Text                    // letters, dimensions, leaders
	Picture                 // images, hatches and fillings
	skips
)

// Left counts the objects that were left out, by why. The zero value is none.
type Left [skips]int

// Any reports whether anything was left out.
func (l Left) Any() bool { return l != Left{} }

// Plus returns the counts of both.
func (l Left) Plus(o Left) Left {
	for i, n := range o {
		l[i] += n
	}
	return l
}

// String tells the counts in a few words, such as "2 hidden, 1 text"; "" for none.
func (l Left) String() string {
	words := [skips]string{
		Hidden: "hidden", Off: "on a layer that is off", Frozen: "on a frozen layer", PaperSpace: "in paper space",
		Transparent: "transparent", Unpainted: "without stroke or filling", Lengthless: "without length",
		Text: "of text", Picture: "of pictures and fillings",
	}
	var out []string
	for i, n := range l {
		if n > 0 {
			out = append(out, fmt.Sprintf("%d %s", n, words[i]))
		}
	}
	return strings.Join(out, ", ")
}
