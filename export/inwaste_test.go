package export_test

import (
	"fmt"
	"math"
	"slices"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"slingloft/export"
	"slingloft/export/lettering"
	"slingloft/export/readertest"
	"slingloft/outline/geom"
	"slingloft/outline/piece"
	_ "slingloft/outline/rapidtest"
)

// A drawing on its stock is as large as it, the pieces lie where they lay, and what
// stands beside them touches none and is whole; what is missing is named.
func TestOnStock(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		scale := rapid.SampledFrom([]float64{1, 0.5, 0.2}).Draw(t, "scale")
		s := export.Sheet{Name: "cloth-lay", Title: "Lay", Edge: true, Block: export.Block{Design: "Reed", Sheet: 1, Sheets: 1}}
		right := 0.0
		for i := range rapid.IntRange(1, 4).Draw(t, "slings") {
			x, y := rapid.Float64Range(5, 300).Draw(t, "x"), rapid.Float64Range(0, 150).Draw(t, "y")
			s.Items = append(s.Items, export.Item{Piece: readertest.Sling(), Copy: i + 1, Motion: geom.Motion{Shift: geom.Pt(right+x, y)}})
			right += x + 400
		}
		s.Frame = export.Around(right+5, 372, scale)
		framed, err := export.Compose(s)
		if err != nil {
			t.Fatal(err)
		}
		d, err := framed.OnStock()
		if err != nil {
			t.Fatal(err)
		}
		if math.Abs(d.Width-right-5) > 1e-9 || math.Abs(d.Height-372) > 1e-9 {
			t.Fatalf("%g × %g mm of %g × 372", d.Width, d.Height, right+5)
		}
		checkBeside(t, d, scale)
		checkSamePieces(t, framed, d, s.Frame.Lay.Min)
	})
}

// checkBeside holds what stands beside the pieces against their outlines and its list.
func checkBeside(t *rapid.T, d export.Drawing, scale float64) {
	var rings []geom.Ring
	found := map[string]bool{}
	for _, l := range d.Lines {
		if l.Work == piece.CutOut {
			rings = append(rings, geom.Ring(l.Points))
		}
	}
	clear := func(what string, pts geom.Polyline) {
		for _, r := range rings {
			arc := geom.NewArc(r.Closed())
			for _, p := range pts {
				if _, dist := arc.Nearest(p); r.Contains(p) || dist < 2/scale {
					t.Fatalf("%s at %v lies on a piece or %g mm beside it", what, p, dist)
				}
			}
		}
	}
	for _, l := range d.Lines {
		if l.Work == piece.Register {
			clear(l.Name, geom.NewArc(l.Points).Between(0, geom.NewArc(l.Points).Length()))
			found[strings.TrimSuffix(l.Name, "/x")] = true
		}
	}
	for _, l := range d.Labels {
		if l.Text != "Sling – 7 3⁄16 in" {
			for _, stroke := range lettering.Strokes(l) {
				clear(l.Text, stroke)
			}
		}
	}
	for _, name := range []string{"bar-100mm-x", "bar-4in-x", "bar-100mm-y", "bar-4in-y", "cross lower left", "cross upper right", "title block"} {
		if found[name] == slices.Contains(d.NoRoom, name) {
			t.Fatalf("%s: drawn %v, without room %v", name, found[name], d.NoRoom)
		}
	}
}

// checkSamePieces wants every line of a piece where it was, less the frame.
func checkSamePieces(t *rapid.T, framed, d export.Drawing, shift geom.Point) {
	at := map[string]geom.Point{}
	for _, l := range framed.Lines {
		at[l.Name] = l.Points[0].Minus(shift)
	}
	for _, l := range d.Lines {
		if l.Owner.Piece != "" && l.Points[0].Dist(at[l.Name]) > 1e-9 {
			t.Fatalf("%s at %v, want %v", l.Name, l.Points[0], at[l.Name])
		}
	}
}

// Where pieces leave no waste nothing else is drawn.
func TestNoWaste(t *testing.T) {
	s := export.Sheet{Name: "cloth-lay", Frame: export.Around(400, 220, 1), Items: []export.Item{{Piece: readertest.Sling(), Copy: 1}}}
	s.Items[0].Piece.Cut = geom.Ring{{X: 0, Y: 0}, {X: 400, Y: 0}, {X: 400, Y: 220}, {X: 0, Y: 220}}
	framed, err := export.Compose(s)
	if err != nil {
		t.Fatal(err)
	}
	d, err := framed.OnStock()
	if err != nil || len(d.NoRoom) != 9 || len(d.Room()) != 1 {
		t.Errorf("%v, without room %q", err, d.NoRoom)
	}
	if slices.ContainsFunc(d.Lines, func(l piece.Line) bool { return l.Work == piece.Register }) {
		t.Error("something was drawn")
	}
}

// A piece alone is drawn where it lay beside the others, which keep their room.
func TestOnlySome(t *testing.T) {
	s := export.Sheet{Name: "cloth-lay", Frame: export.Around(860, 240, 1)}
	for i, x := range []float64{5, 430} {
		p := readertest.Sling()
		p.ID = fmt.Sprint("sling", i)
		s.Items = append(s.Items, export.Item{Piece: p, Copy: 1, Motion: geom.Motion{Shift: geom.Pt(x, 5)}})
	}
	all, err := export.Compose(s)
	if err != nil {
		t.Fatal(err)
	}
	stock, err := all.OnStock()
	if err != nil {
		t.Fatal(err)
	}
	part, err := all.Only([]string{"sling1"})
	if err != nil {
		t.Fatal(err)
	}
	d, err := part.OnStock()
	if err != nil || !slices.Equal(d.NoRoom, stock.NoRoom) {
		t.Fatalf("%v, without room %q, %q with all pieces", err, d.NoRoom, stock.NoRoom)
	}
	for _, l := range d.Lines {
		if l.Owner.Piece == "sling0" {
			t.Errorf("%s is drawn", l.Name)
		}
	}
	if !slices.ContainsFunc(d.Lines, func(l piece.Line) bool { return l.Name == "sling1-1/cut line" }) || !slices.Equal(part.Pieces(), all.Pieces()) {
		t.Error("the piece is not drawn, or the sheet lost one")
	}
}
