package template_test

import (
	"math"
	"math/rand/v2"
	"strconv"
	"strings"
	"testing"

	"slingloft/outline/geom"
	"slingloft/outline/piece"
	"slingloft/outline/template"
	"slingloft/outline/template/templatetest"
)

func TestSideTemplateHoldsCurveAndStraightEdge(t *testing.T) {
	out, err := template.Side("template-side", "SIDE", templatetest.Side(1440, 213, 0, 160, 450), templatetest.Options())
	if err != nil {
		t.Fatal(err)
	}
	if len(out) != 1 {
		t.Fatalf("%d templates, want 1", len(out))
	}
	p := out[0]
	templatetest.MustBeSound(t, p)
	// 450 less 213 and 70 mm are 167, so that the straight edge lies 165 mm out. Area
	// between curve and edge: the parabola's is two thirds of its rectangle.
	want := 1440*(450-165.0) - 1440*213*2/3.0
	if got := p.Cut.Area(); math.Abs(got-want) > 10 {
		t.Errorf("area %v, want %v", got, want)
	}
	if b := p.Cut.Bounds(); math.Abs(b.Width()-1440) > 1e-9 || math.Abs(b.Height()-285) > 1e-9 {
		t.Errorf("bounds %v × %v, want 1440 × 285", b.Width(), b.Height())
	}
}

// TestSideTemplateTicks reads the ticks back: those on the straight edge lie at
// whole steps, those on the curve at whole steps of its length.
func TestSideTemplateTicks(t *testing.T) {
	side := templatetest.Side(1440, 213, 0.3, 160, 450)
	curve := side.Line
	out, err := template.Side("template-side", "SIDE", side, templatetest.Options())
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

// TestSideTemplateLettersEveryWidth checks the widths against the offsets table: half
// the bar less the depth.
func TestSideTemplateLettersEveryWidth(t *testing.T) {
	side := templatetest.Side(1440, 213, 0.3, 160, 450)
	curve := side.Line
	out, err := template.Side("template-side", "SIDE", side, templatetest.Options())
	if err != nil {
		t.Fatal(err)
	}
	table, err := template.Offsets(curve, 25)
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
			if want := strconv.FormatFloat(450-o.Depth, 'f', 1, 64); l.Text != want {
				t.Errorf("width at %v is lettered %s, want %s", o.Station, l.Text, want)
			}
		}
	}
	if found != 57 {
		t.Errorf("%d widths are lettered, want 57", found)
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
		side := templatetest.Side(1440, 213, row.skew, 160, 450)
		opts := templatetest.Options()
		opts.Whole = false
		long := side.Line.Length()
		side.Notches = []template.Notch{{Name: "L1", At: long / 4}, {Name: "L2", At: 3 * long / 4}}
		out, err := template.Side("template-side", "SIDE", side, opts)
		if err != nil {
			t.Fatalf("%s: %v", row.name, err)
		}
		var ids []string
		area := 0.0
		for _, p := range out {
			templatetest.MustBeSound(t, p)
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
		whole, err := template.Side("template-side", "SIDE", side, opts)
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
		var out []piece.Piece
		var err error
		opts := templatetest.RandomOptions(r)
		switch i % 3 {
		case 0:
			out, err = template.Side("template-side", "SIDE", templatetest.RandomSide(r), opts)
		case 1:
			out = make([]piece.Piece, 1)
			out[0], err = template.Tail("template-tail-head", "TAIL HEAD", templatetest.RandomTail(r), opts)
		case 2:
			out = make([]piece.Piece, 1)
			out[0], err = template.Shape("template-facing", "FACING", templatetest.RandomBand(r), opts)
		}
		if err != nil {
			refused++
			if !strings.HasPrefix(err.Error(), "template-") {
				t.Errorf("run %d: error %q does not name its piece", i, err)
			}
			continue
		}
		for _, p := range out {
			if err := templatetest.FaultOf(p); err != nil {
				t.Fatalf("run %d: %v", i, err)
			}
			if i%8 != 0 { // the strokes are slow to compare
				continue
			}
			if err := templatetest.LetteringFault(p); err != nil {
				t.Fatalf("run %d: %v", i, err)
			}
		}
	}
	if refused > runs/20 {
		t.Errorf("%d of %d plausible templates refused", refused, runs)
	}
}

func TestTemplateFaults(t *testing.T) {
	curve := templatetest.Side(1440, 213, 0, 20, 450)
	side := func(c template.SideCurve, change func(*template.Options)) error {
		o := templatetest.Options()
		change(&o)
		_, err := template.Side("template-side", "SIDE", c, o)
		return err
	}
	keep := func(*template.Options) {}
	shape := func(edges ...template.Edge) error {
		_, err := template.Shape("template-x", "X", edges, templatetest.Options())
		return err
	}
	edge := func(name string, pts ...geom.Point) template.Edge {
		return template.Edge{ID: name, Line: pts}
	}
	off := curve
	off.Notches = []template.Notch{{Name: "L1", At: math.NaN()}}
	rows := []struct {
		name string
		err  error
		want string
	}{
		{"small backing", side(curve, func(o *template.Options) { o.Backing = 10 }), "backing of 10 mm leaves no room"},
		{"no backing", side(curve, func(o *template.Options) { o.Backing = math.NaN() }), "leaves no room"},
		{"no tick", side(curve, func(o *template.Options) { o.Tick = 0 }), "not a positive length"},
		{"tiny tick", side(curve, func(o *template.Options) { o.Tick = 1e-3 }), "too small"},
		{"no curve", side(template.SideCurve{}, keep), "fewer than two points"},
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
