package gcode

import (
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

// LinuxCNC's interpreter, run on its own, takes every program and makes the same
// moves of it as our reader.
func TestMovesByRS274(t *testing.T) {
	for tool := design.Laser; tool <= design.Knife; tool++ {
		for _, d := range append(readertest.Fields(t), readertest.Drawing(t, 1, readertest.Hostile()[:6]...)) {
			movesAgree(t, tool, programFor(t, d, settings(tool)))
		}
	}
}

// movesAgree has a program of a tool run and compares.
func movesAgree(t *testing.T, tool design.Tool, program string) {
	t.Helper()
	read, err := Read(strings.NewReader(program))
	if err != nil {
		t.Fatal(err)
	}
	file := readertest.File(t, "a.ngc", []byte(program))
	got := canonical(t, tool, readertest.Run(t, "rs274", "-g", file))
	if len(got) != len(read.Lines) {
		t.Fatalf("%s: the interpreter cuts %d lines, we read %d", tool, len(got), len(read.Lines))
	}
	for i, l := range read.Lines {
		pts := l.Points
		if l.Closed {
			pts = geom.Ring(pts).Closed()
		}
		tolerance := 0.01
		if tool == design.Knife {
			tolerance = 0.1 // our reader's chords are shorter than the arcs
		}
		if got[i].work != l.Work || math.Abs(got[i].length-pts.Length()) > tolerance ||
			got[i].from.Dist(pts[0]) > 2e-4 || got[i].to.Dist(pts[len(pts)-1]) > 2e-4 {
			t.Fatalf("%s: line %d, %q: the interpreter cuts %+v; we read %s, %g mm from %v to %v", tool, i+1, l.Name,
				got[i], l.Work, pts.Length(), pts[0], pts[len(pts)-1])
		}
	}
}

// The named outlines are as long for the interpreter as they are in the drawing.
func TestLengthsByRS274(t *testing.T) {
	d := readertest.Drawing(t, 1)
	s := tried(design.Laser)
	file := readertest.File(t, "a.ngc", []byte(programFor(t, d, s)))
	total := map[string]float64{}
	for _, r := range canonical(t, design.Laser, readertest.Run(t, "rs274", "-g", file)) {
		total[r.name] += r.length
	}
	for _, l := range d.Lines {
		if math.Abs(total[l.Name]-readertest.Length(l)) > 0.01 {
			t.Errorf("%q: the interpreter cuts %g mm, want %g", l.Name, total[l.Name], readertest.Length(l))
		}
	}
}

// A program in inches makes the same moves as one in mm, for the interpreter and for us.
func TestInchesByRS274(t *testing.T) {
	d := readertest.Drawing(t, 1)
	for tool := design.Laser; tool <= design.Knife; tool++ {
		s := settings(tool)
		var inches strings.Builder
		if err := WriteFor(&inches, d, export.Options{Inches: true}, s); err != nil {
			t.Fatal(err)
		}
		metric := programFor(t, d, s)
		a, errA := Read(strings.NewReader(metric))
		b, errB := Read(strings.NewReader(inches.String()))
		if errA != nil || errB != nil || len(a.Lines) != len(b.Lines) || math.Abs(a.Width-b.Width) > 1e-3 {
			t.Fatalf("%s: %d lines on %g mm in mm, %d on %g mm in inches; %v, %v", tool, len(a.Lines), a.Width, len(b.Lines), b.Width, errA, errB)
		}
		for i, l := range a.Lines {
			for k, p := range l.Points {
				if p.Dist(b.Lines[i].Points[k]) > 2e-4 {
					t.Fatalf("%s, %q: point %d at %v in inches, %v in mm", tool, l.Name, k+1, b.Lines[i].Points[k], p)
				}
			}
		}
		text := readertest.Run(t, "rs274", "-g", readertest.File(t, "a.ngc", []byte(inches.String())))
		if !strings.Contains(text, "USE_LENGTH_UNITS(CANON_UNITS_INCHES)") {
			t.Errorf("%s: the interpreter does not take inches", tool)
		}
		want := canonical(t, tool, readertest.Run(t, "rs274", "-g", readertest.File(t, "b.ngc", []byte(metric))))
		got := canonical(t, tool, text)
		if len(got) != len(want) {
			t.Fatalf("%s: the interpreter cuts %d lines in inches, %d in mm", tool, len(got), len(want))
		}
		for i, r := range got {
			// It prints four decimals, whatever the unit.
			if r.from.Times(25.4).Dist(want[i].from) > 2e-3 || r.to.Times(25.4).Dist(want[i].to) > 2e-3 {
				t.Fatalf("%s: line %d, %q, from %v to %v in, from %v to %v mm", tool, i+1, r.name, r.from, r.to, want[i].from, want[i].to)
			}
		}
	}
}

// run is one stretch that the interpreter cuts without a break.
type run struct {
	name     string
	work     piece.Work
	from, to geom.Point
	length   float64
}

// canonical reads the interpreter's canonical calls.
func canonical(t *testing.T, tool design.Tool, text string) []run {
	t.Helper()
	var out []run
	var work piece.Work
	var at geom.Point
	name, spindle, open := "", false, false
	cut := func(to geom.Point, length float64) {
		if !open {
			out = append(out, run{name: name, work: work, from: at})
			open = true
		}
		r := &out[len(out)-1]
		r.to, r.length = to, r.length+length
	}
	for _, line := range strings.Split(text, "\n") {
		_, call, ok := strings.Cut(line, "N..... ")
		if !ok {
			continue
		}
		kind, args, _ := strings.Cut(call, "(")
		var x, y, z, cx, cy float64
		var turns int
		switch kind {
		case "COMMENT":
			text := strings.TrimSpace(strings.Trim(args, "\")"))
			if rest, ok := strings.CutPrefix(text, "work "); ok {
				work, _ = workNamed(rest)
			}
			if rest, ok := strings.CutPrefix(text, "path "); ok {
				name, open = rest, false
			}
		case "START_SPINDLE_CLOCKWISE":
			spindle = true
		case "STOP_SPINDLE_TURNING":
			spindle, open = false, false
		case "STRAIGHT_TRAVERSE", "STRAIGHT_FEED":
			fmt.Sscanf(args, "%f, %f, %f", &x, &y, &z)
			to := geom.Pt(x, y)
			if kind == "STRAIGHT_TRAVERSE" || (tool == design.Laser && !spindle) || (tool != design.Laser && z >= 0) {
				open = false
			} else if to != at {
				cut(to, to.Dist(at))
			}
			at = to
		case "ARC_FEED":
			fmt.Sscanf(args, "%f, %f, %f, %f, %d", &x, &y, &cx, &cy, &turns)
			to, centre := geom.Pt(x, y), geom.Pt(cx, cy)
			angle := to.Minus(centre).Angle() - at.Minus(centre).Angle()
			if turns > 0 && angle <= 0 {
				angle += 2 * math.Pi
			} else if turns < 0 && angle >= 0 {
				angle -= 2 * math.Pi
			}
			cut(to, math.Abs(angle)*centre.Dist(to))
			at = to
		}
	}
	return out
}
