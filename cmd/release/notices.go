package main

import (
	"bytes"
	"debug/buildinfo"
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
	"os/exec"
	"path/filepath"
	"slices"
	"strings"
	"unicode/utf8"
)

// part is a module that is linked into a program, with what has to be given on with it.
type part struct {
	path, version string
	spdx          string
	texts         []notice
}

// notice is a file of a licence.
type notice struct{ name, text string }

// module is one that is linked into a program.
type module struct{ path, version string }

// linked returns the modules of a built program that are not this project's own, as go
// version -m tells them, and the version of Go that built it.
func linked(program []byte) ([]module, string, error) {
	info, err := buildinfo.Read(bytes.NewReader(program))
	if err != nil {
		return nil, "", err
	}
	var out []module
	for _, m := range info.Deps {
		if m.Replace == nil || !slices.Contains(ours(), m.Path) {
			out = append(out, module{m.Path, m.Version})
		}
	}
	return out, info.GoVersion, nil
}

// listed is linked for a program that cannot be asked, as those for WebAssembly: its
// modules as the sources name them.
func listed(root, command string, t target) ([]module, string, error) {
	cmd := exec.Command(
		"go",
		"list",
		"-deps",
		"-tags=latex",
		"-f",
		"{{with .Module}}{{if not .Main}}{{.Path}} {{.Version}}{{end}}{{end}}",
		command,
	)
	cmd.Dir, cmd.Env = root, append(os.Environ(), "GOOS="+t.system, "GOARCH="+t.processor, "CGO_ENABLED=0")
	text, err := cmd.Output()
	if err != nil {
		return nil, "", fmt.Errorf("go list: %w", err)
	}
	var out []module
	for line := range strings.Lines(string(text)) {
		path, version, ok := strings.Cut(strings.TrimSpace(line), " ")
		if m := (module{path, version}); ok && !slices.Contains(ours(), path) && !slices.Contains(out, m) {
			out = append(out, m)
		}
	}
	cmd = exec.Command("go", "env", "GOVERSION")
	cmd.Dir = root
	version, err := cmd.Output()
	return out, strings.TrimSpace(string(version)), err
}

// parts returns what has to be given on with modules and with the library and runtime of
// a version of Go, sorted by name. A module without a known licence is an error.
func parts(root string, modules []module, version string) ([]part, error) {
	folders, err := moduleFolders(root)
	if err != nil {
		return nil, err
	}
	golang, err := library(root, version)
	if err != nil {
		return nil, err
	}
	out := []part{golang}
	for _, m := range modules {
		l, ok := licences()[m.path]
		if !ok {
			return nil, fmt.Errorf("%s %s has no licence in the list", m.path, m.version)
		}
		texts, err := noticesIn(folders[m.path], l.files)
		if err != nil {
			return nil, fmt.Errorf("%s: %w", m.path, err)
		}
		if !l.known(texts[0].text) {
			return nil, fmt.Errorf("%s: %s is not %s", m.path, texts[0].name, l.spdx)
		}
		out = append(out, part{m.path, m.version, l.spdx, texts})
	}
	slices.SortFunc(out, func(a, b part) int { return strings.Compare(a.path, b.path) })
	return out, nil
}

// library is Go's standard library and runtime.
func library(root, version string) (part, error) {
	texts, err := noticesIn(goRoot(root), []string{"LICENSE", "PATENTS"})
	if err == nil && !licences()["golang.org/x/text"].known(texts[0].text) {
		err = errors.New("not the licence that was expected")
	}
	return part{"std", version, "BSD-3-Clause", texts}, err
}

// moduleFolders returns where the source of each module lies.
func moduleFolders(root string) (map[string]string, error) {
	cmd := exec.Command("go", "list", "-m", "-json", "all")
	cmd.Dir = root
	out, err := cmd.Output()
	if err != nil {
		return nil, fmt.Errorf("go list -m: %w", err)
	}
	folders := map[string]string{}
	for d := json.NewDecoder(bytes.NewReader(out)); ; {
		var m struct{ Path, Dir string }
		if err := d.Decode(&m); errors.Is(err, io.EOF) {
			return folders, nil
		} else if err != nil {
			return nil, err
		}
		folders[m.Path] = m.Dir
	}
}

// noticesIn returns files of a module's folder; a folder among them stands for the files
// in it.
func noticesIn(folder string, names []string) ([]notice, error) {
	if folder == "" {
		return nil, errors.New("its sources are not here")
	}
	var out []notice
	for _, n := range names {
		err := filepath.WalkDir(filepath.Join(folder, n), func(path string, d fs.DirEntry, err error) error {
			if err != nil || d.IsDir() {
				return err
			}
			text, err := os.ReadFile(path)
			if err == nil && len(bytes.TrimSpace(text)) == 0 {
				err = fmt.Errorf("%s is empty", path)
			}
			name, _ := filepath.Rel(folder, path)
			out = append(out, notice{filepath.ToSlash(name), readable(text)})
			return err
		})
		if err != nil {
			return nil, err
		}
	}
	return out, nil
}

// readable returns a text in UTF-8; some old ones are in Latin-1.
func readable(text []byte) string {
	if utf8.Valid(text) {
		return string(text)
	}
	var b strings.Builder
	for _, c := range text {
		b.WriteRune(rune(c))
	}
	return b.String()
}

// notices returns THIRD-PARTY-NOTICES: name, version, licence and its full text of every
// part.
func notices(parts []part) []byte {
	var b strings.Builder
	b.WriteString("What others wrote and Slingloft's program holds, with the terms under which it is given on.\n\n")
	for _, p := range parts {
		fmt.Fprintf(&b, "  %s %s: %s\n", title(p), p.version, p.spdx)
	}
	rule := strings.Repeat("=", 80)
	for _, p := range parts {
		fmt.Fprintf(&b, "\n%s\n%s %s\n%s\n", rule, title(p), p.version, p.spdx)
		for _, n := range p.texts {
			fmt.Fprintf(&b, "%s\n%s\n\n%s\n", strings.Repeat("-", 80), n.name, strings.TrimRight(strings.ReplaceAll(n.text, "\r\n", "\n"), "\n"))
		}
	}
	return []byte(b.String())
}

func title(p part) string {
	if p.path == "std" {
		return "Go, its standard library and runtime"
	}
	return p.path
}
