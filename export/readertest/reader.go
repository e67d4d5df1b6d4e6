package readertest

import (
	"bytes"
	"errors"
	"fmt"
	"io"
	"os"
	"os/exec"
	"path/filepath"
	"strconv"
	"strings"
	"testing"

	"slingloft/export"
	"slingloft/outline/geom"
	"slingloft/outline/piece"
)

// Python is the interpreter that Debian's Python packages belong to.
const Python = "/usr/bin/python3"

// Run runs a program that is not ours and returns what it prints. Where the
// program is missing the test is skipped, or fails if the environment variable
// SLINGLOFT_READERS is "require".
func Run(t testing.TB, program string, args ...string) string {
	t.Helper()
	out, _ := run(t, program, args...)
	return out
}

// RunBoth is [Run] for a program that reports on its standard error: it returns
// both.
func RunBoth(t testing.TB, program string, args ...string) string {
	t.Helper()
	out, stderr := run(t, program, args...)
	return out + stderr
}

func run(t testing.TB, program string, args ...string) (string, string) {
	t.Helper()
	if _, err := exec.LookPath(program); err != nil {
		missing(t, program)
	}
	out, stderr, err := start(program, args...)
	if err != nil {
		t.Fatalf("%s: %v\n%s\n%s", program, err, stderr, out)
	}
	return out, stderr
}

// start runs a program to its end.
func start(program string, args ...string) (out, stderr string, err error) {
	cmd := exec.Command(program, args...)
	var a, b bytes.Buffer
	cmd.Stdout, cmd.Stderr = &a, &b
	err = cmd.Run()
	return a.String(), b.String(), err
}

// Script runs a Python script that needs the named module.
func Script(t testing.TB, module, script string, args ...string) string {
	t.Helper()
	if _, err := exec.LookPath(Python); err != nil {
		missing(t, Python)
	}
	const noModule = 77
	look := fmt.Sprintf("import importlib.util, sys\nif not importlib.util.find_spec(%q): sys.exit(%d)\n", module, noModule)
	out, stderr, err := start(Python, append([]string{"-c", look + script}, args...)...)
	var exit *exec.ExitError
	if errors.As(err, &exit) && exit.ExitCode() == noModule {
		missing(t, "Python module "+module)
	}
	if err != nil {
		t.Fatalf("%s: %v\n%s\n%s", module, err, stderr, out)
	}
	return out
}

func missing(t testing.TB, what string) {
	t.Helper()
	if os.Getenv("SLINGLOFT_READERS") == "require" {
		t.Fatalf("%s is not installed", what)
	}
	t.Skipf("%s is not installed", what)
}

// Golden compares got with a file under testdata/golden/export, or rewrites the
// file where SLINGLOFT_GOLDEN is "write".
func Golden(t testing.TB, name string, got []byte) {
	t.Helper()
	path := filepath.Join("..", "..", "testdata", "golden", "export", name)
	if os.Getenv("SLINGLOFT_GOLDEN") == "write" {
		if err := os.MkdirAll(filepath.Dir(path), 0o755); err != nil {
			t.Fatal(err)
		}
		if err := os.WriteFile(path, got, 0o644); err != nil {
			t.Fatal(err)
		}
	}
	want, err := os.ReadFile(path)
	if err != nil {
		t.Fatal(err)
	}
	if !bytes.Equal(got, want) {
		g, w := strings.Split(string(got), "\n"), strings.Split(string(want), "\n")
		for i := range g {
			if i >= len(w) || g[i] != w[i] {
				t.Fatalf("%s differs from line %d on:\n got %.200q\nwant %.200q", name, i+1, g[i], strings.Join(w[min(i, len(w)):min(i+1, len(w))], ""))
			}
		}
		t.Fatalf("%s is shorter than the golden file", name)
	}
}

// Writer is the function by which a format writes.
type Writer func(*bytes.Buffer, export.Drawing, export.Options) error

// Bytes returns the drawing as a file, and fails the test where writing it twice
// does not give the same bytes.
func Bytes(t testing.TB, write Writer, d export.Drawing, o export.Options) []byte {
	t.Helper()
	var a, b bytes.Buffer
	if err := write(&a, d, o); err != nil {
		t.Fatal(err)
	}
	if err := write(&b, d, o); err != nil {
		t.Fatal(err)
	}
	if !bytes.Equal(a.Bytes(), b.Bytes()) {
		t.Fatal("writing twice gives different bytes")
	}
	return a.Bytes()
}

// File writes data to a file of the test's own folder and returns its path.
func File(t testing.TB, name string, data []byte) string {
	t.Helper()
	path := filepath.Join(t.TempDir(), name)
	if err := os.WriteFile(path, data, 0o644); err != nil {
		t.Fatal(err)
	}
	return path
}

// Same fails the test where the drawing that was read differs from what was to
// be written: size, names, work, closedness, and any point by more than tol mm.
func Same(t testing.TB, read, plain export.Drawing, tol float64) {
	t.Helper()
	if geom.Pt(read.Width, read.Height).Dist(geom.Pt(plain.Width, plain.Height)) > tol {
		t.Errorf("sheet read as %g × %g, want %g × %g", read.Width, read.Height, plain.Width, plain.Height)
	}
	byName := map[string]int{}
	for i, l := range read.Lines {
		byName[l.Name] = i
	}
	if len(read.Lines) != len(plain.Lines) || len(byName) != len(read.Lines) {
		t.Fatalf("%d lines of %d names read, want %d", len(read.Lines), len(byName), len(plain.Lines))
	}
	for _, want := range plain.Lines {
		i, ok := byName[want.Name]
		if !ok {
			t.Errorf("line %q is not read back", want.Name)
			continue
		}
		got := read.Lines[i]
		if got.Work != want.Work || got.Closed != want.Closed || len(got.Points) != len(want.Points) {
			t.Errorf("line %q read as %s, closed %v, %d points; want %s, %v, %d", want.Name,
				got.Work, got.Closed, len(got.Points), want.Work, want.Closed, len(want.Points))
			continue
		}
		for k, p := range want.Points {
			if p.Dist(got.Points[k]) > tol {
				t.Errorf("line %q: point %d read as %v, want %v", want.Name, k+1, got.Points[k], p)
				break
			}
		}
	}
}

// floats reads n numbers parted by spaces.
func floats(t testing.TB, text string, n int) []float64 {
	t.Helper()
	words := strings.Fields(text)
	if len(words) != n {
		t.Fatalf("%q: want %d numbers", text, n)
	}
	out := make([]float64, n)
	for i, w := range words {
		v, err := strconv.ParseFloat(w, 64)
		if err != nil {
			t.Fatal(err)
		}
		out[i] = v
	}
	return out
}

// Length returns the length of a line, with its closing segment if it has one.
func Length(l piece.Line) float64 {
	if l.Closed {
		return geom.Ring(l.Points).Perimeter()
	}
	return l.Points.Length()
}

// Total returns the length of all lines of one kind of work.
func Total(lines []piece.Line, w piece.Work) float64 {
	sum := 0.0
	for _, l := range lines {
		if l.Work == w {
			sum += Length(l)
		}
	}
	return sum
}

// ReadBack writes a sheet with hostile labels at 1:1 and 1:5 and fails the test
// where reading it does not give back what was to be written.
func ReadBack(t *testing.T, write Writer, read func(io.Reader) (export.Drawing, error), tol float64) {
	t.Helper()
	for _, scale := range []float64{1, 0.2} {
		d := Drawing(t, scale, Hostile()...)
		d.Lines[0].Name = strings.Repeat("é\\U+0041^J", 19)
		got, plain := Read(t, write, read, d, export.Options{Scale: scale, Correct: [2]float64{1.004, 0.998}})
		Same(t, got, plain, tol)
	}
}

// Read writes a drawing and reads it back; it returns that and what was to be
// written.
func Read(t testing.TB, write Writer, read func(io.Reader) (export.Drawing, error), d export.Drawing,
	o export.Options) (got, plain export.Drawing) {
	t.Helper()
	plain, err := d.Plain(o)
	if err != nil {
		t.Fatal(err)
	}
	got, err = read(bytes.NewReader(Bytes(t, write, d, o)))
	if err != nil {
		t.Fatal(err)
	}
	return got, plain
}

// Find returns the line of the given name.
func Find(t testing.TB, d export.Drawing, name string) piece.Line {
	t.Helper()
	for _, l := range d.Lines {
		if l.Name == name {
			return l
		}
	}
	t.Fatalf("no line %q", name)
	return piece.Line{}
}

// CheckRead fails the test where a drawing that a reader took from any bytes has a
// line that is none.
func CheckRead(t testing.TB, d export.Drawing) {
	t.Helper()
	for _, l := range d.Lines {
		if len(l.Points) < 2 {
			t.Fatalf("line %q of %d points", l.Name, len(l.Points))
		}
		for _, p := range l.Points {
			if !p.Finite() {
				t.Fatalf("line %q has point %v", l.Name, p)
			}
		}
	}
}
