package work_test

import (
	"os"
	"path/filepath"
	"strings"
	"testing"

	"slingloft/cmd/slingloft/work"
	"slingloft/outline/design"
	"slingloft/outline/piece"
)

// The mark that is lettered on pieces changes with what shapes them and with nothing
// else; the mark of the lay beside it with where they lie.
func TestMarks(t *testing.T) {
	data, err := os.ReadFile(filepath.Join("..", "..", "..", "testdata", "design", "small.toml"))
	if err != nil {
		t.Fatal(err)
	}
	marks := func(from, to, machine string) (shape, lays string) {
		t.Helper()
		text := strings.Replace(string(data), from, to, 1)
		if from != "" && text == string(data) {
			t.Fatalf("%q is not in the design", from)
		}
		var with work.Setting
		if machine != "" {
			m, from, err := design.ReadMachine("m.toml", []byte(machine))
			if err != nil {
				t.Fatal(err)
			}
			with.Machine, with.MachineSource = &m, from
		}
		p, err := work.ReadFor("small.toml", []byte(text), with)
		if err != nil {
			t.Fatalf("%s: %v", to, err)
		}
		for _, q := range p.Sewn.Pieces {
			lettered := false
			for _, l := range q.Labels {
				lettered = lettered || strings.Contains(l.Text, p.Mark)
			}
			if !lettered && q.Stock == piece.Cloth {
				t.Errorf("%s: %s does not bear the mark %s", to, q.ID, p.Mark)
			}
		}
		l, err := p.Lay(t.Context(), work.Budget{})
		if err != nil {
			t.Fatal(err)
		}
		drawings, err := p.Drawings(l, 1)
		if err != nil {
			t.Fatal(err)
		}
		for _, d := range drawings {
			_, mark, ok := strings.Cut(d.Title, "shape "+p.Mark+", lay ")
			if !ok {
				t.Errorf("%s: the title %q has no marks", to, d.Title)
			}
			lays += mark + " "
		}
		return p.Mark, lays
	}
	shape, lays := marks("", "", "")
	for _, row := range []struct{ from, to, machine string }{
		{`name = "Short nap"`, `name = "Long nap"`, ""},
		{`name = "nylon ripstop"`, "name = \"nylon\"\nprice = 9", ""},
		{`distance = "4200 mm"`, `distance = "4300 mm"`, ""},
		{`mass = "74 kg"`, "mass = \"74 kg\" # as before", ""},
		{`width = "1600 mm"`, `width = "1200 mm"`, ""},
		{"", "", "[machine]\nwidth = \"900 mm\"\nheight = \"400 mm\"\nkerf = \"0.3 mm\"\n"},
	} {
		got, where := marks(row.from, row.to, row.machine)
		if got != shape {
			t.Errorf("%s%s: shape %s, want %s", row.to, row.machine, got, shape)
		}
		if moved := row.machine != "" || strings.HasPrefix(row.to, "width"); moved == (where == lays) {
			t.Errorf("%s%s: lays %s, %s before", row.to, row.machine, where, lays)
		}
	}
	for _, row := range []struct{ from, to string }{
		{`span = "1480 mm"`, `span = "1481 mm"`},
		{`tick = "100 mm"`, "tick = \"100 mm\"\n\n[channel]\ndepth = \"41 mm\""},
		{"[cord.leg]\nname = \"HMPE hollow braid 3 mm\"\ndiameter = \"3 mm\"", "[cord.leg]\nname = \"HMPE hollow braid 3 mm\"\ndiameter = \"3.2 mm\""},
	} {
		if got, _ := marks(row.from, row.to, ""); got == shape {
			t.Errorf("%s: shape %s as before", row.to, got)
		}
	}
}
