package export

import (
	"fmt"
	"strings"

	"slingloft/outline/piece"
)

// Note is a thing to say of a file: which, and what fills it in. It is data until [Words]
// say it.
type Note struct {
	Kind NoteKind
	Data []any // names, kinds of work, numbers, other notes
}

// Tell returns a note.
func Tell(kind NoteKind, data ...any) Note { return Note{kind, data} }

// NoteKind is which thing is said of a file. What fills it in stands beside it.
type NoteKind int

// What the maker should know of a file before it is used.
const (
	ExampleValues NoteKind = iota
	CutOnLines
	KnifeOnEdges
	NoJobSays     // kinds of work, tool, material
	OnlyCuts      // likewise, and only a job would have it done
	SlitsWait     // material
	NoRoomInWaste // for what
	FieldStarts   // number, how many
	FieldGoesOn   // likewise, by how much, names of two crosses
	FieldWithoutTabs
	CutIntoCloth // what
	BurntIntoCloth
	SlitsToo // kinds of work, and slits
	SlitsAlone
	LargePage     // its longest side, how many times too small it may come out
	Past16Bits    // how far
	BelowZero     // corner that is counted from
	CornerOfField // corner
	CornerOfStock // corner
	NoRoomForLead
)

// How a file differs from the one that is due.
const (
	NoLayer      NoteKind = iota + NoRoomForLead + 1 // name
	StrangeLayer                                     // name
	MoreLayers
	ObjectStrange   // name
	ObjectMissing   // name
	ObjectCount     // name, how many times it is there, due
	ObjectOff       // name, what of it
	MoreObjects     // how many
	PropertyMissing // name, what is due
	PropertyStrange // name, what it is
	PropertyOff     // name, what it is, what is due
	StepsMissing    // [OneStep] or [ManySteps], the first
	StepsStrange    // likewise, its line
	StepsOff        // how many, due, line, what is there, what is due
	StepOff         // line, what is there, what is due
	MoreSteps       // [OneStep] or [ManySteps]
	OneStep
	ManySteps // how many
	InContent // way to it, another note
	PictureOff
	PixelsOff // how many, of how many
	OwnLinesOff
	BreaksOff
	SheetOff    // width and height, due
	LineCount   // how many, due
	BarOff      // name, length, due
	LinesOff    // [LineCounted] or [LinesCounted], the worst, by how much
	LineCounted // one
	LinesCounted
	Rescaled     // along x and y, %
	Displaced    // along x and y
	LinesMissing // names
	LinesStrange // names
	MoreLines    // names, how many more
	OnceMore     // name
	Unnamed      // where it begins
	NamedSo      // its name
	SeveralOff   // notes
	WorkOff      // line, its work, due
	LineClosed   // line
	LineOpen     // line
)

// What came of a comparison.
const (
	Disagrees NoteKind = iota + LineOpen + 1 // notes
	MoreNotes                                // how many
	SamePicture
	Agreeing  // how many lines, by how much one is off
	NoteCount // how many there are
)

// Words says in one language what there is to say of files.
type Words struct {
	Notes    map[NoteKind]string // texts with verbs
	Rules    map[Rule]string     // likewise: why files cannot be read or written
	Left     map[Skip]string     // why objects of a drawing were left out
	LeftOf   string              // how many, why
	List     string              // between the parts of a list
	Together string              // between what differs
}

// Note puts a note into words.
func (w Words) Note(n Note) string {
	with := make([]any, len(n.Data))
	for i, d := range n.Data {
		switch d := d.(type) {
		case Note:
			with[i] = w.Note(d)
		case []Note:
			with[i] = strings.Join(w.All(d), w.List)
		case []string:
			with[i] = strings.Join(d, w.List)
		case []piece.Work:
			names := make([]string, len(d))
			for k, work := range d {
				names[k] = work.String()
			}
			with[i] = strings.Join(names, w.List)
		default:
			with[i] = d
		}
	}
	return fmt.Sprintf(w.Notes[n.Kind], with...)
}

// All puts notes into words.
func (w Words) All(notes []Note) []string {
	out := make([]string, len(notes))
	for i, n := range notes {
		out[i] = w.Note(n)
	}
	return out
}

// Joined puts notes into words, one behind the other.
func (w Words) Joined(notes []Note) string { return strings.Join(w.All(notes), w.Together) }

// LeftOut tells counts of objects that were left out in a few words, such as "2 hidden, 1
// of text"; "" for none.
func (w Words) LeftOut(l Left) string {
	var out []string
	for why, n := range l {
		if n > 0 {
			out = append(out, fmt.Sprintf(w.LeftOf, n, w.Left[Skip(why)]))
		}
	}
	return strings.Join(out, w.List)
}
