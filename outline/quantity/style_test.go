package quantity

import (
	"math"
	"testing"

	"pgregory.net/rapid"

	_ "slingloft/outline/rapidtest"
)

func TestStyle(t *testing.T) {
	tests := []struct {
		style Style
		mm    float64
		want  string
	}{
		{Style{Decimals: 1}, 1650, "1650.0 mm"},
		{Style{Decimals: 2}, 0.005, "0.01 mm"},
		{Style{Decimals: 1}, -0.04, "0.0 mm"},
		{Style{Decimals: 1}, -0.05, "-0.1 mm"},
		{Style{}, 2.5, "3 mm"},
		{Style{Inches: true}, 190.5, "7 1/2 in"},
		{Style{Inches: true, Fraction: 8}, 190.5, "7 1/2 in"},
		{Style{Inches: true, Fraction: 32}, 25.4 * 5 / 32, "5/32 in"},
		{Style{Inches: true, Fraction: 16}, 25.4 * 31.5 / 32, "1 in"},
		{Style{Inches: true, Fraction: 16}, -88.9, "-3 1/2 in"},
		{Style{Inches: true, Fraction: 16}, 25.4 / 32, "1/16 in"},
		{Style{Inches: true, Fraction: 16}, -25.4 / 32, "-1/16 in"},
		{Style{Inches: true, Fraction: 3}, 25.4 / 16, "1/16 in"},
		{Style{Inches: true}, 0, "0 in"},
		{Style{Inches: true}, -0.1, "0 in"},
		{Style{Inches: true}, math.NaN(), "not finite in"},
		{Style{}, math.Inf(1), "not finite mm"},
	}
	for _, tc := range tests {
		if got := tc.style.Length(tc.mm); got != tc.want {
			t.Errorf("%+v.Length(%v) = %q, want %q", tc.style, tc.mm, got, tc.want)
		}
	}
}

// What is printed reads back within half a step.
func TestStyleReadsBack(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		mm := rapid.Float64Range(-1e5, 1e5).Draw(t, "mm")
		fraction := rapid.SampledFrom([]int{1, 2, 4, 8, 16, 32, 64}).Draw(t, "fraction")
		decimals := rapid.IntRange(0, 4).Draw(t, "decimals")
		for _, c := range []struct {
			style Style
			step  float64
		}{
			{Style{Inches: true, Fraction: fraction}, Inch / float64(fraction)},
			{Style{Decimals: decimals}, math.Pow10(-decimals)},
		} {
			text := c.style.Length(mm)
			q, err := As(text, Length)
			if err != nil {
				t.Fatalf("As(%q): %v", text, err)
			}
			ulp := math.Nextafter(math.Abs(mm), math.Inf(1)) - math.Abs(mm) // half way between two texts
			if math.Abs(q.Value-mm) > c.step/2*(1+1e-9)+ulp {
				t.Fatalf("%+v.Length(%v) = %q, off by %v", c.style, mm, text, q.Value-mm)
			}
			if again := c.style.Length(q.Value); again != text {
				t.Fatalf("%q printed again gives %q", text, again)
			}
		}
	})
}

// The exact form reads back to the same bits in every dimension.
func TestTextReadsBack(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		d := Dimension(rapid.IntRange(0, int(dimensions)-1).Draw(t, "dimension"))
		v := rapid.Float64Range(-1e9, 1e9).Filter(func(v float64) bool {
			return math.Abs(v) > 1e-30 && len(d.Text(v)) <= MaxLength
		}).Draw(t, "value")
		if q, err := As(d.Text(v), d); err != nil || q.Value != v {
			t.Fatalf("As(%q) = %v, %v, want %v", d.Text(v), q.Value, err, v)
		}
	})
}

// A rounded limit lies inside the limit, and is close to it.
func TestFormatRoundsInside(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		v := rapid.Float64Range(0.001, 1e6).Draw(t, "value")
		for _, u := range Length.Units() {
			up, err1 := As(u.Format(v, Up), Length)
			down, err2 := As(u.Format(v, Down), Length)
			if err1 != nil || err2 != nil {
				t.Fatalf("%v, %v", err1, err2)
			}
			if up.Value < v*(1-1e-8) || up.Value > v*1.002+1e-6 || down.Value > v*(1+1e-8) || down.Value < v*0.998-1e-6 {
				t.Fatalf("%v mm in %s: up %v, down %v", v, u.Symbol, up.Value, down.Value)
			}
		}
	})
	tests := []struct {
		v    float64
		r    Rounding
		want string
	}{{500, Up, "19.69 in"}, {2500, Down, "98.42 in"}, {2540, Down, "100 in"}, {12.7, Nearest, "0.5 in"}, {0, Up, "0 in"}}
	for _, tc := range tests {
		if got := Length.Unit(true).Format(tc.v, tc.r); got != tc.want {
			t.Errorf("Format(%v, %v) = %q, want %q", tc.v, tc.r, got, tc.want)
		}
	}
}

// Angles are told in degrees, in either style.
func TestAngle(t *testing.T) {
	for rad, want := range map[float64]string{0: "0.0°", math.Pi / 4: "45.0°", -0.0001: "0.0°", 1: "57.3°"} {
		for _, s := range []Style{{}, {Inches: true}} {
			if got := s.Angle(rad); got != want {
				t.Errorf("%g in %+v: %q, want %q", rad, s, got, want)
			}
		}
	}
}
