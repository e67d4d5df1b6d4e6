// Package templatetest judges the outlines and lettering of pieces with an
// independent geometry library, and makes random templates, for tests.
package templatetest

import (
	"fmt"
	"math"
	"math/rand/v2"
	"testing"

	"slingloft/outline/piece"
	"slingloft/outline/template"
	"slingloft/outline/words"

	sf "github.com/peterstace/simplefeatures/geom"

	"slingloft/export/lettering"
	"slingloft/outline/geom"
	"slingloft/outline/quantity"
)

// PolygonOf hands an outline to the independent geometry library.
func PolygonOf(ring geom.Ring, holes ...geom.Ring) sf.Polygon {
	var lines []sf.LineString
	for _, r := range append([]geom.Ring{ring}, holes...) {
		var xy []float64
		for _, p := range r.Closed() {
			xy = append(xy, p.X, p.Y)
		}
		lines = append(lines, sf.NewLineString(sf.NewSequence(xy, sf.DimXY)))
	}
	return sf.NewPolygon(lines)
}

// FaultOf returns what is wrong with a piece's outline, as an independent library
// sees it.
func FaultOf(p piece.Piece) error {
	if err := PolygonOf(p.Cut, p.Holes...).Validate(); err != nil {
		return fmt.Errorf("%s: %w", p.ID, err)
	}
	if p.Cut.Area() <= 0 {
		return fmt.Errorf("%s: area %v", p.ID, p.Cut.Area())
	}
	for i, h := range p.Holes {
		if h.Area() <= 0 {
			return fmt.Errorf("%s: hole %d has area %v", p.ID, i, h.Area())
		}
	}
	for _, l := range p.Lines {
		if len(l.Points) < 2 {
			return fmt.Errorf("%s: line %q has %d points", p.ID, l.Name, len(l.Points))
		}
		for i := 1; i < len(l.Points); i++ {
			if mid := l.Points[i-1].Towards(l.Points[i], 0.5); !p.Cut.Contains(mid) {
				return fmt.Errorf("%s: line %q leaves the piece at %v", p.ID, l.Name, mid)
			}
		}
	}
	return nil
}

type stroke struct {
	owner int
	a, b  geom.Point
	box   geom.Box
}

func strokesOf(owner int, l geom.Polyline) (out []stroke) {
	for i := 1; i < len(l); i++ {
		out = append(out, stroke{owner, l[i-1], l[i], geom.BoxOf(l[i-1], l[i])})
	}
	return out
}

func (s stroke) meets(o stroke) bool {
	if !s.box.Expanded(1e-9).Overlaps(o.box.Expanded(1e-9)) {
		return false
	}
	r, q, d := s.b.Minus(s.a), o.b.Minus(o.a), o.a.Minus(s.a)
	den := r.Cross(q)
	if den == 0 {
		return false
	}
	t, u := d.Cross(q)/den, d.Cross(r)/den
	return t >= 0 && t <= 1 && u >= 0 && u <= 1
}

// LetteringFault returns a label whose strokes, as they are drawn, leave the
// piece, meet a line or meet another label's.
func LetteringFault(p piece.Piece) error {
	var walls, ink []stroke
	for _, r := range append([]geom.Ring{p.Cut}, p.Holes...) {
		walls = append(walls, strokesOf(-1, r.Closed())...)
	}
	for _, l := range p.Lines {
		walls = append(walls, strokesOf(-1, l.Points)...)
	}
	for i, l := range p.Labels {
		for _, s := range lettering.Strokes(l) {
			if !p.Cut.Contains(s[0]) {
				return fmt.Errorf("%s: label %q leaves the piece at %v", p.ID, l.Text, s[0])
			}
			ink = append(ink, strokesOf(i, s)...)
		}
	}
	grid := strokeGrid{}
	for _, s := range append(walls, ink...) {
		if o, ok := grid.put(s); ok {
			other := "a line"
			if o.owner >= 0 {
				other = p.Labels[o.owner].Text
			}
			return fmt.Errorf("%s: label %q meets %s at %v", p.ID, p.Labels[s.owner].Text, other, s.a)
		}
	}
	return nil
}

// strokeGrid holds strokes by the cells of a square grid that they touch.
type strokeGrid map[[2]int][]stroke

// put adds a stroke and returns one of another owner that it meets; lines, whose
// owner is negative, may meet each other.
func (g strokeGrid) put(s stroke) (stroke, bool) {
	const cell = 8.0 // mm
	var hit stroke
	found := false
	for i := math.Floor(s.box.Min.X / cell); i <= math.Floor(s.box.Max.X/cell); i++ {
		for j := math.Floor(s.box.Min.Y / cell); j <= math.Floor(s.box.Max.Y/cell); j++ {
			key := [2]int{int(i), int(j)}
			for _, o := range g[key] {
				if o.owner != s.owner && s.owner >= 0 && s.meets(o) {
					hit, found = o, true
				}
			}
			g[key] = append(g[key], s)
		}
	}
	return hit, found
}

func MustBeSound(t *testing.T, p piece.Piece) {
	t.Helper()
	if err := FaultOf(p); err != nil {
		t.Fatal(err)
	}
	if err := LetteringFault(p); err != nil {
		t.Fatal(err)
	}
}

// Parabola returns n chords of a parabola that lies s mm to the right of a chord
// of l mm along x in its middle, leaned by skew.
func Parabola(l, s, skew float64, n int) geom.Polyline {
	var out geom.Polyline
	for i := range n + 1 {
		t := float64(i) / float64(n)
		out = append(out, geom.Pt(l*t, -4*s*t*(1-t)*(1+skew*(t-0.5))))
	}
	return out
}

// Side returns the parabola as the side of a bed whose bars are half wide mm from its
// centre line to their corners.
func Side(l, s, skew float64, n int, half float64) template.SideCurve {
	return template.SideCurve{Line: Parabola(l, s, skew, n).Moved(geom.Motion{Shift: geom.Pt(0, half)})}
}

// Options returns the options of an ordinary template.
func Options() template.Options {
	return template.Options{
		Tick: 25, Backing: 70, Letter: 5, Whole: true,
		Style: quantity.Style{Decimals: 1}, Notes: []string{"DEMO 9f3a"}, Words: words.EnglishLettering().Boards,
	}
}

// RandomOptions returns options within what a design may ask for.
func RandomOptions(r *rand.Rand) template.Options {
	o := Options()
	o.Letter = 2 + 6*r.Float64()
	o.Backing = 25 + 120*r.Float64()
	o.Tick = float64(10 + r.IntN(41))
	o.Whole = r.IntN(2) == 0
	if r.IntN(3) == 0 {
		o.Tick = quantity.Inch
		o.Style = quantity.Style{Inches: true, Fraction: 16}
	}
	return o
}

// RandomSide returns a smooth side curve with notches at its quarters.
func RandomSide(r *rand.Rand) template.SideCurve {
	c := Parabola(600+1400*r.Float64(), -60+360*r.Float64(), 0.8*r.Float64()-0.4, 40+r.IntN(160))
	turn := geom.Motion{Turn: 0.2*r.Float64() - 0.1, Shift: geom.Pt(-700, 750)}
	c = c.Moved(turn)
	long := c.Length()
	return template.SideCurve{Line: c, Notches: []template.Notch{
		{Name: "L1", At: long / 4}, {Name: "L2", At: long / 2, Double: true}, {Name: "L3", At: 3 * long / 4}}}
}

// RandomTail returns half a tail of plausible measures.
func RandomTail(r *rand.Rand) template.TailCurves {
	half, long := 300+350*r.Float64(), 90+200*r.Float64()
	bow, lean, sweep := 12*r.Float64(), 80*r.Float64()-60, 60*r.Float64()
	var t template.TailCurves
	const n = 30
	for i := range n + 1 {
		s := float64(i) / n
		t.Bar = append(t.Bar, geom.Pt(-bow*s*s, half*s))
		t.End = append(t.End, geom.Pt(-long-sweep*s*s, (half+lean)*s))
		t.Side = append(t.Side, geom.Pt(-bow-(long+sweep-bow)*s, half+lean*s+4*math.Sin(math.Pi*s)))
	}
	t.EndNotches = []template.Notch{{Name: "E1", At: t.End.Length() / 2}}
	return t
}

// RandomBand returns the one edge of a curved band that a straight line may cut twice.
func RandomBand(r *rand.Rand) []template.Edge {
	radius, wide := 200+600*r.Float64(), 45+60*r.Float64()
	sweep := 0.6 + 2.4*r.Float64()
	var out, in geom.Polyline
	for i := range 81 {
		dir := geom.Pt(1, 0).Turned(sweep * (float64(i)/80 - 0.5))
		out, in = append(out, dir.Times(radius+wide)), append(in, dir.Times(radius))
	}
	return []template.Edge{{Line: geom.Ring(append(out, in.Reversed()...)).Closed(), Ticks: true}}
}
