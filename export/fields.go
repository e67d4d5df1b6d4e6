package export

import (
	"fmt"
	"math"
	"slices"

	"slingloft/export/lettering"
	"slingloft/outline/geom"
	"slingloft/outline/piece"
)

// Fields says how a drawing is divided into fields.
type Fields struct {
	Reach float64    // of the machine along the drawing's x, mm on the drawing
	Step  float64    // the stock is moved on by whole steps, mm
	Work  piece.Work // as which the crosses are made
}

// NoMatchError says that the waste has no room for two crosses where fields meet.
type NoMatchError struct {
	Name     string
	From, To float64 // along the drawing's x, where they would have to lie, mm
	Strip    float64 // that would do free along both edges of the stock, mm
}

func (e *NoMatchError) Error() string {
	return fmt.Sprintf("%s: no waste has room for two match crosses between %.1f and %.1f mm", e.Name, e.From, e.To)
}

// Sizes of a match cross, mm on paper, and the part of a field that the next may take
// up again at most.
const (
	matchArm    = 5.0
	matchText   = 5.0
	matchAside  = 2.0
	mostOverlap = 0.5
)

// InFields returns a drawing that lies on its stock field by field, and as it is where
// the machine reaches over it. Match crosses take their room before check bars and title
// do. A drawing that was not composed from a sheet has no waste to put crosses in.
func (d Drawing) InFields(f Fields) ([]Drawing, error) {
	if d.Width <= f.Reach+noise || d.from == nil {
		return []Drawing{d}, nil
	}
	s, end := *d.from, d.end()
	u := s.Frame.unit()
	w := wasteOf(s, wasteClear*u)
	spans, matches := []Span{{Low: math.Inf(-1), High: math.Inf(1)}}, [][]Match{nil}
	var crosses []piece.Line
	for spans[len(spans)-1].From+f.Reach < end {
		n := len(spans)
		at, err := w.pair(d, f, spans[n-1].From, u)
		if err != nil {
			return nil, err
		}
		from := f.next(end, math.Min(at[0].Min.X, at[1].Min.X)-wasteClear*u)
		var match []Match
		for i, box := range at {
			m := Match{fmt.Sprintf("%d%c", n, 'A'+i), box.Min.Plus(geom.Pt(matchArm*u, matchArm*u))}
			match = append(match, m)
			crosses, s.Taken = append(crosses, m.lines(n, f.Work, u)...), append(s.Taken, box)
			w.take(box, wasteClear*u)
		}
		seam := d.seam(spans[n-1], from, spans[n-1].From+f.Reach)
		spans[n-1].High = seam
		spans, matches = append(spans, Span{from, seam, math.Inf(1)}), append(matches, match)
	}
	d, err := Compose(s)
	reach := spans[len(spans)-1].From + f.Reach
	d.Lines = slices.DeleteFunc(d.Lines, func(l piece.Line) bool { return l.Owner.Copy == 0 && l.Points.Bounds().Max.X > reach })
	d.Lines = append(d.Lines, crosses...)
	return d.each(f, spans, matches), err
}

// end returns how far along the drawing's x the last field has to reach: over all pieces
// and what a cut takes beside them, but not over what is left of the stock.
func (d Drawing) end() float64 {
	end := 0.0
	for _, l := range d.Lines {
		if l.Owner.Copy > 0 {
			end = math.Max(end, l.Points.Bounds().Max.X)
		}
	}
	return math.Min(end+wasteClear*d.from.Frame.unit(), d.Width-noise)
}

// next returns where the field begins that has room for crosses at x and reaches to the
// stock's end, if it can.
func (f Fields) next(end, x float64) float64 {
	return math.Min(math.Floor(x/f.Step)*f.Step, math.Ceil((end-f.Reach)/f.Step)*f.Step)
}

// each returns the drawing of every field.
func (d Drawing) each(f Fields, spans []Span, matches [][]Match) []Drawing {
	say := sheetWords(d.from.Words)
	var out []Drawing
	for i, s := range spans {
		part := d
		part.Name = fmt.Sprintf("%s-field-%d", d.Name, i+1)
		part.Title = fmt.Sprintf(say.Field, i+1, len(spans), d.Title)
		part.Field = &Field{Number: i + 1, Spans: spans, Width: f.Reach, Match: matches[i]}
		if i > 0 {
			part.Field.Feed = s.From - spans[i-1].From
		}
		out = append(out, part)
	}
	return out
}

// lines returns the cross of a joint with its name.
func (m Match) lines(joint int, work piece.Work, u float64) []piece.Line {
	line := func(name string, pts geom.Polyline) piece.Line {
		return piece.Line{Name: "match " + m.Name + "/" + name, Role: piece.MatchCross, Index: joint, Work: work, Points: pts}
	}
	x, y := geom.Pt(matchArm*u, 0), geom.Pt(0, matchArm*u)
	out := []piece.Line{line("x", geom.Polyline{m.At.Minus(x), m.At.Plus(x)}), line("y", geom.Polyline{m.At.Minus(y), m.At.Plus(y)})}
	label := piece.Label{Text: m.Name, Height: matchText * u, At: m.At.Plus(geom.Pt((matchArm+matchAside)*u, -matchText*u/2))}
	for i, s := range lettering.Strokes(label) {
		out = append(out, line(fmt.Sprintf("stroke %d", i+1), s))
	}
	return out
}

// pair finds room for the two crosses of a joint, far apart across the stock and as far
// on along it as the field from x reaches.
func (w *waste) pair(d Drawing, f Fields, x, u float64) ([2]geom.Box, error) {
	size := geom.Pt((2*matchArm+matchAside)*u+lettering.Width("00A", matchText*u), 2*matchArm*u)
	from, to := x+math.Max(f.Step, f.Reach*(1-mostOverlap)), x+f.Reach-size.X-wasteClear*u
	for _, share := range [3]float64{0.5, 0.3, 0.15} {
		low, high := geom.EmptyBox(), geom.EmptyBox()
		for col := w.col(to); col >= w.col(from); col-- {
			a, b, ok := w.extremes(col, size, wasteClear*u)
			if ok && (low.Empty() || a.Min.Y < low.Min.Y) {
				low = a
			}
			if ok && (high.Empty() || b.Min.Y > high.Min.Y) {
				high = b
			}
			if ok && high.Min.Y-low.Min.Y >= share*d.Height {
				return [2]geom.Box{low, high}, nil
			}
		}
	}
	strip := size.Y + 2*wasteClear*u + 4*w.cell
	return [2]geom.Box{}, &NoMatchError{Name: d.Name, From: from, To: x + f.Reach, Strip: strip}
}

// extremes returns the lowest and the highest free box of a size in a column.
func (w *waste) extremes(col int, size geom.Point, clear float64) (low, high geom.Box, ok bool) {
	within := w.box.Expanded(-clear)
	for row := range w.rows {
		at := w.box.Min.Plus(geom.Pt(float64(col)*w.cell, float64(row)*w.cell))
		b := geom.Box{Min: at, Max: at.Plus(size)}
		if !within.ContainsBox(b) || !w.holds(b.Expanded(-w.cell*1e-9)) {
			continue
		}
		if !ok {
			low = b
		}
		high, ok = b, true
	}
	return low, high, ok
}

// seamClear is what a seam keeps from the edges of both its fields, mm.
const seamClear = 6.0

// seam returns where lines are parted that reach over two fields, in what these have in
// common: where the fewest cuts are met, and as near its middle as that allows.
func (d Drawing) seam(before Span, from, to float64) float64 {
	lo, hi := from+seamClear, to-seamClear
	if lo <= before.Low {
		lo = before.Low + SeamLap + 1
	}
	best, least := (lo+hi)/2, math.Inf(1)
	const steps = 40.0
	for i := range int(steps) + 1 {
		x := lo + (hi-lo)*float64(i)/steps
		met := float64(d.met(x-1)+d.met(x)+d.met(x+1)) + math.Abs(x-(lo+hi)/2)/(hi-lo)
		if met < least {
			best, least = x, met
		}
	}
	return best
}

// met counts the cuts that are met across the drawing at x.
func (d Drawing) met(x float64) int {
	n := 0
	for _, l := range d.Lines {
		if !Through(l.Work) || l.Role == piece.MatchCross {
			continue
		}
		pts := lineOf(l)
		for i := 1; i < len(pts); i++ {
			if (pts[i-1].X <= x) != (pts[i].X <= x) {
				n++
			}
		}
	}
	return n
}
