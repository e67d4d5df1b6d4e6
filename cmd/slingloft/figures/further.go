package figures

import (
	"slingloft/cmd/slingloft/work"
	"slingloft/outline/design"
)

// Sacks tells how large the stow sacks are, filled.
type Sacks struct {
	Volume float64   `json:"volume"` // that the bed's holds, l
	Base   string    `json:"base"`   // "round" or "flat"
	Thick  float64   `json:"thick"`  // diameter, or side of the square
	Long   float64   `json:"long"`
	Wall   float64   `json:"wall"` // finished height, up to the mouth's edge
	Bars   *BarsSack `json:"bars,omitempty"`
}

// BarsSack is the long sack of the bars, as it lies.
type BarsSack struct {
	Parts int     `json:"parts"` // that lie in it side by side
	Long  float64 `json:"long"`
	Wide  float64 `json:"wide"`
}

// sacksOf gathers the sacks of a plan, nil where there are none.
func sacksOf(p *work.Plan) *Sacks {
	s := p.Further.Sack
	if len(s.Pieces) == 0 {
		return nil
	}
	out := &Sacks{Volume: float64(s.Size.Volume), Base: p.Design.Sack.Base.String(), Thick: s.Size.Thick, Long: s.Size.Long, Wall: s.Size.Wall}
	if s.Bundle.Parts > 0 {
		out.Bars = &BarsSack{s.Bundle.Parts, s.Flat[0], s.Flat[1]}
	}
	return out
}

// FurtherWords says what belongs to what is sewn beside the bed.
type FurtherWords struct {
	Sacks    string // title
	Round    string // volume, diameter, length
	Flat     string // volume, side, length
	BarsSack string // length and width, as it lies
}

func englishFurther() FurtherWords {
	return FurtherWords{
		Sacks:    "Packed",
		Round:    "the bed in its sack: %s, %s thick and %s long",
		Flat:     "the bed in its sack: %s, %s square and %s long",
		BarsSack: "the bars' sack as it lies: %s long and %s wide",
	}
}

// sacks tells how large what is packed is.
func (b *report) sacks(s *Sacks) {
	if s == nil {
		return
	}
	say := b.say.Further
	b.head(say.Sacks)
	text := say.Round
	if s.Base == design.FlatBase.String() {
		text = say.Flat
	}
	b.line(text, b.style.Volume(s.Volume), b.mm(s.Thick), b.mm(s.Long))
	if s.Bars != nil {
		b.line(say.BarsSack, b.mm(s.Bars.Long), b.mm(s.Bars.Wide))
	}
}
