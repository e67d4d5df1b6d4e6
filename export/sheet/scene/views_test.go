package scene

import (
	"math"
	"slices"
	"strings"
	"testing"

	"slingloft/export/sheet/given"
	"slingloft/export/sheet/picture"
	"slingloft/outline/geom"
	"slingloft/outline/hung"
)

// Every view stays in its frame, letters over no lettering and says what it shows, whatever
// the ends of the bed.
func TestViewsAreWhole(t *testing.T) {
	views := map[string]func(*given.Data) picture.Picture{"solid": Solid, "side": Side, "above": Above, "across": Across}
	for name, b := range shapes(t) {
		for view, draw := range views {
			p := draw(b.Data)
			for _, c := range p.Clashes() {
				t.Errorf("%s, %s: %q stands over %q", name, view, c[0], c[1])
			}
			for _, it := range p.Items {
				path, _ := it.(picture.Path)
				for _, l := range path.Lines {
					for _, q := range l {
						if !q.Finite() || q.X < -0.1 || q.Y < -0.1 || q.X > p.Width+0.1 || q.Y > p.Height+0.1 {
							t.Fatalf("%s, %s of %g by %g: %v lies outside", name, view, p.Width, p.Height, q)
						}
					}
				}
			}
			if p.Title == "" || strings.Contains(p.Desc, "%!") || p.Desc == "" {
				t.Errorf("%s, %s: %q says %q", name, view, p.Title, p.Desc)
			}
		}
	}
}

// lettered returns the texts of a picture.
func lettered(p picture.Picture) []string {
	var out []string
	for _, it := range p.Items {
		if t, ok := it.(picture.Text); ok {
			out = append(out, t.Text)
		}
	}
	return out
}

// The views letter the measures that make the bed.
func TestViewsTellMeasures(t *testing.T) {
	b := up(t)
	h, f := b.Shape.Ends[hung.Head], b.Shape.Ends[hung.Foot]
	for _, row := range []struct {
		name string
		got  []string
		want []string
	}{
		{"side", lettered(Side(b.Data)), []string{b.Round(b.Design.Bed.Span), b.Round(f.ApexX - h.ApexX), b.Round(h.Section.Height),
			b.Style.Angle(math.Atan(f.Slope)), "head bar", "foot bar"}},
		{"above", lettered(Above(b.Data)), []string{b.Round(h.Bar), b.Round(f.Bar), b.Round(h.Leg), b.Round(f.Leg)}},
		{"across", lettered(Across(b.Data)), []string{"head bar", "foot bar", "mid-bay", b.Round(h.Bar), b.Round(h.Section.Height)}},
	} {
		for _, want := range row.want {
			if !slices.Contains(row.got, want) {
				t.Errorf("%s: no %q in %q", row.name, want, row.got)
			}
		}
	}
}

// A section as it is drawn goes from cord to cord, symmetric, as long as the girth and
// lowest in its middle.
func TestSectionLine(t *testing.T) {
	s := up(t).Shape.Ends[hung.Head].Section
	line := sectionLine(s)
	last := len(line) - 1
	for i, want := range map[int]geom.Point{0: {X: -s.Half, Y: s.Height}, last: {X: s.Half, Y: s.Height}, last / 2: {}} {
		if line[i].Dist(want) > 1e-9*s.Half {
			t.Errorf("point %d lies at %v, want %v", i, line[i], want)
		}
	}
	// Chords of an arc of θ each are shorter by θ²/24.
	if short := s.Girth() - line.Length(); short < 0 || short > 1e-3*s.Girth() {
		t.Errorf("%g long, the girth is %g", line.Length(), s.Girth())
	}
}
