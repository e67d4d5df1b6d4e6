package command

import (
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
	for _, c := range commands() {
		if c.name == args[0] {
			_, err := io.WriteString(s.Out, s.words().helpOf(c))
			return err
		}
	}
	return misuse(UnknownCommand, args[0], meant(args[0], "", commandNames()))
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
	version, commit, changed := info.Main.Version, "", ""
	if version == "" {
		version = "(devel)"
	}
	for _, s := range info.Settings {
		switch {
		case s.Key == "vcs.revision":
			commit = " " + s.Value[:min(digits, len(s.Value))]
		case s.Key == "vcs.modified" && s.Value == "true":
			changed = "+dirty"
		}
	}
	if strings.Contains(version, strings.TrimSpace(commit)) {
		return version
	}
	return version + commit + changed
}

// committed returns the day of the sources' commit as the build recorded it, empty where
// it did not.
func committed() string {
	if info, ok := debug.ReadBuildInfo(); ok {
		for _, s := range info.Settings {
			if day, _, found := strings.Cut(s.Value, "T"); s.Key == "vcs.time" && found {
				return day
			}
		}
	}
	return ""
}
