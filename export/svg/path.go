package svg

import (
	"math"
	"strconv"
	"strings"

	"slingloft/export"
	"slingloft/outline/geom"
)

// maxCoordinate bounds every number that is read, in user units: beyond it no
// sheet reaches and the arithmetic here would lose its meaning.
const maxCoordinate = 1e9

// scanner reads the number lists of SVG.
type scanner struct {
	text string
	pos  int
}

func (s *scanner) skip() {
	for s.pos < len(s.text) && strings.IndexByte(" ,\t\r\n\f", s.text[s.pos]) >= 0 {
		s.pos++
	}
}

func (s *scanner) atEnd() bool {
	s.skip()
	return s.pos >= len(s.text)
}

// number reads one number, which may touch the next as in "1.5.5-2".
func (s *scanner) number() (float64, error) {
	s.skip()
	start := s.pos
	dot, exp := false, false
scan:
	for ; s.pos < len(s.text); s.pos++ {
		c := s.text[s.pos]
		switch {
		case c >= '0' && c <= '9':
		case c == '.' && !dot && !exp:
			dot = true
		case (c == 'e' || c == 'E') && !exp && s.pos > start:
			exp = true
		case (c == '+' || c == '-') && (s.pos == start || s.text[s.pos-1]|0x20 == 'e'):
		default:
			break scan
		}
	}
	v, err := strconv.ParseFloat(s.text[start:s.pos], 64)
	if err != nil || math.IsNaN(v) || math.Abs(v) > maxCoordinate {
		return 0, export.Refuse(export.NumberAt, s.text[start:min(len(s.text), s.pos+1)], start+1)
	}
	return v, nil
}

// flag reads the single digit of an arc flag.
func (s *scanner) flag() (bool, error) {
	s.skip()
	if s.pos < len(s.text) && (s.text[s.pos] == '0' || s.text[s.pos] == '1') {
		s.pos++
		return s.text[s.pos-1] == '1', nil
	}
	return false, export.Refuse(export.ArcFlagAt, s.pos+1)
}

// subpath is one stretch of a path in user units.
type subpath struct {
	points geom.Polyline
	closed bool
}

// pathReader follows path data, SVG 1.1 section 8.3.
type pathReader struct {
	scanner
	tolerance float64 // largest distance of a chord from its curve, user units
	budget    int     // points that may still be made
	out       []subpath
	at, start geom.Point
	control   geom.Point // last control point, for S and T
	before    byte       // command before, in capitals
}

// parsePath reads path data into polylines whose chords are within tolerance of
// the curves.
func parsePath(data string, tolerance float64, budget int) ([]subpath, error) {
	r := pathReader{scanner: scanner{text: data}, tolerance: tolerance, budget: budget}
	var cmd byte
	for !r.atEnd() {
		c := r.text[r.pos]
		switch {
		case strings.IndexByte("MmLlHhVvCcSsQqTtAaZz", c) >= 0:
			cmd = c
			r.pos++
		case cmd == 0 || cmd|0x20 == 'z':
			return nil, export.Refuse(export.CommandAt, c, r.pos+1)
		}
		if r.before == 0 && cmd|0x20 != 'm' {
			return nil, export.Refuse(export.PathNoMove)
		}
		if err := r.step(cmd); err != nil {
			return nil, err
		}
		if r.budget < 0 {
			return nil, export.Refuse(export.TooManyOnPath)
		}
		r.before = cmd &^ 0x20
		if cmd == 'M' {
			cmd = 'L' // pairs after the first are lines
		} else if cmd == 'm' {
			cmd = 'l'
		}
	}
	return r.out, nil
}

// argCounts is how many numbers each command takes; arcs are read on their own.
var argCounts = [...]int{'M': 2, 'L': 2, 'H': 1, 'V': 1, 'C': 6, 'S': 4, 'Q': 4, 'T': 2, 'Z': 0}

// step carries out one command.
func (r *pathReader) step(cmd byte) error {
	upper, relative := cmd&^0x20, cmd&0x20 != 0
	if upper == 'A' {
		return r.arc(relative)
	}
	var v [6]float64
	for i := range argCounts[upper] {
		var err error
		if v[i], err = r.number(); err != nil {
			return err
		}
	}
	pt := func(i int) geom.Point {
		p := geom.Pt(v[i], v[i+1])
		if relative {
			p = p.Plus(r.at)
		}
		return p
	}
	switch upper {
	case 'M':
		r.at = pt(0)
		r.start = r.at
		r.out = append(r.out, subpath{points: geom.Polyline{r.at}})
		r.budget--
	case 'L':
		r.lineTo(pt(0))
	case 'H':
		r.lineTo(geom.Pt(axis(v[0], r.at.X, relative), r.at.Y))
	case 'V':
		r.lineTo(geom.Pt(r.at.X, axis(v[0], r.at.Y, relative)))
	case 'C':
		r.cubic(pt(0), pt(2), pt(4))
	case 'S':
		r.cubic(r.mirrored("CS"), pt(0), pt(2))
	case 'Q':
		r.quadratic(pt(0), pt(2))
	case 'T':
		r.quadratic(r.mirrored("QT"), pt(0))
	case 'Z':
		if n := len(r.out); n > 0 {
			r.out[n-1].closed = true
		}
		r.at = r.start
	}
	return nil
}

func axis(v, at float64, relative bool) float64 {
	if relative {
		return at + v
	}
	return v
}

// mirrored returns the control point for a smooth continuation.
func (r *pathReader) mirrored(after string) geom.Point {
	if strings.IndexByte(after, r.before) < 0 {
		return r.at
	}
	return r.at.Times(2).Minus(r.control)
}

// lineTo adds a point; a line after Z begins a new subpath at the old start.
func (r *pathReader) lineTo(p geom.Point) {
	n := len(r.out)
	if r.out[n-1].closed {
		r.out = append(r.out, subpath{points: geom.Polyline{r.at}})
		n++
		r.budget--
	}
	r.out[n-1].points = append(r.out[n-1].points, p)
	r.at = p
	r.budget--
}

// maxChords bounds the chords of one curve.
const maxChords = 2000

func (r *pathReader) cubic(c1, c2, p geom.Point) {
	a := r.at
	// |B''| ≤ 6 max |second differences|; a chord over a step h is off by at most
	// h²/8 of that.
	bend := math.Max(a.Minus(c1.Times(2)).Plus(c2).Len(), c1.Minus(c2.Times(2)).Plus(p).Len())
	n := chords(math.Sqrt(6 * bend / (8 * r.tolerance)))
	for i := 1; i < n; i++ {
		t := float64(i) / float64(n)
		u := 1 - t
		r.lineTo(a.Times(u * u * u).Plus(c1.Times(3 * u * u * t)).Plus(c2.Times(3 * u * t * t)).Plus(p.Times(t * t * t)))
	}
	r.lineTo(p)
	r.control = c2
}

func (r *pathReader) quadratic(c, p geom.Point) {
	a := r.at
	n := chords(math.Sqrt(2 * a.Minus(c.Times(2)).Plus(p).Len() / (8 * r.tolerance)))
	for i := 1; i < n; i++ {
		t := float64(i) / float64(n)
		u := 1 - t
		r.lineTo(a.Times(u * u).Plus(c.Times(2 * u * t)).Plus(p.Times(t * t)))
	}
	r.lineTo(p)
	r.control = c
}

// chords rounds a wished number of chords up, within bounds; NaN gives the most.
func chords(n float64) int {
	if n < maxChords {
		return max(1, int(math.Ceil(n)))
	}
	return maxChords
}

// arc reads and follows an elliptical arc, SVG 1.1 appendix F.6.5 and F.6.6.
func (r *pathReader) arc(relative bool) error {
	var v [7]float64
	var flags [2]bool
	for i := range v {
		var err error
		if i == 3 || i == 4 {
			flags[i-3], err = r.flag()
		} else {
			v[i], err = r.number()
		}
		if err != nil {
			return err
		}
	}
	p := geom.Pt(v[5], v[6])
	if relative {
		p = p.Plus(r.at)
	}
	rx, ry, phi := math.Abs(v[0]), math.Abs(v[1]), v[2]*math.Pi/180
	if rx == 0 || ry == 0 || p == r.at {
		r.lineTo(p)
		return nil
	}
	half := r.at.Minus(p).Times(0.5).Turned(-phi)
	if over := math.Hypot(half.X/rx, half.Y/ry); over > 1 {
		rx, ry = rx*over, ry*over
	}
	q := geom.Pt(half.X/rx, half.Y/ry) // start on the unit circle's chord
	k := math.Sqrt(math.Max(0, 1/q.Dot(q)-1))
	if flags[0] == flags[1] {
		k = -k
	}
	centre := geom.Pt(q.Y, -q.X).Times(k) // on the unit circle's plane
	from, to := q.Minus(centre).Angle(), q.Times(-1).Minus(centre).Angle()
	turn := to - from
	if flags[1] && turn < 0 {
		turn += 2 * math.Pi
	} else if !flags[1] && turn > 0 {
		turn -= 2 * math.Pi
	}
	oval := geom.Translation(r.at.Towards(p, 0.5)).After(geom.Rotation(phi)).After(geom.Scaling(rx, ry))
	pts := geom.ArcPoints(centre, q.Minus(centre), turn, r.tolerance/math.Max(rx, ry))
	for _, e := range pts[1 : len(pts)-1] {
		r.lineTo(oval.Apply(e))
	}
	r.lineTo(p)
	return nil
}
