package chapter

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"slingloft/export/sheet"
	"slingloft/outline"
	"slingloft/outline/piece"
	"slingloft/outline/template"
	"slingloft/outline/words"
)

// boarded returns a sheet in the making with its templates and gauges.
func boarded(t *testing.T, lines ...string) build {
	t.Helper()
	b := made(t, lines...)
	var err error
	b.Boards, err = outline.Cutting{Design: b.Design, Sewn: b.Sewn, Cords: b.Cords.Cords, Words: words.EnglishLettering(),
		Room: template.Room{Width: 880, Height: 580}}.Templates()
	if err != nil {
		t.Fatal(err)
	}
	b.Templates = b.Boards
	return b
}

// Every template tells by which line it is laid and how far from it, what it gives with
// either face up, and what its halved notches are; its picture stands beside that.
func TestTemplatesTold(t *testing.T) {
	for name, lines := range map[string][]string{
		"strip": nil, "facing": {`kind = "strip"`, `kind = "facing"`}, "gathered": {`kind = "upright"`, `kind = "gathered"`, `hollow = `, `#`},
	} {
		b := boarded(t, lines...)
		s, err := b.templates()
		if err != nil {
			t.Fatal(err)
		}
		told := map[string]sheet.Step{}
		for _, q := range ofKind[sheet.Steps](s)[0] {
			told[q.ID] = q
		}
		for _, q := range b.Boards {
			if q.Kind != piece.Template {
				continue
			}
			step, say := told["board-"+q.ID], b.Say.Boards
			straight := q.Lie.Rests[0]
			first := fmt.Sprintf(say.On, say.Seen[straight.On])
			if straight.Off > 0 {
				first = fmt.Sprintf(say.Beside, b.Cloth(straight.Off), say.Seen[straight.On])
			}
			if len(step.Do) < 4 || step.Do[0] != first || len(step.Figures) != 1 || !slices.Contains(step.Do, b.drawn(q.Lie.For)[0]) {
				t.Errorf("%s: %s is told as %q with %d pictures", name, q.ID, step.Do, len(step.Figures))
			}
			all := strings.Join(step.Do, " ")
			for _, n := range notchesOf(q) {
				if up, over, ok := strings.Cut(n, "/"); ok && !strings.Contains(all, fmt.Sprintf(say.Halved, n, up, over)) {
					t.Errorf("%s: %s does not tell what its notch %s is: %q", name, q.ID, n, step.Do)
				}
			}
			if c := step.Figures[0].Picture.Clashes(); len(c) > 0 {
				t.Errorf("%s: %s: lettering over lettering: %q", name, q.ID, c)
			}
		}
		if n := len(b.boardTable().Rows); n < 5 {
			t.Errorf("%s: %d kinds of templates and gauges", name, n)
		}
		for _, r := range b.boardTable().Rows {
			if r[3] == "" {
				t.Errorf("%s: %s is used in no step", name, r[0])
			}
		}
	}
}

// A check that is told with a step stands in the list of checks, with the step's number.
func TestChecksListed(t *testing.T) {
	b := boarded(t)
	s, err := b.ticks()
	if err != nil {
		t.Fatal(err)
	}
	rows := ofKind[sheet.Table](s)[0].Rows
	want := 0
	for _, q := range b.steps() {
		for _, f := range q.Facts {
			if !f.Check {
				continue
			}
			want++
			if !slices.ContainsFunc(rows, func(r []string) bool { return slices.Equal(r, []string{fmt.Sprint(q.No), f.Name, f.Value}) }) {
				t.Errorf("step %d: %s is not among the checks", q.No, f.Name)
			}
		}
	}
	if len(rows) != want || want < 12 {
		t.Errorf("%d checks listed, %d told", len(rows), want)
	}
	if n := len(ofKind[sheet.Ticks](s)[0]); n != len(b.steps()) {
		t.Errorf("%d things to tick off in %d steps", n, len(b.steps()))
	}
}
