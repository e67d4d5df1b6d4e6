package cord_test

import (
	"errors"
	"math"
	"testing"

	"slingloft/outline/cord"
	"slingloft/outline/design"
	"slingloft/outline/hung"
)

// Every fastening brings the anchor to where the design has it, and marks come in
// order and add up; what differs is the cut and what the line can be set to.
func TestHangLine(t *testing.T) {
	d, _ := sample(t)
	d.Hang.Line.Stiffness = 200e3
	sp, err := cord.Resolve(d, cord.Options{Hook: 12})
	if err != nil {
		t.Fatal(err)
	}
	loop, reach, err := sp.Eye(4)
	if err != nil {
		t.Fatal(err)
	}
	const long, tension, travel, strap = 1500.0, 500.0, 120.0, 600.0
	bury, stretch := sp.EyeBury(4), (tension-cord.LightPull)*long/200e3
	eye := loop + sp.Loss + bury*(1+sp.Kappa) - reach
	cuts := map[cord.Fastening]float64{
		cord.FixedEye: long + 2*eye - stretch,
		cord.Strapped: long - strap + 2*eye - stretch*(long-strap)/long,
		cord.Hitched:  long + eye - stretch + travel + 1.5*math.Pi*16 + 60*4,
	}
	for f := cord.FixedEye; f <= cord.Hitched; f++ {
		l, err := cord.HangLineOf(d, sp,
			cord.Hanging{Part: cord.HeadLine, Long: long, Tension: tension, Fastening: f, Travel: travel, Strap: strap})
		if err != nil {
			t.Fatal(err)
		}
		if want, ok := cuts[f]; ok {
			near(t, f.String()+", cut", l.Cut, want, 1e-9)
		}
		total := 0.0
		for _, term := range l.Terms {
			total += term.Length
		}
		near(t, f.String()+", terms", total, l.Cut, 1e-9)
		last := math.Inf(-1)
		for _, m := range l.Marks {
			near(t, f.String()+" "+m.Spot.String(), m.FromStart+m.FromEnd, l.Cut, 1e-9)
			if m.FromStart < last-1e-9 {
				t.Errorf("%s: mark %s out of order", f, m.Spot)
			}
			last = m.FromStart
		}
		m := marks(l.Cord)
		anchor := long - stretch
		switch f {
		case cord.FixedEye:
			near(t, "fixed", m[cord.Spot{Kind: cord.Throat, On: cord.FarEye}].Spliced+2*reach, anchor, 1e-9)
			near(t, "range", l.Longest-l.Shortest, 0, 0)
		case cord.Strapped:
			near(t, "strapped", m[cord.Spot{Kind: cord.Throat, On: cord.FarEye}].Spliced+2*reach+strap, long-stretch*(long-strap)/long, 1e-9)
		case cord.Hitched:
			near(t, "hitched", m[cord.Spot{Kind: cord.Anchor}].Spliced+reach, anchor, 1e-9)
		case cord.SlidingEye:
			near(t, "sliding", m[cord.Spot{Kind: cord.Throat, On: cord.FarEye}].Spliced+reach+reach+travel, anchor, 1e-9)
			// Let out to its longest, the tail still stands out of the bury.
			out := l.Cut - m[cord.Spot{Kind: cord.SetMark}].FromStart
			if grown := 2 * travel; out < grown+80 || out > grown+100 {
				t.Errorf("sliding eye: %g mm of tail at the middle setting, some %g wanted at least", out, grown)
			}
		}
		if f != cord.FixedEye {
			near(t, "shortest", l.Shortest, long-travel, 0)
			near(t, "longest", l.Longest, long+travel, 0)
		}
		if l.Knotted != (f == cord.Hitched) || f.Adjustable() == (f == cord.FixedEye) || len(l.Steps) == 0 {
			t.Errorf("%s: %+v", f, l)
		}
	}
}

// A line without room for its eyes names what would do.
func TestHangLineShort(t *testing.T) {
	d, _ := sample(t)
	sp, err := cord.Resolve(d, cord.Options{})
	if err != nil {
		t.Fatal(err)
	}
	for f := cord.FixedEye; f <= cord.Hitched; f++ {
		_, err := cord.HangLineOf(d, sp, cord.Hanging{Part: cord.HeadLine, Long: 250, Fastening: f, Travel: 50, Strap: 10})
		if no := new(hung.Impossible); !errors.As(err, &no) {
			t.Errorf("%s of 250 mm: %v", f, err)
		}
	}
}

// What the first load stretches for good comes off every cord that carries, and every
// node comes nearer by it; nothing of it where it is not cut off.
func TestSetCutOff(t *testing.T) {
	d, s := sample(t)
	d.Accuracy.Set = 0.005
	o := cord.Options{Hook: 12, Tip: 6, Lines: [2]float64{1500, 1400}, Ridge: 3400}
	for _, whole := range []bool{false, true} {
		d.Splice.Whole = whole
		d.Accuracy.FirstLoad = design.PullSet
		full, err := cord.Of(&s, d, o)
		if err != nil {
			t.Fatal(err)
		}
		d.Accuracy.FirstLoad = design.CutSet
		short, err := cord.Of(&s, d, o)
		if err != nil {
			t.Fatal(err)
		}
		legs := s.Ends[0].Leg + s.Ends[1].Leg
		long := map[cord.Part]float64{cord.SideCord: s.SideArc, cord.HeadLeg: s.Ends[0].Leg, cord.FootLeg: s.Ends[1].Leg,
			cord.SideLoop: 2 * (s.SideArc + legs), cord.HeadLine: 1500, cord.FootLine: 1400, cord.RidgeLine: 0}
		for i, c := range full.Cords {
			near(t, c.Part.String(), c.Cut-short.Cords[i].Cut, 0.005*long[c.Part], 1e-9)
		}
		if whole {
			f, h := marks(full.Cords[0]), marks(short.Cords[0])
			tip := cord.Spot{Kind: cord.Tip, On: cord.AtFoot}
			near(t, "tip of a loop", f[tip].Spliced-h[tip].Spliced, 0.005*s.Arc(0, s.Problem.Bed.Span/2), 1e-9)
		} else {
			f, h := marks(full.Cords[0]), marks(short.Cords[0])
			middle := cord.Spot{Kind: cord.Middle}
			near(t, "middle of a side cord", f[middle].Spliced-h[middle].Spliced, 0.005*s.Arc(-s.Problem.Bed.Span/2, 0), 1e-9)
		}
	}
}

// The design's fastening is that of both lines, and a note says what they can be set to.
func TestLinesOfTheDesign(t *testing.T) {
	d, s := sample(t)
	d.Hang.Travel, d.Hang.Strap = 120, 400
	for f := design.FixedEye; f <= design.Hitched; f++ {
		d.Hang.Fastening = f
		set, err := cord.Of(&s, d, cord.Options{Lines: [2]float64{1500, 1400}})
		if err != nil {
			t.Fatal(err)
		}
		if len(set.Lines) != 2 || set.Lines[1].Fastening != cord.Fastening(f) || set.Lines[1].Part != cord.FootLine {
			t.Fatalf("%v: lines %+v", f, set.Lines)
		}
		want, n := cord.LineSet, 0
		if f == design.FixedEye {
			want = cord.LineFixed
		}
		for _, note := range set.Notes {
			if note.Kind == want {
				n++
			}
		}
		if n != 2 {
			t.Errorf("%v: %d notes on the lines, want 2", f, n)
		}
		near(t, "travel", set.Lines[0].Longest-set.Lines[0].Shortest, map[bool]float64{true: 0, false: 240}[f == design.FixedEye], 1e-9)
	}
}
