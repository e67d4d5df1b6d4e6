package main

import (
	"encoding/json"
	"math"

	"slingloft/nest"
)

// result is a lay in a form that anyone can check: a polygon is turned by
// rotation degrees counter-clockwise about its own origin and then moved by
// (x, y).
type result struct {
	Name       string  `json:"name"`
	Width      float64 `json:"width"`
	Length     float64 `json:"length"`
	Density    float64 `json:"density"` // per cent
	Seconds    float64 `json:"seconds"`
	Placements []place `json:"placements"`
}

type place struct {
	Item     int     `json:"item"`
	Copy     int     `json:"copy"`
	Rotation float64 `json:"rotation"`
	X        float64 `json:"x"`
	Y        float64 `json:"y"`
}

// placements returns lay as JSON.
func placements(in instance, lay nest.Lay, took float64) ([]byte, error) {
	r := result{
		Name: in.Name, Width: in.Width, Length: lay.Length,
		Density: 100 * lay.Density, Seconds: math.Round(1000*took) / 1000,
	}
	for _, p := range lay.Placements {
		m := p.Motion
		r.Placements = append(r.Placements, place{in.Items[p.Item].ID, p.Copy, degrees(m.Turn), m.Shift.X, m.Shift.Y})
	}
	return json.MarshalIndent(r, "", " ")
}

// degrees converts a turn; whole quarters come out exact.
func degrees(turn float64) float64 {
	d := turn * 180 / math.Pi
	if q := 90 * math.Round(d/90); math.Abs(d-q) < 1e-9 {
		d = q
	}
	return math.Mod(math.Mod(d, 360)+360, 360)
}
