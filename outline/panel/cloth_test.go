package panel_test

import (
	"errors"
	"math"
	"math/rand/v2"
	"slices"
	"strings"
	"testing"

	"slingloft/outline/label"
	"slingloft/outline/panel"
	"slingloft/outline/piece"
	"slingloft/outline/words"

	sf "github.com/peterstace/simplefeatures/geom"

	"slingloft/outline/design"
	"slingloft/outline/designtest"
	"slingloft/outline/flat"
	"slingloft/outline/geom"
	"slingloft/outline/hung"
)

// polygon returns a ring as the judge's polygon, or why it is none.
func polygon(r geom.Ring) (sf.Polygon, error) {
	var c []float64
	for _, p := range r.Closed() {
		c = append(c, p.X, p.Y)
	}
	p := sf.NewPolygon([]sf.LineString{sf.NewLineString(sf.NewSequence(c, sf.DimXY))})
	return p, p.Validate()
}

// sew carries a design to its cloth pieces.
func sew(d design.Design) (panel.Sewn, error) {
	s, err := hung.Solve(hung.ProblemOf(d))
	if err != nil {
		return panel.Sewn{}, err
	}
	b, err := flat.Lay(&s, d.Cap.Kind == design.Leaning)
	if err != nil {
		return panel.Sewn{}, err
	}
	return panel.Pieces(d, &s, &b, "00000000", words.EnglishLettering())
}

// Every piece of a random design is closed, simple, counter-clockwise and finite,
// its finished line lies inside its cut line, and every seam fits.
func TestRandomCloth(t *testing.T) {
	const n = 60
	r := rand.New(rand.NewPCG(3, 5))
	sewn := 0
	for i := range n {
		d := designtest.Design(r)
		d.Cap.Kind = design.CapKind(r.IntN(3))
		d.Channel.Kind = design.ChannelKind(r.IntN(2))
		set, err := sew(d)
		if err != nil {
			var no *hung.Impossible
			if !errors.As(err, &no) && !refusedByName(err) {
				t.Errorf("design %d: %v", i, err)
			}
			if errors.Is(err, flat.ErrOpenEdge) {
				t.Errorf("design %d: %v\n%+v", i, err, d)
			}
			continue
		}
		sewn++
		for _, p := range set.Pieces {
			checkPiece(t, i, p)
		}
		for _, s := range set.Seams {
			if !s.Within() {
				t.Errorf("design %d: %s: %.3f mm remain, %.3f allowed", i, s, s.Remains, s.Tolerance)
			}
		}
		if t.Failed() {
			t.Fatalf("design %d: %+v\ncap %v channel %+v", i, d.Bed, d.Cap, d.Channel)
		}
	}
	t.Logf("%d of %d sewn", sewn, n)
	if sewn < n/2 {
		t.Errorf("only %d of %d random designs could be sewn", sewn, n)
	}
}

// refusedByName reports whether the flat pattern or the pieces refused the design
// in words that name what to change.
func refusedByName(err error) bool { return err != nil && len(err.Error()) > 20 }

func checkPiece(t *testing.T, i int, p piece.Piece) {
	t.Helper()
	for name, ring := range map[string]geom.Ring{"cut": p.Cut, "net": p.Net} {
		if _, err := polygon(ring); err != nil {
			t.Errorf("design %d: %s: %s line: %v", i, p.ID, name, err)
			continue
		}
		if !(ring.Area() > 0) {
			t.Errorf("design %d: %s: %s line runs clockwise", i, p.ID, name)
		}
	}
	if t.Failed() {
		return
	}
	cut, _ := polygon(p.Cut)
	net, _ := polygon(p.Net)
	out, err := sf.Difference(net.AsGeometry(), cut.AsGeometry())
	if err != nil || out.Area() > 1e-3 {
		t.Errorf("design %d: %s: %.4f mm² of the net line's area lie outside the cut line (%v)", i, p.ID, out.Area(), err)
	}
	// Cloth is laid as it is drawn or turned half round, its warp along the roll.
	for _, l := range p.Lines {
		if a, b := l.Points[0], l.Points[len(l.Points)-1]; l.Name == "grain" && len(l.Points) == 2 && a.Y != b.Y {
			t.Errorf("design %d: %s: the grain arrow runs from %v to %v", i, p.ID, a, b)
		}
	}
	arc := geom.NewArc(p.Cut.Closed())
	for _, l := range p.Lines {
		for _, q := range l.Points {
			if !q.Finite() {
				t.Errorf("design %d: %s: %s is not finite", i, p.ID, l.Name)
			}
			if p.Cut.Contains(q) {
				continue
			}
			if _, off := arc.Nearest(q); off > 0.01 {
				t.Errorf("design %d: %s: %s lies %.2f mm outside the cut line at %v", i, p.ID, l.Name, off, q)
			}
		}
	}
}

// The top corners of this design's head cap are so sharp that the cut is blunt there
// while the fold inside it would run to its point.
func TestFoldEndsAtSharpCorner(t *testing.T) {
	set, err := sew(designtest.Design(rand.New(rand.NewPCG(8, 367))))
	if err != nil {
		t.Fatal(err)
	}
	for _, p := range set.Pieces {
		checkPiece(t, 367, p)
	}
}

// The channel's reach: laid round the cord, the two layers are as deep as asked.
func TestReach(t *testing.T) {
	for _, c := range []struct{ depth, diameter float64 }{{20, 3}, {15, 5}, {40, 2}, {9, 4}} {
		e, err := panel.Reach(c.depth, c.diameter)
		if err != nil {
			t.Fatal(err)
		}
		// Half the loop round the cord, walked in small steps: the straight layer,
		// then the arc from its tangent point to the far side.
		r := c.diameter / 2
		tangent := math.Acos(r / e)
		walked := e * math.Sin(tangent)
		for k := range 1000 {
			a, b := tangent+(math.Pi-tangent)*float64(k)/1000, tangent+(math.Pi-tangent)*float64(k+1)/1000
			walked += math.Hypot(r*math.Cos(a)-r*math.Cos(b), r*math.Sin(a)-r*math.Sin(b))
		}
		if math.Abs(walked-c.depth) > 1e-4 {
			t.Errorf("Reach(%g, %g) = %.4f: its layers are %.4f deep", c.depth, c.diameter, e, walked)
		}
	}
	if _, err := panel.Reach(4, 3); err == nil {
		t.Error("a channel narrower than its cord was accepted")
	}
}

// A tail whose cord runs a few mm from tip to corner has no side seam inside a deep
// channel: the design is refused with a depth that does.
func TestSideConsumed(t *testing.T) {
	d := designtest.Design(rand.New(rand.NewPCG(8, 1)))
	d.Load, d.Cap.Kind = design.Load{Model: design.Even}, design.Leaning
	d.Bed = design.Bed{Span: 1589.7, HeadBar: 739.5, FootBar: 786.7, HeadValue: 273.3, Control: design.Thrust, ControlValue: 706.4,
		HeadTail: 213.5, FootTail: 89.5, HeadLeg: 987.7, FootLeg: 1017, HeadRadius: 108.4, SeatRadius: 108.4, FootRadius: 108.4}
	d.Sleeper.Mass, d.Side.Diameter, d.Leg.Diameter, d.Channel.Depth, d.Cap.Hollow = 76, 3.2, 3.2, 60, 0
	var no *hung.Impossible
	if _, err := sew(d); !errors.As(err, &no) || no.Key != design.KeyChannelDepth || no.Bound != design.AtMost {
		t.Fatalf("a channel 60 mm deep: %v", err)
	}
	d.Channel.Depth = no.Limit
	if _, err := sew(d); errors.As(err, &no) && no.Key == design.KeyChannelDepth {
		t.Errorf("%g mm, which would do: %v", d.Channel.Depth, err)
	}
}

// Every piece of cloth says where the face that it is lettered on lies, as the sheet
// explains it: body, panels and caps inside the bed, strips and facings inside the channel.
func TestFacesLettered(t *testing.T) {
	w := words.EnglishLettering()
	w.Cloth.FaceUp, w.Cloth.ShapeFace = "BED", "%s BED"
	w.Cloth.FaceIn, w.Cloth.OnFacing = "CHANNEL", "%s %s %s CHANNEL"
	name, text := design.Demo()
	d, _, err := design.Read(name, text)
	if err != nil {
		t.Fatal(err)
	}
	d.Cloth.Joins, d.Cloth.Flaws = 2, nil
	s, err := hung.Solve(hung.ProblemOf(d))
	if err != nil {
		t.Fatal(err)
	}
	b, err := flat.Lay(&s, false)
	if err != nil {
		t.Fatal(err)
	}
	seen := map[piece.Kind]int{}
	for _, width := range []float64{1500, 900} {
		for _, kind := range []design.ChannelKind{design.Strip, design.Facing} {
			d.Cloth.Width, d.Channel.Kind = width, kind
			sewn, err := panel.Pieces(d, &s, &b, "00000000", w)
			if err != nil {
				t.Fatal(err)
			}
			for _, p := range sewn.Pieces {
				want := "BED"
				if p.Kind == piece.Strip || p.Kind == piece.Facing {
					want = "CHANNEL"
					noneOver(t, p)
				}
				seen[p.Kind]++
				if !slices.ContainsFunc(p.Labels, func(l piece.Label) bool { return strings.Contains(l.Text, want) }) {
					t.Errorf("%s does not say that its face lies inside the %s", p.ID, want)
				}
			}
		}
	}
	for _, k := range []piece.Kind{piece.WholeBody, piece.BodyPanel, piece.Strip, piece.Facing, piece.Cap} {
		if seen[k] == 0 {
			t.Errorf("no piece of kind %d", k)
		}
	}
}

// noneOver looks for lettering that stands over other lettering.
func noneOver(t *testing.T, p piece.Piece) {
	t.Helper()
	for i, l := range p.Labels {
		for _, o := range p.Labels[:i] {
			if label.QuadOf(l).Overlaps(label.QuadOf(o)) {
				t.Errorf("%s: %q stands over %q", p.ID, l.Text, o.Text)
			}
		}
	}
}
