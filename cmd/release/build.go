package main

import (
	"bytes"
	"debug/buildinfo"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"time"
)

// build returns the program built for a target.
func (t target) build(root string) ([]byte, error) { return t.buildOf(root, "./cmd/slingloft") }

// buildOf returns a command built for a target. It bears the commit of the sources where
// they are in a repository.
func (t target) buildOf(root, command string) ([]byte, error) {
	folder, err := os.MkdirTemp("", "release")
	if err != nil {
		return nil, err
	}
	defer os.RemoveAll(folder)
	name := filepath.Join(folder, "slingloft")
	// Without what canvas sets text in TeX with.
	cmd := exec.Command("go", "build", "-trimpath", "-tags=latex", fmt.Sprintf("-buildvcs=%t", inRepository(root)),
		"-ldflags=-s -w -buildid=", "-o", name, command)
	cmd.Dir = root
	cmd.Env = append(anyOwner(), "GOOS="+t.system, "GOARCH="+t.processor, "CGO_ENABLED=0", "GOAMD64=v1", "GOARM64=v8.0", "GOFLAGS=")
	if text, err := cmd.CombinedOutput(); err != nil {
		return nil, fmt.Errorf("%w\n%s", err, text)
	}
	return os.ReadFile(name)
}

// anyOwner is the environment in which git reads a repository that belongs to another
// user, as a checkout on a builder may.
func anyOwner() []string {
	return append(os.Environ(), "GIT_CONFIG_COUNT=1", "GIT_CONFIG_KEY_0=safe.directory", "GIT_CONFIG_VALUE_0=*")
}

// inRepository reports whether the sources lie at the top of a repository with a commit,
// as Go looks for one.
func inRepository(root string) bool {
	if at, err := os.Stat(filepath.Join(root, ".git")); err != nil || !at.IsDir() {
		return false
	}
	cmd := exec.Command("git", "rev-parse", "--verify", "HEAD")
	cmd.Dir, cmd.Env = root, anyOwner()
	return cmd.Run() == nil
}

// made returns when the sources of a program were committed, as far as it knows.
func made(program []byte) time.Time {
	if info, err := buildinfo.Read(bytes.NewReader(program)); err == nil {
		for _, s := range info.Settings {
			if at, err := time.Parse(time.RFC3339, s.Value); s.Key == "vcs.time" && err == nil {
				return at
			}
		}
	}
	return moment()
}

// moduleRoot returns the folder of go.mod.
func moduleRoot() (string, error) {
	out, err := exec.Command("go", "list", "-m", "-f", "{{.Dir}}").Output()
	if err != nil {
		return "", fmt.Errorf("not inside the sources: %w", err)
	}
	return strings.TrimSpace(string(out)), nil
}
