package work_test

import (
	"fmt"
	"math"
	"os"
	"testing"

	"slingloft/cmd/slingloft/work"
	"slingloft/outline/bed"
	"slingloft/outline/design"
	"slingloft/outline/geom"
	"slingloft/outline/piece"
)

// laid is how far off a template came to lie, mm.
type laid struct {
	curve, end, told float64
}

// trueWithin is what a joined template may be off, mm.
const trueWithin = 0.2

// A template laid as its maker is told, by its straight edge and its end and nothing
// else, gives the net line of its piece wherever it is laid: for bars alike and unlike,
// halves and whole, net and straight cut, tails, caps and facings.
func TestTemplatesLie(t *testing.T) {
	_, demo := design.Demo()
	inches, err := os.ReadFile("../../../testdata/design/inches.toml")
	if err != nil {
		t.Fatal(err)
	}
	alike := []advice{{"bed.foot_bar", `"900 mm"`}, {"load.model", `"even"`}, {"bed.foot_tail", `"160 mm"`}, {"bed.foot_leg", `"880 mm"`}}
	longSheet := advice{"sheet.width", `"2000 mm"`} // a whole side fits on it
	with := func(base []advice, more ...advice) []advice { return append(append([]advice{}, base...), more...) }
	for _, tc := range []struct {
		name    string
		data    []byte
		changes []advice
		sides   int // templates of the side
	}{
		{"bars unlike, halves", demo, nil, 2},
		{"bars unlike, whole", demo, []advice{{"template.whole", "true"}, longSheet}, 1},
		{"bars unlike, straight cut", demo, []advice{{"bed.cut", `"straight"`}}, 2},
		{"bars very unlike", demo, []advice{{"bed.foot_bar", `"640 mm"`}, {"bed.foot_leg", `"700 mm"`}, {"cap.hem", `"12 mm"`}}, 2},
		{"walls unlike", demo, []advice{{"bed.foot_drop", `"390 mm"`}}, 2},
		{"facing", demo, []advice{{"channel.kind", `"facing"`}}, 2},
		{"straight caps", demo, []advice{{"cap.hollow", `"0 mm"`}}, 2},
		{"bars alike, halves alike", demo, alike, 1},
		{"bars alike, whole", demo, with(alike, advice{"template.whole", "true"}, longSheet), 1},
		{"bars alike, straight cut", demo, with(alike, advice{"bed.cut", `"straight"`}), 1},
		{"bars alike, halves unlike, leaning caps", inches, nil, 2},
		{"narrow, on the centre line", demo, []advice{{"bed.head_bar", `"420 mm"`}, {"bed.foot_bar", `"400 mm"`}, {"bed.side_depth", `"150 mm"`},
			{"bed.head_drop", `"300 mm"`}, {"template.backing", `"140 mm"`}, {"cap.hem", `"6 mm"`}}, 2},
	} {
		t.Run(tc.name, func(t *testing.T) {
			data := tc.data
			for _, c := range tc.changes {
				data = put(t, data, c.key, c.value)
			}
			p, err := work.ReadFor("x.toml", data, work.Setting{})
			if err != nil {
				t.Fatal(err)
			}
			pieces := map[string]piece.Piece{}
			for _, q := range p.Sewn.Pieces {
				pieces[q.ID] = q
			}
			count, covered := map[piece.BoardUse]int{}, map[string]int{}
			var worst laid
			for _, b := range p.Boards {
				if b.Kind != piece.Template {
					continue
				}
				count[b.Lie.For]++
				for _, place := range b.Lie.Places {
					covered[fmt.Sprint(b.Lie.For, place.Piece, place.End, place.Side, place.Part)]++
					got := lay(t, b, place, pieces[place.Piece])
					if got.curve > trueWithin || got.end > trueWithin || got.told > trueWithin {
						t.Errorf("%s, %+v: %+v mm off", b.ID, place, got)
					}
					worst = laid{max(worst.curve, got.curve), max(worst.end, got.end), max(worst.told, got.told)}
				}
			}
			if count[piece.SideBoard] != tc.sides || count[piece.TailBoard] != 2 || count[piece.CapBoard] != 2 {
				t.Errorf("templates %v, want %d of the side", count, tc.sides)
			}
			for what, n := range covered {
				if n != 1 {
					t.Errorf("%s is laid %d times", what, n)
				}
			}
			if want := map[int]int{1: 2, 2: 4}[tc.sides]; tc.sides == 1 && p.Design.Template.Whole == false && len(p.Boards[0].Lie.Places) != 4 ||
				tc.sides*len(p.Boards[0].Lie.Places) < want {
				t.Errorf("the side's templates are laid in %d places", len(p.Boards[0].Lie.Places))
			}
			t.Logf("curve %.4f, end %.4f, motion %.4f mm", worst.curve, worst.end, worst.told)
		})
	}
}

// lay lays a template as hands do: over or not, its straight edge along the line that
// it rests on with the template on the side that it gives, then pushed along until its
// end meets the line of that. A cap, which is cut free, counts from its own middle; a
// facing from its end.
func lay(t *testing.T, b piece.Piece, at piece.Place, on piece.Piece) laid {
	t.Helper()
	straight := b.Lie.Rests[0]
	out := at.Side.Sign() // from the line to the template
	along := geom.Pt(1, 0)
	off := geom.Pt(0, out*straight.Off)
	switch b.Lie.For {
	case piece.CapBoard:
		along, off = geom.Pt(0, 1), geom.Point{}
		out *= -at.End.Sign() // at the head the left half is the right one in the drawing
	case piece.FacingBoard:
		off, out = geom.Point{}, 1
		if at.Over {
			out = -1 // a facing that is sewn to the left is drawn to the right
		}
	}
	m := turnedTo(b, at.Over, straight.Edge, along, out)
	if b.Lie.For == piece.FacingBoard {
		m.Shift = cornerOf(on.Net, geom.Pt(-1, out)).Minus(m.Apply(b.Lie.Net[0][0]))
		return measured(t, b, at, on, m)
	}
	m.Shift = off.Minus(along.Left().Times(m.Apply(straight.Edge[0]).Dot(along.Left())))
	m.Shift = m.Shift.Plus(along.Times(pushed(t, b, at, on, m)))
	return measured(t, b, at, on, m)
}

// measured returns how far off a template lies after a motion.
func measured(t *testing.T, b piece.Piece, at piece.Place, on piece.Piece, m geom.Motion) laid {
	t.Helper()
	var got laid
	for _, r := range b.Lie.Rests[1:] {
		line := geom.NewArc(lineOf(t, r.On, at.End, on))
		for _, q := range r.Edge {
			_, d := line.Nearest(m.Apply(q))
			got.end = max(got.end, d)
		}
	}
	net := geom.NewArc(on.Net.Closed())
	for _, l := range b.Lie.Net {
		for i, q := range l {
			_, d := net.Nearest(m.Apply(q))
			got.curve = max(got.curve, d)
			if i > 0 {
				_, d = net.Nearest(m.Apply(q.Towards(l[i-1], 0.5)))
				got.curve = max(got.curve, d)
			}
			got.told = max(got.told, m.Apply(q).Dist(at.Motion.Apply(q)))
		}
	}
	return got
}

// cornerOf returns the point of a ring that lies farthest in a direction.
func cornerOf(r geom.Ring, way geom.Point) geom.Point {
	best := r[0]
	for _, p := range r {
		if p.Dot(way) > best.Dot(way) {
			best = p
		}
	}
	return best
}

// turnedTo returns the turn, over or not, that brings an edge parallel to a direction
// with the template on the side of it that out says, and the top of a cap up.
func turnedTo(b piece.Piece, over bool, edge geom.Polyline, along geom.Point, out float64) geom.Motion {
	way := edge[len(edge)-1].Minus(edge[0])
	var best geom.Motion
	for _, sense := range []float64{1, -1} {
		m := geom.Motion{Mirror: over}
		m.Turn = along.Times(sense).Angle() - m.Direction(way.Angle())
		middle := m.Apply(b.Cut.Bounds().Center()).Minus(m.Apply(edge[0]))
		side := middle.Dot(geom.Pt(-along.Y, along.X)) // to the left of along
		if along.Y == 1 {
			side = -side // a cap's halves lie to the right and the left of its middle
		}
		if side*out > 0 {
			best = m
		}
	}
	return best
}

// pushed returns how far along its straight edge a template is pushed.
func pushed(t *testing.T, b piece.Piece, at piece.Place, on piece.Piece, m geom.Motion) float64 {
	t.Helper()
	if b.Lie.For == piece.CapBoard { // its seam's middle lies at the zero of the drawing
		return -m.Apply(b.Lie.Rests[0].Edge[0]).Y
	}
	end := b.Lie.Rests[1]
	line := lineOf(t, end.On, at.End, on)
	q := m.Apply(end.Edge[len(end.Edge)-1])
	// Where the line passes the height of the template's corner.
	for i := 1; i < len(line); i++ {
		a, c := line[i-1], line[i]
		if (a.Y-q.Y)*(c.Y-q.Y) <= 0 && a.Y != c.Y {
			return a.Towards(c, (q.Y-a.Y)/(c.Y-a.Y)).X - q.X
		}
	}
	t.Fatalf("%s: its end at %v meets no line", b.ID, q)
	return 0
}

// lineOf returns the line on the cloth that is meant, each end run on by a little.
func lineOf(t *testing.T, on piece.Seen, end bed.End, p piece.Piece) geom.Polyline {
	t.Helper()
	bars := map[bed.End]geom.Polyline{}
	for _, l := range p.Lines {
		if l.Role == piece.BarLine {
			bars[bed.End(l.Index)] = runOn(l.Points)
		}
	}
	switch on {
	case piece.OnBarLine:
		return bars[end]
	case piece.OnHeadBarLine:
		return bars[bed.Head]
	case piece.OnFootBarLine:
		return bars[bed.Foot]
	case piece.OnMidBay:
		h, f := across(bars[bed.Head]), across(bars[bed.Foot])
		return geom.Polyline{geom.Pt((h+f)/2, -3000), geom.Pt((h+f)/2, 3000)}
	}
	t.Fatalf("no line %d", on)
	return nil
}

// across returns where a line across the body passes its centre line.
func across(l geom.Polyline) float64 {
	for i := 1; i < len(l); i++ {
		if a, b := l[i-1], l[i]; a.Y*b.Y <= 0 && a.Y != b.Y {
			return a.Towards(b, a.Y/(a.Y-b.Y)).X
		}
	}
	return math.NaN()
}

// runOn returns a line with both ends 5 mm longer.
func runOn(l geom.Polyline) geom.Polyline {
	n := len(l)
	first := l[0].Plus(l[0].Minus(l[1]).Unit().Times(5))
	last := l[n-1].Plus(l[n-1].Minus(l[n-2]).Unit().Times(5))
	return append(append(geom.Polyline{first}, l...), last)
}
