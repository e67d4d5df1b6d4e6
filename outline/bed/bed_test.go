package bed_test

import (
	"testing"

	"slingloft/outline/bed"
)

// TestOutwards holds the directions against the axes: x along the hammock, the head end
// negative, and y to the left of one who lies on the back.
func TestOutwards(t *testing.T) {
	if bed.Head.Sign() != -1 || bed.Foot.Sign() != 1 || bed.Left.Sign() != 1 || bed.Right.Sign() != -1 {
		t.Errorf("head %g, foot %g, left %g, right %g", bed.Head.Sign(), bed.Foot.Sign(), bed.Left.Sign(), bed.Right.Sign())
	}
	for _, s := range []bed.Side{bed.Left, bed.Right} {
		if name, letter := s.String(), s.Letter(); len(letter) != 1 || name[0]-'a' != letter[0]-'A' {
			t.Errorf("letter %s of the %s", letter, name)
		}
	}
	if bed.Head.String() != "head" || bed.Foot.String() != "foot" {
		t.Errorf("ends %s and %s", bed.Head, bed.Foot)
	}
}
