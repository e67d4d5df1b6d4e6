package design

import (
	"errors"
	"fmt"
	"os"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
)

const shelfText = `# What hangs in the workshop.
[cord."HMPE 2.5 mm"]
diameter = "2.5 mm"
strength = "9 kN"
linear_density = "3.4 g/m"

[cord.thick]
name = "polyester braid"
diameter = "5 mm"

[cloth.green]
width = "1480 mm"
areal_density = "70 g/m²"
strip_strength = "600 N/50 mm"

[bar.tube]
outer_diameter = "22 mm"
wall = "1.5 mm"
material = "6061-T6"

[thread.p70]
strength = "38 N"

[hook.ring]
diameter = "9 mm"
strength = "16 kN"
`

func shelfOf(t *testing.T, text string) *Shelf {
	t.Helper()
	s, err := ReadShelf("shelf.toml", []byte(text))
	if err != nil {
		t.Fatal(err)
	}
	return s
}

// taking returns a design that takes things from a shelf: the least sound one, without
// its own cords, cloth and bars.
func taking(t *testing.T, more string) string {
	t.Helper()
	data, err := os.ReadFile("../../testdata/design/sound/ordinary_least.toml")
	if err != nil {
		t.Fatal(err)
	}
	var out []string
	keep := true
	for _, line := range strings.Split(string(data), "\n") {
		if strings.HasPrefix(line, "[") {
			keep = !strings.HasPrefix(line, "[cord") && !strings.HasPrefix(line, "[cloth") && !strings.HasPrefix(line, "[bar")
		}
		if keep {
			out = append(out, line)
		}
	}
	return strings.Join(out, "\n") + more
}

const uses = `
[cord.side]
use = "HMPE 2.5 mm"
strength = "8 kN"
[cord.leg]
use = "thick"
[cloth]
use = "green"
gap = "7 mm"
[bar]
use = "tube"
[seam]
use_thread = "p70"
[hang]
use_hook = "ring"
`

// A design has the values of the entries that it names, but for its own; it is the same
// design as one that gives all of them, and so is its text.
func TestShelfIsTaken(t *testing.T) {
	d, source, err := ReadWith("x.toml", []byte(taking(t, uses)), shelfOf(t, shelfText))
	if err != nil {
		t.Fatal(err)
	}
	plain, _, err := Read("y.toml", []byte(taking(t, `
[cord.side]
name = "HMPE 2.5 mm"
diameter = "2.5 mm"
strength = "8 kN"
linear_density = "3.4 g/m"
[cord.leg]
name = "polyester braid"
diameter = "5 mm"
[cloth]
name = "green"
width = "1480 mm"
areal_density = "70 g/m²"
strip_strength = "600 N/50 mm"
gap = "7 mm"
[bar]
name = "tube"
outer_diameter = "22 mm"
wall = "1.5 mm"
material = "6061-T6"
[seam]
thread = "p70"
thread_strength = "38 N"
[hang]
hook_diameter = "9 mm"
hook_strength = "16 kN"
`)))
	if err != nil {
		t.Fatal(err)
	}
	if diff := cmp.Diff(plain, d); diff != "" {
		t.Errorf("-typed in +from the shelf:\n%s", diff)
	}
	if string(Write(d)) != string(Write(plain)) {
		t.Error("the values are alike, the written designs are not")
	}
	// A later stage's fault of a value on the shelf names the shelf; of an own one the design.
	for key, place := range map[Key]string{
		KeyClothWidth: "shelf.toml:12:9", KeyCordSideDiameter: "shelf.toml:3:12", "cord.side.strength": "x.toml:", KeyClothGap: "x.toml:",
	} {
		if f := source.Fault(key, Told("is wrong"), Say(ChangeThis)); !strings.HasPrefix(f.String(), place) {
			t.Errorf("%s: %s, want %s", key, f, place)
		}
	}
	// A value that is tried goes over the shelf's, into the design.
	text, err := OpenText("x.toml", []byte(taking(t, uses)))
	if err == nil {
		text, err = text.Set(KeyClothWidth, "1600 mm")
	}
	if err != nil {
		t.Fatal(err)
	}
	if d, _, err = ReadWith("x.toml", text.Bytes(), shelfOf(t, shelfText)); err != nil || d.Cloth.Width != 1600 {
		t.Errorf("width %g, %v", d.Cloth.Width, err)
	}
}

// Values that do not go together are told of where they stand.
func TestShelfFaults(t *testing.T) {
	for _, r := range []struct{ name, shelf, uses, want string }{
		{"misspelt entry", shelfText, strings.Replace(uses, `"tube"`, `"tub"`, 1), `x.toml:*: bar.use: "tub" is not on the shelf; write tube`},
		{"another entry", shelfText, strings.Replace(uses, `"tube"`, `"oak"`, 1), `x.toml:*: bar.use: "oak" is not on the shelf; the shelf has tube`},
		{"value out of range", strings.Replace(shelfText, "1480 mm", "14 mm", 1), uses, "shelf.toml:12:9: cloth.green.width: \"14 mm\" is too small; *"},
		{"no unit", strings.Replace(shelfText, `"38 N"`, "38", 1), uses, "shelf.toml:22:12: thread.p70.strength: 38 has no unit; *"},
		{"unknown key", strings.Replace(shelfText, "areal_density", "aerial_density", 1), uses, "shelf.toml:13:1: cloth.green.aerial_density: is not a known key; write areal_density"},
		{"unknown kind", shelfText + "\n[rope.x]\ndiameter = \"3 mm\"\n", uses, "shelf.toml:*: rope: is no kind of thing on a shelf; a shelf holds cord, cloth, bar, thread, hook*"},
		{"value outside", "[cord]\ndiameter = \"3 mm\"\n", uses, "shelf.toml:2:1: cord.diameter: stands outside of an entry; write [cord.name]*"},
		{"too thick a wall", strings.Replace(shelfText, `wall = "1.5 mm"`, `wall = "15 mm"`, 1), uses, "shelf.toml:18:8: bar.wall: is half the outer diameter or more; *"},
	} {
		shelf, err := ReadShelf("shelf.toml", []byte(r.shelf))
		if err == nil {
			_, _, err = ReadWith("x.toml", []byte(taking(t, r.uses)), shelf)
		}
		var faults Faults
		if !errors.As(err, &faults) || len(faults) != 1 || !like(faults[0].String(), r.want) {
			t.Errorf("%s: %v, want %s", r.name, err, r.want)
		}
	}
	// Without a shelf each use says what to do, and nothing else is missing.
	_, _, err := Read("x.toml", []byte(taking(t, uses)))
	var faults Faults
	if !errors.As(err, &faults) || len(faults) != 6 {
		t.Errorf("%v: want a fault for each of six uses", err)
	}
	for _, f := range faults {
		if f.Key.Name()[:3] != "use" || !strings.Contains(f.String(), "into shelf.toml beside the design") {
			t.Errorf("%s", f)
		}
	}
}

// like reports whether text is like a pattern in which * stands for anything.
func like(text, pattern string) bool {
	parts := strings.Split(pattern, "*")
	if !strings.HasPrefix(text, parts[0]) {
		return false
	}
	text = text[len(parts[0]):]
	for i, p := range parts[1:] {
		at := strings.Index(text, p)
		if at < 0 || i == len(parts)-2 && p != "" && !strings.HasSuffix(text, p) {
			return false
		}
		text = text[at+len(p):]
	}
	return true
}

// A design says which shelf it takes from, and whether it takes anything.
func TestShelfOf(t *testing.T) {
	for _, r := range []struct {
		text, name string
		takes      bool
	}{
		{"name = \"x\"\n", "", false}, {"shelf = \"../mine.toml\"\n", "../mine.toml", false}, {"[bar]\nuse = \"x\"\n", "", true},
		{"cord.side.use = \"x\"\n", "", true}, {"shelf = 3\ncord = { leg = { use = \"x\" } }\n", "", true}, {"use = \"x\"\n", "", false},
	} {
		name, takes := ShelfOf([]byte(r.text))
		if got, want := fmt.Sprint(name, takes), fmt.Sprint(r.name, r.takes); got != want {
			t.Errorf("%q: %s, want %s", r.text, got, want)
		}
	}
}

// Whatever a shelf holds is answered with faults, never with a panic.
func FuzzShelf(f *testing.F) {
	f.Add([]byte(shelfText))
	f.Add([]byte("cord = 3\n[[bar]]\n[cloth.x.y]\n[hook]\nring = { diameter = { a = 1 } }\n"))
	f.Fuzz(func(t *testing.T, data []byte) {
		s, err := ReadShelf("shelf.toml", data)
		var faults Faults
		if err != nil && !errors.As(err, &faults) {
			t.Fatalf("%v is no list of faults", err)
		}
		if err == nil {
			checkNames(t, s)
		}
	})
}

// checkNames wants every entry to be found by its name.
func checkNames(t *testing.T, s *Shelf) {
	t.Helper()
	for kind := range s.kinds {
		for _, name := range s.names(kind) {
			if s.find(kind, name) == nil {
				t.Errorf("%s %q is not found", kind, name)
			}
		}
	}
}
