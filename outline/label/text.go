// Package label finds room for lettering on a piece: how much a text needs and where
// it may stand, off the outline, the marks and other texts.
package label

import (
	"fmt"
	"strings"

	"slingloft/outline/geom"
	"slingloft/outline/piece"
)

// Room that lettering needs, in heights of a capital. Our letters are 0.5 to 0.9
// wide with a gap of 0.2 (ISO 3098, type B proportions); the builders of outlines
// reckon with a little more, so that any plain single-stroke alphabet fits.
const (
	wideSign   = 1.15 // M, W and signs as wide
	capital    = 0.9
	plainSign  = 0.78 // digits and small letters
	narrowSign = 0.45 // space, stop, comma
	UnderLine  = 0.35 // tails of g and comma under the base line
	overLine   = 0.3  // accents over capitals
	Gap        = 0.25 // kept free around a text
)

// Smallest is the least height of lettering in mm: the smallest nominal
// size of ISO 3098. largest is its largest.
const (
	Smallest = 1.8
	largest  = 20.0
)

// Sizes lists the heights, from the asked one down, at which a text may be
// set where there is little room: nominal sizes of ISO 3098.
func Sizes(asked float64) []float64 {
	out := []float64{asked}
	for _, h := range []float64{14, 10, 7, 5, 3.5, 2.5, Smallest} {
		if h < asked {
			out = append(out, h)
		}
	}
	return out
}

// Check refuses a height of lettering that cannot be read or drawn.
func Check(mm float64) error {
	if !(mm >= Smallest && mm <= largest) {
		return fmt.Errorf("lettering of %g mm: it takes %g to %g mm", mm, Smallest, largest)
	}
	return nil
}

// Width returns the length to keep free for text, capitals height mm tall.
func Width(text string, height float64) float64 {
	sum := 0.0
	for _, r := range text {
		switch {
		case r == ' ' || r == '.' || r == ',' || r == '·':
			sum += narrowSign
		case r == 'M' || r == 'W' || r == 'm' || r == 'w' || r == '—' || r == '…' || r == '⌀':
			sum += wideSign
		case r == '/' || r == '-' || (r >= '0' && r <= '9') || (r >= 'a' && r <= 'z'):
			sum += plainSign
		case r <= 'Z':
			sum += capital
		default:
			sum += wideSign
		}
	}
	return sum * height
}

// Wrapped breaks text at its spaces into lines that need no more than width mm where
// no single word needs more, capitals height mm tall.
func Wrapped(text string, height, width float64) []string {
	var lines []string
	for _, word := range strings.Fields(text) {
		if n := len(lines); n > 0 && Width(lines[n-1]+" "+word, height) <= width {
			lines[n-1] += " " + word
		} else {
			lines = append(lines, word)
		}
	}
	return lines
}

// Quad is a convex four-sided shape, counter-clockwise: the room of a text.
type Quad [4]geom.Point

// QuadOf returns the room that a label needs, a gap around it included.
func QuadOf(l piece.Label) Quad { return roomOf(l, Gap) }

// InkOf returns the room that a label's letters take, without a gap: lines of one text
// stand closer than other things may.
func InkOf(l piece.Label) Quad { return roomOf(l, 0) }

// roomOf returns the room of a label with a gap around it, in heights of a capital.
func roomOf(l piece.Label, gap float64) Quad {
	w, h := Width(l.Text, l.Height), l.Height
	box := geom.Box{Max: geom.Pt(w, h)}
	switch l.Anchor {
	case piece.Centre:
		box = geom.Box{Min: geom.Pt(-w/2, -h/2), Max: geom.Pt(w/2, h/2)}
	case piece.End:
		box = geom.Box{Min: geom.Pt(-w, 0), Max: geom.Pt(0, h)}
	}
	under, over := gap, gap
	for _, r := range l.Text {
		if r == ',' || r == ';' || r == '(' || r == ')' || (r >= 'a' && r <= 'z') || r > 0x7e {
			under = UnderLine + gap
		}
		if r > 0x7e {
			over = overLine + gap
		}
	}
	box.Min = box.Min.Minus(geom.Pt(gap*h, under*h))
	box.Max = box.Max.Plus(geom.Pt(gap*h, over*h))
	var q Quad
	for i, p := range box.Ring() {
		q[i] = p.Turned(l.Turn).Plus(l.At)
	}
	return q
}

func (q Quad) Bounds() geom.Box { return geom.BoxOf(q[:]...) }

// Overlaps reports whether two quads share an area: whether no side of either
// has all of the other on its outer side.
func (q Quad) Overlaps(o Quad) bool { return !q.parted(o) && !o.parted(q) }

// parted reports whether one side of q has all of o on its outer side.
func (q Quad) parted(o Quad) bool {
	for i, p := range q {
		outer := true
		for _, c := range o {
			outer = outer && geom.Side(p, q[(i+1)%4], c) <= 0
		}
		if outer {
			return true
		}
	}
	return false
}

// meets reports whether the segment from a to b has a point inside q.
func (q Quad) meets(a, b geom.Point) bool {
	in := geom.Interval{Lo: 0, Hi: 1}
	for i, p := range q {
		fa, fb := geom.Side(p, q[(i+1)%4], a), geom.Side(p, q[(i+1)%4], b)
		if fa <= 0 && fb <= 0 {
			return false
		}
		in = in.Where(fb-fa, fa)
	}
	return in.Lo < in.Hi
}
