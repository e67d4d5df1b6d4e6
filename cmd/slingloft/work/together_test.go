package work_test

import (
	"context"
	"testing"

	"slingloft/cmd/slingloft/work"
	"slingloft/outline/design"
)

// Beds that are laid together take less of the roll than each by itself, and four no more
// than two pairs.
func TestTogether(t *testing.T) {
	name, data := design.Demo()
	one, err := work.ReadFor(name, data, work.Setting{})
	if err != nil {
		t.Fatal(err)
	}
	length := func(copies int) float64 {
		p, err := work.Together([]*work.Plan{&one}, copies)
		if err != nil {
			t.Fatal(err)
		}
		l, err := p.Lay(context.Background(), work.Budget{})
		if err != nil {
			t.Fatal(err)
		}
		if cloth, boards := p.Verify(l); cloth != nil || boards != nil {
			t.Errorf("%d beds: %v, %v", copies, cloth, boards)
		}
		t.Logf("%d beds: %.1f mm", copies, l.Rolls[0].Length)
		return l.Rolls[0].Length
	}
	alone, two, four := length(1), length(2), length(4)
	if two > 0.9*2*alone || four > 2*two {
		t.Errorf("one bed takes %.1f mm, two %.1f, four %.1f", alone, two, four)
	}
}
