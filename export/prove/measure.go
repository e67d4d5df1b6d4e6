package prove

import "slingloft/export"

// Measures are what a file measures as a whole, mm.
type Measures struct {
	Width, Height float64      // of the sheet
	Lines         int          // how many it holds; 0 for a picture
	Bars          []export.Bar // those check bars that can be told from other lines
}

// measuresOf measures what was read from a file.
func measuresOf(d export.Drawing, keeps export.Keeping) Measures {
	m := Measures{Width: d.Width, Height: d.Height, Lines: len(d.Lines)}
	if keeps != export.Names {
		return m
	}
	for _, bar := range export.Bars() {
		for _, l := range d.Lines {
			if l.Name == bar.Name {
				m.Bars = append(m.Bars, export.Bar{Name: bar.Name, Length: l.Points.Length()})
				break
			}
		}
	}
	return m
}
