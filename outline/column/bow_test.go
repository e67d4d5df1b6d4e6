package column_test

import (
	"testing"

	"slingloft/outline/column"
)

// A tube 25 × 1.5, 900 long, E 69 000, yield 240, with its bow in four sizes and, last,
// with the thrust off the axis instead; values by a second computation.
func TestCrooked(t *testing.T) {
	s := column.Tube(25, 1.5)
	for _, row := range []struct{ bow, e, want float64 }{
		{0.9, 0, 6138.7489},
		{1.8, 0, 5860.7178},
		{3.0, 0, 5534.9749},
		{2.1397, 0, 5763.7575},
		{3.6010, 0, 5387.7753},
		{0, 1.8, 5738.7871},
	} {
		near(t, "thrust", crooked(s, 69000, 240, 900, row.bow, row.e), row.want, 1e-5)
	}
	// Both together are worse than either.
	if p := crooked(s, 69000, 240, 900, 1.8, 1.8); !(p < 5738.78 && p > 5200) {
		t.Errorf("bow and eccentricity together: %g N", p)
	}
}

// The column curve of EN 1999-1-1 with α (λ − λ0) in place of the bow's part, as in
// T. Höglund, TALAT lecture 2301 (EAA 1999), example 5.1: a square tube 70 × 1.9,
// 1000 long, 200 N/mm², E 70 000 is printed as 73.8 kN. Its η = 0.2 (λ − 0.1) stands
// for a bow of η W / A.
func TestColumnCurve(t *testing.T) {
	const side, inertia, area = 70.0, 400351.64, 414.20626
	// The slenderness is that of the gross section and the effective area.
	s := column.Section{Area: area, Inertia: inertia, Edge: side / 2}
	const lambda = 0.54727251
	eta := 0.2 * (lambda - 0.1)
	bow := eta * inertia / (side / 2) / area
	near(t, "load", crooked(s, 70000, 200, 1000, bow, 0), 73831.72, 2e-5)
}

// A hole of 4 mm across a tube 25 × 1.5 where it bends most: by adding up thin slices
// across, parallel to the hole.
func TestDrilled(t *testing.T) {
	for _, row := range []struct{ outer, wall, hole float64 }{{25, 1.5, 4}, {25, 1.5, 10}, {16, 0, 3}, {20, 10, 5}} {
		whole := column.Tube(row.outer, row.wall)
		inner := row.outer - 2*row.wall
		if row.wall == 0 {
			whole, inner = column.Rod(row.outer), 0
		}
		area, inertia := 0.0, 0.0
		const n = 1000
		for i := range n {
			for k := range n {
				y, z := row.hole*((float64(i)+0.5)/n-0.5), row.outer*((float64(k)+0.5)/n-0.5)
				if r := y*y + z*z; r < row.outer*row.outer/4 && r >= inner*inner/4 {
					da := row.hole * row.outer / (n * n)
					area, inertia = area+da, inertia+da*z*z
				}
			}
		}
		got := column.Drilled(row.outer, row.wall, row.hole)
		near(t, "area", got.Area, whole.Area-area, 2e-3)
		near(t, "inertia", got.Inertia, whole.Inertia-inertia, 3e-3)
	}
}

// Whole, what is left yields as the strut does; less of it yields sooner, in a stocky
// strut with a straight axis in proportion to its area.
func TestWeakened(t *testing.T) {
	s := column.Tube(25, 1.5)
	bent := column.Strut{Section: s, Modulus: 69000, Length: 900, Bow: 1.8}
	near(t, "whole", column.Weakened(bent, s, 240), 5860.7178, 1e-5)
	short := column.Strut{Section: s, Modulus: 69000, Length: 60}
	left := column.Drilled(25, 1.5, 6)
	near(t, "squashed", column.Weakened(short, left, 240), 240*left.Area, 1e-9)
	if p := column.Weakened(bent, left, 240); !(p < 5860) {
		t.Errorf("drilled, it yields at %g N", p)
	}
	near(t, "kink", column.Kink(1000, 0.3, 60), 1.25, 1e-12)
}
