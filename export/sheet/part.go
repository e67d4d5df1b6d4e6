package sheet

import "slices"

// Part is one of the parts that a sheet comes in.
type Part int

// The parts, in their order.
const (
	Shop      Part = iota // what lies on the table while one works
	Work                  // the steps in full, with pictures
	Hanging               // hanging it, and the first night
	Appendix              // figures, loads, offsets, sources
	PartCount             // how many there are
)

// String returns the part's identifier.
func (p Part) String() string {
	return [PartCount]string{"shop", "steps", "hanging", "appendix"}[p]
}

// Parts returns the parts in their order.
func Parts() []Part { return []Part{Shop, Work, Hanging, Appendix} }

// Only returns the sheet with no other parts than those given; with none, the whole.
func (s Sheet) Only(parts ...Part) Sheet {
	if len(parts) == 0 {
		return s
	}
	s.Sections = slices.DeleteFunc(slices.Clone(s.Sections), func(sec Section) bool { return !slices.Contains(parts, sec.Part) })
	return s
}

// Opens reports whether section number i is the first of its part.
func (s Sheet) Opens(i int) bool { return i == 0 || s.Sections[i-1].Part != s.Sections[i].Part }
