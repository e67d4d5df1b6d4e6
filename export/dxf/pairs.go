package dxf

import (
	"bufio"
	"fmt"
	"io"
	"strconv"
	"strings"

	"slingloft/export"
)

// decimals of a coordinate: a tenth of a micrometre, in inches a fortieth of one.
const (
	decimals     = 4
	inchDecimals = 6
)

const mmPerInch = 25.4

// pairs writes group codes with their values. The first error sticks; later
// writes do nothing.
type pairs struct {
	w      *bufio.Writer
	inches bool // lengths are written in inches
	err    error
}

func newPairs(w io.Writer, inches bool) *pairs { return &pairs{w: bufio.NewWriter(w), inches: inches} }

// raw writes a value that is known to be one line of ASCII.
func (p *pairs) raw(code int, value string) {
	if p.err == nil {
		_, p.err = fmt.Fprintf(p.w, "%3d\n%s\n", code, value)
	}
}

func (p *pairs) int(code, value int)    { p.raw(code, strconv.Itoa(value)) }
func (p *pairs) handle(code int, h int) { p.raw(code, strconv.FormatInt(int64(h), 16)) }

// num writes a length in mm in the unit of the file.
func (p *pairs) num(code int, v float64) {
	if p.inches {
		p.raw(code, export.Fixed(v/mmPerInch, inchDecimals))
		return
	}
	p.raw(code, export.Fixed(v, decimals))
}

// units writes the variables of the header that name the unit of length.
func (p *pairs) units() {
	insUnits, measurement := "4", "1"
	if p.inches {
		insUnits, measurement = "1", "0"
	}
	p.all("9", "$INSUNITS", "70", insUnits, "9", "$MEASUREMENT", "70", measurement)
}

// system names the units of a pattern.
func (p *pairs) system() string {
	if p.inches {
		return "ENGLISH"
	}
	return "METRIC"
}

// written returns a length as a text in the unit of the file.
func (p *pairs) written(mm float64) string {
	if p.inches {
		return export.Fixed(mm/mmPerInch, 2) + " in"
	}
	return export.Fixed(mm, 1) + " mm"
}

// all writes pairs given as "code value" words, for the parts of a file that are
// the same in all files.
func (p *pairs) all(words ...string) {
	for i := 0; i+1 < len(words); i += 2 {
		code, err := strconv.Atoi(words[i])
		if err != nil {
			panic("dxf: group code " + words[i])
		}
		p.raw(code, words[i+1])
	}
}

func (p *pairs) flush() error {
	if p.err == nil {
		p.err = p.w.Flush()
	}
	return p.err
}

// escaped returns text as one line of ASCII: other runes as \U+XXXX, and so the
// backslash and the caret, which would otherwise begin an escape of their own.
func escaped(text string) string {
	var b strings.Builder
	for _, r := range export.OneLine(text) {
		if r >= ' ' && r <= '~' && r != '\\' && r != '^' {
			b.WriteRune(r)
		} else {
			fmt.Fprintf(&b, "\\U+%04X", r)
		}
	}
	return b.String()
}

// unescaped undoes escaped.
func unescaped(text string) string {
	const mark = `\U+`
	var b strings.Builder
	for {
		before, after, ok := strings.Cut(text, mark)
		b.WriteString(before)
		if !ok {
			return export.OneLine(b.String())
		}
		if len(after) >= 4 {
			if v, err := strconv.ParseUint(after[:4], 16, 32); err == nil {
				b.WriteRune(rune(v))
				text = after[4:]
				continue
			}
		}
		b.WriteString(mark)
		text = after
	}
}
