package gcode

import (
	"cmp"
	"io"
	"regexp"

	"slingloft/export"
	"slingloft/outline/design"
	"slingloft/outline/piece"
)

// Format returns G-code as a format of files. What is read back are the paths of the
// tool, beside the lines and with lead-ins.
func Format() export.Format {
	return export.Format{
		Name: "gcode", Ending: ".ngc", About: "lasers, routers and drag knives on CNC controllers", Drives: true, SetUp: setUp,
	}
}

// setUp takes the machine's settings for the material.
func setUp(m design.Machine, of export.Material) (export.Codec, error) {
	s := SettingsFor(m, of)
	return export.Codec{
		Write: func(w io.Writer, d export.Drawing, o export.Options) error { return WriteFor(w, d, o, s) },
		Read:  Read, Keeps: export.Lines, Tolerance: 1e-4, Layers: layers, Faults: faults,
		Notes: func(d export.Drawing, _ export.Options) []string { return s.remarks(d) },
	}, s.Validate()
}

// Usual tabs, where a number of them is set but no size: own choice.
const (
	usualTabWidth  = 2.0 // mm
	usualTabHeight = 1.0 // mm
)

// SettingsFor returns the settings of programs for a machine and a material: the
// tool's defaults with what is set in their place.
func SettingsFor(m design.Machine, of export.Material) Settings {
	s := Defaults(m.Tool)
	s.Of, s.Example = of, m.Example
	s.Kerf, s.Lead, s.Tabs, s.Frame = m.Kerf, m.Lead, m.Tabs, !m.NoFrame
	if s.Tabs > 0 {
		s.TabWidth, s.TabHeight = usualTabWidth, usualTabHeight
	}
	s.TabWidth, s.TabHeight = cmp.Or(m.TabWidth, s.TabWidth), cmp.Or(m.TabHeight, s.TabHeight)
	s.Trail, s.Swivel = cmp.Or(m.Trail, s.Trail), cmp.Or(float64(m.Swivel), s.Swivel)
	s.Safe, s.Plunge = cmp.Or(m.Safe, s.Safe), cmp.Or(float64(m.Plunge), s.Plunge)
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

// faults finds a program that breaks off.
func faults(got, _ []byte) ([]string, error) {
	if lastWord.Match(got) {
		return nil, nil
	}
	return []string{"the program breaks off"}, nil
}
