package nest

import (
	"cmp"
	"math"
	"math/rand/v2"
	"slices"

	"slingloft/outline/geom"
)

const (
	firstCut     = 0.02  // of the length, while the search is young
	leastCut     = 0.001 // below which it perturbs lays instead of asking for less
	searchShare  = 0.8   // of the budget; the rest goes into compression
	compressFrom = 5e-4  // cut at the start of compression
	compressTo   = 1e-5  // cut at its end
	poolSize     = 12    // failed lays that are remembered
)

// failed is a lay that could not be freed of overlaps at the wanted length.
type failed struct {
	spots []spot
	cost  float64
}

// search is one worker's search for a shorter lay.
type search struct {
	p     *problem
	rng   *rand.Rand
	mover mover
	team  *team

	nextMeeting int // in steps

	best   []spot // free of overlaps
	length float64
	least  []spot // what separate came closest with
	cost   float64
	pool   []failed
	order  []int
}

// newSearch returns worker id of a team, starting from spots of the given length.
func newSearch(p *problem, t *team, id int, spots []spot, length float64) *search {
	rng := rand.New(rand.NewPCG(t.o.Seed, uint64(id)))
	s := &search{p: p, rng: rng, team: t, best: slices.Clone(spots), length: length, nextMeeting: meetEvery}
	s.mover = mover{c: newDraft(p), rng: rng}
	s.mover.c.late = s.late
	return s
}

// run searches and then compresses until the budget is spent, or no shorter lay
// can exist.
func (s *search) run() {
	s.dropBeds()
	cut := firstCut
	for s.share() < searchShare && !s.stop() {
		target := s.target(cut)
		s.shrink(target)
		before := s.mover.c.moves
		switch {
		case s.separate(2, s.afford(120)) && s.accept():
			if s.mover.c.moves-before < 40*s.mover.c.n {
				cut = min(cut*1.4, firstCut)
			} else {
				cut = max(cut*0.7, leastCut)
			}
		case s.length <= target: // another worker was faster
		case cut > leastCut:
			cut = max(cut*0.4, leastCut)
		default:
			s.perturb(target)
		}
	}
	s.compress()
}

// dropBeds tries to do with one bed less, over and over, as long as the area allows
// and the search is not half done.
func (s *search) dropBeds() {
	for s.share() < searchShare/2 && !s.stop() {
		start := s.p.bedStart(s.length)
		target := start - s.p.wallWidth()
		if start <= 0 || s.p.bound() >= target {
			return
		}
		s.shrink(target)
		if s.separate(3, s.afford(60)) {
			s.accept()
		}
	}
}

// target returns the length to ask for: the part cut less on the strip or the
// last bed, or without that bed if nothing could lie on what is left of it.
func (s *search) target(cut float64) float64 {
	start := s.p.bedStart(s.length)
	t := s.length - float64(cut*(s.length-start))
	if start > 0 && t-start < s.p.narrowest() {
		return start - s.p.wallWidth()
	}
	return t
}

// perturb keeps trying for target from lays that failed before, with two pieces
// swapped, until one comes free or a shorter lay is known.
func (s *search) perturb(target float64) {
	s.pool = s.pool[:0]
	for !s.stop() && s.share() < searchShare {
		s.keepFailed()
		from := s.pool[s.pick(len(s.pool))]
		s.mover.c.load(from.spots, target)
		s.swap()
		if s.separate(2, s.afford(120)) && s.accept() || s.length <= target {
			return
		}
	}
}

// keepFailed puts the lay that separate came closest with into the pool.
func (s *search) keepFailed() {
	s.pool = append(s.pool, failed{slices.Clone(s.least), s.cost})
	slices.SortStableFunc(s.pool, func(a, b failed) int { return cmp.Compare(a.cost, b.cost) })
	if len(s.pool) > poolSize {
		s.pool = s.pool[:poolSize]
	}
}

// pick returns an index below n, small ones more often.
func (s *search) pick(n int) int {
	return min(int(math.Abs(s.rng.NormFloat64())*0.35*float64(n)), n-1)
}

// swap exchanges the places of two pieces of different form, large ones more often.
func (s *search) swap() {
	c := s.mover.c
	a, b := s.large(), s.large()
	for range 20 {
		if c.spots[a].form != c.spots[b].form {
			break
		}
		b = s.large()
	}
	atA, atB := c.spots[a], c.spots[b]
	half := s.middle(b).Minus(s.middle(a))
	c.move(a, c.fit(spot{atA.form, atB.at.Plus(half)}))
	c.move(b, c.fit(spot{atB.form, atA.at.Minus(half)}))
}

// large returns a random piece, the largest of three.
func (s *search) large() int {
	c := s.mover.c
	best := s.rng.IntN(c.n)
	for range 2 {
		if k := s.rng.IntN(c.n); c.area(k) > c.area(best) {
			best = k
		}
	}
	return best
}

// middle returns the middle of piece i, as seen from its corner.
func (s *search) middle(i int) geom.Point {
	return s.p.atlas.forms[s.mover.c.spots[i].form].size.Times(0.5)
}

// compress asks for ever smaller gains from the best lay.
func (s *search) compress() {
	start := s.share()
	for !s.stop() {
		t := min(max((s.share()-start)/(1-start), 0), 1)
		// Single precision: processors differ in the last bits of a power.
		cut := float64(float32(compressFrom * math.Pow(compressTo/compressFrom, t)))
		s.shrink(s.target(cut))
		if s.separate(3, s.afford(50)) {
			s.accept()
		}
	}
}

// shrink loads the best lay at the length given: what stands right of a random
// line moves left by what is cut off. Pieces of a bed that is gone go anywhere.
func (s *search) shrink(target float64) {
	c := s.mover.c
	c.length = target
	start := s.p.bedStart(s.length)
	line := start + float64(s.rng.Float64()*(s.length-start))
	spots := slices.Clone(s.best)
	for i := range spots {
		at := &spots[i].at
		switch {
		case at.X >= start && start > target:
			spots[i] = s.mover.anywhere(spots[i].form)
		case at.X > line:
			at.X = max(at.X-s.length+target, start)
		}
		spots[i] = c.fit(spots[i])
	}
	c.load(spots, target)
}

// accept makes the draft, free of overlaps, the best lay, unless the exact check
// or a shorter lay known by now stands against it.
func (s *search) accept() bool {
	if !s.settle() {
		return false
	}
	spots := s.mover.c.spots[:s.mover.c.n]
	end := s.p.lengthOf(spots)
	if end >= s.length || s.p.verified(spots) != nil {
		return false
	}
	copy(s.best, spots)
	s.length = end
	s.team.report(end, s.best)
	return true
}
