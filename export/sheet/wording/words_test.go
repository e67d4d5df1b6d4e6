package wording

import "testing"

func TestCount(t *testing.T) {
	c := Count{One: "1 flaw", Many: "%d flaws"}
	for n, want := range map[int]string{0: "0 flaws", 1: "1 flaw", 2: "2 flaws", 21: "21 flaws"} {
		if got := c.Of(n); got != want {
			t.Errorf("%d: %q, want %q", n, got, want)
		}
	}
}
