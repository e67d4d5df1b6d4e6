package numeric_test

import (
	"math"
	"testing"

	"slingloft/outline/numeric"
)

func TestBand(t *testing.T) {
	const n, w = 40, 5
	b := numeric.NewBand(n, w)
	full := [n][n]float64{}
	for i := range n {
		for j := max(0, i-w); j <= i; j++ {
			x := math.Sin(float64(7*i + 3*j))
			if i == j {
				x = 9
			}
			b.Add(i, j, x)
			full[i][j], full[j][i] = x, x
		}
	}
	x := make([]float64, n)
	for i := range n {
		for j := range n {
			x[i] += full[i][j] * float64(j+1)
		}
	}
	if !b.Factor() {
		t.Fatal("not positive definite")
	}
	b.Solve(x)
	for i := range n {
		if math.Abs(x[i]-float64(i+1)) > 1e-9 {
			t.Errorf("unknown %d = %.9g, want %d", i, x[i], i+1)
		}
	}
	b = numeric.NewBand(2, 1)
	b.Add(0, 0, 1)
	b.Add(1, 0, 2)
	b.Add(1, 1, 1)
	if b.Factor() {
		t.Error("an indefinite matrix was factored")
	}
}
