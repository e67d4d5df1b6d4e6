package command

import (
	"strings"
	"testing"

	"github.com/spf13/pflag"
)

// Every command and every flag has its help, and no help is of another.
func TestHelpWords(t *testing.T) {
	w := English()
	shared := map[string]bool{}
	for _, c := range commands() {
		h, ok := w.Help[c.name]
		if !ok || h.Line == "" || h.Long == "" || h.Example == "" {
			t.Errorf("%s: no help", c.name)
		}
		own := map[string]bool{}
		flags, _ := c.flags(w)
		flags.VisitAll(func(f *pflag.Flag) {
			if f.Usage == "" || strings.Contains(f.Usage, "%!") {
				t.Errorf("%s --%s: help %q", c.name, f.Name, f.Usage)
			}
			own[f.Name], shared[f.Name] = true, true
		})
		for name := range h.Flags {
			if !own[name] {
				t.Errorf("%s: help for --%s, which there is not", c.name, name)
			}
		}
		if text := w.helpOf(c); strings.Contains(text, "%!") || strings.Contains(text, "%s") {
			t.Errorf("%s: help is not filled in:\n%s", c.name, text)
		}
	}
	if len(w.Help) != len(commands()) {
		t.Errorf("help for %d commands, there are %d", len(w.Help), len(commands()))
	}
	for name := range w.Shared {
		if !shared[name] {
			t.Errorf("help for --%s, which there is not", name)
		}
	}
}

// What is told in parts comes out in the words of the run, whichever they are.
func TestToldInParts(t *testing.T) {
	w := English()
	w.Messages[BroughtIn], w.Messages[Holes], w.Messages[KeptClear] = "%s in: %s by %s%s", " with %d gaps", " kept"
	got := w.text(notice{BroughtIn, []any{"Pocket", "9 mm", "6 mm", []notice{{Holes, []any{2}}, {what: KeptClear}}}})
	if want := "Pocket in: 9 mm by 6 mm with 2 gaps kept"; got != want {
		t.Errorf("%q, want %q", got, want)
	}
	if got, want := ends(Usage, NoUnits, "ft").Error(), "start: --units is mm or in, not \"ft\""; got != want {
		t.Errorf("%q, want %q", got, want)
	}
}
