// Package hpgl writes drawings as HP-GL/2 for roll plotters, pen plotters and
// drag-knife cutters, and reads such files back.
//
// A plotter unit is 0.025 mm, so a point is off by 0.0125 mm along each axis at
// most. Each kind of work has a pen of its own, pen 1 for registration up to pen 7
// for outlines, and is drawn as a whole before the next; within it the paths are
// ordered for short travel. Only IN, PS, SP, PU, PD and PA occur. There is no text
// at all, not even as comment: lettering is drawn as strokes, so no label can end a
// field.
//
// Devices from before HP-GL/2 that count in 16 bits reach no further than 32 767
// units, 819.175 mm (from memory); see [Beyond16Bits].
package hpgl

import (
	"bufio"
	"fmt"
	"io"
	"math"
	"slices"

	"slingloft/export"
	"slingloft/export/travel"
	"slingloft/outline/geom"
	"slingloft/outline/piece"
)

// unitsPerMM is the number of plotter units in a millimetre.
const unitsPerMM = 40

// pairsPerLine is how many points one PD holds; old buffers are small.
const pairsPerLine = 30

// Plot is how a machine plots on one material. The zero value draws all with the usual
// pens.
type Plot struct {
	Pens  Pens
	Bed   export.Bed
	Asked func(piece.Line) bool // reports whether a line is drawn; nil: all are

	left func(export.Drawing) []export.Note // says what is not
}

// Pens are the pens that draw each kind of work, in the order of [piece.Works],
// from 1. Where it is shorter or holds 0 the usual pen draws.
type Pens []int

// of returns the pen for a kind of work.
func (p Pens) of(w piece.Work) int {
	if int(w) < len(p) && p[w] > 0 {
		return p[w]
	}
	return Pen(w)
}

// WriteFor writes the drawing as HP-GL/2, as a plotter has it. [Read] knows the usual pens
// only, see [Pen].
func WriteFor(out io.Writer, d export.Drawing, o export.Options, p Plot) error {
	plain, err := d.Plain(o)
	if err != nil {
		return err
	}
	if p.Asked != nil {
		plain.Lines = slices.DeleteFunc(plain.Lines, func(l piece.Line) bool { return !p.Asked(l) })
	}
	plain = plain.InField()
	way := geom.EmptyBox()
	for _, l := range plain.Lines {
		way = way.Union(l.Points.Bounds())
	}
	if err := p.Bed.Reach(plain, o.Axes, way); err != nil {
		return err
	}
	w := bufio.NewWriter(out)
	size := units(geom.Pt(plain.Width, plain.Height))
	if o.Axes.Swap {
		size.x, size.y = size.y, size.x
	}
	fmt.Fprintf(w, "IN;\nPS%d,%d;\nPA;\n", size.x, size.y)
	counted(plain, o.Axes)
	at := geom.Point{}
	for _, work := range piece.Works() {
		crosses, paths := pathsOf(plain, work)
		if len(crosses)+len(paths) == 0 {
			continue
		}
		// Not every plotter lifts its pen before it changes it.
		fmt.Fprintf(w, "PU;\nSP%d;\n", p.Pens.of(work))
		for _, some := range [][]travel.Path{crosses, paths} {
			for _, s := range travel.Order(some, at) {
				pts := s.Follow(some[s.Path])
				draw(w, pts)
				at = pts[len(pts)-1]
			}
		}
	}
	fmt.Fprint(w, "PU0,0;\nSP0;\n")
	return w.Flush() // holds the first error of all
}

// counted changes the points of a plain drawing, which is the caller's own, to the
// machine's numbers.
func counted(d export.Drawing, a export.Axes) {
	for _, l := range d.Lines {
		for i, p := range l.Points {
			l.Points[i] = a.Apply(p, d.Width, d.Height)
		}
	}
}

// Pen returns the pen that usually draws a kind of work, from 1.
func Pen(w piece.Work) int { return int(w) + 1 }

// Beyond16Bits reports whether the drawing reaches where devices that count in 16
// bits do not.
func Beyond16Bits(d export.Drawing, o export.Options) bool {
	w, h := o.Size(d)
	return math.Max(w, h)*unitsPerMM > math.MaxInt16
}

// pathsOf returns the paths of a kind of work, match crosses by themselves: they are made
// while the stock lies as it was laid.
func pathsOf(d export.Drawing, w piece.Work) (crosses, paths []travel.Path) {
	for _, l := range d.Lines {
		path := travel.Path{Points: l.Points, Closed: l.Closed}
		switch {
		case l.Work != w:
		case l.Role == piece.MatchCross:
			crosses = append(crosses, path)
		default:
			paths = append(paths, path)
		}
	}
	return crosses, paths
}

// place is a point in plotter units.
type place struct{ x, y int }

func units(p geom.Point) place {
	return place{int(math.Round(p.X * unitsPerMM)), int(math.Round(p.Y * unitsPerMM))}
}

// draw draws one path. Points that fall on the same unit as the one before are
// left out, but a path that is all one point is drawn as a dot.
func draw(w io.Writer, pts geom.Polyline) {
	last := units(pts[0])
	fmt.Fprintf(w, "PU%d,%d;\n", last.x, last.y)
	var list []place
	for i, p := range pts[1:] {
		if q := units(p); q != last || (i == len(pts)-2 && len(list) == 0) {
			list = append(list, q)
			last = q
		}
	}
	for first := 0; first < len(list); first += pairsPerLine {
		for i, q := range list[first:min(first+pairsPerLine, len(list))] {
			start := ","
			if i == 0 {
				start = "PD"
			}
			fmt.Fprintf(w, "%s%d,%d", start, q.x, q.y)
		}
		fmt.Fprint(w, ";\n")
	}
}
