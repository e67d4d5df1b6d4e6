// Release builds the archives that are given to people: the program for Linux, macOS
// and Windows with README and LICENSE, and their SHA-256 sums.
//
//	go run ./cmd/release [-out dist] [-version v1.2.3]
//
// The same sources and the same Go give the same bytes: no paths, no times, no
// numbers of the repository go into them.
package main

import (
	"crypto/sha256"
	"flag"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
)

// target is a system to build for.
type target struct{ system, processor string }

func targets() []target {
	return []target{{"linux", "amd64"}, {"linux", "arm64"}, {"darwin", "amd64"}, {"darwin", "arm64"}, {"windows", "amd64"}}
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
	if err := os.MkdirAll(out, 0o755); err != nil {
		return err
	}
	var sums strings.Builder
	for _, t := range targets() {
		if only != "" && only != t.system+"/"+t.processor {
			continue
		}
		name, data, err := t.archive(version)
		if err != nil {
			return fmt.Errorf("%s/%s: %w", t.system, t.processor, err)
		}
		if err := os.WriteFile(filepath.Join(out, name), data, 0o644); err != nil {
			return err
		}
		line := fmt.Sprintf("%x  %s\n", sha256.Sum256(data), name)
		fmt.Print(line)
		sums.WriteString(line)
	}
	if sums.Len() == 0 {
		return fmt.Errorf("-only %s: no such target", only)
	}
	return os.WriteFile(filepath.Join(out, "SHA256SUMS"), []byte(sums.String()), 0o644)
}

// archive returns the name and content of a target's archive.
func (t target) archive(version string) (string, []byte, error) {
	root, err := moduleRoot()
	if err != nil {
		return "", nil, err
	}
	program, err := t.build(root)
	if err != nil {
		return "", nil, err
	}
	name := "slingloft"
	if t.system == "windows" {
		name += ".exe"
	}
	files := []packed{{name, program, true}}
	for _, n := range []string{"README.md", "LICENSE"} {
		text, err := os.ReadFile(filepath.Join(root, n))
		if err != nil {
			return "", nil, err
		}
		files = append(files, packed{n, text, false})
	}
	stem := fmt.Sprintf("slingloft-%s-%s-%s", version, t.system, t.processor)
	if t.system == "windows" {
		data, err := zipped(stem, files)
		return stem + ".zip", data, err
	}
	data, err := tarred(stem, files)
	return stem + ".tar.gz", data, err
}

// build returns the program built for a target.
func (t target) build(root string) ([]byte, error) {
	folder, err := os.MkdirTemp("", "release")
	if err != nil {
		return nil, err
	}
	defer os.RemoveAll(folder)
	name := filepath.Join(folder, "slingloft")
	cmd := exec.Command("go", "build", "-trimpath", "-buildvcs=false", "-ldflags=-s -w -buildid=", "-o", name, "./cmd/slingloft")
	cmd.Dir = root
	cmd.Env = append(os.Environ(), "GOOS="+t.system, "GOARCH="+t.processor, "CGO_ENABLED=0", "GOAMD64=v1", "GOARM64=v8.0", "GOFLAGS=")
	if text, err := cmd.CombinedOutput(); err != nil {
		return nil, fmt.Errorf("%w\n%s", err, text)
	}
	return os.ReadFile(name)
}

// moduleRoot returns the folder of go.mod.
func moduleRoot() (string, error) {
	out, err := exec.Command("go", "list", "-m", "-f", "{{.Dir}}").Output()
	if err != nil {
		return "", fmt.Errorf("not inside the sources: %w", err)
	}
	return strings.TrimSpace(string(out)), nil
}
