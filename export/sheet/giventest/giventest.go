// Package giventest makes what build sheets are made from, for tests.
package giventest

import (
	"bytes"
	"slingloft/export/sheet/given"
	"slingloft/export/sheet/wording"
	"slingloft/outline/design"
	"slingloft/outline/flat"
	"slingloft/outline/hung"
	"testing"
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
	if err != nil {
		t.Fatal(err)
	}
	s, err := hung.Solve(hung.ProblemOf(d))
	if err != nil {
		t.Fatal(err)
	}
	body, err := flat.Lay(&s, d.Cap.Kind == design.Leaning)
	if err != nil {
		t.Fatal(err)
	}
	return given.Data{Design: d, Shape: &s, Body: &body, Say: wording.English()}
}
