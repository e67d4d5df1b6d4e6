package svg

import (
	"math"
	"strconv"
	"strings"

	"slingloft/export"
	"slingloft/outline/geom"
)

// parseTransform reads a transform attribute, or the property of a style, whose
// numbers may have units.
func parseTransform(text string) (geom.Affine, error) {
	m := geom.Identity()
	if strings.TrimSpace(text) == "none" {
		return m, nil
	}
	for rest := strings.TrimSpace(text); rest != ""; {
		name, after, ok := strings.Cut(rest, "(")
		args, tail, closed := strings.Cut(after, ")")
		if !ok || !closed {
			return m, export.Refuse(export.TransformUnread, text)
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
	v, err := arguments(name, args)
	if err != nil {
		return geom.Affine{}, export.Refuse(export.AtTransform, name, err)
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
	case name == "translateX" && len(v) == 1:
		return geom.Translation(geom.Pt(v[0], 0)), nil
	case name == "translateY" && len(v) == 1:
		return geom.Translation(geom.Pt(0, v[0])), nil
	case name == "scale" && (len(v) == 1 || len(v) == 2):
		return geom.Scaling(v[0], arg(1, v[0])), nil
	case name == "scaleX" && len(v) == 1:
		return geom.Scaling(v[0], 1), nil
	case name == "scaleY" && len(v) == 1:
		return geom.Scaling(1, v[0]), nil
	case name == "rotate" && (len(v) == 1 || len(v) == 3):
		about := geom.Pt(arg(1, 0), arg(2, 0))
		turn := geom.Rotation(v[0] * math.Pi / 180)
		return geom.Translation(about).After(turn).After(geom.Translation(about.Times(-1))), nil
	case name == "skewX" && len(v) == 1:
		return geom.Affine{A: 1, C: math.Tan(v[0] * math.Pi / 180), D: 1}, nil
	case name == "skewY" && len(v) == 1:
		return geom.Affine{A: 1, B: math.Tan(v[0] * math.Pi / 180), D: 1}, nil
	}
	return geom.Affine{}, export.Refuse(export.TransformNumbers, name, len(v))
}

// arguments reads the numbers of a transform. Those of a style have units: lengths
// become user units, turns degrees.
func arguments(name, args string) ([]float64, error) {
	if strings.Trim(args, " ,\t\r\n\f0123456789.+-eE") == "" {
		return numbers(args, 6)
	}
	var out []float64
	for _, word := range strings.FieldsFunc(args, func(r rune) bool { return strings.ContainsRune(", \t\r\n\f", r) }) {
		v, err := withUnit(name, word)
		if err != nil {
			return nil, err
		}
		if out = append(out, v); len(out) > 6 {
			return nil, export.Refuse(export.MoreNumbers, 6)
		}
	}
	return out, nil
}

// withUnit reads one number with a unit that the transform of that name can have.
func withUnit(name, word string) (float64, error) {
	if strings.HasPrefix(name, "translate") {
		mm, err := length(word)
		return mm / mmPerPixel, err
	}
	if name == "rotate" || strings.HasPrefix(name, "skew") {
		for _, u := range [...]struct {
			suffix string
			degree float64
		}{{"deg", 1}, {"grad", 0.9}, {"rad", 180 / math.Pi}, {"turn", 360}} {
			if bare, ok := strings.CutSuffix(word, u.suffix); ok {
				word = bare
				v, err := number(word)
				return v * u.degree, err
			}
		}
	}
	return number(word)
}

func number(word string) (float64, error) {
	v, err := strconv.ParseFloat(word, 64)
	if err != nil || math.IsNaN(v) || math.Abs(v) > maxCoordinate {
		return 0, export.Refuse(export.NumberUnread, word)
	}
	return v, nil
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
			return nil, export.Refuse(export.MoreNumbers, limit)
		}
		out = append(out, v)
	}
	return out, nil
}
