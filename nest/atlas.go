package nest

import (
	"math"
	"slices"
	"sync/atomic"

	"slingloft/nest/nofit"
	"slingloft/outline/geom"
)

// atlas holds the shapes and forms of a problem and the no-fit fields between
// them. A field belongs to two shapes and the quarters by which one is turned
// against the other; it is made when it is first asked for. Several goroutines
// may ask at once; they would make the same field.
type atlas struct {
	shapes []shape
	forms  []form
	gap    float64 // between two pieces
	grow   float64 // how far fields reach past the true region, see problem.safety
	fields []atomic.Pointer[nofit.Field]
	links  []link // of every ordered pair of forms
}

// link says how the displacement of one form from another goes into a field.
type link struct {
	at     *atomic.Pointer[nofit.Field]
	dx, dy float64
	weigh  float64 // how much a clash of the two counts, see badness
	a, b   int     // shapes
	rel    int     // quarters by which b is turned against a
	back   int     // quarters by which to turn a displacement back
	flip   bool    // the field is that of the first form against the second
}

// addShape returns the index of a shape with the outline of s, adding s if there
// is none.
func (a *atlas) addShape(s shape) int {
	for i, t := range a.shapes {
		if s.solid == t.solid && slices.Equal(s.ring, t.ring) {
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
		if f.solid == g.solid && sameRing(f.ring, g.ring, 1e-9*(f.w+f.h)) {
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
	n := len(a.shapes)
	a.fields = make([]atomic.Pointer[nofit.Field], 4*n*n)
	a.links = make([]link, 0, len(a.forms)*len(a.forms))
	for _, f := range a.forms {
		for _, g := range a.forms {
			l := link{flip: f.shape > g.shape}
			if l.flip {
				f, g = g, f
			}
			l.a, l.b, l.back, l.rel = f.shape, g.shape, f.quarter, (g.quarter-f.quarter+4)%4
			shift := l.turnBack(f.off.Minus(g.off))
			l.dx, l.dy = shift.X, shift.Y
			l.at = &a.fields[(l.a*n+l.b)*4+l.rel]
			l.weigh = weigh(f, g)
			a.links = append(a.links, l)
			if l.flip {
				f, g = g, f
			}
		}
	}
}

// turnBack turns a displacement into the frame of the field.
func (l *link) turnBack(d geom.Point) geom.Point {
	switch l.back {
	case 1:
		return geom.Pt(d.Y, -d.X)
	case 2:
		return geom.Pt(-d.X, -d.Y)
	case 3:
		return geom.Pt(-d.Y, d.X)
	}
	return d
}

// into returns the point of the field for the displacement (x, y).
func (l *link) into(x, y float64) (float64, float64) {
	if l.flip {
		x, y = -x, -y
	}
	switch l.back {
	case 1:
		x, y = y, -x
	case 2:
		x, y = -x, -y
	case 3:
		x, y = -y, x
	}
	return x + l.dx, y + l.dy
}

// outOf returns the displacement that belongs to a point of the field.
func (l *link) outOf(p geom.Point) geom.Point {
	p = p.Minus(geom.Pt(l.dx, l.dy))
	for range l.back {
		p = p.Left()
	}
	if l.flip {
		p = geom.Pt(-p.X, -p.Y)
	}
	return p
}

// between returns the link from form f to form g.
func (a *atlas) between(f, g int) *link { return &a.links[f*len(a.forms)+g] }

// depth returns how deep the second form of l lies in the first when its corner is
// displaced by (x, y) from that of the first.
func (a *atlas) depth(l *link, x, y float64) float64 {
	fd := l.at.Load()
	if fd == nil {
		fd = a.make(l)
	}
	x, y = l.into(x, y)
	return fd.Depth(x, y)
}

// make builds the field of l.
func (a *atlas) make(l *link) *nofit.Field {
	f := nofit.New(a.patches(l), a.grow)
	l.at.Store(f)
	return f
}

// patches returns the no-fit patches of the two shapes of l.
func (a *atlas) patches(l *link) []nofit.Patch {
	return nofit.Patches(a.shapes[l.a].parts, l.turn(a.shapes[l.b].parts), a.keep(l))
}

// roughPatches returns fewer patches that cover the same region and a little more.
func (a *atlas) roughPatches(l *link) []nofit.Patch {
	return nofit.Patches(a.shapes[l.a].rough, l.turn(a.shapes[l.b].rough), a.keep(l))
}

// keep returns the gap between the two shapes of l.
func (a *atlas) keep(l *link) float64 {
	if a.shapes[l.a].solid || a.shapes[l.b].solid {
		return 0
	}
	return a.gap
}

// turn turns the parts of the second shape of l against the first.
func (l *link) turn(parts []geom.Ring) []geom.Ring {
	return moved(parts, geom.Motion{Turn: float64(l.rel) * math.Pi / 2})
}
