package label

import (
	"iter"
	"math"

	"slingloft/outline/geom"
	"slingloft/outline/piece"
)

// Room keeps account of where on a piece lettering may still go: inside the
// outline, off the holes, the marks and the other texts.
type Room struct {
	Ring  geom.Ring
	holes []geom.Ring
	walls []wall
	taken []Taken
}

// wall is a stretch that no text may cross.
type wall struct {
	a, b geom.Point
	box  geom.Box
}

// Taken is the room of a text with its box.
type Taken struct {
	Quad Quad
	Box  geom.Box
}

// NewRoom returns the room on a piece, with its lines and labels in the way.
func NewRoom(p *piece.Piece) *Room {
	r := &Room{Ring: p.Cut, holes: p.Holes}
	r.Block(p.Cut.Closed())
	for _, h := range p.Holes {
		r.Block(h.Closed())
	}
	for _, l := range p.Lines {
		r.blockLine(l)
	}
	for _, l := range p.Labels {
		r.Take(l)
	}
	return r
}

func (r *Room) blockLine(l piece.Line) {
	if l.Closed {
		r.Block(geom.Ring(l.Points).Closed())
	} else {
		r.Block(l.Points)
	}
}

// Block keeps texts off a line.
func (r *Room) Block(l geom.Polyline) {
	for i := 1; i < len(l); i++ {
		r.walls = append(r.walls, wall{l[i-1], l[i], geom.BoxOf(l[i-1], l[i])})
	}
}

// Take keeps other texts off a label.
func (r *Room) Take(l piece.Label) {
	q := QuadOf(l)
	r.taken = append(r.taken, Taken{q, q.Bounds()})
}

// free reports whether q lies on the material and off everything else.
func (r *Room) free(q Quad) bool {
	box := q.Bounds()
	for _, t := range r.taken {
		if t.Box.Overlaps(box) && t.Quad.Overlaps(q) {
			return false
		}
	}
	return r.Whole(q, box)
}

// Whole reports whether q lies on the material and no wall runs through it. A
// quad that no wall enters lies on one side of the outline with all its corners.
func (r *Room) Whole(q Quad, box geom.Box) bool {
	for i := range r.walls {
		w := &r.walls[i]
		if w.box.Min.X <= box.Max.X && box.Min.X <= w.box.Max.X &&
			w.box.Min.Y <= box.Max.Y && box.Min.Y <= w.box.Max.Y && q.meets(w.a, w.b) {
			return false
		}
	}
	return geom.OnMaterial(q[0].Towards(q[2], 0.5), r.Ring, r.holes)
}

// Try adds a label to labels if it has room, and reports whether it has.
func (r *Room) Try(l piece.Label, labels *[]piece.Label) bool {
	if !r.free(QuadOf(l)) {
		return false
	}
	r.Put(l, labels)
	return true
}

// Put adds a label to labels.
func (r *Room) Put(l piece.Label, labels *[]piece.Label) {
	r.Take(l)
	*labels = append(*labels, l)
}

// Nearest returns the label at the place with room for it that is nearest to its
// own and not farther than far mm along either axis, a quarter turned from its own direction only
// where none is found in that, and reports whether there is any.
func (r *Room) Nearest(l piece.Label, far float64) (piece.Label, bool) {
	l.Anchor = piece.Centre
	for _, turn := range [2]float64{l.Turn, piece.Readable(l.Turn + math.Pi/2)} {
		for at := range r.around(l.At, l.Height/2, far) {
			m := l
			m.At, m.Turn = at, turn
			if r.free(QuadOf(m)) {
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
func (r *Room) around(p geom.Point, pitch, far float64) iter.Seq[geom.Point] {
	box := r.Ring.Bounds()
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

// Row is one line of a block of text, size times as high as the block's lettering.
type Row struct {
	Text string
	Size float64
	Role piece.LabelRole
}

// Rows returns lines of a block that are all of its height.
func Rows(lines ...string) []Row {
	out := make([]Row, len(lines))
	for i, l := range lines {
		out[i] = Row{Text: l, Size: 1}
	}
	return out
}

// LetterBlock letters lines of text one under the other near the place, as large
// as there is room down to a least height, and reports whether there is any.
func (r *Room) LetterBlock(lines []Row, at geom.Point, height, least float64, labels *[]piece.Label) bool {
	box := r.Ring.Bounds()
	turns := [2]float64{0, math.Pi / 2}
	if box.Height() > box.Width() {
		turns = [2]float64{math.Pi / 2, 0}
	}
	for _, h := range Sizes(height) {
		if h < least {
			break
		}
		for _, turn := range turns {
			if r.letterAt(lines, piece.Label{At: at, Height: h, Turn: turn, Anchor: piece.Centre}, labels) {
				return true
			}
		}
	}
	return false
}

// letterAt looks for room for a block of lines in one size and direction.
func (r *Room) letterAt(lines []Row, l piece.Label, labels *[]piece.Label) bool {
	const lead = 1.7 // from line to line, in heights of the larger
	block := make([]piece.Label, len(lines))
	tall, widest := 0.0, 0
	for i, line := range lines {
		block[i] = l
		block[i].Text, block[i].Role, block[i].Height = line.Text, line.Role, l.Height*line.Size
		if i > 0 {
			tall += lead * max(block[i-1].Height, block[i].Height)
		}
		block[i].At = geom.Pt(0, -tall).Turned(l.Turn)
		if Width(line.Text, block[i].Height) > Width(lines[widest].Text, block[widest].Height) {
			widest = i
		}
	}
	half := geom.Pt(0, tall/2).Turned(l.Turn)
	for at := range r.around(l.At, 1.5*l.Height, math.Inf(1)) {
		top := block[widest]
		top.At = at.Plus(half)
		bottom := top
		bottom.At = at.Minus(half)
		a, b := QuadOf(bottom), QuadOf(top)
		if !r.free(Quad{a[0], a[1], b[2], b[3]}) {
			continue
		}
		for _, line := range block {
			line.At = at.Plus(half).Plus(line.At)
			r.Put(line, labels)
		}
		return true
	}
	return false
}
