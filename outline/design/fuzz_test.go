package design

import (
	"errors"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
	"pgregory.net/rapid"

	_ "slingloft/outline/rapidtest"
)

// FuzzRead reads anything. Faults name a place in the file on one line, in order;
// a design that is read holds only values in range and reads back from what is
// written of it.
func FuzzRead(f *testing.F) {
	_, demo := Demo()
	f.Add(demo)
	f.Add([]byte(FullStarter(true)))
	for _, text := range soundDesigns(f) {
		f.Add([]byte(text))
	}
	faulty, _ := filepath.Glob("../../testdata/design/faulty/*.toml")
	for _, file := range faulty {
		if data, err := os.ReadFile(file); err == nil {
			f.Add(data)
		}
	}
	f.Fuzz(func(t *testing.T, data []byte) { checkRead(t, data) })
}

// FuzzMachine does the same with the file of a machine's settings.
func FuzzMachine(f *testing.F) {
	f.Add([]byte("[machine]\n"))
	for _, text := range soundDesigns(f) {
		if _, own, ok := strings.Cut(text, "[machine]"); ok {
			f.Add([]byte("[machine]" + own))
		}
	}
	f.Fuzz(func(t *testing.T, data []byte) {
		m, _, err := ReadMachine("f.toml", data)
		if err != nil {
			checkFaults(t, data, err)
			return
		}
		d := Defaults()
		d.Machine = m
		inRange(t, d)
	})
}

// checkRead asserts what holds for every input.
func checkRead(t testing.TB, data []byte) {
	t.Helper()
	d, source, err := Read("f.toml", data)
	if err != nil {
		checkFaults(t, data, err)
		return
	}
	inRange(t, d)
	if p := source.At("bed.span"); p.Line < 1 || p.Line > strings.Count(string(data), "\n")+1 {
		t.Errorf("span at line %d", p.Line)
	}
	again, _, err := Read("again.toml", Write(d))
	if err != nil {
		t.Fatalf("read back: %v\n%s", err, Write(d))
	}
	if diff := cmp.Diff(d, again); diff != "" {
		t.Errorf("read back (-first +again):\n%s", diff)
	}
}

// checkFaults asserts that an error is a list of faults with places in the file.
func checkFaults(t testing.TB, data []byte, err error) {
	t.Helper()
	var faults Faults
	if !errors.As(err, &faults) || len(faults) == 0 || len(faults) > MaxFaults {
		t.Fatalf("error %v, %d faults", err, len(faults))
	}
	lines := strings.Split(strings.TrimPrefix(string(data), "\xef\xbb\xbf"), "\n")
	for i, one := range faults {
		text := one.String()
		if strings.ContainsFunc(text, func(c rune) bool { return c < ' ' || c == 0x7f }) || len(text) > 2000 {
			t.Errorf("fault %d is not one short line: %q", i, text)
		}
		if English().Found(one.Found) == "" || English().Hint(one.Hint) == "" {
			t.Errorf("fault %d says nothing: %q", i, text)
		}
		if one.Line < 1 || one.Line > len(lines) || one.Column < 1 || one.Column > len(lines[one.Line-1])+1 {
			t.Errorf("fault %d lies outside the file: %q", i, text)
		}
		if i > 0 && (one.Line < faults[i-1].Line || one.Line == faults[i-1].Line && one.Column < faults[i-1].Column) {
			t.Errorf("fault %d stands before the one ahead of it: %q", i, text)
		}
	}
}

// Lines of a sound design struck out, doubled, swapped or changed by a letter are
// either read or answered with faults.
func TestReadMangled(t *testing.T) {
	texts := soundDesigns(t)
	_, demo := Demo()
	texts["demo"] = string(demo)
	var names []string
	for name := range texts {
		names = append(names, name)
	}
	rapid.Check(t, func(rt *rapid.T) {
		lines := strings.Split(texts[rapid.SampledFrom(names).Draw(rt, "design")], "\n")
		for range rapid.IntRange(1, 5).Draw(rt, "changes") {
			lines = mangle(rt, lines)
		}
		checkRead(t, []byte(strings.Join(lines, "\n")))
	})
}

// mangle makes one change.
func mangle(rt *rapid.T, lines []string) []string {
	i := rapid.IntRange(0, len(lines)-1).Draw(rt, "line")
	out := append([]string(nil), lines...)
	switch rapid.IntRange(0, 4).Draw(rt, "change") {
	case 0:
		out[i] = ""
	case 1:
		out[i] += "\n" + lines[i]
	case 2:
		j := rapid.IntRange(0, len(lines)-1).Draw(rt, "other")
		out[i], out[j] = out[j], out[i]
	case 3:
		at := rapid.IntRange(0, len(lines[i])).Draw(rt, "at")
		out[i] = lines[i][:at] + rapid.SampledFrom([]string{`"`, "[", "]", "=", "1", " ", "-", ".", "m", "#", "\\", "\x00", "{", ",", "ä", "9999", "\r"}).Draw(rt, "letter") + lines[i][at:]
	case 4:
		at := rapid.IntRange(0, len(lines[i])).Draw(rt, "at")
		out[i] = lines[i][:at]
	}
	return out
}

// hostile are texts that are far larger or deeper than a design can be, with part of
// what is said of them.
func hostile() []struct{ name, text, want string } {
	return []struct{ name, text, want string }{
		{"too large", strings.Repeat("# filler\n", MaxSize/9+1), "at most 1048576"},
		{"deep list", "x = " + strings.Repeat("[", 9000) + strings.Repeat("]", 9000), "at most 8 levels"},
		{"deeper list", "x = " + strings.Repeat("[", 500000), "nested"},
		{"deep table", "x = " + strings.Repeat("{a=", 5000) + "1" + strings.Repeat("}", 5000), "at most 8 levels"},
		{"long path", "x" + strings.Repeat(".a", 400000) + " = 1", "at most 8 levels"},
		{"many keys", strings.Repeat("k = 1\n", 150000), "more faults follow"},
		{"many broken lines", strings.Repeat("k = 1 mm\n", 110000), "more faults follow"},
		{"many tables", strings.Repeat("[[cloth.flaw]]\n", 65000), "use at most 300"},
		{"many trials inline", "[splice]\ntrial = [" + strings.Repeat("{},", 200000) + "]", "use at most 100"},
		{"long name", "name = \"" + strings.Repeat("a", 1000000) + "\"", "at most 60"},
		{"long key", strings.Repeat("a", 1000000) + " = 1", "is not a known key"},
		{"not UTF-8", "name = \"x\"\nspan = \"\xff\"", "is not UTF-8"},
		{"zero bytes", "\x00\x00\x00", "invalid character"},
		{"nothing", "", "the table is missing"},
	}
}

func TestReadHostile(t *testing.T) {
	for _, tc := range hostile() {
		t.Run(tc.name, func(t *testing.T) {
			_, _, err := Read("f.toml", []byte(tc.text))
			if err == nil || !strings.Contains(err.Error(), tc.want) {
				t.Fatalf("error %.300v, want %q", err, tc.want)
			}
			checkFaults(t, []byte(tc.text), err)
		})
	}
}

// However large or deep, an answer takes a second at most.
func BenchmarkReadHostile(b *testing.B) {
	for _, tc := range hostile() {
		b.Run(tc.name, func(b *testing.B) {
			for b.Loop() {
				if _, _, err := Read("f.toml", []byte(tc.text)); err == nil {
					b.Fatal("no fault")
				}
			}
		})
	}
}
