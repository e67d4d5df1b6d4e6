package work

import (
	"cmp"
	"context"
	"errors"
	"math"
	"sync"
	"time"

	"slingloft/export"
	"slingloft/nest"
	"slingloft/outline/design"
	"slingloft/outline/geom"
	"slingloft/outline/piece"
	"slingloft/outline/quantity"
)

// Budget bounds the search for a good lay.
type Budget struct {
	Time     time.Duration // to go on beyond the small default, which gives the same lay on every machine
	Seed     uint64
	Progress func(stock string, p nest.Progress) // may be nil
}

// defaultSteps is the search that every lay gets: enough that the pieces of one
// hammock settle, little enough that nobody waits.
const defaultSteps = 1000

// Lays are the finished lays of a plan.
type Lays struct {
	Rolls  []nest.Lay // by roll, as of [Plan.Rolls]: the body's first
	Boards nest.Lay
}

// Rolls returns the cloths that pieces are cut from, the body's first.
func (p *Plan) Rolls() []design.Cloth { return p.Design.Rolls() }

// OnRoll returns the pieces cut from a roll, which a lay of it numbers in this order.
func (p *Plan) OnRoll(roll int) []piece.Piece {
	var out []piece.Piece
	all := p.Sewn.Pieces
	if len(p.laid) > 0 {
		all = p.laid
	}
	for _, q := range all {
		if q.Roll == roll {
			out = append(out, q)
		}
	}
	return out
}

// boards returns the templates and gauges.
func (p *Plan) boards() []piece.Piece { return p.Templates }

// Lay lays the cloth on the roll and the templates on their sheets. A piece that
// does not fit is a fault of the design that names the piece and both sizes.
func (p *Plan) Lay(ctx context.Context, b Budget) (Lays, error) {
	var out Lays
	if b.Time > 0 {
		// One after the other: each has the time to itself.
		rolls, err := p.layRolls(ctx, b)
		if out.Rolls = rolls; err != nil {
			return out, err
		}
		out.Boards, err = p.layBoards(ctx, b)
		return out, err
	}
	var both sync.WaitGroup
	var noBoards error
	both.Go(func() { out.Boards, noBoards = p.layBoards(ctx, b) })
	rolls, err := p.layRolls(ctx, b)
	both.Wait()
	out.Rolls = rolls
	return out, cmp.Or(err, noBoards)
}

// layRolls lays the cloth of each roll.
func (p *Plan) layRolls(ctx context.Context, b Budget) ([]nest.Lay, error) {
	var out []nest.Lay
	for roll := range p.Rolls() {
		pieces := p.OnRoll(roll)
		start := p.pairs(ctx, b, roll)
		lay, err := b.search("cloth", func(o nest.Options) (nest.Lay, error) {
			o.Steps *= max(1, len(p.beds)) // as much for each
			o.Start = start
			return nest.PackStrip(ctx, items(pieces), p.strip(roll), o)
		})
		if err != nil {
			return out, p.misfit(err, p.Design.RollKey(roll).In("width"), pieces)
		}
		out = append(out, lay)
	}
	return out, nil
}

// layBoards lays the templates and gauges, if there are any.
func (p *Plan) layBoards(ctx context.Context, b Budget) (nest.Lay, error) {
	if len(p.boards()) == 0 {
		return nest.Lay{}, nil
	}
	bed, err := p.bed()
	if err != nil {
		return nest.Lay{}, p.located(err)
	}
	lay, err := b.search("sheets", func(o nest.Options) (nest.Lay, error) {
		return nest.PackBeds(ctx, items(p.boards()), bed, o)
	})
	if err != nil {
		return lay, p.misfit(err, design.KeySheetWidth, p.boards())
	}
	return lay, nil
}

// strip is a roll that cloth is laid on. A machine that cuts beside the lines stays
// on it, and off its neighbours.
func (p *Plan) strip(roll int) nest.Strip {
	c, cut := p.Rolls()[roll], 0.0
	if m := p.Design.Machine; m.For.Takes(piece.Cloth) {
		// A knife's tip points anywhere when it goes down: two trails from where it should
		// at worst, and to either side.
		cut = max(m.Cut(), 4*m.Trail)
	}
	s := nest.Strip{Width: c.Width, Gap: max(c.Gap, cut), Margin: max(c.Margin, cut/2)}
	if roll == 0 {
		s.KeepOut = p.blocked(piece.Cloth, geom.Point{}, c.Flaws)
	}
	return s
}

// bed is a sheet within its frame.
func (p *Plan) bed() (nest.Bed, error) {
	s := p.Design.Sheet
	frame, err := export.Within(s.Width, s.Height)
	return nest.Bed{Width: frame.Lay.Width(), Height: frame.Lay.Height(), Gap: s.Gap + s.Kerf, Margin: s.Margin,
		KeepOut: p.blocked(piece.Board, frame.Lay.Min, nil)}, err
}

// Verify checks both lays piece by piece and returns what is wrong with either.
func (p *Plan) Verify(l Lays) (cloth, boards error) {
	for roll, lay := range l.Rolls {
		cloth = cmp.Or(cloth, p.verifyRoll(roll, lay))
	}
	return cloth, p.verifyBoards(l.Boards)
}

func (p *Plan) verifyRoll(roll int, l nest.Lay) error {
	return nest.Verify(items(p.OnRoll(roll)), p.strip(roll), l)
}

func (p *Plan) verifyBoards(l nest.Lay) error {
	bed, err := p.bed()
	if err != nil {
		return err
	}
	return nest.VerifyBeds(items(p.boards()), bed, l)
}

// search lays one stock by the default steps and then, for what is left of half the
// time, from a new start: a time asked for never gives a worse lay than none.
func (b Budget) search(stock string, pack func(nest.Options) (nest.Lay, error)) (nest.Lay, error) {
	o := nest.Options{Seed: b.Seed, Steps: defaultSteps}
	best := taken{math.MaxInt, 0}
	if b.Progress != nil {
		o.Progress = func(p nest.Progress) {
			if now := (taken{p.Beds, p.Length}); now.less(best) {
				best = now
				b.Progress(stock, p)
			}
		}
	}
	began := time.Now()
	lay, err := pack(o)
	o.Steps, o.Time = 0, b.Time/2-time.Since(began)
	if err != nil || o.Time <= 0 {
		return lay, err
	}
	if now := (taken{lay.Beds, lay.Length}); now.less(best) {
		best = now
	}
	if longer, err := pack(o); err == nil && (taken{longer.Beds, longer.Length}).less(taken{lay.Beds, lay.Length}) {
		return longer, nil
	}
	return lay, nil
}

// taken is what a lay takes of its stock: so many beds, and of the last, or of the
// roll, this length in mm.
type taken struct {
	beds   int
	length float64
}

func (t taken) less(o taken) bool {
	return t.beds < o.beds || t.beds == o.beds && t.length < o.length
}

// items returns the pieces as the packer takes them.
func items(pieces []piece.Piece) []nest.Item {
	var out []nest.Item
	for _, p := range pieces {
		it := nest.Item{Outline: p.Cut, Holes: p.Holes, Demand: p.Count, Turns: []float64{0}, Paired: p.Paired}
		if !p.OneWay {
			it.Turns = append(it.Turns, math.Pi)
		}
		if p.FreeGrain {
			it.Turns = []float64{0, math.Pi / 2, math.Pi, 3 * math.Pi / 2}
		}
		out = append(out, it)
	}
	return out
}

// misfit turns a packer's refusal into a fault of the design.
func (p *Plan) misfit(err error, key design.Key, pieces []piece.Piece) error {
	var off *nest.KeptOffError
	if errors.As(err, &off) {
		return p.Fault(key, design.Found(design.PieceKeptOff, pieces[off.Item].ID), design.Say(design.ClearLess))
	}
	var size *nest.SizeError
	if !errors.As(err, &size) || size.Item >= len(pieces) {
		return invalid(err, pieces)
	}
	piece := pieces[size.Item]
	box := piece.Cut.Bounds()
	long := func(v float64) string { return p.source.Length(key, v, quantity.Up) }
	found := design.Found(design.PieceTooLarge, piece.ID, long(box.Width()), long(box.Height()))
	if key == design.KeySheetWidth {
		return p.narrowBed(size, found)
	}
	need := box.Height() + 2*p.Rolls()[piece.Roll].Margin
	if piece.Roll > 0 {
		return design.Faults{p.source.Fault(key, found, design.Say(design.FurtherRollWouldDo, long(need)))}
	}
	return design.Faults{p.source.Fault(key, found, design.Say(design.ClothWouldDo, long(need)))}
}
