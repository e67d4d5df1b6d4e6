package export

import (
	"slingloft/outline/geom"
)

// wasteClear is what crosses, bars and title keep from pieces and from each other, mm
// on paper: room for a cut and a lead-in.
const wasteClear = 3.0

// addToWaste adds what otherwise stands in the band, wherever there is room for it
// beside the pieces, and names what there is no room for.
func (d *Drawing) addToWaste(s Sheet) {
	f, u := s.Frame, s.Frame.unit()
	clear := float64(wasteClear * u)
	w := wasteOf(s, clear)
	for _, c := range crossPlaces(f) {
		if box := c.box(f); w.holds(box) {
			w.take(box, clear)
			d.Lines = append(d.Lines, c.lines(f)...)
		} else {
			d.NoRoom = append(d.NoRoom, "cross "+c.name)
		}
	}
	places := barPlaces(f)
	for i, bar := range Bars() {
		at, ok := w.bar(bar, places[i], u)
		if !ok {
			d.NoRoom = append(d.NoRoom, bar.Name)
			continue
		}
		lines, label := bar.at(at, u)
		d.Lines, d.Labels = append(d.Lines, lines...), append(d.Labels, label)
	}
	for _, width := range [3]float64{maxBlock * u, minBlock * 1.5 * u, minBlock * u} {
		if box, ok := w.find(width, titleHeight*u, clear); ok {
			line, labels := titleAt(box.Min, width, s)
			d.Lines, d.Labels = append(d.Lines, line), append(d.Labels, labels...)
			return
		}
	}
	d.NoRoom = append(d.NoRoom, "title block")
}

// bar finds a free place for a check bar, its ticks and its lettering.
func (w *waste) bar(b Bar, like barPlace, u float64) (barPlace, bool) {
	low, high := float64(barTick*u), float64((barAside+barText)*u)
	long, wide := b.Length, low+high
	if like.along.X == 0 {
		long, wide = wide, long
	}
	box, ok := w.find(long, wide, wasteClear*u)
	like.start = box.Min.Plus(geom.Pt(0, low))
	if like.along.X == 0 {
		like.start = geom.Pt(box.Max.X-low, box.Min.Y)
	}
	return like, ok
}
