package work

import (
	"math/rand/v2"
	"testing"

	"slingloft/outline/design"
	"slingloft/outline/designtest"
)

// Random designs with a lining are refused by name, or give valid outlines and seams that
// walk. More of them: go test -run LongShapes -long 1000 -long-linings.
func TestRandomLinings(t *testing.T) {
	const n = 30
	r := rand.New(rand.NewPCG(21, 18))
	made := 0
	for i := range n {
		data := design.Write(designtest.Lining(r, designtest.Design(r)))
		p, err := readFor("random.toml", data, Setting{})
		if err != nil {
			if f := faultsOf(err); len(f) == 0 || f[0].Key == "" {
				t.Errorf("design %d: %v names no key", i, err)
			}
			continue
		}
		made++
		if err := sound(&p); err != nil {
			t.Errorf("design %d: %v", i, err)
		}
		for _, q := range p.Further.Lining.Pieces {
			if err := onPiece(q); err != nil {
				t.Errorf("design %d: %v", i, err)
			}
		}
	}
	if made < n/3 {
		t.Errorf("%d of %d designs made", made, n)
	}
}
