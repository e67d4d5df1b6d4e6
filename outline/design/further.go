package design

import (
	"reflect"

	"slingloft/outline/article"
	"slingloft/outline/quantity"
)

// Own is cloth that further pieces are made of in place of the body's.
type Own struct {
	On    bool // it is given
	Cloth Cloth
}

// Sack is the stow sack, and the long one for the bars.
type Sack struct {
	On      bool
	Base    SackBase
	Volume  quantity.Litres                 // of the bed, packed; 0: not measured
	Density quantity.KilogramsPerCubicMetre // of the bed, packed, where it was not measured
	// Width is the diameter of a round base, or a flat sack's width as it lies, mm; 0: not
	// given.
	Width     float64
	Hem       float64 // finished width of the drawcord's hem, mm
	Allowance float64 // at every seam, mm
	NoBars    bool    // no sack for the bars
	Slack     float64 // of the bars' sack: how much wider it lies than they are, mm
	Own       Own
}

// SackBase is how a sack closes at its bottom.
type SackBase int

// The bases.
const (
	RoundBase SackBase = iota // a disc is sewn in
	FlatBase                  // folded, its corners sewn across into a square
)

// String returns the base's name, as designs and documents have it.
func (b SackBase) String() string { return [...]string{"round", "flat"}[b] }

// ClothFor returns the cloth that a set of pieces is made of: the body's, unless it has
// its own.
func (d Design) ClothFor(s article.Article) Cloth {
	if o := d.own(s); o.On {
		return o.Cloth
	}
	return d.Cloth
}

// own returns the cloth of its own that a set of pieces may have.
func (d Design) own(s article.Article) Own {
	switch s {
	case article.Sack:
		return d.Sack.Own
	case article.Tarp:
		return d.Tarp.Own
	case article.Lining:
		return d.Lining.Own
	case article.Cover:
		return d.Cover.Own
	}
	return Own{}
}

// Has reports whether the design has a set of pieces.
func (d Design) Has(s article.Article) bool {
	switch s {
	case article.Bed:
		return true
	case article.Sack:
		return d.Sack.On
	case article.Tarp:
		return d.Tarp.On
	case article.Lining:
		return d.Lining.On
	case article.Cover:
		return d.Cover.On
	}
	return false
}

// Rolls returns the cloths that pieces are cut from, each once: the body's first.
func (d Design) Rolls() []Cloth {
	var out []Cloth
	for _, s := range article.All() {
		if d.Has(s) && d.rollOf(out, s) == len(out) {
			out = append(out, d.ClothFor(s))
		}
	}
	return out
}

// RollOf returns the number of the roll, as of [Design.Rolls], that a set of pieces is cut
// from.
func (d Design) RollOf(s article.Article) int { return d.rollOf(d.Rolls(), s) }

// rollOf returns the number of a set's cloth among some rolls; how many there are if it is
// none of them.
func (d Design) rollOf(rolls []Cloth, s article.Article) int {
	for i, c := range rolls {
		if reflect.DeepEqual(c, d.ClothFor(s)) {
			return i
		}
	}
	return len(rolls)
}

// clothKey returns the table of the cloth that a set of pieces is made of, where it has its
// own.
func clothKey(s article.Article) Key {
	return map[article.Article]Key{
		article.Bed: KeyCloth, article.Sack: KeySackCloth, article.Tarp: KeyTarpCloth, article.Lining: KeyLiningCloth,
		article.Cover: KeyCoverCloth,
	}[s]
}

// WidthKey returns the key of the width of the cloth that a set of pieces is made of.
func (d Design) WidthKey(s article.Article) Key { return d.RollKey(d.RollOf(s)).In("width") }

// RollKey returns the table of the cloth on a roll.
func (d Design) RollKey(roll int) Key {
	for _, s := range article.All() {
		if d.Has(s) && d.RollOf(s) == roll {
			return clothKey(s)
		}
	}
	return KeyCloth
}

func sackRows() []row {
	of := func(d *Design) *Sack { return &d.Sack }
	return append([]row{
		named(KeySackBase, func(d *Design) *SackBase { return &of(d).Base }, []SackBase{RoundBase, FlatBase}).
			says(
				"round: a disc is sewn in as the bottom; flat: the cloth is folded at the bottom, and its corners are sewn across into a square.",
				"round",
				"round",
			).or("round").known("bottom", "kind"),
		measure(KeySackVolume, 0.2, 100, func(d *Design) *quantity.Litres { return &of(d).Volume }).
			says(
				"Volume of the bed as you pack it, measured; left out, it follows from the masses of cloth and cords and from density.",
				"3.5 l",
				"215 in³",
			).known("size"),
		measure(KeySackDensity, 20, 1000, func(d *Design) *quantity.KilogramsPerCubicMetre { return &of(d).Density }).
			says(
				"Mass per volume of the bed as it is packed, where its volume was not measured; own choice.",
				"120 kg/m³",
				"0.0043 lb/in³",
			).or("120 kg/m³"),
		length(KeySackWidth, 60, 600, func(d *Design) *float64 { return &of(d).Width }).
			says(
				"Diameter of a round base, or width of a flat sack as it lies; left out, what makes the filled sack 1.6 times as long as it is thick.",
				"140 mm",
				"5 1/2 in",
			).known("diameter"),
		length(KeySackHem, 6, 60, func(d *Design) *float64 { return &of(d).Hem }).
			says("Finished width of the hem that the drawcord runs in.", "18 mm", "3/4 in").or("20 mm").orIn("3/4 in"),
		length(KeySackAllowance, 4, 40, func(d *Design) *float64 { return &of(d).Allowance }).
			says("Allowance at the sacks' seams.", "12 mm", "1/2 in").or("10 mm").orIn("3/8 in").known("seam"),
		toggle(KeySackBars, func(d *Design) *bool { return &of(d).NoBars }).negated().
			says("A long sack for the bars as well.", "true", "true").or("true").known("bar", "bar_sack"),
		length(KeySackSlack, 0, 200, func(d *Design) *float64 { return &of(d).Slack }).
			says("How much wider the bars' sack lies than the bars are.", "25 mm", "1 in").or("20 mm").orIn("3/4 in").known("ease"),
	}, ownRows(KeySackCloth, func(d *Design) *Own { return &of(d).Own })...)
}

// ownRows are the keys of a cloth that further pieces are made of.
func ownRows(table Key, at func(*Design) *Own) []row {
	cloth := func(d *Design) *Cloth { return &at(d).Cloth }
	rows := rollRows(table, cloth)
	for i := range rows {
		rows[i].active = false // the table is left out of a starter file
	}
	return rows
}

// checkFurther keeps some of the width of rolls of their own.
func (r *reader) checkFurther() {
	for _, s := range article.All() {
		if own := r.design.own(s); own.On {
			r.checkSelvedge(clothKey(s), own.Cloth)
		}
	}
}
