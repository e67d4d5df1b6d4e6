package readertest

import (
	"fmt"
	"math"
	"slices"
	"strconv"
	"strings"

	"slingloft/outline/geom"
)

// Lean reads a program as a hobby controller does that knows few words, and returns
// what it would refuse or pass over, a line each. Rules and limits are those of the
// public code and notes of one kind of such controllers, version 1.1 of 2021: 79
// characters a line, blanks and comments not counted; bytes that act at once wherever
// they stand; words that are errors; a feed before the first cut; arcs whose radii at
// both ends differ by more than 0.5 mm, or by more than 0.005 mm and 0.1 %.
func Lean(program string) []string {
	c := leanController{scale: 1}
	for n, line := range strings.Split(program, "\n") {
		if err := c.line(strings.TrimSuffix(line, "\r")); err != nil {
			c.faults = append(c.faults, fmt.Sprintf("line %d, %q: %v", n+1, line, err))
		}
	}
	return c.faults
}

type leanController struct {
	faults []string
	at     geom.Point
	motion float64
	scale  float64 // mm in a unit
	feed   float64
}

func (c *leanController) line(text string) error {
	if i := strings.IndexFunc(text, func(r rune) bool { return r >= 0x80 }); i >= 0 || strings.ContainsAny(text, "!?~\x18") {
		return fmt.Errorf("holds a byte that acts at once")
	}
	text, err := withoutComments(text)
	if err != nil {
		return err
	}
	if len(text) > 79 {
		return fmt.Errorf("%d characters", len(text))
	}
	return c.block(text)
}

// withoutComments returns a line without blanks and comments. A parenthesis within a
// comment is no other one there; RS-274 wants none.
func withoutComments(text string) (string, error) {
	var b strings.Builder
	inside := false
	for _, r := range text {
		switch {
		case r == '(' && inside:
			return "", fmt.Errorf("a comment within a comment")
		case r == '(':
			inside = true
		case r == ')':
			inside = false
		case !inside && r != ' ' && r != '\t':
			b.WriteRune(r)
		}
	}
	return strings.ToUpper(b.String()), nil
}

// Words that these controllers take. M1 is taken and does nothing.
var (
	leanG = []float64{0, 1, 2, 3, 4, 10, 17, 18, 19, 20, 21, 28, 28.1, 30, 30.1, 40, 43.1, 49, 53, 54, 55, 56, 57, 58, 59, 61, 80,
		90, 91, 91.1, 92, 92.1, 93, 94}
	leanM = []float64{0, 2, 3, 4, 5, 8, 9, 30}
)

func (c *leanController) block(text string) error {
	to, centre, hasCentre, moves := c.at, c.at, false, false
	for text != "" {
		end := 1
		for end < len(text) && strings.IndexByte("0123456789.-+", text[end]) >= 0 {
			end++
		}
		v, err := strconv.ParseFloat(text[1:end], 64)
		if err != nil || text[0] < 'A' || text[0] > 'Z' {
			return fmt.Errorf("%.10q is no word", text)
		}
		switch letter := text[0]; letter {
		case 'G':
			if !slices.Contains(leanG, v) {
				return fmt.Errorf("G%g is an error", v)
			}
			c.mode(v)
		case 'M':
			if v == 1 {
				return fmt.Errorf("M1 is passed over")
			}
			if !slices.Contains(leanM, v) {
				return fmt.Errorf("M%g is an error", v)
			}
		case 'F':
			c.feed = v
		case 'X':
			to.X, moves = v*c.scale, true
		case 'Y':
			to.Y, moves = v*c.scale, true
		case 'Z':
			moves = true
		case 'I':
			centre.X, hasCentre = c.at.X+v*c.scale, true
		case 'J':
			centre.Y, hasCentre = c.at.Y+v*c.scale, true
		case 'S', 'P', 'N':
		default:
			return fmt.Errorf("%c is no word", letter)
		}
		text = text[end:]
	}
	if !moves {
		return nil
	}
	from := c.at
	c.at = to
	if c.motion > 0 && c.feed <= 0 {
		return fmt.Errorf("a cut without a feed")
	}
	if c.motion < 2 {
		return nil
	}
	if !hasCentre {
		return fmt.Errorf("an arc without a centre")
	}
	return arcHolds(from, to, centre)
}

// mode takes a G word that lasts.
func (c *leanController) mode(v float64) {
	switch {
	case v <= 3:
		c.motion = v
	case v == 20:
		c.scale = 25.4
	case v == 21:
		c.scale = 1
	}
}

// arcHolds compares the radii at both ends of an arc.
func arcHolds(from, to, centre geom.Point) error {
	a, b := from.Dist(centre), to.Dist(centre)
	if off := math.Abs(a - b); off > 0.5 || off > 0.005 && off > 0.001*a {
		return fmt.Errorf("an arc of radius %g mm at one end and %g at the other", a, b)
	}
	return nil
}
