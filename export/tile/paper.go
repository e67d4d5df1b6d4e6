package tile

import (
	"slingloft/export"

	"strings"
)

// Paper is a size of paper that a printer takes, in mm, upright.
type Paper struct {
	Name          string
	Width, Height float64
	Overlap       float64 // of neighbouring pages; 0: [Overlap]
}

// overlap returns the width that neighbouring pages have in common.
func (p Paper) overlap() float64 {
	if p.Overlap == 0 {
		return Overlap
	}
	return p.Overlap
}

// Papers returns the sizes that can be asked for: A4 and A3 of ISO 216, letter
// (8.5 × 11 in) and tabloid (11 × 17 in) of ANSI Y14.1, the latter from memory.
func Papers() []Paper {
	const inch = 25.4
	return []Paper{
		{Name: "A4", Width: 210, Height: 297},
		{Name: "A3", Width: 297, Height: 420},
		{Name: "Letter", Width: 8.5 * inch, Height: 11 * inch},
		{Name: "Tabloid", Width: 11 * inch, Height: 17 * inch},
	}
}

// PaperNamed returns the paper of the given name, in any case.
func PaperNamed(name string) (Paper, error) {
	var names []string
	for _, p := range Papers() {
		if strings.EqualFold(p.Name, name) {
			return p, nil
		}
		names = append(names, p.Name)
	}
	return Paper{}, export.Refuse(export.PaperUnknown, name, strings.Join(names, ", "))
}

// turned returns the paper lying on its side.
func (p Paper) turned() Paper {
	p.Width, p.Height = p.Height, p.Width
	return p
}
