// Package tile divides a sheet into pages for a home printer.
//
// Every page shows a window of the sheet at its scale. The windows overlap by
// [Overlap]; down the middle of each overlap runs a joint, drawn on both pages,
// with match marks across it at the same places of the sheet. Columns are named by
// letters and rows by numbers from the top, as in "B2". A page without any ink on
// its side of the joints is left out. The first page is a map of all; each page
// has check bars in both directions and says that it must not be fitted to the
// paper.
package tile

import (
	"math"
	"strconv"

	"slingloft/export"
	"slingloft/outline/geom"
	"slingloft/outline/piece"
)

// Overlap is the width that neighbouring pages have in common where the paper says
// no other, mm.
const Overlap = 12.0

// Room that a page keeps free of the sheet, mm: what printers cannot reach, and
// the band for bars and text at the left and at the bottom.
const (
	border     = 8.0
	bandLeft   = 14.0
	bandBottom = 19.0
)

// maxTiles bounds the pages that one sheet may be divided into.
const maxTiles = 2000

// grid is how the windows lie on the sheet.
type grid struct {
	paper         Paper
	columns, rows int
	window        geom.Box // on the page
	sheet         export.Drawing
}

// window returns where the sheet shows on a page.
func window(p Paper) geom.Box {
	return geom.Box{
		Min: geom.Pt(border+bandLeft, border+bandBottom),
		Max: geom.Pt(p.Width-border, p.Height-border),
	}
}

// newGrid lays windows over the sheet from its lower left corner on.
func newGrid(sheet export.Drawing, p Paper) grid {
	w := window(p)
	count := func(size, window float64) int {
		return max(1, int(math.Ceil((size-p.overlap())/(window-p.overlap())-1e-9)))
	}
	return grid{p, count(sheet.Width, w.Width()), count(sheet.Height, w.Height()), w, sheet}
}

// best returns the grid with fewer tiles, upright if they are as many.
func best(sheet export.Drawing, p Paper) grid {
	up, flat := newGrid(sheet, p), newGrid(sheet, p.turned())
	if flat.columns*flat.rows < up.columns*up.rows {
		return flat
	}
	return up
}

// cell is one tile: its column from the left and its row from the top, from 0.
type cell struct{ column, row int }

// name returns the tile's name: a letter for the column (two beyond Z) and the
// number of the row.
func (c cell) name() string {
	letters := ""
	for n := c.column; n >= 0; n = n/26 - 1 {
		letters = string(rune('A'+n%26)) + letters
	}
	return letters + strconv.Itoa(c.row+1)
}

// shown returns the window of the cell on the sheet.
func (g grid) shown(c cell) geom.Box {
	step := geom.Pt(g.window.Width()-g.paper.overlap(), g.window.Height()-g.paper.overlap())
	corner := geom.Pt(float64(c.column)*step.X, float64(g.rows-1-c.row)*step.Y)
	return geom.Box{Min: corner, Max: corner.Plus(geom.Pt(g.window.Width(), g.window.Height()))}
}

// core returns the part of the sheet that belongs to the cell: up to the joints,
// and beyond the sheet's edge where there is no neighbour.
func (g grid) core(c cell) geom.Box {
	b := g.shown(c).Expanded(-g.paper.overlap() / 2)
	if c.column == 0 {
		b.Min.X = math.Inf(-1)
	}
	if c.column == g.columns-1 {
		b.Max.X = math.Inf(1)
	}
	if c.row == g.rows-1 {
		b.Min.Y = math.Inf(-1)
	}
	if c.row == 0 {
		b.Max.Y = math.Inf(1)
	}
	return b
}

// inked returns the cells whose core has ink, row by row.
func (g grid) inked() []cell {
	var out []cell
	for row := range g.rows {
		for column := range g.columns {
			c := cell{column, row}
			if hasInk(g.sheet.Lines, g.core(c)) {
				out = append(out, c)
			}
		}
	}
	return out
}

func hasInk(lines []piece.Line, box geom.Box) bool {
	for _, l := range lines {
		if !l.Points.Bounds().Expanded(1e-9).Overlaps(box) {
			continue
		}
		pts := l.Points
		if l.Closed {
			pts = geom.Ring(pts).Closed()
		}
		for i := 1; i < len(pts); i++ {
			if _, _, ok := box.Part(pts[i-1], pts[i]); ok {
				return true
			}
		}
	}
	return false
}

// Split divides the drawing, at the scale and with the correction of o, into
// pages of the given paper, upright or on its side, whichever takes fewer. The
// pages are drawings at their size on paper, the map first.
func Split(d export.Drawing, o export.Options, p Paper) ([]export.Drawing, error) {
	sheet, err := d.Plain(o)
	if err != nil {
		return nil, err
	}
	w := window(p)
	if !export.Inside(math.Min(w.Width(), w.Height()), 120, export.MaxSize) {
		return nil, export.Refuse(export.PaperSmall, p.Name, p.Width, p.Height)
	}
	if !export.Inside(p.overlap(), 6, 50) {
		return nil, export.Refuse(export.OverlapOff, p.overlap())
	}
	g := best(sheet, p)
	if n := g.columns * g.rows; n > maxTiles {
		return nil, export.Refuse(export.PagesTooMany,
			d.Name, n, p.Name, maxTiles)
	}
	cells := g.inked()
	kept := map[cell]bool{}
	for _, c := range cells {
		kept[c] = true
	}
	f := furniture{g, o, len(cells) + 1}
	pages := []export.Drawing{f.mapPage(cells)}
	for i, c := range cells {
		pages = append(pages, f.page(c, kept, i+2))
	}
	return pages, nil
}
