// Package template builds stiff templates and gauges: curves against a straight edge,
// whole outlines, press, allowance, cord and notch gauges, and tables of offsets.
package template

import (
	"errors"
	"fmt"
	"math"

	"slingloft/outline/design"
	"slingloft/outline/geom"
	"slingloft/outline/label"
	"slingloft/outline/piece"
	"slingloft/outline/quantity"
	"slingloft/outline/words"
)

// Options says how templates and gauges are drawn.
type Options struct {
	Tick    float64        // step of the ticks, mm
	Backing float64        // least width of a side template beside its curve, mm
	Letter  float64        // height of lettering, mm; smaller where room is short
	Whole   bool           // the whole side curve even where both halves are alike
	Style   quantity.Style // of the figures
	Notes   []string       // lettered near the title where there is room: the design, its digest
	// Figure writes the distances on a gauge, as finely as what is marked by it can be set;
	// nil: as depths are written.
	Figure func(mm float64) string
	Words  words.Boards
	Room   Room // on a sheet: what is longer comes in halves, or shorter, where that serves
}

// figure returns what writes the distances on a gauge.
func (o Options) figure() func(mm float64) string {
	if o.Figure != nil {
		return o.Figure
	}
	return func(mm float64) string { return depthFigure(o.Style, mm) }
}

// Notch is a point of an edge that is carried over to the cloth.
type Notch struct {
	Name   string  // its identifier, lettered beside it; may be empty
	Bare   bool    // the name is a number alone
	Turned string  // its name where the edge, turned end for end, gives the other half; may be empty
	At     float64 // running length from the first point of the edge, mm
	Double bool    // two Vs rather than one, with the point midway between them
}

// Edge is one edge of a template.
type Edge struct {
	ID      string        // in the names of its lines
	Name    string        // lettered along it; may be empty
	Line    geom.Polyline // from the point that figures count from
	Ticks   bool          // a tick at every step of the running length
	Start   float64       // running length at the first point, mm
	Notches []Notch
}

// Edge returns an edge of a kind, named and lettered by it.
func (o Options) Edge(kind words.BoardEdge, line geom.Polyline, ticks bool) Edge {
	return Edge{ID: kind.String(), Name: o.Words.Edges[kind], Line: line, Ticks: ticks}
}

// Shape returns the stiff template that is bounded by the edges, given in
// order around the outline, each in either direction. A single edge closes on
// itself. Ticks, notches and lettering lie on the inner side. It fails where the
// edges do not meet, cross, or leave no room for the title.
func Shape(id, title string, edges []Edge, opts Options) (piece.Piece, error) {
	t, err := newTemplate(id, title, edges, opts)
	if err != nil {
		return piece.Piece{}, err
	}
	return t.finish(t.piece.Cut.Bounds().Center())
}

// meetTolerance is the distance in mm up to which the ends of two edges are
// taken for one corner.
const meetTolerance = 0.01

// template is a template while it is drawn.
type template struct {
	piece  piece.Piece
	edges  []edgeRun
	opts   Options
	room   *label.Room
	letter float64
}

// edgeRun is an edge with its place on the outline.
type edgeRun struct {
	Edge
	arc   geom.Arc
	inner float64 // 1 where the material lies to the left of the line, else −1
}

// newTemplate closes the outline and draws ticks and notches, not yet figures.
func newTemplate(id, title string, edges []Edge, opts Options) (*template, error) {
	fail := func(err error) (*template, error) { return nil, design.Of(id, err) }
	if err := label.Check(opts.Letter); err != nil {
		return fail(err)
	}
	ring, runs, err := joinEdges(edges)
	if err != nil {
		return fail(err)
	}
	if a, b, ok := selfCrossing(ring); ok {
		return fail(&design.Breach{Found: design.Found(design.OutlineCrosses, a, b)})
	}
	t := &template{edges: runs, opts: opts, letter: opts.Letter}
	t.piece = piece.Piece{ID: id, Kind: piece.Template, Title: title, Stock: piece.Board, Count: 1, Cut: ring, FreeGrain: true}
	t.room = &label.Room{Ring: ring}
	t.room.Block(ring.Closed())
	for i := range t.edges {
		if err := t.drawEdge(&t.edges[i]); err != nil {
			return fail(err)
		}
	}
	return t, nil
}

// finish letters notches, figures, edge names, and the title near the given place with
// the notes under it, apart only where there is no room for all of it, in this order:
// what is tied to its place goes first.
func (t *template) finish(title geom.Point) (piece.Piece, error) {
	for i := range t.edges {
		t.letterNotches(&t.edges[i])
	}
	for i := range t.edges {
		t.letterFigures(&t.edges[i])
	}
	for i := range t.edges {
		t.letterName(&t.edges[i])
	}
	const size = 1.4 // of the title, in heights of the other lettering
	notes := label.Rows(t.opts.Notes...)
	over := label.Row{Text: t.piece.Title, Size: size, Role: piece.TitleLabel}
	if t.room.LetterBlock(append([]label.Row{over}, notes...), title, t.letter, t.letter/2, &t.piece.Labels) {
		return t.piece, nil
	}
	over.Size = 1
	if !t.room.LetterBlock([]label.Row{over}, title, t.letter*size, label.Smallest, &t.piece.Labels) {
		return piece.Piece{}, design.Of(t.piece.ID, &design.Breach{Found: design.Found(design.Unlettered, t.piece.Title)})
	}
	if len(notes) > 0 {
		last := t.piece.Labels[len(t.piece.Labels)-1]
		under := geom.Pt(0, -3*t.letter).Turned(last.Turn)
		t.room.LetterBlock(notes, last.At.Plus(under), t.letter, label.Smallest, &t.piece.Labels)
	}
	return t.piece, nil
}

// joinEdges chains the edges to a counter-clockwise ring.
func joinEdges(edges []Edge) (geom.Ring, []edgeRun, error) {
	if len(edges) == 0 {
		return nil, nil, errors.New("it has no edges")
	}
	for i, e := range edges {
		if err := checkCurve(e.Line); err != nil {
			return nil, nil, fmt.Errorf("edge %d %s: %w", i+1, e.ID, err)
		}
	}
	forward, err := directions(edges)
	if err != nil {
		return nil, nil, err
	}
	var ring geom.Ring
	for i, e := range edges {
		line := e.Line
		if !forward[i] {
			line = line.Reversed()
		}
		ring = append(ring, line[:len(line)-1]...)
	}
	ring = ring.Deduped(1e-9)
	area := ring.Area()
	if math.Abs(area) < 1 {
		return nil, nil, errors.New("the edges enclose no area")
	}
	runs := make([]edgeRun, len(edges))
	for i, e := range edges {
		runs[i] = edgeRun{e, geom.NewArc(e.Line), -1}
		if forward[i] == (area > 0) {
			runs[i].inner = 1
		}
	}
	return ring.CounterClockwise(), runs, nil
}

// directions says of each edge whether it runs forward around the outline.
func directions(edges []Edge) ([]bool, error) {
	forward := make([]bool, len(edges))
	first := edges[0].Line
	end := first[len(first)-1]
	next := edges[1%len(edges)].Line
	forward[0] = len(edges) == 1 || min(end.Dist(next[0]), end.Dist(next[len(next)-1])) <= meetTolerance
	if len(edges) == 2 {
		// Either end of the first edge meets the second: take the first as it runs.
		forward[0] = true
	}
	start := first[0]
	if !forward[0] {
		start, end = end, start
	}
	for i, e := range edges[1:] {
		a, b := e.Line[0], e.Line[len(e.Line)-1]
		switch {
		case end.Dist(a) <= meetTolerance:
			forward[i+1], end = true, b
		case end.Dist(b) <= meetTolerance:
			end = a
		default:
			return nil, fmt.Errorf("edge %d %s ends %.3g mm from edge %d %s",
				i+1, edges[i].ID, min(end.Dist(a), end.Dist(b)), i+2, e.ID)
		}
	}
	if d := end.Dist(start); d > meetTolerance {
		return nil, fmt.Errorf("the outline stays open by %.3g mm between its last edge and its first", d)
	}
	return forward, nil
}

// selfCrossing returns two points at which the ring crosses or touches itself.
func selfCrossing(ring geom.Ring) (a, b geom.Point, found bool) {
	n := len(ring)
	boxes := make([]geom.Box, n)
	for i := range ring {
		boxes[i] = geom.BoxOf(ring[i], ring[(i+1)%n])
	}
	for i := range ring {
		for j := i + 2; j < n; j++ {
			if i == 0 && j == n-1 || boxes[i].Min.X > boxes[j].Max.X || boxes[j].Min.X > boxes[i].Max.X {
				continue
			}
			if _, ok := geom.CrossingAt(ring[i], ring[i+1], ring[j], ring[(j+1)%n]); ok {
				return ring[i], ring[j], true
			}
		}
	}
	return a, b, false
}
