package divide

import (
	"fmt"
	"math"
	"slices"

	"slingloft/outline/design"
	"slingloft/outline/geom"
	"slingloft/outline/label"
	"slingloft/outline/piece"
	"slingloft/outline/words"
)

// share gives every part its lines and texts and moves it to its own coordinates.
func (d *divider) share(p piece.Piece, w words.Boards) ([]Part, error) {
	height := 3.5 // a nominal size of ISO 3098, where the piece carries no text
	if len(p.Labels) > 0 {
		height = p.Labels[0].Height
	}
	parts := make([]piece.Piece, len(d.done))
	rooms := make([]*label.Room, len(d.done))
	joints := d.alignment()
	lines := append(slices.Clone(p.Lines), joints...)
	for i, r := range d.done {
		part := p
		part.ID = fmt.Sprintf("%s-%dof%d", p.ID, i+1, len(d.done))
		part.Title = w.PartTitle(p.Title, i+1, len(d.done))
		part.Cut, part.Holes = r.ring, r.holes
		part.Lines, part.Labels = shareLines(lines, r), nil
		rooms[i] = label.NewRoom(&part)
		parts[i] = part
	}
	astride := keepLabels(p, parts, rooms, joints)
	d.letterJoints(parts, rooms, height)
	for i := range parts {
		if err := letterPart(&parts[i], rooms[i], fmt.Sprintf(w.PartNumber, i+1, len(parts)), height); err != nil {
			return nil, err
		}
	}
	for _, l := range astride {
		if err := moveLabel(l, parts, rooms); err != nil {
			return nil, design.Of(p.ID, err)
		}
	}
	out := make([]Part, len(parts))
	for i, part := range parts {
		corner := part.Cut.Bounds().Min
		out[i] = Part{part.Moved(geom.Motion{Shift: corner.Times(-1)}), geom.Motion{Shift: corner}}
	}
	return out, nil
}

// alignment returns the lines between the alignment holes of every joint.
func (d *divider) alignment() []piece.Line {
	var out []piece.Line
	for _, j := range d.places {
		along := j.b.Minus(j.a).Unit().Times(d.joint.hole() / 2)
		out = append(out, piece.Line{Name: "joint " + j.name, Work: piece.Mark, Points: geom.Polyline{j.a.Plus(along), j.b.Minus(along)}})
	}
	return out
}

// shareLines returns what of the lines lies on a region.
func shareLines(lines []piece.Line, r region) []piece.Line {
	const stub = 0.2 // mm: shorter remains are dropped
	var out []piece.Line
	for _, l := range lines {
		pts := l.Points
		if l.Closed {
			pts = geom.Ring(pts).Closed()
		}
		for _, part := range pts.Clipped(r.ring, r.holes) {
			if part.Length() < stub {
				continue
			}
			m := l
			m.Points = part
			if m.Closed = l.Closed && part[0] == part[len(part)-1]; m.Closed {
				m.Points = part[:len(part)-1]
			}
			out = append(out, m)
		}
	}
	return out
}

// keepLabels gives every text that lies on one part, off the joints' lines, to it
// and returns the rest.
// The title goes; every part has its own.
func keepLabels(p piece.Piece, parts []piece.Piece, rooms []*label.Room, joints []piece.Line) (astride []piece.Label) {
	edges := make([]*label.Room, len(parts))
	for i := range parts {
		edges[i] = label.NewRoom(&piece.Piece{Cut: parts[i].Cut, Holes: parts[i].Holes, Lines: joints})
	}
next:
	for _, l := range p.Labels {
		if l.Role == piece.TitleLabel {
			continue
		}
		q := label.QuadOf(l)
		for i := range parts {
			if edges[i].Whole(q, q.Bounds()) {
				rooms[i].Take(l)
				parts[i].Labels = append(parts[i].Labels, l)
				continue next
			}
		}
		astride = append(astride, l)
	}
	return astride
}

// letterJoints letters every joint's name beside both of its holes.
func (d *divider) letterJoints(parts []piece.Piece, rooms []*label.Room, height float64) {
	for _, j := range d.places {
		for _, at := range [2]geom.Point{j.a, j.b} {
			for i, r := range rooms {
				if !parts[i].Cut.Contains(at) {
					continue
				}
				for _, h := range label.Sizes(height) {
					l := piece.Label{Text: j.name, At: at, Height: h}
					if l, ok := r.Nearest(l, jointTextNear*h); ok {
						r.Put(l, &parts[i].Labels)
						break
					}
				}
			}
		}
	}
}

// How far in heights a text may stand from its place: a joint's name, and a text
// that has to make way for a joint. Farther off it would be read as another's.
const (
	jointTextNear = 8.0
	figureNear    = 2.5
)

// letterPart letters a part's title, or at least its number.
func letterPart(p *piece.Piece, r *label.Room, number string, height float64) error {
	middle := p.Cut.Bounds().Center()
	for _, text := range []string{p.Title, number} {
		if r.LetterBlock(label.Rows(text), middle, height*1.4, label.Smallest, &p.Labels) {
			return nil
		}
	}
	return design.Of(p.ID, design.Broken(design.NumberUnlettered))
}

// moveLabel finds the nearest place for a text that lies astride a joint. A figure
// that would come to stand too far off is left out, as its neighbours tell what it
// is; words stand anywhere rather than not at all.
func moveLabel(l piece.Label, parts []piece.Piece, rooms []*label.Room) error {
	l.At, l.Anchor = labelMiddle(l), piece.Centre
	far := math.Inf(1)
	if l.Role == piece.FigureLabel {
		far = figureNear * l.Height
	}
	for _, h := range label.Sizes(l.Height) {
		l.Height = h
		best, on := piece.Label{}, -1
		for i, r := range rooms {
			m, ok := r.Nearest(l, far)
			if ok && (on < 0 || m.At.Dist(l.At) < best.At.Dist(l.At)) {
				best, on = m, i
			}
		}
		if on >= 0 {
			rooms[on].Put(best, &parts[on].Labels)
			return nil
		}
	}
	if l.Role == piece.FigureLabel {
		return nil
	}
	return &design.Breach{Found: design.Found(design.PartsUnlettered, l.Text)}
}

// labelMiddle returns the middle of a label's text.
func labelMiddle(l piece.Label) geom.Point {
	half := geom.Pt(label.Width(l.Text, l.Height)/2, l.Height/2).Turned(l.Turn)
	along := geom.Pt(label.Width(l.Text, l.Height), 0).Turned(l.Turn)
	switch l.Anchor {
	case piece.Start:
		return l.At.Plus(half)
	case piece.End:
		return l.At.Plus(half).Minus(along)
	}
	return l.At
}
