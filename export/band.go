package export

import (
	"fmt"
	"math"

	"slingloft/export/lettering"
	"slingloft/outline/geom"
	"slingloft/outline/piece"
)

// Block is what the title block of a sheet says beside the sheet's own title and
// scale.
type Block struct {
	Design        string // name of the design
	Sheet, Sheets int    // sheet n of m, from 1
	Material      string // what to lay under the tool
	Marks         string // tell the shapes and their lay from all others, as they are lettered
	// Scale is the drawing scale that is lettered; 0: the frame's. A machine's bed
	// drawn small keeps its frame for true size.
	Scale float64
}

// scale returns the scale that is lettered on a sheet with frame f.
func (b Block) scale(f Frame) float64 {
	if b.Scale == 0 {
		return f.Scale
	}
	return b.Scale
}

// registerLine returns a line of work Register.
func registerLine(name string, pts ...geom.Point) piece.Line {
	return piece.Line{Name: name, Work: piece.Register, Points: pts}
}

// crosses returns the registration crosses: 6 mm on paper, 5 mm in from each
// corner.
func crosses(f Frame) []piece.Line {
	var out []piece.Line
	for _, c := range crossPlaces(f) {
		out = append(out, c.lines(f)...)
	}
	return out
}

// crossPlace is where a registration cross stands.
type crossPlace struct {
	name string
	at   geom.Point
}

// box returns the room that the cross takes.
func (c crossPlace) box(f Frame) geom.Box {
	return geom.Box{Min: c.at, Max: c.at}.Expanded(crossArm * f.unit())
}

// lines returns the cross.
func (c crossPlace) lines(f Frame) []piece.Line {
	arm := float64(crossArm * f.unit())
	return []piece.Line{
		registerLine("cross "+c.name+"/x", c.at.Minus(geom.Pt(arm, 0)), c.at.Plus(geom.Pt(arm, 0))),
		registerLine("cross "+c.name+"/y", c.at.Minus(geom.Pt(0, arm)), c.at.Plus(geom.Pt(0, arm))),
	}
}

// crossArm is the length of a cross's arms, mm on paper.
const crossArm = 3.0

// crossPlaces returns the places of the crosses.
func crossPlaces(f Frame) []crossPlace {
	in := float64(5 * f.unit())
	return []crossPlace{
		{"lower left", geom.Pt(in, in)},
		{"lower right", geom.Pt(f.Width-in, in)},
		{"upper right", geom.Pt(f.Width-in, f.Height-in)},
		{"upper left", geom.Pt(in, f.Height-in)},
	}
}

// barPlace is where a check bar starts and where it runs to.
type barPlace struct {
	start geom.Point
	along geom.Point // unit vector
	text  string
}

// barPlaces returns the places of [Bars], in their order.
func barPlaces(f Frame) []barPlace {
	u := f.unit()
	x, y := geom.Pt(1, 0), geom.Pt(0, 1)
	return []barPlace{
		{geom.Pt(beforeBarX*u, 6*u), x, "100 mm"},
		{geom.Pt(beforeBarX*u, 17*u), x, "4 in"},
		{geom.Pt(7*u, beforeBarY*u), y, "100 mm"},
		{geom.Pt(16*u, beforeBarY*u), y, "4 in"},
	}
}

// Sizes of a check bar's ticks and lettering, mm on paper.
const (
	barTick  = 1.5 // to either side
	barText  = 2.5 // height
	barAside = 3.5 // of the lettering's middle from the bar
)

// checkBars returns the check bars with a tick across each end and their
// lettering beside them. The bar itself is a line of exactly its length.
func checkBars(f Frame) ([]piece.Line, []piece.Label) {
	var lines []piece.Line
	var labels []piece.Label
	places := barPlaces(f)
	for i, bar := range Bars() {
		own, label := bar.at(places[i], f.unit())
		lines, labels = append(lines, own...), append(labels, label)
	}
	return lines, labels
}

// at returns the bar and its lettering at a place; u is a millimetre on paper.
func (b Bar) at(p barPlace, u float64) ([]piece.Line, piece.Label) {
	end := p.start.Plus(p.along.Times(b.Length))
	across := p.along.Left().Times(barTick * u)
	middle := p.start.Towards(end, 0.5).Plus(p.along.Left().Times(barAside * u))
	return []piece.Line{
			registerLine(b.Name, p.start, end),
			registerLine(b.Name+"/start", p.start.Minus(across), p.start.Plus(across)),
			registerLine(b.Name+"/end", end.Minus(across), end.Plus(across)),
		}, piece.Label{
			Text: p.text, At: middle, Height: barText * u, Turn: p.along.Angle(), Anchor: piece.Centre,
		}
}

// titleBlock returns the frame of the title block and its lettering.
func titleBlock(s Sheet) (piece.Line, []piece.Label) {
	f := s.Frame
	u := f.unit()
	left := longestBar() + float64((beforeBarX+afterBarX)*u)
	width := math.Min(f.Width-float64(bandRight*u)-left, maxBlock*u)
	return titleAt(geom.Pt(left, 2*u), width, s)
}

// titleHeight is the height of the title block, mm on paper.
const titleHeight = 26.0

// titleAt returns a title block with its lower left corner at a place: four rows that
// are shortened where it is too narrow for them.
func titleAt(at geom.Point, width float64, s Sheet) (piece.Line, []piece.Label) {
	const rowStep, textHeight, inset = 6.0, 2.5, 2.0 // mm on paper
	u, b, say := s.Frame.unit(), s.Block, sheetWords(s.Words)
	top := at.Y + float64(titleHeight*u)
	edge := geom.Box{Min: at, Max: geom.Pt(at.X+width, top)}
	rows := []string{
		b.Design,
		fmt.Sprintf(say.Number, s.Title, b.Sheet, b.Sheets),
		fmt.Sprintf(say.Scale, ScaleText(b.scale(s.Frame)), b.Material),
		b.Marks,
	}
	var labels []piece.Label
	for i, row := range rows {
		text := lettering.Fit(row, textHeight*u, width-float64(2*inset*u))
		if text == "" {
			continue
		}
		start := geom.Pt(at.X+float64(inset*u), top-float64((float64(float64(i+1)*rowStep)-0.5)*u))
		labels = append(labels, piece.Label{Text: text, At: start, Height: textHeight * u})
	}
	line := registerLine("title block", edge.Ring()...)
	line.Closed = true
	return line, labels
}
