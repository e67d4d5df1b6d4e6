package command_test

import (
	"bytes"
	"context"
	"encoding/json"
	"os"
	"os/exec"
	"path/filepath"
	"slices"
	"testing"

	"slingloft/cmd/slingloft/command"
	"slingloft/outline/design"
)

// schemaJudge checks documents against the schemas beside them by Python's
// jsonschema, which also has to find the schemas sound. No field may be missing in its
// schema: that is what a misspelt name would be.
const schemaJudge = `
import json, sys
from jsonschema import Draft202012Validator as V

def closed(s):
    if isinstance(s, dict):
        if s.get("type") == "object":
            s["additionalProperties"] = False
        for v in s.values():
            closed(v)
    elif isinstance(s, list):
        for v in s:
            closed(v)

for name in sys.argv[1:]:
    with open(name) as f:
        pair = json.load(f)
    V.check_schema(pair["schema"])
    closed(pair["schema"])
    for e in V(pair["schema"]).iter_errors(pair["document"]):
        print(name, e.message[:300], [(list(c.path), c.message[:200]) for c in e.context][:4])
`

// TestDocumentsFollowTheirSchemas prints every command's document, and what stands in
// its place, and its schema.
func TestDocumentsFollowTheirSchemas(t *testing.T) {
	if exec.Command(python, "-c", "import jsonschema").Run() != nil {
		missing(t, "jsonschema")
	}
	dir := t.TempDir()
	at := func(name string) string { return filepath.Join(dir, name) }
	_, demo := design.Demo()
	put := func(name, old, new string) string {
		text := bytes.Replace(demo, []byte(old), []byte(new), 1)
		if err := os.WriteFile(at(name), text, 0o644); err != nil || bytes.Equal(text, demo) {
			t.Fatal(name, err)
		}
		return at(name)
	}
	heavy := put("heavy.toml", `mass = "74 kg"`, `mass = "120 kg"`)
	faulty := put("faulty.toml", `span = "1500 mm"`, `span = "1500 kg"`)
	if err := os.Mkdir(at("empty"), 0o755); err != nil {
		t.Fatal(err)
	}
	var pairs []string
	for i, run := range [][]string{
		{"figure", small}, {"figure", faulty}, {"figure", small, "--vary", "bed.head_bar = 660 mm, 3 m"},
		{"hang", small, "--sitting"}, {"hang", faulty},
		{"cut", small, "--as", "svg,hpgl", "--out", at("out")}, {"cut", "--out", at("none"), heavy},
		{"prove", small, at("out")}, {"prove", at("empty")},
		{"sheet", small, "--out", at("a.html")}, {"sheet", "--out", at("b.pdf"), heavy},
		{"calibrate", "--out", at("out"), "--thickness", "3 mm"}, {"calibrate", "--out", at("bars")}, {"calibrate", faulty},
		{"start", at("a.toml")}, {"start", at("b.toml"), "--stature", "180 cm", "--mass", "140 kg"},
	} {
		var out, errs bytes.Buffer
		command.Run(context.Background(), append(run, "--json"), command.Streams{Out: &out, Err: &errs})
		if bytes.Contains(out.Bytes(), []byte(dir)) {
			t.Errorf("%q: the document says where files lie on this machine", run)
		}
		asked := []string{run[0], "--schema"}
		if slices.Contains(run, "--vary") {
			asked = append(asked, "--vary", "x")
		}
		pair, err := json.Marshal(map[string]json.RawMessage{"schema": []byte(output(t, asked...)), "document": out.Bytes()})
		if err != nil {
			t.Fatalf("%q: %v\n%s\n%s", run, err, &out, &errs)
		}
		pairs = append(pairs, at(string(rune('a'+i))+".json"))
		if err := os.WriteFile(pairs[i], pair, 0o644); err != nil {
			t.Fatal(err)
		}
	}
	found, err := exec.Command(python, append([]string{"-c", schemaJudge}, pairs...)...).CombinedOutput()
	if err != nil || len(found) > 0 {
		t.Errorf("%v\n%s", err, found)
	}
}
