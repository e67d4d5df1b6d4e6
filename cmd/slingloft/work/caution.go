package work

import (
	"slingloft/outline/margin"
	"slingloft/outline/quantity"
	"slingloft/outline/words"
)

// Cautions returns what holds of every load figure of this bed, by hazard.
func (p *Plan) Cautions() [words.HazardCount]words.Caution {
	f := p.CautionFigures()
	var out [words.HazardCount]words.Caution
	for h := range out {
		out[h] = p.Words.Names.CautionFor(words.Hazard(h), f)
	}
	return out
}

// CautionFigures returns what the cautions of this bed are filled in with.
func (p *Plan) CautionFigures() words.CautionFigures {
	st := p.Style()
	st.Decimals = 0
	people := func(kg quantity.Kilograms, nearest bool) string { return st.People(float64(kg), nearest) }
	mass := p.Design.Sleeper.Mass
	// Of a mass that is not to be passed no more is said than is so; the proof load is no less.
	f := words.CautionFigures{
		Mass: people(mass, false), Proof: people(margin.ProofMass*mass, true),
		LowAt: 150, Low: "150 mm", Seat: "350 mm", Bag: "10 to 15 kg", Strap: "25 mm", High: "450 mm",
	}
	if st.Inches {
		f.LowAt = 6 * quantity.Inch
		f.Low, f.Seat, f.Bag, f.Strap, f.High = "6 in", "14 in", "22 to 33 lb", "1 in", "18 in"
	}
	return f
}
