package chapter

import (
	"fmt"

	"slingloft/export/sheet"
	"slingloft/export/sheet/scene"
	"slingloft/export/sheet/sketch"
)

// names shows what the parts of the hammock are called, and its main measures.
func (b build) names() (sheet.Section, error) {
	say := b.Say.Parts
	s := sheet.Section{ID: "names", Title: say.Title}
	s.Add(sheet.Figures{{Picture: scene.Parts(b.Data), Caption: say.Hung.Caption}})
	if bodies := b.bodies(); len(bodies) > 0 {
		caption := say.Flat.Caption
		if b.capped() {
			caption += " " + fmt.Sprintf(say.Eased, sketch.EaseTimes(b.Data, bodies))
		}
		s.Add(sheet.Figures{{Picture: sketch.Parts(b.Data, bodies), Caption: caption}})
	}
	s.Add(b.summary(), sheet.Para(fmt.Sprintf(b.Say.Shop.Rounded, b.Cloth(clothStep(b.Style)), b.Rope(1))))
	return s, nil
}

// glossary says what the words mean.
func (b build) glossary() (sheet.Section, error) {
	var terms sheet.Terms
	for _, t := range b.Say.Glossary.Terms {
		terms = append(terms, sheet.Term{Word: t.Word, Meaning: t.Meaning})
	}
	return sheet.Section{ID: "glossary", Title: b.Say.Glossary.Title, Blocks: []sheet.Block{terms}}, nil
}
