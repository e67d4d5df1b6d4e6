package form

import (
	"regexp"
	"strings"
	"testing"

	"slingloft/outline/design"
)

// Every key of a design has one field of its own, every list its words, and a browser is
// allowed nothing but the page's own script and style.
func TestPage(t *testing.T) {
	p, err := New(English())
	if err != nil {
		t.Fatal(err)
	}
	html := string(p.HTML)
	for _, f := range design.Fields(false) {
		name := string(f.Key)
		if f.List != "" {
			name = string(f.List) + ".0." + f.Key.Name()
		}
		if n := strings.Count(html, ` name="`+name+`"`); n != 1 {
			t.Errorf("%s has %d fields", name, n)
		}
		if strings.Count(html, `id="`+id(name)+`"`) != 1 {
			t.Errorf("%s shares its id", name)
		}
	}
	for _, l := range design.Lists() {
		if English().Lists[l.Key] == "" {
			t.Errorf("no word for %s", l.Key)
		}
	}
	for _, text := range []string{script(), style} {
		if !strings.Contains(html, text) {
			t.Error("script or style stands otherwise than it is hashed")
		}
	}
	if strings.Contains(p.Policy, "unsafe") || !strings.Contains(p.Policy, hash(script())) {
		t.Errorf("policy %s", p.Policy)
	}
}

// The script has every word that it asks for, and asks for every one.
func TestSaid(t *testing.T) {
	asked := map[string]bool{}
	for _, m := range regexp.MustCompile(`say\("(\w+)"`).FindAllStringSubmatch(script(), -1) {
		asked[m[1]] = true
		if English().Said[m[1]] == "" {
			t.Errorf("%s has no words", m[1])
		}
	}
	for name := range English().Said {
		if !asked[name] {
			t.Errorf("nobody asks for %s", name)
		}
	}
}

// Groups are those of the trade.
func TestGroupOf(t *testing.T) {
	for key, want := range map[design.Key]Group{
		design.KeyCordSideUse: Shelf, design.KeyShelf: Shelf, design.KeySeamUseThread: Shelf, design.KeyGuest: Sleeper,
		design.KeyHangLineDiameter: Hanging, design.KeyHungUnder: Heights, design.KeyMachineJobPower: Machine, design.KeyExtraFile: Outlines,
	} {
		if got := groupOf(key); got != want {
			t.Errorf("%s: group %d, want %d", key, got, want)
		}
	}
	for _, f := range design.Fields(false) {
		if first, _, _ := strings.Cut(string(f.Key), "."); groupOf(f.Key) == Sleeper && first != "name" && first != "sleeper" && first != "load" && first != "guest" {
			t.Errorf("%s has no group", f.Key)
		}
	}
}
