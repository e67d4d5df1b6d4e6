package figures

import (
	"math"
	"slices"

	"slingloft/cmd/slingloft/document"
	"slingloft/cmd/slingloft/work"
	"slingloft/export/sheet/given"
	"slingloft/outline/bed"
	"slingloft/outline/geom"
	"slingloft/outline/hung"
	"slingloft/outline/state"
)

// ClothVersion is the version of [Cloth].
const ClothVersion = 1

// Cloth is the cut as it hangs as cloth, in a simulation that shares no formula with the
// figures.
type Cloth struct {
	document.Head
	How    ClothHow     `json:"how"`
	Level  ClothLevel   `json:"level"`
	Bottom [][2]float64 `json:"bottom" doc:"the bed's bottom line, x and z, mm"`
	Cords  ClothCords   `json:"cords"`
	Made   *ClothCords  `json:"made,omitempty" doc:"the same of the made bed, as figure finds it; absent where it finds none"`
	Cloth  ClothDrawn   `json:"cloth"`

	draped work.Draped
}

// ClothHow says what was hung, and how far it came.
type ClothHow struct {
	State   string  `json:"state" doc:"lying or sitting, up at mid-bay"`
	Guest   string  `json:"guest,omitempty" doc:"who lies in it in place of the sleeper"`
	Body    bool    `json:"body" doc:"under a chain of rounded bodies; else under the design's round section"`
	Exact   bool    `json:"exact"`
	Settled bool    `json:"settled" doc:"it came to rest"`
	Off     float64 `json:"off" doc:"how far a place of it still moves in a step, mm"`
	Steps   int     `json:"steps"`
	Balance float64 `json:"balance" doc:"what the lines carry over the weight of all that hangs, less 1"`
}

// ClothLevel is how level the bottom line lies, heights in mm over where the design has it.
type ClothLevel struct {
	Under float64 `json:"under" doc:"largest less smallest height from crown to soles, or under the seat"`
	Bay   float64 `json:"bay" doc:"likewise from bar to bar"`
	Whole float64 `json:"whole" doc:"likewise to 30 mm from the ends of the tails"`
	Head  float64 `json:"head" doc:"height under the crown; of one who sits at the head bar"`
	Seat  float64 `json:"seat" doc:"at the middle of the weight"`
	Feet  float64 `json:"feet" doc:"under the soles; of one who sits at the foot bar"`
}

// ClothCords are the pulls, N; of bars the thrust.
type ClothCords struct {
	Side float64 `json:"side" doc:"largest pull in a side cord"`
	Leg  Pair    `json:"leg" doc:"in a leg, head and foot"`
	Line Pair    `json:"line" doc:"in a hang line and on its anchor"`
	Bar  Pair    `json:"bar"`
}

// ClothDrawn is how the cloth is drawn.
type ClothDrawn struct {
	Warp    Most    `json:"warp" doc:"largest tension along the bed, N/mm"`
	Weft    Most    `json:"weft" doc:"largest tension across it, N/mm"`
	Shear   Most    `json:"shear" doc:"largest shear, rad"`
	Slack   float64 `json:"slack" doc:"part of the area that pulls on nothing across the bed"`
	Slacks  []Pair  `json:"slacks" doc:"stretches of the bed, from x to x, mm, where most of the width is slack: a fold may stand there"`
	Stretch []Drawn `json:"stations" doc:"by the bed's length"`
}

// Most is a largest value with its place in the flat cloth, u and v, mm.
type Most struct {
	Value float64 `json:"value"`
	At    Pair    `json:"at"`
}

// Drawn is how the cloth is drawn over a stretch of the bed.
type Drawn struct {
	X     float64 `json:"x" doc:"of its middle, mm"`
	Warp  float64 `json:"warp" doc:"mean tension, N/mm"`
	Weft  float64 `json:"weft" doc:"mean tension, N/mm"`
	Shear float64 `json:"shear" doc:"largest, rad"`
	Slack float64 `json:"slack" doc:"part of the area that pulls on nothing across the bed"`
}

// ClothSchema returns the JSON Schema of a [Cloth].
func ClothSchema() map[string]any {
	return document.Schema[Cloth]("slingloft hang", ClothVersion,
		"Lengths mm, forces N, angles rad; x along the bed, z up from its bottom as designed.")
}

// ClothOf returns what is told of cloth that hangs; err is [work.ErrUnsettled] or nil.
func ClothOf(p *work.Plan, h work.Draped, err error) Cloth {
	out := Cloth{draped: h}
	out.Version, out.Name, out.Digest, out.Mark = ClothVersion, p.Design.Name, p.Digest, p.Mark
	out.How = ClothHow{State: state.Lying.String(), Body: !h.Round && !h.Sits, Exact: h.Exact, Settled: err == nil, Off: h.Last,
		Steps:   h.Steps,
		Balance: (h.Vertical[0]+h.Vertical[1])/h.Weight - 1}
	if h.Sits {
		out.How.State = state.Sitting.String()
	}
	if h.Guest != nil {
		out.How.Guest = h.Guest.Name
	}
	out.level(p)
	for _, q := range h.Bottom {
		out.Bottom = append(out.Bottom, [2]float64{q.X, q.Y})
	}
	for _, t := range h.Tension[h.Tips[hung.Head]:h.Tips[hung.Foot]] {
		out.Cords.Side = max(out.Cords.Side, t)
	}
	out.Cords.Leg, out.Cords.Line, out.Cords.Bar = h.Leg, h.Line, h.Bar
	if s, ok := p.Beside(h.Draping); ok {
		l := s.Loads
		leg := func(e hung.End) float64 { return max(l.Leg[e][bed.Left], l.Leg[e][bed.Right]) }
		out.Made = &ClothCords{state.SideCord.Load(l), Pair{leg(hung.Head), leg(hung.Foot)}, l.Line, l.Bar}
	}
	out.Cloth = drawnOf(h)
	return out
}

// level finds how level the bottom line lies.
func (c *Cloth) level(p *work.Plan) {
	h, half := &c.draped, p.Design.Bed.Span/2
	off := func(x float64) float64 { return h.Height(x) - p.Shape.Problem.Bottom(x) }
	from, to := h.Crown, h.Soles
	_, mid := h.Load.Total()
	head, foot := from, to
	if h.Sits {
		from, to = h.Load[0].From, h.Load[0].To
		head, foot = -half, half
	}
	// The last cells of a tail's end hang on nothing but its hem.
	const hem = 30
	ends := [2]float64{h.Along[0] + hem, h.Along[len(h.Along)-1] - hem}
	c.Level = ClothLevel{Whole: spanOf(h, off, ends[0], ends[1]), Under: spanOf(h, off, from, to), Bay: spanOf(h, off, -half, half),
		Head: off(head), Seat: off(mid), Feet: off(foot)}
}

// spanOf returns the largest less the smallest height off the design between two places.
func spanOf(h *work.Draped, off func(float64) float64, from, to float64) float64 {
	low, high := min(off(from), off(to)), max(off(from), off(to))
	for _, u := range h.Along {
		if u > from && u < to {
			low, high = min(low, off(u)), max(high, off(u))
		}
	}
	return high - low
}

// stretch is how long the stretches are by which the cloth is told, mm.
const stretch = 100.0

// drawnOf gathers how the cloth is drawn.
func drawnOf(h work.Draped) ClothDrawn {
	var out ClothDrawn
	type sum struct{ area, warp, weft, slack, shear float64 }
	bins := map[int]*sum{}
	var order []int
	area, slack := 0.0, 0.0
	for i, c := range h.Hung.Cloth {
		f := h.Faces[i]
		at := h.Flat[f[0]].Plus(h.Flat[f[1]]).Plus(h.Flat[f[2]]).Times(1.0 / 3)
		out.Warp.put(c.Warp, at)
		out.Weft.put(c.Weft, at)
		out.Shear.put(c.Shear, at)
		k := int(math.Floor(at.X / stretch))
		if bins[k] == nil {
			bins[k] = &sum{}
			order = append(order, k)
		}
		b := bins[k]
		b.area += c.Area
		b.warp += float64(c.Warp * c.Area)
		b.weft += float64(c.Weft * c.Area)
		b.shear = max(b.shear, c.Shear)
		area += c.Area
		if c.Weft <= given.SlackUnder {
			b.slack += c.Area
			slack += c.Area
		}
	}
	out.Slack = slack / area
	slices.Sort(order)
	for _, k := range order {
		b, x := bins[k], float64(k)*stretch
		out.Stretch = append(out.Stretch, Drawn{x + stretch/2, b.warp / b.area, b.weft / b.area, b.shear, b.slack / b.area})
		if b.slack <= b.area/2 {
			continue
		}
		if n := len(out.Slacks); n > 0 && out.Slacks[n-1][1] == x {
			out.Slacks[n-1][1] = x + stretch
		} else {
			out.Slacks = append(out.Slacks, Pair{x, x + stretch})
		}
	}
	return out
}

// put keeps a value where it is the largest.
func (m *Most) put(v float64, at geom.Point) {
	if v > m.Value {
		m.Value, m.At = v, Pair{at.X, at.Y}
	}
}
