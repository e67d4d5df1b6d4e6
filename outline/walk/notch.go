package walk

import (
	"slingloft/outline/flat"
	"slingloft/outline/geom"
	"slingloft/outline/piece"
)

// Style says how notches are drawn along one edge of a piece.
type Style struct {
	Allowance float64 // from the seam out to the cut line, mm
	Inside    float64 // +1 where the piece lies left of the edge, −1 right
	Letter    float64 // height of the number, mm; 0: none
}

// notchStroke is the longest stroke of a notch, mm: seen at arm's length, and inside
// any usual allowance.
const notchStroke = 6.0

// Notches returns the strokes and numbers of notches along an edge: strokes
// from the cut line inwards, numbers just inside the seam.
func Notches(e flat.Edge, ns []piece.Notch, st Style) (lines []piece.Line, labels []piece.Label) {
	arc := geom.NewArc(e.Flat)
	for _, n := range ns {
		at := e.FlatOf(n.At)
		shifts := []float64{0}
		if n.Double {
			// Along the edge, so that both stay on it where it turns at a bar.
			shifts = []float64{-piece.NotchPitch / 2, piece.NotchPitch / 2}
		}
		for _, s := range shifts {
			p, dir := arc.At(at + s)
			in := dir.Left().Times(st.Inside)
			out := p.Minus(in.Times(st.Allowance))
			tip := out.Plus(in.Times(min(notchStroke, max(st.Allowance, notchStroke/2))))
			lines = append(lines, piece.Line{Name: "notch " + n.Name, Role: piece.NotchStroke, Of: n.Name,
				Work: piece.Mark, Points: geom.Polyline{out, tip}})
		}
		p, dir := arc.At(at)
		in := dir.Left().Times(st.Inside)
		if st.Letter > 0 {
			at := p.Plus(in.Times(2.2 * st.Letter))
			labels = append(labels, piece.Label{Text: n.Name, At: at, Height: st.Letter, Turn: piece.Readable(dir.Angle()), Anchor: piece.Centre})
		}
	}
	return lines, labels
}
