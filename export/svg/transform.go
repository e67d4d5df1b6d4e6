package svg

import (
	"fmt"
	"math"
	"strings"

	"slingloft/outline/geom"
)

// parseTransform reads a transform attribute.
func parseTransform(text string) (geom.Affine, error) {
	m := geom.Identity()
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
		m = m.After(n)
		rest = strings.TrimLeft(tail, ", \t\r\n")
	}
	return m, nil
}

func oneTransform(name, args string) (geom.Affine, error) {
	v, err := numbers(args, 6)
	if err != nil {
		return geom.Affine{}, fmt.Errorf("transform %.20s: %w", name, err)
	}
	arg := func(i int, missing float64) float64 {
		if i < len(v) {
			return v[i]
		}
		return missing
	}
	switch {
	case name == "matrix" && len(v) == 6:
		return geom.Affine{A: v[0], B: v[1], C: v[2], D: v[3], E: v[4], F: v[5]}, nil
	case name == "translate" && (len(v) == 1 || len(v) == 2):
		return geom.Translation(geom.Pt(v[0], arg(1, 0))), nil
	case name == "scale" && (len(v) == 1 || len(v) == 2):
		return geom.Scaling(v[0], arg(1, v[0])), nil
	case name == "rotate" && (len(v) == 1 || len(v) == 3):
		about := geom.Pt(arg(1, 0), arg(2, 0))
		turn := geom.Rotation(v[0] * math.Pi / 180)
		return geom.Translation(about).After(turn).After(geom.Translation(about.Times(-1))), nil
	case name == "skewX" && len(v) == 1:
		return geom.Affine{A: 1, C: math.Tan(v[0] * math.Pi / 180), D: 1}, nil
	case name == "skewY" && len(v) == 1:
		return geom.Affine{A: 1, B: math.Tan(v[0] * math.Pi / 180), D: 1}, nil
	}
	return geom.Affine{}, fmt.Errorf("transform %.20q with %d numbers", name, len(v))
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
