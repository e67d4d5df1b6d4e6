package command_test

import (
	"bufio"
	"fmt"
	"os"
	"strings"
	"testing"

	"slingloft/outline/geom"
)

// job is what a program does of one kind of work: the tracks in its order, and where
// the tool stands before it begins.
type job struct {
	work   string
	from   geom.Point
	tracks []track
	idle   float64 // travel on the way to and between the tracks, mm
}

// jobsOf reads a program for a laser without lead-ins and tabs: between M3 and M5 the
// beam is on.
func jobsOf(t *testing.T, path string) []job {
	t.Helper()
	f, err := os.Open(path)
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	var out []job
	var at geom.Point
	lines := bufio.NewScanner(f)
	for lines.Scan() {
		line := lines.Text()
		if work, ok := strings.CutPrefix(line, "( work "); ok {
			out = append(out, job{work: strings.TrimSuffix(work, " )"), from: at})
			continue
		}
		var to geom.Point
		var word string
		if n, _ := fmt.Sscanf(line, "%s X%f Y%f", &word, &to.X, &to.Y); n != 3 {
			continue
		}
		if n := len(out); n > 0 {
			j := &out[n-1]
			switch word {
			case "G0":
				j.idle += at.Dist(to)
				j.tracks = append(j.tracks, track{points: geom.Polyline{to}})
			case "G1":
				l := &j.tracks[len(j.tracks)-1]
				l.points = append(l.points, to)
			default:
				t.Fatalf("%s: %s", path, line)
			}
		}
		at = to
	}
	for _, j := range out {
		for i, l := range j.tracks {
			if n := len(l.points); n > 2 && l.points[0] == l.points[n-1] {
				j.tracks[i] = track{l.points[:n-1], true}
			}
		}
	}
	return out
}

func TestTravel(t *testing.T) {
	for _, design := range [][]string{nil, {"../../../testdata/design/inches.toml"}} {
		for _, name := range strings.Fields(output(t, append([]string{"cut", "--as", "gcode", "--out", t.TempDir()}, design...)...)) {
			jobs := jobsOf(t, name)
			last := &jobs[len(jobs)-1]
			last.idle -= last.tracks[len(last.tracks)-1].points[0].Dist(geom.Point{})
			for _, j := range jobs {
				closed, pts := 0, 0
				for _, l := range j.tracks {
					if l.closed {
						closed++
						pts += len(l.points)
					}
				}
				least, how := 0.0, "bound"
				if len(j.tracks) <= 7 {
					least, how = exactTravel(j.tracks, j.from), "exact"
				} else {
					least = leastTravel(j.tracks, j.from, j.idle)
				}
				t.Logf("%s %s: %d tracks, %d closed with %d points: %.1f mm, %s %.1f, %.2f %%", name, j.work, len(j.tracks), closed, pts, j.idle, how, least, 100*(j.idle/least-1))
			}
		}
	}
}
