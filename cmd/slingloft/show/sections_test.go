package show_test

import (
	"context"
	"fmt"
	"math"
	"strings"
	"testing"

	"slingloft/cmd/slingloft/show"
	"slingloft/cmd/slingloft/work"
	"slingloft/export/sheet/wording"
	"slingloft/outline/design"
)

// Each section of the sheet against figures that are worked out another way, mostly
// from others that are printed: the built-in design laid out, others without a lay.
func TestSections(t *testing.T) {
	for name, whole := range map[string]bool{
		"demo": true, "ordinary_even_load": false, "degenerate_whole_loop": false, "ordinary_gathered": false,
	} {
		t.Run(name, func(t *testing.T) {
			p := planOf(t, name)
			s := readSheet{T: t}
			var err error
			if whole {
				l, e := p.Lay(context.Background(), work.Budget{})
				if e != nil {
					t.Fatal(e)
				}
				s.Sheet, err = show.Of(&p, l, wording.English())
			} else {
				s.Sheet, err = show.Unlaid(&p, wording.English())
			}
			if err != nil {
				t.Fatal(err)
			}
			s.forces(p)
			s.section(p)
			s.cordSums(p)
			s.seams()
			s.offsets()
			s.pieces(p)
			s.work(p)
			s.margins(p)
			if whole {
				s.place(p)
				s.lay(p)
				s.materials(p)
			}
		})
	}
}

// forces: both hooks carry sleeper, cloth and bars, pull level alike, and along their
// lines; two legs and two side cords press a bar as moments and corners demand.
func (s readSheet) forces(p work.Plan) {
	level, upright := s.row("forces", "pull at the apex, horizontal"), s.row("forces", "pull at the apex, vertical")
	const g = 9.80665
	load := float64(p.Design.Sleeper.Mass) * g
	up := upright[0] + upright[1]
	// What lies on the cloth hangs with it; cloth and bars come on top, some newtons. Feet
	// past the cloth do not.
	if up > load+15 || up < 0.9*load {
		s.Errorf("hooks carry %g N, the sleeper weighs %g N", up, load)
	}
	s.near("level pulls", level[0], level[1], 1)
	angle := s.row("ends", "hang angle above the horizontal")
	legs, sides := s.row("forces", "leg tension at the bar tip, each"), s.row("forces", "side cord tension at the bar tip, each")
	bars := s.row("ends", "bar, between cord centres")
	for e := range 2 {
		s.near("slope of a hang line", math.Atan2(upright[e], level[e])*180/math.Pi, angle[e], 0.15)
		// Half of the level pull runs along each side, so that no cord pulls less.
		if legs[e] < level[e]/2-1 || sides[e] < level[e]/2-1 {
			s.Errorf("end %d: leg %g, side cord %g, level pull of one side %g N", e, legs[e], sides[e], level[e]/2)
		}
		if thrust := s.row("forces", "thrust along the bar")[e]; thrust <= 0 || thrust > legs[e]+sides[e] {
			s.Errorf("end %d: thrust %g N over a bar of %g mm", e, thrust, bars[e])
		}
	}
	s.near("the largest pull", s.row("summary", "largest cord tension")[0], max(legs[0], legs[1], sides[0], sides[1]), 0.07*legs[0])
}

// section: a girth at a bar is two straight walls and an arc, tangent to each other, of
// the design's radius; from it follow half the opening and the drop. The apexes lie a
// leg away from the tips, or nearer where its cord bends.
func (s readSheet) section(p work.Plan) {
	bars, drops := s.row("ends", "bar, between cord centres"), s.row("ends", "drop at the bar")
	girths, walls := s.row("ends", "girth at the bar, cord to cord"), s.row("ends", "wall above the horizontal at the bar")
	legs, out := s.row("ends", "leg, bar tip to apex"), s.row("ends", "apex from mid-bay, horizontal")
	up := s.row("ends", "apex above the bed bottom")
	for e, r := range [2]float64{p.Design.Bed.HeadRadius, p.Design.Bed.FootRadius} {
		sin, cos := math.Sincos(walls[e] * math.Pi / 180)
		wall := girths[e]/2 - r*walls[e]*math.Pi/180
		s.near("half the opening", r*sin+wall*cos, bars[e]/2, 1)
		s.near("drop", r*(1-cos)+wall*sin, drops[e], 1)
		along := out[e] - p.Design.Bed.Span/2
		// The bottom line rises by the design's lift.
		tip := drops[e] - [2]float64{-1, 1}[e]*math.Tan(float64(p.Design.Bed.Lift))*p.Design.Bed.Span/2
		straight := math.Sqrt(along*along + bars[e]*bars[e]/4 + math.Pow(up[e]-tip, 2))
		if legs[e] < straight-3 || legs[e] > 1.06*straight {
			s.Errorf("end %d: leg %g, straight from tip to apex %g", e, legs[e], straight)
		}
	}
	s.near("overall", s.row("summary", "overall length, apex to apex")[0], out[0]+out[1], 1)
	// Without a place the apexes' difference is told, and with one the anchors'.
	if p.Hangs {
		s.near("one anchor above the other", s.row2("summary", "anchor above the"), math.Abs(p.Place.HeadAbove), 1)
	} else {
		s.near("one apex above the other", s.row2("summary", "apex above the"), math.Abs(up[0]-up[1]), 1)
	}
}

// row2 returns the first figure of the row whose name holds so.
func (s readSheet) row2(id, part string) float64 {
	s.Helper()
	for _, r := range s.table(id).Rows {
		if strings.Contains(r[0], part) {
			return figures(r[1])[0]
		}
	}
	s.Fatalf("table %s has no row that holds %q", id, part)
	return 0
}

// stock is what a cord is cut from.
func stock(p work.Plan, name string) string {
	for _, c := range p.Cords.Cords {
		if c.Part.String() == name {
			return c.Kind.Name
		}
	}
	return ""
}

// place: the hang lines' level runs and the hammock fill the distance, each hook stands
// its line's rise above its apex, and a pull is that of the forces along the line.
func (s readSheet) place(p work.Plan) {
	lines, hooks := s.row("place", "hang line, from apex to anchor"), s.row("place", "anchor above ground")
	apexes, angle := s.row("place", "to check afterwards: apex above ground"), s.row("ends", "hang angle above the horizontal")
	pulls, weights := s.row("place", "pull along the line"), s.row("place", "the same as a weight")
	level, upright := s.row("forces", "pull at the apex, horizontal"), s.row("forces", "pull at the apex, vertical")
	runs := 0.0
	for e := range 2 {
		sin, cos := math.Sincos(angle[e] * math.Pi / 180)
		runs += lines[e] * cos
		s.near("rise of a hang line", hooks[e]-apexes[e], lines[e]*sin, 3)
		s.near("pull", pulls[e], math.Hypot(level[e], upright[e]), 2)
		s.near("as a weight", weights[e], pulls[e]/9.80665, 1)
	}
	overall := s.row("summary", "overall length, apex to apex")[0]
	s.near("distance", runs+overall, p.Design.Hang.Distance, 4)
	s.near("bed above ground", s.row("place", "bed's lowest point above ground")[0], p.Design.Hang.Bed, 0.5)
	up := s.row("ends", "apex above the bed bottom")
	s.near("apexes over each other", apexes[0]-apexes[1], up[0]-up[1], 2)
	s.near("shelter", s.row("place", "least that covers it")[0], overall+2*200, 1)
}

// cordSums: terms add up to the cut length, each mark's ways from both ends too, and
// cut lengths are told alike wherever they stand.
func (s readSheet) cordSums(p work.Plan) {
	found := 0
	for _, t := range s.tables() {
		cord, ok := strings.CutPrefix(t.ID, "cord-")
		if !ok {
			continue
		}
		if cord, ok = strings.CutSuffix(cord, "-terms"); !ok {
			continue
		}
		found++
		sum, cut := 0.0, 0.0
		for i, r := range t.Rows {
			if v := figures(r[1])[0]; i < len(t.Rows)-1 {
				sum += v
			} else {
				cut = v
			}
		}
		s.near(cord+", terms", sum, cut, 0.05*float64(len(t.Rows)))
		last := -1.0
		for _, m := range s.table("cord-" + cord + "-marks").Rows {
			start, end := figures(m[1])[0], figures(m[2])[0]
			s.near(cord+", "+m[0], start+end, cut, 2*onRope)
			if start < last {
				s.Errorf("%s: %s stands at %g after %g", cord, m[0], start, last)
			}
			last = start
		}
		// What a tape shows after the last splice is how far the marks lie apart.
		spliced := map[string]float64{}
		for _, m := range s.table("cord-" + cord + "-marks").Rows {
			spliced[m[0]] = figures(m[3])[0]
		}
		rows := s.table("cord-" + cord + "-readings").Rows
		final := rows[len(rows)-1]
		a, okA := spliced[final[1]]
		b, okB := spliced[final[2]]
		if okA && okB {
			s.near(cord+", last reading", figures(final[4])[0], b-a, 3*onRope)
		}
		name := strings.ReplaceAll(cord, "-", " ")
		if v := s.fact("Cut and mark the cords", name+", of "+stock(p, name)); len(v) != 2 || math.Abs(v[1]-cut) > onRope {
			s.Errorf("%s: cut %g, the order of work says %v", name, cut, v)
		}
	}
	if found < 1 {
		s.Error("no cord")
	}
}

// seams: notch to notch adds up to the whole seam on both pieces, ease is what the
// first has more, and none remains beyond what is allowed.
func (s readSheet) seams() {
	for i, r := range s.table("seam-walk").Rows {
		var f []float64
		for _, c := range r[1:] {
			f = append(f, figures(c)[0])
		}
		flat, hung, ease, per100, remains, allowed := f[:2], f[2:4], f[4], f[5], f[6], f[7]
		var sum [3]float64
		parts := s.table(fmt.Sprintf("seam-%d-parts", i+1)).Rows
		for _, p := range parts {
			for k := range 3 {
				sum[k] += figures(p[2+k])[0]
			}
		}
		slack := 0.06 * float64(len(parts)+1)
		s.near(r[0]+", first piece", sum[0], flat[0], slack)
		s.near(r[0]+", second piece", sum[1], flat[1], slack)
		s.near(r[0]+", ease of its parts", sum[2], ease, slack)
		s.near(r[0]+", ease", flat[0]-flat[1], ease, 0.16)
		s.near(r[0]+", hung", hung[0]-hung[1], remains, 0.16)
		s.near(r[0]+", per 100", 100*ease/hung[1], per100, 0.011)
		if s.table("seam-walk").Strong[i] != (math.Abs(remains) > allowed) {
			s.Errorf("%s: %g remains of %g, marked %v", r[0], remains, allowed, s.table("seam-walk").Strong[i])
		}
	}
}

// offsets: a batten through the printed points is as long as the last column says, at
// each of them and at the end, which lies on the chord.
func (s readSheet) offsets() {
	found := 0
	for _, t := range s.tables() {
		if !strings.HasPrefix(t.ID, "offsets-") {
			continue
		}
		found++
		head := figures(t.Caption[strings.Index(t.Caption, "chord"):])
		var x, y, way float64
		for i, r := range t.Rows {
			station, depth, arc := figures(r[0])[0], figures(r[1])[0], figures(r[2])[0]
			if i > 0 {
				way += math.Hypot(station-x, depth-y)
			}
			// Chords cut corners: some tenths over a step, and at a bar the line has one.
			slack := 0.1 + 0.002*way
			if strings.HasSuffix(t.ID, "-tail") {
				slack += 0.7
			}
			if arc < way-0.11 || arc > way+slack {
				s.Errorf("%s: %g along the curve at %g, through the points it is %g", t.ID, arc, station, way)
			}
			x, y = station, depth
		}
		s.near(t.ID+", chord", x, head[0], 0.05)
		s.near(t.ID+", end", y, 0, 0)
		s.near(t.ID+", length", figures(t.Rows[len(t.Rows)-1][2])[0], head[1], 0.05)
	}
	if found < 2 {
		s.Errorf("%d offsets tables", found)
	}
}

// pieces: what is cut is the finished outline and its allowances; the body's four
// corners and its bar lines are trapeziums of two equal sides, whose diagonals follow
// from their sides by Ptolemy's theorem.
func (s readSheet) pieces(p work.Plan) {
	checks := func(name string) float64 { return s.row("piece-body-checks", name)[0] }
	if p.Design.Bed.Cut == design.Net && len(p.Sewn.Joins) == 0 {
		for _, d := range []string{"head left to foot right", "head bar line left to foot bar line right"} {
			other := strings.NewReplacer("left", "right", "right", "left").Replace(d)
			s.near(d, checks(d), checks(other), 0.1)
		}
		a, b := checks("head bar line left to head bar line right"), checks("foot bar line left to foot bar line right")
		side := checks("head bar line left to foot bar line left")
		s.near("diagonal between the bars", checks("head bar line left to foot bar line right"), math.Sqrt(side*side+a*b), 2*onCloth)
	}
	if p.Design.Channel.Kind == design.Strip {
		c := p.Design.Channel
		cut, net := s.piece("piece-channel-left-figures")
		s.near("strip, finished", net[1], 2*c.Depth, onCloth)
		s.near("strip, as cut", cut[1], net[1]+2*(c.TurnUnder+c.Foot), 2*onCloth)
		s.near("strip, length", cut[0], net[0]+2*p.Design.Seam.End, 2*onCloth)
	}
	cut, net := s.piece("piece-body-figures")
	if more := cut[1] - net[1]; more < 2*p.Design.Seam.Side-2*onCloth {
		s.Errorf("body cut %g wide, finished %g, %g a side", cut[1], net[1], p.Design.Seam.Side)
	}
	if more := cut[0] - net[0]; more < 2*min(p.Design.Seam.Cap, 2*p.Design.Cap.Hem)-2*onCloth {
		s.Errorf("body cut %g long, finished %g", cut[0], net[0])
	}
}

// piece returns a piece's measures as cut and finished, along and across.
func (s readSheet) piece(id string) (cut, net []float64) {
	s.Helper()
	cut, net = figures(s.cells(id, "as cut, along and across")[0]), figures(s.cells(id, "finished, along and across")[0])
	if len(cut) != 2 || len(net) != 2 {
		s.Fatalf("%s: as cut %v, finished %v", id, cut, net)
	}
	return cut, net
}
