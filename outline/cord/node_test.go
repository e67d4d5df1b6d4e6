package cord_test

import (
	"math"
	"testing"

	"slingloft/outline/bed"
	"slingloft/outline/cord"
)

// Without a pull the nodes of a chain lie where the shape has them, less what the cords
// stretch under the sleeper, whatever gap, pin and splices are; the slant of a loop round its
// hook is of a second order. A pull adds N / EA.
func TestNodes(t *testing.T) {
	d, s := sample(t)
	d.Side.Stiffness, d.Leg.Stiffness, d.Splice.TipGap = 2e5, 3e5, 50
	for _, whole := range []bool{false, true} {
		d.Splice.Whole = whole
		legs := d.Leg.Stiffness
		if whole {
			legs = 2 * d.Side.Stiffness
		}
		sides := d.Side.Stiffness
		if whole {
			sides *= 2
		}
		set, err := cord.Of(&s, d, cord.Options{Hook: 8, Tip: 6})
		if err != nil {
			t.Fatal(err)
		}
		half, light := s.Problem.Bed.Span/2, set.ReadPull()
		head := 820 - cord.Stretch(&s, s.Ends[bed.Head].ApexX, -half, legs, light)
		side := s.SideArc - cord.Stretch(&s, -half, half, sides, light)
		foot := s.Ends[bed.Foot].Leg - cord.Stretch(&s, half, s.Ends[bed.Foot].ApexX, legs, light)
		first := s.Arc(-half, 0) - cord.Stretch(&s, -half, 0, sides, light)
		for _, pull := range []float64{0, 100, 200} {
			grow := func(mm, ea float64) float64 { return mm * (1 + (pull-light)/ea) }
			h, m, f := grow(head, float64(legs)), grow(side, float64(sides)), grow(foot, float64(legs))
			want := map[cord.SpotKind][]float64{
				cord.Hook: {0, h + m + f}, cord.Tip: {h, h + m}, cord.Middle: {h + grow(first, float64(sides))},
			}
			got, last := map[cord.SpotKind][]float64{}, math.Inf(-1)
			for _, n := range set.Nodes(pull) {
				if n.At < last {
					t.Errorf("%s %s at %g after %g", n.Part, n.Spot, n.At, last)
				}
				last = n.At
				got[n.Spot.Kind] = append(got[n.Spot.Kind], n.At)
			}
			for kind, places := range want {
				if len(got[kind]) != len(places) {
					t.Fatalf("whole %v: %s at %v, want %v", whole, kind, got[kind], places)
				}
				for i := range places {
					near(t, kind.String(), got[kind][i], places[i], 1e-4)
				}
			}
			if entries := got[cord.Entry]; !whole && (len(entries) != 4 || len(got[cord.Throat]) != 2) {
				t.Errorf("entries %v, throats %v", entries, got[cord.Throat])
			}
		}
	}
	if n := (cord.Set{}).Nodes(100); n != nil {
		t.Errorf("an empty set has nodes %v", n)
	}
}
