package tile

import (
	"slingloft/export"
	"slingloft/outline/geom"
)

// Place is where a page of a division lies, for tests from outside.
type Place struct {
	Name        string
	ToSheet     geom.Motion // from the page to the sheet
	Shown, Core geom.Box    // on the sheet
}

// Places returns the places of the pages behind the map.
func Places(sheet export.Drawing, p Paper) []Place {
	g := best(sheet, p)
	var out []Place
	for _, c := range g.inked() {
		shown := g.shown(c)
		out = append(out, Place{c.name(), geom.Motion{Shift: shown.Min.Minus(g.window.Min)}, shown, g.core(c)})
	}
	return out
}

// Clipped is clipped for tests from outside.
var Clipped = clipped
