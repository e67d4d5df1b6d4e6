package desk

import (
	"math"

	"slingloft/cmd/slingloft/work"
)

// Tight is how much room a part of the body has between the cords.
type Tight struct {
	From  float64 `json:"from"` // stations in space, mm
	To    float64 `json:"to"`
	Spare float64 `json:"spare"` // mm; below 0 the cords are nearer than the body is broad
	Text  string  `json:"text"`
}

// roomOf returns the room of a plan's sleeper, lying as the design says; nil where the bed
// is not found at rest.
func roomOf(p *work.Plan, say Words) []Tight {
	felt, err := p.Room()
	if err != nil {
		return nil
	}
	write := rounded(&p.Design)
	var out []Tight
	for _, f := range felt.Fits {
		if f.Lies != p.Design.Sleeper.Lies {
			continue
		}
		text := write(math.Abs(f.Spare))
		if f.Spare < 0 {
			text = "−" + text
		}
		out = append(out, Tight{f.X - f.Long/2, f.X + f.Long/2, math.Round(f.Spare*10) / 10, say.Names.Room.Parts[f.Part] + " " + text})
	}
	return out
}
