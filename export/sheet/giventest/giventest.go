// Package giventest makes what build sheets are made from, for tests.
package giventest

import (
	"bytes"
	"testing"

	"slingloft/export/sheet/given"
	"slingloft/export/sheet/wording"
	"slingloft/outline"
	"slingloft/outline/cord"
	"slingloft/outline/design"
	"slingloft/outline/flat"
	"slingloft/outline/hung"
	"slingloft/outline/margin"
	"slingloft/outline/rig"
	"slingloft/outline/words"
)

// Hung returns what is given of the built-in design, some of its lines replaced, once it
// is known how it hangs.
func Hung(t testing.TB, lines ...string) given.Data {
	t.Helper()
	name, text := design.Demo()
	for i := 0; i < len(lines); i += 2 {
		changed := bytes.Replace(text, []byte("\n"+lines[i]), []byte("\n"+lines[i+1]), 1)
		if bytes.Equal(changed, text) {
			t.Fatalf("%q is not in the design", lines[i])
		}
		text = changed
	}
	d, _, err := design.Read(name, text)
	check(t, err)
	s, err := hung.Solve(hung.ProblemOf(d))
	check(t, err)
	body, err := flat.Lay(&s, d.Cap.Kind == design.Leaning)
	check(t, err)
	return given.Data{Design: d, Digest: "01234567", Style: d.Output.Style(1), Shape: &s, Body: &body, Say: wording.English()}
}

// Sewn is [Hung] with its pieces, cords, checks and places, which are not laid.
func Sewn(t testing.TB, lines ...string) given.Data {
	t.Helper()
	g := Hung(t, lines...)
	d, s := g.Design, g.Shape
	var err error
	g.Sewn, err = outline.Panels(d, s, g.Body, g.Digest, words.EnglishLettering())
	check(t, err)
	g.Curves = g.Sewn.Curves()
	g.Cords, err = cord.Of(s, d, cord.Options{Hook: d.Hang.HookDiameter, Tip: d.Bar.TipDiameter})
	check(t, err)
	place, hangs, err := rig.Of(s, d.Hang)
	check(t, err)
	if hangs {
		g.Place = &place
	}
	m := margin.Of(margin.Input{Shape: s, Design: d, Hook: d.Hang.HookStrength, Joined: len(g.Sewn.Joins) > 0})
	roll, shelter := rig.Steadiness(s, d.Sleeper), rig.Cover(s, d.Hang.Shelter)
	g.Margins, g.Roll, g.Shelter, g.Unlaid = &m, &roll, &shelter, true
	return g
}

func check(t testing.TB, err error) {
	t.Helper()
	if err != nil {
		t.Fatal(err)
	}
}
