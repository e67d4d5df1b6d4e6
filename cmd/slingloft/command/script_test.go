package command_test

import (
	"context"
	"errors"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"github.com/rogpeppe/go-internal/testscript"

	"slingloft/cmd/slingloft/command"
	"slingloft/outline/design"
)

// The scripts under testdata/script run the command as a user does: one behaviour
// a file, the first word of its name the category. Each starts in an empty folder
// but for demo.toml, the built-in design, inches.toml, and small.toml, which is laid
// and written in half the time and serves where the design does not matter.
const (
	scripts = "../../../testdata/script"
	inches  = "../../../testdata/design/inches.toml"
	small   = "../../../testdata/design/small.toml"
)

func TestMain(m *testing.M) {
	testscript.Main(m, map[string]func(){"slingloft": func() {
		os.Exit(command.Run(context.Background(), os.Args[1:], command.Streams{Out: command.Output(os.Stdout), Err: os.Stderr}))
	}})
}

func TestScripts(t *testing.T) {
	testscript.Run(t, testscript.Params{
		Dir:                 scripts,
		Setup:               setUp,
		RequireExplicitExec: true,
		RequireUniqueNames:  true,
		UpdateScripts:       os.Getenv("SLINGLOFT_GOLDEN") == "write",
		Cmds: map[string]func(*testscript.TestScript, bool, []string){
			"run":     run,
			"replace": replace,
			"lines":   lines,
		},
		Condition: condition,
	})
}

// setUp puts the example designs into a script's folder.
func setUp(env *testscript.Env) error {
	name, demo := design.Demo()
	err := os.WriteFile(filepath.Join(env.WorkDir, name), demo, 0o644)
	for _, path := range []string{inches, small} {
		data, no := os.ReadFile(path)
		err = errors.Join(err, no, os.WriteFile(filepath.Join(env.WorkDir, filepath.Base(path)), data, 0o644))
	}
	return err
}

// run STATUS ARGS... runs slingloft and fails unless it ends with the status.
func run(ts *testscript.TestScript, neg bool, args []string) {
	if neg || len(args) == 0 {
		ts.Fatalf("usage: run STATUS [ARGUMENTS...]")
	}
	want, err := strconv.Atoi(args[0])
	ts.Check(err)
	err = ts.Exec("slingloft", args[1:]...)
	got := 0
	var exit *exec.ExitError
	if errors.As(err, &exit) {
		got = exit.ExitCode()
	} else {
		ts.Check(err)
	}
	if got != want {
		ts.Fatalf("exit status %d, want %d", got, want)
	}
}

// replace FILE PATTERN TEXT replaces what a regular expression matches, which has
// to match once. In the text \n stands for a new line.
func replace(ts *testscript.TestScript, neg bool, args []string) {
	if neg || len(args) != 3 {
		ts.Fatalf("usage: replace FILE PATTERN TEXT")
	}
	pattern, err := regexp.Compile("(?m)" + args[1])
	ts.Check(err)
	text := ts.ReadFile(args[0])
	if n := len(pattern.FindAllString(text, -1)); n != 1 {
		ts.Fatalf("%q is found %d times in %s, want once", args[1], n, args[0])
	}
	text = pattern.ReplaceAllString(text, strings.ReplaceAll(args[2], `\n`, "\n"))
	ts.Check(os.WriteFile(ts.MkAbs(args[0]), []byte(text), 0o644))
}

// lines FILE N fails unless a file, or stdout or stderr, has N lines.
func lines(ts *testscript.TestScript, neg bool, args []string) {
	if neg || len(args) != 2 {
		ts.Fatalf("usage: lines FILE N")
	}
	want, err := strconv.Atoi(args[1])
	ts.Check(err)
	got := 0
	for _, c := range ts.ReadFile(args[0]) {
		if c == '\n' {
			got++
		}
	}
	if got != want {
		ts.Fatalf("%s has %d lines, want %d", args[0], got, want)
	}
}

// condition knows [root]: the scripts run as a user whom no permission stops.
func condition(name string) (bool, error) {
	if name != "root" {
		return false, errors.New("no such condition")
	}
	return os.Geteuid() == 0, nil
}
