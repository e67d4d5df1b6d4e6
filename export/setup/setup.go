// Package setup turns a machine's settings, as a design or a file of its own gives
// them, into what the writers of the formats take. What is not set is the writers'
// own default; no shop's or program's scheme is kept here.
package setup

import (
	"fmt"
	"io"
	"strconv"
	"strings"

	"slingloft/export"
	"slingloft/export/format"
	"slingloft/export/gcode"
	"slingloft/export/hpgl"
	"slingloft/export/style"
	"slingloft/export/tile"
	"slingloft/outline/design"
	"slingloft/outline/piece"
)

// Options returns the writers' options for a machine, at scale 1.
func Options(m design.Machine) (export.Options, error) {
	o := export.Options{Thin: m.Thin, Axes: axes(m)}
	for i := range o.Correct {
		if m.Measured[i] == 0 {
			continue
		}
		var err error
		if o.Correct[i], err = export.Correction(m.Drawn[i], m.Measured[i]); err != nil {
			return o, err
		}
	}
	var err error
	if o.Scheme, err = scheme(m.Strokes); err != nil {
		return o, err
	}
	return o, o.Validate()
}

// axes returns how the machine counts. The sheet's own corner is not known here
// and stands for the lower left; see [design.Design.OnMachine].
func axes(m design.Machine) export.Axes {
	a := export.Axes{XLeft: m.XLeft, YDown: m.YDown, Swap: m.Swap}
	if m.Origin > 0 {
		a.Origin = export.Corner(m.Origin - 1)
	}
	return a
}

// scheme returns our own strokes with those that are set in their place.
func scheme(strokes []design.Stroke) (style.Scheme, error) {
	s := style.Default()
	for _, set := range strokes {
		w := piece.Work(set.Work)
		stroke := s.Of(w)
		if set.Colour != "" {
			c, err := style.ParseColour(set.Colour)
			if err != nil {
				return s, fmt.Errorf("stroke for %s: %w", w, err)
			}
			stroke.Colour = c
		}
		if set.Width > 0 {
			stroke.Width = set.Width
		}
		if set.Solid {
			stroke.Dash = nil
		} else if set.Dash != "" {
			stroke.Dash = set.Dashes()
		}
		s = s.With(w, stroke)
	}
	return s, nil
}

// Names returns the names of all formats, in the order in which they are listed for
// people.
func Names() []string {
	var out []string
	for _, f := range format.All() {
		out = append(out, f.Name)
	}
	return append(out, format.Pattern().Name)
}

// Format returns the format of the given name for a machine that works the given
// material.
func Format(name string, m design.Machine, material string) (format.Format, error) {
	if name == format.Pattern().Name {
		return format.Pattern(), nil
	}
	f, err := format.Named(name)
	if err != nil {
		return f, err
	}
	switch name {
	case "dxf":
		if m.Arcs > 0 {
			return format.Arcs(m.Arcs), nil
		}
	case "pdf":
		return pdf(f, m)
	case "hpgl":
		pens := Pens(m, material)
		f.Write = func(w io.Writer, d export.Drawing, o export.Options) error { return hpgl.WriteFor(w, d, o, pens) }
	case "gcode":
		s := Program(m, material)
		return format.Machine(s), s.Validate()
	}
	return f, nil
}

// pdf returns PDF of whole sheets, or divided where a paper is set.
func pdf(whole format.Format, m design.Machine) (format.Format, error) {
	if m.Paper == "" || m.Paper == design.WholeSheet {
		return whole, nil
	}
	p, err := tile.PaperNamed(m.Paper)
	if err != nil {
		return whole, err
	}
	p.Overlap = m.Overlap
	return format.Tiled(p), nil
}

// jobs returns the machine's jobs that hold for a material: those for any first,
// so that those for this one go over them.
func jobs(m design.Machine, material string) []design.Job {
	var out []design.Job
	for _, j := range m.Jobs {
		if j.Material == "" {
			out = append(out, j)
		}
	}
	for _, j := range m.Jobs {
		if j.Material != "" && j.Material == material {
			out = append(out, j)
		}
	}
	return out
}

// Pens returns the pens of a plotter for a material.
func Pens(m design.Machine, material string) hpgl.Pens {
	pens := make(hpgl.Pens, len(piece.Works()))
	for _, j := range jobs(m, material) {
		if j.Pen > 0 {
			pens[j.Work] = j.Pen
		}
	}
	return pens
}

// Usual tabs, where a number of them is set but no size: own choice.
const (
	tabWidth  = 2.0 // mm
	tabHeight = 1.0 // mm
)

// Program returns the settings of programs for a material: the tool's defaults
// with what is set in their place.
func Program(m design.Machine, material string) gcode.Settings {
	s := gcode.Defaults(gcode.Tool(m.Tool))
	s.Kerf, s.Lead, s.Tabs, s.Frame = m.Kerf, m.Lead, m.Tabs, !m.NoFrame
	if s.Tabs > 0 {
		s.TabWidth, s.TabHeight = tabWidth, tabHeight
	}
	for _, v := range []struct {
		to  *float64
		set float64
	}{
		{&s.TabWidth, m.TabWidth}, {&s.TabHeight, m.TabHeight}, {&s.Trail, m.Trail},
		{&s.Swivel, m.Swivel}, {&s.Safe, m.Safe}, {&s.Plunge, m.Plunge},
	} {
		if v.set > 0 {
			*v.to = v.set
		}
	}
	for _, j := range jobs(m, material) {
		apply(&s.Jobs[j.Work], j)
	}
	return s
}

// apply puts what a job sets into the place of what was there.
func apply(to *gcode.Job, j design.Job) {
	to.Skip = to.Skip || j.Skip
	if j.Feed > 0 {
		to.Feed = j.Feed
	}
	if j.Power > 0 {
		to.Power = j.Power
	}
	if j.Passes > 0 {
		to.Passes = j.Passes
	}
	if j.Depth > 0 {
		to.Depth = j.Depth
	}
}

// Measured reads what the check bars of 100 mm measured on a plot, along x and y
// in mm, as it is written on the command line: "99.6x100.2".
func Measured(text string) ([2]float64, error) {
	var out [2]float64
	bad := fmt.Errorf("measured bars %.30q: want what the 100 mm bars measure along x and y, such as 99.6x100.2", text)
	x, y, ok := strings.Cut(strings.ReplaceAll(text, "×", "x"), "x")
	if !ok {
		return out, bad
	}
	for i, part := range []string{x, y} {
		v, err := strconv.ParseFloat(strings.TrimSpace(part), 64)
		if err != nil {
			return out, bad
		}
		if _, err := export.Correction(100, v); err != nil {
			return out, err
		}
		out[i] = v
	}
	return out, nil
}
