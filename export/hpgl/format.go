package hpgl

import (
	"io"
	"regexp"

	"slingloft/export"
	"slingloft/outline/design"
	"slingloft/outline/piece"
)

// Format returns HP-GL/2 as a format of files.
func Format() export.Format {
	return export.Format{Name: "hpgl", Ending: ".plt", About: "pen and roll plotters, knife plotters", Drives: true, SetUp: setUp}
}

// setUp takes the machine's own pens.
func setUp(m design.Machine, of export.Material) (export.Codec, error) {
	pens := pensOf(m, of.Name)
	return export.Codec{
		Write: func(w io.Writer, d export.Drawing, o export.Options) error { return WriteFor(w, d, o, pens) },
		Read:  Read, Keeps: export.Lines, Tolerance: 0.018, Layers: layers, Notes: notes,
	}, nil
}

// pensOf returns the pens that a machine's jobs name for a material.
func pensOf(m design.Machine, material string) Pens {
	pens := make(Pens, len(piece.Works()))
	for _, w := range piece.Works() {
		pens[w] = m.JobFor(w, material).Pen
	}
	return pens
}

// penNumber matches the selection of a pen.
var penNumber = regexp.MustCompile(`\bSP(\d+)`)

// layers returns the numbers of the pens in a file.
func layers(data []byte) []string { return export.LayerNames(penNumber, data) }

// notes says where plotters of some kinds stop.
func notes(d export.Drawing, o export.Options) []string {
	var out []string
	if Beyond16Bits(d, o) {
		out = append(out, "beyond 819 mm, where plotters that count in 16 bits stop")
	}
	if o.Axes.Below() {
		out = append(out, "counts below zero from the "+o.Axes.Origin.String()+
			" corner, where plotters that stop at their zero draw nothing: origin = \"lower-left\" under [machine] counts above it")
	}
	return out
}
