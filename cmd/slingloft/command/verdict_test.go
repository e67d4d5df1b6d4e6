package command

import (
	"errors"
	"strings"
	"testing"

	"slingloft/cmd/slingloft/work"
	"slingloft/outline/design"
)

// A seam that is off by more than its tolerance ends with a status of its own and
// a line that names it; a margin that is not met counts before it.
func TestVerdict(t *testing.T) {
	name, data := design.Demo()
	p, err := work.ReadFor(name, data, work.Setting{})
	if err != nil {
		t.Fatal(err)
	}
	if err := verdict(&p); err != nil {
		t.Fatalf("the built-in design: %v", err)
	}
	ask := func(want int, words ...string) {
		t.Helper()
		var s status
		if err := verdict(&p); !errors.As(err, &s) || s.code != want {
			t.Fatalf("verdict is %v, want status %d", err, want)
		}
		for _, w := range words {
			if !strings.Contains(s.Error(), w) {
				t.Errorf("%q does not say %q", s.Error(), w)
			}
		}
	}
	seam := &p.Sewn.Seams[2]
	seam.Remains = seam.Tolerance + 0.3
	ask(SeamOff, seam.String(), "mm remain")
	seam.Remains = -seam.Remains
	ask(SeamOff, seam.String())
	p.Margins().Checks[0].Ratio = 0.5 * p.Margins().Checks[0].Required
	ask(Unmet, p.Margins().Checks[0].Name(), "margin not met", seam.String())
}
