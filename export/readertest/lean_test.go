package readertest

import (
	"strings"
	"testing"
)

// What such a controller takes and refuses, line by line.
func TestLean(t *testing.T) {
	const feed = "G21 G90\nG1 X0 Y0 F100\n"
	for _, row := range []struct{ what, program, want string }{
		{"sound", feed + "M8\nM4 S100\nG3 X10 Y0 I5 J0\nM5\nM9\nM0\nM2\n", ""},
		{"no-ops", "G17 G21 G40 G49 G80 G90 G94\nG61\n", ""},
		{"comment of any length", "( " + strings.Repeat("long ", 40) + ")", ""},
		{"umlaut in a comment", "( Lärche )", "acts at once"},
		{"hold in a comment", "( stop! )", "acts at once"},
		{"question in a comment", "( stop? )", "acts at once"},
		{"resume", "~", "acts at once"},
		{"percent", "%", "is no word"},
		{"compensation", "G41", "G41 is an error"},
		{"path blending", "G64", "G64 is an error"},
		{"mist", "M7", "M7 is an error"},
		{"tool change", "M6", "M6 is an error"},
		{"optional stop", "M1", "passed over"},
		{"80 characters", "G1" + strings.Repeat("X1", 39), "80 characters"},
		{"79 characters without blanks", "G1 F9" + strings.Repeat(" X1", 37) + "Y", "is no word"},
		{"no feed", "G1 X1", "without a feed"},
		{"no centre", feed + "G2 X1", "without a centre"},
		{"radii off by 0.006 of 1 mm", feed + "G2 X2.006 Y0 I1 J0", "radius 1 mm"},
		{"radii off by 0.004 mm", feed + "G2 X2.004 Y0 I1 J0", ""},
		{"radii off by 0.09 mm of 100", feed + "G2 X200.09 Y0 I100 J0", ""},
		{"radii off by 0.6 mm of 1000", feed + "G2 X2000.6 Y0 I1000 J0", "radius 1000 mm"},
		{"nested", "( a ( b )", "within a comment"},
	} {
		got := strings.Join(Lean(row.program), "\n")
		if row.want == "" && got != "" || !strings.Contains(got, row.want) {
			t.Errorf("%s: %q, want %q", row.what, got, row.want)
		}
	}
}
