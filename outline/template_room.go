package outline

import (
	"iter"
	"math"

	"slingloft/outline/geom"
)

// room keeps account of where on a piece lettering may still go: inside the
// outline, off the holes, the marks and the other texts.
type room struct {
	ring  geom.Ring
	holes []geom.Ring
	walls []wall
	taken []takenText
}

// wall is a stretch that no text may cross.
type wall struct {
	a, b geom.Point
	box  geom.Box
}

// takenText is the room of a text with its box.
type takenText struct {
	quad quad
	box  geom.Box
}

// newRoom returns the room on a piece, with its lines and labels in the way.
func newRoom(p *Piece) *room {
	r := &room{ring: p.Cut, holes: p.Holes}
	r.block(p.Cut.Closed())
	for _, h := range p.Holes {
		r.block(h.Closed())
	}
	for _, l := range p.Lines {
		r.blockLine(l)
	}
	for _, l := range p.Labels {
		r.take(l)
	}
	return r
}

func (r *room) blockLine(l Line) {
	if l.Closed {
		r.block(geom.Ring(l.Points).Closed())
	} else {
		r.block(l.Points)
	}
}

// block keeps texts off a line.
func (r *room) block(l geom.Polyline) {
	for i := 1; i < len(l); i++ {
		r.walls = append(r.walls, wall{l[i-1], l[i], geom.BoxOf(l[i-1], l[i])})
	}
}

// take keeps other texts off a label.
func (r *room) take(l Label) {
	q := labelQuad(l)
	r.taken = append(r.taken, takenText{q, q.bounds()})
}

// inside reports whether p lies on the material.
func (r *room) inside(p geom.Point) bool {
	if !r.ring.Contains(p) {
		return false
	}
	for _, h := range r.holes {
		if h.Contains(p) {
			return false
		}
	}
	return true
}

// free reports whether q lies on the material and off everything else.
func (r *room) free(q quad) bool {
	box := q.bounds()
	for _, t := range r.taken {
		if t.box.Overlaps(box) && t.quad.overlaps(q) {
			return false
		}
	}
	return r.whole(q, box)
}

// whole reports whether q lies on the material and no wall runs through it. A
// quad that no wall enters lies on one side of the outline with all its corners.
func (r *room) whole(q quad, box geom.Box) bool {
	for i := range r.walls {
		w := &r.walls[i]
		if w.box.Min.X <= box.Max.X && box.Min.X <= w.box.Max.X &&
			w.box.Min.Y <= box.Max.Y && box.Min.Y <= w.box.Max.Y && q.meets(w.a, w.b) {
			return false
		}
	}
	return r.inside(q[0].Towards(q[2], 0.5))
}

// try adds a label to labels if it has room, and reports whether it has.
func (r *room) try(l Label, labels *[]Label) bool {
	if !r.free(labelQuad(l)) {
		return false
	}
	r.put(l, labels)
	return true
}

// put adds a label to labels.
func (r *room) put(l Label, labels *[]Label) {
	r.take(l)
	*labels = append(*labels, l)
}

// nearest returns the label at the place with room for it that is nearest to its
// own and not farther than far mm along either axis, a quarter turned from its own direction only
// where none is found in that, and reports whether there is any.
func (r *room) nearest(l Label, far float64) (Label, bool) {
	l.Anchor = Centre
	for _, turn := range [2]float64{l.Turn, readable(l.Turn + math.Pi/2)} {
		for at := range r.around(l.At, l.Height/2, far) {
			m := l
			m.At, m.Turn = at, turn
			if r.free(labelQuad(m)) {
				return m, true
			}
		}
	}
	return l, false
}

// maxPlaces bounds, by its square, the places that a search looks at.
const maxPlaces = 140

// around yields places on the box of the material within far mm of p along each
// axis: p and then the points of a square grid about it, outwards.
func (r *room) around(p geom.Point, pitch, far float64) iter.Seq[geom.Point] {
	box := r.ring.Bounds()
	pitch = max(pitch, math.Sqrt(box.Width()*box.Height())/maxPlaces)
	far = min(far, max(p.X-box.Min.X, box.Max.X-p.X, p.Y-box.Min.Y, box.Max.Y-p.Y))
	return func(yield func(geom.Point) bool) {
		if !yield(p) {
			return
		}
		for k := 1; float64(k)*pitch <= far; k++ {
			for i := -k; i <= k; i++ {
				step := 2 * k // only the rim of the square
				if i == -k || i == k {
					step = 1
				}
				for j := -k; j <= k; j += step {
					at := p.Plus(geom.Pt(float64(j)*pitch, float64(i)*pitch))
					if box.Contains(at) && !yield(at) {
						return
					}
				}
			}
		}
	}
}

// row is one line of a block of text, size times as high as the block's lettering.
type row struct {
	text string
	size float64
}

// rows returns lines of a block that are all of its height.
func rows(lines ...string) []row {
	out := make([]row, len(lines))
	for i, l := range lines {
		out[i] = row{l, 1}
	}
	return out
}

// letterBlock letters lines of text one under the other near the place, as large
// as there is room down to a least height, and reports whether there is any.
func (r *room) letterBlock(lines []row, at geom.Point, height, least float64, labels *[]Label) bool {
	box := r.ring.Bounds()
	turns := [2]float64{0, math.Pi / 2}
	if box.Height() > box.Width() {
		turns = [2]float64{math.Pi / 2, 0}
	}
	for _, h := range letterSizes(height) {
		if h < least {
			break
		}
		for _, turn := range turns {
			if r.letterAt(lines, Label{At: at, Height: h, Turn: turn, Anchor: Centre}, labels) {
				return true
			}
		}
	}
	return false
}

// letterAt looks for room for a block of lines in one size and direction.
func (r *room) letterAt(lines []row, l Label, labels *[]Label) bool {
	const lead = 1.7 // from line to line, in heights of the larger
	block := make([]Label, len(lines))
	tall, widest := 0.0, 0
	for i, line := range lines {
		block[i] = l
		block[i].Text, block[i].Height = line.text, l.Height*line.size
		if i > 0 {
			tall += lead * max(block[i-1].Height, block[i].Height)
		}
		block[i].At = geom.Pt(0, -tall).Turned(l.Turn)
		if textWidth(line.text, block[i].Height) > textWidth(lines[widest].text, block[widest].Height) {
			widest = i
		}
	}
	half := geom.Pt(0, tall/2).Turned(l.Turn)
	for at := range r.around(l.At, 1.5*l.Height, math.Inf(1)) {
		top := block[widest]
		top.At = at.Plus(half)
		bottom := top
		bottom.At = at.Minus(half)
		a, b := labelQuad(bottom), labelQuad(top)
		if !r.free(quad{a[0], a[1], b[2], b[3]}) {
			continue
		}
		for _, line := range block {
			line.At = at.Plus(half).Plus(line.At)
			r.put(line, labels)
		}
		return true
	}
	return false
}
