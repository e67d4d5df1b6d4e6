package main

import (
	"encoding/json"
	"fmt"
	"math"
	"os"
	"path/filepath"
	"regexp"

	"slingloft/nest"
	"slingloft/outline/geom"
)

// instance is a strip packing problem as the files hold it; lengths in any one
// unit, angles in degrees counter-clockwise.
type instance struct {
	Name  string  `json:"name"`
	Width float64 `json:"width"`
	Items []struct {
		ID        int          `json:"id"`
		Demand    int          `json:"demand"`
		Free      bool         `json:"free_rotation"`
		Rotations []float64    `json:"rotations"`
		Polygon   [][2]float64 `json:"polygon"`
	} `json:"items"`
}

// readInstance reads an instance. Its name must do as a file name.
func readInstance(path string) (instance, error) {
	var in instance
	data, err := os.ReadFile(path)
	if err != nil {
		return in, err
	}
	if err := json.Unmarshal(data, &in); err != nil {
		return in, fmt.Errorf("%s: %w", filepath.Base(path), err)
	}
	if !regexp.MustCompile(`^[A-Za-z0-9_-]+$`).MatchString(in.Name) {
		return in, fmt.Errorf("%s: name %q is not made of letters, digits, - and _", filepath.Base(path), in.Name)
	}
	return in, nil
}

// items returns the pieces of the instance.
func (in instance) items() []nest.Item {
	var out []nest.Item
	for _, it := range in.Items {
		item := nest.Item{Demand: it.Demand, Free: it.Free}
		for _, p := range it.Polygon {
			item.Outline = append(item.Outline, geom.Pt(p[0], p[1]))
		}
		for _, d := range it.Rotations {
			item.Turns = append(item.Turns, d*math.Pi/180)
		}
		out = append(out, item)
	}
	return out
}
