package splice

import (
	"fmt"
	"math"

	"slingloft/export/sheet/given"
	"slingloft/export/sheet/picture"
	"slingloft/outline/cord"
	"slingloft/outline/geom"
)

// Off is by how much a single trial may well be off, mm: twice the standard deviation, and a
// reading of the tape at either mark.
func Off(d *given.Data, t cord.Trial) float64 {
	return 2 * (d.Cords.Splicing.Shown.Of(t.Bury) + d.Design.Accuracy.Reading)
}

// Tried draws a trial splice before and after, to scale along the host.
func Tried(d *given.Data, s Splice) picture.Picture {
	say := d.Say.Splicing
	t := d.Cords.Trials(d.Style.Inches)[0]
	const top, low, x0, room = 33.0, 14.0, 8.0, 68.0
	k := room / t.Apart
	p := picture.Picture{ID: "splice-trial", Title: say.Trial.Title, Width: picture.Half, Height: 45,
		Desc: fmt.Sprintf(say.Trial.Desc, d.Rope(t.Apart), d.Rope(t.Bury), d.Rope(t.After))}
	own, host := s.looks()
	rope(&p, host, straight(2, 84, top), even(bare))
	for _, x := range []float64{x0, x0 + room} {
		stroke(&p, geom.Pt(x, top), bare)
	}
	p.Level(geom.Pt(x0, top+3), geom.Pt(x0+room, top+3), top+6, fmt.Sprintf(say.Before, d.Rope(t.Apart)))
	from := x0 + k*(t.Apart-s.empty())/2
	to := from + k*t.Bury
	end := x0 + k*t.After
	rope(&p, own, curve(geom.Pt(from-12, low+8), geom.Pt(from-6, low+5.4), geom.Pt(from, low)), even(inner+0.6))
	long, taper := s.tail()
	rope(&p, host, finely(2, 84-k*(t.Apart-t.After), low), func(x float64) float64 {
		if x+2 < from || x+2 > to {
			return bare
		}
		return math.Max(tapering(filled, k*(long-taper), k*long)(x+2-from), bare)
	})
	ghost(&p, own, straight(from, to, low), tapering(inner, k*(long-taper), k*long))
	for _, x := range []float64{x0, end} {
		stroke(&p, geom.Pt(x, low), bare)
	}
	p.Level(geom.Pt(x0, low-3), geom.Pt(end, low-3), 4, fmt.Sprintf(say.Expected, d.Rope(t.After)))
	p.Level(geom.Pt(from, low+3), geom.Pt(to, low+3), low+6, fmt.Sprintf(say.Buries, d.Rope(t.Bury)))
	return p
}
