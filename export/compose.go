package export

import (
	"fmt"
	"math"

	"slingloft/export/lettering"
	"slingloft/outline/geom"
	"slingloft/outline/piece"
	"slingloft/outline/words"
)

// Item is one copy of a piece where the lay put it.
type Item struct {
	Piece  piece.Piece
	Copy   int         // number of the copy, from 1
	Motion geom.Motion // from the piece's coordinates to those of the lay area
	Idle   bool        // it lies there but is not drawn
}

// Sheet is all that is needed to compose one drawing. Items, Lines and Labels are
// placed from the lower left corner of the lay area, in mm.
type Sheet struct {
	Name  string      // file stem: "cloth-lay", "template-sheet-1"
	Title string      // for people: "Cloth lay"
	Stock piece.Stock // that it is cut from
	Roll  int         // of cloth: which of several rolls, from 0
	Frame Frame       // from [Around], [Within] or [Empty]
	Items []Item

	Lines  []piece.Line  // further lines, such as flaws of the cloth
	Labels []piece.Label // further labels
	Taken  []geom.Box    // of the lay area, kept clear of what stands in its waste
	Edge   bool          // draw the edge of the lay area
	Notes  []piece.Label // for people alone: left out where the drawing is the stock

	Block Block
	Words *words.Sheets // of title and title block; nil: English
}

// Compose makes a drawing of a sheet: every item with its cut line, holes, lines
// and labels, and in the band crosses, check bars and title block. Lines are
// named by piece and copy, as in "body-1/cut line", no two alike. A label that
// would leave the sheet is moved in and, if need be, shortened. Anything else
// that lies outside the sheet or is not finite is an error naming the piece.
func Compose(s Sheet) (Drawing, error) {
	f := s.Frame
	if !Inside(f.Scale, minScale, maxScale) {
		return Drawing{}, Refuse(SheetScale, s.Name, f.Scale, minScale, maxScale)
	}
	d := Drawing{Name: s.Name, Stock: s.Stock, Roll: s.Roll, Title: s.longTitle(), Width: f.Width, Height: f.Height, from: &s}
	switch {
	case f.empty:
	case f.bare:
		d.addToWaste(s)
	default:
		d.addBand(s)
	}
	lay := geom.Motion{Shift: f.Lay.Min}
	if s.Edge {
		edge := registerLine("lay edge", f.Lay.Ring()...)
		edge.Closed = true
		d.Lines = append(d.Lines, edge)
	}
	for _, l := range s.Lines {
		d.Lines = append(d.Lines, l.Moved(lay))
	}
	for _, l := range s.Labels {
		d.Labels = append(d.Labels, l.Moved(lay))
	}
	if !f.bare && !f.empty {
		for _, l := range s.Notes {
			d.Labels = append(d.Labels, l.Moved(lay))
		}
	}
	for _, it := range s.Items {
		if !it.Idle {
			d.addItem(it, f.Lay.Min)
		}
	}
	d.Lines = renamed(d.Lines)
	for i, l := range d.Labels {
		d.Labels[i] = keptInside(l, geom.Box{Max: geom.Pt(d.Width, d.Height)})
	}
	return d, d.Validate()
}

// longTitle returns the sheet's title with what tells the file from all others.
func (s Sheet) longTitle() string {
	b := s.Block
	if b.Design == "" {
		return s.Title
	}
	return sheetWords(s.Words).FileTitle(s.Title, b.Sheet, b.Sheets, b.Design, b.Marks)
}

// addBand adds what stands in the band around the lay area.
func (d *Drawing) addBand(s Sheet) {
	d.Lines = append(d.Lines, crosses(s.Frame)...)
	bars, barLabels := checkBars(s.Frame)
	block, blockLabels := titleBlock(s)
	d.Lines = append(append(d.Lines, bars...), block)
	d.Labels = append(append(d.Labels, barLabels...), blockLabels...)
}

// addItem adds one piece, its cut line last as it is cut last.
func (d *Drawing) addItem(it Item, origin geom.Point) {
	m := it.Motion
	m.Shift = m.Shift.Plus(origin)
	prefix := fmt.Sprintf("%s-%d/", it.Piece.ID, it.Copy)
	own := piece.Owner{Piece: it.Piece.ID, Copy: it.Copy}
	for _, l := range it.Piece.Lines {
		l = l.Moved(m)
		l.Name, l.Owner = prefix+l.Name, own
		d.Lines = append(d.Lines, l)
	}
	for i, hole := range it.Piece.Holes {
		l := ringLine(fmt.Sprintf("%shole %d", prefix, i+1), piece.CutInside, hole.Moved(m))
		l.Role, l.Index, l.Owner = piece.HoleLine, i+1, own
		d.Lines = append(d.Lines, l)
	}
	cut := ringLine(prefix+"cut line", piece.CutOut, it.Piece.Cut.Moved(m))
	cut.Role, cut.Owner = piece.CutLine, own
	d.Lines = append(d.Lines, cut)
	for _, l := range it.Piece.Labels {
		d.Labels = append(d.Labels, l.Moved(m))
	}
}

func ringLine(name string, w piece.Work, r geom.Ring) piece.Line {
	return piece.Line{Name: name, Work: w, Points: geom.Polyline(r), Closed: true}
}

// renamed returns the lines with a number behind every name that is already
// taken, so that each can be found again in any file.
func renamed(lines []piece.Line) []piece.Line {
	taken := make(map[string]bool, len(lines))
	last := map[string]int{} // number given last, by the name before numbering
	for i, l := range lines {
		name := l.Name
		for taken[name] {
			last[l.Name] = max(last[l.Name], 1) + 1
			name = fmt.Sprintf("%s/%d", l.Name, last[l.Name])
		}
		taken[name] = true
		lines[i].Name = name
	}
	return lines
}

// keptInside returns the label moved, and shortened if need be, so that its ink
// lies in the box.
func keptInside(l piece.Label, in geom.Box) piece.Label {
	ink := inkOf(l)
	if ink.Empty() || in.ContainsBox(ink) {
		return l
	}
	s, c := math.Sincos(l.Turn)
	room := math.Min(in.Width()/math.Max(math.Abs(c), 1e-9), in.Height()/math.Max(math.Abs(s), 1e-9))
	l.Text = lettering.Fit(l.Text, l.Height, math.Max(0, room-float64(4*l.Height)))
	ink = inkOf(l)
	if ink.Empty() {
		return l
	}
	l.At.X += math.Max(0, in.Min.X-ink.Min.X) - math.Max(0, ink.Max.X-in.Max.X)
	l.At.Y += math.Max(0, in.Min.Y-ink.Min.Y) - math.Max(0, ink.Max.Y-in.Max.Y)
	return l
}

// inkOf returns the box around a label's strokes.
func inkOf(l piece.Label) geom.Box {
	box := geom.EmptyBox()
	for _, s := range lettering.Strokes(l) {
		box = box.Union(s.Bounds())
	}
	return box
}
