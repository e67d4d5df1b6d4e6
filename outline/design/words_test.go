package design_test

import (
	"errors"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"slingloft/outline/design"
	"slingloft/outline/wordstest"
)

// odd returns texts that break what no faulty design does, by the rule.
func odd() map[design.Rule]string {
	_, demo := design.Demo()
	with := func(more string) string { return string(demo) + more }
	return map[design.Rule]string{
		design.FileTooLarge:      strings.Repeat("#", design.MaxSize+1),
		design.ManyKeys:          strings.Repeat("[[guest]]\n", design.MaxKeys+1),
		design.NotUTF8:           "name = \"\xff\"",
		design.TypographicQuotes: "name = “swing”",
		design.CommaInNumber:     "[cloth]\njoins = 1,5",
		design.TooDeep:           strings.Repeat("a.", 20) + "a = 1",
		design.ValueGivenAsTable: with("\n[[guest]]\nname.is = 1"),
		design.GivenTooOften:     with(strings.Repeat("\n[[guest]]", 21)),
		design.MoreFaults:        strings.Repeat("x = 1\n", 2*design.MaxFaults),
		design.SolidAndDash:      with("\n[[machine.stroke]]\nwork = \"mark\"\nsolid = true\ndash = \"3 mm, 1 mm\""),
		design.NoDash:            with("\n[[machine.stroke]]\nwork = \"mark\"\ndash = \"0 mm, 1 mm\""),
		design.StrangeMaterial:   with("\n[[machine.job]]\nwork = \"mark\"\nmaterial = \"nothing like it\""),
		design.GuestHeadOff:      with("\n[[guest]]\nname = \"A\"\nmass = \"80 kg\"\nstature = \"1600 mm\"\ncrown = \"-1400 mm\""),
		design.NotOnShelf:        "[cloth]\nuse = \"nothing like it\"",
		design.WeightOffHead: with("\n[hung]\nhead_left = \"800 mm\"\nhead_right = \"800 mm\"\nfoot_left = \"800 mm\"\n" +
			"foot_right = \"800 mm\"\nunder = \"weight\"\nmass = \"60 kg\"\nfrom = \"-1400 mm\"\nto = \"100 mm\""),
	}
}

// faultsOf reads a text that is at fault.
func faultsOf(t *testing.T, data string) design.Faults {
	t.Helper()
	_, _, err := design.Read("x.toml", []byte(data))
	var faults design.Faults
	errors.As(err, &faults)
	return faults
}

// TestSwapped breaks every rule. With every word of the table swapped for another each
// fault reads otherwise, both in what was found and in what would do: no word has got
// into the data.
func TestSwapped(t *testing.T) {
	files, err := filepath.Glob("../../testdata/design/faulty/*.toml")
	if err != nil || len(files) == 0 {
		t.Fatalf("%d faulty designs, %v", len(files), err)
	}
	var all design.Faults
	for _, file := range files {
		data, err := os.ReadFile(file)
		if err != nil {
			t.Fatal(err)
		}
		all = append(all, faultsOf(t, string(data))...)
	}
	for rule, text := range odd() {
		faults := faultsOf(t, text)
		if !slices.ContainsFunc(faults, func(f design.Fault) bool { return f.Found.Rule == rule }) {
			t.Errorf("%.60q does not break rule %d: %v", text, rule, faults)
		}
		all = append(all, faults...)
	}
	for _, text := range []string{"x = 1", "[cord]\nx = 1"} {
		_, err := design.ReadShelf("shelf.toml", []byte(text))
		var faults design.Faults
		errors.As(err, &faults)
		all = append(all, faults...)
	}
	english := design.English()
	swapped := wordstest.Reversed(english)
	broken := map[design.Rule]bool{}
	for _, f := range all {
		broken[f.Found.Rule] = true
		// What is no TOML the library says in its own words.
		if f.Found.Rule != design.NotTOML && english.Found(f.Found) == swapped.Found(f.Found) {
			t.Errorf("%s in other words too", english.Found(f.Found))
		}
		if english.Hint(f.Hint) == swapped.Hint(f.Hint) {
			t.Errorf("%s in other words too", english.Hint(f.Hint))
		}
	}
	for r := range design.RuleCount {
		if !broken[r] && r != design.BodyTooWide && r < design.LeansOverBar {
			t.Errorf("nothing breaks rule %d: %s", r, english.Rules[r])
		}
	}
}
