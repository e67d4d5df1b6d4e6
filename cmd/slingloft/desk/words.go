package desk

import (
	"slingloft/cmd/slingloft/form"
	"slingloft/outline/design"
	"slingloft/outline/words"
)

// Words is what the desk says beside the design's own messages, in one language.
type Words struct {
	Use     string // a button: a value
	UseFor  string // a button: a value, its key
	TakeOut string // a button: a key
	And     string // between the parts of a button
	Refused map[Refusal]string
	Section SectionWords
	Shape   string                // of the picture in space: bar to bar; width at the bars and between; heights there; between the apexes
	Names   words.Names           // of parts of the body
	Labels  map[design.Key]string // what fields are called
	Quoted  string                // one of them, in a sentence
}

// Refusal is why a change or a save is not done.
type Refusal int

// The refusals.
const (
	ErrChanged Refusal = iota // the file was changed by somebody else since it was opened
	ErrNoFile                 // the design has no file yet: a name has to be given
	ErrText                   // no text of a design
	ErrPresent                // there is a design already
)

// Error says it in English.
func (r Refusal) Error() string { return English().Refused[r] }

// English returns the words in English.
func English() Words {
	return Words{Use: "Use %s", UseFor: "Use %s for %s", TakeOut: "Take %s out", And: ", ",
		Labels: form.English().Labels, Quoted: "“%s”",
		Names: words.English(),
		Shape: "%[1]s from bar to bar. The cords are %[2]s apart at the head bar, %[3]s at the foot bar and %[4]s midway; " +
			"they hang %[5]s, %[6]s and %[7]s above the bottom there. %[8]s from apex to apex.",
		Section: SectionWords{
			Where:   "From the head bar",
			Cords:   "Between the cords",
			Depth:   "Cords above the bottom",
			Cloth:   "Cloth across, cord to cord",
			Wall:    "Walls stand at",
			Load:    "Weight there",
			Tension: "Tension of the cloth",
			Pull:    "Pull in each cord",
		},
		Refused: map[Refusal]string{
			ErrChanged: "the file was changed meanwhile", ErrNoFile: "the design has no file yet",
			ErrText: "a design is UTF-8 text of at most 1 MiB", ErrPresent: "there is a design already",
		}}
}
