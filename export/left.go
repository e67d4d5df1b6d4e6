package export

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
	SkipCount               // how many there are
)

// Left counts the objects that were left out, by why. The zero value is none.
type Left [SkipCount]int

// Any reports whether anything was left out.
func (l Left) Any() bool { return l != Left{} }

// Plus returns the counts of both.
func (l Left) Plus(o Left) Left {
	for i, n := range o {
		l[i] += n
	}
	return l
}
