package document

import "testing"

func TestRoundNumbers(t *testing.T) {
	for in, want := range map[string]string{
		`{"a 1.23456789": 1234.567890123}`: `{"a 1.23456789": 1234.56789}`,
		`[-0.000001234567891, 3, -2]`:      `[-0.0000012346, 3, -2]`,
		`{"q\"9.99999999": 9.99999999}`:    `{"q\"9.99999999": 10}`,
		`[1e-20, -1e-20, 0]`:               `[0, 0, 0]`,
		`[3.1e-12, -2e-12]`:                `[0, 0]`,
		`[6.276e-7]`:                       `[0.0000006276]`,
	} {
		if got := string(roundNumbers([]byte(in))); got != want {
			t.Errorf("roundNumbers(%s) = %s, want %s", in, got, want)
		}
	}
}
