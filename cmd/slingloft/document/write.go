package document

import (
	"encoding/json"
	"io"
	"math"
	"strconv"
)

// Write writes a document as JSON with every number rounded to what means something:
// a hundredth of a micrometre for lengths, seven digits for what is small. The last
// bits of a double differ between processors; what is printed must not.
func Write(w io.Writer, doc any) error {
	data, err := json.MarshalIndent(doc, "", " ")
	if err != nil {
		return err
	}
	_, err = w.Write(append(roundNumbers(data), '\n'))
	return err
}

// roundNumbers returns the JSON text with its numbers rounded, strings untouched.
func roundNumbers(data []byte) []byte {
	out := make([]byte, 0, len(data))
	for i := 0; i < len(data); {
		switch c := data[i]; {
		case c == '"':
			end := i + 1
			for data[end] != '"' {
				if data[end] == '\\' {
					end++
				}
				end++
			}
			out = append(out, data[i:end+1]...)
			i = end + 1
		case c == '-' || c >= '0' && c <= '9':
			end := i + 1
			for end < len(data) && isNumeric(data[end]) {
				end++
			}
			// The text is the encoder's own, so that it is a number.
			x, _ := strconv.ParseFloat(string(data[i:end]), 64)
			out = strconv.AppendFloat(out, rounded(x), 'f', -1, 64)
			i = end
		default:
			out = append(out, c)
			i++
		}
	}
	return out
}

func isNumeric(c byte) bool {
	return c >= '0' && c <= '9' || c == '.' || c == 'e' || c == 'E' || c == '+' || c == '-'
}

// rounded returns x with five decimals from 10 on and seven digits below, of which
// no more than ten decimals, since sums of millimetres are noise below; never a
// negative zero.
func rounded(x float64) float64 {
	if x == 0 {
		return 0
	}
	decimals := 5.0
	if m := math.Abs(x); m < 10 {
		decimals = min(6-math.Floor(math.Log10(m)), 10)
	}
	step := math.Pow(10, decimals)
	return math.Round(x*step)/step + 0
}
