package gcode

import (
	"strings"
	"testing"
)

// What a controller acts on is a step, however it is written; nothing else is.
func TestSteps(t *testing.T) {
	for _, row := range []struct{ a, b string }{
		{"G1 X10 Y-.5 F100", "n20 g01x10.0y-0.50000 f100.0 (there)"},
		{"M5\nG0 X1", "M5 ; off\r\n\r\n( comment ) G0 X1"},
		{"", "(nothing)\n\n; and nothing\n"},
	} {
		if a, b := does(row.a), does(row.b); a != b {
			t.Errorf("%q does %q, %q does %q", row.a, a, row.b, b)
		}
	}
	const program = "G21\nG0 X1 Y2\nM3 S100\nG1 X5 F200\nM5\nM2"
	for _, other := range []string{
		program + "\nM3", strings.Replace(program, "M5", "", 1), strings.Replace(program, "M5", "(M5)", 1), strings.Replace(program, "S100", "S1000", 1),
		strings.Replace(program, "F200", "F20", 1), strings.Replace(program, "M3", "M4", 1), strings.Replace(program, "G21", "G20", 1),
		strings.Replace(program, "M3", "M3 M8", 1), "/" + program, "%\n" + program, "$H\n" + program, "#1=3\n" + program, "O1 sub\n" + program,
		strings.Replace(program, "G1 X5", "G1 X[5]", 1), strings.Replace(program, "G1 X5", "G1 X5 Z-1", 1), strings.Replace(program, "G1 X5", "G91 G1 X5", 1),
		strings.Replace(program, "M5", "M5 (Ä)", 1), strings.Replace(program, "M5", "M5 (what?)", 1), strings.Replace(program, "M5", "M5 (MSG, hello)", 1),
		strings.Replace(program, "M5", "(M5", 1), strings.Replace(program, "G1 X5", "G1 X5.0002", 1), strings.Replace(program, "M2", "M0\nM2", 1),
		strings.Replace(program, "G0 X1 Y2\nM3 S100", "M3 S100\nG0 X1 Y2", 1),
	} {
		if does(other) == does(program) {
			t.Errorf("%q does what %q does", other, program)
		}
	}
}

func does(program string) string {
	var out []string
	for _, s := range steps([]byte(program)) {
		out = append(out, s.Does)
	}
	return strings.Join(out, "\n")
}
