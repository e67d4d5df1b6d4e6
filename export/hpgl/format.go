package hpgl

import (
	"cmp"
	"io"
	"regexp"
	"slices"

	"slingloft/export"
	"slingloft/outline/design"
	"slingloft/outline/piece"
)

// Format returns HP-GL/2 as a format of files.
func Format() export.Format {
	return export.Format{Name: "hpgl", Ending: ".plt", Drives: true, Pens: true, SetUp: setUp}
}

// setUp takes the machine's own pens.
func setUp(m design.Machine, of export.Material) (export.Codec, error) {
	p := plotFor(m, of)
	return export.Codec{
		Write: func(w io.Writer, d export.Drawing, o export.Options) error { return WriteFor(w, d, o, p) },
		Read:  Read, Keeps: export.Lines, Tolerance: 0.018, Layers: layers, Faults: faults, Notes: p.notes,
	}, nil
}

// plotFor returns how a machine plots on a material.
func plotFor(m design.Machine, of export.Material) Plot {
	p := Plot{Pens: pensOf(m, of.Name), Bed: export.Bed{Width: m.Width, Height: m.Height}}
	p.Asked = func(l piece.Line) bool {
		named := func(j design.Job) bool { return j.Work == l.Work && j.Material == of.Name && !j.Skip }
		return !export.ByNameOnly(cmp.Or(m.Tool, design.Pen), of.Stock, l) || slices.ContainsFunc(m.Jobs, named)
	}
	p.left = func(d export.Drawing) []export.Note {
		var works []piece.Work
		slits := false
		for _, l := range append(slices.Clone(d.Lines), lettered(d)...) {
			switch {
			case p.Asked(l):
			case export.Slit(l):
				slits = true
			default:
				works = append(works, l.Work)
			}
		}
		slices.Sort(works)
		return export.LeftOut(m.Tool, of.Name, slices.Compact(works), slits)
	}
	return p
}

// lettered returns a line that stands for a drawing's labels.
func lettered(d export.Drawing) []piece.Line {
	if len(d.Labels) == 0 {
		return nil
	}
	return []piece.Line{{Work: piece.Lettering}}
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

// faults finds any step that is not as it should be: pens, places, order, and what
// stands behind the end.
func faults(got, due []byte) ([]export.Note, error) {
	return export.StepFaults(steps(got), steps(due)), nil
}

// notes says what is left out and where plotters of some kinds stop.
func (p Plot) notes(d export.Drawing, o export.Options) []export.Note {
	out := append(p.left(d), d.Room()...)
	if Beyond16Bits(d.OnBed(), o) {
		far := "819 mm"
		if o.Inches {
			far = "32 1/4 in"
		}
		out = append(out, export.Tell(export.Past16Bits, far))
	}
	if o.Axes.Below() {
		out = append(out, export.Tell(export.BelowZero, o.Axes.Origin))
	}
	return out
}
