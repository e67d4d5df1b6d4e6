package drape

import "math"

// band is a symmetric positive definite matrix with all its entries within a
// width of the diagonal, and after factor its Cholesky triangle.
type band struct {
	n, width int
	low      []float64 // low[i*(width+1)+width-(i-j)] is entry (i, j), j ≤ i
}

func newBand(n, width int) *band {
	return &band{n, width, make([]float64, n*(width+1))}
}

func (b *band) row(i int) []float64 { return b.low[i*(b.width+1) : (i+1)*(b.width+1)] }

// add adds to entry (i, j) and its mirror image.
func (b *band) add(i, j int, x float64) {
	if j > i {
		i, j = j, i
	}
	b.row(i)[b.width-(i-j)] += x
}

// hold takes unknown i out: it stays 0 when the right side is 0 there.
func (b *band) hold(i int) {
	for j := max(0, i-b.width); j <= min(b.n-1, i+b.width); j++ {
		k, l := max(i, j), min(i, j)
		b.row(k)[b.width-(k-l)] = 0
	}
	b.row(i)[b.width] = 1
}

// factor replaces the matrix by its Cholesky triangle; false where it is not
// positive definite.
func (b *band) factor() bool {
	w := b.width
	for i := range b.n {
		ri := b.row(i)
		for j := max(0, i-w); j <= i; j++ {
			rj := b.row(j)
			sum := ri[w-(i-j)]
			from := max(0, i-w)
			// The columns shared by both rows are from … j−1.
			x := ri[w-(i-from) : w-(i-j)]
			y := rj[w-(j-from) : w]
			for k := range x {
				sum -= x[k] * y[k]
			}
			if j == i {
				if !(sum > 0) {
					return false
				}
				ri[w] = math.Sqrt(sum)
			} else {
				ri[w-(i-j)] = sum / rj[w]
			}
		}
	}
	return true
}

// solve replaces the right side by the solution.
func (b *band) solve(x []float64) {
	w := b.width
	for i := range b.n {
		from := max(0, i-w)
		r := b.row(i)
		sum := x[i]
		for k, l := range r[w-(i-from) : w] {
			sum -= l * x[from+k]
		}
		x[i] = sum / r[w]
	}
	for i := b.n - 1; i >= 0; i-- {
		from := max(0, i-w)
		r := b.row(i)
		x[i] /= r[w]
		xi := x[i]
		to := x[from:i]
		for k, l := range r[w-(i-from) : w] {
			to[k] -= l * xi
		}
	}
}
