package nest

import (
	"fmt"
	"math"

	"slingloft/nest/exact"
	"slingloft/outline/geom"
)

// slack is how far, as a fraction of the stock's width, a gap or a margin may
// fall short of the wish: rounding of coordinates, no more. Overlap of two
// pieces and reaching past the stock's own edge are judged without any slack.
const slack = 1e-9

// LayError names the placements that break the promise of a lay.
type LayError struct {
	Item, Copy           int
	OtherItem, OtherCopy int // item and copy of the second piece; −1 where there is none
	Breach               Breach
}

// Breach is what a placement does that it may not.
type Breach int

// The breaches of a lay.
const (
	NotAsked    Breach = iota // there is no such piece, or it lies twice
	NotPlaced                 // the piece lies nowhere
	NotFinite                 // it lies at no finite place
	Mirrored                  // although it may not be, or the reverse
	Turned                    // by an angle that is not allowed
	PastEdge                  // it reaches past the edge
	OnKeepOut                 // it covers a keep-out area
	Overlapping               // two overlap
	TooClose                  // two lie closer than the gap
	BreachCount               // how many there are
)

// String returns what it is called in an error.
func (b Breach) String() string {
	return [BreachCount]string{"not asked for, or placed twice", "not placed", "not at a finite place",
		"mirrored although it may not be, or the reverse", "turned by an angle that is not allowed", "reaches past the edge",
		"covers a keep-out area", "overlap", "closer than the gap"}[b]
}

func (e *LayError) Error() string {
	if e.OtherItem < 0 {
		return fmt.Sprintf("item %d copy %d: %s", e.Item, e.Copy, e.Breach)
	}
	return fmt.Sprintf("item %d copy %d and item %d copy %d: %s", e.Item, e.Copy, e.OtherItem, e.OtherCopy, e.Breach)
}

// Verify checks a lay on a strip: every copy of every item placed once in an
// allowed turn, inside the margins of the strip and of the lay's own length,
// clear of the keep-out areas, no two overlapping, the gap kept. It knows
// nothing of the search: it works on the outlines as given, with the exact
// predicates of package exact. The first fault found is returned as a *LayError.
func Verify(items []Item, s Strip, lay Lay) error {
	b := s.bed()
	b.Width = lay.Length
	return VerifyBeds(items, b, lay)
}

// VerifyBeds checks a lay on beds in the same way as [Verify] does.
func VerifyBeds(items []Item, b Bed, lay Lay) error {
	if err := complete(items, lay); err != nil {
		return err
	}
	all := make([]laid, 0, len(lay.Placements))
	for _, p := range lay.Placements {
		l := laid{Placement: p}
		for _, r := range items[p.Item].rings() {
			l.rings = append(l.rings, r.Moved(p.Motion))
		}
		l.box = l.rings[0].Bounds()
		if err := alone(items[p.Item], b, l); err != nil {
			return err
		}
		all = append(all, l)
	}
	for i := range all {
		for j := range i {
			if err := apart(all[j], all[i], b); err != nil {
				return err
			}
		}
	}
	return nil
}

// laid is a piece in its place.
type laid struct {
	Placement
	rings []geom.Ring
	box   geom.Box
}

// complete checks that every copy is placed just once.
func complete(items []Item, lay Lay) error {
	type key struct{ item, copy int }
	seen := map[key]bool{}
	for _, p := range lay.Placements {
		k := key{p.Item, p.Copy}
		if p.Item < 0 || p.Item >= len(items) || p.Copy < 0 || p.Copy >= items[p.Item].Demand || seen[k] {
			return &LayError{p.Item, p.Copy, -1, 0, NotAsked}
		}
		seen[k] = true
	}
	for i, it := range items {
		for c := range it.Demand {
			if !seen[key{i, c}] {
				return &LayError{i, c, -1, 0, NotPlaced}
			}
		}
	}
	return nil
}

// alone checks one piece against its allowed turns, the edges and the keep-outs.
func alone(it Item, b Bed, l laid) error {
	fault := func(b Breach) error { return &LayError{l.Item, l.Copy, -1, 0, b} }
	if !l.box.Min.Finite() || !l.box.Max.Finite() {
		return fault(NotFinite)
	}
	if l.Motion.Mirror != it.mirrored(l.Copy) {
		return fault(Mirrored)
	}
	if !it.allows(l.Motion.Turn) {
		return fault(Turned)
	}
	stock := geom.Box{Max: geom.Pt(b.Width, b.Height)}
	if !stock.ContainsBox(l.box) || !stock.Expanded(float64(slack*b.Height)-b.Margin).ContainsBox(l.box) {
		return fault(PastEdge)
	}
	for _, k := range b.KeepOut {
		if l.box.Overlaps(k) && exact.Overlap(l.rings, []geom.Ring{k.Ring()}) {
			return fault(OnKeepOut)
		}
	}
	return nil
}

// allows reports whether the item may be turned by turn.
func (it Item) allows(turn float64) bool {
	if it.Free {
		return true
	}
	if len(it.Turns) == 0 {
		return turn == 0
	}
	for _, t := range it.Turns {
		if math.Abs(math.Remainder(turn-t, 2*math.Pi)) < 1e-12 {
			return true
		}
	}
	return false
}

// apart checks that two pieces keep clear of each other.
func apart(l, m laid, b Bed) error {
	if l.Bed != m.Bed || !l.box.Expanded(b.Gap).Overlaps(m.box) {
		return nil
	}
	fault := func(b Breach) error { return &LayError{l.Item, l.Copy, m.Item, m.Copy, b} }
	if l.box.Overlaps(m.box) && exact.Overlap(l.rings, m.rings) {
		return fault(Overlapping)
	}
	if b.Gap > 0 && exact.Distance(l.rings, m.rings, b.Gap) < b.Gap-float64(slack*b.Height) {
		return fault(TooClose)
	}
	return nil
}
