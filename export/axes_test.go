package export_test

import (
	"testing"

	"slingloft/export"
	"slingloft/outline/design"
	"slingloft/outline/geom"
)

func TestAxes(t *testing.T) {
	rows := []struct {
		axes export.Axes
		want geom.Point // of (10, 20) on a sheet of 100 × 60 mm
	}{
		{export.Axes{}, geom.Pt(10, 20)},
		{export.Axes{Origin: design.LowerRight}, geom.Pt(-90, 20)},
		{export.Axes{Origin: design.LowerRight, XLeft: true}, geom.Pt(90, 20)},
		{export.Axes{Origin: design.UpperLeft, YDown: true}, geom.Pt(10, 40)},
		{export.Axes{Origin: design.UpperRight, XLeft: true, YDown: true}, geom.Pt(90, 40)},
		{export.Axes{Origin: design.Middle}, geom.Pt(-40, -10)},
		{export.Axes{Swap: true}, geom.Pt(20, 10)},
	}
	corner := geom.Ring{{X: 10, Y: 20}, {X: 11, Y: 20}, {X: 10, Y: 21}} // turns left
	for _, r := range rows {
		if got := r.axes.Apply(geom.Pt(10, 20), 100, 60); got != r.want {
			t.Errorf("%+v: (10 20) is %v, want %v", r.axes, got, r.want)
		}
		if below := r.want.X < 0 || r.want.Y < 0; below != r.axes.Below() {
			t.Errorf("%+v: Below says %v", r.axes, r.axes.Below())
		}
		var moved geom.Ring
		for _, p := range corner {
			moved = append(moved, r.axes.Apply(p, 100, 60))
		}
		if mirrored := moved.Area() < 0; mirrored != r.axes.Mirrors() {
			t.Errorf("%+v: mirrored %v, Mirrors says %v", r.axes, mirrored, r.axes.Mirrors())
		}
	}
	if err := (export.Options{Axes: export.Axes{Origin: 9}}).Validate(); err == nil {
		t.Error("an origin that is no corner is taken")
	}
}
