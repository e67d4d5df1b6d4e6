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

// notice is a thing to say with what fills it in, which may be notices too: the words
// come last.
type notice struct {
	what Message
	with []any
}

// series are things to say with commas between.
type series []notice

// reason says what an error is, in the words of a run where it is one of its own.
func (w Words) reason(err error) string {
	var with status
	if errors.As(err, &with) {
		return strings.Join(w.lines(with.said), "\n")
	}
	return w.failure(err)
}

// words returns the words of a run.
func (s Streams) words() Words {
	if s.Words == nil {
		return English()
	}
	return *s.Words
}

// say writes one message.
func (s Streams) say(m Message, a ...any) { say(s.Err, s.words().text(notice{m, a})) }

// text puts a thing into words.
func (w Words) text(t notice) string {
	with := make([]any, len(t.with))
	for i, a := range t.with {
		switch a := a.(type) {
		case notice:
			with[i] = w.text(a)
		case []notice:
			with[i] = strings.Join(w.lines(a), "")
		case series:
			with[i] = strings.Join(w.lines(a), ", ")
		case error:
			with[i] = w.reason(a)
		default:
			with[i] = a
		}
	}
	return fmt.Sprintf(w.Messages[t.what], with...)
}

// lines puts several things into words.
func (w Words) lines(all []notice) []string {
	out := make([]string, len(all))
	for i, t := range all {
		out[i] = w.text(t)
	}
	return out
}

// meant is [DidYouMean] where one of the names is close to what was written, or begins
// with it, and else nothing; before stands ahead of names.
func meant(written, before string, names []string) []notice {
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
		return nil
	}
	return []notice{{DidYouMean, []any{quantity.Quoted(before + near)}}}
}

// misused says what is wrong with a command's options: a [notice], or a text of the
// library that reads them.
func misused(flags *pflag.FlagSet, err error) any {
	var no *pflag.NotExistError
	var lacks *pflag.ValueRequiredError
	var bad *pflag.InvalidValueError
	switch {
	case errors.As(err, &lacks):
		return notice{NeedsValue, []any{lacks.GetFlag().Name}}
	case errors.As(err, &bad) && bad.GetFlag().Value.Type() == "duration":
		return notice{NoTime, []any{bad.GetFlag().Name, quantity.Quoted(bad.GetValue())}}
	case errors.As(err, &bad):
		return notice{NoSense, []any{bad.GetFlag().Name, quantity.Quoted(bad.GetValue()), bad.Unwrap()}}
	case !errors.As(err, &no):
		return err
	case no.GetSpecifiedShortnames() != "":
		return notice{NoShortOption, []any{no.GetSpecifiedName()}}
	}
	var names []string
	flags.VisitAll(func(f *pflag.Flag) { names = append(names, f.Name) })
	name := no.GetSpecifiedName()
	return notice{NoOption, []any{strings.Trim(quantity.Quoted(name), `"`), meant(name, "--", names)}}
}

// failure returns an error's text with what the system could not do in plain words, in
// place of the name of its call.
func (w Words) failure(err error) string {
	text := w.Files.Failure(err)
	calls := map[string]Message{"mkdir": FolderNotMade, "open": NotOpened, "read": NotRead, "write": NotWritten, "rename": NotPlaced,
		"sync": NotWritten, "close": NotWritten, "stat": NotLookedAt, "lstat": NotLookedAt, "remove": NotRemoved, "chmod": NotWritten}
	plain := func(call, path string, whole, cause error) (string, bool) {
		m, ok := calls[call]
		return strings.Replace(text, whole.Error(), path+": "+w.Messages[m]+": "+cause.Error(), 1), ok
	}
	var p *fs.PathError
	if errors.As(err, &p) {
		if said, ok := plain(p.Op, p.Path, p, p.Err); ok {
			return said
		}
	}
	var l *os.LinkError
	if errors.As(err, &l) {
		if said, ok := plain(l.Op, l.New, l, l.Err); ok {
			return said
		}
	}
	return text
}
