package drape

import (
	"math"

	"slingloft/outline/geom"
)

// Weights of the split copies in the global solve, for a unit of the load's peak
// (cloth, contact) or of its total (cord, bars). Found by trial: they change the
// number of steps and not the answer.
const (
	penaltyCloth   = 5.0
	penaltyCord    = 10.0
	penaltyContact = 3.0
	penaltyBar     = 0.05 // per mm
)

// model is a pattern on its rig as a body, with what is needed to load and read
// it.
type model struct {
	body
	mesh      *mesh
	p         *Pattern
	r         *Rig
	stiffness Stiffness
	chain     [][]int         // the mesh's chains in the body's numbering
	disc      []int           // of each chain
	cord      []int           // ties of the cord between chains
	legs      [2]int          // ties of the legs past the cloth
	lines     [2]int          // ties of the hang lines, where there are any
	apex      [2]int          // nodes of the apexes, where they hang on lines
	threads   [2][]int        // by face, the ties of its warp and of its weft
	spread    map[int]float64 // area that a tie stands for, mm²
	own       []float64
	peak      float64 // of the load, N/mm
	total     float64 // N
}

// rows returns how close the mesh's rows lie under the sleeper, and how far out.
func (r *Rig) rows(p *Pattern, cell float64) (fine, near float64) {
	least := math.Inf(1)
	for _, q := range p.Side {
		least = min(least, r.Radius(q.X))
	}
	fine, near = min(cell, least/8), 1.2*least
	if r.Body == nil {
		return fine, near
	}
	for _, q := range p.Side {
		wide, _, _ := r.section(q.X)
		near = max(near, 1.2*wide)
	}
	return min(cell, 20), near
}

// section returns the half axes of what lies at a station, and whether it is the body.
func (r *Rig) section(x float64) (wide, high float64, body bool) {
	if b := r.Body; b != nil && x >= b.Joints[0] && x <= b.Joints[len(b.Joints)-1] {
		breadth, depth := b.Round(x)
		return breadth / 2, depth / 2, true
	}
	return r.Radius(x), r.Radius(x), false
}

// newModel builds the body of a pattern on its rig.
func newModel(p *Pattern, r *Rig, f Stiffness, cell float64) *model {
	fine, near := r.rows(p, cell)
	g := &model{mesh: newMesh(p, cell, fine, near), p: p, r: r, stiffness: f}
	for _, w := range r.Load {
		g.total += (w.To - w.From) * (w.Start + w.End) / 2
		g.peak = max(g.peak, w.Start, w.End)
	}
	g.shear = f.Shear
	unknown := g.number()
	g.addCloth(unknown)
	g.addCord()
	g.addContacts(cell)
	for e, k := range g.mesh.tips {
		tip := g.edge(k)
		g.struts = append(g.struts, strut{tip, r.Bars[e] / 2, penaltyBar * g.total})
		g.own[tip] += r.BarWeight[e] / 2
	}
	g.guess()
	g.load()
	return g
}

// number gives each node and, after each chain, its disc a place in the body. It
// returns the places of the mesh's nodes.
func (g *model) number() []int {
	unknown := make([]int, len(g.mesh.flat))
	n, longest := 0, 0
	if g.r.Lines[0] > 0 {
		g.apex[0], n = n, n+1
	}
	for _, c := range g.mesh.chains {
		var ids []int
		for _, i := range c {
			unknown[i] = n
			ids = append(ids, n)
			n++
		}
		g.chain, g.disc = append(g.chain, ids), append(g.disc, n)
		n++
		longest = max(longest, len(ids)+1)
	}
	if g.r.Lines[1] > 0 {
		g.apex[1], n = n, n+1
	}
	g.body.resize(n)
	for e, i := range g.apex {
		if g.r.Lines[e] > 0 {
			g.fixed[1][i] = true
		}
	}
	g.width = 2*longest - 1
	g.own = make([]float64, n)
	if g.r.Body != nil && !g.r.Body.Limp {
		g.sleeper = links{joints: g.r.Body.Joints, on: map[int]carried{}}
	}
	for k, c := range g.chain {
		g.fixed[1][c[0]] = true // on the plane between both sides
		g.fixed[0][g.disc[k]], g.fixed[1][g.disc[k]] = true, true
		if at := g.mesh.flat[g.mesh.chains[k][0]].X; g.sleeper.carry(g.disc[k], at) {
			g.fixed[2][g.disc[k]] = true
		}
	}
	return unknown
}

// edge returns the outermost node of a chain.
func (g *model) edge(k int) int { return g.chain[k][len(g.chain[k])-1] }

// addCloth adds warp and weft ties, once for an edge that two triangles share,
// and the triangles' shear.
func (g *model) addCloth(unknown []int) {
	seen := map[[2]int]int{}
	g.spread = map[int]float64{}
	for _, t := range g.mesh.faces {
		f := newFace(g.mesh.flat[t[0]], g.mesh.flat[t[1]], g.mesh.flat[t[2]])
		for k, i := range t {
			f.node[k] = unknown[i]
			g.own[unknown[i]] += float64(f.area / 3 * g.r.Cloth)
		}
		g.faces = append(g.faces, f)
		for w, part := range [2][3]float64{f.warp, f.weft} {
			stiff := [2]float64{g.stiffness.Warp, g.stiffness.Weft}[w]
			p := tie{node: f.node, part: part, stiffness: stiff * f.area, penalty: penaltyCloth * g.peak * f.area, weft: w == 1}
			key, along := edgeOf(&p)
			i, again := seen[key]
			switch {
			case along && again:
				g.ties[i].stiffness += float64(p.stiffness)
				g.ties[i].penalty += float64(p.penalty)
				g.threads[w] = append(g.threads[w], i)
				g.spread[i] += float64(f.area)
				continue
			case along:
				seen[key] = len(g.ties)
			}
			g.threads[w] = append(g.threads[w], len(g.ties))
			g.spread[len(g.ties)] = f.area
			g.ties = append(g.ties, p)
		}
	}
}

// newFace returns a triangle with the parts of its corners' places that make up
// the change of place along u and along v.
func newFace(a, b, c geom.Point) face {
	e, d := b.Minus(a), c.Minus(a)
	det := e.Cross(d)
	return face{
		area: math.Abs(det) / 2,
		warp: [3]float64{(e.Y - d.Y) / det, d.Y / det, -e.Y / det},
		weft: [3]float64{(d.X - e.X) / det, -d.X / det, e.X / det},
	}
}

// edgeOf returns the two nodes of a tie that runs along an edge, and clears its
// third part, which only rounding leaves.
func edgeOf(p *tie) (key [2]int, along bool) {
	largest := max(math.Abs(p.part[0]), math.Abs(p.part[1]), math.Abs(p.part[2]))
	var on []int
	for k := range p.part {
		if math.Abs(p.part[k]) < 1e-9*largest {
			p.part[k] = 0
		} else {
			on = append(on, p.node[k])
		}
	}
	if len(on) != 2 {
		return key, false
	}
	return [2]int{min(on[0], on[1]), max(on[0], on[1])}, true
}

// addCord adds the cord along the cloth, side cord between the tips and legs past
// them, and the rest of the legs up to the apexes.
func (g *model) addCord() {
	penalty := penaltyCord * g.total
	for k := 1; k < len(g.chain); k++ {
		long := g.mesh.cord[k] - g.mesh.cord[k-1]
		ea := g.stiffness.Leg
		if k > g.mesh.tips[0] && k <= g.mesh.tips[1] {
			ea = g.stiffness.Side
		}
		g.cord = append(g.cord, len(g.ties))
		g.ties = append(g.ties, tie{node: [3]int{g.edge(k - 1), g.edge(k), 0},
			part: [3]float64{-1 / long, 1 / long, 0}, stiffness: ea * long, penalty: penalty * long})
	}
	whole := g.p.Cord[len(g.p.Cord)-1]
	onTail := [2]float64{g.p.Tips[0], whole - g.p.Tips[1]}
	for e, k := range [2]int{0, len(g.chain) - 1} {
		long := g.r.Legs[e] - onTail[e]
		g.legs[e] = len(g.ties)
		leg := tie{node: [3]int{g.edge(k), 0, 0}, part: [3]float64{-1 / long, 0, 0}, stiffness: g.stiffness.Leg * long, penalty: penalty * long}
		if g.r.Lines[e] == 0 {
			leg.offset = [3]float64{g.r.Apex[e].X / long, 0, g.r.Apex[e].Y / long}
			g.ties = append(g.ties, leg)
			continue
		}
		leg.node[1], leg.part[1] = g.apex[e], 1/long
		// Half of the line: the other side of the bed has the other half.
		line, to := g.r.Lines[e], g.r.Anchors[e]
		g.lines[e] = len(g.ties) + 1
		g.ties = append(g.ties, leg, tie{node: [3]int{g.apex[e], 0, 0}, part: [3]float64{-1 / line, 0, 0},
			offset: [3]float64{to.X / line, 0, to.Y / line}, stiffness: g.stiffness.Line / 2 * line, penalty: penalty * line})
	}
}

// addContacts lets the nodes of each chain that may come to lie on its disc touch
// it: those within somewhat more than a quarter of its rim.
func (g *model) addContacts(cell float64) {
	for k, c := range g.chain {
		nodes := g.mesh.chains[k]
		if g.idle(k) {
			g.fixed[2][g.disc[k]] = true
			continue
		}
		wide, high, _ := g.r.section(g.mesh.flat[nodes[0]].X)
		// A quarter of an ellipse is at most π/2 times this mean of its half axes long.
		reach := 1.7 * math.Sqrt((float64(wide*wide)+float64(high*high))/2)
		for j := 0; j < len(c) && g.mesh.flat[nodes[j]].Y < reach; j++ {
			near := g.mesh.flat[nodes[max(j, 1)]].Y - g.mesh.flat[nodes[max(j, 1)-1]].Y
			g.contacts = append(
				g.contacts,
				contact{node: c[j], disc: g.disc[k], penalty: penaltyContact * g.peak * cell / near * wide * high, wide: wide, high: high},
			)
		}
	}
}

// idle reports whether the disc of a chain bears nothing, wherever the bed comes to hang: no
// load reaches it by two chains.
func (g *model) idle(k int) bool {
	if g.sleeper.carries(g.disc[k]) {
		return false
	}
	at := func(k int) float64 {
		return g.mesh.flat[g.mesh.chains[min(max(k, 0), len(g.chain)-1)][0]].X
	}
	for _, w := range g.r.Load {
		if w.To > at(k-2) && w.From < at(k+2) {
			return false
		}
	}
	return true
}

// guess starts from a trough with sides at 45 degrees and the discs lying in it.
func (g *model) guess() {
	for k, c := range g.chain {
		for j, i := range c {
			q := g.mesh.flat[g.mesh.chains[k][j]]
			g.place[0][i] = q.X
			g.place[1][i], g.place[2][i] = q.Y*math.Sqrt2/2, q.Y*math.Sqrt2/2
		}
		wide, high, _ := g.r.section(g.place[0][c[0]])
		g.place[2][g.disc[k]] = float64(math.Sqrt2*wide) - high
	}
	for e, i := range g.apex {
		if g.r.Lines[e] > 0 {
			g.place[0][i], g.place[2][i] = g.r.Apex[e].X, g.r.Apex[e].Y
		}
	}
}

// load puts the load where the centre line now lies. What
// lies between two discs is shared between them as on a beam.
func (g *model) load() {
	copy(g.weight, g.own)
	at := make([]float64, len(g.chain))
	for k, c := range g.chain {
		at[k] = g.place[0][c[0]]
	}
	for k := 1; k < len(at); k++ {
		a, b := at[k-1], at[k]
		from, to := a, b
		if k == 1 {
			from = math.Inf(-1)
		}
		if k == len(at)-1 {
			to = math.Inf(1)
		}
		for _, w := range g.r.Load {
			near, far := w.share(from, to, a, b)
			// Half of it: the other side of the bed carries as much.
			g.weight[g.disc[k-1]] += near / 2
			g.weight[g.disc[k]] += far / 2
		}
	}
}

// share returns the parts of the weight between from and to that rest on a and on
// b. Past them all of it rests on the nearer.
func (w Weight) share(from, to, a, b float64) (onA, onB float64) {
	piece := func(lo, hi float64) {
		lo, hi = max(lo, w.From), min(hi, w.To)
		if !(lo < hi) {
			return
		}
		// Simpson's rule is exact for the product of two linear functions.
		for k, x := range [3]float64{lo, (lo + hi) / 2, hi} {
			f := (w.Start + (w.End-w.Start)*(x-w.From)/(w.To-w.From)) * (hi - lo) * [3]float64{1, 4, 1}[k] / 6
			t := min(max((x-a)/(b-a), 0), 1)
			onA += float64(f * (1 - t))
			onB += float64(f * t)
		}
	}
	piece(from, min(a, to))
	piece(max(a, from), min(b, to))
	piece(max(b, from), to)
	return onA, onB
}
