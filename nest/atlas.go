package nest

import (
	"math"
	"slices"
	"sync"
	"sync/atomic"

	"slingloft/nest/nofit"
	"slingloft/outline/geom"
)

// atlas holds the shapes and forms of a problem and the no-fit fields between
// them. A field belongs to two shapes and the quarters by which one is turned
// against the other; it is made when it is first asked for, once: who asks meanwhile
// waits.
type atlas struct {
	shapes []shape
	forms  []form
	gap    float64 // between two pieces
	grow   float64 // how far fields reach past the true region, see problem.safety
	plain  bool    // fields are patches without a grid
	fields []atomic.Pointer[nofit.Field]
	making [64]sync.Mutex // of fields, by their shapes
	links  []link         // of every ordered pair of forms, none where there are too many
}

// mostLinked is of how many forms the links are kept: some 20 MB of them.
const mostLinked = 500

// link says how the displacement of one form from another goes into a field: it is
// turned, by half a turn more where the field is that of the first form against the
// second, and shifted.
type link struct {
	field    *atomic.Pointer[nofit.Field]
	cos, sin float64 // of the turn, −1, 0 or 1
	dx, dy   float64
	scale    float64 // of the loss where the two overlap, see lossScale
	a, b     int     // shapes of the field
	quarter  int     // by which b is turned against a
}

// addShape returns the index of a shape with the outline of s, adding s if there
// is none.
func (a *atlas) addShape(s shape) int {
	for i, t := range a.shapes {
		if s.solid == t.solid && slices.Equal(s.region[0], t.region[0]) {
			return i
		}
	}
	a.shapes = append(a.shapes, s)
	return len(a.shapes) - 1
}

// addForm returns the index of a form with the outline of f, adding f if there
// is none.
func (a *atlas) addForm(f form) int {
	for i, g := range a.forms {
		if f.solid == g.solid && sameRing(f.ring, g.ring, 1e-9*(f.size.X+f.size.Y)) {
			return i
		}
	}
	a.forms = append(a.forms, f)
	return len(a.forms) - 1
}

// sameRing reports whether p is q moved by some shift, within tol.
func sameRing(p, q geom.Ring, tol float64) bool {
	if len(p) != len(q) {
		return false
	}
	for i := range p {
		d := p[i].Minus(p[0]).Minus(q[i].Minus(q[0]))
		if math.Abs(d.X) > tol || math.Abs(d.Y) > tol {
			return false
		}
	}
	return true
}

// ready links the forms once all are known.
func (a *atlas) ready() {
	a.fields = make([]atomic.Pointer[nofit.Field], 4*len(a.shapes)*len(a.shapes))
	if len(a.forms) > mostLinked {
		return
	}
	a.links = make([]link, 0, len(a.forms)*len(a.forms))
	for _, f := range a.forms {
		for _, g := range a.forms {
			a.links = append(a.links, a.linked(f, g))
		}
	}
}

// linked returns the link from form f to form g.
func (a *atlas) linked(f, g form) link {
	x := geom.Pt(1, 0)
	if f.shape > g.shape {
		f, g, x = g, f, geom.Pt(-1, 0)
	}
	back, quarter := quarterTurn(-f.quarter), (g.quarter-f.quarter)&3
	turn, shift := back.Apply(x), back.Apply(f.off.Minus(g.off))
	at := &a.fields[(f.shape*len(a.shapes)+g.shape)*4+quarter]
	return link{at, turn.X, turn.Y, shift.X, shift.Y, lossScale(f, g), f.shape, g.shape, quarter}
}

// into returns the point of the field for the displacement (x, y).
func (l *link) into(x, y float64) (float64, float64) {
	return float64(l.cos*x) - float64(l.sin*y) + l.dx, float64(l.sin*x) + float64(l.cos*y) + l.dy
}

// outOf returns the displacement that belongs to a point of the field.
func (l *link) outOf(p geom.Point) geom.Point {
	x, y := p.X-l.dx, p.Y-l.dy
	return geom.Pt(float64(l.cos*x)+float64(l.sin*y), float64(l.cos*y)-float64(l.sin*x))
}

// between returns the link from form f to form g.
func (a *atlas) between(f, g int) *link {
	if a.links == nil {
		l := a.linked(a.forms[f], a.forms[g])
		return &l
	}
	return &a.links[f*len(a.forms)+g]
}

// lossScale returns the factor of the root of the depth in the loss of a pair: it
// grows with the sizes of both, since large pieces find another place less easily
// (after Gardeyn, Vanden Berghe & Wauters 2025, "An open-source heuristic to reboot
// 2D nesting research", with penetration depth in the place of their measure).
func lossScale(f, g form) float64 {
	s, t := math.Sqrt(f.area), math.Sqrt(g.area)
	return math.Sqrt(min(s, t) * s * t)
}

// box returns what a form takes up in its place, the gap added right and above.
func (a *atlas) box(s spot) geom.Box {
	return geom.Box{Min: s.at, Max: s.at.Plus(a.forms[s.form].size).Plus(geom.Pt(a.gap, a.gap))}
}

// depth returns how deep the second form of l lies in the first when its corner is
// displaced by (x, y) from that of the first.
func (a *atlas) depth(l *link, x, y float64) float64 {
	f := l.field.Load()
	if f == nil {
		f = a.field(l)
	}
	return f.Depth(l.into(x, y))
}

// field returns the field of l, made if nobody has made it yet.
func (a *atlas) field(l *link) *nofit.Field {
	turn := &a.making[(4*(l.a*31+l.b)+l.quarter)%len(a.making)]
	turn.Lock()
	defer turn.Unlock()
	f := l.field.Load()
	if f == nil {
		ps := a.patches(l, func(s *shape) []geom.Ring { return s.parts })
		if a.plain {
			f = nofit.Plain(ps, a.grow)
		} else {
			f = nofit.New(ps, a.grow)
		}
		l.field.Store(f)
	}
	return f
}

// patches returns the no-fit patches of the two shapes of l, by one of their covers.
func (a *atlas) patches(l *link, of func(*shape) []geom.Ring) []nofit.Patch {
	s, t, gap := &a.shapes[l.a], &a.shapes[l.b], a.gap
	if s.solid || t.solid {
		gap = 0
	}
	return nofit.Patches(of(s), moved(of(t), quarterTurn(l.quarter)), gap)
}
