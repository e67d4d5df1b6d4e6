package export_test

import (
	"math"
	"testing"

	"slingloft/export"
	"slingloft/export/style"
	"slingloft/outline/piece"
)

func TestStrokesWithinLimits(t *testing.T) {
	rows := []struct {
		what   string
		stroke style.Stroke
		ok     bool
	}{
		{"continuous", style.Stroke{Width: 0.25, Dash: nil}, true},
		{"dashed", style.Stroke{Width: 0.25, Dash: []float64{3, 1}}, true},
		{"no width", style.Stroke{Width: 0, Dash: nil}, false},
		{"NaN width", style.Stroke{Width: math.NaN(), Dash: nil}, false},
		{"odd dashes", style.Stroke{Width: 0.25, Dash: []float64{3}}, false},
		{"NaN dash", style.Stroke{Width: 0.25, Dash: []float64{3, math.NaN()}}, false},
		{"dash of nothing", style.Stroke{Width: 0.25, Dash: []float64{3, 0}}, false},
	}
	if err := (export.Options{}).Validate(); err != nil {
		t.Errorf("the default scheme: %v", err)
	}
	for _, r := range rows {
		if err := (export.Options{Scheme: style.Default().With(piece.Mark, r.stroke)}).Validate(); (err == nil) != r.ok {
			t.Errorf("%s: Validate says %v", r.what, err)
		}
	}
}
