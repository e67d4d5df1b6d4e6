package command

// Messages: standard output carries the product and nothing else. Whatever is
// said to a person goes to standard error: the program's name, then one line,
// lower case, no full stop; what to do next follows a semicolon. Faults of a
// design file start with file:line:column instead, so that editors jump there.

import (
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
	"strings"

	"github.com/spf13/pflag"

	"slingloft/outline/design"
	"slingloft/outline/quantity"
)

// say writes one message.
func say(w io.Writer, text string) {
	for line := range strings.SplitSeq(strings.TrimRight(text, "\n"), "\n") {
		fmt.Fprintln(w, "slingloft:", line)
	}
}

// sayf writes one formatted message.
func sayf(w io.Writer, format string, a ...any) { say(w, fmt.Sprintf(format, a...)) }

// meant returns ", did you mean …?" where one of the names is close to what was
// written, or begins with it; before stands ahead of names.
func meant(written, before string, names []string) string {
	near := ""
	if len(written) > 1 {
		for _, n := range names {
			if strings.HasPrefix(n, written) {
				near = n
				break
			}
		}
		if near == "" {
			near = design.Nearest(written, names)
		}
	}
	if near == "" {
		return ""
	}
	return ", did you mean " + quantity.Quoted(before+near) + "?"
}

// misused says what is wrong with a command's options.
func misused(flags *pflag.FlagSet, err error) string {
	var no *pflag.NotExistError
	var lacks *pflag.ValueRequiredError
	var bad *pflag.InvalidValueError
	switch {
	case errors.As(err, &lacks):
		return "--" + lacks.GetFlag().Name + " needs a value"
	case errors.As(err, &bad) && bad.GetFlag().Value.Type() == "duration":
		return "--" + bad.GetFlag().Name + " " + quantity.Quoted(bad.GetValue()) + " is no time; write one such as 60s or 5m"
	case errors.As(err, &bad):
		return "--" + bad.GetFlag().Name + " " + quantity.Quoted(bad.GetValue()) + " does not make sense; " + bad.Unwrap().Error()
	case !errors.As(err, &no):
		return err.Error()
	case no.GetSpecifiedShortnames() != "":
		return "there is no option -" + no.GetSpecifiedName()
	}
	var names []string
	flags.VisitAll(func(f *pflag.Flag) { names = append(names, f.Name) })
	name := no.GetSpecifiedName()
	return "there is no option --" + strings.Trim(quantity.Quoted(name), `"`) + meant(name, "--", names)
}

// worded returns an error's text with what the system could not do in plain words,
// in place of the name of its call.
func worded(err error) string {
	text := err.Error()
	doing := map[string]string{"mkdir": "the folder cannot be made", "open": "cannot be opened", "read": "cannot be read",
		"write": "cannot be written", "rename": "cannot be put in place", "sync": "cannot be written", "close": "cannot be written",
		"stat": "cannot be looked at", "lstat": "cannot be looked at", "remove": "cannot be removed", "chmod": "cannot be written"}
	var p *fs.PathError
	if errors.As(err, &p) && doing[p.Op] != "" {
		return strings.Replace(text, p.Error(), p.Path+": "+doing[p.Op]+": "+p.Err.Error(), 1)
	}
	var l *os.LinkError
	if errors.As(err, &l) && doing[l.Op] != "" {
		return strings.Replace(text, l.Error(), l.New+": "+doing[l.Op]+": "+l.Err.Error(), 1)
	}
	return text
}
