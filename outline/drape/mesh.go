package drape

import (
	"math"

	"slingloft/outline/geom"
)

// mesh is the flat pattern divided: chains of nodes across the bed, along weft
// lines except for a few next to the ends, which close up with the end's edge.
type mesh struct {
	flat   []geom.Point
	chains [][]int // node numbers from the centre line to the side
	cord   []float64
	tips   [2]int // chains on which the tips lie
	faces  [][3]int
}

// chainLine is where a chain lies in the flat: a share of the way from a weft
// line to the end's edge.
type chainLine struct {
	u, share float64
	end      int
}

// newMesh divides the pattern. Rows run along warp lines, closer by fine under the
// sleeper, whose sections bend the cloth up to near from the centre line.
func newMesh(p *Pattern, cell, fine, near float64) *mesh {
	m := &mesh{}
	lines := chainLines(p, cell)
	rows := rowPlaces(p, cell, fine, near)
	for i, l := range lines {
		m.addChain(p, l, rows, cell)
		for e := range m.tips {
			if l.share == 0 && l.u == tipPlace(p, e) {
				m.tips[e] = i
			}
		}
	}
	for i := 1; i < len(m.chains); i++ {
		m.zip(m.chains[i-1], m.chains[i])
	}
	return m
}

// tipPlace returns u of a bar's tip.
func tipPlace(p *Pattern, e int) float64 {
	return along(p.Cord, p.Side, p.Tips[e]).X
}

// chainLines returns the lines of the chains, rising. The last weft line before
// each end stands a cell inside the innermost place of the end's edge, or half way
// to the bar's tip.
func chainLines(p *Pattern, cell float64) []chainLine {
	var last, steps [2]float64
	for e, sign := range [2]float64{-1, 1} {
		in, out := math.Inf(1), math.Inf(-1)
		for _, q := range p.Ends[e] {
			in, out = min(in, sign*q.X), max(out, sign*q.X)
		}
		last[e] = sign * max(in-cell, (in+sign*tipPlace(p, e))/2)
		steps[e] = math.Ceil((out - sign*last[e]) / cell)
	}
	var lines []chainLine
	for k := steps[0]; k > 0; k-- {
		lines = append(lines, chainLine{last[0], k / steps[0], 0})
	}
	marks := [4]float64{last[0], tipPlace(p, 0), tipPlace(p, 1), last[1]}
	for i := 1; i < len(marks); i++ {
		a, b := marks[i-1], marks[i]
		n := max(1, math.Round((b-a)/cell))
		for k := range int(n) {
			lines = append(lines, chainLine{u: a + (b-a)*float64(k)/n})
		}
	}
	lines = append(lines, chainLine{u: last[1]})
	for k := 1.0; k <= steps[1]; k++ {
		lines = append(lines, chainLine{last[1], k / steps[1], 1})
	}
	return lines
}

// rowPlaces returns v of the warp rows from 0 out past the widest place.
func rowPlaces(p *Pattern, cell, fine, near float64) []float64 {
	widest := 0.0
	for _, q := range p.Side {
		widest = max(widest, q.Y)
	}
	rows := []float64{0}
	for v := 0.0; v < widest; {
		if v < near {
			v += fine
		} else {
			v += cell
		}
		rows = append(rows, v)
	}
	return rows
}

// addChain adds the nodes of one chain.
func (m *mesh) addChain(p *Pattern, l chainLine, rows []float64, cell float64) {
	top, run := sideCrossing(p, l)
	var chain []int
	add := func(q geom.Point) {
		chain = append(chain, len(m.flat))
		m.flat = append(m.flat, q)
	}
	for i, v := range rows {
		next := cell
		if i+1 < len(rows) {
			next = rows[i+1] - v
		}
		if v > top.Y-0.4*next {
			break
		}
		add(geom.Pt(l.at(p, v), v))
	}
	add(top)
	m.chains = append(m.chains, chain)
	m.cord = append(m.cord, run)
}

// at returns u of the line at v.
func (l chainLine) at(p *Pattern, v float64) float64 {
	if l.share == 0 {
		return l.u
	}
	return l.u + float64(l.share*(endAt(p.Ends[l.end], v)-l.u))
}

// endAt returns u of an end's edge at v, run on straight past the corner.
func endAt(end []geom.Point, v float64) float64 {
	i := 1
	for i < len(end)-1 && end[i].Y < v {
		i++
	}
	a, b := end[i-1], end[i]
	return a.X + (b.X-a.X)*(v-a.Y)/(b.Y-a.Y)
}

// sideCrossing returns where a line meets the side, and the cord up to there.
func sideCrossing(p *Pattern, l chainLine) (geom.Point, float64) {
	if l.share == 1 {
		i := l.end * (len(p.Side) - 1)
		return p.Side[i], p.Cord[i]
	}
	lo, hi := 0.0, p.Cord[len(p.Cord)-1]
	for range 60 {
		mid := (lo + hi) / 2
		q := along(p.Cord, p.Side, mid)
		if q.X < l.at(p, q.Y) {
			lo = mid
		} else {
			hi = mid
		}
	}
	return along(p.Cord, p.Side, (lo+hi)/2), (lo + hi) / 2
}

// along returns the point of a curve at running length s, given those of its
// points.
func along(runs []float64, pts []geom.Point, s float64) geom.Point {
	i := 1
	for i < len(pts)-1 && runs[i] < s {
		i++
	}
	return pts[i-1].Towards(pts[i], (s-runs[i-1])/(runs[i]-runs[i-1]))
}

// zip fills the strip between two chains with triangles, each with two corners
// on one chain. Diagonals lean towards mid-bay.
func (m *mesh) zip(left, right []int) {
	a, b := 0, 0
	for a < len(left)-1 || b < len(right)-1 {
		byLeft := b == len(right)-1
		if a < len(left)-1 && b < len(right)-1 {
			l, r := m.flat[left[a+1]], m.flat[right[b+1]]
			byLeft = l.Y < r.Y || l.Y == r.Y && l.X < 0
		}
		if byLeft {
			m.faces = append(m.faces, [3]int{left[a], right[b], left[a+1]})
			a++
		} else {
			m.faces = append(m.faces, [3]int{left[a], right[b], right[b+1]})
			b++
		}
	}
}
