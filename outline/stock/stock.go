// Package stock lists what to buy for a hammock, what of it ends up in it and what
// that weighs and costs.
//
// Lengths mm, areas mm², masses g, prices in the maker's own currency as in
// package design. See [Of].
package stock

import (
	"math"
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
	Design design.Design
	Cords  []cord.Cord
	Trials []cord.Trial // trial splices, one of each kind of cord that needs one
	Rolls  []Roll
	Sheets int // sheets for templates
	Runs   []Run
	// Gathered are the lengths of the ends that a drawstring runs through, mm: head and
	// foot; none without.
	Gathered []float64
	Mouths   []float64 // lengths around the mouths of sacks, mm
	Loops    float64   // tape for the loops of a tarp, mm
	Layers   float64   // thickness of cloth that a seam goes through, mm; 0: [SeamLayers]
	Saw      float64   // width of a saw cut, mm; 0: [SawCut]
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

// Bill is the whole list.
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
	if err := b.bars(in); err != nil {
		return Bill{}, err
	}
	b.drawstrings(in)
	b.drawcords(in)
	if in.Loops > 0 {
		b.row(Row{Kind: CordRow, Thing: LoopTape, Quantity: upTo(in.Loops / metre), Note: Note{Kind: ForLoops}})
	}
	b.thread(in)
	if in.Sheets > 0 {
		s := in.Design.Sheet
		b.row(Row{Kind: SheetRow, Name: s.Name, Quantity: float64(in.Sheets),
			Note: Note{Kind: ForTemplates, Size: [2]float64{s.Width, s.Height}}}.each(s.Price))
	}
	for _, h := range hardware(in.Design) {
		b.row(h)
	}
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

func (b *Bill) cords(in Input) {
	for _, s := range cord.Spools(in.Cords, in.Design.Splice.Waste) {
		share := CordShare{Cords: s.Net, Waste: s.Waste, Fast: 2 * cord.Fast(s.Kind.Diameter, cord.Thickest(in.Cords))}
		for _, t := range in.Trials {
			if t.Kind == s.Kind {
				share.Trial = t.Host + t.Own
			}
		}
		b.row(
			Row{Kind: CordRow, Name: s.Name, Quantity: upTo(share.all() / metre), Note: Note{Kind: WithWaste, Cord: share}}.perMetre(s.Kind.Price),
		)
	}
	for _, c := range in.Cords {
		m := Mass{Part: MassPart{Kind: OfCord, Cord: c.Part}, Grams: c.Kind.LinearDensity.Grams(float64(c.Count) * c.Cut)}
		if c.Kind.LinearDensity == 0 {
			m.Missing = c.Part.Key().In("linear_density")
		}
		b.Masses = append(b.Masses, m)
	}
}

// drawstrings lists what draws gathered ends in. What it is made of is left to the
// maker: it carries nothing but its own knot.
func (b *Bill) drawstrings(in Input) {
	var cut [2]float64
	total := 0.0
	for e, long := range in.Gathered {
		total += long + TieLength
		cut[e] = long + TieLength
	}
	if total > 0 {
		b.row(Row{Kind: CordRow, Thing: Drawstring, Quantity: upTo(total / metre), Note: Note{Kind: CutStrings, Cut: cut}})
	}
}

// drawcords lists what closes sacks, made of whatever the maker has.
func (b *Bill) drawcords(in Input) {
	total := 0.0
	for _, around := range in.Mouths {
		total += around + TieLength
	}
	if total > 0 {
		b.row(Row{Kind: CordRow, Thing: Drawcord, Quantity: upTo(total / metre), Note: Note{Kind: ForSacks}})
	}
}

func (b *Bill) bars(in Input) error {
	d := in.Design
	saw := in.Saw
	if saw == 0 {
		saw = SawCut
	}
	var long []Part
	m := Mass{Part: MassPart{Kind: OfBars}}
	for e, open := range [2]float64{d.Bed.HeadBar, d.Bed.FootBar} {
		long = append(long, Part{hung.End(e), d.Bar.CutFor(open)})
		m.Grams += hung.BarMass(d.Bar, open).Grams()
	}
	if d.Bar.Density == 0 {
		m.Missing = design.KeyBarDensity
	}
	b.Masses = append(b.Masses, m)
	r := Row{Kind: BarRow, Name: d.Bar.Name, Note: Note{Kind: StockLengths, Size: [2]float64{d.Bar.Stock}}}.each(d.Bar.Price)
	if d.Bar.Stock == 0 {
		r.Quantity, r.Unit, r.Price, r.Note = (long[0].Length+long[1].Length)/metre, Metre, 0, Note{Kind: BothBars}
		b.row(r)
		return nil
	}
	cut, err := Cut(long, d.Bar.Stock, saw)
	if err != nil {
		return err
	}
	b.Bars = cut
	r.Quantity = float64(len(cut))
	b.row(r)
	return nil
}

// hardware returns what holds it all together.
func hardware(d design.Design) []Row {
	return []Row{
		{Kind: HardwareRow, Thing: ApexHook, Quantity: 2, Unit: Single, Note: Note{Kind: Rated, Size: [2]float64{d.Hang.HookDiameter}}},
		{Kind: HardwareRow, Thing: FarHook, Quantity: 2, Unit: Single, Note: Note{Kind: Rated, Size: [2]float64{d.Hang.HookDiameter}}},
		{Kind: HardwareRow, Thing: BarTip, Quantity: 4, Unit: Single, Note: Note{Kind: HoldsCord, Size: [2]float64{d.Bar.TipDiameter}}},
	}
}

// upTo rounds metres up to whole centimetres: what is bought must not be short.
func upTo(metres float64) float64 { return math.Ceil(metres*100-1e-6) / 100 }
