package panel

import (
	"fmt"
	"math"

	"slingloft/outline/bed"
	"slingloft/outline/design"
	"slingloft/outline/flat"
	"slingloft/outline/geom"
	"slingloft/outline/hung"
	"slingloft/outline/piece"
)

// Join is a lengthwise seam that divides the body along a warp thread, from the
// head end to the foot end. Along a thread the hung length is the flat one, so that
// the two edges of a join need no ease.
//
// It is a flat-felled seam (common practice, no source). Both panels have the same
// allowance; they are sewn along the net line, the outer panel's allowance is
// trimmed, the inner one's is folded over it and stitched down on the outer panel:
//
//	        net line
//	outer ─────┬─────── inner       the fell lies on the outer panel, away
//	     └─────┘ fold               from the sleeper's back
//	  edge stitch
type Join struct {
	Place   piece.Rim
	V       float64 // its place across the body, mm from the centre line, left positive
	Edge    flat.Edge
	Notches []piece.Notch
}

// Own choices of where a join may lie, mm.
const (
	// joinRoom is how far a join keeps inside the narrowest place of the body's side:
	// room for both seams with their allowances and a finger's breadth.
	joinRoom = 40.0
	// offSpine is the least distance of a single join from the centre line, so that
	// the spine does not lie on its fell.
	offSpine = 40.0
	// offBack is the distance at which a join lies off the back of a sleeper who lies
	// in the middle; two joins always keep it.
	offBack = 100.0
	// offNotch keeps both strokes of an end notch on one panel.
	offNotch = 8.0
	// fellEdge is how far the edge stitch lies from the fold, and how much narrower
	// than the fell the trimmed allowance is.
	fellEdge = 2.0
)

// TooWide says that the body does not fit the roll in as many panels as the design
// allows. Lengths mm.
type TooWide struct {
	Across  float64 // the body as cut
	Holds   float64 // the roll without its margins
	Allowed int     // joins that the design allows
	// Rolls are the least widths of roll, margins in them, that would do with no join,
	// one and two; 0: no join finds a place.
	Rolls [3]float64
	Over  float64 // by how much the girth would have to come down
	Drop  float64 // or, about, the height of the cords at the wider bar
	End   hung.End
}

// Error names the widths that would do and how much smaller the body would have to be.
func (e *TooWide) Error() string {
	s := fmt.Sprintf("cloth.width: the body is %.0f mm wide as cut, the roll holds %.0f mm and the design allows %d joins",
		e.Across, e.Holds, e.Allowed)
	for n, w := range e.Rolls {
		if w > 0 {
			s += fmt.Sprintf("; a roll of %.0f mm would do with %d joins", w, n)
		}
	}
	return s + fmt.Sprintf("; or a girth at the %s bar smaller by %.0f mm", e.End, e.Over)
}

// joinPlan is what the places of joins depend on, mm.
type joinPlan struct {
	half      float64   // of the body as cut
	usable    float64   // of the roll
	allowance float64   // at a join
	farthest  float64   // farthest that a join may lie from the centre line
	avoid     []float64 // places of end notches
}

// joinPlan gathers it for a body.
func (m *pattern) joinPlan(cut geom.Ring) joinPlan {
	c, box := m.d.Cloth, cut.Bounds()
	p := joinPlan{half: max(-box.Min.Y, box.Max.Y), usable: c.Width - 2*c.Margin, allowance: m.d.Seam.Join, farthest: math.Inf(1)}
	for _, q := range m.out.SideNet.Flat {
		p.farthest = min(p.farthest, q.Y-joinRoom)
	}
	if m.d.Cap.Kind != design.Gathered {
		for e, net := range m.out.EndNets {
			for _, n := range m.out.EndNotches[e] {
				p.avoid = append(p.avoid, math.Abs(net.At(n.At).Y))
			}
		}
	}
	return p
}

// fits reports whether the body comes out of the roll as one panel.
func (p joinPlan) fits() bool { return 2*p.half <= p.usable+rollNoise }

// rollNoise is the noise of floats where a roll is just wide enough, mm.
const rollNoise = 1e-9

// one returns the place of a single join: as far off the centre line as the wider
// panel may reach.
func (p joinPlan) one() (float64, bool) {
	return p.place(max(offSpine, p.half+p.allowance-p.usable), min(p.farthest, p.usable-p.half-p.allowance))
}

// two returns the distance from the centre line of each of two joins: as far out as
// the middle panel may reach.
func (p joinPlan) two() (float64, bool) {
	return p.place(max(offBack, p.half+p.allowance-p.usable), min(p.farthest, p.usable/2-p.allowance))
}

// place returns the largest whole mm between lo and hi at which no end notch lies,
// and whether there is room at all.
func (p joinPlan) place(lo, hi float64) (float64, bool) {
	top := math.Floor(hi + rollNoise)
	lo -= rollNoise
	for v := top; v >= lo; v-- {
		if p.clear(v) {
			return v, true
		}
	}
	return top, top >= lo
}

func (p joinPlan) clear(v float64) bool {
	for _, a := range p.avoid {
		if math.Abs(v-a) < offNotch {
			return false
		}
	}
	return true
}

// places returns where the joins lie, from right to left. One join is enough where
// it lies off the back, or where two are not allowed or find no place.
func (p joinPlan) places(allowed int) ([]float64, bool) {
	v, ok := p.one()
	w, both := p.two()
	switch {
	case allowed > 0 && ok && (v >= offBack || allowed == 1 || !both):
		return []float64{v}, true
	case allowed > 1 && both:
		return []float64{-w, w}, true
	}
	return nil, false
}

// rolls returns the least usable widths that would do with no join, one and two; 0
// where no join finds a place.
func (p joinPlan) rolls() [3]float64 {
	out := [3]float64{2 * p.half, 0, 0}
	if p.farthest >= offSpine {
		out[1] = p.half + math.Ceil(offSpine) + p.allowance
	}
	if p.farthest >= offBack {
		v := math.Ceil(min(max((p.half-p.allowance)/3, offBack), math.Floor(p.farthest)))
		out[2] = max(2*(v+p.allowance), p.half-v+p.allowance)
	}
	return out
}

// joins places the joins that the whole body needs: none where it fits the roll or
// the roll's width is not given. The error is a [TooWide].
func (m *pattern) joins(cut geom.Ring) error {
	p := m.joinPlan(cut)
	if m.d.Cloth.Width == 0 || p.fits() {
		return nil
	}
	at, ok := p.places(m.d.Cloth.Joins)
	if !ok {
		return m.tooWide(p)
	}
	for i, v := range at {
		j := Join{Place: piece.OnlyJoin, V: v, Edge: m.joinEdge(v)}
		s := bed.Left
		if len(at) == 2 {
			s = bed.Side(1 - i)
			j.Place = piece.JoinOf(s)
		}
		j.Notches = m.joinNotches(j, s)
		m.out.Joins = append(m.out.Joins, j)
	}
	return nil
}

// tooWide says what would do.
func (m *pattern) tooWide(p joinPlan) error {
	e := &TooWide{Across: 2 * p.half, Holds: p.usable, Allowed: m.d.Cloth.Joins, Rolls: p.rolls()}
	for i := range e.Rolls {
		if e.Rolls[i] > 0 {
			e.Rolls[i] += 2 * m.d.Cloth.Margin
		}
	}
	head, foot := m.s.Ends[hung.Head].Section, m.s.Ends[hung.Foot].Section
	wide := head
	if foot.Girth() > head.Girth() {
		wide, e.End = foot, hung.Foot
	}
	// A panel's width falls with the girth: as much, or by a half, or by a third.
	for n := range min(e.Allowed, 2) + 1 {
		if over := float64(n+1) * (e.Rolls[n] - m.d.Cloth.Width); e.Rolls[n] > 0 && (n == 0 || over < e.Over) {
			e.Over = over
		}
	}
	// dP = 2 sin θ dh, see package hung.
	e.Drop = e.Over / (2 * math.Sin(wide.Wall))
	return e
}

// joinEdge returns the warp thread at v from the head end seam to the foot one.
func (m *pattern) joinEdge(v float64) flat.Edge {
	var at [2]geom.Point
	for e := range at {
		at[e] = crossesAt(m.out.EndNets[e].Flat, v)
	}
	return flat.Edge{Flat: geom.Polyline{at[0], at[1]}, Hung: []float64{0, at[0].Dist(at[1])}}
}

// crossesAt returns the first point of a line at height v, its last point if there
// is none.
func crossesAt(l geom.Polyline, v float64) geom.Point {
	for i := 1; i < len(l); i++ {
		a, b := l[i-1], l[i]
		if a.Y != b.Y && (a.Y-v)*(b.Y-v) <= 0 {
			p := a.Towards(b, (v-a.Y)/(b.Y-a.Y))
			return geom.Pt(p.X, v)
		}
	}
	return l[len(l)-1]
}

// joinNotches returns the notches of the join on a side: quarters, middle and bars,
// numbered on from the left join to the right one. The left join has single strokes
// but for its first notch, the right one double strokes but for its first, so that
// no panel can be sewn to the other join, or end for end.
func (m *pattern) joinNotches(j Join, s bed.Side) []piece.Notch {
	var bars [2]float64
	for e, half := range m.out.BarLines {
		bars[e] = crossesAt(half, math.Abs(j.V)).X - j.Edge.Flat[0].X
	}
	out := sideNotches(m.as.letter, j.Edge.HungLength(), bars, s == bed.Right)
	for k := range out {
		out[k].Number = k + 1 + int(s)*len(out)
		out[k].Name = fmt.Sprintf("%s%d", m.as.letter, out[k].Number)
	}
	out[0].Double = !out[0].Double
	return out
}
