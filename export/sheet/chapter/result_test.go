package chapter

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"slingloft/export/sheet"
	"slingloft/outline/design"
	"slingloft/outline/margin"
	"slingloft/outline/piece"
	"slingloft/outline/quantity"
	"slingloft/outline/rig"
)

// Checks of every outcome.
var (
	met     = margin.Check{Capacity: 10, Load: 1, Ratio: 10, Required: 5, Met: true}
	unmet   = margin.Check{Capacity: 4, Load: 1, Ratio: 4, Required: 5}
	waived  = margin.Check{Capacity: 4, Load: 1, Ratio: 4, Required: 5, Waived: true}
	unknown = margin.Check{Load: 1, Required: 5, Missing: []design.Key{design.KeySeamThreadStrength}}
)

var (
	within = piece.Seam{Remains: 1, Tolerance: 2}
	off    = piece.Seam{Remains: 3, Tolerance: 2}
)

// The worst of what is known decides: a margin that is not met before a seam, that before
// what is waived, missing or unusual.
func TestVerdict(t *testing.T) {
	say := hangs(t).Say.Verdict
	for _, row := range []struct {
		name     string
		checks   []margin.Check
		seams    []piece.Seam
		warnings []string
		grade    sheet.Grade
		text     string
	}{
		{"all met", []margin.Check{met, met}, []piece.Seam{within}, nil, sheet.Good, say.Met},
		{"one unmet", []margin.Check{met, unmet}, []piece.Seam{off}, []string{"w"}, sheet.Bad, say.Unmet.One},
		{"two unmet", []margin.Check{unmet, unmet, waived}, nil, nil, sheet.Bad, fmt.Sprintf(say.Unmet.Many, 2)},
		{"a seam off", []margin.Check{met, waived}, []piece.Seam{within, off}, nil, sheet.Bad, say.Off.One},
		{"seams off", []margin.Check{met}, []piece.Seam{off, off, off}, nil, sheet.Bad, fmt.Sprintf(say.Off.Many, 3)},
		{"not checked", nil, nil, []string{"w"}, sheet.Careful, say.Unchecked},
		{"waived", []margin.Check{waived, unknown}, nil, []string{"w"}, sheet.Careful, fmt.Sprintf(say.Waived, 1)},
		{"a warning", []margin.Check{met}, nil, []string{"w"}, sheet.Careful, say.Warned},
		{"one unknown", []margin.Check{met, unknown}, nil, []string{"w"}, sheet.Careful, say.Unknown.One},
		{"two unknown", []margin.Check{unknown, unknown}, nil, nil, sheet.Careful, fmt.Sprintf(say.Unknown.Many, 2)},
	} {
		b := hangs(t)
		b.Sewn.Seams, b.Warnings = row.seams, row.warnings
		if row.checks != nil {
			b.Margins = &margin.Report{Checks: row.checks}
		}
		if got, want := b.verdict(), (sheet.Verdict{Grade: row.grade, Title: say.Grades[row.grade], Text: row.text}); got != want {
			t.Errorf("%s: %+v, want %+v", row.name, got, want)
		}
	}
}

// What fails stands first, then what to know, the cautions last.
func TestResultOrder(t *testing.T) {
	b := hangs(t)
	b.Margins = &margin.Report{Checks: []margin.Check{unknown, waived, unmet, met}}
	b.Sewn.Seams, b.Warnings = []piece.Seam{off}, []string{"the bed is odd", "and so is the bar"}
	s, err := b.result()
	if err != nil {
		t.Fatal(err)
	}
	say := b.Say.Result
	want := []sheet.Notice{
		{Grade: sheet.Bad, Title: say.Unmet}, {Grade: sheet.Bad, Title: say.Off}, {Grade: sheet.Careful, Title: say.Waived},
		{Grade: sheet.Careful, Title: say.Unknown}, {Grade: sheet.Careful, Title: say.Warnings}, {Grade: sheet.Careful, Title: say.Cautions},
	}
	lines := []int{1, 1, 1, 1, 2, len(b.Say.Names.Cautions)}
	got := ofKind[sheet.Notice](s)
	if len(got) != len(want) || len(s.Blocks) != len(want) {
		t.Fatalf("%d notices, want %d, in %d blocks", len(got), len(want), len(s.Blocks))
	}
	for i, n := range got {
		if n.Grade != want[i].Grade || n.Title != want[i].Title || len(n.Lines) != lines[i] {
			t.Errorf("notice %d: %+v, want %q of grade %d with %d lines", i, n, want[i].Title, want[i].Grade, lines[i])
		}
	}
	if want := []string{"The bed is odd.", "And so is the bar."}; !slices.Equal(got[4].Lines, want) {
		t.Errorf("warnings %q, want %q", got[4].Lines, want)
	}
}

func TestCheckLine(t *testing.T) {
	b := hangs(t)
	c := margin.Check{Load: 1200, Capacity: 3000, Unit: margin.Force, Ratio: 2.5, Required: 5}
	for _, row := range []struct {
		bound bool
		unit  margin.Unit
		want  string
	}{
		{false, margin.Force, "load 1200 N, capacity 3000 N: 2.50 times the load (5.00 needed)"},
		{true, margin.Force, "load 1200 N, capacity at most 3000 N: 2.50 times the load (5.00 needed)"},
	} {
		c.Bound, c.Unit = row.bound, row.unit
		if got := b.checkLine(c); !strings.HasSuffix(got, ": "+row.want) {
			t.Errorf("bound %v: %q, want %q", row.bound, got, row.want)
		}
	}
}

// What cannot be judged is told in a maker's words, each value once, a line for all parts that
// lack the same.
func TestUnknown(t *testing.T) {
	names := hangs(t).Say.Names.Margins
	check := func(part margin.Part, keys ...design.Key) margin.Check {
		return margin.Check{Part: part, Missing: keys}
	}
	const hook, thread, strip = design.KeyHangHookStrength, design.KeySeamThreadStrength, design.KeyClothStripStrength
	got := names.UnknownOf(margin.Report{Checks: []margin.Check{
		check(margin.SideSeam, thread, strip), check(margin.HeadHook, hook), check(margin.SideSeam, strip, thread), check(margin.SideCord), check(margin.FootHook, hook),
	}})
	want := []string{
		"head hook and foot hook: cannot be judged without the rated strength of hooks and anchors (2 checks)",
		"side seam: cannot be judged without the breaking strength of the thread and strip strength of the cloth (2 checks)",
	}
	if !slices.Equal(got, want) {
		t.Errorf("%q, want %q", got, want)
	}
}

func TestLoadWords(t *testing.T) {
	for _, row := range []struct {
		model design.Model
		mass  quantity.Kilograms
		crown float64
		want  string
	}{
		{design.Even, 82, 50, "82 kg spread evenly"},
		{design.Lying, 82, 50, "a sleeper of 82 kg, top of the head 50 mm inside the head bar"},
		{design.Lying, 70.4, 0, "a sleeper of 70 kg, top of the head 0 mm inside the head bar"},
		{design.Lying, 82, -30, "a sleeper of 82 kg, top of the head 30 mm past the head bar, over the tail"},
	} {
		b := hangs(t)
		b.Design.Load.Model, b.Design.Sleeper.Mass, b.Design.Sleeper.Crown = row.model, row.mass, row.crown
		if got := b.loadWords(); got != row.want {
			t.Errorf("%q, want %q", got, row.want)
		}
	}
}

// The anchor that stands higher is named first, whichever it is; without a place the
// apexes are told, for what they are.
func TestSummaryHigher(t *testing.T) {
	ends := [2]string{"head", "foot"}
	for _, row := range []struct {
		by    float64
		first int // end that stands higher
		want  string
	}{{37.4, 0, "37 mm"}, {-37.6, 1, "38 mm"}} {
		b := hangs(t)
		b.Shape.Offset = row.by
		high, low := ends[row.first], ends[1-row.first]
		if got := cells(b.summary(), fmt.Sprintf(b.Say.Summary.HigherApex, high, low)); !slices.Equal(got, []string{row.want}) {
			t.Errorf("apexes %g: %q, want %q", row.by, got, row.want)
		}
		b.Shape.Offset = -10 * row.by
		b.Place = &rig.Place{HeadAbove: row.by}
		if got := cells(b.summary(), fmt.Sprintf(b.Say.Summary.Higher, high, low)); !slices.Equal(got, []string{row.want}) {
			t.Errorf("anchors %g: %q, want %q", row.by, got, row.want)
		}
	}
}
