// Package form writes the page on which a design is made: one HTML document with its
// style and script in it, a field for every key of a design. It holds nothing of any
// design: what stands in the fields is asked for by the script.
package form

import (
	"crypto/sha256"
	"embed"
	"encoding/base64"
	"encoding/json"
	"fmt"
	"regexp"
	"slices"
	"strings"

	"slingloft/export/format"
	"slingloft/export/sheet/page"
	"slingloft/outline/design"
)

//go:embed form.html
var document string

//go:embed form.css
var style string

//go:embed script/*.js
var fragments embed.FS

// script returns the page's script: fragments that share what they name.
func script() string {
	var b strings.Builder
	b.WriteString("\"use strict\";\n(() => {\n")
	for _, name := range []string{
		"begin", "focus", "alone", "fields", "switches", "faults", "status", "sheet", "compare", "space", "section", "slide", "views",
		"buttons", "questions", "files", "news",
	} {
		text, err := fragments.ReadFile("script/" + name + ".js")
		if err != nil {
			panic("form: no fragment " + name)
		}
		b.Write(text)
	}
	b.WriteString("})();\n")
	return b.String()
}

// Page is a page and what a browser may do on it.
type Page struct {
	HTML   []byte
	Policy string // Content-Security-Policy
}

// group is a part of the form.
type group struct {
	ID, Title string
	First     []field // those that a maker decides
	More      []field
	Lists     []list
	Switches  []switched
	Shelf     bool // a shelf can be brought in
}

// switched is a table that turns something on by standing in the file.
type switched struct {
	design.Switch
	ID, Title string
	Fields    []field
}

// list is an array of tables; its first element stands in the form, empty or not.
type list struct {
	Key    design.Key
	Title  string
	Doc    string
	Fields []field
	Brings bool // files can be brought in
}

// field is one key as the form shows it.
type field struct {
	design.Field
	Name, ID, Label string
	Inch            design.Field // the same in inches
	Left, LeftInch  string       // what holds where it is left empty
	Takes           bool         // it takes a thing from the shelf
}

// New returns the page in one language, as a server gives it out.
func New(say Words) (Page, error) { return assembled(say, Carried{}) }

// Carried is what the page holds that carries the program in itself.
type Carried struct {
	Program string // for WebAssembly, packed with gzip, in base64
	Runtime string // the script by which Go runs in a browser
	Engine  string // the worker's script after that
	Notices string // of whom what comes from, and under which terms
}

// Alone returns the page that needs no server.
func Alone(say Words, c Carried) (Page, error) { return assembled(say, c) }

// assembled puts a page together.
func assembled(say Words, c Carried) (Page, error) {
	css, code := page.Style()+style, script()
	data, err := dataOf(say)
	if err != nil {
		return Page{}, err
	}
	policy := "default-src 'none'; script-src " + hash(code) + "%s; style-src " + hash(css) +
		"; connect-src %s; img-src data: blob:; base-uri 'none'; form-action 'none'"
	if c.Program == "" {
		policy = fmt.Sprintf(policy, "", "'self'") + "; frame-ancestors 'none'"
	} else {
		policy = fmt.Sprintf(policy, " 'wasm-unsafe-eval'", "'none'") + "; worker-src blob:"
	}
	data["Style"], data["Script"], data["Policy"] = raw(css), raw(code), policy
	data["Program"], data["Runtime"], data["Engine"], data["Notices"] = raw(c.Program), raw(c.Runtime), raw(c.Engine), c.Notices
	return Page{filled(document, data), policy}, nil
}

// dataOf returns what is filled in beside style, script and what is carried.
func dataOf(say Words) (map[string]any, error) {
	said, err := json.Marshal(say.Said) // with < and > escaped
	return map[string]any{
		"Say":     say,
		"Said":    raw(said),
		"Groups":  groupsOf(say),
		"Formats": formatsOf(say),
		"Papers":  design.Papers(),
		"Hangs":   hangsOf(say),
		"Views":   viewsOf(say),
		"Takes":   takes(say),
	}, err
}

// hash returns what lets a browser take a text for its own.
func hash(text string) string {
	sum := sha256.Sum256([]byte(text))
	return "'sha256-" + base64.StdEncoding.EncodeToString(sum[:]) + "'"
}

// groupsOf sorts every field of a design into its group.
func groupsOf(say Words) []group {
	out := make([]group, len(say.Groups))
	for g := range out {
		out[g] = group{ID: "g-" + groupIDs()[g], Title: say.Groups[g], Shelf: Group(g) == Shelf}
	}
	lists, on := map[design.Key]*list{}, map[design.Key][]field{}
	inches := design.Fields(true)
	for i, f := range design.Fields(false) {
		f.Meaning = say.inWords(f)
		one := field{
			Field:    f,
			Name:     string(f.Key),
			Label:    say.Labels[f.Key],
			Inch:     inches[i],
			Left:     say.left(f),
			LeftInch: say.left(inches[i]),
			Takes:    len(design.TakenBy(f.Key)) > 0,
		}
		g := &out[groupOf(f.Key)]
		if f.List == "" {
			one.ID = id(one.Name)
			if f.Switch != "" && groupOf(f.Key) != Shelf {
				on[f.Switch] = append(on[f.Switch], one)
			} else if f.First {
				g.First = append(g.First, one)
			} else {
				g.More = append(g.More, one)
			}
			continue
		}
		one.Name = string(f.List) + ".0." + f.Key.Name()
		one.ID = id(one.Name)
		if lists[f.List] == nil {
			lists[f.List] = &list{Key: f.List, Title: say.Lists[f.List]}
		}
		lists[f.List].Fields = append(lists[f.List].Fields, one)
	}
	for _, s := range design.Switches() {
		g := &out[groupOf(s.Key)]
		g.Switches = append(g.Switches, switched{s, "on-" + strings.ReplaceAll(string(s.Key), ".", "-"), say.Switches[s.Key], on[s.Key]})
	}
	for _, l := range design.Lists() {
		g := &out[groupOf(l.Key)]
		lists[l.Key].Doc, lists[l.Key].Brings = l.Meaning, l.Key == design.KeyExtra
		g.Lists = append(g.Lists, *lists[l.Key])
	}
	return out
}

// left says what holds where a field is left empty.
func (w Words) left(f design.Field) string {
	switch {
	case f.Must && f.List == "":
		return w.Must
	case f.Usual != "":
		return fmt.Sprintf(w.Usual, f.Usual)
	}
	return ""
}

// takes returns the fields of the shelf that the page asks for at the beginning.
func takes(say Words) []field {
	var out []field
	for _, key := range []design.Key{design.KeyCordSideUse, design.KeyCordLegUse, design.KeyClothUse, design.KeyBarUse} {
		out = append(out, field{Name: string(key), ID: id(string(key)), Label: say.Labels[key]})
	}
	return out
}

// aKey is what may be the name of a key in a sentence.
var aKey = regexp.MustCompile(`\b[a-z]+(?:[._][a-z]+)+\b`)

// inWords returns what a field means, with the words of other fields in place of their
// keys.
func (w Words) inWords(f design.Field) string {
	return aKey.ReplaceAllStringFunc(f.Meaning, func(name string) string {
		for _, key := range []design.Key{f.Key.Table().In(name), design.Key(name)} {
			if label := w.Labels[key]; label != "" {
				return fmt.Sprintf(w.Named, label)
			}
		}
		return name
	})
}

// viewed is a way to look at the hammock.
type viewed struct{ ID, Text string }

func viewsOf(say Words) []viewed {
	return []viewed{
		{"space", say.Space},
		{"side", say.FromSide},
		{"above", say.FromAbove},
		{"end", say.FromEnds},
		{"pieces", say.Pieces},
		{"lay", say.Lay},
	}
}

// formatsOf returns the formats of files, with what each is for.
func formatsOf(say Words) []viewed {
	var out []viewed
	for _, name := range format.Names() {
		text := name
		if say.FormatFor[name] != "" {
			text = fmt.Sprintf(say.FormatAs, name, say.FormatFor[name])
		}
		out = append(out, viewed{name, text})
	}
	return out
}

// hangsOf returns the ways in which the cut is hung as cloth; the command's flags go by
// their ids.
func hangsOf(say Words) []viewed {
	return []viewed{{"", say.HangLying}, {"sitting", say.HangSitting}, {"round", say.HangRound}}
}

// id returns the HTML id of a field.
func id(name string) string { return "k-" + strings.ReplaceAll(name, ".", "-") }

// Group is a part of the form, in the order of the trade.
type Group int

// The groups.
const (
	Sleeper Group = iota
	Bed
	Cords
	Bars
	Cloth
	Beside
	Hanging
	Heights
	Checks
	Templates
	Machine
	Outlines
	Shelf
	groupCount
)

// groupIDs returns what groups are called in the document.
func groupIDs() [groupCount]string {
	return [...]string{
		"sleeper",
		"bed",
		"cords",
		"bars",
		"cloth",
		"beside",
		"hanging",
		"heights",
		"checks",
		"templates",
		"machine",
		"outlines",
		"shelf",
	}
}

// groupOf returns the group of a key or list, by its table.
func groupOf(key design.Key) Group {
	if key == design.KeyShelf || key.Name() == "use" || slices.Contains([]design.Key{design.KeyHangUseHook, design.KeySeamUseThread}, key) {
		return Shelf
	}
	first, _, _ := strings.Cut(string(key), ".")
	return map[string]Group{"name": Sleeper, "sleeper": Sleeper, "load": Sleeper, "guest": Sleeper, "bed": Bed, "cord": Cords, "splice": Cords,
		"bar": Bars, "cloth": Cloth, "channel": Cloth, "cap": Cloth, "seam": Cloth, "hang": Hanging, "hung": Heights, "accuracy": Heights,
		"margin": Checks, "sheet": Templates, "template": Templates, "output": Machine, "machine": Machine,
		"extra": Outlines, "sack": Beside, "tarp": Beside, "lining": Beside, "cover": Beside}[first]
}
