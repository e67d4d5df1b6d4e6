package export

import (
	"io"

	"slingloft/outline/design"
	"slingloft/outline/piece"
)

// Format is one format of files: all that is known of it before it is set up for a
// machine. The package of each format makes its own; package format lists them.
type Format struct {
	Name   string // as it is asked for
	Ending string // of file names, with its dot

	// Drives says that the files move a machine: they follow [Options.Axes] and are
	// bound by the machine's bed.
	Drives bool
	// Pens says that kinds of work go to pens, which not every machine can change.
	Pens bool
	// PiecesOnly says that the files hold the pieces and nothing of the sheet around
	// them.
	PiecesOnly bool
	// SizeUnsure says that programs which save a file anew may change the size of the
	// sheet that it states.
	SizeUnsure bool

	// SetUp sets the format up for a machine that works the material. The zero machine
	// stands for the format's usual settings; programs have none, and want its jobs.
	SetUp func(m design.Machine, of Material) (Codec, error)
}

// Material is what a drawing is cut from.
type Material struct {
	Name  string // as the design has it, and a machine's jobs name it
	Stock piece.Stock

	Thickness float64 // mm; 0: not given
	OnLines   bool    // cuts go along the lines, whatever their width: a machine is tried with them
}

// Codec writes drawings in a format, as it is set up for one machine and material,
// and reads such files back.
type Codec struct {
	// Write writes one drawing; the same drawing and options give the same bytes.
	Write func(w io.Writer, d Drawing, o Options) error
	// Read reads a file of ours back as what [Drawing.Plain] gave its writer, as far
	// as the format keeps it, see Keeps and Tolerance.
	Read func(r io.Reader) (Drawing, error)

	Keeps     Keeping
	Tolerance float64 // mm by which a point that is read may be off by rounding
	Divided   bool    // into pages, so that what is read back has the size of a page

	// Layers returns the names of the layers, pens or kinds of work in a file, each
	// once, sorted. Readers take a name that they do not know for an outline to cut,
	// and would not notice that it was changed. nil: there are none.
	Layers func(data []byte) []string
	// Faults compares what neither Read nor Layers gives back with the file that is
	// due. nil: there is nothing else.
	Faults func(got, due []byte) ([]Note, error)
	// Notes says what the maker should know of a file before it is used. nil: nothing.
	Notes func(d Drawing, o Options) []Note
}

// Keeping says how much of a drawing can be read back.
type Keeping int

// The kinds of keeping, each with all of the one before.
const (
	Size  Keeping = iota // the size of the sheet
	Lines                // and points, work and closedness of the lines, in any order
	Names                // and the lines' names
)

// Always returns the set-up of a format that no setting of a machine changes.
func Always(c Codec) func(design.Machine, Material) (Codec, error) {
	return func(design.Machine, Material) (Codec, error) { return c, nil }
}
