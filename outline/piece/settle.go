package piece

import (
	"math"

	"slingloft/outline/geom"
)

// Settled returns the piece with its coordinates on the grid of the files, 0.0001 mm,
// neighbours that meet there made one. The last bits of what the stages before have
// found differ between processors, and a search that is given them comes to another
// lay; after this every processor goes on with the same numbers.
func (p Piece) Settled() Piece {
	p.Cut, p.Net = settledRing(p.Cut), settledRing(p.Net)
	holes := make([]geom.Ring, len(p.Holes))
	for i, h := range p.Holes {
		holes[i] = settledRing(h)
	}
	lines := make([]Line, len(p.Lines))
	for i, l := range p.Lines {
		if l.Closed {
			l.Points = geom.Polyline(settledRing(geom.Ring(l.Points)))
		} else {
			l.Points = settledLine(l.Points)
		}
		lines[i] = l
	}
	labels := make([]Label, len(p.Labels))
	for i, l := range p.Labels {
		l.At = settledPoint(l.At)
		labels[i] = l
	}
	p.Holes, p.Lines, p.Labels = holes, lines, labels
	return p
}

// settledPoint returns a point on the grid.
func settledPoint(p geom.Point) geom.Point { return geom.Pt(settled(p.X), settled(p.Y)) }

// settled returns x rounded to the grid. Halves go away from zero, as does what noise
// leaves a little under a half: sizes in fractions of an inch often are halves.
func settled(x float64) float64 {
	const (
		perMM = 1e4
		noise = 1e-3 // of a step: 1e-7 mm, ten thousand times what is found
	)
	return math.Copysign(math.Floor(float64(math.Abs(x)*perMM)+0.5+noise)/perMM, x) + 0
}

// settledLine returns an open line on the grid; its ends stay.
func settledLine(l geom.Polyline) geom.Polyline {
	out := make(geom.Polyline, 0, len(l))
	for i, p := range l {
		q := settledPoint(p)
		if n := len(out); n > 1 && i == len(l)-1 && out[n-1] == q {
			out = out[:n-1]
		} else if n > 0 && out[n-1] == q && i < len(l)-1 {
			continue
		}
		out = append(out, q)
	}
	return out
}

// settledRing returns a ring on the grid.
func settledRing(r geom.Ring) geom.Ring {
	var out geom.Ring
	for _, p := range r {
		if q := settledPoint(p); len(out) == 0 || out[len(out)-1] != q {
			out = append(out, q)
		}
	}
	for len(out) > 1 && out[0] == out[len(out)-1] {
		out = out[:len(out)-1]
	}
	return out
}
