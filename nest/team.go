package nest

import (
	"context"
	"slices"
	"sync"
	"time"
)

// meetEvery is how many steps a worker takes between two meetings: some tenths
// of a second, long against the wait for the slower one.
const meetEvery = 4000

// team is what the workers of one packing share. Each searches on its own; at
// meetings after a set number of steps they are given the shortest lay that any of
// them has. What a worker does thus depends on steps alone and not on who is
// faster, unless a time budget ends the search.
type team struct {
	ctx   context.Context
	o     Options
	p     *problem
	began time.Duration // by the clock
	each  int           // steps for every worker, 0 for no bound

	mu       sync.Mutex
	turn     *sync.Cond
	active   int // workers that have not left
	waiting  int // of them, at the meeting
	meetings int
	workers  []*search
	best     []spot // as of the last meeting
	length   float64
	shown    float64 // length last reported
	bound    float64 // length that no lay can beat
	breath   breath
}

// newTeam makes the workers for p, all starting from spots of the given length.
func newTeam(ctx context.Context, p *problem, o Options, spots []spot, length float64) *team {
	n := o.Workers
	if n <= 0 {
		n = 2
	}
	t := &team{ctx: ctx, o: o, p: p, active: n, best: spots, length: length, shown: length, bound: p.bound()}
	if start := time.Now(); t.o.Clock == nil {
		t.o.Clock = func() time.Duration { return time.Since(start) }
	}
	t.began = t.o.Clock()
	t.turn = sync.NewCond(&t.mu)
	t.each = (o.Steps + n - 1) / n
	for id := range n {
		t.workers = append(t.workers, newSearch(p, t, id, spots, length))
	}
	return t
}

// run lets all workers run and returns the shortest lay with the steps taken.
func (t *team) run() (spots []spot, steps int) {
	var wg sync.WaitGroup
	for _, s := range t.workers {
		wg.Go(func() {
			s.run()
			t.leave()
		})
	}
	wg.Wait()
	t.gather()
	for _, s := range t.workers {
		steps += s.mover.c.moves
	}
	return t.best, steps
}

// gather takes over the shortest lay of all workers, that of the first of equals.
func (t *team) gather() {
	for _, s := range t.workers {
		if s.length < t.length {
			t.best, t.length = slices.Clone(s.best), s.length
		}
	}
}

// meet waits for all other workers and tells s of the shortest lay.
func (t *team) meet(s *search) {
	t.mu.Lock()
	defer t.mu.Unlock()
	t.waiting++
	t.closeMeeting()
	for n := t.meetings; n == t.meetings && t.waiting > 0; {
		t.turn.Wait()
	}
	if t.length < s.length {
		copy(s.best, t.best)
		s.length = t.length
	}
}

// closeMeeting ends the meeting if all who are still active have come.
func (t *team) closeMeeting() {
	if t.waiting > 0 && t.waiting == t.active {
		t.gather()
		t.waiting = 0
		t.meetings++
		t.turn.Broadcast()
	}
}

// leave takes a worker that has spent its budget off the list.
func (t *team) leave() {
	t.mu.Lock()
	defer t.mu.Unlock()
	t.active--
	t.closeMeeting()
}

// report tells the caller of a lay shorter than any reported before.
func (t *team) report(length float64, spots []spot) {
	if t.o.Progress == nil {
		return
	}
	t.mu.Lock()
	defer t.mu.Unlock()
	if length < t.shown {
		t.shown = length
		lay := t.p.lay(spots)
		t.o.Progress(Progress{lay.Beds, lay.Length, lay.Density, t.elapsed()})
	}
}

// elapsed returns how long the search has gone on, by the clock.
func (t *team) elapsed() time.Duration { return t.o.Clock() - t.began }

// share returns the part of the budget that is spent, 0 to 1.
func (s *search) share() float64 {
	part := 0.0
	if s.team.each > 0 {
		part = float64(s.mover.c.moves) / float64(s.team.each)
	}
	if s.team.o.Time > 0 {
		part = max(part, float64(s.team.elapsed())/float64(s.team.o.Time))
	}
	return min(part, 1)
}

// late reports whether the search is to end at once: its time is spent, or nobody waits
// for it any more. Steps alone end it where the pieces have been gone through.
func (s *search) late() bool {
	return s.team.o.Time > 0 && s.team.elapsed() >= s.team.o.Time || s.team.ctx.Err() != nil
}

// stop reports whether the search is to end: the budget is spent, nobody waits
// for it any more, or there is nothing left to gain.
func (s *search) stop() bool {
	s.team.breath.breathe()
	return s.share() >= 1 || s.team.ctx.Err() != nil || s.length <= s.team.bound*(1+1e-9)
}
