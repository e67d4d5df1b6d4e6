package dxf

import (
	"fmt"
	"io"
	"math"
	"slices"
	"strings"

	"slingloft/export"
	"slingloft/outline/geom"
	"slingloft/outline/piece"
)

// Layers of ASTM D6673-10, formerly ANSI/AAMA-292, by number (public summary of
// the standard and a CAD vendor's table, which agree on these).
const (
	layerBoundary = 1
	layerTurn     = 2 // points at corners of the boundary
	layerCurve    = 3 // points along its curves
	layerNotch    = 4
	layerGrain    = 7
	layerInternal = 8 // lines that are not cut
	layerCutout   = 11
	layerSew      = 14
	layerText     = 15
)

// turnAngle is the least turn of the boundary at what counts as a corner, 15°. The
// sources say nothing of it.
const turnAngle = 15 * math.Pi / 180

// patternThin is how far the lines of a pattern may be off where a machine does not
// say, mm: exchange programs choke on points that no eye tells apart. Own choice.
const patternThin = 0.02

// WritePattern writes the pieces of a drawing for sewn-product pattern exchange,
// as far as ASTM D6673-10 is public: one block for each piece, numbered layers,
// 7-bit ASCII, one style in a file. Crosses, bars and title block are left out, and
// of several copies of a piece only the first is written, with their number as
// quantity. Entities are those that Release 13 has in common with Release 12,
// POLYLINE, LINE, POINT, TEXT and INSERT, under the version number of the latter,
// which readers of either take. Folds go on layer 8, not on layer 6, where a line
// means that the piece is to be mirrored on it.
//
// A piece of cloth has one LINE on layer 7, along the warp. A notch is one plain POINT
// where it meets the boundary, its depth in words. Only closed lines are cutouts; a slit
// is an internal line. The wording of the style and piece texts is from memory.
func WritePattern(out io.Writer, d export.Drawing, o export.Options, of export.Material) error {
	if o.Thin == 0 {
		o.Thin = patternThin
	}
	plain, err := d.Plain(o)
	if err != nil {
		return err
	}
	pieces := piecesOf(plain)
	for _, label := range d.Labels {
		label.At = o.Point(label.At)
		label.Height *= o.ScaleFactor()
		for i := range pieces {
			if geom.Ring(pieces[i].boundary.Points).Contains(label.At) {
				pieces[i].labels = append(pieces[i].labels, label)
				break
			}
		}
	}
	w := &writer{pairs: newPairs(out, o.Inches)} // no handles, no arcs
	w.all("0", "SECTION", "2", "HEADER", "9", "$ACADVER", "1", "AC1009")
	w.units()
	w.all("0", "ENDSEC", "0", "SECTION", "2", "BLOCKS")
	for _, p := range pieces {
		w.pieceBlock(p, of)
	}
	w.all("0", "ENDSEC", "0", "SECTION", "2", "ENTITIES")
	low := geom.Pt(0, -10)
	for i, text := range []string{"Style Name: " + plain.Title, "Author: Slingloft", "Units: " + w.system()} {
		w.patternText(layerBoundary, text, low.Minus(geom.Pt(0, float64(i)*8)), 5, 0)
	}
	for _, p := range pieces {
		w.all("0", "INSERT")
		w.int(8, layerBoundary)
		w.raw(2, p.block())
		w.point(geom.Point{})
	}
	w.all("0", "ENDSEC", "0", "EOF")
	return w.flush()
}

// patternPiece is what goes into one block.
type patternPiece struct {
	name     string
	copies   int
	boundary piece.Line
	lines    []piece.Line // all others
	labels   []piece.Label
}

// block returns the name of the piece's block.
func (p patternPiece) block() string { return strings.ToUpper(export.ID(p.name)) }

// piecesOf gathers the lines of each piece from the first copy and counts the copies.
func piecesOf(d export.Drawing) []patternPiece {
	var out []patternPiece
	index := map[string]int{}
	first := map[string]int{} // number of the copy that is taken
	for _, l := range d.Lines {
		name := l.Owner.Piece
		if l.Owner.Copy == 0 || l.Work == piece.Register || l.Work == piece.Lettering {
			continue
		}
		k, ok := index[name]
		if !ok {
			k = len(out)
			index[name], first[name] = k, l.Owner.Copy
			out = append(out, patternPiece{name: name})
		}
		boundary := l.Role == piece.CutLine
		if boundary {
			out[k].copies++
		}
		switch {
		case l.Owner.Copy != first[name]:
		case boundary:
			out[k].boundary = l
		default:
			out[k].lines = append(out[k].lines, l)
		}
	}
	return slices.DeleteFunc(out, func(p patternPiece) bool { return len(p.boundary.Points) == 0 })
}

// patternLayer returns the layer of a line that is not the boundary.
func patternLayer(l piece.Line) int {
	switch {
	case l.Closed && (l.Work == piece.CutInside || l.Work == piece.CutOut):
		return layerCutout
	case l.Work == piece.Stitch:
		return layerSew
	}
	return layerInternal
}

// pieceBlock writes one piece.
func (w *writer) pieceBlock(p patternPiece, of export.Material) {
	w.all("0", "BLOCK", "8", "0")
	w.raw(2, p.block())
	w.int(70, 0)
	w.point(geom.Point{})
	w.oldPolyline(layerBoundary, p.boundary)
	w.turnsAndCurves(p.boundary)
	for _, l := range p.lines {
		switch {
		case l.Role == piece.NotchStroke:
			w.dot(layerNotch, l.Points[0])
		case l.Role == piece.GrainArrow: // one line for all of it, below
		case len(l.Points) == 2 && !l.Closed:
			w.lineOn(patternLayer(l), l.Points[0], l.Points[1])
		default:
			layer := patternLayer(l)
			w.oldPolyline(layer, l)
			if layer == layerCutout || layer == layerSew {
				w.turnsAndCurves(l)
			}
		}
	}
	if a, b, ok := p.grain(of.Stock); ok {
		w.lineOn(layerGrain, a, b)
	}
	at := geom.Polyline(p.boundary.Points).Bounds().Center()
	texts := []string{"Piece Name: " + p.name, "Size: ONE", fmt.Sprintf("Quantity: %d", p.copies), "Material: " + of.Name}
	for i, text := range texts {
		w.patternText(layerBoundary, text, at.Minus(geom.Pt(0, float64(i)*8)), 5, 0)
	}
	for i, depth := range p.notchDepths() {
		text := "Notches: " + w.written(depth) + " deep, square to the edge, inwards"
		w.patternText(layerText, text, at.Minus(geom.Pt(0, float64(len(texts)+i)*8)), 5, 0)
	}
	for _, l := range p.labels {
		w.patternText(layerText, l.Text, l.At, l.Height, l.Turn)
	}
	w.all("0", "ENDBLK", "8", "0")
}

// grain returns a line along the warp: the shaft of the piece's arrow or, on cloth, one
// along the roll through the middle of the piece where it has none.
func (p patternPiece) grain(stock piece.Stock) (a, b geom.Point, ok bool) {
	for _, l := range p.lines {
		if l.Role == piece.GrainArrow && len(l.Points) == 2 {
			return l.Points[0], l.Points[1], true
		}
	}
	if stock != piece.Cloth {
		return a, b, false
	}
	box := geom.Polyline(p.boundary.Points).Bounds()
	y := box.Center().Y
	xs := geom.Ring(p.boundary.Points).LevelCrossings(y)
	slices.Sort(xs)
	if len(xs) < 2 {
		return a, b, false
	}
	const part = 0.2 // of the piece's length, left free at both ends
	room := part * (xs[1] - xs[0])
	return geom.Pt(xs[0]+room, y), geom.Pt(xs[1]-room, y), true
}

// notchDepths returns how deep the notches are, each depth once, mm.
func (p patternPiece) notchDepths() []float64 {
	var out []float64
	for _, l := range p.lines {
		if l.Role == piece.NotchStroke {
			out = append(out, math.Round(l.Points.Length()*10)/10)
		}
	}
	slices.Sort(out)
	return slices.Compact(out)
}

// lineOn writes a straight line.
func (w *writer) lineOn(layer int, a, b geom.Point) {
	w.raw(0, "LINE")
	w.int(8, layer)
	w.point(a)
	w.num(11, b.X)
	w.num(21, b.Y)
}

// dot writes a point.
func (w *writer) dot(layer int, p geom.Point) {
	w.raw(0, "POINT")
	w.int(8, layer)
	w.point(p)
}

// turnsAndCurves writes a point at each vertex of a line, sorted into corners, which its
// ends are, and curves.
func (w *writer) turnsAndCurves(l piece.Line) {
	n := len(l.Points)
	for i, p := range l.Points {
		before, after := p.Minus(l.Points[(i+n-1)%n]), l.Points[(i+1)%n].Minus(p)
		layer := layerCurve
		if end := !l.Closed && (i == 0 || i == n-1); end || math.Abs(before.AngleTo(after)) >= turnAngle {
			layer = layerTurn
		}
		w.dot(layer, p)
	}
}

// oldPolyline writes a line as Release 12 has polylines.
func (w *writer) oldPolyline(layer int, l piece.Line) {
	closed := 0
	if l.Closed {
		closed = 1
	}
	w.raw(0, "POLYLINE")
	w.int(8, layer)
	w.int(66, 1)
	w.int(70, closed)
	w.point(geom.Point{})
	for _, p := range l.Points {
		w.raw(0, "VERTEX")
		w.int(8, layer)
		w.point(p)
	}
	w.raw(0, "SEQEND")
	w.int(8, layer)
}

// patternText writes a text. Turn is in radians.
func (w *writer) patternText(layer int, text string, at geom.Point, height, turn float64) {
	w.raw(0, "TEXT")
	w.int(8, layer)
	w.point(at)
	w.num(40, height)
	w.raw(1, ascii(text))
	w.raw(50, export.Fixed(turn*180/math.Pi, decimals))
}
