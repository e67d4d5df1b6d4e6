// Package command is the command line of Slingloft: it reads arguments, calls
// the stages in package work and turns what they return into files, messages and
// an exit status.
package command

import (
	"context"
	"errors"
	"fmt"
	"io"
	"slices"
	"strings"

	"github.com/spf13/pflag"

	"slingloft/outline/design"
)

// Exit statuses.
const (
	Done     = 0
	Failed   = 1 // cannot read or write
	Usage    = 2 // usage or design at fault
	Unmet    = 3 // a required margin is not met
	SeamOff  = 4 // a seam is out of tolerance
	Disagree = 5 // written files do not agree with the design
)

// Streams are where a run reads and writes.
type Streams struct {
	Out io.Writer // the product
	Err io.Writer // everything else
	// Words is what is said on Err; nil: English.
	Words *Words
}

// command is one of the program's commands.
type command struct {
	name    string
	args    string // arguments in the synopsis
	names   string // a list that fills in its help
	maxArgs int    // how many arguments it takes
	// set defines the flags, with lists that fill in their help, and returns what runs
	// once they are read.
	set func(*pflag.FlagSet) func(context.Context, Streams, []string) error
}

// commands returns every command in the order in which help lists them.
func commands() []command {
	return []command{
		startCommand(), figureCommand(), hangCommand(), cutCommand(), proveCommand(),
		calibrateCommand(), sheetCommand(), watchCommand(), completeCommand(),
		manualCommand(),
	}
}

// status is an error that carries an exit status of its own, and what is to be said, if
// there is anything.
type status struct {
	code int
	said []notice
}

// Error says it in English.
func (s status) Error() string { return strings.Join(English().lines(s.said), "\n") }

// ends returns an error with an exit status that says one thing.
func ends(code int, m Message, a ...any) error { return status{code, []notice{{m, a}}} }

// misuse returns an error for a command line at fault.
func misuse(m Message, a ...any) error { return ends(Usage, m, a...) }

// Run runs the program with the arguments after its name and returns the exit
// status.
func Run(ctx context.Context, args []string, s Streams) int {
	out := &written{to: s.Out}
	s.Out = out
	err := dispatch(ctx, args, s)
	if err == nil {
		err = out.err
	}
	var with status
	var faults design.Faults
	switch {
	case err == nil:
	case errors.As(err, &faults):
		fmt.Fprintln(s.Err, faults)
	case errors.As(err, &with):
		for _, line := range s.words().lines(with.said) {
			say(s.Err, line)
		}
	default:
		say(s.Err, s.words().failure(err))
	}
	return statusOf(err)
}

// written passes on what is written and remembers what went wrong with it, so that no
// command ends well whose product nobody has.
type written struct {
	to  io.Writer
	err error
}

func (w *written) Write(b []byte) (int, error) {
	n, err := w.to.Write(b)
	if w.err == nil {
		w.err = err
	}
	return n, err
}

func dispatch(ctx context.Context, args []string, s Streams) error {
	if len(args) == 0 {
		fmt.Fprint(s.Err, s.words().overview())
		return status{code: Usage}
	}
	name := args[0]
	switch name {
	case "-h", "--help", "help":
		return help(args[1:], s)
	case "--version", "version":
		fmt.Fprintln(s.Out, "slingloft", version())
		return nil
	}
	c, err := commandOf(name)
	if err != nil {
		return err
	}
	return c.run(ctx, args[1:], s)
}

// commandOf returns the command of a name; the error says which may be meant.
func commandOf(name string) (command, error) {
	for _, c := range commands() {
		if c.name == name {
			return c, nil
		}
	}
	return command{}, misuse(UnknownCommand, name, meant(name, "", commandNames()))
}

// flags returns a command's flags with their help, and what runs once they are read.
func (c command) flags(w Words) (*pflag.FlagSet, runner) {
	flags := pflag.NewFlagSet(c.name, pflag.ContinueOnError)
	flags.SortFlags = false
	do := c.set(flags)
	help := w.help(c).Flags
	flags.VisitAll(func(f *pflag.Flag) { f.Usage = filled(help[f.Name], f.Usage) })
	return flags, do
}

// filled returns a text with a list in it, if there is one.
func filled(text, list string) string {
	if list == "" {
		return text
	}
	return fmt.Sprintf(text, list)
}

// run reads a command's flags and runs it.
func (c command) run(ctx context.Context, args []string, s Streams) error {
	flags, do := c.flags(s.words())
	flags.SetOutput(io.Discard)
	err := flags.Parse(args)
	if errors.Is(err, pflag.ErrHelp) {
		fmt.Fprint(s.Out, s.words().helpOf(c))
		return nil
	}
	if err != nil {
		return misuse(BadOption, c.name, misused(flags, err), c.name)
	}
	if empty := emptyOption(flags); empty != "" {
		return misuse(BadOption, c.name, notice{NeedsValue, []any{empty}}, c.name)
	}
	if slices.Contains(flags.Args(), "") {
		return misuse(EmptyArgument, c.name)
	}
	if flags.NArg() > c.maxArgs {
		return misuse(TooManyArguments, c.name, c.args, strings.Join(flags.Args(), " "))
	}
	return do(ctx, s, flags.Args())
}

// emptyOption returns the name of an option that is given without any text, "" if none is.
func emptyOption(flags *pflag.FlagSet) string {
	name := ""
	flags.Visit(func(f *pflag.Flag) {
		if f.Value.String() == "" {
			name = f.Name
		}
	})
	return name
}
