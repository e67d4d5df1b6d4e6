package work

import (
	"crypto/sha256"
	"errors"
	"fmt"
	"math"
	"slices"
	"sync"

	"slingloft/outline/design"
	"slingloft/outline/flat"
	"slingloft/outline/hung"
	"slingloft/outline/level"
	"slingloft/outline/quantity"
	"slingloft/outline/rig"
)

// steepestWall is how steep the walls may stand in a bed that is made level from the cloth
// as it hangs, rad: past it a girth hardly lowers the bed any more.
const steepestWall = 85 * math.Pi / 180

// Leveled is what came of the bed's cut again from the cloth as it hangs.
type Leveled struct {
	level.Closed
	// Round says that the cloth was hung in the round section of the design, since the
	// weight is spread evenly and nothing says what lies there.
	Round bool
	Was   flat.Body // before
}

// EndSeams returns by how much each end's seam became longer, mm flat, by [hung.End].
func (l *Leveled) EndSeams(now *flat.Body) (by [2]float64) {
	for e := range by {
		by[e] = now.Ends[e].FlatLength() - l.Was.Ends[e].FlatLength()
	}
	return by
}

// leveled cuts the body again from the cloth as it hangs, where the design asks for that.
func (p *Plan) leveled(with Setting) error {
	if p.Design.Bed.Level != design.ByHung {
		return nil
	}
	var err error
	if p.Place, p.Hangs, err = rig.Of(&p.Shape, p.Design.Hang); err != nil {
		return err
	}
	if err = p.closed(with); err != nil {
		return err
	}
	if found, bad := p.unleveled(); bad {
		hint, err := p.shorter(with)
		if err != nil {
			return err
		}
		return p.Fault(design.KeyBedLevel, found, hint)
	}
	p.Body = p.Body.Recut(p.Leveled.Times)
	return nil
}

// closed runs the loop and keeps what came of it, level or not.
func (p *Plan) closed(with Setting) error {
	out := Draped{Draping: Draping{Round: p.Design.Load.Model == design.Even}}
	q := level.Problem{Bottom: p.Shape.Problem.Bottom, Watch: with.Leveling}
	q.Pattern, q.Rig = p.draped(&out)
	q.Stiffness = p.limp(&out)
	// The simulation takes stations for places along the cloth.
	q.From, q.To = out.Crown, out.Soles
	if out.Round {
		breaks := out.Load.Breaks()
		q.From, q.To = breaks[0], breaks[len(breaks)-1]
	}
	p.Leveled = &Leveled{Round: out.Round, Was: p.Body}
	var err error
	if p.Leveled.Closed, err = with.Closed.close(q); errors.Is(err, level.ErrOpen) {
		return nil
	}
	return err
}

// Closings keep the last loops that were closed, so that a design is not hung again for a
// change of a value that has nothing to do with it. The zero value keeps none yet; nil keeps
// none at all.
type Closings struct {
	mu   sync.Mutex
	last []closing
}

// closing is a loop by what went into it.
type closing struct {
	of  [sha256.Size]byte
	got level.Closed
	err error
}

// kept is how many loops are kept: own choice, some megabytes each.
const kept = 4

// close is [level.Close], or what came of it before.
func (c *Closings) close(q level.Problem) (level.Closed, error) {
	if c == nil {
		return level.Close(q)
	}
	of := digestOf(q)
	c.mu.Lock()
	i := slices.IndexFunc(c.last, func(l closing) bool { return l.of == of })
	if i >= 0 {
		defer c.mu.Unlock()
		return c.last[i].got, c.last[i].err
	}
	c.mu.Unlock()
	got, err := level.Close(q)
	if err != nil && !errors.Is(err, level.ErrOpen) {
		return got, err
	}
	c.mu.Lock()
	defer c.mu.Unlock()
	c.last = append(c.last[max(0, len(c.last)-kept+1):], closing{of, got, err})
	return got, err
}

// digestOf returns a digest of all that a loop hangs on; functions by their values along the
// side.
func digestOf(q level.Problem) [sha256.Size]byte {
	h := sha256.New()
	r := q.Rig
	radius, bottom, body := r.Radius, q.Bottom, r.Body
	fmt.Fprintf(h, "%x %x %x %x %x %x %x", q.Pattern, r.Bars, r.Legs, r.Apex, r.Load, r.Lines, r.Anchors)
	fmt.Fprintf(h, "%x %x %x %x %x", r.Cloth, r.BarWeight, q.Stiffness, q.From, q.To)
	for _, at := range q.Pattern.Side {
		fmt.Fprintf(h, "%x %x", radius(at.X), bottom(at.X))
		if body != nil {
			breadth, depth := body.Round(at.X)
			fmt.Fprintf(h, "%x %x", breadth, depth)
		}
	}
	if body != nil {
		fmt.Fprintf(h, "%x", body.Joints)
	}
	return [sha256.Size]byte(h.Sum(nil))
}

// unleveled returns what keeps the cut from being made level, and whether anything does.
func (p *Plan) unleveled() (design.Finding, bool) {
	a := p.Leveled.After
	limit, _ := p.locking()
	const degree = math.Pi / 180
	switch {
	case !a.Level():
		return design.Found(design.LevelOpen, a.Under, a.Whole, level.Under, level.Else), true
	case a.Shear > limit:
		return design.Found(design.LevelSheared, a.Shear/degree, limit/degree), true
	case a.Wall > steepestWall:
		return design.Found(design.LevelWall, a.Wall/degree, steepestWall/degree), true
	}
	return design.Finding{}, false
}

// tailSteps is into how many parts the lengths of long tails are divided to try which of them
// the loop closes with: each takes seconds.
const tailSteps = 3

// shorter returns what would do in place of a cut that cannot be made level: the longest
// tails, of those tried, or the other way of leveling.
func (p *Plan) shorter(with Setting) (design.Phrase, error) {
	bed := p.Design.Bed
	sleeper := p.Design.Sleeper
	if max(bed.HeadTail, bed.FootTail) <= longTail {
		return design.Say(design.MadeWouldDo), nil // tails as short are not to blame
	}
	least := [2]float64{-sleeper.Crown, sleeper.Crown + sleeper.Stature - bed.Span}
	for k := tailSteps - 1; k > 0; k-- {
		part := float64(k) / tailSteps
		q := *p
		q.Design.Bed.HeadTail = math.Floor(max(part*bed.HeadTail, least[hung.Head]))
		q.Design.Bed.FootTail = math.Floor(max(part*bed.FootTail, least[hung.Foot]))
		ok, err := q.closes(with)
		if err != nil {
			return design.Phrase{}, err
		}
		if ok {
			say := func(key design.Key, mm float64) string { return p.source.Length(key, mm, quantity.Down) }
			return design.Say(design.TailsWouldDo, say(design.KeyBedHeadTail, q.Design.Bed.HeadTail),
				say(design.KeyBedFootTail, q.Design.Bed.FootTail)), nil
		}
	}
	return design.Say(design.MadeWouldDo), nil
}

// closes reports whether the loop closes for the plan's design. The error is that of whoever
// watches.
func (p *Plan) closes(with Setting) (bool, error) {
	if p.laidFlat() != nil {
		return false, nil
	}
	var err error
	if p.Place, p.Hangs, err = rig.Of(&p.Shape, p.Design.Hang); err != nil {
		return false, nil
	}
	if err = p.closed(with); err != nil {
		return false, err
	}
	_, bad := p.unleveled()
	return !bad, nil
}
