package nest

import (
	"errors"
	"math"
	"math/rand/v2"
	"strings"
	"testing"

	sf "github.com/peterstace/simplefeatures/geom"

	"slingloft/nest/nesttest"
	"slingloft/outline/geom"
)

func TestVerifyFindsEveryFault(t *testing.T) {
	items := []Item{
		{Outline: nesttest.Box(100, 50), Demand: 2, Turns: []float64{0, math.Pi}},
		{Outline: geom.Ring{{X: 0, Y: 0}, {X: 60, Y: 0}, {X: 0, Y: 60}}, Demand: 2, Paired: true},
	}
	s := Strip{Width: 120, Gap: 2, Margin: 5, KeepOut: []geom.Box{{Min: geom.Pt(0, 0), Max: geom.Pt(10, 4)}}}
	at := func(x, y float64) geom.Motion { return geom.Motion{Shift: geom.Pt(x, y)} }
	good := func() Lay {
		return Lay{Length: 250, Beds: 1, Placements: []Placement{
			{0, 0, 0, at(10, 5)}, {0, 1, 0, at(10, 57)}, {1, 0, 0, at(112, 5)},
			{1, 1, 0, geom.Motion{Mirror: true, Shift: geom.Pt(185, 115)}},
		}}
	}
	if err := Verify(items, s, good()); err != nil {
		t.Fatalf("a good lay is refused: %v", err)
	}
	for _, c := range []struct {
		reason string
		spoil  func(*Lay)
	}{
		{"not placed", func(l *Lay) { l.Placements = l.Placements[1:] }},
		{"placed twice", func(l *Lay) { l.Placements[1].Copy = 0 }},
		{"not asked for", func(l *Lay) { l.Placements[1].Item = 7 }},
		{"not asked for", func(l *Lay) { l.Placements[1].Copy = -1 }},
		{"mirrored", func(l *Lay) { l.Placements[2].Motion.Mirror = true }},
		{"mirrored", func(l *Lay) { l.Placements[3].Motion.Mirror = false }},
		{"angle", func(l *Lay) { l.Placements[0].Motion.Turn = 0.1 }},
		{"past the edge", func(l *Lay) { l.Placements[0].Motion.Shift.Y = 4.99 }},
		{"past the edge", func(l *Lay) { l.Length = 176 }},
		{"finite", func(l *Lay) { l.Placements[0].Motion.Shift.X = math.NaN() }},
		{"keep-out", func(l *Lay) { l.Placements[0].Motion.Shift = geom.Pt(5, 5); l.Placements[1].Motion.Shift.X = 5 }},
		{"overlap", func(l *Lay) { l.Placements[1].Motion.Shift.Y = 54 }},
		{"closer than the gap", func(l *Lay) { l.Placements[1].Motion.Shift.Y = 56.999 }},
		{"closer than the gap", func(l *Lay) { l.Placements[2].Motion.Shift.X = 111 }},
	} {
		lay := good()
		stock := s
		if c.reason == "keep-out" {
			stock.KeepOut = []geom.Box{{Min: geom.Pt(0, 0), Max: geom.Pt(10, 8)}}
		}
		c.spoil(&lay)
		err := Verify(items, stock, lay)
		var le *LayError
		if !errors.As(err, &le) || !strings.Contains(err.Error(), c.reason) {
			t.Errorf("want a fault about %q, got %v", c.reason, err)
		}
	}
}

// Verify and an independent geometry library must agree about overlap, on lays
// of two pieces thrown at random.
func TestVerifyAgreesWithSimplefeatures(t *testing.T) {
	rng := rand.New(rand.NewPCG(8, 1))
	hits := 0
	for range 400 {
		items := []Item{
			{Outline: nesttest.Blob(rng.Float64, 5+rng.IntN(20), 300), Demand: 1, Free: true},
			{Outline: nesttest.Blob(rng.Float64, 5+rng.IntN(20), 300), Demand: 1, Free: true},
		}
		var lay Lay
		lay.Length = 1000
		for i := range items {
			m := geom.Motion{Turn: rng.Float64() * 7, Shift: geom.Pt(300+400*rng.Float64(), 300+400*rng.Float64())}
			lay.Placements = append(lay.Placements, Placement{Item: i, Motion: m})
		}
		clear := 1e-6
		common := areaInCommon(t, items, lay, 0, 1)
		err := Verify(items, Strip{Width: 1000}, lay)
		if common > clear {
			hits++
		}
		if common > clear && err == nil || common == 0 && err != nil {
			t.Fatalf("simplefeatures finds %v mm² in common, Verify %v", common, err)
		}
	}
	if hits < 50 || hits > 350 {
		t.Errorf("%d of 400 overlapped: the test is lopsided", hits)
	}
}

// polygon returns a placed outline as a polygon of simplefeatures.
func polygon(t testing.TB, items []Item, p Placement) sf.Polygon {
	t.Helper()
	r := items[p.Item].Outline.Moved(p.Motion)
	var xy []float64
	for i := 0; i <= len(r); i++ {
		xy = append(xy, r[i%len(r)].X, r[i%len(r)].Y)
	}
	poly := sf.NewPolygon([]sf.LineString{sf.NewLineString(sf.NewSequence(xy, sf.DimXY))})
	if err := poly.Validate(); err != nil {
		t.Fatal(err)
	}
	return poly
}

// areaInCommon returns the area that placements i and j of a lay share.
func areaInCommon(t testing.TB, items []Item, lay Lay, i, j int) float64 {
	t.Helper()
	a, b := polygon(t, items, lay.Placements[i]), polygon(t, items, lay.Placements[j])
	common, err := sf.Intersection(a.AsGeometry(), b.AsGeometry())
	if err != nil {
		t.Fatal(err)
	}
	return common.Area()
}
