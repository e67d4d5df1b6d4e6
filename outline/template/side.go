package template

import (
	"fmt"
	"math"
	"slices"

	"slingloft/outline/bed"
	"slingloft/outline/design"
	"slingloft/outline/geom"
	"slingloft/outline/label"
	"slingloft/outline/piece"
	"slingloft/outline/quantity"
	"slingloft/outline/words"
)

// halvesAlike is the departure in mm up to which the halves of a side curve are
// taken for alike, so that one half template serves both, turned over: what a
// joined template may be off as well.
const halvesAlike = 0.2

// sideRoom is the room in heights of lettering between the curve and the straight
// edge that both rows of figures and the depths take up.
const sideRoom = 12.0

// SideCurve is the net side of the body in the bay, in the body's own coordinates: the
// centre line is v = 0, the side lies at v > 0 and runs from the head bar's corner to
// the foot bar's.
type SideCurve struct {
	Line    geom.Polyline
	Bars    [2]geom.Polyline // bar lines from the centre line to Line's ends; nil: straight across
	Notches []Notch          // running lengths from the head bar's corner
	AtBars  [2]Notch         // those at the bars' corners, by end; without a name: none
}

// Side returns the stiff templates of a side curve: the curve against a straight edge
// parallel to the centre line of the bed, on the body's side of it, with ends along the
// bar lines. Laid with its straight edge at the distance from the centre line that is
// lettered and its end on the bar line, the curve lies on the net line, whether the
// bars are alike or not. Where the bed is narrow the straight edge is the centre line.
//
// Both edges carry ticks, the curve by its running length, the straight edge by
// stations from the head bar line, with the curve's distance from the centre line at
// each. There is one template if the whole curve is asked for, or if its halves are
// alike: half of it, to be turned over; otherwise one for each half, whose figures
// count from the head bar too.
//
// Template coordinates: x along the centre line from the head bar line, y = v.
func Side(id, title string, curve SideCurve, opts Options) ([]piece.Piece, error) {
	fail := func(err error) ([]piece.Piece, error) { return nil, design.Of(id, err) }
	s, err := newSideDraft(curve, opts)
	if err != nil {
		return fail(err)
	}
	if err := checkNotches(curve.Notches, s.curve.arc[len(s.curve.arc)-1]); err != nil {
		return fail(err)
	}
	var out []piece.Piece
	for _, part := range s.parts(id, title) {
		p, err := s.draw(part)
		if err != nil {
			return nil, err
		}
		out = append(out, p)
	}
	return out, nil
}

// sideDraft is a side curve with what its templates have in common.
type sideDraft struct {
	curve   chordCurve // from the centre line: its depth is −v
	bars    [2]geom.Polyline
	notches []Notch
	atBars  [2]Notch
	opts    Options
	zero    float64 // u of the stations' zero
	edge    float64 // v of the straight edge
	low     float64 // least distance of the curve from the centre line
	middle  float64 // station of mid-bay
}

// newSideDraft moves a side curve to template coordinates and finds where its straight
// edge lies.
func newSideDraft(curve SideCurve, opts Options) (s sideDraft, err error) {
	if err := checkCurve(curve.Line); err != nil {
		return s, err
	}
	s.opts, s.notches, s.atBars = opts, curve.Notches, curve.AtBars
	s.zero = curve.Line[0].X
	if len(curve.Bars[bed.Head]) > 0 {
		s.zero = curve.Bars[bed.Head][0].X
	}
	shift := geom.Motion{Shift: geom.Pt(-s.zero, 0)}
	line := curve.Line.Moved(shift)
	if s.curve, err = alongAxis(line); err != nil {
		return s, err
	}
	ends := [2]geom.Point{bed.Head: line[0], bed.Foot: line[len(line)-1]}
	for e, bar := range curve.Bars {
		s.bars[e] = bar.Moved(shift)
		if len(bar) == 0 {
			s.bars[e] = geom.Polyline{geom.Pt(ends[e].X, 0), ends[e]}
		}
		s.bars[e][len(s.bars[e])-1] = ends[e]
	}
	s.middle = (s.bars[bed.Head][0].X + s.bars[bed.Foot][0].X) / 2
	return s, s.fit(line.Bounds().Min.Y)
}

// straightSteps are to what the straight edge's distance from the centre line is
// rounded, so that it can be set off by a rule: mm, or parts of an inch.
const (
	straightStep   = 5.0
	straightStepIn = quantity.Inch / 4
)

// fit finds the straight edge and the height of lettering that has room between it and
// a curve that comes as near to the centre line as low.
func (s *sideDraft) fit(low float64) error {
	s.low = low
	if math.IsInf(s.opts.Backing, 0) || !(s.opts.Backing >= sideRoom*label.Smallest) {
		return fmt.Errorf("backing of %g mm leaves no room for figures, at least %g mm",
			s.opts.Backing, math.Ceil(sideRoom*label.Smallest))
	}
	step := straightStep
	if s.opts.Style.Inches {
		step = straightStepIn
	}
	s.edge = max(0, math.Floor((low-s.opts.Backing)/step)*step)
	room := low - s.edge
	if room < sideRoom*label.Smallest {
		return &design.Breach{Found: design.Found(design.NoRoomForFigures, low)}
	}
	for _, h := range label.Sizes(s.opts.Letter) {
		if h*sideRoom <= room {
			s.opts.Letter = h
			return nil
		}
	}
	s.opts.Letter = label.Smallest
	return nil
}

// sideRange is the stretch of the bay that one template covers.
type sideRange struct {
	id, title string
	ends      [2]words.BoardEdge // names of its end edges
	lines     [2]geom.Polyline   // which they lie along, from the centre line outwards
	on        [2]piece.Seen
	notes     []string
	from      float64       // v that the lettered widths count from
	inner     geom.Polyline // marked on it; may be empty
	lie       piece.Lie     // its use and places; the straight edge's rest comes first
}

// parts returns the stretches that templates are made for.
func (s *sideDraft) parts(id, title string) []sideRange {
	whole := sideRange{id: id, title: title, lines: s.bars,
		ends: [2]words.BoardEdge{words.HeadBarEdge, words.FootBarEdge}, on: [2]piece.Seen{piece.OnHeadBarLine, piece.OnFootBarLine}}
	whole.notes = []string{s.opts.Words.FromCentre, s.straightNote()}
	whole.lie = piece.Lie{For: piece.SideBoard, Rests: []piece.Rest{{On: piece.OnCentreLine, Off: s.edge}}, Places: s.places(piece.AllOfIt)}
	if s.opts.Whole {
		return []sideRange{whole}
	}
	head, foot := whole, whole
	middle := geom.Polyline{geom.Pt(s.middle, 0), geom.Pt(s.middle, -s.curve.depthAt(s.middle))}
	head.lines[bed.Foot], head.ends[bed.Foot], head.on[bed.Foot] = middle, words.MiddleEdge, piece.OnMidBay
	foot.lines[bed.Head], foot.ends[bed.Head], foot.on[bed.Head] = middle, words.MiddleEdge, piece.OnMidBay
	head.lie.Places, foot.lie.Places = s.places(piece.HeadHalf), s.places(piece.FootHalf)
	if !s.halvesAlike() {
		head.id, head.title = id+"-head", fmt.Sprintf(s.opts.Words.HeadHalf, title)
		foot.id, foot.title = id+"-foot", fmt.Sprintf(s.opts.Words.FootHalf, title)
		return []sideRange{head, foot}
	}
	head.title, head.ends[bed.Head], head.on[bed.Head] = fmt.Sprintf(s.opts.Words.Half, title), words.BarEdge, piece.OnBarLine
	// Turned end for end about mid-bay the head half gives the foot half.
	for _, p := range foot.lie.Places {
		p.Over = !p.Over
		p.Motion = geom.Motion{Mirror: !p.Motion.Mirror, Turn: math.Pi, Shift: geom.Pt(s.zero+2*s.middle, 0)}
		head.lie.Places = append(head.lie.Places, p)
	}
	return []sideRange{head}
}

// places returns where a template of a stretch is laid: lettered face up on the left of
// the body, turned over on the right.
func (s *sideDraft) places(part piece.Stretch) []piece.Place {
	var out []piece.Place
	for _, side := range []bed.Side{bed.Left, bed.Right} {
		p := piece.Place{Piece: "body", Side: side, Part: part, Over: side == bed.Right}
		if part == piece.FootHalf {
			p.End = bed.Foot
		}
		p.Motion = geom.Motion{Mirror: p.Over, Shift: geom.Pt(s.zero, 0)}
		out = append(out, p)
	}
	return out
}

// halvesAlike reports whether the head half, turned over about mid-bay, serves for the
// foot half: curve and bar lines.
func (s *sideDraft) halvesAlike() bool {
	turned := func(p geom.Point) geom.Point { return geom.Pt(2*s.middle-p.X, p.Y) }
	for e, far := range [2]geom.Arc{geom.NewArc(s.bars[bed.Foot]), geom.NewArc(s.bars[bed.Head])} {
		for _, p := range s.bars[e] {
			if _, d := far.Nearest(turned(p)); d > halvesAlike {
				return false
			}
		}
	}
	for i, x := range s.curve.x {
		if math.Abs(s.curve.depthAt(2*s.middle-x)-s.curve.depth[i]) > halvesAlike {
			return false
		}
	}
	return true
}

// draw returns the template of one stretch.
func (s *sideDraft) draw(r sideRange) (piece.Piece, error) {
	ends := [2]geom.Polyline{s.outside(r.lines[bed.Head]), s.outside(r.lines[bed.Foot])}
	last := func(l geom.Polyline) geom.Point { return l[len(l)-1] }
	top := s.curve.between(last(ends[0]).X, last(ends[1]).X)
	top[0], top[len(top)-1] = last(ends[0]), last(ends[1])
	_, arcFrom := s.curve.at(top[0].X)
	_, arcTo := s.curve.at(top[len(top)-1].X)
	straight := geom.Polyline{ends[0][0], ends[1][0]}
	opts := s.opts
	opts.Notes = append(r.notes, opts.Notes...)
	t, err := newTemplate(r.id, r.title, []Edge{
		{Line: top, Ticks: true, Start: arcFrom, Notches: r.turned(notchesBetween(s.notches, arcFrom, arcTo))},
		opts.Edge(r.ends[1], ends[1], false),
		{Line: straight, Ticks: true, Start: straight[0].X},
		opts.Edge(r.ends[0], ends[0], false),
	}, opts)
	if err != nil {
		return piece.Piece{}, err
	}
	t.piece.Lie = r.rested(straight, ends)
	t.piece.Lie.Net = []geom.Polyline{top}
	if len(r.inner) > 0 {
		t.mark(piece.Line{Name: "inner edge", Points: r.inner})
		t.piece.Lie.Net = append(t.piece.Lie.Net, r.inner)
	}
	for e, at := range [2]geom.Point{top[0], top[len(top)-1]} {
		if r.on[e].Bar() {
			s.barCorner(t, r, bed.End(e), at)
		}
	}
	s.letterWidths(t, &t.edges[2], r.from)
	b := t.piece.Cut.Bounds()
	return t.finish(geom.Pt((b.Min.X+b.Max.X)/2, (s.edge+s.low)/2))
}

// barCorner marks a corner at a bar and letters the number of its notch.
func (s *sideDraft) barCorner(t *template, r sideRange, e bed.End, at geom.Point) {
	in := geom.Pt(-e.Sign(), -1)
	n := r.turned([]Notch{s.atBars[e]})[0]
	t.corner("bar corner "+e.String(), n.Name, at, in)
	if n.Name == "" {
		return
	}
	const near = 8 // heights of the lettering: the corner is sharp
	l := piece.Label{Text: n.Name, Role: piece.FigureLabel, Height: t.letter, Anchor: piece.Centre,
		At: at.Plus(in.Unit().Times((cornerLength + 1) * t.letter))}
	if l, ok := t.room.Nearest(l, near*t.letter); ok {
		t.room.Put(l, &t.piece.Labels)
	}
}

// turned names notches of a half that gives the other half too by both their names.
func (r sideRange) turned(notches []Notch) []Notch {
	if r.on[bed.Head] != piece.OnBarLine {
		return notches
	}
	out := slices.Clone(notches)
	for i, n := range out {
		if n.Turned != "" && n.Turned != n.Name {
			out[i].Name, out[i].Bare = n.Name+"/"+n.Turned, false
		}
	}
	return out
}

// rested returns how the template lies, by its straight edge and its ends.
func (r sideRange) rested(straight geom.Polyline, ends [2]geom.Polyline) piece.Lie {
	lie := r.lie
	lie.Rests = slices.Clone(lie.Rests)
	lie.Rests[0].Edge = straight
	for e, on := range r.on {
		if on != piece.OnNothing {
			lie.Rests = append(lie.Rests, piece.Rest{On: on, Edge: ends[e]})
		}
	}
	return lie
}

// straightNote says where the straight edge lies.
func (s *sideDraft) straightNote() string {
	if s.edge == 0 {
		return s.opts.Words.OnCentre
	}
	return fmt.Sprintf(s.opts.Words.Straight, depthFigure(s.opts.Style, s.edge))
}

// outside returns what of a line across the bay lies outside of the straight edge, from
// there outwards.
func (s *sideDraft) outside(l geom.Polyline) geom.Polyline {
	for i := 1; i < len(l); i++ {
		if a, b := l[i-1], l[i]; b.Y > s.edge {
			from := a
			if a.Y < s.edge {
				from = a.Towards(b, (s.edge-a.Y)/(b.Y-a.Y))
			}
			return append(geom.Polyline{geom.Pt(from.X, s.edge)}, l[i:]...)
		}
	}
	return l
}

// letterWidths letters the curve's distance from a line beside the straight edge at
// every tick of it, square to it, in a row above the stations.
func (s *sideDraft) letterWidths(t *template, e *edgeRun, from float64) {
	row := majorLength + 2*figureGap + 1 + label.Gap // where they begin, in heights
	t.eachTick(e, func(_ int, at float64) {
		st := e.station(at)
		text := depthFigure(s.opts.Style, -s.curve.depthAt(st.at.X)-from)
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
