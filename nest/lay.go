package nest

import (
	"math"

	"slingloft/outline/geom"
)

// lay turns spots into a Lay.
func (p *problem) lay(spots []spot) Lay {
	var lay Lay
	rank := p.bedRanks(spots)
	for i, s := range spots {
		pc := p.pieces[i]
		at := p.bedAt(s.at.X)
		bed := rank[at]
		m := pc.poses[s.pose].motion
		m.Shift = m.Shift.Plus(s.at).Plus(geom.Pt(p.margin-float64(float64(at)*p.pitch), p.margin))
		m, right := p.pulledIn(p.items[pc.item].Outline, m)
		if bed+1 > lay.Beds {
			lay.Beds, lay.Length = bed+1, 0
		}
		if bed+1 == lay.Beds {
			lay.Length = max(lay.Length, right+p.margin)
		}
		lay.Placements = append(lay.Placements, Placement{pc.item, pc.copy, bed, m})
	}
	if used := p.used(lay); used > 0 {
		lay.Density = p.area / used
	}
	return lay
}

// bedRanks returns, for every bed in the row, its number when empty ones are left out.
func (p *problem) bedRanks(spots []spot) []int {
	filled := make([]bool, p.beds+1)
	for _, s := range spots {
		filled[p.bedAt(s.at.X)] = true
	}
	rank := make([]int, len(filled))
	for k := 1; k < len(rank); k++ {
		rank[k] = rank[k-1] + btoi(filled[k-1])
	}
	return rank
}

// used returns the area of stock that lay takes, margins included.
func (p *problem) used(lay Lay) float64 {
	h := p.height + 2*p.margin
	if p.pitch == 0 {
		return lay.Length * h
	}
	return (float64(float64(lay.Beds-1)*(p.length+float64(2*p.margin))) + lay.Length) * h
}

// pulledIn returns m, moved by units in the last place where rounding has put a
// vertex past an edge, and the right end of the outline.
func (p *problem) pulledIn(r geom.Ring, m geom.Motion) (geom.Motion, float64) {
	room := geom.Box{Min: geom.Pt(p.margin, p.margin), Max: geom.Pt(p.margin+p.length, p.margin+p.height)}
	for range 8 {
		box := r.Moved(m).Bounds()
		if room.ContainsBox(box) {
			return m, box.Max.X
		}
		m.Shift.X = nudged(m.Shift.X, room.Min.X-box.Min.X, room.Max.X-box.Max.X)
		m.Shift.Y = nudged(m.Shift.Y, room.Min.Y-box.Min.Y, room.Max.Y-box.Max.Y)
	}
	return m, r.Moved(m).Bounds().Max.X
}

// nudged moves x up by up if that is positive, else by down if that is negative,
// one unit in the last place further than asked.
func nudged(x, up, down float64) float64 {
	switch {
	case up > 0:
		return math.Nextafter(x+up, math.Inf(1))
	case down < 0:
		return math.Nextafter(x+down, math.Inf(-1))
	}
	return x
}

// bedAt returns the bed that a piece with its left end at x lies on. Half the
// wall before a bed counts as its own, for the sake of rounding.
func (p *problem) bedAt(x float64) int {
	if p.pitch == 0 {
		return 0
	}
	return int((x + p.wallWidth()/2) / p.pitch)
}

// bedStart returns where the last bed of a row of the length given begins.
func (p *problem) bedStart(length float64) float64 {
	return float64(p.bedAt(length)) * p.pitch
}

// wallWidth returns the distance between two beds in the row.
func (p *problem) wallWidth() float64 { return p.pitch - p.length }

// narrowest returns the least extent along x of any piece in any pose.
func (p *problem) narrowest() float64 {
	least := math.Inf(1)
	for _, pc := range p.pieces {
		least = min(least, p.slimmest(pc))
	}
	return least
}

// slimmest returns the least extent along x of a piece.
func (p *problem) slimmest(pc piece) float64 {
	least := math.Inf(1)
	for _, q := range pc.poses {
		least = min(least, p.atlas.forms[q.form].w)
	}
	return least
}

// bound returns a length below which no lay can exist: that of the area, or of
// a piece that is longer.
func (p *problem) bound() float64 {
	area, longest := p.covered, 0.0
	for _, pc := range p.pieces {
		longest = max(longest, p.slimmest(pc))
	}
	full := 0.0
	if p.pitch > 0 {
		full = max(math.Ceil(area/(p.length*p.height)-1e-9)-1, 0)
		area -= float64(full * p.length * p.height)
		longest = min(longest, p.narrowest())
	}
	return float64(full*p.pitch) + max(area/p.height, longest)
}
