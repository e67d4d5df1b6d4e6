package divide_test

import (
	"fmt"
	"math"
	"math/rand/v2"
	"strings"
	"testing"

	"slingloft/outline/divide"
	"slingloft/outline/piece"
	"slingloft/outline/template"
	"slingloft/outline/template/templatetest"
	"slingloft/outline/words"

	sf "github.com/peterstace/simplefeatures/geom"

	"slingloft/outline/geom"
)

// assembled puts the parts back in their places and returns the outline that they
// have together and the holes and gaps inside it, by an independent library.
func assembled(parts []divide.Part) (geom.Ring, []geom.Ring, error) {
	var all []sf.Geometry
	for _, p := range parts {
		ring := p.Piece.Cut.Moved(p.Motion)
		var holes []geom.Ring
		for _, h := range p.Piece.Holes {
			holes = append(holes, h.Moved(p.Motion))
		}
		all = append(all, templatetest.PolygonOf(ring, holes...).AsGeometry())
	}
	for i := range all {
		for k, o := range all[:i] {
			if !parts[i].Piece.Cut.Moved(parts[i].Motion).Bounds().Overlaps(parts[k].Piece.Cut.Moved(parts[k].Motion).Bounds()) {
				continue
			}
			both, err := sf.Intersection(all[i], o)
			if err != nil {
				return nil, nil, err
			}
			if a := both.Area(); a > 1e-6 {
				return nil, nil, fmt.Errorf("parts overlap by %v mm²", a)
			}
		}
	}
	union, err := sf.UnionMany(all)
	if err != nil {
		return nil, nil, err
	}
	whole, ok := union.AsPolygon()
	if !ok {
		return nil, nil, fmt.Errorf("the parts together are a %s", union.Type())
	}
	ringOf := func(l sf.LineString) geom.Ring {
		var r geom.Ring
		for i := range l.Coordinates().Length() - 1 {
			xy := l.Coordinates().GetXY(i)
			r = append(r, geom.Pt(xy.X, xy.Y))
		}
		return r
	}
	var holes []geom.Ring
	for i := range whole.NumInteriorRings() {
		holes = append(holes, ringOf(whole.InteriorRingN(i)).CounterClockwise())
	}
	return ringOf(whole.ExteriorRing()).CounterClockwise(), holes, nil
}

// hausdorff returns the largest distance of a vertex of either ring from the
// other ring, which for polygons is the Hausdorff distance of the outlines.
func hausdorff(a, b geom.Ring) float64 {
	far := 0.0
	for _, pair := range [2][2]geom.Ring{{a, b}, {b, a}} {
		arc := geom.NewArc(pair[1].Closed())
		for _, p := range pair[0] {
			_, d := arc.Nearest(p)
			far = max(far, d)
		}
	}
	return far
}

// checkDivided returns what is wrong with the parts of p on sheets of w × h mm.
func checkDivided(p piece.Piece, parts []divide.Part, w, h float64, joint divide.Joint) error {
	for i, part := range parts {
		b := part.Piece.Cut.Bounds()
		if !(b.Width() <= w && b.Height() <= h || b.Width() <= h && b.Height() <= w) {
			return fmt.Errorf("part %d of %v × %v does not fit", i+1, b.Width(), b.Height())
		}
		if want := fmt.Sprintf("%s-%dof%d", p.ID, i+1, len(parts)); part.Piece.ID != want {
			return fmt.Errorf("part %d is called %s, want %s", i+1, part.Piece.ID, want)
		}
		if err := templatetest.FaultOf(part.Piece); err != nil {
			return err
		}
	}
	ring, gaps, err := assembled(parts)
	if err != nil {
		return err
	}
	if d := hausdorff(ring, p.Cut); d > 1e-6 {
		return fmt.Errorf("the joined outline is off by %v mm", d)
	}
	if d := ring.Area() - p.Cut.Area(); math.Abs(d) > 1e-3 {
		return fmt.Errorf("the joined area is off by %v mm²", d)
	}
	// Gaps are what the clearance takes along the tongues, three of 60 mm at
	// most to a joint, and two holes.
	joints := len(parts) - 1
	open := 0.0
	for _, g := range gaps {
		open += g.Area()
	}
	hole := math.Pi / 4 * math.Pow(max(3, 1.5*joint.Kerf), 2)
	if greatest := float64(joints) * (3*75*joint.Clearance + 2*hole); open > greatest {
		return fmt.Errorf("gaps of %v mm², at most %v", open, greatest)
	}
	return nil
}

// TestDivideTrueWhenJoined divides random templates and gauges for random sheets,
// puts the parts together and compares with the whole.
func TestDivideTrueWhenJoined(t *testing.T) {
	r := rand.New(rand.NewPCG(5, 11))
	const runs = 150
	divided, refused := 0, 0
	for i := range runs {
		p, ok := randomPiece(r, i)
		if !ok {
			continue
		}
		w, h := 120+500*r.Float64(), 120+400*r.Float64()
		joint := divide.NewJoint(3 * r.Float64() * r.Float64())
		parts, err := divide.Parts(p, w, h, joint, words.EnglishLettering().Boards)
		if err != nil {
			refused++
			if !strings.HasPrefix(err.Error(), p.ID) {
				t.Errorf("run %d: error %q does not name its piece", i, err)
			}
			continue
		}
		if len(parts) == 1 {
			continue
		}
		divided++
		if err := checkDivided(p, parts, w, h, joint); err != nil {
			t.Fatalf("run %d: %s on %.1f × %.1f: %v", i, p.ID, w, h, err)
		}
		for _, part := range parts {
			if err := templatetest.LetteringFault(part.Piece); err != nil {
				t.Fatalf("run %d: %v", i, err)
			}
		}
	}
	t.Logf("%d divided, %d refused of %d", divided, refused, runs)
	if divided < runs/2 || refused > runs/20 {
		t.Errorf("%d divided and %d refused of %d", divided, refused, runs)
	}
}

// randomPiece returns a random template or gauge, if its measures make one.
func randomPiece(r *rand.Rand, i int) (piece.Piece, bool) {
	opts := templatetest.RandomOptions(r)
	var p piece.Piece
	var err error
	switch i % 5 {
	case 0:
		var out []piece.Piece
		if out, err = template.Side("template-side", "SIDE", templatetest.RandomSide(r), opts); err == nil {
			p = out[0]
		}
	case 1:
		p, err = template.Tail("template-tail-head", "TAIL HEAD", templatetest.RandomTail(r), opts)
	case 2:
		p, err = template.Shape("template-facing", "FACING", templatetest.RandomBand(r), opts)
	case 3:
		marks := []template.GaugeMark{{Name: "END", At: 0}, {Name: "TAPER", At: 59},
			{Name: "SHOULDER", At: 170 + 20*r.Float64()}, {Name: "ENTRY", At: 180},
			{Name: "TIP", At: 300 + 400*r.Float64()}}
		p, err = template.StripGauge("gauge-cord", "CORD", marks, opts)
	case 4:
		marks := []template.GaugeMark{{Name: "TURN UNDER", At: 10},
			{Name: "HEM", At: 15 + 10*r.Float64()}, {Name: "FOLD", At: 30 + 30*r.Float64()}}
		p, err = template.PressGauge("gauge-press", "PRESS", marks, opts)
	}
	return p, err == nil
}

// TestDivideKeepsMarksAndTexts checks that nothing that is drawn on the whole is
// missing on its parts.
func TestDivideKeepsMarksAndTexts(t *testing.T) {
	out, err := template.Side("template-side", "SIDE",
		templatetest.Side(1440, 213, 0.3, 160, 450), templatetest.Options())
	if err != nil {
		t.Fatal(err)
	}
	p := out[0]
	parts, err := divide.Parts(p, 580, 380, divide.NewJoint(0.2), words.EnglishLettering().Boards)
	if err != nil {
		t.Fatal(err)
	}
	want, got := map[string]int{}, map[string]int{}
	marks, kept := 0.0, 0.0
	for _, l := range p.Lines {
		marks += l.Points.Length()
	}
	for _, l := range p.Labels {
		want[l.Text]++
	}
	for i, part := range parts {
		templatetest.MustBeSound(t, part.Piece)
		for _, l := range part.Piece.Lines {
			if !strings.HasPrefix(l.Name, "joint") {
				kept += l.Points.Length()
			}
		}
		for _, l := range part.Piece.Labels {
			got[l.Text]++
		}
		if title := fmt.Sprintf("SIDE %d OF %d", i+1, len(parts)); got[title] != 1 {
			t.Errorf("part %d has no title %q", i+1, title)
		}
	}
	if math.Abs(marks-kept) > 1 {
		t.Errorf("marks of %v mm on the whole, %v mm on the parts", marks, kept)
	}
	for text, n := range want {
		if text != p.Title && got[text] != n {
			t.Errorf("%q is lettered %d times on the parts, %d on the whole", text, got[text], n)
		}
	}
	for i := range len(parts) - 1 {
		if name := string(rune('A' + i)); got[name] != 2 {
			t.Errorf("joint %s is lettered %d times, want 2", name, got[name])
		}
	}
}

// TestDivideHolesLieAtTheirDistance measures the alignment holes of joined parts.
func TestDivideHolesLieAtTheirDistance(t *testing.T) {
	p, err := template.Tail("template-tail", "TAIL", templatetest.RandomTail(rand.New(rand.NewPCG(1, 1))), templatetest.Options())
	if err != nil {
		t.Fatal(err)
	}
	parts, err := divide.Parts(p, 300, 200, divide.NewJoint(0.2), words.EnglishLettering().Boards)
	if err != nil {
		t.Fatal(err)
	}
	var centres []geom.Point
	for _, part := range parts {
		for _, h := range part.Piece.Holes {
			centres = append(centres, h.Moved(part.Motion).Bounds().Center())
		}
	}
	if len(centres) != 2*(len(parts)-1) {
		t.Fatalf("%d holes for %d parts", len(centres), len(parts))
	}
	for _, c := range centres {
		near := math.Inf(1)
		for _, o := range centres {
			if o != c {
				near = min(near, math.Abs(c.Dist(o)-divide.JointHoles))
			}
		}
		if near > 0.01 {
			t.Errorf("no other hole lies %v mm from %v", divide.JointHoles, c)
		}
	}
}

// TestJointHoldsWithinTrueness moves one half of a joint against the other: a
// little play is there, and past 0.2 mm any way but back they would overlap.
func TestJointHoldsWithinTrueness(t *testing.T) {
	bar := piece.Piece{ID: "bar", Title: "BAR", Stock: piece.Board, Count: 1,
		Cut: geom.Box{Max: geom.Pt(400, 90)}.Ring()}
	for _, kerf := range []float64{0, 0.1, 0.2, 0.5, 3, 6} {
		parts, err := divide.Parts(bar, 260, 120, divide.NewJoint(kerf), words.EnglishLettering().Boards)
		if err != nil {
			t.Fatal(err)
		}
		if len(parts) != 2 {
			t.Fatalf("%d parts, want 2", len(parts))
		}
		fixed := templatetest.PolygonOf(parts[0].Piece.Cut.Moved(parts[0].Motion)).AsGeometry()
		overlap := func(dx, dy float64) float64 {
			m := parts[1].Motion
			m.Shift = m.Shift.Plus(geom.Pt(dx, dy))
			both, err := sf.Intersection(fixed, templatetest.PolygonOf(parts[1].Piece.Cut.Moved(m)).AsGeometry())
			if err != nil {
				t.Fatal(err)
			}
			return both.Area()
		}
		for _, d := range []geom.Point{{X: 0.21}, {Y: 0.21}, {Y: -0.21}, {X: -0.01}} {
			if overlap(d.X, d.Y) < 1e-4 {
				t.Errorf("kerf %v: the joint lets its part move by %v", kerf, d)
			}
		}
		for _, d := range []geom.Point{{X: 0.02}, {Y: 0.02}, {Y: -0.02}} {
			if a := overlap(d.X, d.Y); a > 1e-6 {
				t.Errorf("kerf %v: the joint has no play of %v, overlap %v mm²", kerf, d, a)
			}
		}
	}
}

// TestJointCornersTakeTheCutter measures every inner corner of the joint: three
// neighbouring points of an arc of radius r lie on a circle of it.
func TestJointCornersTakeTheCutter(t *testing.T) {
	bar := piece.Piece{ID: "bar", Title: "BAR", Stock: piece.Board, Count: 1,
		Cut: geom.Box{Max: geom.Pt(400, 90)}.Ring()}
	for _, kerf := range []float64{0.2, 1, 3, 6} {
		parts, err := divide.Parts(bar, 260, 120, divide.NewJoint(kerf), words.EnglishLettering().Boards)
		if err != nil {
			t.Fatal(err)
		}
		for _, part := range parts {
			r := part.Piece.Cut
			for i, b := range r {
				a, c := r[(i+len(r)-1)%len(r)], r[(i+1)%len(r)]
				cross := b.Minus(a).Cross(c.Minus(b))
				if cross > -1e-9 {
					continue // an outer corner or a straight
				}
				radius := a.Dist(b) * b.Dist(c) * a.Dist(c) / (-2 * cross)
				if radius < kerf/2 {
					t.Errorf("kerf %v: inner corner of radius %v at %v", kerf, radius, b)
				}
			}
		}
	}
}

func TestDivideLeavesWhatFits(t *testing.T) {
	p, err := template.Tail("template-tail", "TAIL", templatetest.RandomTail(rand.New(rand.NewPCG(1, 1))), templatetest.Options())
	if err != nil {
		t.Fatal(err)
	}
	b := p.Cut.Bounds()
	for _, sheet := range [][2]float64{{b.Width(), b.Height()}, {b.Height(), b.Width()}} {
		parts, err := divide.Parts(p, sheet[0], sheet[1], divide.NewJoint(0.2), words.EnglishLettering().Boards)
		if err != nil || len(parts) != 1 || parts[0].Piece.ID != p.ID || parts[0].Motion != (geom.Motion{}) {
			t.Errorf("Parts on %v: %d parts, %v; want the piece itself", sheet, len(parts), err)
		}
	}
}

func TestDivideFaults(t *testing.T) {
	box := func(w, h float64) piece.Piece {
		return piece.Piece{ID: "bar", Title: "BAR", Stock: piece.Board, Count: 1, Cut: geom.Box{Max: geom.Pt(w, h)}.Ring()}
	}
	cloth, bent := box(400, 90), box(400, 90)
	cloth.Stock = piece.Cloth
	bent.Cut[1].X = math.Inf(1)
	rows := []struct {
		name  string
		piece piece.Piece
		w, h  float64
		joint divide.Joint
		want  string
	}{
		{"no sheet", box(400, 90), 0, 100, divide.NewJoint(0.2), "bar: a sheet of 0 × 100 mm has no area"},
		{"sheet not a number", box(400, 90), math.NaN(), 100, divide.NewJoint(0.2), "has no area"},
		{"small sheet", box(400, 90), 40, 40, divide.NewJoint(0.2),
			"bar of 400 × 90 mm cannot be divided for sheets of 40 × 40 mm: a sheet must have"},
		{"too many parts", box(9000, 90), 100, 100, divide.NewJoint(0.2), "more than 64 parts"},
		{"thin piece", box(400, 12), 200, 100, divide.NewJoint(0.2), "no place found for a joint, which takes 33 mm"},
		{"wide kerf", box(400, 90), 200, 100, divide.NewJoint(7), "kerf of 7 mm"},
		{"loose", box(400, 90), 200, 100, divide.Joint{Clearance: 1}, "joint clearance of 1 mm"},
		{"cloth", cloth, 200, 100, divide.NewJoint(0.2), "not cloth"},
		{"not finite", bent, 200, 100, divide.NewJoint(0.2), "bar: "},
		{"empty", piece.Piece{ID: "bar", Stock: piece.Board}, 200, 100, divide.NewJoint(0.2), "does not run counter-clockwise"},
	}
	for _, row := range rows {
		_, err := divide.Parts(row.piece, row.w, row.h, row.joint, words.EnglishLettering().Boards)
		if err == nil || !strings.Contains(err.Error(), row.want) {
			t.Errorf("%s: error %v, want %q", row.name, err, row.want)
		}
	}
}
