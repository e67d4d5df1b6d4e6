// Package tarp sizes and builds a sheet that hangs over the bed on a ridge: as large as
// the bed needs to stay dry, its outline with hollow edges, in panels from the roll, with
// patches for its corners.
//
// Lengths are mm, angles rad.
package tarp

import (
	"fmt"
	"math"
	"slices"

	"slingloft/outline/article"
	"slingloft/outline/bed"
	"slingloft/outline/design"
	"slingloft/outline/flat"
	"slingloft/outline/geom"
	"slingloft/outline/hung"
	"slingloft/outline/piece"
	"slingloft/outline/quantity"
	"slingloft/outline/walk"
	"slingloft/outline/words"
)

// Sewn is the sheet of a design: its pieces, the seams walked, its size, and the edges
// that are drawn by a curve.
type Sewn struct {
	Pieces  []piece.Piece
	Seams   []piece.Seam
	Size    Size
	Hollows []Hollow
	Panels  int              // of which it is joined, patches not among them
	Loops   int              // tie-outs with a loop of tape
	Corners []piece.Cornered // of the panels, counter-clockwise
	Plan    []geom.Ring      // net lines of the panels where they lie in the flat sheet, x along the ridge from its middle
	// Patch is that of a corner: the corner, the end of its end edge, the inner point, the
	// end of its side edge.
	Patch  [4]geom.Point
	Sag    float64 // of the ridge of each half, hollow in its middle
	flat   flatOutline
	Packed quantity.Litres // as loosely as the bed is packed; 0: the cloth's mass is not known
}

// Hollow is an edge of the sheet that is drawn by a curve: all edges of its kind are alike,
// and their halves.
type Hollow struct {
	ID     string
	Kind   piece.CurveKind
	Edge   Edge // one of them
	Places []piece.Place
}

// ties is how many loops a sheet has: at four corners and both ends of its ridge.
const ties = 6

// mostPanels bounds in how many panels a half, or the sheet across, is cut.
const mostPanels = 12

// Pieces builds the sheet of a design over a bed. mark is lettered on each piece, in the
// words given. The error is a [hung.Impossible].
func Pieces(d design.Design, s Size, mark string, w words.Lettering) (Sewn, error) {
	m := maker{d: d, mark: mark, words: w}
	m.out.Size, m.out.Loops = s, ties
	o, err := outlineOf(d.Tarp, s)
	if err != nil {
		return m.out, err
	}
	m.out.flat, m.out.Sag = o, o.ridge.Sag
	if err = o.hemLies(d.Tarp.Hem); err != nil {
		return m.out, err
	}
	if err = o.patchFits(d.Tarp.Patch); err != nil {
		return m.out, err
	}
	if err = m.divide(); err != nil {
		return m.out, err
	}
	m.out.Panels = len(m.panels)
	seams := m.seams()
	for _, p := range m.panels {
		m.out.Plan = append(m.out.Plan, p.net())
		m.panel(p, seams)
	}
	m.patches()
	m.hollows()
	cut := 0.0
	for _, p := range m.out.Pieces {
		cut += float64(p.Count) * p.Cut.Area()
	}
	// 1 kg/m³ is 1 g/l.
	m.out.Packed = quantity.Litres(d.ClothFor(article.Tarp).ArealDensity.Grams(cut) / float64(d.Sack.Density))
	return m.out, nil
}

// Edges returns those of the left half, from the foot end of the ridge to its head end, y
// down the slope from the ridge.
func (s Sewn) Edges() []geom.Polyline {
	return []geom.Polyline{s.flat.foot.Line(), s.flat.side.Line(), s.flat.head.Line()}
}

// Reach returns how far the sheet reaches down its slope from the ridge at a place along
// it, from its middle.
func (s Sewn) Reach(x float64) float64 {
	lo, hi := 0.0, s.Size.Width/2
	if s.flat.holds(x, hi) {
		return hi
	}
	for hi-lo > 0.01 {
		if mid := (lo + hi) / 2; s.flat.holds(x, mid) {
			lo = mid
		} else {
			hi = mid
		}
	}
	return lo
}

// Area returns the finished area of the sheet, mm²: that of its panels.
func (s Sewn) Area() (area float64) {
	for _, p := range s.Pieces {
		if p.Kind == piece.TarpPanel {
			area += p.Net.Area()
		}
	}
	return area
}

// maker gathers the pieces while they are built.
type maker struct {
	d      design.Design
	mark   string
	words  words.Lettering
	panels []panel
	out    Sewn
}

// divide parts the sheet in panels that come out of the roll.
func (m *maker) divide() error {
	switch m.d.Tarp.Join {
	case design.WholeTarp:
		m.panels = []panel{{id: "tarp-whole", whole: true, bounds: m.out.flat.all()}}
		return nil
	case design.AcrossJoin:
		return m.acrossRidge()
	}
	for _, side := range []bed.Side{bed.Left, bed.Right} {
		if err := m.alongRidge(side); err != nil {
			return err
		}
	}
	return nil
}

// roll returns how much of the roll's width can be used, and the key that it hangs on.
func (m *maker) roll() (usable float64, key design.Key) {
	c := m.d.ClothFor(article.Tarp)
	return c.Width - 2*c.Margin, m.d.WidthKey(article.Tarp)
}

// shared returns in how many panels something comes out of the roll, a fault that names
// the roll that would do where that is too many.
func (m *maker) shared(wide float64) (int, error) {
	usable, key := m.roll()
	a := m.d.Tarp.Allowance
	n := panelsFor(wide, a, usable)
	if n <= mostPanels {
		return n, nil
	}
	c := m.d.ClothFor(article.Tarp)
	return 0, &hung.Impossible{Key: key, Found: design.Found(design.PanelsTooMany, mostPanels), Bound: design.AtLeast,
		Limit: math.Ceil((wide-2*a)/mostPanels + 2*a + 2*c.Margin)}
}

// alongRidge parts a half in panels along the ridge, numbered from there outwards.
func (m *maker) alongRidge(side bed.Side) error {
	all, sign, a := m.out.flat.halfOf(side), side.Sign(), m.d.Tarp.Allowance
	box := m.cut(all).Bounds()
	n, err := m.shared(box.Height())
	if err != nil {
		return err
	}
	down := func(p geom.Point) float64 { return sign * p.Y }
	lo, hi := box.Min.Y, box.Max.Y
	if side == bed.Right {
		lo, hi = -box.Max.Y, -box.Min.Y
	}
	first := 1
	if side == bed.Right {
		first = n // the left half has as many joins
	}
	lines := evenly(lo, hi, a, n)
	parts, ok := parted(all, down, lines, first)
	if !ok {
		return joinLeaves((m.out.Size.Width/2 - lines[n-2]) / m.out.flat.side.chord)
	}
	for i, bounds := range parts {
		p := panel{id: "tarp-" + side.String(), half: side, bounds: bounds}
		if n > 1 {
			p.id, p.number = fmt.Sprintf("%s-%d", p.id, i+1), i+1
			if i+1 < n { // water runs over the fell, not into it
				p.covers = append(p.covers, seam(first+i))
			}
			if i > 0 {
				p.covered = append(p.covered, seam(first+i-1))
			}
		}
		if i == 0 && side == bed.Left {
			p.covers = append(p.covers, 0)
		} else if i == 0 {
			p.covered = append(p.covered, 0)
		}
		m.panels = append(m.panels, p)
	}
	return nil
}

// joinLeaves is the fault that a join would leave the sheet through a hollow edge, with
// the hollow that would do.
func joinLeaves(most float64) error {
	return &hung.Impossible{Key: design.KeyTarpHollow, Found: design.Found(design.JoinLeavesTarp), Bound: design.AtMost,
		Limit: max(math.Floor(most*1e3-1)/1e3, 0)}
}

// acrossRidge parts the sheet in panels across the ridge, numbered from the head.
func (m *maker) acrossRidge() error {
	all, a := m.out.flat.all(), m.d.Tarp.Allowance
	box := m.cut(all).Bounds()
	n, err := m.shared(box.Width())
	if err != nil {
		return err
	}
	lines := evenly(box.Min.X, box.Max.X, a, n)
	parts, ok := parted(all, func(p geom.Point) float64 { return p.X }, lines, 1)
	if !ok {
		return joinLeaves((m.out.Size.Ridge/2 - lines[n-2]) / m.out.flat.foot.chord)
	}
	for i, bounds := range parts {
		p := panel{id: fmt.Sprintf("tarp-%d", i+1), number: i + 1, across: true, bounds: bounds}
		if i+1 < n {
			p.covers = append(p.covers, seam(i+1))
		}
		if i > 0 {
			p.covered = append(p.covered, seam(i))
		}
		m.panels = append(m.panels, p)
	}
	return nil
}

// allowances returns what each stretch has outside the net line.
func (m *maker) allowances(all []stretch) []float64 {
	out := make([]float64, len(all))
	for i, b := range all {
		out[i] = m.d.Tarp.Allowance
		if b.bound.hemmed() {
			out[i] = 2 * m.d.Tarp.Hem // folded two times, it takes its width two times
		}
	}
	return out
}

// cut returns the cut line of an outline.
func (m *maker) cut(all []stretch) geom.Ring {
	return outside(panel{bounds: all}.lines(), m.allowances(all))
}

// seams walks every join, and returns the notches of each.
func (m *maker) seams() map[seam][]piece.Notch {
	out := map[seam][]piece.Notch{}
	count := 0
	for no := range seam(len(m.panels)) {
		var lines []geom.Polyline
		var ids [2]string
		for _, p := range m.panels {
			if l, _ := p.at(no); l != nil && len(lines) < 2 {
				ids[len(lines)], lines = p.id, append(lines, l)
			}
		}
		if len(lines) < 2 {
			continue
		}
		a, b := walk.Flat(lines[0]), walk.Flat(lines[1])
		for i := range joinNotches {
			count++
			out[no] = append(out[no], piece.Notch{Name: fmt.Sprintf("T%d", count), Number: count,
				At: a.FlatLength() * float64(i+1) / (joinNotches + 1), Double: i == 0})
		}
		s := piece.Seam{Kind: piece.TarpRidge, IDs: ids}
		if no > 0 {
			s.Kind, s.Number = piece.TarpJoin, int(no)
		}
		m.out.Seams = append(m.out.Seams, walk.Seam(walk.Pair{Seam: s, Edges: [2]flat.Edge{a, b}, Notches: out[no]}, m.d.Seam))
	}
	return out
}

// joinNotches is how many notches a join has; the first one is double, so that no end is
// taken for the other.
const joinNotches = 3

// hollows lists the edges that are drawn by a curve and where their templates lie.
func (m *maker) hollows() {
	o := m.out.flat
	for _, h := range []Hollow{
		{ID: "tarp-side", Kind: piece.TarpSideCurve, Edge: o.side}, {ID: "tarp-end", Kind: piece.TarpEndCurve, Edge: o.foot},
		{ID: "tarp-ridge", Kind: piece.TarpRidgeCurve, Edge: o.ridge},
	} {
		if h.Edge.curve == nil {
			continue
		}
		for _, p := range m.panels {
			for _, b := range p.bounds {
				if b.edge != nil && kindOf(b.bound) == h.Kind {
					h.Places = append(h.Places, placesOf(p, b, m.d.Template.Whole)...)
				}
			}
		}
		m.out.Hollows = append(m.out.Hollows, h)
	}
}

// kindOf returns the kind of curve that a stretch is of.
func kindOf(b bound) piece.CurveKind {
	return map[bound]piece.CurveKind{atSide: piece.TarpSideCurve, atEnd: piece.TarpEndCurve, atRidge: piece.TarpRidgeCurve}[b]
}

// Board returns the edge as its template counts it: x from a corner along the straight line
// between both, y outwards from that line; to the middle, or to the other corner.
func (h Hollow) Board(all bool) geom.Polyline {
	e := h.Edge
	back := geom.Motion{Turn: -e.along.Times(-1).Angle()}
	back.Shift = back.Apply(e.To).Times(-1)
	line := e.Line().Reversed().Moved(back)
	if !all {
		line = line[:len(line)/2+1] // Line has its middle as a point
	}
	return line
}

// placesOf returns where the template of an edge, or of its half, lies on a panel that has
// all of the edge or a part. The template counts x from a corner along the straight line
// between both, y outwards from it, see [Hollow].
func placesOf(p panel, b stretch, all bool) []piece.Place {
	e := *b.edge
	u := e.along
	from, to := b.line[0].Minus(e.From).Dot(u), b.line[len(b.line)-1].Minus(e.From).Dot(u)
	from, to = min(from, to), max(from, to)
	var out []piece.Place
	// From the last corner back the cloth lies on the right, as on the template.
	back := piece.Place{Piece: p.id, Motion: geom.Motion{Turn: u.Times(-1).Angle(), Shift: e.To}}
	if all || to > e.chord/2+noise {
		out = append(out, back)
	}
	if !all && from < e.chord/2-noise {
		out = append(out, piece.Place{Piece: p.id, Over: true, Motion: geom.Motion{Mirror: true, Turn: u.Angle(), Shift: e.From}})
	}
	for i := range out {
		out[i].Motion = p.turned(out[i].Motion)
	}
	return out
}

// turned returns a motion into the sheet's coordinates as one into the panel's own.
func (p panel) turned(m geom.Motion) geom.Motion {
	own := p.motion()
	m.Turn += own.Turn
	m.Shift = own.Apply(m.Shift)
	return m
}

// motion takes the sheet's coordinates to the panel's own, whose warp runs along x.
func (p panel) motion() geom.Motion {
	if p.across {
		return geom.Motion{Turn: -math.Pi / 2}
	}
	return geom.Motion{}
}

// Curves returns the edges by which the sheet can be marked by hand.
func (s Sewn) Curves() []piece.Curve {
	var out []piece.Curve
	for _, h := range s.Hollows {
		out = append(out, piece.Curve{Kind: h.Kind, Line: slices.Clone(h.Edge.Line())})
	}
	return out
}
