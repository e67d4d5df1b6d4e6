package chapter

import (
	"errors"
	"math"
	"slices"
	"strconv"
	"strings"
	"testing"

	"slingloft/export/sheet"
	"slingloft/export/sheet/given"
	"slingloft/outline/accuracy"
	"slingloft/outline/bed"
	"slingloft/outline/design"
	"slingloft/outline/finished"
	"slingloft/outline/geom"
	"slingloft/outline/hung"
	"slingloft/outline/piece"
	"slingloft/outline/quantity"
	"slingloft/outline/rig"
	"slingloft/outline/room"
	"slingloft/outline/state"
)

// A guest has a row of figures and a line; one under whom the bed does not rest a line
// alone. A height of nothing is not known.
func TestGuestBlocks(t *testing.T) {
	b := hangs(t)
	lying := state.State{Level: finished.Level{Along: -12.34, Sag: 5, Height: -30}, Hang: [2]float64{math.Pi / 6, math.Pi / 9},
		Loads: finished.Loads{Line: [2]float64{701, 702}, Side: [2]float64{410, 420}}}
	b.Guests = []given.Guest{{Name: "Ann", Lying: lying, Ground: 420}, {Name: "Bo", Cannot: errors.New("no rest")}, {Name: "Cy", Lying: lying}}
	blocks := b.guestBlocks()
	table, list := blocks[0].(sheet.Table), blocks[1].(sheet.List)
	if len(table.Rows) != 2 || len(list) != 4 {
		t.Fatalf("%d rows, %d lines", len(table.Rows), len(list))
	}
	want := []string{"Ann", "−12.3", "5.0", "−30.0", "420.0", "30.0°", "20.0°", "701 N", "702 N", "420 N"}
	if !slices.Equal(table.Rows[0], want) {
		t.Errorf("%q, want %q", table.Rows[0], want)
	}
	if table.Rows[1][0] != "Cy" || table.Rows[1][4] != "–" {
		t.Errorf("%q", table.Rows[1])
	}
	if !strings.Contains(list[1], "Bo") || !strings.Contains(list[0], "Ann") {
		t.Errorf("%q", list)
	}
}

// Each part of the body has a row, those of the sleeper's posture stand out; what does not
// lie in the cloth has no push, and what only needs room none either.
func TestRoomTable(t *testing.T) {
	b := hangs(t)
	b.Design.Sleeper.Lies = design.OnSide
	body := room.Body{Breadth: 480, Depth: 240}
	b.Room = &room.Room{Head: 80, Feet: 61, Fits: []room.Fit{
		{Part: room.Shoulders, Lies: design.OnBack, Opening: 560, Body: body, Spare: 80, Squeeze: 12, Pressure: 0.002, Floor: -3},
		{Part: room.Elbows, Lies: design.OnBack, Opening: 600, Body: body, Spare: -20.06},
		{Part: room.Hips, Lies: design.OnSide, Opening: 500, Body: body, Squeeze: 9, Err: errors.New("too broad")},
	}}
	names := b.Say.Names.Room
	table := b.roomTable()
	for i, want := range [][]string{
		{names.Parts[room.Shoulders], names.Lies[design.OnBack], "560.0", "480.0", "80.0", "12 N", "2.0 kPa", "−3.0"},
		{names.Parts[room.Elbows], names.Lies[design.OnBack], "600.0", "480.0", "−20.1", "", "", ""},
		{names.Parts[room.Hips], names.Lies[design.OnSide], "500.0", "480.0", "0.0", b.Say.Room.Out, "", ""},
	} {
		if !slices.Equal(table.Rows[i], want) {
			t.Errorf("row %d: %q, want %q", i, table.Rows[i], want)
		}
	}
	if !slices.Equal(table.Strong, []bool{false, false, true}) {
		t.Errorf("strong %v", table.Strong)
	}
	for _, r := range []struct {
		face, upright, ridge float64
		lines                int
		last                 string
	}{
		{0, 0, 0, 1, "80 mm"}, {300, 0, 0, 2, "300 mm"}, {0, 150, 40, 3, "40 mm"}, {-20, 150, -45, 4, "45 mm"}, {0, 0, 40, 1, "61 mm"},
	} {
		b.Room.OverFace, b.Room.Upright, b.Room.Ridge = r.face, r.upright, r.ridge
		if list := b.roomList(); len(list) != r.lines || !strings.Contains(list[len(list)-1], r.last) {
			t.Errorf("%+v: %q", r, list)
		}
	}
	b.Room.Ridge, b.Room.Upright = 45, 150
	under := b.roomList()
	b.Room.Ridge = -45
	if over := b.roomList(); over[len(over)-1] == under[len(under)-1] {
		t.Errorf("over and under the line between the apexes: %q", over)
	}
}

// What was measured of a bed that hangs stands tip by tip beside how far it is off; with
// nothing to set there is no table of that, with nothing to read none at all.
func TestCorrectedBlocks(t *testing.T) {
	b := hangs(t)
	c := accuracy.Corrected{}
	c.Survey.Heights.Tips = [2][2]float64{hung.Head: {bed.Left: 701, bed.Right: 702}, hung.Foot: {bed.Left: 683, bed.Right: 684}}
	c.Off = [2][2]float64{hung.Head: {bed.Left: 3.04, bed.Right: -1}, hung.Foot: {bed.Left: -2, bed.Right: 0}}
	c.Uncertainty = [2][2]float64{hung.Head: {bed.Left: 1, bed.Right: 2}, hung.Foot: {bed.Left: 3, bed.Right: 4}}
	c.After = [2][2]float64{hung.Head: {bed.Left: 692, bed.Right: 693}, hung.Foot: {bed.Left: 694, bed.Right: 695}}
	b.Corrected = &c
	blocks := b.correctedBlocks()
	if len(blocks) != 2 {
		t.Fatalf("%d blocks with nothing to set", len(blocks))
	}
	tips := blocks[0].(sheet.Table)
	for i, want := range [][]string{{"701.0", "3.0", "± 1.0", "692.0"}, {"702.0", "−1.0", "± 2.0", "693.0"},
		{"683.0", "−2.0", "± 3.0", "694.0"}, {"684.0", "0.0", "± 4.0", "695.0"}} {
		if !slices.Equal(tips.Rows[i][1:], want) {
			t.Errorf("tip %d: %q, want %q", i, tips.Rows[i], want)
		}
	}
	c.Adjustments = []accuracy.Adjustment{{Change: 5, Uncertainty: 1.26}}
	blocks = b.correctedBlocks()
	if set := blocks[1].(sheet.Table); len(blocks) != 3 || len(set.Rows) != 1 || set.Rows[0][1] != "± 1.3 mm" {
		t.Errorf("to set: %+v", blocks[1])
	}
	c.Unread = true
	if blocks = b.correctedBlocks(); len(blocks) != 1 {
		t.Errorf("%d blocks of heights that tell nothing", len(blocks))
	}
}

// The table of an arc of a circle is that of the circle: with radius R and chord L the depth
// at x from the chord's start is √(R² − (x − L/2)²) − √(R² − L²/4), the way along it
// R (asin(L/2R) − asin((L/2 − x)/R)). Chord 1600, sag 180: R 1867.78, deepest in the middle.
func TestOffsetsOfAnArc(t *testing.T) {
	const long, sag = 1600.0, 180.0
	r := (long*long/4 + sag*sag) / (2 * sag)
	deep := func(x float64) float64 {
		return math.Sqrt(r*r-(x-long/2)*(x-long/2)) - math.Sqrt(r*r-long*long/4)
	}
	var line geom.Polyline
	for i := range 2001 {
		x := long * float64(i) / 2000
		line = append(line, geom.Pt(x, -deep(x)))
	}
	b := hangs(t)
	b.Curves = []piece.Curve{{Line: line}}
	s, err := b.offsets()
	if err != nil {
		t.Fatal(err)
	}
	tables := ofKind[sheet.Table](s)
	if len(tables) != 1 || len(tables[0].Rows) < 10 {
		t.Fatalf("%d tables", len(tables))
	}
	deepest := 0
	for i, row := range tables[0].Rows {
		x, depth, arc := number(t, row[0]), math.Abs(number(t, row[1])), number(t, row[2])
		if math.Abs(depth-deep(x)) > 0.1 || math.Abs(arc-r*(math.Asin(long/2/r)-math.Asin((long/2-x)/r))) > 0.1 {
			t.Errorf("at %g: depth %g, along %g", x, depth, arc)
		}
		if tables[0].Strong[i] {
			deepest++
			if math.Abs(x-long/2) > 0.1 || math.Abs(depth-sag) > 0.06 {
				t.Errorf("deepest by %g at %g", depth, x)
			}
		}
	}
	if last := tables[0].Rows[len(tables[0].Rows)-1]; deepest != 1 || number(t, last[0]) != long || number(t, last[1]) != 0 {
		t.Errorf("%d deepest places, the last row is %q", deepest, last)
	}
}

// number reads a figure of the sheet, true minus, fraction and all.
func number(t *testing.T, text string) float64 {
	t.Helper()
	sum, sign := 0.0, 1.0
	if rest, ok := strings.CutPrefix(text, "−"); ok {
		text, sign = rest, -1
	}
	for _, part := range strings.Fields(text) {
		top, bottom, ok := strings.Cut(part, "/")
		a, err := strconv.ParseFloat(top, 64)
		if err != nil {
			t.Fatalf("%q is no figure", text)
		}
		if ok {
			d, err := strconv.ParseFloat(bottom, 64)
			if err != nil {
				t.Fatalf("%q is no figure", text)
			}
			a /= d
		}
		sum += a
	}
	return sign * sum
}

// Which end's anchor stands higher is said at that end alone, and at both where they are
// level.
func TestHigherAnchor(t *testing.T) {
	for by, want := range map[float64][]string{40: {"40 mm", ""}, -40: {"", "40 mm"}, 0: {"0 mm", "0 mm"}} {
		b := hangs(t)
		place := rig.Place{HeadAbove: by, Ends: [2]rig.End{{Apex: 1200 + by}, {Apex: 1200}}}
		b.Place = &place
		table := b.placeTable()
		for _, name := range []string{b.Say.Place.AnchorAbove, b.Say.Place.ApexAbove} {
			if got := cells(table, name); !slices.Equal(got, want) {
				t.Errorf("%s, the head %g mm higher: %q, want %q", name, by, got, want)
			}
		}
	}
}

// In inches the sheet has the same tables with the same rows, and every length and force in
// them is the same within what either is rounded to: 1 in is 25.4 mm, 1 lbf 4.44822 N.
func TestSheetInInches(t *testing.T) {
	b := made(t)
	metric, err := Sheet(*b.Data)
	if err != nil {
		t.Fatal(err)
	}
	d := *b.Data
	d.Style = quantity.Style{Inches: true, Decimals: 3}
	pounds, err := Sheet(d)
	if err != nil {
		t.Fatal(err)
	}
	tables := func(s sheet.Sheet) map[string]sheet.Table {
		out := map[string]sheet.Table{}
		for _, sec := range s.Sections {
			for _, table := range ofKind[sheet.Table](sec) {
				out[table.ID] = table
			}
		}
		return out
	}
	compared := map[string]int{}
	other := tables(pounds)
	for id, table := range tables(metric) {
		q, ok := other[id]
		// A weight beside a force has no row where pounds are one already.
		if !ok || len(q.Head) != len(table.Head) || len(q.Rows) != len(table.Rows) && id != "place" {
			t.Errorf("%s has %d rows in mm, %d in inches", id, len(table.Rows), len(q.Rows))
			continue
		}
		if id == "place" {
			continue
		}
		for i, row := range table.Rows {
			for k, cell := range row {
				for unit, r := range map[string]struct {
					other       string
					times, near float64
				}{" mm": {" in", 25.4, 0.5 + 25.4/16}, " N": {" lbf", 4.4482216, 0.5 + 4.45/2}} {
					v, ok := strings.CutSuffix(cell, unit)
					if !ok || strings.Trim(v, "−0123456789./ ") != "" {
						continue
					}
					w, ok := strings.CutSuffix(q.Rows[i][k], r.other)
					if !ok {
						t.Errorf("%s: %q is %q in inches", id, cell, q.Rows[i][k])
						continue
					}
					compared[unit]++
					if a, z := number(t, v), number(t, w); math.Abs(a-z*r.times) > r.near {
						t.Errorf("%s: %q is %q in inches", id, cell, q.Rows[i][k])
					}
				}
			}
		}
	}
	if compared[" mm"] < 40 || compared[" N"] < 10 {
		t.Errorf("compared %v", compared)
	}
}

// The forces in the sheet are in balance as they stand there: level pulls are alike, upright
// ones hold the sleeper, and level and upright make the slope of the hang line.
func TestForcesBalance(t *testing.T) {
	b := made(t)
	say := b.Say.Loads
	forces, ends := b.forcesTable(), b.endsTable()
	of := func(t2 sheet.Table, name, unit string) [2]float64 {
		c := cells(t2, name)
		return [2]float64{number(t, strings.TrimSuffix(c[0], unit)), number(t, strings.TrimSuffix(c[1], unit))}
	}
	level, upright, angle := of(forces, say.Level, " N"), of(forces, say.Upright, " N"), of(ends, b.Say.Ends.Angle, "°")
	if math.Abs(level[0]-level[1]) > 1 {
		t.Errorf("level pulls of %g and %g N", level[0], level[1])
	}
	weight := float64(b.Design.Sleeper.Mass.Weight())
	if up := upright[0] + upright[1]; up < weight-1 || up > 1.03*weight {
		t.Errorf("upright pulls of %g N for a sleeper of %g", up, weight)
	}
	for e := range 2 {
		if got := math.Atan2(upright[e], level[e]) * 180 / math.Pi; math.Abs(got-angle[e]) > 0.15 {
			t.Errorf("the line hangs at %g°, its pulls make %g°", angle[e], got)
		}
		if leg := of(forces, say.Leg, " N")[e]; leg < level[e]/2 {
			t.Errorf("a leg pulls with %g N, both level with %g", leg, level[e])
		}
	}
}
