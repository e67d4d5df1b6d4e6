package chapter

import (
	"slices"
	"testing"

	"slingloft/export/sheet/wording"
	"slingloft/outline/design"
)

// Cords are pulled where their first stretch is to be taken out: before they are marked,
// or as a chain where its nodes are read. Nodes that are marked are checked.
func TestFirstLoad(t *testing.T) {
	b := hangs(t)
	of := func(more ...wording.Task) []wording.Task { return more }
	for _, row := range []struct {
		load      design.FirstLoad
		nodesRead bool
		want      []wording.Task
	}{
		{design.LeaveSet, false, of(wording.CheckNodes)},
		{design.CutSet, false, of(wording.CheckNodes)},
		{design.PullSet, false, of(wording.PullCords, wording.CheckNodes)},
		{design.LeaveSet, true, of(wording.ReadNodes)},
		{design.PullSet, true, of(wording.SetChains, wording.ReadNodes)},
	} {
		b.Design.Accuracy.FirstLoad, b.Design.Accuracy.NodesRead = row.load, row.nodesRead
		got := slices.DeleteFunc(b.kinds(), func(k wording.Task) bool {
			return !slices.Contains(of(wording.PullCords, wording.SetChains, wording.ReadNodes, wording.CheckNodes), k)
		})
		if !slices.Equal(got, row.want) {
			t.Errorf("first load %d, nodes read %v: %q, want %q", row.load, row.nodesRead, got, row.want)
		}
	}
}
