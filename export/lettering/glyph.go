package lettering

import (
	"fmt"
	"math"
	"strconv"
	"strings"
	"sync"

	"slingloft/outline/geom"
)

// Drawings are text: strokes parted by ";", points "x,y" parted by spaces, in
// tenths of the capital height, the base line at y = 0 and the left edge of the
// ink at x = 0. A point marked "*" is not passed through: it is the corner that
// a quarter ellipse from the point before to the point after cuts off, tangent
// to both legs.
//
//	0,5 *0,10 5,10      (5,10) ___
//	                         ,'
//	                        /        corner at (0,10)
//	                       |
//	                      (0,5)

// unit is the number of drawing units in the height of a capital.
const unit = 10

// quarterSteps is the number of chords in a quarter ellipse. The sagitta of one
// is r(1 − cos(π/16)) = 0.019 r, 0.02 mm for a capital of 3.5 mm.
const quarterSteps = 4

// glyph is one drawn sign in drawing units.
type glyph struct {
	strokes []geom.Polyline
	width   float64 // of the ink, from x = 0
}

// parse reads a drawing.
func parse(drawing string) (glyph, error) {
	var g glyph
	for _, part := range strings.Split(drawing, ";") {
		s, err := parseStroke(part)
		if err != nil {
			return glyph{}, err
		}
		if len(s) == 0 {
			continue
		}
		g.strokes = append(g.strokes, s)
		g.width = math.Max(g.width, s.Bounds().Max.X)
	}
	return g, nil
}

func parseStroke(text string) (geom.Polyline, error) {
	var out geom.Polyline
	var corner *geom.Point
	for _, word := range strings.Fields(text) {
		bare, isCorner := strings.CutPrefix(word, "*")
		p, err := parsePoint(bare)
		if err != nil {
			return nil, err
		}
		switch {
		case isCorner && (corner != nil || len(out) == 0):
			return nil, fmt.Errorf("corner %s has no point before it", word)
		case isCorner:
			corner = &p
		case corner != nil:
			out = append(out, quarter(out[len(out)-1], *corner, p)...)
			corner = nil
		default:
			out = append(out, p)
		}
	}
	if corner != nil {
		return nil, fmt.Errorf("corner at the end of %q", text)
	}
	return out, nil
}

func parsePoint(word string) (geom.Point, error) {
	xs, ys, _ := strings.Cut(word, ",")
	x, errX := strconv.ParseFloat(xs, 64)
	y, errY := strconv.ParseFloat(ys, 64)
	if errX != nil || errY != nil {
		return geom.Point{}, fmt.Errorf("point %q", word)
	}
	return geom.Pt(x, y), nil
}

// quarter returns the quarter ellipse from a to b that is tangent to a–corner
// and corner–b, without a itself.
func quarter(a, corner, b geom.Point) geom.Polyline {
	centre := a.Plus(b).Minus(corner)
	out := make(geom.Polyline, 0, quarterSteps)
	for i := 1; i < quarterSteps; i++ {
		s, c := math.Sincos(float64(i) * math.Pi / 2 / quarterSteps)
		p := centre.Plus(a.Minus(centre).Times(c)).Plus(b.Minus(centre).Times(s))
		out = append(out, p)
	}
	return append(out, b)
}

// glyphs holds every drawing, parsed once and never changed.
var glyphs = sync.OnceValue(func() map[rune]glyph {
	out := map[rune]glyph{}
	for _, set := range []map[rune]string{asciiDrawings(), latinDrawings(), signDrawings(), markDrawings()} {
		for r, drawing := range set {
			g, err := parse(drawing)
			if err != nil {
				panic("lettering: drawing of " + string(r) + ": " + err.Error())
			}
			out[r] = g
		}
	}
	return out
})
