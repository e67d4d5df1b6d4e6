// Release builds the archives that are given to people: the program for Linux, macOS
// and Windows with README, keys, cautions, manual pages, completions, examples, licences
// and a bill of what it consists of (SPDX), the page that carries the program, and the
// SHA-256 sums of all.
//
//	go run ./cmd/release [-out dist] [-version v1.2.3] [-only linux/arm64]
//
// The same commit and the same Go give the same bytes: no paths and no times go into
// them but the commit's.
package main

import (
	"crypto/sha256"
	"flag"
	"fmt"
	"os"
	"path/filepath"
	"slices"
	"strings"
)

// target is a system to build for.
type target struct{ system, processor string }

func (t target) name() string { return t.system + "/" + t.processor }

func targets() []target {
	return []target{
		{"linux", "amd64"},
		{"linux", "arm64"},
		{"darwin", "amd64"},
		{"darwin", "arm64"},
		{"windows", "amd64"},
		{"windows", "arm64"},
	}
}

func main() {
	out := flag.String("out", "dist", "folder to write into; made if it is not there")
	version := flag.String("version", "dev", "version that the archives' names carry")
	only := flag.String("only", "", "one target, such as linux/arm64 (default: all)")
	flag.Parse()
	if err := release(*out, *version, *only); err != nil {
		fmt.Fprintln(os.Stderr, "release:", err)
		os.Exit(1)
	}
}

// release builds and packs every target and writes the sums.
func release(out, version, only string) error {
	if strings.ContainsAny(version, `/\ `) {
		return fmt.Errorf("version %q: no spaces and slashes", version)
	}
	if only != "" && !slices.ContainsFunc(targets(), func(t target) bool { return t.name() == only }) {
		return fmt.Errorf("-only %s: no such target", only)
	}
	if err := os.MkdirAll(out, 0o755); err != nil {
		return err
	}
	root, err := moduleRoot()
	if err != nil {
		return err
	}
	common, err := guide(root)
	if err != nil {
		return err
	}
	onePage, err := onePage(root)
	if err != nil {
		return fmt.Errorf("page: %w", err)
	}
	common = append(common, packed{pageName, onePage, false})
	var sums strings.Builder
	if err := given(out, "slingloft-"+version+"-page.html", onePage, &sums); err != nil {
		return err
	}
	for _, t := range targets() {
		if only != "" && only != t.name() {
			continue
		}
		name, data, err := t.archive(root, version, common)
		if err != nil {
			return fmt.Errorf("%s: %w", t.name(), err)
		}
		if err := given(out, name, data, &sums); err != nil {
			return err
		}
	}
	return os.WriteFile(filepath.Join(out, "SHA256SUMS"), []byte(sums.String()), 0o644)
}

// given writes a file that is given to people, and its sum.
func given(out, name string, data []byte, sums *strings.Builder) error {
	line := fmt.Sprintf("%x  %s\n", sha256.Sum256(data), name)
	fmt.Print(line)
	sums.WriteString(line)
	return os.WriteFile(filepath.Join(out, name), data, 0o644)
}

// archive returns the name and content of a target's archive, with what goes into every
// one.
func (t target) archive(root, version string, common []packed) (string, []byte, error) {
	program, err := t.build(root)
	if err != nil {
		return "", nil, err
	}
	modules, golang, err := linked(program)
	if err != nil {
		return "", nil, err
	}
	others, err := parts(root, modules, golang)
	if err != nil {
		return "", nil, err
	}
	stem := fmt.Sprintf("slingloft-%s-%s-%s", version, t.system, t.processor)
	bom, err := bill(stem, program, made(program), others)
	if err != nil {
		return "", nil, err
	}
	name := "slingloft"
	if t.system == "windows" {
		name += ".exe"
	}
	files := append([]packed{
		{name, program, true}, {"THIRD-PARTY-NOTICES", notices(others), false}, {"slingloft.spdx.json", bom, false},
	}, common...)
	if t.system == "windows" {
		data, err := zipped(stem, files)
		return stem + ".zip", data, err
	}
	data, err := tarred(stem, files)
	return stem + ".tar.gz", data, err
}
