package whole

import (
	"errors"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"
)

// all writes two files for a design and returns the error.
func all(folder, design, text string, force bool) error {
	return WriteAll(folder, Mark{Tag: design}, force, []File{{"a.svg", []byte(text)}, {"b.png", []byte("b" + text)}}, func(string) {})
}

func TestWriteAll(t *testing.T) {
	rows := []struct {
		what   string
		before func(folder string)
		design string
		force  bool
		ok     bool
	}{
		{"empty folder", func(string) {}, "1", false, true},
		{"same design", func(f string) { all(f, "1", "old", false) }, "1", false, true},
		{"same design, twice", func(f string) { all(f, "1", "older", false); all(f, "1", "old", false) }, "1", false, true},
		{"another design", func(f string) { all(f, "2", "old", false) }, "1", false, false},
		{"another design, by force", func(f string) { all(f, "2", "old", false) }, "1", true, true},
		{"changed by hand", func(f string) { all(f, "1", "old", false); put(f, "b.png", "mine") }, "1", false, false},
		{"put back as it would be written", func(f string) { put(f, "b.png", "bnew") }, "1", false, true},
		{"a stranger's", func(f string) { put(f, "b.png", "theirs") }, "1", false, false},
		{"a stranger's, by force", func(f string) { put(f, "b.png", "theirs") }, "1", true, true},
		{"record lost", func(f string) { all(f, "1", "old", false); os.Remove(filepath.Join(f, RecordName)) }, "1", false, false},
		{"record broken", func(f string) { put(f, RecordName, "  \n  a  b\n\xff"); put(f, "a.svg", "theirs") }, "1", false, false},
		{"record is a folder", func(f string) { os.Mkdir(filepath.Join(f, RecordName), 0o755) }, "1", true, false},
		{"older version after a newer", func(f string) { all(f, "2", "x", false); all(f, "1", "y", true) }, "2", false, false},
	}
	for _, r := range rows {
		folder := t.TempDir()
		r.before(folder)
		was := snapshot(t, folder)
		err := all(folder, r.design, "new", r.force)
		if !r.ok {
			if !errors.Is(err, ErrExists) {
				t.Errorf("%s: error %v, want ErrExists", r.what, err)
			}
			if now := snapshot(t, folder); now != was {
				t.Errorf("%s: folder changed from %s to %s", r.what, was, now)
			}
			continue
		}
		if err != nil {
			t.Errorf("%s: %v", r.what, err)
			continue
		}
		if a, b := contents(t, filepath.Join(folder, "a.svg")), contents(t, filepath.Join(folder, "b.png")); a != "new" || b != "bnew" {
			t.Errorf("%s: files hold %q and %q", r.what, a, b)
		}
		if n := strings.Count(contents(t, filepath.Join(folder, RecordName)), "\n"); n != 3 {
			t.Errorf("%s: record has %d lines, want 3", r.what, n)
		}
	}
}

// cutShort writes files as a run does that stops after the first has its name, and
// leaves what such a run leaves.
func cutShort(t *testing.T, folder string, m Mark, files []File) {
	t.Helper()
	parts, err := stagedAll(folder, m, false, files)
	if err != nil {
		t.Fatal(err)
	}
	for i := range 2 { // of the record and a file
		if err := parts[i].place(); err != nil {
			t.Fatal(err)
		}
	}
}

// A run that stops between two files is taken up by the next, which leaves nothing of it.
func TestWriteAllCutShort(t *testing.T) {
	folder := t.TempDir()
	if err := all(folder, "1", "old", false); err != nil {
		t.Fatal(err)
	}
	cutShort(t, folder, Mark{Tag: "1"}, []File{{"a.svg", []byte("half")}, {"b.png", []byte("half")}})
	if got := contents(t, filepath.Join(folder, "a.svg")) + contents(t, filepath.Join(folder, "b.png")); got != "halfbold" {
		t.Fatalf("files hold %q", got)
	}
	if n := len(names(t, folder)); n < 5 {
		t.Fatalf("folder holds %v, want parts", names(t, folder))
	}
	for _, other := range []string{".slingloft-x.part", ".slingloft-.part", ".a.svg.1.part", "slingloft-1.part"} {
		put(folder, other, "theirs")
	}
	os.Mkdir(filepath.Join(folder, ".slingloft-9.part"), 0o755)
	if err := all(folder, "1", "new", false); err != nil {
		t.Error(err)
	}
	want := []string{".a.svg.1.part", ".slingloft", ".slingloft-.part", ".slingloft-9.part", ".slingloft-x.part",
		"a.svg", "b.png", "slingloft-1.part"}
	if got := names(t, folder); !slices.Equal(got, want) {
		t.Errorf("folder holds %v, want %v", got, want)
	}
}

// Where the last of a set cannot be placed all is as it was before.
func TestAllOrNone(t *testing.T) {
	folder := t.TempDir()
	if err := all(folder, "1", "old", false); err != nil {
		t.Fatal(err)
	}
	was := snapshot(t, folder)
	parts, err := stagedAll(folder, Mark{Tag: "1"}, true, []File{{"a.svg", []byte("new")}, {"c.svg", []byte("new")}, {"b.png", []byte("new")}})
	if err != nil {
		t.Fatal(err)
	}
	b := filepath.Join(folder, "b.png")
	os.Remove(b)
	if err := os.Mkdir(b, 0o755); err != nil {
		t.Fatal(err)
	}
	if err := place(parts); err == nil {
		t.Error("a folder was replaced")
	}
	os.Remove(b)
	put(folder, "b.png", "bold")
	if now := snapshot(t, folder); now != was {
		t.Errorf("folder changed from %s to %s", was, now)
	}
}

// A folder is one run's until it lets go, or ends.
func TestHold(t *testing.T) {
	folder := t.TempDir()
	release, err := lock(folder)
	if errors.Is(err, errors.ErrUnsupported) {
		t.Skip(err)
	} else if err != nil {
		t.Fatal(err)
	}
	if _, err := lock(folder); !errors.Is(err, errBusy) {
		t.Errorf("a second lock: %v", err)
	}
	release()
	if again, err := lock(folder); err != nil {
		t.Errorf("after release: %v", err)
	} else {
		again()
	}
	if got := names(t, folder); len(got) != 0 {
		t.Errorf("folder holds %v", got)
	}
}

// A run that comes while another writes waits, and finds the folder as that left it.
func TestTwoRuns(t *testing.T) {
	folder := t.TempDir()
	errs := make(chan error)
	for k := range 8 {
		go func() { errs <- all(folder, strings.Repeat("x", k/4+1), strings.Repeat("y", k), false) }()
	}
	done := 0
	for range 8 {
		switch err := <-errs; {
		case err == nil:
			done++
		case !errors.Is(err, ErrExists):
			t.Error(err)
		}
	}
	if got := contents(t, filepath.Join(folder, "a.svg")); done != 4 || contents(t, filepath.Join(folder, "b.png")) != "b"+got {
		t.Errorf("%d runs wrote, want those of one design; files of different runs, folder holds %s", done, snapshot(t, folder))
	}
	if got := names(t, folder); len(got) != 3 {
		t.Errorf("folder holds %v", got)
	}
}

// The record says how files came about, by what wrote them last, and which of two runs
// was the later one; a note that no file has any more is gone.
func TestReadRecord(t *testing.T) {
	folder := t.TempDir()
	if got := ReadRecord(folder); len(got) != 0 {
		t.Errorf("an empty folder has %v", got)
	}
	write := func(tag, note string, names ...string) {
		t.Helper()
		var files []File
		for _, n := range names {
			files = append(files, File{n, []byte(tag + note + n)})
		}
		if err := WriteAll(folder, Mark{tag, note}, true, files, func(string) {}); err != nil {
			t.Fatal(err)
		}
	}
	want := func(want ...Known) {
		t.Helper()
		if got := ReadRecord(folder); !slices.Equal(got, want) {
			t.Errorf("record has %v, want %v", got, want)
		}
	}
	write("1", `{"first":  [1]}`, "a.svg", "b.svg", "c.svg")
	write("2", "second", "b.svg")
	write("2", "", "c.svg")
	write("2", "of two\nlines", "d.svg")
	want(Known{"a.svg", Mark{"1", `{"first":  [1]}`}, 1, sumOf([]byte("1" + `{"first":  [1]}` + "a.svg"))},
		Known{"b.svg", Mark{"2", "second"}, 2, sumOf([]byte("2" + "second" + "b.svg"))},
		Known{"c.svg", Mark{"2", ""}, 0, sumOf([]byte("2" + "" + "c.svg"))},
		Known{"d.svg", Mark{"2", ""}, 0, sumOf([]byte("2" + "of two\nlines" + "d.svg"))})
	write("1", `{"first":  [1]}`, "b.svg") // is the later one now
	want(Known{"a.svg", Mark{"1", `{"first":  [1]}`}, 1, sumOf([]byte("1" + `{"first":  [1]}` + "a.svg"))},
		Known{"b.svg", Mark{"1", `{"first":  [1]}`}, 1, sumOf([]byte("1" + `{"first":  [1]}` + "b.svg"))},
		Known{"c.svg", Mark{"2", ""}, 0, sumOf([]byte("2" + "" + "c.svg"))},
		Known{"d.svg", Mark{"2", ""}, 0, sumOf([]byte("2" + "of two\nlines" + "d.svg"))})
	if text := contents(t, filepath.Join(folder, RecordName)); strings.Contains(text, "second") {
		t.Errorf("a note without a file is still there:\n%s", text)
	}
	long := strings.Repeat("x", 1<<20)
	write("3", long, "a.svg")
	if got := ReadRecord(folder)[0].Note; got != long {
		t.Errorf("a note of %d bytes came back with %d", len(long), len(got))
	}
}

// Of a run that was cut short the record tells what each file holds.
func TestReadRecordCutShort(t *testing.T) {
	folder := t.TempDir()
	files := func(text string) []File { return []File{{"a.svg", []byte(text)}, {"b.svg", []byte(text)}} }
	if err := WriteAll(folder, Mark{"1", "old"}, false, files("x"), func(string) {}); err != nil {
		t.Fatal(err)
	}
	cutShort(t, folder, Mark{"1", "new"}, files("y"))
	got := ReadRecord(folder)
	if len(got) != 2 || got[0].Note != "new" || got[1].Note != "old" || got[0].Run < got[1].Run {
		t.Errorf("record has %v", got)
	}
}

func put(folder, name, text string) {
	if err := os.WriteFile(filepath.Join(folder, name), []byte(text), 0o644); err != nil {
		panic(err)
	}
}

// snapshot returns names and contents of a folder.
func snapshot(t *testing.T, folder string) string {
	t.Helper()
	var b strings.Builder
	for _, n := range names(t, folder) {
		data, _ := os.ReadFile(filepath.Join(folder, n))
		b.WriteString(n + "=" + string(data) + ";")
	}
	return b.String()
}

// FuzzRecord puts anything where a record is read. A stranger's file stays whatever it
// says, and what is written beside is known from then on.
func FuzzRecord(f *testing.F) {
	folder := f.TempDir()
	if err := all(folder, "1", "x", false); err != nil {
		f.Fatal(err)
	}
	text, err := os.ReadFile(filepath.Join(folder, RecordName))
	if err != nil {
		f.Fatal(err)
	}
	f.Add(string(text))
	f.Add(recordHead + "note  0123abcd  {}\n" + strings.Repeat("0", 64) + "  1  0123abcd  ../c\n")
	f.Fuzz(func(t *testing.T, text string) {
		folder := t.TempDir()
		put(folder, RecordName, text)
		put(folder, "a.svg", "theirs")
		before := ReadRecord(folder)
		if err := all(folder, "1", "new", false); !errors.Is(err, ErrExists) {
			t.Fatalf("error %v, want ErrExists", err)
		}
		mark := Mark{Tag: "2", Note: "how"}
		if err := WriteAll(folder, mark, false, []File{{"c.dxf", []byte("c")}}, func(string) {}); err != nil {
			t.Fatal(err)
		}
		after := ReadRecord(folder)
		if !slices.IsSortedFunc(after, func(a, b Known) int { return strings.Compare(a.Name, b.Name) }) {
			t.Errorf("not in order: %v", after)
		}
		known := func(all []Known, name string) (Mark, bool) {
			i := slices.IndexFunc(all, func(k Known) bool { return k.Name == name })
			if i < 0 {
				return Mark{}, false
			}
			return all[i].Mark, true
		}
		if got, ok := known(after, "c.dxf"); !ok || got != mark {
			t.Errorf("c.dxf is known as %v, %t", got, ok)
		}
		for _, k := range before {
			if _, ok := known(after, k.Name); !ok {
				t.Errorf("%q is not known any more", k.Name)
			}
		}
		if got, _ := os.ReadFile(filepath.Join(folder, "a.svg")); string(got) != "theirs" {
			t.Errorf("a.svg holds %q", got)
		}
	})
}
