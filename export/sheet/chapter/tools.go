package chapter

import (
	"slices"
	"strconv"

	"slingloft/export/sheet"
	"slingloft/export/sheet/wording"
)

// toolNames names tools.
func (b build) toolNames(all []wording.Tool) []string {
	var out []string
	for _, t := range all {
		out = append(out, b.Say.Shop.Tools[t])
	}
	return out
}

// diameters returns how thick the cords are, each once, in the order of the set.
func (b build) diameters() []float64 {
	var out []float64
	for _, c := range b.Cords.Cords {
		if !slices.Contains(out, c.Kind.Diameter) {
			out = append(out, c.Kind.Diameter)
		}
	}
	return out
}

// spliced writes how thick the cords are that fids go into.
func (b build) spliced() string {
	text := ""
	for i, d := range b.diameters() {
		if text = b.Thick(d); i > 0 {
			text = b.Both(b.Thick(b.diameters()[i-1]), text)
		}
	}
	return text
}

// toolTable lists the tools with the steps in which they lie at hand.
func (b build) toolTable() sheet.Table {
	say := b.Say.Shop
	t := sheet.Table{ID: "materials-tools", Caption: say.ToolCaption, Head: say.ToolColumns[:], Words: []bool{true, true}, Paired: true}
	steps := b.steps()
	for tool := range wording.ToolCount {
		in := ""
		for _, s := range steps {
			if slices.Contains(b.atHand(s.task), tool) {
				if in != "" {
					in += ", "
				}
				in += strconv.Itoa(s.No)
			}
		}
		if in != "" {
			t.Add(say.Tools[tool], in)
		}
	}
	return t
}
