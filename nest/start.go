package nest

import (
	"math"
	"slices"

	"slingloft/outline/geom"
)

// begun returns the spots of a lay that another search found, and whether it lies: it has
// every piece once, in a way in which the piece may lie, and passes the exact check. Where
// all coordinates are kept on a grid a lay from elsewhere is not taken.
func (p *problem) begun(places []Placement) ([]spot, bool) {
	if len(places) != len(p.pieces) || p.grid > 0 {
		return nil, false
	}
	spots := make([]spot, len(p.pieces))
	for i, pc := range p.pieces {
		k := slices.IndexFunc(places, func(q Placement) bool { return q.Item == pc.item && q.Copy == pc.copy })
		if k < 0 {
			return nil, false
		}
		m := places[k].Motion
		way := slices.IndexFunc(pc.poses, func(q pose) bool {
			turned := math.Remainder(q.motion.Turn-m.Turn, 2*math.Pi)
			return q.motion.Mirror == m.Mirror && math.Abs(turned) < 1e-9
		})
		if way < 0 {
			return nil, false
		}
		q := pc.poses[way]
		at := m.Shift.Minus(q.motion.Shift).Minus(geom.Pt(p.stock.Margin, p.stock.Margin))
		at.X += float64(float64(places[k].Bed) * p.pitch)
		spots[i] = spot{q.form, at}
	}
	return spots, p.verified(spots) == nil
}
