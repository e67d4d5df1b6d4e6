package design

import (
	"testing"

	"slingloft/outline/piece"
)

// Of the jobs for a kind of work those for a material go over those for any, wherever
// they stand, and only what is set goes over; a job that is skipped for any material is
// skipped in all.
func TestJobFor(t *testing.T) {
	m := Machine{Jobs: []Job{
		{Work: piece.CutOut, Material: "plywood", Feed: 900, Depth: 6, Pen: 3},
		{Work: piece.CutOut, Feed: 508, Passes: 4, Pen: 2},
		{Work: piece.Score, Skip: true, Power: 10},
		{Work: piece.Score, Material: "card", Power: 20},
	}}
	for _, row := range []struct {
		work     piece.Work
		material string
		want     Job
	}{
		{piece.CutOut, "plywood", Job{Feed: 900, Depth: 6, Passes: 4, Pen: 3}},
		{piece.CutOut, "card", Job{Feed: 508, Passes: 4, Pen: 2}},
		{piece.CutOut, "", Job{Feed: 508, Passes: 4, Pen: 2}},
		{piece.Score, "card", Job{Skip: true, Power: 20}},
		{piece.Mark, "card", Job{}},
	} {
		row.want.Work, row.want.Material = row.work, row.material
		if got := m.JobFor(row.work, row.material); got != row.want {
			t.Errorf("JobFor(%s, %q) = %+v, want %+v", row.work, row.material, got, row.want)
		}
	}
}

// Names of values are read back as the values that they name.
func TestNames(t *testing.T) {
	for _, tool := range Tools() {
		if got, err := ParseTool(tool.String()); got != tool || err != nil {
			t.Errorf("ParseTool(%s) = %v, %v", tool, got, err)
		}
	}
	if _, err := ParseTool("saw"); err == nil {
		t.Error("ParseTool(saw) names a tool")
	}
	for _, o := range origins() {
		m, _, err := ReadMachine("m.toml", []byte("[machine]\norigin = \""+o.String()+"\"\n"))
		if err != nil || m.Origin != o {
			t.Errorf("origin %s is read as %s, %v", o, m.Origin, err)
		}
	}
}
