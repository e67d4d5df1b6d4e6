package chapter

import (
	"slices"
	"testing"

	"slingloft/export/sheet/wording"
	"slingloft/outline/design"
)

// Cords are pulled where their first stretch is to be taken out: before they are marked,
// or as a chain where its nodes are read.
func TestFirstLoad(t *testing.T) {
	b := hangs(t)
	of := func(more ...wording.Task) []wording.Task { return more }
	for _, row := range []struct {
		load      design.FirstLoad
		nodesRead bool
		want      []wording.Task
	}{
		{design.LeaveSet, false, nil},
		{design.CutSet, false, nil},
		{design.PullSet, false, of(wording.PullCords)},
		{design.LeaveSet, true, of(wording.ReadNodes)},
		{design.PullSet, true, of(wording.PullChains)},
	} {
		b.Design.Accuracy.FirstLoad, b.Design.Accuracy.NodesRead = row.load, row.nodesRead
		got := slices.DeleteFunc(b.kinds(), func(k wording.Task) bool {
			return k != wording.PullCords && k != wording.ReadNodes && k != wording.PullChains
		})
		if !slices.Equal(got, row.want) {
			t.Errorf("first load %d, nodes read %v: %q, want %q", row.load, row.nodesRead, got, row.want)
		}
	}
}
