package design

import (
	"cmp"
	"strings"
	"testing"
)

func opened(t *testing.T, text string) Text {
	t.Helper()
	out, err := OpenText("", []byte(text))
	if err != nil {
		t.Fatal(err)
	}
	return out
}

// A table is switched on and off where it stands, however it is written, and every other
// byte stays.
func TestSwitchTable(t *testing.T) {
	for _, r := range []struct{ name, off, on, then string }{
		{"at the end", "name = \"a\"\n", "name = \"a\"\n\n[sack]\n", ""},
		{"empty", "", "[sack]\n", ""},
		{"no last line end", "name = \"a\"", "name = \"a\"\n\n[sack]\n", "name = \"a\"\n"},
		{"after its header behind #", "# [sack]\n# base = \"round\"\n[bed]\nspan = \"1 m\"\n", "# [sack]\n[sack]\n# base = \"round\"\n[bed]\nspan = \"1 m\"\n", ""},
		{"other line ends", "name = \"a\"\r\n", "name = \"a\"\r\n\r\n[sack]\r\n", ""},
	} {
		got, err := opened(t, r.off).SwitchOn(KeySack)
		if err != nil || string(got.Bytes()) != r.on {
			t.Errorf("%s: on gives %q, %v, want %q", r.name, got.Bytes(), err, r.on)
			continue
		}
		if again, err := got.SwitchOn(KeySack); err != nil || string(again.Bytes()) != r.on {
			t.Errorf("%s: on twice gives %q, %v", r.name, again.Bytes(), err)
		}
		back, err := got.SwitchOff(KeySack)
		if want := cmp.Or(r.then, r.off); err != nil || string(back.Bytes()) != want {
			t.Errorf("%s: off again gives %q, %v, want %q", r.name, back.Bytes(), err, want)
		}
	}
}

func TestSwitchOffTakesAll(t *testing.T) {
	const rest = "name = \"a\"\n[bed]\nspan = \"1 m\" # long\n"
	for _, written := range []string{
		rest + "\n[sack]\nbase = \"flat\" # so\n# and\nslack = \"10 mm\"\n\n[sack.cloth]\nname = \"thin\"\n",
		"name = \"a\"\nsack.base = \"flat\"\nsack.cloth.name = \"thin\"\n[bed]\nspan = \"1 m\" # long\n",
		"name = \"a\"\nsack = { base = \"flat\", cloth = { name = \"thin\" } }\n[bed]\nspan = \"1 m\" # long\n",
		"name = \"a\"\nsack = {}\n[bed]\nspan = \"1 m\" # long\n",
		rest + "\n[sack.cloth]\nname = \"thin\"\n",
		rest + "\n[sack]\ncloth = { name = \"thin\", flaw = [{}] } # c\n",
		rest + "\n[sack.cloth]\nname = \"thin\"\n\n[[sack.cloth.flaw]]\nat = \"1 m\" # here\n\n[[sack.cloth.flaw]]\n",
		"name = \"a\"\n# of flaws\nsack.cloth.flaw = [{ at = \"1 m\" }, {}]\nsack.base = \"flat\"\n[bed]\nspan = \"1 m\" # long\n",
	} {
		got, err := opened(t, written).SwitchOff(KeySack)
		if err != nil || string(got.Bytes()) != rest {
			t.Errorf("%q without [sack] is %q, %v", written, got.Bytes(), err)
		}
	}
}

// A design keeps what is on, even with nothing in it, and one without such tables is
// written as it always was.
func TestSwitchWritten(t *testing.T) {
	text := demo
	if strings.Contains(text, "sack") {
		t.Errorf("the built-in design has a sack: %s", text)
	}
	for _, r := range []struct {
		add       string
		sack, own bool
		roll      Key
		rolls     int
	}{
		{"", false, false, KeyCloth, 1},
		{"\n[sack]\n", true, false, KeyCloth, 1},
		{"\n[sack]\nbase = \"flat\"\n[sack.cloth]\nname = \"thin\"\nwidth = \"1400 mm\"\nareal_density = \"30 g/m²\"\n", true, true, KeySackCloth, 2},
	} {
		d, _, err := Read("", []byte(text+r.add))
		if err != nil {
			t.Fatal(err)
		}
		if d.Sack.On != r.sack || d.Sack.Own.On != r.own || len(d.Rolls()) != r.rolls {
			t.Errorf("%q: sack %t with its own cloth %t on %d rolls", r.add, d.Sack.On, d.Sack.Own.On, len(d.Rolls()))
		}
		if got := d.RollKey(len(d.Rolls()) - 1); got != r.roll {
			t.Errorf("%q: the last roll is that of %s", r.add, got)
		}
		again, _, err := Read("", Write(d))
		if err != nil || string(Write(again)) != string(Write(d)) {
			t.Errorf("%q: written %s and read again: %v", r.add, Write(d), err)
		}
	}
	_, _, err := Read("", []byte(text+"\n[sack.cloth]\n"))
	if err == nil || !strings.Contains(err.Error(), "sack.cloth.name") {
		t.Errorf("cloth without a name: %v", err)
	}
}
