package command_test

import (
	"bytes"
	"image/png"
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"testing"
	"unicode"

	"slingloft/cmd/slingloft/work"
	"slingloft/export/format"
	"slingloft/outline/design"
	"slingloft/outline/words"
)

// root is the top of the repository.
const root = "../../.."

// The marks between which the words and the list of keys stand.
const (
	wordsFrom = "<!-- words -->\n"
	wordsTo   = "<!-- end of words -->"
	keysFrom  = "<!-- keys -->\n"
	keysTo    = "<!-- end of keys -->"
)

// keysFile lists every key of a design, from the top of the repository.
const keysFile = "cmd/slingloft/KEYS.md"

// With SLINGLOFT_GOLDEN=write the lists of words and of keys are made anew.
func writing() bool { return os.Getenv("SLINGLOFT_GOLDEN") == "write" }

func readme(t testing.TB) string { return text(t, "README.md") }

// text returns a file of the repository.
func text(t testing.TB, name string) string {
	t.Helper()
	data, err := os.ReadFile(filepath.Join(root, name))
	if err != nil {
		t.Fatal(err)
	}
	return string(data)
}

func TestListOfKeys(t *testing.T) { holds(t, keysFile, keysFrom, keysTo, "\n"+design.Reference()) }

func TestReadmeGlossary(t *testing.T) {
	holds(t, "README.md", wordsFrom, wordsTo, "\n"+words.GlossaryTable(words.EnglishGlossary())+"\n")
}

// holds requires that the program's text stands between two marks of a file.
func holds(t *testing.T, file, from, to, want string) {
	t.Helper()
	head, rest, ok := strings.Cut(text(t, file), from)
	found, tail, closed := strings.Cut(rest, to)
	if !ok || !closed {
		t.Fatalf("%s has no place %q", file, from)
	}
	if found == want {
		return
	}
	if !writing() {
		t.Fatalf("what stands behind %q is not the program's; SLINGLOFT_GOLDEN=write makes it anew", from)
	}
	if err := os.WriteFile(filepath.Join(root, file), []byte(head+from+want+to+tail), 0o644); err != nil {
		t.Fatal(err)
	}
}

func TestReadmeCautions(t *testing.T) {
	plain := func(s string) string {
		return strings.Join(strings.FieldsFunc(s, func(r rune) bool { return !('a' <= r && r <= 'z') }), " ")
	}
	text := plain(strings.ToLower(readme(t)))
	name, demo := design.Demo()
	p, err := work.ReadFor(name, demo, work.Setting{})
	if err != nil {
		t.Fatal(err)
	}
	for _, c := range p.Cautions() {
		for _, say := range []string{c.Hazard, c.Consequence, c.Avoidance} {
			if !strings.Contains(text, plain(strings.ToLower(say))) {
				t.Errorf("the README does not say: %s", say)
			}
		}
	}
}

func TestReadmeListsEveryFormat(t *testing.T) {
	text := readme(t)
	for _, f := range format.All() {
		if !strings.Contains(text, "\n| `"+f.Name+"` | ") {
			t.Errorf("the README does not list %s", f.Name)
		}
	}
}

// The pictures are small PNG files.
func TestReadmePictures(t *testing.T) {
	pictures := regexp.MustCompile(`!\[[^]]+\]\(([^)]+)\)`).FindAllStringSubmatch(readme(t), -1)
	if len(pictures) < 2 {
		t.Fatalf("%d pictures, want at least 2", len(pictures))
	}
	for _, p := range pictures {
		data, err := os.ReadFile(filepath.Join(root, p[1]))
		if err != nil {
			t.Error(err)
			continue
		}
		const limit = 150_000
		if _, err := png.Decode(bytes.NewReader(data)); err != nil || len(data) > limit {
			t.Errorf("%s: %d bytes, %v", p[1], len(data), err)
		}
	}
}

// The README stays short: what is long stands beside it.
func TestReadmeLength(t *testing.T) {
	const limit = 3500
	words := slices.DeleteFunc(strings.Fields(shown(readme(t))), func(w string) bool { return !strings.ContainsFunc(w, unicode.IsLetter) })
	if n := len(words); n > limit {
		t.Errorf("%d words, want at most %d", n, limit)
	}
}

// Every link of the README to a file, and to a heading in one, leads somewhere.
func TestReadmeLinks(t *testing.T) {
	links := regexp.MustCompile(`\]\(([^)#:]*)(?:#([^)]+))?\)`).FindAllStringSubmatch(shown(readme(t)), -1)
	if len(links) < 10 {
		t.Fatalf("only %d links", len(links))
	}
	for _, l := range links {
		file := l[1]
		if file == "" {
			file = "README.md"
		}
		if page := text(t, file); l[2] != "" && !slices.Contains(anchors(page), l[2]) {
			t.Errorf("%s has no heading #%s", file, l[2])
		}
	}
}

// shown returns a page without its comments, which hold what stands in an archive's README.
func shown(page string) string {
	return regexp.MustCompile("(?s)<!--.*?-->").ReplaceAllString(page, "")
}

// anchors returns the names that readers of Markdown give a page's headings.
func anchors(page string) []string {
	var out []string
	for _, h := range regexp.MustCompile(`(?m)^#+ (.*)$`).FindAllStringSubmatch(page, -1) {
		name := regexp.MustCompile(`[^\w\- ]`).ReplaceAllString(strings.ToLower(h[1]), "")
		out = append(out, strings.ReplaceAll(name, " ", "-"))
	}
	return out
}

// Every command that the README shows in a block of shell runs, in the order in
// which it stands there.
func TestReadmeCommands(t *testing.T) {
	if testing.Short() {
		t.Skip("cuts several designs")
	}
	text, tried := readme(t), 0
	examples, err := filepath.Abs(filepath.Join(root, "testdata"))
	if err != nil {
		t.Fatal(err)
	}
	t.Chdir(t.TempDir())
	if err := os.Symlink(examples, "testdata"); err != nil {
		t.Skip("no links here:", err)
	}
	for _, block := range regexp.MustCompile("(?s)```sh\n(.*?)```").FindAllStringSubmatch(text, -1) {
		for row := range strings.Lines(block[1]) {
			row, _, _ = strings.Cut(row, "#")
			args, isCommand := strings.CutPrefix(strings.Replace(row, "go run ./cmd/slingloft", "slingloft", 1), "slingloft ")
			if isCommand {
				tried++
				output(t, split(args)...)
			}
		}
	}
	if tried < 9 {
		t.Errorf("%d commands found in the README", tried)
	}
}

// split splits a command as a shell does, as far as the README needs it.
func split(row string) []string {
	var out []string
	for _, w := range regexp.MustCompile(`"[^"]*"|\S+`).FindAllString(row, -1) {
		out = append(out, strings.Trim(w, `"`))
	}
	return out
}
