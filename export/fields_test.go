package export_test

import (
	"errors"
	"math"
	"slices"
	"testing"

	"slingloft/export"
	"slingloft/export/readertest"
	"slingloft/outline/geom"
	"slingloft/outline/piece"
)

// onStock returns a stock with one rectangle on it.
func onStock(t *testing.T, width, height float64, cut geom.Box) export.Drawing {
	t.Helper()
	d, err := export.Compose(export.Sheet{Name: "lay", Title: "Lay", Frame: export.Around(width, height, 1),
		Items: []export.Item{{Piece: piece.Piece{ID: "body", Cut: cut.Ring()}, Copy: 1}}})
	if err == nil {
		d, err = d.OnStock()
	}
	if err != nil {
		t.Fatal(err)
	}
	return d
}

// Every field is as long as the reach; two crosses lie where it meets the next, in both of
// them at the same places of the stock and clear of the piece; parts of the outline, put
// back to where they were, are all of it, with a lap at each place where it is parted.
func TestInFields(t *testing.T) {
	d := onStock(t, 2500, 700, geom.Box{Min: geom.Pt(30, 40), Max: geom.Pt(2470, 660)})
	parts, err := d.InFields(export.Fields{Reach: 900, Step: 1, Work: piece.CutOut})
	if err != nil || len(parts) != 3 {
		t.Fatalf("%d fields, %v", len(parts), err)
	}
	shift, length := 0.0, 0.0
	crosses := map[string][]geom.Box{} // on the stock
	for i, part := range parts {
		plain, err := part.Plain(export.Options{})
		if err != nil {
			t.Fatal(err)
		}
		bed := plain.InField()
		if shift += part.Field.Feed; bed.Width != 900 || part.Field.Feed != math.Trunc(part.Field.Feed) || shift+900 < 2471 == (i == 2) {
			t.Errorf("field %d of %g mm from %g mm", i+1, bed.Width, shift)
		}
		for _, l := range bed.Lines {
			box := l.Points.Bounds()
			if box.Min.X < -1e-9 || box.Max.X > 900+1e-9 {
				t.Errorf("field %d: %s reaches from %g to %g mm", i+1, l.Name, box.Min.X, box.Max.X)
			}
			back := geom.Box{Min: box.Min.Plus(geom.Pt(shift, 0)), Max: box.Max.Plus(geom.Pt(shift, 0))}
			if l.Role == piece.CutLine {
				length += readertest.Length(l)
			} else if l.Role == piece.MatchCross {
				crosses[l.Name] = append(crosses[l.Name], back)
				if back.Overlaps(geom.Box{Min: geom.Pt(27.1, 37.1), Max: geom.Pt(2472.9, 662.9)}) {
					t.Errorf("%s lies on the piece", l.Name)
				}
			}
		}
		for _, m := range bed.Field.Match {
			if at := m.At.Plus(geom.Pt(shift, 0)); !slices.ContainsFunc(crosses["match "+m.Name+"/x"], func(b geom.Box) bool { return b.Center().Dist(at) < 1e-9 }) {
				t.Errorf("cross %s is not at %v", m.Name, at)
			}
		}
	}
	if want := 2*(2440+620) + 4*export.SeamLap; math.Abs(length-want) > 1e-6 {
		t.Errorf("%g mm are cut, want %g", length, want)
	}
	for _, name := range []string{"match 1A/x", "match 1B/y", "match 2A/y", "match 2B/stroke 1"} {
		if got := crosses[name]; len(got) != 2 || got[0].Min.Dist(got[1].Min) > 1e-9 || got[0].Max.Dist(got[1].Max) > 1e-9 {
			t.Errorf("%s lies at %v", name, got)
		}
	}
	if apart := crosses["match 1B/x"][0].Min.Y - crosses["match 1A/x"][0].Min.Y; apart < 350 {
		t.Errorf("crosses %g mm apart", apart)
	}
}

// What fits is not divided. Where no waste has room for crosses it is said what would do,
// and does.
func TestNoRoomForCrosses(t *testing.T) {
	whole := onStock(t, 800, 700, geom.Box{Min: geom.Pt(30, 40), Max: geom.Pt(770, 660)})
	if parts, err := whole.InFields(export.Fields{Reach: 900, Step: 1}); err != nil || len(parts) != 1 || parts[0].Field != nil {
		t.Errorf("%d fields, %v", len(parts), err)
	}
	for _, height := range []float64{300, 1500} {
		full := func(margin float64) export.Drawing {
			return onStock(t, 4000, height, geom.Box{Min: geom.Pt(margin, margin), Max: geom.Pt(4000-margin, height-margin)})
		}
		_, err := full(5).InFields(export.Fields{Reach: 900, Step: 1})
		var none *export.NoMatchError
		if !errors.As(err, &none) || none.From < 450 || none.To != 900 || none.Strip > 40 {
			t.Fatalf("%v", err)
		}
		if parts, err := full(none.Strip).InFields(export.Fields{Reach: 900, Step: 1}); err != nil || len(parts) < 5 {
			t.Errorf("a strip of %g mm: %d fields, %v", none.Strip, len(parts), err)
		}
	}
}
