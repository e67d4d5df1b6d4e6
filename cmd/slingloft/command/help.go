package command

import (
	"cmp"
	"fmt"
	"io"
	"runtime/debug"
	"strings"
)

// overview is the program's own help.
func (w Words) overview() string {
	var b strings.Builder
	b.WriteString(w.Overview)
	for _, c := range commands() {
		fmt.Fprintf(&b, "  %-10s %s\n", c.name, w.help(c).Line)
	}
	b.WriteString(w.More)
	return b.String()
}

// help prints the overview or one command's help.
func help(args []string, s Streams) error {
	if len(args) == 0 {
		_, err := io.WriteString(s.Out, s.words().overview())
		return err
	}
	c, err := commandOf(args[0])
	if err != nil {
		return err
	}
	_, err = io.WriteString(s.Out, s.words().helpOf(c))
	return err
}

// helpOf returns a command's own help.
func (w Words) helpOf(c command) string {
	flags, _ := c.flags(w)
	h := w.help(c)
	var b strings.Builder
	fmt.Fprintf(&b, w.Usage+"\n\n%s\n", c.name, c.args, strings.TrimSpace(filled(h.Long, c.names)))
	if flags.HasFlags() {
		// A switch is given by its name alone.
		b.WriteString("\n" + w.Options + "\n" + strings.ReplaceAll(flags.FlagUsagesWrapped(90), "[=true|false]", "             "))
	}
	b.WriteString("\n" + w.Example + "\n" + h.Example)
	return b.String()
}

func commandNames() []string {
	var out []string
	for _, c := range commands() {
		out = append(out, c.name)
	}
	return out
}

// version returns the module's version as the build recorded it, and behind it, where it
// is known and not part of the version, the commit of the sources.
func version() string {
	info, ok := debug.ReadBuildInfo()
	if !ok {
		return "(devel)"
	}
	return versionOf(info)
}

func versionOf(info *debug.BuildInfo) string {
	const digits = 12 // of a commit, as in the version of a build between two releases
	version := cmp.Or(info.Main.Version, "(devel)")
	commit := built(info, "vcs.revision")
	commit = commit[:min(digits, len(commit))]
	switch {
	case strings.Contains(version, commit): // so it does without one
		return version
	case built(info, "vcs.modified") == "true":
		commit += "+dirty"
	}
	return version + " " + commit
}

// built returns what a build recorded under a key, empty where it did not.
func built(info *debug.BuildInfo, key string) string {
	for _, s := range info.Settings {
		if s.Key == key {
			return s.Value
		}
	}
	return ""
}

// committed returns the day of the sources' commit as the build recorded it, empty where
// it did not.
func committed() string {
	info, ok := debug.ReadBuildInfo()
	if !ok {
		return ""
	}
	day, _, _ := strings.Cut(built(info, "vcs.time"), "T")
	return day
}
