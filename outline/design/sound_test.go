package design

import (
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
)

// soundDesigns returns the text of every sound design, by file name.
func soundDesigns(t testing.TB) map[string]string {
	t.Helper()
	files, err := filepath.Glob("../../testdata/design/sound/*.toml")
	if err != nil || len(files) == 0 {
		t.Fatalf("no sound designs: %v", err)
	}
	out := map[string]string{}
	for _, file := range files {
		data, err := os.ReadFile(file)
		if err != nil {
			t.Fatal(err)
		}
		out[strings.TrimSuffix(filepath.Base(file), ".toml")] = string(data)
	}
	return out
}

// Every sound design is read, holds only values in range, and reads back from what
// is written of it.
func TestSoundDesigns(t *testing.T) {
	for name, text := range soundDesigns(t) {
		t.Run(name, func(t *testing.T) {
			d := read(t, name, text)
			inRange(t, d)
			if diff := cmp.Diff(d, read(t, "again", string(Write(d)))); diff != "" {
				t.Errorf("read back (-first +again):\n%s", diff)
			}
		})
	}
}

// Two ways of writing the same thing give the same design.
func TestSameDesign(t *testing.T) {
	texts := soundDesigns(t)
	least := read(t, "least", texts["ordinary_least"])
	for _, name := range []string{"degenerate_dotted_keys", "degenerate_windows", "degenerate_tables_backwards", "degenerate_comments", "ordinary_same_wall_angle"} {
		d := read(t, name, texts[name])
		d.Name = least.Name
		if diff := cmp.Diff(least, d); diff != "" {
			t.Errorf("%s (-least +it):\n%s", name, diff)
		}
	}
	cat := read(t, "catenary", texts["ordinary_catenary"])
	if cat.Bed.Curve != Catenary || cat.Load.Model != Lying {
		t.Errorf("catenary: curve %v, load %v", cat.Bed.Curve, cat.Load.Model)
	}
	even := read(t, "curve", texts["ordinary_curve_sets_load"])
	if even.Bed.Curve != Balanced || even.Load.Model != Even {
		t.Errorf("even: curve %v, load %v", even.Bed.Curve, even.Load.Model)
	}
	own := read(t, "own", texts["ordinary_own_material"])
	if own.Bar.Yield != 255 || own.Bar.Modulus != 68900 {
		t.Errorf("own material: yield %v, modulus %v", own.Bar.Yield, own.Bar.Modulus)
	}
	hard := read(t, "hardware", texts["ordinary_hardware"])
	if !hard.Bed.Plain || hard.Sleeper.Lies != OnSide || hard.Hang.HookStrength != 10e3 || hard.Hang.HookDiameter != 8 ||
		hard.Hang.Travel != 120 || hard.Hang.Fastening != Hitched || hard.Bar.TipDiameter != 6 || hard.Splice.Contraction != 0.17 || !hard.Splice.Trials[0].Crossing {
		t.Errorf("hardware: %+v\n%+v\n%+v", hard.Hang, hard.Splice, hard.Bar)
	}
	trials := read(t, "trials", texts["ordinary_trials_inline"])
	if len(trials.Splice.Trials) != 2 || trials.Splice.Trials[1].After != 371 || trials.Splice.Trials[1].Crossing {
		t.Errorf("trials %v", trials.Splice.Trials)
	}
}

// inRange reports every number of d that its row does not allow. A number that was
// not given may be 0.
func inRange(t testing.TB, d Design) {
	t.Helper()
	k := allKeys()
	check := func(d Design, rows []row) {
		for _, r := range rows {
			switch v := r.get(&d).(type) {
			case float64:
				if !r.holds(v) && !r.absent(v) && r.form != choice {
					t.Errorf("%s is %v, outside %v to %v", r.key, v, r.lo, r.hi)
				}
			case int:
				if !r.holds(float64(v)) {
					t.Errorf("%s is %v", r.key, v)
				}
			case string:
				if p := checkWords(v, 60); p != nil && v != "" {
					t.Errorf("%s is %q: %v", r.key, v, p)
				}
			}
		}
	}
	for _, table := range append([]Key{""}, k.tables...) {
		l, isList := k.list(table)
		if !isList {
			check(d, k.in(table))
			continue
		}
		if l.count(&d) > l.limit {
			t.Errorf("%s has %d elements", table, l.count(&d))
		}
		for i := range l.count(&d) {
			check(l.pick(d, i), k.in(table))
		}
	}
}
