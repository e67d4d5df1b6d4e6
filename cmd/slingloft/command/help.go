package command

import (
	"fmt"
	"io"
	"runtime/debug"
	"strings"

	"github.com/spf13/pflag"
)

// overview is the program's own help.
func overview() string {
	var b strings.Builder
	b.WriteString(`Slingloft: from one design file to everything a bridge hammock is cut and sewn from.

usage: slingloft COMMAND [DESIGN] [options]

`)
	for _, c := range commands() {
		fmt.Fprintf(&b, "  %-10s %s\n", c.name, c.line)
	}
	b.WriteString(`
A command that takes a DESIGN uses a built-in one where none is named, so each
can be tried at once:

  slingloft cut                  the built-in design's files, into ./slingloft-out
  slingloft start my.toml        a design of your own to change
  slingloft figure my.toml       its figures: shape, forces, cords, seams, offsets
  slingloft cut my.toml --out my-files

slingloft COMMAND --help tells more. Exit status: 0 done, 1 cannot read or write,
2 usage or design at fault, 3 a required margin is not met, 4 a seam is out of
tolerance, 5 written files do not agree with the design.

People hang in what is made from these files: read the cautions in the README.
`)
	return b.String()
}

// help prints the overview or one command's help.
func help(args []string, s Streams) error {
	if len(args) == 0 {
		_, err := io.WriteString(s.Out, overview())
		return err
	}
	for _, c := range commands() {
		if c.name == args[0] {
			_, err := io.WriteString(s.Out, c.help())
			return err
		}
	}
	return misuse(UnknownCommand, args[0], meant(args[0], "", commandNames()))
}

// help returns a command's own help.
func (c command) help() string {
	flags := pflag.NewFlagSet(c.name, pflag.ContinueOnError)
	flags.SortFlags = false
	c.set(flags)
	var b strings.Builder
	fmt.Fprintf(&b, "usage: slingloft %s%s [options]\n\n%s\n", c.name, c.args, strings.TrimSpace(c.long))
	if flags.HasFlags() {
		// A switch is given by its name alone.
		b.WriteString("\noptions:\n" + strings.ReplaceAll(flags.FlagUsagesWrapped(90), "[=true|false]", "             "))
	}
	if c.example != "" {
		b.WriteString("\nexample:\n" + c.example)
	}
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
