package work

import (
	"errors"
	"fmt"
	"math"
	"slices"
	"sort"
	"strconv"
	"strings"

	"slingloft/outline/design"
	"slingloft/outline/fit"
	"slingloft/outline/hung"
	"slingloft/outline/margin"
	"slingloft/outline/quantity"
	"slingloft/outline/rig"
)

// Wish is whom a design is proposed for and on what cloth. Stature, Mass, Shoulders
// and ClothWidth are the maker's own words, so that the file has them as given.
type Wish struct {
	All        bool // the file names every key
	Person     fit.Person
	Stature    string
	Mass       string
	Shoulders  string // empty: estimated
	ClothWidth string // empty: that of the starter file
	Inches     bool
	Words      *Words // nil: English

	AtHand Hand
	Shelf  string // file of the run's shelf; empty: the design's own
}

// words returns the words that reasons are given in.
func (w Wish) words() Words { return Setting{Words: w.Words}.words() }

// Proposal is a design that is proposed, as text with its reasons, and what follows
// from it.
type Proposal struct {
	Text   string
	Plan   Plan
	Values []Value
	Joins  int // that the cloth makes necessary
	// Cautions are what has to be said before anything else of this sleeper.
	Cautions []string
}

// lineRoom is the length left at each end for a hang line, mm: own choice.
const lineRoom = 700.0

// Propose writes a design for a person. The error is a [hung.Impossible] for a
// person that no bed is proposed for, or [design.Faults] where the cloth does not
// do.
func Propose(name string, w Wish) (Proposal, error) {
	bed, err := fit.Propose(w.Person)
	if err != nil {
		return Proposal{}, err
	}
	s, err := hung.Solve(hung.ProblemOf(design.Design{Sleeper: bed.Sleeper, Bed: bed.Bed}))
	if err != nil {
		return Proposal{}, err
	}
	out := Proposal{Values: w.values(bed, &s)}
	if w.Person.Child() {
		out.Cautions = append(out.Cautions, w.words().Proposal.ForChildren)
	}
	tubes := fit.Tubes(w.Inches)
	// The least tube that holds, by halving the list: each holds more than the one before.
	best := sort.Search(len(tubes)-1, func(i int) bool {
		tried := out
		return tried.read(name, w, tubes[i]) != nil || !weakBars(tried.Plan.Margins())
	})
	return out, out.read(name, w, tubes[best])
}

// read completes a proposal with bars of a tube, and reads it. Where the cloth is too
// narrow the body is joined.
func (o *Proposal) read(name string, w Wish, tube fit.Tube) error {
	say := w.words()
	about := fmt.Sprintf(say.Proposal.About, w.Stature, w.Mass, say.Proposal.Lies[w.lying()])
	if len(o.Cautions) > 0 {
		about = strings.Join(append(slices.Clone(o.Cautions), about), " ")
	}
	all := append(slices.Clone(o.Values), w.barValues(tube)...)
	all = over(all, w.given())
	for joins := 0; ; joins++ {
		values := all
		if joins > 0 {
			values = append(slices.Clone(all), Value{Key: design.KeyClothJoins, Value: fmt.Sprint(joins),
				Why: fmt.Sprintf(say.Proposal.JoinedWith, say.Joins(joins))})
		}
		var err error
		if o.Text, err = design.StarterFor(w.Inches, w.All, about, inFiles(values, say.Proposal)); err != nil {
			return err
		}
		if o.Text, err = w.taken(o.Text); err != nil {
			return err
		}
		o.Plan, err = ReadFor(name, []byte(o.Text), Setting{Words: w.Words, Shelf: w.Shelf})
		if err == nil || joins == 2 || !aboutWidth(err) {
			o.Values, o.Joins = values, joins
			return err
		}
	}
}

// weakBars reports whether a bar does not hold.
func weakBars(r margin.Report) bool {
	return slices.ContainsFunc(r.Unmet(), func(c margin.Check) bool { return c.Part.OfBar() })
}

// barValues proposes bars of a tube.
func (w Wish) barValues(t fit.Tube) []Value {
	outer, wall := w.size(t.Outer), w.size(t.Wall)
	unit := " mm"
	if w.Inches {
		unit = " in"
	}
	say := w.words().Proposal
	own := say.Sources[fit.OwnChoice]
	return []Value{
		{Key: design.KeyBarName, Value: fmt.Sprintf(say.Tube, strings.TrimSuffix(outer, unit), wall), Source: own, Why: say.LeastTube},
		{Key: design.KeyBarOuterDiameter, Value: outer, Source: own, Why: say.OuterOfTube},
		{Key: design.KeyBarWall, Value: wall, Source: own, Why: say.WallOfTube},
	}
}

// size writes the size of a tube.
func (w Wish) size(mm float64) string {
	if w.Inches {
		return strconv.FormatFloat(math.Round(mm/quantity.Inch*1000)/1000, 'f', -1, 64) + " in"
	}
	return strconv.FormatFloat(mm, 'f', -1, 64) + " mm"
}

// aboutWidth reports whether a design failed for nothing but the roll's width.
func aboutWidth(err error) bool {
	var f design.Faults
	return errors.As(err, &f) && len(f) == 1 && f[0].Key == design.KeyClothWidth
}

// lying returns how the sleeper lies.
func (w Wish) lying() design.Posture {
	if w.Person.OnSide {
		return design.OnSide
	}
	return design.OnBack
}

// lies returns that as the file has it.
func (w Wish) lies() string {
	if w.Person.OnSide {
		return "side"
	}
	return "back"
}

// values lists what is proposed: the person as given, the bed with its reasons, and
// a distance of the supports that leaves room for hang lines.
func (w Wish) values(bed fit.Proposal, s *hung.Shape) []Value {
	words := w.words()
	say := words.Proposal
	own := say.Sources[fit.OwnChoice]
	out := []Value{
		{Key: design.KeySleeperStature, Value: w.Stature, Asked: true, Why: say.Given},
		{Key: design.KeySleeperMass, Value: w.Mass, Asked: true, Why: say.Given},
		{Key: design.KeySleeperLies, Value: w.lies(), Asked: true, Why: say.Asked},
	}
	for _, r := range bed.Reasons {
		v := Value{Key: r.Key, Value: w.length(r.Value), Why: say.reason(r, w.Inches), Source: say.Sources[r.Source]}
		if r.Key == design.KeySleeperShoulders && w.Shoulders != "" {
			v.Value = w.Shoulders
		}
		out = append(out, v)
	}
	over := rig.Overall(s)
	step := 100.0
	if w.Inches {
		step = 6 * quantity.Inch
	}
	out = append(out,
		Value{Key: design.KeyHangDistance, Value: w.length(step * math.Ceil((over+2*lineRoom)/step)), Source: own,
			Why: fmt.Sprintf(say.RoomForLines, w.length(over))},
		Value{Key: design.KeyAccuracyNodes, Value: "read", Source: own, Why: say.NodesRead})
	if w.Inches {
		out = append(out, Value{Key: design.KeyOutputUnits, Value: "in", Asked: true, Why: say.Asked})
	}
	if w.ClothWidth != "" {
		out = append(out, Value{Key: design.KeyClothWidth, Value: w.ClothWidth, Asked: true, Why: say.Given})
	}
	return out
}

// length writes a length as the file has them.
func (w Wish) length(mm float64) string {
	return quantity.Style{Inches: w.Inches, Fraction: 4}.Length(mm)
}
