package chapter

import (
	"slices"
	"testing"

	"slingloft/export/sheet"
	"slingloft/outline/design"
)

// Cords are pulled where their first stretch is to be taken out: before they are marked,
// or as a chain where its nodes are read.
func TestFirstLoad(t *testing.T) {
	b := hangs(t)
	o := b.Say.Order
	for _, row := range []struct {
		load         design.FirstLoad
		nodesRead    bool
		before, last []string // titles
	}{
		{design.LeaveSet, false, nil, nil},
		{design.CutSet, false, nil, nil},
		{design.PullSet, false, []string{o.Pull.Title}, nil},
		{design.LeaveSet, true, nil, []string{o.Read.Title}},
		{design.PullSet, true, nil, []string{o.PullRead.Title}},
	} {
		b.Design.Accuracy.FirstLoad, b.Design.Accuracy.NodesRead = row.load, row.nodesRead
		title := func(s sheet.Step) string { return s.Title }
		before, last := each(b.stepsPull(), title), each(b.stepsRead(), title)
		if !slices.Equal(before, row.before) || !slices.Equal(last, row.last) {
			t.Errorf("first load %d, nodes read %v: %q and %q, want %q and %q", row.load, row.nodesRead, before, last, row.before, row.last)
		}
	}
}
