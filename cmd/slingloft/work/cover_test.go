package work_test

import (
	"errors"
	"math"
	"testing"

	"slingloft/cmd/slingloft/work"
	"slingloft/outline/design"
	"slingloft/outline/geom"
	"slingloft/outline/piece"
)

// covered returns the plan of the built-in design with a cover and some of its values.
func covered(t *testing.T, changes ...advice) (work.Plan, []byte, error) {
	t.Helper()
	_, data := design.Demo()
	data = append(data, "\n[cover]\n"...)
	for _, c := range changes {
		data = put(t, data, c.key, c.value)
	}
	p, err := work.ReadFor("x.toml", data, work.Setting{})
	return p, data, err
}

// A cover that cannot be is refused by the key that is at fault, and the value that is
// named does.
func TestCoverAnswered(t *testing.T) {
	for _, r := range []struct {
		key     design.Key
		changes []advice
	}{
		{design.KeyCoverHeight, []advice{{"cover.height", `"300 mm"`}}},
		{design.KeyCoverZipLength, []advice{{"cover.zip_length", `"4 m"`}}},
		{design.KeyCoverZipLength, []advice{{"cover.zip_length", `"4 m"`}, {"cover.zip", `"head"`}, {"cover.height", `"900 mm"`}}},
		{design.KeyCoverZip, []advice{{"cover.height", `"620 mm"`}, {"cover.zip", `"head"`}}},
		{design.KeyCoverZipUp, []advice{{"cover.zip_up", `"600 mm"`}}},
		{design.KeyCoverCloth.In("width"), []advice{{"cover.cloth.name", `"tape"`}, {"cover.cloth.width", `"300 mm"`},
			{"cover.cloth.areal_density", `"30 g/m²"`}}},
	} {
		_, data, err := covered(t, r.changes...)
		var faults design.Faults
		if !errors.As(err, &faults) || faults[0].Key != r.key {
			t.Errorf("%s: %v", r.key, err)
			continue
		}
		all := advices(faults[0])
		if r.key == design.KeyCoverZip { // told as write zip = "left"
			all = []advice{{"cover.zip", `"left"`}}
		}
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

// The template of an edge, laid with its straight edge as far inside of the line between
// two corners as told, gives the net line.
func TestCoverTemplatesLie(t *testing.T) {
	p, _, err := covered(t)
	if err != nil {
		t.Fatal(err)
	}
	pieces := map[string]piece.Piece{}
	for _, q := range p.Sewn.Pieces {
		pieces[q.ID] = q
	}
	corners := map[string][]geom.Point{}
	for _, c := range p.Further.Cover.Corners {
		corners[c.Piece] = c.At
	}
	laid := map[string]int{}
	for _, b := range p.Boards {
		if b.Lie.For != piece.CoverBoard {
			continue
		}
		for _, at := range b.Lie.Places {
			laid[at.Piece]++
			net := geom.NewArc(pieces[at.Piece].Net.Closed())
			for _, q := range b.Lie.Net[0] {
				if _, off := net.Nearest(at.Motion.Apply(q)); off > 0.02 {
					t.Errorf("%s on %s: %g mm off the net line", b.ID, at.Piece, off)
					break
				}
			}
			straight := b.Lie.Rests[0].Edge.Moved(at.Motion)
			way := straight[1].Minus(straight[0]).Unit()
			tip := at.Motion.Apply(b.Lie.Net[0][0])
			if off := math.Abs(way.Cross(tip.Minus(straight[0]))); math.Abs(off+b.Lie.Rests[0].Off) > 1e-6 {
				t.Errorf("%s on %s: its straight edge lies %g mm from its corner, told %g", b.ID, at.Piece, off, -b.Lie.Rests[0].Off)
			}
		}
	}
	for _, id := range []string{"cover-left", "cover-right", "cover-head", "cover-foot"} {
		if laid[id] == 0 {
			t.Errorf("no template lies on %s: %v", id, laid)
		}
	}
}
