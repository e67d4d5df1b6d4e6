// Package readertest holds what the tests of the formats share: a sample sheet, texts
// meant to break out of their fields, and calls of readers that are not ours.
package readertest

import (
	"math"
	"testing"

	"slingloft/export"
	"slingloft/outline/design"
	"slingloft/outline/geom"
	"slingloft/outline/piece"
)

// Sling is a piece 400 mm long and 220 mm wide whose long edges are parabolas
// that come in by 40 mm, with a hole, a fold line and a notch.
func Sling() piece.Piece {
	const length, width, sag, n = 400.0, 220.0, 40.0, 48
	var cut geom.Ring
	edge := func(x float64) float64 { return sag * 4 * x * (length - x) / (length * length) }
	for i := range n + 1 {
		x := length * float64(i) / n
		cut = append(cut, geom.Pt(x, edge(x)))
	}
	for i := range n + 1 {
		x := length * float64(n-i) / n
		cut = append(cut, geom.Pt(x, width-edge(x)))
	}
	return piece.Piece{
		ID: "sling", Title: "Sling", Stock: piece.Board, Count: 2, Cut: cut,
		Holes: []geom.Ring{Circle(geom.Pt(200, 110), 8, 24)},
		Lines: []piece.Line{
			{Name: "fold", Work: piece.Score, Points: geom.Polyline{{X: 40, Y: 60}, {X: 360, Y: 60}}},
			{Name: "seam", Work: piece.Stitch, Points: geom.Polyline{{X: 40, Y: 160}, {X: 360, Y: 160}}},
			{Name: "notch", Role: piece.NotchStroke, Of: "1", Work: piece.Mark, Points: geom.Polyline{{X: 0, Y: 110}, {X: 6, Y: 110}}},
			{Name: "notch", Role: piece.NotchStroke, Of: "2", Work: piece.Mark, Points: geom.Polyline{{X: 400, Y: 110}, {X: 394, Y: 110}}},
		},
		Labels: []piece.Label{{Text: "Sling – 7 3⁄16 in", At: geom.Pt(200, 80), Height: 7, Anchor: piece.Centre}},
	}
}

// Circle returns a regular polygon of n corners on a circle.
func Circle(at geom.Point, radius float64, n int) geom.Ring {
	var out geom.Ring
	for i := range n {
		s, c := math.Sincos(2 * math.Pi * float64(i) / float64(n))
		out = append(out, at.Plus(geom.Pt(c, s).Times(radius)))
	}
	return out
}

// Drawing returns a sheet of 900 × 400 mm with two slings, one of them mirrored
// and turned, and with every kind of work.
func Drawing(t testing.TB, scale float64, labels ...string) export.Drawing {
	t.Helper()
	s := export.Sheet{
		Name: "template-sheet-1", Title: "Templates", Frame: export.Around(860, 420, scale),
		Items: []export.Item{
			{Piece: Sling(), Copy: 1, Motion: geom.Motion{Shift: geom.Pt(5, 5)}},
			{Piece: Sling(), Copy: 2, Motion: geom.Motion{Mirror: true, Turn: math.Pi / 2, Shift: geom.Pt(500, 5)}},
		},
		Block: export.Block{Design: "Reed", Sheet: 1, Sheets: 2, Material: "board 3 mm", Marks: "design 5f2a 90c1"},
	}
	for i, text := range labels {
		s.Labels = append(s.Labels, piece.Label{Text: text, At: geom.Pt(20, 250+float64(i)*8), Height: 6})
	}
	d, err := export.Compose(s)
	if err != nil {
		t.Fatal(err)
	}
	return d
}

// Fields returns the drawings of a stock that is cut in fields 400 mm long, with a sling
// that goes over all of them.
func Fields(t testing.TB) []export.Drawing {
	t.Helper()
	sling := Sling()
	d, err := export.Compose(export.Sheet{Name: "cloth-lay", Title: "Lay", Frame: export.Around(1000, 420, 1),
		Items: []export.Item{{Piece: sling, Copy: 1, Motion: geom.Motion{Shift: geom.Pt(10, 20)}},
			{Piece: sling, Copy: 2, Motion: geom.Motion{Shift: geom.Pt(560, 20)}}}})
	if err == nil {
		d, err = d.OnStock()
	}
	if err != nil {
		t.Fatal(err)
	}
	out, err := d.InFields(export.Fields{Reach: 400, Step: 1, Work: piece.CutOut})
	if err != nil || len(out) < 3 {
		t.Fatalf("%d fields, %v", len(out), err)
	}
	return out
}

// Hostile returns texts that would break out of a field of some format.
func Hostile() []string {
	return []string{
		`"quotes' and \backslashes\`, "]]></title><script>alert(1)</script>&amp;<!--",
		"two\nlines\r\n0\nEOF", "bell \a escape \x1b etx \x03 nul \x00 del \x7f", "LB;PU;PD0,0;\x03;",
		"(comment) M3 ; G0 X0 % O100", "stream endstream endobj (\\) Tj", "\\U+0041 %%d {\\C1;x} ^J",
		"\u202eright to left\u202c שלום", "emoji 😀👩‍🚀", "\xff\xfe broken", "∅ ẞ 漢 ﷽", longText(),
	}
}

func longText() string {
	b := make([]byte, 5000)
	for i := range b {
		b[i] = "slingloft "[i%10]
	}
	return string(b)
}

// WithJobs returns the machine with what programs need and tests do not look at: a job
// that asks for every kind of work in the material by name, below the machine's own,
// all invented.
func WithJobs(m design.Machine, material string) design.Machine {
	var jobs []design.Job
	for _, w := range piece.Works() {
		j := design.Job{Work: w, Material: material, Feed: 3000, Power: 200, Depth: 0.5}
		if w == piece.CutInside || w == piece.CutOut {
			j.Depth = 3
		}
		jobs = append(jobs, j)
	}
	m.Plunge, m.Safe, m.SpinUp, m.Cutter, m.Trail = 300, 5, 2, 3, 0.25
	m.Jobs = append(jobs, m.Jobs...)
	return m
}

// Square is a drawing small enough to check in the head: a square of 20 mm with a
// hole, a fold and the letter I on a sheet of 40 × 30 mm.
func Square() export.Drawing {
	box := func(x, y, size float64) geom.Polyline {
		return geom.Polyline(geom.Box{Min: geom.Pt(x, y), Max: geom.Pt(x+size, y+size)}.Ring())
	}
	return export.Drawing{
		Name: "square", Title: "Square <20 mm>", Width: 40, Height: 30,
		Lines: []piece.Line{
			{Name: "cross", Work: piece.Register, Points: geom.Polyline{{X: 1, Y: 2}, {X: 3, Y: 2}}},
			{Name: "square-1/fold", Work: piece.Score, Points: geom.Polyline{{X: 10, Y: 15}, {X: 30, Y: 15}}},
			{Name: "square-1/hole 1", Work: piece.CutInside, Points: box(12, 7, 5), Closed: true},
			{Name: "square-1/cut line", Work: piece.CutOut, Points: box(10, 5, 20), Closed: true},
		},
		Labels: []piece.Label{{Text: "I", At: geom.Pt(20, 18), Height: 5}},
	}
}

// Machine returns the settings of a machine whose table holds the text.
func Machine(t testing.TB, text string) design.Machine {
	t.Helper()
	m, _, err := design.ReadMachine("m.toml", []byte("[machine]\n"+text))
	if err != nil {
		t.Fatal(err)
	}
	return m
}
