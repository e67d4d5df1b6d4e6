package template_test

import (
	"math"
	"math/rand/v2"
	"slices"
	"strings"
	"testing"

	"slingloft/outline/piece"
	"slingloft/outline/template"
	"slingloft/outline/template/templatetest"
)

// TestStripGaugeMarksLieAtTheirDistances reads the marks back off the upper edge.
func TestStripGaugeMarksLieAtTheirDistances(t *testing.T) {
	marks := []template.GaugeMark{{Name: "ENTRY", At: 180}, {Name: "END", At: 0}, {Name: "TAPER", At: 59}, {Name: "SHOULDER", At: 176}, {Name: "GAP", At: 183}, {Name: "TIP", At: 420}}
	p, err := template.StripGauge("gauge-cord-side", "CORD GAUGE SIDE", marks, templatetest.Options())
	if err != nil {
		t.Fatal(err)
	}
	templatetest.MustBeSound(t, p)
	var got []float64
	for _, l := range p.Lines {
		if l.Points[0].Y != p.Cut.Bounds().Max.Y {
			t.Errorf("%s begins off the upper edge", l.Name)
		}
		got = append(got, l.Points[0].X)
	}
	if want := []float64{0, 59, 176, 180, 183, 420}; !slices.Equal(got, want) {
		t.Errorf("marks at %v, want %v", got, want)
	}
	var texts []string
	for _, l := range p.Labels {
		texts = append(texts, l.Text)
	}
	for _, want := range []string{"END 0.0", "TAPER 59.0", "SHOULDER 176.0", "ENTRY 180.0", "GAP 183.0", "TIP 420.0"} {
		if !slices.Contains(texts, want) {
			t.Errorf("%q is not lettered: %q", want, texts)
		}
	}
}

// TestStepGaugeStepsLieAtTheirDistances measures each step from the scored line.
func TestStepGaugeStepsLieAtTheirDistances(t *testing.T) {
	rows := []struct {
		name  string
		build func(id, title string, m []template.GaugeMark, o template.Options) (piece.Piece, error)
		least float64
	}{
		{"press", template.PressGauge, 90},
		{"allowance", template.AllowanceGauge, 30},
	}
	marks := []template.GaugeMark{{Name: "SIDE", At: 15}, {Name: "END", At: 12}, {Name: "CAP", At: 12}, {Name: "JOIN", At: 18.5}}
	for _, row := range rows {
		p, err := row.build("gauge", "GAUGE", marks, templatetest.Options())
		if err != nil {
			t.Fatal(err)
		}
		templatetest.MustBeSound(t, p)
		var depths []float64
		for i, a := range p.Cut {
			b := p.Cut[(i+1)%len(p.Cut)]
			if a.Y == b.Y && a.Y < 0 {
				depths = append(depths, -a.Y)
				if b.X-a.X < row.least {
					t.Errorf("%s: step of %v is %v long, want %v", row.name, -a.Y, b.X-a.X, row.least)
				}
			}
		}
		if want := []float64{12, 15, 18.5}; !slices.Equal(depths, want) {
			t.Errorf("%s: steps %v, want %v", row.name, depths, want)
		}
		var score []piece.Line
		for _, l := range p.Lines {
			if l.Work == piece.Score {
				score = append(score, l)
			}
		}
		if len(score) != 1 || score[0].Points[0].Y != 0 || score[0].Points[1].Y != 0 {
			t.Errorf("%s: scored lines %v, want one at 0", row.name, score)
		}
	}
}

// TestRandomGaugesAreSound crowds marks of all kinds.
func TestRandomGaugesAreSound(t *testing.T) {
	r := rand.New(rand.NewPCG(3, 9))
	names := []string{"TAPER", "SHOULDER", "", "ENTRY of partner", "Größe", "M W, (x)"}
	for range 250 {
		var marks []template.GaugeMark
		for range 1 + r.IntN(12) {
			marks = append(marks, template.GaugeMark{Name: names[r.IntN(len(names))], At: 1 + 300*r.Float64()*r.Float64()})
		}
		opts := templatetest.RandomOptions(r)
		for _, build := range []func(string, string, []template.GaugeMark, template.Options) (piece.Piece, error){
			template.StripGauge, template.PressGauge, template.AllowanceGauge,
		} {
			p, err := build("gauge", "Gauge of all", marks, opts)
			if err != nil {
				t.Fatal(err)
			}
			templatetest.MustBeSound(t, p)
		}
	}
}

func TestGaugeFaults(t *testing.T) {
	rows := []struct {
		marks []template.GaugeMark
		want  string
	}{
		{nil, "no marks"},
		{[]template.GaugeMark{{Name: "A", At: math.NaN()}}, "is no distance"},
		{[]template.GaugeMark{{Name: "A", At: -1}}, "is no distance"},
		{[]template.GaugeMark{{Name: "A", At: math.Inf(1)}}, "is no distance"},
	}
	for _, row := range rows {
		_, strip := template.StripGauge("gauge", "G", row.marks, templatetest.Options())
		_, press := template.PressGauge("gauge", "G", row.marks, templatetest.Options())
		for _, err := range []error{strip, press} {
			if err == nil || !strings.Contains(err.Error(), row.want) {
				t.Errorf("marks %v: error %v, want %q", row.marks, err, row.want)
			}
		}
	}
	if _, err := template.PressGauge("gauge", "G", []template.GaugeMark{{Name: "A", At: 0.5}}, templatetest.Options()); err == nil {
		t.Error("a step of half a millimetre is taken")
	}
	opts := templatetest.Options()
	opts.Letter = 1
	if _, err := template.StripGauge("gauge", "G", []template.GaugeMark{{Name: "A", At: 5}}, opts); err == nil {
		t.Error("lettering of 1 mm is taken")
	}
}
