// Package cord turns a hung shape into cords that can be cut, marked and
// spliced: every cut length a sum of named terms, every mark measured from both
// ends, and what a tape must read after each splice.
//
// The cord is a hollow braid. Where a side cord meets a leg each takes the
// other's tail, and between the two buries the cords run side by side: that is
// the tip gap, and the bar's tip stands in the middle of it. So from the tip
// outwards a cord goes on for half the gap and then b into its partner, while
// the partner's tail fills the cord itself:
//
//	         tip
//	side ─▓▓▓▓▓┬──┴──┬▒▒▒▒▒─ leg      ▓ side cord filled by the leg's tail
//	           └─────┘                ▒ leg filled by the side cord's tail
//	           ├──g──┤
//
// A braid that is filled gets shorter, by κ of the length buried in it.
//
//	side cord = A + 2 (b + g/2) + Σ κ b          A from tip to tip
//	leg       = L + (b + g/2) + Σ κ b + e + k + b_e − E
//
// with the eye's loop e, the loss k at its crossing, its own bury b_e and E from
// the eye's throat to the centre of the hook. L runs from the tip to the hook,
// and a leg pulls through the centre of what its eye hangs on; that part of the
// eye is part of L and is taken off. Start with [Of].
package cord

import (
	"math"

	"slingloft/outline/design"
	"slingloft/outline/hung"
	"slingloft/outline/numeric"
	"slingloft/outline/quantity"
)

// Mark is one mark on a cord.
type Mark struct {
	Spot Spot `json:"name"`
	// FromStart and FromEnd are measured along the cut cord before any splice is
	// made, mm.
	FromStart float64 `json:"from_start"`
	FromEnd   float64 `json:"from_end"`
	// Spliced is the distance from the cord's datum after every splice, under the light
	// pull, mm; negative on the side of the start. Buried marks lie inside another
	// cord by then.
	Spliced float64 `json:"spliced"`
	Buried  bool    `json:"buried,omitempty"`
}

// Cord is one kind of piece cut from a spool.
type Cord struct {
	Part  Part        `json:"name"`
	Count int         `json:"count"`
	Kind  design.Cord `json:"-"`    // what it is cut from
	Runs  int         `json:"runs"` // cords side by side that share the pull: 1, or 2 in a loop
	Cut   float64     `json:"cut"`  // of one, the sum of Terms, mm
	Terms []Term      `json:"terms"`
	Datum Spot        `json:"datum"` // the mark that Spliced is measured from
	Marks []Mark      `json:"marks"`
	Steps []Step      `json:"steps"`
	// Path is where it lies in the flat pattern: u, v and arc from its start, mm.
	// Empty until the pattern is known.
	Path [][3]float64 `json:"path,omitempty"`
}

// Options are measures of the hardware and of lines outside the bed. Zero leaves
// out what it stands for.
type Options struct {
	Hook float64 // diameter of what an eye hangs on, mm; 0: [DefaultHook]
	Tip  float64 // diameter of a bar's tip, mm; 0: the gap's spread round it is not counted
	// Lines are the head's and the foot's hang line from hook to support, mm; 0:
	// none. Ridge is the shelter's ridge line, mm.
	Lines [2]float64
	Ridge float64
	// Middle is where the middle notch of a channel lies between the bars' tips, as a part
	// of the way from the head; 0: at mid-bay. Tails of unequal length move it off mid-bay.
	Middle float64
}

// DefaultHook is the diameter taken for a hook or ring, mm: own choice, for want
// of a measure.
const DefaultHook = 10

// Set is all the cord of one hammock.
type Set struct {
	// Variant says which way of rigging the numbers are for.
	Variant  Rigging
	Cords    []Cord
	Lines    []HangLine // the hang lines among them, with what they can be set to
	Splicing Splicing
	Notes    []Note
}

// Rigging is how side cords and legs are made.
type Rigging int

// The riggings.
const (
	Separate     Rigging = iota // side cord with separate legs
	Loops                       // one endless loop a side
	RiggingCount                // how many riggings there are
)

// String returns the rigging's identifier, as documents for other programs have it.
func (r Rigging) String() string {
	return [...]string{"side cord with separate legs", "one endless loop a side, two runs of cord with the bar tips between them"}[r]
}

// MarshalText writes the rigging's identifier.
func (r Rigging) MarshalText() ([]byte, error) { return []byte(r.String()), nil }

// Of returns the cords of a design whose hung shape is s. Where a splice does
// not fit the error is a [hung.Impossible] that names the key.
func Of(s *hung.Shape, d design.Design, o Options) (Set, error) {
	sp, err := Resolve(d, o)
	if err != nil {
		return Set{}, err
	}
	set := Set{Variant: Separate, Splicing: sp, Notes: sp.notes(d)}
	mid, err := middle(s, o.Middle)
	if err != nil {
		return Set{}, err
	}
	r := rigger{s, d, sp, mid}
	build := []func() (Cord, error){r.side, r.leg(hung.Head), r.leg(hung.Foot)}
	if d.Splice.Whole {
		set.Variant = Loops
		build = []func() (Cord, error){r.loop}
	}
	for _, f := range build {
		c, err := f()
		if err != nil {
			return Set{}, err
		}
		set.Cords = append(set.Cords, c)
	}
	return set, r.outside(&set, o)
}

// outside adds the lines that lie outside the bed.
func (r rigger) outside(set *Set, o Options) error {
	for e, long := range o.Lines {
		if long == 0 {
			continue
		}
		end, hang := r.shape.Ends[e], r.design.Hang
		l, err := HangLineOf(r.design, r.splice, Hanging{Part: LineAt(hung.End(e)), Long: long, Tension: math.Hypot(end.Horizontal, end.Vertical),
			Fastening: Fastening(hang.Fastening), Travel: hang.Travel, Strap: hang.Strap})
		if err != nil {
			return err
		}
		set.Cords, set.Lines = append(set.Cords, l.Cord), append(set.Lines, l)
		set.Notes = append(set.Notes, Note{Kind: l.note(), Line: l})
	}
	if o.Ridge > 0 {
		c, err := r.line(RidgeLine, r.design.Hang.Line, o.Ridge, 0)
		if err != nil {
			return err
		}
		set.Cords = append(set.Cords, c)
	}
	return nil
}

// Find returns the cord that is the given part and reports whether there is one.
func (s Set) Find(p Part) (Cord, bool) {
	for _, c := range s.Cords {
		if c.Part == p {
			return c, true
		}
	}
	return Cord{}, false
}

// rigger is what the builders of the single cords share.
type rigger struct {
	shape  *hung.Shape
	design design.Design
	splice Splicing
	mid    float64 // station at which a channel's middle notch lies
}

// middle returns the station at which a side cord has run the given part of its way from
// the head tip to the foot tip; of 0 that is mid-bay.
func middle(s *hung.Shape, part float64) (float64, error) {
	if part == 0 {
		return 0, nil
	}
	half := s.Problem.Bed.Span / 2
	return numeric.Root(func(x float64) float64 { return s.Arc(-half, x) - part*s.SideArc }, -half, half, 1e-9)
}

// stiffness returns EA of a cord, by which its stretch is taken off, and 0 where
// the design wants cords at their own length.
func (r rigger) stiffness(c design.Cord) quantity.Newtons {
	if r.design.Bed.Plain {
		return 0
	}
	return c.Stiffness
}
