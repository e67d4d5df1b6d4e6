package words

import (
	"errors"
	"fmt"
	"math"
	"slices"
	"strings"

	"slingloft/outline/design"
	"slingloft/outline/finished"
	"slingloft/outline/margin"
	"slingloft/outline/quantity"
	"slingloft/outline/state"
)

// Margins says what belongs to the checks of strength.
type Margins struct {
	Parts map[margin.Part]string
	Cases map[state.Kind]string
	Check string // a part under a case, in this order
	// Bases say how the loads of a case are found: of sitting and getting in over how long
	// a seat, of the edge how far aside, the turn in degrees, the share.
	Bases map[state.Kind]string
	// Bounds stand for them where no rest of the bed is found, Lost for the edge where it is
	// known how far the bed was followed: aside, turn in degrees.
	Bounds   map[state.Kind]string
	Lost     string
	Sources  map[margin.SourceKind]string // a bar's holds where its values come from
	BarSheet string                       // which is this, where they come from its data sheet
	Notes    map[margin.Note]string

	Values ValueWords // that a check may lack
	And    string     // between the last two of a list
	// Unknown holds a part, what it lacks, and how many checks cannot be made; One for one.
	Unknown, UnknownOne string

	Least  LeastWords
	Sudden SuddenWords
}

// LeastWords says what strengths are to be bought.
type LeastWords struct {
	Things  map[margin.Thing]string
	Spliced string // the least strength, what a splice keeps and what is said of that
	OrTied  string // that, and the strength where the cord is tied
	Tied    string // likewise where it is knotted by the design: the strength, what a knot keeps
	Plain   string // the least strength
	Holed   string // likewise, and what needle holes leave of the cloth
	Stitch  string // likewise, what a stitch holds of the thread's strength, and what is said of that
	Known   string // that the factor before it is the design's own
	Assumed string // and that it is assumed
	For     string // required ratio, load, check
	Knots   string // what knots cost
}

// CheckName names a check.
func (m Margins) CheckName(c margin.Check) string {
	return fmt.Sprintf(m.Check, m.Parts[c.Part], m.Cases[c.Case])
}

// Basis says how the loads of a case are found, with lengths in a style.
func (m Margins) Basis(c margin.Case, style quantity.Style) string {
	if c.Bound() != nil {
		return m.bound(c, style)
	}
	s, text := c.States[0], m.Bases[c.Kind]
	switch c.Kind {
	case state.Sitting, state.GettingIn:
		return fmt.Sprintf(text, rounded(style).Length(s.Seat))
	case state.Edge:
		return fmt.Sprintf(text, rounded(style).Length(s.Aside), math.Abs(s.Turn)*180/math.Pi, s.Share)
	}
	return text
}

// bound says how the loads of a case are bounded.
func (m Margins) bound(c margin.Case, style quantity.Style) string {
	var lost *finished.LostError
	if errors.As(c.Bound(), &lost) {
		return fmt.Sprintf(m.Lost, rounded(style).Length(math.Abs(lost.Aside)), math.Abs(lost.Turn)*180/math.Pi)
	}
	return m.Bounds[c.Kind]
}

// UnknownOf says which parts cannot be judged and for want of what: a line for those that
// lack the same.
func (m Margins) UnknownOf(r margin.Report) []string {
	type lack struct {
		parts []string
		list  string
		n     int
	}
	var all []lack
	for p := range margin.PartCount {
		var of []margin.Check
		for _, c := range r.Unknown() {
			if c.Part == p {
				of = append(of, c)
			}
		}
		if len(of) == 0 {
			continue
		}
		list := m.Lacking(of)
		i := slices.IndexFunc(all, func(l lack) bool { return l.list == list })
		if i < 0 {
			i, all = len(all), append(all, lack{list: list})
		}
		all[i].parts, all[i].n = append(all[i].parts, m.Parts[p]), all[i].n+len(of)
	}
	var out []string
	for _, l := range all {
		if l.n == 1 {
			out = append(out, fmt.Sprintf(m.UnknownOne, l.parts[0], l.list))
			continue
		}
		out = append(out, fmt.Sprintf(m.Unknown, joinedBy(l.parts, m.And), l.list, l.n))
	}
	return out
}

// Lacking lists what some checks lack, as a maker calls it.
func (m Margins) Lacking(checks []margin.Check) string {
	var out []string
	for _, c := range checks {
		for _, k := range c.Missing {
			if what := m.Values.of(k); !slices.Contains(out, what) {
				out = append(out, what)
			}
		}
	}
	return joinedBy(out, m.And)
}

// joinedBy lists words with a last one after and.
func joinedBy(list []string, and string) string {
	if n := len(list); n > 1 {
		return strings.Join(list[:n-1], ", ") + and + list[n-1]
	}
	return strings.Join(list, "")
}

// Strength writes a strength of at least v, so that it is not rounded to less.
func Strength(v float64, unit margin.Unit, style quantity.Style) string {
	if unit == margin.PerWidth {
		return style.PerWidthUp(v)
	}
	return style.ForceUp(v)
}

// LeastOf says the least strength of a thing, without its name.
func (m Margins) LeastOf(l margin.Least, style quantity.Style) string {
	w := m.Least
	force := func(v float64) string { return Strength(v, l.Unit, style) }
	keeps, whose := quantity.Decimal(l.Keeps, 2), w.Known
	if l.Assumed {
		whose = w.Assumed
	}
	switch {
	case l.Tied:
		return fmt.Sprintf(w.Tied, force(l.Value), keeps)
	case l.Knotted > 0:
		text := fmt.Sprintf(w.Spliced, force(l.Value), keeps, whose)
		if l.Thing == margin.LineThing { // nothing else takes a knot
			text = fmt.Sprintf(w.OrTied, text, force(l.Knotted))
		}
		return text
	case l.Thing == margin.ClothThing && l.Keeps < 1:
		return fmt.Sprintf(w.Holed, force(l.Value), keeps)
	case l.Thing == margin.ThreadThing:
		return fmt.Sprintf(w.Stitch, force(l.Value), keeps, whose)
	}
	return fmt.Sprintf(w.Plain, force(l.Value))
}

// LeastFor says what a least strength follows from.
func (m Margins) LeastFor(l margin.Least, style quantity.Style) string {
	force := style.Force
	if l.Check.Unit == margin.PerWidth {
		force = style.PerWidth
	}
	return fmt.Sprintf(m.Least.For, quantity.Decimal(l.Check.Required, 1), force(l.Check.Load), m.CheckName(l.Check))
}

// Source says where a capacity comes from.
func (m Margins) Source(s margin.Source) string {
	text := m.Sources[s.Kind]
	switch s.Kind {
	case margin.Column, margin.Bowed:
		from := s.Bar
		if from == "" {
			from = m.BarSheet
		}
		return fmt.Sprintf(text, from)
	}
	return text
}

// NotesOf says remarks.
func (m Margins) NotesOf(notes []margin.Note) []string {
	var out []string
	for _, n := range notes {
		out = append(out, m.Notes[n])
	}
	return out
}

// rounded returns a style in whole millimetres, for what is told rather than marked.
func rounded(s quantity.Style) quantity.Style {
	s.Decimals = 0
	return s
}

func englishMargins() Margins {
	return Margins{
		Parts: identified(margin.PartCount),
		Cases: identified(state.Kind(state.Kinds)),
		Check: "%s, %s",
		Bases: map[state.Kind]string{
			state.Lying:   "the made bed at rest under the sleeper in place",
			state.Sitting: "sitting up, the whole weight over %s of the bed, both cords carrying: the largest of mid-bay and both quarters",
			state.GettingIn: "getting in, the whole weight over %s of one side cord at mid-bay, feet off the ground: bed and bars turn until " +
				"that cord carries it",
			state.Edge: "sleeper on the side, centre of mass %s aside: the bed turns by %.0f°, the fuller cord carries %.2f of the weight",
		},
		Bounds: map[state.Kind]string{
			state.Lying: "no rest of the made bed is found; the loads are those of the shape as designed",
			state.Sitting: "no rest of the made bed is found where somebody sits up; bounded by the whole weight on one cord, by a quarter more " +
				"than lying in the lines and by half more in the bars",
			state.GettingIn: "no rest of the made bed is found where somebody gets in; bounded by the whole weight in one straight cord, the less " +
				"favourable of no hang lines and very long ones",
			state.Edge: "no rest is found with the sleeper at the edge: the bed turns over; bounded by a bed that turns as one rigid body",
		},
		Lost: "with the weight more than %s aside, where the bed has turned by %.0f°, no rest is found: it turns over; bounded by a bed that " +
			"turns as one rigid body",
		Sources: map[margin.SourceKind]string{
			margin.CordSheet: "breaking strength from the cord's data sheet × splice efficiency; " +
				"required ratio on the static pull, Cordage Institute CI 1401 (5 to 12)",
			margin.KnotSheet: "breaking strength from the cord's data sheet × what a knot keeps of it, a third (nine knots in 10 mm " +
				"braid lost more " +
				"than 62 % on average, Yachting Monthly, Nov 2017); required ratio on the static pull, Cordage Institute CI 1401 (5 to 12)",
			margin.HookSheet: "breaking strength of hook and anchor from their data sheet; required ratio as for cord",
			margin.Column:    "Euler or Johnson by slenderness, pinned ends; modulus and yield from %s; required ratio own choice",
			margin.Bowed: "yield of a bar bowed by 1/500 of its length (own choice), with the tip's eccentricity, a joint's play and a hole where " +
				"the design has them; modulus and yield from %s; required ratio own choice",
			margin.ClothSheet: "strip strength from the cloth's data sheet; required ratio own choice",
			margin.SeamFormula: "stitches per length × thread strength × seam factor, a tenth more for a second row; thread from its data sheet, " +
				"factor from a test seam; at most the cloth at its needle holes; required ratio own choice",
			margin.Perforated: "the cloth beside the seam, its strip strength × what needle holes leave of it (0.8, own choice, unless the design " +
				"says); required ratio own choice",
		},
		BarSheet: "the bar's data sheet",
		Notes: map[margin.Note]string{
			margin.CordsRunFree:     "pulls hold for cords that run freely in their channels; friction changes the tension by some per cent",
			margin.BarsAlone:        "bars are checked without their own weight and without what a knee or hand puts on them",
			margin.ThrustOnAxis:     "bars: the thrust is taken to act on the axis; give bar.eccentricity for tips that push off it",
			margin.ShouldersGuessed: "edge: the sleeper's shoulder breadth is estimated",
			margin.LinesKnotted:     "hang lines are tied: a third of their strength is counted on, whatever their splices keep",
			margin.LinesGuessed: "hang lines of usual length are taken for the loads, since the design does not say where it " +
				"hangs; the figures of the hanging name it",
			margin.JointAsBar: "a sectional bar is taken to be as stiff and strong at its joint as elsewhere, which asks for parts " +
				"that reach into " +
				"each other by two diameters or more (EN ISO 5912)",
			margin.StretchUnknown: "what has no stiffness in the design, of cords, lines and cloth, is taken not to stretch",
		},
		Values:  englishValues(),
		And:     " and ",
		Unknown: "%s: cannot be judged without the %s (%d checks)", UnknownOne: "%s: cannot be judged without the %s (1 check)",
		Least: englishLeast(), Sudden: englishSudden(),
	}
}

// ValueWords say what a maker calls the values that a check may lack.
type ValueWords struct {
	SideCord, Legs, Lines, Splice, Hooks string
	Modulus, Yield, Joint, Cloth         string
	Stitch, Thread, Factor               string
}

// of names a value by its key.
func (w ValueWords) of(k design.Key) string {
	switch k {
	case design.KeyCordSide.In("strength"):
		return w.SideCord
	case design.KeyCordLeg.In("strength"):
		return w.Legs
	case design.KeyHangLine.In("strength"):
		return w.Lines
	case design.KeySpliceEfficiency:
		return w.Splice
	case design.KeyHangHookStrength:
		return w.Hooks
	case design.KeyBarModulus:
		return w.Modulus
	case design.KeyBarYield:
		return w.Yield
	case design.KeyBarJoint:
		return w.Joint
	case design.KeyClothStripStrength:
		return w.Cloth
	case design.KeySeamStitchLength:
		return w.Stitch
	case design.KeySeamThreadStrength:
		return w.Thread
	case design.KeySeamFactor:
		return w.Factor
	}
	return string(k)
}

func englishValues() ValueWords {
	return ValueWords{
		SideCord: "breaking strength of the side cord", Legs: "breaking strength of the legs' cord", Lines: "breaking strength of the hang lines",
		Splice: "part of its strength that a splice keeps", Hooks: "rated strength of hooks and anchors",
		Modulus: "bar's modulus of elasticity", Yield: "bar's yield strength",
		Joint: "joint of the bars over two diameters or more (a shorter one gives way)", Cloth: "strip strength of the cloth",
		Stitch: "stitch length", Thread: "breaking strength of the thread", Factor: "factor of a test seam",
	}
}

func englishLeast() LeastWords {
	return LeastWords{
		Things: map[margin.Thing]string{
			margin.SideCordThing: "side cord", margin.LegThing: "cord of the legs", margin.LineThing: "hang lines",
			margin.HookThing: "each hook, ring, strap and anchor", margin.RidgeThing: "cord of the cover's ridge", margin.ClothThing: "cloth, across the bed",
			margin.SeamThing: "side seams", margin.ThreadThing: "thread of the side seams",
		},
		Spliced: "at least %s where it is spliced (a splice keeps %s%s)",
		OrTied:  "%s, %s where it is tied",
		Tied:    "at least %s, tied as the design has it (a knot keeps %s, assumed)",
		Plain:   "at least %s",
		Holed:   "at least %s (its needle holes leave %s of it)",
		Stitch:  "at least %s (a stitch holds %s of it%s)",
		Known:   " by the design", Assumed: ", assumed",
		For:   "%s × %s, %s",
		Knots: "A knot in smooth braid such as HMPE keeps a third to a half of its strength; a third is counted on.",
	}
}
