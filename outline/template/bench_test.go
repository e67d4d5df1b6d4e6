package template_test

import (
	"testing"

	"slingloft/outline/divide"
	"slingloft/outline/template"
	"slingloft/outline/template/templatetest"
	"slingloft/outline/words"
)

func BenchmarkSideTemplateDivided(b *testing.B) {
	curve := templatetest.Side(1440, 213, 0.3, 400, 450)
	for b.Loop() {
		out, err := template.Side("template-side", "SIDE", curve, templatetest.Options())
		if err != nil {
			b.Fatal(err)
		}
		parts, err := divide.Parts(out[0], 580, 380, divide.NewJoint(0.2), words.EnglishLettering().Boards)
		if err != nil || len(parts) != 3 {
			b.Fatal(len(parts), err)
		}
	}
}
