package command

import (
	"bytes"
	"context"
	"os/exec"
	"strings"
	"testing"
)

// The completion script of bash completes commands, options and nothing else.
func TestCompleteBash(t *testing.T) {
	var script, errs bytes.Buffer
	if code := Run(context.Background(), []string{"complete", "bash"}, Streams{Out: &script, Err: &errs}); code != Done {
		t.Fatalf("status %d: %s", code, errs.String())
	}
	for typed, want := range map[string]string{
		"cut --sca":      "--scale",
		"prove --js":     "--json",
		"start --sc":     "--schema",
		"fig":            "figure",
		"start --un":     "--units",
		"figure --as-if": "",
	} {
		words := strings.Fields(typed)
		ask := script.String() + "\nCOMP_WORDS=(slingloft " + typed + ")\nCOMP_CWORD=" + string(rune('0'+len(words))) + "\n_slingloft\necho \"${COMPREPLY[@]}\"\n"
		out, err := exec.Command("bash", "-c", ask).Output()
		if err != nil {
			t.Fatal(err)
		}
		if got := strings.TrimSpace(string(out)); got != want {
			t.Errorf("completing %q gives %q, want %q", typed, got, want)
		}
	}
}

// Every option of every command stands in each shell's script.
func TestCompleteNamesEveryOption(t *testing.T) {
	for _, shell := range []string{"bash", "fish", "zsh"} {
		var b bytes.Buffer
		completer(shell)(&b, English())
		for _, c := range commands() {
			for _, f := range c.options(English()) {
				if !strings.Contains(b.String(), f.Name) {
					t.Errorf("%s: %s --%s is missing", shell, c.name, f.Name)
				}
			}
		}
	}
}
