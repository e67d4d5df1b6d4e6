package gcode

import (
	"bytes"
	"fmt"
	"math"
	"strings"
	"testing"

	"slingloft/export"
	"slingloft/export/readertest"
	"slingloft/outline/design"
	"slingloft/outline/geom"
	"slingloft/outline/piece"
)

func write(b *bytes.Buffer, d export.Drawing, o export.Options) error {
	return WriteFor(b, d, o, tried(design.Laser))
}

// programFor returns the program for the settings.
func programFor(t testing.TB, d export.Drawing, s Settings) string {
	t.Helper()
	w := func(b *bytes.Buffer, d export.Drawing, o export.Options) error { return WriteFor(b, d, o, s) }
	return string(readertest.Bytes(t, w, d, export.Options{}))
}

// tried is settings for each tool in which every kind of work is asked for by name,
// with values that nobody tried.
func tried(tool design.Tool) Settings {
	s := Defaults(tool)
	s.Of, s.Plunge, s.Safe = export.Material{Name: "card", Stock: piece.Board, Thickness: 0.6}, 300, 5
	light, cut := Job{Named: true, Feed: 3000, Power: 200, Passes: 1, Depth: 0.2}, Job{Named: true, Feed: 600, Power: 800, Passes: 1, Depth: 3}
	if tool == design.Router {
		light.Feed, light.Power, cut.Power, cut.Passes = 1200, 12000, 12000, 2
		s.Of.Thickness, s.Cutter, s.Kerf, s.SpinUp = 2.8, 3, 3, 2
	}
	if tool == design.Knife || tool == design.Pen {
		light.Depth, cut.Depth, cut.Feed, s.Trail = 0.1, 0.6, 1200, 0.25
	}
	for _, w := range piece.Works() {
		s.Jobs[w] = light
		if w == piece.CutInside || w == piece.CutOut {
			s.Jobs[w] = cut
		}
	}
	return s
}

// settings for each tool with all that it can do.
func settings(tool design.Tool) Settings {
	s := tried(tool)
	s.Lead = 4
	switch tool {
	case design.Laser:
		s.Kerf, s.Tabs, s.TabWidth = 0.2, 3, 2
	case design.Router:
		s.Kerf, s.Tabs, s.TabWidth, s.TabHeight = 3, 4, 5, 1
	case design.Knife:
		s.Trail = 0.6
	case design.Pen:
		s.Lead = 0
	}
	return s
}

// Without kerf and lead-in the beam follows the lines as they are.
func TestReadBack(t *testing.T) {
	for _, scale := range []float64{1, 0.2} {
		d := readertest.Drawing(t, scale, readertest.Hostile()...)
		o := export.Options{Scale: scale, Correct: [2]float64{1.004, 0.998}}
		read, plain := readertest.Read(t, write, Read, d, o)
		if len(read.Lines) != len(plain.Lines) || math.Abs(read.Width-plain.Width) > 1e-4 {
			t.Fatalf("%d lines on %g mm, want %d on %g", len(read.Lines), read.Width, len(plain.Lines), plain.Width)
		}
		for _, l := range plain.Lines {
			if l.Work == piece.Lettering {
				continue
			}
			got := readertest.Find(t, read, l.Name)
			if got.Work != l.Work || got.Closed != l.Closed || math.Abs(readertest.Length(got)-readertest.Length(l)) > 0.005 ||
				got.Points.Bounds().Min.Dist(l.Points.Bounds().Min) > 2e-4 {
				t.Errorf("%q read as %s, closed %v, %g mm; want %s, %v, %g", l.Name,
					got.Work, got.Closed, readertest.Length(got), l.Work, l.Closed, readertest.Length(l))
			}
		}
	}
}

// The kinds of work come in their order, so nothing is cut loose before all else.
func TestOrderOfWork(t *testing.T) {
	for _, tool := range design.Tools() {
		read, err := Read(strings.NewReader(programFor(t, readertest.Drawing(t, 1), settings(tool))))
		if err != nil {
			t.Fatal(err)
		}
		for i := 1; i < len(read.Lines); i++ {
			if read.Lines[i].Work < read.Lines[i-1].Work {
				t.Fatalf("%s: %s after %s", tool, read.Lines[i].Work, read.Lines[i-1].Work)
			}
		}
		if n := len(read.Lines); n == 0 || read.Lines[n-1].Work != piece.CutOut {
			t.Errorf("%s: the outlines do not come last", tool)
		}
	}
}

// A cut lies half a kerf in the waste, everywhere, and leaves the part whole.
func TestKerfToTheSideOfTheWaste(t *testing.T) {
	s := settings(design.Laser)
	s.Lead, s.Tabs = 0, 0
	for _, kerf := range []float64{0.1, 0.5, 3, 6} {
		s.Kerf = kerf
		d := readertest.Drawing(t, 1)
		read, err := Read(strings.NewReader(programFor(t, d, s)))
		if err != nil {
			t.Fatal(err)
		}
		for _, l := range d.Lines {
			if l.Work != piece.CutOut && l.Work != piece.CutInside {
				continue
			}
			part := geom.NewArc(geom.Ring(l.Points).Closed())
			cut := readertest.Find(t, read, l.Name)
			path := geom.NewArc(geom.Ring(cut.Points).Closed())
			inside := geom.Ring(l.Points).Contains
			for _, p := range cut.Points {
				if _, dist := part.Nearest(p); math.Abs(dist-kerf/2) > 0.01 || inside(p) != (l.Work == piece.CutInside) {
					t.Fatalf("kerf %g, %q: cut at %v is %g mm from the line, inside %v", kerf, l.Name, p, dist, inside(p))
				}
			}
			for _, p := range l.Points { // and no part of the line is cut off or left standing
				_, dist := path.Nearest(p)
				most := kerf/2 + 0.01
				if l.Work == piece.CutInside {
					most = kerf // a corner of the hole cannot be reached into
				}
				if dist < kerf/2-0.01 || dist > most {
					t.Fatalf("kerf %g, %q: corner %v is %g mm from the cut", kerf, l.Name, p, dist)
				}
			}
		}
	}
	s.Kerf = 17 // wider than the hole of 16 mm
	if err := WriteFor(&bytes.Buffer{}, readertest.Drawing(t, 1), export.Options{}, s); err == nil || !strings.Contains(err.Error(), "hole 1") {
		t.Errorf("a hole was cut with a tool wider than it: %v", err)
	}
}

// A hole as wide as the router's tool is drilled in its middle; a laser cannot.
func TestHoleOfTheToolsSize(t *testing.T) {
	s := settings(design.Router)
	s.Kerf = 16
	program := programFor(t, readertest.Drawing(t, 1), s)
	_, after, ok := strings.Cut(program, "( path sling-1/hole 1 )\n")
	middle := readertest.Find(t, readertest.Drawing(t, 1), "sling-1/hole 1").Points.Bounds().Center()
	want := "G0 " + fmt.Sprintf("X%.4f Y%.4f", middle.X, middle.Y) + "\nG1 Z-1.5000 F300.0000\nG0 Z5.0000\n"
	if !ok || !strings.HasPrefix(after, want) {
		t.Errorf("hole of the tool's size:\n%.200s\nwant\n%s", after, want)
	}
	s.Tool, s.Tabs = design.Laser, 0
	if err := WriteFor(&bytes.Buffer{}, readertest.Drawing(t, 1), export.Options{}, s); err == nil {
		t.Error("a laser beam of 16 mm cut a hole of 16 mm")
	}
}

// Every closed cut begins in the waste and touches no part on its way in.
func TestLeadIns(t *testing.T) {
	d := readertest.Drawing(t, 1)
	for tool := design.Laser; tool <= design.Router; tool++ {
		s := settings(tool)
		s.Tabs = 0
		cuts, err := s.plan(d)
		if err != nil {
			t.Fatal(err)
		}
		seen := 0
		for _, c := range cuts {
			if c.work != piece.CutOut && c.work != piece.CutInside {
				continue
			}
			seen++
			if c.noRoom {
				t.Errorf("%s: no lead-in for %q", tool, c.name)
				continue
			}
			for k := range 20 {
				p := c.start.Towards(c.moves[0].to, float64(k)/20)
				for _, l := range d.Lines {
					ring := geom.Ring(l.Points)
					if !l.Closed || (l.Work != piece.CutOut && l.Work != piece.CutInside) {
						continue
					}
					_, dist := geom.NewArc(ring.Closed()).Nearest(p)
					if dist < s.Kerf/2-0.01 {
						t.Fatalf("%s: lead-in to %q passes %q at %g mm", tool, c.name, l.Name, dist)
					}
					if l.Work == piece.CutOut && c.work == piece.CutOut && ring.Contains(p) {
						t.Fatalf("%s: lead-in to %q runs in the part %q", tool, c.name, l.Name)
					}
					if l.Name == c.name && c.work == piece.CutInside && !ring.Contains(p) {
						t.Fatalf("%s: lead-in to %q runs in the part around it", tool, c.name)
					}
				}
			}
		}
		if seen != 4 {
			t.Errorf("%s: %d closed cuts, want 4", tool, seen)
		}
	}
}

// What is left of the outlines are tabs, as many and as wide as asked for.
func TestTabs(t *testing.T) {
	d := readertest.Drawing(t, 1)
	s := settings(design.Laser)
	s.Lead = 0
	cuts, err := s.plan(d)
	if err != nil {
		t.Fatal(err)
	}
	for _, c := range cuts {
		at, gaps, left, before := c.start, 0, 0.0, false
		for _, m := range c.moves {
			if m.lifted {
				left += at.Dist(m.to)
				if !before {
					gaps++
				}
			}
			before, at = m.lifted, m.to
		}
		want := 0
		if c.work == piece.CutOut {
			want = s.Tabs
		}
		if gaps != want || math.Abs(left-float64(want)*(s.TabWidth+s.Kerf)) > 1e-6 {
			t.Errorf("%q: %d tabs of %g mm in all", c.name, gaps, left)
		}
	}
}

// A router's tabs are only as high as asked for: it goes down to the depth that
// is left above them, and to no other.
func TestRouterDepths(t *testing.T) {
	s := settings(design.Router)
	program := programFor(t, readertest.Drawing(t, 1), s)
	depths := map[string]bool{}
	for _, line := range strings.Split(program, "\n") {
		var z float64
		if n, _ := fmt.Sscanf(line, "G1 Z%f", &z); n == 1 {
			depths[fmt.Sprint(z)] = true
		}
	}
	// Marks at 0.2; cuts at half and whole depth of 3 mm, tabs of 1 mm.
	if want := "map[-0.2:true -1.5:true -2:true -3:true]"; fmt.Sprint(depths) != want {
		t.Errorf("depths %v, want %s", depths, want)
	}
}

// The tip of the knife, which is dragged behind its holder, comes along every
// line: a simulation in small steps, in which the tip is pulled straight towards
// the holder.
func TestKnifeTipFollowsTheLines(t *testing.T) {
	s := settings(design.Knife)
	s.Lead = 0
	d := readertest.Drawing(t, 1)
	cuts, err := s.plan(d)
	if err != nil {
		t.Fatal(err)
	}
	for _, c := range cuts {
		if c.work == piece.Lettering || len(c.moves) == 0 {
			continue
		}
		l := readertest.Find(t, d, c.name)
		pts := l.Points
		if l.Closed {
			pts = geom.Ring(pts).Closed()
		}
		line := geom.NewArc(pts)
		tip := c.start.Minus(c.moves[0].to.Minus(c.start).Unit().Times(s.Trail))
		worst, cutLength := 0.0, 0.0
		for _, p := range densely(c) {
			next := p.Plus(tip.Minus(p).Unit().Times(s.Trail))
			cutLength += next.Dist(tip)
			tip = next
			_, off := line.Nearest(tip)
			worst = math.Max(worst, off)
		}
		if worst > 0.02 || math.Abs(cutLength-line.Length()) > 0.1 {
			t.Errorf("%q: the tip strays by %.4f mm and cuts %g mm of %g", c.name, worst, cutLength, line.Length())
		}
	}
}

// densely returns the holder's way in steps of about 0.01 mm.
func densely(c cut) geom.Polyline {
	var out geom.Polyline
	at := c.start
	for _, m := range c.moves {
		spoke := at.Minus(m.centre)
		turn := math.Mod(m.to.Minus(m.centre).Angle()-spoke.Angle()+4*math.Pi, 2*math.Pi)
		if m.turn < 0 {
			turn -= 2 * math.Pi
		}
		n := max(50, int(at.Dist(m.to)/0.01))
		for i := 1; i <= n; i++ {
			t := float64(i) / float64(n)
			if m.turn == 0 {
				out = append(out, at.Towards(m.to, t))
			} else {
				out = append(out, m.centre.Plus(spoke.Turned(t*turn)))
			}
		}
		at = m.to
	}
	return out
}

// A machine that counts otherwise makes the same cuts, arcs included, of other
// numbers.
func TestAxes(t *testing.T) {
	d := readertest.Square()
	s := settings(design.Knife)
	straight, err := Read(strings.NewReader(programFor(t, d, s)))
	if err != nil {
		t.Fatal(err)
	}
	var b bytes.Buffer
	if err := WriteFor(&b, d, export.Options{Axes: export.Axes{Origin: design.UpperLeft, YDown: true}}, s); err != nil {
		t.Fatal(err)
	}
	other, err := Read(&b)
	if err != nil {
		t.Fatal(err)
	}
	for i, l := range straight.Lines {
		for k, p := range l.Points {
			q := other.Lines[i].Points[k]
			if p.Dist(geom.Pt(q.X, d.Height-q.Y)) > 2e-4 {
				t.Fatalf("%q: point %d at %v, counted from above at %v", l.Name, k+1, p, q)
			}
		}
	}
}

// Nothing but words and clean comments, on lines that the interpreter takes.
func TestNothingBreaksOut(t *testing.T) {
	d := readertest.Drawing(t, 1, readertest.Hostile()...)
	for i, text := range readertest.Hostile() {
		d.Lines[i].Name = text
	}
	d.Title = readertest.Hostile()[4]
	for _, line := range strings.Split(strings.TrimSpace(programFor(t, d, settings(design.Laser))), "\n") {
		inner, isComment := strings.CutPrefix(line, "( ")
		if isComment {
			inner, isComment = strings.CutSuffix(inner, " )")
		}
		if strings.ContainsAny(inner, "();%*\\") || len(line) > 200 {
			t.Errorf("line %q", line)
		}
		if !isComment && strings.Trim(inner, "GMXYZIJFSP0123456789.- ") != "" {
			t.Errorf("line %q", line)
		}
		for _, c := range line {
			if c < ' ' || c > '~' {
				t.Errorf("line %q", line)
			}
		}
	}
}

func TestSettingsRefused(t *testing.T) {
	nan := math.NaN()
	rows := []struct {
		what string
		edit func(s *Settings)
	}{
		{"unknown tool", func(s *Settings) { s.Tool = 9 }},
		{"no jobs", func(s *Settings) { s.Jobs = nil }},
		{"feed below 0", func(s *Settings) { s.Jobs[2].Feed = -1 }},
		{"power NaN", func(s *Settings) { s.Jobs[2].Power = nan }},
		{"no passes", func(s *Settings) { s.Jobs[6].Passes = 0 }},
		{"kerf negative", func(s *Settings) { s.Kerf = -1 }},
		{"lead NaN", func(s *Settings) { s.Lead = nan }},
		{"tabs without width", func(s *Settings) { s.Tabs = 2 }},
		{"tabs for a knife", func(s *Settings) { s.Tool, s.Tabs, s.TabWidth = design.Knife, 2, 3 }},
		{"travel in the material", func(s *Settings) { s.Safe = -1 }},
	}
	for _, tool := range design.Tools() {
		if err := Defaults(tool).Validate(); err != nil {
			t.Errorf("defaults of %s: %v", tool, err)
		}
	}
	for _, r := range rows {
		s := tried(design.Laser)
		r.edit(&s)
		var b bytes.Buffer
		if err := WriteFor(&b, readertest.Square(), export.Options{}, s); err == nil || b.Len() > 0 {
			t.Errorf("%s: %d bytes, error %v", r.what, b.Len(), err)
		}
	}
}

func TestReadRefuses(t *testing.T) {
	const head = "( sheet 40.0000 x 30.0000 mm )\n( tool laser )\n"
	for _, text := range []string{"", "slingloft", "G0 X1", head + "G5 X1", head + "G1 X", head + "G1 X1e9", head + "( open", head + "M10",
		head + "G1 A3", head + "P3", "( sheet NaN x 1 mm )", "( tool saw )\n", head + "#1=3", head + "G1 X99999999"} {
		if d, err := Read(strings.NewReader(text)); err == nil {
			t.Errorf("%q read as %d lines on %g × %g mm", text, len(d.Lines), d.Width, d.Height)
		}
	}
	d, err := Read(strings.NewReader(head + "G20 G0 X0 Y0\nM3 S1\nG1 X1 F9\nM5\n"))
	if err != nil || len(d.Lines) != 1 || d.Lines[0].Points.Length() != 25.4 {
		t.Errorf("program in inches read as %+v, %v", d, err)
	}
}

func FuzzRead(f *testing.F) {
	f.Add(programFor(f, readertest.Square(), settings(design.Laser)))
	f.Add(programFor(f, readertest.Square(), settings(design.Knife)))
	f.Fuzz(func(t *testing.T, text string) {
		d, err := Read(strings.NewReader(text))
		if err != nil {
			return
		}
		readertest.CheckRead(t, d)
	})
}

// The golden programs are short enough to follow on the drawing.
func TestGolden(t *testing.T) {
	for _, tool := range design.Tools() {
		readertest.Golden(t, "square-"+tool.String()+".ngc", []byte(programFor(t, readertest.Square(), settings(tool))))
	}
}
