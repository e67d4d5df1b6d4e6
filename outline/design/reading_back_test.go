package design

import (
	"os"
	"path/filepath"
	"testing"

	"github.com/google/go-cmp/cmp"
)

// Every design in testdata that can be read, and both that are built in, is read back as
// it was when it is written.
func TestDesignsReadBack(t *testing.T) {
	_, demo := Demo()
	texts := map[string][]byte{"built-in": demo, "starter": []byte(Starter(false)), "starter in inches": []byte(Starter(true))}
	for _, pattern := range []string{"*.toml", "sound/*.toml"} {
		files, err := filepath.Glob(filepath.Join("../../testdata/design", pattern))
		if err != nil || len(files) < 2 {
			t.Fatal(files, err)
		}
		for _, file := range files {
			data, err := os.ReadFile(file)
			if err != nil {
				t.Fatal(err)
			}
			texts[file] = data
		}
	}
	for name, text := range texts {
		d, _, err := Read(name, text)
		if err != nil {
			t.Errorf("%s: %v", name, err)
			continue
		}
		again, _, err := Read("again", Write(d))
		if err != nil {
			t.Errorf("%s: written anew: %v", name, err)
			continue
		}
		if diff := cmp.Diff(d, again); diff != "" {
			t.Errorf("%s: read back (-first +again):\n%s", name, diff)
		}
	}
}
