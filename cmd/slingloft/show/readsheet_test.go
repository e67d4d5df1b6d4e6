package show_test

import (
	"math"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"

	"slingloft/cmd/slingloft/show"
	"slingloft/cmd/slingloft/work"
	"slingloft/export/sheet"
	"slingloft/export/sheet/wording"
)

// readSheet is a sheet as somebody reads it: by tables, rows and steps.
type readSheet struct {
	*testing.T
	sheet.Sheet
}

// tables returns every table of the sheet.
func (s readSheet) tables() []sheet.Table {
	var out []sheet.Table
	for _, sec := range s.Sections {
		for _, b := range sec.Blocks {
			if t, ok := b.(sheet.Table); ok {
				out = append(out, t)
			}
		}
	}
	return out
}

// table returns the table with an id.
func (s readSheet) table(id string) sheet.Table {
	s.Helper()
	for _, t := range s.tables() {
		if t.ID == id {
			return t
		}
	}
	s.Fatalf("no table %s", id)
	return sheet.Table{}
}

// cells returns the cells behind a row's name.
func (s readSheet) cells(id, row string) []string {
	s.Helper()
	t := s.table(id)
	i := slices.IndexFunc(t.Rows, func(r []string) bool { return r[0] == row })
	if i < 0 {
		s.Fatalf("table %s has no row %q: %q", id, row, t.Rows)
	}
	return t.Rows[i][1:]
}

// row returns the figures behind a row's name, the first of each cell.
func (s readSheet) row(id, row string) []float64 {
	s.Helper()
	var out []float64
	for _, c := range s.cells(id, row) {
		if v := figures(c); len(v) > 0 {
			out = append(out, v[0])
		}
	}
	return out
}

// steps returns the steps of work.
func (s readSheet) steps() sheet.Steps { return stepsOf(s.T, s.Sheet) }

// fact returns the figures of a step's fact.
func (s readSheet) fact(step, name string) []float64 {
	s.Helper()
	for _, st := range s.steps() {
		if st.Title != step {
			continue
		}
		for _, f := range st.Facts {
			if f.Name == name {
				return figures(f.Value)
			}
		}
		s.Fatalf("step %q has no %q: %v", step, name, st.Facts)
	}
	s.Fatalf("no step %q", step)
	return nil
}

// near fails where a printed figure lies further off than its rounding allows.
func (s readSheet) near(what string, got, want, tol float64) {
	s.Helper()
	if !(math.Abs(got-want) <= tol) {
		s.Errorf("%s = %g, want %g within %g", what, got, want, tol)
	}
}

var number = regexp.MustCompile(`(−?)(?:(\d+) )?(\d+)/(\d+)|(−?)(\d+(?:\.\d+)?)`)

// figures returns the numbers in a text, mixed fractions among them.
func figures(text string) []float64 {
	value := func(s string) float64 { v, _ := strconv.ParseFloat(s, 64); return v }
	var out []float64
	for _, m := range number.FindAllStringSubmatch(text, -1) {
		v, sign := value(m[6]), m[5]
		if m[4] != "" {
			v, sign = value(m[2])+value(m[3])/value(m[4]), m[1]
		}
		if sign != "" {
			v = -v
		}
		out = append(out, v)
	}
	return out
}

func TestFigures(t *testing.T) {
	for text, want := range map[string][]float64{
		"": nil, "no figure": nil, "12.5 mm": {12.5}, "−3.4": {-3.4}, "1944.1 mm × 1222.5 mm": {1944.1, 1222.5},
		"5 1/2 in": {5.5}, "−5 3/4": {-5.75}, "15/16 in": {0.9375}, "± 8.3": {8.3}, "35 1/2 in and 32 in": {35.5, 32},
	} {
		if got := figures(text); !slices.Equal(got, want) {
			t.Errorf("figures(%q) = %v, want %v", text, got, want)
		}
	}
}

// planOf reads one of the designs.
func planOf(t *testing.T, name string) work.Plan {
	t.Helper()
	p, err := work.ReadFor(name, designs(t)[name], work.Setting{})
	if err != nil {
		t.Fatal(err)
	}
	return p
}

// In inches every table says what it says in millimetres, cell by cell, to half of the
// fraction that it is told in, and forces in pounds: 1 lbf is 4.4482216152605 N.
func TestInchesSayTheSame(t *testing.T) {
	p := planOf(t, "demo")
	metric, err := show.Unlaid(&p, wording.English())
	if err != nil {
		t.Fatal(err)
	}
	p.Design.Output.Inches = true
	imperial, err := show.Unlaid(&p, wording.English())
	if err != nil {
		t.Fatal(err)
	}
	a, b := readSheet{t, metric}.tables(), readSheet{t, imperial}.tables()
	if len(a) != len(b) {
		t.Fatalf("%d tables in mm, %d in inches", len(a), len(b))
	}
	lengths, forces := 0, 0
	for k := range a {
		rows := a[k].Rows
		if a[k].ID == "place" { // the pull as a weight is told in kgf alone
			rows = slices.DeleteFunc(slices.Clone(rows), func(r []string) bool { return strings.Contains(r[0], "as a weight") })
		}
		if a[k].ID != b[k].ID || len(rows) != len(b[k].Rows) {
			t.Fatalf("table %s of %d rows, in inches %s of %d", a[k].ID, len(rows), b[k].ID, len(b[k].Rows))
		}
		for i, row := range rows {
			for j, cell := range row {
				other := b[k].Rows[i][j]
				if n, rest, ok := strings.Cut(cell, " × "); ok && strings.HasPrefix(other, n+" × ") && !strings.Contains(n, ".") { // so many of a thing
					cell, other = rest, strings.TrimPrefix(other, n+" × ")
				}
				if cell == other {
					continue
				}
				mm, in := figures(cell), figures(other)
				if len(mm) == 0 || len(mm) != len(in) {
					t.Errorf("%s, %q: %q in mm is %q in inches", a[k].ID, row[0], cell, other)
					continue
				}
				for f := range mm {
					unit, half := 25.4, 25.4/32+0.05
					if !strings.Contains(cell, ".") { // for the eye: whole mm and eighths
						half = 25.4/16 + 0.5
					}
					if strings.HasSuffix(other, "lbf") {
						unit, half = 4.4482216152605, 4.4482216152605/2+0.5
						if strings.HasSuffix(a[k].ID, "least") { // rounded up
							half *= 2
						}
						forces++
					} else if strings.HasSuffix(other, "lbf/in") {
						unit, half = 4.4482216152605/25.4, 0.01
					} else if strings.HasSuffix(other, "psi") { // lbf/in², in kPa
						unit, half = 4.4482216152605/(25.4*25.4)*1000, 0.1
					} else {
						lengths++
					}
					weight := strings.HasSuffix(other, "lb") || strings.HasSuffix(cell, "kg") || strings.Contains(cell, "kg,")
					if math.Abs(in[f]*unit-mm[f]) > half && !weight {
						t.Errorf("%s, %q: %q in mm is %q in inches", a[k].ID, row[0], cell, other)
					}
				}
			}
		}
	}
	if lengths < 400 || forces < 40 {
		t.Errorf("only %d lengths and %d forces compared", lengths, forces)
	}
}
