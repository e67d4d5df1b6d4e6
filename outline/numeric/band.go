package numeric

import "math"

// Band is a symmetric positive definite matrix with all its entries within a
// width of the diagonal, and after [Band.Factor] its Cholesky triangle. The zero
// value has no rows.
type Band struct {
	n, width int
	low      []float64 // low[i*(width+1)+width-(i-j)] is entry (i, j), j ≤ i
}

// NewBand returns a matrix of zeros with n rows.
func NewBand(n, width int) *Band {
	return &Band{n, width, make([]float64, n*(width+1))}
}

func (b *Band) row(i int) []float64 { return b.low[i*(b.width+1) : (i+1)*(b.width+1)] }

// Add adds to entry (i, j) and its mirror image.
func (b *Band) Add(i, j int, x float64) {
	if j > i {
		i, j = j, i
	}
	b.row(i)[b.width-(i-j)] += float64(x)
}

// Hold takes unknown i out: it stays 0 when the right side is 0 there.
func (b *Band) Hold(i int) {
	for j := max(0, i-b.width); j <= min(b.n-1, i+b.width); j++ {
		k, l := max(i, j), min(i, j)
		b.row(k)[b.width-(k-l)] = 0
	}
	b.row(i)[b.width] = 1
}

// Factor replaces the matrix by its Cholesky triangle; false where it is not
// positive definite.
func (b *Band) Factor() bool {
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
				sum -= float64(x[k] * y[k])
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

// Solve replaces the right side by the solution; the matrix has to be factored.
func (b *Band) Solve(x []float64) {
	w := b.width
	for i := range b.n {
		from := max(0, i-w)
		r := b.row(i)
		sum := x[i]
		for k, l := range r[w-(i-from) : w] {
			sum -= float64(l * x[from+k])
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
			to[k] -= float64(l * xi)
		}
	}
}

// Clone returns a copy.
func (b *Band) Clone() *Band {
	return &Band{b.n, b.width, append([]float64(nil), b.low...)}
}
