package nest

import (
	"context"
	"math"
	"time"
)

// Options steers a packing. The zero value asks for the first, constructive lay
// without any search.
type Options struct {
	Seed     uint64         // same seed, same lay, as long as Time is 0
	Steps    int            // steps of the search over all workers, 0 for no bound but Time
	Time     time.Duration  // how long to search, 0 for no bound but Steps
	Workers  int            // searches side by side, 0 means 2; another number finds another lay
	Progress func(Progress) // told of every better lay, from one goroutine at a time; may be nil
}

// Progress is a report from a running search.
type Progress struct {
	Beds    int     // beds in use, 1 on a strip
	Length  float64 // mm, of the best lay so far, as in Lay
	Density float64 // of the best lay so far
	Elapsed time.Duration
}

// PackStrip lays all copies of the items on the strip, as short as the budget
// allows. It returns a *SizeError for a piece that does not fit across, an
// *InputError for what cannot be laid at all. When ctx is done it returns the
// best lay so far and no error.
func PackStrip(ctx context.Context, items []Item, s Strip, o Options) (Lay, error) {
	return pack(ctx, items, s.ground(), o)
}

// PackBeds lays all copies of the items on as few beds as the budget allows, and
// then uses as little as possible of the last one. Errors and ctx are as for
// [PackStrip].
func PackBeds(ctx context.Context, items []Item, b Bed, o Options) (Lay, error) {
	return pack(ctx, items, b.ground(), o)
}

func pack(ctx context.Context, items []Item, g ground, o Options) (Lay, error) {
	p, err := newProblem(items, g)
	if err != nil {
		return Lay{}, err
	}
	spots := p.firstLay()
	lay := p.lay(spots)
	if err := p.verified(items, g, lay); err != nil {
		return Lay{}, err
	}
	return lay, nil
}

// verified checks lay against the stock it was made for.
func (p *problem) verified(items []Item, g ground, lay Lay) error {
	if math.IsInf(g.width, 1) {
		g.width = lay.Length
	}
	return verify(items, g, lay)
}
