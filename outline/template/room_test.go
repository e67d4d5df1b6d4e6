package template_test

import (
	"fmt"
	"math"
	"slices"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"slingloft/outline/piece"
	_ "slingloft/outline/rapidtest"
	"slingloft/outline/template"
	"slingloft/outline/template/templatetest"
)

// Strips for a small sheet fit it and need no joint: laid end to end, each from the mark
// that the one before ends with, every mark lies where it should, and its figure says so.
func TestStripsGoOn(t *testing.T) {
	rapid.Check(t, func(rt *rapid.T) {
		marks := []template.GaugeMark{{ID: "ZERO", Name: "ZERO"}}
		for i := range rapid.IntRange(1, 6).Draw(rt, "marks") {
			at := marks[len(marks)-1].At + rapid.Float64Range(8, 700).Draw(rt, "step")
			marks = append(marks, template.GaugeMark{ID: fmt.Sprint("M", i), Name: fmt.Sprint("M", i), At: at})
		}
		o := templatetest.Options()
		o.Room = template.Room{Width: rapid.Float64Range(300, 900).Draw(rt, "width"), Height: rapid.Float64Range(150, 280).Draw(rt, "height")}
		strips, err := template.Strips("gauge", "NOTCHES", marks, o)
		if err != nil {
			rt.Fatal(err)
		}
		at, found := 0.0, map[string]float64{}
		for i, p := range strips {
			templatetest.MustBeSound(t, p)
			if !o.Room.Fits(p) {
				rt.Fatalf("strip %d of %v mm has no room", i+1, p.Cut.Bounds())
			}
			last := 0.0
			for _, l := range p.Lines {
				name, place := strings.TrimPrefix(l.Name, "mark "), at+l.Points[0].X
				if before, ok := found[name]; ok && name != "GO ON" && math.Abs(before-place) > 1e-9 {
					rt.Fatalf("%s at %g and %g mm", name, before, place)
				}
				found[name], last = place, max(last, l.Points[0].X)
			}
			at += last
		}
		for _, m := range marks {
			if math.Abs(found[m.ID]-m.At) > 1e-6 {
				rt.Fatalf("%s at %g mm, want %g", m.ID, found[m.ID], m.At)
			}
			if text := fmt.Sprintf("%s %.1f", m.Name, m.At); !lettered(strips, text) {
				rt.Fatalf("%q is not lettered", text)
			}
		}
	})
}

func lettered(pieces []piece.Piece, text string) bool {
	return slices.ContainsFunc(pieces, func(p piece.Piece) bool {
		return slices.ContainsFunc(p.Labels, func(l piece.Label) bool { return l.Text == text })
	})
}

// A gauge that fits is one, as it was, and a step gauge that does not has its steps on
// several.
func TestStepsShared(t *testing.T) {
	o := templatetest.Options()
	marks := []template.GaugeMark{{ID: "A", Name: "A", At: 10}, {ID: "B", Name: "B", At: 15}, {ID: "C", Name: "C", At: 20}}
	one, err := template.Steps(template.PressGauge, "gauge-press", "PRESS", marks, o)
	if err != nil || len(one) != 1 || one[0].ID != "gauge-press" || one[0].Title != "PRESS" {
		t.Fatalf("%d gauges, %v", len(one), err)
	}
	o.Room = template.Room{Width: 200, Height: 100}
	several, err := template.Steps(template.PressGauge, "gauge-press", "PRESS", marks, o)
	if err != nil || len(several) != 2 || several[1].ID != "gauge-press-2" || several[1].Title != "PRESS 2 OF 2" {
		t.Fatalf("%d gauges, %v", len(several), err)
	}
	for i, p := range several {
		if !o.Room.Fits(p) {
			t.Errorf("gauge %d of %v mm has no room", i+1, p.Cut.Bounds())
		}
	}
	for _, text := range []string{"A 10.0", "B 15.0", "C 20.0"} {
		if !lettered(several, text) {
			t.Errorf("%q is not lettered", text)
		}
	}
	o.Room = template.Room{Width: 30, Height: 20} // for nothing
	if whole, err := template.Steps(template.PressGauge, "gauge-press", "PRESS", marks, o); err != nil || len(whole) != 1 {
		t.Errorf("%d gauges, %v", len(whole), err)
	}
	if whole, err := template.Strips("gauge", "G", marks, o); err != nil || len(whole) != 1 {
		t.Errorf("%d strips, %v", len(whole), err)
	}
}
