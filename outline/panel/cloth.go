// Package panel builds the cloth pieces of a bed: body, channels or facings, end caps,
// and the joins of a body wider than its roll. It walks every seam, so that both
// edges come out equally long.
package panel

import (
	"math"

	"slices"

	"slingloft/outline/bed"
	"slingloft/outline/design"
	"slingloft/outline/flat"
	"slingloft/outline/geom"
	"slingloft/outline/hung"
	"slingloft/outline/piece"
	"slingloft/outline/words"
)

// Sewn is the whole set of cloth pieces with what is known of their seams.
type Sewn struct {
	Pieces []piece.Piece
	Seams  []piece.Seam
	Joins  []Join  // that divide the body, from right to left; empty where the roll is wide enough
	Reach  float64 // from the cord centre in to the body's stitch line, mm

	// BodyNet is the seam line round the whole body, joined or not.
	BodyNet geom.Ring

	// SideNet is the body's seam line at v > 0 from the head corner to the foot
	// corner, EndNets the end seams from the right corner to the left one, with
	// the notches on them; templates are cut from these.
	SideNet     flat.Edge
	SideNotches []piece.Notch
	EndNets     [2]flat.Edge
	EndNotches  [2][]piece.Notch
	BarLines    [2]geom.Polyline // bar lines from the centre line to the seam at v > 0

	// CapSeams run counter-clockwise round the caps as drawn, from the right corner
	// under the bed to the left one at the head and the other way at the foot,
	// CapTops back; empty where the end is gathered.
	CapSeams, CapTops [2]geom.Polyline

	// FacingInner is the inner edge of the left facing, at v > 0 as its outer edge
	// SideNet; empty where the channel is a strip.
	FacingInner geom.Polyline
}

// clothLetter is the height of lettering on cloth, mm: plotted by pen and read
// at the table.
const clothLetter = 10.0

// Pieces builds every cloth piece of a design from its hung shape and flat body.
// mark is lettered on each piece, in the words given, so that no piece of another
// design is taken for one of this. A body wider than the roll is divided by the joins that the design
// allows; if they do not do, the error is a [TooWide].
func Pieces(d design.Design, s *hung.Shape, b *flat.Body, mark string, w words.Lettering) (Sewn, error) {
	reach, err := Reach(d.Channel.Depth, d.Side.Diameter)
	if err != nil {
		return Sewn{}, err
	}
	m := pattern{d: d, s: s, b: b, mark: mark, words: w, as: bodyLayer(w)}
	m.sideID = [2]string{m.as.id, m.as.id}
	m.out.Reach = reach
	if err := m.sidesRun(); err != nil {
		return Sewn{}, err
	}
	m.seamLines()
	if err := m.openingFits(); err != nil {
		return Sewn{}, err
	}
	m.notches()
	if err := m.body(); err != nil {
		return Sewn{}, err
	}
	for _, side := range []bed.Side{bed.Left, bed.Right} {
		if err := m.channel(side); err != nil {
			return Sewn{}, err
		}
	}
	for _, e := range hung.Ends() {
		if err := m.cap(e); err != nil {
			return Sewn{}, err
		}
	}
	return m.out, nil
}

// pattern gathers the pieces while they are built.
type pattern struct {
	d     design.Design
	s     *hung.Shape
	b     *flat.Body
	mark  string
	words words.Lettering
	as    layer
	out   Sewn

	edges []geom.Polyline // the body's net edges, see seamLines
	cord  flat.Edge       // cord centres at v > 0

	sideID [2]string // the piece of the body that has each side

	opening Opening // of a lining
}

// The body's net edges, counter-clockwise from the head corner on the right.
const (
	rightHeadTail = iota
	rightBay
	rightFootTail
	footEnd
	leftFootTail
	leftBay
	leftHeadTail
	headEnd
	bodyEdges
)

// seamLines finds the body's seam lines: the cord line moved in by the reach, or
// out to the channel's edge where the channel is a facing.
func (m *pattern) seamLines() {
	m.cord = m.b.Side
	in := m.out.Reach
	if m.d.Channel.Kind == design.Facing {
		in = m.out.Reach - m.d.Channel.Depth
	}
	m.edges = m.edgesAt(in)
	m.out.SideNet = m.cord.Beside(joinedUp(leftEdges(m.edges)))
	for _, e := range hung.Ends() {
		line := m.edges[footEnd]
		if e == hung.Head {
			line = m.edges[headEnd].Reversed()
		}
		half := m.b.Ends[e]
		m.out.EndNets[e] = half.Mirrored().Reversed().Then(half).Beside(line)
		m.out.BarLines[e] = m.barLine(e)
	}
}

// edgesAt returns the body's eight edges with the sides moved in by in mm from
// the cord centres.
func (m *pattern) edgesAt(in float64) []geom.Polyline {
	side := m.b.Side
	head, foot := m.b.TipIndex(hung.Head), m.b.TipIndex(hung.Foot)
	left := []geom.Polyline{side.Flat[:head+1], side.Flat[head : foot+1], side.Flat[foot:]}
	right := side.Mirrored()
	edges := make([]geom.Polyline, bodyEdges)
	for i, l := range left {
		edges[leftHeadTail-i] = l.Reversed()
	}
	edges[rightHeadTail], edges[rightBay], edges[rightFootTail] = right.Flat[:head+1], right.Flat[head:foot+1], right.Flat[foot:]
	whole := func(e hung.End) geom.Polyline {
		half := m.b.Ends[e]
		return half.Mirrored().Reversed().Then(half).Flat
	}
	edges[footEnd], edges[headEnd] = whole(hung.Foot), whole(hung.Head).Reversed()
	d := make([]float64, bodyEdges)
	for i := range d {
		if i != footEnd && i != headEnd {
			d[i] = -in
		}
	}
	return geom.MovedEdges(edges, d)
}

// barLine returns an end's bar line from the centre line out to the seam, which
// it meets beside the seam's own corner.
func (m *pattern) barLine(e hung.End) geom.Polyline {
	bar, seam := m.b.Bars[e], m.out.SideNet.Flat
	// Run on a little, for a seam outside the cord.
	last := bar[len(bar)-1]
	out := last.Minus(bar[len(bar)-2]).Unit()
	long := append(slices.Clone(bar), last.Plus(out.Times(2*m.d.Channel.Depth)))
	for i := 1; i < len(long); i++ {
		for j := 1; j < len(seam); j++ {
			if p, ok := geom.Crossing(long[i-1], long[i], seam[j-1], seam[j]); ok {
				return append(slices.Clone(long[:i]), p)
			}
		}
	}
	return bar
}

// openingFits refuses a tip opening that reaches past a seam's end: it has to be shorter,
// or the tail longer where no opening through which a tip gap can be drawn would fit.
func (m *pattern) openingFits() error {
	const whole = 20.0 // mm of channel left at an end, own choice
	runs := m.barRuns()
	tails := [2]float64{runs[hung.Head], m.out.SideNet.HungLength() - runs[hung.Foot]}
	limit := 2 * (min(tails[hung.Head], tails[hung.Foot], (runs[hung.Foot]-runs[hung.Head])/2) - whole)
	opening := m.d.Channel.Opening
	switch {
	case opening <= limit:
		return nil
	case limit >= m.d.Splice.TipGap+design.LeastPlay:
		return &hung.Impossible{Key: design.KeyChannelOpening, Found: design.Found(design.OpeningPastEnd), Bound: design.AtMost, Limit: limit}
	}
	end, key, tail := hung.Head, design.KeyBedHeadTail, m.d.Bed.HeadTail
	if tails[hung.Foot] < tails[hung.Head] {
		end, key, tail = hung.Foot, design.KeyBedFootTail, m.d.Bed.FootTail
	}
	// A tail's side grows about as its middle does; a quarter more is on the safe side.
	const more = 1.25
	return &hung.Impossible{Key: key, Found: design.Found(design.TailUnderOpening), Bound: design.AtLeast,
		Limit: math.Ceil(tail + more*(opening/2+whole-tails[end]))}
}

// notches places the matching marks of every seam.
func (m *pattern) notches() {
	o := &m.out
	o.SideNotches = sideNotches(bed.Left.Letter(), o.SideNet.HungLength(), m.barRuns(), false)
	for e, letter := range [2]string{"H", "F"} {
		o.EndNotches[e] = endNotches(letter, o.EndNets[e].HungLength(), hung.End(e) == hung.Foot)
	}
}

// barRuns returns the hung lengths along the side seam at which the bars lie.
func (m *pattern) barRuns() [2]float64 {
	var out [2]float64
	arc := geom.NewArc(m.out.SideNet.Flat)
	for e := range out {
		l := m.out.BarLines[e]
		f, _ := arc.Nearest(l[len(l)-1])
		out[e] = m.out.SideNet.HungOf(f)
	}
	return out
}

// onSide returns the notches of a side: those of the left one renamed and doubled for
// the right.
func (m *pattern) onSide(s bed.Side) []piece.Notch {
	return m.out.NotchesOn(s)
}

// NotchesOn returns the notches of a side seam, by its hung length.
func (s Sewn) NotchesOn(side bed.Side) []piece.Notch {
	if side == bed.Left {
		return s.SideNotches
	}
	var bars []float64
	for _, n := range s.SideNotches {
		if n.Bar {
			bars = append(bars, n.At)
		}
	}
	return sideNotches(bed.Right.Letter(), s.SideNet.HungLength(), [2]float64(bars), true)
}

// MiddlePart returns where the middle notch of a side lies between its bars' notches, as a
// part of the way from the head; 0 where it does not lie between them. It is the middle of
// the whole side, so that tails of unequal length move it off mid-bay.
func (s Sewn) MiddlePart() float64 {
	var bars []float64
	for _, n := range s.SideNotches {
		if n.Bar {
			bars = append(bars, n.At)
		}
	}
	middle := s.SideNet.HungLength() / 2
	if len(bars) != 2 || middle <= bars[0] || middle >= bars[1] {
		return 0
	}
	return (middle - bars[0]) / (bars[1] - bars[0])
}

// BarRuns returns the flat running lengths along the left side seam at which the
// two bar lines meet it, mm from the head corner.
func (s Sewn) BarRuns() (head, foot float64) {
	arc := geom.NewArc(s.SideNet.Flat)
	var out [2]float64
	for e, l := range s.BarLines {
		out[e], _ = arc.Nearest(l[len(l)-1])
	}
	return out[hung.Head], out[hung.Foot]
}
