package cord

import (
	"math"

	"slingloft/outline/design"
)

// Fastening is how a hang line is made fast at its anchor.
type Fastening int

// The fastenings.
const (
	// FixedEye: spliced at both ends, as long as the design says and no other.
	FixedEye Fastening = iota
	// SlidingEye: the tail of the eye at the anchor runs through its bury and out at
	// the bury's end; drawn up it shortens the line by half as much.
	SlidingEye
	// Strapped: spliced at both ends and shorter by a strap round the support, which
	// is adjusted.
	Strapped
	// Hitched: spliced at the apex alone and tied at the anchor with a round turn and
	// two half hitches.
	Hitched
)

// String returns the fastening in words.
func (f Fastening) String() string {
	return [...]string{"fixed eye", "sliding eye", "strap", "hitch"}[f]
}

// Adjustable reports whether the line's length can be set once it hangs.
func (f Fastening) Adjustable() bool { return f != FixedEye }

const (
	// hitchDiameters is the cord in two half hitches and the end that stands out of
	// them, in cord diameters: own choice.
	hitchDiameters = 60
	// roundTurns is how often the cord of a round turn goes round.
	roundTurns = 1.5
	// tailLeft is what stands out of a sliding eye's bury at the line's longest, mm:
	// room for a stopper knot and a hand. Own choice.
	tailLeft = 100
)

// Hanging says what a hang line has to be.
type Hanging struct {
	Part    Part    // [HeadLine] or [FootLine]
	Long    float64 // from apex to anchor under the sleeper, mm
	Tension float64 // N
	Fastening
	Travel float64 // by how much it can be set longer and shorter, mm; a fixed eye has none
	Strap  float64 // of it, the strap at its middle setting, mm
}

// HangLine is a hang line with the lengths it can be set to.
type HangLine struct {
	Cord
	Fastening Fastening `json:"-"`
	// Shortest and Longest are what it can be set to from apex to anchor, mm, and
	// Knotted says that a knot carries it, whose strength counts and not a splice's.
	Shortest float64 `json:"shortest"`
	Longest  float64 `json:"longest"`
	Knotted  bool    `json:"knotted"`
}

// HangLineOf returns a hang line that fits. The error is a [hung.Impossible].
func HangLineOf(d design.Design, sp Splicing, h Hanging) (HangLine, error) {
	r := rigger{design: d, splice: sp}
	l := HangLine{Fastening: h.Fastening, Shortest: h.Long - h.Travel, Longest: h.Long + h.Travel, Knotted: h.Fastening == Hitched}
	build := r.fixedLine
	switch h.Fastening {
	case FixedEye:
		l.Shortest, l.Longest = h.Long, h.Long
	case SlidingEye:
		build = r.slidingLine
	case Hitched:
		build = r.hitchedLine
	}
	var err error
	l.Cord, err = build(h)
	return l, err
}

// note returns the remark that says what the line can be set to.
func (l HangLine) note() NoteKind {
	if l.Fastening.Adjustable() {
		return LineSet
	}
	return LineFixed
}

// lineEye returns the measures of a hang line's eye.
func (r rigger) lineEye() (eyeSize, error) {
	kind, sp := r.design.Hang.Line, r.splice
	bury := sp.EyeBury(kind.Diameter)
	loop, reach, err := sp.Eye(kind.Diameter)
	return eyeSize{bury, sp.Taper(bury), loop, reach}, err
}

// stretched returns by how much a hang line of the given length is cut shorter for
// its stretch, mm.
func (r rigger) stretched(h Hanging, long float64) float64 {
	if ea := r.stiffness(r.design.Hang.Line); ea > 0 {
		return (h.Tension - LightPull) * long / float64(ea)
	}
	return 0
}

// fixedLine returns a line with a fixed eye at each end, less its strap.
func (r rigger) fixedLine(h Hanging) (Cord, error) {
	strap := 0.0
	if h.Fastening == Strapped {
		strap = h.Strap
	}
	c, err := r.line(h.Part, r.design.Hang.Line, h.Long-strap, h.Tension)
	if err == nil && strap > 0 {
		c.Steps = append(c.Steps, Step{HangInStrap, nil})
		c.Terms = append([]Term{{HookToHook, h.Long}, {LessStrap, -strap}}, c.Terms[1:]...)
	}
	return c, err
}

// slidingLine returns a line whose far eye slides on its own tail.
func (r rigger) slidingLine(h Hanging) (Cord, error) {
	sp, kind := r.splice, r.design.Hang.Line
	near, err := r.lineEye()
	if err != nil {
		return Cord{}, err
	}
	stretch := r.stretched(h, h.Long)
	pin := (sp.Hook + kind.Diameter) / 2
	set := r.set(h.Long)
	// At its shortest the far eye is as small as the near one.
	far := near.reach + h.Travel
	loop := 2 * roundPin(far, pin)
	out := tailLeft + 2*(roundPin(far+h.Travel, pin)-roundPin(far, pin))
	plain := h.Long - stretch - set - near.reach - far - 2*near.bury
	if plain < 0 {
		return Cord{}, r.overlap(h.Part, -plain, math.Floor((h.Long-stretch-set-near.reach-far)/2))
	}
	c := Cord{Part: h.Part, Count: 1, Kind: kind, Runs: 1, Datum: Spot{Kind: Throat, On: NearEye}}
	c.Terms = compact([]Term{
		{HookToHook, h.Long},
		{OverEyesBuries, 2 * sp.Kappa * near.bury},
		{NearLoop, near.loop},
		{NearCrossing, sp.Loss},
		{SlidingLoop, loop},
		{EyesBuries, 2 * near.bury},
		{SlidingTail, out},
		{LessEyesReach, -near.reach - far},
		{LessStretch, -stretch},
		{LessSet, -set},
	})
	c.Cut = sum(c.Terms)
	var ch chain
	ch.startEye(NearEye, near, sp, 1)
	ch.add(zone{raw: plain})
	ch.mark(Spot{Kind: BuryEnd, On: FarEye}, 0)
	ch.host(near.bury, sp.Kappa, 2)
	ch.mark(Spot{Kind: Throat, On: FarEye}, 0)
	ch.add(zone{raw: loop})
	ch.mark(Spot{Kind: Shoulder, On: FarEye}, 0)
	ch.add(zone{raw: near.bury, splice: 2, tail: true})
	ch.mark(Spot{Kind: SetMark}, 0)
	ch.add(zone{raw: out})
	c.Marks = ch.list(c.Datum)
	c.Steps = []Step{
		{MakeNearEye, []Reading{ch.reading(Spot{Kind: Throat, On: NearEye}, Spot{Kind: Throat, On: FarEye}, 1)}},
		{DrawThrough,
			[]Reading{ch.reading(Spot{Kind: Throat, On: NearEye}, Spot{Kind: Throat, On: FarEye}, 2),
				ch.hook(Spot{Kind: Throat, On: NearEye}, Spot{Kind: Throat, On: FarEye}, far, 2)}},
		{SlideTail, nil},
	}
	return c, nil
}

// hitchedLine returns a line with an eye at the apex and a plain end.
func (r rigger) hitchedLine(h Hanging) (Cord, error) {
	sp, kind := r.splice, r.design.Hang.Line
	near, err := r.lineEye()
	if err != nil {
		return Cord{}, err
	}
	stretch := r.stretched(h, h.Long)
	set := r.set(h.Long)
	plain := h.Long - stretch - set - near.reach - near.bury
	if plain < 0 {
		return Cord{}, r.overlap(h.Part, -plain, math.Floor(h.Long-stretch-set-near.reach))
	}
	turns := roundTurns * math.Pi * (sp.Hook + kind.Diameter)
	end := hitchDiameters * kind.Diameter
	c := Cord{Part: h.Part, Count: 1, Kind: kind, Runs: 1, Datum: Spot{Kind: Throat, On: NearEye}}
	c.Terms = compact([]Term{
		{HookToHook, h.Long},
		{LetOut, h.Travel},
		{OverEyeBury, sp.Kappa * near.bury},
		{EyeLoop, near.loop},
		{OnlyCrossing, sp.Loss},
		{EyeOwnBury, near.bury},
		{RoundAnchor, turns},
		{HalfHitches, end},
		{LessReach, -near.reach},
		{LessStretch, -stretch},
		{LessSet, -set},
	})
	c.Cut = sum(c.Terms)
	var ch chain
	ch.startEye(NearEye, near, sp, 1)
	ch.add(zone{raw: plain})
	ch.mark(Spot{Kind: Anchor}, 0)
	ch.add(zone{raw: h.Travel + turns + end})
	c.Marks = ch.list(c.Datum)
	c.Steps = []Step{
		{MakeNearEye, []Reading{ch.reading(Spot{Kind: Throat, On: NearEye}, Spot{Kind: Anchor}, 1)}},
		{TieHitches, nil},
	}
	return c, nil
}
