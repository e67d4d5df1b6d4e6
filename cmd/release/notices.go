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
)

// part is a module that is linked into a program, with what has to be given on with it.
type part struct {
	path, version string
	spdx          string
	texts         []notice
}

// notice is a file of a licence.
type notice struct{ name, text string }

// parts returns the modules of a built program that are not this project's own, and the
// library and runtime of Go, sorted by name. A module without a known licence is an
// error.
func parts(root string, program []byte) ([]part, error) {
	info, err := buildinfo.Read(bytes.NewReader(program))
	if err != nil {
		return nil, err
	}
	folders, err := moduleFolders(root)
	if err != nil {
		return nil, err
	}
	golang, err := library(root, info.GoVersion)
	if err != nil {
		return nil, err
	}
	out := []part{golang}
	for _, m := range info.Deps {
		if m.Replace != nil && slices.Contains(ours(), m.Path) {
			continue
		}
		l, ok := licences()[m.Path]
		if !ok {
			return nil, fmt.Errorf("%s %s has no licence in the list", m.Path, m.Version)
		}
		texts, err := noticesIn(folders[m.Path], l.files)
		if err != nil {
			return nil, fmt.Errorf("%s: %w", m.Path, err)
		}
		if !l.known(texts[0].text) {
			return nil, fmt.Errorf("%s: %s is not %s", m.Path, texts[0].name, l.spdx)
		}
		out = append(out, part{m.Path, m.Version, l.spdx, texts})
	}
	slices.SortFunc(out, func(a, b part) int { return strings.Compare(a.path, b.path) })
	return out, nil
}

// library is Go's standard library and runtime.
func library(root, version string) (part, error) {
	cmd := exec.Command("go", "env", "GOROOT")
	cmd.Dir = root
	out, err := cmd.Output()
	if err != nil {
		return part{}, err
	}
	texts, err := noticesIn(strings.TrimSpace(string(out)), []string{"LICENSE", "PATENTS"})
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
			out = append(out, notice{filepath.ToSlash(name), string(text)})
			return err
		})
		if err != nil {
			return nil, err
		}
	}
	return out, nil
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
