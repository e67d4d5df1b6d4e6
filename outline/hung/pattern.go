package hung

import (
	"slingloft/outline/design"
	"slingloft/outline/numeric"
)

// Sunk is the bed at one station where its girth is not the one that hangs level.
type Sunk struct {
	X       float64 // station, mm
	Y       float64 // half opening that it finds, mm
	Z       float64 // height of the cords, mm
	Section Section
	Off     float64 // by how much the bottom line lies above (positive) where it was designed, mm
}

// WithGirth returns how the bay hangs where its cloth has the given girth at every
// station, cord to cord, and its cords are as long as given, all mm: the bars
// stay where they are, the thrust is what the cords' length asks for, and every
// section closes with the girth that it has there. girth at the bars must be that
// of the shape. The result runs over n+1 even stations from bar to bar.
//
// It is the answer for side curves drawn for their looks: the load is the shape's
// own, and the bottom line is found rather than given.
func (s *Shape) WithGirth(girth func(x float64) float64, cord float64, n int) ([]Sunk, error) {
	g := girthSolver{s, girth, numeric.NewPanel()}
	half := s.Problem.Bed.Span / 2
	marks := stations(-half, half, s.Problem.Load.Breaks(), s.Problem.Bed.Span/(2*bayPanels))
	first := s.inside(-half)
	last := s.inside(half)
	path := func(x []float64) ([]segment, state, error) {
		if !(x[0] > 0) {
			return nil, state{}, numeric.ErrNotFinite
		}
		r := integrator{&g.tables, s.Thrust * x[0], g.pull}
		return r.path(state{first.Y, x[1], first.Z, x[2]}, marks)
	}
	x, err := numeric.Solve(func(x []float64) ([]float64, error) {
		p, end, err := path(x)
		if err != nil {
			return nil, err
		}
		return []float64{end.y - last.Y, end.z - last.Z, arcOf(p) - cord}, nil
	}, []float64{1, first.DY, first.DZ}, []float64{1e-5, 1e-5, 1e-5}, 1e-6)
	if err != nil {
		return nil, err
	}
	p, _, err := path(x)
	if err != nil {
		return nil, err
	}
	return g.sunk(p, n)
}

// girthSolver integrates the cords of a bay whose girth is given.
type girthSolver struct {
	s      *Shape
	girth  func(x float64) float64
	tables numeric.Panel
}

// pull returns the load at x and the cotangent of the wall that the girth makes
// with the opening. The shape's own line load holds, cloth and all: the girth
// changes it by less than the cloth's weight times what it departs.
func (g *girthSolver) pull(x, y, _ float64) (w, cot float64, err error) {
	sec, err := g.section(x, y)
	if err != nil {
		return 0, 0, err
	}
	return g.s.At(x).Load, sec.cot(), nil
}

// section returns the section at x with the half opening y that has the girth
// there.
func (g *girthSolver) section(x, y float64) (Section, error) {
	r := g.s.Problem.Radius(x)
	h, err := DropOfGirth(g.girth(x), y, r)
	if err != nil {
		return Section{}, SectionError{x, y, 0, r, design.ClothNarrow}
	}
	return NewSection(y, h, r)
}

func arcOf(path []segment) float64 {
	sum := 0.0
	for i := range path {
		sum += path[i].arc[nodes-1]
	}
	return sum
}

// sunk reads the path at even stations.
func (g *girthSolver) sunk(path []segment, n int) ([]Sunk, error) {
	half := g.s.Problem.Bed.Span / 2
	var out []Sunk
	k := 0
	for i := range n + 1 {
		x := min(-half+2*half*float64(i)/float64(n), half)
		for k+1 < len(path) && x > path[k].to {
			k++
		}
		t := (x - path[k].from) / (path[k].to - path[k].from)
		y, z := g.tables.Interpolate(&path[k].y, t), g.tables.Interpolate(&path[k].z, t)
		sec, err := g.section(x, y)
		if err != nil {
			return nil, err
		}
		out = append(out, Sunk{x, y, z, sec, z - sec.Height - g.s.Problem.Bottom(x)})
	}
	return out, nil
}
