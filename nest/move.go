package nest

import (
	"math/rand/v2"

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

// try is a place with its cost.
type try struct {
	spot
	cost float64
}

// mover looks for better places for one piece at a time.
type mover struct {
	c    *crowd
	rng  *rand.Rand
	best [finalists]try
	near vicinity
	kept int
}

// relocate moves piece i to the best place found, if that is better than where
// it is by the weighted badness. It samples places at random and refines the
// best of them by descent.
func (m *mover) relocate(i int) {
	m.c.moves++
	here := m.c.costHere(i)
	m.kept = 0
	poses := len(m.c.p.pieces[i].poses)
	for range farTries {
		m.offer(i, m.anywhere(i, m.rng.IntN(poses)))
	}
	for range closeTries {
		m.offer(i, m.nearby(i))
	}
	winner := try{cost: here}
	for k := range m.kept {
		t := m.descend(i, m.best[k], firstStep, lastStep)
		if t.cost < winner.cost {
			winner = t
		}
	}
	if winner.cost >= here {
		return
	}
	if winner.cost > 0 {
		winner = m.descend(i, winner, 2*lastStep, fineStep)
	}
	m.c.move(i, winner.spot)
}

// room returns how far right and up the corner of a form may go.
func (c *crowd) room(f int) (x, y float64) {
	return max(c.length-c.w[f], 0), max(c.p.height+c.ease-c.h[f], 0)
}

// anywhere returns a random place for piece i in the pose given.
func (m *mover) anywhere(i, pose int) spot {
	x, y := m.c.room(m.c.formOf(i, pose))
	return spot{pose, geom.Pt(m.rng.Float64()*x, m.rng.Float64()*y)}
}

// nearby returns a random place near that of piece i, in the same pose.
func (m *mover) nearby(i int) spot {
	s := m.c.spots[i]
	f := m.c.formOf(i, s.pose)
	x, y := m.c.room(f)
	reach := closeReach * (m.c.w[f] + m.c.h[f])
	s.at.X = min(max(s.at.X+float64((float64(2*m.rng.Float64())-1)*reach), 0), x)
	s.at.Y = min(max(s.at.Y+float64((float64(2*m.rng.Float64())-1)*reach), 0), y)
	return s
}

// offer keeps s if it is among the best so far and not close to a better one.
func (m *mover) offer(i int, s spot) {
	bound := 1e300
	if m.kept == finalists {
		bound = m.best[finalists-1].cost
	}
	f := m.c.formOf(i, s.pose)
	cost := m.c.cost(i, f, s.at.X, s.at.Y, bound)
	if cost >= bound {
		return
	}
	alike := 0.1 * (m.c.w[f] + m.c.h[f])
	at := m.kept
	for k := range m.kept {
		o := m.best[k]
		if o.pose == s.pose && abs(o.at.X-s.at.X)+abs(o.at.Y-s.at.Y) < alike {
			if o.cost <= cost {
				return
			}
			at = k
			break
		}
	}
	if at == m.kept {
		if m.kept < finalists {
			m.kept++
		} else {
			at = finalists - 1
		}
	}
	for ; at > 0 && m.best[at-1].cost > cost; at-- {
		m.best[at] = m.best[at-1]
	}
	m.best[at] = try{s, cost}
}

func abs(x float64) float64 { return max(x, -x) }

// descend refines t by steps along x, y or a diagonal, longer after a gain,
// halved after a failure, until they are below last sizes of the piece.
func (m *mover) descend(i int, t try, first, last float64) try {
	c := m.c
	f := c.formOf(i, t.pose)
	size := c.w[f] + c.h[f]
	roomX, roomY := c.room(f)
	stepX, stepY := first*size, first*size
	m.near.survey(c, i, f, t.at, 3*first*size)
	for least := last * size; t.cost > 0 && (stepX > least || stepY > least); {
		dx, dy := stepX, stepY
		axis := m.rng.Uint32() & 3
		switch axis {
		case 0:
			dy = 0
		case 1:
			dx = 0
		case 2:
			dy = -dy
		}
		won := false
		for range 2 {
			x, y := min(max(t.at.X+dx, 0), roomX), min(max(t.at.Y+dy, 0), roomY)
			if !m.near.reach.Contains(geom.Pt(x, y)) {
				m.near.survey(c, i, f, t.at, 3*max(stepX, stepY))
			}
			if cost := m.near.cost(x, y, t.cost); cost < t.cost {
				t.cost, t.at = cost, geom.Pt(x, y)
				won = true
				break
			}
			dx, dy = -dx, -dy
		}
		by := 0.5
		if won {
			by = 1.1
		}
		switch axis {
		case 0:
			stepX *= by
		case 1:
			stepY *= by
		default:
			// A diagonal says half as much about each axis.
			if !won {
				by = 0.7071
			}
			stepX *= by
			stepY *= by
		}
	}
	return t
}
