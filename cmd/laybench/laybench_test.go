package main

import (
	"bytes"
	"context"
	"encoding/json"
	"encoding/xml"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"strings"
	"testing"

	"github.com/spf13/pflag"
)

const instances = "../../testdata/nesting"

// bench runs the command on instances of the test data and returns its output.
func lay(t *testing.T, args ...string) string {
	t.Helper()
	var out bytes.Buffer
	if err := run(context.Background(), args, &out); err != nil {
		t.Fatalf("laybench %v: %v", args, err)
	}
	return out.String()
}

func TestTableAndFiles(t *testing.T) {
	dir := t.TempDir()
	out := lay(t, "--steps", "2000", "--seed", "3", "--json", dir, "--svg", dir,
		filepath.Join(instances, "fu.json"), filepath.Join(instances, "blaz1.json"))
	row := regexp.MustCompile(`^fu +12 pieces  width +38  length +3\d\.\d{6}  density +\d\d\.\d\d %  +\d+\.\d s\n` +
		`blaz1 +28 pieces  width +15  length +\d\d\.\d{6}  density +\d\d\.\d\d %  +\d+\.\d s\nmean density \d\d\.\d\d %\n$`)
	if !row.MatchString(out) {
		t.Errorf("printed:\n%s", out)
	}
	var r result
	data, err := os.ReadFile(filepath.Join(dir, "blaz1.json"))
	if err == nil {
		err = json.Unmarshal(data, &r)
	}
	if err != nil || r.Name != "blaz1" || r.Width != 15 || len(r.Placements) != 28 || r.Density < 75 {
		t.Errorf("blaz1.json: %+v, %v", r, err)
	}
	svg, err := os.ReadFile(filepath.Join(dir, "fu.svg"))
	if err != nil || strings.Count(string(svg), "<polygon") != 12 || xml.Unmarshal(svg, new(struct{})) != nil {
		t.Errorf("fu.svg is not a drawing of 12 pieces: %v", err)
	}
}

// Processor time does not depend on what else the machine does.
func TestProcessorTime(t *testing.T) {
	if _, err := processorTime(); err != nil {
		t.Skip(err)
	}
	out := lay(t, "--processor", "--seconds", "0.4", filepath.Join(instances, "fu.json"))
	row := regexp.MustCompile(` (\d+\.\d) s\n`).FindStringSubmatch(out)
	if row == nil || row[1] < "0.4" || row[1] > "0.9" {
		t.Errorf("0.4 s of processor time for each worker asked for, printed:\n%s", out)
	}
}

func TestSameStepsSameBytes(t *testing.T) {
	var files [2][]byte
	for i := range files {
		dir := t.TempDir()
		lay(t, "--steps", "1500", "--json", dir, filepath.Join(instances, "shapes0.json"))
		data, err := os.ReadFile(filepath.Join(dir, "shapes0.json"))
		if err != nil {
			t.Fatal(err)
		}
		files[i] = regexp.MustCompile(`"seconds": .*`).ReplaceAll(data, nil)
	}
	if !bytes.Equal(files[0], files[1]) {
		t.Error("two runs with the same seed and steps differ")
	}
}

// An outside reader, shapely, must find every piece whole, inside the strip and
// without common area with any other.
func TestShapelyFindsNoOverlap(t *testing.T) {
	python := "/usr/bin/python3"
	if err := exec.Command(python, "-c", "import shapely").Run(); err != nil {
		if os.Getenv("SLINGLOFT_READERS") == "require" {
			t.Fatal("shapely is missing: ", err)
		}
		t.Skip("shapely is not installed")
	}
	dir := t.TempDir()
	names := []string{"fu", "blaz1", "shapes0", "marques", "threep2"}
	args := []string{"--steps", "3000", "--json", dir}
	for _, n := range names {
		args = append(args, filepath.Join(instances, n+".json"))
	}
	lay(t, args...)
	for _, n := range names {
		cmd := exec.Command(python, "testdata/judge.py", filepath.Join(instances, n+".json"), filepath.Join(dir, n+".json"))
		if out, err := cmd.CombinedOutput(); err != nil {
			t.Errorf("%s: %v\n%s", n, err, out)
		}
	}
}

func TestUsageNamesEveryFlag(t *testing.T) {
	out := lay(t, "--help")
	var s settings
	s.flags().VisitAll(func(f *pflag.Flag) {
		if !strings.Contains(out, "--"+f.Name) {
			t.Errorf("usage does not name --%s", f.Name)
		}
	})
}

func TestRefusals(t *testing.T) {
	bad := filepath.Join(t.TempDir(), "bad.json")
	if err := os.WriteFile(bad, []byte(`{"name":"../up","width":1}`), 0o666); err != nil {
		t.Fatal(err)
	}
	for want, args := range map[string][]string{
		"no instance given":    {},
		"exclude each other":   {"--steps", "1", "--seconds", "1", "x.json"},
		"must not be negative": {"--seconds", "-1", "x.json"},
		"no such file":         {"absent.json"},
		"not made of letters":  {bad},
		"unknown flag":         {"--colour", "x.json"},
	} {
		var out bytes.Buffer
		err := run(context.Background(), args, &out)
		if err == nil || !strings.Contains(err.Error(), want) || out.Len() > 0 {
			t.Errorf("laybench %v: printed %q, error %v, want one about %q", args, out.String(), err, want)
		}
	}
}
