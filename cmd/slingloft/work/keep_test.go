package work_test

import (
	"context"
	"encoding/json"
	"reflect"
	"testing"

	"slingloft/cmd/slingloft/work"
	"slingloft/outline/design"
)

// kept lays a design's pieces and returns the plan, the lays, and what is kept of them
// as text.
func kept(t testing.TB, name string, data []byte) (work.Plan, work.Lays, []byte) {
	t.Helper()
	p, err := work.ReadFor(name, data, work.Setting{})
	if err != nil {
		t.Fatal(err)
	}
	lays, err := p.Lay(context.Background(), work.Budget{})
	if err != nil {
		t.Fatal(err)
	}
	text, err := json.Marshal(p.Keep(lays))
	if err != nil {
		t.Fatal(err)
	}
	return p, lays, text
}

// What is kept of a lay, written and read as text, gives every place again to the last
// bit, and every piece has a name of its own.
func TestKeep(t *testing.T) {
	name, demo := design.Demo()
	for name, data := range map[string][]byte{name: demo, "small.toml": small(t)} {
		p, lays, text := kept(t, name, data)
		var k work.Kept
		if err := json.Unmarshal(text, &k); err != nil {
			t.Fatal(err)
		}
		got, err := p.Restore(k)
		if err != nil {
			t.Fatal(err)
		}
		if !reflect.DeepEqual(got.Rolls[0].Placements, lays.Rolls[0].Placements) || got.Rolls[0].Length != lays.Rolls[0].Length {
			t.Errorf("%s: cloth is laid %v, was %v", name, got.Rolls[0], lays.Rolls[0])
		}
		if !reflect.DeepEqual(got.Boards.Placements, lays.Boards.Placements) || got.Boards.Beds != lays.Boards.Beds {
			t.Errorf("%s: templates are laid %v, were %v", name, got.Boards, lays.Boards)
		}
	}
}

// FuzzKept reads anything as what is kept of a lay. Where it is taken for one, every
// sheet of it can be drawn.
func FuzzKept(f *testing.F) {
	p, _, text := kept(f, "small.toml", small(f))
	f.Add(text)
	f.Add([]byte(`{"cloth":[{"piece":"x","copy":-1,"bed":-1,"turn":1e308,"at":[1e308,-1e308]}],"length":-1}`))
	f.Fuzz(func(t *testing.T, data []byte) {
		var k work.Kept
		if json.Unmarshal(data, &k) != nil {
			return
		}
		got, err := p.Restore(k)
		if err != nil {
			return
		}
		if _, err := p.Drawings(got, 1); err != nil {
			t.Errorf("no sheets: %v", err)
		}
	})
}
