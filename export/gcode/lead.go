package gcode

import (
	"math"

	"slingloft/outline/geom"
	"slingloft/outline/piece"
)

// leads finds lead-ins that stay in the waste.
type leads struct {
	length float64 // mm; where there is no room, half and a quarter of it will do
	sheet  geom.Box
	rings  []ringCut
}

// clear is what a lead-in keeps from all cuts, mm. The cuts themselves lie half a
// kerf beside the parts already.
const clear = 0.2

// ringCut is one closed cut of the program.
type ringCut struct {
	path geom.Ring
	box  geom.Box
	work piece.Work
}

// A lead-in comes in at 45° to the cut that follows, flat enough for a knife to
// come into line, or at three quarters of the corner where the corner is narrower
// than that.
const (
	widest = math.Pi * 3 / 4
	share  = 0.75
)

// maxTries bounds the corners at which a lead-in is tried.
const maxTries = 200

// find returns the corner, from corner start on, at which ring number k can be
// begun with a lead-in, and where the lead-in begins; ok is false where there is no
// room for one at any corner tried.
func (l leads) find(k, start int) (corner int, from geom.Point, ok bool) {
	path := l.rings[k].path
	n := len(path)
	for _, length := range [3]float64{l.length, l.length / 2, l.length / 4} {
		for try := 0; try < n; try += max(1, n/maxTries) {
			i := (start + try) % n
			from := path[i].Plus(l.wayOut(k, i).Times(length))
			if l.free(k, path[i], from) {
				return i, from, true
			}
		}
	}
	return start, geom.Point{}, false
}

// wayOut returns the direction from corner i of ring k into the waste.
func (l leads) wayOut(k, i int) geom.Point {
	path := l.rings[k].path
	n := len(path)
	ahead, behind := path[(i+1)%n].Minus(path[i]).Unit(), path[(i+n-1)%n].Minus(path[i]).Unit()
	left := ahead.AngleTo(behind) // angle of the corner, inside
	if left < 0 {
		left += 2 * math.Pi
	}
	if l.rings[k].work == piece.CutInside {
		return ahead.Turned(math.Min(widest, left*share))
	}
	return ahead.Turned(-math.Min(widest, (2*math.Pi-left)*share))
}

// free reports whether the lead-in lies on the sheet, in the waste of ring k and
// clear of every other closed cut.
func (l leads) free(k int, corner, from geom.Point) bool {
	if !l.sheet.Contains(from) {
		return false
	}
	if l.rings[k].path.Contains(from) != (l.rings[k].work == piece.CutInside) {
		return false
	}
	near := geom.BoxOf(corner, from).Expanded(clear)
	for i, r := range l.rings {
		if i != k && r.work == piece.CutOut && l.rings[k].work == piece.CutOut && r.path.Contains(from) {
			return false
		}
		if !near.Overlaps(r.box.Expanded(1e-9)) {
			continue
		}
		for j, a := range r.path {
			b := r.path[(j+1)%len(r.path)]
			if i == k && (a == corner || b == corner) {
				continue // the lead-in ends here
			}
			if segmentsWithin(corner, from, a, b, i == k) {
				return false
			}
		}
	}
	return true
}

// segmentsWithin reports whether the segment from corner to from comes nearer to
// a–b than clear; of the ring's own segments only crossings count, and how near
// its far end comes.
func segmentsWithin(corner, from, a, b geom.Point, own bool) bool {
	apart := !geom.BoxOf(corner, from).Expanded(1e-9).Overlaps(geom.BoxOf(a, b).Expanded(1e-9))
	if !apart && geom.Straddle(corner, from, a, b) || from.DistToSegment(a, b) < clear {
		return true
	}
	return !own && (corner.DistToSegment(a, b) < clear ||
		a.DistToSegment(corner, from) < clear || b.DistToSegment(corner, from) < clear)
}
