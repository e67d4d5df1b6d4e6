package chapter

import (
	"fmt"
	"math"
	"slices"

	"slingloft/export/sheet"
	"slingloft/export/sheet/given"
	"slingloft/outline/hung"
	"slingloft/outline/margin"
	"slingloft/outline/state"
	"slingloft/outline/words"
)

// loads tables forces and margins.
func (b build) loads() (sheet.Section, error) {
	s := sheet.Section{ID: "loads", Title: b.Say.Loads.Title}
	s.Add(b.carefully(), b.forcesTable())
	if b.Margins != nil {
		s.Add(b.marginBlocks()...)
	}
	if b.Accuracy != nil {
		s.Add(append(b.accuracyBlocks(), b.effectsTable())...)
	}
	if len(b.Guests) > 0 {
		s.Add(b.guestBlocks()...)
	}
	return s, nil
}

// forcesTable tables the forces of the hung shape.
func (b build) forcesTable() sheet.Table {
	say := b.Say.Loads
	t := b.byEnd("forces", say.Forces)
	h, f := b.Shape.Ends[hung.Head], b.Shape.Ends[hung.Foot]
	add := func(name string, of func(hung.EndShape) float64) { t.Add(name, b.Force(of(h)), b.Force(of(f))) }
	add(say.Level, func(e hung.EndShape) float64 { return e.Horizontal })
	add(say.Upright, func(e hung.EndShape) float64 { return e.Vertical })
	add(say.Leg, func(e hung.EndShape) float64 { return e.LegTension })
	add(say.Side, func(e hung.EndShape) float64 { return e.TipTension })
	add(say.Thrust, func(e hung.EndShape) float64 { return e.BarCompression })
	return t
}

// marginBlocks tables what governs each part, what has to be bought, every check case by
// case, every state, and names the sources.
func (b build) marginBlocks() []sheet.Block {
	say, names := b.Say.Loads, b.Say.Names.Margins
	out := []sheet.Block{b.governsTable(), b.leastTable(), b.knots()}
	var sources []margin.Source
	for i, c := range b.Margins.Cases {
		caption := fmt.Sprintf(say.Case, given.Capital(names.Cases[c.Kind]), names.Basis(c, b.Style))
		t := sheet.Table{ID: fmt.Sprintf("margins-%d", i+1), Caption: caption, Head: say.Columns[:],
			Words: []bool{true, false, false, false, false, false, true, false}}
		for _, k := range b.Margins.Checks {
			if k.Case == c.Kind {
				n := slices.Index(sources, k.Source)
				if n < 0 {
					n, sources = len(sources), append(sources, k.Source)
				}
				t.AddStrong(k.Unmet(), b.checkRow(k, n+1)...)
			}
		}
		if len(t.Rows) > 0 {
			out = append(out, t)
		}
	}
	out = append(out, b.statesTable(), sentences(names.SuddenOf(*b.Margins, b.Style)))
	var list sheet.List
	for i, s := range sources {
		list = append(list, fmt.Sprintf(say.Source, i+1, names.Source(s)))
	}
	out = append(out, list)
	if len(b.Margins.Notes) > 0 {
		out = append(out, sentences(names.NotesOf(b.Margins.Notes)))
	}
	return out
}

// governsTable has one line a part: the state that loads it most.
func (b build) governsTable() sheet.Table {
	say := b.Say.Loads
	t := sheet.Table{ID: "governs", Caption: say.Governs, Head: say.GovernColumns[:],
		Words: []bool{true, true, false, false, false, false, true}}
	for _, k := range b.Margins.ByPart() {
		row := b.checkRow(k, 0)
		t.AddStrong(k.Unmet(), row[0], b.Say.Names.Margins.Cases[k.Case], row[1], row[3], row[4], row[5], row[6])
	}
	return t
}

// leastTable has the least strengths to buy.
func (b build) leastTable() sheet.Table {
	say, names := b.Say.Loads, b.Say.Names.Margins
	t := sheet.Table{ID: "least", Caption: say.Least, Head: say.LeastColumns[:],
		Words: []bool{true, false, false, false, false, false, true, false}}
	for _, l := range b.Margins.Leasts {
		has, knotted, keeps := b.Say.NotGiven, "–", "–"
		if l.Given > 0 {
			has = b.Load(l.Given, l.Unit)
		}
		if b.mayBeTied(l) {
			knotted = words.Strength(l.Knotted, l.Unit, b.Style)
		}
		switch {
		case l.Assumed:
			keeps = fmt.Sprintf(say.Assumed, given.Times(l.Keeps))
		case l.Keeps < 1:
			keeps = given.Times(l.Keeps)
		}
		t.AddStrong(l.Given > 0 && l.Given < l.Value, given.Capital(names.Least.Things[l.Thing]),
			words.Strength(l.Value, l.Unit, b.Style), knotted,
			b.Load(l.Check.Load, l.Check.Unit), given.Times(l.Check.Required), keeps, names.CheckName(l.Check), has)
	}
	return t
}

// knots tells what a knot costs, or that there is none.
func (b build) knots() sheet.Para {
	if slices.ContainsFunc(b.Margins.Leasts, b.mayBeTied) {
		return sheet.Para(b.Say.Names.Margins.Least.Knots)
	}
	return sheet.Para(b.Say.Loads.NoKnots)
}

// mayBeTied reports whether a thing may be tied in place of spliced: hang lines that are the
// maker's own, or are tied by the design. Nothing else in the bed takes a knot.
func (b build) mayBeTied(l margin.Least) bool {
	lines := b.Cords.Lines
	return l.Thing == margin.LineThing && l.Knotted > 0 && (len(lines) == 0 || lines[0].Knotted)
}

// statesTable has the made bed in every state, loads static.
func (b build) statesTable() sheet.Table {
	say := b.Say.Loads
	t := sheet.Table{ID: "states", Caption: say.States, Head: say.StateColumns[:],
		Words: []bool{true, false, false, false, false, false, false, false, false, false}}
	for _, s := range b.Margins.States {
		name := given.Capital(b.Say.Names.Margins.Cases[s.Kind])
		switch {
		case s.Bound != nil:
			name = fmt.Sprintf(say.Bounded, name)
		case s.Extreme:
			name = fmt.Sprintf(say.Extreme, name)
		}
		most := func(a, c state.Member) string { return b.Force(max(a.Load(s.Loads), c.Load(s.Loads))) }
		turn, share := "–", "–"
		if s.Share > 0 {
			share = given.Times(s.Share)
		}
		if s.Kind != state.GettingIn && s.Bound == nil {
			turn = b.Style.Angle(math.Abs(s.Turn))
		}
		t.Add(name, b.SignedRound(s.X), b.Round(s.Aside), most(state.HeadLine, state.FootLine), most(state.HeadLeg, state.FootLeg),
			b.Force(state.SideCord.Load(s.Loads)), most(state.HeadBar, state.FootBar), b.Load(s.Loads.Cloth, margin.PerWidth), turn, share)
	}
	return t
}

// checkRow writes one check.
func (b build) checkRow(k margin.Check, source int) []string {
	say := b.Say.Loads
	holds, ratio, verdict := b.Say.NotGiven, "–", say.Met
	if k.Capacity > 0 {
		holds, ratio = b.Load(k.Capacity, k.Unit), given.Times(k.Ratio)
		if k.Bound {
			holds, ratio = "≤ "+holds, "≤ "+ratio
		}
	}
	switch {
	case k.Unmet() && k.Waived:
		verdict = say.Waived
	case k.Unmet():
		verdict = say.NotMet
	case !k.Met:
		verdict = b.Say.NotGiven
	}
	factor := "–"
	if k.Factor != 1 {
		factor = "× " + given.Times(k.Factor)
	}
	return []string{b.Say.Names.Margins.Parts[k.Part], b.Load(k.Load, k.Unit), factor, holds, ratio, given.Times(k.Required), verdict,
		fmt.Sprint(source)}
}
