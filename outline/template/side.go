package template

import (
	"fmt"
	"math"

	"slingloft/outline/geom"
	"slingloft/outline/label"
	"slingloft/outline/piece"
	"slingloft/outline/words"
)

// halvesAlike is the departure in mm up to which the halves of a side curve are
// taken for alike, so that one half template serves both, turned over: what a
// joined template may be off as well.
const halvesAlike = 0.2

// sideRoom is the room in heights of lettering between the curve and the straight
// edge that both rows of figures and the depths take up.
const sideRoom = 12.0

// SideCurve is the net side of the body in the bay, from the head bar's corner
// to the foot bar's, the body on its right.
type SideCurve struct {
	Line    geom.Polyline
	Notches []Notch // running lengths from the head bar's corner
}

// Side returns the stiff templates of a side curve: the curve against a
// straight edge parallel to its chord, opts.Backing beyond its deepest point on
// the body's side, so that the board covers the cloth. Both carry ticks, the
// curve by its running length, the straight edge by stations on the chord, with
// the depth from the chord at each. There is one template if the whole curve is
// asked for, or if its halves are alike: half of it, to be turned over; otherwise
// one for each half, whose figures count from the head bar too.
//
// Template coordinates: x along the chord from the head bar's corner, y towards
// the body's edge.
func Side(id, title string, curve SideCurve, opts Options) ([]piece.Piece, error) {
	c, err := newChordCurve(curve.Line)
	if err != nil {
		return nil, fmt.Errorf("%s: %w", id, err)
	}
	if opts.Letter, err = sideLetter(opts); err != nil {
		return nil, fmt.Errorf("%s: %w", id, err)
	}
	if err := checkNotches(curve.Notches, c.arc[len(c.arc)-1]); err != nil {
		return nil, fmt.Errorf("%s: %w", id, err)
	}
	s := sideDraft{c, curve.Notches, opts}
	whole := sideRange{id: id, title: title, to: c.chord(), ends: [2]words.BoardEdge{words.HeadBarEdge, words.FootBarEdge}}
	parts := []sideRange{whole}
	if !opts.Whole {
		head, foot := whole, whole
		head.to, head.ends[1] = c.chord()/2, words.MiddleEdge
		foot.from, foot.ends[0] = c.chord()/2, words.MiddleEdge
		if c.symmetric(halvesAlike) {
			head.title = fmt.Sprintf(opts.Words.Half, title)
			head.ends[0] = words.BarEdge
			parts = []sideRange{head}
		} else {
			head.id, head.title = id+"-head", fmt.Sprintf(opts.Words.HeadHalf, title)
			foot.id, foot.title = id+"-foot", fmt.Sprintf(opts.Words.FootHalf, title)
			parts = []sideRange{head, foot}
		}
	}
	var out []piece.Piece
	for _, part := range parts {
		p, err := s.draw(part)
		if err != nil {
			return nil, err
		}
		out = append(out, p)
	}
	return out, nil
}

// sideLetter returns the height of lettering for which the backing has room.
func sideLetter(opts Options) (float64, error) {
	if math.IsInf(opts.Backing, 0) || !(opts.Backing >= sideRoom*label.Smallest) {
		return 0, fmt.Errorf("backing of %g mm leaves no room for figures, at least %g mm",
			opts.Backing, math.Ceil(sideRoom*label.Smallest))
	}
	for _, h := range label.Sizes(opts.Letter) {
		if h*sideRoom <= opts.Backing {
			return h, nil
		}
	}
	return label.Smallest, nil
}

// sideRange is the stretch of the chord that one template covers.
type sideRange struct {
	id, title string
	from, to  float64
	ends      [2]words.BoardEdge
}

type sideDraft struct {
	curve   chordCurve
	notches []Notch
	opts    Options
}

// draw returns the template of one stretch.
func (s *sideDraft) draw(r sideRange) (piece.Piece, error) {
	edge := s.opts.Backing
	for _, d := range s.curve.depth {
		edge = max(edge, d+s.opts.Backing)
	}
	top := s.curve.between(r.from, r.to)
	start, end := top[0], top[len(top)-1]
	left, right := geom.Pt(r.from, -edge), geom.Pt(r.to, -edge)
	_, arcFrom := s.curve.at(r.from)
	_, arcTo := s.curve.at(r.to)
	opts := s.opts
	opts.Notes = append([]string{opts.Words.Depths, fmt.Sprintf(opts.Words.Straight, depthFigure(opts.Style, edge))}, opts.Notes...)
	t, err := newTemplate(r.id, r.title, []Edge{
		{Line: top, Ticks: true, Start: arcFrom, Notches: notchesBetween(s.notches, arcFrom, arcTo)},
		opts.Edge(r.ends[1], geom.Polyline{end, right}, false),
		{Line: geom.Polyline{left, right}, Ticks: true, Start: r.from},
		opts.Edge(r.ends[0], geom.Polyline{left, start}, false),
	}, opts)
	if err != nil {
		return piece.Piece{}, err
	}
	if r.from == 0 {
		t.corner("bar corner head", start, geom.Pt(1, -1))
	}
	if r.to == s.curve.chord() {
		t.corner("bar corner foot", end, geom.Pt(-1, -1))
	}
	s.letterDepths(t, &t.edges[2])
	return t.finish(geom.Pt((r.from+r.to)/2, -edge+s.opts.Backing/2))
}

// letterDepths letters the depth of the curve at every tick of the straight edge,
// square to it, in a row above the stations.
func (s *sideDraft) letterDepths(t *template, e *edgeRun) {
	row := majorLength + 2*figureGap + 1 + label.Gap // where the depths begin, in heights
	t.eachTick(e, func(_ int, at float64) {
		st := e.station(at)
		depth, _ := s.curve.at(st.at.X)
		text := depthFigure(s.opts.Style, depth)
		l := piece.Label{Text: text, Role: piece.FigureLabel, Height: t.letter, Anchor: piece.Centre, Turn: math.Pi / 2}
		l.At = st.point(0, row*t.letter+label.Width(text, t.letter)/2+label.Gap*t.letter)
		t.room.Try(l, &t.piece.Labels)
	})
}

// notchesBetween returns the notches from a to b, counted from a.
func notchesBetween(notches []Notch, a, b float64) []Notch {
	var out []Notch
	for _, n := range notches {
		if n.At >= a-meetTolerance && n.At <= b+meetTolerance {
			n.At -= a
			out = append(out, n)
		}
	}
	return out
}
