package finished

import (
	"math"

	"slingloft/outline/bed"
	"slingloft/outline/geom"
	"slingloft/outline/hung"
)

// Loads are the largest pulls and thrusts in a state of a hammock.
type Loads struct {
	Line  [2]float64    // in the hang lines and on their anchors, N, by [hung.End]
	Leg   [2][2]float64 // N, by [hung.End] and [bed.Side]
	Side  [2]float64    // in the side cords, N, by [bed.Side]
	Bar   [2]float64    // thrust along the bars, N, by [hung.End]
	Cloth float64       // of the cloth on a side cord and its seam, N/mm
}

// Entry is the hammock under one who sits on a side cord with the feet off the
// ground.
type Entry struct {
	Loads
	Tips  [2][2]geom.Point3 // bar tips, by [hung.End] and [bed.Side]
	Apex  [2]geom.Point3    // by [hung.End]
	Seat  geom.Point3       // the cord at the middle of the load
	Slack bool              // the other side's cord carries nothing
}

// entryCells is how many stretches a bay is divided into for an entry, each tail
// into a tenth as many: with twice as many the pulls change by less than a part in a
// thousand.
const entryCells = 20

// Enter finds how the hammock hangs with the whole of a load on one side cord and
// the given changes. No section is round then: the cloth hangs flat between the cords,
// and only where they are as far apart as it is wide does it carry. Where the other
// cord goes slack lines, legs and cord are one string from anchor to anchor, and the
// bars turn with their tips. The hammock takes the place in which its potential energy
// is least. It fails with numeric.ErrNoConvergence.
func (h Hammock) Enter(c Change, side bed.Side, load hung.Load) (Entry, error) {
	b := h.entryWeb(c, side, load)
	if err := b.rest(); err != nil {
		return Entry{}, err
	}
	return b.entry(side), nil
}

// entryWeb is the web of a hammock that is sat on, with its parts by name.
type entryWeb struct {
	web
	xs    []float64 // stations
	line  [2]int    // numbers of lines in the web
	bar   [2]int
	tips  [2]int // numbers of stations
	legs  [2][2][]int
	cords [2][]int
	cloth []int // one a station
	wide  []float64
	seat  int // number of the station
	sum   float64
}

// point returns the number of a station's point.
func point(station int, s bed.Side) int { return 1 + 2*station + int(s) }

// entryWeb lays the web out in the designed shape.
func (h *Hammock) entryWeb(c Change, side bed.Side, load hung.Load) *entryWeb {
	s := h.Shape
	b := &entryWeb{}
	b.stations(s, load)
	b.sum, _ = load.Total()
	b.at = []geom.Point3{geom.Pt3(s.Ends[hung.Head].ApexX, 0, s.Ends[hung.Head].ApexZ)}
	for _, x := range b.xs {
		y, z := s.Cord(x)
		b.at = append(b.at, geom.Pt3(x, y, z), geom.Pt3(x, -y, z))
	}
	b.at = append(b.at, geom.Pt3(s.Ends[hung.Foot].ApexX, 0, s.Ends[hung.Foot].ApexZ))
	b.weight = make([]float64, len(b.at))
	for e := range 2 {
		b.end(h, c, hung.End(e))
	}
	for i := 1; i < len(b.xs); i++ {
		b.stretch(h, c, i)
	}
	for i := range b.xs {
		b.across(h, c, i)
		b.weight[point(i, side)] += b.share(i, load.At)
	}
	return b
}

// stations chooses the stations: even ones, those of the load's breaks among them.
func (b *entryWeb) stations(s *hung.Shape, load hung.Load) {
	half := s.Problem.Bed.Span / 2
	head, foot := s.TailEnds()
	marks := append([]float64{head, (head - half) / 2, -half, half, (foot + half) / 2, foot}, load.Breaks()...)
	for i := 1; i < entryCells; i++ {
		marks = append(marks, half*(2*float64(i)/entryCells-1))
	}
	_, middle := load.Total()
	b.xs = spaced(marks, head, foot)
	for i, x := range b.xs {
		switch x {
		case -half:
			b.tips[hung.Head] = i
		case half:
			b.tips[hung.Foot] = i
		}
		if math.Abs(x-middle) < math.Abs(b.xs[b.seat]-middle) {
			b.seat = i
		}
	}
}

// end ties an end: hang line, free legs, bar.
func (b *entryWeb) end(h *Hammock, c Change, e hung.End) {
	apex := [2]int{0, len(b.at) - 1}[e]
	last := [2]int{0, len(b.xs) - 1}[e]
	b.anchors[e] = h.anchors[e].Plus(c.Anchor[e])
	b.line[e] = b.join(-1-int(e), apex, h.line[e]+c.Line[e], h.LineEA)
	b.bar[e] = b.join(point(b.tips[e], bed.Left), point(b.tips[e], bed.Right), h.Shape.Ends[e].Bar+c.Bar[e], 0)
	b.lines[b.bar[e]].pushes = true
	for s := range 2 {
		tip := point(b.tips[e], bed.Side(s))
		b.weight[tip] += h.Shape.Problem.BarWeight[e] / 2
		b.legs[e][s] = append(b.legs[e][s], b.join(apex, point(last, bed.Side(s)), h.leg[e]+c.Leg[e][s], h.LegEA))
	}
}

// firm is by how much of its length what is not known to stretch gives under the
// whole weight.
const firm = 1e-4

// join adds a line and returns its number.
func (b *entryWeb) join(from, to int, long, ea float64) int {
	if ea == 0 {
		ea = b.sum / firm
	}
	b.lines = append(b.lines, line{a: from, b: to, long: long, ea: ea})
	return len(b.lines) - 1
}

// stretch runs both cords from the station before to station i.
func (b *entryWeb) stretch(h *Hammock, c Change, i int) {
	from, to := b.xs[i-1], b.xs[i]
	bay := i > b.tips[hung.Head] && i <= b.tips[hung.Foot]
	ea := h.LegEA
	if bay {
		ea = h.SideEA
	}
	long := h.cut(h.Shape.Arc(from, to), h.Shape.At((from+to)/2).Tension, ea)
	for s := range 2 {
		own := long
		if bay {
			own *= 1 + c.Side[s]/h.Shape.SideArc
		}
		k := b.join(point(i-1, bed.Side(s)), point(i, bed.Side(s)), own, ea)
		switch {
		case bay:
			b.cords[s] = append(b.cords[s], k)
		case to <= 0:
			b.legs[hung.Head][s] = append(b.legs[hung.Head][s], k)
		default:
			b.legs[hung.Foot][s] = append(b.legs[hung.Foot][s], k)
		}
	}
}

// across adds a station's strip of cloth with its weight.
func (b *entryWeb) across(h *Hammock, c Change, i int) {
	var st step
	x := b.xs[i]
	h.section(&st, 0, x)
	width := b.share(i, func(float64) float64 { return 1 })
	ea := float64(h.Weft * width)
	b.cloth = append(b.cloth, b.join(point(i, bed.Left), point(i, bed.Right), float64(2*st.half[0])+c.Girth, ea))
	b.wide = append(b.wide, width)
	for s := range 2 {
		b.weight[point(i, bed.Side(s))] += float64(st.own[0]*width) / 2
	}
}

// share returns the part of a load per length that falls to station i: that of a
// chain of straight pieces from station to station. It is exact for a load that is
// linear between two stations.
func (b *entryWeb) share(i int, load func(x float64) float64) float64 {
	sum := 0.0
	for _, j := range [2]int{i - 1, i + 1} {
		if j < 0 || j >= len(b.xs) {
			continue
		}
		d := b.xs[j] - b.xs[i]
		// A hair inside, where the load may jump at a station.
		near, far := load(b.xs[i]+1e-9*d), load(b.xs[j]-1e-9*d)
		sum += math.Abs(d) * (float64(2*near) + far) / 6
	}
	return sum
}

// entry reads the result off the web at rest.
func (b *entryWeb) entry(side bed.Side) Entry {
	out := Entry{Apex: [2]geom.Point3{b.at[0], b.at[len(b.at)-1]}, Seat: b.at[point(b.seat, side)]}
	pull := func(k int) float64 { return b.pull(&b.lines[k]) }
	for e := range 2 {
		out.Line[e] = pull(b.line[e])
		out.Bar[e] = max(0, -pull(b.bar[e]))
		for s := range 2 {
			out.Tips[e][s] = b.at[point(b.tips[e], bed.Side(s))]
			for _, k := range b.legs[e][s] {
				out.Leg[e][s] = max(out.Leg[e][s], pull(k))
			}
		}
	}
	for s := range 2 {
		for _, k := range b.cords[s] {
			out.Side[s] = max(out.Side[s], pull(k))
		}
	}
	for i, k := range b.cloth {
		out.Cloth = max(out.Cloth, pull(k)/b.wide[i])
	}
	// What is left then is the cord's and the cloth's own weight.
	const nothing = 0.02
	out.Slack = out.Side[1-side] < nothing*b.sum
	return out
}
