package gcode

import (
	"testing"

	"slingloft/export"
	"slingloft/outline/design"
	"slingloft/outline/piece"
)

// What a machine sets goes into the place of the tool's usual settings; a job for a
// material goes over one for any, and another material is left alone. What no job
// gives stays at nothing.
func TestSettingsFor(t *testing.T) {
	m, _, err := design.ReadMachine("m.toml", []byte(`[machine]
tool = "router"
kerf = "3 mm"
lead = "2 mm"
tabs = 2
tab_width = "6 mm"
plunge = "4 mm/s"
frame = false
[[machine.job]]
work = "cut-outline"
material = "plywood"
feed = "900 mm/min"
depth = "6 mm"
pen = 3
[[machine.job]]
work = "cut-outline"
feed = "20 in/min"
passes = 4
pen = 2
[[machine.job]]
work = "lettering"
skip = true`))
	if err != nil {
		t.Fatal(err)
	}
	s := SettingsFor(m, export.Material{Name: "plywood", Stock: piece.Board})
	if s.Tool != design.Router || s.Kerf != 3 || s.Lead != 2 || s.Tabs != 2 || s.TabWidth != 6 || s.TabHeight != 0 ||
		s.Plunge != 240 || s.Frame {
		t.Errorf("settings %+v", s)
	}
	cut := s.Jobs[piece.CutOut]
	if cut.Feed != 900 || cut.Depth != 6 || cut.Passes != 4 || !cut.Named || cut.Power != 0 || !s.Jobs[piece.Lettering].Skip || s.Jobs[piece.Mark].Skip {
		t.Errorf("jobs %+v", s.Jobs)
	}
	if other := SettingsFor(m, export.Material{Name: "card", Stock: piece.Board}).Jobs[piece.CutOut]; other.Feed != 508 || other.Depth != 0 || other.Named || other.Passes != 4 {
		t.Errorf("in another material %+v", other)
	}
}

// A program that lacks its last words breaks off.
func TestFaults(t *testing.T) {
	for _, row := range []struct {
		program string
		whole   bool
	}{
		{"G0 X1.0000\nM2\n", true}, {"M30\n", true}, {"M02\r\n", true},
		{"", false}, {"G0 X1.0000\n", false}, {"( M2 )\n", false}, {"M20\n", false},
	} {
		if got, err := faults([]byte(row.program), []byte(row.program)); err != nil || (len(got) == 0) != row.whole {
			t.Errorf("faults(%q) = %v, %v", row.program, got, err)
		}
	}
}
