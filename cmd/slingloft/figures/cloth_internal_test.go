package figures

import (
	"math"
	"slices"
	"testing"

	"slingloft/cmd/slingloft/work"
	"slingloft/outline/drape"
	"slingloft/outline/geom"
)

// patches returns cloth of one triangle for each stretch of 100 mm of the bed from −200 on,
// its middle of gravity at the stretch's middle.
func patches(cloth ...drape.Cloth) work.Draped {
	var h work.Draped
	for i, c := range cloth {
		x := -150 + 100*float64(i)
		k := len(h.Flat)
		h.Flat = append(h.Flat, geom.Pt(x-30, 10), geom.Pt(x+30, 10), geom.Pt(x, 40))
		h.Faces = append(h.Faces, [3]int{k, k + 1, k + 2})
		h.Cloth = append(h.Cloth, c)
	}
	return h
}

// How the cloth is drawn, by stretches of 100 mm: means by area, largest values with their
// place, slack by area, and stretches that are mostly slack joined where they touch.
func TestClothByStretches(t *testing.T) {
	h := patches(
		drape.Cloth{Warp: 0.1, Weft: 0.4, Shear: 0.01, Area: 100},
		drape.Cloth{Warp: 0.3, Weft: 0.005, Shear: 0.05, Area: 300}, // just slack
		drape.Cloth{Warp: 0.2, Weft: 0, Shear: 0.02, Area: 200},
		drape.Cloth{Warp: 0, Weft: 0.9, Shear: 0.03, Area: 100},
		drape.Cloth{Warp: 0, Weft: 0.001, Shear: 0, Area: 100},
	)
	// A second triangle in the first stretch, three times as large.
	more := patches(drape.Cloth{Warp: 0.5, Weft: 0.0051, Shear: 0.04, Area: 300})
	for _, f := range more.Faces {
		n := len(h.Flat)
		h.Faces = append(h.Faces, [3]int{f[0] + n, f[1] + n, f[2] + n})
	}
	h.Flat, h.Cloth = append(h.Flat, more.Flat...), append(h.Cloth, more.Cloth...)
	got := drawnOf(h)
	want := []Drawn{
		{X: -150, Warp: 0.4, Weft: (0.4 + 3*0.0051) / 4, Shear: 0.04, Slack: 0}, {X: -50, Warp: 0.3, Weft: 0.005, Shear: 0.05, Slack: 1},
		{X: 50, Warp: 0.2, Weft: 0, Shear: 0.02, Slack: 1}, {X: 150, Warp: 0, Weft: 0.9, Shear: 0.03, Slack: 0},
		{X: 250, Warp: 0, Weft: 0.001, Slack: 1},
	}
	if len(got.Stretch) != len(want) {
		t.Fatalf("%d stretches: %+v", len(got.Stretch), got.Stretch)
	}
	for i, w := range want {
		g := got.Stretch[i]
		for k, pair := range [5][2]float64{{g.X, w.X}, {g.Warp, w.Warp}, {g.Weft, w.Weft}, {g.Shear, w.Shear}, {g.Slack, w.Slack}} {
			if math.Abs(pair[0]-pair[1]) > 1e-12 {
				t.Errorf("stretch %d, figure %d: %g, want %g", i, k, pair[0], pair[1])
			}
		}
	}
	if !slices.Equal(got.Slacks, []Pair{{-100, 100}, {200, 300}}) {
		t.Errorf("mostly slack: %v", got.Slacks)
	}
	if math.Abs(got.Slack-600./1100) > 1e-12 {
		t.Errorf("slack %g of the area", got.Slack)
	}
	for name, m := range map[string]struct{ got, want Most }{
		"warp": {got.Warp, Most{0.5, Pair{-150, 20}}}, "weft": {got.Weft, Most{0.9, Pair{150, 20}}},
		"shear": {got.Shear, Most{0.05, Pair{-50, 20}}},
	} {
		if math.Abs(m.got.Value-m.want.Value) > 1e-12 || math.Hypot(m.got.At[0]-m.want.At[0], m.got.At[1]-m.want.At[1]) > 1e-9 {
			t.Errorf("largest %s: %+v, want %+v", name, m.got, m.want)
		}
	}
	// Half of a stretch slack is no fold yet.
	half := patches(drape.Cloth{Weft: 1, Area: 100})
	half.Faces, half.Cloth = append(half.Faces, half.Faces[0]), append(half.Cloth, drape.Cloth{Area: 100})
	if got := drawnOf(half); len(got.Slacks) != 0 || got.Slack != 0.5 {
		t.Errorf("half slack: %+v", got)
	}
}

// How far a bottom line is from level between two places: the stations between them and
// both places themselves count, nothing beyond.
func TestSpanOfBottom(t *testing.T) {
	var h work.Draped
	h.Along = []float64{-300, -200, -100, 0, 100, 200, 300}
	off := func(x float64) float64 { return x * x / 1000 }
	for _, r := range []struct{ from, to, want float64 }{
		{-300, 300, 90}, {-250, 250, 62.5}, {-100, 100, 10}, {100, 200, 30}, {-50, 20, 2.5}, {150, 160, 3.1}, {-200, -200, 0},
	} {
		if got := spanOf(&h, off, r.from, r.to); math.Abs(got-r.want) > 1e-9 {
			t.Errorf("from %g to %g: %g, want %g", r.from, r.to, got, r.want)
		}
	}
	// A dip between the ends counts from the higher end.
	if got := spanOf(&h, func(x float64) float64 { return math.Abs(x-100) / 10 }, -250, 250); math.Abs(got-35) > 1e-9 {
		t.Errorf("a dip at 100: %g, want 35", got)
	}
}
