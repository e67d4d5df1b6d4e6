package hpgl

import (
	"strconv"
	"strings"

	"slingloft/export"
)

// steps returns all that a file has a plotter do: every instruction with its numbers,
// whatever it is, those of the pen's moves place by place. What separates them does
// nothing.
func steps(data []byte) []export.Step {
	var out []export.Step
	line := 1
	text := string(data)
	for text != "" {
		c := text[0]
		if strings.IndexByte(" ;,\r\n\t", c) >= 0 {
			if c == '\n' {
				line++
			}
			text = text[1:]
			continue
		}
		name, args, rest := instruction(text)
		out = append(out, stepsOf(line, name, args)...)
		line += strings.Count(text[:len(text)-len(rest)], "\n")
		text = rest
	}
	return out
}

// instruction returns the first instruction of a text, its parameters and the rest. A
// label, an escape or what is no letter has its own text for parameters.
func instruction(text string) (name, args, rest string) {
	letter := func(c byte) bool { return c|0x20 >= 'a' && c|0x20 <= 'z' }
	if len(text) < 2 || !letter(text[0]) || !letter(text[1]) {
		end := strings.IndexByte(text, '\n')
		if end < 0 {
			end = len(text) - 1
		}
		return "", text[:end+1], text[end+1:]
	}
	name = strings.ToUpper(text[:2])
	text = text[2:]
	if name == "LB" {
		label, after, _ := strings.Cut(text, "\x03")
		return name, label, after
	}
	end := strings.IndexFunc(text, func(r rune) bool { return !strings.ContainsRune("0123456789.+-, \r\n\t", r) })
	if end < 0 {
		end = len(text)
	}
	return name, text[:end], text[end:]
}

// stepsOf returns what one instruction does.
func stepsOf(line int, name, args string) []export.Step {
	if name == "" || name == "LB" {
		return []export.Step{{Line: line, Does: strings.TrimSpace(name + args)}}
	}
	words := strings.FieldsFunc(args, func(r rune) bool { return strings.ContainsRune(", \r\n\t", r) })
	for i, w := range words {
		if v, err := strconv.ParseFloat(w, 64); err == nil {
			words[i] = strconv.FormatFloat(v, 'f', -1, 64)
		}
	}
	pairs := name == "PU" || name == "PD" || name == "PA" || name == "PR"
	if !pairs || len(words) < 3 {
		return []export.Step{{Line: line, Does: name + strings.Join(words, ",")}}
	}
	var out []export.Step
	for i := 0; i < len(words); i += 2 {
		out = append(out, export.Step{Line: line, Does: name + strings.Join(words[i:min(i+2, len(words))], ",")})
	}
	return out
}
