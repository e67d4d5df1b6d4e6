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
	key, f, hint := b.explain(line, err.Error())
	b.faults = append(b.faults, at.fault(b.file, Key(key), f, hint))
	n := at.Line + 1
	for n <= len(b.lines.starts) && !startsLine.MatchString(b.lines.text(n)) {
		n++
	}
	b.base = b.lines.after(n - 1)
}

// explain says what is wrong with a line that is not TOML, and notes its key as
// seen, so that it is not reported as missing too.
func (b *treeBuilder) explain(line, message string) (key string, f Finding, hint Phrase) {
	unsound := Found(NotTOML, message)
	if m := brokenHeader.FindStringSubmatch(line); m != nil {
		// What follows belongs to a table whose name is not sure: it is left out.
		b.prefix, b.current = m[1], &table{}
		b.broken[m[1]] = true
		return m[1], unsound, Say(WriteHeader)
	}
	if m := bareHeader.FindStringSubmatch(line); m != nil && slices.Contains(allKeys().tables, Key(m[1])) {
		b.prefix, b.current = m[1], &table{}
		b.broken[m[1]] = true
		return m[1], Found(BareHeader), Say(OnItsOwnLine, allKeys().headed(Key(m[1])))
	}
	m := assignment.FindStringSubmatch(line)
	if m == nil {
		return "", unsound, Say(WriteAssignment)
	}
	key = dotted(b.prefix, m[1])
	b.broken[key] = true
	value, _, _ := strings.Cut(m[3], "#")
	value = strings.TrimSpace(value)
	if value == "" {
		return key, Found(ValueMissing), Say(WriteOrComment)
	}
	if straight := straightened.Replace(value); straight != value {
		return key, Found(TypographicQuotes), Say(WriteValue, m[1], straight)
	}
	bare := strings.Trim(value, `"'`)
	if withComma.MatchString(value) {
		return key, Found(CommaInNumber, quantity.Quoted(value)), Say(WritePoint)
	}
	if m[2] == ":" {
		return key, Found(Colon), Say(WriteEquals, m[1], b.meant(key, value, bare))
	}
	if q, err := quantity.Parse(bare); err == nil && q.Unit.Symbol != "" {
		return key, Found(NotQuoted, quantity.Quoted(bare)), Say(WriteValue, m[1], strconv.Quote(bare))
	}
	if r, ok := allKeys().byKey[Key(key)]; ok && (r.form == words || r.form == choice) && !strings.ContainsAny(value, `"'[{`) {
		return key, Found(NotQuoted, quantity.Quoted(bare)), Say(WriteValue, m[1], strconv.Quote(bare))
	}
	// An inch sign within double quotes ends the text too early.
	if strings.Count(value, `"`) == 3 {
		return key, unsound, Say(WriteInches)
	}
	return key, unsound, Say(WriteOnOneLine, m[1], b.example(key))
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
