//go:build unix

package command_test

import (
	"bytes"
	"context"
	"errors"
	"flag"
	"math/rand/v2"
	"os"
	"os/exec"
	"path/filepath"
	"slices"
	"strings"
	"syscall"
	"testing"
	"time"

	"slingloft/cmd/slingloft/command"
	"slingloft/export/dxf"
	"slingloft/export/svg"
	"slingloft/export/whole"
)

// program returns the program of this very code, which the scripts run too.
func program(t *testing.T) string {
	t.Helper()
	name, err := exec.LookPath("slingloft")
	if err != nil {
		t.Fatal(err)
	}
	return name
}

// kills is how often TestKilled kills a run.
var kills = flag.Int("kills", 6, "runs that are killed")

// cutFiles are the arguments of a cut of some small files.
func cutFiles(folder string) []string {
	return []string{"cut", small, "--as", "svg,dxf", "--scale", "1:10", "--out", folder}
}

// whatStands returns the names of the files in a folder, those that were not finished
// apart, after reading every finished one back.
func whatStands(t *testing.T, folder string) (finished, parts []string) {
	t.Helper()
	entries, err := os.ReadDir(folder)
	if err != nil && !errors.Is(err, os.ErrNotExist) {
		t.Fatal(err)
	}
	for _, e := range entries {
		name := e.Name()
		if strings.HasSuffix(name, ".part") {
			parts = append(parts, name)
			continue
		}
		finished = append(finished, name)
		data, err := os.ReadFile(filepath.Join(folder, name))
		if err != nil {
			t.Fatal(err)
		}
		switch filepath.Ext(name) {
		case ".svg":
			_, err = svg.Read(bytes.NewReader(data))
		case ".dxf":
			_, err = dxf.Read(bytes.NewReader(data))
		}
		if err != nil {
			t.Errorf("%s is not whole: %v", name, err)
		}
	}
	return finished, parts
}

// A run that is killed, at whatever moment, leaves whole files and such as end in
// .part, and the next run finishes the work.
func TestKilled(t *testing.T) {
	name := program(t)
	folder := filepath.Join(t.TempDir(), "out")
	start := time.Now()
	if out, err := exec.Command(name, cutFiles(folder)...).CombinedOutput(); err != nil {
		t.Fatalf("%v\n%s", err, out)
	}
	took := time.Since(start)
	all, _ := whatStands(t, folder)
	r := rand.New(rand.NewPCG(1, 2))
	left, mixed := 0, 0
	for i := range *kills {
		folder := filepath.Join(t.TempDir(), "out")
		cmd := exec.Command(name, cutFiles(folder)...)
		if err := cmd.Start(); err != nil {
			t.Fatal(err)
		}
		// Most of a run is the search; the files are written at its end.
		if i%3 == 0 {
			time.Sleep(time.Duration(r.Float64() * float64(took)))
		} else {
			for began, n := time.Now(), 1+r.IntN(len(all)); time.Since(began) < 10*took; time.Sleep(100 * time.Microsecond) {
				if entries, _ := os.ReadDir(folder); len(entries) >= n {
					break
				}
			}
		}
		cmd.Process.Signal(syscall.SIGKILL)
		cmd.Wait()
		finished, parts := whatStands(t, folder)
		left += len(parts)
		if n := len(finished); n > 0 && n < len(all) {
			mixed++
		}
		if out, err := exec.Command(name, cutFiles(folder)...).CombinedOutput(); err != nil {
			t.Fatalf("run after one that was killed with %v there: %v\n%s", finished, err, out)
		}
		if again, parts := whatStands(t, folder); len(again) != len(all) || len(parts) > 0 {
			t.Errorf("after the next run %d files, want %d, and %v", len(again), len(all), parts)
		}
	}
	t.Logf("%d unfinished files left in all, %d of %d runs with some of the files in place", left, mixed, *kills)
}

// A disk that fills up leaves neither a part nor one of the set, and says so; what stood
// there before stands as it was.
func TestFullDisk(t *testing.T) {
	name := program(t)
	for _, r := range []struct {
		size   string
		before bool // an older set is there
	}{{"4k", false}, {"64k", false}, {"200k", false}, {"1m", false}, {"2m", true}} {
		disk := t.TempDir()
		if err := exec.Command("mount", "-t", "tmpfs", "-o", "size="+r.size, "tmpfs", disk).Run(); err != nil {
			t.Skip("no file system may be mounted here")
		}
		t.Cleanup(func() { exec.Command("umount", disk).Run() })
		folder := filepath.Join(disk, "out")
		if r.before {
			if out, err := exec.Command(name, cutFiles(folder)...).CombinedOutput(); err != nil {
				t.Fatalf("%v\n%s", err, out)
			}
		}
		was, _ := whatStands(t, folder)
		out, err := exec.Command(name, append(cutFiles(folder), "--scale", "1:9", "--as", "svg,dxf,pattern")...).CombinedOutput()
		finished, parts := whatStands(t, folder)
		if err == nil || !strings.Contains(string(out), "no space left") {
			t.Errorf("%s: error %v\n%s", r.size, err, out)
		}
		if len(parts) > 0 || !slices.Equal(finished, was) {
			t.Errorf("%s: left %v and %v, before there were %v", r.size, parts, finished, was)
		}
		if out, err := exec.Command(name, "prove", folder).CombinedOutput(); r.before && err != nil {
			t.Errorf("%s: what stood there is not as it was: %v\n%s", r.size, err, out)
		}
	}
}

// Files may not become longer than so.
func TestFileSizeLimit(t *testing.T) {
	name := program(t)
	folder := filepath.Join(t.TempDir(), "out")
	out, err := exec.Command("/bin/sh", append([]string{"-c", `ulimit -f 100 && exec "$0" "$@"`, name}, cutFiles(folder)...)...).CombinedOutput()
	if err == nil || !strings.Contains(string(out), "file too large") {
		t.Errorf("error %v\n%s", err, out)
	}
	if finished, parts := whatStands(t, folder); len(finished)+len(parts) > 0 {
		t.Errorf("left %v and %v", finished, parts)
	}
}

// What stands in the way is left alone: a link, a folder or a pipe under the name of
// a sheet or of the record.
func TestInTheWay(t *testing.T) {
	link := func(p string) error { return os.Symlink("/etc/hostname", p) }
	folder := func(p string) error { return os.Mkdir(p, 0o755) }
	pipe := func(p string) error { return syscall.Mkfifo(p, 0o644) }
	for _, r := range []struct {
		what string
		put  func(path string) error
		name string
	}{
		{"link", link, "template-sheet-2.dxf"}, {"folder", folder, "cloth-lay.svg"}, {"pipe", pipe, whole.RecordName},
	} {
		folder := t.TempDir()
		if err := r.put(filepath.Join(folder, r.name)); err != nil {
			t.Skip(err)
		}
		var out, stderr bytes.Buffer
		code := command.Run(context.Background(), cutFiles(folder), command.Streams{Out: &out, Err: &stderr})
		if code != command.Failed || out.Len() > 0 || !strings.Contains(stderr.String(), "exists already") {
			t.Errorf("%s as %s: status %d\n%s%s", r.what, r.name, code, out.String(), stderr.String())
		}
		if entries, err := os.ReadDir(folder); err != nil || len(entries) != 1 {
			t.Errorf("%s as %s: left %v, error %v", r.what, r.name, entries, err)
		}
	}
}
