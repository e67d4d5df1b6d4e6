package work_test

import (
	"context"
	"os"
	"path/filepath"
	"strconv"
	"strings"
	"testing"

	"slingloft/cmd/slingloft/work"
	"slingloft/outline/design"
	"slingloft/outline/geom"
)

const stain = `<svg xmlns="http://www.w3.org/2000/svg" width="300mm" height="300mm" viewBox="0 0 300 300">
<path d="M150 0A150 150 0 0 1 150 300A150 150 0 0 1 150 0Z"/></svg>`

// small returns a design that is laid in little time.
func small(t testing.TB) []byte {
	t.Helper()
	data, err := os.ReadFile("../../../testdata/design/small.toml")
	if err != nil {
		t.Fatal(err)
	}
	return data
}

// stained returns a design with more behind it, in a folder with the drawing of a
// stain.
func stained(t *testing.T, more string) (name string, data []byte) {
	t.Helper()
	folder := t.TempDir()
	if err := os.WriteFile(filepath.Join(folder, "stain.svg"), []byte(stain), 0o644); err != nil {
		t.Fatal(err)
	}
	return filepath.Join(folder, "d.toml"), append(small(t), more...)
}

// No piece of the lay touches a stain that it has to keep clear of, wherever on the
// roll the stain is, and the stain is drawn where it lies.
func TestKeepOut(t *testing.T) {
	for _, at := range []geom.Point{{X: 300, Y: 500}, {X: 1200, Y: 0}, {X: 0, Y: 1100}} {
		name, data := stained(t, "\n[[extra]]\nfile = \"stain.svg\"\nas = \"keep-out\"\nx = \""+mm(at.X)+"\"\ny = \""+mm(at.Y)+"\"\n")
		p, err := work.ReadFor(name, data, work.Setting{})
		if err != nil {
			t.Fatal(err)
		}
		l, err := p.Lay(context.Background(), work.Budget{})
		if err != nil {
			t.Fatal(err)
		}
		sheets, err := p.Drawings(l, 1)
		if err != nil {
			t.Fatal(err)
		}
		var clear geom.Polyline
		var low geom.Point
		for _, line := range sheets[0].Lines {
			switch line.Name {
			case "keep-out stain":
				clear = line.Points
			case "lay edge":
				low = line.Points.Bounds().Min
			}
		}
		if got := clear.Bounds().Min.Minus(low); got.Dist(at) > 0.05 {
			t.Errorf("the stain is drawn at %v, want %v", got, at)
		}
		for _, line := range sheets[0].Lines {
			if !strings.HasSuffix(line.Name, "/cut line") {
				continue
			}
			for _, q := range clear {
				if geom.Ring(line.Points).Contains(q) {
					t.Fatalf("stain at %v: %s lies on it at %v", at, line.Name, q)
				}
			}
			for _, q := range line.Points {
				if geom.Ring(clear).Contains(q) {
					t.Fatalf("stain at %v: %s reaches into it at %v", at, line.Name, q)
				}
			}
		}
	}
}

func mm(v float64) string { return strconv.FormatFloat(v, 'f', -1, 64) + " mm" }

// The digest changes with what an extra outline's file holds, not with the machine.
func TestDigest(t *testing.T) {
	name, data := stained(t, "\n[[extra]]\nfile = \"stain.svg\"\nstock = \"board\"\n")
	digest := func(with work.Setting) string {
		p, err := work.ReadFor(name, data, with)
		if err != nil {
			t.Fatal(err)
		}
		return p.Digest
	}
	m, _, err := design.ReadMachine("m.toml", []byte("[machine]\nwidth = \"600 mm\"\nkerf = \"0.3 mm\"\n"))
	if err != nil {
		t.Fatal(err)
	}
	first := digest(work.Setting{})
	if got := digest(work.Setting{Machine: &m}); got != first {
		t.Errorf("digest %s for a machine, %s without", got, first)
	}
	path := filepath.Join(filepath.Dir(name), "stain.svg")
	if err := os.WriteFile(path, []byte(strings.Replace(stain, "M150 0", "M150 1", 1)), 0o644); err != nil {
		t.Fatal(err)
	}
	if got := digest(work.Setting{}); got == first {
		t.Errorf("digest %s for another outline", got)
	}
	if got := digest(work.Setting{Extras: []design.Extra{{File: path}}}); got == first {
		t.Errorf("digest %s with one more outline", got)
	}
}
