package chapter

import (
	"fmt"
	"slices"
	"strings"

	"slingloft/export/sheet"
	"slingloft/export/style"
	"slingloft/outline/cord"
	"slingloft/outline/design"
	"slingloft/outline/piece"
	"slingloft/outline/stock"
)

// boughtOff is how far what is bought may be off its figure before it shows in the bed, mm:
// own choice.
const boughtOff = 0.5

// boughtFacts tells what the design takes for what was bought, and under which key.
func (b build) boughtFacts(s *sheet.Step) {
	say, d := b.Say.Order, b.Design
	thick := func(mm float64) string {
		if mm == 0 {
			return b.Say.NotGiven
		}
		return b.Thick(mm)
	}
	add := func(name string, mm float64, k design.Key) { s.Add(name, b.keyed(thick(mm), k)) }
	add(fmt.Sprintf(say.CordThick, b.Say.Names.Cords.Parts[b.sideCord()]), d.Side.Diameter, design.KeyCordSideDiameter)
	if b.corded() {
		add(fmt.Sprintf(say.CordThick, b.Say.Names.Cords.Parts[cord.HeadLeg]), d.Leg.Diameter, design.KeyCordLegDiameter)
	}
	if len(b.Cords.Lines) > 0 {
		add(fmt.Sprintf(say.CordThick, b.Say.Names.Cords.Parts[b.Cords.Lines[0].Part]), d.Hang.Line.Diameter, design.KeyHangLineDiameter)
	}
	add(say.HookThick, b.Cords.Splicing.Hook, design.KeyHangHookDiameter)
	add(say.TubeThick, d.Bar.Outer, design.KeyBarOuterDiameter)
	s.Add(say.TipPin, b.keyed(b.tipPin(), design.KeyBarTipDiameter))
	s.Add(say.TipToCord, b.keyed(b.Thick(d.Bar.TipReach), design.KeyBarTipReach))
	s.Add(say.ClothWide, b.keyed(fmt.Sprintf(b.Say.FirstNight.AtLeast, b.Round(d.Cloth.Width)), design.KeyClothWidth))
	for _, c := range d.Rolls()[1:] {
		s.Add(fmt.Sprintf(say.RollWide, c.Name), fmt.Sprintf(b.Say.FirstNight.AtLeast, b.Round(c.Width)))
	}
	s.Add(say.FarOffBy, b.Thick(boughtOff))
	s.Add(say.PrintAnew, b.anew())
}

// sideCord is what the cord in a channel is called.
func (b build) sideCord() cord.Part {
	if b.looped() {
		return cord.SideLoop
	}
	return cord.SideCord
}

// keyed tells a value with the key that has it in the design.
func (b build) keyed(value string, k design.Key) string {
	return fmt.Sprintf(b.Say.Order.KeyedOf, value, k.Name(), k.Table())
}

// file is the design's file as a command names it, with a space behind it.
func (b build) file() string {
	if b.File == "" {
		return ""
	}
	if strings.ContainsAny(b.File, " '\"$&()") {
		return fmt.Sprintf("%q ", b.File)
	}
	return b.File + " "
}

// anew is the command that prints the sheet again.
func (b build) anew() string { return fmt.Sprintf(b.byUnits(b.Say.Order.SheetAnew), b.file()) }

// byUnits returns the text for those who think in mm, or in inches.
func (b build) byUnits(text [2]string) string {
	if b.Style.Inches {
		return text[1]
	}
	return text[0]
}

// boardFacts tells by what the size of a sheet is checked, what is divided, and what a
// laser does with each layer.
func (b build) boardFacts(s *sheet.Step) {
	say := b.Say.Order
	if len(b.Templates) > len(b.Boards) {
		insert(s, 2, say.Divided)
	}
	s.Add(say.CheckBars, say.BarsRead)
	s.Add(say.ForPages, fmt.Sprintf(b.byUnits(say.Paged), b.file()))
	s.Add(say.CutAnew, fmt.Sprintf(b.byUnits(say.Measured), b.file()))
	for _, w := range piece.Works() {
		if b.onBoards(w) {
			s.Add(fmt.Sprintf(say.Layer, w, b.colour(w)), say.Jobs[w])
		}
	}
}

// onBoards reports whether template sheets have a kind of work: each has a frame and
// lettering.
func (b build) onBoards(w piece.Work) bool {
	if w == piece.Register || w == piece.Lettering || w == piece.CutOut {
		return true
	}
	return slices.ContainsFunc(b.Templates, func(q piece.Piece) bool {
		return slices.ContainsFunc(q.Lines, func(l piece.Line) bool { return l.Work == w })
	})
}

// colour names the colour of a kind of work: a machine's own by its number.
func (b build) colour(w piece.Work) string {
	for _, own := range b.Design.Machine.Strokes {
		if c, ok := style.ParseColour(own.Colour); ok && own.Work == w && c != style.Default().Of(w).Colour {
			return c.String()
		}
	}
	return b.Say.Order.Colours[w]
}

// layFacts tells what squares the end of the roll, and where the cloth has flaws.
func (b build) layFacts(s *sheet.Step) {
	say := b.Say.Order
	s.Add(say.ToSquare, b.Round(stock.Squaring))
	if len(b.Design.Cloth.Flaws) > 0 {
		insert(s, 1, say.MindFlaws)
	}
	for i, f := range b.Design.Cloth.Flaws {
		box := f.Ring().Bounds()
		s.Add(fmt.Sprintf(say.FlawAlong, i+1), fmt.Sprintf(say.FromTo, b.Cloth(box.Min.X), b.Cloth(box.Max.X)))
		s.Add(fmt.Sprintf(say.FlawUp, i+1), fmt.Sprintf(say.FromTo, b.Cloth(box.Min.Y), b.Cloth(box.Max.Y)))
	}
}
