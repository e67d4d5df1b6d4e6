package chapter

import (
	"fmt"
	"math"
	"slices"
	"strconv"
	"strings"
	"testing"

	"slingloft/export"
	"slingloft/export/sheet"
	"slingloft/export/sheet/given"
	"slingloft/export/sheet/wording"
	"slingloft/outline/bed"
	"slingloft/outline/design"
	"slingloft/outline/geom"
	"slingloft/outline/panel"
	"slingloft/outline/piece"
)

// kinds returns the kinds of a bed's steps, in order.
func (b build) kinds() []wording.Task {
	var out []wording.Task
	for _, s := range b.steps() {
		out = append(out, s.kind)
	}
	return out
}

// stepOf returns the step of a kind.
func stepOf(t *testing.T, b build, kind wording.Task) sheet.Step {
	t.Helper()
	for _, s := range b.steps() {
		if s.kind == kind {
			return s.Step
		}
	}
	t.Fatalf("no step %s", kind)
	return sheet.Step{}
}

// The steps follow from what the bed is made of, and stand in the order of work, numbered
// from one.
func TestOrderOfSteps(t *testing.T) {
	cut := []wording.Task{wording.CompareBought, wording.LayOut, wording.MarkPlotted, wording.ProveSquare, wording.CutCloth}
	cloth := []wording.Task{wording.TellFaces, wording.TestSeam}
	rope := []wording.Task{wording.PullTrial, wording.TrialSplice, wording.ReadTrial, wording.PullCords, wording.CutCords}
	end := []wording.Task{wording.CutBars, wording.TackTails, wording.SetAnchors, wording.HangEmpty, wording.ProofLoad, wording.LieIn,
		wording.MeasureTips, wording.WriteHeights, wording.SetRight, wording.ReadAgain}
	chains := []wording.Task{wording.FirstCorner, wording.OtherCorner, wording.CheckNodes, wording.LockBuries}
	of := func(more ...wording.Task) []wording.Task { return more }
	eyed := slices.Concat(of(wording.SpliceEyes), chains, of(wording.ThreadChains))
	bare := slices.Concat(of(wording.HeadEyes), chains, of(wording.ThreadBare, wording.LastEyes, wording.ReadLastEyes))
	looped := of(wording.ThreadLoops, wording.JoinLoops, wording.ReadLoops, wording.LockBuries, wording.SeizeLoops)
	for _, row := range []struct {
		name   string
		lines  []string
		joined bool
		change func(*design.Design)
		sewn   []wording.Task
		made   []wording.Task // of the cords, once they are cut
	}{
		{"strip and caps", nil, false, nil, of(wording.PressStrips, wording.PressHems, wording.FinishEdges, wording.WorkOpenings, wording.SewCaps,
			wording.PinStrips, wording.StitchStrips), eyed},
		{"facing", []string{`kind = "strip"`, `kind = "facing"`}, false, nil, of(wording.PressFacings, wording.PressHems, wording.FinishEdges, wording.SewCaps,
			wording.PinFacings, wording.StitchFacings), eyed},
		{"gathered", []string{`kind = "upright"`, `kind = "gathered"`, `hollow = `, `#`}, false, nil, of(wording.PressStrips,
			wording.FinishEdges, wording.WorkOpenings, wording.TurnEnds, wording.PinStrips, wording.StitchStrips), eyed},
		{"joined", nil, true, nil, of(wording.PressStrips, wording.PressHems, wording.JoinPanels, wording.FinishEdges, wording.WorkOpenings, wording.SewCaps,
			wording.PinStrips, wording.StitchStrips), eyed},
		{"loops", nil, false, func(d *design.Design) { d.Splice.Whole = true }, of(wording.PressStrips, wording.PressHems, wording.FinishEdges, wording.WorkOpenings, wording.SewCaps,
			wording.PinStrips, wording.StitchStrips), looped},
		{"no eye passes", nil, false, func(d *design.Design) { d.Leg.Diameter = 4.5 }, of(wording.PressStrips, wording.PressHems,
			wording.FinishEdges, wording.WorkOpenings, wording.SewCaps, wording.PinStrips, wording.StitchStrips), bare},
		{"no raw edge past the rows", nil, false, func(d *design.Design) { d.Seam.Side, d.Channel.TurnUnder = 6, 6 }, of(wording.PressStrips,
			wording.PressHems, wording.WorkOpenings, wording.SewCaps, wording.PinStrips, wording.StitchStrips), eyed},
	} {
		b := made(t, row.lines...)
		if row.change != nil {
			row.change(&b.Design)
		}
		if row.joined {
			b.Sewn.Joins = []panel.Join{{}}
		}
		for _, s := range b.steps() {
			if len(s.Do) > 10 {
				t.Errorf("%s: %s has %d actions: %q", row.name, s.kind, len(s.Do), s.Do)
			}
			for _, do := range append(s.Do, s.Done) {
				if n := len(strings.Fields(do)); n > 20 && strings.Count(do, ".") < 2 {
					t.Errorf("%s: %s: %d words: %s", row.name, s.kind, n, do)
				}
			}
		}
		if got, want := b.kinds(), slices.Concat(cut, cloth, row.sewn, rope, row.made, end); !slices.Equal(got, want) {
			t.Errorf("%s: %q, want %q", row.name, got, want)
		}
		for i, s := range b.steps() {
			if s.No != i+1 {
				t.Errorf("%s: step %d is numbered %d", row.name, i+1, s.No)
			}
		}
	}
}

// A body in one piece is proved by its diagonals, panels by their corners and by name.
func TestProve(t *testing.T) {
	b := hangs(t)
	panelOf := func(title string, n int) piece.Piece {
		q := piece.Piece{Kind: piece.BodyPanel, Title: title}
		for i := range n {
			q.Checks = append(q.Checks, piece.Measure{Kind: piece.CapTop, Length: float64(100 + i)})
		}
		return q
	}
	b.Sewn.Pieces = []piece.Piece{panelOf("body", 6), pocket()}
	one := stepOf(t, b, wording.ProveSquare)
	if !slices.Contains(one.Do, b.Say.Order.Diagonals) || len(one.Facts) != 5 || strings.Contains(one.Facts[0].Name, "body") {
		t.Errorf("one piece: %+v", one)
	}
	b.Sewn.Pieces = []piece.Piece{panelOf("body wide", 2), panelOf("body narrow", 3)}
	two := stepOf(t, b, wording.ProveSquare)
	if !slices.Contains(two.Do, b.Say.Order.Corners) || len(two.Facts) != 6 || !strings.HasPrefix(two.Facts[4].Name, "body narrow, ") {
		t.Errorf("two panels: %+v", two)
	}
}

// Cloth is counted piece by piece; the ends' allowance is told once, as they are made.
func TestCutCloth(t *testing.T) {
	b := hangs(t)
	b.Sewn.Pieces = []piece.Piece{
		{Kind: piece.WholeBody, Count: 1, Margins: []piece.Margin{
			{At: piece.AtSides, Wide: 1}, {At: piece.TurnedEnds, Wide: 12}, {At: piece.AtEnds, Wide: 9},
		}},
		{Kind: piece.Strip, Count: 2}, {Kind: piece.Cap, Count: 2, Margins: []piece.Margin{{At: piece.AtEnds, Wide: 7}}},
	}
	cut := stepOf(t, b, wording.CutCloth)
	if got := facts(cut, b.Say.Order.ClothPieces); !slices.Equal(got, []string{"5"}) {
		t.Errorf("%q pieces", got)
	}
	edges, s := b.Say.Pieces.Margins, stepOf(t, b, wording.MarkPlotted)
	if a, z := facts(s, edges[piece.TurnedEnds]), facts(s, edges[piece.AtEnds]); !slices.Equal(a, []string{"12.0 mm"}) || z != nil {
		t.Errorf("ends %q, %q", a, z)
	}
}

// The lines of a felled join are told once, by the panel that has them.
func TestJoinPanels(t *testing.T) {
	b := hangs(t)
	fell := func(role piece.Role, y float64, of piece.Rim) piece.Line {
		return piece.Line{Role: role, Of: of.String(), Points: geom.Polyline{geom.Pt(0, y), geom.Pt(10, y)}}
	}
	var join panel.Join
	other := join.Place + 1
	b.Sewn.Joins = []panel.Join{join}
	b.Sewn.Pieces = []piece.Piece{
		{Kind: piece.BodyPanel, Title: "left", Lines: []piece.Line{fell(piece.FellFold, 16, join.Place), fell(piece.FellFold, 40, join.Place)}},
		{Kind: piece.BodyPanel, Title: "right", Lines: []piece.Line{fell(piece.FellTrim, -7, join.Place), fell(piece.FellStitch, -9, other)}},
	}
	s, rim := stepOf(t, b, wording.JoinPanels), b.rim(join.Place)
	if got := facts(s, rim+", fold the allowance of the left"); !slices.Equal(got, []string{"16.0 mm from the net line"}) {
		t.Errorf("fold %q", got)
	}
	if got := facts(s, rim+", trim the allowance of the right"); !slices.Equal(got, []string{"7.0 mm from the net line"}) {
		t.Errorf("trim %q", got)
	}
	if got := facts(s, rim+", second row on the right"); got != nil {
		t.Errorf("the row of another join: %q", got)
	}
}

// A bar is cut shorter than its cords lie apart by both tips; the leg of an end is told
// for that end.
func TestCutBars(t *testing.T) {
	b := hangs(t)
	b.Shape.Ends[bed.Head].Bar, b.Shape.Ends[bed.Foot].Bar = 900, 820
	for reach, want := range map[float64][]string{0: {"900.0 mm", "820.0 mm"}, 5: {"890.0 mm", "810.0 mm"}} {
		b.Design.Bar.TipReach = reach
		s := stepOf(t, b, wording.CutBars)
		if got := slices.Concat(facts(s, "head bar, cut length"), facts(s, "foot bar, cut length")); !slices.Equal(got, want) {
			t.Errorf("tips reach %g: %q, want %q", reach, got, want)
		}
		if got := facts(s, b.Say.Order.TipReach); (got != nil) != (reach > 0) {
			t.Errorf("tips reach %g: told as %q", reach, got)
		}
	}
}

func TestHang(t *testing.T) {
	b := hangs(t)
	for offset, name := range map[float64]string{25: "head apex above the other", -25: "foot apex above the other"} {
		b.Shape.Offset = offset
		if got := facts(stepOf(t, b, wording.LieIn), name); !slices.Equal(got, []string{"25 mm"}) {
			t.Errorf("offset %g: %q is %q", offset, name, got)
		}
	}
	if got := facts(stepOf(t, made(t), wording.SetAnchors), "head anchor above ground"); len(got) != 1 {
		t.Errorf("the head anchor stands at %q", got)
	}
}

// The bars lie apart by the span along the bottom line, which may rise.
func TestBottomSpan(t *testing.T) {
	b := hangs(t)
	span := b.Design.Bed.Span
	rise := b.Shape.Problem.Bottom(span/2) - b.Shape.Problem.Bottom(-span/2)
	if got, want := b.bottomSpan(), geom.Pt(span, rise).Len(); got != want {
		t.Errorf("%g, want %g", got, want)
	}
}

// The lines to lay templates by stand where the lay has the pieces: turned end for end the
// centre line lies as far from the selvedge, and the bar lines change places.
func TestLinesOnRoll(t *testing.T) {
	b := boarded(t)
	body := b.bodies()[0]
	facts := func(m geom.Motion) []float64 {
		b.Lays = []given.Lay{{Roll: true, Items: []export.Item{{Piece: body, Motion: m}}}}
		var out []float64
		for _, f := range stepOf(t, b, wording.DrawLines).Facts {
			v, err := strconv.ParseFloat(strings.TrimSuffix(f.Value, " mm"), 64)
			if err != nil {
				t.Fatal(err)
			}
			out = append(out, v)
		}
		return out
	}
	plain := facts(geom.Motion{Shift: geom.Pt(1000, 700)})
	turned := facts(geom.Motion{Turn: math.Pi, Shift: geom.Pt(1000, 700)})
	off := 0.0 // of the lines beside the centre line, by the template that lies on them
	for _, q := range b.Boards {
		if q.Lie.For == piece.SideBoard {
			off = math.Round(2*q.Lie.Rests[0].Off) / 2
		}
	}
	if len(plain) != 5 || plain[0] != 700 || plain[2]-plain[1] != plain[4] || off == 0 || plain[3] != off {
		t.Errorf("centre line, bar lines, lines beside it and their distance: %v", plain)
	}
	for i, want := range []float64{700, 2000 - plain[1], 2000 - plain[2], off, plain[4]} {
		if math.Abs(turned[i]-want) > 0.5 {
			t.Errorf("turned by half a turn: %v, want %g in place %d", turned, want, i)
		}
	}
}

// A maker who has the sheet alone finds in the steps what a figure hangs on: what was bought
// with the key that has it, how near is near enough, the pins that eyes and gaps are read on,
// and commands that name the design's file.
func TestNothingToGuess(t *testing.T) {
	b := made(t)
	b.File = "my bed.toml"
	bought := stepOf(t, b, wording.CompareBought)
	for name, want := range map[string]string{
		b.Say.Order.HookThick: "9 mm; hook_diameter under [hang]", b.Say.Order.TipPin: "8 mm; tip_diameter under [bar]",
		b.Say.Order.TubeThick: "25 mm; outer_diameter under [bar]", b.Say.Order.PrintAnew: `slingloft sheet "my bed.toml" --out new-sheet.pdf`,
	} {
		if got := facts(bought, name); !slices.Equal(got, []string{want}) {
			t.Errorf("%s: %q, want %q", name, got, want)
		}
	}
	b.File = ""
	if got := facts(stepOf(t, b, wording.WriteHeights), b.Say.Order.PrintAnew); !slices.Equal(got, []string{"slingloft sheet --out new-sheet.pdf"}) {
		t.Errorf("built in: %q", got)
	}
	for task, name := range map[wording.Task]string{
		wording.ProveSquare: b.Say.Order.NearEnough, wording.StitchStrips: b.Say.Order.NearEnough, wording.CutBars: b.Say.Order.NearEnough,
		wording.LieIn: b.Say.Order.NearEnough, wording.ReadAgain: b.Say.FirstNight.Moved, wording.CheckNodes: b.Say.Order.PinInGap,
		wording.SpliceEyes: b.Say.Order.PinInEye, wording.CutCloth: b.Say.Order.NotchIn,
	} {
		if len(facts(stepOf(t, b, task), name)) != 1 {
			t.Errorf("%s: no %q in %+v", task, name, stepOf(t, b, task).Facts)
		}
	}
	b.Design.Cloth.Flaws = append(b.Design.Cloth.Flaws[:0:0], b.Design.Cloth.Flaws[0])
	lay := stepOf(t, b, wording.LayOut)
	if !slices.Contains(lay.Do, b.Say.Order.MindFlaws) || !slices.Equal(facts(lay, fmt.Sprintf(b.Say.Order.FlawUp, 1)), []string{"1440.0 mm to 1490.0 mm"}) {
		t.Errorf("flaw: %+v", lay)
	}
}

// No step asks for more than ten things, whatever the design adds to it.
func TestStepsAreShort(t *testing.T) {
	b := made(t)
	for _, s := range b.steps() {
		if len(s.Do) > 12 {
			t.Errorf("%s: %d actions", s.Title, len(s.Do))
		}
	}
}
