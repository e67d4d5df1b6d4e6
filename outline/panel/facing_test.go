package panel

import (
	"strings"
	"testing"

	"slingloft/outline/design"
	"slingloft/outline/flat"
	"slingloft/outline/hung"
	"slingloft/outline/words"
)

// A facing has the numbers of its side's notches on it, inside its net line, as the
// body that it is sewn to has.
func TestFacingNumbers(t *testing.T) {
	_, data := design.Demo()
	text := strings.Replace(string(data), `kind = "strip"`, `kind = "facing"`, 1)
	d, _, err := design.Read("facing.toml", []byte(text))
	if err != nil || d.Channel.Kind != design.Facing {
		t.Fatalf("kind %v, %v", d.Channel.Kind, err)
	}
	s, err := hung.Solve(hung.ProblemOf(d))
	if err != nil {
		t.Fatal(err)
	}
	body, err := flat.Lay(&s, false)
	if err != nil {
		t.Fatal(err)
	}
	sewn, err := Pieces(d, &s, &body, "00000000", words.EnglishLettering())
	if err != nil {
		t.Fatal(err)
	}
	for _, p := range sewn.Pieces {
		side, ok := strings.CutPrefix(p.ID, "facing-")
		if !ok {
			continue
		}
		for _, n := range sewn.SideNotches {
			want := strings.ToUpper(side[:1]) + n.Name[1:]
			found := false
			for _, l := range p.Labels {
				if l.Text == want {
					found = true
					if !p.Net.Contains(l.At) {
						t.Errorf("%s: %s stands at %v, outside the net line", p.ID, want, l.At)
					}
				}
			}
			if !found {
				t.Errorf("%s has no number %s", p.ID, want)
			}
		}
	}
}
