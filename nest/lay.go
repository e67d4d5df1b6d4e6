package nest

import (
	"math"
	"slices"

	"slingloft/outline/geom"
)

// lay turns spots into a Lay. Beds that hold nothing are left out.
func (p *problem) lay(spots []spot) Lay {
	var beds []int
	for _, s := range spots {
		beds = append(beds, p.bedAt(s.at.X))
	}
	slices.Sort(beds)
	beds = slices.Compact(beds)
	lay := Lay{Beds: len(beds)}
	for i, s := range spots {
		at := p.bedAt(s.at.X)
		bed, _ := slices.BinarySearch(beds, at)
		pc := p.pieces[i]
		m := pc.motion(s.form)
		m.Shift = m.Shift.Plus(s.at).Plus(geom.Pt(p.stock.Margin-float64(float64(at)*p.pitch), p.stock.Margin))
		m, right := p.pulledIn(p.items[pc.item].Outline, m)
		if bed == len(beds)-1 {
			lay.Length = max(lay.Length, right+p.stock.Margin)
		}
		lay.Placements = append(lay.Placements, Placement{pc.item, pc.copy, bed, m})
	}
	along := lay.Length
	if lay.Beds > 1 {
		along += float64(lay.Beds-1) * p.stock.Width
	}
	if along > 0 {
		lay.Density = p.area / (along * p.stock.Height)
	}
	return lay
}

// motion returns the motion that takes the piece's outline to the form.
func (pc piece) motion(form int) geom.Motion {
	k := slices.IndexFunc(pc.poses, func(q pose) bool { return q.form == form })
	return pc.poses[k].motion
}

// pulledIn returns m, moved by units in the last place where rounding has put a
// vertex past an edge, and the right end of the outline.
func (p *problem) pulledIn(r geom.Ring, m geom.Motion) (geom.Motion, float64) {
	low := geom.Pt(p.stock.Margin, p.stock.Margin)
	room := geom.Box{Min: low, Max: low.Plus(geom.Pt(p.length, p.height))}
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
		least = min(least, pc.slim)
	}
	return least
}

// bound returns a length below which no lay can exist: that of the area, or of
// a piece that is longer.
func (p *problem) bound() float64 {
	area, longest := p.covered, 0.0
	for _, pc := range p.pieces {
		longest = max(longest, pc.slim)
	}
	full := 0.0
	if p.pitch > 0 {
		full = max(math.Ceil(area/(p.length*p.height)-1e-9)-1, 0)
		area -= float64(full * p.length * p.height)
		longest = min(longest, p.narrowest())
	}
	return float64(full*p.pitch) + max(area/p.height, longest)
}
