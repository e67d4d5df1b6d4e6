package work

import (
	"context"
	"errors"
	"math"
	"runtime"
	"sync"
	"sync/atomic"

	"slingloft/outline/design"
	"slingloft/outline/finished"
	"slingloft/outline/hung"
	"slingloft/outline/margin"
	"slingloft/outline/rig"
	"slingloft/outline/room"
	"slingloft/outline/state"
)

// Axis is a key of a design with the values that it is to have in turn, as its file
// would have them.
type Axis struct {
	Key    design.Key
	Values []string
}

// MostVariants bounds how many variants are made at once: own choice, some ten seconds.
const MostVariants = 200

// Variant is a design with other values of a key or two, and what comes of them.
type Variant struct {
	Values []string       // by axis
	Now    bool           // they are those of the design as it stands
	Lies   design.Posture // how its sleeper lies
	Buys   Buys
	Err    error // why there is no such bed; Buys is then 0
}

// Buys is what a bed is like to lie in, to carry and to pay for. The bed is the one that
// is made, under its sleeper.
type Buys struct {
	Room   room.Room      // lying
	Level  finished.Level // lying
	Turn   float64        // of the bed with the sleeper [state.AtEdge] aside, rad; π where it turns over
	Hang   [2]float64     // hang lines above the level, lying, by [hung.End], rad
	Line   float64        // largest pull in a hang line, N
	Side   float64        // in a side cord, N
	Bar    float64        // largest thrust along a bar, N
	Least  margin.Check   // nearest to what it requires; a capacity of 0: none is known
	Length float64        // from apex to apex, mm
	Mass   float64        // of what is known, g
	Cloth  float64        // area of the pieces, mm²
}

// Vary returns the design with every value of an axis or two, the values of the last in
// the innermost round. The error is of the file or of the context; what is wrong with a
// variant stands with it. It works on all processors; its result does not hang on them.
func Vary(ctx context.Context, name string, data []byte, with Setting, axes []Axis) ([]Variant, error) {
	text, err := design.OpenText(name, data)
	if err != nil {
		return nil, err
	}
	all := combined(axes)
	var next atomic.Int64
	var wait sync.WaitGroup
	for range min(runtime.GOMAXPROCS(0), len(all)) {
		wait.Go(func() {
			for ctx.Err() == nil {
				i := int(next.Add(1)) - 1
				if i >= len(all) {
					return
				}
				v := &all[i]
				v.Now = stands(text, axes, v.Values)
				v.Lies, v.Buys, v.Err = bought(name, text, with.until(ctx), axes, v.Values)
			}
		})
	}
	wait.Wait()
	return all, ctx.Err()
}

// combined returns every combination of the axes' values.
func combined(axes []Axis) []Variant {
	out := []Variant{{}}
	for _, a := range axes {
		var more []Variant
		for _, v := range out {
			for _, value := range a.Values {
				more = append(more, Variant{Values: append(append([]string(nil), v.Values...), value)})
			}
		}
		out = more
	}
	return out
}

// stands reports whether values are those of the text.
func stands(text design.Text, axes []Axis, values []string) bool {
	for i, a := range axes {
		if now, _ := text.Value(a.Key); now != values[i] {
			return false
		}
	}
	return true
}

// bought makes a variant as far as its figures need.
func bought(name string, text design.Text, with Setting, axes []Axis, values []string) (design.Posture, Buys, error) {
	var err error
	for i, a := range axes {
		if text, err = text.Set(a.Key, values[i]); err != nil {
			return 0, Buys{}, err
		}
	}
	p, err := Begin(name, text.Bytes(), with)
	if err != nil {
		return 0, Buys{}, err
	}
	if err = p.formed(with); err != nil {
		err = p.located(err)
		var wide *tooWide
		if errors.As(err, &wide) {
			return 0, Buys{}, p.Fault(rollWidth, wide.found, design.Phrase{})
		}
		return 0, Buys{}, err
	}
	buys, err := p.buys()
	return p.Design.Sleeper.Lies, buys, err
}

// buys returns what the bed of a plan buys.
func (p *Plan) buys() (Buys, error) {
	bill, err := p.Bill(Lays{})
	if err != nil {
		return Buys{}, err
	}
	made, who := p.Made(), p.Person()
	states := state.Judged(made, who)
	out := Buys{Level: states[0].Level, Hang: states[0].Hang, Turn: math.Pi, Length: rig.Overall(&p.Shape), Mass: bill.Total}
	if states[0].Bound != nil {
		return Buys{}, states[0].Bound
	}
	if out.Room, err = p.felt(made, false); err != nil {
		return Buys{}, err
	}
	if roll, err := state.RollOf(made, who); err == nil && !roll.Over {
		out.Turn = roll.Turn
	}
	for _, s := range states {
		for _, e := range hung.Ends() {
			out.Line = max(out.Line, s.Loads.Line[e])
			out.Bar = max(out.Bar, s.Loads.Bar[e])
		}
		out.Side = max(out.Side, state.SideCord.Load(s.Loads))
	}
	out.Least, _ = p.loaded(p.Design, states, state.Give{}).Governing()
	for _, q := range p.Sewn.Pieces {
		out.Cloth += float64(float64(q.Count) * q.Cut.Area())
	}
	return out, nil
}
