package work

import (
	"math"

	"slingloft/outline/finished"
	"slingloft/outline/insectnet"
	"slingloft/outline/quantity"
	"slingloft/outline/stock"
)

// mosquito returns the widest mesh that is taken to keep mosquitoes out, from hole to hole, mm:
// 156 holes per square inch, WHO consultation on insecticide-treated nets, 2005.
func mosquito() float64 { return quantity.Inch / math.Sqrt(156) }

// coverStock returns what the cover takes beside its net.
func (p *Plan) coverStock() stock.Cover {
	c := p.Further.Cover
	if len(c.Pieces) == 0 {
		return stock.Cover{}
	}
	l := c.Space.Line
	out := stock.Cover{Zip: c.Zip.Long, Tape: float64(c.Loops) * p.Design.Cover.Loop, Line: l.Cut, Carries: p.Design.Cover.Carries(), Elastic: l.ElasticCut, Hem: c.Elastic}
	for _, t := range c.Ties {
		out.Ties += t
	}
	return out
}

// Apexes is by how much the apexes of the made bed move against where the sleeper lies as
// designed, mm; 0: not known.
type Apexes struct {
	Nearer float64 // when the sleeper sits up at mid-bay
	Apart  float64 // when the bed is empty but for a hundredth of the sleeper
}

// emptied is the part of a sleeper's weight under which a bed counts as empty: what it
// weighs itself is in its shape.
const emptied = 0.01

// Apexes returns by how much the apexes move.
func (p *Plan) Apexes() Apexes { return p.apexes() }

func apexesOf(p *Plan) Apexes {
	made := p.Made()
	far := func(w finished.Weight) (float64, bool) {
		pose, err := made.Hang(finished.Change{}, w)
		if err != nil {
			return 0, false
		}
		return pose.Apex[1].Minus(pose.Apex[0]).Len(), true
	}
	lying := p.lying()
	at, ok := far(lying)
	if !ok {
		return Apexes{}
	}
	var out Apexes
	who := p.Person()
	if d, ok := far(finished.Weight{Load: who.Seated(0), Centre: who.Back}); ok {
		out.Nearer = at - d
	}
	light := lying
	light.Load = nil
	for _, l := range lying.Load {
		l.Start, l.End = l.Start*emptied, l.End*emptied
		light.Load = append(light.Load, l)
	}
	if d, ok := far(light); ok {
		out.Apart = d - at
	}
	return out
}

// warnOfCover warns of a net that comes near a face, that lets mosquitoes through, or whose
// ridge does not give as far as the apexes move.
func (p *Plan) warnOfCover(warn func(Warning, ...any)) {
	c, st := p.Design.Cover, p.Style()
	if !c.On {
		return
	}
	if near, ok := p.Further.Cover.Space.Free.Unfree(); ok {
		warn(CoverNearFace, st.Length(max(near, 0)), st.Length(insectnet.FaceRoom))
	}
	if c.Mesh > mosquito() {
		warn(CoverCoarse, st.Length(c.Mesh), quantity.Decimal(quantity.Inch*quantity.Inch/(c.Mesh*c.Mesh), 0))
	}
	if c.Height == 0 && !c.Carries() {
		if a := p.Apexes(); max(a.Nearer, a.Apart) > c.Travel {
			warn(CoverTravels, st.Length(max(a.Nearer, a.Apart)), st.Length(c.Travel))
		}
	}
	if g := p.Further.Cover.Gap; g > 0 {
		warn(CoverGaps, st.Length(g))
	}
}
