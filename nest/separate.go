package nest

// afford returns sweeps, or fewer where so many would take a tenth of the steps that
// the search has.
func (s *search) afford(sweeps int) int {
	if s.team.each > 0 {
		return min(sweeps, max(s.team.each/(10*s.mover.c.n), 6))
	}
	return sweeps
}

// separate moves pieces until none overlap. It sweeps over the pieces that overlap,
// in random order, and raises the weights of those that stay. After so many sweeps without gain
// it goes back to the best lay seen, weights kept, and after so many rounds of that
// without gain it gives up with the best of all, or at once when stop says that time
// is up. It reports whether all are free.
func (s *search) separate(rounds, sweeps int) bool {
	c := s.mover.c
	c.moves++ // so that a lay that is free from the start spends budget too
	c.resetWeights()
	best := c.totalLoss()
	s.least = append(s.least[:0], c.spots[:c.n]...)
	if s.late() {
		return false // the draft may not know of all overlaps
	}
	for idle := 0; best > 0 && idle < rounds; idle++ {
		from := best
		for still := 0; still < sweeps && best > 0; still++ {
			if s.stop() || s.overtaken() {
				return false
			}
			s.sweep()
			if t := c.totalLoss(); t < best {
				if t < 0.98*best {
					still = 0
				}
				best = t
				s.least = append(s.least[:0], c.spots[:c.n]...)
			}
			c.updateWeights()
		}
		if best < 0.98*from {
			idle = -1
		}
		if best > 0 {
			c.load(s.least, c.length)
		}
	}
	s.cost = best
	return best == 0
}

// overtaken takes part in the team's meeting if it is time, and reports whether a
// lay as short as the one aimed at is known by now.
func (s *search) overtaken() bool {
	if s.mover.c.moves >= s.nextMeeting {
		s.nextMeeting += meetEvery
		s.team.meet(s)
	}
	return s.length <= s.mover.c.length
}

// sweep gives every piece that overlaps, in random order, a chance of a better place.
func (s *search) sweep() {
	c := s.mover.c
	s.order = s.order[:0]
	for i := range c.n {
		if c.overlaps(i) {
			s.order = append(s.order, i)
		}
	}
	s.rng.Shuffle(len(s.order), func(a, b int) { s.order[a], s.order[b] = s.order[b], s.order[a] })
	for _, i := range s.order {
		if s.late() {
			return
		}
		if c.overlaps(i) {
			s.mover.relocate(i)
		}
	}
}
