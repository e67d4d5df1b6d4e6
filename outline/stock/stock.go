// Package stock lists what to buy for a hammock, what of it ends up in it and what
// that weighs and costs.
//
// Lengths mm, areas mm², masses g, prices in the maker's own currency as in
// package design. See [Of].
package stock

import (
	"math"
	"strings"

	"slingloft/outline/cord"
	"slingloft/outline/design"
	"slingloft/outline/hung"
	"slingloft/outline/quantity"
)

// Piece is one kind of piece of cloth.
type Piece struct {
	Name  string
	Count int
	Area  float64 // of one as it is cut, allowances included, mm²
}

// Run is one kind of seam.
type Run struct {
	Name   string
	Count  int     // how many there are
	Length float64 // of one, mm
	Rows   int     // rows of stitches; 0: 1
}

// Input is what the list is made from.
type Input struct {
	Design design.Design
	Cords  []cord.Cord
	Pieces []Piece
	Lay    float64 // length of the roll that the pieces need, mm
	Sheets int     // sheets for templates
	Runs   []Run
	// Gathered are the lengths of the ends that a drawstring runs through, mm: head and
	// foot; none without.
	Gathered []float64
	Layers   float64 // thickness of cloth that a seam goes through, mm; 0: [SeamLayers]
	Saw      float64 // width of a saw cut, mm; 0: [SawCut]
}

// What is taken where a measure is not given, mm: own choice.
const (
	SeamLayers = 0.5
	SawCut     = 2
	// TieLength is a drawstring's length beyond its channel, at both ends together, to
	// draw it tight and tie it.
	TieLength = 400
)

// Row is one thing to buy.
type Row struct {
	Kind     string  `json:"kind"` // "cloth", "cord", "bar", "thread", "sheet", "hardware"
	Name     string  `json:"name"`
	Quantity float64 `json:"quantity"`        // in Unit
	Unit     string  `json:"unit"`            // "m", "piece" or, as of [Bill.In], "yd"
	Price    float64 `json:"price,omitempty"` // of one unit; 0: not given
	Cost     float64 `json:"cost,omitempty"`
	Note     string  `json:"note"`
}

// Mass is what one part of the finished hammock weighs.
type Mass struct {
	Part    string  `json:"part"`
	Grams   float64 `json:"grams"`
	Missing string  `json:"missing,omitempty"` // key without which it is not known
}

// Bill is the whole list.
type Bill struct {
	Rows   []Row     `json:"rows"`
	Masses []Mass    `json:"masses"`
	Bars   []Cutting `json:"bars"`  // how the bars come out of their stock lengths
	Total  float64   `json:"total"` // of the masses that are known, g
	Cost   float64   `json:"cost"`  // of the rows that have a price
	Open   []string  `json:"open"`  // rows without a price and masses not known
	Used   float64   `json:"used"`  // part of the bought cloth that is in the pieces, 0 to 1

	style quantity.Style // of the rows' units
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
	b.thread(in)
	if in.Sheets > 0 {
		s := in.Design.Sheet
		b.row(Row{Kind: "sheet", Name: s.Name, Quantity: float64(in.Sheets), Unit: "piece", Price: s.Price, Note: "templates"})
	}
	for _, h := range hardware() {
		b.row(h)
	}
	for _, m := range b.Masses {
		b.Total += m.Grams
		if m.Missing != "" {
			b.Open = append(b.Open, "mass of "+m.Part+", for want of "+m.Missing)
		}
	}
	return b, nil
}

// row adds a row with its cost.
func (b *Bill) row(r Row) {
	r.Cost = r.Quantity * r.Price
	b.Cost += r.Cost
	if r.Price == 0 {
		b.Open = append(b.Open, "price of "+r.Name)
	}
	b.Rows = append(b.Rows, r)
}

// metre is 1 m in mm.
const metre = 1000

func (b *Bill) cloth(in Input) {
	c := in.Design.Cloth
	area := 0.0
	for _, p := range in.Pieces {
		area += float64(p.Count) * p.Area
	}
	b.row(Row{Kind: "cloth", Name: c.Name, Quantity: upTo(in.Lay / metre), Unit: "m", Price: c.Price, Note: "length of roll"})
	m := Mass{Part: "cloth", Grams: area / (metre * metre) * c.ArealDensity}
	if c.ArealDensity == 0 {
		m.Missing = "cloth.areal_density"
	}
	b.Masses = append(b.Masses, m)
	if in.Lay > 0 && c.Width > 0 {
		b.Used = area / (in.Lay * c.Width)
	}
}

func (b *Bill) cords(in Input) {
	for _, s := range cord.Spools(in.Cords, in.Design.Splice.Waste) {
		b.row(Row{Kind: "cord", Name: s.Name, Quantity: upTo(s.Buy / metre), Unit: "m", Price: s.Kind.Price, Note: "waste included"})
	}
	for _, c := range in.Cords {
		m := Mass{Part: c.Part.String(), Grams: float64(c.Count) * c.Cut / metre * c.Kind.LinearDensity}
		if c.Kind.LinearDensity == 0 {
			m.Missing = c.Part.Key() + ".linear_density"
		}
		b.Masses = append(b.Masses, m)
	}
}

// drawstrings lists what draws gathered ends in. What it is made of is left to the
// maker: it carries nothing but its own knot.
func (b *Bill) drawstrings(in Input) {
	style := quantity.Style{Inches: in.Design.Output.Inches, Fraction: 2}
	var cut []string
	total := 0.0
	for e, long := range in.Gathered {
		total += long + TieLength
		cut = append(cut, hung.End(e).String()+" "+style.Length(long+TieLength))
	}
	if total > 0 {
		b.row(Row{Kind: "cord", Name: "drawstring, thin and smooth", Quantity: upTo(total / metre), Unit: "m",
			Note: "cut: " + strings.Join(cut, ", ") + ", of which " + style.Length(TieLength) + " to draw and tie"})
	}
}

func (b *Bill) bars(in Input) error {
	d := in.Design
	saw := in.Saw
	if saw == 0 {
		saw = SawCut
	}
	var long []Part
	m := Mass{Part: "bars"}
	for e, open := range [2]float64{d.Bed.HeadBar, d.Bed.FootBar} {
		long = append(long, Part{hung.End(e).String() + " bar", open - 2*d.Bar.TipReach})
		m.Grams += 1000 * hung.BarMass(d.Bar, open)
	}
	if d.Bar.Density == 0 {
		m.Missing = "bar.density"
	}
	b.Masses = append(b.Masses, m)
	r := Row{Kind: "bar", Name: d.Bar.Name, Unit: "piece", Price: d.Bar.Price, Note: "stock lengths"}
	if d.Bar.Stock == 0 {
		r.Quantity, r.Unit, r.Price, r.Note = (long[0].Length+long[1].Length)/metre, "m", 0, "both bars, stock length not given"
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
func hardware() []Row {
	return []Row{
		{Kind: "hardware", Name: "hook, ring or shackle at an apex", Quantity: 2, Unit: "piece", Note: "rated, see the margins"},
		{Kind: "hardware", Name: "hook or strap at a support", Quantity: 2, Unit: "piece", Note: "rated, see the margins"},
		{Kind: "hardware", Name: "tip for a bar's end", Quantity: 4, Unit: "piece", Note: "to hold the cord in its gap"},
	}
}

// upTo rounds metres up to whole centimetres: what is bought must not be short.
func upTo(metres float64) float64 { return math.Ceil(metres*100-1e-6) / 100 }
