package cord

import (
	"sort"

	"slingloft/outline/design"
)

// Laid is one piece as it is measured off a spool.
type Laid struct {
	Cord Part    `json:"cord"`
	Copy int     `json:"copy"` // 1 to the cord's count
	From float64 `json:"from"` // along the spool, mm
	To   float64 `json:"to"`
}

// Spool is all that is cut from one kind of cord.
type Spool struct {
	Kind  design.Cord `json:"-"`
	Name  string      `json:"name"`
	Laid  []Laid      `json:"laid"`
	Net   float64     `json:"net"`   // sum of the cut lengths, mm
	Waste float64     `json:"waste"` // added for ends and mistakes, mm
	Buy   float64     `json:"buy"`   // both, mm
}

// Spools lays every cord on a spool of its kind, the longest first so that what
// a short spool leaves over is enough for the small ones. Kinds come in the order
// in which they are first met. Waste is a part of the net length.
func Spools(cords []Cord, waste float64) []Spool {
	var out []Spool
	byKind := func(k design.Cord) *Spool {
		for i := range out {
			if out[i].Kind == k {
				return &out[i]
			}
		}
		out = append(out, Spool{Kind: k, Name: k.Name})
		return &out[len(out)-1]
	}
	longest := append([]Cord(nil), cords...)
	for _, c := range cords {
		byKind(c.Kind)
	}
	sort.SliceStable(longest, func(i, j int) bool { return longest[i].Cut > longest[j].Cut })
	for _, c := range longest {
		s := byKind(c.Kind)
		for i := range c.Count {
			s.Laid = append(s.Laid, Laid{c.Part, i + 1, s.Net, s.Net + c.Cut})
			s.Net += c.Cut
		}
	}
	for i := range out {
		out[i].Waste = waste * out[i].Net
		out[i].Buy = out[i].Net + out[i].Waste
	}
	return out
}
