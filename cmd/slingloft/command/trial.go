package command

import (
	"cmp"
	"fmt"
	"math"
	"strconv"

	"slingloft/cmd/slingloft/work"
	"slingloft/export"
	"slingloft/export/calibrate"
	"slingloft/outline/design"
	"slingloft/outline/piece"
	"slingloft/outline/quantity"
)

// trial is what a machine is tried with.
type trial struct {
	calibrate.Trial
	material string // name of what it is tried on
	bars     calibrate.Bars
	combs    []calibrate.Comb // rows of the kerf comb
	noComb   []notice         // why there is none
}

// feedRoom is what is plotted along a roll, on which nothing else bounds it, mm and in
// inches: with the room beside them bars of two metres, so that a thousandth of error in
// the feed shows as 2 mm (own choice).
func feedRoom(inches bool) float64 {
	if inches {
		return 81 * quantity.Inch
	}
	return 2020
}

// trialOf draws what the design's machine is tried with: on a sheet where it cuts
// sheets, else on the cloth. thickness is that of the board as it was measured, 0: it
// was not.
func trialOf(p *work.Plan, thickness float64) (trial, []export.Drawing, error) {
	d := p.Design
	t := trial{Trial: calibrate.Trial{Stock: piece.Board}, material: d.Sheet.Name}
	if !d.Machine.For.Takes(piece.Board) {
		t.Stock, t.material = piece.Cloth, d.Cloth.Name
	}
	t.Room, t.Inches, t.Words, t.Cut = roomOf(d), d.Output.Inches, p.Words.Sheets, onlyCuts(d.Machine, t.Stock, t.material)
	t.noComb = noComb(d, t.Stock, thickness)
	comb := calibrate.CombFor(thickness, d.Machine.Cutter, t.Inches)
	if len(t.noComb) == 0 && comb.Slots == 0 {
		t.noComb = []notice{{what: CombTooThin}}
	}
	t.Block = export.Block{Design: d.Name, Sheet: 1, Sheets: 2, Material: t.material, Marks: fmt.Sprintf(t.Words.Design, p.Digest)}
	if len(t.noComb) > 0 {
		t.Block.Sheets = 1
	}
	sheet, bars, err := calibrate.Sheet(t.Trial)
	if err != nil || len(t.noComb) > 0 {
		t.bars = bars
		return t, []export.Drawing{sheet}, err
	}
	t.Block.Sheet = 2
	combs, rows, err := calibrate.CombSheet(comb, t.Trial)
	t.bars, t.combs = bars, rows
	return t, []export.Drawing{sheet, combs}, err
}

// roomOf returns the room along x and y that a machine is tried in: its bed, as far as
// the stock reaches. A roll has as much as one likes along its feed.
func roomOf(d design.Design) [2]float64 {
	m, feed := d.Machine, feedRoom(d.Output.Inches)
	if m.For.Takes(piece.Board) {
		room := [2]float64{d.Sheet.Width, d.Sheet.Height}
		if m.Tool != design.Pen && m.Tool != design.Knife {
			return room
		}
		switch {
		case m.Width == 0 && m.Height > 0:
			return [2]float64{feed, m.Height}
		case m.Width > 0 && m.Height == 0:
			return [2]float64{m.Width, feed}
		}
		return room
	}
	height := d.Cloth.Width
	if m.Height > 0 {
		height = math.Min(height, m.Height)
	}
	return [2]float64{cmp.Or(m.Width, feed), height}
}

// onlyCuts reports whether a machine does nothing but cut a material: what else a tool
// may do there no job asks for.
func onlyCuts(m design.Machine, stock piece.Stock, material string) bool {
	marks := piece.Line{Work: piece.Mark}
	if export.ByNameOnly(cmp.Or(m.Tool, design.Laser), stock, marks) {
		return !m.Asks(piece.Mark, material)
	}
	return m.JobFor(piece.Mark, material).Feed == 0 && m.JobFor(piece.CutOut, material).Feed > 0
}

// noComb says why a machine has no kerf comb, nothing where it has one.
func noComb(d design.Design, stock piece.Stock, thickness float64) []notice {
	tool := d.Machine.Tool
	switch {
	case stock != piece.Board:
		return []notice{{what: CombOfBoard}}
	case tool == design.Pen || tool == design.Knife:
		return []notice{{CombOfTool, []any{tool.String()}}}
	case thickness == 0 && d.Output.Inches:
		return []notice{{CombNeedsThickness, []any{"0.116 in"}}}
	case thickness == 0:
		return []notice{{CombNeedsThickness, []any{"2.94 mm"}}}
	}
	return nil
}

// hints says what to do with the sheets.
func (t trial) hints(d design.Design) []notice {
	bar := func(mm float64) string {
		if t.Inches {
			return strconv.FormatFloat(mm/quantity.Inch, 'g', 6, 64) + " in"
		}
		return strconv.FormatFloat(mm, 'g', 6, 64) + " mm"
	}
	out := []notice{{what: MeasureBars}}
	if t.Cut {
		out[0] = notice{MeasureCut, []any{t.material}}
	}
	if t.Stock == piece.Cloth {
		out = append(out, notice{what: MeasureFlat})
	}
	out = append(out, notice{CalibrationLine, []any{"x", bar(t.bars.X)}}, notice{CalibrationLine, []any{"y", bar(t.bars.Y)}})
	if len(t.noComb) > 0 {
		return append(out, notice{NoComb, []any{t.noComb}})
	}
	out = append(out, notice{CutComb, []any{t.combs[0].Kerf(2) + " " + d.Output.Style(2).LengthUnit()}})
	if d.Machine.Tabs > 0 {
		out = append(out, notice{what: CombLoose})
	}
	return out
}
