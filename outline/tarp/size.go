package tarp

import (
	"math"

	"slingloft/outline/design"
	"slingloft/outline/geom"
	"slingloft/outline/hung"
	"slingloft/outline/quantity"
	"slingloft/outline/rig"
)

// Size is how large a sheet is and how it hangs.
type Size struct {
	Ridge float64 // finished, end to end
	Width float64 // finished, corner to corner over the ridge, as it lies flat
	Side  float64 // between the corners of a side edge
	Rise  float64 // of the ridge above the higher apex

	// What the bed needs: what is taken where the design gives none. They are 0 where no
	// sheet of such a shape would keep the rain off.
	NeedRidge, NeedWidth, NeedRise float64

	Keeps  float64 // rain from any direction that misses the bed, up to this angle from the plumb line, rad
	Clear  float64 // least distance of the sheet from bars, cords and hang lines
	EdgeUp float64 // corners of the side edges above the bed's lowest point
	Dip    float64 // of a hollow ridge below its ends, as it hangs
}

// Clearance is how far a sheet stays off bars, cords and hang lines, mm: own choice.
const Clearance = 100.0

// SizeOf returns the size of a design's sheet over a bed. The error is a
// [hung.Impossible].
func SizeOf(d design.Design, b Bed) (Size, error) {
	t := d.Tarp
	p := proposer{t: t, bed: b, step: 50, fine: 10}
	if d.Output.Inches {
		p.step, p.fine = 2*quantity.Inch, quantity.Inch/2
	}
	need := p.propose()
	s := Size{Ridge: need.Ridge, Width: need.Width, Rise: need.Rise}
	s.NeedRidge, s.NeedWidth = need.Ridge, need.Width
	if t.Ridge > 0 {
		s.Ridge = t.Ridge
	}
	if t.Width > 0 {
		s.Width = t.Width
	}
	s.Side = t.SideOf(s.Ridge)
	if s.Side > s.Ridge {
		return Size{}, &hung.Impossible{Key: design.KeyTarpSide, Found: design.Found(design.SideOverNeed), Bound: design.AtMost, Limit: s.Ridge}
	}
	s.NeedRise = p.rise(s.Ridge)
	if t.Rise == 0 && t.Ridge > 0 {
		s.Rise = s.NeedRise
	}
	o, err := outlineOf(t, s)
	if err != nil {
		return Size{}, err
	}
	if !need.ok {
		s.NeedRidge, s.NeedWidth = 0, 0
		if p.covers(o, s.Rise, float64(t.Rain)) { // the maker's own does
			s.NeedRidge, s.NeedWidth = s.Ridge, s.Width
		}
	}
	return s.measured(p, o), nil
}

// measured adds what follows from a size.
func (s Size) measured(p proposer, o flatOutline) Size {
	s.Keeps = p.keeps(o, s.Rise)
	s.Clear = p.clear(s.Ridge, s.Rise)
	s.Dip = p.dip(s.Ridge, 0)
	s.EdgeUp = s.Rise + p.bed.Depth - s.Width/2*math.Sin(float64(p.t.Pitch))
	return s
}

// proposer finds the sheet that a bed needs.
type proposer struct {
	t          design.Tarp
	bed        Bed
	step, fine float64 // to which sizes and the rise are rounded up, mm
}

// proposed is the least sheet found.
type proposed struct {
	Ridge, Width, Rise float64
	ok                 bool // it keeps the rain off
}

func upTo(v, step float64) float64 { return math.Ceil(v/step-1e-9) * step }

// propose returns the sheet that the bed needs: the rise that keeps a sheet so long off
// the bed, and the least ridge, then width, that keep the rain off. The two hang together,
// since hang lines rise outwards. Where there is none it is the least that reaches past
// both apexes.
func (p proposer) propose() proposed {
	least := upTo(p.bed.Overall+2*rig.Overhang, p.step)
	base := p.t.Rise
	if base == 0 {
		base = p.rise(least)
	}
	rise := base
	for range 100 {
		q, ok := p.sheet(least, rise)
		if !ok {
			break
		}
		if p.t.Rise > 0 || p.rise(q.Ridge) <= rise {
			return q
		}
		rise = p.rise(q.Ridge)
	}
	return proposed{Ridge: least, Width: p.width(least, base), Rise: base}
}

// widest is how much wider than rain from the side asks for a sheet is tried, where its
// end edges lie askew: own choice.
const widest = 2.0

// sheet returns the least ridge from a length on, and the width, that keep the rain off,
// and whether there are any.
func (p proposer) sheet(least, rise float64) (proposed, bool) {
	for wider := 1.0; wider <= widest; wider += 0.1 {
		for ridge := least; ridge <= 2*least; ridge += p.step {
			q := proposed{Ridge: ridge, Width: upTo(wider*p.width(ridge, rise), p.step), Rise: rise, ok: true}
			s := Size{Ridge: ridge, Width: max(q.Width, p.t.Width), Side: p.t.SideOf(ridge)}
			if s.Side > ridge {
				continue
			}
			if o, err := outlineOf(p.t, s); err == nil && p.covers(o, rise, float64(p.t.Rain)) {
				return q, true
			}
		}
		if p.t.Shape == design.RectangleTarp {
			break // more width moves no end
		}
	}
	return proposed{}, false
}

// width returns the width that keeps off rain from the side: seen along it, a point lies
// behind the sheet if the edge reaches, from the ridge down the slope,
//
//	(y + (rise − z) tan ρ) / (cos φ + sin φ tan ρ)
func (p proposer) width(ridge, rise float64) float64 {
	pitch, rain := float64(p.t.Pitch), math.Tan(float64(p.t.Rain))
	half := p.t.SideOf(ridge) / 2
	edge, err := edgeOf(geom.Pt(-half, 0), geom.Pt(half, 0), p.t.Hollow, p.t.Curve)
	if err != nil {
		edge = Edge{} // the outline's own stage says so
	}
	most := 0.0
	for _, q := range p.bed.Dry {
		reach := (q.Y + (rise-q.Z)*rain) / (math.Cos(pitch) + math.Sin(pitch)*rain)
		most = max(most, reach+edge.depth(q.X+half))
	}
	return upTo(2*most, p.step)
}

// rise returns the rise that keeps a sheet with a ridge off bars, cords and hang lines.
func (p proposer) rise(ridge float64) float64 {
	pitch := float64(p.t.Pitch)
	most := p.bed.Slope*p.overhang(ridge) + Clearance
	for _, q := range p.bed.Cords {
		most = max(most, q.Z+q.Y*math.Tan(pitch)+Clearance/math.Cos(pitch)+p.dip(ridge, q.X))
	}
	return upTo(most, p.fine)
}

// overhang returns how far a ridge reaches past each apex; 0 where it does not.
func (p proposer) overhang(ridge float64) float64 { return max((ridge-p.bed.Overall)/2, 0) }

// clear returns how near the sheet comes to bars, cords and hang lines.
func (p proposer) clear(ridge, rise float64) float64 {
	pitch := float64(p.t.Pitch)
	least := rise - p.bed.Slope*p.overhang(ridge)
	for _, q := range p.bed.Cords {
		if math.Abs(q.X) <= ridge/2 {
			least = min(least, (rise-q.Z-q.Y*math.Tan(pitch)-p.dip(ridge, q.X))*math.Cos(pitch))
		}
	}
	return least
}

// dip returns how far below its ends a hollow ridge hangs at x, as a parabola. Each half is
// taken for a cylinder whose rulings run down its slope φ from the seam: unrolled, a point
// of the seam that hangs d lower lies d sin φ further down the rulings, so that d is the
// hollow over sin φ.
func (p proposer) dip(ridge, x float64) float64 {
	at := 2 * x / ridge
	return p.t.RidgeHollow * ridge / math.Sin(float64(p.t.Pitch)) * max(1-float64(at*at), 0)
}

// directions is from how many directions the rain is looked at: between two of them the
// way to a straight edge is longer by a thousandth at most, 1/cos 2.5°.
const directions = 72

// covers reports whether rain that is driven so far from the plumb line, from any
// direction, misses the bed: whether each point of it, seen along the rain, lies behind
// the sheet. A hollow ridge hangs lower and keeps off more.
func (p proposer) covers(o flatOutline, rise, rain float64) bool {
	tan, pitch := math.Tan(rain), float64(p.t.Pitch)
	for i := range directions {
		turn := 2 * math.Pi * float64(i) / directions
		ux, uy := tan*math.Cos(turn), tan*math.Sin(turn)
		for _, q := range p.bed.Dry {
			if !o.shades(q.X, q.Y, rise-q.Z, ux, uy, pitch) {
				return false
			}
		}
	}
	return true
}

// shades reports whether the way up along the rain from a point so far below the ridge
// meets the sheet: ux and uy are how far it goes along and across for each unit of rise.
// On the half on the side of y, φ down, it meets y/cos φ down the slope at the height
// h = (below − |y| tan φ) / (1 + u tan φ).
func (o flatOutline) shades(x, y, below, ux, uy, pitch float64) bool {
	for _, side := range [2]float64{1, -1} {
		h := (below - side*y*math.Tan(pitch)) / (1 + side*uy*math.Tan(pitch))
		across := side * (y + h*uy)
		if h >= 0 && across >= -1e-9 && o.holds(x+h*ux, across/math.Cos(pitch)) {
			return true
		}
	}
	return false
}

// keeps returns the most that rain may be driven and still miss the bed, rad, to a
// twentieth of a degree; 0 where the bed sticks out.
func (p proposer) keeps(o flatOutline, rise float64) float64 {
	lo, hi := 0.0, math.Pi/2*0.95
	if !p.covers(o, rise, lo) {
		return 0
	}
	for hi-lo > math.Pi/3600 {
		if mid := (lo + hi) / 2; p.covers(o, rise, mid) {
			lo = mid
		} else {
			hi = mid
		}
	}
	return lo
}
