package design

import (
	"bytes"
	"errors"
	"maps"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"pgregory.net/rapid"

	_ "slingloft/outline/rapidtest"
)

// openable returns the text of every design of the project that is TOML, sound or not.
func openable(t *testing.T) map[string][]byte {
	t.Helper()
	out := map[string][]byte{"full": []byte(FullStarter(false)), "short": []byte(Starter(true))}
	for _, file := range slices.Concat(glob(t, "../../testdata/design/sound/*.toml"), glob(t, "../../testdata/design/faulty/*.toml"), []string{"demo.toml"}) {
		data, err := os.ReadFile(file)
		if err != nil {
			t.Fatal(err)
		}
		// A table where a value belongs, or the other way round, is mended by hand; a form has no place for a line break.
		base := filepath.Base(file)
		if _, err := OpenText(file, data); err == nil && !strings.HasPrefix(base, "type_") && base != "unknown_key_quoted.toml" && base != "text_line_break.toml" {
			out[file] = data
		}
	}
	return out
}

func glob(t *testing.T, pattern string) []string {
	t.Helper()
	files, err := filepath.Glob(pattern)
	if err != nil || len(files) == 0 {
		t.Fatalf("no files %s: %v", pattern, err)
	}
	return files
}

// drawText draws a sound design file of any way of writing.
func drawText(t *rapid.T, texts map[string][]byte) []byte {
	data := texts[rapid.SampledFrom(slices.Sorted(maps.Keys(texts))).Draw(t, "file")]
	if rapid.Bool().Draw(t, "crlf") && !bytes.Contains(data, []byte("\r")) {
		data = bytes.ReplaceAll(data, []byte("\n"), []byte("\r\n"))
	}
	if rapid.Bool().Draw(t, "mark") && !bytes.HasPrefix(data, []byte(byteOrderMark)) {
		data = append([]byte(byteOrderMark), data...)
	}
	if rapid.Bool().Draw(t, "open end") {
		data = bytes.TrimRight(data, "\r\n")
	}
	return data
}

// kept returns how many bytes at the start and at the end are the same in both.
func kept(a, b []byte) int {
	n := min(len(a), len(b))
	head := 0
	for head < n && a[head] == b[head] {
		head++
	}
	tail := 0
	for tail < n-head && a[len(a)-1-tail] == b[len(b)-1-tail] {
		tail++
	}
	return head + tail
}

// A value that is set is the one that the file then has; every other stays, and every
// byte but those of the value or its own new line.
func TestTextSet(t *testing.T) {
	texts := openable(t)
	rows := allKeys().rows
	rapid.Check(t, func(t *rapid.T) {
		data := drawText(t, texts)
		before, err := OpenText("t", data)
		if err != nil {
			t.Fatal(err)
		}
		if !bytes.Equal(before.Bytes(), data) {
			t.Fatal("opening changed the file")
		}
		r := rapid.SampledFrom(rows).Draw(t, "row")
		key := r.key
		if _, isList := allKeys().list(r.table()); isList {
			if before.Count(r.table()) == 0 {
				t.Skip()
			}
			key = r.table().Item(before.Count(r.table())).In(r.name())
		}
		value := rapid.SampledFrom([]string{"1", "12 mm", "1,5 m", "5 ft 3 1/2 in", "true", "side", `say "x" \ y`, "a, b", "höhe"}).Draw(t, "value")
		shown, toml := r.typed(value)
		after, err := before.Set(key, value)
		if err != nil {
			t.Fatalf("%s = %s: %v", key, value, err)
		}
		if got, ok := after.Value(key); got != shown || !ok {
			t.Fatalf("%s is %q, not %q", key, got, shown)
		}
		old, given := before.Value(key)
		same := kept(data, after.Bytes())
		switch {
		case !given && same < len(data):
			t.Fatalf("%d of %d bytes stayed where %s was added:\n%s", same, len(data), key, after.Bytes())
		case given && len(after.Bytes())-same > len(toml)+2:
			t.Fatalf("%d bytes are new for %s = %s", len(after.Bytes())-same, key, toml)
		}
		// What was there comes back byte for byte but for a value's way of writing.
		back, err := after.Set(key, old)
		if err != nil {
			t.Fatal(err)
		}
		// The header of a table that was not there stays.
		if bytes.Count(after.data, []byte("\n[")) == bytes.Count(before.data, []byte("\n[")) && !given && !bytes.Equal(bytes.TrimRight(back.Bytes(), "\r\n"), bytes.TrimRight(data, "\r\n")) {
			t.Fatalf("%s added and taken out:\n%q\n%q", key, data, back.Bytes())
		}
		if !maps.Equal(back.all(), before.all()) {
			t.Fatalf("%v\n%v", before.all(), back.all())
		}
	})
}

// Every value of every file can be taken out, and its comment stays.
func TestTextRemove(t *testing.T) {
	for name, data := range openable(t) {
		if filepath.Base(name) == "clash_old_and_new_name.toml" {
			continue // what stays takes the other's place
		}
		text, err := OpenText(name, data)
		if err != nil {
			t.Fatal(err)
		}
		for _, key := range text.Keys() {
			out, err := text.Set(key, "")
			if err != nil {
				t.Errorf("%s: %s: %v", name, key, err)
				continue
			}
			if a, b := bytes.Count(data, []byte("# ")), bytes.Count(out.Bytes(), []byte("# ")); a != b {
				t.Errorf("%s: %s: %d comments of %d are left", name, key, b, a)
			}
		}
	}
}

// A key goes with what is said of it, and nothing else does.
func TestTextStrike(t *testing.T) {
	for _, r := range []struct{ name, text, want string }{
		{"both comments", "[bar]\n# so thick\n# that it holds\nwall = \"1 mm\" # w\nname = \"x\" # n\n", "[bar]\nname = \"x\" # n\n"},
		{"a line apart", "[bar]\n# of all bars\n\nwall = \"1 mm\"\n# after\n", "[bar]\n# of all bars\n\n# after\n"},
		{"head of the file", "# my bed\nbar.wall = \"1 mm\" # w\n", "# my bed\n"},
		{"left out", "[bar]\nname = \"x\"\n# wall = \"1 mm\" # w\n", "[bar]\nname = \"x\"\n"},
		{"of another table", "[bar]\nname = \"x\"\n[bed]\n# wall = \"1 mm\"\n", "[bar]\nname = \"x\"\n[bed]\n# wall = \"1 mm\"\n"},
		{"inline", "bar = { wall = \"1 mm\", name = \"x\" } # b\n", "bar = { name = \"x\" } # b\n"},
	} {
		if out, err := opened(t, r.text).Strike(KeyBarWall); err != nil || string(out.Bytes()) != r.want {
			t.Errorf("%s: %q, %v, want %q", r.name, out.Bytes(), err, r.want)
		}
	}
	if _, err := opened(t, "[bar]\nwall = \"1 mm\"\n").Strike(KeyBarWall.Table()); !errors.Is(err, ErrByHand) {
		t.Errorf("a table: %v", err)
	}
	for name, data := range openable(t) {
		if filepath.Base(name) == "clash_old_and_new_name.toml" {
			continue // what stays takes the other's place
		}
		text, err := OpenText(name, data)
		if err != nil {
			t.Fatal(err)
		}
		for _, key := range text.Keys() {
			if out, err := text.Strike(key); err != nil || len(out.Keys()) != len(text.Keys())-1 {
				t.Errorf("%s: %s: %v", name, key, err)
			}
		}
	}
}

// An element is added to a list and taken out of it again.
func TestTextLists(t *testing.T) {
	texts := openable(t)
	rapid.Check(t, func(t *rapid.T) {
		data := bytes.TrimRight(drawText(t, texts), "\r\n")
		before, err := OpenText("t", data)
		if err != nil {
			t.Fatal(err)
		}
		list := rapid.SampledFrom(allKeys().lists).Draw(t, "list").key
		grown, err := before.Grow(list)
		if err != nil {
			t.Fatal(err)
		}
		n := grown.Count(list)
		back, err := grown.Drop(list, n)
		if err != nil {
			t.Fatal(err)
		}
		if !bytes.Equal(bytes.TrimRight(back.Bytes(), "\r\n"), data) {
			t.Fatalf("%s:\n%q\n%q", list, data, back.Bytes())
		}
		if n > 1 { // the one before moves up
			i := rapid.IntRange(1, n-1).Draw(t, "element")
			if out, err := before.Drop(list, i); err != nil || out.Count(list) != n-2 {
				t.Fatalf("%s[%d] of %d: %v", list, i, n-1, err)
			}
		}
	})
}

// What is not TOML is not opened, and says where.
func TestOpenTextRefuses(t *testing.T) {
	var faults Faults
	if _, err := OpenText("x.toml", []byte("name = \"a\"\n[bed\n")); !errors.As(err, &faults) || faults[0].Line != 2 {
		t.Errorf("%v", err)
	}
}

// The ways in which one value can be written.
func TestTextByHand(t *testing.T) {
	for _, tc := range []struct{ text, key, value, want string }{
		{"span = 1", "name", "A", "span = 1\nname = \"A\"\n"},
		{"", "bed.span", "1 m", "[bed]\nspan = \"1 m\"\n"},
		{"[bed] # the bed\n# span = \"2 m\"\nhead_bar = '900 mm' # wide\n", "bed.span", "1,5 m", "[bed] # the bed\n# span = \"2 m\"\nspan = \"1.5 m\"\nhead_bar = '900 mm' # wide\n"},
		{"[bed]\nhead_bar = '900 mm' # wide\n", "bed.head_bar", "850 mm", "[bed]\nhead_bar = '850 mm' # wide\n"},
		{"[bed]\nhead_bar = '900 mm' # wide\nspan = \"1 m\"\n", "bed.head_bar", "", "[bed]\n# wide\nspan = \"1 m\"\n"},
		{"bed = { span = \"1 m\" }\n", "bed.head_bar", "800 mm", "bed = { span = \"1 m\", head_bar = \"800 mm\" }\n"},
		{"bed = { span = \"1 m\", foot_bar = \"7\" }\n", "bed.span", "", "bed = { foot_bar = \"7\" }\n"},
		{"bed = { span = \"1 m\", foot_bar = \"7\" }\n", "bed.foot_bar", "", "bed = { span = \"1 m\" }\n"},
		{"cord.side.diameter = \"3 mm\"\n", "cord.side.name", "x", "cord.side.diameter = \"3 mm\"\ncord.side.name = \"x\"\n"},
		{"[cord]\nside = { diameter = \"3 mm\" }\n", "cord.leg.diameter", "2 mm", "[cord]\nside = { diameter = \"3 mm\" }\n\n[cord.leg]\ndiameter = \"2 mm\"\n"},
		{"cord = { side = { diameter = \"3 mm\" } }\n", "cord.leg.diameter", "2 mm", "cord = { side = { diameter = \"3 mm\" }, leg.diameter = \"2 mm\" }\n"},
		{"[[guest]]\nmass = \"70 kg\"\n[[guest]]\n", "guest[2].mass", "80 kg", "[[guest]]\nmass = \"70 kg\"\n[[guest]]\nmass = \"80 kg\"\n"},
		{"guest = [{ mass = \"70 kg\" }, { mass = \"1\" }]\n", "guest[2].mass", "80 kg", "guest = [{ mass = \"70 kg\" }, { mass = \"80 kg\" }]\n"},
		{"# [hang.line]\n# strength = \"1 kN\"\n[bar]\nwall = \"1 mm\"\n", "hang.line.strength", "9 kN", "# [hang.line]\n[hang.line]\nstrength = \"9 kN\"\n# strength = \"1 kN\"\n[bar]\nwall = \"1 mm\"\n"},
		{"[cloth]\nmargin = \"5 mm\" # both edges\n", "cloth.selvedge_strip", "8 mm", "[cloth]\nmargin = \"8 mm\" # both edges\n"},
		{"[cloth]\nmargin = \"5 mm\" # both edges\n", "cloth.selvedge_strip", "", "[cloth]\n# both edges\n"},
		{"[machine]\nheader = [\n  \"a\", # one ]\n  \"b\",\n]\n", "machine.header", "c", "[machine]\nheader = [\"c\"]\n"},
	} {
		text, err := OpenText("t", []byte(tc.text))
		if err != nil {
			t.Fatal(err)
		}
		if out, err := text.Set(Key(tc.key), tc.value); err != nil || string(out.Bytes()) != tc.want {
			t.Errorf("%s = %s in %q: %v\n%s", tc.key, tc.value, tc.text, err, out.data)
		}
	}
}
