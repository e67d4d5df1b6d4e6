package nest

import (
	"encoding/json"
	"math"
	"os"
	"path/filepath"
	"testing"

	"slingloft/outline/geom"
)

// load reads an instance from the shared test data.
func load(t testing.TB, name string) ([]Item, Strip) {
	t.Helper()
	data, err := os.ReadFile(filepath.Join("..", "testdata", "nesting", name+".json"))
	if err != nil {
		t.Fatal(err)
	}
	var in struct {
		Width float64
		Items []struct {
			Demand    int
			Rotations []float64
			Polygon   [][2]float64
		}
	}
	if err := json.Unmarshal(data, &in); err != nil {
		t.Fatal(err)
	}
	var items []Item
	for _, it := range in.Items {
		item := Item{Demand: it.Demand}
		for _, p := range it.Polygon {
			item.Outline = append(item.Outline, geom.Pt(p[0], p[1]))
		}
		for _, r := range it.Rotations {
			item.Turns = append(item.Turns, r*math.Pi/180)
		}
		items = append(items, item)
	}
	return items, Strip{Width: in.Width}
}
