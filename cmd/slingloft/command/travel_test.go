package command_test

import (
	"bufio"
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"slingloft/outline/geom"
)

// Most that the travel of a sheet, and of each kind of work on it, may be longer than
// the shortest there is, or a length that none is shorter than. The bound is some per
// cent too low for lettering, with its many small closed strokes.
const (
	mostTravel   = 1.10
	mostLettered = 1.25
)

// The programs that are written for the two example designs travel little more than
// they have to, from where the tool stands before each kind of work.
func TestTravelOfPrograms(t *testing.T) {
	for _, design := range [][]string{nil, {"../../../testdata/design/inches.toml"}} {
		args := append([]string{"cut", "--as", "gcode", "--out", t.TempDir()}, design...)
		for _, path := range strings.Fields(output(t, args...)) {
			if base := filepath.Base(path); base != "cloth-lay.ngc" && base != "template-sheet-1.ngc" {
				continue // the others have nothing that these have not
			}
			t.Run(fmt.Sprint(design)+filepath.Base(path), func(t *testing.T) {
				t.Parallel()
				judgeTravel(t, jobsOf(t, path))
			})
		}
	}
}

func judgeTravel(t *testing.T, jobs []job) {
	idle, least := 0.0, 0.0 // of all but lettering
	for _, j := range jobs {
		limit := mostTravel
		if j.work == "lettering" {
			limit = mostLettered
		}
		short, how := j.least(limit)
		t.Logf("%s: %d paths, %.1f mm, %s %.1f mm: %.1f %% above", j.work, len(j.tracks), j.idle, how, short, 100*(j.idle/short-1))
		if j.work != "lettering" {
			idle, least = idle+j.idle, least+short
		}
		if j.idle < short-1e-6 || j.idle > limit*short {
			t.Errorf("%s: travel of %.1f mm, %s is %.1f mm", j.work, j.idle, how, short)
		}
	}
	t.Logf("all: %.1f mm, %.1f %% above", idle, 100*(idle/least-1))
	if idle > mostTravel*least {
		t.Errorf("travel of %.1f mm, none is shorter than %.1f mm", idle, least)
	}
}

// job is what a program does of one kind of work: the tracks in its order, and where
// the tool stands before it begins.
type job struct {
	work   string
	from   geom.Point
	tracks []track
	idle   float64 // travel on the way to and between the tracks, mm
}

// least returns the shortest travel of a job, or a lower bound where that takes too
// long to find or to show that the travel is within the limit, and which of them it is.
func (j job) least(limit float64) (float64, string) {
	doors := 0
	for _, l := range j.tracks {
		doors += len(l.doors())
	}
	const most = 1 << 29 // ways to compare
	if n := len(j.tracks); n < 16 && doors*doors<<n < most {
		return exactTravel(j.tracks, j.from), "shortest"
	}
	return leastTravel(j.tracks, j.from, j.idle, limit), "bound"
}

// jobsOf reads a program for a laser without lead-ins and tabs: it travels by G0, and
// where the beam comes on a track begins.
func jobsOf(t *testing.T, path string) []job {
	t.Helper()
	f, err := os.Open(path)
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	var out []job
	var at, before geom.Point // now, and before the travel to it
	for lines := bufio.NewScanner(f); lines.Scan(); {
		line := lines.Text()
		if work, ok := strings.CutPrefix(line, "( work "); ok {
			out = append(out, job{work: strings.TrimSuffix(work, " )"), from: at})
			continue
		}
		if strings.HasPrefix(line, "M3") {
			j := &out[len(out)-1]
			j.idle += before.Dist(at)
			j.tracks = append(j.tracks, track{points: geom.Polyline{at}})
		}
		var to geom.Point
		var word string
		if n, _ := fmt.Sscanf(line, "%s X%f Y%f", &word, &to.X, &to.Y); n != 3 {
			continue
		}
		if word == "G1" {
			l := &out[len(out)-1].tracks
			(*l)[len(*l)-1].points = append((*l)[len(*l)-1].points, to)
		}
		before, at = at, to
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
