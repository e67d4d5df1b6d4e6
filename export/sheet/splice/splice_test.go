package splice

import (
	"math"
	"slices"
	"strings"
	"testing"

	"slingloft/export/sheet/given"
	"slingloft/export/sheet/giventest"
	"slingloft/export/sheet/picture"
	"slingloft/outline/cord"
	"slingloft/outline/design"
	"slingloft/outline/geom"
)

// set returns what is given of the built-in design with its cords made anew after a change.
func set(t *testing.T, change func(*design.Design)) given.Data {
	t.Helper()
	d := giventest.Sewn(t)
	if change != nil {
		change(&d.Design)
	}
	var err error
	d.Cords, err = cord.Of(d.Shape, d.Design, cord.Options{Hook: d.Design.Hang.HookDiameter, Tip: d.Design.Bar.TipDiameter, Lines: [2]float64{1500, 1400}})
	if err != nil {
		t.Fatal(err)
	}
	return d
}

// pictures returns every picture that a set has.
func pictures(d *given.Data) []picture.Picture {
	out := []picture.Picture{EyeFree(d), EyeTurned(d), Crossing(d), Corner(d), Parting(d), Tip(d), OnPin(d), Chain(d), Threading(d), Join(d), Seized(d)}
	for _, s := range Splices(d.Cords) {
		out = append(out, Tried(d, s), Taper(d, s), Entering(d, s), Milked(d, s), Locked(d, s))
	}
	for _, l := range d.Cords.Lines {
		out = append(out, Fastened(d, l))
	}
	return slices.DeleteFunc(out, func(p picture.Picture) bool { return p.Width == 0 })
}

// designs are sets of every kind.
func designs(t *testing.T) map[string]given.Data {
	out := map[string]given.Data{
		"built in":      set(t, nil),
		"loops":         set(t, func(d *design.Design) { d.Splice.Whole = true }),
		"hitched":       set(t, func(d *design.Design) { d.Hang.Fastening = design.Hitched }),
		"no eye passes": set(t, func(d *design.Design) { d.Leg.Diameter = 4.5 }),
		"long and thick": set(t, func(d *design.Design) {
			d.Side.Diameter, d.Leg.Diameter, d.Splice.Bury, d.Splice.TipGap, d.Bar.TipDiameter = 6, 6, 300, 120, 12
		}),
	}
	for name, d := range out {
		d.Style.Inches, d.Style.Fraction = true, 16
		out[name+", in inches"] = d
	}
	return out
}

// Every picture stays in its frame, letters over no lettering, in one height, and is as wide
// as a telephone shows without scrolling.
func TestPicturesAreWhole(t *testing.T) {
	for name, d := range designs(t) {
		for _, p := range pictures(&d) {
			for _, c := range p.Clashes() {
				t.Errorf("%s, %s: %q stands over %q", name, p.ID, c[0], c[1])
			}
			if p.Width != picture.Half || p.Title == "" || p.Desc == "" || strings.Contains(p.Desc, "%!") {
				t.Errorf("%s, %s: %g wide, %q, %q", name, p.ID, p.Width, p.Title, p.Desc)
			}
			for _, it := range p.Items {
				switch it := it.(type) {
				case picture.Text:
					if it.Size != picture.Letter || strings.Contains(it.Text, "%") {
						t.Errorf("%s, %s: %q of %g", name, p.ID, it.Text, it.Size)
					}
				case picture.Path:
					for _, l := range it.Lines {
						if b := l.Bounds(); b.Min.X < -1.5 || b.Min.Y < -0.1 || b.Max.X > p.Width+1.5 || b.Max.Y > p.Height+0.1 || math.IsNaN(b.Min.X) {
							t.Errorf("%s, %s: %v leaves the picture", name, p.ID, b)
						}
					}
				}
			}
		}
	}
}

// strokes returns where the marks across a level cord stand, from left to right, those at
// one height.
func strokes(p picture.Picture, y float64) []float64 {
	var out []float64
	for _, it := range p.Items {
		q, ok := it.(picture.Path)
		if !ok || q.Stroke != picture.Main || q.Width != picture.Medium || len(q.Lines[0]) != 2 {
			continue
		}
		if a, b := q.Lines[0][0], q.Lines[0][1]; a.X == b.X && math.Abs((a.Y+b.Y)/2-y) < 0.01 {
			out = append(out, a.X)
		}
	}
	slices.Sort(out)
	return out
}

func near(t *testing.T, what string, got, want, tol float64) {
	t.Helper()
	if !(math.Abs(got-want) <= tol) {
		t.Errorf("%s: got %.6g, want %.6g", what, got, want)
	}
}

// Along a cord the pictures are to scale by its marks.
func TestMarksToScale(t *testing.T) {
	for name, d := range designs(t) {
		for _, s := range Splices(d.Cords) {
			at := func(c cord.Cord, spot cord.Spot) cord.Mark {
				m, ok := find(c, spot)
				if !ok {
					t.Fatalf("%s, %s: no mark %s", name, s.Kind, spot)
				}
				return m
			}
			in, stop := at(s.Host, s.Entry), at(s.Host, s.End)
			before, after := math.Abs(stop.FromStart-in.FromStart), math.Abs(stop.Spliced-in.Spliced)
			near(t, name+", contraction", before-after, d.Cords.Splicing.Kappa*after, 1e-6)
			shoulder, taper := at(s.Own, cord.Spot{Kind: cord.Shoulder, On: s.On}), at(s.Own, cord.Spot{Kind: cord.Taper, On: s.On})
			whole := math.Abs(taper.FromStart - shoulder.FromStart)
			near(t, name+", as long as the bury", min(shoulder.FromStart, shoulder.FromEnd), after, 1e-6)

			p := Taper(&d, s)
			marks := strokes(p, 16)
			near(t, name+", whole part of a working end", (marks[1]-marks[0])/74, whole/after, 1e-6)
			marks = strokes(Entering(&d, s), 20)
			near(t, name+", from entry to stop", marks[1]-marks[0], hostRoom, 1e-6)
			low := strokes(Milked(&d, s), 15)
			near(t, name+", milked", (low[1]-low[0])/hostRoom, after/before, 1e-6)
			tried := d.Cords.Trials(d.Style.Inches)[0]
			top, done := strokes(Tried(&d, s), 33), strokes(Tried(&d, s), 14)
			near(t, name+", tried", (done[1]-done[0])/(top[1]-top[0]), tried.After/tried.Apart, 1e-6)
			near(t, name+", expected of a trial", tried.Apart-tried.After, before-after, 1e-6)
		}
	}
}

// The fid is 21 diameters long, to the scale of its host.
func TestFid(t *testing.T) {
	d := set(t, nil)
	s := Splices(d.Cords)[0]
	var edges []float64
	for _, it := range Entering(&d, s).Items {
		if q, ok := it.(picture.Path); ok && q.Stroke == picture.Main && len(q.Dash) > 0 {
			edges = append(edges, q.Lines[0].Length())
		}
	}
	if len(edges) != 2 {
		t.Fatalf("%d edges of a fid", len(edges))
	}
	near(t, "fid, half way between its edges", (edges[0]+edges[1])/2, 21*3*hostRoom/s.empty(), 0.3)
}

// In a finished corner the tip is the middle of the gap, each shoulder lies at the other
// cord's entry, and what a tape reads there is what the marks say.
func TestCornerToScale(t *testing.T) {
	d := set(t, func(d *design.Design) {
		d.Side.Diameter, d.Leg.Diameter, d.Splice.Bury, d.Splice.EyeBury = 2.8, 3.2, 0, 170
	})
	c, ok := cornerOf(d.Cords)
	if !ok {
		t.Fatal("no corner")
	}
	side, _ := d.Cords.Find(cord.SideCord)
	leg, _ := d.Cords.Find(cord.HeadLeg)
	read := func(c cord.Cord, k cord.SpotKind, on cord.Branch) float64 {
		m, ok := find(c, cord.Spot{Kind: k, On: on})
		if !ok {
			t.Fatalf("no %d", k)
		}
		return m.Spliced
	}
	// The side cord's places count towards the bed, the leg's towards the hook.
	near(t, "side cord's entry", -c.sideEntry, read(side, cord.Entry, cord.AtHead), 1e-9)
	near(t, "leg's entry", c.legEntry, read(leg, cord.Entry, cord.Alone), 1e-9)
	near(t, "leg's shoulder", c.sideEntry, read(leg, cord.Shoulder, cord.InSide), 1e-9)
	near(t, "side cord's shoulder", c.legEntry, -read(side, cord.Shoulder, cord.AtHead), 1e-9)
	near(t, "leg's bury", -c.sideEnd, read(side, cord.BuryEnd, cord.AtHead), 1e-6)
	near(t, "side cord's bury", c.legEnd, read(leg, cord.BuryEnd, cord.Alone), 1e-6)
	near(t, "leg's taper", c.sideTaper, read(leg, cord.Taper, cord.InSide), 1e-6)
	near(t, "side cord's taper", c.legTaper, -read(side, cord.Taper, cord.AtHead), 1e-6)
	if marks := strokes(Corner(&d), 26); len(marks) != 2 || math.Abs((marks[1]-marks[0])/76-(c.legEntry-c.sideEntry)/(c.legEnd-c.sideEnd)) > 1e-9 {
		t.Errorf("entries stand at %v", marks)
	}
}

// Round a tip a cord is as long as its gap, keeps half of both thicknesses off the tip's
// centre, and leaves the circle without a bend.
func TestParting(t *testing.T) {
	d := set(t, nil)
	spread, err := d.Cords.Splicing.Spread(3)
	if err != nil {
		t.Fatal(err)
	}
	const gap, round = 44.0, (8 + 3) / 2.0
	way := parting((gap-spread)/2, round)
	near(t, "length", way.Length(), gap, 0.01)
	for _, q := range way[1 : len(way)-1] {
		near(t, "off the centre", q.Len(), round, 1e-9)
	}
	near(t, "tangent", way[1].Dot(way[1].Minus(way[0]).Unit()), 0, 1e-9)
}

// On its tape a chain's nodes stand to scale, each with what a tape shows there.
func TestChainToScale(t *testing.T) {
	for name, d := range designs(t) {
		nodes := Readable(&d)
		p := Chain(&d)
		var texts []string
		var leaders []float64
		for _, it := range p.Items {
			switch it := it.(type) {
			case picture.Text:
				texts = append(texts, it.Text)
			case picture.Path:
				if l := it.Lines[0]; it.Stroke == picture.Quiet && it.Width == picture.Hair && len(it.Lines) == 1 && l[0].X == l[1].X {
					leaders = append(leaders, l[0].X)
				}
			}
		}
		slices.Sort(leaders)
		if len(leaders) != len(nodes) {
			t.Fatalf("%s: %d leaders for %d nodes", name, len(leaders), len(nodes))
		}
		last := nodes[len(nodes)-1].At
		for i, n := range nodes {
			near(t, name+", "+n.Spot.String(), leaders[i], 5+78*n.At/last, 1e-9)
			if !slices.ContainsFunc(texts, func(s string) bool { return strings.HasSuffix(s, " "+d.Rope(n.At)) }) {
				t.Errorf("%s: no lettering for %s at %s: %q", name, n.Spot, d.Rope(n.At), texts)
			}
		}
	}
}

// Before a last eye is made nothing can be read at it.
func TestReadable(t *testing.T) {
	whole, bare := set(t, nil), set(t, func(d *design.Design) { d.Leg.Diameter = 4.5 })
	all, some := Readable(&whole), Readable(&bare)
	if len(all) != len(some)+2 || all[len(all)-1].Spot.Kind != cord.Hook || some[len(some)-1].Spot.Kind != cord.Entry {
		t.Errorf("%v, and with a bare end %v", all, some)
	}
}

// Across, the channel, the eye pulled long (three cords) and the leg are to one scale.
func TestThreadingToScale(t *testing.T) {
	d := set(t, nil)
	p := Threading(&d)
	var channel, eye geom.Box
	for _, it := range p.Items {
		q, ok := it.(picture.Path)
		if !ok || !q.Filled {
			continue
		}
		b := q.Lines[0].Bounds()
		switch {
		case q.Fill == picture.Cloth:
			channel = b
		case q.Fill == picture.Body && b.Width() > 18:
			if eye.Width() == 0 {
				eye = b
			}
			eye = eye.Union(b)
		}
	}
	clear := d.Design.Passage().Clear
	k := (channel.Height() - 4) / clear // what lies under the innermost row apart
	near(t, "eye", eye.Height(), k*3*d.Design.Leg.Diameter, 0.3)
	if thick := set(t, func(d *design.Design) { d.Leg.Diameter = 4.5 }); Threading(&thick).Title != thick.Say.Splicing.LastEye.Title {
		t.Error("an eye that does not pass is drawn as one that does")
	}
}

// A set has the pictures of its own kind and no others.
func TestKinds(t *testing.T) {
	ids := func(change func(*design.Design)) string {
		d := set(t, change)
		var out []string
		for _, p := range pictures(&d) {
			out = append(out, p.ID)
		}
		return strings.Join(out, " ")
	}
	for _, row := range []struct {
		change      func(*design.Design)
		has, hasNot string
	}{
		{nil, "splice-corner splice-parting splice-chain splice-threading splice-trial splice-sliding", "splice-join splice-seized splice-hitched"},
		{func(d *design.Design) { d.Splice.Whole = true }, "splice-chain splice-join splice-seized splice-parting", "splice-corner splice-threading splice-fid-eye"},
		{func(d *design.Design) { d.Hang.Fastening = design.Hitched }, "splice-hitched", "splice-sliding"},
		{func(d *design.Design) { d.Hang.Fastening = design.FixedEye }, "splice-corner", "splice-hitched splice-sliding"},
		{func(d *design.Design) { d.Bar.TipDiameter = 0 }, "splice-corner", "splice-parting"},
	} {
		got := ids(row.change)
		for _, id := range strings.Fields(row.has) {
			if !strings.Contains(got, id) {
				t.Errorf("no %s: %s", id, got)
			}
		}
		for _, id := range strings.Fields(row.hasNot) {
			if strings.Contains(got, id) {
				t.Errorf("%s: %s", id, got)
			}
		}
	}
	if d := (given.Data{}); Splices(d.Cords) != nil || d.Cords.Nodes(1) != nil {
		t.Error("splices of no cords")
	}
}

// A bury is lock-stitched next to its entry, to scale, by three stitches one way and three
// back; a bury that is whole over less is stitched no further than that.
func TestLockStitches(t *testing.T) {
	d := set(t, nil)
	s := Splices(d.Cords)[0]
	near(t, "one stitch", LockStitch(s), 3*3, 1e-9)
	near(t, "all of them", LockRun(s), 27, 1e-9)
	along, back := 0.0, 0
	for _, it := range Locked(&d, s).Items {
		q, ok := it.(picture.Path)
		if !ok || q.Stroke != picture.Stitch && q.Stroke != picture.Second || len(q.Lines) != 1 {
			continue
		}
		switch a, b := q.Lines[0][0], q.Lines[0][len(q.Lines[0])-1]; {
		case q.Stroke == picture.Second && a.Y == 24 && max(a.X, b.X) < 60:
			back++
		case q.Stroke == picture.Stitch && a.Y == 47 && b.Y == 47:
			along = max(along, b.X-hostAt)
		}
	}
	long, _ := s.tail()
	near(t, "stitched on the cord", along/hostRoom, 27/long, 0.01)
	if back != 3 {
		t.Errorf("%d stitches go back", back)
	}
	short := set(t, func(d *design.Design) { d.Splice.EyeBury = 30 })
	whole, taper := Splices(short.Cords)[0].tail()
	near(t, "a short bury", LockRun(Splices(short.Cords)[0]), min(27, whole-taper), 1e-9)
}

// At a bar's tip the cords lie where the tip holds them, against its pin and its shoulder,
// all to one scale, whether or not the design says how thick the pin is.
func TestTipToScale(t *testing.T) {
	for name, change := range map[string]func(*design.Design){
		"as it is":  nil,
		"pin":       func(d *design.Design) { d.Bar.TipDiameter = 6 },
		"no pin":    func(d *design.Design) { d.Bar.TipDiameter = 0 },
		"solid bar": func(d *design.Design) { d.Bar.Outer, d.Bar.Wall = 12, 0 },
		"at end":    func(d *design.Design) { d.Bar.TipReach = 0 },
		"loops":     func(d *design.Design) { d.Splice.Whole = true },
	} {
		d := set(t, change)
		bar, thick := d.Design.Bar, d.Design.Side.Diameter
		p := Tip(&d)
		var rings []geom.Box
		pin := geom.EmptyBox()
		for _, it := range p.Items {
			q, ok := it.(picture.Path)
			if !ok || !q.Closed {
				continue
			}
			b := q.Lines[0].Bounds()
			switch {
			case q.Width == picture.Medium && math.Abs(b.Width()-b.Height()) < 0.06:
				rings = append(rings, b)
			case q.Width == picture.Thin && q.Stroke == picture.Main:
				pin = b // drawn after bar, plug and shoulder
			}
		}
		if len(rings) != 3 { // both cords, and the pin along the bar
			t.Fatalf("%s: %d rings", name, len(rings))
		}
		k := rings[0].Width() / thick
		near(t, name+", cord on its pin", rings[0].Min.Y, pin.Max.Y, 0.06)
		near(t, name+", cord under its pin", rings[1].Max.Y, pin.Min.Y, 0.06)
		near(t, name+", pin", rings[2].Width(), pin.Height(), 0.06)
		if bar.TipDiameter > 0 {
			near(t, name+", thickness of the pin", pin.Height(), k*bar.TipDiameter, 0.1)
		}
		near(t, name+", reach", rings[0].Center().X-min(42, 54-k*(bar.TipReach+1.5*thick)), k*bar.TipReach, 0.1)
		if got := TipWords(&d); (got.Caption == d.Say.Splicing.BareTip.Caption) != (bar.TipReach <= thick/2) {
			t.Errorf("%s: %q", name, got.Caption)
		}
	}
}

// Round its pin an eye's loop is as long as the cord in it, keeps half of both thicknesses
// off the pin's centre, and its throat reads what a tape shows there.
func TestEyeOnPin(t *testing.T) {
	d := set(t, nil)
	loop, reach, err := d.Cords.Splicing.Eye(3)
	if err != nil {
		t.Fatal(err)
	}
	round := (d.Cords.Splicing.Hook + 3) / 2
	way := roundEye(reach, round)
	near(t, "loop", 2*way.Length(), loop, 0.05)
	for _, q := range way[1:] {
		near(t, "off the centre", q.Len(), round, 1e-9)
	}
	near(t, "far side", way[len(way)-1].X, round, 1e-9)
	p := OnPin(&d)
	pin, throat := geom.EmptyBox(), 0.0
	for _, it := range p.Items {
		switch q, ok := it.(picture.Path); {
		case ok && q.Closed && q.Width == picture.Medium:
			pin = q.Lines[0].Bounds()
		case ok && !q.Closed && q.Stroke == picture.Main && q.Width == picture.Medium:
			throat = q.Lines[0][0].X
		}
	}
	k := pin.Width() / d.Cords.Splicing.Hook
	near(t, "throat", throat-pin.Center().X, k*reach, 0.1)
	if loops := set(t, func(d *design.Design) { d.Splice.Whole = true }); OnPin(&loops).Width != 0 {
		t.Error("loops have an eye")
	}
}
