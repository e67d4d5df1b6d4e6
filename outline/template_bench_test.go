package outline_test

import (
	"testing"

	"slingloft/outline"
)

func BenchmarkSideTemplateDivided(b *testing.B) {
	curve := outline.SideCurve{Line: parabola(1440, 213, 0.3, 400)}
	for b.Loop() {
		out, err := outline.SideTemplate("template-side", "SIDE", curve, templateOptions())
		if err != nil {
			b.Fatal(err)
		}
		parts, err := outline.Divide(out[0], 580, 380, outline.NewJoint(0.2))
		if err != nil || len(parts) != 3 {
			b.Fatal(len(parts), err)
		}
	}
}
