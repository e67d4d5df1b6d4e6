package design

import (
	"errors"
	"regexp"
	"slices"
	"strconv"
	"strings"

	"github.com/pelletier/go-toml/v2/unstable"

	"slingloft/outline/quantity"
)

// startsLine matches a line on which reading may go on after a fault: a header,
// or a key and its equals sign.
var startsLine = regexp.MustCompile(`^\s*(\[|[A-Za-z0-9_."'-]+\s*=)`)

// brokenHeader takes the name out of a header line that is not TOML.
var brokenHeader = regexp.MustCompile(`^\s*\[+\s*([A-Za-z0-9_.-]*)`)

// bareHeader takes the name out of a line that holds nothing else.
var bareHeader = regexp.MustCompile(`^\s*([A-Za-z0-9_.-]+)\s*(?:#.*)?$`)

// assignment takes a line apart into key and value.
var assignment = regexp.MustCompile(`^\s*([A-Za-z0-9_.-]+)\s*([=:])\s*(.*)$`)

// withComma is a number as many languages write it.
var withComma = regexp.MustCompile(`^[+-]?\d+(,\d+)+$`)

// straightened makes the keyboard's quotes of those that word processors set.
var straightened = strings.NewReplacer("“", `"`, "”", `"`, "„", `"`, "«", `"`, "»", `"`, "‘", `"`, "’", `"`)

// resume notes the fault that stopped the parser and lets it go on at the next
// line that looks sound.
func (b *treeBuilder) resume(err error) {
	offset := b.base
	var pe *unstable.ParserError
	if errors.As(err, &pe) && pe.Highlight != nil {
		offset += int(b.parser.Range(pe.Highlight).Offset)
	}
	at := b.lines.position(offset)
	line := b.lines.text(at.Line)
	key, found, hint := b.explain(line, err.Error())
	b.faults = append(b.faults, at.fault(b.file, Key(key), found, hint))
	n := at.Line + 1
	for n <= len(b.lines.starts) && !startsLine.MatchString(b.lines.text(n)) {
		n++
	}
	b.base = b.lines.after(n - 1)
}

// explain says what is wrong with a line that is not TOML, and notes its key as
// seen, so that it is not reported as missing too.
func (b *treeBuilder) explain(line, message string) (key, found, hint string) {
	if m := brokenHeader.FindStringSubmatch(line); m != nil {
		// What follows belongs to a table whose name is not sure: it is left out.
		b.prefix, b.current = m[1], &table{}
		b.broken[m[1]] = true
		return m[1], message, "write the name of a table in brackets on a line of its own, such as [bed]"
	}
	if m := bareHeader.FindStringSubmatch(line); m != nil && slices.Contains(allKeys().tables, Key(m[1])) {
		b.prefix, b.current = m[1], &table{}
		b.broken[m[1]] = true
		return m[1], "the name of a table stands without brackets", allKeys().headed(Key(m[1])) + " on a line of its own"
	}
	m := assignment.FindStringSubmatch(line)
	if m == nil {
		return "", message, `write one key, an equals sign and its value, such as span = "1650 mm"`
	}
	key = dotted(b.prefix, m[1])
	b.broken[key] = true
	value, _, _ := strings.Cut(m[3], "#")
	value = strings.TrimSpace(value)
	if value == "" {
		return key, "has no value", "write one, or put # before the line to leave it out"
	}
	if straight := straightened.Replace(value); straight != value {
		return key, "stands in typographic quotes", "write " + m[1] + " = " + straight
	}
	bare := strings.Trim(value, `"'`)
	if withComma.MatchString(value) {
		return key, quantity.Quoted(value) + " has a comma in its number", "write a decimal point, and nothing between thousands"
	}
	if m[2] == ":" {
		return key, "has a colon before its value", "write = between key and value: " + m[1] + " = " + b.meant(key, value, bare)
	}
	if q, err := quantity.Parse(bare); err == nil && q.Unit.Symbol != "" {
		return key, quantity.Quoted(bare) + " is not set in quotes", "write " + m[1] + " = " + strconv.Quote(bare)
	}
	if r, ok := allKeys().byKey[Key(key)]; ok && (r.form == words || r.form == choice) && !strings.ContainsAny(value, `"'[{`) {
		return key, quantity.Quoted(bare) + " is not set in quotes", "write " + m[1] + " = " + strconv.Quote(bare)
	}
	// An inch sign within double quotes ends the text too early.
	if strings.Count(value, `"`) == 3 {
		return key, message, `write in for inches and ft for feet, such as "65 in"`
	}
	return key, message, "write " + m[1] + " = " + b.example(key) + " or the like, on one line"
}

// meant returns in TOML what a value on a faulty line is likely meant as.
func (b *treeBuilder) meant(key, value, bare string) string {
	if value != bare {
		return strconv.Quote(bare)
	}
	if q, err := quantity.Parse(bare); err == nil && q.Unit.Symbol != "" {
		return strconv.Quote(bare)
	}
	if _, ok := plain(bare); ok || bare == "true" || bare == "false" {
		return bare
	}
	return b.example(key)
}
