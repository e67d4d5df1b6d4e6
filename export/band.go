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
	Digest        string // tells designs and their versions apart
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
	in, arm := float64(5*f.unit()), float64(3*f.unit())
	corners := []struct {
		name string
		at   geom.Point
	}{
		{"lower left", geom.Pt(in, in)},
		{"lower right", geom.Pt(f.Width-in, in)},
		{"upper right", geom.Pt(f.Width-in, f.Height-in)},
		{"upper left", geom.Pt(in, f.Height-in)},
	}
	var out []piece.Line
	for _, c := range corners {
		out = append(out,
			registerLine("cross "+c.name+"/x", c.at.Minus(geom.Pt(arm, 0)), c.at.Plus(geom.Pt(arm, 0))),
			registerLine("cross "+c.name+"/y", c.at.Minus(geom.Pt(0, arm)), c.at.Plus(geom.Pt(0, arm))))
	}
	return out
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

// checkBars returns the check bars with a tick across each end and their
// lettering beside them. The bar itself is a line of exactly its length.
func checkBars(f Frame) ([]piece.Line, []piece.Label) {
	const tick, textHeight, textAside = 1.5, 2.5, 3.5 // mm on paper
	u := f.unit()
	var lines []piece.Line
	var labels []piece.Label
	places := barPlaces(f)
	for i, bar := range Bars() {
		p := places[i]
		end := p.start.Plus(p.along.Times(bar.Length))
		across := p.along.Left().Times(tick * u)
		lines = append(lines, registerLine(bar.Name, p.start, end),
			registerLine(bar.Name+"/start", p.start.Minus(across), p.start.Plus(across)),
			registerLine(bar.Name+"/end", end.Minus(across), end.Plus(across)))
		middle := p.start.Towards(end, 0.5).Plus(p.along.Left().Times(textAside * u))
		labels = append(labels, piece.Label{
			Text: p.text, At: middle, Height: textHeight * u, Turn: p.along.Angle(), Anchor: piece.Centre,
		})
	}
	return lines, labels
}

// titleBlock returns the frame of the title block and its lettering: four rows
// that are shortened where the sheet is too narrow for them.
func titleBlock(f Frame, title string, b Block) (piece.Line, []piece.Label) {
	const height, rowStep, textHeight, inset = 26.0, 6.0, 2.5, 2.0 // mm on paper
	u := f.unit()
	left := longestBar() + float64((beforeBarX+afterBarX)*u)
	width := math.Min(f.Width-float64(bandRight*u)-left, maxBlock*u)
	low := 2 * u
	edge := geom.Box{Min: geom.Pt(left, low), Max: geom.Pt(left+width, low+float64(height*u))}
	rows := []string{
		b.Design,
		fmt.Sprintf("%s — sheet %d of %d", title, b.Sheet, b.Sheets),
		fmt.Sprintf("scale %s   %s", ScaleText(b.scale(f)), b.Material),
		b.Digest,
	}
	var labels []piece.Label
	for i, row := range rows {
		text := lettering.Fit(row, textHeight*u, width-float64(2*inset*u))
		if text == "" {
			continue
		}
		at := geom.Pt(left+float64(inset*u), low+float64(height*u)-float64((float64(float64(i+1)*rowStep)-0.5)*u))
		labels = append(labels, piece.Label{Text: text, At: at, Height: textHeight * u})
	}
	line := registerLine("title block", edge.Ring()...)
	line.Closed = true
	return line, labels
}
