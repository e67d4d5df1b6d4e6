package gcode

import (
	"testing"

	"slingloft/export"
	"slingloft/export/internal/probe"
	"slingloft/export/travel"
	"slingloft/outline"
	"slingloft/outline/geom"
)

// On a whole sheet the travel within each kind of work stays near the lower bound
// for it, begun where the tool stands.
func TestTravelOnASheet(t *testing.T) {
	plain, err := probe.Drawing(t, 1, probe.Hostile()[:8]...).Plain(export.Options{})
	if err != nil {
		t.Fatal(err)
	}
	at := geom.Point{}
	idle, bound := 0.0, 0.0
	for _, w := range outline.Works() {
		var paths []travel.Path
		for _, l := range plain.Lines {
			if l.Work == w {
				paths = append(paths, travel.Path{Points: l.Points, Closed: l.Closed})
			}
		}
		steps := travel.Order(paths, at)
		i, b := travel.Idle(paths, steps, at), travel.Bound(paths, at, 600)
		t.Logf("%s: %d paths, travel %.1f mm, bound %.1f mm", w, len(paths), i, b)
		idle, bound = idle+i, bound+b
		if n := len(steps); n > 0 {
			pts := steps[n-1].Follow(paths[steps[n-1].Path])
			at = pts[len(pts)-1]
		}
	}
	t.Logf("in all %.1f mm, %.1f %% above the bound", idle, 100*(idle/bound-1))
	if idle > 1.10*bound {
		t.Errorf("travel %.1f mm is more than 10 %% above the bound %.1f mm", idle, bound)
	}
}
