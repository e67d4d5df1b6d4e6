package main

import (
	"bytes"
	"fmt"

	"slingloft/nest"
)

// fills are the seven coloured entries of the Okabe–Ito palette, told apart by
// readers with any colour vision.
var fills = [...]string{"#E69F00", "#56B4E9", "#009E73", "#F0E442", "#0072B2", "#D55E00", "#CC79A7"}

// drawing returns lay as SVG, y upwards, the roll lying along x.
func drawing(in instance, lay nest.Lay) []byte {
	var b bytes.Buffer
	thin := in.Width / 800
	fmt.Fprintf(&b, `<svg xmlns="http://www.w3.org/2000/svg" width="%.0f" height="800" viewBox="%.4f %.4f %.4f %.4f">`+"\n",
		800*lay.Length/in.Width, -thin, -thin, lay.Length+2*thin, in.Width+2*thin)
	fmt.Fprintf(&b, "<title>%s: length %.4f, density %.2f %%</title>\n", in.Name, lay.Length, 100*lay.Density)
	fmt.Fprintf(&b, `<g transform="matrix(1 0 0 -1 0 %.4f)" stroke="#000" stroke-width="%.5f">`+"\n", in.Width, thin)
	fmt.Fprintf(&b, `<rect width="%.4f" height="%.4f" fill="none"/>`+"\n", lay.Length, in.Width)
	items := in.items()
	for _, p := range lay.Placements {
		fmt.Fprintf(&b, `<polygon fill="%s" points="`, fills[p.Item%len(fills)])
		for _, v := range items[p.Item].Outline.Moved(p.Motion) {
			fmt.Fprintf(&b, "%.5f,%.5f ", v.X, v.Y)
		}
		b.WriteString("\"/>\n")
	}
	b.WriteString("</g>\n</svg>\n")
	return b.Bytes()
}
