package nest

import (
	"context"
	"time"
)

// Options steers a packing. The zero value asks for the first, constructive lay
// without any search.
type Options struct {
	Seed     uint64               // same seed, same lay, as long as Time is 0
	Steps    int                  // steps of the search over all workers, 0 for no bound but Time
	Time     time.Duration        // how long to search, 0 for no bound but Steps
	Clock    func() time.Duration // what Time is measured by, nil for the wall's clock
	Workers  int                  // searches side by side, 0 means 2; another number finds another lay
	Progress func(Progress)       // called with every better lay, by one goroutine at a time; may be nil
	// Start is a lay to begin with where it is shorter than the first one found, such as
	// that of some of the pieces over and over; one that does not lie is not heeded.
	Start []Placement
}

// mostSearched bounds the pieces of a lay that is searched for: what a worker keeps of
// every two of them takes 16 bytes. More stay where they were laid first.
const mostSearched = 1500

// Progress is a report from a running search.
type Progress struct {
	Beds    int     // beds in use, 1 on a strip
	Length  float64 // mm, of the best lay so far, as in Lay
	Density float64 // of the best lay so far
	Elapsed time.Duration
}

// PackStrip lays all copies of the items on the strip, as short as the budget
// allows. It returns a *SizeError for a piece that does not fit across, a *KeptOffError
// for one that fits but for what is kept clear, an *InputError for what cannot be laid
// at all. When ctx is done it returns the
// best lay so far and no error.
func PackStrip(ctx context.Context, items []Item, s Strip, o Options) (Lay, error) {
	return PackBeds(ctx, items, s.bed(), o)
}

// PackBeds lays all copies of the items on as few beds as the budget allows, and
// then uses as little as possible of the last one. Errors and ctx are as for
// [PackStrip].
func PackBeds(ctx context.Context, items []Item, b Bed, o Options) (Lay, error) {
	if start := time.Now(); o.Clock == nil {
		o.Clock = func() time.Duration { return time.Since(start) }
	}
	began := o.Clock()
	p, err := newProblem(items, b)
	if err != nil {
		return Lay{}, err
	}
	p.afford(o)
	spots, err := p.firstLays()
	if err != nil {
		return Lay{}, err
	}
	if begun, lies := p.begun(o.Start); lies && p.lengthOf(begun) < p.lengthOf(spots) {
		spots = begun
	}
	steps := 0
	if (o.Steps > 0 || o.Time > 0) && len(spots) > 0 && len(spots) <= mostSearched {
		t := newTeam(ctx, p, o, spots, p.lengthOf(spots))
		t.began = began
		spots, steps = t.run()
	}
	lay := p.lay(spots)
	lay.Steps = steps
	if err := p.verified(spots); err != nil {
		return Lay{}, err
	}
	return lay, nil
}

// firstLays returns the first lay. Where a piece goes onto no bed, it may be its cover that
// does not, which then keeps to the piece's box.
func (p *problem) firstLays() ([]spot, error) {
	spots, err := p.firstLay()
	if err != nil {
		p.atlas.keepToBoxes()
		p.setBeds(1)
		spots, err = p.firstLay()
	}
	if err == nil && p.grid > 0 && p.verified(spots) != nil {
		p.leaveGrid()
		spots, err = p.firstLay()
	}
	return spots, err
}

// lengthOf returns the right end of spots in the row of beds or on the strip.
func (p *problem) lengthOf(spots []spot) float64 {
	end := 0.0
	for _, s := range spots {
		end = max(end, s.at.X+p.atlas.forms[s.form].size.X)
	}
	return end
}

// verified gives spots to the exact check.
func (p *problem) verified(spots []spot) error {
	b, lay := p.stock, p.lay(spots)
	if p.pitch == 0 {
		b.Width = lay.Length
	}
	return VerifyBeds(p.items, b, lay)
}
