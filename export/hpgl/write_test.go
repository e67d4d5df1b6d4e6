package hpgl

import (
	"bytes"
	"errors"
	"fmt"
	"strings"
	"testing"

	"slingloft/export"
	"slingloft/export/readertest"
	"slingloft/outline/design"
	"slingloft/outline/geom"
	"slingloft/outline/piece"
)

// instructions writes a drawing and returns its lines.
func instructions(t *testing.T, d export.Drawing, pens Pens) []string {
	t.Helper()
	var b bytes.Buffer
	if err := WriteFor(&b, d, export.Options{}, Plot{Pens: pens}); err != nil {
		t.Fatal(err)
	}
	return strings.Split(strings.TrimSpace(b.String()), "\n")
}

// sheet is a drawing of the given lines on 3 m of roll.
func sheet(lines ...piece.Line) export.Drawing {
	return export.Drawing{Name: "sheet", Title: "Sheet", Width: 3000, Height: 1600, Lines: lines}
}

// A plotter unit is 0.025 mm: 1600 mm are 64 000, 3000 mm are 120 000 (HP-GL/2 in the
// PCL 5 Technical Reference, part II).
func TestUnits(t *testing.T) {
	got := instructions(t, sheet(piece.Line{Work: piece.CutOut, Points: geom.Polyline{{X: 0, Y: 0}, {X: 3000, Y: 1600}, {X: 100, Y: 100.0124}, {X: 100.0126, Y: 1600}}}), nil)
	want := []string{"IN;", "PS120000,64000;", "PA;", "PU;", "SP7;", "PU0,0;", "PD120000,64000,4000,4000,4001,64000;", "PU0,0;", "SP0;"}
	if strings.Join(got, "\n") != strings.Join(want, "\n") {
		t.Errorf("%q, want %q", got, want)
	}
}

// Points that fall on the unit before are left out, but a dot is drawn as one.
func TestPointsOnOneUnit(t *testing.T) {
	for _, r := range []struct {
		name   string
		points geom.Polyline
		want   string
	}{
		{"two steps", geom.Polyline{{X: 1, Y: 1}, {X: 2, Y: 1}, {X: 2, Y: 3}}, "PU40,40; PD80,40,80,120;"},
		{"a point twice", geom.Polyline{{X: 1, Y: 1}, {X: 2, Y: 1}, {X: 2.001, Y: 1}, {X: 2, Y: 3}}, "PU40,40; PD80,40,80,120;"},
		{"the start twice", geom.Polyline{{X: 1, Y: 1}, {X: 1.001, Y: 1}, {X: 2, Y: 1}}, "PU40,40; PD80,40;"},
		{"a dot", geom.Polyline{{X: 1, Y: 1}, {X: 1.001, Y: 1}, {X: 1, Y: 1.002}}, "PU40,40; PD40,40;"},
		{"the end twice", geom.Polyline{{X: 1, Y: 1}, {X: 2, Y: 1}, {X: 2.001, Y: 1}}, "PU40,40; PD80,40;"},
	} {
		got := instructions(t, sheet(piece.Line{Work: piece.CutOut, Points: r.points}), nil)
		if text := strings.Join(got[5:len(got)-2], " "); text != r.want {
			t.Errorf("%s: %s, want %s", r.name, text, r.want)
		}
	}
}

// Long paths are cut into instructions of thirty points, which lose none.
func TestLongPaths(t *testing.T) {
	for _, n := range []int{2, 30, 31, 32, 61, 62, 300} {
		var l piece.Line
		l.Work = piece.CutOut
		for i := range n {
			l.Points = append(l.Points, geom.Pt(float64(i), float64(i%2)))
		}
		pairs := 0
		for _, line := range instructions(t, sheet(l), nil) {
			if rest, ok := strings.CutPrefix(line, "PD"); ok {
				here := (strings.Count(rest, ",") + 1) / 2
				if here > 30 {
					t.Errorf("%d points in one instruction", here)
				}
				pairs += here
			}
		}
		if pairs != n-1 {
			t.Errorf("a path of %d points is drawn through %d after its first", n, pairs)
		}
	}
}

// Each kind of work has a pen of its own unless the machine names another; a kind
// without lines takes none.
func TestPens(t *testing.T) {
	dot := func(w piece.Work) piece.Line {
		return piece.Line{Work: w, Points: geom.Polyline{{X: 1, Y: 1}, {X: 2, Y: 2}}}
	}
	pens := make(Pens, len(piece.Works()))
	pens[piece.Mark] = 4
	for _, r := range []struct {
		name  string
		pens  Pens
		works []piece.Work
		want  []int
	}{
		{"the usual", nil, []piece.Work{piece.CutOut, piece.Register, piece.Mark}, []int{Pen(piece.Register), Pen(piece.Mark), Pen(piece.CutOut)}},
		{"one of the maker's own", pens, []piece.Work{piece.Mark, piece.CutOut}, []int{4, Pen(piece.CutOut)}},
		{"fewer than kinds of work", Pens{9}, []piece.Work{piece.Register, piece.CutOut}, []int{9, Pen(piece.CutOut)}},
	} {
		var lines []piece.Line
		for _, w := range r.works {
			lines = append(lines, dot(w))
		}
		want := ""
		for _, p := range append(r.want, 0) {
			want += fmt.Sprintf("SP%d;", p)
		}
		got := ""
		for _, line := range instructions(t, sheet(lines...), r.pens) {
			if strings.HasPrefix(line, "SP") {
				got += line
			}
		}
		if got != want {
			t.Errorf("%s: pens %s, want %s", r.name, got, want)
		}
	}
	seen := map[int]bool{}
	for _, w := range piece.Works() {
		if p := Pen(w); p < 1 || seen[p] {
			t.Errorf("%s has pen %d", w, p)
		}
		seen[Pen(w)] = true
	}
}

// What a plotter's owner should know is said where it holds and not elsewhere.
func TestNotes(t *testing.T) {
	small, large := readertest.Square(), readertest.Square()
	large.Width = 900
	below := export.Options{Axes: export.Axes{Origin: design.UpperRight}}
	for _, r := range []struct {
		name string
		d    export.Drawing
		o    export.Options
		want []export.NoteKind
	}{
		{"a small sheet", small, export.Options{}, nil},
		{"a long one", large, export.Options{}, []export.NoteKind{export.Past16Bits}},
		{"counted from above", small, below, []export.NoteKind{export.BelowZero}},
		{"both", large, below, []export.NoteKind{export.Past16Bits, export.BelowZero}},
	} {
		got := plotFor(design.Machine{}, export.Material{}).notes(r.d, r.o)
		ok := len(got) == len(r.want)
		for i := range min(len(got), len(r.want)) {
			ok = ok && got[i].Kind == r.want[i]
		}
		if !ok {
			t.Errorf("%s: %v, want them to tell of %v", r.name, got, r.want)
		}
	}
}

// A write that fails is told, however late.
func TestWriteError(t *testing.T) {
	for _, after := range []int{0, 1, 5000} {
		d := readertest.Drawing(t, 1)
		if err := WriteFor(&full{left: after}, d, export.Options{}, Plot{}); !errors.Is(err, errFull) {
			t.Errorf("full after %d bytes: %v", after, err)
		}
	}
}

var errFull = errors.New("disk full")

// full takes so many bytes and no more.
type full struct{ left int }

func (f *full) Write(p []byte) (int, error) {
	if len(p) > f.left {
		n := f.left
		f.left = 0
		return n, errFull
	}
	f.left -= len(p)
	return len(p), nil
}

// What is read: pens as kinds of work, lifted and lowered, moves with the pen up, and
// files with other spacing than ours.
func TestReadInstructions(t *testing.T) {
	for _, r := range []struct {
		name, text string
		lines      int
		points     int // of all lines
		closed     bool
	}{
		{"ours", "IN;PS400,400;SP7;PU0,0;PD40,0,40,40;PU;", 1, 3, false},
		{"without separators", "INPS400,400SP7PU0,0PD40,0,40,40PU", 1, 3, false},
		{"over lines", "IN;\r\nPS400,400;\nSP7;\nPU0,0;\nPD40,0,\n40,40;\nPU;", 1, 3, false},
		{"point by point", "IN;PS400,400;SP7;PA0,0;PD;PA40,0;PA40,40;PU;", 1, 3, false},
		{"closed", "IN;PS400,400;SP7;PU0,0;PD40,0,40,40,0,0;PU;", 1, 3, true},
		{"there and back is not closed", "IN;PS400,400;SP7;PU0,0;PD40,0,0,0;PU;", 1, 3, false},
		{"pen changed while down", "IN;PS400,400;SP7;PU0,0;PD40,0;SP3;PD40,40;PU;", 2, 4, false},
		{"moves with the pen up", "IN;PS400,400;SP7;PU0,0;PU10,10;PU20,20;", 0, 0, false},
		{"pen down without a move", "IN;PS400,400;SP7;PU0,0;PD;PU;", 0, 0, false},
		{"the end lifts it", "IN;PS400,400;SP7;PU0,0;PD40,0", 1, 2, false},
		{"signs and decimals", "IN;PS400,400;SP7;PU-1.5,+2;PD40,0;PU;", 1, 2, false},
	} {
		d, err := Read(strings.NewReader(r.text))
		if err != nil {
			t.Errorf("%s: %v", r.name, err)
			continue
		}
		points, closed := 0, false
		for _, l := range d.Lines {
			points += len(l.Points)
			closed = closed || l.Closed
		}
		if len(d.Lines) != r.lines || points != r.points || closed != r.closed || d.Width != 10 || d.Height != 10 {
			t.Errorf("%s: %+v", r.name, d)
		}
	}
	// A pen that is nobody's own cuts.
	if d, err := Read(strings.NewReader("IN;PS400,400;SP44;PU0,0;PD40,0;")); err != nil || d.Lines[0].Work != piece.CutOut {
		t.Errorf("pen 44: %+v, %v", d, err)
	}
}
