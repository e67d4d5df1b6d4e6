package desk

import (
	"math"

	"slingloft/outline/bed"
	"slingloft/outline/hung"
)

// net says how fine a model is: how far the drawn cloth may lie off the bed, mm.
type net float64

// coarse is the net while a value moves, and fine the one that stands: own choice.
const (
	coarse net = 0.5
	fine   net = 0.2
)

// ofChords is the part of what a net may be off that chords of the round part take; the
// steps from row to row have the rest.
const ofChords = 0.6

// chords returns how many chords the round part of each half of every section takes.
func (n net) chords(s *hung.Shape) int {
	most := 1.0
	for _, x := range s.Stations(fewestRows) {
		c := s.At(x).Section
		most = max(most, c.Wall/(2*math.Acos(1-ofChords*float64(n)/c.Radius)))
	}
	return int(math.Ceil(most))
}

// fewestRows is where the search for a net's rows begins, and mostRows where it ends.
const (
	fewestRows = 24
	mostRows   = 120
)

// grid says how many chords half a section is drawn with: of its round part, and of its
// wall, which is straight and needs one where a row stands square to the bed.
type grid struct{ round, wall int }

// leaningWalls is how many chords of a wall the search begins with where rows lean, which
// have to follow its twist: enough for [coarse], as tried.
const leaningWalls = 8

// across returns the parts of half the girth at which a section has its points, from the
// bottom line to the cord.
func (g grid) across(c hung.Section) []float64 {
	out := make([]float64, g.round+g.wall+1)
	arc := c.Radius * c.Wall / (c.Girth() / 2)
	for j := range out {
		if j <= g.round {
			out[j] = arc * float64(j) / float64(g.round)
		} else {
			out[j] = arc + (1-arc)*float64(j-g.round)/float64(g.wall)
		}
	}
	return out
}

// row returns points of the section at a station, from one cord to the other.
func (g grid) row(st hung.Station) []Point {
	half := g.across(st.Section)
	out := make([]Point, 2*len(half)-1)
	for j, t := range half {
		y, z := st.Section.Point(t * st.Section.Girth() / 2)
		out[len(half)-1+j] = at(st.X, y, st.Bottom+z)
		out[len(half)-1-j] = at(st.X, -y, st.Bottom+z)
	}
	return out
}

// slanted is [grid.row] in a tail whose cloth ends in a plane that leans: the row is drawn
// towards the bar by as much at each point as the plane cuts off there.
func (g grid) slanted(s *hung.Shape, end hung.Ending, x float64) []Point {
	bar := math.Copysign(s.Problem.Bed.Span/2, end.At.X)
	half := g.across(s.At(x).Section)
	out := make([]Point, 2*len(half)-1)
	for j, t := range half {
		p := s.Point(bar+(x-bar)*(end.Station(t)-bar)/(end.At.X-bar), t)
		out[len(half)-1+j] = at(p.X, p.Y, p.Z)
		out[len(half)-1-j] = at(p.X, -p.Y, p.Z)
	}
	return out
}

// cloth returns the rows of a net, and how far between them it lies off the bed, mm.
func (n net) cloth(s *hung.Shape, leaning bool) (stations []hung.Station, rows [][]Point, off float64) {
	g := grid{n.chords(s), 1}
	if leaning {
		g.wall = leaningWalls
	}
	half := s.Problem.Bed.Span / 2
	ends := [2]hung.Ending{s.Ending(bed.Head, leaning), s.Ending(bed.Foot, leaning)}
	for count := fewestRows; ; count += count / 3 {
		stations, rows, off = nil, nil, 0
		for _, x := range s.Stations(count) {
			st := s.At(x)
			stations = append(stations, st)
			switch {
			case leaning && x < -half:
				rows = append(rows, g.slanted(s, ends[bed.Head], x))
			case leaning && x > half:
				rows = append(rows, g.slanted(s, ends[bed.Foot], x))
			default:
				rows = append(rows, g.row(st))
			}
		}
		for i := range len(rows) - 1 {
			off = max(off, gap(s, rows[i], rows[i+1]))
		}
		if off <= float64(n) || count >= mostRows {
			return stations, rows, off
		}
		if leaning {
			g.wall += g.wall / 3
		}
	}
}

// gap returns how far what lies between two rows lies off the bed.
func gap(s *hung.Shape, a, b []Point) float64 {
	var mid hung.Station // the last that was looked at: a row that does not lean has one
	off := 0.0
	look := func(points ...Point) {
		x, y, z := 0.0, 0.0, 0.0
		for _, p := range points {
			x, y, z = x+p[0]/float64(len(points)), y+p[1]/float64(len(points)), z+p[2]/float64(len(points))
		}
		if math.Abs(x-mid.X) > 1e-6 || mid.Section.Radius == 0 {
			mid = s.At(x)
		}
		off = max(off, away(mid.Section, y, z-mid.Bottom))
	}
	for j := len(a) / 2; j+1 < len(a); j++ { // both sides are alike
		look(a[j], b[j], a[j+1], b[j+1])
		look(a[j], b[j])
	}
	return off
}

// away returns how far a point at y ≥ 0 lies off a section.
func away(s hung.Section, y, z float64) float64 {
	if math.Atan2(y, s.Radius-z) <= s.Wall {
		return math.Abs(math.Hypot(y, s.Radius-z) - s.Radius)
	}
	ty, tz := s.Point(s.Radius * s.Wall)
	sin, cos := math.Sincos(s.Wall)
	return math.Abs((z-tz)*cos - (y-ty)*sin)
}
