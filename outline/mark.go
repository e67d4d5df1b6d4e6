package outline

import (
	"crypto/sha256"
	"encoding/hex"
	"fmt"
	"hash"
	"strconv"

	"slingloft/outline/cord"
	"slingloft/outline/geom"
	"slingloft/outline/panel"
)

// Mark returns eight hex digits that tell shapes apart: the SHA-256 of the cloth pieces'
// outlines, openings and lines and of the marks on the cords that lie in the bed, to a
// thousandth of a millimetre. It is lettered on pieces, templates and gauges, so that no
// piece of another bed is taken for one of this, and is the same whatever they are laid
// on, cut with, called or cost.
func Mark(s panel.Sewn, cords []cord.Cord) string {
	sum := sha256.New()
	for _, p := range s.Pieces {
		fmt.Fprintf(sum, "%s %d\n", p.ID, p.Count)
		points(sum, p.Cut)
		points(sum, p.Net)
		for _, h := range p.Holes {
			points(sum, h)
		}
		for _, l := range p.Lines {
			fmt.Fprintf(sum, "%d %t ", l.Work, l.Closed)
			points(sum, l.Points)
		}
	}
	for _, c := range cords {
		switch c.Part {
		case cord.SideCord, cord.HeadLeg, cord.FootLeg, cord.SideLoop:
			fmt.Fprintf(sum, "%d %d %s", c.Part, c.Count, thousandths(c.Cut))
			for _, m := range c.Marks {
				fmt.Fprintf(sum, " %s", thousandths(m.FromStart)+"/"+thousandths(m.Spliced))
			}
			fmt.Fprintln(sum)
		}
	}
	return hex.EncodeToString(sum.Sum(nil)[:4])
}

func points[T ~[]geom.Point](sum hash.Hash, pts T) {
	for _, p := range pts {
		fmt.Fprintf(sum, "%s %s ", thousandths(p.X), thousandths(p.Y))
	}
	fmt.Fprintln(sum)
}

// thousandths writes a length; what is nought has no sign.
func thousandths(v float64) string {
	if text := strconv.FormatFloat(v, 'f', 3, 64); text != "-0.000" {
		return text
	}
	return "0.000"
}
