package design

import (
	"errors"
	"fmt"
	"os"
	"path/filepath"
	"regexp"
	"strconv"
	"strings"
	"testing"
)

// wanted is a fault that a faulty design says it has.
type wanted struct {
	line, column int
	key, hint    string
}

var wantLine = regexp.MustCompile(`^# want: (\d+):(\d+) (\S+)$`)

// expectations reads the comments at the head of a faulty design.
func expectations(t *testing.T, text string) (rule string, want []wanted) {
	t.Helper()
	for _, line := range strings.Split(text, "\n") {
		switch {
		case strings.HasPrefix(line, "# rule: "):
			rule = strings.TrimPrefix(line, "# rule: ")
		case strings.HasPrefix(line, "# want: "):
			m := wantLine.FindStringSubmatch(line)
			if m == nil {
				t.Fatalf("not a line and column and key: %q", line)
			}
			l, _ := strconv.Atoi(m[1])
			c, _ := strconv.Atoi(m[2])
			want = append(want, wanted{line: l, column: c, key: strings.TrimPrefix(m[3], "-")})
		case strings.HasPrefix(line, "# hint: "):
			want[len(want)-1].hint = strings.TrimPrefix(line, "# hint: ")
		default:
			return rule, want
		}
	}
	return rule, want
}

// Every faulty design is answered with just the faults that it says it has, at
// their places, with what would do. Those named later_… are sound as they are read;
// package work tests them.
func TestFaultyDesigns(t *testing.T) {
	files, err := filepath.Glob("../../testdata/design/faulty/*.toml")
	if err != nil || len(files) < 150 {
		t.Fatalf("%d faulty designs, %v; want at least 150", len(files), err)
	}
	for _, file := range files {
		if strings.HasPrefix(filepath.Base(file), "later_") {
			continue
		}
		t.Run(strings.TrimSuffix(filepath.Base(file), ".toml"), func(t *testing.T) {
			data, err := os.ReadFile(file)
			if err != nil {
				t.Fatal(err)
			}
			rule, want := expectations(t, string(data))
			if rule == "" || len(want) == 0 {
				t.Fatal("the file does not say which rule it breaks, or where")
			}
			_, _, err = Read("x.toml", data)
			var faults Faults
			if !errors.As(err, &faults) {
				t.Fatalf("Read: %v, want faults: %s", err, rule)
			}
			compare(t, faults, want)
		})
	}
}

// compare reports differences between faults found and wanted.
func compare(t *testing.T, faults Faults, want []wanted) {
	t.Helper()
	if len(faults) != len(want) {
		t.Errorf("%d faults, want %d:\n%v", len(faults), len(want), faults)
		return
	}
	for i, f := range faults {
		w := want[i]
		place := fmt.Sprintf("%d:%d %s", f.Line, f.Column, f.Key)
		if want := fmt.Sprintf("%d:%d %s", w.line, w.column, w.key); place != want || !strings.Contains(English().Hint(f.Hint), w.hint) || w.hint == "" {
			t.Errorf("fault %d: %v\nwant %s with the hint %q", i, f, want, w.hint)
		}
		if strings.ContainsFunc(f.String(), func(c rune) bool { return c < ' ' }) {
			t.Errorf("fault %d is not one line: %q", i, f)
		}
	}
}
