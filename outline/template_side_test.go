package outline_test

import (
	"math"
	"math/rand/v2"
	"strconv"
	"strings"
	"testing"

	"slingloft/outline"
	"slingloft/outline/geom"
)

func TestSideTemplateHoldsCurveAndStraightEdge(t *testing.T) {
	curve := parabola(1440, 213, 0, 160)
	out, err := outline.SideTemplate("template-side", "SIDE", outline.SideCurve{Line: curve}, templateOptions())
	if err != nil {
		t.Fatal(err)
	}
	if len(out) != 1 {
		t.Fatalf("%d templates, want 1", len(out))
	}
	p := out[0]
	mustBeSound(t, p)
	// Area between curve and edge: the parabola's is two thirds of its rectangle.
	want := 1440*(213+70.0) - 1440*213*2/3.0
	if got := p.Cut.Area(); math.Abs(got-want) > 10 {
		t.Errorf("area %v, want %v", got, want)
	}
	if b := p.Cut.Bounds(); math.Abs(b.Width()-1440) > 1e-9 || math.Abs(b.Height()-283) > 1e-9 {
		t.Errorf("bounds %v × %v, want 1440 × 283", b.Width(), b.Height())
	}
}

// TestSideTemplateTicks reads the ticks back: those on the straight edge lie at
// whole steps, those on the curve at whole steps of its length.
func TestSideTemplateTicks(t *testing.T) {
	curve := parabola(1440, 213, 0.3, 160)
	out, err := outline.SideTemplate("template-side", "SIDE", outline.SideCurve{Line: curve}, templateOptions())
	if err != nil {
		t.Fatal(err)
	}
	arc := geom.NewArc(curve)
	var onEdge, onCurve int
	for _, l := range out[0].Lines {
		if !strings.HasPrefix(l.Name, "tick") {
			continue
		}
		foot := l.Points[0]
		n, err := strconv.Atoi(strings.Fields(l.Name)[1])
		if err != nil {
			t.Fatal(err)
		}
		s, dist := arc.Nearest(foot)
		switch {
		case dist < 1e-6:
			onCurve++
			if math.Abs(s-25*float64(n)) > 1e-6 {
				t.Errorf("tick %d of the curve at %v", n, s)
			}
		case math.Abs(foot.Y-out[0].Cut.Bounds().Min.Y) < 1e-9:
			onEdge++
			if math.Abs(foot.X-25*float64(n)) > 1e-9 {
				t.Errorf("tick %d of the edge at %v", n, foot.X)
			}
		default:
			t.Errorf("%s begins at %v, on no edge", l.Name, foot)
		}
	}
	if want := 57; onEdge != want {
		t.Errorf("%d ticks on the straight edge, want %d", onEdge, want)
	}
	if want := int(curve.Length() / 25); onCurve != want {
		t.Errorf("%d ticks on the curve, want %d", onCurve, want)
	}
}

// TestSideTemplateLettersEveryDepth checks the depths against the offsets table.
func TestSideTemplateLettersEveryDepth(t *testing.T) {
	curve := parabola(1440, 213, 0.3, 160)
	out, err := outline.SideTemplate("template-side", "SIDE", outline.SideCurve{Line: curve}, templateOptions())
	if err != nil {
		t.Fatal(err)
	}
	table, err := outline.Offsets(curve, 25)
	if err != nil {
		t.Fatal(err)
	}
	found := 0
	for _, o := range table[1 : len(table)-1] {
		for _, l := range out[0].Labels {
			if l.Turn != math.Pi/2 || math.Abs(l.At.X-o.Station) > 1e-6 {
				continue
			}
			found++
			if want := strconv.FormatFloat(o.Depth, 'f', 1, 64); l.Text != want {
				t.Errorf("depth at %v is lettered %s, want %s", o.Station, l.Text, want)
			}
		}
	}
	if found != 57 {
		t.Errorf("%d depths are lettered, want 57", found)
	}
}

func TestSideTemplateHalves(t *testing.T) {
	rows := []struct {
		name string
		skew float64
		want []string
	}{
		{"halves alike", 0, []string{"template-side"}},
		{"halves that differ", 0.3, []string{"template-side-head", "template-side-foot"}},
	}
	for _, row := range rows {
		curve := parabola(1440, 213, row.skew, 160)
		opts := templateOptions()
		opts.Whole = false
		long := curve.Length()
		notches := []outline.TemplateNotch{{Name: "L1", At: long / 4}, {Name: "L2", At: 3 * long / 4}}
		out, err := outline.SideTemplate("template-side", "SIDE", outline.SideCurve{Line: curve, Notches: notches}, opts)
		if err != nil {
			t.Fatalf("%s: %v", row.name, err)
		}
		var ids []string
		area := 0.0
		for _, p := range out {
			mustBeSound(t, p)
			ids = append(ids, p.ID)
			area += p.Cut.Area()
			if w := p.Cut.Bounds().Width(); math.Abs(w-720) > 1e-9 {
				t.Errorf("%s: %s is %v long, want 720", row.name, p.ID, w)
			}
		}
		if strings.Join(ids, " ") != strings.Join(row.want, " ") {
			t.Errorf("%s: templates %v, want %v", row.name, ids, row.want)
		}
		opts.Whole = true
		whole, err := outline.SideTemplate("template-side", "SIDE", outline.SideCurve{Line: curve}, opts)
		if err != nil {
			t.Fatal(err)
		}
		if want := whole[0].Cut.Area() * float64(len(out)) / 2; math.Abs(area-want) > 1e-6 {
			t.Errorf("%s: area %v, want %v", row.name, area, want)
		}
	}
}

// TestTemplatesOfRandomShapes builds templates of random curves: each is either
// sound or refused by name.
func TestTemplatesOfRandomShapes(t *testing.T) {
	r := rand.New(rand.NewPCG(2, 7))
	refused := 0
	const runs = 1500
	for i := range runs {
		var out []outline.Piece
		var err error
		opts := randomOptions(r)
		switch i % 3 {
		case 0:
			out, err = outline.SideTemplate("template-side", "SIDE", randomSide(r), opts)
		case 1:
			out = make([]outline.Piece, 1)
			out[0], err = outline.TailTemplate("template-tail-head", "TAIL HEAD", randomTail(r), opts)
		case 2:
			out = make([]outline.Piece, 1)
			out[0], err = outline.RingTemplate("template-facing", "FACING", randomBand(r), nil, opts)
		}
		if err != nil {
			refused++
			if !strings.HasPrefix(err.Error(), "template-") {
				t.Errorf("run %d: error %q does not name its piece", i, err)
			}
			continue
		}
		for _, p := range out {
			if err := faultOf(p); err != nil {
				t.Fatalf("run %d: %v", i, err)
			}
			if i%8 != 0 { // the strokes are slow to compare
				continue
			}
			if err := letteringFault(p); err != nil {
				t.Fatalf("run %d: %v", i, err)
			}
		}
	}
	if refused > runs/20 {
		t.Errorf("%d of %d plausible templates refused", refused, runs)
	}
}

func TestTemplateFaults(t *testing.T) {
	curve := outline.SideCurve{Line: parabola(1440, 213, 0, 20)}
	side := func(c outline.SideCurve, change func(*outline.TemplateOptions)) error {
		o := templateOptions()
		change(&o)
		_, err := outline.SideTemplate("template-side", "SIDE", c, o)
		return err
	}
	keep := func(*outline.TemplateOptions) {}
	shape := func(edges ...outline.TemplateEdge) error {
		_, err := outline.ShapeTemplate("template-x", "X", edges, templateOptions())
		return err
	}
	edge := func(name string, pts ...geom.Point) outline.TemplateEdge {
		return outline.TemplateEdge{Name: name, Line: pts}
	}
	off := curve
	off.Notches = []outline.TemplateNotch{{Name: "L1", At: math.NaN()}}
	rows := []struct {
		name string
		err  error
		want string
	}{
		{"small backing", side(curve, func(o *outline.TemplateOptions) { o.Backing = 10 }), "backing of 10 mm leaves no room"},
		{"no backing", side(curve, func(o *outline.TemplateOptions) { o.Backing = math.NaN() }), "leaves no room"},
		{"no tick", side(curve, func(o *outline.TemplateOptions) { o.Tick = 0 }), "not a positive length"},
		{"tiny tick", side(curve, func(o *outline.TemplateOptions) { o.Tick = 1e-3 }), "too small"},
		{"no curve", side(outline.SideCurve{}, keep), "fewer than two points"},
		{"tiny letters", shape(), "no edges"},
		{"open", shape(edge("A", geom.Pt(0, 0), geom.Pt(100, 0)), edge("B", geom.Pt(100, 0), geom.Pt(100, 90)),
			edge("C", geom.Pt(100, 90), geom.Pt(0, 50))), "stays open by 50 mm"},
		{"apart", shape(edge("A", geom.Pt(0, 0), geom.Pt(100, 0)), edge("B", geom.Pt(100, 0), geom.Pt(100, 90)),
			edge("C", geom.Pt(50, 90), geom.Pt(0, 0))), "edge 2 B ends 50 mm from edge 3 C"},
		{"flat", shape(edge("A", geom.Pt(0, 0), geom.Pt(100, 0)), edge("B", geom.Pt(100, 0), geom.Pt(0, 0))), "no area"},
		{"crossing", shape(edge("", geom.Pt(0, 0), geom.Pt(100, 0), geom.Pt(0, 100), geom.Pt(90, 120), geom.Pt(0, 0))), "crosses itself"},
		{"too small for its title", shape(edge("", geom.Pt(0, 0), geom.Pt(3, 0), geom.Pt(0, 3), geom.Pt(0, 0))), "no room on it to letter"},
	}
	for _, row := range rows {
		if row.err == nil || !strings.Contains(row.err.Error(), row.want) {
			t.Errorf("%s: error %v, want %q", row.name, row.err, row.want)
		}
	}
	if err := side(off, keep); err == nil {
		t.Error("a notch that is not finite is taken")
	}
}
