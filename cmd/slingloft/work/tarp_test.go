package work_test

import (
	"errors"
	"math"
	"testing"

	"slingloft/cmd/slingloft/work"
	"slingloft/outline/cord"
	"slingloft/outline/design"
	"slingloft/outline/geom"
	"slingloft/outline/piece"
)

// tarped returns the plan of the built-in design with a tarp and some of its values.
func tarped(t *testing.T, changes ...advice) (work.Plan, []byte, error) {
	t.Helper()
	_, data := design.Demo()
	data = append(data, "\n[tarp]\n"...)
	for _, c := range changes {
		data = put(t, data, c.key, c.value)
	}
	p, err := work.ReadFor("x.toml", data, work.Setting{})
	return p, data, err
}

// A tarp that cannot be is refused by the key that is at fault, and the value that is named
// does.
func TestTarpAnswered(t *testing.T) {
	answered(t, tarped, []answer{
		{design.KeyTarpPatch, []advice{{"tarp.patch", `"600 mm"`}}},
		{design.KeyTarpHem, []advice{{"tarp.hem", `"60 mm"`}, {"tarp.hollow", `"15 %"`}}},
		{design.KeyTarpHollow, []advice{{"tarp.hollow", `"15 %"`}, {"tarp.ridge", `"5000 mm"`}, {"tarp.width", `"1600 mm"`}}},
		{design.KeyTarpSide, []advice{{"tarp.shape", `"hexagon"`}, {"tarp.ridge", `"6000 mm"`}, {"tarp.side", `"1000 mm"`},
			{"tarp.width", `"1400 mm"`}}},
		{design.KeyTarpCloth.In("width"), []advice{{"tarp.cloth.name", `"tape"`}, {"tarp.cloth.width", `"200 mm"`},
			{"tarp.width", `"9000 mm"`}, {"tarp.cloth.areal_density", `"40 g/m²"`}}},
	})
}

// answer is the key that changes of a design are answered with.
type answer struct {
	key     design.Key
	changes []advice
}

// answered reads designs that cannot be and follows what is named.
func answered(t *testing.T, read func(*testing.T, ...advice) (work.Plan, []byte, error), rows []answer) {
	t.Helper()
	for _, r := range rows {
		_, data, err := read(t, r.changes...)
		var faults design.Faults
		if !errors.As(err, &faults) || faults[0].Key != r.key {
			t.Errorf("%s: %v", r.key, err)
			continue
		}
		all := advices(faults[0])
		if len(all) == 0 {
			t.Errorf("%s names no value that would do", err)
		}
		for _, a := range all {
			if err := whole(followed(t, data, a)); err != nil {
				t.Errorf("%v\nfollowed: %s = %s: %v", faults[0], a.key, a.value, err)
			}
		}
	}
}

// The shelter that is looked at is the tarp, and the ridge line is as long.
func TestTarpIsShelter(t *testing.T) {
	p, _, err := tarped(t)
	if err != nil {
		t.Fatal(err)
	}
	if p.Shelter.Ridge != p.Tarp.Ridge || p.Shelter.Spare < 0 {
		t.Errorf("shelter %+v under a ridge of %g", p.Shelter, p.Tarp.Ridge)
	}
	for _, c := range p.Cords.Cords {
		if c.Part == cord.RidgeLine && c.Cut <= p.Tarp.Ridge {
			t.Errorf("ridge line of %g mm under a ridge of %g", c.Cut, p.Tarp.Ridge)
		}
	}
}

// The template of a hollow edge, laid with its straight edge that far inside of the line
// between two corners and its end on that line's middle, gives the net line.
func TestHollowTemplatesLie(t *testing.T) {
	for _, changes := range [][]advice{
		{{"tarp.ridge_hollow", `"2 %"`}},
		{{"tarp.shape", `"hexagon"`}, {"tarp.curve", `"arc"`}},
		{{"tarp.join", `"across"`}, {"tarp.curve", `"parabola"`}},
		{{"tarp.join", `"none"`}, {"cloth.width", `"3000 mm"`}, {"template.whole", "true"}, {"sheet.width", `"3000 mm"`}},
	} {
		p, _, err := tarped(t, changes...)
		if err != nil {
			t.Fatal(changes, err)
		}
		pieces := map[string]piece.Piece{}
		for _, q := range p.Sewn.Pieces {
			pieces[q.ID] = q
		}
		corners := map[string][]geom.Point{}
		for _, c := range p.Further.Tarp.Corners {
			corners[c.Piece] = c.At
		}
		laid := map[string]int{}
		for _, b := range p.Boards {
			if b.Lie.For != piece.HollowBoard {
				continue
			}
			for _, at := range b.Lie.Places {
				laid[b.ID]++
				on := pieces[at.Piece]
				box, net := on.Net.Bounds(), geom.NewArc(on.Net.Closed())
				inside := 0
				for _, q := range b.Lie.Net[0] {
					q = at.Motion.Apply(q)
					if p.Design.Tarp.Join == design.AcrossJoin && !box.Expanded(-1).Contains(geom.Pt(box.Center().X, q.Y)) {
						continue // on another panel
					}
					inside++
					if _, off := net.Nearest(q); off > 0.02 {
						t.Errorf("%s on %s: %g mm off the net line", b.ID, at.Piece, off)
						break
					}
				}
				if inside == 0 {
					t.Errorf("%s lies on %s nowhere", b.ID, at.Piece)
				}
				straight := b.Lie.Rests[0].Edge.Moved(at.Motion)
				way := straight[1].Minus(straight[0]).Unit()
				tip := at.Motion.Apply(b.Lie.Net[0][0])
				if off := math.Abs(way.Cross(tip.Minus(straight[0]))); math.Abs(off+b.Lie.Rests[0].Off) > 1e-6 {
					t.Errorf("%s on %s: its straight edge lies %g mm from its corner, told %g", b.ID, at.Piece, off, -b.Lie.Rests[0].Off)
				}
				for _, c := range corners[at.Piece] {
					if c.Dist(tip) < 1e-6 {
						laid[at.Piece]++
					}
				}
			}
		}
		for _, id := range []string{"template-tarp-side", "template-tarp-end"} {
			if laid[id] == 0 {
				t.Errorf("%v: %s lies nowhere: %v", changes, id, laid)
			}
		}
	}
}
