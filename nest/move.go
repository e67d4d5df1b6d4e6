package nest

import (
	"cmp"
	"math"
	"math/rand/v2"
	"slices"

	"slingloft/outline/geom"
)

const (
	farTries   = 24   // random places all over the stock
	closeTries = 12   // random places near the piece
	closeReach = 0.3  // how near, in sizes of the piece
	finalists  = 3    // places that are refined
	firstStep  = 0.05 // of refinement, in sizes of the piece
	lastStep   = 2e-4
	fineStep   = 1e-5 // the same for the best place
)

// sample is a place with its cost.
type sample struct {
	spot
	cost float64
}

// mover looks for better places for one piece at a time.
type mover struct {
	c     *draft
	rng   *rand.Rand
	best  []sample
	near  []neighbour // of the piece, at any place in reach
	reach geom.Box
}

// relocate moves piece i to the best place found, if that is better than where
// it is by the weighted loss. It samples places at random and refines the
// best of them by descent.
func (m *mover) relocate(i int) {
	c := m.c
	c.moves++
	here := c.weightedLoss(i)
	m.best = m.best[:0]
	m.survey(i, c.spots[i], math.Inf(1))
	poses := c.p.pieces[i].poses
	for range farTries {
		m.offer(m.anywhere(poses[m.rng.IntN(len(poses))].form))
	}
	for range closeTries {
		m.offer(m.nearby(c.spots[i]))
	}
	winner := sample{cost: here}
	for _, t := range m.best {
		if t = m.descend(i, t, firstStep, lastStep); t.cost < winner.cost {
			winner = t
		}
	}
	if winner.cost >= here {
		return
	}
	if winner.cost > 0 {
		winner = m.descend(i, winner, 2*lastStep, fineStep)
	}
	c.move(i, winner.spot)
}

// anywhere returns a random place for a form.
func (m *mover) anywhere(form int) spot {
	room := m.c.room(form)
	return spot{form, geom.Pt(m.rng.Float64()*room.X, m.rng.Float64()*room.Y)}
}

// nearby returns a random place near s.
func (m *mover) nearby(s spot) spot {
	reach := closeReach * m.extent(s)
	s.at.X += float64((float64(2*m.rng.Float64()) - 1) * reach)
	s.at.Y += float64((float64(2*m.rng.Float64()) - 1) * reach)
	return m.c.fit(s)
}

// extent returns the size by which steps of the form of s are measured, in mm.
func (m *mover) extent(s spot) float64 {
	size := m.c.p.atlas.forms[s.form].size
	return size.X + size.Y
}

// offer keeps s if it is among the best so far and not close to a better one.
func (m *mover) offer(s spot) {
	bound := math.Inf(1)
	if len(m.best) == finalists {
		bound = m.best[finalists-1].cost
	}
	t := sample{s, m.c.p.atlas.cost(m.near, s, bound)}
	if t.cost >= bound {
		return
	}
	if k := slices.IndexFunc(m.best, func(o sample) bool { return m.alike(o.spot, s) }); k >= 0 {
		if m.best[k].cost <= t.cost {
			return
		}
		m.best = slices.Delete(m.best, k, k+1)
	}
	m.best = append(m.best, t)
	slices.SortStableFunc(m.best, func(a, b sample) int { return cmp.Compare(a.cost, b.cost) })
	m.best = m.best[:min(len(m.best), finalists)]
}

// alike reports whether descent from s and t would lead to much the same place.
func (m *mover) alike(s, t spot) bool {
	d := s.at.Minus(t.at)
	return s.form == t.form && math.Abs(d.X)+math.Abs(d.Y) < 0.1*m.extent(s)
}

// descend refines t by steps along x, y or a diagonal, longer after a gain,
// halved after a failure, until they are below last sizes of the piece.
func (m *mover) descend(i int, t sample, first, last float64) sample {
	c, size := m.c, m.extent(t.spot)
	step := geom.Pt(first*size, first*size)
	m.survey(i, t.spot, 3*first*size)
	for least := last * size; t.cost > 0 && (step.X > least || step.Y > least); {
		d := step
		axis := m.rng.Uint32() & 3
		switch axis {
		case 0:
			d.Y = 0
		case 1:
			d.X = 0
		case 2:
			d.Y = -d.Y
		}
		by := 0.5
		if axis > 1 {
			by = 0.7071 // a diagonal says half as much about each axis
		}
		for _, to := range [...]geom.Point{t.at.Plus(d), t.at.Minus(d)} {
			s := c.fit(spot{t.form, to})
			if !m.reach.Contains(s.at) {
				m.survey(i, t.spot, 3*max(step.X, step.Y))
			}
			if cost := c.p.atlas.cost(m.near, s, t.cost); cost < t.cost {
				t, by = sample{s, cost}, 1.1
				break
			}
		}
		if axis != 1 {
			step.X *= by
		}
		if axis != 0 {
			step.Y *= by
		}
	}
	return t
}

// survey gathers the neighbours that piece i can meet within reach mm of s.
func (m *mover) survey(i int, s spot, reach float64) {
	m.reach = geom.Box{Min: s.at, Max: s.at}.Expanded(reach)
	box := m.c.p.atlas.box(s).Expanded(reach)
	m.near = m.c.around(m.near[:0], i, box)
}
