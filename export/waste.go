package export

import (
	"math"

	"slingloft/outline/geom"
	"slingloft/outline/piece"
)

// waste is what no piece takes of a stock, as a grid of cells: a cell is free only
// where all of it is, and more than clear around it.
type waste struct {
	box   geom.Box
	cell  float64 // width of a cell, mm
	cols  int
	rows  int
	taken []bool // row by row from the lower left
	sums  []int  // of the taken cells below and to the left, one more each way
}

// What waste is made of: cells fine enough for the gaps of a lay, and no more of
// them than is quick.
const (
	leastCell = 2.5 // mm
	mostCells = 1e6
)

// newWaste returns the free cells of a stock.
func newWaste(box geom.Box) *waste {
	cell := math.Max(leastCell, math.Sqrt(box.Width()*box.Height()/mostCells))
	w := &waste{box: box, cell: cell, cols: int(box.Width() / cell), rows: int(box.Height() / cell)}
	w.taken = make([]bool, w.cols*w.rows)
	return w
}

// take takes all cells within clear of a box.
func (w *waste) take(b geom.Box, clear float64) {
	b = b.Expanded(clear)
	for row := max(0, w.row(b.Min.Y)); row <= min(w.rows-1, w.row(b.Max.Y)); row++ {
		for col := max(0, w.col(b.Min.X)); col <= min(w.cols-1, w.col(b.Max.X)); col++ {
			w.taken[row*w.cols+col] = true
		}
	}
	w.sums = nil
}

func (w *waste) col(x float64) int { return int(math.Floor((x - w.box.Min.X) / w.cell)) }
func (w *waste) row(y float64) int { return int(math.Floor((y - w.box.Min.Y) / w.cell)) }

// line takes what lies within clear of a line.
func (w *waste) line(pts geom.Polyline, clear float64) {
	for i := 1; i < len(pts); i++ {
		steps := math.Ceil(pts[i-1].Dist(pts[i])/w.cell) + 1
		for k := range int(steps) + 1 {
			p := pts[i-1].Towards(pts[i], float64(k)/steps)
			w.take(geom.Box{Min: p, Max: p}, clear+w.cell/2)
		}
	}
}

// ring takes a ring, what lies within it and within clear of it.
func (w *waste) ring(r geom.Ring, clear float64) {
	w.line(geom.Polyline(r.Closed()), clear)
	box := r.Bounds()
	for row := max(0, w.row(box.Min.Y)); row <= min(w.rows-1, w.row(box.Max.Y)); row++ {
		xs := r.LevelCrossings(w.box.Min.Y + (float64(row)+0.5)*w.cell)
		for i := 0; i+1 < len(xs); i += 2 {
			for col := max(0, w.col(xs[i])); col <= min(w.cols-1, w.col(xs[i+1])); col++ {
				w.taken[row*w.cols+col] = true
			}
		}
	}
	w.sums = nil
}

// add sums the taken cells up.
func (w *waste) add() {
	n := w.cols + 1
	w.sums = make([]int, n*(w.rows+1))
	for row := range w.rows {
		run := 0
		for col := range w.cols {
			if w.taken[row*w.cols+col] {
				run++
			}
			w.sums[(row+1)*n+col+1] = w.sums[row*n+col+1] + run
		}
	}
}

// holds reports whether all of a box is free.
func (w *waste) holds(b geom.Box) bool {
	if !w.box.ContainsBox(b) {
		return false
	}
	if w.sums == nil {
		w.add()
	}
	left, right := w.col(b.Min.X), w.col(b.Max.X)+1
	low, high := w.row(b.Min.Y), w.row(b.Max.Y)+1
	if right > w.cols || high > w.rows {
		return false
	}
	n := w.cols + 1
	return w.sums[high*n+right]-w.sums[low*n+right]-w.sums[high*n+left]+w.sums[low*n+left] == 0
}

// find returns the leftmost free place for a box of a size, of those the lowest, clear
// of the stock's edges too, and takes it.
func (w *waste) find(width, height, clear float64) (geom.Box, bool) {
	within := w.box.Expanded(-clear)
	for col := range w.cols {
		for row := range w.rows {
			at := w.box.Min.Plus(geom.Pt(float64(col)*w.cell, float64(row)*w.cell))
			b := geom.Box{Min: at, Max: at.Plus(geom.Pt(width, height))}
			if within.ContainsBox(b) && w.holds(b.Expanded(-w.cell*1e-9)) {
				w.take(b, clear)
				return b, true
			}
		}
	}
	return geom.Box{}, false
}

// wasteOf returns the waste of a sheet: what lies beside its pieces, drawn or not, its
// own lines and labels.
func wasteOf(s Sheet, clear float64) *waste {
	w := newWaste(s.Frame.Lay)
	lay := geom.Motion{Shift: s.Frame.Lay.Min}
	for _, it := range s.Items {
		m := it.Motion
		m.Shift = m.Shift.Plus(s.Frame.Lay.Min)
		w.ring(it.Piece.Cut.Moved(m), clear)
		for _, l := range it.Piece.Lines {
			w.line(lineOf(l.Moved(m)), clear)
		}
		for _, l := range it.Piece.Labels {
			w.take(inkOf(l.Moved(m)), clear)
		}
	}
	for _, l := range s.Lines {
		if l.Closed { // a flaw, or what is kept clear: there may be no cloth in it
			w.ring(geom.Ring(l.Moved(lay).Points), clear)
		} else {
			w.line(lineOf(l.Moved(lay)), clear)
		}
	}
	for _, l := range s.Labels {
		w.take(inkOf(l.Moved(lay)), clear)
	}
	for _, b := range s.Taken {
		w.take(geom.Box{Min: b.Min.Plus(lay.Shift), Max: b.Max.Plus(lay.Shift)}, clear)
	}
	return w
}

// lineOf returns a line's points, the first again at the end where it is closed.
func lineOf(l piece.Line) geom.Polyline {
	if l.Closed {
		return geom.Polyline(geom.Ring(l.Points).Closed())
	}
	return l.Points
}
