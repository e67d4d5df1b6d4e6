package finished

import (
	"slices"

	"slingloft/outline/hung"
)

// Weight is one who lies or sits in the hammock.
type Weight struct {
	Load   hung.Load
	Centre float64 // height of the centre of mass above the bed, mm
	Aside  float64 // of the centre of mass from the middle of the cloth, mm; positive to the left
}

// aim is what a search walks to.
type aim struct {
	change Change
	weight Weight
}

// between returns the aim between two others: a for part 0, b for part 1.
func between(a, b aim, part float64) aim {
	out := aim{a.change.Times(1-part).Plus(b.change, part), Weight{
		Centre: float64((1-part)*a.weight.Centre) + float64(part*b.weight.Centre),
		Aside:  float64((1-part)*a.weight.Aside) + float64(part*b.weight.Aside),
	}}
	if slices.Equal(a.weight.Load, b.weight.Load) {
		out.weight.Load = b.weight.Load
		return out
	}
	out.weight.Load = blend(a.weight.Load, b.weight.Load, part)
	return out
}

// blend returns a load between two others: a for part 0, b for part 1.
func blend(a, b hung.Load, part float64) hung.Load {
	var out hung.Load
	add := func(l hung.Load, k float64) {
		for _, s := range l {
			if k > 0 {
				out = append(out, hung.LinearLoad{From: s.From, To: s.To, Start: float64(k * s.Start), End: float64(k * s.End)})
			}
		}
	}
	add(a, 1-part)
	add(b, part)
	return out
}
