package gcode

import (
	"bytes"
	"errors"
	"slices"
	"strings"
	"testing"

	"slingloft/export"
	"slingloft/export/readertest"
	"slingloft/outline/design"
	"slingloft/outline/geom"
	"slingloft/outline/piece"
)

// A program holds what a job says how to do, and on cloth or with a knife nothing but
// cuts unless a job names the work and the material; what is left out is said, and
// what is burnt into cloth all the same.
func TestWhatIsAsked(t *testing.T) {
	const cut = "work = \"cut-outline\"\nfeed = \"600 mm/min\"\npower = 700\ndepth = \"2 mm\""
	const score = "work = \"score\"\nfeed = \"600 mm/min\"\npower = 90\ndepth = \"1 mm\""
	const inside = "work = \"cut-inside\"\nfeed = \"600 mm/min\"\npower = 700\ndepth = \"2 mm\""
	const named = "\nmaterial = \"stuff\""
	for _, row := range []struct {
		what, tool string
		stock      piece.Stock
		jobs       []string
		want       string // kinds of work done
		says       []string
	}{
		{"all on board", "laser", piece.Board, []string{cut, inside, score}, "score cut-inside cut-outline", []string{"left out: register, lettering: no job"}},
		{"cloth is cut", "laser", piece.Cloth, []string{cut, inside, score}, "cut-inside cut-outline", []string{"left out: register, lettering, score: a laser only cuts", "left out: slits"}},
		{"for another material", "laser", piece.Cloth, []string{cut, inside, score + "\nmaterial = \"other\""}, "cut-inside cut-outline", []string{"left out: register, lettering, score: a laser only cuts"}},
		{"a pen is no burn", "laser", piece.Cloth, []string{cut, inside, score, "work = \"score\"\npen = 3" + named}, "cut-inside cut-outline", []string{"left out: register, lettering, score: a laser only cuts"}},
		{"asked by name", "laser", piece.Cloth, []string{cut, inside, score + named}, "score cut-inside cut-outline",
			[]string{"left out: register, lettering: a laser", "caution: score: burnt into cloth"}},
		{"slits asked by name", "laser", piece.Cloth, []string{cut, inside + named}, "cut-inside cut-outline", []string{"caution: slits: burnt into cloth"}},
		{"router on cloth", "router", piece.Cloth, []string{cut, inside, score + named}, "score cut-inside cut-outline", []string{"caution: score: cut into cloth"}},
		{"knife on board", "knife", piece.Board, []string{cut, inside, score}, "cut-inside cut-outline", []string{"left out: register, lettering, score: a knife only cuts"}},
		{"knife asked", "knife", piece.Board, []string{cut, inside, score + named}, "score cut-inside cut-outline", nil},
		{"skipped", "laser", piece.Board, []string{cut, inside, "work = \"score\"\nskip = true"}, "cut-inside cut-outline", []string{"left out: register, lettering: no job"}},
	} {
		s := SettingsFor(machineOf(t, row.tool, row.jobs...), export.Material{Name: "stuff", Stock: row.stock, Thickness: 2})
		d := withSlit()
		program := programFor(t, d, s)
		if got := strings.Join(worksIn(program), " "); got != row.want {
			t.Errorf("%s: does %s, want %s", row.what, got, row.want)
		}
		slits := row.stock == piece.Board || row.what == "slits asked by name"
		if got := strings.Contains(program, "( path slit )"); got != slits {
			t.Errorf("%s: slit cut: %v", row.what, got)
		}
		remarks := strings.Join(export.English().All(s.remarks(d)), "\n")
		for _, want := range row.says {
			if !strings.Contains(remarks, want) || !strings.Contains(notesIn(program), strings.ReplaceAll(want, ", ", "  ")) {
				t.Errorf("%s: %q is not said in %q or not in the program", row.what, want, remarks)
			}
		}
		if strings.Contains(remarks, "caution") != (row.stock == piece.Cloth && strings.Contains(strings.Join(row.says, ""), "caution")) {
			t.Errorf("%s: %s", row.what, remarks)
		}
	}
}

// withSlit is the common square with a slit.
func withSlit() export.Drawing {
	d := readertest.Square()
	d.Lines = append(d.Lines, piece.Line{Name: "slit", Work: piece.CutInside, Points: geom.Polyline{{X: 22, Y: 8}, {X: 26, Y: 8}}})
	return d
}

// notesIn returns the notes in a program, one behind the other.
func notesIn(program string) string {
	var out []string
	for line := range strings.Lines(program) {
		if text, ok := strings.CutPrefix(strings.TrimSpace(line), "( note: "); ok {
			out = append(out, strings.TrimSuffix(text, " )"))
		}
	}
	return strings.Join(out, " ")
}

// worksIn returns the kinds of work of a program, in its order.
func worksIn(program string) []string {
	var out []string
	for line := range strings.Lines(program) {
		if w, ok := strings.CutPrefix(strings.TrimSpace(line), "( work "); ok {
			out = append(out, strings.TrimSuffix(w, " )"))
		}
	}
	return out
}

func machineOf(t *testing.T, tool string, jobs ...string) design.Machine {
	t.Helper()
	text := "[machine]\ntool = \"" + tool + "\"\nplunge = \"100 mm/min\"\nsafe_height = \"6 mm\"\n" +
		map[string]string{"router": "cutter = \"2 mm\"\nspin_up = 3\n", "knife": "trail = \"0.4 mm\"\n"}[tool]
	for _, j := range jobs {
		text += "[[machine.job]]\n" + j + "\n"
	}
	m, _, err := design.ReadMachine("m.toml", []byte(text))
	if err != nil {
		t.Fatal(err)
	}
	return m
}

// Without what the tool needs for cutting there is no program, and what to write is
// said.
func TestNoProgram(t *testing.T) {
	for _, row := range []struct {
		what, tool string
		jobs       []string
		keys       []design.Key
		hint       string // of the first
	}{
		{"no jobs", "laser", nil, []design.Key{design.KeyMachineJob, design.KeyMachineJob},
			`[[machine.job]], work = "cut-inside", material = "stuff", feed = "… mm/min", power = …`},
		{"no power", "laser", []string{"work = \"cut-outline\"\nfeed = \"9 mm/s\"", "work = \"cut-inside\"\nskip = true"}, []design.Key{design.KeyMachineJob},
			`work = "cut-outline", material = "stuff", power = …`},
		{"no depth", "knife", []string{"work = \"cut-outline\"\nfeed = \"9 mm/s\"", "work = \"cut-inside\"\nskip = true"}, []design.Key{design.KeyMachineJob},
			`material = "stuff", depth = "… mm"`},
	} {
		s := SettingsFor(machineOf(t, row.tool, row.jobs...), export.Material{Name: "stuff", Stock: piece.Board})
		var b bytes.Buffer
		var lacks UnsetError
		if err := WriteFor(&b, readertest.Square(), export.Options{}, s); !errors.As(err, &lacks) || b.Len() > 0 {
			t.Errorf("%s: %d bytes, %v", row.what, b.Len(), err)
			continue
		}
		var keys []design.Key
		for _, l := range lacks {
			keys = append(keys, l.Key)
		}
		if !slices.Equal(keys, row.keys) || !strings.HasSuffix(design.English().Phrase(lacks[0].Hint), row.hint) {
			t.Errorf("%s: %v", row.what, lacks)
		}
	}
	s := tried(design.Router)
	s.Plunge = 0
	var lacks UnsetError
	if err := WriteFor(&bytes.Buffer{}, readertest.Square(), export.Options{}, s); !errors.As(err, &lacks) || lacks[0].Key != design.KeyMachinePlunge {
		t.Errorf("no plunge: %v", err)
	}
	marks := readertest.Square()
	marks.Lines, marks.Labels = marks.Lines[:1], nil
	if err := WriteFor(&bytes.Buffer{}, marks, export.Options{}, Defaults(design.Laser)); !errors.As(err, &lacks) {
		t.Errorf("a program of nothing: %v", err)
	}
}
