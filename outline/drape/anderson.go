package drape

import "slingloft/outline/numeric"

// mixer accelerates a fixed-point iteration by Anderson's method (D. G. Anderson,
// J. ACM 12, 1965; for splittings, J. Zhang et al., Accelerating ADMM for
// efficient simulation and optimization, 2019).
type mixer struct {
	depth    int
	weight   []float64   // scales of the entries in the norm
	dStep    [][]float64 // changes of the plain step, scaled
	dNext    [][]float64 // changes of the place after the plain step
	lastStep []float64
	lastNext []float64
	gram     [][]float64
	used     int // pairs in store
	at       int // where the next pair goes
	started  bool
}

func newMixer(depth int, weight []float64) *mixer {
	n := len(weight)
	m := &mixer{depth: depth, weight: weight, lastStep: make([]float64, n), lastNext: make([]float64, n)}
	for range depth {
		m.dStep = append(m.dStep, make([]float64, n))
		m.dNext = append(m.dNext, make([]float64, n))
		m.gram = append(m.gram, make([]float64, depth))
	}
	return m
}

// restart forgets what is in store.
func (m *mixer) restart() { m.used, m.at, m.started = 0, 0, false }

// next moves place by the plain step and by what the last steps teach.
func (m *mixer) next(place, step []float64) {
	if m.started {
		ds, dn := m.dStep[m.at], m.dNext[m.at]
		for i := range ds {
			ds[i] = float64(m.weight[i] * (step[i] - m.lastStep[i]))
			dn[i] = place[i] + step[i] - m.lastNext[i]
		}
		m.used = min(m.used+1, m.depth)
		for k := range m.used {
			d := dot(ds, m.dStep[k])
			m.gram[m.at][k], m.gram[k][m.at] = d, d
		}
		m.at = (m.at + 1) % m.depth
	}
	m.started = true
	right := make([]float64, m.used)
	for k := range right {
		sum := 0.0
		for i, d := range m.dStep[k] {
			sum += float64(float64(d*m.weight[i]) * step[i])
		}
		right[k] = sum
	}
	copy(m.lastStep, step)
	for i := range place {
		place[i] += step[i]
	}
	copy(m.lastNext, place)
	for k, c := range m.coefficients(right) {
		for i, d := range m.dNext[k] {
			place[i] -= float64(c * d)
		}
	}
}

// coefficients solves the small least squares problem by its normal equations,
// held steady by a share of the diagonal; none where it has no answer.
func (m *mixer) coefficients(right []float64) []float64 {
	n := m.used
	if n == 0 {
		return nil
	}
	b := numeric.NewBand(n, n-1)
	for i := range n {
		for j := 0; j <= i; j++ {
			x := m.gram[i][j]
			if i == j {
				x *= 1 + 1e-8
			}
			b.Add(i, j, x)
		}
	}
	if !b.Factor() {
		return nil
	}
	b.Solve(right)
	return right
}

func dot(a, b []float64) float64 {
	sum := 0.0
	for i, x := range a {
		sum += float64(x * b[i])
	}
	return sum
}
