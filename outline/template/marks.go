package template

import (
	"fmt"
	"math"

	"slingloft/outline/geom"
	"slingloft/outline/label"
	"slingloft/outline/piece"
	"slingloft/outline/quantity"
)

// Lengths of marks on a template, in heights of its lettering: own choice, so
// that the kinds are told apart at arm's length.
const (
	tickLength   = 0.8
	majorLength  = 1.4
	notchLength  = 1.8
	notchHalf    = 0.35 // half the width of a notch's V
	cornerLength = 1.8
	figureGap    = 0.3 // from the end of a mark to its figure
)

// station is a place on an edge: the point, the way along the edge and the way
// into the material, and the turn of a text along the edge there.
type station struct {
	at, along, in geom.Point
	turn          float64
}

func (e *edgeRun) station(s float64) station {
	p, dir := e.arc.At(s)
	whole := e.Line[len(e.Line)-1].Minus(e.Line[0]) // nothing for a ring, which reads from below
	return station{p, dir, dir.Left().Times(e.inner), piece.ReadableAlong(dir.Angle(), whole.Angle())}
}

// point returns the place a mm along the edge and b mm into the material.
func (s station) point(a, b float64) geom.Point {
	return s.at.Plus(s.along.Times(a)).Plus(s.in.Times(b))
}

// drawEdge draws the ticks and notches of an edge.
func (t *template) drawEdge(e *edgeRun) error {
	if e.Ticks {
		if err := checkStep(t.opts.Tick, e.Start+e.arc.Length()); err != nil {
			return err
		}
		major := t.majorStep(e)
		t.eachTick(e, func(n int, s float64) {
			length := tickLength
			if n%major == 0 {
				length = majorLength
			}
			st := e.station(s)
			t.mark(piece.Line{Name: fmt.Sprintf("tick %d %s", n, e.ID), Points: geom.Polyline{st.at, st.point(0, length*t.letter)}})
		})
	}
	if err := checkNotches(e.Notches, e.arc.Length()); err != nil {
		return fmt.Errorf("edge %q: %w", e.ID, err)
	}
	for _, n := range e.Notches {
		shifts := []float64{0}
		if n.Double {
			shifts = []float64{-piece.NotchPitch / 2, piece.NotchPitch / 2}
		}
		st := e.station(n.At)
		half, deep := notchHalf*t.letter, notchLength*t.letter
		for _, s := range shifts {
			v := geom.Polyline{st.point(s-half, deep), st.point(s, 0), st.point(s+half, deep)}
			t.mark(piece.Line{Name: "notch " + n.Name, Role: piece.NotchStroke, Of: n.Name, Points: v})
		}
	}
	return nil
}

// checkNotches refuses notches that lie off an edge of the given length.
func checkNotches(notches []Notch, length float64) error {
	for i, n := range notches {
		if !(n.At >= -meetTolerance && n.At <= length+meetTolerance) {
			return fmt.Errorf("notch %d %q at %.1f mm is off the edge of %.1f mm", i+1, n.Name, n.At, length)
		}
	}
	return nil
}

// eachTick calls f with the number and place of every tick but those on a
// corner. A notch stands in for the tick at its own place.
func (t *template) eachTick(e *edgeRun, f func(n int, s float64)) {
	const clear = 0.5 // mm from a corner or notch
	for n := int(math.Ceil(e.Start / t.opts.Tick)); ; n++ {
		s := float64(n)*t.opts.Tick - e.Start
		if s > e.arc.Length()-clear {
			return
		}
		free := s > clear
		for _, notch := range e.Notches {
			free = free && math.Abs(notch.At-s) > clear
		}
		if free {
			f(n, s)
		}
	}
}

// mark draws a line as far as it stays on the material.
func (t *template) mark(l piece.Line) {
	l.Work = piece.Mark
	for _, part := range l.Points.Clipped(t.piece.Cut, nil) {
		if part.Length() > 0.1 {
			l.Points = part
			t.piece.Lines = append(t.piece.Lines, l)
			t.room.Block(part)
		}
	}
}

// majorStep returns every which tick of the edge carries a figure: as many as
// have room for the longest one and stay easy to tell apart.
func (t *template) majorStep(e *edgeRun) int {
	last := t.tickFigure(e.Start + e.arc.Length())
	need := label.Width(last, t.letter) + 2*t.letter
	for _, n := range []int{1, 2, 4, 5, 8, 10, 20, 40, 50, 100, 200, 400, 500} {
		if float64(n)*t.opts.Tick >= need {
			return n
		}
	}
	return 1000
}

// tickFigure writes a running length at a tick: whole millimetres if ticks are.
func (t *template) tickFigure(mm float64) string {
	style := t.opts.Style
	style.Decimals = 1
	if t.opts.Tick == math.Trunc(t.opts.Tick) {
		style.Decimals = 0
	}
	return style.Figure(mm)
}

// letterNotches letters the names of an edge's notches.
func (t *template) letterNotches(e *edgeRun) {
	for _, n := range e.Notches {
		if n.Name != "" {
			role := piece.NoLabelRole
			if n.Bare {
				role = piece.FigureLabel
			}
			t.letterAtMark(n.Name, role, e.station(n.At), notchLength)
		}
	}
}

// letterFigures letters the running length at every major tick.
func (t *template) letterFigures(e *edgeRun) {
	if !e.Ticks {
		return
	}
	major := t.majorStep(e)
	t.eachTick(e, func(n int, s float64) {
		if n%major == 0 {
			t.letterAtMark(t.tickFigure(float64(n)*t.opts.Tick), piece.FigureLabel, e.station(s), majorLength)
		}
	})
}

// letterAtMark letters text before the inner end of a mark, along the edge or, if
// there is no room, a little deeper or beside it. Where there is none at all the
// text is left out: its neighbours tell what it is.
func (t *template) letterAtMark(text string, role piece.LabelRole, st station, mark float64) bool {
	h := t.letter
	for _, deep := range []float64{0, 0.6, 1.2, 1.8} {
		for _, side := range []float64{0, 0.8, -0.8, 1.6, -1.6} {
			l := piece.Label{Text: text, Role: role, Height: h, Anchor: piece.Centre, Turn: st.turn}
			l.At = st.point(side*h, (mark+figureGap+0.5+deep)*h)
			if t.room.Try(l, &t.piece.Labels) {
				return true
			}
		}
	}
	return false
}

// letterName letters the name of an edge along it: beside it, or inside its
// figures if it has any. An edge too short for it goes without.
func (t *template) letterName(e *edgeRun) {
	if e.Name == "" {
		return
	}
	depths := []float64{1.2}
	if e.Ticks {
		depths = []float64{4, 5.5, 7}
	}
	for _, h := range label.Sizes(t.letter) {
		for _, deep := range depths {
			for _, part := range []float64{0.5, 0.4, 0.6, 0.3, 0.7, 0.2, 0.8} {
				st := e.station(part * e.arc.Length())
				l := piece.Label{Text: e.Name, Height: h, Anchor: piece.Centre, Turn: st.turn}
				l.At = st.point(0, deep*t.letter-(t.letter-h)/2)
				if t.room.Try(l, &t.piece.Labels) {
					return
				}
			}
		}
	}
}

// corner marks the corner at which an edge begins or ends, and the notch of a name that is
// there, if any.
func (t *template) corner(name, notch string, at, in geom.Point) {
	l := piece.Line{Name: name, Points: geom.Polyline{at, at.Plus(in.Unit().Times(cornerLength * t.letter))}}
	if notch != "" {
		l.Role, l.Of = piece.NotchStroke, notch
	}
	t.mark(l)
}

// depthFigure writes a depth to a tenth of a millimetre or in the style's
// fractions.
func depthFigure(style quantity.Style, mm float64) string {
	style.Decimals = max(style.Decimals, 1)
	return style.Figure(mm)
}
