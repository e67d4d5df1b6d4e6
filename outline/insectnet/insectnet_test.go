package insectnet_test

import (
	"errors"
	"math"
	"math/rand/v2"
	"testing"

	"slingloft/outline/bed"
	"slingloft/outline/design"
	"slingloft/outline/designtest"
	"slingloft/outline/flat"
	"slingloft/outline/geom"
	"slingloft/outline/hung"
	"slingloft/outline/insectnet"
	"slingloft/outline/panel"
	"slingloft/outline/piece"
	"slingloft/outline/words"
)

func near(t *testing.T, what string, got, want, within float64) {
	t.Helper()
	if !(math.Abs(got-want) <= within) {
		t.Errorf("%s: %.9g, want %.9g", what, got, want)
	}
}

// made is a bed and the cover over it.
type made struct {
	d     design.Design
	shape hung.Shape
	sewn  panel.Sewn
	cover insectnet.Sewn
}

// make makes a design with a cover, as far as it goes.
func makeOf(d design.Design) (made, error) {
	m := made{d: d}
	var err error
	if m.shape, err = hung.Solve(hung.ProblemOf(d)); err != nil {
		return m, err
	}
	body, err := flat.Lay(&m.shape, d.Cap.Kind == design.Leaning)
	if err != nil {
		return m, err
	}
	if m.sewn, err = panel.Pieces(d, &m.shape, &body, "0123abcd", words.EnglishLettering()); err != nil {
		return m, err
	}
	on := insectnet.Bed{Reach: m.sewn.Reach, Long: m.sewn.SideNet.HungLength(), CapTops: m.sewn.CapTops,
		Notches: [2][]piece.Notch{m.sewn.NotchesOn(bed.Left), m.sewn.NotchesOn(bed.Right)}}
	s, err := insectnet.SpaceOf(d, &m.shape, on, 0)
	if err != nil {
		return m, err
	}
	m.cover, err = insectnet.Pieces(d, s, on, "0123abcd", words.EnglishLettering())
	return m, err
}

// demo returns the built-in design.
func demo(t *testing.T) design.Design {
	t.Helper()
	name, text := design.Demo()
	d, _, err := design.Read(name, text)
	if err != nil {
		t.Fatal(err)
	}
	return d
}

// covered returns the built-in design with a cover.
func covered(t *testing.T, change func(*design.Design)) made {
	t.Helper()
	d := demo(t)
	d.Cover = design.Defaults().Cover
	d.Cover.On = true
	if change != nil {
		change(&d)
	}
	m, err := makeOf(d)
	if err != nil {
		t.Fatal(err)
	}
	return m
}

// find returns a piece of the cover.
func (m made) find(t *testing.T, id string) piece.Piece {
	t.Helper()
	for _, p := range m.cover.Pieces {
		if p.ID == id {
			return p
		}
	}
	t.Fatalf("no piece %s", id)
	return piece.Piece{}
}

// between returns the net line of a piece from one of its lettered corners to the next.
func (m made) between(t *testing.T, id string, letter int) geom.Polyline {
	t.Helper()
	for _, c := range m.cover.Corners {
		if c.Piece != id {
			continue
		}
		from, to := c.At[letter], c.At[(letter+1)%len(c.At)]
		net := m.find(t, id).Net
		var out geom.Polyline
		for i := range 2 * len(net) {
			p := net[i%len(net)]
			if len(out) > 0 || p.Dist(from) < 1e-6 {
				out = append(out, p)
			}
			if len(out) > 1 && p.Dist(to) < 1e-6 {
				return out
			}
		}
	}
	t.Fatalf("%s has no edge %d", id, letter)
	return nil
}

func length3(l []geom.Point3) (sum float64) {
	for i := 1; i < len(l); i++ {
		sum += l[i].Minus(l[i-1]).Len()
	}
	return sum
}

func mirrored(l []geom.Point3) []geom.Point3 {
	out := make([]geom.Point3, len(l))
	for i, p := range l {
		out[i] = geom.Pt3(p.X, -p.Y, p.Z)
	}
	return out
}

func reversed(l []geom.Point3) []geom.Point3 {
	out := make([]geom.Point3, 0, len(l))
	for i := range l {
		out = append(out, l[len(l)-1-i])
	}
	return out
}

// at returns a place along a line in space.
func at(l []geom.Point3, s float64) geom.Point3 {
	for i := 1; i < len(l); i++ {
		step := l[i].Minus(l[i-1])
		if d := step.Len(); s <= d || i == len(l)-1 {
			return l[i-1].PlusTimes(step, s/d)
		} else {
			s -= d
		}
	}
	return l[0]
}

// gapOf hangs both edges of a seam by their own lengths and returns how far they come
// apart at most, at each part of the way.
func gapOf(a, b []geom.Point3) (gap float64) {
	la, lb := length3(a), length3(b)
	for i := range 201 {
		part := float64(i) / 200
		gap = max(gap, at(a, part*la).Minus(at(b, part*lb)).Len())
	}
	return gap
}

// hangs checks that the pieces of a cover, hung again, have the lengths of all their edges,
// and close with each other and with the bed; it returns the largest gap.
func hangs(t *testing.T, m made) (gap float64) {
	t.Helper()
	s := m.cover.Space
	rim, ridge := s.Side.Near, s.Side.Far
	n := len(rim) - 1
	ends := [2][]geom.Point3{{rim[0], ridge[0]}, {rim[n], ridge[n]}}
	low := [3][]geom.Point3{rim[:s.Tips[0]+1], rim[s.Tips[0] : s.Tips[1]+1], rim[s.Tips[1]:]}
	// Counter-clockwise round each panel, as it is lettered.
	round := map[string][][]geom.Point3{
		"cover-right": {low[0], low[1], low[2], ends[1], reversed(ridge), reversed(ends[0])},
		"cover-left":  {ends[0], ridge, reversed(ends[1]), reversed(low[2]), reversed(low[1]), reversed(low[0])},
	}
	for id, edges := range round {
		for i, e := range edges {
			flat := m.between(t, id, i)
			if off := math.Abs(flat.Length() - length3(e)); off > 1e-6 {
				t.Errorf("%s, edge %d: %g mm flat, %g mm hung", id, i, flat.Length(), length3(e))
			}
			if len(flat) != len(e) {
				t.Fatalf("%s, edge %d: %d points flat, %d hung", id, i, len(flat), len(e))
			}
			for k := 1; k < len(e); k++ {
				if off := math.Abs(flat[k].Dist(flat[k-1]) - e[k].Minus(e[k-1]).Len()); off > 1e-6 {
					t.Fatalf("%s, edge %d, point %d: %g mm longer flat", id, i, k, off)
				}
			}
		}
	}
	for e, end := range s.Ends {
		id := "cover-" + bed.End(e).String()
		hangOf := func(l geom.Polyline) (out []geom.Point3) {
			for _, p := range l {
				out = append(out, end.Ending.Point(geom.Pt(p.X*bed.End(e).Sign(), p.Y))) // as one sees it from outside
			}
			return out
		}
		// Its edges go up at x > 0 and down again: the left side of the bed at the foot's.
		up, down := hangOf(m.between(t, id, 1)), reversed(hangOf(m.between(t, id, 2)))
		left, right := up, down
		if bed.End(e) == bed.Head {
			left, right = down, up
		}
		gap = max(gap, gapOf(left, ends[e]), gapOf(right, mirrored(ends[e])))
		// The cap's top edge, and what the cap is sewn to.
		edge := hangOf(m.between(t, id, 0))
		onCap := edge[end.Cap[0] : end.Cap[1]+1]
		cap := hangOf(m.sewn.CapTops[e])
		if cap[0].Minus(onCap[0]).Len() > cap[len(cap)-1].Minus(onCap[0]).Len() {
			cap = reversed(cap)
		}
		gap = max(gap, gapOf(onCap, cap))
	}
	// The rim runs along the channel's outer fold: as far outside of the cord as told.
	out := m.d.Side.Diameter / 2
	if m.d.Channel.Kind == design.Facing {
		out = m.sewn.Reach
	}
	for _, p := range rim {
		y, z := m.shape.Cord(p.X)
		gap = max(gap, math.Abs(math.Hypot(p.Y-y, p.Z-z)-out))
	}
	return gap
}

// The flat pieces, hung again, have the lengths of all edges, and close round the bed.
func TestHangsAgain(t *testing.T) {
	for name, change := range map[string]func(*design.Design){
		"empty table":   nil,
		"at a height":   func(d *design.Design) { d.Cover.Height = 900 },
		"leaning caps":  func(d *design.Design) { d.Cap.Kind, d.Bed.HeadTail, d.Bed.FootTail = design.Leaning, 240, 240 },
		"straight caps": func(d *design.Design) { d.Cap.Hollow = 0 },
		"facing":        func(d *design.Design) { d.Channel.Kind = design.Facing },
		"loose":         func(d *design.Design) { d.Cover.Edge = design.LooseEdge },
	} {
		m := covered(t, change)
		gap := hangs(t, m)
		if gap > 0.01 {
			t.Errorf("%s: gap of %g mm", name, gap)
		}
		t.Logf("%s: largest gap %.2g mm, shear %.2f° at %.0f mm", name, gap, m.cover.Shear*180/math.Pi, m.cover.ShearX)
		for _, s := range m.cover.Seams {
			if !s.Within() {
				t.Errorf("%s: %s: %g mm remain", name, s, s.Remains)
			}
		}
	}
}

// So do those over random beds, or they are refused by a key of the cover, of its cloth or
// of what it is sewn to.
func TestRandomCovers(t *testing.T) {
	worst, made, refused := 0.0, 0, map[design.Key]int{}
	for n := range 60 {
		r := rand.New(rand.NewPCG(21, uint64(n)))
		d := designtest.Design(r)
		d.Cover = designtest.Cover(r)
		m, err := makeOf(d)
		var no *hung.Impossible
		switch {
		case err == nil:
			made++
			worst = max(worst, hangs(t, m))
		case errors.As(err, &no):
			refused[no.Key]++
		}
	}
	t.Logf("%d covers, largest gap %.2g mm; refused by %v", made, worst, refused)
	if made < 15 {
		t.Errorf("only %d covers", made)
	}
	if worst > 0.01 {
		t.Errorf("gap of %g mm", worst)
	}
}

// A zip lies inside of the lower edge as far as asked; the rows that hold it are longer and
// shorter than it by half its width times the angle by which its line turns.
func TestZip(t *testing.T) {
	m := covered(t, func(d *design.Design) { d.Cover.ZipLength, d.Cover.ZipUp = 1000, 70 })
	z := m.cover.Zip
	near(t, "length", z.Line.Length(), 1000, 1e-6)
	near(t, "stops", z.Stops[1]-z.Stops[0], 1000, 1e-6)
	bay := geom.NewArc(m.between(t, z.Piece, 4)) // the left panel's lower edge between the bars
	for i := 0; i < len(z.Line); i += 10 {
		_, off := bay.Nearest(z.Line[i])
		near(t, "height", off, 70, 0.01)
	}
	last := len(z.Line) - 1
	turn := z.Line[1].Minus(z.Line[0]).AngleTo(z.Line[last].Minus(z.Line[last-1]))
	near(t, "lower row", math.Abs(z.Rows[0]), m.d.Cover.ZipWidth/2*math.Abs(turn), 0.02)
	near(t, "upper row", z.Rows[1], -z.Rows[0], 0.02)
	near(t, "hangs", z.Hangs, 70-m.d.Cover.ZipWidth/2, 1e-9)

	end := covered(t, func(d *design.Design) { d.Cover.Zip, d.Cover.Height = design.ZipHead, 900 })
	if z := end.cover.Zip; z.Piece != "cover-head" || z.Line[0].X != 0 || z.Line[1].X != 0 || z.Rows != [2]float64{} {
		t.Errorf("zip up an end: %+v", z)
	}
}

// The ridge's cord: from apex to apex as far as they are apart, less the elastic as it
// hangs; one that carries has a fixed length.
func TestLine(t *testing.T) {
	m := covered(t, func(d *design.Design) { d.Cover.Travel = 40 })
	a, b := m.shape.Ends[hung.Head], m.shape.Ends[hung.Foot]
	far := math.Hypot(b.ApexX-a.ApexX, b.ApexZ-a.ApexZ)
	l := m.cover.Space.Line
	near(t, "from apex to apex", l.Between, far, 1e-9)
	near(t, "elastic as cut", l.Elastic, 80, 0)
	near(t, "cord", l.Cord, far-120, 1e-9)
	near(t, "cut", l.Cut, far-120+300, 1e-9)

	m = covered(t, func(d *design.Design) { d.Cover.Ridge = design.CarryingRidge })
	l = m.cover.Space.Line
	near(t, "cord that carries", l.Cord, far, 1e-9)
	near(t, "elastic of one that carries", l.Elastic+l.Stretch+l.ElasticCut, 0, 0)

	m = covered(t, func(d *design.Design) { d.Cover.Height = 900 })
	if l = m.cover.Space.Line; l.Between != 0 || l.Cut != 0 {
		t.Errorf("cord of a ridge between unknown anchors: %+v", l)
	}
}

// Between its ties a loose edge runs straight: on a side that bows like an arc of a chord c
// and a sagitta h, a quarter of it bows by about h/16.
func TestLooseEdge(t *testing.T) {
	m := covered(t, func(d *design.Design) { d.Cover.Edge = design.LooseEdge })
	if len(m.cover.Seams) != 5 { // ridge and corners alone
		t.Errorf("%d seams", len(m.cover.Seams))
	}
	s := m.cover.Space
	bay := s.Side.Near[s.Tips[0] : s.Tips[1]+1]
	mid := bay[0].Plus(bay[len(bay)-1]).Times(0.5)
	whole := math.Inf(1)
	for _, p := range bay {
		whole = min(whole, p.Minus(mid).Len())
	}
	if g := m.cover.Gap; g < whole/30 || g > whole/6 {
		t.Errorf("gap of %g mm where the bay bows by %g", g, whole)
	}
	around := 0.0
	for _, p := range m.cover.Pieces {
		around += p.Hem
	}
	near(t, "elastic", m.cover.Elastic, 0.8*around, 1e-9)
	// A tie at a bar goes round the bed there, less the net that hangs below the cords.
	bar, err := m.shape.SectionAt(-m.d.Bed.Span / 2)
	if err != nil {
		t.Fatal(err)
	}
	near(t, "tie at the head bar", m.cover.Ties[0], bar.Girth()+m.d.Side.Diameter-2*m.d.Cover.Lap+300, 1e-6)
	if len(m.cover.Ties) != len(m.sewn.SideNotches) {
		t.Errorf("%d ties at %d notches", len(m.cover.Ties), len(m.sewn.SideNotches))
	}
}

// A cover that cannot be is refused by the key that is at fault, and what is named does.
func TestRefused(t *testing.T) {
	for _, r := range []struct {
		key    design.Key
		change func(*design.Design)
		mend   func(*design.Design, float64)
	}{
		{design.KeyCoverHeight, func(d *design.Design) { d.Cover.Height = 300 }, func(d *design.Design, v float64) { d.Cover.Height = v }},
		{design.KeyCoverZipLength, func(d *design.Design) { d.Cover.ZipLength = 4000 }, func(d *design.Design, v float64) { d.Cover.ZipLength = v }},
		{design.KeyCoverZipUp, func(d *design.Design) { d.Cover.ZipUp = 590 }, func(d *design.Design, v float64) { d.Cover.ZipUp = v }},
		{design.KeyCoverCloth.In("width"), func(d *design.Design) { d.Cover.Own.On, d.Cover.Own.Cloth.Width = true, 300 },
			func(d *design.Design, v float64) { d.Cover.Own.Cloth.Width = v }},
	} {
		d := demo(t)
		d.Cover = design.Defaults().Cover
		d.Cover.On = true
		r.change(&d)
		_, err := makeOf(d)
		var no *hung.Impossible
		if !errors.As(err, &no) || no.Key != r.key || no.Bound == design.NoLimit {
			t.Errorf("%s: %v", r.key, err)
			continue
		}
		r.mend(&d, no.Limit)
		if _, err := makeOf(d); err != nil {
			t.Errorf("%s = %g: %v", r.key, no.Limit, err)
		}
	}
}
