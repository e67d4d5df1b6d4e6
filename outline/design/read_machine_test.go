package design

import (
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
	"pgregory.net/rapid"
)

// A machine's own file says the same as its table in a design.
func TestReadMachine(t *testing.T) {
	text := soundDesigns(t)["ordinary_machine"]
	_, part, _ := strings.Cut(text, "[machine]")
	got, _, err := ReadMachine("m.toml", []byte("[machine]"+part))
	if err != nil {
		t.Fatal(err)
	}
	if diff := cmp.Diff(read(t, "whole", text).Machine, got); diff != "" {
		t.Errorf("(-design +own file):\n%s", diff)
	}
	if d := got.Strokes[1].Dashes(); len(d) != 4 || d[2] != 0.5 || got.Plunge != 300 || got.Jobs[0].Feed != 635 || !got.NoFrame {
		t.Errorf("dashes %v, plunge %v, feed %v, frame left out %v", d, got.Plunge, got.Jobs[0].Feed, got.NoFrame)
	}
}

func TestReadMachineFaults(t *testing.T) {
	tests := []struct{ text, want string }{
		{"", `m.toml:1:1: machine: the table is missing; write [machine] and its keys below`},
		{"[machine]\ntool = \"saw\"\n", `m.toml:2:8: machine.tool: "saw" is not known; use one of "laser", "router", "knife", "pen"`},
		{"[machine]\nkerf = 0.2\n", `m.toml:2:8: machine.kerf: 0.2 has no unit`},
		{"[machine]\nwidht = \"600 mm\"\n", `m.toml:2:1: machine.widht: is not a known key; write width`},
		{"[machine]\n[sheet]\nname = \"card\"\n", `m.toml:2:2: sheet: is not a known table`},
		{"[[machine.job]]\nfeed = \"1 m/min\"\n", `m.toml:1:3: machine.job[1].work: is missing`},
		{"[machine]\ncalibration_y = { measured = \"50 mm\" }\n", `m.toml:2:30: machine.calibration_y.measured: is more than a tenth off`},
	}
	for _, tc := range tests {
		_, _, err := ReadMachine("m.toml", []byte(tc.text))
		if err == nil || !strings.HasPrefix(err.Error(), tc.want) {
			t.Errorf("%q:\n got %v\nwant %s", tc.text, err, tc.want)
		}
	}
}

// Whatever is cut out of or written over a sound file, what comes of it are
// faults with places, or a machine.
func TestReadMachineAnything(t *testing.T) {
	_, part, _ := strings.Cut(soundDesigns(t)["ordinary_machine"], "[machine]")
	whole := "[machine]" + part
	rapid.Check(t, func(rt *rapid.T) {
		from := rapid.IntRange(0, len(whole)).Draw(rt, "from")
		to := rapid.IntRange(from, len(whole)).Draw(rt, "to")
		text := []byte(whole[:from] + rapid.StringN(0, 8, 20).Draw(rt, "text") + whole[to:])
		if _, _, err := ReadMachine("m.toml", text); err != nil {
			checkFaults(t, text, err)
		}
	})
}
