package hpgl

import (
	"strings"
	"testing"
)

// What a plotter acts on is a step, however it is written; nothing else is.
func TestSteps(t *testing.T) {
	const file = "IN;\nPS400,300;\nPA;\nSP1;\nPU10,20;\nPD30,40,50,60;\nPU0,0;\nSP0;\n"
	for _, same := range []string{
		"in;ps 400 300;PA;SP1;PU10,20;PD30,40;PD50,60;PU0,0;SP0",
		strings.ReplaceAll(file, "\n", "\r\n"), strings.ReplaceAll(file, ";", " "),
	} {
		if does(same) != does(file) {
			t.Errorf("%q does %q, want %q", same, does(same), does(file))
		}
	}
	for _, other := range []string{
		strings.Replace(file, "SP1", "SP2", 1), strings.Replace(file, "SP1", "SP1;VS9", 1), strings.Replace(file, "PD30,40", "PU30,40", 1),
		strings.Replace(file, "PA", "PR", 1), file + "PD9,9;", strings.Replace(file, "SP1", "SP1;FS90", 1), strings.Replace(file, "PU0,0", "", 1),
		strings.Replace(file, "SP1", "LBhello\x03;SP1", 1), "\x1b%0B" + file, strings.Replace(file, "50,60", "50,61", 1), strings.Replace(file, "PA", "PA;RO90", 1),
		strings.Replace(file, "PA", "PA;SC0,1,0,1", 1), strings.Replace(file, "PA", "PA;IW0,0,9,9", 1), strings.Replace(file, "PD30,40,50,60", "PD50,60,30,40", 1),
	} {
		if does(other) == does(file) {
			t.Errorf("%q does what %q does", other, file)
		}
	}
}

func does(file string) string {
	var out []string
	for _, s := range steps([]byte(file)) {
		out = append(out, s.Does)
	}
	return strings.Join(out, "\n")
}
