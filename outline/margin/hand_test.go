package margin_test

import (
	"errors"
	"math"
	"reflect"
	"slices"
	"testing"

	"slingloft/outline/design"
	"slingloft/outline/finished"
	"slingloft/outline/hung"
	"slingloft/outline/margin"
	"slingloft/outline/quantity"
	"slingloft/outline/state"
)

// byHand returns a bed with bars of 980 and 900 mm that was put through states with round
// loads, so that everything that follows can be worked in the head.
func byHand(d design.Design, states ...state.State) margin.Input {
	var s hung.Shape
	s.Ends[hung.Head].Bar, s.Ends[hung.Foot].Bar = 980, 900
	return margin.Input{Shape: &s, Design: d, States: states}
}

// loaded is a state with loads that all differ.
func loaded(k state.Kind) state.State {
	return state.State{Kind: k, Loads: finished.Loads{
		Line: [2]float64{600, 700}, Leg: [2][2]float64{{310, 320}, {340, 330}}, Side: [2]float64{410, 420},
		Bar: [2]float64{250, 260}, Cloth: 0.5,
	}}
}

// A case has the largest load of each part among its states, whichever state and side
// that is, extremes left out; a kind without states is no case.
func TestCasesByHand(t *testing.T) {
	one, two, wild := loaded(state.Sitting), loaded(state.Sitting), loaded(state.Sitting)
	two.Loads.Line[0], two.Loads.Leg[1][1], two.Loads.Side[0], two.Loads.Bar[0], two.Loads.Cloth = 650, 345, 430, 240, 0.4
	wild.Loads.Line, wild.Extreme = [2]float64{9e3, 9e3}, true
	r := margin.Of(byHand(sample(), one, wild, two))
	if len(r.Cases) != 1 || len(r.Cases[0].States) != 2 || len(r.States) != 3 {
		t.Fatalf("%d cases, of %d states, %+v", len(r.Cases), len(r.States), r.Cases)
	}
	c := r.Cases[0]
	c.States = nil
	want := margin.Case{Kind: state.Sitting, Side: 430, Leg: [2]float64{320, 345}, Hang: [2]float64{650, 700},
		Bar: [2]float64{250, 260}, Cloth: 0.5}
	if !reflect.DeepEqual(c, want) {
		t.Errorf("%+v, want %+v", c, want)
	}
}

// Why loads are bounds is what the first state says that is none of rest.
func TestCaseBound(t *testing.T) {
	first, second := errors.New("first"), errors.New("second")
	rest, lost, later := loaded(state.Edge), loaded(state.Edge), loaded(state.Edge)
	lost.Bound, later.Bound = first, second
	for _, r := range []struct {
		states []state.State
		want   error
	}{{[]state.State{rest, rest}, nil}, {[]state.State{rest, lost, later}, first}, {[]state.State{later}, second}} {
		if got := margin.Of(byHand(sample(), r.states...)).Cases[0].Bound(); !errors.Is(got, r.want) {
			t.Errorf("%v, want %v", got, r.want)
		}
	}
}

// A bar that nothing presses is not checked, nor one that is pulled; one that is hardly
// pressed is.
func TestBarsThatAreNotPressed(t *testing.T) {
	for _, r := range []struct {
		head, foot float64
		want       int
	}{{0, 0, 0}, {-40, 0, 0}, {0.5, 0, 2}, {0, 0.5, 2}, {250, 260, 4}} {
		s := loaded(state.Lying)
		s.Loads.Bar = [2]float64{r.head, r.foot}
		n := 0
		for _, c := range margin.Of(byHand(sample(), s)).Checks {
			if !c.Part.OfBar() {
				continue
			}
			n++
			thrust := map[bool]float64{true: r.head, false: r.foot}[c.Part == margin.HeadBuckling || c.Part == margin.HeadYield]
			near(t, c.Name(), c.Load, 2*thrust, 1e-12)
		}
		if n != r.want {
			t.Errorf("thrusts %g and %g: %d checks of bars, want %d", r.head, r.foot, n, r.want)
		}
	}
}

func TestOfBar(t *testing.T) {
	for p := range margin.PartCount {
		want := slices.Contains([]string{"head bar buckling", "foot bar buckling", "head bar yield", "foot bar yield"}, p.String())
		if p.OfBar() != want {
			t.Errorf("%v: of a bar %v", p, p.OfBar())
		}
	}
}

// A margin that is met by nothing is met: 10 kN × 1 over 2 kN asked five times.
func TestJustMet(t *testing.T) {
	d := sample()
	d.Splice.Efficiency = 1
	for load, met := range map[float64]bool{2000: true, 2000.001: false, 1999: true} {
		s := loaded(state.GettingIn)
		s.Loads.Side = [2]float64{load, 0}
		if c := check(t, margin.Of(byHand(d, s)), "side cord, getting-in"); c.Met != met || c.Unmet() == met {
			t.Errorf("%g N of 10 kN, five times: %+v", load, c)
		}
	}
	// Of two that are as near the first governs.
	s := loaded(state.Lying)
	s.Loads.Line = [2]float64{2e4, 2e4}
	if g, ok := margin.Of(byHand(d, s)).Governing(); !ok || g.Part != margin.HeadLine {
		t.Errorf("governing %+v", g)
	}
}

// Cloth of less than one N/mm, and a hole of less than one mm, count as what they are.
func TestSmallFigures(t *testing.T) {
	d := sample()
	d.Cloth.StripStrength = 0.9
	s := loaded(state.Lying)
	s.Loads.Cloth = 0.2
	r := margin.Of(byHand(d, s))
	strip, seam := check(t, r, "cloth strip, lying"), check(t, r, "side seam, lying")
	near(t, "strip", strip.Ratio, 0.9/0.4, 1e-12)
	near(t, "seam", seam.Ratio, 0.8*0.9/0.4, 1e-12)
	if !strip.Met || seam.Met || !seam.Unmet() {
		t.Errorf("%+v\n%+v", strip, seam)
	}
	lacks := d
	lacks.Seam.SeamFactor = 0
	if c := check(t, margin.Of(byHand(lacks, s)), "side seam, lying"); !c.Bound || !c.Unmet() {
		t.Errorf("0.72 N/mm at most, of 0.8 asked: %+v", c)
	}
	found := false
	for _, c := range r.ByPart() {
		found = found || c.Part == margin.ClothStrip
	}
	if !found {
		t.Error("no check of the cloth among those by part")
	}
	d.Bar.Hole = 0.9
	whole := check(t, r, "head bar yield, lying").Capacity
	if holed := check(t, margin.Of(byHand(d, s)), "head bar yield, lying").Capacity; !(holed < whole) {
		t.Errorf("yields at %g N with a hole, at %g whole", holed, whole)
	}
	d.Bar.Hole, d.Bar.Joint, d.Bar.JointPlay = 0, 0.5, 0
	if c := check(t, margin.Of(byHand(d, s)), "head bar yield, lying"); !slices.Contains(c.Missing, design.KeyBarJoint) {
		t.Errorf("half a millimetre of joint: %+v", c)
	}
	d.Bar.JointPlay = 1e-3
	if jointed := check(t, margin.Of(byHand(d, s)), "head bar yield, lying").Capacity; !(jointed < whole) {
		t.Errorf("yields at %g N with play in its joint, at %g whole", jointed, whole)
	}
}

// Every remark by the one thing that calls for it.
func TestEveryNote(t *testing.T) {
	stiff := sample()
	stiff.Side.Stiffness, stiff.Leg.Stiffness, stiff.Hang.Line.Stiffness, stiff.Cloth.WeftStiffness = 1e5, 1e5, 1e5, 50
	for _, r := range []struct {
		name   string
		change func(*margin.Input)
		want   []margin.Note
	}{
		{"all given", func(*margin.Input) {}, nil},
		{"thrust on axis", func(in *margin.Input) { in.Design.Bar.Eccentricity = 0 }, []margin.Note{margin.ThrustOnAxis}},
		{"sectional bar", func(in *margin.Input) { in.Design.Bar.Joint = 0.5 }, []margin.Note{margin.JointAsBar}},
		{"no shoulders", func(in *margin.Input) { in.Design.Sleeper.Shoulders = 0 }, []margin.Note{margin.ShouldersGuessed}},
		{"hitched", func(in *margin.Input) { in.Design.Hang.Fastening = design.Hitched }, []margin.Note{margin.LinesKnotted}},
		{"lines guessed", func(in *margin.Input) { in.LinesGuessed = true }, []margin.Note{margin.LinesGuessed}},
		{"side cord", func(in *margin.Input) { in.Design.Side.Stiffness = 0 }, []margin.Note{margin.StretchUnknown}},
		{"legs", func(in *margin.Input) { in.Design.Leg.Stiffness = 0 }, []margin.Note{margin.StretchUnknown}},
		{"hang lines", func(in *margin.Input) { in.Design.Hang.Line.Stiffness = 0 }, []margin.Note{margin.StretchUnknown}},
		{"cloth", func(in *margin.Input) { in.Design.Cloth.WeftStiffness = 0 }, []margin.Note{margin.StretchUnknown}},
		// One cord is side cords and legs.
		{"whole", func(in *margin.Input) { in.Design.Splice.Whole, in.Design.Leg.Stiffness = true, 0 }, nil},
		{"whole, side cord", func(in *margin.Input) { in.Design.Splice.Whole, in.Design.Side.Stiffness = true, 0 },
			[]margin.Note{margin.StretchUnknown}},
		{"nothing given", func(in *margin.Input) { in.Design = design.Design{}; in.LinesGuessed = true },
			[]margin.Note{margin.ThrustOnAxis, margin.ShouldersGuessed, margin.LinesGuessed, margin.StretchUnknown}},
	} {
		in := byHand(stiff, loaded(state.Lying))
		r.change(&in)
		want := append([]margin.Note{margin.CordsRunFree, margin.BarsAlone}, r.want...)
		if got := margin.Of(in).Notes; !slices.Equal(got, want) {
			t.Errorf("%s: %v, want %v", r.name, got, want)
		}
	}
}

// What is to be bought, of a whole loop of cord: two runs share the pull of a leg.
func TestLeastOfALoop(t *testing.T) {
	d := sample()
	for _, whole := range []bool{false, true} {
		d.Splice.Whole, d.Leg.Strength = whole, 4000
		r := margin.Of(byHand(d, loaded(state.Sitting)))
		runs, given := 1.0, 4000.0
		if whole {
			runs, given = 2, 10e3
		}
		legs, side := least(t, r, margin.LegThing), least(t, r, margin.SideCordThing)
		near(t, "legs", legs.Value, 5*340/runs/0.9, 1e-12)
		near(t, "legs knotted", legs.Knotted, 5*340/runs/0.33, 1e-12)
		near(t, "legs given", legs.Given, given, 0)
		near(t, "side cord", side.Value, 5*420/runs/0.9, 1e-12)
		hooks := least(t, r, margin.HookThing)
		near(t, "hooks", hooks.Value, 5*700, 1e-12)
		near(t, "hooks keep", hooks.Keeps, 1, 0)
	}
}

// Cloth is bought for its strip where that asks for more than the needle holes of its
// seams, seams as they are, thread for what a stitch holds of it.
func TestLeastSewn(t *testing.T) {
	d := sample()
	s := loaded(state.GettingIn) // cloth 0.5 N/mm, twice by the dynamic factor
	r := margin.Of(byHand(d, s))
	cloth, seam, thread := least(t, r, margin.ClothThing), least(t, r, margin.SeamThing), least(t, r, margin.ThreadThing)
	near(t, "cloth by its seam", cloth.Value, 2*1/0.8, 1e-12)
	near(t, "cloth keeps", cloth.Keeps, 0.8, 0)
	near(t, "seam", seam.Value, 2, 1e-12)
	near(t, "seam keeps", seam.Keeps, 1, 0)
	near(t, "seam holds", seam.Given, 1.1/2.5*30*0.7, 1e-12)
	near(t, "thread", thread.Value, 2*2.5/(0.7*1.1), 1e-12)
	near(t, "thread keeps", thread.Keeps, 0.7, 0)
	if !cloth.Assumed || thread.Assumed || seam.Assumed {
		t.Errorf("assumed: cloth %v, thread %v, seam %v", cloth.Assumed, thread.Assumed, seam.Assumed)
	}
	d.Margins.Cloth, d.Seam.Perforation = 3, 0.7
	cloth = least(t, margin.Of(byHand(d, s)), margin.ClothThing)
	near(t, "cloth by itself", cloth.Value, 3*1, 1e-12)
	near(t, "cloth by itself keeps", cloth.Keeps, 1, 0)
	if cloth.Check.Part != margin.ClothStrip || cloth.Assumed {
		t.Errorf("cloth is bought for %v, assumed %v", cloth.Check.Part, cloth.Assumed)
	}
	// With anything missing nothing is known of what the seam holds.
	for name, change := range map[string]func(*design.Design){
		"thread": func(d *design.Design) { d.Seam.ThreadStrength = 0 }, "factor": func(d *design.Design) { d.Seam.SeamFactor = 0 },
		"cloth": func(d *design.Design) { d.Cloth.StripStrength = 0 }, "stitch": func(d *design.Design) { d.Seam.StitchLength = 0 },
	} {
		lacks := sample()
		change(&lacks)
		r := margin.Of(byHand(lacks, s))
		near(t, "seam without "+name, least(t, r, margin.SeamThing).Given, 0, 0)
		threads := slices.ContainsFunc(r.Leasts, func(l margin.Least) bool { return l.Thing == margin.ThreadThing })
		if threads != (name != "stitch") {
			t.Errorf("without %s: thread to buy %v", name, threads)
		}
	}
	d.Seam.StitchLength = 0.5
	near(t, "short stitches", least(t, margin.Of(byHand(d, s)), margin.ThreadThing).Value, 2*0.5/(0.7*1.1), 1e-12)
}

// Of cases that ask for as much the first is the hardest.
func TestHardestOfLikes(t *testing.T) {
	one, two := loaded(state.Lying), loaded(state.Edge)
	r := margin.Of(byHand(sample(), one, two))
	for _, c := range r.ByPart() {
		if c.Case != state.Lying {
			t.Errorf("%v: %v governs, both ask for as much", c.Part, c.Case)
		}
	}
	if c := r.Hardest(margin.HeadLine, margin.FootLine); c.Part != margin.FootLine {
		t.Errorf("%v is the harder line", c.Part)
	}
	if c := r.Hardest(); !reflect.DeepEqual(c, margin.Check{}) {
		t.Errorf("the hardest of none is %+v", c)
	}
}

// The proof load is static: cloth, whose loads have the dynamic factor in them, has to hold
// 1.3 × 1.5 × 0.5 = 0.975 N/mm whatever that factor is, and what is not known is not
// known to fail.
func TestUnprovenIsStatic(t *testing.T) {
	d := sample()
	for strip, weak := range map[quantity.NewtonsPerMillimetre]bool{0.97: true, 0.98: false, 0: false} {
		for _, factor := range []float64{1.2, 2, 3} {
			d.Cloth.StripStrength, d.Margins.Dynamic = strip, factor
			lying := loaded(state.Lying)
			lying.Loads.Cloth = 10 // of others nothing is proved
			got := margin.Of(byHand(d, lying, loaded(state.Sitting))).Unproven()
			if slices.Contains(got, margin.ClothStrip) != weak {
				t.Errorf("cloth of %g N/mm, dynamic factor %g: unproven %v", strip, factor, got)
			}
		}
	}
}

// What a seam holds comes from its thread, or from the cloth where the thread holds more
// or is not known; of what is not known at all the thread is named.
func TestSeamSourceByHand(t *testing.T) {
	for _, r := range []struct {
		name          string
		cloth, thread float64
		want          margin.SourceKind
	}{
		{"the thread", 100, 30, margin.SeamFormula}, {"the cloth", 1, 30, margin.Perforated},
		{"cloth alone is known", 100, 0, margin.Perforated}, {"thread alone is known", 0, 30, margin.SeamFormula},
		{"neither", 0, 0, margin.SeamFormula},
	} {
		d := sample()
		d.Cloth.StripStrength, d.Seam.ThreadStrength = quantity.NewtonsPerMillimetre(r.cloth), quantity.Newtons(r.thread)
		if c := check(t, margin.Of(byHand(d, loaded(state.Lying))), "side seam, lying"); c.Source.Kind != r.want {
			t.Errorf("%s: %+v", r.name, c)
		}
	}
}

// Ways out that hang on what the design is controlled by, or on who is in the bed: less
// thrust is less of a given thrust and more of any other control; steeper walls do nothing
// for one who sits on one cord; where no strip strength is given none is asked for.
func TestWaysByHand(t *testing.T) {
	weak := sample()
	weak.Side.Strength, weak.Cloth.StripStrength, weak.Seam.ThreadStrength = 100, 0.1, 0.01
	for control, less := range map[design.Control]bool{
		design.SideDepth: false, design.HeadAngle: false, design.FootAngle: false, design.Thrust: true,
	} {
		d := weak
		d.Bed.Control = control
		r := margin.Of(byHand(d, loaded(state.Lying), loaded(state.GettingIn)))
		ways := check(t, r, "side cord, lying").Ways
		if want := (margin.Way{Key: d.Bed.ControlKey(), Less: less}); len(ways) != 2 || ways[1] != want {
			t.Errorf("control %v: ways %+v, want %+v at last", control, ways, want)
		}
		for name, steeper := range map[string]bool{"cloth strip, lying": true, "cloth strip, getting-in": false} {
			ways := check(t, r, name).Ways
			if has := slices.Contains(ways, margin.Way{Key: d.Bed.HeadKey()}); has != steeper || ways[0].Key != design.KeyClothStripStrength {
				t.Errorf("%s: ways %+v", name, ways)
			}
		}
	}
	weak.Cloth.StripStrength = 0
	ways := check(t, margin.Of(byHand(weak, loaded(state.Lying))), "side seam, lying").Ways
	if len(ways) != 1 || ways[0].Key != design.KeySeamThreadStrength {
		t.Errorf("thread too weak, cloth not known: %+v", ways)
	}
	// Needs 2 N/mm: the row has 1.9 N/mm and with a second 2.09.
	weak.Seam = design.Seam{StitchLength: 1, ThreadStrength: 1.9, SeamFactor: 1, Rows: 1}
	ways = check(t, margin.Of(byHand(weak, loaded(state.Lying))), "side seam, lying").Ways
	want := []margin.Way{{Key: design.KeySeamRows, Least: 2}, {Key: design.KeySeamThreadStrength, Least: 2}}
	if len(ways) != 2 || ways[0] != want[0] || ways[1].Key != want[1].Key || math.Abs(ways[1].Least-2) > 1e-12 {
		t.Errorf("a second row would do: %+v", ways)
	}
}
