package numeric

// Peak returns where f is largest between a and b and the value there, for f
// with one peak, by golden-section search. The value is good to about the square
// of the last interval's share, far better than the place.
func Peak(f func(float64) float64, a, b float64) (x, value float64) {
	const ratio = 0.6180339887498949 // (√5 − 1) / 2
	const narrow = 1e-7
	c, d := b-ratio*(b-a), a+ratio*(b-a)
	fc, fd := f(c), f(d)
	for long := b - a; b-a > narrow*long; {
		if fc > fd {
			b, d, fd = d, c, fc
			c = b - ratio*(b-a)
			fc = f(c)
		} else {
			a, c, fc = c, d, fd
			d = a + ratio*(b-a)
			fd = f(d)
		}
	}
	x = (a + b) / 2
	return x, f(x)
}
