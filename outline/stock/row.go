package stock

import (
	"slingloft/outline/article"
	"slingloft/outline/cord"
	"slingloft/outline/design"
	"slingloft/outline/hung"
	"slingloft/outline/quantity"
)

// Row is one thing to buy.
type Row struct {
	Kind     Kind
	Thing    Thing
	Name     string // the maker's own, for a [Thing] that is [Named]
	Quantity float64
	Unit     Unit
	Price    float64 // of one unit; 0: not given
	Cost     float64
	Note     Note
}

// perMetre returns the row as one of so many metres at a price.
func (r Row) perMetre(p quantity.PricePerMetre) Row {
	r.Unit, r.Price = Metre, float64(p)
	return r
}

// each returns the row as one of so many pieces at a price.
func (r Row) each(p quantity.PriceEach) Row {
	r.Unit, r.Price = Single, float64(p)
	return r
}

// Kind sorts what is bought.
type Kind int

// The kinds.
const (
	ClothRow Kind = iota
	CordRow
	BarRow
	ThreadRow
	SheetRow
	HardwareRow
	KindCount // how many kinds there are
)

// String returns the kind's identifier, as documents for other programs have it.
func (k Kind) String() string {
	return [KindCount]string{"cloth", "cord", "bar", "thread", "sheet", "hardware"}[k]
}

// Thing is what a row is for, where no name of the maker's says it.
type Thing int

// The things.
const (
	Named        Thing = iota // by the maker
	AnyThread                 // the maker named none
	Drawstring                // of gathered ends
	Drawcord                  // of sacks
	LoopTape                  // of a tarp's tie-outs
	GuyLine                   // from them to pegs, and from its ridge to trees or posts
	Peg                       // that a corner's is tied to
	CoverTape                 // of a cover's loops
	CoverLine                 // cord of its ridge
	CoverCord                 // cord of one that carries
	CoverElastic              // of its ridge
	HemElastic                // in its lower edge
	CoverTies                 // cord across under the bed
	Zip
	ApexHook // hook, ring or shackle at an apex
	FarHook  // hook or strap at a support
	BarTip   // tip for a bar's end
	OwnLine  // hang line that the design does not make
	RidgeTie // thin line from a shelter's ridge line to its anchor
)

// Unit is what a row is counted in.
type Unit int

// The units.
const (
	Metre Unit = iota
	Single
	Yard      // as of [Bill.In]
	UnitCount // how many units there are
)

// String returns the unit's identifier, as documents for other programs have it.
func (u Unit) String() string { return [UnitCount]string{"m", "piece", "yd"}[u] }

// Note is a remark to a row.
type Note struct {
	Kind NoteKind
	Cut  [2]float64 // lengths of the drawstrings, head and foot, mm, for [CutStrings]
	Cord CordShare  // for [WithWaste]
	// Size is how large the thing has to be, mm; 0: not given. Cloth and bars by one
	// measure, sheets by two, hooks by how thick what holds the cord is.
	Size [2]float64
	// Of is the material of bars by name, and Yield what its yield strength is counted on
	// to be, N/mm²; "" and 0 where the design does not say.
	Of    string
	Yield float64
	Tip   TipSize // for [HoldsCord]
}

// TipSize is how large the tip of a bar has to be, mm.
type TipSize struct {
	Plug float64 // bore that its plug fits; 0: not known
	Pin  float64 // how thick its pin is; 0: not given
	Most float64 // how thick that may be; 0: no pin fits the gap
	Past float64 // how far the pin stands out at least
}

// CordShare is what a length of cord to buy consists of, mm.
type CordShare struct {
	Cords float64 // sum of the cut lengths
	Trial float64 // both pieces of a trial splice; 0: none is needed
	Fast  float64 // both ends that are made fast while it is marked, and pulled, in one length
	Waste float64 // for ends and mistakes
}

func (s CordShare) all() float64 { return s.Cords + s.Trial + s.Fast + s.Waste }

// NoteKind is the kind of a remark.
type NoteKind int

// The kinds.
const (
	RollLength    NoteKind = iota // length of roll, [Squaring] included
	WithWaste                     // what the cord is for
	StockLengths                  // bars as they are sold
	BothBars                      // stock length not given
	ForTemplates                  // sheets
	LockStitch                    // both threads, [ThreadWaste] included
	CutStrings                    // of which [TieLength] is to draw and tie
	Rated                         // see the margins
	HoldsCord                     // in its gap
	ForSacks                      // one a mouth
	ForLoops                      // one a corner and end of the ridge
	ForGuys                       // what they are tied with included
	ForPegs                       // one a corner
	WithCover                     // cut lengths stand with the cover
	StopToStop                    // of a zip
	AsStrong                      // as the least strengths have it, long enough for the anchors
	ToReach                       // long enough to reach an anchor and go round it
	NoteKindCount                 // how many kinds there are
)

// Mass is what one part of the finished hammock weighs.
type Mass struct {
	Part    MassPart
	Grams   float64
	Missing design.Key // key without which it is not known
}

// MassPart is a part of the finished hammock.
type MassPart struct {
	Kind    MassKind
	Cord    cord.Part       // for [OfCord]
	Article article.Article // for [OfCloth]
}

// MassKind sorts the parts that are weighed.
type MassKind int

// The kinds.
const (
	OfCloth MassKind = iota
	OfBars
	OfCord
)

// String returns the part's identifier, as documents for other programs have it.
func (p MassPart) String() string {
	if p.Kind == OfCord {
		return p.Cord.String()
	}
	if p.Kind == OfCloth && p.Article != article.Bed {
		return p.Article.String()
	}
	return [...]string{"cloth", "bars"}[p.Kind]
}

// Open is what is not given: the price of a row or the mass of a part.
type Open struct {
	Row  *Row // whose price it is
	Mass Mass // that is not known, where Row is nil
}

// Part is one length to be cut: a bar.
type Part struct {
	Bar     hung.End
	Length  float64 // mm
	Hammock int     // for which it is, of [Input]; from 0
}
