package export

import (
	"math"
	"strconv"
)

// Fixed returns v with a set number of decimals, the one way in which any format
// turns a coordinate into text: no exponent, never a negative zero. The caller
// sees to it that v is finite.
func Fixed(v float64, decimals int) string {
	s := strconv.FormatFloat(v, 'f', decimals, 64)
	if s[0] == '-' && !hasDigit(s) {
		return s[1:]
	}
	return s
}

// hasDigit reports whether s has a digit other than 0.
func hasDigit(s string) bool {
	for _, c := range s {
		if c >= '1' && c <= '9' {
			return true
		}
	}
	return false
}

// Inside reports whether v is a number from low to high, which NaN never is.
func Inside(v, low, high float64) bool { return !math.IsNaN(v) && v >= low && v <= high }
