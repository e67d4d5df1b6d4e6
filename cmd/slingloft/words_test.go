package main

import (
	"fmt"
	"go/ast"
	"go/constant"
	"go/token"
	"go/types"
	"os"
	"reflect"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"sync"
	"testing"

	"slingloft/cmd/slingloft/command"
	"slingloft/cmd/slingloft/desk"
	"slingloft/cmd/slingloft/figures"
	"slingloft/cmd/slingloft/form"
	"slingloft/cmd/slingloft/watch"
	"slingloft/cmd/slingloft/work"
	"slingloft/export"
	"slingloft/export/sheet/wording"
	"slingloft/outline/design"
	"slingloft/outline/quantity"
)

// tables are the words of every output in English.
func tables() []any {
	return []any{
		work.English(), figures.English(), wording.English(), command.English(), form.English(), desk.English(), watch.English(), design.English(), quantity.English(), export.English(),
	}
}

// No table has an empty word, and each has a word for every kind of thing that it names.
func TestNoWordMissing(t *testing.T) {
	for _, table := range tables() {
		v := reflect.ValueOf(table)
		complete(t, v.Type().String(), v)
	}
}

// Every field of the page has a word, and no word is left over.
func TestFieldsHaveWords(t *testing.T) {
	labels := form.English().Labels
	for _, f := range design.Fields(false) {
		if labels[f.Key] == "" {
			t.Errorf("form/labels.go has no word for the field %s", f.Key)
		}
		delete(labels, f.Key)
	}
	for key := range labels {
		t.Errorf("form/labels.go has a word for %s, which no design has", key)
	}
}

// partly are the kinds without a word, or with an empty one.
var partly = map[string]string{
	"slingloft/outline/cord.Alone":      "on no branch, says nothing",
	"slingloft/outline/piece.Between":   "named by its corners",
	"slingloft/outline/stock.Named":     "called as the maker calls it",
	"slingloft/outline/finished.Parts":  "counts the others",
	"slingloft/outline/design.Nothing":  "says nothing",
	"slingloft/outline/piece.NoBoard":   "is none",
	"slingloft/outline/piece.OnNothing": "is none",
}

// complete looks for words that a value lacks.
func complete(t *testing.T, path string, v reflect.Value) {
	switch v.Kind() {
	case reflect.String:
		if v.String() == "" {
			t.Errorf("%s is empty", path)
		}
		if filled := fmt.Sprintf(v.String(), make([]any, 12)...); strings.Contains(filled, "BADINDEX") {
			t.Errorf("%s: %s", path, filled)
		}
	case reflect.Struct:
		for i := range v.NumField() {
			complete(t, path+"."+v.Type().Field(i).Name, v.Field(i))
		}
	case reflect.Array, reflect.Slice:
		for i := range v.Len() {
			complete(t, path+"["+strconv.Itoa(i)+"]", v.Index(i))
		}
	case reflect.Map:
		if v.Type().Key().Kind() == reflect.String { // by names, which a test beside the table holds
			for _, key := range v.MapKeys() {
				complete(t, path+"["+key.String()+"]", v.MapIndex(key))
			}
			return
		}
		for name, value := range kindsOf(v.Type().Key()) {
			word := v.MapIndex(reflect.ValueOf(int(value)).Convert(v.Type().Key()))
			if _, without := partly[name]; without {
				continue
			}
			if !word.IsValid() {
				t.Errorf("%s: no word for %s", path, name)
				continue
			}
			complete(t, path+"["+name+"]", word)
		}
	default:
		t.Errorf("%s: a %s is no word", path, v.Type())
	}
}

// kindsOf returns the constants of a type by their names with the path of the package,
// but those that count the others.
func kindsOf(kind reflect.Type) map[string]int64 {
	out := map[string]int64{}
	p := program().load(strings.TrimPrefix(kind.PkgPath(), module+"/"))
	for _, name := range p.Scope().Names() {
		c, ok := p.Scope().Lookup(name).(*types.Const)
		if !ok || strings.HasSuffix(name, "Count") || !token.IsExported(name) {
			continue
		}
		if of, ok := c.Type().(*types.Named); ok && of.Obj().Name() == kind.Name() {
			out[p.Path()+"."+name], _ = constant.Int64Val(c.Val())
		}
	}
	return out
}

// Every word of the tables is asked for somewhere.
func TestNoWordUnused(t *testing.T) {
	asked := map[string]bool{}
	for _, s := range program().info.Selections {
		if f, ok := s.Obj().(*types.Var); ok && f.IsField() {
			asked[program().set.Position(f.Pos()).String()] = true
		}
	}
	seen := map[types.Type]bool{}
	for _, table := range tables() {
		kind := reflect.TypeOf(table)
		p := program().load(strings.TrimPrefix(kind.PkgPath(), module+"/"))
		unused(t, p.Scope().Lookup(kind.Name()).Type(), asked, seen)
	}
}

// pageText is the template of the page to design on, which asks for words too.
var pageText = sync.OnceValue(func() string {
	data, _ := os.ReadFile("form/form.html")
	return string(data)
})

// unused looks for fields of a table that nobody asks for.
func unused(t *testing.T, table types.Type, asked map[string]bool, seen map[types.Type]bool) {
	named, ok := table.(*types.Named)
	if !ok || seen[table] {
		return
	}
	seen[table] = true
	s, ok := named.Underlying().(*types.Struct)
	for i := 0; ok && i < s.NumFields(); i++ {
		f := s.Field(i)
		name := named.Obj().Name() + "." + f.Name()
		inPage := strings.HasSuffix(named.String(), "form.Words") && regexp.MustCompile(`(?:\.Say|\$say)\.`+f.Name()+`\b`).MatchString(pageText())
		if !f.Embedded() && !inPage && !asked[program().set.Position(f.Pos()).String()] {
			t.Errorf("%s: nobody asks for it", name)
		}
		unused(t, f.Type(), asked, seen)
	}
}

// worded are the packages that say nothing but what stands in their tables, each with
// the texts in it that no language changes: identifiers, signs, units, what is said to
// programmers and to other programs.
var worded = map[string][]string{
	"cmd/slingloft/figures": {"head bar",
		"mm", "in", // units
		"net", "straight", "end", "strength", "mass", "total", " bar", "mass_", // identifiers of the document and the list
		"kind", "name", "quantity", "unit", "price", "cost", "note", "weight", "sleeper",
	},
	"cmd/slingloft/command": {
		"vcs.revision", "vcs.modified", "vcs.time", "true", "false", "+dirty", "manual", " [COMMAND]", "slingloft ", "slingloft-", "Slingloft ",
		" FILE", " SHELL", " [DESIGN] FOLDER", " [DESIGN]", " [DESIGN …]", "copies", "--copies %d", " in", " mm", "%.0f kg", "%.0f mm",
		"(devel)", "--add", "--add-board",
		"--help", "--machine", "--measured", "--only", "--out", "--paper", "--scale", "--version", ".htm", ".html", ".pdf",
		"0.116 in", "172 cm", "2.94 mm", "80 kg", "[=true|false]", "add", "add-board", "addr", "agrees", "all", "as", "back",
		"bash", "bool", "build-sheet.html", "calibrate", "chmod", "close", "cloth", "cloth-lay", "cloth-width", "complete", "cut",
		"differs", "duration", "figure", "fish", "force", "help", "html", "in", "json", "keep-out", "lay-time", "letter", "lstat",
		"vary", "csv", "chart", "--chart", "hang", "exact", "round", "sitting", "guest", "cloth",
		"machine", "mass", "materials", "measured", "missing", "mkdir", "mm", "not due", "only", "open", "out", "pages", "paper",
		"pdf", "piece", "prove", "read", "remove", "rename", "scale", "schema", "sheet", "shelf", "shoulders", "side", "sleeps",
		"slingloft", "slingloft-out", "slingloft:", "start", "stat", "stature", "svg,dxf", "sync", "template-sheet-", "templates",
		"thickness", "toml", "units", "unreadable", "version", "watch", "write", "zsh",
	},
	"cmd/slingloft/work": {
		" in", " mm", "1 in", "10 to 15 kg", "14 in", "150 mm", "18 in", "22 to 33 lb", "25 mm", "350 mm", "450 mm", "6 in", "back",
		"bed-%d-%s", "cloth", "cloth-lay", "cloth-lay-roll-%d", "extra-%d", "file", "flaw %d", "height", "in", "keep-out ", "read",
		"sheet", "sheets", "side", "width",
	},
	"cmd/slingloft/watch": {
		"Cache-Control", "Content-Security-Policy", "Content-Type", "Cross-Origin-Opener-Policy", "Cross-Origin-Resource-Policy",
		"Origin", "Referrer-Policy", "Sec-Fetch-Site", "X-Content-Type-Options", "Authorization", "Bearer ", "X-Exit-Status", "X-Field",
		"vary", "vary.html", "--chart", "--vary=", "hang", "sitting", "round", "--guest=", "X-File-Name",
		"/ask/open", "/ask/new", "/ask/pack", "slingloft-open-", "slingloft-pack-",
		"GET /favicon.ico", "GET /{$}", "POST /ask/prove", "POST /ask/{what}", "what",
		"http", "http://", "localhost", "tcp", "no-referrer", "no-store", "none", "nosniff", "same-origin",
		"application/json", "application/octet-stream", "text/html; charset=utf-8", "text/plain; charset=utf-8",
		"state", "sheet", "try", "set", "grow", "drop", "switch", "text", "undo", "redo", "take", "propose", "save", "files", "compare", "section", "beside", "example", // questions
		"POST /ask/bring/{kind}", "kind", "outline", "machine", "shelf", ".toml", "--machine", "--shelf", "--copies", "--pages", "shop",
		"materials", "-materials.csv", ".svg", ".dxf", "shop-pages.pdf", "--materials",
		"cut", "calibrate", "figure", "figures", "pdf", "prove", "--as", "--json", "--out", "--paper", // commands
		"-files", ".json", ".toml", ".zip", "build-sheet.html", "build-sheet.pdf", "slingloft-page-",
	},
	"export/prove": {
		" in", " mm",
	},
	"export": {"%s-field-%d", "stroke %d",
		"%shole %d", "/end", "/start", "100 mm", "4 in", "bar-100mm-x", "bar-100mm-y", "bar-4in-x", "bar-4in-y", "cross ",
		"cut line", "in", "label %d", "lay edge", "lower left", "lower right", "mm", "title block", "upper left", "upper right",
	},
	"export/gcode": {
		".ngc", "in", "mm", "in ", "mm/min", "/min", "/min\"", "rad",
		"[[machine.job]], work = %q, material = %q", "depth", "feed", "kerf", "lead", "power", // keys of the design
		"slingloft", "note:", "path", "path ", "pass", "pass %d", "sheet", "sheet %s x %s %s scale %s", "tool", // comments that are read back
		"tool %[1]s kerf %[2]s %[5]s lead %[3]s %[5]s trail %[4]s %[5]s", "work", "work ", "zero ", "frame", "match ",
		"own lines", "end of own lines", "\\( work ([^)]*) \\)", "byte %d", "message ",
	},
	"export/hpgl": {
		".plt", "32 1/4 in", "819 mm", "IN;\nPS%d,%d;\nPA;\n", "PU;\nSP%d;\n", "PU0,0;\nSP0;\n", "PU%d,%d;\n", "\\bSP(\\d+)", // instructions
		"DT", "IN", "LB", "LT", "PA", "PD", "PG", "PR", "PS", "PU", "PW", "SP", "VS", "WU",
	},
	"export/preview":  {".png", "IDAT", "IEND", "pHYs", "bytes", "chunk ", "content", "length", "what stands behind the end"}, // parts of a file
	"export/outside":  {".dxf", ".svg", ".svgz", "grain", "notch"},
	"export/format":   {},
	"export/style":    {},
	"export/whole":    {".slingloft-", ".part", ".slingloft.lock", ".slingloft", "note", "note  %s  %s\n", "# Files that slingloft wrote here. Unchanged since, they may be replaced for the same design.\n"},
	"outline/curve":   {},
	"outline/numeric": {},
	"outline/fit":     {},
	"outline": {
		"END", "gauge-press", "gauge-allowance", "gauge-cord-", "gauge-notch",
		"template-side", "template-tail-", "template-cap-", "template-facing", "template-", "cap-", "sack-base", "template-sack-base",
		"template-lining-side", "template-lining-tail-",
	},
	"outline/panel": {
		"body", "body-", "lining-", "press line %d", "stitch line %d", "pin point %d", " tip opening", "fold", "trim line", "edge stitch",
	},
	"outline/sack":       {},
	"outline/tarp":       {"tarp-", "tarp-%d", "tarp-whole", "tarp-patch-corner", "tarp-patch-ridge", "join fold", "join trim line", "join edge stitch"},
	"outline/insectnet":  {`zip = "left"`, "cover-", "channel-", "facing-", "cap-", "N%d", "hem fold %d", "zip line", "zip stitch line", "cover-bay", "cover-head-tail", "cover-foot-tail", "cover-ridge", "-end"},
	"outline/ruled":      {},
	"outline/walk":       {"notch "},
	"outline/template":   {"-head", "-foot", "bar corner ", "facing-", "body"},
	"outline/divide":     {"%s-%dof%d"},
	"outline/label":      {},
	"cmd/slingloft/show": {},
	"export/sheet":       {},
	"export/sheet/given": {"mm", "in", "kg", "lb"},
	"export/sheet/chapter": {
		"%.0f kgf",
		"result", "hung", "pieces", "lay", "cords", "offsets", "loads", "materials", "seams", "charts", "assumptions", "sources",
		"cut-list", "ticks", "sacks", "sack-sizes", "tarp", "tarp-sizes", "cover", "cover-sizes", "corners-", "lining", "lining-sizes", "lining-girths", "names", "boards", "cloth", "sewing", "rope",
		"fitting", "hanging", "glossary",
		"step-", "tick-", "board-", // ids of sections, and of tables:
		"cap-", "cut-cloth", "cut-cords", "cut-bars", "cut-boards", "checks", "creases",
		"summary", "ends", "place", "room", "room-fits", "as-cloth", "cloth-hangs", "chart-bottom", "piece-", "-figures", "-checks",
		"templates", "lay-%d-places", "cord-", "terms", "marks", "readings",
		"offsets-", "forces", "margins-%d", "accuracy-lengths", "accuracy-level", "materials-list", "materials-mass", "effects",
		"seam-walk", "seam-%d-parts", "departures",
	},
	"export/sheet/scene": {"room-", "view-drawn", "view-solid", "view-side", "view-above", "view-end", "view-parts"},
	"export/sheet/splice": {
		"eye", "side", "leg", "join", "splice-taper-", "splice-fid-", "splice-milk-", "splice-lock-", "splice-eye-free", "splice-eye-turned",
		"splice-crossing", "splice-corner", "splice-parting", "splice-chain", "splice-threading", "splice-trial", "splice-join", "splice-seized",
		"splice-sliding-", "splice-hitched-",
	},
	"export/sheet/seam": {"seam-channel", "seam-hem", "seam-cap", "seam-join", "seam-opening", "seam-corner", "seam-tarp-fell", "seam-tarp-hem",
		"seam-lining-hem", "seam-lining-baste"},
	"export/sheet/sketch": {"piece-", "piece-parts", "lay-%d", "lie-", "use-", "body", "cord-", "tarp-flat", "tarp-end", "tarp-side", "tarp-corner",
		"cover-side", "cover-end", "cover-strip", "cover-zip", "lining-across", "lining-along", "lining-flat"},
	"export/sheet/series": {
		"chart-side", "chart-girth", "chart-cord", "chart-cloth", "chart-straight", "chart-level", "chart-angles", "chart-forces",
	},
	"export/sheet/chart": {"chart %s, %s: a curve needs two points", "chart %s, %s: point %d is not finite"},
	"export/sheet/paper": {"{nb}", "mm", "Slingloft", "sans", "round"},
	"export/sheet/page": {
		":root{color-scheme:light dark;%s}\n@media screen and (prefers-color-scheme:dark){:root{%s}}\n%s\n%s",
		"default-src 'none'; style-src 'unsafe-inline'; img-src 'none'; base-uri 'none'; form-action 'none'",
		"good", "careful", "bad", "narrow", "wide", " short", ` class="w"`, ` class="strong"`, ` class="opens"`, // classes
	},
	"export/calibrate": {"long bar x low", "long bar y right", "long bar x high", "long bar y left", "long bars", "/start", "/end"},
	"export/tile": {
		"joint ", "%s/part %d", "page text %d", "note %d", "map/", "map/name ",
		"match %s/%d", "/diamond", "/along", "/across", "/names", "paper ", "/start", "/end", "/text", "100 mm", "4 in",
	},
}

// What a person reads stands in the tables: no other text of these packages has a word.
func TestNoWordElsewhere(t *testing.T) {
	for folder, free := range worded {
		for _, f := range program().files[folder] {
			for _, text := range textsOf(f) {
				if !slices.Contains(free, text) {
					t.Errorf("%s: %q stands outside of the table of words", folder, text)
				}
			}
		}
	}
}

// Tables, identifiers, tags of fields and of markup, schemas and errors are no places for
// words that stand on what is made.
var (
	unspoken = regexp.MustCompile(`^(english\w*|English\w*|\w*Schema|complete(Bash|Fish|Zsh)|String|Error)$`)
	named    = regexp.MustCompile(`^(ID|IDs|Name|Reason)$`)
	faults   = regexp.MustCompile(`^(Errorf|New|fail|panic)$`)
	aWord    = regexp.MustCompile(`\pL{2}`)
	aTag     = regexp.MustCompile(`<[^<>]*(>|$)`)
	aVerb    = regexp.MustCompile(`%[-+# 0]*(\[\d+\])?[\d.]*(\[\d+\])?[a-zA-Z%]`)
)

// Why a file cannot be read or a drawing not be written is a rule with what fills it in:
// no error of export and of the command has words of its own, but what programmers are told.
func TestNoErrorInWords(t *testing.T) {
	toProgrammers := []string{
		"chart %s, %s: a curve needs two points", "chart %s, %s: point %d is not finite",
		"corner %s has no point before it", "corner at the end of %q", "point %q", // of our own glyphs
		"no place in the file for this value", "busy", // decided by, never told
	}
	for folder, files := range program().files {
		if (!strings.HasPrefix(folder+"/", "export/") && !strings.HasPrefix(folder, "cmd/slingloft/")) || forTests(folder) {
			continue
		}
		for _, f := range files {
			ast.Inspect(f, func(n ast.Node) bool {
				call, ok := n.(*ast.CallExpr)
				if !ok || len(call.Args) == 0 {
					return true
				}
				if f := types.ExprString(call.Fun); f == "fmt.Errorf" || f == "errors.New" {
					for _, text := range textsOf(call.Args[0]) {
						if !slices.Contains(toProgrammers, text) {
							t.Errorf("%s: the error %q has words of its own", folder, text)
						}
					}
				}
				return true
			})
		}
	}
}

// What fills in the words of a rule of export is as much as they take, of the kinds that
// they take, wherever the rule is said to be broken.
func TestRulesFilled(t *testing.T) {
	rules := map[string]string{}
	for name, value := range kindsOf(reflect.TypeFor[export.Rule]()) {
		rules[name[strings.LastIndex(name, ".")+1:]] = export.English().Rules[export.Rule(value)]
	}
	verb := regexp.MustCompile(`%[-+# 0]*[\d.]*(?:\[(\d+)\])?([a-z])`)
	broken := map[string]bool{}
	inProgram(func(call *ast.CallExpr) {
		if f := types.ExprString(call.Fun); f != "export.Refuse" && f != "Refuse" {
			return
		}
		name := strings.TrimPrefix(types.ExprString(call.Args[0]), "export.")
		broken[name] = true
		verbs := verb.FindAllStringSubmatch(rules[name], -1)
		taken := 0
		for i, v := range verbs {
			if n, err := strconv.Atoi(v[1]); err == nil {
				i = n - 1
			}
			if taken = max(taken, i+1); taken > len(call.Args)-1 {
				break
			}
			of := program().info.TypeOf(call.Args[1+i])
			if of == nil || of == types.Typ[types.Invalid] {
				continue // from the standard library
			}
			kind, ok := of.Underlying().(*types.Basic)
			number := ok && kind.Info()&types.IsNumeric != 0
			switch {
			case v[2] == "d" && !(ok && kind.Info()&types.IsInteger != 0),
				strings.Contains("gf", v[2]) && !(ok && kind.Info()&types.IsFloat != 0) && !(ok && kind.Kind() == types.UntypedInt),
				v[2] == "s" && number && !strings.HasSuffix(of.String(), ".Work"):
				t.Errorf("%s: %s for %%%s", name, types.ExprString(call.Args[1+i]), v[2])
			}
		}
		if taken != len(call.Args)-1 {
			t.Errorf("%s takes %d things, %s gives %d", name, taken, types.ExprString(call), len(call.Args)-1)
		}
	})
	for name := range rules {
		// These are kept rather than refused.
		if !broken[name] && name != "SplineLoose" {
			t.Errorf("nothing breaks %s", name)
		}
	}
}

// inProgram visits every call of the program.
func inProgram(visit func(*ast.CallExpr)) {
	for folder, files := range program().files {
		if forTests(folder) {
			continue
		}
		for _, f := range files {
			ast.Inspect(f, func(n ast.Node) bool {
				if call, ok := n.(*ast.CallExpr); ok && len(call.Args) > 0 {
					visit(call)
				}
				return true
			})
		}
	}
}

// textsOf returns the texts in a file, or a part of one, that have a word.
func textsOf(f ast.Node) []string {
	var out []string
	ast.Inspect(f, func(n ast.Node) bool {
		switch n := n.(type) {
		case *ast.ImportSpec, *ast.StructType:
			return false
		case *ast.FuncDecl:
			return !unspoken.MatchString(n.Name.Name)
		case *ast.KeyValueExpr:
			key, ok := n.Key.(*ast.Ident)
			return !ok || !named.MatchString(key.Name)
		case *ast.CallExpr:
			switch f := n.Fun.(type) {
			case *ast.Ident:
				return !faults.MatchString(f.Name)
			case *ast.SelectorExpr:
				return !faults.MatchString(f.Sel.Name)
			}
		case *ast.BasicLit:
			text, err := strconv.Unquote(n.Value)
			if err == nil && n.Kind == token.STRING && aWord.MatchString(aVerb.ReplaceAllString(aTag.ReplaceAllString(text, ""), "")) {
				out = append(out, text)
			}
		}
		return true
	})
	return out
}
