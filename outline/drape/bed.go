package drape

// Bed is a pattern on its rig that is hung again and again while its cut changes: each
// time it starts from where it hung before, and comes to rest in a part of the steps.
type Bed struct {
	Rig       *Rig // which may change in all but the stations of its bars
	stiffness Stiffness
	model     *model
	solved    *splitting
}

// NewBed returns a bed that was not hung yet.
func NewBed(r *Rig, f Stiffness) *Bed { return &Bed{Rig: r, stiffness: f} }

// Hang hangs a pattern, as [Hang] does. One whose end edges and bar tips lie at the same
// places along the bed as those of the pattern before starts from where that one hung.
func (b *Bed) Hang(p *Pattern, set Settings) (Hung, error) {
	g := newModel(p, b.Rig, b.stiffness, set.Cell)
	if b.solved != nil {
		g.follow(b.model)
	}
	s, ok := newSplitting(&g.body)
	if !ok {
		return Hung{}, ErrLoose
	}
	if b.solved != nil {
		s.follow(g, b.solved, b.model)
	}
	steps, last, err := s.settle(set.Step, set.Steps, func(steps int, far float64) error {
		g.load()
		if set.Watch == nil {
			return nil
		}
		return set.Watch(steps, far)
	})
	if err != nil {
		return Hung{}, err
	}
	b.model, b.solved = g, s
	h := g.read(s)
	h.Steps, h.Last = steps, last
	if !(last < set.Step) {
		return h, ErrUnsettled
	}
	return h, nil
}

// follow takes over where another model hangs: chains by their number, nodes by the part
// of the way from the centre line to the side.
func (g *model) follow(old *model) {
	if len(old.chain) != len(g.chain) {
		return
	}
	for k, c := range g.chain {
		was, now := old.mesh.chains[k], g.mesh.chains[k]
		wide := old.mesh.flat[was[len(was)-1]].Y / g.mesh.flat[now[len(now)-1]].Y
		i := 1
		for j, n := range c {
			v := g.mesh.flat[now[j]].Y * wide
			for i < len(was)-1 && old.mesh.flat[was[i]].Y < v {
				i++
			}
			a, b := old.mesh.flat[was[i-1]].Y, old.mesh.flat[was[i]].Y
			for x := range 3 {
				p, q := old.place[x][old.chain[k][i-1]], old.place[x][old.chain[k][i]]
				g.place[x][n] = p + float64((v-a)/(b-a)*(q-p))
			}
		}
		for x := range 3 {
			g.place[x][g.disc[k]] = old.place[x][old.disc[k]]
		}
	}
	for e := range g.apex {
		if g.r.Lines[e] > 0 {
			for x := range 3 {
				g.place[x][g.apex[e]] = old.place[x][old.apex[e]]
			}
		}
	}
	g.load()
}

// follow takes over the forces of what joins the same nodes.
func (s *splitting) follow(g *model, old *splitting, was *model) {
	if len(was.chain) != len(g.chain) {
		return
	}
	names := [2][]node{g.names(), was.names()}
	at := map[joint]int{}
	copied := func(to, from int, n int, part float64) {
		for i := range n {
			s.q[to+i] += float64(part * (old.q[from+i] - old.proj[from+i]))
		}
	}
	for i := range old.b.ties {
		at[old.b.ties[i].joins(names[1])] = i + 1
	}
	for i := range s.b.ties {
		t := &s.b.ties[i]
		if k := at[t.joins(names[0])] - 1; k >= 0 {
			copied(3*i, 3*k, 3, old.b.ties[k].penalty/t.penalty)
		}
	}
	clear(at)
	for i, t := range old.b.contacts {
		at[joint{nodes: [3]node{names[1][t.node]}}] = i + 1
	}
	off, offOld := 3*len(s.b.ties), 3*len(old.b.ties)
	for i, t := range s.b.contacts {
		if k := at[joint{nodes: [3]node{names[0][t.node]}}] - 1; k >= 0 {
			copied(off+2*i, offOld+2*k, 2, old.b.contacts[k].penalty/t.penalty)
		}
	}
	off, offOld = off+2*len(s.b.contacts), offOld+2*len(old.b.contacts)
	for i := range s.b.struts {
		copied(off+i, offOld+i, 1, 1)
	}
}

// node is what a node is called whatever its mesh: its chain and its row, the side's being -1.
type node struct{ chain, row int }

// names returns what the nodes of a body are called.
func (g *model) names() []node {
	out := make([]node, g.n)
	for k, c := range g.chain {
		for j, i := range c {
			out[i] = node{k, j + 1}
		}
		out[g.edge(k)].row = -1
	}
	for e, i := range g.apex {
		if g.r.Lines[e] > 0 {
			out[i] = node{-1 - e, 0}
		}
	}
	return out
}

// joint is what a tie joins.
type joint struct {
	nodes [3]node
	weft  bool
}

// joins returns what a tie joins.
func (t *tie) joins(names []node) joint {
	out := joint{weft: t.weft}
	n := 0
	for k, i := range t.node {
		if t.part[k] != 0 {
			out.nodes[n] = names[i]
			n++
		}
	}
	return out
}
