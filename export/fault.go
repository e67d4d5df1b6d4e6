package export

import (
	"errors"
	"fmt"
	"strings"
)

// Fault is why a file cannot be read or a drawing not be written: which rule is broken,
// and what fills it in, faults that lie deeper among it. It is data until [Words] say it.
type Fault struct {
	Rule Rule
	Data []any // names, numbers, places, kinds of work, and errors
}

// Refuse returns the error that a rule is broken.
func Refuse(rule Rule, data ...any) error { return &Fault{rule, data} }

// Error returns the fault in English.
func (f *Fault) Error() string { return English().Fault(f) }

// Unwrap returns the errors among the data.
func (f *Fault) Unwrap() []error {
	var out []error
	for _, d := range f.Data {
		if err, ok := d.(error); ok {
			out = append(out, err)
		}
	}
	return out
}

// Is reports whether another error says that the same rule is broken by whatever.
func (f *Fault) Is(target error) bool {
	rule, ok := target.(Breaks)
	return ok && Rule(rule) == f.Rule
}

// Breaks is the error that [errors.Is] finds where a rule is broken somewhere in a chain.
type Breaks Rule

// Error returns the rule's words in English with nothing filled in.
func (b Breaks) Error() string { return English().Rules[Rule(b)] }

// Fault puts a fault into words.
func (w Words) Fault(f *Fault) string {
	text := w.Rules[f.Rule]
	if !strings.Contains(text, "%") {
		return text
	}
	with := make([]any, len(f.Data))
	for i, d := range f.Data {
		switch d := d.(type) {
		case error:
			with[i] = w.Failure(d)
		case Left:
			with[i] = w.LeftOut(d)
		case []string:
			with[i] = strings.Join(d, w.List)
		default:
			with[i] = d
		}
	}
	return fmt.Sprintf(text, with...)
}

// Failure puts an error into words: faults in those of w, others in their own.
func (w Words) Failure(err error) string {
	if f, ok := err.(*Fault); ok {
		return w.Fault(f)
	}
	if all, ok := err.(interface{ Unwrap() []error }); ok {
		var lines []string
		for _, one := range all.Unwrap() {
			lines = append(lines, w.Failure(one))
		}
		return strings.Join(lines, "\n")
	}
	return err.Error()
}

// Broken reports whether an error says that a rule is broken.
func Broken(err error, rule Rule) bool { return errors.Is(err, Breaks(rule)) }
