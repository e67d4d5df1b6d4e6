package cord_test

import (
	"errors"
	"fmt"
	"math"
	"slices"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"slingloft/outline/cord"
	"slingloft/outline/design"
	"slingloft/outline/hung"
	"slingloft/outline/quantity"
	_ "slingloft/outline/rapidtest"
)

// sample returns a design and its solved shape.
func sample(t testing.TB) (design.Design, hung.Shape) {
	t.Helper()
	var d design.Design
	d.Sleeper = design.Sleeper{Stature: 1740, Mass: 70, Crown: -60}
	d.Bed = design.Bed{
		Span: 1440, HeadBar: 980, FootBar: 900, HeadValue: 420,
		ControlValue: 205, HeadTail: 150, FootTail: 130, HeadLeg: 820, FootLeg: 760,
		HeadRadius: 125, SeatRadius: 140, FootRadius: 110,
	}
	d.Side = design.Cord{Name: "braid 2.8", Diameter: 2.8}
	d.Leg, d.Hang.Line = d.Side, design.Cord{Name: "line 4", Diameter: 4}
	d.Splice = design.Splice{TipGap: 40, Contraction: 0.15, Eye: 120, EyeLoss: 6}
	s, err := hung.Solve(hung.ProblemOf(d))
	if err != nil {
		t.Fatalf("Solve: %v", err)
	}
	return d, s
}

func near(t rapid.TB, what string, got, want, tol float64) {
	t.Helper()
	if !(math.Abs(got-want) <= tol) {
		t.Errorf("%s = %.9g, want %.9g", what, got, want)
	}
}

func find(t rapid.TB, s cord.Set, p cord.Part) cord.Cord {
	t.Helper()
	c, ok := s.Find(p)
	if !ok {
		t.Fatalf("no %v", p)
	}
	return c
}

func marks(c cord.Cord) map[cord.Spot]cord.Mark {
	out := map[cord.Spot]cord.Mark{}
	for _, m := range c.Marks {
		out[m.Spot] = m
	}
	return out
}

// The sums of the package comment, worked by hand for round measures.
func TestSums(t *testing.T) {
	d, s := sample(t)
	d.Splice.Bury, d.Splice.EyeBury = 180, 150
	set, err := cord.Of(&s, d, cord.Options{Hook: 10})
	if err != nil {
		t.Fatal(err)
	}
	near(t, "side cord", find(t, set, cord.SideCord).Cut, s.SideArc+2*(180+20)+2*27, 1e-9)
	// The eye hangs on a 10 mm hook: its loop of 120 mm is two tangents and an arc
	// of radius 6.4 mm about the hook's centre.
	leg := find(t, set, cord.HeadLeg)
	reach := 0.0
	for _, term := range leg.Terms {
		if term.Kind == cord.LessEyeReach {
			reach = -term.Length
		}
	}
	const q = 6.4
	beta := math.Acos(q / reach)
	near(t, "loop", 2*(q*math.Tan(beta)+q*(math.Pi-beta)), 120, 1e-6)
	near(t, "head leg", leg.Cut, 820+(180+20)+27+0.15*150+120+6+150-reach, 1e-9)
}

// Three fids of 21 diameters: 2.5 mm gives 157.5, 3 gives 189, 4 gives 252.
func TestBuryByDiameter(t *testing.T) {
	sp, err := cord.Resolve(design.Design{}, cord.Options{})
	if err != nil {
		t.Fatal(err)
	}
	for d, want := range map[float64]float64{2: 126, 2.5: 157.5, 3: 189, 4: 252} {
		near(t, "bury", sp.Bury(d), want, 1e-9)
		near(t, "taper", sp.Taper(sp.Bury(d)), want/3, 1e-9)
	}
	// Five fittings from throat to the fitting: 50 mm for a 10 mm hook.
	loop, reach, err := sp.Eye(3)
	near(t, "eye", reach, 55, 1e-9)
	if err != nil || loop <= 100 {
		t.Errorf("loop %g, %v: want more than twice the eye", loop, err)
	}
}

// A braid whose filled part is 85 % of its empty length loses 1/0.85 − 1 of what
// is buried in it; like pieces count alike, so that their mean holds.
func TestShown(t *testing.T) {
	d := design.Design{Splice: design.Splice{Contraction: 0.3, EyeLoss: 11}, Accuracy: design.Accuracy{Scatter: 0.02, Reading: 0.5}}
	d.Splice.Trials = []design.Trial{
		{Before: 1000, After: 1000 - 30, Buried: 170}, // 200 empty become 170
		{Before: 500, After: 500 - 34, Buried: 170},
		{Before: 800, After: 800 - 26, Buried: 170},
		{Before: 300, After: 294, Crossing: true},
	}
	shown, err := cord.ShownBy(d)
	if err != nil {
		t.Fatal(err)
	}
	near(t, "mean", shown.Kappa.Value, 1/0.85-1, 1e-9)
	near(t, "loss", shown.Loss.Value, 6, 1e-9)
	if len(shown.Odd) != 0 || shown.Apart.Count != 0 {
		t.Errorf("%+v: nothing is odd or open here", shown)
	}
	// What was read last is far off.
	d.Splice.Trials = append(d.Splice.Trials, design.Trial{Before: 1000, After: 930, Buried: 170})
	if shown, err = cord.ShownBy(d); err != nil || fmt.Sprint(shown.Odd) != "[5]" {
		t.Errorf("odd %v, %v: want the fifth", shown.Odd, err)
	}
	for name, bad := range map[string]design.Trial{
		"longer":  {Before: 100, After: 101, Buried: 50},
		"zero":    {After: 10, Buried: 50},
		"eaten":   {Before: 100, After: 20, Buried: 50},
		"nan":     {Before: math.NaN(), After: 20, Buried: 50},
		"endless": {Before: math.Inf(1), After: 490, Buried: 100},
		"nothing": {Before: 100, After: 90},
	} {
		d.Splice.Trials = []design.Trial{{Before: 500, After: 490, Buried: 100}, bad}
		_, err := cord.ShownBy(d)
		if want := "splice.trial: trial 2"; err == nil || !strings.HasPrefix(err.Error(), want) {
			t.Errorf("%s: %v for %+v, want %s", name, err, bad, want)
		}
	}
}

// Trials take the place of the given contraction.
func TestTrialsRule(t *testing.T) {
	d, s := sample(t)
	d.Splice.Trials = []design.Trial{{Before: 500, After: 480, Buried: 100}, {Before: 300, After: 291, Crossing: true}}
	set, err := cord.Of(&s, d, cord.Options{})
	if err != nil {
		t.Fatal(err)
	}
	near(t, "kappa", set.Splicing.Kappa, 0.2, 1e-12)
	near(t, "loss", set.Splicing.Loss, 9, 1e-12)
}

// Under an even load between like bars the cord is a parabola, T ds = H (1 + y'²
// + z'²) dx and y' = z' cot θ, so that the integral is in closed form.
func TestStretchParabola(t *testing.T) {
	b := design.Bed{
		Span: 1440, HeadBar: 980, FootBar: 980, HeadValue: 420,
		Control: design.Thrust, ControlValue: 420, HeadTail: 150, FootTail: 150,
		HeadLeg: 820, FootLeg: 820, HeadRadius: 125, SeatRadius: 125, FootRadius: 125,
	}
	s, err := hung.Solve(hung.Problem{Bed: b, Load: hung.EvenLoad(70*hung.Gravity, -720, 720)})
	if err != nil {
		t.Fatal(err)
	}
	const ea = 200e3
	sag := 70 * hung.Gravity * 1440 / (16 * 420)
	sin := math.Sin(s.Ends[hung.Head].Section.Wall)
	want := 420 * (1440 + 16*sag*sag/(3*1440)/(sin*sin)) / ea
	near(t, "side", cord.Stretch(&s, -720, 720, ea, 0), want, 1e-9)
	// A leg past an unloaded tail is straight: T L / EA.
	e := s.Ends[hung.Head]
	near(t, "leg", cord.Stretch(&s, e.ApexX, -720, ea, 0), e.LegTension*e.Leg/ea, 1e-6)
	near(t, "none", cord.Stretch(&s, -720, 720, 0, 0), 0, 0)
}

// Stretch is a term of its own, and the marks are set nearer by it.
func TestCompensation(t *testing.T) {
	d, s := sample(t)
	plain, err := cord.Of(&s, d, cord.Options{})
	if err != nil {
		t.Fatal(err)
	}
	d.Side.Stiffness, d.Leg.Stiffness = 200e3, 150e3
	short, err := cord.Of(&s, d, cord.Options{})
	if err != nil {
		t.Fatal(err)
	}
	for part, ends := range map[cord.Part][2]float64{
		cord.SideCord: {-720, 720}, cord.FootLeg: {720, s.Ends[hung.Foot].ApexX},
	} {
		a, b := find(t, plain, part), find(t, short, part)
		ea := b.Kind.Stiffness
		near(t, part.String(), a.Cut-b.Cut, cord.Stretch(&s, ends[0], ends[1], ea, cord.LightPull), 1e-9)
	}
	side := marks(find(t, short, cord.SideCord))
	near(t, "middle", side[cord.Spot{Kind: cord.Middle}].Spliced, s.Arc(-720, 0)-cord.Stretch(&s, -720, 0, 200e3, cord.LightPull), 1e-9)
	if len(short.Notes) != len(plain.Notes)-2 {
		t.Errorf("notes %v: want those on stiffness gone", short.Notes)
	}
}

// After every splice the tips and hooks lie where the shape has them, whatever
// the splices are; marks read from both ends add up to the cut length and come
// in order.
func TestNodesLand(t *testing.T) {
	d0, s := sample(t)
	rapid.Check(t, func(t *rapid.T) {
		d := d0
		f := func(lo, hi float64, label string) float64 { return rapid.Float64Range(lo, hi).Draw(t, label) }
		d.Side.Diameter, d.Leg.Diameter = f(1.5, 3, "side"), f(1.5, 3, "leg")
		d.Side.Stiffness, d.Leg.Stiffness = quantity.Newtons(f(5e4, 4e5, "ea")), quantity.Newtons(f(5e4, 4e5, "ea leg"))
		d.Splice = design.Splice{TipGap: f(35, 80, "gap"), Contraction: f(0, 0.35, "kappa"),
			Eye: f(60, 200, "eye"), EyeLoss: f(0, 20, "loss")}
		o := cord.Options{Hook: f(4, 12, "hook"), Tip: f(0, 6, "tip"), Lines: [2]float64{2000, 1800}}
		set, err := cord.Of(&s, d, o)
		if err != nil {
			t.Fatal(err)
		}
		spread, err := set.Splicing.Spread(d.Side.Diameter)
		if err != nil {
			t.Fatal(err)
		}
		side := find(t, set, cord.SideCord)
		want := s.SideArc - cord.Stretch(&s, -720, 720, d.Side.Stiffness, cord.LightPull) + spread
		near(t, "tip to tip", marks(side)[cord.Spot{Kind: cord.Tip, On: cord.AtFoot}].Spliced, want, 1e-6)
		near(t, "last reading", lastReading(side), want, 1e-6)
		spread, _ = set.Splicing.Spread(d.Leg.Diameter)
		want = 820 - cord.Stretch(&s, s.Ends[hung.Head].ApexX, -720, d.Leg.Stiffness, cord.LightPull) + spread/2
		near(t, "tip to hook", lastReading(find(t, set, cord.HeadLeg)), want, 1e-6)
		near(t, "hook to hook", lastReading(find(t, set, cord.HeadLine))+lineReach(t, set, 4), 2000, 1e-6)
		for _, c := range set.Cords {
			last := math.Inf(-1)
			for _, m := range c.Marks {
				near(t, c.Part.String()+" "+m.Spot.String(), m.FromStart+m.FromEnd, c.Cut, 1e-6)
				if m.FromStart < last-1e-9 {
					t.Fatalf("%s: mark %s out of order", c.Part, m.Spot)
				}
				last = m.FromStart
			}
			near(t, c.Part.String()+" datum", marks(c)[c.Datum].Spliced, 0, 1e-9)
		}
	})
}

// lastReading returns what the tape shows when all is done.
func lastReading(c cord.Cord) float64 {
	reads := c.Steps[len(c.Steps)-1].Reads
	return reads[len(reads)-1].After
}

// lineReach returns the reach of the near eye, which a line's last reading, from
// throat to hook, leaves out.
func lineReach(t rapid.TB, s cord.Set, diameter float64) float64 {
	t.Helper()
	_, reach, err := s.Splicing.Eye(diameter)
	if err != nil {
		t.Fatal(err)
	}
	return reach
}

// The gap round a thick tip: two tangents from its edge and the arc between.
func TestSpread(t *testing.T) {
	sp, err := cord.Resolve(design.Design{Splice: design.Splice{TipGap: 2 * 5 * (1 + math.Pi/4)}}, cord.Options{Tip: 7})
	if err != nil {
		t.Fatal(err)
	}
	// With the edge √2 radii away the tangent is one radius long and the half arc an
	// eighth of the round.
	got, err := sp.Spread(3)
	if err != nil {
		t.Fatal(err)
	}
	near(t, "spread", got, 2*5*(1+math.Pi/4)-2*5*math.Sqrt2, 1e-6)
}

// A loop without thickness is twice the way from hook to hook, its two ends'
// buries and what they take.
func TestLoop(t *testing.T) {
	d, s := sample(t)
	d.Splice.Whole, d.Splice.Bury = true, 180
	set, err := cord.Of(&s, d, cord.Options{Hook: 1e-9})
	if err != nil {
		t.Fatal(err)
	}
	c := find(t, set, cord.SideLoop)
	d.Side.Diameter = 1e-9
	if set, err = cord.Of(&s, d, cord.Options{Hook: 1e-9}); err != nil {
		t.Fatal(err)
	}
	thin := find(t, set, cord.SideLoop)
	near(t, "thin", thin.Cut, 2*(820+s.SideArc+760)+2*180+2*0.15*180, 1e-6)
	// Round a pin of radius r a loop is longer by π r a hook, and by r² over the
	// leg for the slant of its runs.
	near(t, "cord's own thickness", c.Cut-thin.Cut, 2*math.Pi*1.4+1.4*1.4*(1/820.0+1/760.0), 1e-4)
	if c.Runs != 2 || c.Count != 2 || len(set.Cords) != 1 {
		t.Errorf("runs %d, count %d, cords %d", c.Runs, c.Count, len(set.Cords))
	}
	m := marks(c)
	near(t, "foot tip", m[cord.Spot{Kind: cord.Tip, On: cord.AtFoot}].Spliced, s.Arc(0, 720), 1e-6)
	near(t, "head tip to end",
		m[cord.Spot{Kind: cord.Shoulder, On: cord.AtEnd}].Spliced-m[cord.Spot{Kind: cord.Tip, On: cord.AtHead}].Spliced, s.Arc(-720, 0), 1e-6)
	near(t, "second run", lastReading(c), s.SideArc, 1e-6)
	near(t, "thin hooks", marks(thin)[cord.Spot{Kind: cord.Hook, On: cord.AtFoot}].Spliced, s.Arc(0, 720)+760, 1e-6)
}

func TestFaults(t *testing.T) {
	d0, s := sample(t)
	for name, row := range map[string]struct {
		change func(*design.Design, *cord.Options)
		key    design.Key
	}{
		"overlap in side cord": {func(d *design.Design, _ *cord.Options) { d.Splice.Bury = 800; d.Splice.EyeBury = 10 }, "splice.bury"},
		"leg too short":        {func(d *design.Design, _ *cord.Options) { d.Splice.EyeBury = 700 }, "bed.head_leg"},
		"eye too small":        {func(d *design.Design, _ *cord.Options) { d.Splice.Eye = 30 }, "splice.eye"},
		"gap too small":        {func(d *design.Design, o *cord.Options) { d.Splice.TipGap = 16; o.Tip = 8 }, "splice.tip_gap"},
		"line too short":       {func(d *design.Design, o *cord.Options) { o.Lines[0] = 400 }, "splice.eye_bury"},
		"loop's bury":          {func(d *design.Design, _ *cord.Options) { d.Splice.Whole = true; d.Splice.Bury = 780 }, "splice.bury"},
	} {
		d, o := d0, cord.Options{}
		row.change(&d, &o)
		_, err := cord.Of(&s, d, o)
		var bad *hung.Impossible
		if !errors.As(err, &bad) || bad.Key != row.key || bad.Bound == design.NoLimit {
			t.Errorf("%s: got %v, want a fault of %s with its limit", name, err, row.key)
			continue
		}
		// What the message names does work.
		switch row.key {
		case "splice.bury":
			d.Splice.Bury = bad.Limit
		case "splice.eye":
			d.Splice.Eye = bad.Limit
		case "splice.tip_gap":
			d.Splice.TipGap = bad.Limit
		case "splice.eye_bury":
			d.Splice.EyeBury = bad.Limit
		default:
			continue
		}
		if _, err := cord.Of(&s, d, o); errors.As(err, &bad) && bad.Key == row.key {
			t.Errorf("%s: limit %g does not do: %v", name, bad.Limit, err)
		}
	}
}

func TestSpools(t *testing.T) {
	a, b := design.Cord{Name: "a"}, design.Cord{Name: "b"}
	got := cord.Spools([]cord.Cord{
		{Part: cord.SideCord, Count: 2, Kind: a, Cut: 2000}, {Part: cord.RidgeLine, Count: 1, Kind: b, Cut: 500},
		{Part: cord.HeadLeg, Count: 4, Kind: a, Cut: 1500},
		{Part: cord.FootLine, Count: 1, Kind: a, Cut: 2500},
	}, 0.1)
	if len(got) != 2 || len(got[0].Laid) != 7 {
		t.Fatalf("got %+v", got)
	}
	near(t, "net", got[0].Net, 2500+4000+6000, 1e-9)
	near(t, "buy", got[0].Buy, 1.1*12500, 1e-9)
	if l := got[0].Laid; l[0].Cord != cord.FootLine || l[0].From != 0 || l[2].Copy != 2 || l[6].To != 12500 {
		t.Errorf("laid %+v", l)
	}
	if got[1].Name != "b" || got[1].Buy != 550 {
		t.Errorf("second %+v", got[1])
	}
}

// A trial is made of each kind of cord that hangs where its buries settle: a line that can
// be set needs none, and cords of one kind need one between them. Its host holds the marks
// and both ends that are made fast, its other piece the bury.
func TestTrials(t *testing.T) {
	d, s := sample(t)
	d.Leg, d.Hang.Line = d.Side, d.Side
	d.Hang.Line.Name = "line"
	o := cord.Options{Lines: [2]float64{1500, 1500}}
	for _, r := range []struct {
		name   string
		change func(*design.Design)
		want   int
	}{
		{"one cord, lines that are fixed", func(*design.Design) {}, 2},
		{"one cord, lines that slide", func(d *design.Design) { d.Hang.Fastening, d.Hang.Travel = design.Fastening(cord.SlidingEye), 50 }, 1},
		{"two cords", func(d *design.Design) {
			d.Hang.Fastening, d.Hang.Travel, d.Leg.Name = design.Fastening(cord.SlidingEye), 50, "leg"
		}, 2},
	} {
		d := d
		r.change(&d)
		set, err := cord.Of(&s, d, o)
		if err != nil {
			t.Fatal(r.name, err)
		}
		trials := set.Trials(false)
		if len(trials) != r.want {
			t.Errorf("%s: %d trials, want %d", r.name, len(trials), r.want)
		}
		for _, q := range trials {
			if q.Apart < q.Bury*(1+set.Splicing.Kappa)+200 || q.Host < q.Apart+200+2*(5*math.Pi*(50+q.Kind.Diameter)+60*q.Kind.Diameter) || q.Own < q.Bury+200 {
				t.Errorf("%s: too short: %+v", r.name, q)
			}
			near(t, r.name, q.Apart-q.After, set.Splicing.Kappa*q.Bury, 1e-9)
		}
	}
}

// A bed that is cut plain has cords of the drawn length whatever their stiffness,
// and a hook of the default size that is given needs no note.
func TestPlain(t *testing.T) {
	d, s := sample(t)
	o := cord.Options{Hook: cord.DefaultHook, Tip: 6, Lines: [2]float64{900, 800}}
	loose, err := cord.Of(&s, d, o)
	if err != nil {
		t.Fatal(err)
	}
	d.Side.Stiffness, d.Leg.Stiffness, d.Hang.Line.Stiffness = 2e5, 2e5, 2e5
	d.Bed.Plain = true
	plain, err := cord.Of(&s, d, o)
	if err != nil {
		t.Fatal(err)
	}
	for i, c := range plain.Cords {
		near(t, c.Part.String(), c.Cut, loose.Cords[i].Cut, 1e-12)
	}
	if !slices.ContainsFunc(plain.Notes, func(n cord.Note) bool { return n.Kind == cord.NotShortened }) {
		t.Error("no note says that the cords are not shortened")
	}
	for _, n := range plain.Notes {
		if n.Kind == cord.HookTaken {
			t.Errorf("note of a hook that is given: %v", n)
		}
	}
	d.Bed.Plain = false
	short, err := cord.Of(&s, d, o)
	if err != nil {
		t.Fatal(err)
	}
	for i, c := range short.Cords {
		if !(c.Cut < loose.Cords[i].Cut-0.5) {
			t.Errorf("%s: %.2f mm, %.2f without stiffness", c.Part, c.Cut, loose.Cords[i].Cut)
		}
	}
}
