package command

import (
	"context"
	"fmt"
	"io"
	"slices"
	"strings"

	"github.com/spf13/pflag"
)

// completer returns what writes the completion script of a shell, nil where there
// is none.
func completer(shell string) func(io.Writer, Words) {
	switch shell {
	case "bash":
		return completeBash
	case "fish":
		return completeFish
	case "zsh":
		return completeZsh
	}
	return nil
}

func completeCommand() command {
	return command{
		name: "complete", args: " SHELL", maxArgs: 1,
		set: func(*pflag.FlagSet) func(context.Context, Streams, []string) error {
			return func(_ context.Context, s Streams, args []string) error {
				if len(args) == 1 {
					if write := completer(args[0]); write != nil {
						write(s.Out, s.words())
						return nil
					}
				}
				return misuse(NameShell)
			}
		},
	}
}

// options returns a command's flags as they are typed, in the order of its help.
func (c command) options(w Words) []*pflag.Flag {
	flags, _ := c.flags(w)
	var out []*pflag.Flag
	flags.VisitAll(func(f *pflag.Flag) { out = append(out, f) })
	return out
}

// typed returns a command's flags and --help with their dashes, and those among
// them that a value follows.
func (c command) typed(w Words) (all, valued []string) {
	for _, f := range c.options(w) {
		all = append(all, "--"+f.Name)
		if f.Value.Type() != "bool" {
			valued = append(valued, "--"+f.Name)
		}
	}
	return append(all, "--help"), valued
}

func completeBash(w io.Writer, say Words) {
	fmt.Fprint(w, "_slingloft() {\n\tlocal word=${COMP_WORDS[COMP_CWORD]} options=\n\tcase ${COMP_WORDS[1]} in\n")
	for _, c := range commands() {
		all, _ := c.typed(say)
		fmt.Fprintf(w, "\t%s) options=%q ;;\n", c.name, strings.Join(all, " "))
	}
	fmt.Fprintf(w, "\tesac\n\tif ((COMP_CWORD == 1)); then\n\t\tCOMPREPLY=($(compgen -W %q -- \"$word\"))\n",
		strings.Join(commandNames(), " "))
	fmt.Fprint(w, "\telif [[ $word == -* ]]; then\n\t\tCOMPREPLY=($(compgen -W \"$options\" -- \"$word\"))\n"+
		"\telse\n\t\tCOMPREPLY=($(compgen -f -- \"$word\"))\n\tfi\n}\n")
	fmt.Fprint(w, "complete -o filenames -F _slingloft slingloft\n")
}

func completeFish(w io.Writer, say Words) {
	quote := func(s string) string {
		return "'" + strings.ReplaceAll(strings.ReplaceAll(s, `\`, `\\`), "'", `\'`) + "'"
	}
	for _, c := range commands() {
		fmt.Fprintf(w, "complete -c slingloft -n __fish_use_subcommand -f -a %s -d %s\n", c.name, quote(say.help(c).Line))
		_, valued := c.typed(say)
		for _, f := range c.options(say) {
			follows := ""
			if slices.Contains(valued, "--"+f.Name) {
				follows = " -r"
			}
			fmt.Fprintf(w, "complete -c slingloft -n '__fish_seen_subcommand_from %s' -l %s%s -d %s\n", c.name, f.Name, follows, quote(f.Usage))
		}
	}
}

func completeZsh(w io.Writer, say Words) {
	fmt.Fprint(w, "#compdef slingloft\n\n_slingloft() {\n\tif ((CURRENT == 2)); then\n\t\tcompadd -- ")
	fmt.Fprintln(w, strings.Join(commandNames(), " "))
	fmt.Fprint(w, "\t\treturn\n\tfi\n\tif [[ $words[CURRENT] != -* ]]; then\n\t\t_files\n\t\treturn\n\tfi\n\tcase $words[2] in\n")
	for _, c := range commands() {
		all, _ := c.typed(say)
		fmt.Fprintf(w, "\t%s) compadd -- %s ;;\n", c.name, strings.Join(all, " "))
	}
	fmt.Fprint(w, "\tesac\n}\n\n_slingloft \"$@\"\n")
}
