package gcode

import (
	"cmp"
	"fmt"
	"strconv"
	"strings"

	"slingloft/export"
)

// steps returns all that a program has a controller do, block by block: every word with
// its number, whatever the word, and whatever else a controller or a sender of programs
// acts on. Line numbers, spaces, letters' case and comments do nothing, but for the bytes
// in them on which controllers act at once, and comments that are messages.
func steps(program []byte) []export.Step {
	var out []export.Step
	n := 0
	for text := range strings.Lines(string(program)) {
		n++
		for _, c := range []byte(text) {
			if strings.IndexByte("!?~\x18", c) >= 0 || c >= 0x80 {
				out = append(out, export.Step{Line: n, Does: fmt.Sprintf("byte %d", c)})
			}
		}
		block, comments := parted(strings.TrimRight(text, "\r\n"))
		for _, c := range comments {
			if kind, _, ok := strings.Cut(strings.ToUpper(strings.TrimSpace(c)), ","); ok {
				out = append(out, export.Step{Line: n, Does: "message " + kind + ": " + c})
			}
		}
		if does := doing(block); does != "" {
			out = append(out, export.Step{Line: n, Does: does})
		}
	}
	return out
}

// parted returns a line without its comments, and those.
func parted(line string) (block string, comments []string) {
	var b strings.Builder
	for {
		at := strings.IndexAny(line, "(;")
		if at < 0 {
			b.WriteString(line)
			return b.String(), comments
		}
		b.WriteString(line[:at] + " ")
		if line[at] == ';' {
			return b.String(), append(comments, line[at+1:])
		}
		text, rest, ended := strings.Cut(line[at+1:], ")")
		comments = append(comments, text)
		if !ended {
			return b.String() + "(", comments // no comment to most controllers
		}
		line = rest
	}
}

// doing returns a block in one way of writing it, without its number. What are no words
// is given as it stands.
func doing(block string) string {
	bare := strings.ToUpper(strings.Join(strings.Fields(block), ""))
	var out []string
	for rest := bare; rest != ""; {
		end := 1
		for end < len(rest) && strings.IndexByte("0123456789.+-", rest[end]) >= 0 {
			end++
		}
		v, err := strconv.ParseFloat(rest[1:end], 64)
		if rest[0] < 'A' || rest[0] > 'Z' || err != nil {
			return bare
		}
		if rest[0] != 'N' || len(out) > 0 {
			number := strings.TrimSuffix(strings.TrimRight(export.Fixed(v, inchDecimals), "0"), ".")
			out = append(out, rest[:1]+cmp.Or(number, "0"))
		}
		rest = rest[end:]
	}
	return strings.Join(out, " ")
}
