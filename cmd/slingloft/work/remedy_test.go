package work_test

import (
	"errors"
	"fmt"
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"

	"slingloft/cmd/slingloft/work"
	"slingloft/outline/design"
)

// advice is a value that a message names for a key, in TOML.
type advice struct{ key, value string }

// What a maker would read out of a hint.
var (
	writes  = regexp.MustCompile(`(?:^|; )write (?:([a-z_]+) = )?("[^"]+"|-?[0-9][^ ,;]*)(?:$| or |;)`)
	bounds  = regexp.MustCompile(`(?:^|; )use (-?[0-9][0-9./ ]*(?: ?[a-zA-Z²³%][a-zA-Z²³/0-9 ]*?)?) or (?:more|less)`)
	instead = regexp.MustCompile(`or a ([a-z_]+\.[a-z_]+) of ([^,;]+)`)
	named   = regexp.MustCompile(`use ([a-z]+\.[a-z_]+) (?:of|=) (-?[0-9][0-9./]*(?: [0-9/]+)?(?: [a-z]+)?)(?:$|[;,]| or (?:more|less))`)
	rolls   = regexp.MustCompile(`a roll ([0-9][0-9./]*(?: [0-9/]+)? [a-z]+) wide with (no join|one join|two joins)`)
)

// advices returns every value that a fault's hint names.
func advices(f design.Fault) []advice {
	var out []advice
	if f.Key == "" {
		return nil
	}
	if m := writes.FindStringSubmatch(design.English().Hint(f.Hint)); m != nil && m[1] == "" {
		out = append(out, advice{string(f.Key), m[2]})
	}
	if m := bounds.FindStringSubmatch(design.English().Hint(f.Hint)); m != nil {
		out = append(out, advice{string(f.Key), toml(m[1])})
	}
	for _, m := range instead.FindAllStringSubmatch(design.English().Hint(f.Hint), -1) {
		out = append(out, advice{m[1], toml(m[2])})
	}
	for _, m := range named.FindAllStringSubmatch(design.English().Hint(f.Hint), -1) {
		out = append(out, advice{m[1], toml(m[2])})
	}
	for _, m := range rolls.FindAllStringSubmatch(design.English().Hint(f.Hint), -1) {
		n := slices.Index([]string{"no join", "one join", "two joins"}, m[2])
		out = append(out, advice{fmt.Sprintf("cloth.joins %d cloth.width", n), toml(m[1])})
	}
	return out
}

// toml sets a value as the file has it: in quotes unless it is a plain number.
func toml(text string) string {
	if _, err := strconv.ParseFloat(text, 64); err == nil {
		return text
	}
	return strconv.Quote(text)
}

// followed does as advised.
func followed(t *testing.T, data []byte, a advice) []byte {
	t.Helper()
	key := a.key
	if rest, ok := strings.CutPrefix(key, "cloth.joins "); ok {
		var joins string
		joins, key, _ = strings.Cut(rest, " ")
		data = put(t, data, "cloth.joins", joins)
	}
	return put(t, data, key, a.value)
}

func put(t *testing.T, data []byte, key, value string) []byte {
	t.Helper()
	text, err := design.OpenText("x.toml", data)
	if err != nil { // not TOML: the advice is followed as in any text
		line := regexp.MustCompile(`(?m)^` + regexp.QuoteMeta(design.Key(key).Name()) + ` *=.*$`)
		return line.ReplaceAll(data, []byte(design.Key(key).Name()+" = "+value))
	}
	text, err = text.Set(design.Key(key), strings.Trim(value, `"`))
	if err != nil {
		t.Fatalf("%s = %s: %v", key, value, err)
	}
	return text.Bytes()
}

// whole reads a design with all that follows from it, plain its values alone.
func whole(data []byte) error { _, err := work.ReadFor("x.toml", data, work.Setting{}); return err }
func plain(data []byte) error { _, _, err := design.Read("x.toml", data); return err }

// obeyed follows every advice of a faulty design, each alone, and requires that its
// fault is gone and no other has come of which the hint does not warn. It returns how many there were.
func obeyed(t *testing.T, data []byte, read func([]byte) error) int {
	t.Helper()
	err := read(data)
	var faults design.Faults
	if !errors.As(err, &faults) {
		t.Fatalf("Read: %v, want faults", err)
	}
	n := 0
	for _, f := range faults {
		all := advices(f)
		if f.Hint.Bound.Given() && len(all) == 0 {
			t.Errorf("%v: a bound %q that the hint does not name", f, f.Hint.Bound.Written)
		}
		for _, a := range all {
			n++
			var left design.Faults
			if err := read(followed(t, data, a)); err != nil && !errors.As(err, &left) {
				t.Errorf("%v: %v", a, err)
			}
			for _, g := range left {
				again := g.Key == f.Key && g.Line == f.Line
				if fresh := !slices.ContainsFunc(faults, func(h design.Fault) bool { return h.Key == g.Key }); again || fresh && !slices.Contains(f.Hint.With, g.Key) {
					t.Errorf("%v\nanswered with %s = %s, but then\n%v", f, a.key, a.value, g)
				}
			}
		}
	}
	return n
}

// Advice that is followed ends the fault: in every faulty design that we have, those
// that cannot be built with all stages …
func TestAdviceOfTheCorpus(t *testing.T) {
	files, err := filepath.Glob("../../../testdata/design/faulty/*.toml")
	if err != nil || len(files) < 150 {
		t.Fatalf("%d faulty designs, %v", len(files), err)
	}
	n := 0
	for _, file := range files {
		t.Run(strings.TrimSuffix(filepath.Base(file), ".toml"), func(t *testing.T) {
			data, err := os.ReadFile(file)
			if err != nil {
				t.Fatal(err)
			}
			read := plain
			if base := filepath.Base(file); strings.HasPrefix(base, "build_") || strings.HasPrefix(base, "later_") || strings.HasPrefix(base, "several_") {
				read = whole
			}
			n += obeyed(t, data, read)
		})
	}
	t.Logf("%d values followed", n)
	if n < 60 {
		t.Errorf("only %d values to follow", n)
	}
}

// … and where shape, cloth and cords say no, which only later stages know.
func TestAdviceOfLaterStages(t *testing.T) {
	_, demo := design.Demo()
	inches, err := os.ReadFile("../../../testdata/design/inches.toml")
	if err != nil {
		t.Fatal(err)
	}
	for _, tc := range []struct {
		name    string
		data    []byte
		changes []advice
	}{
		{"hollow", demo, []advice{{"cap.hollow", `"600 mm"`}}},
		{"bury", demo, []advice{{"splice.bury", `"900 mm"`}}},
		{"eye bury", demo, []advice{{"splice.eye_bury", `"700 mm"`}}},
		{"radius", demo, []advice{{"bed.underbody_radius", `"600 mm"`}}},
		{"head leg", demo, []advice{{"bed.head_leg", `"150 mm"`}}},
		{"foot leg", demo, []advice{{"bed.foot_leg", `"420 mm"`}}},
		{"roll", demo, []advice{{"cloth.width", `"900 mm"`}, {"cloth.flaw[1].low", `"840 mm"`}, {"cloth.flaw[1].high", `"890 mm"`}}},
		{"narrow roll", demo, []advice{{"cloth.width", `"500 mm"`}, {"cloth.flaw[1].low", `"100 mm"`}, {"cloth.flaw[1].high", `"150 mm"`}}},
		{"drop", demo, []advice{{"bed.head_drop", `"900 mm"`}}},
		{"side depth", demo, []advice{{"bed.side_depth", `"700 mm"`}}},
		{"supports", demo, []advice{{"hang.distance", `"1500 mm"`}}},
		{"channel", demo, []advice{{"channel.depth", `"4 mm"`}}},
		{"opening", demo, []advice{{"channel.opening", `"500 mm"`}}},
		{"tip gap", demo, []advice{{"splice.tip_gap", `"2 mm"`}}},
		{"eye", demo, []advice{{"splice.eye", `"10 mm"`}}},
		{"stock", demo, []advice{{"bar.stock", `"500 mm"`}}},
		{"stature", demo, []advice{{"sleeper.stature", `"2400 mm"`}}},
		{"crown", demo, []advice{{"sleeper.crown", `"900 mm"`}}},
		{"leg and bury", demo, []advice{{"bed.head_leg", `"300 mm"`}, {"splice.bury", `"250 mm"`}}},
		{"hollow in inches", inches, []advice{{"cap.hollow", `"30 in"`}}},
		{"bury in inches", inches, []advice{{"splice.bury", `"40 in"`}}},
		{"radius in inches", inches, []advice{{"bed.underbody_radius", `"20 in"`}}},
		{"leg in inches", inches, []advice{{"bed.head_leg", `"18 in"`}}},
		{"roll in inches", inches, []advice{{"cloth.width", `"30 in"`}}},
		{"depth in inches", inches, []advice{{"bed.side_depth", `"26 in"`}}},
	} {
		t.Run(tc.name, func(t *testing.T) {
			data := tc.data
			for _, c := range tc.changes {
				data = put(t, data, c.key, c.value)
			}
			if obeyed(t, data, whole) == 0 {
				t.Error("no value is named that would do")
			}
		})
	}
}

// Designs whose fault only a later stage finds are answered at the place, by the key
// and with the value that they say.
func TestFaultyAtLaterStages(t *testing.T) {
	files, err := filepath.Glob("../../../testdata/design/faulty/later_*.toml")
	if err != nil || len(files) < 3 {
		t.Fatalf("%d designs, %v", len(files), err)
	}
	head := regexp.MustCompile(`^# rule: .+\n# want: (\d+:\d+) (\S+)\n# hint: (.+)\n`)
	for _, file := range files {
		data, err := os.ReadFile(file)
		if err != nil {
			t.Fatal(err)
		}
		m := head.FindStringSubmatch(string(data))
		if m == nil {
			t.Fatalf("%s does not say which rule it breaks, or where", file)
		}
		if err := plain(data); err != nil {
			t.Errorf("%s: found as it is read: %v", file, err)
		}
		var faults design.Faults
		if err := whole(data); !errors.As(err, &faults) || len(faults) != 1 {
			t.Errorf("%s: %v, want one fault", file, err)
			continue
		}
		f := faults[0]
		if got := fmt.Sprintf("%d:%d", f.Line, f.Column); got != m[1] || string(f.Key) != m[2] || design.English().Hint(f.Hint) != m[3] {
			t.Errorf("%s: %v, want %s %s with the hint %q", file, f, m[1], m[2], m[3])
		}
	}
}
