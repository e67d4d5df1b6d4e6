package level

import (
	"math"
	"sort"

	"slingloft/outline/drape"
	"slingloft/outline/geom"
)

// Lies is how a cut lies.
type Lies struct {
	drape.Hung
	Body  []geom.Point // x and z of the underside of what lies there
	Under float64      // highest less lowest of the body's underside, mm
	Whole float64      // likewise of the cloth's bottom line
	Rim   float64      // how much the cloth past crown and soles stands higher than under them, mm
	// Gather is how much longer the cloth's centre line is than the line in which it hangs
	// past each bar, mm: so much lies in gathers across it.
	Gather [2]float64
	Shear  float64 // largest of the cloth, rad
	Wall   float64 // steepest rise of the cloth to the cords, rad
}

// Level reports whether it lies level.
func (l Lies) Level() bool { return l.Under <= Under && l.Whole <= Else }

// LiesAt returns the height of the underside of what lies there at a station, mm; past its
// ends that of the end.
func (l Lies) LiesAt(x float64) float64 {
	i := sort.Search(len(l.Body), func(i int) bool { return l.Body[i].X >= x })
	if i == 0 || i == len(l.Body) {
		return l.Body[min(i, len(l.Body)-1)].Y
	}
	a, b := l.Body[i-1], l.Body[i]
	return a.Towards(b, (x-a.X)/(b.X-a.X)).Y
}

// judge hangs the cut with the body on its links and reads how it lies.
func (l *loop) judge(to *Lies) error {
	h, err := l.hang(false, inAll)
	if err != nil {
		return err
	}
	*to = Lies{Hung: h}
	under, whole, rim := newSpread(), newSpread(), math.Inf(-1)
	for i, u := range h.Along {
		bottom := l.Bottom(h.Bottom[i].X)
		if u >= l.From && u <= l.To {
			under.take(h.Rests[i] - bottom)
			to.Body = append(to.Body, geom.Pt(h.Bottom[i].X, h.Rests[i]))
			to.Wall = max(to.Wall, math.Asin(min(h.Wall[i], 1)))
		}
		if l.judged(&h, u) {
			whole.take(h.Bottom[i].Y - bottom)
		}
		if past := max(l.From-u, u-l.To); past > 0 && past < Rim {
			rim = max(rim, h.Bottom[i].Y-bottom)
		}
		if i == 0 || i > h.Tips[0] && i <= h.Tips[1] {
			continue
		}
		end := 0
		if i > h.Tips[1] {
			end = 1
		}
		to.Gather[end] += u - h.Along[i-1] - h.Bottom[i].Dist(h.Bottom[i-1])
	}
	to.Under, to.Whole = under.size(), whole.size()
	to.Rim = max(rim-under.low, 0)
	for _, c := range h.Cloth {
		to.Shear = max(to.Shear, c.Shear)
	}
	return nil
}

// spread is from the least to the most of what was taken.
type spread struct{ low, high float64 }

func newSpread() spread { return spread{math.Inf(1), math.Inf(-1)} }

func (s *spread) take(v float64) { s.low, s.high = min(s.low, v), max(s.high, v) }

// size is 0 where nothing was taken.
func (s spread) size() float64 { return max(s.high-s.low, 0) }
