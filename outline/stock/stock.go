// Package stock lists what to buy for a hammock, what of it ends up in it and what
// that weighs and costs.
//
// Lengths mm, areas mm², masses g, prices in the maker's own currency as in
// package design. See [Of].
package stock

import (
	"math"
	"slices"

	"slingloft/outline/article"
	"slingloft/outline/cord"
	"slingloft/outline/design"
	"slingloft/outline/hung"
)

// Piece is one kind of piece of cloth.
type Piece struct {
	Article article.Article
	Count   int
	Area    float64 // of one as it is cut, allowances included, mm²
}

// Run is one kind of seam.
type Run struct {
	Count  int     // how many there are
	Length float64 // of one, mm
	Rows   int     // rows of stitches; 0: 1
}

// Roll is a cloth with the pieces that are cut from it.
type Roll struct {
	Cloth  design.Cloth
	Pieces []Piece
	Lay    float64 // length that the pieces need, mm
}

// Input is what the list is made from.
type Input struct {
	Hammocks []Hammock // of one roll
	Rolls    []Roll
	Sheets   int          // for templates
	Sheet    design.Sheet // their material
	Layers   float64      // thickness of cloth that a seam goes through, mm; 0: [SeamLayers]
	Saw      float64      // width of a saw cut, mm; 0: [SawCut]
}

// Hammock is what one hammock takes beside its cloth.
type Hammock struct {
	Design design.Design
	Cords  []cord.Cord
	Trials []cord.Trial // trial splices, one of each kind of cord that needs one
	Runs   []Run
	// Gathered are the lengths of the ends that a drawstring runs through, mm: head and
	// foot; none without.
	Gathered []float64
	Mouths   []float64 // lengths around the mouths of sacks, mm
	Loops    float64   // tape for the loops of a tarp, mm
	Guys     []float64 // lines of a tarp as they are cut, mm
	Pegs     int       // of a tarp
	Cover    Cover
}

// Cover is what an insect net takes beside its net, mm; 0: nothing, or not known.
type Cover struct {
	Zip     float64 // from stop to stop
	Tape    float64 // for its loops
	Line    float64 // cord of its ridge
	Carries bool    // that cord
	Elastic float64 // of its ridge
	Hem     float64 // elastic in its lower edge
	Ties    float64 // cord across under the bed
}

// What is taken where a measure is not given, mm: own choice.
const (
	SeamLayers = 0.5
	SawCut     = 2
	// TieLength is a drawstring's length beyond its channel, at both ends together, to
	// draw it tight and tie it.
	TieLength = 400
	// Squaring is cloth beyond the lay, out of which the end of the roll is cut square to
	// the selvedge.
	Squaring = 50
)

// Bill is the whole list. Of several hammocks it is what they take together.
type Bill struct {
	Rows   []Row
	Masses []Mass
	Bars   []Cutting // how the bars come out of their stock lengths
	Total  float64   // of the masses that are known, g
	Cost   float64   // of the rows that have a price
	Open   []Open    // rows without a price and masses not known
	Used   float64   // part of the bought cloth that is in the pieces, 0 to 1
}

// Of returns the list. The error is a [hung.Impossible]: a bar longer than the
// lengths it is sold in.
func Of(in Input) (Bill, error) {
	var b Bill
	b.cloth(in)
	b.cords(in)
	b.lines(in)
	if err := b.bars(in); err != nil {
		return Bill{}, err
	}
	b.drawstrings(in)
	b.drawcords(in)
	b.loops(in)
	b.covers(in)
	b.thread(in)
	if in.Sheets > 0 {
		s := in.Sheet
		b.row(Row{Kind: SheetRow, Name: s.Name, Quantity: float64(in.Sheets),
			Note: Note{Kind: ForTemplates, Size: [2]float64{s.Width, s.Height}}}.each(s.Price))
	}
	b.hardware(in)
	for _, m := range b.Masses {
		b.Total += m.Grams
		if m.Missing != "" {
			b.Open = append(b.Open, Open{Mass: m})
		}
	}
	return b, nil
}

// row adds a row with its cost.
func (b *Bill) row(r Row) {
	r.Cost = r.Quantity * r.Price
	b.Cost += r.Cost
	if r.Price == 0 {
		b.Open = append(b.Open, Open{Row: &r})
	}
	b.Rows = append(b.Rows, r)
}

// metre is 1 m in mm.
const metre = 1000

// cloth lists the rolls, and what each set of pieces weighs.
func (b *Bill) cloth(in Input) {
	bought, used := 0.0, 0.0
	masses := map[article.Article]Mass{}
	for i, r := range in.Rolls {
		long := r.Lay
		if long > 0 {
			long += Squaring
		}
		b.row(
			Row{
				Kind:     ClothRow,
				Name:     r.Cloth.Name,
				Quantity: upTo(long / metre),
				Note:     Note{Size: [2]float64{r.Cloth.Width}},
			}.perMetre(
				r.Cloth.Price,
			),
		)
		bought += float64(long * r.Cloth.Width)
		area := map[article.Article]float64{}
		for _, p := range r.Pieces {
			area[p.Article] += float64(p.Count) * p.Area
		}
		for _, s := range article.All() {
			if area[s] == 0 && (s != article.Bed || i > 0) {
				continue
			}
			m := Mass{Part: MassPart{Kind: OfCloth, Article: s}, Grams: r.Cloth.ArealDensity.Grams(area[s])}
			if r.Cloth.ArealDensity == 0 {
				m.Missing = design.KeyClothArealDensity
			}
			masses[s] = m
			used += area[s]
		}
	}
	for _, s := range article.All() {
		if m, ok := masses[s]; ok {
			b.Masses = append(b.Masses, m)
		}
	}
	if bought > 0 {
		b.Used = used / bought
	}
}

// cords lists the cord. Every hammock's are marked, and pulled, in lengths of their own;
// a trial of one kind of cord does for all.
func (b *Bill) cords(in Input) {
	var all []cord.Cord
	waste := 0.0
	for _, h := range in.Hammocks {
		all = append(all, h.Cords...)
		waste = max(waste, h.Design.Splice.Waste)
	}
	for _, s := range cord.Spools(all, waste) {
		share := CordShare{Cords: s.Net, Waste: s.Waste}
		for _, h := range in.Hammocks {
			if slices.ContainsFunc(h.Cords, func(c cord.Cord) bool { return c.Kind == s.Kind }) {
				share.Fast += 2 * cord.Fast(s.Kind.Diameter, cord.Thickest(h.Cords))
			}
			for _, t := range h.Trials {
				if t.Kind == s.Kind {
					share.Trial = max(share.Trial, t.Host+t.Own)
				}
			}
		}
		b.row(
			Row{Kind: CordRow, Name: s.Name, Quantity: upTo(share.all() / metre), Note: Note{Kind: WithWaste, Cord: share}}.perMetre(s.Kind.Price),
		)
	}
	for _, c := range all {
		m := Mass{Part: MassPart{Kind: OfCord, Cord: c.Part}, Grams: c.Kind.LinearDensity.Grams(float64(c.Count) * c.Cut)}
		if c.Kind.LinearDensity == 0 {
			m.Missing = c.Part.Key().In("linear_density")
		}
		b.mass(m)
	}
}

// mass adds to what a part weighs, or the part where it is not there yet.
func (b *Bill) mass(m Mass) {
	i := slices.IndexFunc(b.Masses, func(o Mass) bool { return o.Part == m.Part })
	if i < 0 {
		b.Masses = append(b.Masses, m)
		return
	}
	b.Masses[i].Grams += m.Grams
	if m.Missing != "" {
		b.Masses[i].Missing = m.Missing
	}
}

// drawstrings lists what draws gathered ends in, those of one length together. What it is
// made of is left to the maker: it carries nothing but its own knot.
func (b *Bill) drawstrings(in Input) {
	var rows []Row
	for _, h := range in.Hammocks {
		r := Row{Kind: CordRow, Thing: Drawstring, Note: Note{Kind: CutStrings}}
		for e, long := range h.Gathered {
			r.Note.Cut[e] = long + TieLength
			r.Quantity += r.Note.Cut[e]
		}
		if r.Quantity > 0 {
			rows = together(rows, r)
		}
	}
	b.lengths(rows)
}

// drawcords lists what closes sacks, made of whatever the maker has.
func (b *Bill) drawcords(in Input) {
	r := Row{Kind: CordRow, Thing: Drawcord, Note: Note{Kind: ForSacks}}
	for _, h := range in.Hammocks {
		for _, around := range h.Mouths {
			r.Quantity += around + TieLength
		}
	}
	b.lengths([]Row{r})
}

// loops lists the tape of a tarp's tie-outs, and its lines.
func (b *Bill) loops(in Input) {
	r := Row{Kind: CordRow, Thing: LoopTape, Note: Note{Kind: ForLoops}}
	for _, h := range in.Hammocks {
		r.Quantity += h.Loops
	}
	guys := Row{Kind: CordRow, Thing: GuyLine, Note: Note{Kind: ForGuys}}
	for _, h := range in.Hammocks {
		for _, long := range h.Guys {
			guys.Quantity += long
		}
	}
	b.lengths([]Row{r, guys})
}

// covers lists what insect nets take.
func (b *Bill) covers(in Input) {
	var rows []Row
	for _, h := range in.Hammocks {
		c, line := h.Cover, CoverLine
		if c.Carries {
			line = CoverCord
		}
		for _, r := range []Row{
			{Thing: CoverTape, Quantity: c.Tape}, {Thing: line, Quantity: c.Line}, {Thing: CoverElastic, Quantity: c.Elastic},
			{Thing: HemElastic, Quantity: c.Hem}, {Thing: CoverTies, Quantity: c.Ties},
		} {
			if r.Kind, r.Note = CordRow, (Note{Kind: WithCover}); r.Quantity > 0 {
				rows = together(rows, r)
			}
		}
	}
	b.lengths(rows)
	for _, h := range in.Hammocks {
		if z := h.Cover.Zip; z > 0 {
			b.row(Row{Kind: HardwareRow, Thing: Zip, Quantity: 1, Unit: Single, Note: Note{Kind: StopToStop, Size: [2]float64{z}}})
		}
	}
}

// lengths adds rows of so many mm, as they are bought; of nothing, none.
func (b *Bill) lengths(rows []Row) {
	for _, r := range rows {
		if r.Quantity > 0 {
			r.Quantity = upTo(r.Quantity / metre)
			b.row(r)
		}
	}
}

// together adds a row to that of the same thing, or the row where there is none.
func together(rows []Row, r Row) []Row {
	for i, o := range rows {
		if o.Kind == r.Kind && o.Thing == r.Thing && o.Name == r.Name && o.Price == r.Price && o.Note == r.Note {
			rows[i].Quantity += r.Quantity
			return rows
		}
	}
	return append(rows, r)
}

// bars lists the bars, of one tube together: bars of several hammocks come out of the same
// lengths.
func (b *Bill) bars(in Input) error {
	saw := in.Saw
	if saw == 0 {
		saw = SawCut
	}
	var kinds []design.Bar
	parts := map[design.Bar][]Part{}
	m := Mass{Part: MassPart{Kind: OfBars}}
	for n, h := range in.Hammocks {
		d := h.Design
		if !slices.Contains(kinds, d.Bar) {
			kinds = append(kinds, d.Bar)
		}
		for e, open := range [2]float64{d.Bed.HeadBar, d.Bed.FootBar} {
			parts[d.Bar] = append(parts[d.Bar], Part{hung.End(e), d.Bar.CutFor(open), n})
			m.Grams += hung.BarMass(d.Bar, open).Grams()
		}
		if d.Bar.Density == 0 {
			m.Missing = design.KeyBarDensity
		}
	}
	b.Masses = append(b.Masses, m)
	for _, bar := range kinds {
		made := Note{Kind: StockLengths, Size: [2]float64{bar.Stock}, Of: bar.Material, Yield: float64(bar.Yield)}
		r := Row{Kind: BarRow, Name: bar.Name, Note: made}.each(bar.Price)
		if bar.Stock == 0 {
			for _, p := range parts[bar] {
				r.Quantity += p.Length / metre
			}
			r.Unit, r.Price, r.Note.Kind, r.Note.Size = Metre, 0, BothBars, [2]float64{}
			b.row(r)
			continue
		}
		cut, err := Cut(parts[bar], bar.Stock, saw)
		if err != nil {
			return err
		}
		b.Bars = append(b.Bars, cut...)
		r.Quantity = float64(len(cut))
		b.row(r)
	}
	return nil
}

// hardware lists what holds it all together.
func (b *Bill) hardware(in Input) {
	var rows []Row
	for _, h := range in.Hammocks {
		d := h.Design
		for _, r := range []Row{
			{Thing: ApexHook, Quantity: 2, Note: Note{Kind: Rated, Size: [2]float64{d.Hang.HookDiameter}}},
			{Thing: FarHook, Quantity: 2, Note: Note{Kind: Rated, Size: [2]float64{d.Hang.HookDiameter}}},
			{Thing: BarTip, Quantity: 4, Note: Note{Kind: HoldsCord, Tip: tipOf(d)}},
		} {
			r.Kind, r.Unit = HardwareRow, Single
			rows = together(rows, r)
		}
		if h.Pegs > 0 {
			rows = together(rows, Row{Kind: HardwareRow, Unit: Single, Thing: Peg, Quantity: float64(h.Pegs), Note: Note{Kind: ForPegs}})
		}
	}
	for _, r := range rows {
		b.row(r)
	}
}

// upTo rounds metres up to whole centimetres: what is bought must not be short.
func upTo(metres float64) float64 { return math.Ceil(metres*100-1e-6) / 100 }
