package command

import (
	"context"
	"fmt"
	"io"
	"slices"
	"strconv"
	"strings"

	"github.com/spf13/pflag"

	"slingloft/cmd/slingloft/roff"
)

func manualCommand() command {
	return command{
		name: "manual", args: " [COMMAND]", maxArgs: 1,
		set: func(*pflag.FlagSet) func(context.Context, Streams, []string) error {
			return func(_ context.Context, s Streams, args []string) error {
				w := s.words()
				if len(args) == 0 {
					_, err := io.WriteString(s.Out, w.manual())
					return err
				}
				c, err := commandOf(args[0])
				if err != nil {
					return err
				}
				_, err = io.WriteString(s.Out, w.manualOf(c))
				return err
			}
		},
	}
}

// newPage begins the page of a command.
func newPage(name string) *roff.Page { return roff.New(name, committed(), "Slingloft "+version()) }

// manual returns the page of the program.
func (w Words) manual() string {
	p, m := newPage("slingloft"), w.Manual
	p.Head(m.Name)
	p.Name("slingloft", m.Line)
	p.Head(m.Synopsis)
	p.Synopsis("slingloft", m.Called)
	p.Head(m.Commands)
	var also []string
	for _, c := range commands() {
		p.Item(c.name, strings.TrimSpace(c.args), w.help(c).Line)
		also = append(also, pageName(c))
	}
	p.Head(m.Status)
	for code, means := range m.Statuses {
		p.Item(strconv.Itoa(code), "", means)
	}
	w.closing(p, also...)
	return p.String()
}

// manualOf returns the page of a command.
func (w Words) manualOf(c command) string {
	p, m, h := newPage(pageName(c)), w.Manual, w.help(c)
	p.Head(m.Name)
	p.Name(pageName(c), h.Line)
	p.Head(m.Synopsis)
	p.Synopsis("slingloft "+c.name, strings.TrimSpace(c.args+" "+m.CalledWith))
	p.Head(m.Description)
	p.Text(filled(h.Long, c.names))
	if options := c.options(w); len(options) > 0 {
		p.Head(m.Options)
		for _, f := range options {
			w.option(p, f)
		}
	}
	p.Head(m.Examples)
	p.Verbatim(h.Example)
	w.closing(p, "slingloft")
	return p.String()
}

func pageName(c command) string { return "slingloft-" + c.name }

// option prints an option as it is typed, with what follows it.
func (w Words) option(p *roff.Page, f *pflag.Flag) {
	value, means := pflag.UnquoteUsage(f)
	name := "--" + f.Name
	if f.Shorthand != "" {
		name = "-" + f.Shorthand + ", " + name
	}
	if !slices.Contains([]string{"", "false", "[]", "0s"}, f.DefValue) {
		means += fmt.Sprintf(w.Manual.Default, f.DefValue)
	}
	p.Item(name, strings.TrimPrefix(value, "[=true|false]"), means)
}

// closing prints what stands at the end of each page.
func (w Words) closing(p *roff.Page, also ...string) {
	p.Head(w.Manual.Cautions)
	p.Text(w.Manual.Caution)
	p.Head(w.Manual.Also)
	p.See(also...)
}
