package wordstest

import "testing"

func TestText(t *testing.T) {
	for in, want := range map[string]string{
		"Cut %s: 3 × %5.1f %% of it":          "tuC %s: 3 × %5.1f %% fo ti",
		"%.0[2]fmm of %[1]s":                  "%.0[2]fmm fo %[1]s",
		"%[2]s before %[1]s":                  "%[2]s erofeb %[1]s",
		"centre line, größe":                  "ertnec enil, eßörg",
		"":                                    "",
		"20 % waste, 5 %% more":               "20 % etsaw, 5 %% erom",
		"1,5 mm":                              "1,5 mm",
		"body %s end to cap, notch to notch:": "ydob %s dne ot pac, hcton ot hcton:",
	} {
		if got := Text(in); got != want {
			t.Errorf("Text(%q) = %q, want %q", in, got, want)
		}
	}
}

func TestSame(t *testing.T) {
	for _, r := range []struct {
		a, b string
		want bool
	}{
		{"head bar 12", "daeh rab 12", true},
		{"head bar 12", "head rab 12", true},
		{"head bar 12", "daeh rab 13", false},
		{"head bar 12", "daeh rab", false},
		{"head bar", "daeh bra", false},
		{"head", "foot", false},
		{"", "", true},
	} {
		if got := Same(r.a, r.b); got != r.want {
			t.Errorf("Same(%q, %q) = %v", r.a, r.b, got)
		}
	}
}

type kind int

// Every text of a table is another, whatever it stands in, and the table itself stays.
func TestReversed(t *testing.T) {
	type inner struct {
		Words [2]string
		Kinds map[kind]string
	}
	in := inner{[2]string{"ab", "cd"}, map[kind]string{3: "ef"}}
	type table struct {
		Text  string
		Inner inner
		Slice []string
	}
	from := table{"xy %d", in, []string{"gh"}}
	got := Reversed(from)
	if got.Text != "yx %d" || got.Inner.Words != [2]string{"ba", "dc"} || got.Inner.Kinds[3] != "fe" || got.Slice[0] != "hg" {
		t.Errorf("reversed %+v", got)
	}
	if from.Inner.Kinds[3] != "ef" || from.Slice[0] != "gh" {
		t.Errorf("the table has changed to %+v", from)
	}
}
