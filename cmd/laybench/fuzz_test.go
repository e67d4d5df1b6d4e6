package main

import (
	"context"
	"os"
	"path/filepath"
	"testing"

	"slingloft/nest"
)

// Whatever an instance file holds, it is refused or packed into a lay that verifies.
func FuzzInstance(f *testing.F) {
	for _, text := range []string{
		`{"name":"a","width":100,"items":[{"id":0,"demand":2,"rotations":[0,180],"polygon":[[0,0],[50,0],[50,30],[0,30]]}]}`,
		`{"name":"b","width":100,"items":[{"demand":1,"free_rotation":true,"polygon":[[0,0],[5,0],[0,5]]},` +
			`{"demand":3,"polygon":[[0,0],[0,9],[7,2]]}]}`,
		`{"name":"c","width":-1,"items":[{"demand":1000000000,"polygon":[[0,0],[1,1],[2,2]]}]}`,
		`{"name":"d","width":1e300,"items":[{"demand":1,"rotations":[1e300],"polygon":[[1e308,-1e308],[5,0],[0,5]]}]}`,
		`{"name":"../e","width":1,"items":null}`, `[]`, ``,
	} {
		f.Add([]byte(text))
	}
	f.Fuzz(func(t *testing.T, text []byte) {
		path := filepath.Join(t.TempDir(), "instance.json")
		if err := os.WriteFile(path, text, 0o644); err != nil {
			t.Fatal(err)
		}
		in, err := readInstance(path)
		if err != nil {
			return
		}
		size, items := 0, in.items()
		for _, it := range items {
			size += len(it.Outline) * (1 + len(it.Turns))
			if it.Demand > 5 || it.Free {
				t.Skip("takes too long")
			}
		}
		if size > 200 {
			t.Skip("takes too long")
		}
		s := nest.Strip{Width: in.Width}
		lay, err := nest.PackStrip(context.Background(), items, s, nest.Options{Steps: 3, Workers: 1})
		if err != nil {
			return
		}
		if err := nest.Verify(items, s, lay); err != nil {
			t.Errorf("%s: %v", text, err)
		}
	})
}
