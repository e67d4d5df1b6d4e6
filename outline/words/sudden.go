package words

import (
	"fmt"

	"slingloft/outline/margin"
	"slingloft/outline/quantity"
	"slingloft/outline/state"
)

// SuddenWords say what dropping into the bed does.
type SuddenWords struct {
	LetGo   string
	Held    string // dynamic factor
	Give    string // length
	Unknown string // what the give hangs on
	Stiffer string
	Drop    string // height, factor
	Less    string // hang lines give besides
	Source  string
}

// Drops returns the heights to tell of, mm, from none on.
func Drops(style quantity.Style) []float64 {
	if style.Inches {
		return []float64{0, 2 * quantity.Inch, 4 * quantity.Inch}
	}
	return []float64{0, 50, 100}
}

// SuddenOf says what dropping into the bed does, sentence by sentence.
func (m Margins) SuddenOf(r margin.Report, style quantity.Style) []string {
	w := m.Sudden
	out := []string{w.LetGo, fmt.Sprintf(w.Held, quantity.Decimal(r.Dynamic, 1))}
	if r.Give.Length == 0 {
		return append(out, w.Unknown, w.Stiffer)
	}
	out = append(out, fmt.Sprintf(w.Give, rounded(style).Length(r.Give.Length)))
	for _, h := range Drops(style)[1:] {
		out = append(out, fmt.Sprintf(w.Drop, rounded(style).Length(h), quantity.Decimal(state.Sudden(h, r.Give.Length), 1)))
	}
	if r.Give.Least {
		out = append(out, w.Less)
	}
	return append(out, w.Source)
}

func englishSudden() SuddenWords {
	return SuddenWords{
		LetGo:   "whoever lets go at once loads the bed with twice the weight",
		Held:    "bars, cloth and seams are held to %s times what rests on them",
		Give:    "under one who sits up the bed gives %s",
		Unknown: "what a drop does is not known without the stiffness of cords and cloth",
		Stiffer: "the less they give the more it loads",
		Drop:    "one who drops in from %s loads it with %s times the weight",
		Less:    "hang lines give too and make it less: their stiffness is not given",
		Source:  "one who drops from h into what gives by d loads it 1 + √(1 + 2h/d) times (Gere, Mechanics of Materials)",
	}
}
