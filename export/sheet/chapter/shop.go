package chapter

import (
	"fmt"
	"slices"
	"strconv"
	"strings"

	"slingloft/export/sheet"
	"slingloft/export/sheet/sketch"
	"slingloft/outline/cord"
	"slingloft/outline/hung"
	"slingloft/outline/piece"
	"slingloft/outline/quantity"
)

// cutList lists what is cut, sawn and laid ready, with figures that a hand can set.
func (b build) cutList() (sheet.Section, error) {
	s := sheet.Section{ID: "cut-list", Title: b.Say.Shop.Cut}
	if len(b.Sewn.Pieces) > 0 {
		s.Add(b.clothTable())
	}
	if len(b.Boards) > 0 {
		s.Add(b.boardTable())
	}
	s.Add(b.barTable())
	if len(b.Cords.Cords) > 0 {
		s.Add(b.cordTable(), sheet.Para(b.stocks()))
	}
	return s, nil
}

// clothTable lists the pieces of cloth.
func (b build) clothTable() sheet.Table {
	say := b.Say.Shop
	t := sheet.Table{ID: "cut-cloth", Caption: fmt.Sprintf(say.Cloth, b.UnitWord()), Head: say.ClothColumns[:],
		Words: []bool{true, false, false, false}}
	for _, q := range b.Sewn.Pieces {
		box := q.Cut.Bounds()
		t.Add(sketch.Titled(q), b.count(q), b.ClothFigure(box.Width()), b.ClothFigure(box.Height()))
	}
	return t
}

// cordTable lists the cords with their marks.
func (b build) cordTable() sheet.Table {
	say := b.Say.Shop
	t := sheet.Table{ID: "cut-cords", Caption: fmt.Sprintf(say.CordCaption, b.UnitWord()), Head: say.CordColumns[:],
		Words: []bool{true, false, false, true}}
	for _, c := range b.Cords.Cords {
		marks := each(c.Marks, func(m cord.Mark) string {
			return fmt.Sprintf(say.Mark, b.RopeFigure(m.FromStart), b.Say.Names.Cords.Spot(m.Spot))
		})
		t.Add(b.CordName(c), fmt.Sprint(c.Count), b.RopeFigure(c.Cut), strings.Join(marks, ", "))
	}
	return t
}

// stocks tells from what each cord is cut.
func (b build) stocks() string {
	var names, out []string
	of := map[string][]string{}
	for _, c := range b.Cords.Cords {
		name := c.Kind.Name
		if len(of[name]) == 0 {
			names = append(names, name)
		}
		of[name] = append(of[name], b.CordName(c))
	}
	for _, name := range names {
		out = append(out, fmt.Sprintf(b.Say.Shop.Stocks, name, strings.Join(of[name], ", ")))
	}
	return strings.Join(out, " ")
}

// barTable lists the bars.
func (b build) barTable() sheet.Table {
	say := b.Say.Shop
	t := sheet.Table{ID: "cut-bars", Caption: fmt.Sprintf(say.Bars, b.Design.Bar.Name), Head: say.BarColumns[:], Words: []bool{true, false}}
	for _, e := range hung.Ends() {
		t.Add(b.Say.Names.Materials.Bar[e], b.Cloth(b.barCut(e)))
	}
	return t
}

// boardTable lists the templates and gauges with the steps in which they are used.
func (b build) boardTable() sheet.Table {
	say := b.Say.Shop
	t := sheet.Table{ID: "cut-boards", Caption: say.Boards, Head: say.BoardColumns[:], Words: []bool{true, false, true, true}}
	for use := range piece.BoardUseCount {
		count := 0
		for _, q := range b.Boards {
			if q.Lie.For == use && use != piece.NoBoard {
				count += q.Count
			}
		}
		if count > 0 {
			t.Add(say.Kinds[use], fmt.Sprint(count), say.Uses[use], b.usedIn(use))
		}
	}
	return t
}

// clothStep is the step to which lengths of cloth are rounded, mm.
func clothStep(s quantity.Style) float64 {
	if s.Inches {
		return quantity.Inch / 32
	}
	return 0.5
}

// usedIn lists the numbers of the steps in which templates of a use are at hand.
func (b build) usedIn(use piece.BoardUse) string {
	var out []string
	for _, s := range b.steps() {
		if slices.Contains(s.needs, use) {
			out = append(out, strconv.Itoa(s.No))
		}
	}
	return strings.Join(out, ", ")
}

// ticks lists the steps to tick off, and the checks that catch a mistake.
func (b build) ticks() (sheet.Section, error) {
	say := b.Say.Shop
	s := sheet.Section{ID: "ticks", Title: say.Ticks}
	checks := sheet.Table{ID: "checks", Caption: say.Checks, Head: say.CheckColumns[:], Words: []bool{false, true, false}, Paired: true}
	var all sheet.Ticks
	for _, q := range b.steps() {
		all = append(all, sheet.Tick{ID: "tick-" + q.kind.String(), No: q.No, Text: q.Title, Note: q.Done})
		for _, f := range q.Facts {
			if f.Check {
				checks.Add(strconv.Itoa(q.No), f.Name, f.Value)
			}
		}
	}
	s.Add(sheet.Para(say.How), all, checks)
	return s, nil
}
