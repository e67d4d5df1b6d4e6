package panel

import (
	"slingloft/outline/design"
	"slingloft/outline/geom"
	"slingloft/outline/hung"
)

// sidesRun refuses a channel so deep that a tail's side seam, which lies inside the
// cord by the channel's reach, has no length left.
func (m *pattern) sidesRun() error {
	if m.runsAt(m.out.Reach) {
		return nil
	}
	no := &hung.Impossible{Key: design.KeyChannelDepth, Found: design.Found(design.SideSeamGone)}
	low, high := 0.0, m.d.Channel.Depth
	for range 12 {
		mid := (low + high) / 2
		if reach, err := Reach(mid, m.d.Side.Diameter); err != nil || m.runsAt(reach) {
			low = mid
		} else {
			high = mid
		}
	}
	if reach, err := Reach(low, m.d.Side.Diameter); err == nil && m.runsAt(reach) {
		no.Bound, no.Limit = design.AtMost, low
	}
	return no
}

// runsAt reports whether the body's outline does not cross itself when its sides are
// moved in by so much, mm.
func (m *pattern) runsAt(in float64) bool {
	r := geom.RingOf(m.edgesAt(in))
	boxes := make([]geom.Box, len(r))
	for i := range r {
		boxes[i] = geom.BoxOf(r[i], r[(i+1)%len(r)]).Expanded(1e-9)
	}
	for i := range r {
		for k := i + 2; k < len(r); k++ {
			if i == 0 && k == len(r)-1 || !boxes[i].Overlaps(boxes[k]) {
				continue
			}
			if _, ok := geom.CrossingAt(r[i], r[i+1], r[k], r[(k+1)%len(r)]); ok {
				return false
			}
		}
	}
	return true
}
