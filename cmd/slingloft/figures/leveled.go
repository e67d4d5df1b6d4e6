package figures

import (
	"math"

	"slingloft/cmd/slingloft/work"
	"slingloft/outline/hung"
	"slingloft/outline/level"
)

// Leveled is what came of a bed that was cut again from the cloth as it hangs. Pairs are of
// the cut before and after, or of head and foot where they say so.
type Leveled struct {
	Body    bool     `json:"body"`     // judged under the sleeper's body; else in the design's round section
	Rounds  int      `json:"rounds"`   // of the loop
	Under   Pair     `json:"under"`    // highest less lowest under the sleeper
	Whole   Pair     `json:"whole"`    // likewise of the cloth elsewhere and there
	Rim     Pair     `json:"rim"`      // how much the cloth next to crown and soles stands higher than they lie
	Gathers EndPairs `json:"gathers"`  // cloth that lies in gathers across the centre line past each bar
	Shear   Pair     `json:"shear"`    // largest
	EndSeam Pair     `json:"end_seam"` // by how much it became longer, head and foot
	In      float64  `json:"in"`       // most that a side moved inwards, negative
	Out     float64  `json:"out"`      // and outwards
	Sides   []Moved  `json:"sides"`
}

// EndPairs are two pairs, of head and foot.
type EndPairs struct {
	Head Pair `json:"head"`
	Foot Pair `json:"foot"`
}

// Moved is the change of a side at a flat place.
type Moved struct {
	U    float64 `json:"u"`
	Out  float64 `json:"out"`  // by which the side moved, outwards
	Half float64 `json:"half"` // half width of the cloth afterwards, at the cord line
}

// movedEvery is how far apart places are at which the change of the sides is told, mm.
const movedEvery = 100.0

// leveledOf gathers what came of the loop; nil where there was none.
func leveledOf(p *work.Plan) *Leveled {
	l := p.Leveled
	if l == nil {
		return nil
	}
	b, a := l.Before, l.After
	out := &Leveled{Body: !l.Round, Rounds: l.Rounds, Under: Pair{b.Under, a.Under}, Whole: Pair{b.Whole, a.Whole}, Rim: Pair{b.Rim, a.Rim},
		Gathers: EndPairs{Pair{b.Gather[hung.Head], a.Gather[hung.Head]}, Pair{b.Gather[hung.Foot], a.Gather[hung.Foot]}},
		Shear:   Pair{b.Shear, a.Shear}, EndSeam: l.EndSeams(&p.Body)}
	out.In, out.Out = l.Most()
	head, foot := l.Side[0].X, l.Side[len(l.Side)-1].X
	half := p.Design.Bed.Span / 2 / p.Design.Bed.Lift.Cos()
	for _, u := range places(head, foot, -half, half) {
		was := level.HalfAt(l.Side, u)
		out.Sides = append(out.Sides, Moved{u, l.At(u), was + l.At(u)})
	}
	return out
}

// places returns round places from one to another with the ends and two marks among them,
// none nearer to those than a third of a step.
func places(from, to, a, b float64) []float64 {
	marks := []float64{from, a, b, to}
	out := []float64{from}
	for i, end := range marks[1:] {
		start := marks[i]
		for u := math.Ceil(start/movedEvery) * movedEvery; u < end; u += movedEvery {
			if u-start > movedEvery/3 && end-u > movedEvery/3 {
				out = append(out, u)
			}
		}
		out = append(out, end)
	}
	return out
}

// leveled tells what came of the loop.
func (b *report) leveled(d Document) {
	l, say := d.Leveled, b.say.Leveled
	if l == nil {
		return
	}
	b.head(say.Title)
	how := say.Round
	if l.Body {
		how = say.AsBody
	}
	b.line(say.How, how, l.Rounds)
	b.row("", say.Before, say.After)
	for i, v := range []Pair{l.Under, l.Whole, l.Rim, l.Gathers.Head, l.Gathers.Foot} {
		b.row(say.Rows[i], b.mm(v[0]), b.mm(v[1]))
	}
	b.row(say.Sheared, b.deg(l.Shear[0]), b.deg(l.Shear[1]))
	b.line(say.Seams, b.signed(l.EndSeam[hung.Head]), b.signed(l.EndSeam[hung.Foot]))
	b.line(say.Sides, b.unit())
	b.row(say.Place, say.Moves, say.HalfWidth)
	for _, m := range l.Sides {
		b.row(b.figure(m.U), b.signedFigure(m.Out), b.figure(m.Half))
	}
	b.line("%s", say.Judge)
}

// signed writes a length with its sign.
func (b *report) signed(v float64) string { return plus(v, b.mm) }

// signedFigure is [report.signed] without the unit.
func (b *report) signedFigure(v float64) string { return plus(v, b.figure) }

func plus(v float64, write func(float64) string) string {
	if v > 0 {
		return "+" + write(v)
	}
	return write(v)
}
