// Package hung finds the shape in which a bridge hammock hangs under its
// sleeper: the cords of one side as a space curve in equilibrium, the section of
// the bed at every station, and the forces that follow.
//
// Axes: x along the hammock, 0 midway between the bars, the head end negative;
// y across, positive here since both sides are alike; z up, 0 on the bottom line
// at x = 0. Lengths mm, forces N, line loads N/mm, angles rad.
//
// The cloth carries across only and lies without friction; the cord runs freely
// in its channel, so that the thrust H (the x component of its tension) is one
// number for the whole hammock; bars push across only.
package hung

import (
	"math"

	"slingloft/outline/design"
)

// Section is the bed's cross-section at one station: round under the sleeper,
// straight walls up to the cords.
type Section struct {
	Half   float64 // y, half the opening between the cord centres, mm
	Height float64 // h, cords above the bottom line, mm
	Radius float64 // R of the round part, mm
	Wall   float64 // θ, angle of the wall above the horizontal and half angle of the arc, rad
	Length float64 // t, length of a wall, mm
}

// SectionError says why no section exists at a station.
type SectionError struct {
	X                    float64 // station, mm
	Half, Height, Radius float64 // mm
	Why                  design.Rule
}

// Error returns the place, the measures and the reason in one line.
func (e SectionError) Error() string {
	return design.English().Found(e.Finding())
}

// finite reports whether a search met the section at a place that can be.
func (e SectionError) finite() bool {
	return !math.IsNaN(e.Half+e.Height) && !math.IsInf(e.Half+e.Height, 0)
}

// Finding returns what was found.
func (e SectionError) Finding() design.Finding {
	return design.Found(design.NoSectionAt, e.X, e.Half, e.Height, e.Radius, design.Found(e.Why))
}

// NewSection returns the section with cords at (±half, height) over a round
// underbody of the given radius, all mm: from d² = y² + (h−R)², t² = d² − R² and
// θ = atan2(y, R−h) − acos(R/d). The error is a [SectionError] with X left 0.
func NewSection(half, height, radius float64) (Section, error) {
	s, err := leaningSection(half, height, radius)
	if err == nil && s.Wall > math.Pi/2+1e-12 {
		err = SectionError{0, half, height, radius, design.WallsPast}
	}
	return s, err
}

// leaningSection is NewSection without its upper limit on the wall's angle.
func leaningSection(half, height, radius float64) (Section, error) {
	s := Section{Half: half, Height: height, Radius: radius}
	fail := func(why design.Rule) (Section, error) {
		return Section{}, SectionError{0, half, height, radius, why}
	}
	if !(height > 0) || !(half > 0) {
		return fail(design.CordsBelow)
	}
	under := radius - height
	tt := float64(half*half) + float64(under*under) - float64(radius*radius)
	if !(tt > 0) {
		return fail(design.CordsInside)
	}
	s.Length = math.Sqrt(tt)
	// acos(R/d) = atan2(t, R) loses no digits where d is close to R; the difference
	// of the two angles is that of their sines and cosines times d².
	s.Wall = math.Atan2(s.lean())
	if !(s.Wall > 0) {
		return fail(design.CordsBelow)
	}
	return s, nil
}

// lean returns sine and cosine of the wall's angle, both times d².
func (s *Section) lean() (sin, cos float64) {
	under := s.Radius - s.Height
	sin = float64(s.Half*s.Radius) - float64(under*s.Length)
	cos = float64(under*s.Radius) + float64(s.Half*s.Length)
	return sin, cos
}

// upright reports whether the walls stand upright, to the last digits.
func (s *Section) upright() bool {
	const noise = 1e-9 // rad
	return s.Wall > math.Pi/2-noise
}

// cot returns the cotangent of the wall's angle.
func (s *Section) cot() float64 {
	sin, cos := s.lean()
	return cos / sin
}

// Girth returns the length of cloth from cord centre to cord centre, mm.
func (s Section) Girth() float64 { return 2 * (s.Length + float64(s.Radius*s.Wall)) }

// Point returns the point of the section at length q along the cloth from the
// bottom line, mm across and mm above the bottom line. Past the cord it runs on
// along the wall.
func (s Section) Point(q float64) (y, z float64) {
	arc := s.Radius * s.Wall
	sin, cos := math.Sincos(s.Wall)
	if q <= arc {
		sq, cq := math.Sincos(q / s.Radius)
		return s.Radius * sq, s.Radius * (1 - cq)
	}
	run := q - arc
	return float64(s.Radius*sin) + float64(run*cos), float64(s.Radius*(1-cos)) + float64(run*sin)
}
