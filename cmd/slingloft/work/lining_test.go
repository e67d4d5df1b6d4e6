package work_test

import (
	"math"
	"regexp"
	"strings"
	"testing"

	"slingloft/cmd/slingloft/work"
	"slingloft/outline/design"
	"slingloft/outline/geom"
	"slingloft/outline/piece"
)

// lined returns the plan of the built-in design with a lining and some of its values.
func lined(t *testing.T, changes ...advice) (work.Plan, []byte, error) {
	t.Helper()
	_, data := design.Demo()
	data = append(data, "\n[lining]\n"...)
	if len(changes) > 0 && changes[0].value == `"gathered"` {
		data = regexp.MustCompile(`(?m)^hollow = .*\n`).ReplaceAll(data, nil)
	}
	for _, c := range changes {
		data = put(t, data, c.key, c.value)
	}
	p, err := work.ReadFor("x.toml", data, work.Setting{})
	return p, data, err
}

// A lining that cannot be is refused by the key that is at fault, and the value that is
// named does.
func TestLiningAnswered(t *testing.T) {
	answered(t, lined, []answer{
		{design.KeyLiningPadLength, []advice{{"lining.pad_length", `"1800 mm"`}}},
		{design.KeyLiningPadWidth, []advice{{"lining.pad_width", `"900 mm"`}}},
		{design.KeyLiningPadWidth, []advice{{"lining.pad_width", `"699 mm"`}, {"lining.opening", `"foot"`}}},
		{design.KeyLiningPadShift, []advice{{"lining.pad_shift", `"600 mm"`}, {"lining.pad_length", `"700 mm"`}}},
		{design.KeyLiningPadThickness, []advice{{"lining.pad_thickness", `"140 mm"`}, {"lining.place", `"above"`}}},
		{design.KeyLiningCloth.In("width"), []advice{{"lining.cloth.name", `"tape"`}, {"lining.cloth.width", `"300 mm"`},
			{"lining.cloth.areal_density", `"40 g/m²"`}}},
	})
}

// Both layers have the same notches at the same hung lengths, and the lining's seams walk:
// what hangs beside each other is as long, and lying flat no stretch between notches has to
// be eased by more than a sleeve's head.
func TestLiningSewsToBody(t *testing.T) {
	for _, changes := range [][]advice{
		nil,
		{{"lining.place", `"above"`}},
		{{"lining.pad_thickness", `"50 mm"`}, {"lining.pad_width", `"500 mm"`}, {"lining.opening", `"left"`}},
		{{"cap.kind", `"leaning"`}, {"lining.opening", `"right"`}, {"bed.head_tail", `"300 mm"`}, {"bed.foot_tail", `"300 mm"`}},
		{{"cap.kind", `"gathered"`}, {"cap.hem", `"20 mm"`}},
		{{"bed.cut", `"straight"`}},
		{{"bed.side_curve", `"arc"`}, {"lining.pad_thickness", `"40 mm"`}},
		{{"channel.kind", `"facing"`}, {"lining.opening", `"foot"`}},
		{{"lining.cloth.name", `"thin"`}, {"lining.cloth.width", `"700 mm"`}, {"lining.cloth.areal_density", `"36 g/m²"`}},
	} {
		p, _, err := lined(t, changes...)
		if err != nil {
			t.Errorf("%v: %v", changes, err)
			continue
		}
		seams := 0
		for _, s := range p.Sewn.Seams {
			if s.Kind != piece.SideToLining && s.Kind != piece.EndToLining {
				continue
			}
			seams++
			if !s.Within() || math.Abs(s.Hung[0]-s.Hung[1]) > 1.5 {
				t.Errorf("%v: %s hangs %g mm against %g", changes, s, s.Hung[0], s.Hung[1])
			}
			for _, q := range s.Parts {
				if eased := math.Abs(q.Ease) / q.Flat[0]; eased > piece.HemGives {
					t.Errorf("%v: %s from %q to %q is eased by %.1f %%", changes, s, q.From, q.To, 100*eased)
				}
			}
		}
		if seams != 4 {
			t.Errorf("%v: %d seams to the lining, want 4", changes, seams)
		}
		strokes := func(kind func(piece.Kind) bool) map[string]int {
			out := map[string]int{}
			for _, q := range p.Sewn.Pieces {
				for _, l := range q.Lines {
					if kind(q.Kind) && l.Role == piece.NotchStroke && !strings.ContainsAny(l.Of[:1], "JN") {
						out[l.Of]++
					}
				}
			}
			return out
		}
		body, lining := strokes(piece.Kind.Body), strokes(piece.Kind.Lining)
		for name, n := range body {
			if lining[name] != n {
				t.Errorf("%v: notch %s has %d strokes on the body, %d on the lining", changes, name, n, lining[name])
			}
		}
		if len(body) != len(lining) || len(body) == 0 {
			t.Errorf("%v: notches %v on the body, %v on the lining", changes, body, lining)
		}
	}
}

// The lining's weight hangs from the cords with the body's, and is in the bill.
func TestLiningWeighs(t *testing.T) {
	p, _, err := lined(t)
	if err != nil {
		t.Fatal(err)
	}
	_, data := design.Demo()
	bare, err := work.ReadFor("x.toml", data, work.Setting{})
	if err != nil {
		t.Fatal(err)
	}
	if got, want := p.Shape.Problem.ClothWeight, 2*bare.Shape.Problem.ClothWeight; math.Abs(got-want) > 1e-12 {
		t.Errorf("cloth of %g N/mm² hangs from the cords, want %g", got, want)
	}
	if p.Mark == bare.Mark { // a little heavier, a little deeper
		t.Error("a lining changes nothing of the bed")
	}
}

// The templates of a lining, laid as they say, give its net line.
func TestLiningTemplatesLie(t *testing.T) {
	for _, changes := range [][]advice{nil, {{"template.whole", "true"}, {"sheet.width", `"2500 mm"`}}} {
		p, _, err := lined(t, changes...)
		if err != nil {
			t.Fatal(err)
		}
		var net geom.Arc
		for _, q := range p.Sewn.Pieces {
			if q.ID == piece.LiningID {
				net = geom.NewArc(q.Net.Closed())
			}
		}
		boards := 0
		for _, b := range p.Boards {
			if b.Lie.For != piece.LiningSideBoard && b.Lie.For != piece.LiningTailBoard {
				continue
			}
			boards++
			for _, at := range b.Lie.Places {
				if at.Piece != piece.LiningID {
					t.Errorf("%s lies on %s", b.ID, at.Piece)
				}
				for _, l := range b.Lie.Net {
					for _, q := range l.Moved(at.Motion) {
						if _, off := net.Nearest(q); off > 0.2 {
							t.Errorf("%s: %g mm off the net line", b.ID, off)
							break
						}
					}
				}
			}
		}
		if boards < 3 {
			t.Errorf("%d templates of the lining", boards)
		}
	}
}
