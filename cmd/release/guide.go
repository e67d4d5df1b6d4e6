package main

import (
	"bytes"
	"errors"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"runtime"
	"strings"
)

// guide returns what goes into every archive beside the program: texts, manual pages,
// completions, examples and the README's pictures. What the program prints is printed by
// one that is built for this machine.
func guide(root string) ([]packed, error) {
	out, err := texts(root)
	if err != nil {
		return nil, err
	}
	program, err := target{runtime.GOOS, runtime.GOARCH}.build(root)
	if err != nil {
		return nil, err
	}
	folder, err := os.MkdirTemp("", "release")
	if err != nil {
		return nil, err
	}
	defer os.RemoveAll(folder)
	name := filepath.Join(folder, "slingloft.exe") // a name that every system runs
	if err := os.WriteFile(name, program, 0o755); err != nil {
		return nil, err
	}
	printed, err := printed(name)
	if err != nil {
		return nil, err
	}
	return append(out, printed...), nil
}

// printed returns what the program prints of itself.
func printed(program string) ([]packed, error) {
	help, err := exec.Command(program, "--help").Output()
	if err != nil {
		return nil, err
	}
	type print struct {
		name string
		args []string
	}
	want := []print{
		{"man/man1/slingloft.1", []string{"manual"}},
		{"completions/slingloft.bash", []string{"complete", "bash"}},
		{"completions/slingloft.fish", []string{"complete", "fish"}},
		{"completions/_slingloft", []string{"complete", "zsh"}},
		{"examples/first-bed.toml", []string{"start", "-"}},
		{"examples/first-bed-in-inches.toml", []string{"start", "-", "--units", "in"}},
		{"examples/every-key.toml", []string{"start", "-", "--all"}},
	}
	for _, c := range regexp.MustCompile(`(?m)^  ([a-z]+)  +[a-z]`).FindAllStringSubmatch(string(help), -1) {
		want = append(want, print{"man/man1/slingloft-" + c[1] + ".1", []string{"manual", c[1]}})
	}
	var out []packed
	for _, w := range want {
		text, err := exec.Command(program, w.args...).Output()
		if err == nil && len(text) == 0 {
			err = errors.New("nothing was printed")
		}
		if err != nil {
			return nil, fmt.Errorf("%s: %w", strings.Join(w.args, " "), err)
		}
		out = append(out, packed{w.name, text, false})
	}
	return out, nil
}

// texts returns what is read: README, keys, licence, the cautions alone, an example, and
// the README's pictures.
func texts(root string) ([]packed, error) {
	var out []packed
	for _, f := range []struct{ from, to string }{
		{"README.md", "README.md"}, {"cmd/slingloft/KEYS.md", "KEYS.md"}, {"cmd/slingloft/FILES.md", "FILES.md"},
		{"LICENSE", "LICENSE"}, {"testdata/design/inches.toml", "examples/inches.toml"},
	} {
		text, err := os.ReadFile(filepath.Join(root, f.from))
		if err != nil {
			return nil, err
		}
		if text, err = forProgram(f.to, text); err != nil {
			return nil, err
		}
		if f.to == "README.md" {
			cautions, err := section(text, "## Cautions")
			if err != nil {
				return nil, err
			}
			out = append(out, packed{"CAUTIONS.md", cautions, false})
		}
		out = append(out, packed{f.to, text, false})
	}
	pictures, err := filepath.Glob(filepath.Join(root, "testdata/readme/*.png"))
	if err != nil {
		return nil, err
	}
	for _, p := range pictures {
		data, err := os.ReadFile(p)
		if err != nil {
			return nil, err
		}
		out = append(out, packed{"pictures/" + filepath.Base(p), data, false})
	}
	return out, nil
}

// The README says twice how to come to the program: from the sources, and, in a comment
// that a reader on the net does not see, from an archive.
const (
	fromSource  = "<!-- from the sources -->\n"
	fromArchive = "<!-- from an archive\n"
	endSource   = "<!-- end of sources -->\n"
	endArchive  = "end of archive -->\n"
)

// forProgram returns a text for somebody who has the program and not its sources.
func forProgram(name string, source []byte) ([]byte, error) {
	text := string(source)
	for {
		before, rest, ok := strings.Cut(text, fromSource)
		if !ok {
			break
		}
		_, rest, ok = strings.Cut(rest, endSource)
		if !ok {
			return nil, fmt.Errorf("%s: the part from the sources does not end", name)
		}
		text = before + rest
	}
	text = strings.NewReplacer(fromArchive, "", endArchive, "", "cmd/slingloft/", "", "../../README.md", "README.md",
		"testdata/readme/", "pictures/", "testdata/design/", "examples/").Replace(text)
	for _, not := range []string{"go run", "DEVELOPERS", "testdata", "<!-- from"} {
		if strings.Contains(text, not) {
			return nil, fmt.Errorf("%s of the archive says %q", name, not)
		}
	}
	return []byte(text), nil
}

// section returns a section of a text in Markdown with its heading.
func section(text []byte, head string) ([]byte, error) {
	_, rest, ok := bytes.Cut(text, []byte("\n"+head+"\n"))
	if !ok {
		return nil, fmt.Errorf("README has no section %q", head)
	}
	body, _, _ := bytes.Cut(rest, []byte("\n## "))
	return []byte("# " + strings.TrimLeft(head, "# ") + "\n" + strings.TrimRight(string(body), "\n") + "\n"), nil
}
