package chapter

import (
	"slices"
	"strings"
	"testing"

	"slingloft/export/sheet"
	"slingloft/outline/design"
	"slingloft/outline/flat"
	"slingloft/outline/geom"
	"slingloft/outline/quantity"
)

func TestShearWords(t *testing.T) {
	b := hangs(t)
	b.Body.Shear = flat.Shear{Angle: 0.1, At: geom.Pt(-812.4, 300)}
	for limit, want := range map[quantity.Radians]string{
		0:   "is 5.7°; it lies 812 mm from mid-bay and 300 mm off the centre line.",
		0.5: "is 5.7°, against 28.6° at which this cloth locks and wrinkles; it lies 812 mm from mid-bay and 300 mm off the centre line.",
	} {
		b.Design.Cloth.LockingAngle = limit
		if got := b.shearWords(); !strings.HasSuffix(got, want) {
			t.Errorf("locking at %g: %q, want %q at its end", limit, got, want)
		}
	}
}

func TestStretchWords(t *testing.T) {
	b := hangs(t)
	say := b.Say.Assumed
	for _, row := range []struct {
		side, leg quantity.Newtons
		want      string
	}{{0, 0, say.NoStretch}, {2e5, 0, say.OneStretch}, {0, 2e5, say.OneStretch}, {2e5, 2e5, say.Stretch}} {
		b.Design.Side.Stiffness, b.Design.Leg.Stiffness = row.side, row.leg
		if got := b.stretchWords(); got != row.want {
			t.Errorf("%+v: %q", row, got)
		}
	}
}

// A straight cut has a line of its own in place of the shear.
func TestAssumptions(t *testing.T) {
	for cut, straight := range map[design.Cut]bool{design.Net: false, design.Straight: true} {
		b := hangs(t)
		b.Body.Cut = cut
		s, err := b.assumptions()
		if err != nil {
			t.Fatal(err)
		}
		list := s.Blocks[0].(sheet.List)
		if got := slices.Contains(list, b.Say.Assumed.Straight); got != straight {
			t.Errorf("cut %v: tails are called straight: %v", cut, got)
		}
		if want := len(b.Say.Assumed.Mechanics) + 3 + len(b.Say.Assumed.Strengths); len(list) != want {
			t.Errorf("cut %v: %d lines, want %d", cut, len(list), want)
		}
	}
}
