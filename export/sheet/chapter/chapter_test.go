package chapter

import (
	"slices"
	"testing"

	"slingloft/export/sheet"
	"slingloft/export/sheet/giventest"
	"slingloft/outline/quantity"
)

// made returns a sheet in the making for the built-in design with some lines replaced.
func made(t *testing.T, lines ...string) build {
	t.Helper()
	d := giventest.Sewn(t, lines...)
	return build{&d}
}

// hangs returns one for a design of which nothing is known but how it hangs.
func hangs(t *testing.T, lines ...string) build {
	t.Helper()
	d := giventest.Hung(t, lines...)
	return build{&d}
}

// inches returns the sheet in inches with sixteenths.
func (b build) inches() build {
	d := *b.Data
	d.Style = quantity.Style{Inches: true, Fraction: 16}
	return build{&d}
}

// cells returns the cells behind a row's name, nil where there is no such row.
func cells(t sheet.Table, name string) []string {
	for _, r := range t.Rows {
		if r[0] == name {
			return r[1:]
		}
	}
	return nil
}

// facts returns what a step tells behind a name.
func facts(s sheet.Step, name string) []string {
	var out []string
	for _, f := range s.Facts {
		if f.Name == name {
			out = append(out, f.Value)
		}
	}
	return out
}

// ofKind returns the blocks of one kind.
func ofKind[B sheet.Block](s sheet.Section) []B {
	var out []B
	for _, b := range s.Blocks {
		if block, ok := b.(B); ok {
			out = append(out, block)
		}
	}
	return out
}

// Every table has a name for each column, says of each how it is set, and has as many
// cells in every row; a table in which rows stand out says of each whether it does. No id
// comes twice.
func TestTablesAreWhole(t *testing.T) {
	for name, lines := range map[string][]string{
		"built in": nil,
		"facing":   {`kind = "strip"`, `kind = "facing"`},
		"straight": {`cut = "net"`, `cut = "straight"`},
		"gathered": {`kind = "upright"`, `kind = "gathered"`, `hollow = `, `#`},
	} {
		s, err := Sheet(*made(t, lines...).Data)
		if err != nil {
			t.Fatal(err)
		}
		seen := map[string]bool{}
		tables := 0
		for _, sec := range s.Sections {
			for _, table := range ofKind[sheet.Table](sec) {
				tables++
				if n := len(table.Head); len(table.Words) != n || slices.ContainsFunc(table.Rows, func(r []string) bool { return len(r) != n }) {
					t.Errorf("%s: %s: heads %q, words %v, rows %q", name, table.ID, table.Head, table.Words, table.Rows)
				}
				if len(table.Strong) != 0 && len(table.Strong) != len(table.Rows) {
					t.Errorf("%s: %s: %d rows, of %d it is known whether they stand out", name, table.ID, len(table.Rows), len(table.Strong))
				}
				if table.Caption == "" || seen[table.ID] {
					t.Errorf("%s: table %q again, or without a caption: %q", name, table.ID, table.Caption)
				}
				seen[table.ID] = true
			}
		}
		if tables < 15 {
			t.Errorf("%s: only %d tables", name, tables)
		}
	}
}

// A chapter without anything in it has no heading.
func TestEmptyChaptersLeftOut(t *testing.T) {
	s, err := Sheet(*hangs(t).Data)
	if err != nil {
		t.Fatal(err)
	}
	for _, sec := range s.Sections {
		if sec.ID == "offsets" || sec.ID == "seams" || sec.ID == "materials" || sec.ID == "lay" {
			t.Errorf("section %s with %d blocks", sec.ID, len(sec.Blocks))
		}
	}
}

func TestSentences(t *testing.T) {
	got := sentences([]string{"one thing", "another.", "ähnlich"})
	if want := (sheet.List{"One thing.", "Another.", "Ähnlich."}); !slices.Equal(got, want) {
		t.Errorf("%q, want %q", got, want)
	}
}
