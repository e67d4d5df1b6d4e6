package svg

import (
	"fmt"
	"math"
	"strings"

	"slingloft/outline/geom"
)

// matrix is the affine map of SVG 1.1 section 7.4: x' = ax + cy + e, y' = bx + dy + f.
type matrix struct{ a, b, c, d, e, f float64 }

var identity = matrix{a: 1, d: 1}

func (m matrix) apply(p geom.Point) geom.Point {
	return geom.Pt(float64(m.a*p.X)+float64(m.c*p.Y)+m.e, float64(m.b*p.X)+float64(m.d*p.Y)+m.f)
}

// times returns the map that does n first and then m.
func (m matrix) times(n matrix) matrix {
	return matrix{
		float64(m.a*n.a) + float64(m.c*n.b), float64(m.b*n.a) + float64(m.d*n.b),
		float64(m.a*n.c) + float64(m.c*n.d), float64(m.b*n.c) + float64(m.d*n.d),
		float64(m.a*n.e) + float64(m.c*n.f) + m.e, float64(m.b*n.e) + float64(m.d*n.f) + m.f,
	}
}

// stretch returns the largest factor by which m lengthens a line, roughly.
func (m matrix) stretch() float64 {
	return math.Max(math.Hypot(m.a, m.b), math.Hypot(m.c, m.d))
}

// parseTransform reads a transform attribute.
func parseTransform(text string) (matrix, error) {
	m := identity
	for rest := strings.TrimSpace(text); rest != ""; {
		name, after, ok := strings.Cut(rest, "(")
		args, tail, closed := strings.Cut(after, ")")
		if !ok || !closed {
			return m, fmt.Errorf("transform %.40q", text)
		}
		n, err := oneTransform(strings.TrimSpace(name), args)
		if err != nil {
			return m, err
		}
		m = m.times(n)
		rest = strings.TrimLeft(tail, ", \t\r\n")
	}
	return m, nil
}

func oneTransform(name, args string) (matrix, error) {
	v, err := numbers(args, 6)
	if err != nil {
		return matrix{}, fmt.Errorf("transform %.20s: %w", name, err)
	}
	arg := func(i int, missing float64) float64 {
		if i < len(v) {
			return v[i]
		}
		return missing
	}
	switch {
	case name == "matrix" && len(v) == 6:
		return matrix{v[0], v[1], v[2], v[3], v[4], v[5]}, nil
	case name == "translate" && (len(v) == 1 || len(v) == 2):
		return matrix{1, 0, 0, 1, v[0], arg(1, 0)}, nil
	case name == "scale" && (len(v) == 1 || len(v) == 2):
		return matrix{v[0], 0, 0, arg(1, v[0]), 0, 0}, nil
	case name == "rotate" && (len(v) == 1 || len(v) == 3):
		s, c := math.Sincos(v[0] * math.Pi / 180)
		x, y := arg(1, 0), arg(2, 0)
		return matrix{c, s, -s, c, x - float64(c*x) + float64(s*y), y - float64(s*x) - float64(c*y)}, nil
	case name == "skewX" && len(v) == 1:
		return matrix{1, 0, math.Tan(v[0] * math.Pi / 180), 1, 0, 0}, nil
	case name == "skewY" && len(v) == 1:
		return matrix{1, math.Tan(v[0] * math.Pi / 180), 0, 1, 0, 0}, nil
	}
	return matrix{}, fmt.Errorf("transform %.20q with %d numbers", name, len(v))
}

// numbers reads at most limit numbers parted by commas or white space.
func numbers(text string, limit int) ([]float64, error) {
	s := scanner{text: text}
	var out []float64
	for !s.atEnd() {
		v, err := s.number()
		if err != nil {
			return nil, err
		}
		if len(out) == limit {
			return nil, fmt.Errorf("more than %d numbers", limit)
		}
		out = append(out, v)
	}
	return out, nil
}
