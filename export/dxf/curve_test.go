package dxf

import (
	"encoding/json"
	"fmt"
	"math"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"slingloft/export/readertest"
	"slingloft/outline/geom"
)

// groups returns a file of entities given as group codes and values in turn.
func groups(unit string, entities string) string {
	return strings.Join(strings.Fields("0 SECTION 2 HEADER 9 $INSUNITS 70 "+unit+" 0 ENDSEC 0 SECTION 2 ENTITIES "+entities+" 0 ENDSEC 0 EOF"), "\n") + "\n"
}

func onlyLine(t *testing.T, text string) (geom.Polyline, bool) {
	t.Helper()
	d, err := Read(strings.NewReader(text))
	if err != nil {
		t.Fatal(err)
	}
	if len(d.Lines) != 1 {
		t.Fatalf("%d lines", len(d.Lines))
	}
	return d.Lines[0].Points, d.Lines[0].Closed
}

// A circle as a rational B-spline of degree 2 with nine control points (Piegl and
// Tiller, The NURBS Book, 1997, example 7.2) is round, whatever the unit.
func TestSplineCircle(t *testing.T) {
	text := "0 SPLINE 8 0 70 13 71 2 72 12 73 9"
	for _, k := range []string{"0", "0", "0", "1", "1", "2", "2", "3", "3", "4", "4", "4"} {
		text += " 40 " + k
	}
	for i := range 9 {
		w := 1.0
		if i%2 == 1 {
			w = math.Sqrt2 / 2
		}
		text += fmt.Sprintf(" 41 %.17g", w)
	}
	for _, p := range []string{"1 0", "1 1", "0 1", "-1 1", "-1 0", "-1 -1", "0 -1", "1 -1", "1 0"} {
		x, y, _ := strings.Cut(p, " ")
		text += " 10 " + x + " 20 " + y + " 30 0"
	}
	for unit, mm := range map[string]float64{"4": 1, "1": 25.4, "6": 1000} {
		pts, closed := onlyLine(t, groups(unit, text))
		if !closed {
			t.Errorf("unit %s: open", unit)
		}
		for i, p := range pts {
			if next := pts[(i+1)%len(pts)]; math.Abs(p.Len()-mm) > 1e-9*mm || mm-p.Towards(next, 0.5).Len() > curveTolerance {
				t.Fatalf("unit %s: point %d at radius %g, chord %g inside, want %g", unit, i+1, p.Len(), mm-p.Towards(next, 0.5).Len(), mm)
			}
		}
	}
}

// The ellipse with half axes 5 and 3 has a perimeter of 25.526998863398124 (complete
// elliptic integral, 20 E(0.8)), and half of it ends at the far side.
func TestEllipse(t *testing.T) {
	whole, closed := onlyLine(t, groups("4", "0 ELLIPSE 8 0 10 100 20 50 11 0 21 5 40 0.6 41 0 42 6.283185307179586"))
	if got := geom.Ring(whole).Perimeter(); !closed || got > 25.526998863398124 || got < 25.52 {
		t.Errorf("perimeter %.6f, closed %v", got, closed)
	}
	for _, p := range whole {
		if r := math.Hypot((p.X-100)/3, (p.Y-50)/5); math.Abs(r-1) > 1e-9 {
			t.Fatalf("point %v is not on the ellipse", p)
		}
	}
	half, closed := onlyLine(t, groups("4", "0 ELLIPSE 8 0 10 0 20 0 11 5 21 0 40 0.6 41 0 42 3.141592653589793 230 -1"))
	last := half[len(half)-1]
	if closed || last.Dist(geom.Pt(-5, 0)) > 1e-9 || half[len(half)/2].Y > -2.9 {
		t.Errorf("half ends at %v by way of %v, closed %v", last, half[len(half)/2], closed)
	}
}

// ezdxf writes splines and ellipses and says where they run.
func TestCurvesOfAnotherWriter(t *testing.T) {
	const script = `
import sys, json, math, ezdxf
doc = ezdxf.new("R2000"); doc.units = 4
m = doc.modelspace()
s = m.add_open_spline([(0,0),(40,90),(80,-60),(120,70),(200,10)], degree=3)
r = m.add_rational_spline([(0,200),(50,260),(120,150),(180,240)], [1,3,0.5,1], degree=3)
e = m.add_ellipse((300,100), major_axis=(60,25), ratio=0.35, start_param=0.4, end_param=4.1)
doc.saveas(sys.argv[1])
out = []
for c in (s, r):
    out.append([[p.x, p.y] for p in c.construction_tool().approximate(200)])
out.append([[p.x, p.y] for p in e.vertices([0.4 + 3.7*i/200 for i in range(201)])])
json.dump(out, sys.stdout)
`
	path := filepath.Join(t.TempDir(), "curves.dxf")
	var want [][][2]float64
	if err := json.Unmarshal([]byte(readertest.Script(t, "ezdxf", script, path)), &want); err != nil {
		t.Fatal(err)
	}
	f, err := os.Open(path)
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	d, err := Read(f)
	if err != nil || len(d.Lines) != 3 {
		t.Fatalf("%d lines, %v", len(d.Lines), err)
	}
	for i, l := range d.Lines {
		arc := geom.NewArc(l.Points)
		for _, q := range want[i] {
			if _, off := arc.Nearest(geom.Pt(q[0], q[1])); off > 1.5*curveTolerance {
				t.Errorf("curve %d: %v lies %g mm off", i+1, q, off)
			}
		}
		if end := want[i][len(want[i])-1]; l.Points[len(l.Points)-1].Dist(geom.Pt(end[0], end[1])) > 1e-6 || l.Closed {
			t.Errorf("curve %d ends at %v, want %v; closed %v", i+1, l.Points[len(l.Points)-1], end, l.Closed)
		}
	}
}

func TestCurvesRefused(t *testing.T) {
	for _, row := range []struct{ entity, want string }{
		{"0 SPLINE 8 0 71 3", "without points"},
		{"0 SPLINE 8 0 71 3 10 0 20 0 10 1 20 1", "2 control points and 0 knots"},
		{"0 SPLINE 8 0 71 900 10 0 20 0", "degree 900"},
		{"0 SPLINE 8 0 71 1 40 3 40 2 40 1 40 0 10 0 20 0 10 1 20 1", "do not rise"},
		{"0 SPLINE 8 0 71 1 40 0 40 0 40 1 40 1 41 1 41 0 10 0 20 0 10 1 20 1", "weight 0"},
		{"0 INSERT 8 0 2 B 70 3 71 2 10 0 20 0", "rows and columns"},
	} {
		if _, err := Read(strings.NewReader(groups("4", row.entity))); err == nil || !strings.Contains(err.Error(), row.want) {
			t.Errorf("%s: %v, want it told of %q", row.entity, err, row.want)
		}
	}
}
