package figures

import (
	"slingloft/cmd/slingloft/work"
	"slingloft/outline/quantity"
)

// Tarp tells how large the tarp is and what it keeps off.
type Tarp struct {
	Shape  string  `json:"shape"` // "rectangle" or "hexagon"
	Curve  string  `json:"curve"` // of hollow edges: "catenary", "parabola" or "arc"
	Join   string  `json:"join"`  // "ridge", "across" or "none"
	Panels int     `json:"panels"`
	Ridge  float64 `json:"ridge"`
	Width  float64 `json:"width"` // as it lies flat, corner to corner over the ridge
	Side   float64 `json:"side"`  // between the corners of a side edge
	Rise   float64 `json:"rise"`  // of the ridge above the higher apex
	Area   float64 `json:"area"`  // finished, mm²
	// What the bed needs; ridge and width are 0 where no tarp of this shape keeps the rain
	// off.
	NeedRidge float64 `json:"need_ridge"`
	NeedWidth float64 `json:"need_width"`
	NeedRise  float64 `json:"need_rise"`
	Rain      float64 `json:"rain"`   // asked, from the plumb line, rad
	Keeps     float64 `json:"keeps"`  // kept off, from any direction, rad
	Clear     float64 `json:"clear"`  // of bars, cords and hang lines
	Edge      float64 `json:"edge"`   // corners of the side edges above ground
	Dip       float64 `json:"dip"`    // of a hollow ridge as it hangs
	Packed    float64 `json:"packed"` // l, at the sacks' density; 0: its mass is not known
}

// tarpOf gathers the tarp of a plan, nil where there is none.
func tarpOf(p *work.Plan) *Tarp {
	if !p.Design.Tarp.On {
		return nil
	}
	t, s, sewn := p.Design.Tarp, p.Tarp, p.Further.Tarp
	return &Tarp{Shape: t.Shape.String(), Curve: t.Curve.String(), Join: t.Join.String(), Panels: sewn.Panels,
		Ridge: s.Ridge, Width: s.Width, Side: s.Side, Rise: s.Rise, Area: sewn.Area(),
		NeedRidge: s.NeedRidge, NeedWidth: s.NeedWidth, NeedRise: s.NeedRise,
		Rain: float64(t.Rain), Keeps: s.Keeps, Clear: s.Clear, Edge: s.EdgeUp + p.Design.Hang.Bed, Dip: s.Dip,
		Packed: float64(sewn.Packed)}
}

// TarpWords says what belongs to the tarp.
type TarpWords struct {
	Title   string
	Size    string // ridge, width, side edges
	Panels  string // how many, area
	Rise    string // of the ridge, of the side edges' corners
	Dip     string // by how much
	Rain    string // kept off, asked
	Need    string // ridge, width
	NoNeed  string
	Clear   string // how far
	Packed  string // volume
	Unknown string // what is not known
}

func englishTarp() TarpWords {
	return TarpWords{
		Title:   "Tarp",
		Size:    "ridge %s, width %s as it lies flat, side edges %s from corner to corner",
		Panels:  "in %d panels, finished area %s",
		Rise:    "its ridge %s above the higher apex, the corners of its side edges %s above the ground",
		Dip:     "its hollow ridge hangs %s lower in the middle",
		Rain:    "keeps off rain driven up to %s from the plumb line, from any direction (%s asked)",
		Need:    "for what is asked the bed needs a ridge of %s and a width of %s",
		NoNeed:  "no tarp of this shape keeps off the rain that is asked",
		Clear:   "%s clear of bars, cords and hang lines",
		Packed:  "packed about %s, by sack.density",
		Unknown: "pull at its loops: not known, since wind decides it; no strength of cloth, tape or cord is reckoned for the tarp",
	}
}

// tarp tells of the tarp.
func (b *report) tarp(t *Tarp) {
	if t == nil {
		return
	}
	say := b.say.Tarp
	b.head(say.Title)
	b.line(say.Size, b.mm(t.Ridge), b.mm(t.Width), b.mm(t.Side))
	b.line(say.Panels, t.Panels, quantity.Decimal(b.style.Area(t.Area), 2)+" "+b.style.AreaUnit())
	b.line(say.Rise, b.mm(t.Rise), b.mm(t.Edge))
	if t.Dip > 0 {
		b.line(say.Dip, b.mm(t.Dip))
	}
	b.line(say.Rain, b.style.Angle(t.Keeps), b.style.Angle(t.Rain))
	if t.NeedRidge > 0 {
		b.line(say.Need, b.mm(t.NeedRidge), b.mm(t.NeedWidth))
	} else {
		b.line(say.NoNeed)
	}
	b.line(say.Clear, b.mm(t.Clear))
	if t.Packed > 0 {
		b.line(say.Packed, b.style.Volume(t.Packed))
	}
	b.line(say.Unknown)
}
