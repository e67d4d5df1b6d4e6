package tile

import (
	"fmt"
	"strings"
)

// Paper is a size of paper that a printer takes, in mm, upright.
type Paper struct {
	Name          string
	Width, Height float64
}

// Papers returns the sizes that can be asked for: A4 and A3 of ISO 216, letter
// (8.5 × 11 in) and tabloid (11 × 17 in) of ANSI Y14.1, the latter from memory.
func Papers() []Paper {
	const inch = 25.4
	return []Paper{
		{"A4", 210, 297},
		{"A3", 297, 420},
		{"Letter", 8.5 * inch, 11 * inch},
		{"Tabloid", 11 * inch, 17 * inch},
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
	return Paper{}, fmt.Errorf("paper %.30q: want one of %s", name, strings.Join(names, ", "))
}

// turned returns the paper lying on its side.
func (p Paper) turned() Paper { return Paper{p.Name, p.Height, p.Width} }
