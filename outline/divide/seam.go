package divide

import (
	"cmp"
	"math"
	"slices"

	"slingloft/outline/geom"
	"slingloft/outline/label"
	"slingloft/outline/piece"
)

// seamPlan is a place for a seam along x = s, in coordinates turned so that the
// seam runs along y.
type seamPlan struct {
	s         float64
	low, high float64 // its ends
	from, to  int     // edges of the outline on which they lie
	head      float64 // of the tongues
	tongues   []float64
	hole      float64 // height of both alignment holes
	cost      float64
}

// region is a part of a piece while it is divided.
type region struct {
	ring  geom.Ring
	holes []geom.Ring
}

func (r region) moved(m geom.Motion) region {
	out := region{ring: r.ring.Moved(m)}
	for _, h := range r.holes {
		out.holes = append(out.holes, h.Moved(m))
	}
	return out
}

// frame is a region with what is drawn on the piece, turned so that the seams to
// look for run along y.
type frame struct {
	r     region
	room  *label.Room // the material alone
	texts []label.Taken
	marks []geom.Polyline
}

// turned returns the region seen along the direction angle.
func (d *divider) turned(r region, angle float64) frame {
	to := geom.Motion{Turn: -angle}
	f := frame{r: r.moved(to)}
	f.room = label.NewRoom(&piece.Piece{Cut: f.r.ring, Holes: f.r.holes})
	for _, q := range d.texts {
		for k, p := range q {
			q[k] = to.Apply(p)
		}
		f.texts = append(f.texts, label.Taken{Quad: q, Box: q.Bounds()})
	}
	for _, l := range d.marks {
		f.marks = append(f.marks, l.Moved(to))
	}
	return f
}

// seamRange is the stretch of x in which the first of several parts may end.
type seamRange struct{ from, to, ideal float64 }

// maxSeams bounds the places that are tried for one seam.
const maxSeams = 240

// places returns the places in the range at which a seam is tried.
func (s seamRange) places() []float64 {
	n := min(max(int(s.to-s.from), 1), maxSeams)
	out := make([]float64, n)
	for k := range out {
		out[k] = s.from + (s.to-s.from)*(float64(k)+0.5)/float64(n)
	}
	return out
}

// bestSeam returns the best place for a seam in the range, if there is any. Good
// places cut no text, run across one band of material, keep off marks that run
// beside them, and make parts alike.
func (d *divider) bestSeam(f frame, span seamRange) (seamPlan, bool) {
	best := seamPlan{cost: math.Inf(1)}
	for _, s := range span.places() {
		chords := chordsAt(f.r.ring, s)
		place := 2*math.Abs(s-span.ideal)/(span.to-span.from+1) + 4*float64(len(chords)-1) + besides(f.marks, s)
		for _, plan := range chords {
			if plan.cost = place; place >= best.cost || !d.fit(&plan, f) {
				continue
			}
			if plan.cost < best.cost {
				best = plan
			}
		}
	}
	return best, !math.IsInf(best.cost, 1)
}

// peelStep is the angle between the directions in which a part is peeled off.
const peelStep = math.Pi / 12

// peel looks, in many directions, for a seam that takes the largest part off the
// region that fits the sheet: the way to divide bent bands, which seams along the
// axes may cross aslant.
func (d *divider) peel(r region) (angle float64, best seamPlan, found bool) {
	const textCost = 0.01 // in shares of the region's area
	best.cost = math.Inf(1)
	whole := r.ring.Area()
	for k := range 12 {
		turn := float64(k) * peelStep
		f := d.turned(r, turn)
		box := f.r.ring.Bounds()
		for _, s := range (seamRange{from: box.Min.X, to: box.Max.X}).places() {
			for _, plan := range chordsAt(f.r.ring, s) {
				plan.cost = besides(f.marks, s)
				if !d.fit(&plan, f) {
					continue
				}
				tongue, socket := d.cut(f.r, plan)
				for _, side := range [2]region{tongue, socket} {
					if !d.fits(side.moved(geom.Motion{Turn: turn})) {
						continue
					}
					cost := textCost*plan.cost - side.ring.Area()/whole
					if cost < best.cost {
						angle, best, found = turn, plan, true
						best.cost = cost
					}
				}
			}
		}
	}
	return angle, best, found
}

// besides returns the cost of marks that run along the seam close by.
func besides(marks []geom.Polyline, s float64) float64 {
	const close = 2.0 // mm
	cost := 0.0
	for _, l := range marks {
		for i := 1; i < len(l); i++ {
			if math.Abs(l[i].X-s) < close && math.Abs(l[i-1].X-s) < close {
				cost++
			}
		}
	}
	return cost
}

// chordsAt returns the stretches of the line x = s that lie inside the ring.
func chordsAt(ring geom.Ring, s float64) []seamPlan {
	type cut struct {
		edge int
		y    float64
	}
	var cuts []cut
	for i, a := range ring {
		b := ring[(i+1)%len(ring)]
		if (a.X > s) != (b.X > s) {
			cuts = append(cuts, cut{i, a.Y + (s-a.X)/(b.X-a.X)*(b.Y-a.Y)})
		}
	}
	slices.SortFunc(cuts, func(a, b cut) int { return cmp.Compare(a.y, b.y) })
	var out []seamPlan
	for k := 0; k+1 < len(cuts); k += 2 {
		lo, hi := cuts[k], cuts[k+1]
		out = append(out, seamPlan{s: s, low: lo.y, high: hi.y, from: lo.edge, to: hi.edge})
	}
	return out
}

// fit finds room for tongues and holes along a seam, adds the texts in the way to
// its cost, and reports whether there is room.
func (d *divider) fit(p *seamPlan, f frame) bool {
	length := p.high - p.low
	if length < d.joint.least() {
		return false
	}
	const share = 120.0 // mm of seam for each tongue, own choice
	n := min(max(int(length/share), 1), 3)
	p.head = min(largestHead, headShare*length/float64(n))
	p.head = max(p.head, d.joint.minHead())
	var rooms []label.Quad
	half := p.head/2 + d.joint.Clearance + jointWall
	for i := range n {
		y := p.low + (float64(i)+0.5)/float64(n)*length
		p.tongues = append(p.tongues, y)
		rooms = append(rooms, boxQuad(p.s-jointWall, y-half, p.s+p.head*depthShare+d.joint.Clearance+jointWall, y+half))
	}
	const slack = 2 * jointWall // at the seam's ends, where the outline runs past
	rooms = append(rooms, boxQuad(p.s-jointWall, p.low+slack, p.s+jointWall, p.high-slack))
	for _, q := range rooms {
		if !f.room.Whole(q, q.Bounds()) {
			return false
		}
	}
	rooms[len(rooms)-1] = boxQuad(p.s-0.5, p.low, p.s+0.5, p.high)
	for _, q := range rooms {
		p.cost += 3 * float64(touched(q, f.texts))
	}
	return d.fitHole(p, f)
}

// fitHole finds the height of the alignment holes between the tongues.
func (d *divider) fitHole(p *seamPlan, f frame) bool {
	ends := append([]float64{p.low - p.head/2}, p.tongues...)
	ends = append(ends, p.high+p.head/2)
	half := d.joint.hole()/2 + jointWall
	side := JointHoles/2 + half
	found, least := false, 0
	for i := 1; i < len(ends); i++ {
		for _, part := range []float64{0.5, 0.4, 0.6, 0.3, 0.7} {
			y := ends[i-1] + part*(ends[i]-ends[i-1])
			q := boxQuad(p.s-side, y-half, p.s+side, y+half)
			if near := min(y-ends[i-1], ends[i]-y); near < p.head/2+half {
				continue
			}
			hits := touched(q, f.texts)
			if found && hits >= least || !f.room.Whole(q, q.Bounds()) {
				continue
			}
			found, least, p.hole = true, hits, y
		}
	}
	p.cost += 3 * float64(least)
	return found
}

// touched counts the texts that q overlaps.
func touched(q label.Quad, texts []label.Taken) int {
	n := 0
	box := q.Bounds()
	for _, t := range texts {
		if t.Box.Overlaps(box) && t.Quad.Overlaps(q) {
			n++
		}
	}
	return n
}

func boxQuad(x0, y0, x1, y1 float64) label.Quad {
	return label.Quad(geom.Box{Min: geom.Pt(x0, y0), Max: geom.Pt(x1, y1)}.Ring())
}

// cut divides a region at a seam into the side with the tongues, at smaller x, and
// the side with the sockets, and drills the alignment holes.
func (d *divider) cut(r region, p seamPlan) (tongue, socket region) {
	tongue.ring = append(walk(r.ring, p.to, p.from), d.joint.chain(p, 0)...).Deduped(1e-9)
	back := d.joint.chain(p, d.joint.Clearance).Reversed()
	socket.ring = append(walk(r.ring, p.from, p.to), back...).Deduped(1e-9)
	for _, h := range r.holes {
		if tongue.ring.Contains(h[0]) {
			tongue.holes = append(tongue.holes, h)
		} else {
			socket.holes = append(socket.holes, h)
		}
	}
	a, b := p.holes()
	tongue.holes = append(tongue.holes, circle(a, d.joint.hole()))
	socket.holes = append(socket.holes, circle(b, d.joint.hole()))
	return tongue, socket
}

// holes returns the centres of a seam's alignment holes.
func (p seamPlan) holes() (a, b geom.Point) {
	return geom.Pt(p.s-JointHoles/2, p.hole), geom.Pt(p.s+JointHoles/2, p.hole)
}

// walk returns the vertices of the ring after edge from up to edge to.
func walk(ring geom.Ring, from, to int) geom.Ring {
	var out geom.Ring
	n := len(ring)
	for i := (from + 1) % n; ; i = (i + 1) % n {
		out = append(out, ring[i])
		if i == to {
			return out
		}
	}
}
