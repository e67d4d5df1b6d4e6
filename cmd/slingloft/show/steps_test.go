package show_test

import (
	"math"
	"strings"

	"slingloft/cmd/slingloft/work"
	"slingloft/export/sheet/wording"
	"slingloft/outline/design"
)

// What the figures of the steps are rounded to, mm: half of it is what they may be off,
// and a tenth more for the tables that they are held against.
const (
	onCloth = 0.5/2 + 0.06
	onRope  = 1.0/2 + 0.06
)

// work: the order of work gives figures that stand in other tables, or follow from
// them and the design.
func (s readSheet) work(p work.Plan) {
	d := p.Design
	bars := s.row("ends", "bar, between cord centres")
	drops := s.row("ends", "drop at the bar")
	for e, end := range []string{"head", "foot"} {
		s.near(end+" bar", s.fact("Cut the bars and fix their tips", end+" bar, cut length")[0], bars[e]-2*d.Bar.TipReach, onCloth)
		drop := [2]string{"cords above the bed bottom at the head bar", "at the foot bar"}[e]
		s.near(end+" drop", s.fact("Lie in it", drop)[0], drops[e], 0.6)
		angle := s.row("ends", "hang angle above the horizontal")[e]
		s.near(end+" angle", s.fact("Set the anchors", end+" hang line above the horizontal")[0], angle, 0)
		s.near(end+" corner", s.fact("Fit the bars and tack the tails", end+" leg")[0],
			s.row("ends", "of the leg, inside the channel of its tail")[e], onRope)
	}
	s.near("overall", s.fact("Lie in it", "apex to apex, horizontal")[0], s.row("summary", "overall length, apex to apex")[0], 0)
	shorter, apart := min(bars[0], bars[1]), s.fact("Lie in it", "cords apart at mid-bay")[0]
	s.near("mid-bay, wider than the bars never", shorter, max(apart, shorter), 0)
	s.near("bar to bar", s.fact("Lie in it", "bar to bar, along the bed bottom")[0], d.Bed.Span/math.Cos(float64(d.Bed.Lift)), 0.6)
	s.near("allowance", s.fact("Mark the cloth from plots, or with a cutter", "allowance at the body's sides")[0], d.Seam.Side, onCloth)
	s.near("channel", s.fact("Stitch the channels", "finished depth of the channel")[0], d.Channel.Depth, onCloth)
	s.pins(d)
	s.threads(d)
}

// pins: notches follow each other along the seam, whose end is the hung side of the
// seam walk.
func (s readSheet) pins(d design.Design) {
	last := 0.0
	for _, st := range s.steps() {
		if st.ID != "step-pin-strips" && st.ID != "step-pin-facings" {
			continue
		}
		for _, f := range st.Facts {
			if f.Name == wording.English().Order.EdgeLine {
				continue
			}
			at := figures(f.Value)
			if len(at) != 1 || at[0] <= last {
				s.Errorf("%s lies at %q, the one before at %g", f.Name, f.Value, last)
			}
			last = at[0]
		}
	}
	side := s.table("seam-walk").Rows[0]
	if !strings.Contains(side[0], "side") {
		s.Fatalf("the first seam is %q", side[0])
	}
	s.near("end of the side seam", last, figures(side[3])[0], onCloth)
	if d.Channel.Kind == design.Strip {
		// An opening has a bar's notch in its middle, further out by the turned-in end where
		// it is told from the strip's folded end: the same end as the seam's.
		head := s.fact("Work the openings", "head tip opening")
		s.near("head opening", (head[0]+head[1])/2, s.fact("Pin the channels", "L1, at the bar")[0], 2*onCloth)
	}
}

// threads: the marks that a loop is threaded by are those of its table; the nodes of a
// chain lie as far apart as the table of its side cord has them, but for the gaps' spread
// round their pins and what a light pull stretches, which both stay under 2 mm.
func (s readSheet) threads(d design.Design) {
	if !d.Splice.Whole {
		id := "cord-side-cord-marks"
		tip := s.nodes("head leg, tip")
		s.near("middle off the head tip", s.nodes("side cord, middle")-tip, figures(s.cells(id, "middle")[2])[0], 2)
		s.near("foot tip off the head tip", s.nodes("side cord, foot tip")-tip, figures(s.cells(id, "foot tip")[2])[0], 2)
		return
	}
	seen := 0
	for _, r := range s.table("cord-side-loop-marks").Rows {
		for _, st := range s.steps() {
			for _, f := range st.Facts {
				if st.ID == "step-thread-loops" && f.Name == r[0]+", from the start" {
					s.near(f.Name, figures(f.Value)[0], figures(r[1])[0], onRope)
					seen++
				}
			}
		}
	}
	if seen < 3 {
		s.Errorf("threaded by %d marks", seen)
	}
}

// nodes returns what the tape shows at a node, in the step that reads or checks them.
func (s readSheet) nodes(name string) float64 {
	for _, st := range s.steps() {
		for _, f := range st.Facts {
			if strings.HasSuffix(st.ID, "-nodes") && f.Name == name {
				return figures(f.Value)[0]
			}
		}
	}
	s.Fatalf("no node %q", name)
	return 0
}

// margins: each margin is what holds over the load, and met or not by what is required;
// lying, the loads are the forces' own, times the dynamic factor.
func (s readSheet) margins(p work.Plan) {
	rows := 0
	for _, t := range s.tables() {
		if !strings.HasPrefix(t.ID, "margins-") {
			continue
		}
		for i, r := range t.Rows {
			rows++
			load, required, verdict := figures(r[1])[0], figures(r[5])[0], r[6]
			holds, ratio := figures(r[3]), figures(r[4])
			if len(holds) == 0 {
				if verdict != "not given" || len(ratio) > 0 {
					s.Errorf("%s: %q", t.ID, r)
				}
				continue
			}
			// The load is printed to a newton, or to a hundredth of one a millimetre.
			unit := 0.5
			if strings.Contains(r[1], "/mm") {
				unit = 0.005
			}
			s.near(t.ID+", "+r[0]+", margin", ratio[0], holds[0]/load, 0.01+ratio[0]*unit/load+unit/load)
			bound := strings.HasPrefix(r[3], "≤")
			switch {
			case ratio[0] < required && verdict != "not met" && verdict != "accepted",
				ratio[0] > required && !bound && verdict != "met",
				bound && verdict == "met",
				t.Strong[i] != (verdict == "not met" || verdict == "accepted"):
				s.Errorf("%s: %q, strong %v", t.ID, r, t.Strong[i])
			}
		}
	}
	if rows < 20 {
		s.Errorf("%d checks", rows)
	}
	factor := 2.0
	if p.Design.Margins.Dynamic > 0 {
		factor = p.Design.Margins.Dynamic
	}
	for e, end := range []string{"head", "foot"} {
		s.near(end+" bar", s.row("margins-1", end+" bar buckling")[0], factor*s.row("forces", "thrust along the bar")[e], 1.6)
	}
	if !p.Design.Splice.Whole {
		s.near("side cord", s.row("margins-1", "side cord")[0], max(s.row("forces", "side cord tension at the bar tip, each")[0],
			s.row("forces", "side cord tension at the bar tip, each")[1]), 1)
	}
}

// lay: every piece lies on the roll, as large as it is cut, and uses what it should.
func (s readSheet) lay(p work.Plan) {
	for _, r := range s.table("lay-1-places").Rows {
		id := strings.ReplaceAll(strings.ToLower(strings.SplitN(r[0], " ", 2)[1]), " ", "-")
		cut, _ := s.piece("piece-" + id + "-figures")
		from, to, low, high := figures(r[1])[0], figures(r[2])[0], figures(r[3])[0], figures(r[4])[0]
		s.near(id+", along", to-from, cut[0], 3*onCloth)
		s.near(id+", across", high-low, cut[1], 3*onCloth)
		if from < 0 || low < 0 || high > p.Design.Cloth.Width {
			s.Errorf("%s lies from %g to %g on a roll %g wide", id, low, high, p.Design.Cloth.Width)
		}
		if roll := 1000 * figures(s.table("materials-list").Rows[0][1])[0]; to > roll {
			s.Errorf("%s ends at %g, %g mm are bought", id, to, roll)
		}
	}
}

// materials: cost is amount by price, together is the sum, and so with what weighs; what
// is bought of a cord is what is cut of it and the design's waste.
func (s readSheet) materials(p work.Plan) {
	cost := 0.0
	rows := s.table("materials-list").Rows
	for _, r := range rows[:len(rows)-1] {
		if price := figures(r[3]); len(price) > 0 {
			s.near(r[0], figures(r[4])[0], figures(r[1])[0]*price[0], 0.005+0.005*price[0])
			cost += figures(r[4])[0]
		} else if r[4] != "not given" {
			s.Errorf("%s costs %q without a price", r[0], r[4])
		}
	}
	s.near("together", figures(rows[len(rows)-1][4])[0], cost, 0.05)
	mass := 0.0
	rows = s.table("materials-mass").Rows
	for _, r := range rows[:len(rows)-1] {
		mass += figures(r[1])[0]
	}
	s.near("mass together", figures(rows[len(rows)-1][1])[0], mass, 0.5*float64(len(rows)))
	cords, cut := 0.0, 0.0
	for _, r := range s.table("materials-list").Rows {
		if !strings.HasPrefix(r[0], "Cord: ") {
			continue
		}
		parts := figures(r[2]) // for the cords, for all else that is cut, for mistakes
		if len(parts) == 0 {   // a line of the maker's own
			continue
		}
		sum := 0.0
		for _, m := range parts {
			sum += m
		}
		s.near(r[0], figures(r[1])[0], sum, 0.005*float64(len(parts)+1))
		s.near(r[0]+", for mistakes", parts[len(parts)-1], p.Design.Splice.Waste*parts[0], 0.01)
		cords += parts[0]
	}
	for _, st := range s.steps() {
		for _, f := range st.Facts {
			if v := figures(f.Value); st.Title == "Cut and mark the cords" && strings.Contains(f.Value, "×") {
				cut += v[0] * v[1] / 1000
			}
		}
	}
	s.near("cord that is cut", cords, cut, 0.03)
	bar := p.Design.Bar
	area := math.Pi / 4 * (bar.Outer*bar.Outer - math.Pow(bar.Outer-2*bar.Wall, 2))
	long := s.fact("Cut the bars and fix their tips", "head bar, cut length")[0] + s.fact("Cut the bars and fix their tips", "foot bar, cut length")[0]
	s.near("bars", s.row("materials-mass", "bars")[0], area*long*float64(bar.Density)*1e-6, 0.6)
}
