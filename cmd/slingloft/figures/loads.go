package figures

import (
	"fmt"
	"math"

	"slingloft/cmd/slingloft/work"
	"slingloft/outline/bed"
	"slingloft/outline/design"
	"slingloft/outline/hung"
	"slingloft/outline/margin"
	"slingloft/outline/quantity"
	"slingloft/outline/rig"
	"slingloft/outline/state"
)

// unmet prints what fails before anything else.
func (b *report) unmet(p *work.Plan, d Document) {
	say := b.say.Faults
	for _, c := range p.Margins().Checks {
		if c.Unmet() {
			word := say.NotMet
			if c.Waived {
				word = say.Waived
			}
			b.line(say.Margin, word, b.words.Margins.CheckName(c), quantity.Decimal(c.Ratio, 2), quantity.Decimal(c.Required, 2), p.Mend(c))
		}
	}
	for _, s := range p.Sewn.Seams {
		if !s.Within() {
			b.line(say.Seam, b.words.Seam(s), b.mm(s.Remains))
		}
	}
	for _, text := range d.Warnings {
		b.line(say.Warning, text)
	}
}

// checked returns a load or capacity with the unit of its check.
func (b *report) checked(v float64, unit margin.Unit) string {
	if unit == margin.Force {
		return b.force(v)
	}
	return b.style.PerWidth(v)
}

func (b *report) margins(r margin.Report) {
	say := b.say.Margins
	b.head(say.Title)
	b.line(say.Governs)
	b.checks(r.ByPart())
	for _, c := range b.words.Margins.UnknownOf(r) {
		b.line("%s", c)
	}
	b.strengths(r.Leasts)
	b.line("%s", b.words.Margins.Least.Knots)
	b.line(say.Every)
	b.checks(r.Checks)
	for _, c := range r.Cases {
		b.line(say.Case, b.words.Margins.Cases[c.Kind], b.words.Margins.Basis(c, b.style))
	}
	b.states(r.States)
	for _, s := range b.words.Margins.SuddenOf(r, b.style) {
		b.line("%s", s)
	}
	b.notes(b.words.Margins.NotesOf(r.Notes))
	b.careful()
}

// strengths says what is to be bought at least.
func (b *report) strengths(leasts []margin.Least) {
	say := b.say.Margins
	b.line(say.Least)
	for _, l := range leasts {
		b.line(say.Buy, b.words.Margins.Least.Things[l.Thing], b.words.Margins.LeastOf(l, b.style), b.words.Margins.LeastFor(l, b.style))
	}
}

// checks tables checks.
func (b *report) checks(all []margin.Check) {
	b.row(append(b.say.Margins.Columns[:], "")...)
	for _, c := range all {
		b.row(b.words.Margins.CheckName(c), b.checked(c.Load, c.Unit), b.capacity(c), b.ratio(c), quantity.Decimal(c.Required, 1), b.standing(c))
	}
}

// states tables the made bed in every state.
func (b *report) states(all []state.State) {
	say := b.say.Margins
	b.line(say.States, b.unit(), b.style.ForceUnit(), b.style.PerLengthUnit())
	b.row(say.State[:]...)
	for _, s := range all {
		name := b.words.Margins.Cases[s.Kind]
		switch {
		case s.Bound != nil:
			name = fmt.Sprintf(say.Bounded, name)
		case s.Extreme:
			name = fmt.Sprintf(say.Extreme, name)
		}
		most := func(a, c state.Member) string {
			return b.style.ForceFigure(max(a.Load(s.Loads), c.Load(s.Loads)))
		}
		turn, share := "–", "–"
		if s.Kind != state.GettingIn && s.Bound == nil {
			turn = b.deg(math.Abs(s.Turn))
		}
		if s.Share > 0 {
			share = quantity.Decimal(s.Share, 2)
		}
		b.row(name, b.figure(s.X), b.figure(s.Aside), most(state.HeadLine, state.FootLine), most(state.HeadLeg, state.FootLeg),
			b.style.ForceFigure(state.SideCord.Load(s.Loads)), most(state.HeadBar, state.FootBar),
			b.style.PerLengthFigure(s.Loads.Cloth), turn, share)
	}
}

func (b *report) capacity(c margin.Check) string {
	if c.Capacity == 0 {
		return b.say.NotGiven
	}
	text := b.checked(c.Capacity, c.Unit)
	if c.Bound {
		return fmt.Sprintf(b.say.Margins.AtMost, text)
	}
	return text
}

func (b *report) ratio(c margin.Check) string {
	if c.Ratio == 0 {
		return "–"
	}
	return quantity.Decimal(c.Ratio, 2)
}

// standing says in a word how a check stands.
func (b *report) standing(c margin.Check) string {
	say := b.say.Faults.Standing
	switch {
	case c.Unmet() && c.Waived:
		return say.Waived
	case c.Unmet():
		return say.NotMet
	case len(c.Missing) > 0:
		return fmt.Sprintf(say.Missing, design.Listed(c.Missing, ", "))
	}
	return say.Met
}

func (b *report) hanging(p *work.Plan, d Document) {
	h, say := d.Hanging, b.say.Hanging
	b.head(say.Title)
	b.line(say.Overall, b.mm(h.Overall))
	b.heights(p, h)
	b.roll(h.Roll)
	if h.Shelter.Ridge > 0 {
		b.line(say.ShelterOf, b.mm(h.Shelter.Needed), b.mm(h.Shelter.Ridge))
	} else {
		b.line(say.Shelter, b.mm(h.Shelter.Needed))
	}
	b.line(say.Sweep, b.unit())
	b.row(say.Columns[:]...)
	for _, p := range h.Sweep {
		b.row(b.figure(p.Distance), b.figure(p.Ends[0].Hook), b.figure(p.Ends[1].Hook), b.figure(p.Ends[0].Line), b.figure(p.Ends[1].Line))
	}
	b.careful()
}

// heights says what a maker sets, the anchors, before what follows, the apexes.
func (b *report) heights(p *work.Plan, h Hanging) {
	say := b.say.Hanging
	place := h.Reckoned
	if h.Place != nil {
		b.place(*h.Place, p.Margins())
		place = *h.Place
	}
	anchors := b.higher(place.HeadAbove, say.Anchor, say.AnchorsLevel)
	apexes := b.higher(place.ApexAbove(), say.Apex, say.ApexesLevel)
	if h.Place != nil {
		b.line(say.Anchors, anchors, apexes)
	} else {
		b.line(say.Guessed, b.mm(place.Ends[hung.Head].Line), anchors, apexes)
	}
	switch p.Design.Bed.Second {
	case design.LevelAnchors:
		b.line(say.LevelIs)
	case design.LevelHooks:
		b.line(say.ApexLevelIs)
	}
}

// higher says which end stands higher, and by how much, where the head stands so much
// higher, or that both are level.
func (b *report) higher(head float64, text, level string) string {
	end := bed.Head
	if head < 0 {
		end = bed.Foot
	}
	by := b.mm(math.Abs(head))
	if by == b.mm(0) {
		return level
	}
	return fmt.Sprintf(text, b.words.Ends[end], by)
}

// roll says how steady the bed is.
func (b *report) roll(r rig.Roll) {
	say := b.say.Hanging
	b.line(say.Roll, b.mm(r.Back), b.mm(r.Side))
	if r.Over {
		b.line(say.Over, b.mm(state.AtEdge), b.deg(r.Turn))
		return
	}
	verdict := say.NotSteady
	switch {
	case r.Stable:
		verdict = say.Steady
	case r.Rocks:
		verdict = say.Rocks
	}
	b.line(say.Turn, b.mm(state.AtEdge), b.deg(r.Turn), quantity.Decimal(r.Share, 2), verdict)
}

// pull writes a force, and as a weight where forces have units of their own.
func (b *report) pull(n float64) string {
	if b.imperial {
		return b.force(n)
	}
	return fmt.Sprintf(b.say.Hanging.Pull, b.force(n), quantity.Decimal(n/hung.Gravity, 1))
}

// place prints where the hammock hangs.
func (b *report) place(p rig.Place, r margin.Report) {
	say := b.say.Hanging
	b.line(say.Between, b.mm(p.Distance), b.mm(p.Lowest), b.mm(p.Edge))
	b.row("", b.words.Ends[hung.Head], b.words.Ends[hung.Foot])
	for k, f := range [placeFigures]func(rig.End) string{
		placeHook:  func(e rig.End) string { return b.mm(e.Hook) },
		placeLine:  func(e rig.End) string { return b.mm(e.Line) },
		placeApex:  func(e rig.End) string { return b.mm(e.Apex) },
		placeAngle: func(e rig.End) string { return b.deg(e.Angle) },
		placePull:  func(e rig.End) string { return b.pull(e.Pull.N) },
	} {
		if f != nil {
			b.row(say.Figures[k], f(p.Ends[hung.Head]), f(p.Ends[hung.Foot]))
		}
	}
	most := func(p margin.Part) string { return b.pull(r.Hardest(p).Load) }
	b.row(say.Figures[placeMost], most(margin.HeadLine), most(margin.FootLine))
	if p.Beyond > 0 {
		b.line(say.Beyond, b.mm(p.Beyond))
	}
}

func (b *report) materials(d Document) {
	m, say := d.bill.In(b.style), b.say.Materials
	b.head(say.Title)
	b.row(say.Columns[:]...)
	price := func(v float64) string {
		if v > 0 {
			return quantity.Decimal(v, 2)
		}
		return "–"
	}
	for _, r := range m.Rows {
		b.row(b.words.Materials.Kinds[r.Kind], b.words.Materials.Thing(r), quantity.Decimal(r.Quantity, 2), b.words.Materials.Units[r.Unit],
			price(r.Price), price(r.Cost), b.words.Note(r.Note, b.style))
	}
	cost := b.say.NotGiven
	if m.Cost > 0 {
		cost = quantity.Decimal(m.Cost, 2)
	}
	b.line(say.Cost, cost)
	b.strengths(d.strengths)
	b.row(say.Part, fmt.Sprintf(say.Mass, b.style.WeightUnit()))
	for _, q := range m.Masses {
		mass := b.style.Weight(q.Grams)
		if q.Missing != "" {
			mass = b.say.NotGiven
		}
		b.row(b.words.MassPart(q.Part), mass)
	}
	b.row(say.Total, b.style.Weight(m.Total))
	for _, o := range b.words.OpenOf(m) {
		b.line(say.Open, o)
	}
}
