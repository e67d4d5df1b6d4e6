package gcode

import (
	"cmp"
	"io"
	"regexp"
	"slices"
	"strings"

	"slingloft/export"
	"slingloft/outline/design"
	"slingloft/outline/piece"
)

// Format returns G-code as a format of files. What is read back are the paths of the
// tool, beside the lines and with lead-ins.
func Format() export.Format {
	return export.Format{
		Name: "gcode", Ending: ".ngc", Drives: true, SetUp: setUp,
	}
}

// setUp takes the machine's settings for the material.
func setUp(m design.Machine, of export.Material) (export.Codec, error) {
	s := SettingsFor(m, of)
	return export.Codec{
		Write: func(w io.Writer, d export.Drawing, o export.Options) error { return WriteFor(w, d, o, s) },
		Read:  Read, Keeps: export.Lines, Tolerance: 1e-4, Layers: layers, Faults: faults,
		Notes: func(d export.Drawing, _ export.Options) []export.Note { return s.remarks(d) },
	}, s.Validate()
}

// SettingsFor returns the settings of programs for a machine and a material. What the
// machine does not give stays at nothing.
func SettingsFor(m design.Machine, of export.Material) Settings {
	s := Defaults(cmp.Or(m.Tool, design.Laser))
	s.Of, s.Example = of, m.Example
	s.Bed = export.Bed{Width: m.Width, Height: m.Height}
	s.Kerf, s.Cutter, s.Lead, s.Frame = m.Cut(), m.Cutter, m.Lead, !m.NoFrame
	s.Tabs, s.TabWidth, s.TabHeight = m.Tabs, m.TabWidth, m.TabHeight
	s.Trail, s.Swivel = m.Trail, float64(m.Swivel)
	s.Safe, s.Plunge, s.SpinUp, s.Through = m.Safe, float64(m.Plunge), m.SpinUp, m.Through
	s.Pause, s.Dynamic, s.Air, s.Controller = m.Pause, m.Dynamic, m.Air, m.Controller
	s.Header, s.Footer = m.Header, m.Footer
	if of.OnLines {
		s.Kerf = 0
	}
	if s.Tool == design.Pen {
		s.Kerf, s.Lead = 0, 0 // a line is drawn as it is, and from its start
	}
	for _, w := range piece.Works() {
		s.Jobs[w] = s.Jobs[w].with(m.JobFor(w, of.Name))
		s.Jobs[w].Named = m.Asks(w, of.Name)
	}
	return s
}

// with returns the job with what a machine's job sets in its place.
func (j Job) with(set design.Job) Job {
	return Job{
		Skip: j.Skip || set.Skip, Feed: cmp.Or(float64(set.Feed), j.Feed), Power: cmp.Or(set.Power, j.Power),
		Passes: cmp.Or(set.Passes, j.Passes), Depth: cmp.Or(set.Depth, j.Depth),
	}
}

// workComment matches the comment that begins a kind of work.
var workComment = regexp.MustCompile(`\( work ([^)]*) \)`)

// layers returns the kinds of work in a program.
func layers(data []byte) []string { return export.LayerNames(workComment, data) }

// lastWord matches the word that ends a program, without which some of it is gone.
var lastWord = regexp.MustCompile(`(?m)^M0?(2|30)\s*$`)

// faults finds a program that breaks off, lines of the owner's own that are not those
// of the machine, and any step that is not as it should be: places, order, power, feed,
// depth, the tool on or off, and what stands behind the program's end.
func faults(got, due []byte) ([]export.Note, error) {
	var out []export.Note
	if !slices.Equal(ownLines(got), ownLines(due)) {
		out = append(out, export.Tell(export.OwnLinesOff))
	}
	if !lastWord.Match(got) {
		out = append(out, export.Tell(export.BreaksOff))
	}
	return append(out, export.StepFaults(steps(got), steps(due))...), nil
}

// Comments around lines of the owner's own.
const (
	ownBegin = "own lines"
	ownEnd   = "end of own lines"
)

// ownLines returns the lines of the owner's own in a program.
func ownLines(program []byte) []string {
	var out []string
	own := false
	for line := range strings.Lines(string(program)) {
		switch line = strings.TrimSpace(line); {
		case line == "( "+ownBegin+" )":
			own = true
		case line == "( "+ownEnd+" )":
			own = false
		case own:
			out = append(out, line)
		}
	}
	return out
}
