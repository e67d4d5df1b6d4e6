package command

// Messages: standard output carries the product and nothing else. Whatever is
// said to a person goes to standard error: the program's name, then one line,
// lower case, no full stop; what to do next follows a semicolon. Faults of a
// design file start with file:line:column instead, so that editors jump there.

import (
	"fmt"
	"io"
	"strings"
)

// say writes one message.
func say(w io.Writer, text string) {
	for line := range strings.SplitSeq(strings.TrimRight(text, "\n"), "\n") {
		fmt.Fprintln(w, "slingloft:", line)
	}
}

// sayf writes one formatted message.
func sayf(w io.Writer, format string, a ...any) { say(w, fmt.Sprintf(format, a...)) }
