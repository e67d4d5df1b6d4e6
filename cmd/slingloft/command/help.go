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

// version returns the module's version as the build recorded it.
func version() string {
	if info, ok := debug.ReadBuildInfo(); ok && info.Main.Version != "" {
		return info.Main.Version
	}
	return "(devel)"
}
