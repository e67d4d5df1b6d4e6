package gcode

import (
	"math"

	"github.com/tdewolff/canvas"

	"slingloft/export"
	"slingloft/outline/design"
	"slingloft/outline/geom"
	"slingloft/outline/piece"
)

// cutPaths returns the paths to follow for a line: for a closed cut the ring half
// a kerf to the side of the waste, which can fall into several where the line is
// narrow; for all else the line itself. Rings come counter-clockwise.
func (s Settings) cutPaths(l piece.Line) ([]geom.Ring, error) {
	ring := geom.Ring(l.Points).CounterClockwise()
	if s.Kerf == 0 || (l.Work != piece.CutInside && l.Work != piece.CutOut) {
		return []geom.Ring{ring}, nil
	}
	aside := s.Kerf / 2
	if l.Work == piece.CutInside {
		aside = -aside
	}
	out := offset(ring, aside)
	if len(out) == 0 {
		return nil, export.Refuse(export.KerfTooWide, l.Name, s.Kerf)
	}
	return out, nil
}

// drilled returns where a router can make a hole by going straight down: the middle
// of a hole inside that is as wide and as high as the tool, to a tenth.
func (s Settings) drilled(l piece.Line) (geom.Point, bool) {
	const slack = 0.1 // part of the tool's width
	box := l.Points.Bounds()
	fits := math.Abs(box.Width()-s.Kerf) <= slack*s.Kerf && math.Abs(box.Height()-s.Kerf) <= slack*s.Kerf
	return box.Center(), fits && s.Tool == design.Router && l.Work == piece.CutInside
}

// minRing is the area in mm² below which a ring is a leftover of the arithmetic.
const minRing = 1e-4

// offset returns the rings at the distance aside outside of a counter-clockwise
// ring (inside if negative), corners rounded, chords of the rounding within 0.01
// mm of it, which is canvas' own tolerance.
func offset(ring geom.Ring, aside float64) []geom.Ring {
	p := &canvas.Path{}
	p.MoveTo(ring[0].X, ring[0].Y)
	for _, q := range ring[1:] {
		p.LineTo(q.X, q.Y)
	}
	p.Close()
	var out []geom.Ring
	for _, part := range p.Offset(aside, canvas.Tolerance).Split() {
		var r geom.Ring
		for _, q := range part.Coords() {
			r = append(r, geom.Pt(q.X, q.Y))
		}
		r = r.Deduped(1e-6).CounterClockwise()
		if r.Area() > minRing && beside(ring, r, aside) {
			out = append(out, r)
		}
	}
	return out
}

// beside reports whether all corners of r lie on the side of ring that aside asks
// for, at that distance. A ring pushed inwards past its middle comes out on the
// other side as a ring again, which canvas does not always take away.
func beside(ring, r geom.Ring, aside float64) bool {
	line := geom.NewArc(ring.Closed())
	for _, p := range r {
		_, dist := line.Nearest(p)
		if math.Abs(dist-math.Abs(aside)) > 2*canvas.Tolerance || ring.Contains(p) != (aside < 0) {
			return false
		}
	}
	return true
}
