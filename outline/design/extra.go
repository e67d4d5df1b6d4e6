package design

import (
	"slices"

	"slingloft/outline/piece"
)

// Extra is an outline of the maker's own, from a drawing, that is laid with the
// other pieces or kept clear of them.
type Extra struct {
	File      string      // SVG or DXF, beside the design
	Name      string      // lettered on it; empty: the file's
	Count     int         // of copies; 0: one
	Stock     piece.Stock // what it is cut from, or lies on
	As        Use         // what it is
	FreeGrain bool        // may be turned by quarters on the roll
	Unit      float64     // of a DXF file that names none, mm; 0: not given
	X, Y      float64     // of a keep-out: where the drawing's zero lies on the stock, mm
}

// Use says what an extra outline is.
type Use int

// The uses.
const (
	AsPiece   Use = iota // cut it
	AsKeepOut            // lay nothing on it
)

// Copies returns how many pieces are cut, at least 1.
func (e Extra) Copies() int { return max(1, e.Count) }

func extraRows() []row {
	e := func(d *Design) *Extra { return last(d.Extras) }
	length := func(key Key, lo, hi float64, at func(*Extra) *float64) row {
		return length("extra."+key, lo, hi, func(d *Design) *float64 { return at(e(d)) })
	}
	stay := func(*Design) {}
	keepOut := func(d *Design) bool { return e(d).As == AsKeepOut }
	return []row{
		text(KeyExtraFile, 200, func(d *Design) *string { return &e(d).File }).
			says("Drawing with closed outlines, SVG or DXF, named from the design's folder.", "pocket.svg", "pocket.svg").needed().known("path"),
		text(KeyExtraName, 60, func(d *Design) *string { return &e(d).Name }).
			says("What it is, lettered on it; left out, the file's name.", "Pocket", "Pocket").known("title"),
		optional(count(KeyExtraCount, 1, 100, func(d *Design) *int { return &e(d).Count })).
			says("How many to cut; left out, one.", "2", "2").known("copies"),
		named(KeyExtraStock, func(d *Design) *piece.Stock { return &e(d).Stock }, piece.Stocks()).
			says("What it is cut from, or lies on: the cloth or the sheets. Left out, the cloth.", "cloth", "cloth").known("material"),
		option(KeyExtraAs, func(d *Design) *Use { return &e(d).As }, "piece", "keep-out").
			says("A piece to cut, or a keep-out that no piece may touch. Left out, a piece.", "piece", "piece").known("kind", "use"),
		toggle(KeyExtraFreeGrain, func(d *Design) *bool { return &e(d).FreeGrain }).
			says("It may be turned by quarters on the roll.", "true", "true"),
		length("unit", 0.001, 10000, func(e *Extra) *float64 { return &e.Unit }).
			says("Length of a unit in a DXF file that names none, or in an SVG file without a width.", "1 mm", "1 in"),
		length("x", 0, 100000, func(e *Extra) *float64 { return &e.X }).when(stay, keepOut).
			says("Where the zero of a keep-out's drawing lies along the roll or sheet; left out, at its start.", "900 mm", "36 in"),
		length("y", 0, 10000, func(e *Extra) *float64 { return &e.Y }).when(stay, keepOut).
			says("Where it lies across the roll or sheet; left out, at its lower edge.", "200 mm", "8 in"),
	}
}

// extraList returns the array of tables of the extra outlines.
func extraList() repeated {
	return repeated{key: "extra", limit: 100, doc: "Outlines of your own, from drawings.",
		grow:  func(d *Design) { d.Extras = append(slices.Clip(d.Extras), Extra{}) },
		count: func(d *Design) int { return len(d.Extras) },
		pick: func(d Design, i int) Design {
			d.Extras = d.Extras[i : i+1]
			return d
		}}
}

// checkExtras wants keys that suit the use.
func (r *reader) checkExtras() {
	for i, e := range r.design.Extras {
		one := KeyExtra.Item(i + 1)
		for _, key := range []string{"x", "y"} {
			if e.As == AsPiece && r.source.Given(one.In(key)) && r.good(one.In(key), one.In("as")) {
				r.conflict(one.In(key), Found(OfKeepOut), Say(WriteOrLeave, `as = "keep-out"`))
			}
		}
		if e.As == AsKeepOut && r.source.Given(one.In("count")) && r.good(one.In("count"), one.In("as")) {
			r.conflict(one.In("count"), Found(OfPiece), Say(LeaveOut))
		}
	}
}
