package outside

import (
	"math"
	"slices"

	"slingloft/export/lettering"
	"slingloft/outline/geom"
	"slingloft/outline/piece"
)

// Piece returns the shape as a piece to cut so many times, with its title lettered
// where it is widest.
func (s Shape) Piece(id, title string, stock piece.Stock, count int) piece.Piece {
	p := piece.Piece{ID: id, Title: title, Stock: stock, Count: count, Cut: s.Outline, Holes: s.Holes, Lines: slices.Clone(s.Lines)}
	const (
		letter = 6.0 // mm
		least  = 2.0 // mm, below which nobody reads it
		room   = 0.9 // of the width
	)
	at, width := s.widest()
	text := title
	height := letter
	if w := lettering.Width(text, letter); w > room*width {
		height = math.Max(least, letter*room*width/w)
		text = lettering.Fit(text, height, room*width)
	}
	if text != "" {
		p.Labels = []piece.Label{{Text: text, At: at, Height: height, Anchor: piece.Centre}}
	}
	return p
}

// widest returns the middle and the width of the widest of some horizontal
// stretches inside the outline, holes left out.
func (s Shape) widest() (geom.Point, float64) {
	const tries = 32
	box := s.Outline.Bounds()
	at, width := box.Center(), 0.0
	for i := range tries {
		y := box.Min.Y + box.Height()*(float64(i)+0.5)/tries
		xs := s.Outline.LevelCrossings(y)
		for _, h := range s.Holes {
			xs = append(xs, h.LevelCrossings(y)...)
		}
		slices.Sort(xs)
		for k := 1; k < len(xs); k += 2 {
			if w := xs[k] - xs[k-1]; w > width*1.01 {
				at, width = geom.Pt((xs[k]+xs[k-1])/2, y), w
			}
		}
	}
	return at, width
}

// Slice is the height of the boxes that a keep-out is covered with, mm.
const Slice = 10.0

// KeepOut returns boxes that cover the shape, its holes included, when the drawing's
// zero lies at the given point of the stock: slices as high as [Slice], or fewer and
// higher ones of a large shape, each as wide as the shape is within it.
func (s Shape) KeepOut(at geom.Point) []geom.Box {
	const maxBoxes = 40
	box := s.Outline.Bounds()
	n := min(maxBoxes, max(1, int(math.Ceil(box.Height()/Slice))))
	step := box.Height() / float64(n)
	var out []geom.Box
	for i := range n {
		low := box.Min.Y + float64(step*float64(i))
		slice := within(s.Outline, low, low+step)
		slice.Min, slice.Max = slice.Min.Plus(at), slice.Max.Plus(at)
		out = append(out, slice)
	}
	return out
}

// within returns the box around the part of the ring between two heights.
func within(r geom.Ring, low, high float64) geom.Box {
	x := geom.EmptyBox()
	for _, y := range [2]float64{low, high} {
		for _, at := range r.LevelCrossings(y) {
			x = x.With(geom.Pt(at, y))
		}
	}
	for _, p := range r {
		if p.Y >= low && p.Y <= high {
			x = x.With(p)
		}
	}
	x.Min.Y, x.Max.Y = low, high
	return x
}
