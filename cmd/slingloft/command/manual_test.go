package command

import (
	"os"
	"os/exec"
	"path/filepath"
	"runtime/debug"
	"strings"
	"testing"

	"slingloft/export/readertest"
)

// Manual pages are sound to a formatter that is not ours, and what it prints names every
// option with its meaning.
func TestManual(t *testing.T) {
	w := English()
	pages := map[string]string{"slingloft": w.manual()}
	for _, c := range commands() {
		pages["slingloft-"+c.name] = w.manualOf(c)
	}
	for name, source := range pages {
		printed := formatted(t, name, source)
		if !strings.HasPrefix(printed, strings.ToUpper(name)+"(1)") || strings.Contains(printed, "%!") {
			t.Errorf("%s: %.200s", name, printed)
		}
		for _, c := range commands() {
			if name != "slingloft-"+c.name {
				continue
			}
			for _, f := range c.options(w) {
				if flat := strings.Join(strings.Fields(printed), " "); !strings.Contains(flat, "--"+f.Name+" ") || !strings.Contains(flat, strings.Join(strings.Fields(f.Usage), " ")) {
					t.Errorf("%s does not tell --%s", name, f.Name)
				}
			}
		}
	}
}

// formatted returns a page as it is printed.
func formatted(t *testing.T, name, source string) string {
	t.Helper()
	file := filepath.Join(t.TempDir(), name+".1")
	if err := os.WriteFile(file, []byte(source), 0o600); err != nil {
		t.Fatal(err)
	}
	printed := readertest.Run(t, "mandoc", "-T", "utf8", file)
	// It fails where it has a remark.
	remarks, _ := exec.Command("mandoc", "-T", "lint", "-W", "warning", file).CombinedOutput()
	for line := range strings.Lines(string(remarks)) {
		if !strings.Contains(line, "missing date") { // a build outside of a repository has none
			t.Errorf("%s: %s", name, line)
		}
	}
	return overstruck(printed)
}

// overstruck returns a text without the letters that a printer strikes twice.
func overstruck(s string) string {
	var out []rune
	for _, r := range s {
		if r == '\b' {
			out = out[:len(out)-1]
			continue
		}
		out = append(out, r)
	}
	return string(out)
}

// The version says which commit was built, once, and whether the sources were changed.
func TestVersionOf(t *testing.T) {
	set := func(version string, s ...string) string {
		info := &debug.BuildInfo{Main: debug.Module{Version: version}}
		for i := 0; i < len(s); i += 2 {
			info.Settings = append(info.Settings, debug.BuildSetting{Key: s[i], Value: s[i+1]})
		}
		return versionOf(info)
	}
	const commit = "0123456789abcdef0123456789abcdef01234567"
	for _, c := range []struct{ got, want string }{
		{set(""), "(devel)"},
		{set("v1.2.3"), "v1.2.3"},
		{set("v1.2.3", "vcs.revision", commit, "vcs.modified", "false"), "v1.2.3 0123456789ab"},
		{set("(devel)", "vcs.revision", commit, "vcs.modified", "true"), "(devel) 0123456789ab+dirty"},
		{set("v0.0.0-20261128070000-0123456789ab", "vcs.revision", commit), "v0.0.0-20261128070000-0123456789ab"},
	} {
		if c.got != c.want {
			t.Errorf("%q, want %q", c.got, c.want)
		}
	}
}
