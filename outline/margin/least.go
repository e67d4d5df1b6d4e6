package margin

import (
	"slingloft/outline/design"
	"slingloft/outline/state"
)

// What splices and knots keep of a cord's strength, and what a row of stitches holds,
// where the design does not say: a neat splice about 0.9 (Cordage Institute, as printed
// in Practical Sailor, High-Tech Rope Test), a knot in slippery braid a third (nine knots
// in 10 mm braid lost more than 62 % on average, Yachting Monthly, Nov 2017), and
// polyester thread twice its loop strength of 60 to 65 % at each stitch, the lower value.
const (
	AssumedSplice = 0.9
	KnotKeeps     = 0.33
	AssumedStitch = 1.2
)

// Thing is what a strength has to be bought for.
type Thing int

// The things.
const (
	SideCordThing Thing = iota
	LegThing
	LineThing
	HookThing  // each hook, ring, strap and support
	RidgeThing // ridge of a cover that carries
	ClothThing
	SeamThing
	ThreadThing
	ThingCount // how many there are
)

// String returns the thing's identifier, as documents for other programs have it.
func (t Thing) String() string {
	return [ThingCount]string{"side cord", "legs", "hang lines", "hooks", "cover ridge", "cloth", "seams", "thread"}[t]
}

// Least is the least strength that has to be bought, whether or not one is given.
type Least struct {
	Thing   Thing
	Value   float64 // breaking strength by the data sheet; of a cord that is spliced
	Knotted float64 // of a cord that is tied instead; 0: it is none
	Tied    bool    // it is tied, by the design: Value is Knotted
	Unit    Unit
	Given   float64 // what the design gives, in Unit; 0: nothing
	// Keeps is the part of the strength that is counted on: of a cord what its splices
	// keep, of cloth what its needle holes leave, of thread what a stitch holds. Assumed
	// says that the design does not give it.
	Keeps   float64
	Assumed bool
	Check   Check // that asks most
}

// Leasts returns the least strengths by the checks of a report.
func (a *assessor) leasts() []Least {
	d := &a.design
	splice, assumed := given(d.Splice.Efficiency, AssumedSplice), d.Splice.Efficiency == 0
	cord := func(thing Thing, has design.Cord, runs float64, parts ...Part) Least {
		c := a.Hardest(parts...)
		bare := c.Load * c.Required / runs
		return Least{Thing: thing, Value: bare / splice, Knotted: bare / KnotKeeps, Given: float64(has.Strength), Keeps: splice,
			Assumed: assumed, Check: c}
	}
	leg, runs := d.Leg, 1.0
	if d.Splice.Whole {
		leg, runs = d.Side, 2
	}
	out := []Least{
		cord(SideCordThing, d.Side, runs, SideCord),
		cord(LegThing, leg, runs, HeadLeg, FootLeg),
		cord(LineThing, d.Hang.Line, 1, HeadLine, FootLine),
	}
	if d.Hang.Fastening == design.Hitched {
		line := &out[len(out)-1]
		line.Value, line.Keeps, line.Assumed, line.Tied = line.Knotted, KnotKeeps, true, true
	}
	hook := a.Hardest(HeadHook, FootHook)
	out = append(out, Least{Thing: HookThing, Value: hook.Load * hook.Required, Given: float64(a.Hook), Keeps: 1, Check: hook})
	if r := a.Hardest(RidgeCord); r.Load > 0 {
		bare := r.Load * r.Required / KnotKeeps
		out = append(out, Least{Thing: RidgeThing, Value: bare, Knotted: bare, Tied: true, Given: float64(d.Cover.Strength), Keeps: KnotKeeps,
			Assumed: true, Check: r})
	}
	return append(out, a.leastSewn()...)
}

// leastSewn returns the least strengths of cloth, seams and thread. The cloth holds
// its seam besides, at its needle holes.
func (a *assessor) leastSewn() []Least {
	d := &a.design
	strip, seam := a.Hardest(ClothStrip), a.Hardest(SideSeam, JoinSeam)
	needs := seam.Load * seam.Required
	cloth := Least{Thing: ClothThing, Value: strip.Load * strip.Required, Unit: PerWidth, Given: float64(d.Cloth.StripStrength),
		Keeps: 1, Check: strip}
	if holed := needs / perforation(d.Seam); holed > cloth.Value {
		cloth.Value, cloth.Keeps, cloth.Check = holed, perforation(d.Seam), seam
		cloth.Assumed = d.Seam.Perforation == 0
	}
	holds, missing := SeamStrength(d.Seam, d.Cloth)
	if len(missing) > 0 {
		holds = 0
	}
	out := []Least{cloth, {Thing: SeamThing, Value: needs, Unit: PerWidth, Given: holds, Keeps: 1, Check: seam}}
	if d.Seam.StitchLength > 0 {
		keeps := given(d.Seam.SeamFactor, AssumedStitch)
		out = append(out, Least{Thing: ThreadThing, Value: needs * d.Seam.StitchLength / (keeps * rows(d.Seam)),
			Given: float64(d.Seam.ThreadStrength), Keeps: keeps, Assumed: d.Seam.SeamFactor == 0, Check: seam})
	}
	return out
}

// Hardest returns the check among those of some parts that asks for the largest
// capacity: of the state that loads them most.
func (r Report) Hardest(parts ...Part) Check {
	var out Check
	for _, c := range r.Checks {
		for _, p := range parts {
			if c.Part == p && c.Load*c.Required > out.Load*out.Required {
				out = c
			}
		}
	}
	return out
}

// ByPart returns one check of each part: of the state that loads it most.
func (r Report) ByPart() []Check {
	var out []Check
	for p := range PartCount {
		if c := r.Hardest(p); c.Load > 0 {
			out = append(out, c)
		}
	}
	return out
}

// Proof before the first night, as shops do it (no source): so many times the largest
// mass, in bags; every part holds the state of one who sits with that by so much.
const (
	ProofMass  = 1.5
	ProofLeast = 1.3
)

// Unproven returns the parts that are known not to hold the proof load by [ProofLeast]:
// what one who sits loads, static, times [ProofMass].
func (r Report) Unproven() []Part {
	var out []Part
	for _, c := range r.Checks {
		if c.Case == state.Sitting && c.Capacity > 0 && c.Capacity < ProofLeast*ProofMass*c.Load/c.Factor {
			out = append(out, c.Part)
		}
	}
	return out
}
